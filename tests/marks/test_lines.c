/* Readings, heights, posts under a beam, own lengths, straightness: what follows from a few numbers by hand. */
#include <check.h>
#include <math.h>

#include <frame/frame.h>

static frame_station stations[8];

static const frame_station *set_stations(const double (*at)[2], size_t count) {
    for (size_t i = 0; i < count; i++) {
        frame_station_init(&stations[i]);
        stations[i].at_in = at[i][0];
        stations[i].reading_in = at[i][1];
    }
    return stations;
}

/* A post too short cannot be mended; infill takes the shorter; sheets that lap the longer; never the average. */
START_TEST(two_readings_of_one_length) {
    const double two[] = {93.5, 93.25};
    frame_readings_in in;
    frame_readings_out out;
    frame_readings_in_init(&in);
    in.readings_in = two;
    in.reading_count = 2;
    ck_assert_int_eq(frame_readings(&in, &out, NULL), FRAME_REQUIRED); /* what it is for decides */
    in.use = FRAME_READING_INFILL;
    ck_assert_int_eq(frame_readings(&in, &out, NULL), FRAME_OK);
    ck_assert_double_eq(out.chosen_in, 93.25);
    ck_assert_int_eq(out.agree, 0);
    ck_assert(FRAME_HAS(out.cautions, FRAME_READINGS_CAUTION_DISAGREE));
    in.use = FRAME_READING_REACH;
    ck_assert_int_eq(frame_readings(&in, &out, NULL), FRAME_OK);
    ck_assert_double_eq(out.chosen_in, 93.5);
    in.use = FRAME_READING_LAP;
    ck_assert_int_eq(frame_readings(&in, &out, NULL), FRAME_OK);
    ck_assert_double_eq(out.chosen_in, 93.5);
    in.use = FRAME_READING_REACH;
    in.refuse_over_in = 0.25;
    ck_assert_int_eq(frame_readings(&in, &out, NULL), FRAME_OK);
    in.refuse_over_in = 0.24;
    ck_assert_int_eq(frame_readings(&in, &out, NULL), FRAME_REFUSED);
    in.use = FRAME_READING_INFILL; /* the shorter always goes in */
    ck_assert_int_eq(frame_readings(&in, &out, NULL), FRAME_OK);
    in.agree_within_in = 0.25;
    frame_readings(&in, &out, NULL);
    ck_assert_int_eq(out.agree, 1);
    in.reading_count = 1;
    frame_readings(&in, &out, NULL);
    ck_assert(FRAME_HAS(out.cautions, FRAME_READINGS_CAUTION_ONE));
}
END_TEST

START_TEST(heights_from_a_level_line) {
    const double rod[4][2] = {{0, 40}, {120, 40.5}, {240, 41}, {360, 40.25}};
    frame_levels_in in;
    frame_levels_out out;
    frame_levels *levels = NULL;
    frame_levels_mark mark;
    frame_levels_in_init(&in);
    in.points = set_stations(rod, 4);
    in.point_count = 4;
    in.reading = FRAME_LEVEL_DOWN;
    in.piece_in = 90;
    ck_assert_int_eq(frame_levels_solve(&in, &levels, NULL), FRAME_OK);
    frame_levels_result(levels, &out);
    ck_assert_double_eq(out.out_of_level_in, 1);
    ck_assert_double_eq(out.most_shim_in, 1);
    ck_assert_int_eq(out.out_count, 3);
    frame_levels_mark_at(levels, 2, &mark); /* the lowest: an inch of shim, or a stud an inch longer */
    ck_assert_double_eq(mark.shim_in, 1);
    ck_assert_double_eq(mark.piece_in, 91);
    frame_levels_free(levels);
    in.aim = FRAME_LEVEL_LOWEST;
    frame_levels_solve(&in, &levels, NULL);
    frame_levels_mark_at(levels, 0, &mark);
    ck_assert_double_eq(mark.cut_in, 1);
    ck_assert_double_eq(mark.piece_in, 89);
    frame_levels_free(levels);
    levels = NULL;
    in.aim = FRAME_LEVEL_GIVEN;
    ck_assert_int_eq(frame_levels_solve(&in, &levels, NULL), FRAME_REQUIRED);
    in.aim_in = 40.5;
    in.reading = FRAME_LEVEL_UP;
    frame_levels_solve(&in, &levels, NULL);
    frame_levels_mark_at(levels, 0, &mark);
    ck_assert_double_eq(mark.shim_in, 0.5);
    frame_levels_free(levels);
    const double line[3][2] = {{0, 10}, {12, 10.125}, {24, 10.25}}; /* an eighth in a foot */
    in.points = set_stations(line, 3);
    in.point_count = 3;
    frame_levels_solve(&in, &levels, NULL);
    frame_levels_result(levels, &out);
    ck_assert_double_eq_tol(out.fall, 0.125 / 12, 1e-12);
    frame_levels_free(levels);
    levels = NULL;
    in.piece_in = 0.1;
    in.aim_in = -5;
    ck_assert_int_eq(frame_levels_solve(&in, &levels, NULL), FRAME_IMPOSSIBLE);
    ck_assert_ptr_null(levels);
}
END_TEST

