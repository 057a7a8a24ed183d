/* Walls: heights, corners, openings, rakes and steps; what cannot be; and random walls, whose pieces fit, whose
 * openings are clear, and whose studs and sheet edges are where they belong, by the kernel's own measure. */
#include <check.h>
#include <math.h>
#include <string.h>

#include <frame/frame.h>

#include "random.h"

static frame_wall_in in;
static frame_wall_out out;
static frame_wall *wall;
static frame_wall_opening openings[6];
static frame_wall_crossing crossings[3];

static void begin(double length) {
    wall = NULL;
    frame_wall_in_init(&in);
    in.length_in = length;
    in.stud_length_in = 92.625;
    in.size = FRAME_SIZE(2, 4);
    in.openings = openings;
    in.crossings = crossings;
}

static void finish(void) {
    frame_wall_free(wall);
    wall = NULL;
}

static void solve(void) {
    finish();
    ck_assert_msg(frame_wall_solve(&in, &wall, NULL) == FRAME_OK, "%s", frame_error_text());
    ck_assert_int_eq(frame_wall_result(wall, &out), FRAME_OK);
}

static void refused(frame_status status, const char *field) {
    finish();
    ck_assert_int_eq(frame_wall_solve(&in, &wall, NULL), status);
    ck_assert_str_eq(frame_error_field(), field);
    ck_assert_ptr_null(wall);
}

static frame_wall_opening *open_at(double at, double width, double head, double sill) {
    frame_wall_opening *opening = &openings[in.opening_count++];
    frame_wall_opening_init(opening);
    opening->at_in = at;
    opening->width_in = width;
    opening->head_in = head;
    opening->sill_in = sill;
    opening->header_size = FRAME_SIZE(2, 8);
    return opening;
}

static frame_wall_crossing *cross_at(double at) {
    frame_wall_crossing *crossing = &crossings[in.crossing_count++];
    frame_wall_crossing_init(crossing);
    crossing->at_in = at;
    return crossing;
}

static frame_wall_piece piece_at(size_t index) {
    frame_wall_piece piece;
    ck_assert_int_eq(frame_wall_piece_at(wall, index, &piece), FRAME_OK);
    return piece;
}

static int count_of(frame_piece_kind kind) {
    int count = 0;
    for (size_t i = 0; i < frame_wall_piece_count(wall); i++) count += piece_at(i).kind == kind;
    return count;
}

static void check_fit(void) {
    frame_fit_out fit;
    ck_assert_int_eq(frame_wall_fit(wall, &fit), FRAME_OK);
    if (fit.fits) return;
    const frame_wall_piece a = piece_at((size_t)fit.first), b = piece_at((size_t)fit.second);
    ck_abort_msg("%s and %s share %g in3", a.name, b.name, fit.overlap_in3);
}

/* The ceiling wanted, with its board and the floor's finish, is the height of the framing. */
START_TEST(height_from_the_ceiling) {
    begin(120);
    in.stud_length_in = FRAME_NOT_GIVEN;
    in.ceiling_in = 96;
    in.floor_finish_in = 0.625;
    in.ceiling_finish_in = 0.5;
    solve();
    ck_assert_double_eq(out.height_in, 97.125);
    ck_assert_double_eq(out.stud_length_in, 92.625); /* the precut stud of the trade */
    in.ceiling_in = FRAME_NOT_GIVEN;
    in.height_in = 97.125;
    in.bottom_plates = 2;
    solve();
    ck_assert_double_eq(out.stud_length_in, 91.125);
    in.stud_length_in = 92.625;
    refused(FRAME_CONFLICT, "height_in");
    in.height_in = in.stud_length_in = FRAME_NOT_GIVEN;
    refused(FRAME_REQUIRED, "height_in");
    in.height_in = 6;
    refused(FRAME_IMPOSSIBLE, "height_in");
}
END_TEST

/* NAVEDTRA 14044 p. 1-23 (read): the first stud at 15-1/4 in; Building Trades Pocketbook (read): 60 ft take 46. */
START_TEST(studs_as_the_manuals_count) {
    begin(720);
    solve();
    ck_assert_int_eq(out.studs, 46);
    frame_wall_mark mark;
    frame_wall_mark_at(wall, 1, &mark);
    ck_assert_double_eq(mark.mark_in, 15.25);
    ck_assert_double_eq(out.widest_in, 16);
    ck_assert_int_eq(out.edges_off, 0);
    check_fit();
    finish();
}
END_TEST

