/* The polygons in which two sticks touch. The kernel tells of the contact cell by cell; here the parts on one plane are
 * put together: their corners brought to one another where they are the same but for rounding, edges that two parts
 * share cancelled, and what is left closed to loops. */
#include "base/error.h"
#include "timber/meet.h"
#include "timber/outline.h"
#include "timber_facts.h"

/* Inches: what the meeting of two sticks calls touching. */
static const double near_in = 1e-7;

/* One convex part of the contact, in the first stick's axes. */
typedef struct contact_part {
    vec3 normal;
    double area;
    int32_t plane[2], side[2];
    size_t first, count; /* its corners */
    int32_t face;        /* the face it became a part of; -1 before */
} contact_part;

struct frame_contact {
    frame_pool faces, corners; /* of frame_contact_face and frame_contact_corner */
};

typedef struct finder {
    const frame_stick *sticks[2];
    frame_contact *contact;
    frame_pool parts, points; /* of contact_part and vec3 */
    frame_outline outline;
    frame_pool loops; /* of frame_stick_point */
    vec3 u, v, foot;  /* the axes on the plane at hand, and a point on it */
    frame_status status;
} finder;

static void keep_part(void *whom, const frame_touching *touching) {
    finder *f = whom;
    if (f->status) return;
    const size_t first = f->points.count, count = (size_t)touching->polygon->count;
    contact_part *part = frame_pool_add(&f->parts, 1);
    vec3 *points = frame_pool_add(&f->points, count);
    if (!part || !points) {
        f->status = FRAME_NO_MEMORY;
        return;
    }
    for (size_t i = 0; i < count; i++) points[i] = touching->polygon->corners[i];
    *part = (contact_part){touching->normal,
                           touching->area,
                           {touching->plane[0], touching->plane[1]},
                           {touching->side[0], touching->side[1]},
                           first,
                           count,
                           -1};
}

/* -- which face of each stick -- */

static int32_t saw_on(const frame_stick *stick, int32_t plane, int32_t side, vec3 point) {
    for (size_t i = 0; i < stick->records.count; i++) {
        const frame_stick_record *record = FRAME_RECORD(stick, i);
        if (record->number != plane || record->side != side || (i < 2 && !stick->square[i])) continue;
        if (frame_stick_in_notch(stick, record, point)) return frame_stick_saw_of(stick, (int32_t)i);
    }
    return FRAME_NOT_GIVEN_INT;
}

static int is_side_face(int32_t plane, int32_t side) {
    return plane <= PLANE_BOTTOM && side > 0;
}

static vec3 middle_of(const finder *f, const contact_part *part) {
    const vec3 *points = &FRAME_POOL_ITEM(const vec3, f->points, part->first);
    vec3 sum = {0, 0, 0};
    for (size_t i = 0; i < part->count; i++) sum = vec_add(sum, points[i]);
    return vec_times(sum, 1 / (double)part->count);
}

static vec3 in_world(const finder *f, vec3 p) {
    return frame_to_world(&f->sticks[0]->placement, p);
}

static vec3 on_stick(const frame_stick *stick, vec3 world) {
    return frame_to_stick_direction(&stick->placement, vec_less(world, stick->placement.origin));
}

static frame_contact_face face_of(const finder *f, const contact_part *part) {
    const vec3 normal = frame_to_world_direction(&f->sticks[0]->placement, part->normal);
    const vec3 world = in_world(f, middle_of(f, part));
    frame_contact_face face = {0,
                               0,
                               0,
                               normal.x,
                               normal.y,
                               normal.z,
                               FRAME_NOT_GIVEN_INT,
                               FRAME_NOT_GIVEN_INT,
                               FRAME_NOT_GIVEN_INT,
                               FRAME_NOT_GIVEN_INT};
    int32_t *const faces[2] = {&face.face, &face.other_face}, *const saws[2] = {&face.saw, &face.other_saw};
    for (int of = 0; of < 2; of++) {
        if (is_side_face(part->plane[of], part->side[of]))
            *faces[of] = frame_stick_face_of[part->plane[of]];
        else
            *saws[of] = saw_on(f->sticks[of], part->plane[of], part->side[of], on_stick(f->sticks[of], world));
    }
    return face;
}

/* -- the parts on one plane -- */

static void set_axes(finder *f, const contact_part *part) {
    const vec3 n = part->normal;
    const vec3 along = fabs(n.x) < 0.9 ? (vec3){1, 0, 0} : (vec3){0, 1, 0};
    const vec3 u = vec_less(along, vec_times(n, vec_dot(n, along)));
    f->u = vec_times(u, 1 / vec_length(u));
    f->v = vec_cross(n, f->u);
    f->foot = FRAME_POOL_ITEM(const vec3, f->points, part->first);
}

