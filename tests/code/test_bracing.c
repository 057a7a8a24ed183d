/* Wall bracing: cells and factors typed from the adoption text of Texas (2021), every limit on both sides, whole tables
 * in one direction, and the panels of a line. */
#include <math.h>
#include <stdlib.h>

#include "ask.h"

#include "table_code_braced_panels.h"
#include "table_code_bracing_seismic.h"
#include "table_code_bracing_wind.h"

static const char name[] = "code_bracing";
#define LINE                                                                                                \
    "edition=2021; stories=2; story=1; wind_mph=115; exposure=B; seismic=B; line_spacing_in=30'; lines=2; " \
    "eave_to_ridge_in=10'; wall_height_in=10'; gypsum_inside=yes; blocked=yes; method=WSP"

static double length(const char *more) {
    char question[600];
    frame_code_bracing_out out;
    snprintf(question, sizeof question, "%s; %s", LINE, more);
    ASKED(&out, name, question);
    return out.length_in;
}

static void refused(const char *more, const char *field, frame_status status) {
    char question[600];
    snprintf(question, sizeof question, "%s; %s", LINE, more);
    REFUSED(name, question, field, status);
}

static void same_at(int line, double a, double b) {
    ck_assert_msg(fabs(a - b) < 1e-9 * fabs(b) + 1e-9, "line %d: %.9g is not %.9g", line, a, b);
}
#define SAME(a, b) same_at(__LINE__, a, b)

START_TEST(wind_cells) {
    SAME(length("stories=1; wind_mph=90; line_spacing_in=10'; method=LIB"), 2.5 * 12);
    SAME(length("stories=1; wind_mph=110; line_spacing_in=60'; method=GB; edition=2018"), 16.5 * 12);
    SAME(length("stories=1; wind_mph=90; line_spacing_in=60'; method=GB; edition=2018"), 16.5 * 12); /* first column */
    SAME(length("wind_mph=110; line_spacing_in=40'"), 12.5 * 12);
    SAME(length("wind_mph=130; line_spacing_in=50'; method=CS-PF"), 18 * 12);
    SAME(length("stories=3; wind_mph=115; line_spacing_in=30'; method=GB"), 27 * 12);
    SAME(length("stories=3; wind_mph=120; line_spacing_in=60'; method=CS-WSP; edition=2024"), 27 * 12);
    SAME(length("stories=3; story=2; wind_mph=120; line_spacing_in=60'; method=CS-WSP"), 18.5 * 12);
    SAME(length("stories=3; story=3; wind_mph=120; line_spacing_in=5'; method=CS-WSP"), 2 * 12);
    /* between: 110 mph has 5.0 and 6.5, 115 mph has 5.5 and 7.0 */
    SAME(length("stories=1; wind_mph=112.5; line_spacing_in=35'"), 6 * 12);
    SAME(length("stories=1; wind_mph=135; line_spacing_in=10'"), 2.75 * 12);
}
END_TEST

START_TEST(wind_factors) {
    const double base = 10.5 * 12, one = 5.5 * 12;
    SAME(length(""), base);
    SAME(length("exposure=C"), 1.3 * base);
    SAME(length("exposure=D"), 1.6 * base);
    SAME(length("stories=1; exposure=C"), 1.2 * one);
    SAME(length("stories=1; exposure=D"), 1.5 * one);
    SAME(length("stories=3; story=2; exposure=C"), 1.4 * base);
    SAME(length("eave_to_ridge_in=4'"), 0.85 * base);
    SAME(length("eave_to_ridge_in=20'"), 1.3 * base);
    SAME(length("eave_to_ridge_in=12.5'"), 1.075 * base);
    SAME(length("stories=1; eave_to_ridge_in=5'"), 0.7 * one);
    SAME(length("stories=1; eave_to_ridge_in=15'"), 1.3 * one);
    SAME(length("wall_height_in=8'"), 0.9 * base);
    SAME(length("wall_height_in=7'"), 0.9 * base);
    SAME(length("wall_height_in=11.5'"), 1.075 * base);
    SAME(length("lines=3"), 1.3 * base);
    SAME(length("lines=4"), 1.45 * base);
    SAME(length("lines=5"), 1.6 * base);
    SAME(length("lines=9"), 1.6 * base);
    SAME(length("gypsum_inside=no"), 1.4 * base);
    SAME(length("blocked=no"), 2 * base);
    SAME(length("blocked=no; gypsum_inside=no"), 2.8 * base);
    SAME(length("blocked=no; method=PBS"), 2 * base);
    SAME(length("blocked=no; method=PBS; edition=2018"), base);
    SAME(length("blocked=no; gypsum_inside=no; method=ABW"), base);
    SAME(length("stories=1; hold_downs=yes"), 0.8 * one);
    SAME(length("method=GB; gypsum_close_nails=yes"), 0.7 * 18 * 12);
    SAME(length("cripple=yes"), 1.15 * base);
}
END_TEST