/* A window of 48 in: two kings, two jacks, header over the jacks, sill between them, cripples on the layout. */
START_TEST(an_opening_piece_by_piece) {
    begin(192);
    open_at(64.75, 48, 82.5, 36)->name = "lake window";
    solve();
    ck_assert_int_eq(out.kings, 2);
    ck_assert_int_eq(out.jacks, 2);
    ck_assert_int_eq(count_of(FRAME_PIECE_HEADER), 2);
    ck_assert_int_eq(count_of(FRAME_PIECE_FILLER), 1);
    ck_assert_int_eq(count_of(FRAME_PIECE_SILL), 1);
    for (size_t i = 0; i < frame_wall_piece_count(wall); i++) {
        const frame_wall_piece piece = piece_at(i);
        if (piece.kind == FRAME_PIECE_HEADER) ck_assert_double_eq(piece.length_in, 51);
        if (piece.kind == FRAME_PIECE_FILLER) ck_assert_double_eq(piece.thickness_in, 0.5);
        if (piece.kind == FRAME_PIECE_SILL) ck_assert_double_eq(piece.length_in, 48);
        if (piece.kind == FRAME_PIECE_JACK) ck_assert_double_eq(piece.length_in, 81);
        if (piece.kind == FRAME_PIECE_CRIPPLE && piece.start_z_in < 40) ck_assert_double_eq(piece.length_in, 36 - 3);
        /* 94.125 (under the plates) less 82.5 and the header's 7-1/4 */
        if (piece.kind == FRAME_PIECE_CRIPPLE && piece.start_z_in > 40) ck_assert_double_eq(piece.length_in, 4.375);
    }
    frame_wall_header header;
    ck_assert_int_eq(frame_wall_header_at(wall, 0, &header), FRAME_OK);
    ck_assert_str_eq(header.name, "lake window");
    ck_assert_double_eq(header.bottom_in, 82.5);
    ck_assert_double_eq(header.top_in, 89.75);
    check_fit();
    finish();
}
END_TEST

START_TEST(headers_of_other_kinds) {
    begin(192);
    frame_wall_opening *opening = open_at(64, 40, 80, 0);
    opening->header_at = FRAME_HEADER_AT_PLATES;
    solve();
    ck_assert_int_eq(count_of(FRAME_PIECE_HEAD), 1);
    ck_assert(FRAME_HAS(out.cautions, FRAME_WALL_CAUTION_CUT_PLATE));
    ck_assert_int_eq(count_of(FRAME_PIECE_BOTTOM_PLATE), 2);
    check_fit();
    opening->head_in = 94.125 - 7.25; /* right under the header: no head plate */
    solve();
    ck_assert_int_eq(count_of(FRAME_PIECE_HEAD), 0);
    check_fit();
    opening->head_in -= 1; /* neither */
    refused(FRAME_IMPOSSIBLE, "openings[0].head_in");
    opening->header_at = FRAME_HEADER_AT_OPENING;
    opening->head_in = 82.5;
    opening->header_turned = FRAME_TURNED_FLAT;
    opening->header_size = FRAME_SIZE(2, 4);
    opening->header_plies = 2;
    solve();
    frame_wall_header header;
    frame_wall_header_at(wall, 0, &header);
    ck_assert_double_eq(header.top_in, 85.5);
    check_fit();
    opening->header_turned = FRAME_TURNED_ON_EDGE; /* a single ply with filler, in a wall of 2 in more than it */
    opening->header_size = FRAME_SIZE(4, 8);
    opening->header_plies = 1;
    in.size = FRAME_SIZE(2, 6);
    solve();
    ck_assert_int_eq(count_of(FRAME_PIECE_FILLER), 0); /* 2 in are missing: air */
    ck_assert(FRAME_HAS(out.cautions, FRAME_WALL_CAUTION_SINGLE_PLY));
    check_fit();
    opening->filler_most_in = 1.99;
    solve();
    ck_assert_int_eq(count_of(FRAME_PIECE_FILLER), 0);
    opening->filler_most_in = 2;
    opening->head_in = 80;
    opening->caps = 1; /* 80 in, a cap, 7-1/4, a cap */
    solve();
    ck_assert(!FRAME_HAS(out.cautions, FRAME_WALL_CAUTION_SINGLE_PLY));
    ck_assert_int_eq(count_of(FRAME_PIECE_FILLER), 1);
    ck_assert_int_eq(count_of(FRAME_PIECE_HEAD), 2);
    frame_wall_header_at(wall, 0, &header);
    ck_assert_double_eq(header.bottom_in, 80);
    ck_assert_double_eq(header.top_in, 80 + 1.5 + 7.25 + 1.5);
    check_fit();
    opening->header_at = FRAME_HEADER_AT_PLATES; /* the plates are the upper cap */
    opening->head_in = 70;
    solve();
    frame_wall_header_at(wall, 0, &header);
    ck_assert_double_eq_tol(header.bottom_in, 94.125 - 7.25 - 1.5, 1e-9);
    ck_assert_int_eq(count_of(FRAME_PIECE_HEAD), 2); /* the lower cap, and the head plate of the opening */
    check_fit();
    opening->header_turned = FRAME_TURNED_FLAT;
    opening->header_at = FRAME_HEADER_AT_OPENING;
    opening->header_size = FRAME_SIZE(2, 6);
    refused(FRAME_CONFLICT, "openings[0].caps");
    opening->header_turned = FRAME_TURNED_ON_EDGE;
    opening->header_size = FRAME_SIZE(4, 8);
    opening->head_in = 82.5;
    opening->caps = 0;
    opening->header_plies = 2;
    refused(FRAME_IMPOSSIBLE, "openings[0].header_plies");
    opening->header_plies = 1;
    opening->jacks = 0; /* hung between the kings */
    solve();
    ck_assert_int_eq(out.jacks, 0);
    check_fit();
    finish();
}
END_TEST

