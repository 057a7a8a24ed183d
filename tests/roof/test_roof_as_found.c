/* Roofs as found: nothing changes where nothing moved; what a longer or wider building changes is known. */
#include "plans.h"

static void rectangle(plan *p, double length, double width) {
    p->corner_count = p->hole_count = 0;
    plan_add(p, 0, 0), plan_add(p, length, 0), plan_add(p, length, width), plan_add(p, 0, width);
    plan_finish(p, 0.5);
}

static frame_roof_as_found_in in;

static frame_roof_as_found_in *begin(const plan *planned, const plan *found) {
    frame_roof_as_found_in_init(&in);
    in.corners = planned->corners, in.corner_count = planned->corner_count;
    in.found = found->corners, in.found_count = found->corner_count;
    in.slopes = planned->slopes, in.slope_count = 1;
    in.kinds = planned->kinds, in.kind_count = planned->corner_count;
    in.rafter_size = FRAME_SIZE(2, 8);
    in.overhang_in = 12;
    return &in;
}

static frame_roof_as_found *answer_of(frame_roof_as_found_out *out) {
    frame_roof_as_found *answer;
    ck_assert_msg(frame_roof_as_found_solve(&in, &answer, NULL) == FRAME_OK, "%s", frame_error_text());
    ck_assert_int_eq(frame_roof_as_found_result(answer, out), FRAME_OK);
    return answer;
}

static frame_roof_as_found *solve(const plan *planned, const plan *found, frame_roof_as_found_out *out) {
    begin(planned, found);
    return answer_of(out);
}

START_TEST(nothing_moved) {
    static plan planned, found;
    frame_roof_as_found_out out;
    rectangle(&planned, 360, 220);
    rectangle(&found, 360, 220);
    frame_roof_as_found *answer = solve(&planned, &found, &out);
    ck_assert_int_eq(out.changed, 0);
    ck_assert_int_eq(out.added, 0);
    ck_assert_int_eq(out.gone, 0);
    ck_assert_double_eq_tol(out.largest_in, 0, 1e-12);
    frame_roof_as_found_free(answer);
}
END_TEST

/* A gable building found an inch wider: every rafter half an inch of run longer, the ridge a quarter higher. */
START_TEST(wider) {
    static plan planned, found;
    frame_roof_as_found_out out;
    rectangle(&planned, 360, 220);
    planned.kinds[1] = planned.kinds[3] = FRAME_ROOF_GABLE;
    rectangle(&found, 360, 221);
    frame_roof_as_found *answer = solve(&planned, &found, &out);
    ck_assert_double_eq_tol(out.ridge_change_in, 0.25, 1e-9);
    ck_assert_double_eq_tol(out.moved_in, 1, 1e-12);
    ck_assert_int_eq(out.added, 0);
    ck_assert_int_eq(out.gone, 0);
    size_t rafters = 0;
    for (size_t i = 0; i < frame_roof_as_found_piece_count(answer); i++) {
        frame_roof_as_found_piece piece;
        frame_roof_as_found_piece_at(answer, i, &piece);
        if (piece.kind == FRAME_MEMBER_RIDGE) ck_assert_int_eq(piece.became, FRAME_AS_FOUND_SAME);
        if (piece.kind != FRAME_MEMBER_COMMON && piece.kind != FRAME_MEMBER_END_RAFTER) continue;
        ck_assert_int_eq(piece.became, FRAME_AS_FOUND_CHANGED);
        ck_assert_double_eq_tol(piece.difference_in, 0.5 * sqrt(1.25), 1e-9);
        rafters++;
    }
    ck_assert_uint_gt(rafters, 40);
    frame_roof_as_found_free(answer);
}
END_TEST

/* A corner out of square by half an inch: hips and jacks of that corner change, and the roof still closes. */
START_TEST(out_of_square) {
    static plan planned, found;
    frame_roof_as_found_out out;
    rectangle(&planned, 360, 220);
    rectangle(&found, 360, 220);
    found.corners[2].x_in += 0.5;
    frame_roof_as_found *answer = solve(&planned, &found, &out);
    ck_assert_int_gt(out.changed, 4);
    ck_assert_double_lt(out.largest_in, 1.5);
    ck_assert_uint_eq(out.cautions >> FRAME_ROOF_AS_FOUND_CAUTION_FAULTS & 1, 0);
    frame_roof_as_found_free(answer);
}
END_TEST

/* One wall of a gable building found half an inch high: the ridge moves away from it by half of that over the slope and
 * rises by a quarter; rafters of that side lose as much run as the others gain, and both reach one fascia. */
START_TEST(a_plate_found_high) {
    static plan planned, found;
    frame_roof_as_found_out out;
    const double high = 0.5, slope = 0.5;
    rectangle(&planned, 360, 220);
    planned.kinds[1] = planned.kinds[3] = FRAME_ROOF_GABLE;
    found = planned;
    found.plates[2] = high;
    begin(&planned, &found);
    in.found_plates_in = found.plates, in.found_plate_count = 4;
    frame_roof_as_found *answer = answer_of(&out);
    ck_assert_double_eq_tol(out.plate_moved_in, high, 1e-12);
    ck_assert_double_eq_tol(out.ridge_change_in, high / 2, 1e-9);
    ck_assert_int_eq(out.added, 0);
    ck_assert_int_eq(out.gone, 0);
    ck_assert_uint_eq(out.cautions >> FRAME_ROOF_AS_FOUND_CAUTION_FAULTS & 1, 0);
    size_t rafters = 0;
    for (size_t i = 0; i < frame_roof_as_found_piece_count(answer); i++) {
        frame_roof_as_found_piece piece;
        frame_roof_as_found_piece_at(answer, i, &piece);
        if (piece.kind != FRAME_MEMBER_COMMON && piece.kind != FRAME_MEMBER_END_RAFTER) continue;
        /* From the fascia to the ridge both rise by as much more. */
        ck_assert_double_eq_tol(piece.difference_in, high / 2 / slope * sqrt(1 + slope * slope), 1e-9);
        ck_assert_double_eq_tol(piece.cut_length_in, piece.found_length_in, 1e-12);
        ck_assert_double_eq(piece.second_length_in, FRAME_NOT_GIVEN);
        rafters++;
    }
    ck_assert_uint_gt(rafters, 40);
    frame_roof_as_found_free(answer);
}
END_TEST

