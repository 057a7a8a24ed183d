/* Whether a fastener reaches wood: the layers it passes, what counts, the length that does. */
#include <frame/working.h>
#include <math.h>
#include <string.h>

#include "lateral.h"

static frame_dowel_layer layer(frame_layer_material material, double thickness_in) {
    frame_dowel_layer made;
    frame_dowel_layer_init(&made);
    made.material = material, made.thickness_in = thickness_in;
    return made;
}

static frame_dowel_reach_in reach_in(frame_dowel_kind kind, const char *size, double length_in,
                                     const frame_dowel_layer *layers, size_t count) {
    frame_dowel_reach_in in;
    frame_dowel_reach_in_init(&in);
    in.kind = kind, in.size = size, in.length_in = length_in, in.layers = layers, in.layer_count = count;
    return in;
}

static frame_dowel_reach_out reach_of(const frame_dowel_reach_in *in) {
    frame_dowel_reach *answer;
    frame_dowel_reach_out out;
    ck_assert_msg(!frame_dowel_reach_solve(in, &answer, NULL), "%s", frame_error_text());
    ck_assert(!frame_dowel_reach_result(answer, &out));
    frame_dowel_reach_free(answer);
    out.says = NULL; /* was the answer's */
    return out;
}

static void reach_refused(const frame_dowel_reach_in *in, frame_status status, const char *field) {
    frame_dowel_reach *answer = NULL;
    ck_assert_int_eq(frame_dowel_reach_solve(in, &answer, NULL), status);
    ck_assert_str_eq(frame_error_field(), field);
    ck_assert_ptr_null(answer);
}

/* A lag screw through a ledger, sheathing and foam: the foam eats the depth, and it counts for nothing. */
START_TEST(foam_eats_a_lag_screw) {
    frame_dowel_layer layers[] = {layer(FRAME_LAYER_WOOD, 1.5), layer(FRAME_LAYER_PANEL, 0.5),
                                  layer(FRAME_LAYER_FOAM, 1), layer(FRAME_LAYER_WOOD, 5.5)};
    frame_dowel_reach_in in = reach_in(FRAME_DOWEL_LAG_SCREW, "1/2", 5, layers, 4);
    frame_dowel_reach_out out = reach_of(&in);
    ck_assert_double_eq(out.penetration_in, 5 - 3 - 0.3125);
    ck_assert_double_eq(out.least_penetration_in, 2);
    ck_assert_int_eq(out.verdict, FRAME_REACH_TOO_SHORT);
    ck_assert(!out.counts);
    ck_assert_double_eq(out.penetration_factor, 0);
    ck_assert(FRAME_HAS(out.cautions, FRAME_DOWEL_REACH_CAUTION_NOTHING));
    ck_assert(FRAME_HAS(out.cautions, FRAME_DOWEL_REACH_CAUTION_GAP));
    ck_assert_double_eq(out.gap_in, 1.5);
    ck_assert_double_eq(out.side_thickness_in, 1.5);
    ck_assert_double_eq(out.least_length_in, 5.3125);
    ck_assert_double_eq(out.full_length_in, 7.3125);
    ck_assert_double_eq(out.chosen_length_in, 8);
    in.wanted = FRAME_REACH_LEAST;
    ck_assert_double_eq(reach_of(&in).chosen_length_in, 6);
    layers[2].thickness_in = 0.5;
    out = reach_of(&in);
    ck_assert_int_eq(out.verdict, FRAME_REACH_SHORT);
    ck_assert_double_eq(out.penetration_factor, 2.1875 / 4);
}
END_TEST

