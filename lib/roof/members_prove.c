/* Every piece made a stick by the kernel, given, and tried against its neighbours: those whose boxes touch, found by a
 * sweep along x. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/error.h"
#include "material/lumber.h"
#include "roof/members.h"
#include "roof_facts.h"
#include "timber/meet.h"

enum { LIST_PIECES, LIST_JOINTS, LIST_OVERLAPS };

/* Less than this is the rounding of faces that touch (the promise for a framed roof). */
static const double least_overlap_in3 = 0.001;

typedef struct bounds {
    double low[3], high[3];
    int32_t piece;
} bounds;

/* What one cut of a piece bears on. */
typedef struct bearing {
    double area, contact, most;
    int32_t on;
} bearing;

typedef struct proof {
    members *m;
    frame_stick **sticks;
    bounds *boxes;
    bearing *bearings; /* one for each cut of the set */
    int32_t pair[2];
} proof;

static members_piece *piece_at(const proof *p, size_t i) {
    return &FRAME_ITEM(members_piece, p->m->set->pieces, i);
}

/* -- giving a piece -- */

static const char *const kind_names[] = {
    "",           "ridge",      "hip",        "valley",      "break purlin",  "ledger",
    "common",     "end rafter", "hip jack",   "valley jack", "cripple jack",  "rafter",
    "sub-fascia", "plate",      "fly rafter", "lookout",     "ceiling joist", "block"};

static const char *name_of(members *m, const members_piece *piece) {
    char name[64];
    const char *hand = piece->hand == FRAME_HAND_LEFT ? " left" : piece->hand == FRAME_HAND_RIGHT ? " right" : "";
    snprintf(name, sizeof name, "%s %d%s", kind_names[piece->kind], (int)piece->number, hand);
    return frame_answer_text(m->answer, name);
}

static void give_axis(const frame_stick *stick, frame_roof_members_piece *given) {
    const vec3 start = frame_to_world(&stick->placement, (vec3){stick->low, 0, 0});
    const vec3 end = frame_to_world(&stick->placement, (vec3){stick->high, 0, 0});
    given->start_x_in = start.x, given->start_y_in = start.y, given->start_z_in = start.z;
    given->end_x_in = end.x, given->end_y_in = end.y, given->end_z_in = end.z;
    given->crown_x = stick->placement.z.x, given->crown_y = stick->placement.z.y, given->crown_z = stick->placement.z.z;
    given->length_in = stick->high - stick->low;
}

/* Where cuts of members that all but miss each other leave nothing of a piece, it is left out. */
static frame_status make_stick(proof *p, size_t index, const char **name) {
    members_set *set = p->m->set;
    while (index < set->pieces.count) {
        *name = name_of(p->m, piece_at(p, index));
        const frame_status status = members_stick(set, index, *name, &p->sticks[index]);
        if (status != FRAME_IMPOSSIBLE) return status;
        frame_error_clear();
        p->m->left_out++;
        memmove(piece_at(p, index), piece_at(p, index + 1), (--set->pieces.count - index) * sizeof(members_piece));
    }
    return FRAME_OK;
}

static frame_status give_piece(proof *p, size_t index) {
    members *m = p->m;
    const char *name = NULL;
    frame_status status = make_stick(p, index, &name);
    if (status || index >= m->set->pieces.count) return status;
    const members_piece *piece = piece_at(p, index);
    const members_section *section = piece->section < 0 ? NULL : &m->sections[piece->section];
    frame_roof_members_piece *given = frame_answer_add(m->answer, LIST_PIECES);
    if (!given) return FRAME_NO_MEMORY;
    given->kind = piece->kind;
    given->rises_from = piece->face < 0 ? -1 : MEMBERS_ROOF_FACE(m, piece->face)->edge;
    given->face = piece->face, given->line = piece->line, given->edge = piece->edge;
    if (section) given->size = section->size;
    given->plies = section ? section->plies : 1;
    given->hand = piece->hand;
    given->thickness_in = piece->thickness, given->depth_in = piece->depth;
    given->name = name;
    given->section = section ? section->name : NULL;
    frame_stick_lengths_out lengths;
    status = frame_stick_lengths(p->sticks[index], &lengths);
    given->top_length_in = lengths.top_edge_in;
    give_axis(p->sticks[index], given);
    if (!section) return status;
    double nominal[2];
    frame_size_nominal(section->size, &nominal[0], &nominal[1]);
    m->out->board_feet += section->plies * nominal[0] * nominal[1] * given->length_in / 144;
    return status;
}

/* -- neighbours -- */

static bounds box_of(const frame_stick *stick, int32_t piece) {
    bounds box = {{HUGE_VAL, HUGE_VAL, HUGE_VAL}, {-HUGE_VAL, -HUGE_VAL, -HUGE_VAL}, piece};
    const vec3 *vertices = stick->solid.vertices.items;
    for (size_t i = 0; i < stick->solid.vertices.count; i++) {
        const vec3 at = frame_to_world(&stick->placement, vertices[i]);
        const double place[3] = {at.x, at.y, at.z};
        for (int a = 0; a < 3; a++) {
            box.low[a] = fmin(box.low[a], place[a] - 1e-6);
            box.high[a] = fmax(box.high[a], place[a] + 1e-6);
        }
    }
    return box;
}

static int by_low_x(const void *a, const void *b) {
    const bounds *x = a, *y = b;
    if (x->low[0] != y->low[0]) return x->low[0] < y->low[0] ? -1 : 1;
    return x->piece - y->piece;
}