/* Plates of a hip roof found out of level: hips and jacks come out for them, and the roof closes. */
START_TEST(plates_out_of_level) {
    static plan planned, found;
    frame_roof_as_found_out out;
    rectangle(&planned, 360, 220);
    found = planned;
    found.plates[1] = 0.25, found.plates[2] = 0.375, found.corners[2].x_in += 0.25;
    begin(&planned, &found);
    in.found_plates_in = found.plates, in.found_plate_count = 4;
    frame_roof_as_found *answer = answer_of(&out);
    size_t hips = 0, jacks = 0;
    for (size_t i = 0; i < frame_roof_as_found_piece_count(answer); i++) {
        frame_roof_as_found_piece piece;
        frame_roof_as_found_piece_at(answer, i, &piece);
        if (piece.became != FRAME_AS_FOUND_CHANGED || piece.kind == FRAME_MEMBER_SUBFASCIA) continue;
        hips += piece.kind == FRAME_MEMBER_HIP, jacks += piece.kind == FRAME_MEMBER_HIP_JACK;
        ck_assert_double_lt(fabs(piece.difference_in), 3);
    }
    ck_assert_uint_eq(hips, 4);
    ck_assert_uint_gt(jacks, 20);
    ck_assert_uint_eq(out.cautions >> FRAME_ROOF_AS_FOUND_CAUTION_FAULTS & 1, 0);
    frame_roof_as_found_free(answer);
}
END_TEST

/* Two readings that disagree: the longer of each pair is cut, never one between; by too much they are refused. */
START_TEST(two_readings) {
    static plan planned, found;
    frame_roof_as_found_out out;
    static double second[4];
    rectangle(&planned, 360, 220);
    planned.kinds[1] = planned.kinds[3] = FRAME_ROOF_GABLE;
    found = planned;
    found.plates[2] = 0.25, second[2] = 0.5;
    begin(&planned, &found);
    in.found_plates_in = found.plates, in.found_plate_count = 4;
    in.second_plates_in = second, in.second_plate_count = 4;
    frame_roof_as_found *answer = answer_of(&out);
    ck_assert_double_eq_tol(out.readings_in, 0.25, 1e-12);
    ck_assert(FRAME_HAS(out.cautions, FRAME_ROOF_AS_FOUND_CAUTION_READINGS));
    for (size_t i = 0; i < frame_roof_as_found_piece_count(answer); i++) {
        frame_roof_as_found_piece piece;
        frame_roof_as_found_piece_at(answer, i, &piece);
        ck_assert_double_eq_tol(piece.cut_length_in, fmax(piece.found_length_in, piece.second_length_in), 1e-12);
        if (piece.kind == FRAME_MEMBER_COMMON) {
            ck_assert_double_eq_tol(piece.difference_in, 0.25 / 0.5 * sqrt(1.25), 1e-9);
            ck_assert_double_lt(piece.found_length_in, piece.cut_length_in - 0.2);
        }
    }
    frame_roof_as_found_free(answer);
    second[2] = 0.76;
    answer = NULL;
    ck_assert_int_eq(frame_roof_as_found_solve(&in, &answer, NULL), FRAME_REFUSED);
    ck_assert_str_eq(frame_error_field(), "second_plates_in[2]");
    in.second_plate_count = 3;
    ck_assert_int_eq(frame_roof_as_found_solve(&in, &answer, NULL), FRAME_CONFLICT);
    ck_assert_str_eq(frame_error_field(), "second_plates_in");
    in.second_plate_count = 0, in.overhang_in = 0;
    found.plates[0] = 1, found.plates[2] = 0; /* the fascia at the first wall's height lies over the third's roof */
    ck_assert_int_eq(frame_roof_as_found_solve(&in, &answer, NULL), FRAME_IMPOSSIBLE);
    ck_assert_str_eq(frame_error_field(), "found_plates_in[2]");
    ck_assert_ptr_null(answer);
}
END_TEST

START_TEST(what_is_refused) {
    static plan planned;
    frame_roof_as_found *answer;
    rectangle(&planned, 360, 220);
    frame_roof_as_found_in_init(&in);
    in.corners = planned.corners, in.corner_count = 4;
    in.found = planned.corners, in.found_count = 3;
    in.slopes = planned.slopes, in.slope_count = 1;
    in.rafter_size = FRAME_SIZE(2, 8);
    ck_assert_int_eq(frame_roof_as_found_solve(&in, &answer, NULL), FRAME_CONFLICT);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("roof_as_found");
    TCase *tests = tcase_create("roof_as_found");
    tcase_add_test(tests, nothing_moved);
    tcase_add_test(tests, wider);
    tcase_add_test(tests, out_of_square);
    tcase_add_test(tests, a_plate_found_high);
    tcase_add_test(tests, plates_out_of_level);
    tcase_add_test(tests, two_readings);
    tcase_add_test(tests, what_is_refused);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed ? EXIT_FAILURE : EXIT_SUCCESS;
}
