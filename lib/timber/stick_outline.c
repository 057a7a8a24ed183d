/* The outlines of a stick's side faces as loops of corners, and the marks: the lines its planes make on those faces. */
#include "base/error.h"
#include "timber/outline.h"
#include "timber/stick.h"

const frame_stick_face frame_stick_face_of[4] = {[PLANE_LEFT] = FRAME_STICK_LEFT,
                                                 [PLANE_RIGHT] = FRAME_STICK_RIGHT,
                                                 [PLANE_TOP] = FRAME_STICK_TOP,
                                                 [PLANE_BOTTOM] = FRAME_STICK_BOTTOM};

/* The long edge a point of a face lies at, 0 within it. */
static frame_stick_edge edge_at(const frame_stick *stick, int face, double across) {
    static const frame_stick_edge edges[4][2] = {
        [PLANE_LEFT] = {FRAME_STICK_BOTTOM_LEFT, FRAME_STICK_TOP_LEFT},
        [PLANE_RIGHT] = {FRAME_STICK_BOTTOM_RIGHT, FRAME_STICK_TOP_RIGHT},
        [PLANE_TOP] = {FRAME_STICK_TOP_RIGHT, FRAME_STICK_TOP_LEFT},
        [PLANE_BOTTOM] = {FRAME_STICK_BOTTOM_RIGHT, FRAME_STICK_BOTTOM_LEFT},
    };
    const double *range = face <= PLANE_RIGHT ? stick->z : stick->y;
    if (fabs(across) < 1e-8) return edges[face][0];
    return fabs(across - (range[1] - range[0])) < 1e-8 ? edges[face][1] : 0;
}

vec3 frame_stick_point_on(const frame_stick *stick, int face, double x, double across) {
    const double y = face == PLANE_LEFT ? stick->y[1] : stick->y[0] + (face == PLANE_RIGHT ? 0 : across);
    const double z = face == PLANE_TOP ? stick->z[1] : stick->z[0] + (face == PLANE_BOTTOM ? 0 : across);
    return (vec3){x, y, z};
}

static frame_status add_loop(frame_stick *stick, frame_outline *outline, frame_outline_line *line, int face, int loop) {
    const size_t first = stick->corners.count;
    const frame_status status = frame_outline_loop(outline, line, &stick->corners, frame_stick_face_of[face], loop);
    for (size_t i = first; !status && i < stick->corners.count; i++) {
        frame_stick_point *corner = &FRAME_POOL_ITEM(frame_stick_point, stick->corners, i);
        corner->edge = edge_at(stick, face, corner->across);
    }
    return status;
}

/* The record whose plane makes a line: one that takes the wood away on the line's right, in its own notch. */
static int record_of(const frame_stick *stick, const frame_outline_line *line, int face) {
    const vec3 middle =
        frame_stick_point_on(stick, face, (line->x[0] + line->x[1]) / 2, (line->across[0] + line->across[1]) / 2);
    const double dx = line->x[1] - line->x[0], da = line->across[1] - line->across[0];
    for (size_t i = 0; i < stick->records.count; i++) {
        const frame_stick_record *record = FRAME_RECORD(stick, i);
        const double across = face <= PLANE_RIGHT ? record->plane.normal.z : record->plane.normal.y;
        if (record->number != line->beyond || (i < 2 && !stick->square[i])) continue;
        if (record->plane.normal.x * da - across * dx > 0 && frame_stick_in_notch(stick, record, middle)) return (int)i;
    }
    return -1;
}

/* By distance; side by side from the lower or right edge up, and then by line. */
static int comes_before(const frame_stick *stick, const frame_stick_point *a, const frame_stick_point *b) {
    const double further = frame_stick_running(stick, b->x) - frame_stick_running(stick, a->x);
    if (fabs(further) > 1e-7) return further > 0;
    if (fabs(b->across - a->across) > 1e-7) return b->across > a->across;
    return a->group < b->group;
}

