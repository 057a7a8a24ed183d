/* Headers: cells typed from the printed tables, interpolation, the note on unbraced tops, monotone sweeps, refusals. */
#include "ask.h"

#include "code/headers.h"

#define HEADER "edition=2021; supports=roof and ceiling; size=2x10; plies=2; ground_snow_psf=30; building_width_in=24'"

static void is(const char *question, const char *span, int jacks) {
    frame_code_header_span_out out;
    double printed;
    ASKED(&out, "code_header_span", question);
    ck_assert(!frame_tape_parse(span, &printed));
    ck_assert_msg(out.span_in == printed, "%s: %g", question, out.span_in);
    ck_assert_msg(out.jack_studs == jacks, "%s: %d", question, out.jack_studs);
}

static void no(const char *question, const char *field, frame_status status) {
    REFUSED("code_header_span", question, field, status);
}

/* Typed from the adoption text of Texas (2021) and, for the interior wall, from data after the 2018 code of Ohio. */
START_TEST(cells_as_printed) {
    is(HEADER, "6' 10", 2);
    is(HEADER "; building_width_in=12'", "9' 0", 1);
    is(HEADER "; building_width_in=36'; ground_snow_psf=70", "4' 5", 2);
    is(HEADER "; size=2x12; plies=4; building_width_in=12'", "15' 3", 1);
    is(HEADER "; size=2x6; plies=1; ground_snow_psf=50; building_width_in=36'", "2' 3", 2);
    is(HEADER "; size=2x12; plies=1; ground_snow_psf=70; building_width_in=36'", "3' 6", 3);
    is(HEADER "; supports=roof, ceiling and one center-bearing floor", "5' 8", 2);
    is(HEADER "; supports=Roof, ceiling and one clear span floor; size=2x12; building_width_in=36'", "4' 11", 3);
    is(HEADER "; supports=roof, ceiling and two center-bearing floors; size=2x8; plies=4", "5' 9", 1);
    is(HEADER "; supports=roof, ceiling and two clear-span floors; size=2x12; plies=1; building_width_in=36'", "2' 7",
       4);
    is("edition=2018; supports=one floor; size=2x12; plies=3; building_width_in=36'", "7' 9", 2);
    is("edition=2018; supports=two floors; location=interior; size=2x4; plies=2; building_width_in=36'", "1' 7", 1);
}
END_TEST

START_TEST(porch) {
    frame_code_header_span_out out;
    ASKED(&out, "code_header_span",
          "edition=2015; supports=roof; size=2x10; plies=2; ground_snow_psf=50; building_width_in=8'");
    ck_assert_double_eq(out.span_in, 121);
    ck_assert_int_eq(out.jack_studs, FRAME_NOT_GIVEN_INT);
    ck_assert(CAUTION(out, TREATED));
    ASKED(&out, "code_header_span",
          "edition=2024; supports=floor; location=porch; size=2x12; plies=2; porch_depth_in=14'");
    ck_assert_double_eq(out.span_in, 108);
    ASKED(&out, "code_header_span",
          "edition=2024; supports=roof; size=2x6; plies=2; ground_snow_psf=30; porch_depth_in=11'");
    ck_assert_double_eq_tol(out.span_in, (90 + 68) / 2.0, 1e-9);
    ck_assert(CAUTION(out, BETWEEN));
    no("edition=2024; supports=roof; size=2x6; plies=2; ground_snow_psf=30; porch_depth_in=15'", "porch_depth_in",
       FRAME_OUTSIDE_SCOPE);
    no("edition=2024; supports=roof; size=2x6; plies=2; ground_snow_psf=30; porch_depth_in=8'; building_width_in=8'",
       "porch_depth_in", FRAME_CONFLICT);
}
END_TEST

