/* The planes that cut a stick, gathered before it is made. */
#include "roof/cut_list.h"

frame_stick_plane *frame_cut_list_add(frame_cut_list *list, frame_stick_role role, const double point[3],
                                      const double waste[3], const char *label) {
    frame_stick_plane *plane = &list->planes[list->count++];
    frame_stick_plane_init(plane);
    plane->role = role;
    plane->axes = FRAME_STICK_AXES_WORLD;
    plane->point_x_in = point[0];
    plane->point_y_in = point[1];
    plane->point_z_in = point[2];
    plane->waste_x = waste[0];
    plane->waste_y = waste[1];
    plane->waste_z = waste[2];
    plane->label = label;
    return plane;
}

void frame_cut_list_notch(frame_cut_list *list, size_t planes, int32_t number, frame_stick_notch_kind kind) {
    for (size_t i = list->count - planes; i < list->count; i++) {
        list->planes[i].notch = number;
        list->planes[i].notch_kind = kind;
    }
}

frame_status frame_cut_list_stick(const frame_cut_list *list, const frame_cut_list_body *body, frame_stick **stick) {
    frame_stick_in in;
    frame_stick_in_init(&in);
    in.name = body->name;
    in.thickness_in = body->thickness, in.depth_in = body->depth;
    in.start_x_in = body->from[0], in.start_y_in = body->from[1], in.start_z_in = body->from[2];
    in.end_x_in = body->to[0], in.end_y_in = body->to[1], in.end_z_in = body->to[2];
    in.crown_x = body->crown[0], in.crown_y = body->crown[1], in.crown_z = body->crown[2];
    if (in.crown_x == 0 && in.crown_y == 0 && in.crown_z == 0) in.crown_z = 1;
    in.axis_at = body->axis_at ? body->axis_at : FRAME_STICK_AXIS_CENTRE;
    in.planes = list->count ? list->planes : NULL;
    in.plane_count = list->count;
    return frame_stick_new(&in, stick);
}
