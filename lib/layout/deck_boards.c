/* Deck boards: across the joists from the outer edge to the house, or diagonally; a border mitred at the outer corners.
 */
#include <math.h>
#include <stdlib.h>

#include "base/error.h"
#include "layout/deck.h"

frame_layout_section frame_deck_board_of(frame_deck_plan *plan, double width) {
    const double thick = plan->in->board_thickness_in;
    return (frame_layout_section){thick, width, FRAME_NOT_GIVEN_INT, frame_layout_measures(plan->answer, thick, width),
                                  FRAME_KNOWN_USER};
}

static int ascending(const void *a, const void *b) {
    const double first = *(const double *)a, second = *(const double *)b;
    return (first > second) - (first < second);
}

/* The middles of the joists under a row; of one on a rim or ledger, those that come to it. */
static int joists_under(const frame_platform *p, double x, frame_array *middles) {
    const double near = FRAME_PLATFORM_BAY(p, 0)->from, far = FRAME_PLATFORM_BAY(p, p->bays.count - 1)->to;
    x = fmin(fmax(x, near), far);
    middles->count = 0;
    for (size_t i = 0; i < p->members.count; i++) {
        const frame_platform_member *member = FRAME_PLATFORM_MEMBER(p, i);
        const double middle = member->y + p->t / 2;
        if (member->from <= x && member->to >= x && !frame_array_push(middles, &middle)) return 0;
    }
    if (middles->count) qsort(middles->items, middles->count, sizeof(double), ascending);
    return 1;
}

/* An opening that takes part of a board's width is notched out of it; one that takes all of it ends the row. */
static void notch(frame_deck_plan *plan, const frame_platform_hole *hole, double low, double high, double from,
                  double to, frame_layout_piece *piece) {
    if (hole->x + hole->length <= low + 1e-9 || hole->x >= high - 1e-9) return;
    const double begin = fmax(hole->y, from), end = fmin(hole->y + hole->width, to);
    if (end - begin < 1e-9) return;
    const int upper = hole->x > low; /* it takes the board's outer part */
    frame_layout_set *set = plan->platform.set;
    const double x = upper ? hole->x : hole->x + hole->length;
    const struct {
        vec3 point, waste;
        frame_stick_role role;
    } planes[3] = {{{x, 0, 0}, {upper ? 1 : -1, 0, 0}, FRAME_STICK_LAP_FACE},
                   {{0, begin, 0}, {0, 1, 0}, FRAME_STICK_SHOULDER},
                   {{0, end, 0}, {0, -1, 0}, FRAME_STICK_SHOULDER}};
    const int number = (int)piece->cut_count / 3 + 1;
    for (int i = 0; i < 3; i++) {
        frame_layout_cut *cut = frame_layout_add_cut(set, planes[i].role, planes[i].point, planes[i].waste, "notch");
        if (cut) cut->notch = number, cut->notch_kind = FRAME_STICK_NOTCH;
    }
}

static void add_board(frame_deck_plan *plan, frame_deck_field *f, const frame_layout_section *section, double low,
                      double from, double to) {
    const double x = low + section->depth / 2;
    frame_layout_piece *piece =
        frame_platform_add(&plan->platform, FRAME_STAGE_BOARDS, FRAME_PIECE_BOARD, ++f->number, section,
                           (vec3){x, from, f->z}, (vec3){x, to, f->z}, (vec3){1, 0, 0});
    frame_deck_buy(plan, to - from);
    for (size_t i = 0; piece && i < plan->platform.holes.count; i++)
        notch(plan, FRAME_PLATFORM_HOLE(&plan->platform, i), low, low + section->depth, from, to, piece);
}