/* Half way between 24 and 36 ft: 6-10 and 5-9, jack studs of the wider column. */
START_TEST(between_widths) {
    frame_code_header_span_out out;
    ASKED(&out, "code_header_span", HEADER "; building_width_in=30'");
    ck_assert_double_eq_tol(out.span_in, (82 + 69) / 2.0, 1e-9);
    ck_assert_int_eq(out.jack_studs, 2);
    ck_assert(CAUTION(out, BETWEEN) && !CAUTION(out, COVERED));
    ASKED(&out, "code_header_span", HEADER "; building_width_in=12.1'; size=2x10");
    ck_assert_int_eq(out.jack_studs, 2);
    ASKED(&out, "code_header_span", HEADER "; building_width_in=9'");
    ck_assert_double_eq(out.span_in, 108);
    ck_assert(CAUTION(out, COVERED));
    says(&out, "code_header_span", HEADER "; building_width_in=30'; top_braced=no", "0.7");
    no(HEADER "; building_width_in=36.5'", "building_width_in", FRAME_OUTSIDE_SCOPE);
}
END_TEST

START_TEST(unbraced_top) {
    frame_code_header_span_out out;
    ASKED(&out, "code_header_span", HEADER "; top_braced=no");
    ck_assert_double_eq_tol(out.span_in, 0.7 * 82, 1e-9);
    ck_assert_double_eq(out.table_span_in, 82);
    ck_assert(!CAUTION(out, TOP_BRACED));
    ASKED(&out, "code_header_span", HEADER "; size=2x6; top_braced=no");
    ck_assert_double_eq(out.span_in, 55);
    ASKED(&out, "code_header_span", HEADER);
    ck_assert(CAUTION(out, TOP_BRACED) && out.assumed);
}
END_TEST

START_TEST(snow) {
    frame_code_header_span_out out;
    ASKED(&out, "code_header_span", HEADER "; ground_snow_psf=0");
    ck_assert_double_eq(out.span_in, 82);
    no(HEADER "; ground_snow_psf=10; roof_live_psf=25", "roof_live_psf", FRAME_OUTSIDE_SCOPE);
    no(HEADER "; ground_snow_psf=40", "ground_snow_psf", FRAME_NO_VALUE);
    ck_assert_str_eq(frame_error_valid(), "30, 50, 70");
    ASKED(&out, "code_header_span", HEADER "; ground_snow_psf=40; covering=yes");
    ck_assert_double_eq(out.span_in, 71);
    ck_assert(CAUTION(out, COVERED));
    no(HEADER "; ground_snow_psf=71; covering=yes", "ground_snow_psf", FRAME_OUTSIDE_SCOPE);
    no("edition=2021; supports=roof and ceiling; size=2x10; plies=2; building_width_in=24'", "ground_snow_psf",
       FRAME_REQUIRED);
}
END_TEST

START_TEST(lumber) {
    frame_code_header_span_out out;
    ASKED(&out, "code_header_span", HEADER "; species=SP; grade=No.2");
    no(HEADER "; species=SP; grade=No.2; edition=2015; building_width_in=28'", "grade", FRAME_OUTSIDE_SCOPE);
    ASKED(&out, "code_header_span", HEADER "; species=SP; grade=No.1; edition=2015; building_width_in=28'");
    ASKED(&out, "code_header_span", HEADER "; species=SPF; grade=SS");
    no(HEADER "; species=SPF; grade=Stud", "grade", FRAME_OUTSIDE_SCOPE);
    no(HEADER "; species=Redwood", "species", FRAME_NO_VALUE);
    no(HEADER "; edition=2012; plies=1", "species", FRAME_REQUIRED);
    ASKED(&out, "code_header_span",
          HEADER "; edition=2012; plies=1; size=2x8; species=SPF; ground_snow_psf=20; building_width_in=20'");
    ck_assert_double_eq(out.span_in, 58);
}
END_TEST

