/* The short way of dowel_lateral gives what the long way gives, to the last bit, and leaves to it what is out of order.
 */
#include <frame/working.h>
#include <string.h>

#include "joint/lateral_usual.h"
#include "lateral.h"

static frame_working *working;

static void begin(void) {
    ck_assert(!frame_working_new(&working));
}
static void end(void) {
    frame_working_free(working);
}

static frame_dowel_lateral_in usual_of(frame_dowel_kind kind, const char *size, double side_in) {
    frame_dowel_lateral_in in;
    frame_dowel_lateral_in_init(&in);
    in.kind = kind, in.size = size, in.side_thickness_in = side_in;
    in.side_specific_gravity = in.main_specific_gravity = 0.5;
    return in;
}

/* With a working the long way is taken. */
static int same(const frame_dowel_lateral_in *in) {
    frame_dowel_lateral_out way, both;
    memset(&way, 0x5a, sizeof way);
    memset(&both, 0xa5, sizeof both);
    frame_working_clear(working);
    const frame_status status = frame_dowel_lateral(in, &both, working);
    ck_assert_int_eq(frame_dowel_lateral(in, &way, NULL), status);
    if (!status) ck_assert_mem_eq(&way, &both, sizeof way);
    return !status;
}

START_TEST(both_ways_agree) {
    static const char *const sizes[] = {"6d", "8d", "10d", "12d", "16d", "20d", "16 penny", "60d"};
    static const char *const species[] = {"DFL", "SPF", "Southern Pine", "Western Cedars"};
    int found = 0, refused_ones = 0;
    for (int kind = FRAME_DOWEL_COMMON_NAIL; kind <= FRAME_DOWEL_SINKER_NAIL; kind++)
        for (int s = 0; s < 8; s++)
            for (double side = 0.25; side < 3; side += 0.25)
                for (int w = 0; w < 5; w++) {
                    frame_dowel_lateral_in in = usual_of(kind, sizes[s], side), *const i = &in;
                    if (w < 4)
                        i->side_specific_gravity = FRAME_NOT_GIVEN, frame_species_find(species[w], &i->side_species);
                    if (w < 3)
                        i->main_specific_gravity = FRAME_NOT_GIVEN,
                        frame_species_find(species[w + 1], &i->main_species);
                    if (w & 1) i->load_duration_factor = 1.6;
                    const int good = same(i);
                    found += good, refused_ones += !good;
                }
    ck_assert_int_gt(found, 300);
    ck_assert_int_gt(refused_ones, 50);
}
END_TEST

START_TEST(by_diameter_and_length) {
    for (double diameter = 0.09; diameter < 0.3; diameter += 0.004)
        for (double length = 1; length < 5; length += 0.5) {
            frame_dowel_lateral_in in = usual_of(FRAME_DOWEL_BOX_NAIL, NULL, 0.75);
            in.diameter_in = diameter, in.length_in = length;
            if (diameter >= 0.25) in.side_angle_deg = in.main_angle_deg = 90;
            same(&in);
        }
}
END_TEST

/* Each field changed alone: the short way either steps aside or still agrees. */
START_TEST(any_other_field) {
    for (int field = 0; field < 14; field++) {
        frame_dowel_lateral_in in = usual_of(FRAME_DOWEL_COMMON_NAIL, "16d", 1.5);
        switch (field) {
            case 0:
                in.service = FRAME_SERVICE_WET;
                break;
            case 1:
                in.toe_nail = 1;
                break;
            case 2:
                in.diaphragm = 1;
                break;
            case 3:
                in.end_grain = 1;
                break;
            case 4:
                in.gap_in = 0.5;
                break;
            case 5:
                in.main_thickness_in = 1.5;
                break;
            case 6:
                in.penetration_in = 1.25;
                break;
            case 7:
                in.temperature_f = 140;
                break;
            case 8:
                in.group_factor = 0.9;
                break;
            case 9:
                in.geometry_factor = 0.9;
                break;
            case 10:
                in.method = FRAME_METHOD_LRFD, in.time_effect_factor = 0.8;
                break;
            case 11:
                in.bending_yield_psi = 80000;
                break;
            case 12:
                in.short_penetration = FRAME_SHORT_BY_TABLE;
                break;
            default:
                in.length_in = 3;
        }
        frame_dowel_lateral_out out;
        ck_assert_msg(!frame_lateral_usual(&in, &out), "field %d", field);
        ck_assert_msg(same(&in), "field %d: %s", field, frame_error_text());
    }
}
END_TEST

/* What is wrong is left to the long way, which words it. */
START_TEST(what_is_wrong) {
    const double wrong[] = {0, -1, 25, FRAME_NOT_GIVEN, 1e300};
    for (size_t i = 0; i < 5; i++) {
        frame_dowel_lateral_in in = usual_of(FRAME_DOWEL_COMMON_NAIL, "16d", wrong[i]);
        refused(&in, wrong[i] == FRAME_NOT_GIVEN ? FRAME_REQUIRED : FRAME_OUT_OF_RANGE, "side_thickness_in");
        in = usual_of(FRAME_DOWEL_COMMON_NAIL, "16d", 1.5);
        in.side_specific_gravity = wrong[i];
        refused(&in, wrong[i] == FRAME_NOT_GIVEN ? FRAME_REQUIRED : FRAME_OUT_OF_RANGE,
                wrong[i] == FRAME_NOT_GIVEN ? "side_species" : "side_specific_gravity");
    }
    frame_dowel_lateral_in in = usual_of(FRAME_DOWEL_COMMON_NAIL, "17d", 1.5);
    refused(&in, FRAME_UNKNOWN_NAME, "size");
    in = usual_of(FRAME_DOWEL_COMMON_NAIL, "16d", 1.5);
    in.load_duration_factor = 2;
    refused(&in, FRAME_OUT_OF_RANGE, "load_duration_factor");
    in.load_duration_factor = 0.0 / 0.0;
    refused(&in, FRAME_NOT_A_NUMBER, "load_duration_factor");
    in = usual_of(FRAME_DOWEL_COMMON_NAIL, "16d", 1.5);
    frame_species_find("SPF", &in.main_species);
    refused(&in, FRAME_CONFLICT, "main_specific_gravity");
    in = usual_of(FRAME_DOWEL_COMMON_NAIL, "16d", 3);
    refused(&in, FRAME_OUTSIDE_SCOPE, "penetration_in");
}
END_TEST

int main(void) {
    Suite *suite = suite_create("dowel_lateral, the short way");
    TCase *tests = tcase_create("all");
    tcase_add_checked_fixture(tests, begin, end);
    tcase_add_test(tests, both_ways_agree);
    tcase_add_test(tests, by_diameter_and_length);
    tcase_add_test(tests, any_other_field);
    tcase_add_test(tests, what_is_wrong);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
