/* Decks: posts, footings, boards and guards; what cannot be; and random decks, whose pieces fit and whose boards end on
 * joists. Crowns too. */
#include <check.h>
#include <math.h>
#include <string.h>

#include <frame/frame.h>

#include "random.h"

static frame_deck_in in;
static frame_deck_out out;
static frame_deck *deck;
static frame_deck_beam beams[4];
static frame_floor_opening openings[2];

static void begin(double length, double width) {
    deck = NULL;
    frame_deck_in_init(&in);
    in.length_in = length;
    in.width_in = width;
    in.size = FRAME_SIZE(2, 8);
    in.beams = beams;
    in.openings = openings;
}

static frame_deck_beam *beam_at(double x) {
    frame_deck_beam *beam = &beams[in.beam_count++];
    frame_deck_beam_init(beam);
    beam->at_in = x;
    beam->size = FRAME_SIZE(2, 10);
    return beam;
}

static frame_floor_opening *open_at(double x, double y, double length, double width) {
    frame_floor_opening *opening = &openings[in.opening_count++];
    frame_floor_opening_init(opening);
    opening->x_in = x;
    opening->y_in = y;
    opening->length_in = length;
    opening->width_in = width;
    return opening;
}

static void finish(void) {
    frame_deck_free(deck);
    deck = NULL;
}

static void solve(void) {
    finish();
    ck_assert_msg(frame_deck_solve(&in, &deck, NULL) == FRAME_OK, "%s", frame_error_text());
    ck_assert_int_eq(frame_deck_result(deck, &out), FRAME_OK);
}

static void refused(frame_status status, const char *field) {
    finish();
    ck_assert_int_eq(frame_deck_solve(&in, &deck, NULL), status);
    ck_assert_str_eq(frame_error_field(), field);
    ck_assert_ptr_null(deck);
}

static frame_deck_piece piece_at(size_t index) {
    frame_deck_piece piece;
    ck_assert_int_eq(frame_deck_piece_at(deck, index, &piece), FRAME_OK);
    return piece;
}

static void check_fit(void) {
    frame_fit_out fit;
    ck_assert_int_eq(frame_deck_fit(deck, &fit), FRAME_OK);
    if (fit.fits) return;
    const frame_deck_piece a = piece_at((size_t)fit.first), b = piece_at((size_t)fit.second);
    ck_abort_msg("%s and %s share %g in3", a.name, b.name, fit.overlap_in3);
}

static void check_lengths(void) {
    for (size_t i = 0; i < frame_deck_piece_count(deck); i++) {
        const frame_deck_piece piece = piece_at(i);
        frame_stick *stick = NULL;
        frame_stick_lengths_out lengths;
        ck_assert_msg(!frame_deck_stick(deck, i, &stick), "%s: %s", piece.name, frame_error_text());
        frame_stick_lengths(stick, &lengths);
        ck_assert_msg(fabs(lengths.long_point_in - piece.length_in) < 1e-7, "%s: %g, not %g", piece.name,
                      lengths.long_point_in, piece.length_in);
        frame_stick_free(stick);
    }
}

