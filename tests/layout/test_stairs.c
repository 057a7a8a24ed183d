/* Stairs: the code's limits at, just under and just over each; what cannot be; and random stairs whose pieces the
 * kernel proves to fit. Published stairs are in tests/verification. */
#include <check.h>
#include <math.h>
#include <string.h>

#include <frame/frame.h>

#include "random.h"

static frame_stairs_in in;
static frame_stairs_out out;
static frame_stairs *stairs;

static void begin(double rise) {
    stairs = NULL;
    frame_stairs_in_init(&in);
    in.rise_in = rise;
}

static void finish(void) {
    frame_stairs_free(stairs);
    stairs = NULL;
}

static void solve(void) {
    finish();
    ck_assert_msg(frame_stairs_solve(&in, &stairs, NULL) == FRAME_OK, "%s", frame_error_text());
    ck_assert_int_eq(frame_stairs_result(stairs, &out), FRAME_OK);
}

static int warned(frame_stairs_caution caution) {
    return FRAME_HAS(out.cautions, caution) != 0;
}

static void refused(frame_status status, const char *field) {
    finish();
    ck_assert_int_eq(frame_stairs_solve(&in, &stairs, NULL), status);
    ck_assert_str_eq(frame_error_field(), field);
    ck_assert_ptr_null(stairs);
}

START_TEST(riser_at_under_and_over_its_limit) {
    begin(7.75 * 14);
    in.risers = 14;
    solve();
    ck_assert_int_eq(out.passes, 1);
    in.rise_in = 7.75 * 14 + 0.01;
    solve();
    ck_assert_int_eq(out.passes, 0);
    ck_assert(warned(FRAME_STAIRS_CAUTION_RISER));
    in.risers = FRAME_NOT_GIVEN_INT; /* left to be chosen, one more is taken */
    in.usual_riser_in = 7.75;
    solve();
    ck_assert_int_eq(out.risers, 15);
    ck_assert_int_eq(out.passes, 1);
    in.rise_in = 7.75 * 14;
    solve();
    ck_assert_int_eq(out.risers, 14);
    finish();
}
END_TEST

START_TEST(tread_at_under_and_over_its_limit) {
    begin(105);
    in.tread_in = 10;
    solve();
    ck_assert_int_eq(out.passes, 1);
    in.tread_in = 9.99;
    solve();
    ck_assert_int_eq(out.passes, 0);
    ck_assert(warned(FRAME_STAIRS_CAUTION_TREAD));
    in.min_tread_in = 9;
    solve();
    ck_assert_int_eq(out.passes, 1);
    ck_assert(warned(FRAME_STAIRS_CAUTION_LIMITS));
    finish();
}
END_TEST

START_TEST(nosing_by_the_depth_of_the_tread) {
    begin(105);
    in.tread_in = 10.99;
    solve();
    ck_assert_double_eq(out.nosing_in, 1);
    in.tread_in = 11;
    solve();
    ck_assert_double_eq(out.nosing_in, 0);
    in.tread_in = 10;
    const struct {
        double nosing;
        int passes;
    } cases[] = {{0.74, 0}, {0.75, 1}, {1.25, 1}, {1.26, 0}};
    for (size_t i = 0; i < 4; i++) {
        in.nosing_in = cases[i].nosing;
        solve();
        ck_assert_int_eq(out.passes, cases[i].passes);
        ck_assert_int_eq(warned(FRAME_STAIRS_CAUTION_NOSING), !cases[i].passes);
    }
    in.nosing_in = 0;
    in.riser_thickness_in = 0; /* open risers need none */
    in.tread_thickness_in = 3.5;
    solve();
    ck_assert_int_eq(out.passes, 1);
    finish();
}
END_TEST

