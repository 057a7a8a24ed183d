/* The figures of docs/conventions.md, drawn by the library. Checked: every figure stands in docs/pictures and is shown
 * on the page, and says the same as when drawn anew. Run with FRAME_WRITE_PICTURES=1 to write them again. */
#include <stdio.h>
#include <stdlib.h>

#include "figures_roof.h"
#include "figures_stick.h"

static const struct figure {
    const char *name, *title;
    double width_in, height_in;
    void (*draw)(frame_drawing *);
} figures[] = {
    {"run", "Run to the centre of a ridge", 5, 3.4, figure_run},
    {"run-wall", "Run to the face of a wall", 5, 3.4, figure_run_wall},
    {"heel", "Height above plate, seat, overhang", 5, 3.4, figure_heel},
    {"slope", "Slope, rise over run", 3.4, 2.6, figure_slope},
    {"hand", "Left and right, seen from the eave", 5, 3.4, figure_hand},
    {"hip", "Backing and drop of a hip", 5, 3, figure_hip},
    {"eaves-plates-level", "Unequal slopes, plates level", 5, 2.6, figure_eaves_plates_level},
    {"eaves-overhangs-equal", "Unequal slopes, overhangs equal", 5, 2.6, figure_eaves_overhangs_equal},
    {"axes", "A stick's own axes and faces", 5, 2.8, figure_axes},
    {"lengths", "Lengths by name", 5, 4, figure_lengths},
    {"mitre", "Mitre", 5, 2.2, figure_mitre},
    {"bevel", "Bevel", 5, 2.2, figure_bevel},
    {"cheek", "A compound cut on every face", 7, 5, NULL},
    {"tape", "Running distances", 5, 2, figure_tape},
};
enum { FIGURES = sizeof figures / sizeof *figures };

static frame_text *draw(const struct figure *figure) {
    frame_drawing *drawing;
    frame_text *svg;
    if (figure->draw) {
        must(frame_drawing_new(&drawing));
        figure->draw(drawing);
    } else {
        drawing = figure_cheek();
    }
    must(frame_drawing_title(drawing, figure->title));
    must(frame_drawing_paper(drawing, figure->width_in, figure->height_in));
    must(frame_text_new(&svg));
    must(frame_drawing_svg(drawing, svg));
    frame_drawing_free(drawing);
    return svg;
}

static char *read_file(const char *path) {
    FILE *file = fopen(path, "rb");
    if (!file) return NULL;
    char *text = calloc(1, 1 << 18);
    ck_assert_ptr_nonnull(text);
    const size_t length = fread(text, 1, (1 << 18) - 1, file);
    text[length] = 0;
    fclose(file);
    return text;
}

static char *picture_path(const struct figure *figure, char *path, size_t size) {
    snprintf(path, size, "%s/../docs/pictures/%s.svg", FRAME_TESTS_DIR, figure->name);
    return path;
}

/* The words of an SVG. Where they stand, and where a line ends, is the drawing room's affair. */
static char *words_of(const char *svg) {
    char *all = calloc(1, strlen(svg) + 1), *to = all;
    ck_assert_ptr_nonnull(all);
    for (const char *at = strstr(svg, "<text"); at; at = strstr(at, "<text")) {
        const char *end = strstr(at, "</text>");
        int tag = 0;
        for (; at < end; at++) {
            if (*at == '<') tag = 1, *to++ = ' ';
            if (!tag) *to++ = *at;
            if (*at == '>') tag = 0;
        }
        *to++ = '\n';
    }
    return all;
}

static int says_every(const char *text, char *wanted) {
    for (char *word = strtok(wanted, " \n"); word; word = strtok(NULL, " \n"))
        if (!strstr(text, word)) return 0;
    return 1;
}

static void check_says_every(const char *text, const char *words, const char *path) {
    char *copy = calloc(1, strlen(words) + 1);
    ck_assert_ptr_nonnull(copy);
    ck_assert_msg(says_every(text, strcpy(copy, words)), "%s is not current: run with FRAME_WRITE_PICTURES=1", path);
    free(copy);
}

START_TEST(the_pictures_say_what_is_drawn_now) {
    char path[1024];
    frame_text *svg = draw(&figures[_i]);
    picture_path(&figures[_i], path, sizeof path);
    if (getenv("FRAME_WRITE_PICTURES")) must(frame_text_save(svg, path));
    char *kept = read_file(path);
    ck_assert_msg(kept != NULL, "no %s: run with FRAME_WRITE_PICTURES=1", path);
    char *now = words_of(frame_text_chars(svg)), *then = words_of(kept);
    ck_assert_msg(*now, "%s has no words", figures[_i].name);
    check_says_every(then, now, path);
    check_says_every(now, then, path);
    free(now);
    free(then);
    free(kept);
    frame_text_free(svg);
}
END_TEST

START_TEST(the_page_shows_every_picture) {
    char *page = read_file(FRAME_TESTS_DIR "/../docs/conventions.md");
    ck_assert_ptr_nonnull(page);
    for (int i = 0; i < FIGURES; i++) {
        char shown[128];
        snprintf(shown, sizeof shown, "(pictures/%s.svg)", figures[i].name);
        ck_assert_msg(strstr(page, shown) != NULL, "docs/conventions.md does not show %s", shown);
    }
    free(page);
}
END_TEST

static void add(TCase *tests) {
    tcase_add_loop_test(tests, the_pictures_say_what_is_drawn_now, 0, FIGURES);
    tcase_add_test(tests, the_page_shows_every_picture);
}

int main(void) {
    return run("conventions", add);
}