START_TEST(posts_and_footings) {
    begin(144, 240);
    in.height_in = 48;
    in.cap_in = 0.5;
    beam_at(72)->post_spacing_in = 120;
    beam_at(124);
    solve();
    check_fit();
    /* 48 less boards 1, joists 7-1/4, beam 9-1/4, cap 1/2, base 1 */
    ck_assert_double_eq_tol(out.post_length_in, 29, 1e-12);
    ck_assert_int_eq(out.posts, 3 + 4);
    double total = 0, first = 0;
    for (size_t i = 0; i < frame_deck_footing_count(deck); i++) {
        frame_deck_footing footing;
        frame_deck_footing_at(deck, i, &footing);
        total += footing.area_in2;
        if (footing.beam == 1) first += footing.area_in2;
    }
    /* The ledger carries half of the first 72 in; the rest is the footings'. */
    ck_assert_double_eq_tol(total, (144 - 36) * 240, 1e-6);
    ck_assert_double_eq_tol(first, (36 + 26) * 240, 1e-6);
    ck_assert_double_eq(out.cantilever_in, 20);
    ck_assert(FRAME_HAS(out.cautions, FRAME_DECK_CAUTION_CANTILEVER)); /* more than a quarter of 52 in */
    beams[1].at_in = 129.6;                                            /* 14.4 of 57.6: just a quarter */
    solve();
    ck_assert(!FRAME_HAS(out.cautions, FRAME_DECK_CAUTION_CANTILEVER));
    in.height_in = 18;
    refused(FRAME_IMPOSSIBLE, "beams[0].height_in");
    in.height_in = FRAME_NOT_GIVEN;
    solve();
    ck_assert_double_eq(out.post_length_in, FRAME_NOT_GIVEN);
    ck_assert_int_eq(out.guard_posts, 0);
    beams[0].inset_in = 118;
    refused(FRAME_IMPOSSIBLE, "beams[0].inset_in");
}
END_TEST

/* Two plies of a beam over four posts, from stock that reaches two spaces: joints over posts, not side by side. */
START_TEST(beams_spliced_over_posts) {
    begin(144, 300);
    in.height_in = 60;
    in.stock_in = 210;
    beam_at(130);
    solve();
    check_fit();
    ck_assert(FRAME_HAS(out.cautions, FRAME_DECK_CAUTION_SPLICE));
    double joints[8][2];
    int found = 0;
    for (size_t i = 0; i < frame_deck_piece_count(deck); i++) {
        const frame_deck_piece piece = piece_at(i);
        if (piece.kind != FRAME_PIECE_BEAM || piece.end_y_in > 299) continue;
        joints[found][0] = piece.start_x_in;
        joints[found++][1] = piece.end_y_in;
        int over_post = 0;
        for (size_t f = 0; f < frame_deck_footing_count(deck); f++) {
            frame_deck_footing footing;
            frame_deck_footing_at(deck, f, &footing);
            over_post |= fabs(footing.y_in - piece.end_y_in) < 1e-9;
        }
        ck_assert_int_eq(over_post, 1);
    }
    ck_assert_int_ge(found, 2);
    for (int i = 0; i < found; i++)
        for (int k = 0; k < i; k++) ck_assert(joints[i][0] == joints[k][0] || fabs(joints[i][1] - joints[k][1]) > 1);
    in.stock_in = 90;
    beams[0].post_spacing_in = 150;
    in.length_in = 80;
    beams[0].at_in = 70;
    refused(FRAME_IMPOSSIBLE, "beams[0].stock_in");
}
END_TEST

/* Every end of a straight board lies on the middle of a joist, at an edge, or at an opening; no joint beside another.
 */
static void check_boards(double edge_low, double edge_high) {
    static double last[200], here[200];
    int lasts = 0, heres = 0;
    double row = FRAME_NOT_GIVEN;
    for (size_t i = 0; i < frame_deck_piece_count(deck); i++) {
        const frame_deck_piece board = piece_at(i);
        if (board.kind != FRAME_PIECE_BOARD) continue;
        if (fabs(board.start_x_in - row) > 1e-6) {
            memcpy(last, here, sizeof last);
            lasts = heres;
            heres = 0;
            row = board.start_x_in;
        }
        for (int end = 0; end < 2; end++) {
            const double y = end ? board.end_y_in : board.start_y_in;
            int ok = fabs(y - edge_low) < 1e-6 || fabs(y - edge_high) < 1e-6, joint = 0;
            for (size_t o = 0; o < in.opening_count; o++)
                ok |= fabs(y - openings[o].y_in) < 1e-6 || fabs(y - openings[o].y_in - openings[o].width_in) < 1e-6;
            for (size_t k = 0; !ok && k < frame_deck_piece_count(deck); k++) {
                const frame_deck_piece joist = piece_at(k);
                joint |= joist.kind >= FRAME_PIECE_END_JOIST && joist.kind <= FRAME_PIECE_DOUBLE &&
                         fabs(joist.start_y_in - y) < 1e-6 && joist.start_x_in < fmax(row, 2) &&
                         joist.end_x_in > fmin(row, in.length_in - 2);
            }
            ck_assert_msg(ok || joint, "a board ends at %g, off the joists", y);
            if (ok || !end) continue;
            here[heres++] = y;
            for (int k = 0; k < lasts; k++) ck_assert_double_gt(fabs(last[k] - y), 1e-6);
        }
    }
}

