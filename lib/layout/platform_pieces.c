/* The pieces of a floor or deck's frame, and the hangers they take. */
#include <math.h>
#include <stdlib.h>

#include "base/error.h"
#include "layout/platform.h"
#include "layout_facts.h"

static void add_hanger(frame_platform *p, double x, double y, double thickness, frame_piece_kind carries,
                       frame_piece_kind on, int stage) {
    frame_floor_hanger hanger;
    frame_struct_blank(&frame_floor_hanger_facts, &hanger);
    hanger.x_in = x;
    hanger.y_in = y;
    hanger.thickness_in = thickness;
    hanger.depth_in = p->d;
    hanger.carries = carries;
    hanger.on = on;
    hanger.stage = stage;
    if (!frame_array_push(&p->hangers, &hanger)) p->failed = 1;
}

/* The farthest joist whose middle a rim may be joined over; the end when the stock reaches it. */
static double rim_joint(const frame_platform *p, double from) {
    const double most = from + p->stock;
    double best = FRAME_NOT_GIVEN;
    if (most >= p->width - 1e-9) return p->width;
    for (size_t i = 0; i < p->members.count; i++) {
        const double middle = FRAME_PLATFORM_MEMBER(p, i)->y + p->t / 2;
        if (middle > from + 1 && middle <= most + 1e-9 && middle > best) best = middle;
    }
    return best == FRAME_NOT_GIVEN ? most : best;
}

static void add_rim(frame_platform *p, int far, int *rims, int *ledgers) {
    const int ledger = p->ends[far] == FRAME_JOIST_END_LEDGER;
    const double thickness = frame_platform_end(p, far), x = far ? p->span - thickness / 2 : thickness / 2;
    frame_layout_section section = p->joist;
    if (fabs(thickness - p->t) > 1e-9)
        section = (frame_layout_section){thickness, p->d, FRAME_NOT_GIVEN_INT,
                                         frame_layout_measures(p->set->answer, thickness, p->d), p->joist.known};
    for (double from = 0, to; from < p->width - 1e-9; from = to) {
        to = rim_joint(p, from);
        frame_platform_add(p, ledger ? FRAME_STAGE_SUPPORTS : FRAME_STAGE_RIMS,
                           ledger ? FRAME_PIECE_LEDGER : FRAME_PIECE_RIM, ledger ? ++*ledgers : ++*rims, &section,
                           (vec3){x, from, p->d / 2}, (vec3){x, to, p->d / 2}, (vec3){0, 0, 1});
    }
}

void frame_platform_add_rims(frame_platform *p) {
    int rims = 0, ledgers = 0;
    /* Ledgers go up before rims. */
    for (int turn = 0; turn < 2; turn++)
        for (int far = 0; far < 2; far++)
            if ((p->ends[far] == FRAME_JOIST_END_LEDGER) == (turn == 0)) add_rim(p, far, &rims, &ledgers);
}

/* Hangers at ledgers and at headers; end joists hang too. Plies side by side share one: it is asked for by the first.
 */
static void hang(frame_platform *p, const frame_platform_member *member, int plies, int stage) {
    const double y = member->y + plies * p->t / 2, thickness = plies * p->t, slack = p->gap + 1e-6;
    const int tail = member->kind == FRAME_PIECE_TAIL;
    if (p->ends[0] == FRAME_JOIST_END_LEDGER && member->from < p->ledger + slack)
        add_hanger(p, p->ledger, y, thickness, member->kind, FRAME_PIECE_LEDGER, stage);
    if (p->ends[1] == FRAME_JOIST_END_LEDGER && member->to > p->span - p->ledger - slack)
        add_hanger(p, p->span - p->ledger, y, thickness, member->kind, FRAME_PIECE_LEDGER, stage);
    if (!tail) return;
    const frame_platform_hole *hole = FRAME_PLATFORM_HOLE(p, member->hole);
    const double reach = hole->headers * p->t,
                 x = member->to < hole->x ? hole->x - reach : hole->x + hole->length + reach;
    add_hanger(p, x, y, thickness, member->kind, FRAME_PIECE_HEADER_JOIST, stage);
}

static int by_place(const void *a, const void *b) {
    const frame_platform_member *first = a, *second = b;
    if (first->y != second->y) return first->y < second->y ? -1 : 1;
    return (first->from > second->from) - (first->from < second->from);
}

/* How many plies of one group stand side by side from here on; 0 for one that is not the first. */
static int plies_from(const frame_platform *p, size_t index) {
    const frame_platform_member *here = FRAME_PLATFORM_MEMBER(p, index);
    int plies = 1;
    if (here->kind == FRAME_PIECE_JOIST || here->kind == FRAME_PIECE_TAIL) return 1;
    for (size_t i = 0; i < p->members.count; i++) {
        const frame_platform_member *other = FRAME_PLATFORM_MEMBER(p, i);
        if (other->kind != here->kind || other->bay != here->bay || other->hole != here->hole) continue;
        if (fabs(other->y - here->y + p->t) < 1e-6) return 0;
    }
    for (int grown = 1; grown;) {
        grown = 0;
        for (size_t i = 0; i < p->members.count; i++) {
            const frame_platform_member *other = FRAME_PLATFORM_MEMBER(p, i);
            if (other->kind == here->kind && other->bay == here->bay && other->hole == here->hole &&
                fabs(other->y - here->y - plies * p->t) < 1e-6) {
                plies++;
                grown = 1;
                break;
            }
        }
    }
    return plies;
}

