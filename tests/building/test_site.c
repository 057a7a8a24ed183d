/* Descriptions: what goes in as JSON comes out as JSON; errors name the path; nothing crashes the reader. */
#include <check.h>
#include <stdlib.h>
#include <string.h>

#include "random_site.h"

static const char shed[] =
    "{\"name\": \"tool \\u00e9 shed\", \"ground_snow_psf\": 25, \"snow_basis\": \"50-year\", \"code_edition\": "
    "\"2021\",\n"
    " \"levels\": [{\"name\": \"shed\", \"base_in\": 0, \"height_in\": \"7' 6\\\"\"}],\n"
    " \"walls\": [{\"name\": \"front\", \"level\": \"shed\", \"from_x_in\": 0, \"from_y_in\": 0, \"to_x_in\": \"10'\", "
    "\"to_y_in\": 0, \"size\": \"2x4\", \"species\": \"SPF\", \"grade\": \"No.2\", \"bearing\": true, \"spacing_in\": "
    "null}],\n"
    " \"roofs\": [{\"name\": \"roof\", \"level\": \"shed\", \"corners\": [{\"x_in\": 0, \"y_in\": 0}, {\"x_in\": 120, "
    "\"y_in\": 0}, "
    "{\"x_in\": 120, \"y_in\": 96}, {\"x_in\": 0, \"y_in\": 96}], \"slopes\": [\"4 in 12\"], \"kinds\": [\"hip\", "
    "\"gable\", "
    "\"hip\", \"gable\"], \"ridge\": \"board\", \"species\": \"SPF\", \"grade\": \"No.2\"}]}";

static frame_site *read_site(const char *json) {
    frame_site *site = NULL;
    ck_assert_msg(!frame_site_from_json(json, &site), "%s", frame_error_text());
    return site;
}

static void expect_error(const char *find, const char *put, frame_status status, const char *message) {
    char text[4096];
    const char *at = strstr(shed, find);
    ck_assert_ptr_nonnull(at);
    snprintf(text, sizeof text, "%.*s%s%s", (int)(at - shed), shed, put, at + strlen(find));
    frame_site *site = NULL;
    const frame_status found = frame_site_from_json(text, &site);
    ck_assert_msg(found == status, "%d for %s: %s", (int)found, put, frame_error_text());
    ck_assert_ptr_null(site);
    ck_assert_msg(strstr(frame_error_text(), message) != NULL, "%s", frame_error_text());
}

START_TEST(json_comes_back_as_it_went) {
    frame_text *one, *two;
    frame_text_new(&one);
    frame_text_new(&two);
    frame_site *site = read_site(shed);
    ck_assert_int_eq(frame_site_json(site, one), 0);
    ck_assert_ptr_nonnull(strstr(frame_text_chars(one), "tool \xc3\xa9 shed"));
    ck_assert_ptr_nonnull(strstr(frame_text_chars(one), "\"height_in\": 90"));
    ck_assert_ptr_null(strstr(frame_text_chars(one), "spacing_in")); /* null is not given */
    frame_site *again = read_site(frame_text_chars(one));
    ck_assert_int_eq(frame_site_json(again, two), 0);
    ck_assert_str_eq(frame_text_chars(one), frame_text_chars(two));
    frame_site_free(site);
    frame_site_free(again);
    frame_text_free(one);
    frame_text_free(two);
}
END_TEST

START_TEST(random_sites_come_back) {
    dice d = {31};
    for (int i = 0; i < 20; i++) {
        const plan p = random_plan(&d);
        frame_site *site;
        frame_text *one, *two;
        frame_text_new(&one);
        frame_text_new(&two);
        ck_assert_int_eq(random_site(&d, &p, &site), 0);
        frame_site_json(site, one);
        frame_site *again = read_site(frame_text_chars(one));
        frame_site_json(again, two);
        ck_assert_str_eq(frame_text_chars(one), frame_text_chars(two));
        frame_site_free(site);
        frame_site_free(again);
        frame_text_free(one);
        frame_text_free(two);
    }
}
END_TEST

