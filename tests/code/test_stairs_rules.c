/* Stairs at, just under and just over each limit, each edition; rules found by their words. Limits typed from the
 * adoption texts: R311.7 and R312 of 2015 (Alabama), 2018 (Alaska), 2021 (Texas), R318.7, R320 and R321 of 2024
 * (federal). */
#include "ask.h"

#include "table_code_rules.h"
#include "table_code_rules_read.h"
#include "table_code_stair_limits.h"

static const char *const years[] = {"2015", "2018", "2021", "2024"};

static int holds(const char *year, const char *measure, double value, const char *more) {
    char question[300];
    frame_code_stairs_out out;
    snprintf(question, sizeof question, "edition=%s; %s=%.6f; %s", year, measure, value, more);
    ASKED(&out, "code_stairs", question);
    ck_assert_msg(out.measured > 0, "%s", question);
    ck_assert_int_eq(out.holds, !out.failed);
    ck_assert_int_eq(*out.reason != 0, out.failed > 0);
    return out.holds;
}

static void least_at(int line, const char *measure, double value, const char *more) {
    for (int i = 0; i < 4; i++) {
        ck_assert_msg(!holds(years[i], measure, value - 0.001, more), "line %d: %s %s", line, years[i], measure);
        ck_assert_msg(holds(years[i], measure, value, more), "line %d: %s %s", line, years[i], measure);
        ck_assert_msg(holds(years[i], measure, value + 0.001, more), "line %d: %s %s", line, years[i], measure);
    }
}
static void most_at(int line, const char *measure, double value, const char *more) {
    for (int i = 0; i < 4; i++) {
        ck_assert_msg(holds(years[i], measure, value - 0.001, more), "line %d: %s %s", line, years[i], measure);
        ck_assert_msg(holds(years[i], measure, value, more), "line %d: %s %s", line, years[i], measure);
        ck_assert_msg(!holds(years[i], measure, value + 0.001, more), "line %d: %s %s", line, years[i], measure);
    }
}
static void under_at(int line, const char *measure, double value, const char *more) {
    for (int i = 0; i < 4; i++) {
        ck_assert_msg(holds(years[i], measure, value - 0.001, more), "line %d: %s %s", line, years[i], measure);
        ck_assert_msg(!holds(years[i], measure, value, more), "line %d: %s %s", line, years[i], measure);
    }
}
#define LEAST(measure, value, more) least_at(__LINE__, measure, value, more)
#define MOST(measure, value, more) most_at(__LINE__, measure, value, more)
#define UNDER(measure, value, more) under_at(__LINE__, measure, value, more)

START_TEST(stairs_at_the_limits) {
    MOST("riser_in", 7.75, "");
    MOST("riser_in", 9.5, "spiral=yes");
    MOST("riser_variation_in", 0.375, "");
    LEAST("tread_in", 10, "");
    LEAST("tread_in", 6.75, "spiral=yes");
    MOST("tread_variation_in", 0.375, "");
    LEAST("winder_walkline_in", 10, "");
    LEAST("winder_least_in", 6, "");
    MOST("winder_variation_in", 0.375, "");
    LEAST("nosing_in", 0.75, "");
    MOST("nosing_in", 1.25, "");
    MOST("nosing_variation_in", 0.375, "");
    MOST("nosing_radius_in", 0.5625, "");
    LEAST("headroom_in", 80, "");
    LEAST("headroom_in", 78, "spiral=yes");
    LEAST("width_in", 36, "");
    LEAST("width_at_rail_in", 31.5, "");
    LEAST("width_at_rail_in", 31.5, "rails=1");
    LEAST("width_at_rail_in", 27, "rails=2");
    LEAST("width_at_rail_in", 26, "spiral=yes; rails=2");
    LEAST("landing_in", 36, "");
    MOST("slope_percent", 100 / 48.0, "");
    MOST("walkline_radius_in", 24.5, "spiral=yes");
    UNDER("open_riser_in", 4, "");
}
END_TEST

