/* Pipes, ducts and vents through frames: the code's limits at, just under and just over; and the nearest clear places,
 * found again by trying. */
#include <check.h>
#include <math.h>
#include <string.h>

#include <frame/frame.h>

#include "random.h"

static frame_wall *wall;
static frame_floor *floor_made;
static frame_passage_in in;
static frame_passage_out out;
static frame_passage *passage;

static void make_wall(double length, frame_size size) {
    static frame_wall_opening opening;
    frame_wall_in w;
    frame_wall_in_init(&w);
    w.length_in = length;
    w.stud_length_in = 92.625;
    w.size = size;
    frame_wall_opening_init(&opening);
    opening.at_in = length / 2 - 18;
    opening.width_in = 36;
    opening.head_in = 82;
    opening.sill_in = 36;
    opening.header_size = FRAME_SIZE(2, 8);
    w.openings = &opening;
    w.opening_count = 1;
    ck_assert_msg(!frame_wall_solve(&w, &wall, NULL), "%s", frame_error_text());
}

static void make_floor(void) {
    frame_floor_in f;
    frame_floor_in_init(&f);
    f.span_in = 144;
    f.width_in = 192;
    f.size = FRAME_SIZE(2, 10);
    ck_assert_msg(!frame_floor_solve(&f, &floor_made, NULL), "%s", frame_error_text());
}

static void ask(frame_passage_way way, double width) {
    frame_passage_in_init(&in);
    in.way = way;
    in.edition = FRAME_CODE_2018;
    in.width_in = width;
}

static void through_wall(void) {
    frame_passage_free(passage);
    passage = NULL;
    ck_assert_msg(!frame_wall_passage(wall, &in, &passage), "%s", frame_error_text());
    frame_passage_result(passage, &out);
}

static void through_floor(void) {
    frame_passage_free(passage);
    passage = NULL;
    ck_assert_msg(!frame_floor_passage(floor_made, &in, &passage), "%s", frame_error_text());
    frame_passage_result(passage, &out);
}

static void finish(void) {
    frame_passage_free(passage);
    frame_wall_free(wall);
    frame_floor_free(floor_made);
    passage = NULL;
    wall = NULL;
    floor_made = NULL;
}

/* IRC R602.6, read: 40 percent of a bearing stud's depth, 60 percent doubled, no more than two in a row. */
START_TEST(pipes_through_studs) {
    make_wall(60, FRAME_SIZE(2, 6));
    ask(FRAME_PASSAGE_X, 2.2);
    in.y_in = 2.75;
    in.z_in = 20;
    through_wall();
    ck_assert_int_eq(out.verdict, FRAME_CODE_ALLOWED);
    ck_assert_int_gt(out.meet_total, 4);
    in.width_in = 2.21;
    through_wall();
    ck_assert_int_eq(out.verdict, FRAME_CODE_NOT_ALLOWED); /* more than two studs in a row would have to be doubled */
    frame_passage_meet first, third;
    frame_passage_meet_at(passage, 0, &first);
    frame_passage_meet_at(passage, 2, &third);
    ck_assert_int_eq(first.verdict, FRAME_CODE_ALLOWED_DOUBLED);
    ck_assert_int_eq(third.verdict, FRAME_CODE_NOT_ALLOWED);
    ck_assert_double_eq_tol(first.limit_in, 2.2, 1e-9);
    ck_assert(*first.reason && *first.needs);
    in.bearing = in.exterior = 0;
    in.width_in = 3.3;
    through_wall();
    ck_assert_int_eq(out.verdict, FRAME_CODE_ALLOWED);
    in.width_in = 3.31;
    through_wall();
    ck_assert_int_eq(out.verdict, FRAME_CODE_NOT_ALLOWED);
    ck_assert(FRAME_HAS(out.cautions, FRAME_PASSAGE_CAUTION_IDLE));
    in.z_in = 86; /* between the header's plies */
    in.width_in = 1;
    through_wall();
    ck_assert_int_eq(out.verdict, FRAME_CODE_ALLOWED);
    in.width_in = 2.6; /* through one of them: a header is refused */
    through_wall();
    ck_assert_int_eq(out.verdict, FRAME_CODE_NOT_ALLOWED);
    finish();
}
END_TEST

