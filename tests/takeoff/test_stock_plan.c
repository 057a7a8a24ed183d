/* Cutting plans: every plan is verified piece by piece, independently of how it was found; plans of few pieces against
 * all plans there are. */
#include "plan_check.h"

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
    for (int n = 0; n < 100; n++) {
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

/* -- all plans there are: the least cost of every set of pieces, from those of smaller sets -- */

typedef struct all_plans {
    double lengths[10], cost[1 << 10][4]; /* by set, and by how many of the last stock are used */
    int count, most_of_last;
} all_plans;

static double room_for(const job *made, const all_plans *of, int set) {
    double length = given(made->in.end_trim_in, 0);
    int pieces = 0;
    for (int i = 0; i < of->count; i++)
        if (set >> i & 1) length += of->lengths[i] + (pieces++ ? given(made->in.kerf_in, 0.125) : 0);
    return length;
}

static double least_of_all(const job *made, all_plans *of) {
    const int last = (int)made->in.stock_count - 1;
    of->count = 0;
    for (size_t i = 0; i < made->in.piece_count; i++)
        for (int n = 0; n < made->pieces[i].count; n++) of->lengths[of->count++] = made->pieces[i].length_in;
    for (int set = 0; set < 1 << of->count; set++)
        for (int used = 0; used <= of->most_of_last; used++) of->cost[set][used] = set ? INFINITY : 0;
    for (int set = 1; set < 1 << of->count; set++)
        for (int part = set; part; part = (part - 1) & set) {
            const double room = room_for(made, of, part);
            for (int s = 0; s <= last; s++) {
                if (room > made->stock[s].length_in + 1e-9) continue;
                for (int used = 0; used + (s == last) <= of->most_of_last; used++)
                    of->cost[set][used + (s == last)] =
                        fmin(of->cost[set][used + (s == last)], of->cost[set ^ part][used] + price_of(&made->stock[s]));
            }
        }
    double least = INFINITY;
    for (int used = 0; used <= of->most_of_last; used++) least = fmin(least, of->cost[(1 << of->count) - 1][used]);
    return least;
}

START_TEST(no_plan_there_is_costs_less) {
    static all_plans all;
    srand(11);
    for (int n = 0; n < 120; n++) {
        job made;
        frame_stock_plan *plan;
        frame_stock_plan_out out;
        begin(&made);
        int pieces = 3 + rand() % 6;
        while (pieces > 0) {
            const int count = 1 + rand() % (pieces < 3 ? pieces : 3);
            want(&made, 10 + rand() % 1200 / 16.0, count);
            pieces -= count;
        }
        have(&made, 96, 5 + rand() % 300 / 100.0, FRAME_NOT_GIVEN_INT);
        have(&made, 144, 8 + rand() % 300 / 100.0, FRAME_NOT_GIVEN_INT)->price_by =
            n % 4 == 3 ? FRAME_PRICE_BY_METRE : FRAME_PRICE_BY_BOARD;
        all.most_of_last = rand() % 3;
        have(&made, 90 + rand() % 100, n % 3 ? rand() % 500 / 100.0 : 0, all.most_of_last);
        ck_assert_msg(frame_stock_plan_solve(&made.in, &plan, NULL) == FRAME_OK, "%s", frame_error_text());
        verify(&made, plan);
        frame_stock_plan_result(plan, &out);
        ck_assert_int_eq(out.optimal, 1);
        ck_assert_double_eq_tol(out.cost, least_of_all(&made, &all), 1e-5);
        frame_stock_plan_free(plan);
    }
}
END_TEST

/* -- what else a job may be -- */

START_TEST(several_sections_at_once) {
    job made;
    frame_stock_plan *plan;
    frame_stock_plan_out out;
    begin(&made);
    want(&made, 80, 7)->size = FRAME_SIZE(2, 6);
    want(&made, 70, 5)->size = FRAME_SIZE(2, 10);
    frame_stock_length *stock = have(&made, 192, 1, FRAME_NOT_GIVEN_INT);
    stock->size = FRAME_SIZE(2, 6), stock->price_by = FRAME_PRICE_BY_BOARD_FOOT, stock->weight_plf = 2;
    stock = have(&made, 144, 2, FRAME_NOT_GIVEN_INT);
    stock->size = FRAME_SIZE(2, 10), stock->price_by = FRAME_PRICE_BY_FOOT;
    ck_assert_int_eq(frame_stock_plan_solve(&made.in, &plan, NULL), FRAME_OK);
    verify(&made, plan);
    frame_stock_plan_result(plan, &out);
    ck_assert_double_eq_tol(out.cost, 4 * 16 + 3 * 24, 1e-9); /* 2x6: 16 bf to a board; two pieces to every board */
    ck_assert_double_eq_tol(out.board_feet, 4 * 16 + 3 * 20, 1e-9);
    ck_assert_double_eq_tol(out.weight_lb, 4 * 32, 1e-9);
    ck_assert_int_eq(out.optimal, 1);
    frame_stock_plan_free(plan);
    made.stock[1].size = FRAME_SIZE(2, 8);
    ck_assert_int_eq(frame_stock_plan_solve(&made.in, &plan, NULL), FRAME_IMPOSSIBLE);
    ck_assert_str_eq(frame_error_field(), "pieces[1].length_in");
}
END_TEST

START_TEST(defects_are_cut_around) {
    static const double knots[] = {100, 104, 40, 41};
    job made;
    frame_stock_plan *plan;
    frame_stock_plan_out out;
    begin(&made);
    want(&made, 58, 1);
    want(&made, 39, 1);
    want(&made, 87, 1);
    frame_stock_length *stock = have(&made, 192, 10, FRAME_NOT_GIVEN_INT);
    stock->defects_from_to_in = knots;
    stock->defect_count = 4;
    ck_assert_int_eq(frame_stock_plan_solve(&made.in, &plan, NULL), FRAME_OK);
    verify(&made, plan);
    frame_stock_plan_result(plan, &out);
    ck_assert_int_eq(out.boards_used, 1);
    frame_stock_plan_free(plan);
    made.pieces[0].length_in = 89; /* longer than every stretch between knots */
    ck_assert_int_eq(frame_stock_plan_solve(&made.in, &plan, NULL), FRAME_IMPOSSIBLE);
    ck_assert_str_eq(frame_error_field(), "pieces[0].length_in");
    made.pieces[0].length_in = 50;
    stock->defect_count = 3;
    ck_assert_int_eq(frame_stock_plan_solve(&made.in, &plan, NULL), FRAME_OUT_OF_RANGE);
}
END_TEST

START_TEST(a_kept_offcut_is_worth_something) {
    job made;
    frame_stock_plan *plan;
    frame_stock_plan_out out;
    begin(&made);
    want(&made, 90, 1);
    have(&made, 96, 8, FRAME_NOT_GIVEN_INT);
    have(&made, 192, 14, FRAME_NOT_GIVEN_INT);
    made.in.kept_offcut_in = 24;
    made.in.kept_foot_price = 0.80;
    ck_assert_int_eq(frame_stock_plan_solve(&made.in, &plan, NULL), FRAME_OK);
    verify(&made, plan);
    frame_stock_plan_result(plan, &out);
    ck_assert_double_eq(out.cost, 14); /* 6 more, but 8 ft 5-7/8 in is worth 6.79 */
    ck_assert_double_lt(out.net_cost, 8);
    frame_stock_plan_free(plan);
    made.in.kept_foot_price = 0.50;
    ck_assert_int_eq(frame_stock_plan_solve(&made.in, &plan, NULL), FRAME_OK);
    frame_stock_plan_result(plan, &out);
    ck_assert_double_eq(out.cost, 8);
    frame_stock_plan_free(plan);
}
END_TEST

START_TEST(spliced_over_bearings) {
    static const double bearings[] = {120, 240};
    job made;
    frame_stock_plan *plan;
    frame_stock_plan_out out;
    begin(&made);
    frame_stock_piece *plate = want(&made, 360, 2);
    plate->splices_in = bearings;
    plate->splice_count = 2;
    have(&made, 120, 10, FRAME_NOT_GIVEN_INT);
    have(&made, 240, 19, FRAME_NOT_GIVEN_INT);
    made.in.splice_price = 0.25;
    ck_assert_int_eq(frame_stock_plan_solve(&made.in, &plan, NULL), FRAME_OK);
    verify(&made, plan);
    frame_stock_plan_result(plan, &out);
    ck_assert_double_eq_tol(out.net_cost, 2 * (29 + 0.25), 1e-6);
    ck_assert_int_eq(out.splices, 2);
    ck_assert_int_eq(out.pieces_cut, 2);
    ck_assert(FRAME_HAS(out.cautions, FRAME_STOCK_CAUTION_SPLICED));
    frame_stock_plan_free(plan);
    made.stock[1].length_in = 119;
    made.stock[0].length_in = 110;
    ck_assert_int_eq(frame_stock_plan_solve(&made.in, &plan, NULL), FRAME_IMPOSSIBLE);
    ck_assert_str_eq(frame_error_field(), "pieces[0].splices_in");
}
END_TEST

START_TEST(ripped_from_wider_stock) {
    job made;
    frame_stock_plan *plan;
    frame_stock_plan_out out;
    begin(&made);
    frame_stock_piece *blocks = want(&made, 47, 4);
    blocks->size = FRAME_SIZE(2, 4);
    blocks->may_rip = 1;
    frame_stock_length *stock = have(&made, 96, 9, FRAME_NOT_GIVEN_INT);
    stock->size = FRAME_SIZE(2, 8); /* 7-1/4 in wide: two strips of 3-1/2 in and a rip */
    stock = have(&made, 96, 5, FRAME_NOT_GIVEN_INT);
    stock->size = FRAME_SIZE(2, 4);
    ck_assert_int_eq(frame_stock_plan_solve(&made.in, &plan, NULL), FRAME_OK);
    verify(&made, plan);
    frame_stock_plan_result(plan, &out);
    ck_assert_double_eq(out.cost, 9);
    ck_assert_uint_eq(frame_stock_plan_strip_count(plan), 2);
    ck_assert(FRAME_HAS(out.cautions, FRAME_STOCK_CAUTION_RIPPED));
    frame_stock_plan_free(plan);
    blocks->may_rip = 0;
    ck_assert_int_eq(frame_stock_plan_solve(&made.in, &plan, NULL), FRAME_OK);
    frame_stock_plan_result(plan, &out);
    ck_assert_double_eq(out.cost, 10);
    frame_stock_plan_free(plan);
}
END_TEST

/* What is left of a strip is worth nothing, in the search as in the figures: else the long board would cost less. */
START_TEST(a_strip_left_over_is_worth_nothing) {
    job made;
    frame_stock_plan *plan;
    frame_stock_plan_out out;
    frame_stock_plan_offcut offcut;
    begin(&made);
    frame_stock_piece *block = want(&made, 47, 1);
    block->size = FRAME_SIZE(2, 4);
    block->may_rip = 1;
    have(&made, 96, 8.9, FRAME_NOT_GIVEN_INT)->size = FRAME_SIZE(2, 6);
    have(&made, 192, 9, FRAME_NOT_GIVEN_INT)->size = FRAME_SIZE(2, 6);
    made.in.kept_offcut_in = 24;
    made.in.kept_foot_price = 0.5;
    ck_assert_int_eq(frame_stock_plan_solve(&made.in, &plan, NULL), FRAME_OK);
    verify(&made, plan);
    frame_stock_plan_result(plan, &out);
    ck_assert_int_eq(out.optimal, 1);
    ck_assert_double_eq(out.net_cost, 8.9);
    ck_assert_int_eq(frame_stock_plan_offcut_at(plan, 0, &offcut), FRAME_OK);
    ck_assert_int_eq(offcut.kept, 1);
    ck_assert_double_eq(offcut.price, 0);
    frame_stock_plan_free(plan);
}
END_TEST

/* Of two ways that cost the same, the one with fewer boards. */
START_TEST(ties_go_to_fewer_boards) {
    job made;
    frame_stock_plan *plan;
    frame_stock_plan_out out;
    begin(&made);
    want(&made, 47, 8);
    have(&made, 96, 6, FRAME_NOT_GIVEN_INT);
    have(&made, 192, 12, FRAME_NOT_GIVEN_INT);
    ck_assert_int_eq(frame_stock_plan_solve(&made.in, &plan, NULL), FRAME_OK);
    verify(&made, plan);
    frame_stock_plan_result(plan, &out);
    ck_assert_double_eq(out.cost, 24);
    ck_assert_int_eq(out.boards_used, 2);
    frame_stock_plan_free(plan);
}
END_TEST

START_TEST(simple_ways) {
    job made;
    frame_stock_plan *plan;
    frame_stock_plan_out best, out;
    begin(&made);
    want(&made, 50, 6);
    want(&made, 100, 4);
    have(&made, 120, 8, FRAME_NOT_GIVEN_INT);
    have(&made, 192, 14, FRAME_NOT_GIVEN_INT);
    ck_assert_int_eq(frame_stock_plan_solve(&made.in, &plan, NULL), FRAME_OK);
    frame_stock_plan_result(plan, &best);
    frame_stock_plan_free(plan);
    frame_status (*const ways[])(const frame_stock_plan_in *, frame_stock_plan **) = {
        frame_stock_plan_by_value, frame_stock_plan_by_longest, frame_stock_plan_by_one_length};
    const double costs[] = {best.by_value_cost, best.first_fit_cost, best.one_length_cost};
    for (int w = 0; w < 3; w++) {
        ck_assert_int_eq(ways[w](&made.in, &plan), FRAME_OK);
        verify(&made, plan);
        frame_stock_plan_result(plan, &out);
        ck_assert_double_eq_tol(out.cost, costs[w], 1e-6);
        ck_assert_double_ge(out.cost, best.cost);
        ck_assert_int_eq(out.optimal, 0);
        ck_assert_int_eq(out.ended, FRAME_STOCK_END_SIMPLE);
        frame_stock_plan_free(plan);
    }
}
END_TEST

/* Sections, defects, offcuts, splices and rips in one job, at random. */
START_TEST(random_mixtures) {
    static const double knots[] = {30, 33}, bearings[] = {60, 110};
    srand(23);
    for (int n = 0; n < 60; n++) {
        job made;
        frame_stock_plan *plan;
        begin(&made);
        for (int i = 0; i < 2 + rand() % 6; i++) {
            frame_stock_piece *piece = want(&made, 8 + rand() % 1200 / 16.0, 1 + rand() % 8);
            piece->size = rand() % 2 ? FRAME_SIZE(2, 4) : FRAME_SIZE(2, 8);
            piece->may_rip = rand() % 2;
        }
        frame_stock_piece *plate = want(&made, 170, 1 + rand() % 3);
        plate->size = FRAME_SIZE(2, 4);
        plate->splices_in = bearings, plate->splice_count = 2;
        for (int s = 0; s < 4; s++) {
            frame_stock_length *stock = have(&made, 96 + 48 * (s / 2), 4 + rand() % 900 / 100.0, FRAME_NOT_GIVEN_INT);
            stock->size = s % 2 ? FRAME_SIZE(2, 4) : FRAME_SIZE(2, 8);
        }
        frame_stock_length *old = have(&made, 80, 0, 1 + rand() % 3);
        old->size = FRAME_SIZE(2, 4);
        old->defects_from_to_in = knots, old->defect_count = 2;
        made.in.splice_price = 0.5;
        if (n % 2) made.in.kept_offcut_in = 30, made.in.kept_foot_price = 0.2;
        ck_assert_msg(frame_stock_plan_solve(&made.in, &plan, NULL) == FRAME_OK, "%s", frame_error_text());
        verify(&made, plan);
        frame_stock_plan_free(plan);
    }
}
END_TEST

/* -- long searches -- */

typedef struct looks {
    int count, most;
    double best, bound;
} looks;

static int32_t look(void *user, double best, double bound) {
    looks *seen = user;
    seen->best = best;
    seen->bound = bound;
    return ++seen->count < seen->most;
}

/* Two hundred lengths, no two alike, three to a board: nothing that is proven in a second. */
static void begin_long(job *made, frame_stock_piece *pieces) {
    srand(5);
    begin(made);
    for (int i = 0; i < 200; i++) {
        frame_stock_piece_init(&pieces[i]);
        pieces[i].length_in = 200 + rand() % 15000 / 100.0 + i / 4096.0;
        pieces[i].count = 1;
    }
    made->in.pieces = pieces;
    made->in.piece_count = 200;
    made->in.kerf_in = 0;
    have(made, 1000, 1, FRAME_NOT_GIVEN_INT);
}

START_TEST(watched_and_stopped) {
    static frame_stock_piece pieces[200];
    job made;
    frame_stock_plan *plan;
    frame_stock_plan_out out;
    frame_watch *watch = NULL;
    looks seen = {0, 3, 0, 0};
    const frame_watcher watcher = {look, &seen};
    begin_long(&made, pieces);
    ck_assert_int_eq(frame_watch_new(NULL, &watch), FRAME_REQUIRED);
    ck_assert_int_eq(frame_watch_new(&watcher, &watch), FRAME_OK);
    made.in.watch = watch;
    ck_assert_int_eq(frame_stock_plan_solve(&made.in, &plan, NULL), FRAME_OK);
    frame_stock_plan_result(plan, &out);
    ck_assert_int_eq(seen.count, 3);
    ck_assert_int_eq(out.ended, FRAME_STOCK_END_CANCELLED);
    ck_assert_int_eq(out.optimal, 0);
    ck_assert_double_le(out.cost, seen.best);
    ck_assert_double_gt(out.bound, 0);
    ck_assert_double_le(out.bound, out.cost);
    ck_assert_int_eq(out.pieces_cut, 200);
    frame_stock_plan_free(plan);
    frame_watch_free(watch);
    made.in.watch = NULL;
    made.in.time_limit_s = 0.2;
    ck_assert_int_eq(frame_stock_plan_solve(&made.in, &plan, NULL), FRAME_OK);
    frame_stock_plan_result(plan, &out);
    ck_assert_int_eq(out.ended, FRAME_STOCK_END_TIME);
    frame_stock_plan_free(plan);
}
END_TEST

/* A job that is watched gives the plan it gives unwatched, and the same again. */
START_TEST(the_same_plan_every_time) {
    job made;
    frame_watch *watch;
    looks seen = {0, INT32_MAX, 0, 0};
    const frame_watcher watcher = {look, &seen};
    frame_text *first, *next;
    frame_text_new(&first), frame_text_new(&next);
    frame_watch_new(&watcher, &watch);
    begin(&made);
    srand(31);
    for (int i = 0; i < 12; i++) want(&made, 20 + rand() % 1000 / 16.0, 1 + rand() % 9);
    have(&made, 120, 8.13, FRAME_NOT_GIVEN_INT);
    have(&made, 144, 9.87, FRAME_NOT_GIVEN_INT);
    for (int n = 0; n < 3; n++) {
        frame_stock_plan *plan;
        made.in.watch = n == 1 ? watch : NULL;
        ck_assert_int_eq(frame_stock_plan_solve(&made.in, &plan, NULL), FRAME_OK);
        frame_text_clear(next);
        frame_stock_plan_json(plan, n ? next : first);
        if (n) ck_assert_str_eq(frame_text_chars(first), frame_text_chars(next));
        frame_stock_plan_free(plan);
    }
    frame_watch_free(watch);
    frame_text_free(first), frame_text_free(next);
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

/* -- shared cuts -- */

static void mitre(frame_stock_piece *piece, double left, double right, frame_bool crowned) {
    piece->left_cut_in = left;
    piece->right_cut_in = right;
    piece->cut_across_in = 5.5;
    piece->crowned = crowned;
}

static frame_stock_plan_out solved(job *made, frame_bool share) {
    frame_stock_plan *plan;
    frame_stock_plan_out out;
    made->in.share_cuts = share;
    ck_assert_msg(frame_stock_plan_solve(&made->in, &plan, NULL) == FRAME_OK, "%s", frame_error_text());
    verify(made, plan);
    ck_assert_int_eq(frame_stock_plan_result(plan, &out), FRAME_OK);
    frame_stock_plan_free(plan);
    return out;
}

/* Two braces of 50 in, mitred 45 degrees at both ends, from a board of 96 in: 100 - 5.5 + 0.125 * sqrt 2 = 94.68 in.
 * Both cuts slant inwards, so the long edges face opposite ways and one of the two is rolled. */
START_TEST(a_shared_mitre_saves_a_board) {
    job made;
    begin(&made);
    mitre(want(&made, 50, 2), 5.5, -5.5, 0);
    have(&made, 96, 8, FRAME_NOT_GIVEN_INT);
    ck_assert_int_eq(solved(&made, 0).boards_used, 2);
    const frame_stock_plan_out out = solved(&made, 1);
    ck_assert_int_eq(out.boards_used, 1);
    ck_assert_int_eq(out.shared_cuts, 1);
    ck_assert_int_eq(out.optimal, 1);
    ck_assert_double_eq_tol(out.shared_cut_in, 5.5 + 0.125 - 0.125 * sqrt(2), 1e-9);
    made.pieces[0].crowned = 1;
    const frame_stock_plan_out crowned = solved(&made, 1);
    ck_assert_int_eq(crowned.boards_used, 2);
    ck_assert_int_eq(crowned.shared_cuts, 0);
}
END_TEST

/* Two crowned rafters with parallel ends nest as they are. A board a hair too short for that is not used. */
START_TEST(parallel_ends_nest_as_they_are) {
    const double needed = 100 - 5.5 + 0.125 * sqrt(2);
    for (int n = 0; n < 2; n++) {
        job made;
        begin(&made);
        mitre(want(&made, 50, 2), 5.5, 5.5, 1);
        have(&made, needed + (n ? -1e-3 : 1e-9), 8, FRAME_NOT_GIVEN_INT);
        ck_assert_int_eq(solved(&made, 1).boards_used, n ? 2 : 1);
    }
}
END_TEST

START_TEST(asking_to_share_costs_no_more) {
    int saved = 0;
    srand(11);
    for (int n = 0; n < 60; n++) {
        job made;
        begin(&made);
        const double runs[] = {0, 5.5, -5.5, 2.25};
        for (int i = 0, kinds = 1 + rand() % 5; i < kinds; i++)
            mitre(want(&made, 12 + rand() % 900 / 16.0, 1 + rand() % 6), runs[rand() % 4], runs[rand() % 4],
                  rand() % 3 == 0);
        for (int s = 0; s < 3; s++) have(&made, 96 + 24 * (rand() % 5), 5 + rand() % 2000 / 100.0, FRAME_NOT_GIVEN_INT);
        if (n % 4 == 0) made.pieces[0].length_in = made.pieces[made.in.piece_count - 1].length_in;
        if (n % 5 == 0) made.in.kept_offcut_in = 24, made.in.kept_foot_price = 0.1;
        const frame_stock_plan_out apart = solved(&made, 0), shared = solved(&made, 1);
        ck_assert_double_le(shared.net_cost, apart.net_cost + 1e-6);
        ck_assert_double_le(shared.bound, shared.net_cost + 1e-9);
        saved += shared.net_cost < apart.net_cost - 1e-6;
    }
    ck_assert_int_gt(saved, 0);
}
END_TEST

/* A search that takes all the time it may leaves none for sharing: then the plan is that without, and says so. */
START_TEST(no_time_left_to_share) {
    static frame_stock_piece pieces[200];
    job made;
    frame_stock_plan *plan;
    frame_stock_plan_out out;
    begin_long(&made, pieces);
    for (int i = 0; i < 200; i++) mitre(&pieces[i], 5.5, -5.5, 0);
    made.in.time_limit_s = 0.2;
    made.in.share_cuts = 1;
    ck_assert_int_eq(frame_stock_plan_solve(&made.in, &plan, NULL), FRAME_OK);
    frame_stock_plan_result(plan, &out);
    ck_assert_int_eq(out.ended, FRAME_STOCK_END_TIME);
    ck_assert_int_eq(out.optimal, 0);
    ck_assert_double_eq(out.bound, 0); /* that of the plans on full lengths does not hold with shared cuts */
    ck_assert(FRAME_HAS(out.not_checked, FRAME_STOCK_UNCHECKED_ENDS));
    frame_stock_plan_free(plan);
    begin(&made);
    mitre(want(&made, 50, 2), 5.5, -5.5, 0);
    have(&made, 96, 8, FRAME_NOT_GIVEN_INT);
    made.in.time_limit_s = 60;
    const frame_stock_plan_out shared = solved(&made, 1);
    ck_assert_int_eq(shared.boards_used, 1);
    ck_assert(!FRAME_HAS(shared.not_checked, FRAME_STOCK_UNCHECKED_ENDS));
    made.in.method = FRAME_STOCK_METHOD_LONGEST;
    ck_assert(FRAME_HAS(solved(&made, 1).not_checked, FRAME_STOCK_UNCHECKED_ENDS));
}
END_TEST

START_TEST(cuts_that_cannot_be_are_refused) {
    job made;
    frame_stock_plan *plan;
    begin(&made);
    mitre(want(&made, 10, 2), 5.5, -5.5, 0);
    have(&made, 96, 8, FRAME_NOT_GIVEN_INT);
    made.in.share_cuts = 1;
    ck_assert_int_eq(frame_stock_plan_solve(&made.in, &plan, NULL), FRAME_IMPOSSIBLE);
    ck_assert_ptr_nonnull(strstr(frame_error_text(), "left_cut_in"));
    made.pieces[0].length_in = 12;
    made.pieces[0].cut_across_in = FRAME_NOT_GIVEN;
    ck_assert_int_eq(frame_stock_plan_solve(&made.in, &plan, NULL), FRAME_REQUIRED);
    ck_assert_ptr_nonnull(strstr(frame_error_text(), "cut_across_in"));
}
END_TEST

int main(void) {
    Suite *suite = suite_create("stock_plan");
    TCase *tests = tcase_create("all");
    tcase_set_timeout(tests, 120);
    tcase_add_test(tests, a_shed_roof);
    tcase_add_test(tests, exactly_full);
    tcase_add_test(tests, random_jobs);
    tcase_add_test(tests, no_plan_there_is_costs_less);
    tcase_add_test(tests, several_sections_at_once);
    tcase_add_test(tests, defects_are_cut_around);
    tcase_add_test(tests, a_kept_offcut_is_worth_something);
    tcase_add_test(tests, spliced_over_bearings);
    tcase_add_test(tests, ripped_from_wider_stock);
    tcase_add_test(tests, a_strip_left_over_is_worth_nothing);
    tcase_add_test(tests, ties_go_to_fewer_boards);
    tcase_add_test(tests, simple_ways);
    tcase_add_test(tests, random_mixtures);
    tcase_add_test(tests, watched_and_stopped);
    tcase_add_test(tests, the_same_plan_every_time);
    tcase_add_test(tests, what_cannot_be_cut_is_named);
    tcase_add_test(tests, a_shared_mitre_saves_a_board);
    tcase_add_test(tests, parallel_ends_nest_as_they_are);
    tcase_add_test(tests, asking_to_share_costs_no_more);
    tcase_add_test(tests, no_time_left_to_share);
    tcase_add_test(tests, cuts_that_cannot_be_are_refused);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