START_TEST(rails_and_guards_at_the_limits) {
    LEAST("handrail_height_in", 34, "");
    MOST("handrail_height_in", 38, "");
    MOST("handrail_projection_in", 4.5, "");
    LEAST("handrail_clearance_in", 1.5, "");
    LEAST("grip_diameter_in", 1.25, "");
    MOST("grip_diameter_in", 2, "");
    LEAST("grip_perimeter_in", 4, "");
    MOST("grip_perimeter_in", 6.25, "");
    MOST("grip_section_in", 2.25, "");
    LEAST("guard_height_in", 36, "");
    LEAST("guard_height_in", 34, "on_stairs=yes");
    LEAST("guard_height_in", 34, "on_stairs=yes; guard_is_rail=yes");
    MOST("guard_height_in", 38, "on_stairs=yes; guard_is_rail=yes");
    UNDER("opening_in", 4, "");
    UNDER("opening_in", 4.375, "on_stairs=yes");
    UNDER("triangle_in", 6, "");
    MOST("drop_in", 30, "");
    ck_assert(holds("2021", "drop_in", 60, "guard_height_in=36"));
}
END_TEST

START_TEST(rise_by_edition) {
    ck_assert(holds("2015", "rise_in", 147, "") && !holds("2015", "rise_in", 147.01, ""));
    for (int i = 1; i < 4; i++)
        ck_assert(holds(years[i], "rise_in", 151, "") && !holds(years[i], "rise_in", 151.01, ""));
}
END_TEST

START_TEST(what_is_needed_and_excepted) {
    frame_code_stairs_out out;
    ASKED(&out, "code_stairs", "edition=2021; drop_in=31; guard_height_in=0; risers=4; rails=0");
    ck_assert(out.guard_needed == 1 && out.handrail_needed == 1 && out.failed == 2 && !out.holds);
    ASKED(&out, "code_stairs", "edition=2021; drop_in=30; risers=3; rails=0");
    ck_assert(out.guard_needed == 0 && out.handrail_needed == 0 && out.failed == 0 && out.holds);
    ASKED(&out, "code_stairs", "edition=2021; risers=14; rails=1");
    ck_assert(out.handrail_needed == 1 && out.holds == FRAME_NOT_GIVEN_INT);
    ASKED(&out, "code_stairs", "edition=2021");
    ck_assert(out.measured == 0 && out.holds == FRAME_NOT_GIVEN_INT && out.guard_needed == FRAME_NOT_GIVEN_INT);
    /* no nosing under deep treads; open risers by edition */
    ck_assert(holds("2021", "nosing_in", 0, "tread_in=11") && !holds("2021", "nosing_in", 0, "tread_in=10.9"));
    ck_assert(holds("2015", "nosing_in", 0, "open_risers=yes") && !holds("2021", "nosing_in", 0, "open_risers=yes"));
    ck_assert(holds("2024", "nosing_in", 2, "open_risers=yes") && !holds("2021", "nosing_in", 2, "open_risers=yes"));
    REFUSED("code_stairs", "edition=DCA 6", "edition", FRAME_NO_VALUE);
    REFUSED("code_stairs", "edition=2021; riser_in=-1", "riser_in", FRAME_OUT_OF_RANGE);
    says(&out, "code_stairs", "edition=2024; riser_in=8; headroom_in=81", "R318.7.5.1");
}
END_TEST

START_TEST(every_limit_is_listed) {
    for (int i = 0; i < 4; i++) {
        char question[40];
        snprintf(question, sizeof question, "edition=%s", years[i]);
        frame_answer *answer = ask_all("code_stairs", question);
        ck_assert_uint_ge(answer->lists[0].count, 30);
        for (size_t k = 0; k < answer->lists[0].count; k++) {
            const frame_code_stairs_limit *limit = &FRAME_ANSWER_ITEM(frame_code_stairs_limit, answer, 0, k);
            ck_assert_msg(!strncmp(limit->clause, i == 3 ? "R3" : "R31", 2), "%s", limit->clause);
            ck_assert_int_eq(limit->holds, FRAME_NOT_GIVEN_INT);
            ck_assert_int_eq((limit->least > 0) + (limit->most > 0) + (limit->under > 0), 1);
        }
        frame_answer_free(answer);
    }
}
END_TEST