/* The same depth as dowel_lateral finds; refused there exactly where it does not count here. */
START_TEST(as_the_lateral_value_has_it) {
    for (int kind = FRAME_DOWEL_COMMON_NAIL; kind <= FRAME_DOWEL_LAG_SCREW; kind++)
        for (double gap = 0; gap < 2.5; gap += 0.3)
            for (double length = 2; length < 7; length += 0.31) {
                const frame_dowel_layer layers[] = {layer(FRAME_LAYER_WOOD, 1.5), layer(FRAME_LAYER_FOAM, gap + 1e-3),
                                                    layer(FRAME_LAYER_WOOD, 2.5)};
                frame_dowel_reach_in in = reach_in(kind, NULL, length, layers, 3);
                frame_dowel_lateral_in lateral = nail_of(kind == FRAME_DOWEL_LAG_SCREW ? 0.25 : 0.19);
                frame_dowel_lateral_out value;
                in.diameter_in = lateral.diameter_in;
                lateral.kind = kind, lateral.length_in = length, lateral.gap_in = gap + 1e-3;
                lateral.main_thickness_in = 2.5, lateral.side_angle_deg = lateral.main_angle_deg = 0;
                const frame_dowel_reach_out out = reach_of(&in);
                const frame_status status = frame_dowel_lateral(&lateral, &value, NULL);
                ck_assert_int_eq(out.counts, status == FRAME_OK);
                if (status) continue;
                ck_assert_double_eq_tol(out.penetration_in, value.penetration_in, 1e-9);
                ck_assert_double_eq_tol(out.least_penetration_in, value.least_penetration_in, 1e-12);
                ck_assert_double_eq_tol(out.point_out_in, value.point_out_in, 1e-9);
                ck_assert_double_eq_tol(out.gap_in, gap + 1e-3, 1e-12);
            }
}
END_TEST

/* Only wood counts, however much of something else there is (trap 12). */
START_TEST(only_wood_counts) {
    for (int material = FRAME_LAYER_PANEL; material <= FRAME_LAYER_CONCRETE; material++) {
        const frame_dowel_layer layers[] = {layer(FRAME_LAYER_GAP, 0.25), layer(material, 6)};
        const frame_dowel_reach_in in = reach_in(FRAME_DOWEL_COMMON_NAIL, "16d", FRAME_NOT_GIVEN, layers, 2);
        if (material == FRAME_LAYER_GAP) {
            reach_refused(&in, FRAME_IMPOSSIBLE, "layers");
            continue;
        }
        const frame_dowel_reach_out out = reach_of(&in);
        ck_assert_int_eq(out.verdict, FRAME_REACH_NO_WOOD);
        ck_assert(!out.counts);
        ck_assert_double_eq(out.penetration_in, 0);
        ck_assert_int_eq(out.holding_layer, FRAME_NOT_GIVEN_INT);
        ck_assert_int_eq(FRAME_HAS(out.cautions, FRAME_DOWEL_REACH_CAUTION_MASONRY), material == FRAME_LAYER_MASONRY);
    }
}
END_TEST

START_TEST(plain_words) {
    frame_dowel_layer layers[] = {layer(FRAME_LAYER_WOOD, 1.5), layer(FRAME_LAYER_FOAM, 2.25),
                                  layer(FRAME_LAYER_WOOD, 3.5)};
    layers[2].name = "stud";
    const frame_dowel_reach_in in = reach_in(FRAME_DOWEL_COMMON_NAIL, "16d", FRAME_NOT_GIVEN, layers, 3);
    frame_dowel_reach *answer;
    frame_dowel_reach_out out;
    ck_assert(!frame_dowel_reach_solve(&in, &answer, NULL));
    ck_assert(!frame_dowel_reach_result(answer, &out));
    ck_assert_str_eq(out.says,
                     "The point ends in the foam, 0.25 in short of the stud: it reaches no wood that could hold it "
                     "and counts for nothing.");
    ck_assert_int_eq(out.verdict, FRAME_REACH_NOT_REACHED);
    ck_assert_int_eq(out.point_layer, 1);
    ck_assert_ptr_null(out.chosen_size); /* the longest, 60d, would be 2.25 in deep, and counts in full from 2.63 in */
    ck_assert(FRAME_HAS(out.cautions, FRAME_DOWEL_REACH_CAUTION_NONE));
    frame_dowel_reach_free(answer);
}
END_TEST