START_TEST(posts_under_a_beam) {
    frame_post_station posts[3];
    frame_post_lengths_in in;
    frame_post_lengths_out out;
    frame_post_lengths *answer = NULL;
    frame_post_lengths_post post;
    frame_post_lengths_in_init(&in);
    for (int i = 0; i < 3; i++) {
        frame_post_station_init(&posts[i]);
        posts[i].at_in = 96 * i;
        posts[i].drop_in = 48 + i;
        posts[i].hump_in = i == 1 ? 0.375 : 0;
    }
    in.posts = posts;
    in.post_count = 3;
    in.sag_in = 0.25;
    in.base_in = 1;
    ck_assert_int_eq(frame_post_lengths_solve(&in, &answer, NULL), FRAME_OK);
    frame_post_lengths_result(answer, &out);
    frame_post_lengths_post_at(answer, 1, &post); /* the whole sag at the middle, and the beam's own hump */
    ck_assert_double_eq_tol(post.length_in, 49 + 0.25 + 0.375 - 1, 1e-12);
    frame_post_lengths_post_at(answer, 2, &post); /* none at the ends */
    ck_assert_double_eq_tol(post.length_in, 49, 1e-12);
    ck_assert_double_eq_tol(out.longest_in, 49, 1e-12);
    ck_assert(FRAME_HAS(out.cautions, FRAME_LINE_CAUTION_HUMP));
    frame_post_lengths_free(answer);
    in.straighten = 1;
    frame_post_lengths_solve(&in, &answer, NULL);
    frame_post_lengths_post_at(answer, 1, &post);
    ck_assert_double_eq_tol(post.length_in, 48.25, 1e-12);
    ck_assert_double_eq_tol(post.pull_in, 0.375, 1e-12);
    frame_post_lengths_free(answer);
    answer = NULL;
    posts[2].at_in = 90;
    ck_assert_int_eq(frame_post_lengths_solve(&in, &answer, NULL), FRAME_IMPOSSIBLE);
    ck_assert_str_eq(frame_error_field(), "posts[2].at_in");
    posts[2].at_in = 192;
    posts[0].drop_in = 1;
    ck_assert_int_eq(frame_post_lengths_solve(&in, &answer, NULL), FRAME_IMPOSSIBLE);
    ck_assert_ptr_null(answer);
}
END_TEST

START_TEST(each_piece_its_own_length) {
    const double clear[3][2] = {{0, 120}, {96, 121}, {192, 120.5}};
    const double marks[] = {0, 48, 96, 144, 200};
    frame_own_lengths_in in;
    frame_own_lengths_out out;
    frame_own_lengths *answer = NULL;
    frame_own_lengths_piece piece;
    frame_own_lengths_in_init(&in);
    in.stations = set_stations(clear, 3);
    in.station_count = 3;
    in.marks_in = marks;
    in.mark_count = 5;
    in.deduct_in = 0.25;
    ck_assert_int_eq(frame_own_lengths_solve(&in, &answer, NULL), FRAME_OK);
    frame_own_lengths_result(answer, &out);
    const double lengths[] = {119.75, 120.25, 120.75, 120.5, 120.5 - 0.25 - 8 * 0.5 / 96};
    for (size_t i = 0; i < 5; i++) {
        frame_own_lengths_piece_at(answer, i, &piece);
        ck_assert_double_eq_tol(piece.length_in, lengths[i], 1e-12);
        ck_assert_int_eq(piece.beyond, i == 4);
    }
    ck_assert_double_eq(out.out_of_parallel_in, 1);
    ck_assert(FRAME_HAS(out.cautions, FRAME_LINE_CAUTION_BEYOND));
    frame_own_lengths_piece_at(answer, 1, &piece);
    ck_assert_double_eq_tol(piece.taper_deg, atan(1.0 / 96) * 180 / acos(-1), 1e-12);
    frame_own_lengths_free(answer);
    answer = NULL;
    in.deduct_in = 120;
    ck_assert_int_eq(frame_own_lengths_solve(&in, &answer, NULL), FRAME_IMPOSSIBLE);
    stations[1].at_in = 0;
    ck_assert_int_eq(frame_own_lengths_solve(&in, &answer, NULL), FRAME_IMPOSSIBLE);
    ck_assert_str_eq(frame_error_field(), "stations[1].at_in");
    ck_assert_ptr_null(answer);
}
END_TEST