START_TEST(open_risers_and_the_sphere) {
    begin(30);
    in.risers = 4;
    in.riser_thickness_in = 0;
    in.tread_in = 11;
    in.tread_thickness_in = 1.5; /* gap of 6 in, but the stair rises only 30 in */
    solve();
    ck_assert_int_eq(out.passes, 1);
    in.rise_in = 30.01;
    solve();
    ck_assert(warned(FRAME_STAIRS_CAUTION_OPEN));
    in.tread_thickness_in = 30.01 / 4 - 4 + 0.01;
    solve();
    ck_assert(!warned(FRAME_STAIRS_CAUTION_OPEN));
    in.tread_thickness_in = 30.01 / 4 - 4;
    solve();
    ck_assert(warned(FRAME_STAIRS_CAUTION_OPEN));
    finish();
}
END_TEST

/* One flight rises 147 in by the code of 2015 and 151 in since 2018. */
START_TEST(a_landing_where_the_rise_asks_for_one) {
    const struct {
        double rise;
        frame_code_edition edition;
        int flights;
    } cases[] = {{147, FRAME_CODE_2015, 1}, {147.1, FRAME_CODE_2015, 2}, {147.1, FRAME_CODE_2018, 1},
                 {151, FRAME_CODE_2021, 1}, {151.1, FRAME_CODE_2021, 2}, {294, FRAME_CODE_2024, 2},
                 {303, FRAME_CODE_2024, 3}};
    for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
        begin(cases[i].rise);
        in.edition = cases[i].edition;
        solve();
        ck_assert_int_eq(out.flight_total, cases[i].flights);
        ck_assert_int_eq(out.treads, out.risers - out.flight_total);
        ck_assert_double_eq_tol(out.total_run_in, out.treads * out.tread_in + (out.flight_total - 1) * 36, 1e-9);
        ck_assert_int_eq(out.passes, 1);
        finish();
    }
    begin(160);
    in.landings = 0;
    solve();
    ck_assert(warned(FRAME_STAIRS_CAUTION_FLIGHT));
    in.landings = 1;
    in.landing_length_in = 35.9;
    solve();
    ck_assert(warned(FRAME_STAIRS_CAUTION_LANDING));
    in.landing_length_in = 36;
    solve();
    ck_assert_int_eq(out.passes, 1);
    in.width_in = 42; /* as long as the stair is wide */
    solve();
    ck_assert(warned(FRAME_STAIRS_CAUTION_LANDING));
    in.width_in = 35.9;
    solve();
    ck_assert(warned(FRAME_STAIRS_CAUTION_WIDTH));
    finish();
}
END_TEST

START_TEST(run_that_must_fit) {
    begin(107); /* 15 risers with treads of 10 in take 140 in */
    in.run_limit_in = 140;
    solve();
    ck_assert_int_eq(out.risers, 15);
    in.run_limit_in = 139.9; /* one riser fewer, treads deeper */
    solve();
    ck_assert_int_eq(out.risers, 14);
    ck_assert_double_le(out.total_run_in, 139.9);
    in.run_limit_in = 130;
    solve();
    ck_assert_double_eq_tol(out.tread_in, 10, 1e-9);
    in.run_limit_in = 129.9;
    refused(FRAME_IMPOSSIBLE, "run_limit_in");
    ck_assert_ptr_nonnull(strstr(frame_error_text(), "14 risers"));
    ck_assert_str_eq(frame_error_valid(), "130\"");
    in.min_tread_in = 9.9;
    solve();
    ck_assert_int_eq(out.risers, 14);
    finish();
}
END_TEST