/* The parts of the layers add up to the fastener, and the thread lies at its point's end. */
START_TEST(layers_add_up) {
    static const frame_layer_material materials[] = {FRAME_LAYER_STEEL,    FRAME_LAYER_WOOD, FRAME_LAYER_GYPSUM,
                                                     FRAME_LAYER_CLADDING, FRAME_LAYER_WOOD, FRAME_LAYER_GAP};
    frame_dowel_layer layers[60];
    for (size_t i = 0; i < 60; i++) layers[i] = layer(materials[i % 6], 0.1 + 0.01 * (double)(i % 7));
    for (double angle = 0; angle < 61; angle += 15)
        for (double length = 0.5; length < 4; length += 0.5) {
            frame_dowel_reach_in in = reach_in(FRAME_DOWEL_WOOD_SCREW, "No.10", length, layers, 60);
            frame_dowel_reach *answer;
            frame_dowel_reach_layer line;
            double all = 0, threads = 0;
            in.angle_deg = angle;
            ck_assert(!frame_dowel_reach_solve(&in, &answer, NULL));
            ck_assert_uint_eq(frame_dowel_reach_layer_count(answer), 60);
            for (size_t i = 0; i < 60; i++) {
                ck_assert(!frame_dowel_reach_layer_at(answer, i, &line));
                all += line.occupied_in, threads += line.thread_in;
                ck_assert_double_le(line.thread_in, line.occupied_in + 1e-12);
            }
            ck_assert_double_eq_tol(all, length, 1e-9);
            ck_assert_double_eq_tol(threads, 2 * length / 3, 1e-9);
            frame_dowel_reach_free(answer);
        }
}
END_TEST

START_TEST(sunk_and_slanted) {
    const frame_dowel_layer layers[] = {layer(FRAME_LAYER_WOOD, 1.5), layer(FRAME_LAYER_WOOD, 3.5)};
    frame_dowel_reach_in in = reach_in(FRAME_DOWEL_WOOD_SCREW, "No.10", 3, layers, 2);
    ck_assert_double_eq_tol(reach_of(&in).penetration_in, 1.5, 1e-12);
    in.countersink_in = 0.25;
    frame_dowel_reach_out out = reach_of(&in);
    ck_assert_double_eq_tol(out.penetration_in, 1.75, 1e-12);
    ck_assert_double_eq_tol(out.side_thickness_in, 1.25, 1e-12);
    ck_assert(FRAME_HAS(out.cautions, FRAME_DOWEL_REACH_CAUTION_COUNTERSUNK));
    in.countersink_in = 0, in.angle_deg = 30;
    out = reach_of(&in);
    ck_assert_double_eq_tol(out.penetration_in, 3 * sqrt(0.75) - 1.5, 1e-12);
    ck_assert_double_eq_tol(out.held_length_in, 3 - 1.5 / sqrt(0.75), 1e-12);
    ck_assert_double_eq_tol(out.held_thread_in, fmin(2, out.held_length_in), 1e-12);
    in.countersink_in = 1.5;
    reach_refused(&in, FRAME_IMPOSSIBLE, "countersink_in");
}
END_TEST

/* The point comes through: the whole thickness counts, the tip outside it; and where it ends is said. */
START_TEST(the_point_comes_through) {
    frame_dowel_layer layers[] = {layer(FRAME_LAYER_WOOD, 1.5), layer(FRAME_LAYER_WOOD, 1.5),
                                  layer(FRAME_LAYER_GAP, 3)};
    frame_dowel_reach_in in = reach_in(FRAME_DOWEL_COMMON_NAIL, "16d", FRAME_NOT_GIVEN, layers, 3);
    frame_dowel_reach_out out = reach_of(&in);
    ck_assert_double_eq(out.penetration_in, 1.5);
    ck_assert_double_eq(out.point_out_in, 0.5);
    ck_assert_double_eq(out.stands_out_in, 0.5); /* air is nothing to end in */
    ck_assert(FRAME_HAS(out.cautions, FRAME_DOWEL_REACH_CAUTION_POINT_OUT));
    ck_assert(FRAME_HAS(out.cautions, FRAME_DOWEL_REACH_CAUTION_STANDS_OUT));
    ck_assert_int_eq(out.verdict, FRAME_REACH_SHORT);
    ck_assert_double_eq(out.full_length_in, FRAME_NOT_GIVEN); /* 1.62 in is more than there is */
    ck_assert_str_eq(out.chosen_size, "10d");                 /* 0.148 x 3 in: 1.5 in is more than 10 D */
    ck_assert_double_eq(out.chosen_point_out_in, 0);
    in.kind = FRAME_DOWEL_LAG_SCREW, in.size = "3/8", in.length_in = 6;
    out = reach_of(&in);
    ck_assert_double_eq(out.penetration_in, 1.5);
    ck_assert_double_eq(out.held_thread_in, 0.5); /* the thread begins 2.5 in down; the tip is outside */
    in.length_in = 3.1;
    ck_assert_double_eq_tol(reach_of(&in).penetration_in, 1.5 - (0.21875 - 0.1), 1e-12);
}
END_TEST

