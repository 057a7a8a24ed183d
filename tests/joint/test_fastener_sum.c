/* Sums of fasteners: like ones add, unlike ones do not, and what is needed for a demand. */
#include <check.h>
#include <frame/joint.h>
#include <math.h>
#include <string.h>

static frame_fastener_group group_of(frame_dowel_kind kind, const char *size, int32_t count, double each_lb) {
    frame_fastener_group group;
    frame_fastener_group_init(&group);
    group.kind = kind, group.size = size, group.count = count, group.each_lb = each_lb;
    return group;
}

static frame_fastener_sum_in sum_in(const frame_fastener_group *groups, size_t count, double demand_lb) {
    frame_fastener_sum_in in;
    frame_fastener_sum_in_init(&in);
    in.groups = groups, in.group_count = count, in.demand_lb = demand_lb;
    return in;
}

static frame_fastener_sum_out sum_of(const frame_fastener_sum_in *in) {
    frame_fastener_sum_out out;
    ck_assert_msg(!frame_fastener_sum(in, &out, NULL), "%s", frame_error_text());
    return out;
}

static void refused(const frame_fastener_sum_in *in, frame_status status, const char *field) {
    frame_fastener_sum_out out = {.ratio = 4.25};
    ck_assert_int_eq(frame_fastener_sum(in, &out, NULL), status);
    ck_assert_str_eq(frame_error_field(), field);
    ck_assert_double_eq(out.ratio, 4.25);
}

START_TEST(like_nails_add) {
    const frame_fastener_group nails[] = {group_of(FRAME_DOWEL_COMMON_NAIL, "16d", 4, 141),
                                          group_of(FRAME_DOWEL_COMMON_NAIL, "16d", 3, 109)};
    frame_fastener_sum_in in = sum_in(nails, 2, 1000);
    const frame_fastener_sum_out out = sum_of(&in);
    ck_assert_double_eq(out.capacity_lb, 4 * 141 + 3 * 109);
    ck_assert_double_eq_tol(out.ratio, 1000.0 / 891, 1e-12);
    ck_assert_int_eq(out.passes, 0);
    ck_assert_int_eq(out.count, 7);
    ck_assert_double_eq(out.least_each_lb, 109);
    ck_assert_int_eq(out.needed_count, 10);
    ck_assert_int_eq(out.known, FRAME_KNOWN_USER);
    ck_assert(FRAME_HAS(out.cautions, FRAME_FASTENER_SUM_CAUTION_MODES));
    ck_assert(FRAME_HAS(out.cautions, FRAME_FASTENER_SUM_CAUTION_ADJUSTED));
    ck_assert(FRAME_HAS(out.not_checked, FRAME_FASTENER_SUM_UNCHECKED_SPACING));
    in.demand_lb = 891;
    ck_assert_int_eq(sum_of(&in).passes, 1);
    ck_assert_double_eq(sum_of(&in).needed_spacing_in, FRAME_NOT_GIVEN);
}
END_TEST

/* A count that comes out whole is not rounded up by an error in the last bit. */
START_TEST(whole_counts) {
    for (int32_t n = 1; n < 400; n++) {
        const double each = 0.1 * n + 77.7;
        const frame_fastener_group nail = group_of(FRAME_DOWEL_BOX_NAIL, "10d", n, each);
        const frame_fastener_sum_in in = sum_in(&nail, 1, n * each);
        const frame_fastener_sum_out out = sum_of(&in);
        ck_assert_int_eq(out.needed_count, n);
        ck_assert_int_eq(out.passes, 1);
    }
}
END_TEST

START_TEST(unlike_ones_do_not) {
    const frame_fastener_group mixed[] = {group_of(FRAME_DOWEL_COMMON_NAIL, "16d", 6, 141),
                                          group_of(FRAME_DOWEL_LAG_SCREW, "1/2", 3, 290),
                                          group_of(FRAME_DOWEL_COMMON_NAIL, "16d", 2, 141)};
    frame_fastener_sum_in in = sum_in(mixed, 3, 1000);
    refused(&in, FRAME_REFUSED, "groups[1]");
    ck_assert_ptr_nonnull(strstr(frame_error_text(), "groups[0], holds 1128 lb alone"));
    in.unlike = FRAME_UNLIKE_STRONGEST;
    const frame_fastener_sum_out out = sum_of(&in);
    ck_assert_double_eq(out.capacity_lb, 8 * 141);
    ck_assert_int_eq(out.strongest_group, 0);
    ck_assert_double_eq(out.strongest_lb, 8 * 141);
    ck_assert_int_eq(out.count, 8);
    ck_assert_int_eq(out.passes, 1);
    ck_assert(FRAME_HAS(out.cautions, FRAME_FASTENER_SUM_CAUTION_STRONGEST));
    ck_assert(FRAME_HAS(out.cautions, FRAME_FASTENER_SUM_CAUTION_GROUP));
}
END_TEST