START_TEST(boards_across_the_joists) {
    begin(144, 240);
    beam_at(124);
    solve();
    check_fit();
    check_boards(0, 240);
    /* 26 rows: 25 of 5-1/2 in and their gaps, and 3-3/8 in ripped along the house. */
    ck_assert_int_eq(out.boards, 26);
    ck_assert_double_eq_tol(out.last_board_in, 144 - 25 * 5.625, 1e-9);
    ck_assert_double_eq(out.board_stock_in, 26 * 240.0); /* 20 ft boards reach */
    const double stock[] = {144, 96, 120};
    in.board_stock_in = stock;
    in.board_stock_count = 3;
    solve();
    check_fit();
    check_boards(0, 240);
    ck_assert_double_lt(out.board_waste, 0.05); /* 96 + 144, 120 + 120: nothing is left over but the cuts' */
    const double little[] = {30};
    in.board_stock_in = little;
    in.board_stock_count = 1;
    in.spacing_in = 24;
    solve(); /* every joist a joint, so that neighbours must share theirs: allowed where nothing else reaches */
    ck_assert_int_gt(out.boards, 0);
    const double stub[] = {24};
    in.board_stock_in = stub;
    in.datum_in = 12; /* 12 in at the ends, 24 between; but the first joist's middle is 25.5 in from the edge board */
    in.spacing_in = 30;
    refused(FRAME_IMPOSSIBLE, "board_stock_in");
}
END_TEST

/* The cheapest joints, against every other way of joining. */
START_TEST(joints_take_the_least_stock) {
    for (int i = 0; i < 60; i++) {
        double stock[3] = {random_between(60, 90), random_between(90, 130), random_between(130, 180)};
        begin(40, random_between(150, 260));
        beam_at(30);
        in.board_stock_in = stock;
        in.board_stock_count = 3;
        in.board_width_in = 24; /* one row and a bit */
        solve();
        double joists[40];
        int count = 0;
        for (size_t m = 0; m < frame_deck_mark_count(deck); m++) {
            frame_deck_mark mark;
            frame_deck_mark_at(deck, m, &mark);
            const double middle = mark.mark_in + 0.75;
            if (middle >= 16 && middle <= in.width_in - 16) joists[count++] = middle;
        }
        double least = 1e9;
        for (int ways = 0; ways < 1 << count && count < 18; ways++) {
            double from = 0, cost = 0;
            for (int j = 0; j <= count; j++) {
                if (j < count && !(ways >> j & 1)) continue;
                const double length = (j < count ? joists[j] : in.width_in) - from;
                double board = 1e6;
                for (int s = 0; s < 3; s++)
                    if (stock[s] >= length - 1e-9) board = fmin(board, stock[s]);
                cost += board;
                from += length;
            }
            least = fmin(least, cost);
        }
        double bought = 0, row = FRAME_NOT_GIVEN;
        for (size_t p = 0; p < frame_deck_piece_count(deck); p++) {
            const frame_deck_piece piece = piece_at(p);
            if (piece.kind != FRAME_PIECE_BOARD) continue;
            if (row == FRAME_NOT_GIVEN) row = piece.start_x_in;
            if (piece.start_x_in != row) break; /* the first row alone is free to choose */
            double board = 1e6;
            for (int s = 0; s < 3; s++)
                if (stock[s] >= piece.length_in - 1e-9) board = fmin(board, stock[s]);
            bought += board;
        }
        if (count < 18) ck_assert_double_eq_tol(bought, least, 0.1);
        finish();
    }
}
END_TEST

