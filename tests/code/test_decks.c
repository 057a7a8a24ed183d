/* Decks: cells typed from the printed tables, interpolation, cantilevers, monotone sweeps, refusals. */
#include "ask.h"

#include "code/deck_beams.h"
#include "table_code_deck_footings.h"
#include "table_code_deck_joists.h"
#include "table_code_deck_posts.h"
#include "table_code_ledgers.h"

#define JOIST "edition=2021; size=2x8; species=SP; spacing_in=16; live_psf=40; ground_snow_psf=0"
#define BEAM "edition=2021; size=2x10; plies=2; species=SP; joist_span_in=10'; live_psf=40; ground_snow_psf=0"
#define POST "edition=2021; size=4x4; species=SP; tributary_ft2=60; live_psf=40; ground_snow_psf=0"
#define FOOTING "edition=2021; tributary_ft2=60; soil_psf=1500; live_psf=40; ground_snow_psf=0"
#define LEDGER "edition=2021; fastener=lag screw; joist_span_in=10'; sheathing_in=0.5; live_psf=40; ground_snow_psf=0"

static double inches(const char *printed) {
    double length;
    ck_assert(!frame_tape_parse(printed, &length));
    return length;
}

static void joist_is(const char *question, const char *span, const char *cantilever) {
    frame_code_deck_joist_span_out out;
    ASKED(&out, "code_deck_joist_span", question);
    ck_assert_msg(out.span_in == inches(span), "%s: %g", question, out.span_in);
    if (*cantilever) ck_assert_msg(out.cantilever_in == inches(cantilever), "%s: %g", question, out.cantilever_in);
}

/* Typed from the adoption texts of Alabama (2015), Alaska (2018) and Texas (2021), and the deck guide. */
START_TEST(joists) {
    joist_is(JOIST, "11' 10", "");
    joist_is(JOIST "; ground_snow_psf=60; size=2x12; species=SPF; spacing_in=24", "11' 8", "");
    joist_is(JOIST "; species=Redwood; ground_snow_psf=70; spacing_in=12", "9' 8", "");
    joist_is(JOIST "; back_span_in=8'", "11' 10", "2' 0");
    joist_is(JOIST "; size=2x12; spacing_in=12; back_span_in=18'", "18' 0", "4' 1");
    joist_is(JOIST "; size=2x6; spacing_in=12; back_span_in=9'", "9' 11", "0");
    joist_is(JOIST "; size=2x8; back_span_in=9'", "11' 10", "2' 3");
    joist_is(JOIST "; edition=2015", "11' 10", "2' 11-1/2");
    joist_is(JOIST "; edition=2015; cantilevered=yes", "10' 1", "2' 6-1/4");
    joist_is(JOIST "; edition=2018; species=HF; back_span_in=8'", "11' 1", "2' 0");
    joist_is(JOIST "; edition=2018; species=HF", "11' 1", "2' 1");
    joist_is(JOIST "; edition=DCA 6; species=DFL; spacing_in=12", "12' 6", "1' 8");
    joist_is(JOIST "; edition=DCA 6-09; spacing_in=12; cantilevered=yes", "10' 1", "");
}
END_TEST

START_TEST(joists_refused) {
    const char *const name = "code_deck_joist_span";
    REFUSED(name, JOIST "; spacing_in=19.2", "spacing_in", FRAME_NO_VALUE);
    REFUSED(name, JOIST "; species=Aspen", "species", FRAME_NO_VALUE);
    REFUSED(name, JOIST "; grade=No.3", "grade", FRAME_OUTSIDE_SCOPE);
    REFUSED(name, JOIST "; size=2x4", "size", FRAME_NO_VALUE);
    REFUSED(name, JOIST "; ground_snow_psf=45", "ground_snow_psf", FRAME_NO_VALUE);
    REFUSED(name, JOIST "; ground_snow_psf=80", "ground_snow_psf", FRAME_OUTSIDE_SCOPE);
    REFUSED(name, JOIST "; edition=2018; ground_snow_psf=50", "ground_snow_psf", FRAME_OUTSIDE_SCOPE);
    REFUSED(name, JOIST "; live_psf=100", "live_psf", FRAME_OUTSIDE_SCOPE);
    REFUSED(name, JOIST "; edition=2012", "edition", FRAME_NO_VALUE);
    REFUSED(name, JOIST "; back_span_in=13'", "back_span_in", FRAME_OUTSIDE_SCOPE);
    REFUSED(name, JOIST "; back_span_in=3'", "back_span_in", FRAME_OUTSIDE_SCOPE);
    REFUSED(name, "edition=2021; size=2x8; species=SP; spacing_in=16", "live_psf", FRAME_REQUIRED);
    frame_code_deck_joist_span_out sixty, seventy;
    ASKED(&sixty, name, JOIST "; live_psf=60"); /* a live load of 60 psf is read in the column of 70 psf of snow */
    ASKED(&seventy, name, JOIST "; ground_snow_psf=70");
    ck_assert(sixty.span_in == seventy.span_in && CAUTION(sixty, COVERED) && !CAUTION(seventy, COVERED));
}
END_TEST

