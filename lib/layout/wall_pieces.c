/* The pieces of a wall that stand upright, and those of its openings. */
#include <math.h>
#include <stdlib.h>

#include "layout/wall.h"

static const char *word_of(frame_piece_kind kind) {
    switch (kind) {
        case FRAME_PIECE_KING:
            return "king";
        case FRAME_PIECE_JACK:
            return "jack";
        case FRAME_PIECE_CRIPPLE:
            return "cripple";
        case FRAME_PIECE_BACKING:
            return "backing";
        default:
            return "stud";
    }
}

/* The highest and the lowest place of one end over the width of an upright. */
typedef struct end_span {
    double high, low;
} end_span;

static end_span span_top(const frame_wall_plan *plan, const frame_wall_upright *upright) {
    if (upright->high != FRAME_NOT_GIVEN) return (end_span){upright->high, upright->high};
    const double from = upright->from, to = from + upright->width, ridge = frame_wall_ridge(plan);
    const double first = frame_wall_stud_top(plan, from), last = frame_wall_stud_top(plan, to);
    end_span span = {fmax(first, last), fmin(first, last)};
    if (ridge > from && ridge < to) span.high = frame_wall_stud_top(plan, ridge);
    return span;
}

static end_span span_bottom(const frame_wall_plan *plan, const frame_wall_upright *upright) {
    if (upright->low != FRAME_NOT_GIVEN) return (end_span){upright->low, upright->low};
    const double first = frame_wall_stud_bottom(plan, upright->from, 1);
    const double last = frame_wall_stud_bottom(plan, upright->from + upright->width, -1);
    return (end_span){fmax(first, last), fmin(first, last)};
}

static double degrees(double slope) {
    return atan(slope) / FRAME_DEG;
}

/* Cuts the top to the plates' underside: by one plane, or by two under a peak. */
static void cut_top(const frame_wall_plan *plan, const frame_wall_upright *upright, frame_layout_piece *piece) {
    const double from = upright->from, to = from + upright->width, ridge = frame_wall_ridge(plan);
    if (from < ridge - 1e-9 && plan->slope != 0) {
        frame_layout_add_cut(plan->set, FRAME_STICK_MITRE_CUT, (vec3){from, 0, frame_wall_stud_top(plan, from)},
                             (vec3){-plan->slope, 0, 1}, "top cut");
        piece->end_deg = degrees(plan->slope);
    }
    if (to > ridge + 1e-9 && plan->far_slope != 0) {
        frame_layout_add_cut(plan->set, FRAME_STICK_MITRE_CUT, (vec3){to, 0, frame_wall_stud_top(plan, to)},
                             (vec3){-plan->far_slope, 0, 1}, "top cut");
        if (piece->end_deg == 0) piece->end_deg = degrees(plan->far_slope);
    }
}

static void add_upright(frame_wall_plan *plan, const frame_wall_upright *upright, int number) {
    const end_span top = span_top(plan, upright), bottom = span_bottom(plan, upright);
    const int cut_above = top.high - top.low > 1e-12, cut_below = bottom.high - bottom.low > 1e-12;
    const double x = upright->from + upright->width / 2, y = upright->y + upright->depth / 2, margin = 1;
    const vec3 start = {x, y, bottom.low - (cut_below ? margin : 0)}, end = {x, y, top.high + (cut_above ? margin : 0)};
    const vec3 crown = upright->turned ? (vec3){1, 0, 0} : (vec3){0, 1, 0};
    if (top.high - bottom.low < 1e-9) return;
    frame_layout_piece *piece =
        frame_layout_add(plan->set, upright->kind, word_of(upright->kind), number, &plan->stud, start, end, crown);
    if (!piece) return;
    piece->length = top.high - bottom.low;
    piece->short_point = top.low - bottom.high;
    piece->opening = upright->hole < 0 ? 0 : FRAME_WALL_HOLE(plan, upright->hole)->number;
    if (cut_above) cut_top(plan, upright, piece);
    if (!cut_below) return;
    const double slope = plan->in->bottom_slope;
    frame_layout_add_cut(plan->set, FRAME_STICK_MITRE_CUT,
                         (vec3){upright->from, 0, frame_wall_stud_bottom(plan, upright->from, 1)}, (vec3){slope, 0, -1},
                         "bottom cut");
    piece->start_deg = degrees(slope);
}

static int by_place(const void *a, const void *b) {
    const frame_wall_upright *first = a, *second = b;
    if (first->from != second->from) return first->from < second->from ? -1 : 1;
    if (first->high != second->high) return first->high < second->high ? -1 : 1; /* under a sill before on a header */
    return (first->low > second->low) - (first->low < second->low);
}