/* IRC 2021 table R602.7(1), read in an adoption text: what the look-up itself says. */
START_TEST(headers_and_jacks_by_the_code_table) {
    begin(240);
    open_at(64, 60, 82, 36)->header_size = FRAME_NOT_GIVEN_INT;
    in.size = FRAME_SIZE(2, 6);
    in.supports = FRAME_CODE_SUPPORTS_ROOF;
    in.ground_snow_psf = 30;
    in.building_width_in = 288;
    refused(FRAME_REQUIRED, "openings[0].edition");
    in.edition = FRAME_CODE_2021;
    solve();
    frame_wall_header header;
    frame_wall_header_at(wall, 0, &header);
    frame_code_header_span_in ask;
    frame_code_header_span_out found;
    frame_code_header_span_in_init(&ask);
    ask.supports = in.supports;
    ask.size = header.size;
    ask.plies = 2;
    ask.ground_snow_psf = 30;
    ask.building_width_in = 288;
    ask.top_braced = 0;
    ask.edition = FRAME_CODE_2021;
    ck_assert_msg(!frame_code_header_span(&ask, &found, NULL), "%s", frame_error_text());
    ck_assert_double_eq(header.code_span_in, found.span_in);
    ck_assert_double_ge(found.span_in, 60);
    ck_assert_int_eq(header.jacks, found.jack_studs);
    ck_assert_int_eq(out.passes, 1);
    ck_assert(!FRAME_HAS(out.not_checked, FRAME_WALL_UNCHECKED_HEADERS));
    /* The next smaller one does not span it. */
    ask.size = FRAME_SIZE(2, (header.size & 0xffff) / 16 - 2);
    ck_assert_int_eq(frame_code_header_span(&ask, &found, NULL), FRAME_OK);
    ck_assert_double_lt(found.span_in, 60);
    openings[0].header_size = ask.size;
    solve();
    ck_assert_int_eq(out.passes, 0);
    ck_assert(FRAME_HAS(out.cautions, FRAME_WALL_CAUTION_SHORT));
    openings[0].header_size = FRAME_NOT_GIVEN_INT;
    openings[0].width_in = 150;
    refused(FRAME_NO_VALUE, "openings[0].width_in");
    in.supports = FRAME_NOT_GIVEN_INT;
    refused(FRAME_REQUIRED, "openings[0].header_size");
    in.bearing = 0; /* a stud laid flat spans 96 in */
    openings[0].width_in = 96;
    solve();
    frame_wall_header_at(wall, 0, &header);
    ck_assert_int_eq(header.turned, FRAME_TURNED_FLAT);
    openings[0].width_in = 96.1;
    refused(FRAME_REQUIRED, "openings[0].header_size");
}
END_TEST