START_TEST(headroom_at_under_and_over_its_limit) {
    begin(107);
    in.ceiling_in = 98;
    solve();
    const double needed = out.well_needed_in;
    ck_assert(FRAME_HAS(out.not_checked, FRAME_STAIRS_UNCHECKED_HEADROOM));
    in.well_length_in = needed;
    solve();
    ck_assert_double_eq_tol(out.headroom_in, 80, 1e-9);
    ck_assert_int_eq(out.risers, 15);
    ck_assert(!FRAME_HAS(out.not_checked, FRAME_STAIRS_UNCHECKED_HEADROOM));
    /* A shorter well asks for a steeper stair. */
    in.well_length_in = needed - 0.5;
    solve();
    ck_assert_int_eq(out.risers, 14);
    ck_assert_double_ge(out.headroom_in, 80 - 1e-9);
    /* With everything given, it is only said. */
    in.risers = 15;
    in.tread_in = 10;
    solve();
    ck_assert(warned(FRAME_STAIRS_CAUTION_HEADROOM));
    ck_assert_int_eq(out.passes, 0);
    in.risers = FRAME_NOT_GIVEN_INT;
    in.tread_in = FRAME_NOT_GIVEN;
    in.well_length_in = 90;
    refused(FRAME_IMPOSSIBLE, "well_length_in");
    in.well_length_in = FRAME_NOT_GIVEN;
    in.ceiling_in = 79.9; /* no headroom even on the floor */
    solve();
    ck_assert_double_eq(out.well_needed_in, FRAME_NOT_GIVEN);
    in.well_length_in = 500;
    refused(FRAME_IMPOSSIBLE, "ceiling_in");
    in.ceiling_in = FRAME_NOT_GIVEN;
    refused(FRAME_REQUIRED, "ceiling_in");
}
END_TEST

START_TEST(run_and_headroom_at_once) {
    begin(107);
    in.run_limit_in = 120;
    in.well_length_in = 90;
    in.ceiling_in = 98;
    refused(FRAME_IMPOSSIBLE, "run_limit_in");
    ck_assert_ptr_nonnull(strstr(frame_error_text(), "130\""));
    ck_assert_ptr_nonnull(strstr(frame_error_text(), "headroom a well of"));
}
END_TEST

START_TEST(handrail_and_guard) {
    begin(7 * 3);
    solve();
    ck_assert_int_eq(out.risers, 3);
    ck_assert_int_eq(out.handrail_needed, 0);
    ck_assert_int_eq(out.guard_from_tread, 0);
    in.rise_in = 7 * 4;
    solve();
    ck_assert_int_eq(out.handrail_needed, 1);
    in.rise_in = 75;
    in.risers = 10; /* the fourth tread is 30 in up, the fifth 37-1/2 in */
    solve();
    ck_assert_int_eq(out.guard_from_tread, 5);
    in.rise_in = 75.01;
    solve();
    ck_assert_int_eq(out.guard_from_tread, 4);
    ck_assert_double_eq(out.handrail_low_in, 34);
    ck_assert_double_eq(out.handrail_high_in, 38);
    finish();
}
END_TEST

/* With floors still to be laid, all finished risers are alike. */
START_TEST(finishes_at_both_ends) {
    begin(107);
    in.finish_below_in = 0.75;
    in.finish_above_in = 1.25;
    in.risers = 15;
    solve();
    const double riser = 107.5 / 15;
    ck_assert_double_eq_tol(out.riser_in, riser, 1e-12);
    /* Foot at -3/4; tread top = foot + cut + tread. */
    ck_assert_double_eq_tol(-0.75 + out.first_riser_cut_in + 1, riser, 1e-12);
    /* Last tread cut, to the floor that is there, plus the finish, less the tread: the last riser. */
    ck_assert_double_eq_tol(out.top_riser_in + 1.25 - 1, riser, 1e-12);
    ck_assert_double_eq_tol(out.drop_in, 0.25, 1e-12);
    finish();
}
END_TEST

START_TEST(uneven_floor_changes_each_stringer) {
    const double floor[3] = {0, 0.125, 0.375};
    begin(107);
    in.floor_at_stringers_in = floor;
    in.floor_at_stringers_count = 3;
    solve();
    ck_assert_int_eq(out.stringers, 3);
    ck_assert_int_eq(out.passes, 1);
    frame_stairs_piece first, last;
    frame_stairs_piece_at(stairs, 0, &first);
    frame_stairs_piece_at(stairs, 2, &last);
    ck_assert_double_eq_tol(first.length_in - last.length_in, 0.375 * sin(atan2(out.riser_in, out.tread_in)), 1e-9);
    const double worse[3] = {0, 0.125, 0.38};
    in.floor_at_stringers_in = worse;
    solve();
    ck_assert(warned(FRAME_STAIRS_CAUTION_UNEVEN));
    in.floor_at_stringers_count = 2;
    refused(FRAME_CONFLICT, "floor_at_stringers_in");
}
END_TEST

