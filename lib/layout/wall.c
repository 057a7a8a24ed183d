/* Walls, stick by stick. */
#include <math.h>
#include <stdlib.h>

#include "base/error.h"
#include "layout/wall.h"
#include "layout_facts.h"
#include "working/calculation.h"

static const char trade[] = "common practice, wall layout";

/* What stands plate to plate, or between headers and sills, side by side: the widest spacing on centres. */
static double widest(const frame_wall_plan *plan) {
    double last = FRAME_NOT_GIVEN, most = 0;
    for (size_t i = 0; i < plan->uprights.count; i++) {
        const frame_wall_upright *upright = FRAME_WALL_UPRIGHT(plan, i);
        const int whole = upright->low == FRAME_NOT_GIVEN && upright->high == FRAME_NOT_GIVEN;
        if (!whole || upright->y > 1e-9) continue; /* nor what stands at the inner face alone */
        const double centre = upright->from + upright->width / 2;
        /* Kings on both sides of an opening have it between them. */
        const int across = upright->kind == FRAME_PIECE_KING && last != FRAME_NOT_GIVEN &&
                           upright->from > FRAME_WALL_HOLE(plan, upright->hole)->to - 1e-9 &&
                           last < FRAME_WALL_HOLE(plan, upright->hole)->from;
        if (last != FRAME_NOT_GIVEN && !across) most = fmax(most, centre - last);
        last = centre;
    }
    return most;
}

/* How much wood stands at the outside on either side of a place, in one piece or in several set tight; the uprights are
 * in order along the wall. */
static void bearing_at(const frame_wall_plan *plan, double x, double *before, double *after) {
    double from = x, to = x;
    for (size_t i = 0; i < plan->uprights.count; i++) {
        const frame_wall_upright *upright = FRAME_WALL_UPRIGHT(plan, i);
        if (upright->y < 1e-9 && upright->from <= to + 1e-9) to = fmax(to, upright->from + upright->width);
    }
    for (size_t i = plan->uprights.count; i-- > 0;) {
        const frame_wall_upright *upright = FRAME_WALL_UPRIGHT(plan, i);
        if (upright->y < 1e-9 && upright->from + upright->width >= from - 1e-9) from = fmin(from, upright->from);
    }
    *before = x - from;
    *after = to - x;
}

/* Strips narrower than half an inch, at the ends and at openings, are no sheets. */
static int edges_off(const frame_wall_plan *plan) {
    const double least = 0.5 - 1e-9;
    int off = 0;
    const double datum = plan->in->datum_in;
    for (double k = floor((1e-9 - datum) / plan->sheet) + 1; datum + k * plan->sheet < plan->in->length_in - 1e-9;
         k++) {
        double before, after;
        const double x = datum + k * plan->sheet;
        int open = x < least || x > plan->in->length_in - least;
        for (size_t i = 0; i < plan->holes.count; i++)
            open |= x > FRAME_WALL_HOLE(plan, i)->from - least && x < FRAME_WALL_HOLE(plan, i)->to + least;
        bearing_at(plan, x, &before, &after);
        off += !open && fmin(before, after) < least;
    }
    return off;
}

static void count_pieces(const frame_wall_plan *plan, frame_wall_out *out) {
    out->studs = out->kings = out->jacks = out->cripples = out->blocks = 0;
    out->plates_in = 0;
    out->longest_in = 0;
    out->shortest_in = INFINITY;
    for (size_t i = 0; i < plan->set->pieces.count; i++) {
        const frame_layout_piece *piece = FRAME_LAYOUT_PIECE(plan->set, i);
        out->studs += piece->kind == FRAME_PIECE_STUD || piece->kind == FRAME_PIECE_BACKING;
        out->kings += piece->kind == FRAME_PIECE_KING;
        out->jacks += piece->kind == FRAME_PIECE_JACK;
        out->cripples += piece->kind == FRAME_PIECE_CRIPPLE;
        out->blocks += piece->kind == FRAME_PIECE_BLOCK;
        if (piece->kind >= FRAME_PIECE_BOTTOM_PLATE && piece->kind <= FRAME_PIECE_CAP_PLATE)
            out->plates_in += piece->length;
        if (piece->kind != FRAME_PIECE_STUD && piece->kind != FRAME_PIECE_KING) continue;
        out->longest_in = fmax(out->longest_in, piece->length);
        out->shortest_in = fmin(out->shortest_in, piece->length);
    }
}

