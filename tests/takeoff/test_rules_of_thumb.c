/* Rules of thumb against the worked figures that are printed beside them. */
#include <check.h>
#include <math.h>
#include <string.h>

#include <frame/frame.h>

static double by_rule(const frame_rules_of_thumb_in *in, const char *topic, const char *words) {
    frame_rules_of_thumb *answer;
    double quantity = -1;
    ck_assert_msg(!frame_rules_of_thumb_solve(in, &answer, NULL), "%s", frame_error_text());
    for (size_t r = 0; r < frame_rules_of_thumb_rule_count(answer); r++) {
        frame_rules_of_thumb_rule rule;
        frame_rules_of_thumb_rule_at(answer, r, &rule);
        ck_assert(*rule.source);
        if (!strcmp(rule.topic, topic) && strstr(rule.rule, words)) quantity = rule.quantity;
    }
    frame_rules_of_thumb_free(answer);
    return quantity;
}

START_TEST(printed_examples) {
    frame_rules_of_thumb_in in;
    frame_rules_of_thumb_in_init(&in);
    in.length_in = 32 * 12;
    ck_assert_double_eq(by_rule(&in, "joists", "four feet"), 25); /* Hicks */
    in.spacing_in = 12;
    ck_assert_double_eq(by_rule(&in, "joists", "each foot"), 33);
    ck_assert_double_eq(by_rule(&in, "joists", "four feet"), -1); /* a rule for another spacing */
    in.spacing_in = 16;
    in.length_in = 60 * 12;
    ck_assert_double_eq(by_rule(&in, "studs", "four feet"), 46); /* Building Trades Pocketbook */
    in.length_in = 148 * 12;
    ck_assert_double_eq(by_rule(&in, "studs", "four feet"), 112); /* Estimating in Building Construction */
    in.length_in = 50 * 12;
    ck_assert_double_eq(by_rule(&in, "studs", "none added"), 38); /* a school's sheet */
    in.corners = 4;
    ck_assert_double_eq(by_rule(&in, "studs", "corner"), 8);
    in.area_in2 = 1256 * 144;
    ck_assert_double_eq(by_rule(&in, "sheets", "32"), 40);
    in.area_in2 = 1060 * 144;
    ck_assert_double_eq(by_rule(&in, "sheets", "32"), 34);
    in.area_in2 = 1500 * 144;
    ck_assert_double_eq_tol(by_rule(&in, "nails", "sheathing"), 30, 1e-9);
    in.pieces = 500, in.nails = 6000;
    ck_assert_double_eq(by_rule(&in, "waste", "thicker"), 550);
    ck_assert_double_eq(by_rule(&in, "waste", "nails"), 7200);
    in.board_feet = 6300, in.penny = 10;
    ck_assert_double_eq_tol(by_rule(&in, "nails", "framing"), 105.21, 0.005);
}
END_TEST

START_TEST(counted_beside) {
    frame_rules_of_thumb_in in;
    frame_rules_of_thumb_out out;
    frame_rules_of_thumb *answer;
    frame_rules_of_thumb_in_init(&in);
    in.length_in = 96, in.area_in2 = 4608 * 2;
    in.nails = 1000, in.nail_length_in = 3.5, in.nail_diameter_in = 0.162;
    ck_assert_int_eq(frame_rules_of_thumb_solve(&in, &answer, NULL), FRAME_OK);
    frame_rules_of_thumb_result(answer, &out);
    ck_assert_double_eq(out.counted_studs, 7); /* 0, 16, ... 80 and the end */
    ck_assert_double_eq(out.counted_sheets, 2);
    ck_assert_double_eq_tol(out.counted_nail_lb, 1000 * 3.5 * acos(-1) / 4 * 0.162 * 0.162 * 0.2836, 1e-6);
    frame_rules_of_thumb_free(answer);
    in.spacing_in = 2;
    ck_assert_int_eq(frame_rules_of_thumb_solve(&in, &answer, NULL), FRAME_OUT_OF_RANGE);
}
END_TEST

static frame_thumb_nailing nailing_of(frame_dowel_kind kind, const char *size, int32_t count) {
    frame_thumb_nailing made;
    frame_thumb_nailing_init(&made);
    made.kind = kind;
    made.size = size;
    made.count = count;
    return made;
}

