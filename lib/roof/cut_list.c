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
