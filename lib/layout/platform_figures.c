/* What a layout of joists came to. Its members are in order across the layout. */
#include <math.h>

#include "layout/platform.h"

/* In each bay, from one joist to the next that is beside it, at both ends of the bay and between. */
double frame_platform_widest(const frame_platform *p) {
    double most = 0;
    for (size_t b = 0; b < p->bays.count; b++) {
        const frame_platform_bay *bay = FRAME_PLATFORM_BAY(p, b);
        for (int part = 0; part <= 8; part++) {
            const double x = bay->from + (bay->to - bay->from) * (0.01 + part * 0.98 / 8);
            double last = FRAME_NOT_GIVEN;
            for (size_t i = 0; i < p->members.count; i++) {
                const frame_platform_member *member = FRAME_PLATFORM_MEMBER(p, i);
                if (member->bay != (int)b || x < member->from || x > member->to) continue;
                int open = 0; /* trimmers have the opening between them */
                for (size_t h = 0; h < p->holes.count; h++) {
                    const frame_platform_hole *hole = FRAME_PLATFORM_HOLE(p, h);
                    const double beside = hole->headers * p->t + p->gap;
                    open |= x > hole->x - beside - 1e-9 && x < hole->x + hole->length + beside + 1e-9 &&
                            fabs(member->y - hole->y - hole->width) < 1e-6;
                }
                if (last != FRAME_NOT_GIVEN && !open) most = fmax(most, member->y - last);
                last = member->y;
            }
        }
    }
    return most;
}

/* What a sheet edge that runs along the joists finds of wood in a bay, in one piece or in several set tight. */
static int edge_off(const frame_platform *p, double y, int bay) {
    double from = y, to = y;
    for (size_t i = 0; i < p->members.count; i++) {
        const frame_platform_member *member = FRAME_PLATFORM_MEMBER(p, i);
        if (member->bay == bay && member->y <= to + 1e-9) to = fmax(to, member->y + p->t);
    }
    for (size_t i = p->members.count; i-- > 0;) {
        const frame_platform_member *member = FRAME_PLATFORM_MEMBER(p, i);
        if (member->bay == bay && member->y + p->t >= from - 1e-9) from = fmin(from, member->y);
    }
    return fmin(y - from, to - y) < 0.5 - 1e-9;
}

double frame_platform_shift(const frame_platform *p, int bay) {
    return p->joint == FRAME_JOIST_JOINT_LAPPED && bay % 2 ? p->t : 0;
}

int frame_platform_edges_off(const frame_platform *p) {
    int off = 0;
    for (double k = floor((1e-9 - p->datum) / p->sheet) + 1; p->datum + k * p->sheet < p->width - 0.5; k++) {
        const double y = p->datum + k * p->sheet;
        if (y < 0.5) continue;
        int out = 0;
        for (size_t b = 0; b < p->bays.count; b++) out |= edge_off(p, y - frame_platform_shift(p, (int)b), (int)b);
        off += out;
    }
    return off;
}

/* A stretch past the last beam at an end, 0 where that is held; and the span behind it. */
static double cantilever_at(const frame_platform *p, int far, double *behind) {
    const size_t count = p->beams.count;
    if (p->ends[far] != FRAME_JOIST_END_FREE || count == 0) return 0;
    const double held = p->ends[!far] == FRAME_JOIST_END_LEDGER ? p->ledger : 0;
    const double other = far ? held : p->span - held; /* what carries beyond a single beam */
    const double last = FRAME_PLATFORM_BEAM(p, far ? count - 1 : 0)->at;
    *behind = fabs(last - (count > 1 ? FRAME_PLATFORM_BEAM(p, far ? count - 2 : 1)->at : other));
    return far ? p->span - last : last;
}

double frame_platform_cantilever(const frame_platform *p) {
    double behind;
    return fmax(cantilever_at(p, 0, &behind), cantilever_at(p, 1, &behind));
}

/* The shorter of two may be the one that is too long for the span behind it. */
int frame_platform_overreaches(const frame_platform *p, double most) {
    int over = 0;
    for (int far = 0; far < 2; far++) {
        double behind = 0;
        const double reach = cantilever_at(p, far, &behind);
        over |= reach > 0 && reach > fmin(behind / 4, most) + 1e-9;
    }
    return over;
}

double frame_platform_longest_span(const frame_platform *p) {
    double last = p->ends[0] == FRAME_JOIST_END_LEDGER ? p->ledger : 0, longest = 0;
    int any = p->ends[0] != FRAME_JOIST_END_FREE;
    for (size_t i = 0; i < p->beams.count; i++) {
        const double at = FRAME_PLATFORM_BEAM(p, i)->at;
        if (any) longest = fmax(longest, at - last);
        last = at;
        any = 1;
    }
    if (p->ends[1] == FRAME_JOIST_END_FREE) return longest;
    return fmax(longest, (p->ends[1] == FRAME_JOIST_END_LEDGER ? p->span - p->ledger : p->span) - last);
}

double frame_platform_area(const frame_platform *p) {
    double area = p->span * p->width;
    for (size_t i = 0; i < p->holes.count; i++)
        area -= FRAME_PLATFORM_HOLE(p, i)->length * FRAME_PLATFORM_HOLE(p, i)->width;
    return area;
}

int frame_platform_joists(const frame_platform *p) {
    return (int)p->members.count;
}

int frame_platform_bridged(const frame_platform *p) {
    int struts = 0;
    for (size_t i = 0; i < p->set->pieces.count; i++)
        struts += FRAME_LAYOUT_PIECE(p->set, i)->kind == FRAME_PIECE_BRIDGING;
    return struts / 2;
}

int frame_platform_joints(const frame_platform *p) {
    int joints = 0;
    for (size_t i = 0; i < p->members.count; i++) {
        const frame_platform_member *member = FRAME_PLATFORM_MEMBER(p, i);
        const frame_platform_bay *bay = FRAME_PLATFORM_BAY(p, member->bay);
        joints += bay->joint_after && member->to >= bay->to - 1e-9;
    }
    return joints;
}
