/* A wall's pieces as sticks, and whether they fit. */
#include "layout/wall.h"

frame_status frame_wall_stick(const frame_wall *wall, size_t index, frame_stick **stick) {
    if (!wall || !stick) return frame_layout_no_answer();
    return frame_layout_stick(frame_layout_set_of(wall), index, stick);
}

frame_status frame_wall_fit_sized(const frame_wall *wall, frame_fit_out *out, size_t out_size) {
    if (!wall || !out || out_size < 2 * sizeof(uint32_t)) return frame_layout_no_answer();
    return frame_layout_give_fit(frame_layout_set_of(wall), out, out_size);
}