static void beam_is(const char *question, double span) {
    frame_code_deck_beam_span_out out;
    ASKED(&out, "code_deck_beam_span", question);
    ck_assert_msg(out.span_in == span, "%s: %g, not %g", question, out.span_in, span);
    ck_assert_double_eq(out.cantilever_in, out.span_in / 4);
}

/* Typed from the same texts and that of the General Services Administration (2024). */
START_TEST(beams) {
    beam_is(BEAM, inches("8' 0"));
    beam_is(BEAM "; joist_span_in=11'", (96 + 88) / 2.0);
    beam_is(BEAM "; joist_span_in=9'; edition=2018", inches("8' 0"));
    beam_is(BEAM "; size=4x10; plies=1; species=SPF; edition=2015; joist_span_in=18'", inches("5' 8"));
    beam_is(BEAM "; size=3x8; plies=1; species=SPF; edition=2018; joist_span_in=6'", inches("6' 10"));
    beam_is(BEAM "; ground_snow_psf=70; size=2x12; plies=3; species=DFL; joist_span_in=14'", inches("8' 1"));
    /* no cantilever: 0.66 of 10 ft is 6.6 ft: between 10-4 and 9-0 */
    beam_is(BEAM "; joist_cantilever_in=0", 124 + (6.6 - 6) / 2 * (108 - 124));
    beam_is(BEAM "; joist_cantilever_in=30", inches("8' 0"));
    beam_is(BEAM "; edition=2024; joist_cantilever_in=0", inches("9' 8"));
    beam_is(BEAM "; edition=2024; joist_cantilever_in=1'", inches("9' 0"));
    beam_is(BEAM "; edition=2024; joist_cantilever_in=2.5'", inches("8' 0"));
    beam_is(BEAM "; edition=2024", inches("8' 0"));
    beam_is(BEAM "; edition=2024; joist_cantilever_in=0; joist_span_in=11'", (116 + 108) / 2.0);
    beam_is(BEAM "; edition=2024; joist_cantilever_in=1.5'; covering=yes", inches("8' 0"));
    beam_is(BEAM "; edition=2024; joist_span_in=16'; joist_cantilever_in=4'; covering=yes", inches("6' 0"));
    beam_is(BEAM "; edition=2024; joist_span_in=16'; joist_cantilever_in=4'; ground_snow_psf=60", inches("5' 8"));
}
END_TEST

START_TEST(beams_refused) {
    const char *const name = "code_deck_beam_span";
    frame_code_deck_beam_span_out out;
    REFUSED(name, BEAM "; joist_span_in=19'", "joist_span_in", FRAME_OUTSIDE_SCOPE);
    REFUSED(name, BEAM "; plies=4", "size", FRAME_NO_VALUE);
    REFUSED(name, BEAM "; edition=2015; plies=1", "edition", FRAME_NO_VALUE);
    REFUSED(name, BEAM "; joist_cantilever_in=3'", "joist_cantilever_in", FRAME_OUTSIDE_SCOPE);
    REFUSED(name, BEAM "; edition=2024; joist_cantilever_in=1.5'", "joist_cantilever_in", FRAME_NO_VALUE);
    REFUSED(name, BEAM "; edition=2024; joist_cantilever_in=5'", "joist_cantilever_in", FRAME_OUTSIDE_SCOPE);
    REFUSED(name, BEAM "; edition=2024; species=Redwood; joist_span_in=6'; joist_cantilever_in=0", "doubtful",
            FRAME_REFUSED);
    ASKED(&out, name, BEAM "; edition=2024; species=Redwood; joist_span_in=6'; joist_cantilever_in=0; doubtful=yes");
    ck_assert(out.span_in == 146 && CAUTION(out, DOUBTFUL) && strstr(out.note, "likely 10-2"));
    ASKED(&out, name, BEAM "; edition=2018; size=2x8; plies=1; joist_span_in=14'");
    ck_assert(out.span_in == 34 && CAUTION(out, NOTE) && !CAUTION(out, DOUBTFUL));
    says(&out, name, BEAM "; joist_cantilever_in=1'", "effective span of the joists");
}
END_TEST

