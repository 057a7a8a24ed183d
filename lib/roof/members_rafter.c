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
static double tail_share(const members *m, const members_face *face, const members_side *eave) {
    const members_section *fascia = &m->sections[MEMBERS_FASCIA], *own = &m->sections[MEMBERS_RAFTERS];
    double steepest = 0;
    for (size_t i = 0; i < m->faces.count; i++) steepest = fmax(steepest, MEMBERS_FACE(m, i)->slope);
    const double top = steepest * fascia->thickness, plumb = own->depth * sqrt(1 + face->slope * face->slope);
    const double tail =
        eave->overhang > 0 ? plumb : fmin(plumb, m->height); /* without overhang the seat takes the rest */
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

/* Over the wall a valley is notched for the plates, and so is a hip that crosses one wall only; what is cut against
 * them there bears on less. */
static double share_at_seat(const members_rafter *r, int32_t side) {
    const members_run *run = MEMBERS_RUN(r->m, MEMBERS_SIDE(r->m, side)->run);
    const members_section *section = &r->m->sections[run->section];
    const int32_t corners = (int32_t)(r->m->in->corner_count + r->m->in->hole_count);
    const int hip = run->kind == FRAME_LINE_HIP && run->point[0] >= corners;
    if ((run->kind != FRAME_LINE_VALLEY && !hip) || run->slope == 0) return 1;
    const frame_roof_solve_point *corner = MEMBERS_POINT(r->m, run->point[0]);
    const double plumb = section->depth * sqrt(1 + run->slope * run->slope);
    const double seat = (plumb - r->m->height) / run->slope; /* along it in plan */
    v2 at;
    if (!line2_meet((line2){r->face->along, r->place}, members_line_of(r->m, side), &at)) return 1;
    if (v2_dot(run->dir, v2_less(at, (v2){corner->x_in, corner->y_in})) > seat + section->thickness + r->half) return 1;
    return hip ? 0.65 / 0.95 : 0.85 / 0.95;
}

static frame_status add_cut(const members_rafter *r, const struct members_rafter_cut *cut) {
    members *m = r->m;
    const frame_roof_line_kind kind = cut->side < 0 ? FRAME_LINE_RIDGE : MEMBERS_SIDE(m, cut->side)->kind;
    const int bears = cut->side < 0 || MEMBERS_SIDE(m, cut->side)->run >= 0 || MEMBERS_SIDE(m, cut->side)->off > 0;
    double share = bears ? 0.95 : 0;
    if (cut->side >= 0 && MEMBERS_SIDE(m, cut->side)->run >= 0) {
        share *= 1 - proud_share(r, MEMBERS_SIDE(m, cut->side));
        share *= share_at_seat(r, cut->side);
    }
    if (kind == FRAME_LINE_EAVE) share = tail_share(m, r->face, MEMBERS_SIDE(m, cut->side));
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

/* How far up the face the shorter of its upper edges reaches. */
static double short_end(const members_rafter *r) {
    double high[2] = {-HUGE_VAL, -HUGE_VAL};
    for (int i = 0; i < r->strip.count; i++) {
        const double across = v2_dot(r->face->along, r->strip.corners[i]) - r->place;
        for (int k = 0; k < 2; k++)
            if (fabs(across - (k ? r->half : -r->half)) < 1e-6)
                high[k] = fmax(high[k], v2_dot(r->face->up, r->strip.corners[i]));
    }
    return fmin(high[0], high[1]);
}

/* The eave over whose plate it lies, so low that it is cut there; NULL when it is cut by none. */
static const members_side *seat_of(const members_rafter *r, double low) {
    const double slope = r->face->slope, plumb = r->m->sections[MEMBERS_RAFTERS].depth * sqrt(1 + slope * slope);
    const double seat = (plumb - r->m->height) / slope;
    for (int32_t i = r->face->first; i < r->face->first + r->face->count; i++) {
        const members_side *side = MEMBERS_SIDE(r->m, i);
        if (side->kind != FRAME_LINE_EAVE) continue;
        const double wall = side->line.at + side->overhang;
        if (low > wall + seat - 1e-6 || short_end(r) < wall + 1.5 - 1e-9 || !is_over_plate(r, side)) continue;
        return side;
    }
    return NULL;
}

static frame_status add_birdsmouth(const members_rafter *r, double plate, const line2 *lines, int count, double area) {
    members *m = r->m;
    const v2 on = v2_times(lines[0].n, lines[0].at);
    members_cut *seat = members_add_cut(m, FRAME_STICK_SEAT, (vec3){on.x, on.y, plate}, (vec3){0, 0, -1}, "seat");
    if (!seat) return FRAME_NO_MEMORY;
    seat->area = area;
    for (int i = 0; i < count; i++) {
        const v2 point = v2_times(lines[i].n, lines[i].at);
        if (!members_add_cut(m, FRAME_STICK_HEEL_CUT, (vec3){point.x, point.y, 0},
                             (vec3){lines[i].n.x, lines[i].n.y, 0}, "heel"))
            return FRAME_NO_MEMORY;
    }
    members_make_notch(m, 1 + count, FRAME_STICK_BIRDSMOUTH);
    return FRAME_OK;
}

/* Where it lies over the plate of another wall than its own: one as high or lower takes of it what lies outside its own
 * building line; a higher one is notched out where it stands. */
static frame_status clear_plate(const members_rafter *r, const members_side *eave, const members_plate *plate) {
    const double slope = r->face->slope, plumb = r->m->sections[MEMBERS_RAFTERS].depth * sqrt(1 + slope * slope);
    polygon2 over = r->strip;
    const int low = eave && plate->z <= eave->plate + 1e-9;
    line2 lines[3] = {plate->wall, plate->ends[0], plate->ends[1]};
    if (low) polygon2_keep(&over, line2_turned(members_wall(eave)));
    const double common = members_common_area(&over, &plate->plan);
    if (common < 1e-6) return FRAME_OK;
    double bottom, top;
    polygon2_range(&over, r->face->up, &bottom, &top);
    if (r->face->base + slope * bottom - plumb > plate->z - 1e-9) return FRAME_OK;
    return add_birdsmouth(r, plate->z, lines, low ? 1 : 3, 0);
}

static frame_status add_seats(const members_rafter *r, const members_side *eave) {
    frame_status status = FRAME_OK;
    if (eave) {
        const line2 wall = members_wall(eave);
        double low, high;
        polygon2_range(&r->strip, wall.n, &low, &high);
        const int whole = low < wall.at + 1e-6 && r->place > eave->low + r->half && r->place < eave->high - r->half;
        status = add_birdsmouth(r, eave->plate, &wall, 1, whole ? 1.5 * 2 * r->half : 0);
    }
    for (size_t i = 0; i < r->m->plates.count && !status; i++) {
        const members_plate *plate = &FRAME_ITEM(members_plate, r->m->plates, i);
        if (eave && plate->edge == eave->edge && plate->on_gable == eave->on_gable) continue;
        status = clear_plate(r, eave, plate);
    }
    return status;
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
    return status ? status : add_seats(r, eave);
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
    const members_side *eave = where == MEMBERS_FLYING ? NULL : seat_of(&r, fmax(low, lower->up - 2 * r.half));
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
