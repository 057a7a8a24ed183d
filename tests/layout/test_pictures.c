/* The pictures of the handbook's pages on layouts are the library's own, and say what it draws now. With
 * FRAME_WRITE_PICTURES in the environment they are written anew. */
#include <check.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <frame/frame.h>

static void must(frame_status status) {
    ck_assert_msg(status == FRAME_OK, "%s", frame_error_text());
}

static frame_drawing *draw_stairs(void) {
    frame_stairs_in in;
    frame_stairs *stairs = NULL;
    frame_drawing *drawing = NULL;
    frame_stairs_in_init(&in);
    in.rise_in = 107;
    in.well_length_in = 131;
    in.ceiling_in = 98;
    in.name = "boathouse stair";
    must(frame_stairs_solve(&in, &stairs, NULL));
    must(frame_stairs_drawing(stairs, &drawing));
    frame_stairs_free(stairs);
    return drawing;
}

static frame_drawing *draw_wall(int gable) {
    frame_wall_in in;
    frame_wall_opening opening;
    frame_wall_crossing crossing;
    frame_wall *wall = NULL;
    frame_drawing *drawing = NULL;
    frame_wall_in_init(&in);
    frame_wall_opening_init(&opening);
    frame_wall_crossing_init(&crossing);
    opening.name = "lake window";
    opening.at_in = 76;
    opening.width_in = 72;
    opening.head_in = 82;
    opening.sill_in = 30;
    opening.header_size = FRAME_SIZE(2, 8);
    crossing.at_in = 190;
    in.length_in = 240;
    in.height_in = 97.125;
    in.size = FRAME_SIZE(2, 4);
    in.name = gable ? "gable wall" : "lake side";
    in.openings = &opening;
    in.opening_count = 1;
    if (gable) {
        in.slope = 7.0 / 12;
        in.peak_in = 120;
        opening.at_in = 84;
    } else {
        in.start_end = FRAME_WALL_END_CORNER;
        in.end_end = FRAME_WALL_END_BUTT;
        in.crossings = &crossing;
        in.crossing_count = 1;
    }
    must(frame_wall_solve(&in, &wall, NULL));
    must(frame_wall_drawing(wall, &drawing));
    frame_wall_free(wall);
    return drawing;
}

static frame_drawing *draw_level_wall(void) {
    return draw_wall(0);
}

static frame_drawing *draw_gable(void) {
    return draw_wall(1);
}

static frame_drawing *draw_floor(void) {
    frame_floor_in in;
    frame_floor_opening opening;
    frame_floor_beam beam;
    frame_floor *made = NULL;
    frame_drawing *drawing = NULL;
    frame_floor_in_init(&in);
    frame_floor_opening_init(&opening);
    frame_floor_beam_init(&beam);
    opening.x_in = 40;
    opening.y_in = 90;
    opening.length_in = 60;
    opening.width_in = 36;
    beam.at_in = 144;
    beam.size = FRAME_SIZE(2, 12);
    in.span_in = 288;
    in.width_in = 192;
    in.size = FRAME_SIZE(2, 10);
    in.stock_in = 168;
    in.openings = &opening;
    in.opening_count = 1;
    in.beams = &beam;
    in.beam_count = 1;
    in.name = "cabin floor";
    must(frame_floor_solve(&in, &made, NULL));
    must(frame_floor_drawing(made, &drawing));
    frame_floor_free(made);
    return drawing;
}

static frame_drawing *draw_deck(void) {
    frame_deck_in in;
    frame_deck_beam beam;
    frame_deck *deck = NULL;
    frame_drawing *drawing = NULL;
    frame_deck_in_init(&in);
    frame_deck_beam_init(&beam);
    beam.at_in = 124;
    beam.size = FRAME_SIZE(2, 10);
    in.length_in = 144;
    in.width_in = 192;
    in.size = FRAME_SIZE(2, 8);
    in.height_in = 48;
    in.pattern = FRAME_DECK_FRAME;
    in.beams = &beam;
    in.beam_count = 1;
    in.name = "landing deck";
    must(frame_deck_solve(&in, &deck, NULL));
    must(frame_deck_drawing(deck, &drawing));
    frame_deck_free(deck);
    return drawing;
}

static const struct picture {
    const char *name, *page;
    frame_drawing *(*draw)(void);
} pictures[] = {{"stairs", "stairs", draw_stairs},
                {"wall", "wall", draw_level_wall},
                {"gable-wall", "wall", draw_gable},
                {"floor", "floor", draw_floor},
                {"deck", "deck", draw_deck}};

static char *read_file(const char *path) {
    FILE *file = fopen(path, "rb");
    char *text = calloc(1, 1 << 20);
    ck_assert_ptr_nonnull(text);
    if (!file) return text;
    const size_t length = fread(text, 1, (1 << 20) - 1, file);
    text[length] = 0;
    fclose(file);
    return text;
}

/* The next text of an SVG, without its tags; NULL past the last. */
static const char *next_words(const char *at, char *words, size_t size) {
    size_t length = 0;
    int tag = 0;
    at = strstr(at, "<text");
    if (!at) return NULL;
    for (const char *end = strstr(at, "</text>"); at < end; at++) {
        if (*at == '<') tag = 1;
        if (!tag && length + 1 < size) words[length++] = *at;
        if (*at == '>') tag = 0;
    }
    words[length] = 0;
    return at;
}

/* Whether each text of one picture stands in the other. */
static void check_says_all(const char *svg, const char *in, const char *path) {
    char words[400];
    int count = 0;
    for (const char *at = svg; (at = next_words(at, words, sizeof words));) {
        char *first = strtok(words, " ");
        for (; first; first = strtok(NULL, " "), count++)
            ck_assert_msg(strstr(in, first) != NULL, "%s: \"%s\": run with FRAME_WRITE_PICTURES=1", path, first);
    }
    ck_assert_int_gt(count, 5);
}

START_TEST(the_pictures_say_what_is_drawn_now) {
    char path[1024], shown[128];
    frame_text *svg = NULL;
    frame_drawing *drawing = pictures[_i].draw();
    must(frame_text_new(&svg));
    must(frame_drawing_svg(drawing, svg));
    snprintf(path, sizeof path, "%s/../docs/pictures/%s.svg", FRAME_TESTS_DIR, pictures[_i].name);
    if (getenv("FRAME_WRITE_PICTURES")) must(frame_text_save(svg, path));
    char *kept = read_file(path);
    check_says_all(frame_text_chars(svg), kept, path);
    check_says_all(kept, frame_text_chars(svg), path);
    free(kept);
    snprintf(path, sizeof path, "%s/../docs/handbook/%s.md", FRAME_TESTS_DIR, pictures[_i].page);
    snprintf(shown, sizeof shown, "(../pictures/%s.svg)", pictures[_i].name);
    char *page = read_file(path);
    ck_assert_msg(strstr(page, shown) != NULL, "%s does not show %s", path, shown);
    free(page);
    frame_drawing_free(drawing);
    frame_text_free(svg);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("pictures");
    TCase *tests = tcase_create("all");
    tcase_add_loop_test(tests, the_pictures_say_what_is_drawn_now, 0, sizeof pictures / sizeof *pictures);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