START_TEST(throat_and_what_cuts_a_stringer_through) {
    begin(105);
    in.tread_in = 10;
    solve();
    const double notch = out.notch_depth_in;
    in.stringer_depth_in = notch + 5;
    solve();
    ck_assert(!warned(FRAME_STAIRS_CAUTION_THROAT));
    in.stringer_depth_in = notch + 4.99;
    solve();
    ck_assert(warned(FRAME_STAIRS_CAUTION_THROAT));
    ck_assert(!warned(FRAME_STAIRS_CAUTION_THIN));
    in.stringer_depth_in = notch + 3.49;
    solve();
    ck_assert(warned(FRAME_STAIRS_CAUTION_THIN));
    in.stringer_depth_in = notch;
    refused(FRAME_IMPOSSIBLE, "size");
    in.size = FRAME_SIZE(2, 12);
    refused(FRAME_CONFLICT, "size");
    in.stringer_depth_in = FRAME_NOT_GIVEN;
    in.tread_thickness_in = 6;
    in.rise_in = 5;
    in.risers = 1;
    in.top = FRAME_STAIR_TOP_TREAD;
    refused(FRAME_IMPOSSIBLE, "tread_thickness_in");
    in.edition = FRAME_CODE_DCA6;
    refused(FRAME_NO_VALUE, "edition");
}
END_TEST

START_TEST(other_refusals) {
    begin(107);
    in.tread_in = 10;
    in.run_in = 140;
    refused(FRAME_CONFLICT, "run_in");
    in.tread_in = FRAME_NOT_GIVEN;
    in.run_in = 100; /* 14 risers would leave treads of 7.7 in */
    refused(FRAME_IMPOSSIBLE, "run_in");
    ck_assert_str_eq(frame_error_valid(), "130\"");
    in.run_in = 135; /* the most risers with treads deep enough */
    solve();
    ck_assert_int_eq(out.risers, 14);
    ck_assert_double_eq_tol(out.tread_in, 135.0 / 13, 1e-12);
    in.run_in = 20;
    in.landings = 1;
    in.risers = 15;
    refused(FRAME_IMPOSSIBLE, "run_in");
    in.landings = 15;
    refused(FRAME_IMPOSSIBLE, "landings");
    begin(1);
    in.finish_below_in = 1;
    refused(FRAME_IMPOSSIBLE, "rise_in");
    begin(107);
    in.stringers = 20;
    in.width_in = 20;
    refused(FRAME_IMPOSSIBLE, "width_in");
    begin(1200);
    in.usual_riser_in = 3;
    in.max_flight_rise_in = 600;
    refused(FRAME_TOO_LARGE, "risers");
}
END_TEST

/* What nobody could climb is refused, at its limits and not before. */
START_TEST(ladders_are_no_stairs) {
    begin(96.2);
    in.size = FRAME_NOT_GIVEN_INT;
    in.stringer_thickness_in = 3;
    in.stringer_depth_in = 40;
    in.tread_in = 10;
    in.risers = 4; /* 24.05 in each */
    refused(FRAME_IMPOSSIBLE, "risers");
    in.rise_in = 96;
    solve();
    ck_assert(FRAME_HAS(out.cautions, FRAME_STAIRS_CAUTION_RISER));
    in.tread_in = 5.9; /* less than a quarter of 24 in */
    refused(FRAME_IMPOSSIBLE, "tread_in");
    in.tread_in = 6;
    solve();
    in.tread_thickness_in = 6;
    in.rise_in = 20;
    refused(FRAME_IMPOSSIBLE, "tread_thickness_in");
    in.tread_thickness_in = 1;
    in.risers = 2;
    in.riser_thickness_in = 3;
    in.tread_in = 3;
    refused(FRAME_IMPOSSIBLE, "riser_thickness_in");
    in.tread_in = FRAME_NOT_GIVEN;
    in.run_in = 61;
    refused(FRAME_IMPOSSIBLE, "run_in");
    in.run_in = 60;
    solve();
    finish();
}
END_TEST

