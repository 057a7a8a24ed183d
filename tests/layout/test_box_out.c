/* Box-outs: what is cut and what carries it, piece by piece; and random passages through random frames, whose box-outs
 * share no wood with one another, with what stands there, or with the passage. Roofs by way of an assembly. */
#include <check.h>
#include <math.h>
#include <string.h>

#include <frame/frame.h>

#include "random.h"

static frame_assembly *frame_made; /* the frame, whatever it is made of */
static frame_passage_in in;
static frame_passage_out out;
static frame_passage *passage;

static void must(frame_status status) {
    ck_assert_msg(status == FRAME_OK, "%s", frame_error_text());
}

static void begin(void) {
    frame_made = NULL;
    passage = NULL;
    must(frame_assembly_new(&frame_made));
}

static void finish(void) {
    frame_passage_free(passage);
    frame_assembly_free(frame_made);
    passage = NULL;
    frame_made = NULL;
}

static void ask(frame_passage_way way, double width, double height) {
    frame_passage_in_init(&in);
    in.way = way;
    in.edition = FRAME_CODE_2021;
    in.width_in = width;
    in.height_in = height;
    in.room_in = 0;
}

static void judge(void) {
    frame_passage_free(passage);
    passage = NULL;
    must(frame_assembly_passage(frame_made, &in, &passage));
    must(frame_passage_result(passage, &out));
}

static frame_passage_piece piece_at(size_t index) {
    frame_passage_piece piece;
    must(frame_passage_piece_at(passage, index, &piece));
    return piece;
}

static int count_of(frame_piece_kind kind) {
    int count = 0;
    for (size_t i = 0; i < frame_passage_piece_count(passage); i++) count += piece_at(i).kind == kind;
    return count;
}

static double longest_of(frame_piece_kind kind) {
    double most = 0;
    for (size_t i = 0; i < frame_passage_piece_count(passage); i++)
        if (piece_at(i).kind == kind) most = fmax(most, piece_at(i).length_in);
    return most;
}

static int warned(frame_passage_caution caution) {
    return FRAME_HAS(out.cautions, caution) != 0;
}

/* ---- what must always hold ---- */

static double shared(const frame_stick *a, const frame_stick *b) {
    frame_stick_fit_out fit;
    must(frame_stick_fit(a, b, &fit));
    return fit.overlap_in3;
}

/* A piece of the frame that is cut, or that the passage or the box-out meets and that carries nothing, gives way. */
static int gives_way(int32_t index) {
    for (size_t i = 0; i < frame_passage_piece_count(passage); i++)
        if (piece_at(i).of == index) return 1;
    for (size_t i = 0; i < frame_passage_meet_count(passage); i++) {
        frame_passage_meet meet;
        must(frame_passage_meet_at(passage, i, &meet));
        if (meet.piece == index) return 1;
    }
    return 0;
}

static void check_length(size_t index, const frame_stick *stick) {
    frame_stick_lengths_out lengths;
    must(frame_stick_lengths(stick, &lengths));
    ck_assert_double_eq_tol(piece_at(index).length_in, lengths.long_point_in, 1e-7);
}

static void check_piece(size_t index, const frame_stick *pipe) {
    frame_stick *stick = NULL;
    const frame_passage_piece piece = piece_at(index);
    must(frame_passage_stick(passage, index, &stick));
    check_length(index, stick);
    ck_assert_msg(shared(stick, pipe) < 1e-6, "%s lies in the passage", piece.name);
    for (size_t i = index + 1; i < frame_passage_piece_count(passage); i++) {
        frame_stick *other = NULL;
        must(frame_passage_stick(passage, i, &other));
        ck_assert_msg(shared(stick, other) < 1e-6, "%s and %s share wood", piece.name, piece_at(i).name);
        frame_stick_free(other);
    }
    for (size_t i = 0; i < frame_assembly_piece_count(frame_made); i++) {
        frame_stick *other = NULL;
        if (gives_way((int32_t)i)) continue;
        must(frame_assembly_stick(frame_made, i, &other));
        ck_assert_msg(shared(stick, other) < 1e-6, "%s and piece %d share wood", piece.name, (int)i);
        frame_stick_free(other);
    }
    frame_stick_free(stick);
}

