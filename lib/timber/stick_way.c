/* A way to make a cut whose bevel is past the saw's tilt. On the wide face the bevel is the angle whose sine is the
 * part of the plane's normal square to that face; on the narrow face it is the other part. Both cannot be past 45
 * degrees at once, so that one of the two faces always takes a saw that tilts to 45, for any plane that crosses the
 * stick. From the narrow face the wood is deep: the saw goes in from both edges, and what its depth leaves in the
 * middle is cut by hand along the kerfs. */
#include "base/error.h"
#include "timber/stick.h"
#include "timber_facts.h"

static frame_status check(const frame_stick *stick, size_t saw, double tilt_deg, double depth) {
    if (saw >= frame_stick_saw_count(stick)) return frame_stick_no_index(saw, frame_stick_saw_count(stick));
    if (!(tilt_deg > 0 && tilt_deg <= 60))
        return frame_fail_number(isfinite(tilt_deg) ? FRAME_OUT_OF_RANGE : FRAME_NOT_A_NUMBER, "tilt_deg", tilt_deg,
                                 ">0..60 degrees");
    if (!(depth > 0 && depth <= 24))
        return frame_fail_number(isfinite(depth) ? FRAME_OUT_OF_RANGE : FRAME_NOT_A_NUMBER, "saw_depth_in", depth,
                                 ">0..24 in");
    return FRAME_OK;
}

static double degrees(double radians) {
    return radians * 180 / acos(-1.0);
}

/* Wood the blade goes through, along the blade. */
static double way_through(double thickness, double bevel_deg) {
    return thickness / cos(bevel_deg * acos(-1.0) / 180);
}

static void as_set(const frame_stick_saw *saw, double thickness, double saw_depth, frame_stick_way_out *way) {
    const double through = way_through(thickness, saw->bevel_deg);
    way->making = FRAME_STICK_MAKING_AS_SET;
    way->base_face = saw->base_face;
    way->mitre_face = saw->mitre_face, way->mitre_end = saw->mitre_end;
    way->bevel_end = saw->bevel_end;
    way->mitre_deg = saw->mitre_deg, way->bevel_deg = saw->bevel_deg;
    way->passes = through > saw_depth ? 2 : 1;
    way->depth_in = fmin(saw_depth, way->passes == 2 ? through / 2 : through);
    way->by_hand_in = fmax(0, through - way->passes * saw_depth);
}

/* across: the normal's part square to the wide faces; flat: square to the narrow ones. */
static void from_edge(vec3 normal, int on_edge, double depth, double saw_depth, frame_stick_way_out *way) {
    const double flat = on_edge ? normal.z : normal.y, across = on_edge ? normal.y : normal.z;
    way->base_face = on_edge ? FRAME_STICK_TOP : FRAME_STICK_LEFT;
    way->mitre_face = on_edge ? FRAME_STICK_LEFT : FRAME_STICK_TOP;
    way->mitre_deg = degrees(atan2(fabs(across), fabs(normal.x)));
    way->bevel_deg = degrees(atan2(fabs(flat), hypot(normal.x, across)));
    if (fabs(across) > 1e-9 && fabs(normal.x) > 1e-9)
        way->mitre_end = across * normal.x < 0 ? FRAME_STICK_END : FRAME_STICK_START;
    if (way->bevel_deg > 1e-6) way->bevel_end = flat * normal.x > 0 ? FRAME_STICK_END : FRAME_STICK_START;
    const double through = way_through(depth, way->bevel_deg);
    way->passes = through > saw_depth ? 2 : 1;
    way->making = way->passes == 1          ? FRAME_STICK_MAKING_FROM_EDGE
                  : through > 2 * saw_depth ? FRAME_STICK_MAKING_BY_HAND
                                            : FRAME_STICK_MAKING_FROM_BOTH_EDGES;
    way->depth_in = fmin(saw_depth, through / way->passes);
    way->by_hand_in = fmax(0, through - 2 * saw_depth);
    way->cautions = FRAME_BIT(FRAME_STICK_WAY_CAUTION_EDGE);
}

frame_status frame_stick_way_sized(const frame_stick *stick, size_t saw, double tilt_deg, double saw_depth_in,
                                   frame_stick_way_out *out, size_t out_size) {
    frame_stick_saw setting;
    frame_stick_way_out way = frame_stick_way_out_blank;
    if (!stick || !out || out_size < 2 * sizeof(uint32_t)) return frame_no_stick();
    frame_status status = check(stick, saw, tilt_deg, saw_depth_in);
    if (!status) status = frame_stick_saw_at(stick, saw, &setting);
    if (status) return status;
    const double thickness = stick->y[1] - stick->y[0], depth = stick->z[1] - stick->z[0];
    const int on_edge = depth >= thickness;
    way.cautions = 0;
    if (setting.bevel_deg <= tilt_deg + 1e-9)
        as_set(&setting, on_edge ? thickness : depth, saw_depth_in, &way);
    else
        from_edge(frame_stick_record_at(stick, saw)->plane.normal, on_edge, on_edge ? depth : thickness, saw_depth_in,
                  &way);
    if (way.bevel_deg > tilt_deg + 1e-9)
        return frame_fail(FRAME_IMPOSSIBLE, "tilt_deg", "", "a saw that tilts farther",
                          "tilt_deg: this cut is past the saw's tilt on every face");
    frame_struct_give(&frame_stick_way_out_facts, &way, out, out_size);
    return FRAME_OK;
}