START_TEST(refusals) {
    no(HEADER "; plies=5", "size", FRAME_NO_VALUE);
    no(HEADER "; plies=3; size=2x6", "size", FRAME_NO_VALUE);
    no(HEADER "; size=4x10", "size", FRAME_NO_VALUE);
    no(HEADER "; location=interior", "supports", FRAME_NO_VALUE);
    no(HEADER "; supports=one floor; location=exterior", "supports", FRAME_NO_VALUE);
    no(HEADER "; edition=2015; size=2x6; plies=1", "edition", FRAME_NO_VALUE);
    no(HEADER "; edition=DCA 6", "edition", FRAME_NO_VALUE);
    no("edition=2021; supports=roof and ceiling; size=2x10; plies=2; ground_snow_psf=30", "building_width_in",
       FRAME_REQUIRED);
}
END_TEST

/* Wider building, more snow, smaller size: never a longer span or fewer jack studs for the same opening's load; no
 * exceptions. */
START_TEST(monotone) {
    for (int i = 0; i < frame_code_headers_rows; i++) {
        const frame_code_headers_row *a = &frame_code_headers_table[i];
        for (int c = 0; c + 1 < 3 && frame_code_header_length(a, c + 1) != FRAME_NO_CELL; c++)
            ck_assert_msg(frame_code_header_length(a, c) >= frame_code_header_length(a, c + 1), "row %d", a->id);
        for (int k = 0; k < frame_code_headers_rows; k++) {
            const frame_code_headers_row *b = &frame_code_headers_table[k];
            if (b->carries != a->carries || b->editions != a->editions || b->lumber != a->lumber) continue;
            for (int c = 0; c < 3 && frame_code_header_length(a, c) != FRAME_NO_CELL &&
                            frame_code_header_length(b, c) != FRAME_NO_CELL;
                 c++) {
                const int of_a = frame_code_header_length(a, c), of_b = frame_code_header_length(b, c);
                if (b->plies == a->plies && b->size == a->size && b->snow > a->snow)
                    ck_assert_msg(of_b <= of_a, "rows %d %d: snow", a->id, b->id);
                if (b->plies == a->plies && b->size > a->size && b->snow == a->snow)
                    ck_assert_msg(of_b >= of_a, "rows %d %d: size", a->id, b->id);
                if (b->plies > a->plies && b->size == a->size && b->snow == a->snow)
                    ck_assert_msg(of_b >= of_a, "rows %d %d: plies", a->id, b->id);
            }
        }
    }
}
END_TEST

/* More carried, never a longer span: floors under the roof, clear spans over those borne in the middle. */
START_TEST(more_carried) {
    static const char *const order[] = {
        "roof and ceiling", "roof, ceiling and one center-bearing floor", "roof, ceiling and one clear-span floor",
        "roof, ceiling and two center-bearing floors", "roof, ceiling and two clear-span floors"};
    static const int heavier[][2] = {{0, 1}, {1, 2}, {1, 3}, {2, 4}, {3, 4}};
    for (int width = 12; width <= 36; width += 12)
        for (int snow = 30; snow <= 70; snow += 20)
            for (int plies = 1; plies <= 4; plies++)
                for (int k = 0; k < 5; k++) {
                    frame_code_header_span_out out[2];
                    for (int side = 0; side < 2; side++) {
                        char question[300];
                        snprintf(question, sizeof question,
                                 HEADER "; supports=%s; size=2x10; plies=%d; ground_snow_psf=%d; building_width_in=%d'",
                                 order[heavier[k][side]], plies, snow, width);
                        ASKED(&out[side], "code_header_span", question);
                    }
                    ck_assert_msg(out[0].span_in >= out[1].span_in, "%d %d %d: %d", width, snow, plies, k);
                }
}
END_TEST

int main(void) {
    TCase *tests = tcase_create("headers");
    tcase_add_test(tests, cells_as_printed);
    tcase_add_test(tests, porch);
    tcase_add_test(tests, between_widths);
    tcase_add_test(tests, unbraced_top);
    tcase_add_test(tests, snow);
    tcase_add_test(tests, lumber);
    tcase_add_test(tests, refusals);
    tcase_add_test(tests, monotone);
    tcase_add_test(tests, more_carried);
    return run_tests(tests, "code_header_span");
}
