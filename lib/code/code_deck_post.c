/* Heights of deck posts from the code's tables. */
#include "code/decks.h"
#include "code/overlay.h"
#include "code_facts.h"
#include "table_code_deck_posts.h"
#include "working/calculation.h"

static const double areas[] = {20, 40, 60, 80, 100, 120, 140, 160};
enum { NO_WOODS_GIVEN = 0 };

static int cell_of(const frame_code_deck_posts_row *row, int place) {
    const int16_t cells[] = {row->a20, row->a40, row->a60, row->a80, row->a100, row->a120, row->a140, row->a160};
    return cells[place];
}

static int post_row(const void *table, int i, unsigned *editions, int *load, const char **number) {
    const frame_code_deck_posts_row *first = table, *row = first + i;
    if (row >= frame_code_deck_posts_table + frame_code_deck_posts_rows || row->woods != first->woods ||
        row->size != first->size)
        return 0;
    *editions = row->editions, *load = row->load, *number = row->table;
    return 1;
}

static int size_word(frame_size size) {
    static const frame_size sizes[] = {FRAME_SIZE(4, 4), FRAME_SIZE(4, 6), FRAME_SIZE(6, 6), FRAME_SIZE(8, 8)};
    for (int i = 0; i < 4; i++)
        if (sizes[i] == size) return i + 1;
    return 0;
}

/* The first row of a size and group of woods. */
static const frame_code_deck_posts_row *group_of(int size, int woods) {
    const frame_code_deck_posts_row *row = &frame_code_deck_posts_table[frame_code_deck_posts_at[size] - 1];
    while (row->woods != woods) row++;
    return row;
}

static frame_status find(const frame_code_deck_post_in *in, const frame_code_deck_posts_row **row, int *covered) {
    const int size = size_word(in->size), old = in->edition <= FRAME_CODE_2018;
    frame_deck_load load;
    int woods = FRAME_WOODS_ANY, found;
    frame_status status = frame_deck_load_of(in->live_psf, in->ground_snow_psf, &load);
    if (status) return status;
    if (!size) return frame_deck_no_size(1, in->size, "R507.4", "4x4, 4x6, 6x6 and 8x8");
    if (!old && in->species == FRAME_NOT_GIVEN_INT)
        return frame_fail(FRAME_REQUIRED, "species", "", "a species",
                          "species: is required from the edition of 2021 on");
    if (!old && (status = frame_deck_woods(in->species, &woods))) return status;
    if (old && size == 4 && in->edition == FRAME_CODE_2015)
        return frame_deck_no_size(1, in->size, "R507.8", "4x4, 4x6 and 6x6");
    *row = group_of(size, woods);
    if ((status = frame_deck_find(*row, post_row, in->edition, &load, in->covering, &found, covered))) return status;
    *row += found;
    *covered |= load.by_live_over_40;
    return FRAME_OK;
}

/* Between an area and one that permits no post there is none. */
static void between(const frame_code_deck_posts_row *row, int place, double fraction, frame_code_deck_post_out *out,
                    frame_working *w) {
    const int near = cell_of(row, place), far = fraction > 0 ? cell_of(row, place + 1) : near;
    if (near == FRAME_CELL_NOT_PERMITTED || far == FRAME_CELL_NOT_PERMITTED) {
        FRAME_CASE(w, "the table permits no such post for this area", "none is permitted", out->source);
        out->height_in = 0;
        return;
    }
    FRAME_TABLE(w, H_1, near, "in", "height in the column of the lesser area", out->source);
    FRAME_TABLE(w, H_2, far, "in", "height in the column of the greater area", out->source);
    FRAME_GIVEN(w, t, fraction, "", "part of the way between the columns");
    FRAME_STEP(w, H_max, H_1 + t * (H_2 - H_1), "in", "greatest height", out->source);
    out->height_in = H_max;
    if (fraction > 0) FRAME_CODE_WARN(out, BETWEEN);
}

static void any_area(const frame_code_deck_post_in *in, const frame_code_deck_posts_row *row,
                     frame_code_deck_post_out *out, frame_working *w) {
    const int few = in->beam_plies < 3 && row->few_plies != FRAME_NO_CELL;
    if (few) FRAME_CASE(w, "the beam has one or two plies", "the higher post of the table's note", out->source);
    FRAME_TABLE(w, H_max, few ? row->few_plies : row->a20, "in", "greatest height", out->source);
    out->height_in = H_max;
}

static frame_status compute(const frame_code_deck_post_in *in, frame_code_deck_post_out *out, frame_working *w) {
    const frame_code_deck_posts_row *row;
    int place, covered, lighter = 0;
    double fraction;
    frame_status status = find(in, &row, &covered);
    if (status) return status;
    if (!row->any_area) {
        const frame_code_columns columns = {row->table, "tributary_ft2", "square feet", areas, 8, 1};
        if (in->tributary_ft2 == FRAME_NOT_GIVEN)
            return frame_fail(FRAME_REQUIRED, "tributary_ft2", "", "the area the post carries",
                              "tributary_ft2: is required from the edition of 2021 on");
        if ((status = frame_code_between(&columns, in->tributary_ft2, &place, &fraction, &lighter))) return status;
    }
    FRAME_CODE_SAY(out, in->edition, row->table, frame_code_source_text(row->source), "", row->known);
    out->cautions |= frame_deck_cautions();
    if (covered || lighter) FRAME_CODE_WARN(out, COVERED);
    FRAME_CODE_UNCHECKED(out, FOOTINGS);
    FRAME_CODE_UNCHECKED(out, UPLIFT);
    FRAME_HEADING(w, "Deck post by the code's table");
    if (row->any_area)
        any_area(in, row, out, w);
    else
        between(row, place, fraction, out, w);
    return FRAME_OK;
}

FRAME_CODE_IMPLEMENT(code_deck_post, compute);