/* Studs, kings, jacks and cripples are each numbered along the wall. */
void frame_wall_add_uprights(frame_wall_plan *plan) {
    const frame_piece_kind kinds[] = {FRAME_PIECE_STUD, FRAME_PIECE_BACKING, FRAME_PIECE_KING, FRAME_PIECE_JACK,
                                      FRAME_PIECE_CRIPPLE};
    qsort(plan->uprights.items, plan->uprights.count, sizeof(frame_wall_upright), by_place);
    for (size_t k = 0; k < sizeof kinds / sizeof *kinds; k++) {
        int number = 0;
        for (size_t i = 0; i < plan->uprights.count; i++)
            if (FRAME_WALL_UPRIGHT(plan, i)->kind == kinds[k]) add_upright(plan, FRAME_WALL_UPRIGHT(plan, i), ++number);
    }
}

static frame_layout_piece *add_level(frame_wall_plan *plan, frame_piece_kind kind, const char *name, int number,
                                     const frame_layout_section *section, const frame_wall_hole *hole, vec3 from,
                                     double to, int on_edge) {
    frame_layout_piece *piece =
        frame_layout_add(plan->set, kind, name, number, section, from, (vec3){to, from.y, from.z},
                         on_edge ? (vec3){0, 0, 1} : (vec3){0, 1, 0});
    if (piece) piece->opening = hole->number;
    return piece;
}

/* Plies on edge stand flush with both faces, the filler, or air, between the last two. */
static void add_header_on_edge(frame_wall_plan *plan, const frame_wall_hole *hole, int *number, int *fillers) {
    const double thickness = hole->header.thickness, beside = hole->jacks * plan->t;
    const double gap = plan->d - hole->plies * thickness;
    const double z = hole->header_low + hole->caps * plan->t + hole->header.depth / 2;
    for (int i = 0; i < hole->plies; i++) {
        const int last = i == hole->plies - 1 && hole->plies > 1;
        const double y = last ? plan->d - thickness / 2 : (i + 0.5) * thickness;
        add_level(plan, FRAME_PIECE_HEADER, "header", ++*number, &hole->header, hole, (vec3){hole->from - beside, y, z},
                  hole->to + beside, 1);
    }
    if (!hole->filler || gap < 1e-6 || gap > hole->filler_most + 1e-9) return;
    const double low = (hole->plies > 1 ? hole->plies - 1 : 1) * thickness;
    const frame_layout_section filler = {gap, hole->header.depth, FRAME_NOT_GIVEN_INT,
                                         frame_layout_measures(plan->set->answer, gap, hole->header.depth), 0};
    add_level(plan, FRAME_PIECE_FILLER, "filler", ++*fillers, &filler, hole,
              (vec3){hole->from - beside, low + gap / 2, z}, hole->to + beside, 1);
}

static void add_header_flat(frame_wall_plan *plan, const frame_wall_hole *hole, int *number) {
    const double beside = hole->jacks * plan->t, thickness = hole->header.thickness;
    for (int i = 0; i < hole->plies; i++)
        add_level(plan, FRAME_PIECE_HEADER, "header", ++*number, &hole->header, hole,
                  (vec3){hole->from - beside, hole->header.depth / 2, hole->header_low + (i + 0.5) * thickness},
                  hole->to + beside, 0);
}

/* A stud laid flat under the header, and one on it unless the plates are. */
static void add_caps(frame_wall_plan *plan, const frame_wall_hole *hole, int *number) {
    const double beside = hole->jacks * plan->t, half = plan->t / 2;
    const double above = hole->header_low + plan->t + hole->header.depth;
    for (int i = 0; i < 2; i++)
        if (i == 0 || above < hole->header_top - 1e-9)
            add_level(plan, FRAME_PIECE_HEAD, "header cap", ++*number, &plan->stud, hole,
                      (vec3){hole->from - beside, plan->d / 2, i ? above + half : hole->header_low + half},
                      hole->to + beside, 0);
}

void frame_wall_add_holes(frame_wall_plan *plan) {
    int caps = 0, headers = 0, fillers = 0, sills = 0, heads = 0;
    for (size_t h = 0; h < plan->holes.count; h++) {
        const frame_wall_hole *hole = FRAME_WALL_HOLE(plan, h);
        if (hole->turned == FRAME_TURNED_FLAT)
            add_header_flat(plan, hole, &headers);
        else
            add_header_on_edge(plan, hole, &headers, &fillers);
        if (hole->caps) add_caps(plan, hole, &caps);
        const double head = hole->bottom + hole->head;
        if (hole->header_low > head + 1e-9)
            add_level(plan, FRAME_PIECE_HEAD, "head plate", ++heads, &plan->stud, hole,
                      (vec3){hole->from, plan->d / 2, head + plan->t / 2}, hole->to, 0);
        for (int i = 0; !hole->door && i < hole->sills; i++)
            add_level(plan, FRAME_PIECE_SILL, "sill", ++sills, &plan->stud, hole,
                      (vec3){hole->from, plan->d / 2, hole->bottom + hole->low - (i + 0.5) * plan->t}, hole->to, 0);
    }
}