/* Corners that are the same but for rounding become the first one of them. */
static void bring_together(finder *f, int32_t face) {
    const contact_part *parts = f->parts.items;
    vec3 *points = f->points.items;
    for (size_t a = 0; a < f->parts.count; a++)
        for (size_t i = 0; parts[a].face == face && i < parts[a].count; i++)
            for (size_t b = 0; b <= a; b++)
                for (size_t k = 0; parts[b].face == face && k < (b < a ? parts[b].count : i); k++) {
                    vec3 *here = &points[parts[a].first + i];
                    const vec3 there = points[parts[b].first + k];
                    if (vec_length(vec_less(*here, there)) < near_in) *here = there;
                }
}

static double edge_length(const frame_outline_line *edge) {
    return hypot(edge->x[1] - edge->x[0], edge->across[1] - edge->across[0]);
}

/* Whether an edge lies along another one's line. */
static int on_line(const frame_outline_line *edge, const frame_outline_line *line, double length) {
    const double dx = (line->x[1] - line->x[0]) / length, da = (line->across[1] - line->across[0]) / length;
    for (int end = 0; end < 2; end++) {
        const double x = edge->x[end] - line->x[0], across = edge->across[end] - line->across[0];
        if (fabs(x * da - across * dx) > 2 * near_in) return 0;
    }
    return 1;
}

/* Numbers the edges by the line they lie on, the longest first so that short ones follow it, and hands them over. */
static int number_edges(finder *f, frame_outline_line *edges, size_t count) {
    for (int32_t number = 1;; number++) {
        const frame_outline_line *longest = NULL;
        for (size_t i = 0; i < count; i++)
            if (!edges[i].beyond && (!longest || edge_length(&edges[i]) > edge_length(longest))) longest = &edges[i];
        if (!longest) return 1;
        const frame_outline_line line = *longest;
        const double length = edge_length(&line);
        for (size_t i = 0; i < count; i++) {
            if (edges[i].beyond || !on_line(&edges[i], &line, length)) continue;
            edges[i].beyond = number;
            if (!frame_outline_add_edge(&f->outline, &edges[i])) return 0;
        }
    }
}

static int collect_edges(finder *f, int32_t face, frame_pool *edges) {
    const contact_part *parts = f->parts.items;
    for (size_t a = 0; a < f->parts.count; a++)
        for (size_t i = 0; parts[a].face == face && i < parts[a].count; i++) {
            const vec3 *points = &FRAME_POOL_ITEM(const vec3, f->points, parts[a].first);
            const vec3 from = vec_less(points[i], f->foot),
                       to = vec_less(points[i + 1 < parts[a].count ? i + 1 : 0], f->foot);
            const frame_outline_line edge = {
                {vec_dot(f->u, from), vec_dot(f->u, to)}, {vec_dot(f->v, from), vec_dot(f->v, to)}, 0, 0};
            if (edge_length(&edge) < FRAME_TOUCH) continue;
            frame_outline_line *place = frame_pool_add(edges, 1);
            if (!place) return 0;
            *place = edge;
        }
    return 1;
}

static frame_status find_lines(finder *f, int32_t face) {
    frame_outline_line room[64];
    frame_pool edges;
    frame_pool_begin(&edges, room, sizeof room, sizeof *room);
    f->outline.edges.count = 0;
    const int done = collect_edges(f, face, &edges) && number_edges(f, edges.items, edges.count);
    frame_pool_give(&edges);
    return done ? frame_outline_cancel(&f->outline) : FRAME_NO_MEMORY;
}

/* -- giving what was found -- */

static double across_on(const frame_stick *stick, frame_stick_face face, vec3 p) {
    if (face == FRAME_NOT_GIVEN_INT) return FRAME_NOT_GIVEN;
    return face == FRAME_STICK_LEFT || face == FRAME_STICK_RIGHT ? p.z - stick->z[0] : p.y - stick->y[0];
}

static frame_status give_corners(finder *f, const frame_contact_face *face) {
    for (size_t i = 0; i < f->loops.count; i++) {
        const frame_stick_point *point = &FRAME_POOL_ITEM(const frame_stick_point, f->loops, i);
        const vec3 here = vec_add(f->foot, vec_add(vec_times(f->u, point->x), vec_times(f->v, point->across)));
        const vec3 world = in_world(f, here), there = on_stick(f->sticks[1], world);
        frame_contact_corner *corner = frame_pool_add(&f->contact->corners, 1);
        if (!corner) return FRAME_NO_MEMORY;
        *corner = (frame_contact_corner){0,
                                         0,
                                         (int32_t)f->contact->faces.count - 1,
                                         point->group,
                                         world.x,
                                         world.y,
                                         world.z,
                                         frame_stick_running(f->sticks[0], here.x),
                                         across_on(f->sticks[0], face->face, here),
                                         frame_stick_running(f->sticks[1], there.x),
                                         across_on(f->sticks[1], face->other_face, there)};
    }
    return FRAME_OK;
}

