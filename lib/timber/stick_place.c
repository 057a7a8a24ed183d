/* Where a stick lies, and its planes brought into its own axes. */
#include "base/error.h"
#include "timber/stick.h"
#include "timber_facts.h"

static frame_status find_end(const frame_stick_in *in, vec3 *end) {
    const int given =
        (in->end_x_in != FRAME_NOT_GIVEN) + (in->end_y_in != FRAME_NOT_GIVEN) + (in->end_z_in != FRAME_NOT_GIVEN);
    if (given && in->length_in != FRAME_NOT_GIVEN)
        return frame_fail(FRAME_CONFLICT, "length_in", "", "either a length or an end point",
                          "length_in: give either a length or an end point, not both");
    if (given == 3) {
        *end = (vec3){in->end_x_in, in->end_y_in, in->end_z_in};
        return FRAME_OK;
    }
    if (given || in->length_in == FRAME_NOT_GIVEN) {
        const char *field = !given                            ? "length_in"
                            : in->end_x_in == FRAME_NOT_GIVEN ? "end_x_in"
                            : in->end_y_in == FRAME_NOT_GIVEN ? "end_y_in"
                                                              : "end_z_in";
        return frame_fail(FRAME_REQUIRED, field, "", "length_in, or all of end_x_in, end_y_in and end_z_in",
                          "%s: required: give length_in, or all of end_x_in, end_y_in and end_z_in", field);
    }
    *end = (vec3){in->start_x_in + in->length_in, in->start_y_in, in->start_z_in};
    return FRAME_OK;
}

frame_status frame_stick_place(const frame_stick_in *in, frame_placement *placement, double *length) {
    const vec3 start = {in->start_x_in, in->start_y_in, in->start_z_in};
    vec3 end = start;
    const frame_status status = find_end(in, &end);
    if (status) return status;
    const vec3 axis = vec_less(end, start);
    *length = in->length_in != FRAME_NOT_GIVEN ? in->length_in : vec_length(axis);
    if (!(*length > 1e-6 && *length <= 1200))
        return frame_fail_number(*length > 1200 ? FRAME_OUT_OF_RANGE : FRAME_CONFLICT, "end_x_in", *length,
                                 ">0..1200 in, the distance from start to end");
    placement->origin = start;
    placement->x = vec_times(axis, 1 / vec_length(axis));
    const vec3 crown = {in->crown_x, in->crown_y, in->crown_z};
    const vec3 square = vec_less(crown, vec_times(placement->x, vec_dot(placement->x, crown)));
    if (vec_length(square) <= 1e-6 * vec_length(crown))
        return frame_fail(FRAME_CONFLICT, "crown_z", "", "a direction that does not run along the axis",
                          "crown_z: the crown has no direction square to the axis; give crown_x, crown_y and crown_z");
    placement->y = vec_cross(square, placement->x);
    placement->y = vec_times(placement->y, 1 / vec_length(placement->y));
    placement->z = vec_cross(placement->x, placement->y);
    return FRAME_OK;
}

frame_status frame_stick_find_end(frame_stick_record *record) {
    const double x = record->plane.normal.x;
    record->closes = 0;
    if (record->role > FRAME_STICK_MITRE_CUT) return FRAME_OK;
    if (fabs(x) < 1e-3)
        return frame_fail(FRAME_CONFLICT, "waste_x", "", "a plane that crosses the stick",
                          "waste_x: a %s runs across the stick, and this plane runs along it",
                          frame_stick_role_words.table[record->role - 1].word);
    record->closes = x < 0 ? FRAME_STICK_START : FRAME_STICK_END;
    return FRAME_OK;
}

frame_status frame_stick_read_plane(frame_stick *stick, const frame_stick_plane *plane, frame_stick_record *record) {
    vec3 point = {plane->point_x_in, plane->point_y_in, plane->point_z_in};
    vec3 waste = {plane->waste_x, plane->waste_y, plane->waste_z};
    if (plane->axes == FRAME_STICK_AXES_WORLD) {
        point = frame_to_stick_direction(&stick->placement, vec_less(point, stick->placement.origin));
        waste = frame_to_stick_direction(&stick->placement, waste);
    }
    const double length = vec_length(waste);
    if (!(length > 1e-9))
        return frame_fail(FRAME_OUT_OF_RANGE, "waste_x", "0", "a direction",
                          "waste_x: the waste has no direction; one of waste_x, waste_y, waste_z must not be 0");
    int failed = 0;
    record->plane.normal = vec_times(waste, 1 / length);
    record->plane.at = vec_dot(record->plane.normal, point);
    record->role = plane->role;
    record->kind = FRAME_NOT_GIVEN_INT;
    record->notch = 0;
    record->label = plane->label ? frame_arena_text(&stick->texts, plane->label, &failed)
                                 : frame_stick_role_words.table[plane->role - 1].word;
    return failed ? FRAME_NO_MEMORY : FRAME_OK;
}