/* The shortest of the usual lengths: none shorter reaches, and longer never reaches less deep. */
START_TEST(the_shortest_that_reaches) {
    const frame_dowel_layer layers[] = {layer(FRAME_LAYER_WOOD, 1.5), layer(FRAME_LAYER_PANEL, 0.4375),
                                        layer(FRAME_LAYER_FOAM, 0.75), layer(FRAME_LAYER_WOOD, 5.5)};
    static const frame_dowel_kind kinds[] = {
        FRAME_DOWEL_COMMON_NAIL, FRAME_DOWEL_BOX_NAIL, FRAME_DOWEL_RING_SHANK_NAIL, FRAME_DOWEL_WOOD_SCREW,
        FRAME_DOWEL_LAG_SCREW,   FRAME_DOWEL_BOLT,     FRAME_DOWEL_OTHER_DRIVEN};
    static const char *const sizes[] = {"8d", "16d", "0.177x3", "No.12", "3/8", "1/2", NULL};
    for (size_t k = 0; k < 7; k++)
        for (int wanted = FRAME_REACH_FULL; wanted <= FRAME_REACH_LEAST; wanted++) {
            frame_dowel_reach_in in = reach_in(kinds[k], sizes[k], FRAME_NOT_GIVEN, layers, 4);
            frame_dowel_reach *answer;
            frame_dowel_reach_out out;
            frame_dowel_reach_choice choice;
            double before = 0;
            int found = 0;
            in.wanted = wanted;
            if (!sizes[k]) in.diameter_in = 0.25;
            ck_assert_msg(!frame_dowel_reach_solve(&in, &answer, NULL), "%s", frame_error_text());
            ck_assert(!frame_dowel_reach_result(answer, &out));
            ck_assert_uint_gt(frame_dowel_reach_choice_count(answer), 3);
            for (size_t i = 0; i < frame_dowel_reach_choice_count(answer); i++) {
                ck_assert(!frame_dowel_reach_choice_at(answer, i, &choice));
                ck_assert_double_ge(choice.penetration_in, before);
                before = choice.penetration_in;
                const int reaches = wanted == FRAME_REACH_LEAST ? choice.counts : choice.verdict == FRAME_REACH_HOLDS;
                if (reaches && !found++) ck_assert_double_eq(choice.length_in, out.chosen_length_in);
            }
            ck_assert_int_eq(found == 0, out.chosen_length_in == FRAME_NOT_GIVEN);
            ck_assert_int_eq(found == 0, FRAME_HAS(out.cautions, FRAME_DOWEL_REACH_CAUTION_NONE));
            frame_dowel_reach_free(answer);
        }
}
END_TEST

START_TEST(lengths_on_hand) {
    static const double lengths[] = {6, 4, 5, 4};
    const frame_dowel_layer layers[] = {layer(FRAME_LAYER_WOOD, 1.5), layer(FRAME_LAYER_WOOD, 5.5)};
    frame_dowel_reach_in in = reach_in(FRAME_DOWEL_OTHER_DRIVEN, NULL, FRAME_NOT_GIVEN, layers, 2);
    in.diameter_in = 0.25, in.lengths_in = lengths, in.length_count = 4, in.thread_in = 2;
    const frame_dowel_reach_out out = reach_of(&in);
    ck_assert_double_eq(out.chosen_length_in, 4);
    ck_assert_double_eq(out.length_in, 4);
    ck_assert_int_eq(out.verdict, FRAME_REACH_HOLDS);
    ck_assert(FRAME_HAS(out.cautions, FRAME_DOWEL_REACH_CAUTION_CHOSEN));
    in.length_count = 0;
    in.layer_count = 1, in.lengths_in = NULL;
    ck_assert(reach_of(&in).counts); /* into one member alone */
}
END_TEST