static frame_stick *make_pipe(void) {
    frame_stick_in s;
    frame_stick *stick = NULL;
    const double high = in.height_in == FRAME_NOT_GIVEN ? in.width_in : in.height_in;
    frame_stick_in_init(&s);
    s.thickness_in = in.width_in + 2 * in.room_in;
    s.depth_in = high + 2 * in.room_in;
    const int up = in.way == FRAME_PASSAGE_Z;
    s.start_x_in = s.end_x_in = in.x_in;
    s.start_y_in = up ? in.y_in : -300;
    s.end_y_in = up ? in.y_in : 300;
    s.start_z_in = up ? -300 : in.z_in;
    s.end_z_in = up ? 300 : in.z_in;
    s.crown_y = up;
    s.crown_z = !up;
    must(frame_stick_new(&s, &stick));
    return stick;
}

static void check_all(void) {
    frame_stick *pipe = make_pipe();
    for (size_t i = 0; i < frame_passage_piece_count(passage); i++) check_piece(i, pipe);
    ck_assert_int_eq(out.box_out_pieces, (int)frame_passage_piece_count(passage));
    frame_stick_free(pipe);
}

/* ---- walls ---- */

static void add_wall(double length, int bearing, int supports) {
    frame_wall_in w;
    frame_wall *wall = NULL;
    frame_wall_in_init(&w);
    w.length_in = length;
    w.stud_length_in = 92.625;
    w.size = FRAME_SIZE(2, 4);
    w.bearing = bearing;
    if (supports) {
        w.supports = FRAME_CODE_SUPPORTS_ROOF;
        w.edition = FRAME_CODE_2021;
        w.ground_snow_psf = 30;
        w.building_width_in = 288;
    }
    must(frame_wall_solve(&w, &wall, NULL));
    must(frame_assembly_add_wall(frame_made, wall, 0, 0, 0, 0));
    frame_wall_free(wall);
}

/* Studs at 15.25, 31.25, 47.25: the one in the middle is cut, its neighbours are kings. */
START_TEST(a_vent_through_a_bearing_wall) {
    begin();
    add_wall(192, 1, 0);
    ask(FRAME_PASSAGE_Y, 16, 6);
    in.x_in = 32;
    in.z_in = 50;
    judge();
    ck_assert(out.box_out && out.box_out_pieces == 0 && warned(FRAME_PASSAGE_CAUTION_NO_HEADER));
    in.header_size = FRAME_SIZE(2, 6);
    judge();
    check_all();
    ck_assert(warned(FRAME_PASSAGE_CAUTION_SHORE) && !warned(FRAME_PASSAGE_CAUTION_NO_HEADER));
    ck_assert_int_eq(out.cut_total, 1);
    ck_assert_int_eq(count_of(FRAME_PIECE_JACK), 2);
    ck_assert_int_eq(count_of(FRAME_PIECE_HEADER), 2);
    ck_assert_int_eq(count_of(FRAME_PIECE_SILL), 1);
    ck_assert_int_eq(count_of(FRAME_PIECE_CRIPPLE), 2);
    /* From the bottom plate's top, 1-1/2, to the passage's top, 53. */
    ck_assert_double_eq_tol(longest_of(FRAME_PIECE_JACK), 53 - 1.5, 1e-9);
    ck_assert_double_eq_tol(longest_of(FRAME_PIECE_HEADER), 47.25 - 16.75, 1e-9);
    ck_assert_double_eq_tol(longest_of(FRAME_PIECE_SILL), 47.25 - 16.75 - 3, 1e-9);
    /* Below: 47 less the sill and the plate; above: 94.125 less header and passage. */
    ck_assert_double_eq_tol(longest_of(FRAME_PIECE_CRIPPLE), 47 - 1.5 - 1.5, 1e-9);
    in.header_plies = 3; /* 4-1/2 in of header in a wall of 3-1/2 */
    judge();
    ck_assert(out.box_out_pieces == 0 && warned(FRAME_PASSAGE_CAUTION_NO_BOX));
    finish();
}
END_TEST