/* The steps' marks and the stock's length are the kernel's own. */
static void check_stringer(size_t index, const frame_stairs_piece *piece) {
    frame_stick *stick = NULL;
    frame_stick_lengths_out lengths;
    ck_assert_msg(!frame_stairs_stick(stairs, index, &stick), "%s", frame_error_text());
    ck_assert_int_eq(frame_stick_lengths(stick, &lengths), FRAME_OK);
    ck_assert_double_eq_tol(lengths.long_point_in, piece->length_in, 1e-7);
    ck_assert_double_eq_tol(lengths.short_point_in, piece->short_point_in, 1e-7);
    frame_stick_free(stick);
}

static void check_marks(void) {
    frame_stick *stick = NULL;
    ck_assert_int_eq(frame_stairs_stick(stairs, 0, &stick), FRAME_OK);
    for (size_t i = 0; i < frame_stairs_step_count(stairs); i++) {
        frame_stairs_step step;
        frame_stairs_step_at(stairs, i, &step);
        if (step.flight != 1) continue;
        int found = 0;
        for (size_t m = 0; m < frame_stick_corner_count(stick) && !found; m++) {
            frame_stick_corner corner;
            frame_stick_corner_at(stick, m, &corner);
            found = fabs(corner.along_in - step.from_foot_in) < 1e-6;
        }
        ck_assert_msg(found, "no corner of the stringer at %g", step.from_foot_in);
    }
    frame_stick_free(stick);
}

static void check_fit(void) {
    frame_fit_out fit;
    ck_assert_int_eq(frame_stairs_fit(stairs, &fit), FRAME_OK);
    ck_assert_msg(fit.fits, "pieces %d and %d share %g in3", fit.first, fit.second, fit.overlap_in3);
    ck_assert_int_gt(fit.pairs, 0);
}

/* Three stringers, fourteen treads, risers of three heights: the first, those between, the last. */
START_TEST(gangs_of_a_stair) {
    begin(107);
    solve();
    int total = 0, stringers = 0, treads = 0;
    for (size_t g = 0; g < frame_stairs_gang_count(stairs); g++) {
        frame_stairs_gang gang;
        frame_stairs_gang_at(stairs, g, &gang);
        total += gang.count;
        if (gang.kind == FRAME_PIECE_STRINGER) {
            stringers = gang.count;
            ck_assert_double_eq_tol(gang.start_deg, out.angle_deg, 1e-9); /* a plumb cut, from square */
        }
        if (gang.kind == FRAME_PIECE_TREAD) treads = gang.count;
    }
    ck_assert_int_eq(stringers, 3);
    ck_assert_int_eq(treads, 14);
    ck_assert_int_eq(total, (int)frame_stairs_piece_count(stairs));
    ck_assert_uint_eq(frame_stairs_gang_count(stairs), 5);
    finish();
}
END_TEST

/* Riser by riser from floor to floor along the treads. */
static void check_climb(void) {
    double height = 0;
    size_t next = 0;
    for (size_t f = 0; f < frame_stairs_flight_count(stairs); f++) {
        frame_stairs_flight flight;
        frame_stairs_flight_at(stairs, f, &flight);
        ck_assert_double_eq_tol(flight.from_height_in, height, 1e-9);
        for (int tread = 1; tread <= flight.treads; tread++) {
            frame_stairs_step step;
            ck_assert_int_eq(frame_stairs_step_at(stairs, next++, &step), FRAME_OK);
            ck_assert_int_eq(step.flight, (int)f + 1);
            ck_assert_double_eq_tol(step.height_in, height + tread * out.riser_in, 1e-9);
        }
        height += flight.risers * out.riser_in;
    }
    ck_assert_int_eq(next, frame_stairs_step_count(stairs));
    ck_assert_double_eq_tol(height, out.total_rise_in, 1e-9);
}

