/* The pictures of the handbook's pages on fasteners are the library's own, to the byte. With FRAME_WRITE_PICTURES in
 * the environment they are written anew. */
#include <check.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <frame/frame.h>

static void must(frame_status status) {
    ck_assert_msg(status == FRAME_OK, "%s", frame_error_text());
}

static frame_drawing *draw_layout(void) {
    frame_fastener_layout_in in;
    frame_drawing *drawing = NULL;
    frame_fastener_layout_in_init(&in);
    in.kind = FRAME_DOWEL_BOLT, in.size = "1/2", in.width_in = 7.25, in.angle_deg = 0;
    in.main_thickness_in = 1.5, in.side_thickness_in = 3, in.rows = 2, in.per_row = 3;
    in.spacing_in = 2, in.row_spacing_in = 3, in.end_distance_in = 3.5;
    must(frame_fastener_layout_drawing(&in, &drawing));
    return drawing;
}

static frame_drawing *draw_pattern(void) {
    frame_fastener_pattern_in in;
    frame_drawing *drawing = NULL;
    frame_fastener_pattern_in_init(&in);
    in.kind = FRAME_DOWEL_COMMON_NAIL, in.size = "16d", in.each_lb = 118, in.demand_lb = 1500;
    in.width_in = 5.5, in.length_in = 24;
    must(frame_fastener_pattern_drawing(&in, &drawing));
    return drawing;
}

static frame_drawing *draw_eccentric(void) {
    frame_fastener_place places[9];
    frame_fastener_eccentric_in in;
    frame_drawing *drawing = NULL;
    frame_fastener_eccentric_in_init(&in);
    for (int i = 0; i < 9; i++) {
        frame_fastener_place_init(&places[i]);
        places[i].x_in = 2 + i % 3 * 3, places[i].y_in = 1.5 + i / 3 * 2.5;
    }
    in.places = places, in.place_count = 9, in.each_lb = 450, in.force_y_lb = -900, in.at_x_in = 14, in.at_y_in = 4;
    must(frame_fastener_eccentric_drawing(&in, &drawing));
    return drawing;
}

static frame_drawing *draw_panel(void) {
    frame_panel_pattern_in in;
    frame_drawing *drawing = NULL;
    frame_panel_pattern_in_init(&in);
    in.use = FRAME_PANEL_USE_WALL, in.load = FRAME_LATERAL_WIND, in.blocked = 1, in.demand_plf = 400;
    in.framing_specific_gravity = 0.5;
    must(frame_panel_pattern_drawing(&in, &drawing));
    return drawing;
}

static const struct picture {
    const char *name;
    frame_drawing *(*draw)(void);
} pictures[] = {{"fastener_layout", draw_layout},
                {"fastener_pattern", draw_pattern},
                {"fastener_eccentric", draw_eccentric},
                {"panel_pattern", draw_panel}};

static char *read_file(const char *path) {
    FILE *file = fopen(path, "rb");
    char *text = calloc(1, 1 << 18);
    ck_assert_ptr_nonnull(text);
    if (!file) return text;
    text[fread(text, 1, (1 << 18) - 1, file)] = 0;
    fclose(file);
    return text;
}

START_TEST(the_pictures_are_drawn_now) {
    char path[1024], shown[128];
    frame_text *svg = NULL;
    frame_drawing *drawing = pictures[_i].draw();
    must(frame_text_new(&svg));
    must(frame_drawing_svg(drawing, svg));
    snprintf(path, sizeof path, "%s/../docs/pictures/%s.svg", FRAME_TESTS_DIR, pictures[_i].name);
    if (getenv("FRAME_WRITE_PICTURES")) must(frame_text_save(svg, path));
    char *kept = read_file(path);
    ck_assert_msg(!strcmp(kept, frame_text_chars(svg)), "%s: run with FRAME_WRITE_PICTURES=1 and look at it", path);
    free(kept);
    snprintf(path, sizeof path, "%s/../docs/handbook/%s.md", FRAME_TESTS_DIR, pictures[_i].name);
    snprintf(shown, sizeof shown, "(../pictures/%s.svg)", pictures[_i].name);
    char *page = read_file(path);
    ck_assert_msg(strstr(page, shown) != NULL, "%s does not show %s", path, shown);
    free(page);
    frame_drawing_free(drawing);
    frame_text_free(svg);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("pictures of fasteners");
    TCase *cases = tcase_create("all");
    tcase_add_loop_test(cases, the_pictures_are_drawn_now, 0, sizeof pictures / sizeof *pictures);
    suite_add_tcase(suite, cases);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
