/* Stairs, handrails and guards against the limits of the code. */
#include <string.h>

#include "base/answer.h"
#include "base/error.h"
#include "code/overlay.h"
#include "code_facts.h"
#include "table_code_stair_limits.h"
#include "working/calculation.h"

static const double slack = 1e-6;
/* In the order of the table's own words. */
enum {
    RISER = 1,
    RISER_VARIATION,
    TREAD,
    TREAD_VARIATION,
    WINDER_WALKLINE,
    WINDER_LEAST,
    WINDER_VARIATION,
    NOSING,
    NOSING_VARIATION,
    NOSING_RADIUS,
    HEADROOM,
    WIDTH,
    WIDTH_ONE_RAIL,
    WIDTH_TWO_RAILS,
    RISE,
    LANDING,
    SLOPE,
    HANDRAIL_HEIGHT,
    HANDRAIL_PROJECTION,
    HANDRAIL_CLEARANCE,
    GRIP_DIAMETER,
    GRIP_PERIMETER,
    GRIP_SECTION,
    GUARD_HEIGHT,
    GUARD_ON_STAIRS,
    GUARD_AS_RAIL,
    OPENING,
    OPENING_ON_STAIRS,
    TRIANGLE,
    OPEN_RISER,
    WALKLINE_RADIUS,
    DROP,
    RISERS
};
enum { STRAIGHT = 1, SPIRAL, BOTH };
enum { LEAST = 1, MOST, UNDER };

/* Whether the guard that was measured is of this kind: at a floor, on a stair, or on a stair as its handrail. */
static double guard(const frame_code_stairs_in *in, int what) {
    const int kind = !in->on_stairs ? GUARD_HEIGHT : in->guard_is_rail ? GUARD_AS_RAIL : GUARD_ON_STAIRS;
    return kind == what && in->guard_height_in > 0 ? in->guard_height_in : FRAME_NOT_GIVEN;
}

static double width_at_rail(const frame_code_stairs_in *in, int what) {
    const int rails = in->rails == FRAME_NOT_GIVEN_INT || in->spiral ? 1 : in->rails;
    return rails == (what == WIDTH_ONE_RAIL ? 1 : 2) ? in->width_at_rail_in : FRAME_NOT_GIVEN;
}

static double measured(const frame_code_stairs_in *in, int what) {
    const double plain[] = {[RISER] = in->riser_in,
                            [RISER_VARIATION] = in->riser_variation_in,
                            [TREAD] = in->tread_in,
                            [TREAD_VARIATION] = in->tread_variation_in,
                            [WINDER_WALKLINE] = in->winder_walkline_in,
                            [WINDER_LEAST] = in->winder_least_in,
                            [WINDER_VARIATION] = in->winder_variation_in,
                            [NOSING] = in->nosing_in,
                            [NOSING_VARIATION] = in->nosing_variation_in,
                            [NOSING_RADIUS] = in->nosing_radius_in,
                            [HEADROOM] = in->headroom_in,
                            [WIDTH] = in->width_in,
                            [RISE] = in->rise_in,
                            [LANDING] = in->landing_in,
                            [SLOPE] = in->slope_percent,
                            [HANDRAIL_HEIGHT] = in->handrail_height_in,
                            [HANDRAIL_PROJECTION] = in->handrail_projection_in,
                            [HANDRAIL_CLEARANCE] = in->handrail_clearance_in,
                            [GRIP_DIAMETER] = in->grip_diameter_in,
                            [GRIP_PERIMETER] = in->grip_perimeter_in,
                            [GRIP_SECTION] = in->grip_section_in,
                            [TRIANGLE] = in->triangle_in,
                            [OPEN_RISER] = in->open_riser_in,
                            [WALKLINE_RADIUS] = in->walkline_radius_in};
    switch (what) {
        case WIDTH_ONE_RAIL:
        case WIDTH_TWO_RAILS:
            return width_at_rail(in, what);
        case GUARD_HEIGHT:
        case GUARD_ON_STAIRS:
        case GUARD_AS_RAIL:
            return guard(in, what);
        case OPENING:
        case OPENING_ON_STAIRS:
            return (what == OPENING) == !in->on_stairs ? in->opening_in : FRAME_NOT_GIVEN;
        case DROP: /* a guard that stands there answers it */
            return in->guard_height_in > 0 ? FRAME_NOT_GIVEN : in->drop_in;
        case RISERS: /* so does a handrail */
            return in->risers == FRAME_NOT_GIVEN_INT || in->rails == FRAME_NOT_GIVEN_INT || in->rails > 0
                       ? FRAME_NOT_GIVEN
                       : in->risers;
        default:
            return plain[what];
    }
}

/* Nosings: none is asked for under treads of 11 in and more, in 2015 nor under open risers; from 2024 on those may
 * project farther. */
