/* What a stick's drawing says. */
#include <frame/drawing.h>

#include "make_stick.h"

/* A rafter at 6 in 12: plumb cuts at the top edge's 0 and 96, depth 8, birdsmouth 2 deep. Its running distances are
 * those of test_stick_marks. */
static frame_stick *rafter(frame_stick_end measure_from, double turn) {
    frame_stick_in in = stick_in(1.5, 8, 96);
    in.name = "jack 3 left";
    in.section = "2x8 dressed to 8";
    in.count = 12;
    in.axis_at = FRAME_STICK_AXIS_TOP;
    in.measure_from = measure_from;
    frame_stick *stick = stick_of(&in);
    const double a = atan(0.5);
    cut(stick, FRAME_STICK_PLUMB_CUT, 0, 0, 0, -cos(a), 0, sin(a));
    cut(stick, FRAME_STICK_CHEEK_CUT, 96, 0, 0, cos(a), tan(turn), -sin(a));
    birdsmouth(stick, 20, -6, a);
    return stick;
}

static frame_text *svg_of(const frame_stick *stick) {
    frame_drawing *drawing;
    frame_text *svg;
    ck_assert_msg(frame_stick_drawing(stick, &drawing) == FRAME_OK, "%s", frame_error_text());
    ck_assert_int_eq(frame_text_new(&svg), FRAME_OK);
    ck_assert_int_eq(frame_drawing_svg(drawing, svg), FRAME_OK);
    frame_drawing_free(drawing);
    return svg;
}

static int times(const char *text, const char *words) {
    int count = 0;
    for (const char *at = strstr(text, words); at; at = strstr(at + 1, words)) count++;
    return count;
}

static void check_says(const frame_text *svg, const char *words) {
    ck_assert_msg(times(frame_text_chars(svg), words) > 0, "no \"%s\" in:\n%s", words, frame_text_chars(svg));
}

START_TEST(one_face_where_cuts_go_straight_through) {
    frame_stick *stick = rafter(FRAME_STICK_START, 0);
    frame_text *svg = svg_of(stick);
    check_says(svg, "jack 3 left, 2x8 dressed to 8, 12 pieces");
    check_says(svg, "both wide faces alike");
    static const char *const distances[] = {">0&quot;<",        ">4&quot;<",        ">1&#39; 11&quot;<",
                                            ">2&#39; 0&quot;<", ">2&#39; 4&quot;<", ">8&#39; 0&quot;<",
                                            ">8&#39; 4&quot;<"};
    for (size_t i = 0; i < sizeof distances / sizeof *distances; i++) check_says(svg, distances[i]);
    check_says(svg, "mitre 26.6\xc2\xb0");
    check_says(svg, "mitre 63.4\xc2\xb0");
    ck_assert_int_eq(times(frame_text_chars(svg), "bevel"), 0);
    ck_assert_int_eq(times(frame_text_chars(svg), "rolled over"), 0);
    frame_text_free(svg);
    frame_stick_free(stick);
}
END_TEST

START_TEST(all_faces_where_a_cut_is_compound) {
    for (int from = FRAME_STICK_START; from <= FRAME_STICK_END; from++) {
        frame_stick *stick = rafter(from, 45 * degree);
        frame_text *svg = svg_of(stick);
        check_says(svg, from == FRAME_STICK_START ? "left face, rolled over" : "right face, rolled over");
        check_says(svg, "top face");
        check_says(svg, "bevel 45\xc2\xb0 to the start");
        check_says(svg, "41.8\xc2\xb0 with the edge");
        frame_text_free(svg);
        frame_stick_free(stick);
    }
}
END_TEST

START_TEST(a_section_without_a_name) {
    const frame_stick_in in = stick_in(1.5, 7.25, 22.53);
    frame_stick *stick = stick_of(&in);
    frame_text *svg = svg_of(stick);
    check_says(svg, "1-1/2&quot; x 7-1/4&quot;, from 1&#39; 10-9/16&quot; of stock");
    check_says(svg, "1&#39; 10-1/2&quot;<");
    frame_text_free(svg);
    frame_stick_free(stick);
}
END_TEST

START_TEST(nothing_gives_no_drawing) {
    frame_drawing *drawing = (void *)1;
    ck_assert_int_ne(frame_stick_drawing(NULL, &drawing), FRAME_OK);
    ck_assert_ptr_eq(drawing, (void *)1);
}
END_TEST

static void add(TCase *tests) {
    tcase_add_test(tests, one_face_where_cuts_go_straight_through);
    tcase_add_test(tests, all_faces_where_a_cut_is_compound);
    tcase_add_test(tests, a_section_without_a_name);
    tcase_add_test(tests, nothing_gives_no_drawing);
}

int main(void) {
    return run("stick drawing", add);
}
