/* Of plans that cost the same: fewer boards, fewer ways of cutting them, longer leftovers. And pieces with a hand. */
#include "plan_check.h"

static frame_stock_plan_out solved(const job *made, double *longest) {
    frame_stock_plan *plan;
    frame_stock_plan_out out;
    ck_assert_msg(frame_stock_plan_solve(&made->in, &plan, NULL) == FRAME_OK, "%s", frame_error_text());
    verify(made, plan);
    ck_assert_int_eq(frame_stock_plan_result(plan, &out), FRAME_OK);
    if (longest) *longest = 0;
    for (size_t o = 0; longest && o < frame_stock_plan_offcut_count(plan); o++) {
        frame_stock_plan_offcut offcut;
        ck_assert_int_eq(frame_stock_plan_offcut_at(plan, o, &offcut), FRAME_OK);
        *longest = fmax(*longest, offcut.length_in);
    }
    frame_stock_plan_free(plan);
    return out;
}

/* Ten boards each hold one piece of 60 in and one of 30 in: one way of cutting does for all. */
START_TEST(one_way_does_for_all) {
    job made;
    begin(&made);
    want(&made, 60, 10);
    want(&made, 30, 10);
    have(&made, 96, 8, FRAME_NOT_GIVEN_INT);
    const frame_stock_plan_out out = solved(&made, NULL);
    ck_assert_int_eq(out.boards_used, 10);
    ck_assert_int_eq(out.patterns, 1);
    ck_assert_int_eq(out.fewest_boards, 1);
}
END_TEST

/* Three boards are needed for 3 x 50, 2 x 20 and 2 x 22. Two ways of cutting will do, and of those that do, the one in
 * which two boards take all the small ones leaves most in one: 96 - 50 - 0.125. */
START_TEST(what_is_left_is_left_long) {
    job made;
    double longest;
    begin(&made);
    want(&made, 50, 3);
    want(&made, 20, 2);
    want(&made, 22, 2);
    have(&made, 96, 8, FRAME_NOT_GIVEN_INT);
    const frame_stock_plan_out out = solved(&made, &longest);
    ck_assert_int_eq(out.boards_used, 3);
    ck_assert_double_eq_tol(longest, 45.875, 1e-9);
}
END_TEST

/* Of two offcuts on hand the shorter is cut when it will do, whichever stands first: the longer stays whole. */
START_TEST(the_long_offcut_is_spared) {
    for (int n = 0; n < 2; n++) {
        job made;
        double longest;
        begin(&made);
        want(&made, 36, 1);
        have(&made, n ? 40 : 90, 0, 1);
        have(&made, n ? 90 : 40, 0, 1);
        have(&made, 96, 8, FRAME_NOT_GIVEN_INT);
        const frame_stock_plan_out out = solved(&made, &longest);
        ck_assert_double_eq(out.cost, 0);
        ck_assert_double_eq(out.stock_length_in, 40);
        ck_assert_double_eq_tol(longest, 3.875, 1e-9);
    }
}
END_TEST

/* -- all plans there are of one stock length: how few patterns and how long leftovers can be -- */

typedef struct all_ways {
    double lengths[8], kerf, stock;
    int count, board_of[8];
    int fewest_boards, fewest_patterns;
} all_ways;

static int patterns_of(const all_ways *of, int boards) {
    int distinct = 0;
    for (int b = 0; b < boards; b++) {
        int seen = 0;
        for (int c = 0; c < b && !seen; c++) {
            double difference[8] = {0};
            int same = 1;
            for (int i = 0; i < of->count; i++) {
                int first = 0; /* the first piece as long stands for its length */
                while (of->lengths[first] != of->lengths[i]) first++;
                difference[first] += (of->board_of[i] == b) - (of->board_of[i] == c);
            }
            for (int i = 0; i < of->count; i++) same &= difference[i] == 0;
            seen = same;
        }
        distinct += !seen;
    }
    return distinct;
}

static void try_all(all_ways *of, int piece, int boards, double *filled) {
    if (boards > of->fewest_boards) return;
    if (piece == of->count) {
        const int patterns = patterns_of(of, boards);
        if (boards < of->fewest_boards || patterns < of->fewest_patterns) of->fewest_patterns = patterns;
        of->fewest_boards = boards;
        return;
    }
    for (int b = 0; b <= boards && b < of->count; b++) {
        const double before = b < boards ? filled[b] : 0;
        const double after = before + of->lengths[piece] + (before > 0 ? of->kerf : 0);
        if (after > of->stock) continue;
        filled[b] = after;
        of->board_of[piece] = b;
        try_all(of, piece + 1, b < boards ? boards : boards + 1, filled);
        filled[b] = before;
    }
}

