/* The solid from the planes: a blank long enough, then the cuts, which leave it convex, then the notches. */
#include "base/error.h"
#include "timber/stick.h"

/* The outermost x at which a closing plane meets the four long edges. */
static double outermost(const frame_stick *stick, const frame_stick_record *record) {
    const vec3 n = record->plane.normal;
    double found = record->closes == FRAME_STICK_START ? HUGE_VAL : -HUGE_VAL;
    for (int i = 0; i < 4; i++) {
        const double x = (record->plane.at - n.y * stick->y[i & 1] - n.z * stick->z[i >> 1]) / n.x;
        found = record->closes == FRAME_STICK_START ? fmin(found, x) : fmax(found, x);
    }
    return found;
}

/* The blank reaches an inch past what the end cuts leave, so that none of its own ends stays; or to the square ends. */
static void blank(frame_stick *stick, double x[2]) {
    stick->square[0] = stick->square[1] = 1;
    x[0] = -HUGE_VAL;
    x[1] = HUGE_VAL;
    for (size_t i = 2; i < 2 + (size_t)stick->cuts; i++) {
        const frame_stick_record *record = FRAME_RECORD(stick, i);
        if (!record->closes) continue;
        stick->square[record->closes - FRAME_STICK_START] = 0;
        if (record->closes == FRAME_STICK_START)
            x[0] = fmax(x[0], outermost(stick, record) - 1);
        else
            x[1] = fmin(x[1], outermost(stick, record) + 1);
    }
    if (stick->square[0]) x[0] = 0;
    if (stick->square[1]) x[1] = stick->length;
}

static void number_side_planes(frame_stick *stick, const double x[2]) {
    static const vec3 normals[6] = {{0, 1, 0}, {0, -1, 0}, {0, 0, 1}, {0, 0, -1}, {-1, 0, 0}, {1, 0, 0}};
    const double at[6] = {stick->y[1], -stick->y[0], stick->z[1], -stick->z[0], -x[0], x[1]};
    stick->solid.planes.count = 0;
    frame_plane *planes = frame_pool_add(&stick->solid.planes, 6); /* there is room for these */
    for (int i = 0; i < 6; i++) planes[i] = (frame_plane){normals[i], at[i]};
    FRAME_RECORD(stick, 0)->number = PLANE_START;
    FRAME_RECORD(stick, 1)->number = PLANE_END;
}

frame_status frame_stick_number_planes(frame_stick *stick) {
    for (size_t i = 2; i < stick->records.count; i++) {
        frame_stick_record *record = FRAME_RECORD(stick, i);
        int side;
        record->number = frame_solid_plane(&stick->solid, &record->plane, &side);
        record->side = side;
        if (record->number < 0) return frame_fail(FRAME_NO_MEMORY, "", "", "", "no memory");
    }
    return FRAME_OK;
}

static frame_status nothing_left(void) {
    return frame_fail(FRAME_IMPOSSIBLE, "planes", "", "planes that leave some of the stick",
                      "planes: they take the whole stick away");
}

/* The cuts, one after the other, on one convex cell that changes places with another. */
static frame_status cut(frame_stick *stick, const double x[2]) {
    frame_cell work[2];
    int here = 0;
    if (!(x[0] < x[1])) return nothing_left();
    frame_cell_prism(&work[0], x, stick->y, stick->z);
    for (size_t i = 2; i < 2 + (size_t)stick->cuts; i++) {
        const frame_stick_record *record = FRAME_RECORD(stick, i);
        const frame_cell_view view = frame_cell_look(&work[here]);
        const frame_plane *plane = frame_solid_plane_at(&stick->solid, record->number);
        frame_cell *under = record->side > 0 ? &work[1 - here] : NULL,
                   *over = record->side > 0 ? NULL : &work[1 - here];
        const frame_cell_parts found = frame_cell_split(&view, plane, (uint8_t)record->number, under, over);
        if (found < 0) return frame_solid_split_failed(found);
        if (found == (record->side > 0 ? CELL_OVER : CELL_UNDER)) return nothing_left();
        if (found == CELL_BOTH) here = 1 - here;
    }
    return frame_solid_start(&stick->solid, &work[here]);
}

static frame_status notch(frame_stick *stick) {
    for (size_t i = 2 + (size_t)stick->cuts; i < stick->records.count;) {
        frame_solid_bound bounds[200];
        size_t count = 0;
        const int32_t number = FRAME_RECORD(stick, i)->notch;
        for (; i < stick->records.count && FRAME_RECORD(stick, i)->notch == number; i++)
            bounds[count++] = (frame_solid_bound){FRAME_RECORD(stick, i)->number, FRAME_RECORD(stick, i)->side};
        const frame_status status = frame_solid_notch(&stick->solid, bounds, count);
        if (status) return status;
    }
    return FRAME_OK;
}

frame_status frame_stick_solve(frame_stick *stick) {
    double x[2];
    blank(stick, x);
    number_side_planes(stick, x);
    frame_status status = frame_stick_number_planes(stick);
    if (!status) status = cut(stick, x);
    if (!status) status = notch(stick);
    if (status) return status;
    frame_solid_extent(&stick->solid, &stick->low, &stick->high);
    if (!(stick->low < stick->high)) return nothing_left();
    if (!frame_solid_whole(&stick->solid))
        return frame_fail(FRAME_IMPOSSIBLE, "planes", "", "planes that leave the stick in one piece",
                          "planes: a notch cuts the stick apart");
    return frame_stick_outline(stick);
}
