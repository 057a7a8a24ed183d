/* Cutting plans: every plan is verified piece by piece, independently of how it was found. */
#include <check.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include <frame/frame.h>

enum { MOST = 40 };

typedef struct job {
    frame_stock_piece pieces[MOST];
    frame_stock_length stock[MOST];
    frame_stock_plan_in in;
} job;

static void begin(job *made) {
    memset(made, 0, sizeof *made);
    frame_stock_plan_in_init(&made->in);
    made->in.pieces = made->pieces;
    made->in.stock = made->stock;
}

static void want(job *made, double length, int32_t count) {
    frame_stock_piece *piece = &made->pieces[made->in.piece_count++];
    frame_stock_piece_init(piece);
    piece->length_in = length;
    piece->count = count;
}

static void have(job *made, double length, double price, int32_t available) {
    frame_stock_length *stock = &made->stock[made->in.stock_count++];
    frame_stock_length_init(stock);
    stock->length_in = length;
    stock->price = price;
    stock->available = available;
}

/* Lengths, kerfs, counts, availability, money: all anew from the plan's lists. */
static void verify(const job *made, const frame_stock_plan *plan) {
    int32_t cut[MOST] = {0}, used[MOST] = {0};
    double cost = 0;
    frame_stock_plan_out out;
    ck_assert_int_eq(frame_stock_plan_result(plan, &out), FRAME_OK);
    const double kerf = made->in.kerf_in == FRAME_NOT_GIVEN ? 0.125 : made->in.kerf_in;
    const double trim = made->in.end_trim_in == FRAME_NOT_GIVEN ? 0 : made->in.end_trim_in;
    uint32_t next = 0;
    for (size_t b = 0; b < frame_stock_plan_board_count(plan); b++) {
        frame_stock_plan_board board;
        ck_assert_int_eq(frame_stock_plan_board_at(plan, b, &board), FRAME_OK);
        ck_assert_double_eq(board.length_in, made->stock[board.stock].length_in);
        ck_assert_uint_eq(board.piece_first, next);
        ck_assert_uint_gt(board.piece_count, 0);
        next += board.piece_count;
        used[board.stock]++;
        cost += made->stock[board.stock].price;
        double at = trim;
        for (uint32_t p = 0; p < board.piece_count; p++) {
            frame_stock_plan_piece piece;
            ck_assert_int_eq(frame_stock_plan_piece_at(plan, board.piece_first + p, &piece), FRAME_OK);
            ck_assert_double_eq_tol(piece.from_in, at, 1e-9);
            ck_assert_double_eq_tol(piece.to_in - piece.from_in, made->pieces[piece.piece].length_in, 1e-9);
            ck_assert_double_le(piece.to_in, board.length_in + 1e-6);
            ck_assert_int_eq(piece.board, (int)b);
            cut[piece.piece]++;
            at = piece.to_in + kerf;
        }
    }
    for (size_t i = 0; i < made->in.piece_count; i++)
        ck_assert_int_eq(cut[i], made->pieces[i].count == FRAME_NOT_GIVEN_INT ? 1 : made->pieces[i].count);
    for (size_t s = 0; s < made->in.stock_count; s++)
        if (made->stock[s].available != FRAME_NOT_GIVEN_INT) ck_assert_int_le(used[s], made->stock[s].available);
    ck_assert_double_eq_tol(out.cost, cost, 1e-9);
    ck_assert_double_le(out.bound, out.cost + 1e-9);
    if (out.first_fit_cost != FRAME_NOT_GIVEN) ck_assert_double_le(out.cost, out.first_fit_cost + 1e-9);
    if (out.optimal) ck_assert_double_ge(out.bound, out.cost - 1e-9);
}