START_TEST(what_is_alike) {
    frame_fastener_group two[] = {group_of(FRAME_DOWEL_COMMON_NAIL, "10d", 2, 118),
                                  group_of(FRAME_DOWEL_COMMON_NAIL, "12d", 2, 118)};
    frame_fastener_sum_in in = sum_in(two, 2, 300);
    ck_assert_double_eq(sum_of(&in).capacity_lb, 472); /* one diameter, two lengths */
    two[1].size = "16d";
    refused(&in, FRAME_REFUSED, "groups[1]");
    two[1] = group_of(FRAME_DOWEL_BOX_NAIL, "20d", 2, 118);
    refused(&in, FRAME_REFUSED, "groups[1]");
    two[1] = group_of(FRAME_DOWEL_COMMON_NAIL, "10d", 2, 118);
    two[0].mode = FRAME_MODE_IV, two[1].mode = FRAME_MODE_IIIS;
    refused(&in, FRAME_REFUSED, "groups[1]");
    two[1].mode = FRAME_MODE_IV;
    ck_assert(!FRAME_HAS(sum_of(&in).cautions, FRAME_FASTENER_SUM_CAUTION_MODES));
}
END_TEST

/* A group whose mode is not known joins one of two that differ, never both. */
START_TEST(modes_that_differ_at_a_distance) {
    frame_fastener_group three[] = {group_of(FRAME_DOWEL_BOLT, "1/2", 1, 500),
                                    group_of(FRAME_DOWEL_BOLT, "1/2", 1, 500),
                                    group_of(FRAME_DOWEL_BOLT, "1/2", 1, 500)};
    three[1].mode = FRAME_MODE_II, three[2].mode = FRAME_MODE_IV;
    const frame_fastener_sum_in in = sum_in(three, 3, 300);
    refused(&in, FRAME_REFUSED, "groups[2]");
}
END_TEST

/* Gere and Goodno, Mechanics of Materials, 7th edition, problem 5.11-7: plywood webs nailed to the flanges, 30 lb a
 * nail on each of two sides; shear flow VQ/I; spacing printed as 2.77 in and 1.85 in. */
START_TEST(along_a_line) {
    static const struct { double shear_lb, printed_in; } cases[] = {{200, 2.77}, {300, 1.85}};
    const frame_fastener_group nails = group_of(FRAME_DOWEL_COMMON_NAIL, "6d", 2, 30);
    for (size_t i = 0; i < 2; i++) {
        frame_fastener_sum_in in = sum_in(&nails, 1, FRAME_NOT_GIVEN);
        in.demand_plf = 12 * cases[i].shear_lb * 8.15625 / 75.34375;
        refused(&in, FRAME_REQUIRED, "spacing_in");
        in.spacing_in = 2;
        const frame_fastener_sum_out out = sum_of(&in);
        ck_assert_double_eq_tol(out.needed_spacing_in, cases[i].printed_in, 0.005);
        ck_assert_double_eq_tol(out.demand_lb, in.demand_plf / 6, 1e-9);
        ck_assert_int_eq(out.passes, out.needed_spacing_in >= 2);
    }
}
END_TEST

/* The same book's problems 5.11-4 and 5.11-6, nails on each of two sides: flow VQ/I in N/mm; the spacing, printed to
 * 0.1 mm, or the shear that 100 mm allows, printed as 10.7 kN. */
