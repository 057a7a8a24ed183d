/* Between the cells: whatever lies between a table's columns, read in the heavier one or interpolated, never comes out
 * better for more load, a longer span or a wider spacing; and where the lighter case has no answer the heavier has
 * none. Places drawn at random. */
#include "ask.h"

static uint32_t seed = 11;

static double between(double low, double high) {
    seed = seed * 1664525u + 1013904223u;
    return low + (high - low) * (seed >> 8) / 16777216.0;
}

typedef struct answer {
    frame_status status;
    double figure;
} answer;

static answer at(const char *look_up, const char *base, const char *field, double value, const char *figure) {
    static double out[200];
    const frame_calculation *asked = frame_calculation_find(look_up);
    char question[600], number[32];
    ck_assert(!frame_number_write(value, 17, number, sizeof number));
    snprintf(question, sizeof question, "%s; %s=%s", base, field, number);
    answer got = {asked->run(ask_fill(asked, question), out, asked->out->size, NULL), 0};
    if (got.status) return got;
    const frame_field *of = frame_field_find(asked->out, figure);
    ck_assert_msg(of != NULL, "%s has no %s", look_up, figure);
    if (of->kind == FRAME_FIELD_NUMBER) {
        memcpy(&got.figure, (const char *)out + of->offset, sizeof got.figure);
    } else {
        int32_t whole;
        memcpy(&whole, (const char *)out + of->offset, sizeof whole);
        got.figure = whole;
    }
    return got;
}

/* worse: -1 where the figure falls as the field grows, 1 where it grows with it. */
static void one_way(const char *look_up, const char *base, const char *field, double low, double high,
                    const char *figure, int worse) {
    int answered = 0;
    for (int i = 0; i < 120; i++) {
        const double a = between(low, high), b = between(low, high), light = a < b ? a : b, heavy = a < b ? b : a;
        const answer first = at(look_up, base, field, light, figure), second = at(look_up, base, field, heavy, figure);
        if (first.status == FRAME_REFUSED) continue; /* a misprint */
        ck_assert_msg(!first.status || second.status, "%s; %s: %g refused (%s), %g answered", base, field, light,
                      frame_status_name(first.status), heavy);
        if (first.status || second.status) continue;
        answered++;
        ck_assert_msg(worse * (second.figure - first.figure) >= -1e-6, "%s; %s: %g at %g, %g at %g", base, field,
                      first.figure, light, second.figure, heavy);
    }
    ck_assert_msg(answered >= 40, "%s; %s: %d answers", base, field, answered);
}

START_TEST(headers) {
    static const char *const bases[] = {
        "edition=2015; supports=roof and ceiling; size=2x10; plies=2; ground_snow_psf=30; building_width_in=300; "
        "covering=yes",
        "edition=2018; supports=roof, ceiling and one clear-span floor; size=2x8; plies=3; ground_snow_psf=30; "
        "building_width_in=200; covering=yes",
        "edition=2024; supports=roof, ceiling and two center-bearing floors; size=2x12; plies=4; ground_snow_psf=50; "
        "building_width_in=200; "
        "covering=yes"};
    for (int i = 0; i < 3; i++) {
        one_way("code_header_span", bases[i], "ground_snow_psf", 0, 70, "span_in", -1);
        one_way("code_header_span", bases[i], "building_width_in", 100, 432, "span_in", -1);
        one_way("code_header_span", bases[i], "building_width_in", 100, 432, "jack_studs", 1);
    }
    one_way("code_header_span", "edition=2021; supports=two floors; size=2x10; plies=2; covering=yes",
            "building_width_in", 100, 432, "span_in", -1);
}
END_TEST

START_TEST(joists) {
    static const char *const bases[] = {
        "edition=2021; use=rafter; size=2x8; species=SPF; grade=No.2; spacing_in=16; snow_psf=30; dead_psf=10; "
        "covering=yes",
        "edition=2018; use=rafter; size=2x12; species=SP; grade=No.1; spacing_in=12; snow_psf=30; dead_psf=10; "
        "deflection_limit=240; covering=yes"};
    for (int i = 0; i < 2; i++) {
        one_way("code_joist_span", bases[i], "snow_psf", 5, 80, "span_in", -1);
        one_way("code_joist_span", bases[i], "dead_psf", 1, 20, "span_in", -1);
        one_way("code_joist_span", bases[i], "spacing_in", 6, 24, "span_in", -1);
        one_way("code_joist_span", bases[i], "tie_height_ratio", 0, 0.33, "span_in", -1);
    }
    one_way("code_joist_span",
            "edition=2015; use=floor; size=2x10; species=HF; grade=No.2; spacing_in=16; live_psf=30; dead_psf=10; "
            "covering=yes",
            "live_psf", 5, 40, "span_in", -1);
}
END_TEST

