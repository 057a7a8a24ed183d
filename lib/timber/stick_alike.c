/* Whether two sticks are one cut list, or left and right of it. What counts is the planes that leave a face on the
 * piece, seen from the middle of its length; a mirrored piece has the same with y turned round. */
#include <stdlib.h>

#include "base/error.h"
#include "timber/stick.h"

static const double alike_in = 1e-6;

typedef struct face_plane {
    vec3 normal;
    double at, area;
} face_plane;

/* The planes of the records that leave a face; how many, negative without memory. */
static int gather(const frame_stick *stick, frame_pool *planes) {
    const double middle = (stick->low + stick->high) / 2;
    for (size_t i = 0; i < stick->records.count; i++) {
        const frame_stick_record *record = FRAME_RECORD(stick, i);
        if (i < 2 && !stick->square[i]) continue;
        const double area = frame_stick_record_area(stick, record);
        if (area < 1e-6) continue;
        face_plane *plane = frame_pool_add(planes, 1);
        if (!plane) return -1;
        plane->normal = record->plane.normal;
        plane->at = record->plane.at - record->plane.normal.x * middle - record->plane.normal.z * stick->z[1];
        plane->area = area;
    }
    return (int)planes->count;
}

static int same(const face_plane *a, const face_plane *b, int sx, int sy) {
    const vec3 turned = {sx * b->normal.x, sy * b->normal.y, b->normal.z};
    return fabs(a->at - b->at) < alike_in && fabs(a->area - b->area) < 1e-4 * (1 + a->area) &&
           vec_length(vec_less(a->normal, turned)) < 1e-8;
}

/* Every plane of the one has its own among those of the other. */
static int all_same(const frame_pool *a, const frame_pool *b, int sx, int sy) {
    uint8_t used[256] = {0};
    for (size_t i = 0; i < a->count; i++) {
        size_t k = 0;
        while (k < b->count && (used[k] || !same(&FRAME_POOL_ITEM(const face_plane, *a, i),
                                                 &FRAME_POOL_ITEM(const face_plane, *b, k), sx, sy)))
            k++;
        if (k == b->count) return 0;
        used[k] = 1;
    }
    return 1;
}

static frame_stick_likeness likeness_of(const frame_pool *a, const frame_pool *b) {
    if (a->count != b->count) return FRAME_STICK_DIFFERENT;
    if (all_same(a, b, 1, 1) || all_same(a, b, -1, -1)) return FRAME_STICK_ALIKE;
    return all_same(a, b, 1, -1) || all_same(a, b, -1, 1) ? FRAME_STICK_OPPOSITE : FRAME_STICK_DIFFERENT;
}

static int same_section(const frame_stick *a, const frame_stick *b) {
    return fabs((a->y[1] - a->y[0]) - (b->y[1] - b->y[0])) < alike_in &&
           fabs((a->z[1] - a->z[0]) - (b->z[1] - b->z[0])) < alike_in &&
           fabs((a->high - a->low) - (b->high - b->low)) < alike_in;
}

frame_status frame_stick_compare(const frame_stick *stick, const frame_stick *other, frame_stick_likeness *likeness) {
    face_plane rooms[2][16];
    frame_pool planes[2];
    if (!stick || !other || !likeness) return frame_no_stick();
    if (!same_section(stick, other)) {
        *likeness = FRAME_STICK_DIFFERENT;
        return FRAME_OK;
    }
    for (int i = 0; i < 2; i++) frame_pool_begin(&planes[i], rooms[i], sizeof rooms[i], sizeof(face_plane));
    const int taken = gather(stick, &planes[0]) >= 0 && gather(other, &planes[1]) >= 0;
    if (taken) *likeness = likeness_of(&planes[0], &planes[1]);
    frame_pool_give(&planes[0]);
    frame_pool_give(&planes[1]);
    return taken ? FRAME_OK : FRAME_NO_MEMORY;
}