/* King studs by the code's table: what the look-up itself says; in 2015 by the studs' spacing. */
START_TEST(kings_by_the_code_table) {
    frame_code_king_studs_in ask;
    frame_code_king_studs_out found;
    begin(240);
    open_at(64, 84, 82, 36);
    in.edition = FRAME_CODE_2021;
    in.wind_mph = 115;
    in.exposure = FRAME_CODE_EXPOSURE_B;
    solve();
    frame_code_king_studs_in_init(&ask);
    ask.edition = in.edition;
    ask.header_span_in = 84;
    ask.wind_mph = 115;
    ask.exposure = FRAME_CODE_EXPOSURE_B;
    ck_assert_msg(!frame_code_king_studs(&ask, &found, NULL), "%s", frame_error_text());
    ck_assert_int_eq(out.kings, 2 * found.full_height_studs);
    ck_assert(FRAME_HAS(out.cautions, FRAME_WALL_CAUTION_CODE));
    check_fit();
    in.edition = FRAME_CODE_2015;
    in.wind_mph = FRAME_NOT_GIVEN;
    solve();
    ask.edition = in.edition;
    ask.stud_spacing_in = 16;
    ck_assert_msg(!frame_code_king_studs(&ask, &found, NULL), "%s", frame_error_text());
    ck_assert_int_eq(out.kings, 2 * found.full_height_studs);
    openings[0].kings = 3; /* the caller's own */
    solve();
    ck_assert_int_eq(out.kings, 6);
    in.supports = FRAME_CODE_SUPPORTS_ROOF;
    openings[0].header_turned = FRAME_TURNED_FLAT;
    refused(FRAME_OUTSIDE_SCOPE, "openings[0].header_turned");
}
END_TEST

START_TEST(openings_that_cannot_be) {
    begin(192);
    open_at(20, 40, 82, 36);
    open_at(62, 40, 82, 36); /* 2 in between them: kings and jacks need 6 */
    refused(FRAME_IMPOSSIBLE, "openings[1].at_in");
    ck_assert_ptr_nonnull(strstr(frame_error_valid(), "4\""));
    openings[1].at_in = 66;
    solve();
    ck_assert_int_eq(out.kings, 4);
    openings[1].at_in = 160;
    refused(FRAME_IMPOSSIBLE, "openings[1].at_in"); /* leaves the wall */
    openings[1].at_in = 149;
    refused(FRAME_IMPOSSIBLE, "openings[1].at_in"); /* no room beside the end stud */
    openings[1].at_in = 147.5;
    solve();
    openings[0].at_in = 4.4;
    refused(FRAME_IMPOSSIBLE, "openings[0].at_in");
    openings[0].at_in = 4.5;
    solve();
    check_fit();
    openings[0].head_in = 87; /* 7-1/4 in of header do not fit under 94-1/8 in */
    refused(FRAME_IMPOSSIBLE, "openings[0].head_in");
    openings[0].head_in = 30;
    refused(FRAME_IMPOSSIBLE, "openings[0].head_in");
    openings[0].head_in = 82;
    openings[0].sill_in = 2;
    refused(FRAME_IMPOSSIBLE, "openings[0].sill_in");
    in.spacing_in = 1.5;
    openings[0].sill_in = 36;
    refused(FRAME_IMPOSSIBLE, "spacing_in");
}
END_TEST

START_TEST(corners_and_partitions) {
    const frame_wall_end ends[] = {FRAME_WALL_END_PLAIN, FRAME_WALL_END_CORNER, FRAME_WALL_END_CORNER_THREE,
                                   FRAME_WALL_END_BUTT};
    for (int e = 0; e < 4; e++) {
        begin(240);
        in.start_end = in.end_end = ends[e];
        in.size = e % 2 ? FRAME_SIZE(2, 6) : FRAME_SIZE(2, 4);
        cross_at(100);
        cross_at(180)->backing = FRAME_WALL_BACKING_LADDER;
        solve();
        check_fit();
        ck_assert_int_eq(count_of(FRAME_PIECE_BACKING), ends[e] == FRAME_WALL_END_CORNER ? 3 : 1);
        /* The cap plate: held back at corners, past a butting end, cut out for the partitions. */
        double low = 1e9, high = -1e9, caps = 0;
        for (size_t i = 0; i < frame_wall_piece_count(wall); i++) {
            const frame_wall_piece piece = piece_at(i);
            if (piece.kind != FRAME_PIECE_CAP_PLATE) continue;
            low = fmin(low, piece.start_x_in);
            high = fmax(high, piece.end_x_in);
            caps += piece.length_in;
        }
        const double depth = e % 2 ? 5.5 : 3.5;
        const double lap = ends[e] == FRAME_WALL_END_BUTT ? depth : ends[e] == FRAME_WALL_END_PLAIN ? 0 : -depth;
        ck_assert_double_eq_tol(low, -lap, 1e-9);
        ck_assert_double_eq_tol(high, 240 + lap, 1e-9);
        ck_assert_double_eq_tol(caps, 240 + 2 * lap - 2 * depth, 1e-9);
        finish();
    }
    begin(120);
    cross_at(118);
    refused(FRAME_IMPOSSIBLE, "crossings[0].at_in");
    crossings[0].at_in = 2;
    refused(FRAME_IMPOSSIBLE, "crossings[0].at_in");
    crossings[0].backing = FRAME_WALL_BACKING_LADDER;
    solve();
    check_fit();
    finish();
}
END_TEST