/* A rule of these words with this value and clause. */
static void rule_at(int line, const char *year, const char *words, const char *clause, double value, const char *text) {
    char question[200];
    snprintf(question, sizeof question, "edition=%s; words=%s", year, words);
    frame_answer *answer = ask_all("code_rules", question);
    int found = 0;
    for (size_t i = 0; i < answer->lists[0].count; i++) {
        const frame_code_rules_rule *rule = &FRAME_ANSWER_ITEM(frame_code_rules_rule, answer, 0, i);
        if (i) ck_assert_int_le((&FRAME_ANSWER_ITEM(frame_code_rules_rule, answer, 0, i - 1))->known, rule->known);
        found |= !strcmp(rule->clause, clause) && (*text ? !strcmp(rule->text, text) : rule->value == value) &&
                 rule->known == FRAME_KNOWN_READ;
    }
    frame_answer_free(answer);
    ck_assert_msg(found, "line %d: %s", line, question);
}
#define RULE(year, words, clause, value) rule_at(__LINE__, year, words, clause, value, "")
#define RULE_TEXT(year, words, clause, text) rule_at(__LINE__, year, words, clause, 0, text)

START_TEST(rules_as_read) {
    for (int i = 0; i < 4; i++) {
        RULE(years[i], "joist bearing wood", "R502.6", 1.5);
        RULE(years[i], "joist bearing concrete", "R502.6", 3);
        RULE(years[i], "joists lap", "R502.6.1", 3);
        RULE(years[i], "lateral support blocking", "R502.7", 2);
        RULE_TEXT(years[i], "bridging", "R502.7.1", "2x12");
        RULE(years[i], "Bridging spacing", "R502.7.1", 8);
        RULE(years[i], "floor opening header", "R502.10", 4);
        RULE(years[i], "trimmers", "R502.10", 3);
        RULE(years[i], "birdsmouth", "R502.8.1", 0.25);
    }
    RULE("2018", "top plate offset", "R602.3.2", 24);
    RULE("2021", "top plate splice", "R602.3.2", 18);
    RULE("2021", "nonbearing header", "R602.7.4", 8);
    RULE("2024", "ridge board", "R802.3", 1);
    RULE_TEXT("2018", "collar ties", "R802.4.6", "1x4");
    RULE("2024", "collar tie spacing", "R802.4.6", 4);
    RULE("2024", "rafter bearing", "R802.6", 1.5);
    RULE("2021", "deck lateral", "R507.9.2", 1500);
    RULE("2021", "decking diagonal", "R507.7", 8);
    RULE("2021", "R311.7.5.1", "R311.7.5.1", 7.75);
    RULE("2024", "guard height", "R321.1.2", 36);
}
END_TEST

START_TEST(rules_that_are_not_there) {
    frame_code_rules_out out;
    REFUSED("code_rules", "edition=2021; words=flux capacitor", "words", FRAME_NO_VALUE);
    REFUSED("code_rules", "edition=2021; words=", "words", FRAME_REQUIRED);
    REFUSED("code_rules", "edition=2015; words=ridge strap width", "edition", FRAME_NO_VALUE);
    REFUSED("code_rules", "edition=2021; words=utility grade interior jack", "words", FRAME_NO_VALUE);
    REFUSED("code_rules", "edition=2021; words=jack studs each end", "words", FRAME_NO_VALUE);
    ASKED(&out, "code_rules", "edition=2021; words=jack studs each end; elsewhere=yes");
    ck_assert_int_eq(out.rule_count, 3);
    ck_assert(CAUTION(out, AMENDED) && CAUTION(out, LOCAL));
    ASKED(&out, "code_rules", "edition=2021; words=fireblocking");
    ck_assert(CAUTION(out, SECONDARY) && out.known == FRAME_KNOWN_SECONDARY);
    ASKED(&out, "code_rules", "edition=2021; words=staples");
    ck_assert(CAUTION(out, MEMORY) && out.known == FRAME_KNOWN_MEMORY);
    says(&out, "code_rules", "edition=2021; words=collar tie; elsewhere=yes", "R802.4.6");
}
END_TEST

int main(void) {
    TCase *tests = tcase_create("stairs and rules");
    tcase_add_test(tests, stairs_at_the_limits);
    tcase_add_test(tests, rails_and_guards_at_the_limits);
    tcase_add_test(tests, rise_by_edition);
    tcase_add_test(tests, what_is_needed_and_excepted);
    tcase_add_test(tests, every_limit_is_listed);
    tcase_add_test(tests, rules_as_read);
    tcase_add_test(tests, rules_that_are_not_there);
    return run_tests(tests, "stairs and rules");
}
