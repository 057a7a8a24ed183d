/* Editions of the NDS: what they leave alone, what they mark, what they refuse, what the working says. */
#include "lumber_names.h"

typedef struct outcome {
    double ratio;
    frame_known known;
    int from_memory, said;
} outcome;

static int is_said(const frame_working *working, const char *words) {
    frame_text *text;
    ck_assert(!frame_text_new(&text));
    ck_assert(!frame_working_render(working, FRAME_RENDER_TEXT, text));
    const int said = strstr(frame_text_chars(text), words) != NULL;
    frame_text_free(text);
    return said;
}

#define OUTCOME(NAME, CAUTION, in)                                                      \
    frame_##NAME##_out out;                                                             \
    frame_working *working;                                                             \
    ck_assert(!frame_working_new(&working));                                            \
    ck_assert_msg(!frame_##NAME(&(in), &out, working), "%s", frame_error_text());       \
    working_is_sound(working);                                                          \
    const outcome found = {out.ratio, out.known, (int)FRAME_HAS(out.cautions, CAUTION), \
                           is_said(working, "is asked for")};                           \
    frame_working_free(working);                                                        \
    return found

static outcome beam(frame_nds_edition edition) {
    frame_beam_check_in in;
    frame_beam_check_in_init(&in);
    in.size = FRAME_SIZE(2, 10), in.species = species("SPF"), in.grade = grade("No.2"), in.plies = 2;
    in.span_in = 120, in.dead_plf = 60, in.live_plf = 160, in.edition = edition;
    OUTCOME(beam_check, FRAME_BENDING_CAUTION_MEMORY, in);
}

static outcome column(frame_nds_edition edition) {
    frame_column_check_in in;
    frame_column_check_in_init(&in);
    in.size = FRAME_SIZE(2, 6), in.species = species("SPF"), in.grade = grade("No.2"), in.weak_axis_held = 1;
    in.length_in = 96, in.axial_lb = 3000, in.lateral_plf = 20, in.edition = edition;
    OUTCOME(column_check, FRAME_COLUMN_CAUTION_MEMORY, in);
}

static outcome tie(frame_nds_edition edition) {
    frame_tension_check_in in;
    frame_tension_check_in_init(&in);
    in.size = FRAME_SIZE(2, 6), in.species = species("SPF"), in.grade = grade("No.2");
    in.tension_lb = 1000, in.edition = edition;
    OUTCOME(tension_check, FRAME_TENSION_CAUTION_MEMORY, in);
}

static outcome bearing(frame_nds_edition edition) {
    frame_bearing_check_in in;
    frame_bearing_check_in_init(&in);
    in.size = FRAME_SIZE(2, 6), in.species = species("SPF"), in.grade = grade("No.2");
    in.load_lb = 1000, in.length_in = 3.5, in.angle_deg = 60, in.edition = edition;
    OUTCOME(bearing_check, FRAME_BEARING_CAUTION_MEMORY, in);
}

static outcome rafter(frame_nds_edition edition) {
    frame_rafter_check_in in;
    frame_rafter_check_in_init(&in);
    in.size = FRAME_SIZE(2, 8), in.species = species("SPF"), in.grade = grade("No.2");
    in.slope = 0.5, in.run_in = 120, in.overhang_in = 16, in.spacing_in = 16, in.dead_psf = 12, in.snow_psf = 30;
    in.seat_in = 3.5, in.edition = edition;
    OUTCOME(rafter_check, FRAME_RAFTER_CHECK_CAUTION_MEMORY, in);
}

static outcome joist(frame_nds_edition edition) {
    frame_joist_check_in in;
    frame_joist_check_in_init(&in);
    in.use = FRAME_USE_FLOOR, in.size = FRAME_SIZE(2, 10), in.species = species("SPF"), in.grade = grade("No.2");
    in.span_in = 160, in.live_psf = 40, in.edition = edition;
    OUTCOME(joist_check, FRAME_BENDING_CAUTION_MEMORY, in);
}

/* The ratio of any edition is that of 2018; but it is marked, and the working says so. */
START_TEST(marked) {
    outcome (*const each[])(frame_nds_edition) = {beam, column, tie, bearing, rafter, joist};
    for (size_t i = 0; i < sizeof each / sizeof each[0]; i++) {
        const outcome plain = each[i](FRAME_NDS_2018);
        ck_assert(!plain.said);
        if (each[i] != rafter) /* its birdsmouth rests on memory as it is */
            ck_assert(plain.known < FRAME_KNOWN_MEMORY && !plain.from_memory);
        for (frame_nds_edition edition = FRAME_NDS_2015; edition <= FRAME_NDS_2024; edition += 2) {
            const outcome other = each[i](edition);
            ck_assert_double_eq(other.ratio, plain.ratio);
            ck_assert(other.said && other.known == FRAME_KNOWN_MEMORY && other.from_memory);
        }
    }
}
END_TEST

/* Hem-Fir (North) was changed in 2025: NDS 2024 is refused for it, but for the user's own values it is not. */
START_TEST(changed_since) {
    frame_beam_check_in in;
    frame_beam_check_out out;
    frame_beam_check_in_init(&in);
    in.size = FRAME_SIZE(2, 10), in.species = species("Hem-Fir (North)"), in.grade = grade("No.2");
    in.span_in = 120, in.dead_plf = 60, in.live_plf = 160, in.edition = FRAME_NDS_2024;
    ck_assert_int_eq(frame_beam_check(&in, &out, NULL), FRAME_NO_VALUE);
    ck_assert_str_eq(frame_error_field(), "edition");
    in.edition = FRAME_NDS_2015;
    ck_assert(!frame_beam_check(&in, &out, NULL));
    in.edition = FRAME_NDS_2024, in.species = in.grade = FRAME_NOT_GIVEN_INT;
    in.fb_psi = 1000, in.fv_psi = 145, in.fc_perp_psi = 405, in.e_psi = 1.6e6, in.e_min_psi = 580000;
    ck_assert_msg(!frame_beam_check(&in, &out, NULL), "%s", frame_error_text());
}
END_TEST

START_TEST(spans) {
    frame_joist_span_in in;
    frame_joist_span_out plain, other;
    frame_joist_span_in_init(&in);
    in.use = FRAME_USE_FLOOR, in.size = FRAME_SIZE(2, 10), in.species = species("SPF"), in.grade = grade("No.2");
    in.live_psf = 40;
    ck_assert(!frame_joist_span(&in, &plain, NULL));
    in.edition = FRAME_NDS_2024;
    ck_assert(!frame_joist_span(&in, &other, NULL));
    ck_assert_double_eq(plain.span_in, other.span_in);
    ck_assert(plain.known < FRAME_KNOWN_MEMORY && other.known == FRAME_KNOWN_MEMORY);
    in.species = species("Hem-Fir (North)");
    ck_assert_int_eq(frame_joist_span(&in, &other, NULL), FRAME_NO_VALUE);
    ck_assert_str_eq(frame_error_field(), "edition");
}
END_TEST

int main(void) {
    Suite *suite = suite_create("edition");
    TCase *all = tcase_create("all");
    tcase_add_test(all, marked);
    tcase_add_test(all, changed_since);
    tcase_add_test(all, spans);
    suite_add_tcase(suite, all);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_ENV);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