static int apart(const bounds *a, const bounds *b) {
    return a->high[1] < b->low[1] || b->high[1] < a->low[1] || a->high[2] < b->low[2] || b->high[2] < a->low[2];
}

/* A part of the contact counts for every cut that lies on its plane. */
static void tell(void *whom, const frame_touching *part) {
    proof *p = whom;
    for (int of = 0; of < 2; of++) {
        const members_piece *piece = piece_at(p, (size_t)p->pair[of]);
        const frame_stick *stick = p->sticks[p->pair[of]];
        for (int32_t i = 0; i < piece->cuts; i++) {
            const frame_stick_record *record = FRAME_RECORD(stick, 2 + (size_t)i);
            bearing *on = &p->bearings[piece->first_cut + i];
            if (record->number != part->plane[of] || record->side != part->side[of]) continue;
            on->contact += part->area;
            if (part->area > on->most) on->most = part->area, on->on = p->pair[1 - of];
        }
    }
}

static frame_status try_pair(proof *p, int32_t a, int32_t b) {
    frame_meeting meeting = {0, 0, tell, p};
    p->pair[0] = a < b ? a : b, p->pair[1] = a < b ? b : a;
    const frame_status status = frame_stick_meet(p->sticks[p->pair[0]], p->sticks[p->pair[1]], &meeting);
    if (status) return status;
    p->m->out->pairs++;
    p->m->out->overlap_in3 = fmax(p->m->out->overlap_in3, meeting.overlap);
    if (meeting.overlap < least_overlap_in3) return FRAME_OK;
    frame_roof_members_overlap *overlap = frame_answer_add(p->m->answer, LIST_OVERLAPS);
    if (!overlap) return FRAME_NO_MEMORY;
    overlap->first = p->pair[0], overlap->second = p->pair[1];
    overlap->overlap_in3 = meeting.overlap;
    return FRAME_OK;
}

static frame_status try_neighbours(proof *p) {
    const size_t count = p->m->set->pieces.count;
    for (size_t i = 0; i < count; i++) p->boxes[i] = box_of(p->sticks[i], (int32_t)i);
    qsort(p->boxes, count, sizeof *p->boxes, by_low_x);
    for (size_t i = 0; i < count; i++)
        for (size_t k = i + 1; k < count && p->boxes[k].low[0] < p->boxes[i].high[0]; k++) {
            if (apart(&p->boxes[i], &p->boxes[k])) continue;
            const frame_status status = try_pair(p, p->boxes[i].piece, p->boxes[k].piece);
            if (status) return status;
        }
    return FRAME_OK;
}

/* -- joints -- */

static frame_status give_joint(proof *p, int32_t piece, int32_t number) {
    const frame_stick *stick = p->sticks[piece];
    const int32_t index = piece_at(p, (size_t)piece)->first_cut + number;
    const members_cut *cut = &FRAME_ITEM(members_cut, p->m->set->cuts, index);
    if (!(cut->share > 0) && !(cut->area > 0)) return FRAME_OK;
    const double area = frame_stick_record_area(stick, FRAME_RECORD(stick, 2 + (size_t)number));
    if (area < 1e-6) return FRAME_OK; /* other cuts have taken it away */
    frame_roof_members_joint *joint = frame_answer_add(p->m->answer, LIST_JOINTS);
    if (!joint) return FRAME_NO_MEMORY;
    joint->piece = piece;
    joint->saw = number + stick->square[0] + stick->square[1];
    joint->area_in2 = area;
    joint->contact_in2 = p->bearings[index].contact;
    joint->on = p->bearings[index].contact > 0 ? p->bearings[index].on : -1;
    joint->required_in2 = cut->area > 0 ? cut->area : cut->share * area;
    joint->holds = joint->contact_in2 >= joint->required_in2 - 1e-6;
    joint->label = cut->label;
    p->m->out->least_share = fmin(p->m->out->least_share, joint->contact_in2 / joint->required_in2);
    if (!joint->holds) p->m->out->fits = 0;
    return FRAME_OK;
}

static frame_status give_joints(proof *p) {
    p->m->out->least_share = 1e9;
    p->m->out->fits = frame_answer_count(p->m->answer, LIST_OVERLAPS) == 0;
    for (size_t i = 0; i < p->m->set->pieces.count; i++)
        for (int32_t k = 0; k < piece_at(p, i)->cuts; k++) {
            const frame_status status = give_joint(p, (int32_t)i, k);
            if (status) return status;
        }
    return FRAME_OK;
}

frame_status members_give(members *m) {
    const size_t count = m->set->pieces.count;
    proof p = {.m = m};
    p.sticks = frame_take_zeroed(count + 1, sizeof *p.sticks);
    p.boxes = frame_take_zeroed(count + 1, sizeof *p.boxes);
    p.bearings = frame_take_zeroed(m->set->cuts.count + 1, sizeof *p.bearings);
    frame_status status = p.sticks && p.boxes && p.bearings ? FRAME_OK : FRAME_NO_MEMORY;
    m->out->board_feet = 0;
    for (size_t i = 0; i < m->set->pieces.count && !status; i++) status = give_piece(&p, i);
    if (!status) status = members_find_gangs(m, p.sticks);
    if (!status && m->in->prove) {
        m->out->pairs = 0, m->out->overlap_in3 = 0;
        status = try_neighbours(&p);
        if (!status) status = give_joints(&p);
    }
    for (size_t i = 0; p.sticks && i < count; i++) frame_stick_free(p.sticks[i]);
    frame_give(p.bearings);
    frame_give(p.boxes);
    frame_give(p.sticks);
    return status;
}