START_TEST(a_vent_through_a_wall_that_bears_nothing) {
    begin();
    add_wall(192, 0, 0);
    ask(FRAME_PASSAGE_Y, 16, 6);
    in.bearing = 0;
    in.x_in = 32;
    in.z_in = 50;
    judge();
    check_all();
    ck_assert(warned(FRAME_PASSAGE_CAUTION_IDLE));
    ck_assert_int_eq(count_of(FRAME_PIECE_JACK), 0);
    ck_assert_int_eq(count_of(FRAME_PIECE_HEADER), 1);
    ck_assert_double_eq_tol(longest_of(FRAME_PIECE_CRIPPLE), 47 - 1.5 - 1.5, 1e-9);
    in.z_in = 4; /* its sill would lie in the bottom plate */
    judge();
    ck_assert(out.box_out_pieces == 0 && warned(FRAME_PASSAGE_CAUTION_NO_BOX));
    in.z_in = 90; /* its header would lie in the top plate */
    judge();
    ck_assert(out.box_out_pieces == 0 && warned(FRAME_PASSAGE_CAUTION_NO_BOX));
    finish();
}
END_TEST

/* A wall that was laid out with what its headers support knows the header of a box-out. */
START_TEST(a_header_by_the_code_table) {
    frame_wall_in w;
    frame_wall *wall = NULL;
    begin();
    frame_wall_in_init(&w);
    w.length_in = 192;
    w.stud_length_in = 92.625;
    w.size = FRAME_SIZE(2, 4);
    w.supports = FRAME_CODE_SUPPORTS_ROOF;
    w.edition = FRAME_CODE_2021;
    w.ground_snow_psf = 30;
    w.building_width_in = 288;
    must(frame_wall_solve(&w, &wall, NULL));
    ask(FRAME_PASSAGE_Y, 16, 6);
    in.x_in = 32;
    in.z_in = 50;
    must(frame_wall_passage(wall, &in, &passage));
    must(frame_passage_result(passage, &out));
    ck_assert_int_eq(count_of(FRAME_PIECE_HEADER), 2);
    frame_code_header_span_in asked;
    frame_code_header_span_out found;
    frame_code_header_span_in_init(&asked);
    asked.supports = w.supports;
    asked.edition = w.edition;
    asked.ground_snow_psf = 30;
    asked.building_width_in = 288;
    asked.plies = 2;
    asked.top_braced = 0;
    asked.covering = 1;
    for (size_t i = 0; i < frame_passage_piece_count(passage); i++)
        if (piece_at(i).kind == FRAME_PIECE_HEADER) asked.size = piece_at(i).size;
    must(frame_code_header_span(&asked, &found, NULL));
    ck_assert_double_ge(found.span_in, longest_of(FRAME_PIECE_SILL));
    frame_wall_free(wall);
    finish();
}
END_TEST

/* ---- floors ---- */

static void add_floor(double span, double width) {
    frame_floor_in f;
    frame_floor *made = NULL;
    frame_floor_in_init(&f);
    f.span_in = span;
    f.width_in = width;
    f.size = FRAME_SIZE(2, 10);
    must(frame_floor_solve(&f, &made, NULL));
    must(frame_assembly_add_floor(frame_made, made, 0, 0, 0, 0));
    frame_floor_free(made);
}

