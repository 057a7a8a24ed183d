/* Layouts and measured plans when memory runs out: at each allocation in turn the call fails cleanly, and nothing is
 * left behind. */
#include <check.h>
#include <stdlib.h>

#include <frame/frame.h>

static long granted, blocks; /* how many more allocations are granted; how many blocks are out */

static void *give(void *user, size_t size) {
    (void)user;
    if (granted-- <= 0) return NULL;
    blocks++;
    return malloc(size);
}

static void *resize(void *user, void *block, size_t size) {
    if (!block) return give(user, size);
    return granted-- <= 0 ? NULL : realloc(block, size);
}

static void release(void *user, void *block) {
    (void)user;
    if (block) blocks--;
    free(block);
}

static frame_status make_stairs(void) {
    frame_stairs_in in;
    frame_stairs *stairs = NULL;
    frame_drawing *drawing = NULL;
    frame_fit_out fit;
    frame_stairs_in_init(&in);
    in.rise_in = 107;
    in.well_length_in = 131;
    in.ceiling_in = 98;
    frame_status status = frame_stairs_solve(&in, &stairs, NULL);
    if (!status) status = frame_stairs_drawing(stairs, &drawing);
    if (!status) status = frame_stairs_fit(stairs, &fit);
    frame_drawing_free(drawing);
    frame_stairs_free(stairs);
    return status;
}

static frame_status make_wall(void) {
    static frame_wall_opening opening;
    static frame_wall_crossing crossing;
    frame_wall_in in;
    frame_wall *wall = NULL;
    frame_drawing *drawing = NULL;
    frame_passage *passage = NULL;
    frame_passage_in ask;
    frame_fit_out fit;
    const double rows[] = {60};
    frame_wall_in_init(&in);
    frame_wall_opening_init(&opening);
    frame_wall_crossing_init(&crossing);
    opening.at_in = 40;
    opening.width_in = 36;
    opening.head_in = 82;
    opening.sill_in = 36;
    opening.header_size = FRAME_SIZE(2, 6);
    crossing.at_in = 140;
    in.length_in = 192;
    in.height_in = 100;
    in.slope = 0.25;
    in.size = FRAME_SIZE(2, 4);
    in.start_end = FRAME_WALL_END_CORNER_THREE;
    in.plate_stock_in = 144;
    in.openings = &opening;
    in.opening_count = 1;
    in.crossings = &crossing;
    in.crossing_count = 1;
    in.blocking_in = rows;
    in.blocking_count = 1;
    frame_passage_in_init(&ask);
    ask.way = FRAME_PASSAGE_Y;
    ask.edition = FRAME_CODE_2021;
    ask.x_in = 24;
    ask.z_in = 50;
    ask.width_in = 16;
    frame_status status = frame_wall_solve(&in, &wall, NULL);
    if (!status) status = frame_wall_drawing(wall, &drawing);
    if (!status) status = frame_wall_fit(wall, &fit);
    if (!status) status = frame_wall_passage(wall, &ask, &passage);
    frame_passage_free(passage);
    passage = NULL;
    ask.x_in = 100; /* with a box-out, through an assembly */
    ask.header_size = FRAME_SIZE(2, 6);
    frame_assembly *assembly = NULL;
    if (!status) status = frame_assembly_new(&assembly);
    if (!status) status = frame_assembly_add_wall(assembly, wall, 3, 4, 5, 90);
    if (!status) {
        ask.way = FRAME_PASSAGE_X;
        ask.x_in = FRAME_NOT_GIVEN;
        ask.y_in = 104;
        status = frame_assembly_passage(assembly, &ask, &passage);
    }
    if (!status && frame_passage_piece_count(passage) == 0) status = FRAME_IMPOSSIBLE;
    frame_passage_free(passage);
    frame_assembly_free(assembly);
    frame_drawing_free(drawing);
    frame_wall_free(wall);
    return status;
}