START_TEST(random_stairs_fit) {
    const int rounds = random_rounds(200, 2000);
    for (int i = 0; i < rounds; i++) {
        begin(random_between(16, 250));
        in.finish_below_in = random_whole(0, 1) * 0.75;
        in.finish_above_in = random_whole(0, 2) * 0.75;
        in.tread_thickness_in = random_whole(2, 6) * 0.25;
        in.riser_thickness_in = random_whole(0, 3) * 0.25;
        in.width_in = random_between(36, 60);
        in.turn = random_whole(1, 3);
        in.top = random_whole(1, 2);
        if (random_whole(0, 1)) in.landings = random_whole(0, 1);
        if (random_whole(0, 1)) in.tread_in = random_between(9.5, 13);
        solve();
        ck_assert_double_eq_tol(out.riser_in * out.risers, out.total_rise_in, 1e-9);
        if (in.landings == FRAME_NOT_GIVEN_INT) ck_assert_int_eq(warned(FRAME_STAIRS_CAUTION_FLIGHT), 0);
        ck_assert_int_eq(warned(FRAME_STAIRS_CAUTION_RISER), 0);
        for (size_t p = 0; p < frame_stairs_piece_count(stairs); p++) {
            frame_stairs_piece piece;
            frame_stairs_piece_at(stairs, p, &piece);
            if (piece.kind == FRAME_PIECE_STRINGER) check_stringer(p, &piece);
        }
        if (frame_stairs_step_count(stairs)) check_marks();
        check_fit();
        check_climb();
        finish();
    }
}
END_TEST

/* What is chosen within run and headroom keeps both; what is refused is refused with every choice tried. */
START_TEST(random_choices_keep_the_limits) {
    int fitted = 0, refusals = 0;
    for (int i = 0; i < 2000; i++) {
        begin(random_between(60, 140));
        in.run_limit_in = random_between(60, 200);
        in.ceiling_in = in.rise_in - random_between(8, 14);
        in.well_length_in = random_between(80, 180);
        const frame_status status = frame_stairs_solve(&in, &stairs, NULL);
        if (!status) {
            frame_stairs_result(stairs, &out);
            ck_assert_int_eq(out.passes, 1);
            ck_assert_double_le(out.total_run_in, in.run_limit_in + 1e-9);
            ck_assert_double_ge(out.headroom_in, 80 - 1e-9);
            fitted++;
            finish();
            continue;
        }
        ck_assert_int_eq(status, FRAME_IMPOSSIBLE);
        refusals++;
        const double run = in.run_limit_in;
        in.run_limit_in = FRAME_NOT_GIVEN;
        for (int risers = (int)ceil(in.rise_in / 7.75); risers < in.rise_in / 7 + 1; risers++) {
            in.risers = risers;
            in.tread_in = 10;
            solve();
            ck_assert(out.total_run_in > run || out.headroom_in < 80);
            finish();
        }
    }
    ck_assert_int_gt(fitted, 100);
    ck_assert_int_gt(refusals, 100);
}
END_TEST

START_TEST(working_says_what_was_done) {
    frame_working *w = NULL;
    frame_text *text = NULL;
    begin(160);
    in.well_length_in = 150;
    in.ceiling_in = 150;
    ck_assert(!frame_working_new(&w) && !frame_text_new(&text));
    ck_assert_msg(!frame_stairs_solve(&in, &stairs, w), "%s", frame_error_text());
    ck_assert_msg(!frame_working_check(w, text), "%s", frame_text_chars(text));
    ck_assert_int_gt(frame_working_step_count(w), 20);
    frame_working_free(w);
    frame_text_free(text);
    finish();
}
END_TEST