static int excepted(const frame_code_stairs_in *in, const frame_code_stair_limits_row *row) {
    if (row->what != NOSING) return 0;
    if (row->bound == LEAST)
        return (in->tread_in != FRAME_NOT_GIVEN && in->tread_in >= 11 - slack) ||
               (in->open_risers && in->edition == FRAME_CODE_2015);
    return in->open_risers && in->edition == FRAME_CODE_2024;
}

static int holds(const frame_code_stair_limits_row *row, double value) {
    if (row->bound == LEAST) return value >= row->value - slack;
    if (row->bound == MOST) return value <= row->value + slack;
    return value < row->value - slack;
}

int frame_code_is_stair_item(const char *item) {
    for (int i = 0; i < frame_code_stair_limits_rows; i++)
        if (!strcmp(frame_code_stair_limits_table[i].item, item)) return 1;
    return 0;
}

/* The amendment of a limit: its least, most or under, whichever the limit is. */
static const overlay_cell *amendment(const frame_code_stairs_in *in, const frame_code_stair_limits_row *row,
                                     const char **source) {
    static const char *const bounds[] = {"least", "most", "under"};
    for (size_t i = 0; in->overlay && i < in->overlay->rows.count; i++) {
        const overlay_row *each = &FRAME_ITEM(const overlay_row, in->overlay->rows, i);
        const char *item = frame_code_overlay_text(each, "item");
        if (!frame_code_overlay_matches(each, &frame_code_stairs_calculation, in) || strcmp(item, row->item)) continue;
        *source = each->source;
        for (size_t k = 0; k < each->count; k++)
            if (!strcmp(each->cells[k].field->name, bounds[row->bound - 1])) return &each->cells[k];
    }
    return NULL;
}

static frame_status add(const frame_code_stairs_in *in, frame_answer *answer,
                        const frame_code_stair_limits_row *printed, frame_code_stairs_out *out, frame_working *w) {
    frame_code_stair_limits_row local = *printed;
    const frame_code_stair_limits_row *const row = &local;
    const overlay_cell *amended = amendment(in, printed, &local.source);
    if (amended) {
        local.value = amended->low;
        local.known = FRAME_KNOWN_USER;
        local.source = frame_answer_text(answer, local.source);
        FRAME_CODE_WARN(out, OVERLAY);
    }
    frame_code_stairs_limit *limit = frame_answer_add(answer, 0);
    if (!limit) return FRAME_NO_MEMORY;
    const double value = measured(in, row->what);
    double *const bounds[] = {&limit->least, &limit->most, &limit->under};
    limit->item = row->item;
    limit->clause = row->clause;
    limit->unit = row->unit;
    limit->source = row->source;
    *bounds[row->bound - 1] = row->value;
    limit->measured = value;
    limit->known = row->known;
    if (row->known > out->known) out->known = row->known;
    limit->holds = FRAME_NOT_GIVEN_INT;
    if (value == FRAME_NOT_GIVEN) return FRAME_OK;
    limit->holds = excepted(in, row) || holds(row, value);
    out->measured++;
    FRAME_CASE(w, row->item, limit->holds ? "holds" : "does not hold", amended ? row->source : row->clause);
    if (limit->holds) return FRAME_OK;
    if (!out->failed++) out->reason = row->item;
    return FRAME_OK;
}

static void say(const frame_code_stairs_in *in, const frame_answer *answer, frame_code_stairs_out *out) {
    const frame_code_stairs_limit *limits = answer->lists[0].items;
    FRAME_CODE_SAY(out, in->edition, in->edition == FRAME_CODE_2024 ? "R318.7, R320, R321" : "R311.7, R312",
                   limits[0].source, "", out->known);
    FRAME_CODE_UNCHECKED(out, CONNECTIONS);
    out->holds = out->measured ? !out->failed : FRAME_NOT_GIVEN_INT;
    out->guard_needed = in->drop_in == FRAME_NOT_GIVEN ? FRAME_NOT_GIVEN_INT : in->drop_in > 30 + slack;
    out->handrail_needed = in->risers == FRAME_NOT_GIVEN_INT ? FRAME_NOT_GIVEN_INT : in->risers >= 4;
}

static frame_status solve(const frame_code_stairs_in *in, frame_answer *answer, frame_code_stairs_out *out,
                          frame_working *w) {
    if (in->edition > FRAME_CODE_2024) return frame_code_no_edition("R311.7", in->edition, 0xf);
    out->measured = out->failed = 0;
    out->known = FRAME_KNOWN_READ;
    out->reason = "";
    FRAME_HEADING(w, "Stairs, handrails and guards by the code");
    for (int i = 0; i < frame_code_stair_limits_rows; i++) {
        const frame_code_stair_limits_row *row = &frame_code_stair_limits_table[i];
        if (!(row->editions & frame_code_bit(in->edition)) || row->kind == (in->spiral ? STRAIGHT : SPIRAL)) continue;
        if (add(in, answer, row, out, w)) return FRAME_NO_MEMORY;
    }
    say(in, answer, out);
    frame_code_record_known(out->known, "", w);
    return FRAME_OK;
}

FRAME_IMPLEMENT_ANSWER(code_stairs, solve);