/* A stretch of a row without a break. */
static frame_status add_stretch(frame_deck_plan *plan, frame_deck_field *f, const frame_layout_section *section,
                                double low, double from, double to, const frame_array *middles,
                                const frame_array *beside, frame_array *joints) {
    const size_t before = joints->count;
    int made = frame_deck_joints(plan, middles->items, (int)middles->count, from, to, beside, joints);
    const frame_array none = {.item_size = sizeof(double)};
    if (made < 0) made = frame_deck_joints(plan, middles->items, (int)middles->count, from, to, &none, joints);
    if (plan->answer->failed) return FRAME_NO_MEMORY;
    if (made < 0)
        return frame_fail_number(FRAME_IMPOSSIBLE, "board_stock_in", plan->stock[plan->stock_count - 1],
                                 "boards that reach from joist to joist");
    /* They were found from the far end. */
    double at = from;
    for (size_t i = joints->count; i-- > before;) {
        add_board(plan, f, section, low, at, FRAME_ITEM(double, *joints, i));
        at = FRAME_ITEM(double, *joints, i);
    }
    add_board(plan, f, section, low, at, to);
    return FRAME_OK;
}

/* Openings that take the whole width of a row, in order; the row goes on between them. */
static int whole_gaps(const frame_platform *p, double low, double high, frame_array *gaps) {
    gaps->count = 0;
    for (size_t i = 0; i < p->holes.count; i++) {
        const frame_platform_hole *hole = FRAME_PLATFORM_HOLE(p, i);
        const double pair[2] = {hole->y, hole->y + hole->width};
        if (hole->x <= low + 1e-9 && hole->x + hole->length >= high - 1e-9 && !frame_array_push(gaps, pair)) return 0;
    }
    if (gaps->count) qsort(gaps->items, gaps->count, 2 * sizeof(double), ascending);
    return 1;
}

typedef struct row_room {
    frame_array middles, gaps, beside, joints;
} row_room;

static frame_status add_row(frame_deck_plan *plan, frame_deck_field *f, const frame_layout_section *section, double low,
                            row_room *room) {
    const frame_platform *p = &plan->platform;
    if (!joists_under(p, low + section->depth / 2, &room->middles) ||
        !whole_gaps(p, low, low + section->depth, &room->gaps))
        return FRAME_NO_MEMORY;
    double from = f->y0;
    frame_status status = FRAME_OK;
    for (size_t i = 0; !status && i <= room->gaps.count; i++) {
        const double *gap = i < room->gaps.count ? (const double *)room->gaps.items + 2 * i : NULL;
        const double to = gap ? gap[0] : f->y1;
        if (to - from > 1e-6)
            status = add_stretch(plan, f, section, low, from, to, &room->middles, &room->beside, &room->joints);
        if (gap) from = gap[1];
    }
    const frame_array kept = room->beside;
    room->beside = room->joints;
    room->joints = kept;
    room->joints.count = 0;
    plan->rows++;
    return status;
}

/* From the outer edge to the house; the last is ripped to what is left. */
static frame_status add_straight(frame_deck_plan *plan, frame_deck_field *f) {
    const double width = plan->in->board_width_in, gap = plan->in->board_gap_in;
    if ((f->x1 - f->x0) / width > 2000)
        return frame_fail_number(FRAME_TOO_LARGE, "board_width_in", width, "wider: at most 2,000 rows of boards");
    row_room room = {{.item_size = sizeof(double)},
                     {.item_size = 2 * sizeof(double)},
                     {.item_size = sizeof(double)},
                     {.item_size = sizeof(double)}};
    frame_status status = FRAME_OK;
    for (double high = f->x1; !status && high - f->x0 > 0.5; high -= width + gap) {
        const double low = fmax(high - width, f->x0);
        frame_layout_section section = f->section;
        if (high - low < width - 1e-6) section = frame_deck_board_of(plan, high - low);
        plan->last_board = high - low;
        status = add_row(plan, f, &section, low, &room);
    }
    if (plan->last_board < 2 - 1e-9) plan->cautions |= FRAME_BIT(FRAME_DECK_CAUTION_RIP);
    frame_array_give(&room.middles);
    frame_array_give(&room.gaps);
    frame_array_give(&room.beside);
    frame_array_give(&room.joints);
    return status;
}