static frame_status find_loops(finder *f) {
    frame_outline_line *lines = f->outline.lines.items;
    int32_t loop = 0;
    f->loops.count = 0;
    for (size_t i = 0; i < f->outline.lines.count; i++) {
        const size_t before = f->loops.count;
        if (lines[i].used) continue;
        if (frame_outline_loop(&f->outline, &lines[i], &f->loops, 0, loop)) return FRAME_NO_MEMORY;
        if (f->loops.count > before) loop++;
    }
    return FRAME_OK;
}

/* Joins to a part all others on the same two planes; what is too thin to have a corner is left out. */
static frame_status find_face(finder *f, size_t first) {
    contact_part *parts = f->parts.items;
    const contact_part *like = &parts[first];
    const int32_t number = (int32_t)first;
    frame_contact_face face = face_of(f, like);
    for (size_t i = first; i < f->parts.count; i++) {
        if (parts[i].plane[0] != like->plane[0] || parts[i].side[0] != like->side[0]) continue;
        if (parts[i].plane[1] != like->plane[1] || parts[i].side[1] != like->side[1]) continue;
        parts[i].face = number;
        face.area_in2 += parts[i].area;
    }
    set_axes(f, like);
    bring_together(f, number);
    frame_status status = find_lines(f, number);
    if (!status) status = find_loops(f);
    if (status || !f->loops.count) return status;
    frame_contact_face *place = frame_pool_add(&f->contact->faces, 1);
    if (!place) return FRAME_NO_MEMORY;
    *place = face;
    return give_corners(f, &face);
}

static frame_status find_all(finder *f) {
    frame_meeting meeting = {0, 0, keep_part, f};
    frame_status status = frame_stick_meet(f->sticks[0], f->sticks[1], &meeting);
    if (!status) status = f->status;
    for (size_t i = 0; i < f->parts.count && !status; i++)
        if (FRAME_POOL_ITEM(contact_part, f->parts, i).face < 0) status = find_face(f, i);
    return status;
}

frame_status frame_stick_contact(const frame_stick *stick, const frame_stick *other, frame_contact **contact) {
    contact_part part_room[8];
    vec3 point_room[64];
    frame_stick_point loop_room[32];
    if (!stick || !other || !contact) return frame_no_stick();
    finder f = {.sticks = {stick, other}, .contact = frame_take(sizeof *f.contact)};
    if (!f.contact) return FRAME_NO_MEMORY;
    frame_pool_begin(&f.contact->faces, NULL, 0, sizeof(frame_contact_face));
    frame_pool_begin(&f.contact->corners, NULL, 0, sizeof(frame_contact_corner));
    frame_pool_begin(&f.parts, part_room, sizeof part_room, sizeof *part_room);
    frame_pool_begin(&f.points, point_room, sizeof point_room, sizeof *point_room);
    frame_pool_begin(&f.loops, loop_room, sizeof loop_room, sizeof *loop_room);
    frame_outline_begin(&f.outline);
    const frame_status status = find_all(&f);
    frame_outline_give(&f.outline);
    frame_pool_give(&f.loops);
    frame_pool_give(&f.points);
    frame_pool_give(&f.parts);
    if (status)
        frame_contact_free(f.contact);
    else
        *contact = f.contact;
    return status;
}

void frame_contact_free(frame_contact *contact) {
    if (!contact) return;
    frame_pool_give(&contact->faces);
    frame_pool_give(&contact->corners);
    frame_give(contact);
}

/* -- the lists -- */

static frame_status no_contact(void) {
    return frame_fail(FRAME_REQUIRED, "contact", "NULL", "a contact", "contact: NULL is not a contact");
}

size_t frame_contact_face_count(const frame_contact *contact) {
    return contact ? contact->faces.count : 0;
}

frame_status frame_contact_face_at_sized(const frame_contact *contact, size_t index, frame_contact_face *item,
                                         size_t item_size) {
    if (!contact || !item || item_size < 2 * sizeof(uint32_t)) return no_contact();
    if (index >= contact->faces.count) return frame_stick_no_index(index, contact->faces.count);
    frame_struct_give(&frame_contact_face_facts, &FRAME_POOL_ITEM(frame_contact_face, contact->faces, index), item,
                      item_size);
    return FRAME_OK;
}

size_t frame_contact_corner_count(const frame_contact *contact) {
    return contact ? contact->corners.count : 0;
}

frame_status frame_contact_corner_at_sized(const frame_contact *contact, size_t index, frame_contact_corner *item,
                                           size_t item_size) {
    if (!contact || !item || item_size < 2 * sizeof(uint32_t)) return no_contact();
    if (index >= contact->corners.count) return frame_stick_no_index(index, contact->corners.count);
    frame_struct_give(&frame_contact_corner_facts, &FRAME_POOL_ITEM(frame_contact_corner, contact->corners, index),
                      item, item_size);
    return FRAME_OK;
}