static int comparable(int cell) {
    return cell == FRAME_CELL_NOT_PERMITTED ? 0 : cell;
}

/* Longer joists, a lighter beam: never a longer span; a heavier load neither. What is marked odd is left out. */
START_TEST(beams_monotone) {
    for (int i = 0; i < frame_code_deck_beams_rows; i++) {
        const frame_code_deck_beams_row *a = &frame_code_deck_beams_table[i];
        for (int c = 0; c + 1 < 10 && frame_deck_beam_cell(a, c + 1) != FRAME_NO_CELL; c++)
            if (!((a->odd >> c | a->odd >> (c + 1)) & 1))
                ck_assert_msg(frame_deck_beam_cell(a, c) >= frame_deck_beam_cell(a, c + 1), "row %d column %d", a->id,
                              c + 1);
        for (int k = 0; k < frame_code_deck_beams_rows; k++) {
            const frame_code_deck_beams_row *b = &frame_code_deck_beams_table[k];
            if (b->woods != a->woods || b->editions != a->editions || b->plies < a->plies || b->size < a->size)
                continue;
            for (int c = 0; c < 10 && frame_deck_beam_cell(a, c) != FRAME_NO_CELL; c++) {
                if ((a->odd | b->odd) >> c & 1) continue;
                const int of_a = frame_deck_beam_cell(a, c), of_b = frame_deck_beam_cell(b, c);
                if (b->load == a->load && (b->size <= 5) == (a->size <= 5) && a->size <= 5)
                    ck_assert_msg(of_b >= of_a, "rows %d %d column %d: size", a->id, b->id, c + 1);
                if (b->size == a->size && b->plies == a->plies && b->load > a->load)
                    ck_assert_msg(of_b <= of_a, "rows %d %d column %d: load", a->id, b->id, c + 1);
            }
        }
    }
}
END_TEST

/* Seven columns of 2024 are those of 2021: for the same beams and loads the figures are the same. */
START_TEST(beams_of_two_editions) {
    static const int columns[7] = {1, 3, 4, 6, 7, 8, 9};
    int same = 0;
    for (int i = 0; i < frame_code_deck_beams_rows; i++)
        for (int k = 0; k < frame_code_deck_beams_rows; k++) {
            const frame_code_deck_beams_row *a = &frame_code_deck_beams_table[i], *b = &frame_code_deck_beams_table[k];
            if (a->editions != frame_code_bit(FRAME_CODE_2021) || b->editions != frame_code_bit(FRAME_CODE_2024) ||
                a->woods != b->woods || a->plies != b->plies || a->size != b->size || a->load != b->load)
                continue;
            for (int c = 0; c < 7; c++, same++)
                ck_assert_msg(frame_deck_beam_cell(a, c) == frame_deck_beam_cell(b, columns[c]), "rows %d %d", a->id,
                              b->id);
        }
    ck_assert_int_eq(same, 4 * 3 * 12 * 7);
}
END_TEST