START_TEST(guards) {
    begin(144, 240);
    in.height_in = 30; /* at 30 in none is asked for */
    beam_at(124);
    solve();
    ck_assert_int_eq(out.guard_posts, 0);
    in.height_in = 30.1;
    solve();
    check_fit();
    ck_assert_int_gt(out.guard_posts, 0);
    ck_assert_double_le(out.baluster_gap_in, 3.9375);
    /* Posts no farther apart than asked, along the outer side. */
    double last = FRAME_NOT_GIVEN;
    for (size_t i = 0; i < frame_deck_piece_count(deck); i++) {
        const frame_deck_piece post = piece_at(i);
        if (post.kind != FRAME_PIECE_GUARD_POST || post.start_x_in < 144) continue;
        if (last != FRAME_NOT_GIVEN) ck_assert_double_le(post.start_y_in - last, 72 + 1e-9);
        last = post.start_y_in;
        ck_assert_double_eq_tol(post.end_z_in, 7.25 + 1 + 36, 1e-12);
    }
    in.overhang_in = 1;
    refused(FRAME_IMPOSSIBLE, "overhang_in");
    in.guard = 0;
    solve();
    check_fit();
    check_boards(-1, 241);
    finish();
}
END_TEST

/* Posts deeper than they are wide reach outward, and still share no wood with rails and rims. */
START_TEST(deep_guard_posts) {
    begin(144, 240);
    in.height_in = 40;
    in.guard_post_size = FRAME_SIZE(4, 6);
    beam_at(124);
    solve();
    check_fit();
    for (size_t i = 0; i < frame_deck_piece_count(deck); i++) {
        const frame_deck_piece post = piece_at(i);
        if (post.kind != FRAME_PIECE_GUARD_POST || post.start_x_in < 144) continue;
        ck_assert_double_eq_tol(post.start_x_in, 144 + 5.5 / 2, 1e-12);
    }
    finish();
}
END_TEST

START_TEST(absurd_decks) {
    begin(144, 240);
    beam_at(120);
    in.board_width_in = 0.05;
    refused(FRAME_TOO_LARGE, "board_width_in");
    in.pattern = FRAME_DECK_DIAGONAL;
    refused(FRAME_TOO_LARGE, "board_width_in");
    in.board_width_in = 5.5;
    solve();
    beam_at(125); /* 6x6 posts are 5-1/2 in wide */
    refused(FRAME_IMPOSSIBLE, "beams[1].at_in");
    beams[1].at_in = 125.5;
    solve();
    check_fit();
    finish();
}
END_TEST

START_TEST(patterns) {
    begin(144, 240);
    in.guard = 0;
    beam_at(124);
    in.pattern = FRAME_DECK_DIAGONAL;
    solve();
    check_fit();
    check_lengths();
    ck_assert(FRAME_HAS(out.cautions, FRAME_DECK_CAUTION_SPACING)); /* 16 in under 1 in boards laid diagonally */
    in.spacing_in = 12;
    solve();
    ck_assert(!FRAME_HAS(out.cautions, FRAME_DECK_CAUTION_SPACING));
    open_at(40, 100, 30, 30);
    refused(FRAME_OUTSIDE_SCOPE, "pattern");
    in.pattern = FRAME_DECK_FRAME;
    solve();
    check_fit();
    check_lengths();
    in.pattern = FRAME_DECK_BARE;
    solve();
    ck_assert_int_eq(out.boards, 0);
    ck_assert_double_eq(out.last_board_in, FRAME_NOT_GIVEN);
    in.pattern = FRAME_DECK_STRAIGHT;
    in.spacing_in = 16.1;
    solve();
    ck_assert(FRAME_HAS(out.cautions, FRAME_DECK_CAUTION_SPACING));
    in.board_thickness_in = 1.5;
    in.spacing_in = 24;
    solve();
    ck_assert(!FRAME_HAS(out.cautions, FRAME_DECK_CAUTION_SPACING));
    finish();
}
END_TEST

