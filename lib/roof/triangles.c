/* Faces cut into triangles: a corner that turns left and has no other corner within its triangle is cut off, until
 * three are left. */
#include "roof/triangles.h"

#include "base/error.h"
#include "working/record.h"

enum { LIST_FACES, LIST_LINES, LIST_POINTS, LIST_OUTLINES };

roof_slope roof_slope_of(const frame_answer *roof, size_t face, double height) {
    const frame_roof_solve_face *of = &FRAME_ANSWER_ITEM(const frame_roof_solve_face, roof, LIST_FACES, face);
    const frame_roof_solve_outline *corner =
        &FRAME_ANSWER_ITEM(const frame_roof_solve_outline, roof, LIST_OUTLINES, of->outline_first);
    const double toward = of->toward_deg * FRAME_DEG;
    roof_slope slope = {{of->slope * cos(toward), of->slope * sin(toward)}, 0, sqrt(1 + of->slope * of->slope)};
    slope.base = height + corner->z_in - v2_dot(slope.rise, (v2){corner->x_in, corner->y_in});
    return slope;
}

static double turn(v2 a, v2 b, v2 c) {
    return v2_cross(v2_less(b, a), v2_less(c, a));
}

/* Whether the corner at i can be cut off. */
static int is_ear(const v2 *corners, int count, int i) {
    const v2 a = corners[(i + count - 1) % count], b = corners[i], c = corners[(i + 1) % count];
    if (turn(a, b, c) <= 0) return 0;
    for (int k = 0; k < count; k++) {
        const v2 p = corners[k];
        if (k == i || k == (i + 1) % count || k == (i + count - 1) % count) continue;
        if (turn(a, b, p) >= 0 && turn(b, c, p) >= 0 && turn(c, a, p) >= 0) {
            const int same =
                v2_length(v2_less(p, a)) < 1e-9 || v2_length(v2_less(p, b)) < 1e-9 || v2_length(v2_less(p, c)) < 1e-9;
            if (!same) return 0;
        }
    }
    return 1;
}

/* The corner that is most nearly straight is let go where no ear is found, which only rounding brings about. */
static int flattest(const v2 *corners, int count) {
    int best = 0;
    double least = HUGE_VAL;
    for (int i = 0; i < count; i++) {
        const double bend = fabs(turn(corners[(i + count - 1) % count], corners[i], corners[(i + 1) % count]));
        if (bend < least) least = bend, best = i;
    }
    return best;
}

static frame_status cut_loop(v2 *corners, int count, int32_t face, frame_array *triangles) {
    while (count > 2) {
        int ear = 0;
        while (ear < count && !is_ear(corners, count, ear)) ear++;
        const int found = ear < count, at = found ? ear : flattest(corners, count);
        const roof_triangle triangle = {{corners[(at + count - 1) % count], corners[at], corners[(at + 1) % count]},
                                        face};
        if (found && !frame_array_push(triangles, &triangle)) return FRAME_NO_MEMORY;
        for (int k = at; k + 1 < count; k++) corners[k] = corners[k + 1];
        count--;
    }
    return FRAME_OK;
}

static frame_status cut_face(const frame_answer *roof, size_t index, v2 *room, frame_array *triangles) {
    const frame_roof_solve_face *face = &FRAME_ANSWER_ITEM(const frame_roof_solve_face, roof, LIST_FACES, index);
    const frame_roof_solve_outline *corner =
        &FRAME_ANSWER_ITEM(const frame_roof_solve_outline, roof, LIST_OUTLINES, face->outline_first);
    frame_status status = FRAME_OK;
    int count = 0;
    for (uint32_t i = 0; i < face->outline_count && !status; i++) {
        room[count++] = (v2){corner[i].x_in, corner[i].y_in};
        if (i + 1 < face->outline_count && corner[i + 1].loop == corner[i].loop) continue;
        status = cut_loop(room, count, (int32_t)index, triangles);
        count = 0;
    }
    return status;
}

frame_status roof_triangles(const frame_answer *roof, frame_array *triangles) {
    v2 *room = frame_take((frame_answer_count(roof, LIST_OUTLINES) + 1) * sizeof *room);
    frame_status status = room ? FRAME_OK : FRAME_NO_MEMORY;
    for (size_t i = 0; i < frame_answer_count(roof, LIST_FACES) && !status; i++)
        if (roof_face_is_sloping(&FRAME_ANSWER_ITEM(const frame_roof_solve_face, roof, LIST_FACES, i)))
            status = cut_face(roof, i, room, triangles);
    frame_give(room);
    return status;
}
