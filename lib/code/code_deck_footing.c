/* Footings under deck posts from the code's tables. */
#include "code/decks.h"
#include "code/overlay.h"
#include "code_facts.h"
#include "table_code_deck_footings.h"
#include "working/calculation.h"

enum { SOILS = 4, AREAS = 9, LEAST_AREAS = 8 };
static const double soils[SOILS] = {1500, 2000, 2500, 3000};

/* Side, diameter and thickness of a cell. */
typedef struct footing {
    double square, round, thickness;
} footing;

static footing cell_of(const frame_code_deck_footings_row *row, int soil) {
    const int16_t cells[SOILS][3] = {{row->s1500, row->r1500, row->t1500},
                                     {row->s2000, row->r2000, row->t2000},
                                     {row->s2500, row->r2500, row->t2500},
                                     {row->s3000, row->r3000, row->t3000}};
    return (footing){cells[soil][0], cells[soil][1], cells[soil][2]};
}

static int has(const frame_code_deck_footings_row *row, int soil) {
    return cell_of(row, soil).square != FRAME_NO_CELL;
}

/* The rows of an edition, load by load: first gives the first row of each load. */
static frame_status find_load(const frame_code_deck_footing_in *in, const frame_code_deck_footings_row **row,
                              int *covered) {
    double loads[8];
    int first[8], count = 0, place;
    unsigned known = 0;
    frame_deck_load load;
    frame_status status = frame_deck_load_of(in->live_psf, in->ground_snow_psf, &load);
    for (int i = 0; i < frame_code_deck_footings_rows && !status; i++) {
        const frame_code_deck_footings_row *at = &frame_code_deck_footings_table[i];
        known |= at->editions;
        const int here = (at->editions & frame_code_bit(in->edition)) != 0;
        if (here && count && loads[count - 1] == at->load) continue;
        if (here && count < 8) first[count] = i, loads[count++] = at->load;
        i += LEAST_AREAS - 1; /* a load has so many rows at least */
    }
    if (!status && !count) status = frame_code_no_edition("R507.3.1", in->edition, known);
    if (!status) status = frame_deck_column("R507.3.1", &load, loads, count, in->covering, &place, covered);
    if (status) return status;
    *row = &frame_code_deck_footings_table[first[place]];
    *covered |= load.by_live_over_40;
    return FRAME_OK;
}

/* The rows of two areas around the one asked for. */
static frame_status find_area(const frame_code_deck_footing_in *in, const frame_code_deck_footings_row **row,
                              double *fraction, int *lighter) {
    const frame_code_deck_footings_row *end = frame_code_deck_footings_table + frame_code_deck_footings_rows;
    double areas[AREAS];
    int count = 0, place;
    for (const frame_code_deck_footings_row *at = *row;
         at < end && at->load == (*row)->load && at->editions == (*row)->editions && count < AREAS; at++)
        areas[count++] = at->area;
    const frame_code_columns columns = {(*row)->table, "tributary_ft2", "square feet", areas, count, 1};
    const frame_status status = frame_code_between(&columns, in->tributary_ft2, &place, fraction, lighter);
    if (!status) *row += place;
    return status;
}

/* The columns of two bearing values around the one asked for: better soil than the last reads the last. */
static frame_status find_soil(const frame_code_deck_footing_in *in, const frame_code_deck_footings_row *row,
                              int *poorer, int *better, double *fraction) {
    *poorer = -1, *better = -1, *fraction = 0;
    for (int i = 0; i < SOILS; i++) {
        if (!has(row, i)) continue;
        if (soils[i] <= in->soil_psf * (1 + 1e-9)) *poorer = i;
        if (soils[i] > in->soil_psf * (1 + 1e-9) && *better < 0) *better = i;
    }
    if (*poorer < 0)
        return frame_fail(FRAME_OUTSIDE_SCOPE, "soil_psf", frame_code_number(in->soil_psf).text, "1500 and more",
                          "soil_psf: %s psf is less than Table %s is for: poorer than 1,500 psf, licensed design",
                          frame_code_number(in->soil_psf).text, row->table);
    if (*better < 0) *better = *poorer;
    if (*better != *poorer) *fraction = (in->soil_psf - soils[*poorer]) / (soils[*better] - soils[*poorer]);
    return FRAME_OK;
}

static double way(double from, double to, double fraction) {
    return from + fraction * (to - from);
}

static footing mix(footing a, footing b, double fraction) {
    return (footing){way(a.square, b.square, fraction), way(a.round, b.round, fraction),
                     way(a.thickness, b.thickness, fraction)};
}

static void record(footing at, const char *source, frame_working *w) {
    FRAME_TABLE(w, B_square, at.square, "in", "side of a square footing", source);
    FRAME_TABLE(w, D_round, at.round, "in", "diameter of a round footing", source);
    FRAME_TABLE(w, T, at.thickness, "in", "thickness", source);
    (void)B_square, (void)D_round, (void)T;
}

static frame_status say(const frame_code_deck_footing_in *in, const frame_code_deck_footings_row *row, int rows,
                        const int columns[2], frame_code_deck_footing_out *out) {
    const char *note = "";
    for (int i = 0; i < rows; i++) {
        if (row[i].note <= 0) continue;
        for (int k = 0; k < 2; k++)
            if (soils[columns[k]] == 2000)
                note = frame_code_note_text(row[i].note); /* both notes are about 2,000 psf */
        if (*note && row[i].refused && !in->doubtful) return frame_code_doubtful(row->table, note);
        if (*note && row[i].refused) FRAME_CODE_WARN(out, DOUBTFUL);
    }
    FRAME_CODE_SAY(out, in->edition, row->table, frame_code_source_text(row->source), note, row->known);
    FRAME_CODE_WARN(out, SOIL);
    FRAME_CODE_WARN(out, FROST);
    FRAME_CODE_UNCHECKED(out, UPLIFT);
    return FRAME_OK;
}

static frame_status compute(const frame_code_deck_footing_in *in, frame_code_deck_footing_out *out, frame_working *w) {
    const frame_code_deck_footings_row *row;
    int covered, lighter, columns[2];
    double area, soil;
    frame_status status = find_load(in, &row, &covered);
    if (!status) status = find_area(in, &row, &area, &lighter);
    if (!status) status = find_soil(in, row, &columns[0], &columns[1], &soil);
    if (!status) status = say(in, row, 1 + (area > 0), columns, out);
    if (status) return status;
    footing at = mix(cell_of(row, columns[0]), cell_of(row, columns[1]), soil);
    if (area > 0) at = mix(at, mix(cell_of(row + 1, columns[0]), cell_of(row + 1, columns[1]), soil), area);
    if (covered || lighter) FRAME_CODE_WARN(out, COVERED);
    if (area > 0 || soil > 0) FRAME_CODE_WARN(out, BETWEEN);
    FRAME_HEADING(w, "Deck footing by the code's table");
    if (area > 0 || soil > 0) FRAME_CASE(w, "between the table's areas or bearing values", "interpolated", out->source);
    if (w) record(at, out->source, w);
    out->square_side_in = at.square;
    out->round_diameter_in = at.round;
    out->thickness_in = at.thickness;
    return FRAME_OK;
}

FRAME_CODE_IMPLEMENT(code_deck_footing, compute);