START_TEST(errors_name_the_path) {
    expect_error("\"base_in\": 0", "\"base_inn\": 0", FRAME_UNKNOWN_FIELD,
                 "levels[0].base_inn: there is no such field; did you mean base_in?");
    expect_error("\"base_in\": 0, ", "", FRAME_REQUIRED, "levels[0].base_in");
    expect_error("\"2x4\"", "\"2x5.5\"", FRAME_UNKNOWN_NAME, "walls[0].size");
    expect_error("\"10'\"", "\"10 cubits\"", FRAME_UNREADABLE, "walls[0].to_x_in");
    expect_error("\"10'\"", "true", FRAME_UNREADABLE, "walls[0].to_x_in: line 3: expected a number");
    expect_error("\"4 in 12\"", "\"steep\"", FRAME_UNREADABLE, "roofs[0].slopes[0]");
    expect_error("\"4 in 12\"", "-1", FRAME_OUT_OF_RANGE, "roofs[0].slopes[0]");
    expect_error("\"gable\", \"hip\"", "\"gabel\", \"hip\"", FRAME_UNKNOWN_NAME, "roofs[0].kinds[1]");
    expect_error("\"x_in\": 120, \"y_in\": 0", "\"x_in\": 120", FRAME_REQUIRED, "roofs[0].corners[1].y_in");
    expect_error("\"bearing\": true", "\"bearing\": 1", FRAME_UNREADABLE, "walls[0].bearing");
    expect_error("\"bearing\": true", "\"size\": \"2x4\"", FRAME_CONFLICT, "walls[0].size: is given twice");
    expect_error("\"levels\"", "\"level\"", FRAME_UNKNOWN_FIELD, "level");
    expect_error("\"ridge\": \"board\", ", "", FRAME_REQUIRED, "roofs[0].ridge");
    expect_error("\"ground_snow_psf\": 25, ", "", FRAME_REQUIRED, "ground_snow_psf");
    expect_error("\"gable\"]", "\"gable\",]", FRAME_UNREADABLE, "roofs[0].kinds[4]");
    expect_error("25", "025", FRAME_UNREADABLE, "ground_snow_psf");
    expect_error("\\u00e9", "\\u0000", FRAME_UNREADABLE, "name");
    expect_error("\\u00e9", "\\ud800", FRAME_UNREADABLE, "name");
    expect_error("\\u00e9", "\\udc00", FRAME_UNREADABLE, "name");        /* the second half of a pair alone */
    expect_error("\\u00e9", "\\ud800\\u0041", FRAME_UNREADABLE, "name"); /* its first half before another character */
    expect_error("\\u00e9", "\\u0007", FRAME_UNREADABLE, "name");        /* no page or picture could hold it */
    expect_error("\\u00e9", "\xc3", FRAME_UNREADABLE, "name");           /* half a character */
    expect_error("\"shed\", \"base", "\"\", \"base", FRAME_OUT_OF_RANGE, "levels[0].name");
    expect_error("25", "1e999", FRAME_NOT_A_NUMBER, "ground_snow_psf");
    expect_error("120, \"y_in\": 0", "123456789012345678901234567890, \"y_in\": 0", FRAME_OUT_OF_RANGE,
                 "roofs[0].corners[1].x_in");
    expect_error("25", "[[[[[[[[[[1]]]]]]]]]]", FRAME_UNREADABLE, "ground_snow_psf");
    expect_error("\"snow_basis\"", "\"ground_snow_psf\": 25, \"snow_basis\"", FRAME_CONFLICT,
                 "ground_snow_psf: is given twice");
}
END_TEST

/* However deep it nests, nothing is read that a description has no place for. */
START_TEST(depth_is_refused) {
    enum { DEEP = 200000 };
    char *text = malloc(DEEP + 20);
    strcpy(text, "{\"levels\": ");
    memset(text + 11, '[', DEEP);
    text[11 + DEEP] = 0;
    frame_site *site = NULL;
    ck_assert_int_eq(frame_site_from_json(text, &site), FRAME_UNREADABLE);
    free(text);
}
END_TEST

