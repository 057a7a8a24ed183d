/* How the checks of members refuse what cannot be, or what would need more than was given. */
#include "strength/refusals.h"

#include "base/error.h"
#include "base/number.h"

frame_status frame_too_slender(double slenderness, double unbraced_length_in) {
    char ratio[32], length[32];
    const char *valid = "less between braces, or a broader or shallower member: R_B at most 50 (NDS 3.3.3.7)";
    frame_number_print(slenderness, 4, ratio, sizeof ratio);
    frame_number_print(unbraced_length_in, 6, length, sizeof length);
    return frame_fail(FRAME_OUTSIDE_SCOPE, "unbraced_length_in", length, valid,
                      "unbraced_length_in: %s makes the slenderness R_B %s; valid is %s", length, ratio, valid);
}

frame_status frame_lacks(const char *field, const char *valid) {
    return frame_fail(FRAME_REQUIRED, field, "", valid, "%s: not given; valid is %s", field, valid);
}

frame_status frame_contradicts(const char *field, const char *other) {
    return frame_fail(FRAME_CONFLICT, field, "", "one of the two",
                      "%s: given together with %s; valid is one of the two", field, other);
}

frame_status frame_notch_too_deep(double notch_in, double depth_in) {
    char notch[32], most[32];
    frame_number_print(notch_in, 6, notch, sizeof notch);
    frame_number_print(depth_in / 4, 6, most, sizeof most);
    return frame_fail(FRAME_OUTSIDE_SCOPE, "notch_in", notch, "at most a quarter of the depth (NDS 4.4.3)",
                      "notch_in: %s is deeper than a quarter of the depth; valid is at most %s (NDS 4.4.3)", notch,
                      most);
}

frame_status frame_no_weight(void) {
    return frame_fail(FRAME_IMPOSSIBLE, "dead_psf", "0", "a load above 0",
                      "dead_psf: 0 with no other load leaves the span without limit; valid is a load above 0");
}

frame_status frame_slope_refused(double slope) {
    char text[32];
    frame_number_print(slope, 6, text, sizeof text);
    return frame_fail(FRAME_CONFLICT, "slope", text, "no slope, or use \"rafter\"",
                      "slope: %s is given for what is no rafter; valid is no slope, or use \"rafter\"", text);
}

frame_status frame_bearing_too_long(double bearing_in, double span_in) {
    char bearing[32], span[32];
    frame_number_print(bearing_in, 6, bearing, sizeof bearing);
    frame_number_print(span_in, 6, span, sizeof span);
    return frame_fail(FRAME_IMPOSSIBLE, "bearing_in", bearing, "at most half the span",
                      "bearing_in: %s at each end is longer than a span of %s; valid is at most half the span", bearing,
                      span);
}

frame_status frame_edge_conflict(double unbraced_length_in) {
    char length[32];
    const char *valid = "compression_edge \"free\", or no unbraced length";
    frame_number_print(unbraced_length_in, 6, length, sizeof length);
    return frame_fail(FRAME_CONFLICT, "unbraced_length_in", length, valid,
                      "unbraced_length_in: %s is given for an edge held along its length; valid is %s", length, valid);
}

frame_status frame_column_too_slender(const char *field, double length_in, double slenderness) {
    char ratio[32], length[32];
    const char *valid = "braces closer together or a thicker member: l_e/d at most 50 (NDS 3.7.1.4)";
    frame_number_print(slenderness, 4, ratio, sizeof ratio);
    frame_number_print(length_in, 6, length, sizeof length);
    return frame_fail(FRAME_OUTSIDE_SCOPE, field, length, valid, "%s: %s makes the slenderness l_e/d %s; valid is %s",
                      field, length, ratio, valid);
}

frame_status frame_impact_refused(const char *field) {
    const char *valid = "a longer duration, or lumber without pressure treatment (NDS table 2.3.2)";
    return frame_fail(FRAME_REFUSED, field, "impact", valid,
                      "%s: impact is refused for incised, treated lumber; valid is %s", field, valid);
}

frame_status frame_time_effect_given(frame_design_method method, double time_effect_factor) {
    const int given = time_effect_factor != FRAME_NOT_GIVEN;
    if (method == FRAME_METHOD_LRFD && !given)
        return frame_lacks("time_effect_factor", "lambda of the combination, 0.6 to 1.25, with LRFD (NDS table N3)");
    return given && method != FRAME_METHOD_LRFD ? frame_lacks("method", "\"LRFD\", with time_effect_factor") : FRAME_OK;
}