START_TEST(a_duct_up_through_a_floor) {
    begin();
    add_floor(168, 240);
    ask(FRAME_PASSAGE_Z, 20, 10); /* 20 in along x, 10 across the joists */
    in.x_in = 80;
    in.y_in = 48; /* the joist at 47.25 to 48.75 */
    judge();
    check_all();
    ck_assert_int_eq(out.cut_total, 1);
    ck_assert_int_eq(count_of(FRAME_PIECE_HEADER_JOIST), 2);
    ck_assert_int_eq(count_of(FRAME_PIECE_TAIL), 2);
    ck_assert_int_eq(count_of(FRAME_PIECE_TRIMMER), 0);
    /* Between the joists at 31.25 and 63.25, with gaps for hangers. */
    ck_assert_double_eq_tol(longest_of(FRAME_PIECE_HEADER_JOIST), 63.25 - 32.75 - 0.25, 1e-9);
    /* From the rim, 166.5, to the header beyond the duct, 90 + 1.5 + 1/8. */
    ck_assert_double_eq_tol(longest_of(FRAME_PIECE_TAIL), 166.5 - 91.625, 1e-9);
    in.height_in = 44; /* wider than 48 in from joist to joist: everything doubled */
    judge();
    check_all();
    ck_assert(warned(FRAME_PASSAGE_CAUTION_WIDE));
    ck_assert_int_eq(count_of(FRAME_PIECE_HEADER_JOIST), 4);
    ck_assert_int_eq(count_of(FRAME_PIECE_TRIMMER), 2);
    ck_assert_int_eq(out.cut_total, 3);
    in.x_in = 14; /* what is left before the header is shorter than it is deep */
    judge();
    ck_assert(out.box_out_pieces == 0 && warned(FRAME_PASSAGE_CAUTION_NO_BOX));
    in.x_in = 80;
    in.y_in = 2; /* the end joist may not be cut */
    judge();
    ck_assert(out.box_out && out.box_out_pieces == 0 && warned(FRAME_PASSAGE_CAUTION_NO_BOX));
    finish();
}
END_TEST

/* ---- roofs ---- */

static void add_rafters(double slope, int count) {
    frame_rafter_in r;
    frame_stick *stick = NULL;
    frame_rafter_in_init(&r);
    r.run_in = 120;
    r.slope = slope;
    r.overhang_in = 12;
    r.ridge_thickness_in = 1.5;
    r.size = FRAME_SIZE(2, 8);
    must(frame_rafter_stick(&r, &stick));
    for (int i = 0; i < count; i++)
        must(frame_assembly_add_stick(frame_made, stick, FRAME_PIECE_RAFTER, 0, 16 * i, 0, 0));
    frame_stick_free(stick);
}

/* A plumb vent through a roof of 8 in 12: the headers lie square to the roof, and leave it the room it takes there. */
START_TEST(a_vent_through_a_roof) {
    begin();
    add_rafters(8.0 / 12, 8);
    ask(FRAME_PASSAGE_Z, 12, FRAME_NOT_GIVEN);
    in.x_in = 60;
    in.y_in = 48;
    judge();
    check_all();
    ck_assert_int_eq(out.cut_total, 1);
    ck_assert_int_eq(count_of(FRAME_PIECE_HEADER), 2);
    ck_assert_int_eq(count_of(FRAME_PIECE_RAFTER), 2);
    ck_assert_double_eq_tol(longest_of(FRAME_PIECE_HEADER), 32 - 1.5 - 0.25, 1e-9);
    /* Together with the opening along the slope and what the headers take, the two parts are the rafter. */
    double parts = 0;
    for (size_t i = 0; i < frame_passage_piece_count(passage); i++)
        if (piece_at(i).kind == FRAME_PIECE_RAFTER) parts += piece_at(i).length_in;
    frame_assembly_piece whole;
    must(frame_assembly_piece_at(frame_made, 3, &whole));
    const double cosine = 12 / sqrt(208), tangent = 8.0 / 12;
    ck_assert_double_eq_tol(whole.length_in - parts, 12 / cosine + 7.25 * tangent + 3 + 0.25, 1e-6);
    ask(FRAME_PASSAGE_Y, 7.25 / 3, FRAME_NOT_GIVEN); /* bored across the rafters: IRC R802.7.1 */
    in.x_in = 60;
    in.z_in = 60 * 8.0 / 12 + 0.5;
    judge();
    ck_assert_int_eq(out.meet_total, 8);
    finish();
}
END_TEST