/* Against all plans of small jobs: as few boards always; as few patterns in nearly all. */
START_TEST(beside_all_plans_of_few_pieces) {
    int jobs = 0, equal = 0;
    srand(5);
    for (int n = 0; n < 150; n++) {
        job made;
        double filled[9];
        all_ways all = {.kerf = 0.125, .stock = 96, .fewest_boards = 99, .fewest_patterns = 99};
        begin(&made);
        for (int i = 0; i < 4; i++) {
            const double length = 16 + rand() % 320 / 8.0;
            want(&made, length, 2);
            for (int c = 0; c < 2; c++) all.lengths[all.count++] = length;
        }
        have(&made, 96, 8, FRAME_NOT_GIVEN_INT);
        try_all(&all, 0, 0, filled);
        const frame_stock_plan_out out = solved(&made, NULL);
        ck_assert_int_eq(out.boards_used, all.fewest_boards);
        ck_assert_int_ge(out.patterns, all.fewest_patterns);
        jobs++, equal += out.patterns == all.fewest_patterns;
    }
    ck_assert_msg(equal >= jobs * 9 / 10, "as few patterns as can be in %d of %d", equal, jobs);
}
END_TEST

/* -- hands -- */

static frame_stock_piece *jack(job *made, int32_t count, frame_stock_hand hand) {
    frame_stock_piece *piece = want(made, 50, count);
    piece->right_cut_in = 5.5;
    piece->cut_across_in = 5.5;
    piece->hand = hand;
    return piece;
}

/* Two jacks of one hand meet at their slanted cuts: one of them turned end for end. A left and a right cannot: the cuts
 * cross, whichever way they are turned. Without a hand one is rolled over. */
START_TEST(hands_that_match_share) {
    const double needed = 100 - 5.5 + 0.125 * sqrt(2);
    static const frame_stock_hand hands[4][2] = {{FRAME_STOCK_HAND_LEFT, FRAME_STOCK_HAND_LEFT},
                                                 {FRAME_STOCK_HAND_RIGHT, FRAME_STOCK_HAND_RIGHT},
                                                 {FRAME_STOCK_HAND_LEFT, FRAME_STOCK_HAND_RIGHT},
                                                 {FRAME_STOCK_HAND_EITHER, FRAME_STOCK_HAND_RIGHT}};
    for (int n = 0; n < 4; n++) {
        job made;
        begin(&made);
        jack(&made, 1, hands[n][0]);
        jack(&made, 1, hands[n][1]);
        have(&made, needed, 8, FRAME_NOT_GIVEN_INT);
        made.in.share_cuts = 1;
        ck_assert_int_eq(solved(&made, NULL).boards_used, n == 2 ? 2 : 1);
        made.pieces[0].crowned = 1; /* it is not turned or rolled; the other may be turned */
        ck_assert_int_eq(solved(&made, NULL).boards_used, n >= 2 ? 2 : 1);
        made.pieces[1].crowned = 1; /* neither is turned: both slant at the same end */
        ck_assert_int_eq(solved(&made, NULL).boards_used, 2);
    }
}
END_TEST

/* Six jacks of each hand, two to a board of 96 in when they share: lefts go with lefts, rights with rights, and that is
 * proven to be all there is to save. */
START_TEST(like_goes_with_like) {
    job made;
    begin(&made);
    jack(&made, 6, FRAME_STOCK_HAND_LEFT);
    jack(&made, 6, FRAME_STOCK_HAND_RIGHT);
    have(&made, 96, 8, FRAME_NOT_GIVEN_INT);
    have(&made, 192, 17, FRAME_NOT_GIVEN_INT);
    made.in.share_cuts = 1;
    const frame_stock_plan_out out = solved(&made, NULL);
    ck_assert_double_eq(out.cost, 48);
    ck_assert_int_eq(out.shared_cuts, 6);
    ck_assert_int_eq(out.optimal, 1);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("stock_ties");
    TCase *tests = tcase_create("all");
    tcase_set_timeout(tests, 120);
    tcase_add_test(tests, one_way_does_for_all);
    tcase_add_test(tests, what_is_left_is_left_long);
    tcase_add_test(tests, the_long_offcut_is_spared);
    tcase_add_test(tests, beside_all_plans_of_few_pieces);
    tcase_add_test(tests, hands_that_match_share);
    tcase_add_test(tests, like_goes_with_like);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