static frame_status make_floor(void) {
    static frame_floor_opening opening;
    static frame_floor_beam beam;
    frame_floor_in in;
    frame_floor *floor_made = NULL;
    frame_drawing *drawing = NULL;
    frame_floor_in_init(&in);
    frame_floor_opening_init(&opening);
    frame_floor_beam_init(&beam);
    opening.x_in = 30;
    opening.y_in = 40;
    opening.length_in = 40;
    opening.width_in = 36;
    beam.at_in = 120;
    beam.size = FRAME_SIZE(2, 12);
    in.span_in = 240;
    in.width_in = 120;
    in.size = FRAME_SIZE(2, 10);
    in.stock_in = 150;
    in.openings = &opening;
    in.opening_count = 1;
    in.beams = &beam;
    in.beam_count = 1;
    frame_status status = frame_floor_solve(&in, &floor_made, NULL);
    if (!status) status = frame_floor_drawing(floor_made, &drawing);
    frame_drawing_free(drawing);
    frame_floor_free(floor_made);
    return status;
}

static frame_status make_deck(void) {
    static frame_deck_beam beam;
    const double stock[] = {96, 72};
    frame_deck_in in;
    frame_deck *deck = NULL;
    frame_drawing *drawing = NULL;
    frame_deck_in_init(&in);
    frame_deck_beam_init(&beam);
    beam.at_in = 60;
    beam.size = FRAME_SIZE(2, 8);
    in.length_in = 72;
    in.width_in = 120;
    in.size = FRAME_SIZE(2, 8);
    in.height_in = 48;
    in.beams = &beam;
    in.beam_count = 1;
    in.pattern = FRAME_DECK_FRAME;
    in.board_stock_in = stock;
    in.board_stock_count = 2;
    frame_status status = frame_deck_solve(&in, &deck, NULL);
    if (!status) status = frame_deck_drawing(deck, &drawing);
    frame_drawing_free(drawing);
    frame_deck_free(deck);
    return status;
}

static frame_status make_survey(void) {
    static frame_survey_distance distances[6];
    const double lengths[6] = {240, 144, 240, 144, 279.9, 279.8};
    const int pairs[6][2] = {{1, 2}, {2, 3}, {3, 4}, {4, 1}, {1, 3}, {2, 4}};
    const double crowns[] = {0.1, 0.3, 0.2};
    frame_survey_in in;
    frame_survey *survey = NULL;
    frame_crowns_in sort;
    frame_crowns *order = NULL;
    frame_survey_in_init(&in);
    for (int i = 0; i < 6; i++) {
        frame_survey_distance_init(&distances[i]);
        distances[i].corner_a = pairs[i][0];
        distances[i].corner_b = pairs[i][1];
        distances[i].length_in = lengths[i];
    }
    in.distances = distances;
    in.distance_count = 6;
    frame_status status = frame_survey_solve(&in, &survey, NULL);
    frame_crowns_in_init(&sort);
    sort.crowns_in = crowns;
    sort.crown_count = 3;
    if (!status) status = frame_crowns_solve(&sort, &order, NULL);
    frame_crowns_free(order);
    frame_survey_free(survey);
    return status;
}

static frame_status (*const makers[])(void) = {make_stairs, make_wall, make_floor, make_deck, make_survey};

START_TEST(making_fails_cleanly) {
    frame_status status = FRAME_NO_MEMORY;
    int tries = 0;
    for (; status == FRAME_NO_MEMORY; tries++) {
        granted = tries;
        status = makers[_i]();
        ck_assert_int_eq(blocks, 0);
        ck_assert_int_lt(tries, 50000);
        if (status) ck_assert_msg(status == FRAME_NO_MEMORY, "after %d: %s", tries, frame_error_text());
    }
    ck_assert_msg(status == FRAME_OK, "%s", frame_error_text());
    ck_assert_int_gt(tries, 5);
}
END_TEST

int main(void) {
    const frame_allocator counted = {give, resize, release, NULL};
    granted = 1000000;
    if (frame_allocator_set(&counted)) return 1;
    Suite *suite = suite_create("memory");
    TCase *tests = tcase_create("all");
    tcase_set_timeout(tests, 600);
    tcase_add_loop_test(tests, making_fails_cleanly, 0, sizeof makers / sizeof *makers);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