START_TEST(earthquakes) {
#define D "seismic=D1; line_length_in=40'; line_spacing_in=25'; roof_dead_psf=15; veneer=none; "
#define C \
    "seismic=C; townhouse=yes; line_length_in=50'; line_spacing_in=35'; roof_dead_psf=15; veneer=none; wind_mph=90; "
    frame_code_bracing_out out;
    SAME(length(D), 18 * 12);
    ASKED(&out, name, LINE "; " D);
    ck_assert_int_eq(out.governs, FRAME_CODE_BRACING_EARTHQUAKE);
    ck_assert_str_eq(out.table, "R602.10.3(3)");
    SAME(out.wind_length_in, 9 * 12);
    SAME(length(D "line_length_in=25'"), (9 + 13.5) / 2 * 12);
    SAME(length(D "stories=1; method=CS-WSP; wind_mph=90; line_length_in=50'"), 8.5 * 12);
    SAME(length(D "stories=3; method=GB"), 34 * 12);
    SAME(length(D "seismic=D2; method=CS-PF"), 18.7 * 12);
    SAME(length(D "seismic=D0; method=SFB"), 21 * 12);
    SAME(length(D "seismic=D2; cripple=yes"), 30 * 12);
    SAME(length(D "cripple=yes"), 1.15 * 18 * 12);
    SAME(length(D "wall_height_in=11'"), 1.2 * 18 * 12);
    SAME(length(D "line_spacing_in=30'"), 1.2 * 18 * 12);
    SAME(length(D "line_spacing_in=35'"), 1.4 * 18 * 12);
    SAME(length(D "wall_dead_psf=7"), 0.85 * 18 * 12);
    SAME(length(D "wall_dead_psf=8"), 18 * 12);
    SAME(length(D "roof_dead_psf=25"), 1.1 * 18 * 12);
    SAME(length(D "stories=1; wind_mph=90; roof_dead_psf=16"), 1.2 * 8 * 12);
    SAME(length(D "gypsum_inside=no; blocked=no"), 3 * 18 * 12);
    SAME(length(D "veneer=limited"), 1.2 * 18 * 12);
    SAME(length(C), 15 * 12);
    SAME(length(C "line_spacing_in=40'"), 1.43 * 15 * 12);
    SAME(length(C "veneer=above"), 1.5 * 15 * 12);
    SAME(length(C "stories=1; veneer=above"), 8 * 12);
    SAME(length("seismic=C; townhouse=no"), 10.5 * 12);
}
END_TEST