/* NAVEDTRA 14044 ch. 2 (read): 24 in on centres at 6 in 12 differ by 12 in; a metric course (read): 600 mm at 150 in
 * 250 by 360 mm. */
START_TEST(gable_studs_differ_by_spacing_times_slope) {
    begin(288);
    in.stud_length_in = FRAME_NOT_GIVEN;
    in.height_in = 12;
    in.spacing_in = 24;
    in.slope = 0.5;
    in.peak_in = 144;
    in.top_plates = 1;
    solve();
    ck_assert_double_eq(out.difference_in, 12);
    ck_assert_double_eq_tol(out.top_angle_deg, 26.565051, 1e-6);
    double last = 0;
    for (size_t i = 0; i < frame_wall_piece_count(wall); i++) {
        const frame_wall_piece piece = piece_at(i);
        if (piece.kind != FRAME_PIECE_STUD || piece.start_x_in < 20 || piece.start_x_in > 130) continue;
        if (last > 0) ck_assert_double_eq_tol(piece.length_in - last, 12, 1e-9);
        ck_assert_double_eq_tol(piece.length_in - piece.short_point_in, 0.75, 1e-9); /* thickness times slope */
        last = piece.length_in;
    }
    check_fit();
    in.studs_flat = 1;
    solve();
    for (size_t i = 0; i < frame_wall_piece_count(wall); i++) {
        const frame_wall_piece piece = piece_at(i);
        if (piece.kind == FRAME_PIECE_STUD && piece.start_x_in > 20 && piece.start_x_in < 130)
            ck_assert_double_eq_tol(piece.length_in - piece.short_point_in, 1.75, 1e-9);
    }
    check_fit();
    in.spacing_in = 600 / 25.4;
    in.slope = 150.0 / 250;
    solve();
    ck_assert_double_eq_tol(out.difference_in * 25.4, 360, 1e-9);
    in.far_slope = 1;
    refused(FRAME_IMPOSSIBLE, "far_slope");
    in.far_slope = FRAME_NOT_GIVEN;
    in.peak_in = 300;
    refused(FRAME_IMPOSSIBLE, "peak_in");
    in.peak_in = FRAME_NOT_GIVEN;
    in.slope = -0.5;
    refused(FRAME_IMPOSSIBLE, "height_in"); /* comes down to the bottom plate */
}
END_TEST

START_TEST(steps_and_slopes_under_a_wall) {
    frame_wall_step two[2];
    begin(288);
    in.stud_length_in = FRAME_NOT_GIVEN;
    in.height_in = 97.125;
    for (int i = 0; i < 2; i++) {
        frame_wall_step_init(&two[i]);
        two[i].at_in = 96.0 * (i + 1);
        two[i].rise_in = i ? 12 : 24;
    }
    in.steps = two;
    in.step_count = 2;
    solve();
    check_fit();
    ck_assert_int_eq(count_of(FRAME_PIECE_BOTTOM_PLATE), 3);
    ck_assert_double_eq_tol(out.longest_in - out.shortest_in, 36, 1e-9);
    ck_assert_double_eq(out.stud_length_in, FRAME_NOT_GIVEN);
    two[1].at_in = 97;
    refused(FRAME_IMPOSSIBLE, "steps[1].at_in");
    two[1].at_in = 192;
    in.bottom_slope = 0.1;
    refused(FRAME_CONFLICT, "bottom_slope");
    in.step_count = 0;
    open_at(100, 36, 75, 40);
    solve();
    check_fit();
    in.stud_length_in = 92;
    in.height_in = FRAME_NOT_GIVEN;
    refused(FRAME_CONFLICT, "stud_length_in");
}
END_TEST

START_TEST(plate_joints) {
    begin(600);
    in.plate_stock_in = 144;
    solve();
    double top[20], cap[20];
    int tops = 0, caps = 0;
    for (size_t i = 0; i < frame_wall_piece_count(wall); i++) {
        const frame_wall_piece piece = piece_at(i);
        if (piece.kind < FRAME_PIECE_BOTTOM_PLATE || piece.kind > FRAME_PIECE_CAP_PLATE) continue;
        ck_assert_double_le(piece.length_in, 144);
        if (piece.end_x_in > 599) continue;
        if (piece.kind == FRAME_PIECE_TOP_PLATE) top[tops++] = piece.end_x_in;
        if (piece.kind == FRAME_PIECE_CAP_PLATE) cap[caps++] = piece.end_x_in;
        ck_assert_double_eq_tol(remainder(piece.end_x_in, 16), 0, 1e-9); /* over the middle of a stud */
    }
    ck_assert_int_ge(tops, 4);
    for (int i = 0; i < tops; i++)
        for (int k = 0; k < caps; k++) ck_assert_double_ge(fabs(top[i] - cap[k]), 24);
    in.plate_stock_in = 12;
    refused(FRAME_IMPOSSIBLE, "plate_stock_in");
}
END_TEST

