/* The pictures of the handbook's pages on whole roofs are the library's own, and as it draws them now. With
 * FRAME_WRITE_PICTURES in the environment they are written anew. */
#include <stdio.h>

#include "plans.h"

static void must(frame_status status) {
    ck_assert_msg(status == FRAME_OK, "%s", frame_error_text());
}

/* A cabin with a wing: two gables, hips at one end. */
static frame_roof_solve_in *cabin(void) {
    static plan p;
    static const double at[][2] = {{0, 0},     {480, 0},   {480, 288}, {360, 288},
                                   {360, 432}, {168, 432}, {168, 288}, {0, 288}};
    p.corner_count = p.hole_count = 0;
    for (int i = 0; i < 8; i++) plan_add(&p, at[i][0], at[i][1]);
    plan_finish(&p, 8 / 12.0);
    p.kinds[1] = p.kinds[4] = FRAME_ROOF_GABLE;
    return &p.in;
}

static frame_drawing *draw_plan(void) {
    frame_roof_solve *roof = NULL;
    frame_drawing *drawing = NULL;
    must(frame_roof_solve_solve(cabin(), &roof, NULL));
    must(frame_roof_solve_drawing(roof, &drawing));
    frame_roof_solve_free(roof);
    return drawing;
}

static frame_drawing *draw_frame(int standing) {
    const frame_roof_solve_in *plan = cabin();
    frame_roof_members_in in;
    frame_roof_members *members = NULL;
    frame_drawing *drawing = NULL;
    frame_roof_members_in_init(&in);
    in.corners = plan->corners, in.corner_count = plan->corner_count;
    in.slopes = plan->slopes, in.slope_count = plan->slope_count;
    in.kinds = plan->kinds, in.kind_count = plan->kind_count;
    in.rafter_size = FRAME_SIZE(2, 8), in.joist_size = FRAME_SIZE(2, 6);
    in.spacing_in = 24, in.overhang_in = 16, in.rake_overhang_in = 16, in.blocking = 1;
    must(frame_roof_members_solve(&in, &members, NULL));
    must(standing ? frame_roof_members_isometric(members, -55, &drawing)
                  : frame_roof_members_drawing(members, &drawing));
    frame_roof_members_free(members);
    return drawing;
}

static frame_drawing *draw_framing(void) {
    return draw_frame(0);
}

static frame_drawing *draw_standing(void) {
    return draw_frame(1);
}

/* The face that the wing's valleys cut into. */
static frame_drawing *draw_sheathing(void) {
    const frame_roof_solve_in *plan = cabin();
    frame_roof_sheathing_in in;
    frame_roof_sheathing *sheathing = NULL;
    frame_drawing *drawing = NULL;
    frame_roof_sheathing_in_init(&in);
    in.corners = plan->corners, in.corner_count = plan->corner_count;
    in.slopes = plan->slopes, in.slope_count = plan->slope_count;
    in.kinds = plan->kinds, in.kind_count = plan->kind_count;
    in.rafter_size = FRAME_SIZE(2, 8), in.overhang_in = 16, in.rake_overhang_in = 16;
    must(frame_roof_sheathing_solve(&in, &sheathing, NULL));
    ck_assert_int_eq(frame_roof_sheathing_drawing(sheathing, 99, &drawing), FRAME_OUT_OF_RANGE);
    ck_assert_ptr_null(drawing);
    must(frame_roof_sheathing_drawing(sheathing, 2, &drawing));
    frame_roof_sheathing_free(sheathing);
    return drawing;
}

static const struct picture {
    const char *name, *page;
    frame_drawing *(*draw)(void);
} pictures[] = {{"roof-plan", "roof_solve", draw_plan},
                {"roof-framing", "roof_members", draw_framing},
                {"roof-frame", "roof_members", draw_standing},
                {"roof-sheathing", "roof_sheathing", draw_sheathing}};

static char *read_file(const char *path) {
    FILE *file = fopen(path, "rb");
    char *text = calloc(1, 1 << 20);
    ck_assert_ptr_nonnull(text);
    if (!file) return text;
    text[fread(text, 1, (1 << 20) - 1, file)] = 0;
    fclose(file);
    return text;
}

static size_t count_of(const char *text, const char *what) {
    size_t count = 0;
    for (; (text = strstr(text, what)); text++) count++;
    return count;
}

/* As many texts and about as many strokes: the last digits of places differ between machines. */
START_TEST(the_pictures_are_as_drawn_now) {
    char path[1024], shown[128];
    frame_text *svg = NULL;
    frame_drawing *drawing = pictures[_i].draw();
    must(frame_text_new(&svg));
    must(frame_drawing_svg(drawing, svg));
    snprintf(path, sizeof path, "%s/../docs/pictures/%s.svg", FRAME_TESTS_DIR, pictures[_i].name);
    if (getenv("FRAME_WRITE_PICTURES")) must(frame_text_save(svg, path));
    char *kept = read_file(path);
    const char *drawn = frame_text_chars(svg);
    ck_assert_msg(count_of(kept, "<text") == count_of(drawn, "<text") && count_of(kept, "<text") > 0,
                  "%s: run with FRAME_WRITE_PICTURES=1", path);
    const double strokes = (double)count_of(kept, "M"), now = (double)count_of(drawn, "M");
    ck_assert_msg(fabs(strokes - now) <= 2 + 0.01 * now, "%s: run with FRAME_WRITE_PICTURES=1", path);
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
    Suite *suite = suite_create("roof_pictures");
    TCase *tests = tcase_create("all");
    tcase_add_loop_test(tests, the_pictures_are_as_drawn_now, 0, sizeof pictures / sizeof *pictures);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed ? EXIT_FAILURE : EXIT_SUCCESS;
}