START_TEST(what_is_refused) {
    refused("wind_mph=140", "wind_mph", FRAME_OUTSIDE_SCOPE);
    refused("line_spacing_in=61'", "line_spacing_in", FRAME_OUTSIDE_SCOPE);
    refused("eave_to_ridge_in=241", "eave_to_ridge_in", FRAME_OUTSIDE_SCOPE);
    refused("stories=3; eave_to_ridge_in=181", "eave_to_ridge_in", FRAME_OUTSIDE_SCOPE);
    refused("wall_height_in=145", "wall_height_in", FRAME_OUTSIDE_SCOPE);
    refused("seismic=E", "seismic", FRAME_OUTSIDE_SCOPE);
    refused("seismic=C", "townhouse", FRAME_REQUIRED);
    refused("seismic=D0", "line_length_in", FRAME_REQUIRED);
    refused(D "line_length_in=51'", "line_length_in", FRAME_OUTSIDE_SCOPE);
    refused(D "line_spacing_in=36'", "line_spacing_in", FRAME_OUTSIDE_SCOPE);
    refused(C "line_spacing_in=51'", "line_spacing_in", FRAME_OUTSIDE_SCOPE);
    refused(D "roof_dead_psf=26", "roof_dead_psf", FRAME_OUTSIDE_SCOPE);
    refused(D "wall_dead_psf=16", "wall_dead_psf", FRAME_OUTSIDE_SCOPE);
    refused(D "veneer=above", "veneer", FRAME_NO_VALUE);
    refused(D "veneer=limited; stories=3", "veneer", FRAME_OUTSIDE_SCOPE);
    refused(D "veneer=limited; method=CS-PF", "veneer", FRAME_OUTSIDE_SCOPE);
    refused(D "seismic=D2; stories=3", "stories", FRAME_OUTSIDE_SCOPE);
    refused(D "method=LIB", "method", FRAME_REFUSED);
    refused(D "method=PFG", "method", FRAME_REFUSED);
    refused(D "method=CS-SFB", "method", FRAME_REFUSED);
    refused(C "method=LIB", "method", FRAME_REFUSED); /* first of two */
    refused(D "cripple=yes; method=GB", "method", FRAME_REFUSED);
    refused("stories=3; method=LIB", "method", FRAME_REFUSED);
    refused("stories=3; method=PFH", "method", FRAME_REFUSED);
    refused("stories=2; story=2; method=ABW", "method", FRAME_REFUSED);
    refused("method=CS-G", "method", FRAME_REFUSED);
    refused("story=3", "story", FRAME_CONFLICT);
    refused("story=2; cripple=yes", "cripple", FRAME_CONFLICT);
    refused("hold_downs=yes", "hold_downs", FRAME_CONFLICT);
    refused("gypsum_close_nails=yes", "gypsum_close_nails", FRAME_CONFLICT);
    refused("edition=DCA 6", "edition", FRAME_NO_VALUE);
    REFUSED(name,
            "edition=2021; stories=1; story=1; wind_mph=115; exposure=B; seismic=B; line_spacing_in=30'; lines=2; "
            "eave_to_ridge_in=10'; wall_height_in=10'; method=WSP; blocked=yes",
            "gypsum_inside", FRAME_REQUIRED);
    REFUSED(name,
            "edition=2021; stories=1; story=1; wind_mph=115; exposure=B; seismic=B; line_spacing_in=30'; lines=2; "
            "eave_to_ridge_in=10'; wall_height_in=10'; method=CS-WSP; gypsum_inside=yes",
            "blocked", FRAME_REQUIRED);
}
END_TEST

START_TEST(what_is_said) {
    frame_code_bracing_out out;
    ASKED(&out, name, LINE);
    ck_assert(CAUTION(out, ORDER) && !CAUTION(out, RETURNS) && !CAUTION(out, BETWEEN));
    ck_assert_int_eq(out.known, FRAME_KNOWN_READ);
    ck_assert(out.seismic_length_in == FRAME_NOT_GIVEN);
    ASKED(&out, name, LINE "; method=CS-PF; edition=2015; line_spacing_in=31'");
    ck_assert(CAUTION(out, RETURNS) && CAUTION(out, OWN_DETAIL) && CAUTION(out, MEMORY) && CAUTION(out, BETWEEN));
    ck_assert_ptr_nonnull(strstr(out.note, "2018"));
    says(&out, name, LINE "; " D "line_length_in=33'", "L_seismic");
}
END_TEST

/* More wind, lines farther apart, longer lines and more stories above never need less; continuous sheathing never more
 * than panels, panels than gypsum board. */