START_TEST(a_shed_roof) {
    job made;
    frame_stock_plan *plan;
    frame_stock_plan_out out;
    begin(&made);
    want(&made, 95, 14);
    want(&made, 22.5, 26);
    have(&made, 96, 7.10, FRAME_NOT_GIVEN_INT);
    have(&made, 144, 10.90, FRAME_NOT_GIVEN_INT);
    have(&made, 192, 15.40, 10);
    ck_assert_int_eq(frame_stock_plan_solve(&made.in, &plan, NULL), FRAME_OK);
    verify(&made, plan);
    ck_assert_int_eq(frame_stock_plan_result(plan, &out), FRAME_OK);
    ck_assert_int_eq(out.pieces_cut, 40);
    frame_stock_plan_free(plan);
}
END_TEST

/* Eight 12 in blocks fill a 96 in board exactly when the saw takes nothing: provably best. */
START_TEST(exactly_full) {
    job made;
    frame_stock_plan *plan;
    frame_stock_plan_out out;
    begin(&made);
    want(&made, 12, 16);
    have(&made, 96, 5, FRAME_NOT_GIVEN_INT);
    made.in.kerf_in = 0;
    ck_assert_int_eq(frame_stock_plan_solve(&made.in, &plan, NULL), FRAME_OK);
    verify(&made, plan);
    frame_stock_plan_result(plan, &out);
    ck_assert_int_eq(out.boards_used, 2);
    ck_assert_int_eq(out.optimal, 1);
    ck_assert_double_eq_tol(out.waste_share, 0, 1e-12);
    frame_stock_plan_free(plan);
}
END_TEST

START_TEST(random_jobs) {
    srand(7);
    for (int n = 0; n < 400; n++) {
        job made;
        frame_stock_plan *plan;
        begin(&made);
        const int kinds = 1 + rand() % 12, stocks = 1 + rand() % 5;
        for (int i = 0; i < kinds; i++) want(&made, 4 + rand() % 1400 / 16.0, 1 + rand() % 15);
        for (int s = 0; s < stocks; s++)
            have(&made, 96 + 24 * (rand() % 7), 5 + rand() % 2000 / 100.0, s ? rand() % 20 : FRAME_NOT_GIVEN_INT);
        if (n % 3 == 0) made.in.end_trim_in = 0.5;
        ck_assert_msg(frame_stock_plan_solve(&made.in, &plan, NULL) == FRAME_OK, "%s", frame_error_text());
        verify(&made, plan);
        frame_stock_plan_free(plan);
    }
}
END_TEST

START_TEST(what_cannot_be_cut_is_named) {
    job made;
    frame_stock_plan *plan = NULL;
    begin(&made);
    want(&made, 40, 2);
    want(&made, 200, 1);
    have(&made, 192, 15, FRAME_NOT_GIVEN_INT);
    ck_assert_int_eq(frame_stock_plan_solve(&made.in, &plan, NULL), FRAME_IMPOSSIBLE);
    ck_assert_str_eq(frame_error_field(), "pieces[1].length_in");
    made.pieces[1].length_in = 100;
    made.stock[0].available = 1;
    made.pieces[1].count = 5;
    ck_assert_int_eq(frame_stock_plan_solve(&made.in, &plan, NULL), FRAME_IMPOSSIBLE);
    ck_assert_str_eq(frame_error_field(), "stock");
    made.stock[0].price = -1;
    ck_assert_int_eq(frame_stock_plan_solve(&made.in, &plan, NULL), FRAME_OUT_OF_RANGE);
    ck_assert_str_eq(frame_error_field(), "stock[0].price");
    made.in.stock_count = 0;
    ck_assert_int_eq(frame_stock_plan_solve(&made.in, &plan, NULL), FRAME_REQUIRED);
    ck_assert_ptr_null(plan);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("stock_plan");
    TCase *tests = tcase_create("all");
    tcase_add_test(tests, a_shed_roof);
    tcase_add_test(tests, exactly_full);
    tcase_add_test(tests, random_jobs);
    tcase_add_test(tests, what_cannot_be_cut_is_named);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
