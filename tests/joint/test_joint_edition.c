/* Editions of the NDS beside that of 2018: the same values, marked as from memory and said in the working; what an
 * edition does not have is refused. */
#include <check.h>
#include <string.h>

#include <frame/joint.h>
#include <frame/working.h>

static int is_said(const frame_working *working) {
    frame_text *text;
    ck_assert(!frame_text_new(&text));
    ck_assert(!frame_working_render(working, FRAME_RENDER_TEXT, text));
    const int said = strstr(frame_text_chars(text), "is asked for") != NULL;
    frame_text_free(text);
    return said;
}

/* Asks NAME twice, by 2018 and by another edition: the same value, marked and said by the other only. */
#define COMPARE(NAME, CAUTION, in)                                                      \
    do {                                                                                \
        frame_##NAME##_out plain, other;                                                \
        frame_working *plain_working, *working;                                         \
        ck_assert(!frame_working_new(&plain_working) && !frame_working_new(&working));  \
        ck_assert(!frame_##NAME(&(in), &plain, plain_working));                         \
        (in).edition = FRAME_NDS_2024;                                                  \
        ck_assert_msg(!frame_##NAME(&(in), &other, working), "%s", frame_error_text()); \
        ck_assert_double_eq(plain.adjusted_lb, other.adjusted_lb);                      \
        ck_assert_int_eq(other.known, FRAME_KNOWN_MEMORY);                              \
        ck_assert(FRAME_HAS(other.cautions, CAUTION));                                  \
        ck_assert(is_said(working) && !is_said(plain_working));                         \
        frame_working_free(plain_working), frame_working_free(working);                 \
    } while (0)

static frame_species species(const char *name) {
    frame_species found = FRAME_NOT_GIVEN_INT;
    ck_assert(!frame_species_find(name, &found));
    return found;
}

START_TEST(nails) {
    frame_dowel_lateral_in lateral;
    frame_dowel_withdrawal_in withdrawal;
    frame_dowel_lateral_out by_2018;
    frame_dowel_lateral_in_init(&lateral);
    lateral.kind = FRAME_DOWEL_COMMON_NAIL, lateral.size = "16d", lateral.side_thickness_in = 1.5;
    lateral.side_species = lateral.main_species = species("SPF");
    ck_assert(!frame_dowel_lateral(&lateral, &by_2018, NULL));
    ck_assert_int_lt(by_2018.known, FRAME_KNOWN_MEMORY);
    COMPARE(dowel_lateral, FRAME_DOWEL_LATERAL_CAUTION_MEMORY, lateral);
    frame_dowel_withdrawal_in_init(&withdrawal);
    withdrawal.kind = FRAME_DOWEL_COMMON_NAIL, withdrawal.size = "16d", withdrawal.side_thickness_in = 0.5;
    withdrawal.species = species("SPF");
    COMPARE(dowel_withdrawal, FRAME_DOWEL_WITHDRAWAL_CAUTION_MEMORY, withdrawal);
}
END_TEST

START_TEST(heads) {
    frame_head_pull_through_in in;
    frame_head_pull_through_out out;
    frame_head_pull_through_in_init(&in);
    in.head_diameter_in = 0.3, in.side_specific_gravity = 0.5, in.side_thickness_in = 0.5;
    COMPARE(head_pull_through, FRAME_FASTENING_CAUTION_MEMORY, in);
    in.edition = FRAME_NDS_2015;
    ck_assert_int_eq(frame_head_pull_through(&in, &out, NULL), FRAME_OUTSIDE_SCOPE);
    ck_assert_str_eq(frame_error_field(), "edition");
    ck_assert(strstr(frame_error_text(), "NDS 2015") != NULL);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("editions of joints");
    TCase *all = tcase_create("all");
    tcase_add_test(all, nails);
    tcase_add_test(all, heads);
    suite_add_tcase(suite, all);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_ENV);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