START_TEST(tables_in_one_direction) {
    for (int i = 0; i < frame_code_bracing_wind_rows; i++) {
        const frame_code_bracing_wind_row *a = &frame_code_bracing_wind_table[i];
        ck_assert(a->s10 <= a->s20 && a->s20 <= a->s30 && a->s30 <= a->s40 && a->s40 <= a->s50 && a->s50 <= a->s60);
        for (int k = 0; k < frame_code_bracing_wind_rows; k++) {
            const frame_code_bracing_wind_row *b = &frame_code_bracing_wind_table[k];
            if (!(a->editions & b->editions) || a->s10 < 0 || b->s10 < 0) continue;
            const int16_t cells[2][6] = {{a->s10, a->s20, a->s30, a->s40, a->s50, a->s60},
                                         {b->s10, b->s20, b->s30, b->s40, b->s50, b->s60}};
            for (int c = 0; c < 6; c++) {
                if (a->story <= b->story && a->methods == b->methods && a->wind <= b->wind)
                    ck_assert_msg(cells[0][c] <= cells[1][c], "rows %d and %d", a->id, b->id);
                if (a->story == b->story && a->wind == b->wind && a->methods > b->methods)
                    ck_assert_msg(cells[0][c] <= cells[1][c], "rows %d and %d", a->id, b->id);
            }
        }
    }
    for (int i = 0; i < frame_code_bracing_seismic_rows; i++) {
        const frame_code_bracing_seismic_row *a = &frame_code_bracing_seismic_table[i], *b = a + 1;
        if (a->l10 < 0) continue;
        ck_assert(a->l10 < a->l20 && a->l20 < a->l30 && a->l30 < a->l40 && a->l40 < a->l50);
        ck_assert(abs(a->l50 - 5 * a->l10) <= 25); /* printed to a tenth of a foot, the shorter lines too */
        if (i + 1 < frame_code_bracing_seismic_rows && b->story == a->story && b->category == a->category &&
            b->l10 >= 0)
            ck_assert(b->l50 <= a->l50);
    }
}
END_TEST

/* -- the panels of a line
 * ------------------------------------------------------------------------------------------------ */
typedef struct panel {
    double start, length;
    frame_code_bracing_method method;
    double opening;
} panel;

static frame_code_wall_line_in line_in;
static frame_code_wall_panel panels[6];

static frame_status line(const char *method, double height, const panel *given, size_t count, frame_answer **answer) {
    ck_assert(!frame_code_wall_line_in_init(&line_in));
    ck_assert(!frame_word_find("code_bracing_method", method, &line_in.method));
    line_in.edition = FRAME_CODE_2021;
    line_in.required_in = 120;
    line_in.line_length_in = 480;
    line_in.wall_height_in = height;
    line_in.seismic = FRAME_CODE_SEISMIC_B;
    line_in.floors_above = 0;
    for (size_t i = 0; i < count; i++) {
        ck_assert(!frame_code_wall_panel_init(&panels[i]));
        panels[i].start_in = given[i].start;
        panels[i].length_in = given[i].length;
        if (given[i].method) panels[i].method = given[i].method;
        if (given[i].opening > 0) panels[i].opening_height_in = given[i].opening;
    }
    line_in.panels = panels;
    line_in.panel_count = count;
    return frame_calculation_find("code_wall_line")->solve(&line_in, answer, NULL);
}

static double counts(const char *method, double height, double panel_length, double opening) {
    const panel one = {0, panel_length, 0, opening};
    frame_answer *answer;
    ck_assert_msg(!line(method, height, &one, 1, &answer), "%s", frame_error_text());
    const double counted = FRAME_ANSWER_ITEM(frame_code_wall_line_panel, answer, 0, 0).counts_in;
    frame_answer_free(answer);
    return counted;
}

/* Just under, at, and just over each least length. */
static void least(const char *method, double height, double opening, double length_in, double factor, double fixed) {
    const double at = counts(method, height, length_in, opening),
                 over = counts(method, height, length_in + 0.01, opening);
    SAME(counts(method, height, length_in - 0.01, opening), 0);
    SAME(at, fixed > 0 ? fixed : factor * length_in);
    SAME(over, fixed > 0 ? fixed : factor * (length_in + 0.01));
}

START_TEST(least_lengths) {
    least("BV-WSP", 96, 0, 48, 1, 0);
    least("BV-WSP", 132, 0, 53, 1, 0);
    least("BV-WSP", 138, 0, 55.5, 1, 0);
    least("LIB", 96, 0, 55, 1, 0);
    least("LIB", 120, 0, 69, 1, 0);
    SAME(counts("LIB", 121, 300, 0), 0);
    least("GB", 108, 0, 48, 0.5, 0);
    least("ABW", 96, 0, 28, 0, 48);
    least("ABW", 144, 0, 42, 0, 48);
    least("CS-G", 108, 0, 27, 1, 0);
    least("PFH", 96, 0, 16, 0, 48);
    least("PFG", 114, 0, 28.5, 1.5, 0);
    least("CS-PF", 108, 0, 18, 1.5, 0);
    least("CS-WSP", 96, 0, 24, 1, 0);
    least("CS-WSP", 96, 64, 24, 1, 0);
    least("CS-WSP", 96, 66, 25, 1, 0);
    least("CS-WSP", 96, 80, 32, 1, 0);
    least("CS-WSP", 108, 76, 29, 1, 0);
    least("CS-SFB", 96, 96, 48, 1, 0);
    least("CS-WSP", 108, 100, 44, 1, 0);
    least("CS-WSP", 144, 144, 72, 1, 0);
    SAME(counts("CS-WSP", 96, 300, 97), 0);
    SAME(counts("CS-WSP", 144, 300, 145), 0);
}
END_TEST