START_TEST(posts) {
    frame_code_deck_post_out out;
    static const struct {
        const char *question, *height;
    } cells[] = {{POST, "11' 0"},
                 {POST "; tributary_ft2=12", "14' 0"},
                 {POST "; species=Redwood; tributary_ft2=120", "0"},
                 {POST "; species=Redwood; tributary_ft2=110", "0"},
                 {POST "; size=6x6; species=Red Pine; ground_snow_psf=50; tributary_ft2=160", "2' 4"},
                 {"edition=2018; size=4x4; live_psf=40", "6' 9"},
                 {"edition=2018; size=4x4; live_psf=40; beam_plies=2", "8' 0"},
                 {"edition=2015; size=6x6; live_psf=40", "14' 0"}};
    for (size_t i = 0; i < sizeof cells / sizeof *cells; i++) {
        ASKED(&out, "code_deck_post", cells[i].question);
        ck_assert_msg(out.height_in == inches(cells[i].height), "%s: %g", cells[i].question, out.height_in);
    }
    ASKED(&out, "code_deck_post", POST "; tributary_ft2=70");
    ck_assert_double_eq_tol(out.height_in, (132 + 113) / 2.0, 1e-9);
    REFUSED("code_deck_post", POST "; tributary_ft2=161", "tributary_ft2", FRAME_OUTSIDE_SCOPE);
    REFUSED("code_deck_post", POST "; size=4x8", "size", FRAME_NO_VALUE);
    REFUSED("code_deck_post", "edition=2015; size=8x8; live_psf=40", "size", FRAME_NO_VALUE);
    REFUSED("code_deck_post", "edition=2024; size=4x4; live_psf=40; species=SP", "tributary_ft2", FRAME_REQUIRED);
    REFUSED("code_deck_post", "edition=2024; size=4x4; live_psf=40; tributary_ft2=40", "species", FRAME_REQUIRED);
}
END_TEST

START_TEST(posts_monotone) {
    for (int i = 0; i < frame_code_deck_posts_rows; i++) {
        const frame_code_deck_posts_row *a = &frame_code_deck_posts_table[i];
        const int16_t of_a[] = {a->a20, a->a40, a->a60, a->a80, a->a100, a->a120, a->a140, a->a160};
        for (int c = 0; c + 1 < 8; c++) ck_assert_msg(comparable(of_a[c]) >= comparable(of_a[c + 1]), "row %d", a->id);
        for (int k = 0; k < frame_code_deck_posts_rows; k++) {
            const frame_code_deck_posts_row *b = &frame_code_deck_posts_table[k];
            const int16_t of_b[] = {b->a20, b->a40, b->a60, b->a80, b->a100, b->a120, b->a140, b->a160};
            if (b->woods != a->woods || b->editions != a->editions) continue;
            for (int c = 0; c < 8; c++) {
                if (b->size == a->size && b->load > a->load)
                    ck_assert_msg(comparable(of_b[c]) <= comparable(of_a[c]), "rows %d %d", a->id, b->id);
                if (b->size > a->size && b->load == a->load)
                    ck_assert_msg(comparable(of_b[c]) >= comparable(of_a[c]), "rows %d %d", a->id, b->id);
            }
        }
    }
}
END_TEST

START_TEST(footings) {
    frame_code_deck_footing_out out;
    ASKED(&out, "code_deck_footing", FOOTING);
    ck_assert(out.square_side_in == 17 && out.round_diameter_in == 19 && out.thickness_in == 6);
    ck_assert(CAUTION(out, SOIL) && CAUTION(out, FROST) && !CAUTION(out, BETWEEN));
    ASKED(&out, "code_deck_footing", FOOTING "; ground_snow_psf=70; tributary_ft2=160; soil_psf=9000");
    ck_assert(out.square_side_in == 25 && out.round_diameter_in == 28 && out.thickness_in == 9);
    ASKED(&out, "code_deck_footing", FOOTING "; tributary_ft2=70");
    ck_assert(out.square_side_in == 18.5 && out.round_diameter_in == 20.5 && out.thickness_in == 6.5 &&
              CAUTION(out, BETWEEN));
    ASKED(&out, "code_deck_footing", FOOTING "; soil_psf=2500");
    ck_assert(out.square_side_in == 13.5 && out.round_diameter_in == 15.5);
    ASKED(&out, "code_deck_footing", FOOTING "; edition=2018; soil_psf=2500; tributary_ft2=100");
    ck_assert_msg(out.square_side_in == 17 && out.round_diameter_in == 19, "%g %g", out.square_side_in,
                  out.round_diameter_in);
    ASKED(&out, "code_deck_footing", FOOTING "; tributary_ft2=3");
    ck_assert(out.square_side_in == 7 && CAUTION(out, COVERED));
    REFUSED("code_deck_footing", FOOTING "; tributary_ft2=20; soil_psf=2000", "doubtful", FRAME_REFUSED);
    ASKED(&out, "code_deck_footing", FOOTING "; tributary_ft2=20; soil_psf=2000; doubtful=yes");
    ck_assert(out.round_diameter_in == 9 && CAUTION(out, DOUBTFUL) && CAUTION(out, NOTE));
    ASKED(&out, "code_deck_footing", FOOTING "; ground_snow_psf=60; tributary_ft2=40; soil_psf=2000");
    ck_assert(out.thickness_in == 8 && CAUTION(out, NOTE));
    REFUSED("code_deck_footing", FOOTING "; soil_psf=1000", "soil_psf", FRAME_OUTSIDE_SCOPE);
    REFUSED("code_deck_footing", FOOTING "; tributary_ft2=170", "tributary_ft2", FRAME_OUTSIDE_SCOPE);
    REFUSED("code_deck_footing", FOOTING "; edition=2015", "edition", FRAME_NO_VALUE);
    says(&out, "code_deck_footing", FOOTING "; tributary_ft2=70", "frost");
}
END_TEST

