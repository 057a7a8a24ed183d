/* One rafter of a face: its pieces, with every cut of its strip, its seat and what stands on the eave. */
#include "roof/members_rafter.h"
#include "base/error.h"

/* -- what it is -- */

static frame_roof_member kind_of(frame_roof_line_kind lower, frame_roof_line_kind upper, members_standing_at where) {
    const int high = upper == FRAME_LINE_RIDGE || upper == FRAME_LINE_WALL || upper == FRAME_LINE_BREAK;
    if (where == MEMBERS_FLYING) return FRAME_MEMBER_FLY_RAFTER;
    if (where == MEMBERS_AT_GABLE) return FRAME_MEMBER_END_RAFTER;
    if (lower == FRAME_LINE_EAVE || lower == FRAME_LINE_BREAK)
        return high ? FRAME_MEMBER_COMMON : upper == FRAME_LINE_HIP ? FRAME_MEMBER_HIP_JACK : FRAME_MEMBER_RAFTER;
    if (lower != FRAME_LINE_VALLEY) return FRAME_MEMBER_RAFTER;
    return high ? FRAME_MEMBER_VALLEY_JACK : upper == FRAME_LINE_HIP ? FRAME_MEMBER_CRIPPLE_JACK : FRAME_MEMBER_RAFTER;
}

static const char *label_of(const members *m, const members_rafter *r, line2 line, int32_t side) {
    const int square = fabs(v2_dot(line.n, r->face->along)) < 1e-9;
    switch (side < 0 ? FRAME_LINE_RIDGE : MEMBERS_SIDE(m, side)->kind) {
        case FRAME_LINE_HIP:
            return "cheek cut at the hip";
        case FRAME_LINE_VALLEY:
            return "cheek cut at the valley";
        case FRAME_LINE_EAVE:
            return square ? "tail plumb cut" : "tail cheek cut";
        case FRAME_LINE_BREAK:
            return "plumb cut at the break";
        case FRAME_LINE_WALL:
            return "plumb cut at the wall";
        case FRAME_LINE_RAKE:
            return "cheek cut at the gable";
        default:
            return square ? "ridge plumb cut" : "cheek cut at the ridge";
    }
}

/* A tail bears on what it and the sub-fascia have in common of their heights. */
static double tail_share(const members *m, const members_face *face) {
    const members_section *fascia = &m->sections[MEMBERS_FASCIA], *own = &m->sections[MEMBERS_RAFTERS];
    double steepest = 0;
    for (size_t i = 0; i < m->faces.count; i++) steepest = fmax(steepest, MEMBERS_FACE(m, i)->slope);
    const double top = steepest * fascia->thickness, plumb = own->depth * sqrt(1 + face->slope * face->slope);
    const double tail = m->fall > 0 ? plumb : fmin(plumb, m->height); /* without overhang the seat takes the rest */
    return 0.95 * fmax(0, fmin(top + fascia->depth, tail) - top) / tail;
}

/* What stands proud of a member does not bear on it: jacks of a valley, and those of the flatter roof on a member that
 * is dropped for the steeper one. */
static double proud_share(const members_rafter *r, const members_side *side) {
    const double drop = MEMBERS_RUN(r->m, side->run)->drop;
    const double proud = drop + side->off * r->face->slope * v2_dot(r->face->up, side->line.n);
    const double plumb = r->m->sections[MEMBERS_RAFTERS].depth * sqrt(1 + r->face->slope * r->face->slope);
    return fmin(1, fmax(0, proud) / plumb);
}

/* Over the corner of the walls a valley is notched for their plates, and what is cut against it there bears on less. */
static int is_at_seat(const members_rafter *r, int32_t side) {
    const members_run *run = MEMBERS_RUN(r->m, MEMBERS_SIDE(r->m, side)->run);
    const members_section *section = &r->m->sections[run->section];
    if (run->kind != FRAME_LINE_VALLEY) return 0;
    const frame_roof_solve_point *corner = MEMBERS_POINT(r->m, run->point[0]);
    const double plumb = section->depth * sqrt(1 + run->slope * run->slope);
    const double seat = (plumb - r->m->height) / run->slope; /* of the valley, along it in plan */
    v2 at;
    if (!line2_meet((line2){r->face->along, r->place}, members_line_of(r->m, side), &at)) return 0;
    return v2_dot(run->dir, v2_less(at, (v2){corner->x_in, corner->y_in})) < seat + section->thickness + r->half;
}