/* Size by size: 490 16d common nails at 49 to a pound are ten pounds, 212 8d at 106 two. Every count to a pound lies
 * within 6 % of the same weight of wire, worked out here. */
START_TEST(pounds_of_a_nailing) {
    static const char *const sizes[] = {"6d", "7d", "8d", "10d", "12d", "16d", "20d", "30d", "40d", "50d", "60d"};
    static const double common[][2] = {{2, 0.113},    {2.25, 0.113}, {2.5, 0.131}, {3, 0.148},
                                       {3.25, 0.148}, {3.5, 0.162},  {4, 0.192},   {4.5, 0.207},
                                       {5, 0.225},    {5.5, 0.244},  {6, 0.263}};
    frame_thumb_nailing nailing[] = {nailing_of(FRAME_DOWEL_COMMON_NAIL, "16d", 490),
                                     nailing_of(FRAME_DOWEL_COMMON_NAIL, "8d", 212),
                                     nailing_of(FRAME_DOWEL_SINKER_NAIL, "16d", 100)};
    frame_rules_of_thumb_in in;
    frame_rules_of_thumb_out out;
    frame_rules_of_thumb_nail nails;
    frame_rules_of_thumb *answer;
    frame_rules_of_thumb_in_init(&in);
    in.nailing = nailing, in.nailing_count = 2;
    ck_assert_msg(!frame_rules_of_thumb_solve(&in, &answer, NULL), "%s", frame_error_text());
    frame_rules_of_thumb_result(answer, &out);
    ck_assert_double_eq_tol(out.nailing_lb, 12, 1e-9);
    ck_assert_uint_eq(frame_rules_of_thumb_nail_count(answer), 2);
    frame_rules_of_thumb_free(answer);
    ck_assert_double_eq(by_rule(&in, "waste", "nails"), 842); /* 702 and a fifth more, rounded */
    in.nailing_count = 3;
    ck_assert_int_eq(frame_rules_of_thumb_solve(&in, &answer, NULL), FRAME_OK);
    ck_assert_int_eq(frame_rules_of_thumb_nail_at(answer, 2, &nails), FRAME_OK);
    ck_assert_double_eq_tol(nails.nail_lb, nails.wire_lb, 1e-9); /* not in the table: as wire */
    frame_rules_of_thumb_free(answer);
    in.nailing_count = 1;
    for (size_t i = 0; i < sizeof sizes / sizeof *sizes; i++) {
        nailing[0] = nailing_of(FRAME_DOWEL_COMMON_NAIL, sizes[i], 1000);
        ck_assert_msg(!frame_rules_of_thumb_solve(&in, &answer, NULL), "%s", frame_error_text());
        ck_assert_int_eq(frame_rules_of_thumb_nail_at(answer, 0, &nails), FRAME_OK);
        ck_assert_double_eq_tol(nails.wire_lb,
                                1000 * common[i][0] * acos(-1) / 4 * common[i][1] * common[i][1] * 0.2836, 1e-6);
        ck_assert_double_eq_tol(nails.nail_lb / nails.wire_lb, 1, 0.06);
        frame_rules_of_thumb_free(answer);
    }
    nailing[0].size = "3 1/2 in thick";
    ck_assert_int_eq(frame_rules_of_thumb_solve(&in, &answer, NULL), FRAME_UNKNOWN_NAME);
    ck_assert_str_eq(frame_error_field(), "nailing[0].size");
    nailing[0] = nailing_of(FRAME_DOWEL_BOLT, "1/2", 10);
    ck_assert_int_eq(frame_rules_of_thumb_solve(&in, &answer, NULL), FRAME_OUT_OF_RANGE);
    ck_assert_str_eq(frame_error_field(), "nailing[0].kind");
}
END_TEST

int main(void) {
    Suite *suite = suite_create("rules_of_thumb");
    TCase *tests = tcase_create("all");
    tcase_add_test(tests, printed_examples);
    tcase_add_test(tests, counted_beside);
    tcase_add_test(tests, pounds_of_a_nailing);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
