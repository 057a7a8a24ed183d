/* Sistered joists: like pieces share evenly, unlike ones by stiffness, all sag alike; refusals. */
#include "lumber_names.h"

static void set_piece(frame_sister_piece *p, frame_size size, const char *kind, const char *named) {
    frame_sister_piece_init(p);
    p->size = size, p->species = species(kind), p->grade = grade(named);
}

static frame_sistered_check_in joist_of(const frame_sister_piece *pieces, size_t count) {
    frame_sistered_check_in in;
    frame_sistered_check_in_init(&in);
    in.pieces = pieces, in.piece_count = count;
    in.span_in = 144, in.dead_plf = 15, in.live_plf = 60;
    return in;
}

static frame_sistered_check *run(const frame_sistered_check_in *in, frame_sistered_check_out *out) {
    frame_sistered_check *answer;
    frame_working *working;
    ck_assert(!frame_working_new(&working));
    ck_assert_msg(!frame_sistered_check_solve(in, &answer, working), "%s", frame_error_text());
    working_is_sound(working);
    frame_working_free(working);
    ck_assert(!frame_sistered_check_result(answer, out));
    return answer;
}

/* Two alike, given as two pieces, are two plies of a beam_check. */
START_TEST(alike) {
    frame_sister_piece pieces[2];
    frame_sistered_check_out out;
    frame_beam_check_in beam;
    frame_beam_check_out found;
    for (int i = 0; i < 2; i++) set_piece(&pieces[i], FRAME_SIZE(2, 8), "DFL", "No.2");
    const frame_sistered_check_in in = joist_of(pieces, 2);
    frame_sistered_check_free(run(&in, &out));
    frame_beam_check_in_init(&beam);
    beam.size = FRAME_SIZE(2, 8), beam.species = species("DFL"), beam.grade = grade("No.2"), beam.plies = 2;
    beam.span_in = 144, beam.dead_plf = 15, beam.live_plf = 60, beam.bearing_in = 1.5;
    beam.compression_edge = FRAME_EDGE_HELD;
    ck_assert(!frame_beam_check(&beam, &found, NULL));
    ck_assert_double_eq_tol(out.ratio, found.ratio, 1e-12);
    ck_assert_double_eq_tol(out.deflection_live_in, found.deflection_live_in, 1e-12);
}
END_TEST

START_TEST(unlike) {
    frame_sister_piece pieces[2];
    frame_sistered_check_out out;
    frame_sistered_check_piece a, b;
    set_piece(&pieces[0], FRAME_SIZE(2, 8), "SPF", "No.2");
    set_piece(&pieces[1], FRAME_SIZE(2, 10), "DFL", "SS");
    const frame_sistered_check_in in = joist_of(pieces, 2);
    frame_sistered_check *answer = run(&in, &out);
    ck_assert(!frame_sistered_check_piece_at(answer, 0, &a) && !frame_sistered_check_piece_at(answer, 1, &b));
    const double stiff_a = 1.4e6 * 1.5 * pow(7.25, 3) / 12, stiff_b = 1.9e6 * 1.5 * pow(9.25, 3) / 12;
    ck_assert_double_eq_tol(a.share, stiff_a / (stiff_a + stiff_b), 1e-12);
    ck_assert_double_eq_tol(a.share + b.share, 1, 1e-12);
    ck_assert_double_eq_tol(a.share_plf + b.share_plf, 75, 1e-9);
    ck_assert_double_eq_tol(a.deflection_ratio, b.deflection_ratio, 1e-9);
    ck_assert_double_eq(out.ratio, fmax(a.ratio, b.ratio));
    frame_sistered_check_free(answer);
}
END_TEST

START_TEST(refusals) {
    frame_sister_piece piece;
    frame_sistered_check *answer = NULL;
    set_piece(&piece, FRAME_SIZE(2, 8), "SPF", "No.2");
    piece.grade = FRAME_NOT_GIVEN_INT;
    const frame_sistered_check_in in = joist_of(&piece, 1);
    ck_assert_int_eq(frame_sistered_check_solve(&in, &answer, NULL), FRAME_REQUIRED);
    ck_assert_str_eq(frame_error_field(), "pieces[0].grade");
}
END_TEST

int main(void) {
    Suite *suite = suite_create("sistered_check");
    TCase *all = tcase_create("all");
    tcase_add_test(all, alike);
    tcase_add_test(all, unlike);
    tcase_add_test(all, refusals);
    suite_add_tcase(suite, all);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_ENV);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
