/* How a saw is set for each plane. The base bears on a wide face; the plane's normal, taken apart along the stick,
 * square to the wide face, and across it, gives both angles:
 *
 *     tan(mitre) = across / along        on the wide face, from square across
 *     sin(bevel) = square to the face    of a normal of length 1
 *
 * So a plane that stands plumb in the building shows as the plumb line on the wide face of a rafter, and its bevel is
 * the angle it makes in plan with square to the rafter: 45 degrees for the jack of a regular hip, whatever the slope.
 */
#include "timber/polygon.h"
#include "timber/stick.h"
#include "timber_facts.h"

/* Radians that count as no angle at all: no more than rounding leaves. */
static const double no_angle = 1e-9;

/* The angle whose tangent is up / along, in degrees; what rounding left beside 0 and 90 is taken off. */
static double angle_deg(double up, double along) {
    const double angle = atan2(fabs(up), fabs(along)), right = acos(-1.0) / 2;
    return angle < no_angle ? 0 : angle > right - no_angle ? 90 : angle / right * 90;
}

double frame_stick_record_area(const frame_stick *stick, const frame_stick_record *record) {
    frame_cell_view view;
    double area = 0;
    for (size_t i = 0; i < frame_solid_cell_count(&stick->solid); i++) {
        if (!frame_solid_look(&stick->solid, i, &view)) continue;
        for (int k = 0; k < view.face_count; k++) {
            if (view.faces[k].plane != record->number || view.faces[k].side != record->side) continue;
            frame_polygon face;
            frame_polygon_of_face(&view, k, &face);
            for (size_t j = 2 + (size_t)stick->cuts; record->notch && j < stick->records.count; j++) {
                const frame_stick_record *other = FRAME_RECORD(stick, j);
                if (other != record && other->notch == record->notch) frame_polygon_cut(&face, &other->plane, 1);
            }
            area += frame_polygon_area(&face, record->plane.normal);
        }
    }
    return area;
}

static frame_stick_end toward(double x) {
    return x < 0 ? FRAME_STICK_START : FRAME_STICK_END;
}

static int has_line(const frame_stick *stick, const frame_stick_record *record, frame_stick_face face) {
    const frame_stick_point *marks = stick->marks.items;
    for (size_t i = 0; i < stick->marks.count; i++)
        if (marks[i].face == face && FRAME_RECORD(stick, marks[i].record) == record) return 1;
    return 0;
}

/* The base bears where there is a line to follow; of two, on the face with the long point, from where the blade leans
 * back into the stick; without tilt, on the left or top face. flat: the normal's part towards that face. */
static void set_base(const frame_stick *stick, const frame_stick_record *record, int on_edge, double flat,
                     frame_stick_saw *saw) {
    const frame_stick_face first = on_edge ? FRAME_STICK_LEFT : FRAME_STICK_TOP;
    const frame_stick_face second = on_edge ? FRAME_STICK_RIGHT : FRAME_STICK_BOTTOM;
    const int on_first = has_line(stick, record, first), on_second = has_line(stick, record, second);
    const int use_second = on_first == on_second ? saw->bevel_deg > 0 && flat > 0 : on_second;
    const double x = record->plane.normal.x;
    saw->base_face = use_second ? second : first;
    if (saw->bevel_deg > 0 && fabs(x) > no_angle) saw->bevel_end = toward((use_second ? -flat : flat) * x);
}

/* along: the normal's part along the stick; flat: square to the wide faces; across: in them, across the stick. */
static void set_angles(frame_stick_saw *saw, vec3 normal, int on_edge) {
    const double along = normal.x, flat = on_edge ? normal.y : normal.z, across = on_edge ? normal.z : normal.y;
    const double in_face = hypot(along, across);
    saw->mitre_deg = in_face < no_angle ? 90 : angle_deg(across, along);
    saw->bevel_deg = angle_deg(flat, in_face);
    saw->mitre_face = on_edge ? FRAME_STICK_TOP : FRAME_STICK_LEFT;
    if (saw->mitre_deg > 0 && saw->mitre_deg < 90) saw->mitre_end = toward(-across / along);
    if (hypot(normal.x, normal.y) > no_angle) {
        saw->across_top_deg = angle_deg(normal.y, normal.x);
        saw->top_edge_deg = angle_deg(normal.x, normal.y);
    }
    if (saw->bevel_deg > 0 && saw->mitre_deg > 0 && saw->mitre_deg < 90)
        saw->cautions |= FRAME_BIT(FRAME_STICK_SAW_COMPOUND);
    if (saw->bevel_deg > 45 + 1e-6) saw->cautions |= FRAME_BIT(FRAME_STICK_SAW_PAST_TILT);
}

frame_status frame_stick_saw_at_sized(const frame_stick *stick, size_t index, frame_stick_saw *item, size_t item_size) {
    if (!stick || !item || item_size < 2 * sizeof(uint32_t)) return frame_no_stick();
    if (index >= frame_stick_saw_count(stick)) return frame_stick_no_index(index, frame_stick_saw_count(stick));
    const frame_stick_record *record = frame_stick_record_at(stick, index);
    frame_stick_saw saw;
    frame_struct_blank(&frame_stick_saw_facts, &saw);
    saw.role = record->role;
    if (record->closes) saw.at_end = record->closes;
    saw.notch = record->notch;
    saw.notch_kind = record->kind;
    saw.label = record->label;
    saw.area_in2 = frame_stick_record_area(stick, record);
    const int on_edge = stick->z[1] - stick->z[0] >= stick->y[1] - stick->y[0];
    set_angles(&saw, record->plane.normal, on_edge);
    set_base(stick, record, on_edge, on_edge ? record->plane.normal.y : record->plane.normal.z, &saw);
    frame_struct_give(&frame_stick_saw_facts, &saw, item, item_size);
    return FRAME_OK;
}