/* A chimney goes up through floor and roof: each has its box-out, and both are proved to fit. */
START_TEST(up_through_floor_and_roof) {
    begin();
    add_floor(192, 240);
    frame_rafter_in r;
    frame_stick *stick = NULL;
    frame_rafter_in_init(&r);
    r.run_in = 120;
    r.slope = 0.5;
    r.ridge_thickness_in = 1.5;
    r.size = FRAME_SIZE(2, 8);
    must(frame_rafter_stick(&r, &stick));
    for (int i = 0; i < 10; i++)
        must(frame_assembly_add_stick(frame_made, stick, FRAME_PIECE_RAFTER, 0, 8 + 16 * i, 110, 0));
    frame_stick_free(stick);
    ask(FRAME_PASSAGE_Z, 14, 14);
    in.room_in = 2; /* from what burns */
    in.x_in = 70;
    in.y_in = 90;
    judge();
    check_all();
    ck_assert_int_eq(count_of(FRAME_PIECE_HEADER_JOIST), 2);
    ck_assert_int_eq(count_of(FRAME_PIECE_HEADER), 2);
    ck_assert_int_eq(out.cut_total, count_of(FRAME_PIECE_TAIL) / 2 + count_of(FRAME_PIECE_RAFTER) / 2);
    in.x_in = 20; /* the joists' rest would be too short: then nothing is listed */
    judge();
    ck_assert(out.box_out && out.box_out_pieces == 0 && out.cut_total == 0 && warned(FRAME_PASSAGE_CAUTION_NO_BOX));
    finish();
}
END_TEST

/* ---- random ---- */

START_TEST(random_box_outs_fit) {
    const int rounds = random_rounds(60, 1000);
    int boxed = 0;
    for (int i = 0; i < rounds; i++) {
        begin();
        const int what = random_whole(0, 2);
        if (what == 0) add_wall(random_between(100, 300), 1, 0);
        if (what == 1) add_floor(random_between(100, 200), random_between(100, 300));
        if (what == 2) add_rafters(random_between(0.1, 1.3), 9);
        ask(what ? FRAME_PASSAGE_Z : FRAME_PASSAGE_Y, random_between(3, 30), random_between(3, 30));
        in.header_size = FRAME_SIZE(2, 6);
        in.bearing = what || random_whole(0, 1);
        in.room_in = random_whole(0, 1) * random_unit();
        in.x_in = random_between(20, 110);
        in.y_in = random_between(20, 100);
        in.z_in = random_between(10, 80);
        if (what)
            in.z_in = FRAME_NOT_GIVEN;
        else
            in.y_in = FRAME_NOT_GIVEN;
        judge();
        if (what == 0) in.y_in = 0;
        check_all();
        if (!out.box_out) ck_assert_int_eq(out.box_out_pieces, 0);
        if (out.box_out && !out.box_out_pieces) ck_assert(warned(FRAME_PASSAGE_CAUTION_NO_BOX));
        boxed += out.box_out_pieces > 0;
        finish();
    }
    ck_assert_int_gt(boxed, rounds / 4);
}
END_TEST

/* ---- assemblies ---- */