START_TEST(partial_credit) {
    SAME(counts("WSP", 96, 35.9, 0), 0);
    SAME(counts("WSP", 96, 36, 0), 27);
    SAME(counts("WSP", 96, 39, 0), 31.5);
    SAME(counts("WSP", 96, 42, 0), 36);
    SAME(counts("WSP", 108, 41.9, 0), 0);
    SAME(counts("SFB", 108, 45, 0), 42);
    SAME(counts("WSP", 109, 45, 0), 0);
    SAME(counts("BV-WSP", 96, 45, 0), 0);
}
END_TEST

START_TEST(places) {
    const panel good[] = {{120, 48, 0, 0}, {408, 72, 0, 0}}, far_end[] = {{120.1, 48, 0, 0}, {400, 72, 0, 0}},
                far_apart[] = {{0, 48, 0, 0}, {288.1, 96, 0, 0}}, one[] = {{120, 60, 0, 0}};
    frame_answer *answer;
    ck_assert(!line("WSP", 96, good, 2, &answer));
    const frame_code_wall_line_out *out = answer->out;
    ck_assert(out->holds && out->counted == 2);
    SAME(out->provided_in, 120);
    SAME(out->length_ratio, 1);
    SAME(out->gap_in, 240);
    SAME(out->end_gap_in, 120);
    frame_answer_free(answer);
    ck_assert(!line("WSP", 96, far_end, 2, &answer));
    out = answer->out;
    ck_assert(!out->holds && !out->ends_hold && out->length_holds && strstr(out->reason, "end of the line"));
    frame_answer_free(answer);
    ck_assert(!line("WSP", 96, far_apart, 2, &answer));
    out = answer->out;
    ck_assert(!out->holds && !out->gaps_hold && out->ends_hold && strstr(out->reason, "too far apart"));
    frame_answer_free(answer);
    ck_assert(!line("WSP", 96, one, 1, &answer));
    line_in.line_length_in = 192;
    line_in.required_in = 60;
    frame_answer_free(answer);
    ck_assert(!frame_calculation_find("code_wall_line")->solve(&line_in, &answer, NULL));
    ck_assert(((const frame_code_wall_line_out *)answer->out)->holds);
    frame_answer_free(answer);
    line_in.line_length_in = 193;
    ck_assert(!frame_calculation_find("code_wall_line")->solve(&line_in, &answer, NULL));
    ck_assert(!((const frame_code_wall_line_out *)answer->out)->count_holds);
    frame_answer_free(answer);
}
END_TEST

START_TEST(categories) {
    const panel ends[] = {{0, 60, 0, 0}, {420, 60, 0, 0}}, inside[] = {{60, 60, 0, 0}, {300, 60, 0, 0}};
    frame_answer *answer;
    ck_assert(!line("WSP", 96, ends, 2, &answer));
    frame_answer_free(answer);
    line_in.seismic = FRAME_CODE_SEISMIC_D0;
    line_in.line_length_in = 300;
    panels[1].start_in = 240;
    ck_assert(!frame_calculation_find("code_wall_line")->solve(&line_in, &answer, NULL));
    ck_assert(((const frame_code_wall_line_out *)answer->out)->holds);
    frame_answer_free(answer);
    ck_assert(!line("WSP", 96, inside, 2, &answer));
    frame_answer_free(answer);
    line_in.seismic = FRAME_CODE_SEISMIC_D0;
    ck_assert(!frame_calculation_find("code_wall_line")->solve(&line_in, &answer, NULL));
    ck_assert(!((const frame_code_wall_line_out *)answer->out)->ends_hold);
    frame_answer_free(answer);
    line_in.ends_held = 1;
    ck_assert(!frame_calculation_find("code_wall_line")->solve(&line_in, &answer, NULL));
    ck_assert(((const frame_code_wall_line_out *)answer->out)->ends_hold);
    frame_answer_free(answer);
    panels[0].length_in = 45; /* no partial credit in D0 */
    ck_assert(!frame_calculation_find("code_wall_line")->solve(&line_in, &answer, NULL));
    ck_assert_int_eq(((const frame_code_wall_line_out *)answer->out)->counted, 1);
    frame_answer_free(answer);
}
END_TEST