static frame_status add_cut(const members_rafter *r, const struct members_rafter_cut *cut) {
    members *m = r->m;
    const frame_roof_line_kind kind = cut->side < 0 ? FRAME_LINE_RIDGE : MEMBERS_SIDE(m, cut->side)->kind;
    const int bears = cut->side < 0 || MEMBERS_SIDE(m, cut->side)->run >= 0 || MEMBERS_SIDE(m, cut->side)->off > 0;
    double share = bears ? 0.95 : 0;
    if (cut->side >= 0 && MEMBERS_SIDE(m, cut->side)->run >= 0) {
        share *= 1 - proud_share(r, MEMBERS_SIDE(m, cut->side));
        if (is_at_seat(r, cut->side)) share *= 0.85 / 0.95;
    }
    if (kind == FRAME_LINE_EAVE) share = tail_share(m, r->face);
    if (cut->side < 0) share = (cut->beside ? 0.75 : 0.95) * cut->part;
    const char *label = cut->beside ? "cheek cut" : label_of(m, r, cut->line, cut->side);
    return members_add_upright(m, cut->line, r->face->along, label, share) ? FRAME_OK : FRAME_NO_MEMORY;
}

static frame_status add_notch(const members_rafter *r, const struct members_rafter_notch *notch) {
    for (int i = 0; i < notch->count; i++) {
        const char *label = notch->side < 0 ? "notch at the ridge" : "double cheek";
        if (!members_add_upright(r->m, line2_turned(notch->lines[i]), r->face->along, label, 0)) return FRAME_NO_MEMORY;
    }
    members_make_notch(r->m, notch->count, FRAME_STICK_NOTCH);
    return FRAME_OK;
}

/* Whether its place is over the plate of an eave: that runs on past an inner corner of the walls, mitred, by its width.
 */
static int is_over_plate(const members_rafter *r, const members_side *eave) {
    const int forward = v2_dot(r->face->along, v2_less(eave->q, eave->p)) > 0;
    const int32_t beside[2] = {forward ? eave->prev : eave->next, forward ? eave->next : eave->prev};
    double past[2];
    for (int end = 0; end < 2; end++)
        past[end] = MEMBERS_SIDE(r->m, beside[end])->kind == FRAME_LINE_VALLEY ? r->m->in->plate_width_in : 0;
    return r->place > eave->low - past[0] - r->half + 1e-6 && r->place < eave->high + past[1] + r->half - 1e-6;
}

/* The eave over whose plate it lies, so low that it is cut there; NULL when it is cut by none. */
static const members_side *seat_of(const members_rafter *r, double low, double high) {
    const double slope = r->face->slope, plumb = r->m->sections[MEMBERS_RAFTERS].depth * sqrt(1 + slope * slope);
    const double seat = (plumb - r->m->height) / slope;
    for (int32_t i = r->face->first; i < r->face->first + r->face->count; i++) {
        const members_side *side = MEMBERS_SIDE(r->m, i);
        if (side->kind != FRAME_LINE_EAVE) continue;
        const double wall = side->line.at + side->overhang;
        if (low > wall + seat - 1e-6 || high < wall + 1.5 || !is_over_plate(r, side)) continue;
        return side;
    }
    return NULL;
}

static frame_status add_birdsmouth(const members_rafter *r, line2 wall, double area) {
    members *m = r->m;
    const v2 point = v2_times(wall.n, wall.at);
    members_cut *seat = members_add_cut(m, FRAME_STICK_SEAT, (vec3){point.x, point.y, 0}, (vec3){0, 0, -1}, "seat");
    if (!seat) return FRAME_NO_MEMORY;
    seat->area = area;
    if (!members_add_cut(m, FRAME_STICK_HEEL_CUT, (vec3){point.x, point.y, 0}, (vec3){wall.n.x, wall.n.y, 0}, "heel"))
        return FRAME_NO_MEMORY;
    members_make_notch(m, 2, FRAME_STICK_BIRDSMOUTH);
    return FRAME_OK;
}

/* At an inner corner of the walls a rafter may lie over the plate of the other wall too, outside its own building line.
 */
static frame_status add_second_seat(const members_rafter *r, const members_side *eave) {
    const line2 own = line2_moved(eave->line, eave->overhang);
    for (int end = 0; end < 2; end++) {
        const members_side *beside = MEMBERS_SIDE(r->m, end ? eave->next : eave->prev);
        const int32_t point = end ? eave->to : eave->from;
        if (beside->kind != FRAME_LINE_VALLEY) continue;
        for (size_t i = 0; i < r->m->sides.count; i++) {
            const members_side *other = MEMBERS_SIDE(r->m, i);
            if (other == eave || other->kind != FRAME_LINE_EAVE || (other->from != point && other->to != point))
                continue;
            const line2 wall = line2_moved(other->line, other->overhang);
            polygon2 over = r->strip;
            polygon2_keep(&over, line2_turned(own));
            polygon2_keep(&over, wall);
            if (polygon2_area(&over) > 1e-6) return add_birdsmouth(r, wall, 0);
        }
    }
    return FRAME_OK;
}

