/* One part: what its rectangle leaves of the face, and the angles its edges are cut at. */
#include "roof/sheathing.h"

/* The tilt of the saw along a line of the face, so that its sheathing meets that of the face beyond in the plane
 * between them: half of what the two planes are short of flat. */
static double bevel_at(const sheathing *s, const sheathing_loop *loop, v2 a, v2 b) {
    const members_face *face = loop->face;
    for (int32_t i = face->first; i < face->first + face->count; i++) {
        const members_side *side = MEMBERS_SIDE(s->m, i);
        if (side->run < 0) continue;
        const v2 at[2] = {v2_add(v2_times(face->along, a.x), v2_times(face->up, a.y / loop->secant)),
                          v2_add(v2_times(face->along, b.x), v2_times(face->up, b.y / loop->secant))};
        if (fabs(line2_within(side->line, at[0])) > 1e-6 || fabs(line2_within(side->line, at[1])) > 1e-6) continue;
        const members_run *run = MEMBERS_RUN(s->m, side->run);
        const members_face *other = MEMBERS_FACE(s->m, run->face[MEMBERS_FACE(s->m, run->face[0]) == face]);
        const double m = face->slope, n = other->slope;
        const double cosine = (1 + m * n * v2_dot(face->up, other->up)) / sqrt((1 + m * m) * (1 + n * n));
        return acos(fmax(-1, fmin(1, cosine))) * 90 / acos(-1.0);
    }
    return 0;
}

static int32_t supports_of(const sheathing *s, const sheathing_loop *loop, const double x[2], const double y[2]) {
    const double half = s->m->sections[MEMBERS_RAFTERS].thickness / 2;
    int32_t count = 0;
    for (size_t i = 0; i < s->m->laid.count; i++) {
        const members_laid *laid = &FRAME_ITEM(members_laid, s->m->laid, i);
        if (MEMBERS_FACE(s->m, laid->face) != loop->face) continue;
        if (laid->place + half <= x[0] || laid->place - half >= x[1]) continue;
        count += laid->low * loop->secant < y[1] && laid->high * loop->secant > y[0];
    }
    return count;
}

static frame_status give_corner(const sheathing *s, const sheathing_loop *loop, const double from[2], v2 a, v2 b) {
    frame_roof_sheathing_corner *corner = frame_answer_add(s->answer, SHEATHING_CORNERS);
    const v2 way = v2_less(b, a);
    if (!corner) return FRAME_NO_MEMORY;
    corner->along_in = a.x - from[0];
    corner->up_in = a.y - from[1];
    corner->angle_deg = atan2(fabs(way.y), fabs(way.x)) * 180 / acos(-1.0);
    corner->bevel_deg = bevel_at(s, loop, a, b);
    corner->edge = corner->bevel_deg > 0 ? FRAME_SHEATHING_SKEW
                   : fabs(way.y) < 1e-9  ? FRAME_SHEATHING_COURSE
                   : fabs(way.x) < 1e-9  ? FRAME_SHEATHING_JOINT
                                         : FRAME_SHEATHING_SKEW;
    return FRAME_OK;
}

/* Corners that fall together are one; those on a straight way are none. */
static void tidy(polygon2 *part) {
    for (int i = 0; i < part->count && part->count > 2;) {
        const v2 a = part->corners[(i + part->count - 1) % part->count], b = part->corners[i];
        const v2 c = part->corners[(i + 1) % part->count];
        const double turn = v2_cross(v2_less(b, a), v2_less(c, b));
        if (v2_length(v2_less(b, a)) > 1e-7 && fabs(turn) > 1e-7) {
            i++;
            continue;
        }
        for (int k = i; k + 1 < part->count; k++) part->corners[k] = part->corners[k + 1];
        part->count--;
        i = i > 1 ? i - 2 : 0;
    }
}

/* Counterclockwise seen from above. The face's own axes may be left-handed in plan. */
static void turn_round(const sheathing_loop *loop, polygon2 *part) {
    double twice = 0;
    for (int i = 0; i < part->count; i++) twice += v2_cross(part->corners[i], part->corners[(i + 1) % part->count]);
    if ((twice > 0) == (v2_cross(loop->face->along, loop->face->up) > 0)) return;
    for (int i = 0, k = part->count - 1; i < k; i++, k--) {
        const v2 kept = part->corners[i];
        part->corners[i] = part->corners[k];
        part->corners[k] = kept;
    }
}

frame_status sheathing_give_part(const sheathing *s, const sheathing_loop *loop, int32_t course, const double x[2],
                                 const double y[2]) {
    polygon2 part = loop->outline;
    double range[2][2];
    polygon2_keep(&part, (line2){{1, 0}, x[0]}), polygon2_keep(&part, (line2){{-1, 0}, -x[1]});
    polygon2_keep(&part, (line2){{0, 1}, y[0]}), polygon2_keep(&part, (line2){{0, -1}, -y[1]});
    tidy(&part);
    if (part.count < 3 || polygon2_area(&part) < 1) return FRAME_OK; /* a splinter */
    turn_round(loop, &part);
    polygon2_range(&part, (v2){1, 0}, &range[0][0], &range[0][1]);
    polygon2_range(&part, (v2){0, 1}, &range[1][0], &range[1][1]);
    frame_roof_sheathing_part *given = frame_answer_add(s->answer, SHEATHING_PARTS);
    if (!given) return FRAME_NO_MEMORY;
    given->face = loop->face->face;
    given->course = course;
    given->area_in2 = polygon2_area(&part);
    given->length_in = range[0][1] - range[0][0], given->width_in = range[1][1] - range[1][0];
    given->whole = given->area_in2 > (x[1] - x[0]) * (y[1] - y[0]) - 1e-6;
    given->along_in = range[0][0] - v2_dot(loop->face->along, s->m->origin);
    given->up_in = range[1][0] - v2_dot(loop->face->up, s->m->origin) * loop->secant;
    given->supports = supports_of(s, loop, range[0], range[1]);
    given->corner_first = (uint32_t)frame_answer_count(s->answer, SHEATHING_CORNERS);
    given->corner_count = (uint32_t)part.count;
    s->out->whole += given->whole;
    s->out->parts_area_in2 += given->area_in2;
    if (given->supports < 3) s->out->cautions |= FRAME_BIT(FRAME_SHEATHING_CAUTION_SUPPORTS);
    const double from[2] = {range[0][0], range[1][0]};
    frame_status status = FRAME_OK;
    for (int i = 0; i < part.count && !status; i++)
        status = give_corner(s, loop, from, part.corners[i], part.corners[(i + 1) % part.count]);
    return status;
}
