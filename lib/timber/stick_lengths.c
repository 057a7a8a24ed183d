/* The lengths of a stick by name: where lines along it meet its end cuts. */
#include "timber/stick.h"
#include "timber_facts.h"

/* Where the end cuts leave a line along the stick: x[0]..x[1]. */
static void between_ends(const frame_stick *stick, double y, double z, double x[2]) {
    x[0] = stick->square[0] ? 0 : -HUGE_VAL;
    x[1] = stick->square[1] ? stick->length : HUGE_VAL;
    for (size_t i = 2; i < 2 + (size_t)stick->cuts; i++) {
        const frame_stick_record *record = FRAME_RECORD(stick, i);
        const vec3 n = record->plane.normal;
        if (!record->closes) continue;
        const double at = (record->plane.at - n.y * y - n.z * z) / n.x;
        if (record->closes == FRAME_STICK_START)
            x[0] = fmax(x[0], at);
        else
            x[1] = fmin(x[1], at);
    }
}

static double length_at(const frame_stick *stick, double y, double z) {
    double x[2];
    between_ends(stick, y, z, x);
    return fmax(0, x[1] - x[0]);
}

/* An end cut goes in furthest at one of the long edges, however many planes it is made of. */
static double short_point(const frame_stick *stick) {
    double low = -HUGE_VAL, high = HUGE_VAL;
    for (int i = 0; i < 4; i++) {
        double x[2];
        between_ends(stick, stick->y[i & 1], stick->z[i >> 1], x);
        low = fmax(low, x[0]);
        high = fmin(high, x[1]);
    }
    return high - low;
}

frame_status frame_stick_lengths_sized(const frame_stick *stick, frame_stick_lengths_out *out, size_t out_size) {
    if (!stick || !out || out_size < 2 * sizeof(uint32_t)) return frame_no_stick();
    const double *y = stick->y, *z = stick->z;
    frame_stick_lengths_out lengths = frame_stick_lengths_out_blank;
    lengths.long_point_in = stick->high - stick->low;
    lengths.short_point_in = short_point(stick);
    lengths.centre_line_in = length_at(stick, 0, (z[0] + z[1]) / 2);
    lengths.top_edge_in = length_at(stick, 0, z[1]);
    lengths.bottom_edge_in = length_at(stick, 0, z[0]);
    lengths.top_left_in = length_at(stick, y[1], z[1]);
    lengths.top_right_in = length_at(stick, y[0], z[1]);
    lengths.bottom_left_in = length_at(stick, y[1], z[0]);
    lengths.bottom_right_in = length_at(stick, y[0], z[0]);
    lengths.start_long_point_x_in = stick->low;
    lengths.end_long_point_x_in = stick->high;
    frame_struct_give(&frame_stick_lengths_out_facts, &lengths, out, out_size);
    return FRAME_OK;
}