/* A girder with blocks of 3/4 in: 7/8 in at its middle is an eighth away from the joists. */
START_TEST(a_girder_along_a_string) {
    const double string[3][2] = {{0, 0.75}, {120, 0.875}, {240, 0.625}};
    const double joists[] = {60, 120, 240};
    frame_straightness_in in;
    frame_straightness_out out;
    frame_straightness *answer = NULL;
    frame_straightness_joist joist;
    frame_straightness_in_init(&in);
    in.stations = set_stations(string, 3);
    in.station_count = 3;
    in.marks_in = joists;
    in.mark_count = 3;
    in.block_in = 0.75;
    in.tolerance_in = 0.125;
    ck_assert_int_eq(frame_straightness_solve(&in, &answer, NULL), FRAME_OK);
    frame_straightness_result(answer, &out);
    ck_assert_double_eq(out.bow_away_in, 0.125);
    ck_assert_double_eq(out.bow_toward_in, 0.125);
    ck_assert_int_eq(out.over, 0); /* just at the tolerance */
    frame_straightness_joist_at(answer, 0, &joist);
    ck_assert_double_eq_tol(joist.correction_in, 0.0625, 1e-12);
    frame_straightness_joist_at(answer, 2, &joist); /* toward the joist: shorter, and no gap */
    ck_assert_double_eq_tol(joist.correction_in, -0.125, 1e-12);
    ck_assert_double_eq(joist.gap_in, 0);
    frame_straightness_free(answer);
    in.tolerance_in = 0.12;
    frame_straightness_solve(&in, &answer, NULL);
    frame_straightness_result(answer, &out);
    ck_assert_int_eq(out.over, 1);
    ck_assert(FRAME_HAS(out.cautions, FRAME_LINE_CAUTION_TOLERANCE));
    frame_straightness_free(answer);
    in.block_in = FRAME_NOT_GIVEN; /* from the ends' own readings */
    frame_straightness_solve(&in, &answer, NULL);
    frame_straightness_joist_at(answer, 1, &joist);
    ck_assert_double_eq_tol(joist.bow_in, 0.875 - 0.6875, 1e-12);
    frame_straightness_free(answer);
}
END_TEST

START_TEST(workings_agree_with_themselves) {
    const double at[3][2] = {{0, 120}, {96, 121}, {192, 120.5}};
    const double marks[] = {10, 20};
    frame_working *w = NULL;
    frame_text *text = NULL;
    ck_assert(!frame_working_new(&w) && !frame_text_new(&text));
    frame_own_lengths_in own;
    frame_own_lengths *lengths = NULL;
    frame_own_lengths_in_init(&own);
    own.stations = set_stations(at, 3);
    own.station_count = 3;
    own.marks_in = marks;
    own.mark_count = 2;
    ck_assert_int_eq(frame_own_lengths_solve(&own, &lengths, w), FRAME_OK);
    frame_straightness_in line;
    frame_straightness *straight = NULL;
    frame_straightness_in_init(&line);
    line.stations = stations;
    line.station_count = 3;
    ck_assert_int_eq(frame_straightness_solve(&line, &straight, w), FRAME_OK);
    frame_levels_in level;
    frame_levels *levels = NULL;
    frame_levels_in_init(&level);
    level.points = stations;
    level.point_count = 3;
    level.reading = FRAME_LEVEL_UP;
    ck_assert_int_eq(frame_levels_solve(&level, &levels, w), FRAME_OK);
    frame_readings_in readings;
    frame_readings_out chosen;
    frame_readings_in_init(&readings);
    readings.readings_in = marks;
    readings.reading_count = 2;
    readings.use = FRAME_READING_INFILL;
    ck_assert_int_eq(frame_readings(&readings, &chosen, w), FRAME_OK);
    ck_assert_msg(!frame_working_check(w, text), "%s", frame_text_chars(text));
    ck_assert_int_gt(frame_working_step_count(w), 8);
    frame_own_lengths_free(lengths);
    frame_straightness_free(straight);
    frame_levels_free(levels);
    frame_working_free(w);
    frame_text_free(text);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("lines");
    TCase *tests = tcase_create("all");
    tcase_add_test(tests, two_readings_of_one_length);
    tcase_add_test(tests, heights_from_a_level_line);
    tcase_add_test(tests, posts_under_a_beam);
    tcase_add_test(tests, each_piece_its_own_length);
    tcase_add_test(tests, a_girder_along_a_string);
    tcase_add_test(tests, workings_agree_with_themselves);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