START_TEST(along_a_line_metric) {
    static const double newton_lb = 1 / 4.4482216152605;
    static const struct {
        double flow, nail_n, printed_mm;
    } cases[] = {{3200 * 680e3 / 340.6933e6, 250, 78.3}, {3200 * 544e3 / 340.6933e6, 250, 97.9}};
    frame_fastener_group nails = group_of(FRAME_DOWEL_COMMON_NAIL, "6d", 2, 1);
    frame_fastener_sum_in in = sum_in(&nails, 1, FRAME_NOT_GIVEN);
    in.spacing_in = 3;
    for (size_t i = 0; i < 2; i++) {
        nails.each_lb = cases[i].nail_n * newton_lb;
        in.demand_plf = cases[i].flow * newton_lb * 25.4 * 12;
        ck_assert_double_eq_tol(sum_of(&in).needed_spacing_in * 25.4, cases[i].printed_mm, 0.05);
    }
    nails.each_lb = 1200 * newton_lb, in.spacing_in = 100 / 25.4;
    in.demand_plf = 10.7e3 * 926250 / 411.125e6 * newton_lb * 25.4 * 12;
    ck_assert_double_eq_tol(sum_of(&in).ratio, 1, 0.05 / 10.7);
}
END_TEST

START_TEST(what_is_refused) {
    frame_fastener_group nail = group_of(FRAME_DOWEL_COMMON_NAIL, "16d", 4, 141);
    frame_fastener_sum_in in = sum_in(&nail, 1, FRAME_NOT_GIVEN);
    refused(&in, FRAME_REQUIRED, "demand_lb");
    in.demand_lb = 100, in.demand_plf = 100;
    refused(&in, FRAME_CONFLICT, "demand_lb");
    in.demand_plf = FRAME_NOT_GIVEN, nail.size = "17d";
    refused(&in, FRAME_UNKNOWN_NAME, "groups[0].size");
    nail.size = "16d", nail.count = 0;
    refused(&in, FRAME_OUT_OF_RANGE, "groups[0].count");
    in.group_count = 0;
    refused(&in, FRAME_REQUIRED, "groups");
}
END_TEST

START_TEST(group_action) {
    const frame_fastener_group bolts = group_of(FRAME_DOWEL_BOLT, "3/4", 4, 1000);
    frame_fastener_sum_in in = sum_in(&bolts, 1, 3700);
    in.group_factor = 0.9;
    const frame_fastener_sum_out out = sum_of(&in);
    ck_assert_double_eq_tol(out.capacity_lb, 3600, 1e-9);
    ck_assert_int_eq(out.needed_count, 5);
    ck_assert_int_eq(out.passes, 0);
}
END_TEST

/* By stiffness: the stiff lag screws reach their value first and the nails carry what they have got by then. */
START_TEST(by_stiffness) {
    frame_fastener_group mixed[] = {group_of(FRAME_DOWEL_COMMON_NAIL, "16d", 6, 141),
                                    group_of(FRAME_DOWEL_LAG_SCREW, "1/2", 3, 290)};
    frame_fastener_sum_in in = sum_in(mixed, 2, 1000);
    in.unlike = FRAME_UNLIKE_STIFFNESS;
    mixed[0].stiffness_lb_per_in = 10000;
    refused(&in, FRAME_REQUIRED, "groups[1].stiffness_lb_per_in");
    mixed[1].stiffness_lb_per_in = 60000;
    const frame_fastener_sum_out out = sum_of(&in);
    const double slip = 290.0 / 60000;
    ck_assert_double_eq_tol(out.capacity_lb, 3 * 290 + 6 * 10000 * slip, 1e-9);
    ck_assert_int_eq(out.count, 9);
    ck_assert(FRAME_HAS(out.cautions, FRAME_FASTENER_SUM_CAUTION_STIFFNESS));
    /* Never more than the values added up, never less than the strongest group alone as it stands there. */
    ck_assert(out.capacity_lb < 6 * 141 + 3 * 290);
    mixed[1] = group_of(FRAME_DOWEL_COMMON_NAIL, "16d", 3, 100); /* alike: they add as ever */
    ck_assert_double_eq(sum_of(&in).capacity_lb, 6 * 141 + 3 * 100);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("fastener_sum");
    TCase *tests = tcase_create("all");
    tcase_add_test(tests, like_nails_add);
    tcase_add_test(tests, whole_counts);
    tcase_add_test(tests, unlike_ones_do_not);
    tcase_add_test(tests, what_is_alike);
    tcase_add_test(tests, modes_that_differ_at_a_distance);
    tcase_add_test(tests, along_a_line);
    tcase_add_test(tests, along_a_line_metric);
    tcase_add_test(tests, what_is_refused);
    tcase_add_test(tests, group_action);
    tcase_add_test(tests, by_stiffness);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