static int add_mark(frame_stick *stick, const frame_outline_line *line, int end, int face, int number, int record) {
    if (!frame_pool_add(&stick->marks, 1)) return 0;
    frame_stick_point *marks = stick->marks.items;
    const frame_stick_edge edge = edge_at(stick, face, line->across[end]);
    const frame_stick_point mark = {line->x[end], line->across[end], frame_stick_face_of[face], number, record, edge};
    size_t i = stick->marks.count - 1;
    for (; i && marks[i - 1].face == mark.face && comes_before(stick, &mark, &marks[i - 1]); i--)
        marks[i] = marks[i - 1];
    marks[i] = mark;
    return 1;
}

/* Numbers the lines as they come in the list; until done, numbers given are kept apart as negative ones. */
static void number_lines(frame_stick *stick) {
    frame_stick_point *marks = stick->marks.items;
    int32_t next = 0;
    for (size_t i = 0; i < stick->marks.count; i++) {
        const int32_t group = marks[i].group;
        if (group < 0) continue;
        next++;
        for (size_t k = i; k < stick->marks.count; k++)
            if (marks[k].group == group) marks[k].group = -next;
    }
    for (size_t i = 0; i < stick->marks.count; i++) marks[i].group = -marks[i].group - 1;
}

static frame_status add_face(frame_stick *stick, frame_outline *outline, int face, int *number) {
    frame_status status = frame_outline_lines(outline, &stick->solid, face, face, stick->y[0], stick->z[0]);
    frame_outline_line *lines = outline->lines.items;
    int loop = 0;
    for (size_t i = 0; !status && i < outline->lines.count; i++) {
        const int record = lines[i].beyond < PLANE_START ? -1 : record_of(stick, &lines[i], face);
        if (record >= 0) {
            if (!add_mark(stick, &lines[i], 0, face, *number, record) ||
                !add_mark(stick, &lines[i], 1, face, *number, record))
                return FRAME_NO_MEMORY;
            ++*number;
        }
        if (!lines[i].used) status = add_loop(stick, outline, &lines[i], face, loop++);
    }
    return status;
}

/* Whether every plane runs square through the stick from left to right, as those of a common rafter do. */
static int is_plain(const frame_stick *stick) {
    for (size_t i = 2; i < stick->records.count; i++)
        if (fabs(FRAME_RECORD(stick, i)->plane.normal.y) > 0) return 0;
    return 1;
}

/* The right edge opposite to a left one. */
static frame_stick_edge opposite_edge(frame_stick_edge edge) {
    return edge == FRAME_STICK_TOP_LEFT      ? FRAME_STICK_TOP_RIGHT
           : edge == FRAME_STICK_BOTTOM_LEFT ? FRAME_STICK_BOTTOM_RIGHT
                                             : 0;
}

static int repeat(frame_pool *points, int first_group) {
    const size_t count = points->count;
    if (count && !frame_pool_add(points, count)) return 0;
    frame_stick_point *all = points->items;
    for (size_t i = 0; i < count; i++) {
        all[count + i] = all[i];
        all[count + i].face = FRAME_STICK_RIGHT;
        all[count + i].group += first_group;
        all[count + i].edge = opposite_edge(all[i].edge);
    }
    return 1;
}

/* The right face of such a stick is the left one again. */
static frame_status repeat_left(frame_stick *stick, int *number) {
    const int lines = *number;
    *number += lines;
    return repeat(&stick->corners, 0) && repeat(&stick->marks, lines) ? FRAME_OK : FRAME_NO_MEMORY;
}

frame_status frame_stick_outline(frame_stick *stick) {
    frame_outline outline;
    frame_status status = FRAME_OK;
    int number = 0;
    frame_outline_begin(&outline);
    stick->corners.count = stick->marks.count = 0;
    const int plain = is_plain(stick);
    for (int face = PLANE_LEFT; !status && face <= PLANE_BOTTOM; face++)
        status = plain && face == PLANE_RIGHT ? repeat_left(stick, &number) : add_face(stick, &outline, face, &number);
    frame_outline_give(&outline);
    number_lines(stick);
    return status;
}