START_TEST(rows_of_blocking) {
    const double rows[] = {48.75};
    begin(120);
    in.blocking_in = rows;
    in.blocking_count = 1;
    open_at(50, 30, 82, 36);
    solve();
    check_fit();
    ck_assert_int_gt(out.blocks, 2);
    for (size_t i = 0; i < frame_wall_piece_count(wall); i++) {
        const frame_wall_piece piece = piece_at(i);
        if (piece.kind == FRAME_PIECE_BLOCK) ck_assert(piece.end_x_in <= 50 || piece.start_x_in >= 80);
    }
    finish();
}
END_TEST

/* Rows that would meet are refused; a row beside the blocks of a ladder leaves those out that would meet them. */
START_TEST(blocks_that_would_meet) {
    const double near[] = {48, 49.4}, apart[] = {48, 49.5}, ladder[] = {23.5};
    begin(120);
    in.blocking_in = near;
    in.blocking_count = 2;
    refused(FRAME_IMPOSSIBLE, "blocking_in");
    in.blocking_in = apart;
    solve();
    check_fit();
    in.blocking_in = ladder;
    in.blocking_count = 1;
    cross_at(60)->backing = FRAME_WALL_BACKING_LADDER;
    solve();
    check_fit();
    finish();
}
END_TEST

START_TEST(no_piece_longer_than_a_stick_may_be) {
    begin(1300);
    in.plate_stock_in = 600;
    solve();
    in.stud_length_in = FRAME_NOT_GIVEN;
    in.height_in = 100;
    in.slope = 1.5;
    refused(FRAME_TOO_LARGE, "height_in");
    finish();
}
END_TEST

/* ---- random walls ---- */

static void check_lengths(void) {
    for (size_t i = 0; i < frame_wall_piece_count(wall); i++) {
        const frame_wall_piece piece = piece_at(i);
        frame_stick *stick = NULL;
        frame_stick_lengths_out lengths;
        ck_assert_msg(!frame_wall_stick(wall, i, &stick), "%s: %s", piece.name, frame_error_text());
        frame_stick_lengths(stick, &lengths);
        ck_assert_double_eq_tol(lengths.long_point_in, piece.length_in, 1e-7);
        ck_assert_double_eq_tol(lengths.short_point_in, piece.short_point_in, 1e-7);
        frame_stick_free(stick);
    }
}

/* Nothing stands in the rough openings: a box of each, against every piece. */
static void check_clear(void) {
    for (size_t o = 0; o < in.opening_count; o++) {
        const double low = openings[o].sill_in > 0 ? openings[o].sill_in : 0;
        frame_stick_in box;
        frame_stick *hole = NULL;
        frame_stick_in_init(&box);
        box.thickness_in = 20;
        box.depth_in = openings[o].head_in - low;
        box.start_x_in = openings[o].at_in;
        box.end_x_in = openings[o].at_in + openings[o].width_in;
        box.start_y_in = box.end_y_in = 0;
        box.start_z_in = box.end_z_in = low + box.depth_in / 2 + in.bottom_slope * openings[o].at_in;
        ck_assert_msg(!frame_stick_new(&box, &hole), "%s", frame_error_text());
        for (size_t i = 0; i < frame_wall_piece_count(wall); i++) {
            frame_stick *stick = NULL;
            frame_stick_fit_out fit;
            frame_wall_stick(wall, i, &stick);
            ck_assert_int_eq(frame_stick_fit(stick, hole, &fit), FRAME_OK);
            ck_assert_msg(fit.overlap_in3 < 1e-6, "%s stands in an opening", piece_at(i).name);
            frame_stick_free(stick);
        }
        frame_stick_free(hole);
    }
}

/* Of what stands in a slice of the wall at a height, no two neighbours are farther apart than the spacing, but for the
 * openings' voids. z is where only studs, kings, jacks and cripples can be. */
static void check_spacing(void) {
    ck_assert_double_le(out.widest_in, in.spacing_in + 1e-9);
}

