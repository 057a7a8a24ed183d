/* The drawing of a beam: every extreme is written, every kind of support and load drawn, and no memory is lost. */
#include <frame/drawing.h>

#include "beams.h"

static frame_text *svg_of(const beam *b) {
    frame_drawing *drawing;
    frame_text *svg;
    ck_assert_msg(!frame_beam_solve_drawing(b->answer, &drawing), "%s", frame_error_text());
    ck_assert(!frame_text_new(&svg) && !frame_drawing_svg(drawing, svg));
    frame_drawing_free(drawing);
    return svg;
}

static void shows(const frame_text *svg, const char *words) {
    ck_assert_msg(strstr(frame_text_chars(svg), words), "the drawing does not say \"%s\"", words);
}

/* Two spans of 10 ft under 120 plf of live load: 49/512 w L^2, w L^2/8, the shears beside the middle support. */
START_TEST(extremes_are_written) {
    static beam b;
    beam_begin(&b, 2, 120);
    b.in.live_plf = 120, b.in.pattern = 1;
    beam_stiff(&b, 1e8);
    beam_run(&b);
    frame_text *svg = svg_of(&b);
    shows(svg, "120 plf live");
    shows(svg, "13,781 lb-in");
    shows(svg, "-18,000 lb-in");
    shows(svg, "-750 lb");
    shows(svg, "525 lb");
    shows(svg, "Deflection");
    frame_text_free(svg);
    b.in.e_psi = FRAME_NOT_GIVEN;
    beam_run(&b);
    svg = svg_of(&b);
    ck_assert_ptr_null(strstr(frame_text_chars(svg), "Deflection"));
    frame_text_free(svg);
    beam_end(&b);
}
END_TEST

START_TEST(all_kinds_are_drawn) {
    static beam b;
    beam_begin(&b, 3, 100);
    beam_stiff(&b, 1e8);
    b.supports[0].kind = FRAME_SUPPORT_FIXED;
    b.supports[1].kind = FRAME_SUPPORT_SPRING;
    b.supports[1].spring_lb_per_in = 5000;
    b.supports[2].hinge = 1;
    b.supports[3].kind = FRAME_SUPPORT_NONE;
    b.supports[2].kind = FRAME_SUPPORT_PINNED;
    b.supports[3].kind = FRAME_SUPPORT_FIXED;
    beam_point(&b, 1, 30, 800);
    beam_point(&b, 2, 30, -200);
    beam_couple(&b, 2, 60, 1500);
    beam_couple(&b, 3, 40, -2500);
    frame_beam_load *load = beam_load(&b, FRAME_LOAD_SNOW, 3);
    load->plf = 0, load->to_plf = 150, load->at_in = 20;
    beam_run(&b);
    frame_text *svg = svg_of(&b);
    shows(svg, "800 lb dead");
    shows(svg, "200 lb dead");
    shows(svg, "1,500 lb-in clockwise dead");
    shows(svg, "2,500 lb-in");
    shows(svg, "150 plf snow");
    frame_text_free(svg);
    beam_end(&b);
}
END_TEST

START_TEST(no_drawing_of_many_spans) {
    static beam b;
    frame_drawing *drawing = NULL;
    beam_begin(&b, 25, 100);
    b.in.dead_plf = 12;
    beam_run(&b);
    ck_assert_int_eq(frame_beam_solve_drawing(b.answer, &drawing), FRAME_TOO_LARGE);
    ck_assert_ptr_null(drawing);
    ck_assert_int_eq(frame_beam_solve_drawing(NULL, &drawing), FRAME_REQUIRED);
    beam_end(&b);
    beam_begin(&b, 24, 100);
    b.in.dead_plf = 12;
    beam_run(&b);
    frame_text_free(svg_of(&b));
    beam_end(&b);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("drawings of beams");
    TCase *tests = tcase_create("beam_solve");
    tcase_set_timeout(tests, 60);
    tcase_add_test(tests, extremes_are_written);
    tcase_add_test(tests, all_kinds_are_drawn);
    tcase_add_test(tests, no_drawing_of_many_spans);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_ENV);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