START_TEST(decks) {
    static const char *const joist =
        "edition=2021; size=2x10; species=SPF; spacing_in=16; ground_snow_psf=40; covering=yes";
    static const char *const beam =
        "edition=2021; size=2x10; plies=3; species=SP; joist_span_in=120; joist_cantilever_in=0; ground_snow_psf=40; "
        "covering=yes";
    static const char *const post =
        "edition=2024; size=6x6; species=SPF; tributary_ft2=60; ground_snow_psf=40; covering=yes";
    static const char *const footing =
        "edition=2021; tributary_ft2=60; soil_psf=1500; ground_snow_psf=40; covering=yes";
    static const char *const ledger =
        "edition=2024; fastener=bolt; joist_span_in=10'; sheathing_in=0.5; ground_snow_psf=40; covering=yes";
    one_way("code_deck_joist_span", joist, "ground_snow_psf", 1, 70, "span_in", -1);
    one_way("code_deck_joist_span", joist, "spacing_in", 6, 24, "span_in", -1);
    one_way("code_deck_beam_span", beam, "joist_span_in", 72, 216, "span_in", -1);
    one_way("code_deck_beam_span", beam, "joist_cantilever_in", 0, 30, "span_in", -1);
    one_way("code_deck_beam_span", beam, "ground_snow_psf", 1, 70, "span_in", -1);
    one_way("code_deck_post", post, "tributary_ft2", 5, 160, "height_in", -1);
    one_way("code_deck_post", post, "ground_snow_psf", 1, 70, "height_in", -1);
    one_way("code_deck_footing", footing, "tributary_ft2", 5, 160, "square_side_in", 1);
    one_way("code_deck_footing", footing, "tributary_ft2", 5, 160, "round_diameter_in", 1);
    one_way("code_deck_footing", footing, "ground_snow_psf", 1, 70, "thickness_in", 1);
    one_way("code_deck_footing", footing, "soil_psf", 1500, 3000, "round_diameter_in", -1);
    one_way("code_ledger_spacing", ledger, "joist_span_in", 20, 216, "spacing_in", -1);
    one_way("code_ledger_spacing", ledger, "ground_snow_psf", 1, 70, "spacing_in", -1);
    one_way("code_ledger_spacing", "edition=2015; fastener=lag; joist_span_in=10'; sheathing_in=0.5; live_psf=40",
            "joist_span_in", 20, 216, "spacing_in", -1);
}
END_TEST

START_TEST(roofs_and_floors) {
    static const char *const years[] = {"2015", "2018", "2021"};
    char base[300];
    for (int i = 0; i < 3; i++) {
        snprintf(base, sizeof base,
                 "edition=%s; slope=0.4; spacing_in=16; ground_snow_psf=30; roof_span_in=300; covering=yes", years[i]);
        one_way("code_heel_nails", base, "slope", 0.25, 1.5, "nails", -1);
        one_way("code_heel_nails", base, "spacing_in", 6, 24, "nails", 1);
        one_way("code_heel_nails", base, "ground_snow_psf", 0, 70, "nails", 1);
        one_way("code_heel_nails", base, "roof_span_in", 60, 432, "nails", 1);
        one_way("code_heel_nails", base, "tie_height_ratio", 0, 1 / 3.0, "nails", 1);
    }
    static const char *const uplift =
        "edition=2021; slope=0.3; spacing_in=16; roof_span_in=300; wind_mph=115; exposure=B; roof_height_in=300; "
        "overhang_in=12; covering=yes";
    one_way("code_uplift", uplift, "wind_mph", 80, 140, "uplift_lb", 1);
    one_way("code_uplift", uplift, "roof_span_in", 60, 576, "uplift_lb", 1);
    one_way("code_uplift", uplift, "walls_above", 0, 3, "uplift_lb", -1);
    static const char *const floor =
        "edition=2021; carries=wall; size=2x12; spacing_in=16; ground_snow_psf=20; roof_width_in=300";
    static const char *const whole =
        "edition=2021; carries=wall; size=2x12; spacing_in=16; ground_snow_psf=30; roof_width_in=300";
    one_way("code_floor_cantilever", floor, "ground_snow_psf", 0, 70, "cantilever_in", -1);
    one_way("code_floor_cantilever", floor, "roof_width_in", 100, 480, "cantilever_in", -1);
    /* Of a row without gaps: beside a gap the longer of two cantilevers is taken, and its uplift with it. */
    one_way("code_floor_cantilever", whole, "roof_width_in", 100, 480, "uplift_lb", 1);
    one_way("code_floor_cantilever", floor, "back_span_in", 150, 500, "uplift_lb", -1);
    one_way("code_king_studs", "edition=2021; wind_mph=115; exposure=B; header_span_in=72", "header_span_in", 20, 216,
            "full_height_studs", 1);
    one_way("code_king_studs", "edition=2021; wind_mph=115; exposure=B; header_span_in=72", "wind_mph", 80, 139,
            "full_height_studs", 1);
    one_way("code_stud",
            "edition=2021; size=2x6; supports=roof; height_in=140; wind_mph=100; ground_snow_psf=10; exposure=B; "
            "span_in=200; grade=No.2",
            "wind_mph", 80, 140, "spacing_in", -1);
}
END_TEST

START_TEST(walls) {
    static const char *const wall =
        "edition=2021; method=WSP; stories=2; story=1; wind_mph=115; exposure=B; seismic=D1; line_spacing_in=300; "
        "line_length_in=480; lines=2; "
        "eave_to_ridge_in=120; wall_height_in=108; roof_dead_psf=14; townhouse=no; veneer=none; gypsum_inside=yes; "
        "blocked=yes";
    one_way("code_bracing", wall, "wind_mph", 85, 139.9, "table_wind_in", 1);
    one_way("code_bracing", wall, "line_spacing_in", 60, 420, "table_wind_in", 1);
    one_way("code_bracing", wall, "line_length_in", 120, 600, "table_seismic_in", 1);
    one_way("code_bracing", wall, "eave_to_ridge_in", 0, 240, "ridge_factor", 1);
    one_way("code_bracing", wall, "wall_height_in", 90, 144, "height_factor", 1);
}
END_TEST

int main(void) {
    TCase *tests = tcase_create("between");
    tcase_add_test(tests, headers);
    tcase_add_test(tests, joists);
    tcase_add_test(tests, decks);
    tcase_add_test(tests, roofs_and_floors);
    tcase_add_test(tests, walls);
    return run_tests(tests, "code_between");
}
