/* Fastening of sheathing and subfloors, and what panels on exterior walls hold of the wind. */
#include <string.h>

#include "code/overlay.h"
#include "code_facts.h"
#include "table_code_sheathing.h"
#include "table_code_wall_sheathing.h"
#include "working/calculation.h"

static const double slack = 1e-6;

static frame_code_sheathing_way *add(frame_answer *answer, const char *fastener, int source, double edge,
                                     double field) {
    frame_code_sheathing_way *way = frame_answer_add(answer, 0);
    if (!way) return NULL;
    way->fastener = fastener;
    way->source = frame_code_source_text(source);
    way->edge_in = edge;
    way->field_in = field;
    way->item = 0;
    return way;
}

/* The schedule's own ways. */
static frame_status by_schedule(const frame_code_sheathing_in *in, frame_answer *answer, frame_code_sheathing_out *out,
                                unsigned *known, int *source) {
    for (int i = frame_code_sheathing_at[in->sheet] - 1;
         i < frame_code_sheathing_rows && frame_code_sheathing_table[i].sheet == in->sheet; i++) {
        const frame_code_sheathing_row *row = &frame_code_sheathing_table[i];
        if (!(row->uses & 1u << (in->use - 1))) continue;
        if (in->thickness_in < row->least - slack || in->thickness_in > row->most + slack) continue;
        *known |= row->editions;
        if (!(row->editions & frame_code_bit(in->edition))) continue;
        frame_code_sheathing_way *way = add(answer, row->fastener, row->source, row->edge, row->field);
        if (!way) return FRAME_NO_MEMORY;
        way->length_in = row->length;
        way->diameter_in = row->diameter;
        way->alternative = row->alternative;
        way->item = row->item;
        *source = row->source;
        if (row->known > out->known) out->known = row->known;
    }
    return FRAME_OK;
}

static double thickness_of(const char *text) {
    return !strcmp(text, "3/8") ? 0.375 : 0.4375;
}

/* Table R602.3(3): panels on exterior walls in the wind. */
static frame_status by_wind(const frame_code_sheathing_in *in, frame_answer *answer, frame_code_sheathing_out *out) {
    if (in->use != FRAME_CODE_SHEET_WALL || in->sheet != FRAME_CODE_SHEET_PANEL ||
        in->stud_spacing_in == FRAME_NOT_GIVEN || in->exposure == FRAME_NOT_GIVEN_INT || in->edition > FRAME_CODE_2024)
        return FRAME_OK;
    out->wind_holds = in->wind_mph == FRAME_NOT_GIVEN ? FRAME_NOT_GIVEN_INT : 0;
    for (int i = 0; i < frame_code_wall_sheathing_rows; i++) {
        const frame_code_wall_sheathing_row *row = &frame_code_wall_sheathing_table[i];
        const int16_t winds[] = {row->vB, row->vC, row->vD};
        if (in->stud_spacing_in > row->spacing + slack || in->thickness_in < thickness_of(row->thickness) - slack)
            continue;
        frame_code_sheathing_way *way =
            add(answer, row->nail == 1 ? "6d common (2 x 0.113 in) nail" : "8d common (2-1/2 x 0.131 in) nail",
                row->source, row->edge, row->field);
        if (!way) return FRAME_NO_MEMORY;
        way->length_in = row->nail == 1 ? 2 : 2.5;
        way->diameter_in = row->nail == 1 ? 0.113 : 0.131;
        way->penetration_in = row->penetration;
        way->wind_mph = winds[in->exposure - 1];
        way->alternative = i + 1;
        if (in->wind_mph != FRAME_NOT_GIVEN && in->wind_mph <= way->wind_mph) out->wind_holds = 1;
    }
    return FRAME_OK;
}