/* The wood at a sheet's edge at the outer face, from the list of pieces alone. */
static int counted_edges_off(void) {
    const double sheet = fabs(in.spacing_in - 19.2) < 1e-9 ? 96 : 48, length = in.length_in;
    int off = 0;
    for (double x = in.datum_in; x < length; x += sheet) {
        double from = x, to = x;
        int open = x < 0.5 || x > length - 0.5;
        for (size_t o = 0; o < in.opening_count; o++)
            open |= x > openings[o].at_in - 0.5 && x < openings[o].at_in + openings[o].width_in + 0.5;
        for (int grown = !open; grown;) { /* what is set tight bears as one */
            grown = 0;
            for (size_t i = 0; i < frame_wall_piece_count(wall); i++) {
                const frame_wall_piece piece = piece_at(i);
                if (piece.kind < FRAME_PIECE_STUD || piece.kind > FRAME_PIECE_CRIPPLE) continue;
                const int across = fabs(piece.start_y_in - piece.depth_in / 2) < 1e-6;
                const double half = (across ? piece.thickness_in : piece.depth_in) / 2;
                const double low = piece.start_x_in - half, high = piece.start_x_in + half;
                if (low > to + 1e-9 || high < from - 1e-9 || (low >= from - 1e-9 && high <= to + 1e-9)) continue;
                from = fmin(from, low);
                to = fmax(to, high);
                grown = 1;
            }
        }
        off += !open && fmin(x - from, to - x) < 0.5 - 1e-9;
    }
    return off;
}

static void random_wall(void) {
    const double spacings[] = {12, 16, 19.2, 24};
    begin(random_between(100, 500));
    in.size = random_whole(0, 1) ? FRAME_SIZE(2, 4) : FRAME_SIZE(2, 6);
    in.stud_length_in = FRAME_NOT_GIVEN;
    in.height_in = random_between(92, 120);
    in.spacing_in = spacings[random_whole(0, 3)];
    in.datum_in = random_whole(0, 2) ? 0 : random_between(-20, 20);
    in.top_plates = random_whole(1, 2);
    in.bottom_plates = random_whole(1, 2);
    in.start_end = random_whole(1, 4);
    in.end_end = random_whole(1, 4);
    in.joint_offset_in = in.top_plates == 2 ? 24 : 0;
    in.plate_stock_in = random_between(144, 240);
    if (random_whole(0, 2) == 0) {
        in.slope = random_between(0, 0.8);
        if (random_whole(0, 1)) {
            in.peak_in = in.length_in * random_between(0.3, 0.7);
            in.far_slope = -random_between(0, 0.5) * fmin(in.peak_in / (in.length_in - in.peak_in), 1) * in.slope;
        }
    }
    in.bottom_slope = random_whole(0, 3) ? 0 : random_between(0, 0.05);
    double at = 14;
    for (int i = 0; i < 4 && at < in.length_in - 60; i++) {
        at += random_between(0, 60);
        const double width = random_between(20, 80);
        if (at + width > in.length_in - 14) break;
        frame_wall_opening *opening =
            open_at(at, width, random_between(70, 80), random_whole(0, 3) ? random_between(24, 60) : 0);
        opening->jacks = random_whole(0, 2);
        opening->kings = random_whole(1, 2);
        opening->header_at = random_whole(1, 2);
        opening->sills = random_whole(1, 2);
        opening->header_size = FRAME_SIZE(2, 6);
        opening->header_plies = random_whole(1, 2);
        opening->filler_most_in = random_whole(0, 1) ? 5 : FRAME_NOT_GIVEN;
        opening->caps = random_whole(0, 3) == 0;
        if (in.bottom_slope > 0) opening->sill_in = fmax(opening->sill_in, 0);
        at += width + 14;
    }
    if (random_whole(0, 1) && at < in.length_in - 30) cross_at(at + 5)->backing = random_whole(1, 2);
}

START_TEST(random_walls_fit) {
    const int rounds = random_rounds(200, 2000);
    int solved = 0, without_edges = 0;
    for (int i = 0; i < rounds; i++) {
        random_wall();
        const frame_status status = frame_wall_solve(&in, &wall, NULL);
        if (status == FRAME_IMPOSSIBLE) continue; /* a head too near the plates, a channel too near the end */
        ck_assert_msg(!status, "%s", frame_error_text());
        frame_wall_result(wall, &out);
        solved++;
        check_fit();
        check_lengths();
        check_clear();
        check_spacing();
        ck_assert_int_eq(out.edges_off, counted_edges_off());
        /* Channels and corners turned flat have no stud at the outside where an edge may land. */
        const int flat = in.start_end == FRAME_WALL_END_CORNER || in.end_end == FRAME_WALL_END_CORNER ||
                         in.start_end == FRAME_WALL_END_CORNER_THREE || in.end_end == FRAME_WALL_END_CORNER_THREE ||
                         in.crossing_count;
        if (!flat) ck_assert_int_eq(out.edges_off, 0);
        without_edges += !flat;
        finish();
    }
    ck_assert_int_gt(solved, rounds / 2);
    ck_assert_int_gt(without_edges, 10);
}
END_TEST