/* Four walls round a room, each turned by its side's direction: they fit, and turned the wrong way they do not. */
START_TEST(four_walls_and_a_floor) {
    const double sides[4] = {240, 144, 240, 144}, turns[4] = {0, 90, 180, 270};
    const double corners[4][2] = {{0, 0}, {240, 0}, {240, 144}, {0, 144}};
    for (int wrong = 0; wrong < 2; wrong++) {
        begin();
        for (int i = 0; i < 4; i++) {
            frame_wall_in w;
            frame_wall *wall = NULL;
            const int butts = i % 2; /* the short walls stand between the long ones */
            frame_wall_in_init(&w);
            w.length_in = sides[i] - (butts ? 7 : 0);
            w.stud_length_in = 92.625;
            w.size = FRAME_SIZE(2, 4);
            w.start_end = w.end_end = butts ? FRAME_WALL_END_BUTT : FRAME_WALL_END_CORNER;
            must(frame_wall_solve(&w, &wall, NULL));
            const double turn = turns[i] + (wrong && i == 1 ? 5 : 0), along = butts ? 3.5 : 0;
            const double x = corners[i][0] + (i == 1 || i == 3 ? 0 : along), y = corners[i][1] + (i == 1   ? along
                                                                                                  : i == 3 ? -along
                                                                                                           : 0);
            must(frame_assembly_add_wall(frame_made, wall, x, y, 9.25, turn));
            frame_wall_free(wall);
        }
        add_floor(240, 144);
        frame_fit_out fit;
        must(frame_assembly_fit(frame_made, &fit));
        ck_assert_int_eq(fit.fits, !wrong);
        frame_assembly_piece piece;
        must(frame_assembly_piece_at(frame_made, 0, &piece));
        ck_assert_int_eq(piece.part, 1);
        ck_assert_str_eq(piece.of, "wall");
        finish();
    }
}
END_TEST

START_TEST(refusals) {
    begin();
    frame_wall *none = NULL;
    frame_assembly_piece piece;
    frame_stick *stick = NULL;
    ck_assert_int_eq(frame_assembly_new(NULL), FRAME_REQUIRED);
    ck_assert_int_eq(frame_assembly_add_wall(frame_made, none, 0, 0, 0, 0), FRAME_REQUIRED);
    ck_assert_int_eq(frame_assembly_add_stick(frame_made, NULL, FRAME_PIECE_RAFTER, 0, 0, 0, 0), FRAME_REQUIRED);
    add_rafters(0.5, 1);
    must(frame_assembly_stick(frame_made, 0, &stick));
    ck_assert_int_eq(frame_assembly_add_stick(frame_made, stick, 0, 0, 0, 0, 0), FRAME_OUT_OF_RANGE);
    ck_assert_str_eq(frame_error_field(), "kind");
    ck_assert_int_eq(frame_assembly_add_stick(frame_made, stick, FRAME_PIECE_RAFTER, 12001, 0, 0, 0),
                     FRAME_OUT_OF_RANGE);
    ck_assert_str_eq(frame_error_field(), "x_in");
    ck_assert_int_eq(frame_assembly_add_stick(frame_made, stick, FRAME_PIECE_RAFTER, 0, 0, 0, NAN), FRAME_OUT_OF_RANGE);
    ck_assert_str_eq(frame_error_field(), "turn_deg");
    ck_assert_uint_eq(frame_assembly_piece_count(frame_made), 1);
    ck_assert_int_eq(frame_assembly_piece_at(frame_made, 1, &piece), FRAME_OUT_OF_RANGE);
    ck_assert_uint_eq(frame_assembly_piece_count(NULL), 0);
    ck_assert_uint_eq(frame_passage_piece_count(NULL), 0);
    frame_assembly_free(NULL);
    frame_stick_free(stick);
    finish();
}
END_TEST

int main(void) {
    Suite *suite = suite_create("box_out");
    TCase *tests = tcase_create("all");
    tcase_set_timeout(tests, 600);
    tcase_add_test(tests, a_vent_through_a_bearing_wall);
    tcase_add_test(tests, a_vent_through_a_wall_that_bears_nothing);
    tcase_add_test(tests, a_header_by_the_code_table);
    tcase_add_test(tests, a_duct_up_through_a_floor);
    tcase_add_test(tests, a_vent_through_a_roof);
    tcase_add_test(tests, up_through_floor_and_roof);
    tcase_add_test(tests, random_box_outs_fit);
    tcase_add_test(tests, four_walls_and_a_floor);
    tcase_add_test(tests, refusals);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