static frame_status add_seat(const members_rafter *r, const members_side *eave) {
    const line2 wall = line2_moved(eave->line, eave->overhang);
    double low, high;
    polygon2_range(&r->strip, wall.n, &low, &high);
    const int whole = low < wall.at + 1e-6 && r->place > eave->low + r->half && r->place < eave->high - r->half;
    const frame_status status = add_birdsmouth(r, wall, whole ? 1.5 * 2 * r->half : 0);
    return status ? status : add_second_seat(r, eave);
}

/* Seen from the eave: the side on which the waste of its last cheek lies. */
static frame_hand hand_of(const members_rafter *r) {
    frame_hand hand = FRAME_NOT_GIVEN_INT;
    for (int i = 0; i < r->cut_count; i++) {
        const v2 waste = v2_times(r->cuts[i].line.n, -1);
        const double left = v2_dot(waste, v2_left(r->face->up));
        if (fabs(left) < 1e-9) continue;
        if (hand == FRAME_NOT_GIVEN_INT || v2_dot(waste, r->face->up) > 0)
            hand = left > 0 ? FRAME_HAND_LEFT : FRAME_HAND_RIGHT;
    }
    return hand;
}

static frame_status add_pieces(const members_rafter *r, frame_roof_member kind, const members_side *eave) {
    members *m = r->m;
    double low, high;
    polygon2_range(&r->strip, r->face->up, &low, &high);
    const double past = 8 + 2 * m->sections[MEMBERS_RAFTERS].depth * (1 + r->face->slope);
    const v2 at = v2_times(r->face->along, r->place);
    const v2 from = v2_add(at, v2_times(r->face->up, low - past)), to = v2_add(at, v2_times(r->face->up, high + past));
    members_piece *piece =
        members_add_piece(m, kind, MEMBERS_RAFTERS, (vec3){from.x, from.y, members_plane(r->face, from)},
                          (vec3){to.x, to.y, members_plane(r->face, to)});
    if (!piece) return FRAME_NO_MEMORY;
    piece->face = r->face->face;
    piece->edge = eave ? eave->edge : -1;
    piece->hand = hand_of(r);
    frame_status status = FRAME_OK;
    for (int i = 0; i < r->cut_count && !status; i++) status = add_cut(r, &r->cuts[i]);
    for (int i = 0; i < r->notch_count && !status; i++) status = add_notch(r, &r->notches[i]);
    return status || !eave ? status : add_seat(r, eave);
}

/* What stands on the eave, for what goes between. */
static frame_status stand(const members_rafter *r, frame_roof_member kind, const members_side *eave, double high) {
    const members_standing standing = {.face = r->m->face_of[r->face->face],
                                       .edge = eave->edge,
                                       .common = kind == FRAME_MEMBER_COMMON,
                                       .place = r->place,
                                       .half = r->half,
                                       .top = high};
    return frame_array_push(&r->m->standing, &standing) ? FRAME_OK : FRAME_NO_MEMORY;
}

frame_status members_add_rafter(members *m, const members_face *face, double place, const members_crossing *lower,
                                const members_crossing *upper, members_standing_at where, int *added) {
    members_rafter r = {.m = m, .face = face, .place = place, .half = m->sections[MEMBERS_RAFTERS].thickness / 2};
    double low, high;
    for (int i = 0; i < 4; i++) {
        const double across = place + (i == 1 || i == 2 ? r.half : -r.half);
        const double up = i < 2 ? lower->up - 60 : upper->up + 60;
        r.strip.corners[i] = v2_add(v2_times(face->along, across), v2_times(face->up, up));
    }
    r.strip.count = 4;
    *added = 0;
    if (!members_cut_strip(&r, lower->side, upper->side)) return FRAME_OK;
    polygon2_range(&r.strip, face->up, &low, &high);
    const frame_roof_line_kind from = MEMBERS_SIDE(m, lower->side)->kind, to = MEMBERS_SIDE(m, upper->side)->kind;
    const members_side *eave = where == MEMBERS_FLYING ? NULL : seat_of(&r, fmax(low, lower->up - 2 * r.half), high);
    const int seated = eave && low <= eave->line.at + eave->overhang + 1e-6;
    if ((from == FRAME_LINE_EAVE && !seated && where != MEMBERS_FLYING) || upper->up - lower->up < 3) return FRAME_OK;
    const int at_head =
        r.cut_count && r.cuts[r.cut_count - 1].side < 0 && !r.cuts[r.cut_count - 1].beside && r.notch_count == 0;
    const frame_roof_member kind = kind_of(from, at_head ? FRAME_LINE_RIDGE : to, where);
    const members_laid laid = {m->face_of[face->face], 0, place, low, high};
    if (!frame_array_push(&m->laid, &laid)) return FRAME_NO_MEMORY;
    *added = 1;
    const frame_status status = add_pieces(&r, kind, eave);
    return status || !seated ? status : stand(&r, kind, eave, high);
}