START_TEST(vents_through_a_wall) {
    make_wall(192, FRAME_SIZE(2, 4));
    ask(FRAME_PASSAGE_Y, 4);
    in.x_in = 24;
    in.z_in = 50;
    through_wall();
    ck_assert_int_eq(out.meet_total, 0);
    ck_assert_double_eq(out.clear_x_in, 24); /* where it is */
    in.x_in = 31;                            /* the stud at 31-1/4 */
    through_wall();
    ck_assert_int_eq(out.meet_total, 1);
    ck_assert_int_eq(out.box_out, 1);
    ck_assert(FRAME_HAS(out.cautions, FRAME_PASSAGE_CAUTION_SHORE));
    ck_assert_double_eq_tol(out.clear_x_in, 31.25 - 2, 1e-9); /* nearer than beyond it */
    ck_assert_double_eq(out.clear_z_in, FRAME_NOT_GIVEN);     /* the stud is as high as the wall */
    in.width_in = 16;                                         /* wider than a bay */
    in.height_in = 6;
    through_wall();
    ck_assert_double_eq_tol(out.opening_high_in - out.opening_low_in, 16, 1e-12);
    ck_assert_double_eq_tol(out.opening_to_in - out.opening_from_in, 6, 1e-12);
    in.room_in = 1;
    through_wall();
    ck_assert_double_eq_tol(out.opening_high_in - out.opening_low_in, 18, 1e-12);
    finish();
}
END_TEST

/* IRC R602.6.1, read: more than half of a top plate's width needs a tie. */
START_TEST(pipes_through_plates) {
    make_wall(192, FRAME_SIZE(2, 6));
    ask(FRAME_PASSAGE_Z, 2.75);
    in.x_in = 24;
    in.y_in = 2.75;
    through_wall();
    ck_assert_int_eq(out.verdict, FRAME_CODE_ALLOWED);
    ck_assert_int_eq(out.meet_total, 3); /* bottom plate, top plate, cap plate */
    in.width_in = 2.76;
    through_wall();
    ck_assert_int_eq(out.verdict, FRAME_CODE_ALLOWED_TIE);
    in.x_in = 16; /* along a stud */
    through_wall();
    ck_assert_int_eq(out.verdict, FRAME_CODE_NOT_ALLOWED);
    finish();
}
END_TEST

/* IRC R502.8.1 (secondary): a third of a joist's depth, 2 in from its edges. */
START_TEST(pipes_through_joists) {
    make_floor();
    ask(FRAME_PASSAGE_Y, 9.25 / 3);
    in.x_in = 72;
    in.z_in = 9.25 / 2;
    through_floor();
    ck_assert_int_eq(out.verdict, FRAME_CODE_ALLOWED);
    ck_assert_int_eq(out.meet_total, 13);
    in.width_in = 9.25 / 3 + 0.01;
    through_floor();
    ck_assert_int_eq(out.verdict, FRAME_CODE_NOT_ALLOWED);
    in.width_in = 2;
    in.z_in = 3; /* just 2 in of wood below it */
    through_floor();
    ck_assert_int_eq(out.verdict, FRAME_CODE_ALLOWED);
    in.z_in = 2.99;
    through_floor();
    ck_assert_int_eq(out.verdict, FRAME_CODE_NOT_ALLOWED);
    ask(FRAME_PASSAGE_Z, 4); /* a closet flange between joists */
    in.x_in = 72;
    in.y_in = 24;
    through_floor();
    ck_assert_int_eq(out.meet_total, 0);
    in.y_in = 47;
    through_floor();
    ck_assert_int_eq(out.box_out, 1);
    ck_assert_double_eq_tol(out.clear_y_in, 47.25 - 2, 1e-9);
    finish();
}
END_TEST

