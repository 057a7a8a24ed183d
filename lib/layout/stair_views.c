/* A stair's pieces as sticks, and whether they fit. */
#include "base/error.h"
#include "layout/stair.h"
#include "layout_facts.h"

frame_status frame_stairs_stick(const frame_stairs *stairs, size_t index, frame_stick **stick) {
    if (!stairs || !stick) return frame_layout_no_answer();
    return frame_layout_stick(frame_layout_set_of(stairs), index, stick);
}

frame_status frame_stairs_fit_sized(const frame_stairs *stairs, frame_fit_out *out, size_t out_size) {
    if (!stairs || !out || out_size < 2 * sizeof(uint32_t)) return frame_layout_no_answer();
    return frame_layout_give_fit(frame_layout_set_of(stairs), out, out_size);
}