/* More area, more load, poorer soil: never a smaller footing; and a round one no smaller than the square beside it. */
START_TEST(footings_monotone) {
    for (int i = 0; i < frame_code_deck_footings_rows; i++) {
        const frame_code_deck_footings_row *a = &frame_code_deck_footings_table[i];
        const int16_t of_a[] = {a->s1500, a->s2000, a->s2500, a->s3000, a->r1500, a->r2000,
                                a->r2500, a->r3000, a->t1500, a->t2000, a->t2500, a->t3000};
        for (int c = 0; c < 4; c++) {
            if (of_a[c] == FRAME_NO_CELL || (a->refused > 0 && c == 1)) continue;
            ck_assert_msg(0.785398 * of_a[4 + c] * of_a[4 + c] > 0.9 * of_a[c] * of_a[c], "row %d: round", a->id);
        }
        for (int k = 0; k < frame_code_deck_footings_rows; k++) {
            const frame_code_deck_footings_row *b = &frame_code_deck_footings_table[k];
            const int16_t of_b[] = {b->s1500, b->s2000, b->s2500, b->s3000, b->r1500, b->r2000,
                                    b->r2500, b->r3000, b->t1500, b->t2000, b->t2500, b->t3000};
            if (b->editions != a->editions || b->area < a->area || b->load < a->load) continue;
            for (int c = 0; c < 12; c++) {
                const int odd = c % 4 == 1 && (a->note > 0 || b->note > 0);
                if (!odd) ck_assert_msg(of_b[c] >= of_a[c], "rows %d %d column %d", a->id, b->id, c);
            }
        }
    }
}
END_TEST

START_TEST(ledgers) {
    frame_code_ledger_spacing_out out;
    ASKED(&out, "code_ledger_spacing", LEDGER);
    ck_assert(out.spacing_in == 18 && out.ledger_top_in == 2 && out.ledger_bottom_in == 0.75 &&
              out.band_top_in == 0.75);
    ck_assert(out.band_bottom_in == 2 && out.end_in == 2 && out.row_spacing_in == 1.625 &&
              out.row_spacing_most_in == 5);
    ck_assert(CAUTION(out, BEHIND) && CAUTION(out, SHEATHING));
    ASKED(&out, "code_ledger_spacing", LEDGER "; sheathing_in=0");
    ck_assert(!CAUTION(out, SHEATHING));
    ASKED(&out, "code_ledger_spacing", LEDGER "; fastener=bolt");
    ck_assert_double_eq(out.spacing_in, 34);
    ASKED(&out, "code_ledger_spacing", LEDGER "; fastener=bolt; sheathing_in=1; ground_snow_psf=70; joist_span_in=18'");
    ck_assert_double_eq(out.spacing_in, 11);
    ASKED(&out, "code_ledger_spacing", LEDGER "; joist_span_in=11'");
    ck_assert_double_eq(out.spacing_in, 16.5);
    ASKED(&out, "code_ledger_spacing", LEDGER "; joist_span_in=11'; edition=2015");
    ck_assert_double_eq(out.spacing_in, 15);
    REFUSED("code_ledger_spacing", LEDGER "; sheathing_in=0.51", "sheathing_in", FRAME_OUTSIDE_SCOPE);
    REFUSED("code_ledger_spacing", LEDGER "; fastener=bolt; sheathing_in=1.1", "sheathing_in", FRAME_OUTSIDE_SCOPE);
    REFUSED("code_ledger_spacing", LEDGER "; joist_span_in=18.1'", "joist_span_in", FRAME_OUTSIDE_SCOPE);
    REFUSED("code_ledger_spacing", LEDGER "; ledger_size=2x6", "ledger_size", FRAME_OUTSIDE_SCOPE);
    REFUSED("code_ledger_spacing", LEDGER "; edition=2018; ground_snow_psf=50", "ground_snow_psf", FRAME_OUTSIDE_SCOPE);
    for (int i = 0; i < frame_code_ledgers_rows; i++) {
        const frame_code_ledgers_row *row = &frame_code_ledgers_table[i];
        const int16_t cells[] = {row->j6, row->j8, row->j10, row->j12, row->j14, row->j16, row->j18};
        for (int c = 0; c + 1 < 7; c++) ck_assert_msg(cells[c] >= cells[c + 1], "row %d", row->id);
    }
}
END_TEST