/* The place that is said to be clear is, and no nearer one is. */
START_TEST(the_nearest_clear_place) {
    make_wall(240, FRAME_SIZE(2, 4));
    for (int i = 0; i < 60; i++) {
        ask(FRAME_PASSAGE_Y, random_between(2, 16));
        in.height_in = random_between(2, 16);
        in.x_in = random_between(10, 230);
        in.z_in = random_between(10, 85);
        through_wall();
        const double x = in.x_in, clear = out.clear_x_in;
        if (clear == FRAME_NOT_GIVEN) continue;
        in.x_in = clear;
        through_wall();
        ck_assert_int_eq(out.meet_total, 0);
        for (double step = 0.05; step < fabs(clear - x) - 0.05; step += 0.05)
            for (int side = -1; side <= 1; side += 2) {
                in.x_in = x + side * step;
                if (in.x_in < in.width_in / 2 || in.x_in > 240 - in.width_in / 2) continue;
                through_wall();
                ck_assert_int_gt(out.meet_total, 0);
            }
    }
    finish();
}
END_TEST

/* No rule of the code is for a hole through a post: it is refused, and the reason says so. */
START_TEST(a_pipe_through_posts) {
    frame_deck_beam beam;
    frame_deck_in d;
    frame_deck *deck = NULL;
    frame_passage_meet meet;
    frame_deck_in_init(&d);
    frame_deck_beam_init(&beam);
    d.length_in = 96, d.width_in = 120, d.size = FRAME_SIZE(2, 8), d.height_in = 60;
    beam.at_in = 84, beam.size = FRAME_SIZE(2, 10);
    d.beams = &beam, d.beam_count = 1;
    ck_assert_msg(!frame_deck_solve(&d, &deck, NULL), "%s", frame_error_text());
    ask(FRAME_PASSAGE_X, 1);
    for (size_t i = 0; i < frame_deck_piece_count(deck); i++) {
        frame_deck_piece piece;
        frame_deck_piece_at(deck, i, &piece);
        if (piece.kind != FRAME_PIECE_POST) continue;
        in.y_in = piece.start_y_in, in.z_in = (piece.start_z_in + piece.end_z_in) / 2;
    }
    ck_assert_msg(!frame_deck_passage(deck, &in, &passage), "%s", frame_error_text());
    ck_assert_int_eq(frame_passage_meet_at(passage, 0, &meet), FRAME_OK);
    ck_assert_int_eq(meet.verdict, FRAME_CODE_NOT_ALLOWED);
    ck_assert_msg(strstr(meet.reason, "no rule") != NULL, "%s", meet.reason);
    frame_deck_free(deck);
    finish();
}
END_TEST

START_TEST(refusals) {
    make_wall(192, FRAME_SIZE(2, 4));
    ask(FRAME_PASSAGE_Y, 4);
    in.x_in = 24;
    ck_assert_int_eq(frame_wall_passage(wall, &in, &passage), FRAME_REQUIRED);
    ck_assert_str_eq(frame_error_field(), "z_in");
    in.z_in = 40;
    ck_assert_int_eq(frame_wall_passage(NULL, &in, &passage), FRAME_REQUIRED);
    ck_assert_int_eq(frame_wall_passage(wall, &in, NULL), FRAME_REQUIRED);
    ck_assert_ptr_null(passage);
    ck_assert_uint_eq(frame_passage_meet_count(NULL), 0);
    through_wall();
    frame_passage_meet meet;
    ck_assert_int_eq(frame_passage_meet_at(passage, 0, &meet), FRAME_OUT_OF_RANGE);
    frame_passage_free(NULL);
    finish();
}
END_TEST

int main(void) {
    Suite *suite = suite_create("passage");
    TCase *tests = tcase_create("all");
    tcase_set_timeout(tests, 600);
    tcase_add_test(tests, pipes_through_studs);
    tcase_add_test(tests, vents_through_a_wall);
    tcase_add_test(tests, pipes_through_plates);
    tcase_add_test(tests, pipes_through_joists);
    tcase_add_test(tests, the_nearest_clear_place);
    tcase_add_test(tests, a_pipe_through_posts);
    tcase_add_test(tests, refusals);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