/* Panels with hold-downs of their own may begin away from the ends in D0 to D2 from 2021 on; held ends are for wood
 * panels alone. */
START_TEST(ends_by_edition) {
    const panel inside[] = {{60, 60, 0, 0}, {300, 60, 0, 0}};
    static const struct {
        const char *method;
        frame_code_edition edition;
        int held, ends_hold;
    } cases[] = {{"ABW", FRAME_CODE_2018, 0, 0},   {"ABW", FRAME_CODE_2021, 0, 1}, {"ABW", FRAME_CODE_2024, 0, 1},
                 {"SFB", FRAME_CODE_2021, 1, 0},   {"WSP", FRAME_CODE_2018, 1, 1}, {"WSP", FRAME_CODE_2021, 0, 0},
                 {"CS-WSP", FRAME_CODE_2018, 1, 1}};
    for (int i = 0; i < 7; i++) {
        frame_answer *answer;
        ck_assert(!line(cases[i].method, 96, inside, 2, &answer));
        frame_answer_free(answer);
        line_in.seismic = FRAME_CODE_SEISMIC_D1;
        line_in.edition = cases[i].edition;
        line_in.ends_held = cases[i].held;
        ck_assert_msg(!frame_calculation_find("code_wall_line")->solve(&line_in, &answer, NULL), "%s",
                      frame_error_text());
        ck_assert_msg(((const frame_code_wall_line_out *)answer->out)->ends_hold == cases[i].ends_hold, "case %d", i);
        frame_answer_free(answer);
    }
}
END_TEST

START_TEST(bad_lines) {
    const panel over[] = {{0, 48, 0, 0}, {47, 48, 0, 0}}, past[] = {{433, 48, 0, 0}},
                mixed[] = {{0, 48, 0, 0}, {200, 48, FRAME_CODE_BRACING_GB, 0}};
    frame_answer *answer = NULL;
    ck_assert_int_eq(line("WSP", 96, over, 2, &answer), FRAME_IMPOSSIBLE);
    ck_assert_str_eq(frame_error_field(), "panels[0].length_in");
    ck_assert_int_eq(line("WSP", 96, past, 1, &answer), FRAME_IMPOSSIBLE);
    ck_assert_int_eq(line("WSP", 145, past, 1, &answer), FRAME_OUTSIDE_SCOPE);
    ck_assert_int_eq(line("PFH", 132, past, 1, &answer), FRAME_IMPOSSIBLE);
    ck_assert_int_eq(line("PFH", 132, mixed, 1, &answer), FRAME_REQUIRED);
    ck_assert_str_eq(frame_error_field(), "panels[0].portal_height_in");
    ck_assert(!line("WSP", 96, mixed, 2, &answer));
    frame_answer_free(answer);
    line_in.seismic = FRAME_CODE_SEISMIC_D1;
    ck_assert_int_eq(frame_calculation_find("code_wall_line")->solve(&line_in, &answer, NULL), FRAME_REFUSED);
    ck_assert_str_eq(frame_error_field(), "panels[1].method");
}
END_TEST

int main(void) {
    TCase *tests = tcase_create("bracing");
    tcase_add_test(tests, wind_cells);
    tcase_add_test(tests, wind_factors);
    tcase_add_test(tests, earthquakes);
    tcase_add_test(tests, what_is_refused);
    tcase_add_test(tests, what_is_said);
    tcase_add_test(tests, tables_in_one_direction);
    tcase_add_test(tests, least_lengths);
    tcase_add_test(tests, partial_credit);
    tcase_add_test(tests, places);
    tcase_add_test(tests, categories);
    tcase_add_test(tests, ends_by_edition);
    tcase_add_test(tests, bad_lines);
    return run_tests(tests, "bracing");
}
