/* Full-height studs at the ends of headers from the code's table. */
#include "code/book.h"
#include "code/overlay.h"
#include "code_facts.h"
#include "table_code_king_studs.h"
#include "working/calculation.h"

enum { SPANS = 8 };
static const char number[] = "R602.7.5";

/* Which of the two columns: 1 or 2. */
static frame_status column_by_spacing(const frame_code_king_studs_in *in, int *column) {
    if (in->stud_spacing_in == FRAME_NOT_GIVEN)
        return frame_fail(FRAME_REQUIRED, "stud_spacing_in", "", "16 or 24",
                          "stud_spacing_in: is required in the edition of 2015");
    *column = in->stud_spacing_in <= 16 ? 1 : 2;
    if (in->stud_spacing_in <= 24) return FRAME_OK;
    return frame_fail_number(FRAME_OUTSIDE_SCOPE, "stud_spacing_in", in->stud_spacing_in, "16 or 24 in");
}

static frame_status column_by_wind(const frame_code_king_studs_in *in, int *column) {
    const int b = in->exposure == FRAME_CODE_EXPOSURE_B, c = in->exposure == FRAME_CODE_EXPOSURE_C;
    if (in->wind_mph == FRAME_NOT_GIVEN)
        return frame_fail(FRAME_REQUIRED, "wind_mph", "", "the ultimate design wind speed",
                          "wind_mph: is required from the edition of 2018 on");
    if (in->exposure == FRAME_NOT_GIVEN_INT)
        return frame_fail(FRAME_REQUIRED, "exposure", "", "B or C",
                          "exposure: is required from the edition of 2018 on");
    *column = b && in->wind_mph <= 115 && !in->anchored ? 2 : 1;
    if ((b && in->wind_mph < 140) || (c && in->wind_mph < 130)) return FRAME_OK;
    return frame_fail(FRAME_OUTSIDE_SCOPE, "wind_mph", frame_code_number(in->wind_mph).text,
                      "under 140 mph in exposure B, under 130 mph in C",
                      "wind_mph: %s mph is beyond Table R602.7.5: under 140 mph in exposure B or 130 in C",
                      frame_code_number(in->wind_mph).text);
}

static frame_status find(const frame_code_king_studs_in *in, const frame_code_king_studs_row **row, int *longer) {
    double spans[SPANS];
    int first = -1, count = 0, place;
    unsigned known = 0;
    for (int i = 0; i < frame_code_king_studs_rows; i++) {
        const frame_code_king_studs_row *at = &frame_code_king_studs_table[i];
        known |= at->editions;
        if (!(at->editions & frame_code_bit(in->edition)) || count == SPANS) continue;
        if (first < 0) first = i;
        spans[count++] = 12 * at->span;
    }
    if (!count) return frame_code_no_edition(number, in->edition, known);
    const frame_code_columns columns = {number, "header_span_in", "in", spans, count, 1};
    const frame_status status = frame_code_column(&columns, in->header_span_in, 1, &place, longer);
    if (!status) *row = &frame_code_king_studs_table[first + place];
    return status;
}

static frame_status compute(const frame_code_king_studs_in *in, frame_code_king_studs_out *out, frame_working *w) {
    const frame_code_king_studs_row *row;
    int column, longer;
    frame_status status = find(in, &row, &longer);
    if (!status) status = in->edition == FRAME_CODE_2015 ? column_by_spacing(in, &column) : column_by_wind(in, &column);
    if (status) return status;
    FRAME_CODE_SAY(out, in->edition, row->table, frame_code_source_text(row->source), "", row->known);
    FRAME_CODE_UNCHECKED(out, CONNECTIONS);
    FRAME_HEADING(w, "Full-height studs by the code's table");
    FRAME_GIVEN(w, L, in->header_span_in, "in", "span of the header");
    if (longer) FRAME_CASE(w, "between the table's spans", "the studs of the longer header", out->source);
    FRAME_TABLE(w, N, column == 1 ? row->first : row->second, "", "full-height studs at each end", out->source);
    (void)L;
    out->full_height_studs = (int32_t)N;
    return FRAME_OK;
}

FRAME_CODE_IMPLEMENT(code_king_studs, compute);