#define WARN_IF(condition, bit) \
    if (condition) out->cautions |= FRAME_BIT(FRAME_WALL_CAUTION_##bit)

static void sum_up(frame_wall_plan *plan, frame_wall_out *out, frame_working *w) {
    int doors = 0, single = 0, looked_up = 1;
    count_pieces(plan, out);
    out->height_in = plan->height;
    FRAME_HEADING(w, "Rake");
    FRAME_GIVEN(w, m, plan->slope, "", "slope of the top");
    FRAME_GIVEN(w, s, plan->in->spacing_in, "in", "spacing on centres");
    FRAME_STEP(w, difference, fabs(m) * s, "in", "difference from stud to stud", "NAVEDTRA 14044 ch. 2: gable ends");
    FRAME_STEP(w, top_angle, atan(fabs(m)) / FRAME_DEG, "deg", "top cut of the studs, from square", trade);
    out->difference_in = difference;
    out->top_angle_deg = top_angle;
    if (plan->level) out->stud_length_in = frame_wall_stud_top(plan, 0) - frame_wall_stud_bottom(plan, 0, 1);
    out->widest_in = widest(plan);
    out->edges_off = edges_off(plan);
    out->known = plan->known;
    out->passes = plan->passes;
    for (size_t i = 0; i < plan->holes.count; i++) {
        const frame_wall_hole *hole = FRAME_WALL_HOLE(plan, i);
        doors |= hole->door;
        single |= hole->plies == 1 && hole->turned == FRAME_TURNED_ON_EDGE && !hole->caps &&
                  hole->header.thickness < plan->d - 1e-9;
        looked_up &= hole->code_span != FRAME_NOT_GIVEN;
    }
    out->cautions = plan->cautions | FRAME_BIT(FRAME_WALL_CAUTION_ONE_HOOK) | FRAME_BIT(FRAME_WALL_CAUTION_BRACE);
    WARN_IF(plan->holes.count, HEADER);
    WARN_IF(out->edges_off, EDGES);
    WARN_IF(doors, CUT_PLATE);
    WARN_IF(single, SINGLE_PLY);
    WARN_IF(plan->in->top_plates == 1, TIE);
    WARN_IF(plan->in->top_plates == 1 && plan->in->bearing, SINGLE);
    out->not_checked = FRAME_BIT(FRAME_WALL_UNCHECKED_STUDS) | FRAME_BIT(FRAME_WALL_UNCHECKED_BRACING) |
                       FRAME_BIT(FRAME_WALL_UNCHECKED_PIPES);
    if (!looked_up) out->not_checked |= FRAME_BIT(FRAME_WALL_UNCHECKED_HEADERS);
}

static void list_marks(const frame_wall_plan *plan, frame_answer *answer) {
    for (size_t i = 0; i < plan->uprights.count; i++) {
        const frame_wall_upright *upright = FRAME_WALL_UPRIGHT(plan, i);
        const int bottom = upright->low == FRAME_NOT_GIVEN, top = upright->high == FRAME_NOT_GIVEN;
        if (!bottom && !top) continue; /* between a head plate and a header */
        frame_wall_mark *mark = frame_answer_add(answer, FRAME_WALL_MARKS);
        if (!mark) {
            answer->failed = 1;
            return;
        }
        mark->mark_in = upright->from;
        mark->to_in = upright->from + upright->width;
        mark->kind = upright->kind;
        mark->bottom = bottom;
        mark->top = top;
        mark->opening = upright->hole < 0 ? 0 : FRAME_WALL_HOLE(plan, upright->hole)->number;
    }
}

static void list_headers(const frame_wall_plan *plan, frame_answer *answer) {
    for (size_t i = 0; i < plan->holes.count; i++) {
        const frame_wall_hole *hole = FRAME_WALL_HOLE(plan, i);
        frame_wall_header *header = frame_answer_add(answer, FRAME_WALL_HEADERS);
        if (!header) {
            answer->failed = 1;
            return;
        }
        header->opening = hole->number;
        header->plies = hole->plies;
        header->size = hole->header.size;
        header->turned = hole->turned;
        header->length_in = hole->to - hole->from + 2 * hole->jacks * plan->t;
        header->bottom_in = hole->header_low;
        header->top_in = hole->header_top;
        header->code_span_in = hole->code_span;
        header->jacks = hole->jacks;
        header->kings = hole->kings;
        header->name = hole->name;
        header->source = hole->source;
    }
}

static frame_status list_gangs(frame_wall_plan *plan, frame_answer *answer) {
    frame_array gangs = {0};
    const frame_status status = frame_layout_gather(plan->set, &gangs);
    for (size_t i = 0; !status && i < gangs.count; i++) {
        const frame_layout_gang *gang = &FRAME_ITEM(frame_layout_gang, gangs, i);
        frame_wall_gang *item = frame_answer_add(answer, FRAME_WALL_GANGS);
        if (!item) {
            answer->failed = 1;
            break;
        }
        FRAME_LAYOUT_TELL_GANG(item, gang, FRAME_LAYOUT_PIECE(plan->set, gang->first));
        item->name = frame_layout_kind_name(item->kind);
    }
    frame_array_give(&gangs);
    return status;
}

static void list_pieces(const frame_wall_plan *plan, frame_answer *answer) {
    for (size_t i = 0; i < plan->set->pieces.count; i++) {
        frame_wall_piece *item = frame_answer_add(answer, FRAME_WALL_PIECES);
        if (!item) {
            answer->failed = 1;
            return;
        }
        FRAME_LAYOUT_TELL(item, FRAME_LAYOUT_PIECE(plan->set, i));
        FRAME_LAYOUT_TELL_CUTS(item, FRAME_LAYOUT_PIECE(plan->set, i));
    }
}

static frame_status lay_out(const frame_wall_in *in, frame_wall_plan *plan, frame_answer *answer, frame_working *w) {
    frame_status status = frame_wall_take(in, plan, answer, w);
    if (!status) status = frame_wall_take_holes(plan, answer);
    if (!status) status = frame_wall_place_groups(plan);
    if (!status) status = frame_wall_place_studs(plan);
    if (!status) status = frame_wall_add_plates(plan);
    if (status) return status;
    frame_wall_add_uprights(plan);
    frame_wall_add_holes(plan);
    status = frame_wall_add_blocks(plan);
    if (!status) status = frame_layout_check(plan->set, "height_in");
    if (!status) status = list_gangs(plan, answer);
    if (status) return status;
    list_marks(plan, answer);
    list_headers(plan, answer);
    list_pieces(plan, answer);
    return FRAME_OK;
}

static void give_plan(frame_wall_plan *plan) {
    frame_array_give(&plan->holes);
    frame_array_give(&plan->groups);
    frame_array_give(&plan->uprights);
    frame_array_give(&plan->steps);
    frame_array_give(&plan->joints);
}

/* For a box-out later: what sizes its header. */
static frame_status keep_in(const frame_wall_in *in, frame_layout_set *set) {
    frame_wall_in *kept = frame_take_zeroed(1, sizeof *kept);
    if (!kept) return FRAME_NO_MEMORY;
    *kept = *in;
    kept->openings = NULL;
    kept->crossings = NULL;
    kept->steps = NULL;
    kept->blocking_in = NULL;
    kept->name = NULL;
    kept->opening_count = kept->crossing_count = kept->step_count = kept->blocking_count = 0;
    set->wall = frame_answer_own(set->answer, kept, frame_give);
    return set->wall ? FRAME_OK : FRAME_NO_MEMORY;
}

static frame_status solve(const frame_wall_in *in, frame_answer *answer, frame_wall_out *out, frame_working *w) {
    frame_wall_plan plan;
    memset(&plan, 0, sizeof plan);
    plan.passes = 1;
    plan.set = frame_layout_set_new(answer);
    if (!plan.set) return FRAME_NO_MEMORY;
    plan.set->name = frame_answer_text(answer, in->name ? in->name : "wall");
    frame_status status = lay_out(in, &plan, answer, w);
    if (!status) status = keep_in(in, plan.set);
    if (!status) sum_up(&plan, out, w);
    give_plan(&plan);
    return status;
}

FRAME_IMPLEMENT_ANSWER(wall, solve);
