/* Posts and footings of the deck guide, by the spans of beam and joists. */
#include "code/decks.h"
#include "code/overlay.h"
#include "code_facts.h"
#include "table_code_deck_guide_posts.h"
#include "working/calculation.h"

enum { JOIST_COLUMNS = 3 };
static const double beams[] = {72, 96, 120, 144, 168, 192, 216}, joists[JOIST_COLUMNS] = {120, 168, 216};

/* The column of a species, as recalled. */
static int column_of(frame_species species) {
    switch (species) {
        case 4:
            return 1; /* southern pine */
        case 1:
            return 2; /* Douglas fir-larch */
        case 2:
        case 9:
            return 3; /* hem-fir, western cedars */
        case 10:
            return 4; /* redwood */
        case 42:
        case 43:
        case 3:
            return 5; /* ponderosa pine, red pine, spruce-pine-fir */
        default:
            return 0;
    }
}

static frame_status find(const frame_code_deck_guide_post_in *in, const frame_code_deck_guide_posts_row **row) {
    const int count = frame_code_deck_guide_posts_rows / JOIST_COLUMNS;
    const frame_code_columns by_beam = {"Table 4", "beam_span_in", "in", beams, count, 1},
                             by_joist = {"Table 4", "joist_span_in", "in", joists, JOIST_COLUMNS, 1};
    int beam, joist, covered;
    if (in->edition != FRAME_CODE_DCA6)
        return frame_code_no_edition("Table 4", in->edition, frame_code_bit(FRAME_CODE_DCA6));
    frame_status status = frame_code_column(&by_beam, in->beam_span_in, 1, &beam, &covered);
    if (!status) status = frame_code_column(&by_joist, in->joist_span_in, 1, &joist, &covered);
    if (!status) *row = &frame_code_deck_guide_posts_table[beam * JOIST_COLUMNS + joist];
    return status;
}

static void footing(const frame_code_deck_guide_post_in *in, const frame_code_deck_guide_posts_row *row,
                    frame_code_deck_guide_post_out *out, frame_working *w) {
    FRAME_TABLE(w, D_table, row->round, "in", "diameter of a round footing", out->source);
    FRAME_TABLE(w, B_table, row->square, "in", "side of a square footing", out->source);
    FRAME_TABLE(w, T_table, row->thickness, "in", "thickness", out->source);
    FRAME_TABLE(w, F, in->corner ? 0.9 : 1, "", "factor for a corner post", "DCA 6 Table 4, note 2");
    FRAME_STEP(w, D_round, F * D_table, "in", "diameter of a round footing", "DCA 6 Table 4, note 2");
    FRAME_STEP(w, B_square, F * B_table, "in", "side of a square footing", "DCA 6 Table 4, note 2");
    out->round_diameter_in = D_round;
    out->square_side_in = B_square;
    out->thickness_in = T_table;
}

static frame_status compute(const frame_code_deck_guide_post_in *in, frame_code_deck_guide_post_out *out,
                            frame_working *w) {
    const frame_code_deck_guide_posts_row *row;
    const int column = column_of(in->species);
    int woods;
    frame_status status = frame_deck_woods(in->species, &woods);
    if (!status) status = find(in, &row);
    if (status) return status;
    const int16_t cells[] = {row->h1, row->h2, row->h3, row->h4, row->h5};
    FRAME_CODE_SAY(out, in->edition, row->table, frame_code_source_text(row->source),
                   "the headings of the columns of species were not legible: their order is from memory", row->known);
    out->cautions |= frame_deck_cautions();
    FRAME_CODE_WARN(out, SOIL);
    FRAME_CODE_WARN(out, FROST);
    FRAME_CODE_UNCHECKED(out, UPLIFT);
    FRAME_HEADING(w, "Post and footing of the deck guide");
    FRAME_TABLE(w, H_max, cells[column - 1] == FRAME_CELL_NOT_PERMITTED ? 0 : 12 * cells[column - 1], "in",
                "greatest height of a 6x6 post", out->source);
    out->height_in = H_max;
    footing(in, row, out, w);
    return FRAME_OK;
}

FRAME_CODE_IMPLEMENT(code_deck_guide_post, compute);