static void random_deck(void) {
    begin(random_between(80, 220), random_between(80, 300));
    in.height_in = random_between(40, 120);
    in.spacing_in = random_whole(0, 1) ? 16 : 12;
    in.pattern = random_whole(1, 4);
    in.guard = random_whole(0, 1);
    in.overhang_in = in.guard ? 0 : random_whole(0, 1) * 1.25;
    in.near_end = random_whole(0, 3) ? FRAME_JOIST_END_LEDGER : FRAME_JOIST_END_FREE;
    if (in.near_end == FRAME_JOIST_END_FREE) beam_at(random_between(8, 20));
    if (in.length_in > 160) beam_at(in.length_in / 2);
    beam_at(in.length_in - random_between(6, 24))->inset_in = random_between(0, 12);
    for (int i = 0; i < (int)in.beam_count; i++) {
        beams[i].plies = random_whole(1, 3);
        beams[i].post_spacing_in = random_between(60, 110);
    }
    if (in.pattern != FRAME_DECK_DIAGONAL && random_whole(0, 1) && in.width_in > 100)
        open_at(random_between(25, in.length_in - 60), random_between(12, in.width_in - 60), random_between(12, 24),
                random_between(16, 40));
}

/* No piece, of frame or boards, lies in an opening. */
static void check_clear(void) {
    for (size_t o = 0; o < in.opening_count; o++) {
        frame_stick_in box;
        frame_stick *hole = NULL;
        frame_stick_in_init(&box);
        box.thickness_in = 7.25 + 1;
        box.depth_in = openings[o].width_in;
        box.crown_x = box.crown_z = 0;
        box.crown_y = 1;
        box.start_x_in = openings[o].x_in;
        box.end_x_in = openings[o].x_in + openings[o].length_in;
        box.start_y_in = box.end_y_in = openings[o].y_in + openings[o].width_in / 2;
        box.start_z_in = box.end_z_in = (7.25 + 1) / 2;
        ck_assert_msg(!frame_stick_new(&box, &hole), "%s", frame_error_text());
        for (size_t i = 0; i < frame_deck_piece_count(deck); i++) {
            frame_stick *stick = NULL;
            frame_stick_fit_out fit;
            ck_assert_int_eq(frame_deck_stick(deck, i, &stick), FRAME_OK);
            ck_assert_int_eq(frame_stick_fit(stick, hole, &fit), FRAME_OK);
            ck_assert_msg(fit.overlap_in3 < 1e-6, "%s lies in an opening", piece_at(i).name);
            frame_stick_free(stick);
        }
        frame_stick_free(hole);
    }
}

START_TEST(random_decks_fit) {
    const int rounds = random_rounds(200, 2000);
    int solved = 0;
    for (int i = 0; i < rounds; i++) {
        random_deck();
        const frame_status status = frame_deck_solve(&in, &deck, NULL);
        if (status == FRAME_IMPOSSIBLE) continue;
        ck_assert_msg(!status, "%s", frame_error_text());
        frame_deck_result(deck, &out);
        solved++;
        check_fit();
        check_clear();
        check_lengths();
        ck_assert_double_le(out.widest_in, in.spacing_in + 1e-9);
        const double oh = in.overhang_in;
        if (in.pattern == FRAME_DECK_STRAIGHT) check_boards(-oh, in.width_in + oh);
        finish();
    }
    ck_assert_int_gt(solved, rounds / 2);
}
END_TEST