START_TEST(drawing_shows_every_tread) {
    frame_drawing *drawing = NULL;
    frame_text *text = NULL;
    begin(107);
    in.name = "boathouse stair";
    in.well_length_in = 131;
    in.ceiling_in = 98;
    solve();
    ck_assert(!frame_stairs_drawing(stairs, &drawing) && !frame_text_new(&text));
    ck_assert_int_eq(frame_drawing_svg(drawing, text), FRAME_OK);
    ck_assert_ptr_nonnull(strstr(frame_text_chars(text), "boathouse stair"));
    ck_assert_ptr_nonnull(strstr(frame_text_chars(text), "3-7/8")); /* the last tread */
    ck_assert_ptr_nonnull(strstr(frame_text_chars(text), "headroom"));
    frame_drawing_free(drawing);
    frame_text_free(text);
    frame_stick *stick = NULL;
    ck_assert_int_eq(frame_stairs_stick(stairs, 100, &stick), FRAME_OUT_OF_RANGE);
    ck_assert_int_eq(frame_stairs_stick(NULL, 0, &stick), FRAME_REQUIRED);
    ck_assert_int_eq(frame_stairs_drawing(stairs, NULL), FRAME_REQUIRED);
    finish();
}
END_TEST

/* Three winders in a quarter turn: chords of 30 degrees. */
START_TEST(winders_on_the_walkline) {
    frame_winders_in turn;
    frame_winders_out found;
    frame_winders_in_init(&turn);
    ck_assert_int_eq(frame_winders(&turn, &found, NULL), FRAME_OK);
    const double share = 2 * sin(acos(-1) / 12);
    ck_assert_double_eq_tol(found.offset_in, fmax(6 / share, 10 / share - 12), 1e-12);
    ck_assert_int_eq(found.passes, 1);
    ck_assert_double_eq_tol(found.narrow_tread_in, 6, 1e-12);
    turn.offset_in = found.offset_in - 0.01;
    frame_winders(&turn, &found, NULL);
    ck_assert_int_eq(found.passes, 0);
    ck_assert(FRAME_HAS(found.cautions, FRAME_WINDERS_CAUTION_NARROW));
    ck_assert(!FRAME_HAS(found.cautions, FRAME_WINDERS_CAUTION_WALKLINE));
    turn.offset_in = 10 / share - 12 - 0.01;
    frame_winders(&turn, &found, NULL);
    ck_assert(FRAME_HAS(found.cautions, FRAME_WINDERS_CAUTION_WALKLINE));
    turn.turn_deg = 270;
    turn.winders = 1;
    ck_assert_int_eq(frame_winders(&turn, &found, NULL), FRAME_IMPOSSIBLE);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("stairs");
    TCase *tests = tcase_create("all");
    tcase_set_timeout(tests, 600);
    tcase_add_test(tests, riser_at_under_and_over_its_limit);
    tcase_add_test(tests, tread_at_under_and_over_its_limit);
    tcase_add_test(tests, nosing_by_the_depth_of_the_tread);
    tcase_add_test(tests, open_risers_and_the_sphere);
    tcase_add_test(tests, a_landing_where_the_rise_asks_for_one);
    tcase_add_test(tests, run_that_must_fit);
    tcase_add_test(tests, headroom_at_under_and_over_its_limit);
    tcase_add_test(tests, run_and_headroom_at_once);
    tcase_add_test(tests, handrail_and_guard);
    tcase_add_test(tests, finishes_at_both_ends);
    tcase_add_test(tests, uneven_floor_changes_each_stringer);
    tcase_add_test(tests, throat_and_what_cuts_a_stringer_through);
    tcase_add_test(tests, other_refusals);
    tcase_add_test(tests, ladders_are_no_stairs);
    tcase_add_test(tests, gangs_of_a_stair);
    tcase_add_test(tests, random_stairs_fit);
    tcase_add_test(tests, random_choices_keep_the_limits);
    tcase_add_test(tests, working_says_what_was_done);
    tcase_add_test(tests, drawing_shows_every_tread);
    tcase_add_test(tests, winders_on_the_walkline);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
