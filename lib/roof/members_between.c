/* What goes between rafters: lookouts behind a fly rafter, ceiling joists beside pairs of commons, blocks on the
 * plates. */
#include <stdlib.h>

#include "base/error.h"
#include "roof/members.h"

static vec3 in_plane(const members_face *face, double place, double up) {
    const v2 at = v2_add(v2_times(face->along, place), v2_times(face->up, up));
    return (vec3){at.x, at.y, members_plane(face, at)};
}

/* A piece along a face, level, from one place to another, square at both ends. */
static members_piece *add_across(members *m, const members_face *face, frame_roof_member kind, vec3 start, vec3 end,
                                 double from, double to, double share) {
    const v2 toward = v2_times(face->along, from < to ? 1 : -1);
    members_piece *piece = members_add_piece(m, kind, MEMBERS_RAFTERS, start, end);
    const double low = fmin(from, to), high = fmax(from, to), first = from < to ? low : -high;
    if (!piece) return NULL;
    piece->face = face->face;
    if (!members_add_upright(m, (line2){toward, first}, face->up, "square cut", share)) return NULL;
    if (!members_add_upright(m, (line2){v2_times(toward, -1), from < to ? -high : low}, face->up, "square cut", share))
        return NULL;
    return &FRAME_ITEM(members_piece, m->set->pieces, m->set->pieces.count - 1);
}

/* -- lookouts: on centres along the slope, from the tail cut up, between the end rafter and the fly rafter; one over
 * the wall's plate bears on what the birdsmouth leaves of the end rafter -- */

frame_status members_add_lookouts(members *m, const members_face *face, const members_side *rake) {
    const double thickness = m->sections[MEMBERS_RAFTERS].thickness,
                 in = v2_dot(face->along, rake->line.n) > 0 ? 1 : -1;
    const double fly = v2_dot(face->along, rake->p) + in * thickness;
    const double wall = v2_dot(face->along, rake->p) + in * m->in->rake_overhang_in;
    const double secant = sqrt(1 + face->slope * face->slope), step = m->in->spacing_in / secant;
    const double p = v2_dot(face->up, rake->p), q = v2_dot(face->up, rake->q);
    /* Square to the slope, a lookout reaches farther up the face at its lower edge. */
    const double low = fmin(p, q) + m->sections[MEMBERS_RIDGES].thickness + thickness;
    const double high = fmax(p, q) - m->sections[MEMBERS_RIDGES].thickness - thickness -
                        m->sections[MEMBERS_RAFTERS].depth * face->slope / secant;
    if (fabs(wall - fly) < 0.5) return FRAME_OK;
    for (double up = low + step / 2; up < high; up += step) {
        const vec3 start = in_plane(face, wall + in, up), end = in_plane(face, fly - in, up);
        members_piece *piece = add_across(m, face, FRAME_MEMBER_LOOKOUT, start, end, wall, fly, 0.85);
        if (!piece) return FRAME_NO_MEMORY;
        piece->crown = (vec3){-face->slope * face->up.x, -face->slope * face->up.y, 1};
    }
    return FRAME_OK;
}

/* -- ceiling joists: beside every common whose pair stands on the opposite face, from wall to wall -- */

static int by_place(const void *a, const void *b) {
    const members_standing *x = a, *y = b;
    if (x->edge != y->edge) return x->edge < y->edge ? -1 : 1;
    return (x->place > y->place) - (x->place < y->place);
}

static const members_side *eave_of(const members *m, const members_standing *standing) {
    const members_face *face = MEMBERS_FACE(m, standing->face);
    for (int32_t i = face->first; i < face->first + face->count; i++)
        if (MEMBERS_SIDE(m, i)->kind == FRAME_LINE_EAVE && MEMBERS_SIDE(m, i)->edge == standing->edge)
            return MEMBERS_SIDE(m, i);
    return NULL;
}

static line2 wall_of(const members *m, const members_standing *standing) {
    const members_side *eave = eave_of(m, standing);
    return members_wall(eave);
}

/* The common that meets this one at the ridge. */
static const members_standing *pair_of(const members *m, const members_standing *own) {
    const members_face *face = MEMBERS_FACE(m, own->face);
    for (size_t i = 0; i < m->standing.count; i++) {
        const members_standing *other = &FRAME_ITEM(members_standing, m->standing, i);
        const members_face *facing = MEMBERS_FACE(m, other->face);
        if (!other->common || other == own || v2_dot(face->up, facing->up) > -1 + 1e-9) continue;
        if (fabs(other->place - own->place) > 1e-6) continue;
        if (fabs(eave_of(m, other)->plate - eave_of(m, own)->plate) > 1e-9) continue; /* a joist lies level */
        /* Their tops are apart by the ridge at most. */
        if (fabs(own->top + other->top) < m->sections[MEMBERS_RIDGES].thickness + 1e-3) return other;
    }
    return NULL;
}

/* The corner that would stand above the roof is cut off along its plane. */
static int cut_under_roof(members *m, const members_face *face) {
    const vec3 on = in_plane(face, 0, 0);
    return members_add_cut(m, FRAME_STICK_TAPER, on, (vec3){-face->slope * face->up.x, -face->slope * face->up.y, 1},
                           "cut under the roof") != NULL;
}