START_TEST(guide) {
    frame_code_deck_guide_post_out out;
    ASKED(&out, "code_deck_guide_post", "edition=DCA 6; species=HF; beam_span_in=10'; joist_span_in=14'");
    ck_assert(out.height_in == 132 && out.round_diameter_in == 27 && out.square_side_in == 24 &&
              out.thickness_in == 11);
    ck_assert(out.known == FRAME_KNOWN_MEMORY && CAUTION(out, MEMORY) && CAUTION(out, NOTE));
    ASKED(&out, "code_deck_guide_post", "edition=DCA 6; species=SPF; beam_span_in=18'; joist_span_in=18'; corner=yes");
    ck_assert_double_eq(out.height_in, 0);
    ck_assert_double_eq_tol(out.round_diameter_in, 37.8, 1e-9);
    REFUSED("code_deck_guide_post", "edition=2021; species=HF; beam_span_in=10'; joist_span_in=14'", "edition",
            FRAME_NO_VALUE);
    REFUSED("code_deck_guide_post", "edition=DCA 6; species=HF; beam_span_in=10'; joist_span_in=19'", "joist_span_in",
            FRAME_OUTSIDE_SCOPE);
}
END_TEST

/* Wider spacing, more load, smaller size: never a longer joist. */
START_TEST(joists_monotone) {
    for (int i = 0; i < frame_code_deck_joists_rows; i++) {
        const frame_code_deck_joists_row *a = &frame_code_deck_joists_table[i];
        ck_assert_msg(a->s12 >= a->s16 && a->s16 >= a->s24, "row %d", a->id);
        for (int k = 0; k < frame_code_deck_joists_rows; k++) {
            const frame_code_deck_joists_row *b = &frame_code_deck_joists_table[k];
            if (b->woods != a->woods || b->editions != a->editions) continue;
            if (b->size == a->size && b->load > a->load)
                ck_assert_msg(b->s12 <= a->s12 && b->s16 <= a->s16 && b->s24 <= a->s24, "rows %d %d", a->id, b->id);
            if (b->size > a->size && b->load == a->load)
                ck_assert_msg(b->s12 >= a->s12 && b->s16 >= a->s16 && b->s24 >= a->s24, "rows %d %d", a->id, b->id);
        }
    }
}
END_TEST

int main(void) {
    TCase *tests = tcase_create("decks");
    tcase_add_test(tests, joists);
    tcase_add_test(tests, joists_refused);
    tcase_add_test(tests, joists_monotone);
    tcase_add_test(tests, beams);
    tcase_add_test(tests, beams_refused);
    tcase_add_test(tests, beams_monotone);
    tcase_add_test(tests, beams_of_two_editions);
    tcase_add_test(tests, posts);
    tcase_add_test(tests, posts_monotone);
    tcase_add_test(tests, footings);
    tcase_add_test(tests, footings_monotone);
    tcase_add_test(tests, ledgers);
    tcase_add_test(tests, guide);
    return run_tests(tests, "decks");
}