/* A bolt must pass everything and take its nut. */
START_TEST(bolts_pass_through) {
    const frame_dowel_layer layers[] = {layer(FRAME_LAYER_STEEL, 0.125), layer(FRAME_LAYER_WOOD, 3),
                                        layer(FRAME_LAYER_WOOD, 3.5), layer(FRAME_LAYER_GAP, 2)};
    frame_dowel_reach_in in = reach_in(FRAME_DOWEL_BOLT, "1/2", 7, layers, 4);
    ck_assert(!reach_of(&in).counts);
    ck_assert_double_eq(reach_of(&in).chosen_length_in, 8);
    in.length_in = 8;
    const frame_dowel_reach_out out = reach_of(&in);
    ck_assert(out.counts);
    ck_assert_double_eq(out.penetration_in, 3.5);
    ck_assert_double_eq(out.side_thickness_in, 3);
    ck_assert_int_eq(out.root_bears, 0); /* 1.5 in of thread, 0.125 in of it in wood */
}
END_TEST

START_TEST(refusals) {
    const frame_dowel_layer layers[] = {layer(FRAME_LAYER_WOOD, 1.5), layer(FRAME_LAYER_FOAM, 20),
                                        layer(FRAME_LAYER_WOOD, 5.5)};
    frame_dowel_reach_in in = reach_in(FRAME_DOWEL_WOOD_SCREW, "No.10", FRAME_NOT_GIVEN, layers, 3);
    reach_refused(&in, FRAME_REQUIRED, "length_in"); /* and no usual length reaches */
    in.length_in = 3, in.holding_layer = 3;
    reach_refused(&in, FRAME_OUT_OF_RANGE, "holding_layer");
    in.holding_layer = 1;
    reach_refused(&in, FRAME_CONFLICT, "holding_layer");
    in.holding_layer = 0;
    ck_assert(reach_of(&in).counts);
    in.kind = FRAME_DOWEL_DRIFT_PIN;
    reach_refused(&in, FRAME_OUTSIDE_SCOPE, "kind");
    in.kind = FRAME_DOWEL_WOOD_SCREW, in.tip_in = 3.5;
    reach_refused(&in, FRAME_IMPOSSIBLE, "tip_in");
    in.tip_in = FRAME_NOT_GIVEN, in.layer_count = 0;
    reach_refused(&in, FRAME_REQUIRED, "layers");
}
END_TEST

START_TEST(workings_and_drawings) {
    const frame_dowel_layer layers[] = {layer(FRAME_LAYER_WOOD, 1.5), layer(FRAME_LAYER_FOAM, 1),
                                        layer(FRAME_LAYER_WOOD, 3.5)};
    frame_working *working;
    frame_text *text;
    ck_assert(!frame_working_new(&working) && !frame_text_new(&text));
    for (int kind = FRAME_DOWEL_COMMON_NAIL; kind <= FRAME_DOWEL_OTHER_DRIVEN; kind++)
        for (double length = 2; length < 7; length += 1.1) {
            frame_dowel_reach_in in = reach_in(kind, NULL, length, layers, 3);
            frame_dowel_reach *answer;
            frame_drawing *drawing;
            in.diameter_in = 0.25, in.angle_deg = length;
            frame_working_clear(working);
            ck_assert_msg(!frame_dowel_reach_solve(&in, &answer, working), "%s", frame_error_text());
            ck_assert_msg(!frame_working_check(working, text), "%s", frame_text_chars(text));
            frame_dowel_reach_free(answer);
            frame_text_clear(text);
            ck_assert_msg(!frame_dowel_reach_drawing(&in, &drawing), "%s", frame_error_text());
            ck_assert_msg(!frame_drawing_svg(drawing, text), "%s", frame_error_text());
            ck_assert_ptr_nonnull(strstr(frame_text_chars(text), "foam"));
            frame_drawing_free(drawing);
        }
    frame_text_free(text);
    frame_working_free(working);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("dowel_reach");
    TCase *tests = tcase_create("all");
    tcase_add_test(tests, foam_eats_a_lag_screw);
    tcase_add_test(tests, as_the_lateral_value_has_it);
    tcase_add_test(tests, only_wood_counts);
    tcase_add_test(tests, plain_words);
    tcase_add_test(tests, layers_add_up);
    tcase_add_test(tests, sunk_and_slanted);
    tcase_add_test(tests, the_point_comes_through);
    tcase_add_test(tests, the_shortest_that_reaches);
    tcase_add_test(tests, lengths_on_hand);
    tcase_add_test(tests, bolts_pass_through);
    tcase_add_test(tests, refusals);
    tcase_add_test(tests, workings_and_drawings);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