static frame_status add_joist(members *m, const members_standing *own, const members_standing *other) {
    const members_section *section = &m->sections[MEMBERS_JOISTS];
    const members_face *face = MEMBERS_FACE(m, own->face), *facing = MEMBERS_FACE(m, other->face);
    const line2 wall = wall_of(m, own), far = wall_of(m, other);
    const double place = own->place + own->half + section->thickness / 2, top = eave_of(m, own)->plate + section->depth;
    const v2 start = v2_add(v2_times(face->along, place), v2_times(face->up, wall.at - 1));
    const v2 end = v2_add(v2_times(face->along, place), v2_times(facing->up, far.at - 1));
    members_piece *piece = members_add_piece(m, FRAME_MEMBER_CEILING_JOIST, MEMBERS_JOISTS,
                                             (vec3){start.x, start.y, top}, (vec3){end.x, end.y, top});
    if (!piece) return FRAME_NO_MEMORY;
    piece->edge = own->edge;
    if (!members_add_upright(m, wall, face->along, "square cut at the wall", 0)) return FRAME_NO_MEMORY;
    if (!members_add_upright(m, far, face->along, "square cut at the wall", 0)) return FRAME_NO_MEMORY;
    return cut_under_roof(m, face) && cut_under_roof(m, facing) ? FRAME_OK : FRAME_NO_MEMORY;
}

/* What else stands on the eave leaves it room. */
static int has_room(const members *m, const members_standing *own, double thickness) {
    for (size_t i = 0; i < m->standing.count; i++) {
        const members_standing *other = &FRAME_ITEM(members_standing, m->standing, i);
        if (other == own || other->edge != own->edge) continue;
        const double gap = other->place - other->half - own->place - own->half;
        if (gap > -1e-6 && gap < thickness - 1e-6) return 0;
    }
    return 1;
}

frame_status members_add_joists(members *m) {
    const size_t count = m->standing.count;
    if (m->in->joist_size == FRAME_NOT_GIVEN_INT) return FRAME_OK;
    for (size_t i = 0; i < count; i++) {
        const members_standing *own = &FRAME_ITEM(members_standing, m->standing, i);
        const members_standing *other = own->common ? pair_of(m, own) : NULL;
        const double thickness = m->sections[MEMBERS_JOISTS].thickness;
        if (!other || other < own || !has_room(m, own, thickness) || !has_room(m, other, thickness)) continue;
        const members_standing pair[2] = {*own, *other};
        const frame_status status = add_joist(m, &pair[0], &pair[1]);
        if (status) return status;
        for (int k = 0; k < 2; k++) { /* blocks end at it */
            members_standing joist = pair[k];
            joist.common = 0;
            joist.place += joist.half + thickness / 2;
            joist.half = thickness / 2;
            if (!frame_array_push(&m->standing, &joist)) return FRAME_NO_MEMORY;
        }
    }
    return FRAME_OK;
}

/* -- blocks: plumb, flush with the wall, their tops ripped to the roof -- */

/* Whether a higher plate than the one it stands on is in its way. */
static int is_over_plate(const members *m, const members_side *eave, double from, double to) {
    const members_face *face = MEMBERS_FACE(m, m->face_of[eave->face]);
    const double low = members_wall(eave).at, high = low + m->sections[MEMBERS_RAFTERS].thickness;
    polygon2 block = {.count = 4};
    for (int i = 0; i < 4; i++)
        block.corners[i] =
            v2_add(v2_times(face->along, i == 1 || i == 2 ? to : from), v2_times(face->up, i > 1 ? high : low));
    for (size_t i = 0; i < m->plates.count; i++) {
        const members_plate *plate = &FRAME_ITEM(members_plate, m->plates, i);
        if (plate->z > eave->plate + 1e-9 && members_common_area(&block, &plate->plan) > 1e-6) return 1;
    }
    return 0;
}

static frame_status add_block(members *m, const members_standing *a, const members_standing *b) {
    const members_face *face = MEMBERS_FACE(m, a->face);
    const members_section *section = &m->sections[MEMBERS_RAFTERS];
    const double up = wall_of(m, a).at + section->thickness / 2;
    const double from = a->place + a->half, to = b->place - b->half;
    if (is_over_plate(m, eave_of(m, a), from, to)) return FRAME_OK;
    vec3 start = in_plane(face, from - 1, up), end = in_plane(face, to + 1, up);
    start.z = end.z = eave_of(m, a)->plate + section->depth;
    members_piece *piece = add_across(m, face, FRAME_MEMBER_BLOCK, start, end, from, to, 0);
    if (!piece) return FRAME_NO_MEMORY;
    piece->edge = a->edge;
    return cut_under_roof(m, face) ? FRAME_OK : FRAME_NO_MEMORY;
}

frame_status members_add_blocks(members *m) {
    if (!m->in->blocking || !m->standing.count) return FRAME_OK;
    qsort(m->standing.items, m->standing.count, sizeof(members_standing), by_place);
    for (size_t i = 0; i + 1 < m->standing.count; i++) {
        const members_standing *a = &FRAME_ITEM(members_standing, m->standing, i), *b = a + 1;
        const double gap = b->place - b->half - a->place - a->half;
        if (a->edge != b->edge || a->face != b->face || gap < 1 || gap > 1.5 * m->in->spacing_in) continue;
        const frame_status status = add_block(m, a, b);
        if (status) return status;
    }
    return FRAME_OK;
}