/* A border board along a side, its waste beyond the mitres at its ends given as planes. */
static void add_border(frame_deck_plan *plan, int number, const frame_layout_section *section, vec3 start, vec3 end,
                       vec3 crown, const vec3 *mitre_points, const vec3 *mitre_wastes, int mitres, double length,
                       double short_point) {
    frame_layout_piece *piece =
        frame_platform_add(&plan->platform, FRAME_STAGE_BOARDS, FRAME_PIECE_BORDER, number, section, start, end, crown);
    if (!piece) return;
    for (int i = 0; i < mitres; i++)
        frame_layout_add_cut(plan->platform.set, FRAME_STICK_MITRE_CUT, mitre_points[i], mitre_wastes[i], "mitre");
    piece->length = length;
    piece->short_point = short_point;
    piece->end_deg = 45;
    piece->start_deg = mitres > 1 ? 45 : 0;
    frame_deck_buy(plan, length);
    if (length > plan->stock[plan->stock_count - 1] + 1e-9) plan->cautions |= FRAME_BIT(FRAME_DECK_CAUTION_LONG);
}

static void add_borders(frame_deck_plan *plan, frame_deck_field *f) {
    const double w = plan->in->board_width_in, gap = plan->in->board_gap_in, z = f->z;
    const vec3 corner[2] = {{f->x1, f->y0, 0}, {f->x1, f->y1, 0}};
    const vec3 past_far[2] = {{-1, -1, 0}, {-1, 1, 0}}; /* of the board along the outer edge */
    const double out = f->x1 - f->x0, across = f->y1 - f->y0;
    add_border(plan, 1, &f->section, (vec3){f->x1 - w / 2, f->y0, z}, (vec3){f->x1 - w / 2, f->y1, z}, (vec3){1, 0, 0},
               corner, past_far, 2, across, across - 2 * w);
    for (int side = 0; side < 2; side++) {
        const double y = side ? f->y1 - w / 2 : f->y0 + w / 2;
        const vec3 waste = vec_times(past_far[side], -1);
        add_border(plan, 2 + side, &f->section, (vec3){f->x0, y, z}, (vec3){f->x1, y, z}, (vec3){0, 1, 0},
                   &corner[side], &waste, 1, out, out - w);
    }
    f->x1 -= w + gap;
    f->y0 += w + gap;
    f->y1 -= w + gap;
    plan->cautions |= FRAME_BIT(FRAME_DECK_CAUTION_FRAME);
}

static void check_spacing(frame_deck_plan *plan) {
    const double thick = plan->in->board_thickness_in, spacing = plan->in->spacing_in;
    const int diagonal = plan->in->pattern == FRAME_DECK_DIAGONAL;
    /* True thickness: 5/4 boards are 1 in, 2x boards 1-1/2 in. */
    const double most = thick < 1 - 1e-9 ? 0 : thick < 1.5 - 1e-9 ? (diagonal ? 12 : 16) : diagonal ? 16 : 24;
    if (spacing > most + 1e-9) plan->cautions |= FRAME_BIT(FRAME_DECK_CAUTION_SPACING);
}

frame_status frame_deck_add_boards(frame_deck_plan *plan) {
    const frame_deck_in *in = plan->in;
    const double oh = in->overhang_in;
    frame_deck_field f = {0,
                          in->length_in + oh,
                          -oh,
                          in->width_in + oh,
                          plan->top + in->board_thickness_in / 2,
                          frame_deck_board_of(plan, in->board_width_in),
                          0};
    if (in->pattern == FRAME_DECK_BARE) return FRAME_OK;
    check_spacing(plan);
    if (in->pattern == FRAME_DECK_DIAGONAL && in->opening_count)
        return frame_fail(FRAME_OUTSIDE_SCOPE, "pattern", "diagonal",
                          "straight or picture frame where there are openings",
                          "pattern: diagonal boards round openings are not laid out");
    if (in->pattern == FRAME_DECK_FRAME) add_borders(plan, &f);
    if (f.x1 - f.x0 <= 0.5 || f.y1 - f.y0 <= 0.5)
        return frame_fail_number(FRAME_IMPOSSIBLE, "board_width_in", in->board_width_in, "narrower than the deck");
    if (in->pattern != FRAME_DECK_DIAGONAL) return add_straight(plan, &f);
    if ((f.x1 - f.x0 + f.y1 - f.y0) / in->board_width_in > 2000)
        return frame_fail_number(FRAME_TOO_LARGE, "board_width_in", in->board_width_in, "wider: at most 2,000 boards");
    frame_deck_add_diagonal(plan, &f);
    return FRAME_OK;
}