/* Names that a page, a list or a drawing could not hold are refused by the API too. */
START_TEST(names_can_be_written) {
    frame_site *site = read_site(shed);
    frame_part_level level;
    char longest[82];
    memset(longest, 'a', 81);
    longest[81] = 0;
    frame_part_level_init(&level);
    level.base_in = 0, level.height_in = 90;
    level.name = longest;
    ck_assert_int_eq(frame_site_level(site, &level), FRAME_OUT_OF_RANGE);
    longest[80] = 0;
    ck_assert_int_eq(frame_site_level(site, &level), FRAME_OK);
    level.name = "\xff";
    ck_assert_int_eq(frame_site_level(site, &level), FRAME_UNREADABLE);
    level.name = "tab\t";
    ck_assert_int_eq(frame_site_level(site, &level), FRAME_UNREADABLE);
    frame_site_free(site);
}
END_TEST

/* Each field of every kind of part, wrong once: refused, with the field's own name. */
START_TEST(each_field_wrong_once) {
    static const char *const parts[] = {"level", "wall", "opening", "floor", "floor_opening",
                                        "stair", "beam", "post",    "roof",  "load"};
    for (size_t p = 0; p < sizeof parts / sizeof *parts; p++) {
        char name[40];
        snprintf(name, sizeof name, "part_%s", parts[p]);
        const frame_struct *facts = frame_struct_find(name);
        ck_assert_ptr_nonnull(facts);
        for (size_t i = 0; i < frame_field_count(facts); i++) {
            const frame_field *field = frame_field_at(facts, i);
            char text[400];
            snprintf(
                text, sizeof text,
                "{\"name\": \"x\", \"ground_snow_psf\": 1, \"snow_basis\": \"50-year\", \"code_edition\": \"2021\", "
                "\"%ss\": [{\"%s\": {\"wrong\": 1}}]}",
                parts[p], field->name);
            frame_site *site = NULL;
            ck_assert_int_ne(frame_site_from_json(text, &site), FRAME_OK);
            char path[120];
            snprintf(path, sizeof path, "%ss[0].%s", parts[p], field->name);
            ck_assert_msg(!strncmp(frame_error_field(), path, strlen(path)), "%s: %s", path, frame_error_text());
        }
    }
}
END_TEST

/* Cut off anywhere, or with one character changed: refused or read, never more. */
START_TEST(broken_text_is_refused) {
    char text[sizeof shed];
    for (size_t i = 0; i < sizeof shed - 1; i++) {
        frame_site *site = NULL;
        memcpy(text, shed, i);
        text[i] = 0;
        ck_assert_int_ne(frame_site_from_json(text, &site), FRAME_OK);
        memcpy(text, shed, sizeof shed);
        text[i] = (char)(i % 3 ? '"' : '{');
        if (!frame_site_from_json(text, &site)) frame_site_free(site);
    }
    frame_site *site = NULL;
    char trailing[sizeof shed + 8];
    snprintf(trailing, sizeof trailing, "%s x", shed);
    ck_assert_int_eq(frame_site_from_json(trailing, &site), FRAME_UNREADABLE);
}
END_TEST

START_TEST(names_differ) {
    frame_site *site = read_site(shed);
    frame_part_level level;
    frame_part_level_init(&level);
    level.name = "shed", level.base_in = 0, level.height_in = 90;
    ck_assert_int_eq(frame_site_level(site, &level), FRAME_CONFLICT);
    ck_assert_str_eq(frame_error_text(), "name: two levels are named \"shed\"");
    ck_assert_int_eq(frame_site_level(NULL, &level), FRAME_REQUIRED);
    frame_site_free(site);
    frame_site_free(NULL);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("site");
    TCase *tests = tcase_create("all");
    tcase_add_test(tests, json_comes_back_as_it_went);
    tcase_add_test(tests, random_sites_come_back);
    tcase_add_test(tests, errors_name_the_path);
    tcase_add_test(tests, depth_is_refused);
    tcase_add_test(tests, names_can_be_written);
    tcase_add_test(tests, each_field_wrong_once);
    tcase_add_test(tests, broken_text_is_refused);
    tcase_add_test(tests, names_differ);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
