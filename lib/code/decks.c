/* The load, the woods and the grade of the deck tables. */
#include "code/decks.h"

#include <stdio.h>

#include "base/error.h"

enum { SPECIES_MOST = 43, GRADE_NO_2 = 4, LOADS_MOST = 8 };

frame_status frame_deck_load_of(double live_psf, double ground_snow_psf, frame_deck_load *load) {
    const double live = live_psf == FRAME_NOT_GIVEN ? 0 : live_psf;
    const double snow = ground_snow_psf == FRAME_NOT_GIVEN ? 0 : ground_snow_psf;
    if (live_psf == FRAME_NOT_GIVEN && ground_snow_psf == FRAME_NOT_GIVEN)
        return frame_fail(FRAME_REQUIRED, "live_psf", "", "a live load (40 by the code) or a ground snow load",
                          "live_psf: is required, or ground_snow_psf: the greater picks the table");
    if (live > 60)
        return frame_fail(FRAME_OUTSIDE_SCOPE, "live_psf", frame_code_number(live).text, "0..60",
                          "live_psf: %s psf is beyond the deck tables: beyond 60, licensed design",
                          frame_code_number(live).text);
    *load = (frame_deck_load){live > snow ? live : snow, snow > live, live > 40};
    if (load->by_live_over_40 && load->psf < 70) load->psf = 70;
    if (load->psf < 40) load->psf = 40; /* the tables' lightest column: decks are never designed for less */
    return FRAME_OK;
}

frame_status frame_deck_column(const char *table, const frame_deck_load *load, const double *loads, int count,
                               int covering, int *place, int *covered) {
    const frame_code_columns columns = {
        table, load->by_snow && !load->by_live_over_40 ? "ground_snow_psf" : "live_psf", "psf", loads, count, 0};
    return frame_code_column(&columns, load->psf, covering, place, covered);
}

frame_status frame_deck_find(const void *table, frame_deck_row row, frame_code_edition edition,
                             const frame_deck_load *load, int covering, int *found, int *covered) {
    double loads[LOADS_MOST];
    int rows[LOADS_MOST], count = 0, place;
    unsigned editions, known = 0;
    const char *number = "", *last = "";
    int of_load;
    for (int i = 0; row(table, i, &editions, &of_load, &last); i++) {
        known |= editions;
        if (!(editions & frame_code_bit(edition)) || count == LOADS_MOST) continue;
        number = last, rows[count] = i, loads[count++] = of_load;
    }
    if (!count) return frame_code_no_edition(last, edition, known);
    const frame_status status = frame_deck_column(number, load, loads, count, covering, &place, covered);
    if (!status) *found = rows[place];
    return status;
}

frame_status frame_deck_woods(frame_species species, int *woods) {
    static const unsigned char groups[SPECIES_MOST + 1] = {
        [1] = FRAME_WOODS_DFL_HF_SPF,   [2] = FRAME_WOODS_DFL_HF_SPF,  [3] = FRAME_WOODS_DFL_HF_SPF,
        [4] = FRAME_WOODS_SP,           [9] = FRAME_WOODS_RW_WC_PP_RP, [10] = FRAME_WOODS_RW_WC_PP_RP,
        [42] = FRAME_WOODS_RW_WC_PP_RP, [43] = FRAME_WOODS_RW_WC_PP_RP};
    *woods = species > 0 && species <= SPECIES_MOST ? groups[species] : 0;
    if (*woods) return FRAME_OK;
    const char *const name = frame_species_name(species);
    return frame_fail(FRAME_NO_VALUE, "species", name ? name : "",
                      "Southern Pine, Douglas Fir-Larch, Hem-Fir, Spruce-Pine-Fir, Redwood, Western Cedars, Ponderosa "
                      "Pine, Red Pine",
                      "species: %s is not in the deck tables, which have Southern Pine, Douglas Fir-Larch, Hem-Fir, "
                      "Spruce-Pine-Fir, Redwood, Western Cedars, Ponderosa Pine and Red Pine",
                      name ? name : "it");
}

frame_status frame_deck_grade(frame_grade grade) {
    if (grade <= GRADE_NO_2) return FRAME_OK;
    const char *const name = frame_grade_name(grade);
    return frame_fail(FRAME_OUTSIDE_SCOPE, "grade", name ? name : "", "No.2 or better",
                      "grade: %s is below No.2, which the deck tables are for", name ? name : "it");
}

uint64_t frame_deck_cautions(void) {
    return FRAME_BIT(FRAME_CODE_CAUTION_TREATED) | FRAME_BIT(FRAME_CODE_CAUTION_LATERAL) |
           FRAME_BIT(FRAME_CODE_CAUTION_STAMP);
}

frame_status frame_deck_no_size(int plies, frame_size size, const char *table, const char *has) {
    const char *const name = frame_size_name(size);
    return frame_fail(FRAME_NO_VALUE, "size", name ? name : "", has, "size: %d-%s is not in Table %s, which has %s",
                      plies, name ? name : "?", table, has);
}
