/* Floors: ends, joints, openings; what cannot be; and random floors, whose pieces fit, whose openings are clear, whose
 * spacing is never wider than asked for and whose sheet edges lie on joists. */
#include <check.h>
#include <math.h>
#include <string.h>

#include <frame/frame.h>

#include "random.h"

static frame_floor_in in;
static frame_floor_out out;
static frame_floor *floor_made;
static frame_floor_opening openings[4];
static frame_floor_wall walls[3];
static frame_floor_beam beams[4];

static void begin(double span, double width) {
    floor_made = NULL;
    frame_floor_in_init(&in);
    in.span_in = span;
    in.width_in = width;
    in.size = FRAME_SIZE(2, 10);
    in.openings = openings;
    in.walls = walls;
    in.beams = beams;
}

static void finish(void) {
    frame_floor_free(floor_made);
    floor_made = NULL;
}

static void solve(void) {
    finish();
    ck_assert_msg(frame_floor_solve(&in, &floor_made, NULL) == FRAME_OK, "%s", frame_error_text());
    ck_assert_int_eq(frame_floor_result(floor_made, &out), FRAME_OK);
}

static void refused(frame_status status, const char *field) {
    finish();
    ck_assert_int_eq(frame_floor_solve(&in, &floor_made, NULL), status);
    ck_assert_str_eq(frame_error_field(), field);
    ck_assert_ptr_null(floor_made);
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

static void wall_at(double y, int plies) {
    frame_floor_wall *wall = &walls[in.wall_count++];
    frame_floor_wall_init(wall);
    wall->y_in = y;
    wall->plies = plies;
}

static frame_floor_beam *beam_at(double x) {
    frame_floor_beam *beam = &beams[in.beam_count++];
    frame_floor_beam_init(beam);
    beam->at_in = x;
    return beam;
}

static frame_floor_piece piece_at(size_t index) {
    frame_floor_piece piece;
    ck_assert_int_eq(frame_floor_piece_at(floor_made, index, &piece), FRAME_OK);
    return piece;
}

static int count_of(frame_piece_kind kind) {
    int count = 0;
    for (size_t i = 0; i < frame_floor_piece_count(floor_made); i++) count += piece_at(i).kind == kind;
    return count;
}

static void check_fit(void) {
    frame_fit_out fit;
    ck_assert_int_eq(frame_floor_fit(floor_made, &fit), FRAME_OK);
    if (fit.fits) return;
    const frame_floor_piece a = piece_at((size_t)fit.first), b = piece_at((size_t)fit.second);
    ck_abort_msg("%s and %s share %g in3", a.name, b.name, fit.overlap_in3);
}

/* I. P. Hicks, Builders' Guide (read): 32 ft at 16 in takes 25 joists. */
START_TEST(joists_as_the_handbook_counts) {
    begin(144, 384);
    solve();
    ck_assert_int_eq(out.joists, 25);
    ck_assert_int_eq(out.edges_off, 0);
    ck_assert_double_eq(out.joist_length_in, 141); /* between two rims of 1-1/2 in */
    ck_assert_double_eq(out.widest_in, 16);
    ck_assert_int_eq(out.hanger_total, 0);
    check_fit();
    finish();
}
END_TEST

/* Of two cantilevers the shorter may be the one that is too long for the span behind it. */
START_TEST(the_shorter_cantilever) {
    begin(240, 192);
    in.near_end = in.far_end = FRAME_JOIST_END_FREE;
    beam_at(8);
    beam_at(38);
    beam_at(231);
    solve();
    ck_assert_double_eq(out.cantilever_in, 9);
    ck_assert(FRAME_HAS(out.cautions, FRAME_FLOOR_CAUTION_CANTILEVER)); /* 8 of 30 in, 9 of 193 in */
    beams[1].at_in = 40;
    solve();
    ck_assert(!FRAME_HAS(out.cautions, FRAME_FLOOR_CAUTION_CANTILEVER));
    finish();
}
END_TEST

START_TEST(ledger_and_free_end) {
    begin(144, 192);
    in.near_end = FRAME_JOIST_END_LEDGER;
    in.far_end = FRAME_JOIST_END_FREE;
    refused(FRAME_IMPOSSIBLE, "beams"); /* one support is none */
    beam_at(120)->size = FRAME_SIZE(2, 12);
    solve();
    check_fit();
    ck_assert_double_eq(out.cantilever_in, 24);
    ck_assert_double_eq(out.longest_span_in, 118.5);
    ck_assert_int_eq(out.hanger_total, out.joists); /* each joist hangs at the ledger */
    ck_assert_int_eq(count_of(FRAME_PIECE_BEAM), 2);
    ck_assert(FRAME_HAS(out.cautions, FRAME_FLOOR_CAUTION_CANTILEVER)); /* over a joist's depth */
    for (size_t i = 0; i < frame_floor_piece_count(floor_made); i++) {
        const frame_floor_piece piece = piece_at(i);
        if (piece.kind == FRAME_PIECE_JOIST) {
            ck_assert_double_eq_tol(piece.start_x_in, 1.625, 1e-12); /* an eighth of gap */
            ck_assert_double_eq_tol(piece.length_in, 144 - 1.5 - 1.625, 1e-12);
        }
    }
    beams[0].at_in = 144 - 9.25; /* as long as the joist is deep, and under a quarter of what is behind */
    solve();
    ck_assert(!FRAME_HAS(out.cautions, FRAME_FLOOR_CAUTION_CANTILEVER));
    beams[0].at_in -= 0.01;
    solve();
    ck_assert(FRAME_HAS(out.cautions, FRAME_FLOOR_CAUTION_CANTILEVER));
    beams[0].at_in = 144;
    refused(FRAME_IMPOSSIBLE, "beams[0].at_in");
}
END_TEST

START_TEST(joists_joined_over_beams) {
    begin(480, 192);
    refused(FRAME_IMPOSSIBLE, "stock_in");
    beam_at(160);
    beam_at(320);
    in.stock_in = 180;
    solve();
    check_fit();
    ck_assert_double_le(out.joist_length_in, 180);
    ck_assert_double_le(out.widest_in, 16 + 1e-9);
    ck_assert_int_eq(out.edges_off, 0);
    ck_assert(FRAME_HAS(out.cautions, FRAME_FLOOR_CAUTION_LAP));
    in.joint = FRAME_JOIST_JOINT_BUTTED;
    solve();
    check_fit();
    ck_assert_int_eq(out.joints, 2 * 13);
    ck_assert_int_eq(out.edges_off, 0);
    in.stock_in = 150;
    refused(FRAME_IMPOSSIBLE, "stock_in");
    in.stock_in = 480; /* in one length over all three */
    solve();
    ck_assert_int_eq(out.joints, 0);
    ck_assert(FRAME_HAS(out.cautions, FRAME_FLOOR_CAUTION_SUPPORT));
    finish();
}
END_TEST

/* A stair opening: trimmers the whole way, headers between them, tails cut to them; single to 48 in, doubled beyond. */
START_TEST(an_opening_piece_by_piece) {
    begin(180, 192);
    open_at(40, 60, 100, 36);
    solve();
    check_fit();
    ck_assert_int_eq(count_of(FRAME_PIECE_TRIMMER), 2);
    ck_assert_int_eq(count_of(FRAME_PIECE_HEADER_JOIST), 2);
    for (size_t i = 0; i < frame_floor_piece_count(floor_made); i++) {
        const frame_floor_piece piece = piece_at(i);
        if (piece.kind == FRAME_PIECE_TRIMMER) ck_assert_double_eq(piece.length_in, 177);
        if (piece.kind == FRAME_PIECE_HEADER_JOIST) ck_assert_double_eq(piece.length_in, 36 - 0.25);
        if (piece.kind == FRAME_PIECE_TAIL && piece.start_x_in < 20)
            ck_assert_double_eq(piece.length_in, 40 - 1.5 - 0.125 - 1.5);
    }
    const int tails = count_of(FRAME_PIECE_TAIL);
    ck_assert_int_eq(out.hanger_total, 4 + tails); /* two at each header, one at each tail */
    openings[0].width_in = 48;
    solve();
    ck_assert_int_eq(count_of(FRAME_PIECE_HEADER_JOIST), 2);
    openings[0].width_in = 48.1;
    solve();
    ck_assert_int_eq(count_of(FRAME_PIECE_HEADER_JOIST), 4);
    ck_assert_int_eq(count_of(FRAME_PIECE_TRIMMER), 4);
    check_fit();
    openings[0].x_in = 1.5; /* against the rim: one header alone */
    solve();
    ck_assert_int_eq(count_of(FRAME_PIECE_HEADER_JOIST), 2);
    check_fit();
    openings[0].x_in = 3; /* no room for headers before it */
    refused(FRAME_IMPOSSIBLE, "openings[0].x_in");
    openings[0].x_in = 120;
    refused(FRAME_IMPOSSIBLE, "openings[0].x_in"); /* leaves the floor */
    openings[0].x_in = 40;
    openings[0].y_in = 3;
    refused(FRAME_IMPOSSIBLE, "openings[0].y_in"); /* doubled trimmers run into the end joist */
    openings[0].y_in = 60;
    wall_at(57, 2);
    refused(FRAME_IMPOSSIBLE, "openings[0].y_in");
    walls[0].y_in = 54;
    solve();
    check_fit();
    finish();
}
END_TEST

/* Lengths are the kernel's. */
static void check_lengths(void) {
    for (size_t i = 0; i < frame_floor_piece_count(floor_made); i++) {
        const frame_floor_piece piece = piece_at(i);
        frame_stick *stick = NULL;
        frame_stick_lengths_out lengths;
        ck_assert_msg(!frame_floor_stick(floor_made, i, &stick), "%s: %s", piece.name, frame_error_text());
        frame_stick_lengths(stick, &lengths);
        ck_assert_double_eq_tol(lengths.long_point_in, piece.length_in, 1e-7);
        ck_assert_double_eq_tol(lengths.short_point_in, piece.short_point_in, 1e-7);
        frame_stick_free(stick);
    }
}

static void check_clear(void) {
    for (size_t o = 0; o < in.opening_count; o++) {
        frame_stick_in box;
        frame_stick *hole = NULL;
        frame_stick_in_init(&box);
        box.thickness_in = 9.25;
        box.depth_in = openings[o].width_in;
        box.crown_x = box.crown_z = 0;
        box.crown_y = 1;
        box.start_x_in = openings[o].x_in;
        box.end_x_in = openings[o].x_in + openings[o].length_in;
        box.start_y_in = box.end_y_in = openings[o].y_in + openings[o].width_in / 2;
        box.start_z_in = box.end_z_in = 9.25 / 2;
        ck_assert_msg(!frame_stick_new(&box, &hole), "%s", frame_error_text());
        for (size_t i = 0; i < frame_floor_piece_count(floor_made); i++) {
            frame_stick *stick = NULL;
            frame_stick_fit_out fit;
            ck_assert_int_eq(frame_floor_stick(floor_made, i, &stick), FRAME_OK);
            ck_assert_int_eq(frame_stick_fit(stick, hole, &fit), FRAME_OK);
            ck_assert_msg(fit.overlap_in3 < 1e-6, "%s lies in an opening", piece_at(i).name);
            frame_stick_free(stick);
        }
        frame_stick_free(hole);
    }
}

/* Of the pieces alone: at any place between supports, from joist to joist no more than the spacing, but over openings.
 */
static void check_spacing(double x) {
    double ys[200];
    int count = 0;
    for (size_t i = 0; i < frame_floor_piece_count(floor_made) && count < 200; i++) {
        const frame_floor_piece piece = piece_at(i);
        if (piece.kind < FRAME_PIECE_END_JOIST || piece.kind > FRAME_PIECE_DOUBLE ||
            piece.kind == FRAME_PIECE_HEADER_JOIST)
            continue;
        if (piece.start_x_in > x || piece.end_x_in < x) continue;
        int at = count++;
        for (; at > 0 && ys[at - 1] > piece.start_y_in; at--) ys[at] = ys[at - 1];
        ys[at] = piece.start_y_in;
    }
    for (int i = 1; i < count; i++) {
        int open = 0;
        for (size_t o = 0; o < in.opening_count; o++)
            open |= x > openings[o].x_in - 4 && x < openings[o].x_in + openings[o].length_in + 4 &&
                    ys[i] > openings[o].y_in && ys[i - 1] < openings[o].y_in + openings[o].width_in;
        if (!open) ck_assert_double_le(ys[i] - ys[i - 1], in.spacing_in + 1e-9);
    }
}

static double first_joint(void) {
    double first = in.span_in;
    for (size_t i = 0; i < in.beam_count; i++) first = fmin(first, beams[i].at_in);
    return first;
}

/* Of the pieces alone: at a place along the joists, each sheet edge has half an inch of joist on either side. */
static void check_edges(double x) {
    const double sheet = in.spacing_in == 19.2 ? 96 : 48;
    for (double e = in.datum_in + sheet * ceil((0.5 - in.datum_in) / sheet); e < in.width_in - 0.5; e += sheet) {
        double from = e, to = e;
        int open = 0;
        for (size_t o = 0; o < in.opening_count; o++)
            open |= x > openings[o].x_in - 4 && x < openings[o].x_in + openings[o].length_in + 4 &&
                    e > openings[o].y_in - 0.5 && e < openings[o].y_in + openings[o].width_in + 0.5;
        for (int grown = 1; grown && !open;) { /* joists set tight together hold it as one */
            grown = 0;
            for (size_t i = 0; i < frame_floor_piece_count(floor_made); i++) {
                const frame_floor_piece piece = piece_at(i);
                if (piece.kind < FRAME_PIECE_END_JOIST || piece.kind > FRAME_PIECE_DOUBLE ||
                    piece.kind == FRAME_PIECE_HEADER_JOIST || piece.start_x_in > x || piece.end_x_in < x)
                    continue;
                const double low = piece.start_y_in - 0.75, high = piece.start_y_in + 0.75;
                if (low > to + 1e-9 || high < from - 1e-9 || (low >= from - 1e-9 && high <= to + 1e-9)) continue;
                from = fmin(from, low);
                to = fmax(to, high);
                grown = 1;
            }
        }
        if (!open) ck_assert_msg(from <= e - 0.5 + 1e-9 && to >= e + 0.5 - 1e-9, "sheet edge %g at x = %g: %g..%g; spacing %g datum %g width %g joint %d edges off %d beams %zu ends %d %d", e, x, from, to, in.spacing_in, in.datum_in, in.width_in, in.joint, out.edges_off, in.beam_count, in.near_end, in.far_end);
    }
}

static void random_floor(void) {
    const double spacings[] = {12, 16, 19.2, 24};
    begin(random_between(100, 420), random_between(100, 400));
    in.spacing_in = spacings[random_whole(0, 3)];
    in.datum_in = random_whole(0, 2) ? 0 : random_between(-20, 20);
    in.near_end = random_whole(1, 2);
    in.far_end = random_whole(1, 3);
    in.joint = random_whole(1, 2);
    in.end_plies = random_whole(1, 2);
    in.stock_in = 240;
    if (in.span_in > 200 || in.far_end == FRAME_JOIST_END_FREE) {
        const int many = in.span_in > 330 ? 2 : 1;
        const double end = in.far_end == FRAME_JOIST_END_FREE ? in.span_in - 20 : in.span_in;
        for (int i = 1; i <= many; i++)
            beam_at(in.far_end == FRAME_JOIST_END_FREE ? end * i / many : end * i / (many + 1));
    }
    double y = 10;
    for (int i = 0; i < 3 && y < in.width_in - 70; i++) {
        y += random_between(0, 50);
        if (random_whole(0, 2)) {
            const double width = random_between(20, 70), length = random_between(20, 60);
            if (y + width > in.width_in - 12) break;
            open_at(random_between(20, in.span_in - 80), y, length, width);
            y += width + 10;
        } else if (in.wall_count < 3 && y < in.width_in - 12) {
            wall_at(y, random_whole(1, 3));
            y += 14;
        }
    }
}

START_TEST(random_floors_fit) {
    const int rounds = random_rounds(200, 2000);
    int solved = 0;
    for (int i = 0; i < rounds; i++) {
        random_floor();
        const double rows[] = {in.span_in / 3, in.span_in * 0.7};
        const double struts[] = {in.span_in * random_between(0.4, 0.65)};
        in.blocking_in = rows;
        in.blocking_count = 2;
        in.bridging_in = struts;
        in.bridging_count = (size_t)random_whole(0, 1);
        const frame_status status = frame_floor_solve(&in, &floor_made, NULL);
        if (status == FRAME_IMPOSSIBLE) continue; /* an opening over a joint, or a span too long for the stock */
        ck_assert_msg(!status, "%s", frame_error_text());
        frame_floor_result(floor_made, &out);
        solved++;
        check_fit();
        check_clear();
        check_lengths();
        ck_assert_double_le(out.widest_in, in.spacing_in + 1e-9);
        for (double x = 8; x < in.span_in - 8; x += 11.7) check_spacing(x);
        for (double x = 8; x < first_joint() - 4; x += 11.7) check_edges(x);
        if (in.joint == FRAME_JOIST_JOINT_BUTTED) ck_assert_int_eq(out.edges_off, 0);
        finish();
    }
    ck_assert_int_gt(solved, rounds / 2);
}
END_TEST

START_TEST(other_refusals) {
    begin(144, 192);
    in.size = FRAME_NOT_GIVEN_INT;
    refused(FRAME_REQUIRED, "thickness_in");
    in.size = FRAME_SIZE(2, 10);
    in.spacing_in = 1.5;
    refused(FRAME_IMPOSSIBLE, "spacing_in");
    in.spacing_in = 16;
    in.width_in = 2;
    refused(FRAME_IMPOSSIBLE, "width_in");
    in.width_in = 192;
    in.span_in = 3;
    refused(FRAME_IMPOSSIBLE, "span_in");
    in.span_in = 144;
    beam_at(100);
    beam_at(90);
    refused(FRAME_IMPOSSIBLE, "beams[1].at_in");
    beams[1].at_in = 102.9; /* two beams of two plies, 3 in wide: just meeting, and just not */
    beams[0].size = beams[1].size = FRAME_SIZE(2, 10);
    refused(FRAME_IMPOSSIBLE, "beams[1].at_in");
    beams[1].at_in = 103;
    solve();
    finish();
    frame_floor_free(NULL);
}
END_TEST

/* Measures that are allowed one by one, and together make no floor. */
START_TEST(absurd_floors) {
    const double near[] = {60, 61}, apart[] = {60, 61.5};
    begin(144, 192);
    in.blocking_in = near;
    in.blocking_count = 2;
    refused(FRAME_IMPOSSIBLE, "blocking_in");
    in.blocking_in = apart;
    solve();
    in.blocking_count = 0;
    in.width_in = 2001;
    in.spacing_in = 2;
    refused(FRAME_TOO_LARGE, "spacing_in");
    in.spacing_in = 16;
    solve();
    finish();
}
END_TEST

/* Cross bridging: two struts between each two joists, from edge to edge, that share no wood with anything. */
START_TEST(cross_bridging) {
    const double rows[] = {72}, blocks[] = {75};
    begin(144, 192);
    in.bridging_in = rows;
    in.bridging_count = 1;
    solve();
    check_fit();
    check_lengths();
    ck_assert_int_eq(out.bridging, 12); /* 192 in at 16: 12 bays */
    for (size_t i = 0; i < frame_floor_piece_count(floor_made); i++) {
        const frame_floor_piece strut = piece_at(i);
        if (strut.kind != FRAME_PIECE_BRIDGING) continue;
        /* A parallelogram 3/4 in thick: its ends are as high as the joist less its rise. */
        const double lean = strut.start_deg * 3.14159265358979323846 / 180;
        const double c = strut.end_y_in - strut.start_y_in - 2 * cos(lean); /* the axis goes an inch past its cuts */
        ck_assert_double_eq_tol(c * tan(lean) + 0.75 / cos(lean), 9.25, 1e-9);
        ck_assert_double_eq_tol(strut.length_in, c / cos(lean) + 0.75 * tan(lean), 1e-9);
    }
    in.blocking_in = blocks;
    in.blocking_count = 1;
    refused(FRAME_IMPOSSIBLE, "bridging_in");
    in.blocking_count = 0;
    const double off[] = {3};
    in.bridging_in = off;
    refused(FRAME_IMPOSSIBLE, "bridging_in");
    in.bridging_in = rows;
    in.bridging_size = FRAME_SIZE(4, 4);
    refused(FRAME_IMPOSSIBLE, "bridging_size");
    in.bridging_count = 0; /* IRC R502.7.1: deeper than 2x12, more than 8 ft without */
    in.size = FRAME_SIZE(2, 14);
    solve();
    ck_assert(FRAME_HAS(out.cautions, FRAME_FLOOR_CAUTION_BRIDGING));
    in.bridging_size = FRAME_NOT_GIVEN_INT;
    in.bridging_count = 1;
    solve();
    ck_assert(!FRAME_HAS(out.cautions, FRAME_FLOOR_CAUTION_BRIDGING));
    in.bridging_count = 0;
    in.span_in = 96;
    solve();
    ck_assert(!FRAME_HAS(out.cautions, FRAME_FLOOR_CAUTION_BRIDGING));
    in.span_in = 144;
    in.size = FRAME_SIZE(2, 12);
    solve();
    ck_assert(!FRAME_HAS(out.cautions, FRAME_FLOOR_CAUTION_BRIDGING));
    finish();
}
END_TEST

START_TEST(working_and_drawing) {
    frame_working *w = NULL;
    frame_text *text = NULL;
    frame_drawing *drawing = NULL;
    begin(288, 192);
    in.stock_in = 160;
    in.name = "cabin floor";
    beam_at(144)->size = FRAME_SIZE(2, 12);
    ck_assert(!frame_working_new(&w) && !frame_text_new(&text));
    ck_assert_msg(!frame_floor_solve(&in, &floor_made, w), "%s", frame_error_text());
    ck_assert_msg(!frame_working_check(w, text), "%s", frame_text_chars(text));
    ck_assert_int_eq(frame_floor_drawing(floor_made, &drawing), FRAME_OK);
    ck_assert_int_eq(frame_drawing_svg(drawing, text), FRAME_OK);
    ck_assert_ptr_nonnull(strstr(frame_text_chars(text), "cabin floor"));
    frame_drawing_free(drawing);
    frame_working_free(w);
    frame_text_free(text);
    ck_assert_int_eq(frame_floor_drawing(NULL, &drawing), FRAME_REQUIRED);
    int total = 0;
    for (size_t g = 0; g < frame_floor_gang_count(floor_made); g++) {
        frame_floor_gang gang;
        frame_floor_gang_at(floor_made, g, &gang);
        total += gang.count;
    }
    ck_assert_int_eq(total, (int)frame_floor_piece_count(floor_made));
    int stage = 0; /* pieces come in the order they go in */
    for (size_t i = 0; i < frame_floor_piece_count(floor_made); i++) {
        ck_assert_int_ge(piece_at(i).stage, stage);
        stage = piece_at(i).stage;
    }
    finish();
}
END_TEST

int main(void) {
    Suite *suite = suite_create("floor");
    TCase *tests = tcase_create("all");
    tcase_set_timeout(tests, 1200);
    tcase_add_test(tests, joists_as_the_handbook_counts);
    tcase_add_test(tests, ledger_and_free_end);
    tcase_add_test(tests, the_shorter_cantilever);
    tcase_add_test(tests, joists_joined_over_beams);
    tcase_add_test(tests, an_opening_piece_by_piece);
    tcase_add_test(tests, random_floors_fit);
    tcase_add_test(tests, other_refusals);
    tcase_add_test(tests, absurd_floors);
    tcase_add_test(tests, cross_bridging);
    tcase_add_test(tests, working_and_drawing);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
