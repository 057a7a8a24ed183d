/* The pieces of a roof: an axis in space and the planes that cut it; from them the kernel makes sticks. */
#include <stdlib.h>

#include "base/error.h"
#include "roof/members.h"

enum { MOST_PIECES = 20000 };

frame_status members_outcome(const members *m, frame_status status) {
    if (status != FRAME_NO_MEMORY || !m->set || m->set->pieces.count < MOST_PIECES) return status;
    return frame_fail_number(FRAME_TOO_LARGE, "spacing_in", m->in->spacing_in,
                             "wider, or longer stock: at most 20,000 pieces are framed at once");
}

members_piece *members_add_piece(members *m, frame_roof_member kind, int32_t section, vec3 start, vec3 end) {
    if (m->set->pieces.count >= MOST_PIECES) return NULL; /* members_outcome tells this from no memory */
    const members_section *of = &m->sections[section];
    const members_piece piece = {.kind = kind,
                                 .face = -1,
                                 .line = -1,
                                 .edge = -1,
                                 .section = section,
                                 .hand = FRAME_NOT_GIVEN_INT,
                                 .thickness = of->thickness,
                                 .depth = of->depth,
                                 .start = start,
                                 .end = end,
                                 .crown = {0, 0, 1},
                                 .first_cut = (int32_t)m->set->cuts.count,
                                 .number = ++m->counts[kind]};
    return frame_array_push(&m->set->pieces, &piece);
}

static members_piece *last_piece(members *m) {
    return &FRAME_ITEM(members_piece, m->set->pieces, m->set->pieces.count - 1);
}

void members_take_back(members *m) {
    const members_piece *piece = last_piece(m);
    m->counts[piece->kind]--;
    m->set->cuts.count = (size_t)piece->first_cut;
    m->set->pieces.count--;
}

members_cut *members_add_cut(members *m, frame_stick_role role, vec3 point, vec3 waste, const char *label) {
    const members_cut cut = {.point = point, .waste = waste, .label = label, .role = role};
    members_cut *added = frame_array_push(&m->set->cuts, &cut);
    if (added) last_piece(m)->cuts++;
    return added;
}

members_cut *members_add_upright(members *m, line2 line, v2 across, const char *label, double share) {
    const frame_stick_role role = fabs(v2_dot(line.n, across)) < 1e-9 ? FRAME_STICK_PLUMB_CUT : FRAME_STICK_CHEEK_CUT;
    const v2 point = v2_times(line.n, line.at);
    members_cut *cut = members_add_cut(m, role, (vec3){point.x, point.y, 0}, (vec3){-line.n.x, -line.n.y, 0}, label);
    if (cut) cut->share = share;
    return cut;
}

void members_make_notch(members *m, int32_t cuts, frame_stick_notch_kind kind) {
    members_cut *all = &FRAME_ITEM(members_cut, m->set->cuts, m->set->cuts.count - (size_t)cuts);
    const members_piece *piece = last_piece(m);
    const int32_t before = piece->cuts > cuts ? all[-1].notch : 0;
    for (int32_t i = 0; i < cuts; i++) {
        all[i].notch = before + 1;
        all[i].notch_kind = kind;
        if (kind == FRAME_STICK_BIRDSMOUTH) continue;
        if (all[i].role == FRAME_STICK_PLUMB_CUT || all[i].role == FRAME_STICK_CHEEK_CUT)
            all[i].role = FRAME_STICK_SHOULDER;
    }
}

static void give_plane(const members_cut *cut, frame_stick_plane *plane) {
    frame_stick_plane_init(plane);
    plane->role = cut->role;
    plane->axes = FRAME_STICK_AXES_WORLD;
    plane->point_x_in = cut->point.x, plane->point_y_in = cut->point.y, plane->point_z_in = cut->point.z;
    plane->waste_x = cut->waste.x, plane->waste_y = cut->waste.y, plane->waste_z = cut->waste.z;
    plane->label = cut->label;
    if (!cut->notch) return;
    plane->notch = cut->notch;
    plane->notch_kind = cut->notch_kind;
}

static void give_place(const members_piece *piece, frame_stick_in *in) {
    frame_stick_in_init(in);
    in->thickness_in = piece->thickness;
    in->depth_in = piece->depth;
    in->start_x_in = piece->start.x, in->start_y_in = piece->start.y, in->start_z_in = piece->start.z;
    in->end_x_in = piece->end.x, in->end_y_in = piece->end.y, in->end_z_in = piece->end.z;
    in->crown_x = piece->crown.x, in->crown_y = piece->crown.y, in->crown_z = piece->crown.z;
    in->axis_at = FRAME_STICK_AXIS_TOP;
}

frame_status members_stick(const members_set *set, size_t index, const char *name, frame_stick **stick) {
    frame_stick_in in;
    frame_stick_plane few[12], *planes = few;
    const members_piece *piece = &FRAME_ITEM(members_piece, set->pieces, index);
    const size_t cuts = (size_t)piece->cuts;
    if (cuts > sizeof few / sizeof *few && !(planes = frame_take_zeroed(cuts, sizeof *planes))) return FRAME_NO_MEMORY;
    give_place(piece, &in);
    in.name = name;
    in.section = piece->section >= 0 ? set->sections[piece->section].name : NULL;
    for (size_t i = 0; i < cuts; i++)
        give_plane(&FRAME_ITEM(members_cut, set->cuts, (size_t)piece->first_cut + i), &planes[i]);
    in.planes = planes;
    in.plane_count = cuts;
    const frame_status status = frame_stick_new(&in, stick);
    if (planes != few) frame_give(planes);
    return status;
}