START_TEST(joists_by_crown) {
    const double crowns[] = {0.25, 0, 0.375, -0.125, 0.75, 0.0625, -0.5}; /* two lie crown down */
    frame_crowns_in ask;
    frame_crowns_out found;
    frame_crowns *order = NULL;
    frame_crowns_place place;
    frame_crowns_in_init(&ask);
    ask.crowns_in = crowns;
    ask.crown_count = 7;
    ask.order = FRAME_CROWN_RISING;
    ck_assert_int_eq(frame_crowns_solve(&ask, &order, NULL), FRAME_OK);
    frame_crowns_result(order, &found);
    ck_assert_int_eq(found.rejected, 1); /* 3/4 in, over the half inch */
    ck_assert_int_eq(found.used, 6);
    const int rising[] = {2, 6, 4, 1, 3, 7};
    for (size_t i = 0; i < 6; i++) {
        frame_crowns_place_at(order, i, &place);
        ck_assert_int_eq(place.piece, rising[i]);
        ck_assert_int_eq(place.turn, rising[i] == 4 || rising[i] == 7);
        ck_assert_double_ge(place.crown_in, 0);
    }
    ck_assert_double_eq(found.step_in, 0.125);
    frame_crowns_free(order);
    ask.order = FRAME_CROWN_MIDDLE;
    ask.places = 5;
    ck_assert_int_eq(frame_crowns_solve(&ask, &order, NULL), FRAME_OK);
    frame_crowns_result(order, &found);
    ck_assert_int_eq(found.spare_pieces, 1);
    ck_assert_double_eq(found.most_in, 0.375);
    const int middle[] = {2, 4, 3, 1, 6}; /* 0, 1/8, 3/8, 1/4, 1/16 */
    for (size_t i = 0; i < 5; i++) {
        frame_crowns_place_at(order, i, &place);
        ck_assert_int_eq(place.piece, middle[i]);
    }
    frame_crowns_free(order);
    ask.places = 7;
    ck_assert_int_eq(frame_crowns_solve(&ask, &order, NULL), FRAME_OK);
    frame_crowns_result(order, &found);
    ck_assert(FRAME_HAS(found.cautions, FRAME_CROWNS_CAUTION_FEW));
    frame_crowns_free(order);
}
END_TEST

START_TEST(working_and_drawing) {
    frame_working *w = NULL;
    frame_text *text = NULL;
    frame_drawing *drawing = NULL;
    begin(144, 192);
    in.name = "landing deck";
    in.height_in = 60;
    beam_at(124);
    open_at(40, 60, 30, 30);
    ck_assert(!frame_working_new(&w) && !frame_text_new(&text));
    ck_assert_msg(!frame_deck_solve(&in, &deck, w), "%s", frame_error_text());
    ck_assert_msg(!frame_working_check(w, text), "%s", frame_text_chars(text));
    ck_assert_int_eq(frame_deck_drawing(deck, &drawing), FRAME_OK);
    ck_assert_int_eq(frame_drawing_svg(drawing, text), FRAME_OK);
    ck_assert_ptr_nonnull(strstr(frame_text_chars(text), "landing deck"));
    frame_drawing_free(drawing);
    frame_working_free(w);
    frame_text_free(text);
    ck_assert_int_eq(frame_deck_drawing(NULL, &drawing), FRAME_REQUIRED);
    finish();
}
END_TEST

int main(void) {
    Suite *suite = suite_create("deck");
    TCase *tests = tcase_create("all");
    tcase_set_timeout(tests, 1200);
    tcase_add_test(tests, posts_and_footings);
    tcase_add_test(tests, beams_spliced_over_posts);
    tcase_add_test(tests, boards_across_the_joists);
    tcase_add_test(tests, joints_take_the_least_stock);
    tcase_add_test(tests, guards);
    tcase_add_test(tests, deep_guard_posts);
    tcase_add_test(tests, absurd_decks);
    tcase_add_test(tests, patterns);
    tcase_add_test(tests, random_decks_fit);
    tcase_add_test(tests, joists_by_crown);
    tcase_add_test(tests, working_and_drawing);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