START_TEST(gangs_hold_every_piece_once) {
    begin(240);
    open_at(64, 40, 82, 36);
    in.stud_length_in = FRAME_NOT_GIVEN;
    in.height_in = 97;
    in.slope = 0.5;
    in.peak_in = 120;
    solve();
    int total = 0;
    for (size_t g = 0; g < frame_wall_gang_count(wall); g++) {
        frame_wall_gang gang;
        frame_wall_gang_at(wall, g, &gang);
        total += gang.count;
        int found = 0;
        for (size_t i = 0; i < frame_wall_piece_count(wall); i++) {
            const frame_wall_piece piece = piece_at(i);
            if (piece.gang != (int)g + 1) continue;
            ck_assert_double_eq_tol(piece.length_in, gang.length_in, 1.0 / 64);
            ck_assert_int_eq(piece.kind, gang.kind);
            if (!found) ck_assert_int_eq(gang.first, (int)i);
            found++;
        }
        ck_assert_int_eq(found, gang.count);
    }
    ck_assert_int_eq(total, (int)frame_wall_piece_count(wall));
    /* Both halves of the gable are alike. */
    for (size_t g = 0; g < frame_wall_gang_count(wall); g++) {
        frame_wall_gang gang;
        frame_wall_gang_at(wall, g, &gang);
        if (gang.kind == FRAME_PIECE_STUD) ck_assert_int_ge(gang.count, 1);
    }
    finish();
}
END_TEST

START_TEST(working_and_drawing) {
    frame_working *w = NULL;
    frame_text *text = NULL;
    frame_drawing *drawing = NULL;
    begin(600);
    in.name = "lake side";
    in.stud_length_in = FRAME_NOT_GIVEN;
    in.ceiling_in = 96;
    open_at(64, 40, 82, 36)->name = "lake window";
    ck_assert(!frame_working_new(&w) && !frame_text_new(&text));
    ck_assert_msg(!frame_wall_solve(&in, &wall, w), "%s", frame_error_text());
    ck_assert_msg(!frame_working_check(w, text), "%s", frame_text_chars(text));
    ck_assert_int_eq(frame_wall_drawing(wall, &drawing), FRAME_OK);
    ck_assert_int_eq(frame_drawing_svg(drawing, text), FRAME_OK);
    ck_assert_ptr_nonnull(strstr(frame_text_chars(text), "lake window"));
    ck_assert_ptr_nonnull(strstr(frame_text_chars(text), "1' 3-1/4") ? "" : strstr(frame_text_chars(text), "3-1/4"));
    frame_drawing_free(drawing);
    frame_working_free(w);
    frame_text_free(text);
    ck_assert_int_eq(frame_wall_drawing(NULL, &drawing), FRAME_REQUIRED);
    ck_assert_int_eq(frame_wall_stick(wall, 0, NULL), FRAME_REQUIRED);
    finish();
}
END_TEST

int main(void) {
    Suite *suite = suite_create("wall");
    TCase *tests = tcase_create("all");
    tcase_set_timeout(tests, 1200);
    tcase_add_test(tests, height_from_the_ceiling);
    tcase_add_test(tests, studs_as_the_manuals_count);
    tcase_add_test(tests, an_opening_piece_by_piece);
    tcase_add_test(tests, headers_of_other_kinds);
    tcase_add_test(tests, headers_and_jacks_by_the_code_table);
    tcase_add_test(tests, kings_by_the_code_table);
    tcase_add_test(tests, openings_that_cannot_be);
    tcase_add_test(tests, corners_and_partitions);
    tcase_add_test(tests, gable_studs_differ_by_spacing_times_slope);
    tcase_add_test(tests, steps_and_slopes_under_a_wall);
    tcase_add_test(tests, plate_joints);
    tcase_add_test(tests, rows_of_blocking);
    tcase_add_test(tests, blocks_that_would_meet);
    tcase_add_test(tests, no_piece_longer_than_a_stick_may_be);
    tcase_add_test(tests, random_walls_fit);
    tcase_add_test(tests, gangs_hold_every_piece_once);
    tcase_add_test(tests, working_and_drawing);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