/* The note on roof sheathing near gables, edges and ridges: read in 2021; the older one is recalled. */
static void roof_note(const frame_code_sheathing_in *in, frame_code_sheathing_out *out) {
    if (in->use != FRAME_CODE_SHEET_ROOF || in->sheet != FRAME_CODE_SHEET_PANEL || in->wind_mph == FRAME_NOT_GIVEN)
        return;
    const int newer = in->edition >= FRAME_CODE_2021;
    const double most = newer && in->exposure != FRAME_CODE_EXPOSURE_B ? 110 : 130;
    if (!newer) {
        out->wind_note = in->wind_mph > most ? "6 in at the supports between within 48 in of ridges, eaves and gable "
                                               "ends, and 4 in to the gable end walls (from memory)"
                                             : "6 in to the gable end walls (from memory)";
        out->known = FRAME_KNOWN_MEMORY;
        FRAME_CODE_WARN(out, MEMORY);
    } else if (in->wind_mph > most) {
        out->wind_note =
            "4 in at gable end framing and at the supports between within 48 in of roof edges and ridges (note f)";
    }
}

/* The ways that amendments give in place of the schedule's. */
static frame_status amend(const frame_code_sheathing_in *in, frame_answer *answer, frame_code_sheathing_out *out,
                          frame_working *w) {
    const overlay_row *row;
    size_t at = 0;
    while ((row = frame_code_overlay_next(in->overlay, &frame_code_sheathing_calculation, in, &at))) {
        frame_code_sheathing_way *way = frame_answer_add(answer, 0);
        if (!way) return FRAME_NO_MEMORY;
        frame_code_overlay_item(row, answer, answer->calculation->lists[0].facts, way);
        if (answer->failed) return FRAME_NO_MEMORY;
        out->known = FRAME_KNOWN_USER;
        out->source = way->source;
        FRAME_CODE_WARN(out, OVERLAY);
        FRAME_CASE(w, way->source, "a local amendment gives a way in place of the schedule's", "local amendments");
    }
    return FRAME_OK;
}

static frame_status nothing(const frame_code_sheathing_in *in, unsigned known) {
    if (known) return frame_code_no_edition("R602.3(1)", in->edition, known);
    return frame_fail(
        FRAME_NO_VALUE, "thickness_in", frame_code_number(in->thickness_in).text,
        "panels 3/8 to 1/2, 19/32 to 3/4 or 1, 7/8 or 1-1/8 to 1-1/4; fiberboard 1/2 or 25/32; gypsum 1/2 or 5/8",
        "thickness_in: the schedule has no sheet of %s in for this use", frame_code_number(in->thickness_in).text);
}

static frame_status solve(const frame_code_sheathing_in *in, frame_answer *answer, frame_code_sheathing_out *out,
                          frame_working *w) {
    unsigned known = 0;
    int source = 0;
    out->known = FRAME_KNOWN_READ;
    if (amend(in, answer, out, w)) return FRAME_NO_MEMORY;
    const int amended = answer->lists[0].count > 0;
    if (!amended && by_schedule(in, answer, out, &known, &source)) return FRAME_NO_MEMORY;
    const size_t by_table = answer->lists[0].count;
    if (!by_table) return nothing(in, known);
    out->wind_note = "";
    out->wind_holds = FRAME_NOT_GIVEN_INT;
    if (!amended && by_wind(in, answer, out)) return FRAME_NO_MEMORY;
    const char *const from = amended ? out->source : frame_code_source_text(source);
    FRAME_CODE_SAY(out, in->edition, "R602.3(1)", from, "", out->known);
    roof_note(in, out);
    FRAME_CODE_UNCHECKED(out, WIND);
    FRAME_CODE_UNCHECKED(out, SEISMIC);
    FRAME_CASE(w, frame_word_text("code_sheet", in->sheet), "fastened by the schedule", "IRC Table R602.3(1)");
    if (answer->lists[0].count > by_table)
        FRAME_CASE(w, "panels on an exterior wall", "and by the table for wind", "IRC Table R602.3(3)");
    out->way_count = (int32_t)answer->lists[0].count;
    frame_code_record_known(out->known, "", w);
    return FRAME_OK;
}

FRAME_IMPLEMENT_ANSWER(code_sheathing, solve);