static void add_kind(frame_platform *p, frame_piece_kind kind, int stage) {
    int number = 0;
    for (size_t i = 0; i < p->members.count; i++) {
        const frame_platform_member *member = FRAME_PLATFORM_MEMBER(p, i);
        if (member->kind != kind) continue;
        const double y = member->y + p->t / 2, z = p->d / 2;
        frame_layout_piece *piece = frame_platform_add(p, stage, kind, ++number, &p->joist, (vec3){member->from, y, z},
                                                       (vec3){member->to, y, z}, (vec3){0, 0, 1});
        if (piece && member->hole >= 0) piece->opening = FRAME_PLATFORM_HOLE(p, member->hole)->index + 1;
        const int plies = plies_from(p, i);
        if (plies) hang(p, member, plies, stage);
    }
}

void frame_platform_add_joists(frame_platform *p) {
    qsort(p->members.items, p->members.count, sizeof(frame_platform_member), by_place);
    add_kind(p, FRAME_PIECE_END_JOIST, FRAME_STAGE_ENDS);
    add_kind(p, FRAME_PIECE_DOUBLE, FRAME_STAGE_ENDS);
    add_kind(p, FRAME_PIECE_TRIMMER, FRAME_STAGE_ENDS);
    frame_platform_add_headers(p);
    add_kind(p, FRAME_PIECE_JOIST, FRAME_STAGE_JOISTS);
    add_kind(p, FRAME_PIECE_TAIL, FRAME_STAGE_JOISTS);
}

static int bay_of_hole(const frame_platform *p, int hole) {
    for (size_t i = 0; i < p->groups.count; i++)
        if (FRAME_PLATFORM_GROUP(p, i)->hole == hole) return FRAME_PLATFORM_GROUP(p, i)->bay;
    return 0;
}

/* Across an end of an opening: its first face at x, plies going away from the opening. */
static void add_header(frame_platform *p, const frame_platform_hole *hole, double x, int away, int *number) {
    const double from = hole->y + p->gap, to = hole->y + hole->width - p->gap, z = p->d / 2;
    for (int i = 0; i < hole->headers; i++) {
        const double middle = x + away * (i + 0.5) * p->t;
        frame_layout_piece *piece =
            frame_platform_add(p, FRAME_STAGE_HEADERS, FRAME_PIECE_HEADER_JOIST, ++*number, &p->joist,
                               (vec3){middle, from, z}, (vec3){middle, to, z}, (vec3){0, 0, 1});
        if (piece) piece->opening = hole->index + 1;
    }
    const double thickness = hole->headers * p->t, middle = x + away * thickness / 2;
    add_hanger(p, middle, hole->y, thickness, FRAME_PIECE_HEADER_JOIST, FRAME_PIECE_TRIMMER, FRAME_STAGE_HEADERS);
    add_hanger(p, middle, hole->y + hole->width, thickness, FRAME_PIECE_HEADER_JOIST, FRAME_PIECE_TRIMMER,
               FRAME_STAGE_HEADERS);
}

void frame_platform_add_headers(frame_platform *p) {
    int number = 0;
    for (size_t i = 0; i < p->holes.count; i++) {
        const frame_platform_hole *hole = FRAME_PLATFORM_HOLE(p, i);
        const frame_platform_bay *bay = FRAME_PLATFORM_BAY(p, bay_of_hole(p, (int)i));
        if (hole->x > bay->from + 1e-9) add_header(p, hole, hole->x, -1, &number);
        if (hole->x + hole->length < bay->to - 1e-9) add_header(p, hole, hole->x + hole->length, 1, &number);
    }
}

int frame_platform_in_hole(const frame_platform *p, double x, double reach, double from, double to) {
    for (size_t i = 0; i < p->holes.count; i++) {
        const frame_platform_hole *hole = FRAME_PLATFORM_HOLE(p, i);
        const double beside = hole->headers * p->t + p->gap + reach;
        if (x > hole->x - beside - 1e-9 && x < hole->x + hole->length + beside + 1e-9 &&
            from < hole->y + hole->width - 1e-9 && to > hole->y + 1e-9)
            return 1;
    }
    return 0;
}

static void add_row(frame_platform *p, double x, int *number) {
    double far = FRAME_NOT_GIVEN;
    const double half = p->t / 2, z = p->d / 2;
    for (size_t i = 0; i < p->members.count; i++) {
        const frame_platform_member *member = FRAME_PLATFORM_MEMBER(p, i);
        if (member->from > x + half - 1e-9 || member->to < x - half + 1e-9) continue;
        if (far != FRAME_NOT_GIVEN && member->y - far > 1 && !frame_platform_in_hole(p, x, half, far, member->y))
            frame_platform_add(p, FRAME_STAGE_BLOCKS, FRAME_PIECE_BLOCK, ++*number, &p->joist, (vec3){x, far, z},
                               (vec3){x, member->y, z}, (vec3){0, 0, 1});
        far = fmax(far, member->y + p->t);
    }
}

frame_status frame_platform_add_blocks(frame_platform *p, const double *rows, size_t count) {
    int number = 0;
    for (size_t i = 0; i < count; i++)
        for (size_t k = 0; k < i; k++)
            if (fabs(rows[i] - rows[k]) < p->t - 1e-9)
                return frame_fail_number(FRAME_IMPOSSIBLE, "blocking_in", rows[i], "rows at least a thickness apart");
    const double near = frame_platform_end(p, 0) + p->t / 2, far = p->span - frame_platform_end(p, 1) - p->t / 2;
    for (size_t i = 0; i < count; i++) {
        if (rows[i] < near - 1e-9 || rows[i] > far + 1e-9)
            return frame_fail_number(FRAME_IMPOSSIBLE, "blocking_in", rows[i], "a place between the rims");
        add_row(p, rows[i], &number);
    }
    return FRAME_OK;
}
