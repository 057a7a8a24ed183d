/* Penetration and bearing lengths: NDS 12.1.4 to 12.1.6 for what counts at all, 12.3.5 for what bears. */
#include "joint/reach.h"

#include <stdio.h>

#include "base/error.h"
#include "base/number.h"
#include "working/record.h"

#define LENGTHS "NDS 2018 12.3.5"

enum { NUMBER_LENGTH = 32 };

/* Depths are compared with this play, so that exactly 6 D counts. */
static const double play = 1e-9;

/* One driven fastener's point, as the steps find it. */
typedef struct point {
    double tip;         /* length of the tapered tip, as far as it lies in the member that holds it */
    double penetration; /* nails and wood screws with the tip, lag screws without */
    double out;         /* beyond that member */
} point;

static frame_status needed(const char *field, const char *why) {
    return frame_fail(FRAME_REQUIRED, field, "", "a length in inches", "%s: not given; %s", field, why);
}

/* The member that holds the point: the main one in single shear, the second side member in double shear. */
static double last_thickness(const frame_dowel_lateral_in *in) {
    if (in->shear_planes == 1) return in->main_thickness_in;
    return in->second_side_thickness_in != FRAME_NOT_GIVEN ? in->second_side_thickness_in : in->side_thickness_in;
}

static double length_of(const frame_dowel_lateral_in *in, const frame_fastener *fastener) {
    return in->length_in != FRAME_NOT_GIVEN ? in->length_in : fastener->length_in;
}

static double tip_of(const frame_dowel_lateral_in *in, const frame_fastener *fastener) {
    if (in->tip_in != FRAME_NOT_GIVEN) return in->tip_in;
    return fastener->tip_in != FRAME_NOT_GIVEN ? fastener->tip_in : 2 * fastener->nominal_in;
}

/* The length past the last shear plane, from the length of the fastener and what lies before. */
static double length_past(const frame_dowel_lateral_in *in, double length_in, double t_s, frame_working *w) {
    FRAME_TABLE(w, L, length_in, "in", "length under the head",
                in->length_in != FRAME_NOT_GIVEN ? "given" : "NDS 2018 appendix L");
    FRAME_GIVEN(w, g, in->gap_in, "in", "gap at each shear plane");
    if (in->toe_nail) {
        FRAME_STEP(w, p_past, L * cos(30 * FRAME_DEG) - t_s - g, "in",
                   "length past the shear plane, driven at 30 degrees", "NDS 2018 12.1.6, from memory");
        return p_past;
    }
    if (in->shear_planes == 2) {
        FRAME_GIVEN(w, t_m, in->main_thickness_in, "in", "thickness of the main member");
        FRAME_STEP(w, p_past, L - t_s - t_m - 2 * g, "in", "length past the second shear plane", LENGTHS);
        return p_past;
    }
    FRAME_STEP(w, p_past, L - t_s - g, "in", "length past the shear plane", LENGTHS);
    return p_past;
}

static double depth_given(double given, const char *meaning, frame_working *w) {
    FRAME_GIVEN(w, p_past, given, "in", meaning);
    return p_past;
}

/* As far as the member is thick; last not given: thick enough. */
static double within(double p_past, double last, frame_working *w) {
    if (last == FRAME_NOT_GIVEN) {
        FRAME_STEP(w, p_in, p_past, "in", "length in the member at the point", LENGTHS);
        return p_in;
    }
    FRAME_GIVEN(w, t_p, last, "in", "thickness of the member at the point");
    FRAME_STEP(w, p_in, fmin(p_past, t_p), "in", "length in the member at the point", LENGTHS);
    return p_in;
}

/* The penetration that the least and the full depth are measured by. */
static double penetration(int lag, double p_in, double E, frame_working *w) {
    if (lag) {
        FRAME_STEP(w, p, p_in - E, "in", "penetration, without the tip", "NDS 2018 12.1.4");
        return p;
    }
    FRAME_STEP(w, p, p_in, "in", "penetration, with the tip", "NDS 2018 12.1.5 and 12.1.6");
    return p;
}

/* Where the point ends up. */
static frame_status find_point(const frame_dowel_lateral_in *in, const frame_fastener *fastener, double t_s,
                               point *found, frame_working *w) {
    const double length = length_of(in, fastener), last = last_thickness(in);
    const int lag = in->kind == FRAME_DOWEL_LAG_SCREW;
    double past, tip = tip_of(in, fastener);
    if (in->penetration_in != FRAME_NOT_GIVEN) {
        past = depth_given(in->penetration_in, lag ? "penetration given, without the tip" : "penetration given", w);
        if (lag) tip = 0;
    } else if (length != FRAME_NOT_GIVEN) {
        past = length_past(in, length, t_s, w);
    } else if (last != FRAME_NOT_GIVEN) {
        past = depth_given(last, "through the member at the point", w);
        tip = 0;
    } else {
        return needed("penetration_in", "give it, length_in, or main_thickness_in for a fastener that goes through");
    }
    const double p_in = within(past, last, w);
    found->out = past - p_in;
    FRAME_GIVEN(w, E, fmax(0, tip - found->out), "in", "tapered tip within that member");
    found->tip = E;
    found->penetration = penetration(lag, p_in, E, w);
    return FRAME_OK;
}

static frame_status too_short(const frame_dowel_lateral_in *in, double p, double p_min) {
    char depth[NUMBER_LENGTH], least[NUMBER_LENGTH], valid[2 * NUMBER_LENGTH];
    frame_number_print(p, 5, depth, sizeof depth);
    frame_number_print(p_min, 5, least, sizeof least);
    snprintf(valid, sizeof valid, "at least %s in", least);
    if (p <= 0)
        return frame_fail(
            FRAME_OUTSIDE_SCOPE, "penetration_in", depth, valid,
            "penetration_in: the point does not reach the member that should hold it; it must enter it by "
            "at least %s in",
            least);
    return frame_fail(
        FRAME_OUTSIDE_SCOPE, "penetration_in", depth, valid,
        "penetration_in: %s in is less than %s in (%s); a fastener held so little counts for nothing (NDS "
        "12.1)",
        depth, least, in->kind == FRAME_DOWEL_LAG_SCREW ? "4 diameters, without the tip" : "6 diameters");
}

/* The least depth that counts. Clinched points need none (12.1.6.5). */
static frame_status enough(const frame_dowel_lateral_in *in, double D_nom, double p, double *least, frame_working *w) {
    if (in->clinched) {
        FRAME_CASE(w, "points clinched", "no least penetration", "NDS 2018 12.1.6, from memory");
        *least = 0;
        return p < -play ? too_short(in, p, 0) : FRAME_OK;
    }
    if (in->kind == FRAME_DOWEL_LAG_SCREW) {
        FRAME_STEP(w, p_min, 4 * D_nom, "in", "least penetration that counts, without the tip", "NDS 2018 12.1.4.6");
        *least = p_min;
    } else {
        FRAME_STEP(w, p_min, 6 * D_nom, "in", "least penetration that counts, with the tip",
                   in->kind == FRAME_DOWEL_WOOD_SCREW ? "NDS 2018 12.1.5.6" : "NDS 2018 12.1.6.5");
        *least = p_min;
    }
    return p < *least - play ? too_short(in, p, *least) : FRAME_OK;
}

/* The printed tables' way: the value at full depth, reduced in proportion. */
static double by_table(const frame_dowel_lateral_in *in, double D_nom, double p, frame_reach *reach, frame_working *w) {
    if (in->kind == FRAME_DOWEL_LAG_SCREW) {
        FRAME_STEP(w, l_p, 8 * D_nom, "in", "bearing length the tables are made for", "NDS 2018 table 12K footnotes");
        FRAME_STEP(w, r_p, fmin(1, p / l_p), "", "penetration factor p/8D", "NDS 2018 table 12K footnotes");
        reach->factor = r_p;
    } else {
        FRAME_STEP(w, l_p, 10 * D_nom, "in", "bearing length the tables are made for", "NDS 2018 table 12N footnotes");
        FRAME_STEP(w, r_p, fmin(1, p / l_p), "", "penetration factor p/10D", "NDS 2018 table 12N footnotes");
        reach->factor = r_p;
    }
    reach->hold = reach->factor < 1 ? FRAME_HOLD_BY_TABLE : FRAME_HOLD_FULL;
    return in->kind == FRAME_DOWEL_LAG_SCREW ? 8 * D_nom : 10 * D_nom;
}

/* The equations' way: what bears, half of a tapered tip left out. */
static double by_equations(const frame_dowel_lateral_in *in, double D_nom, const point *found, frame_reach *reach,
                           frame_working *w) {
    const double p = found->penetration, E = found->tip;
    if (in->kind == FRAME_DOWEL_LAG_SCREW) {
        reach->hold = p < 8 * D_nom - play ? FRAME_HOLD_BY_EQUATIONS : FRAME_HOLD_FULL;
        FRAME_STEP(w, l_p, p + E / 2, "in", "bearing length: half of the tip bears", "NDS 2018 12.3.5.3, from memory");
        return l_p;
    }
    if (p >= 10 * D_nom - play || E == 0) {
        FRAME_STEP(w, l_p, p, "in", "bearing length", LENGTHS);
        reach->hold = p >= 10 * D_nom - play ? FRAME_HOLD_FULL : FRAME_HOLD_BY_EQUATIONS;
        return l_p;
    }
    FRAME_CASE(w, "p < 10 * D_nom", "short: half of the tip is left out", "NDS 2018 12.3.5.3, from memory");
    FRAME_STEP(w, l_p, p - E / 2, "in", "bearing length", "NDS 2018 12.3.5.3, from memory");
    reach->hold = FRAME_HOLD_BY_EQUATIONS;
    return l_p;
}

/* A nail of 12d or smaller in double shear, through side members of 3/8 in and more. */
static frame_status may_clinch(const frame_dowel_lateral_in *in, double D_nom, double t_s) {
    if (!in->clinched) return FRAME_OK;
    const int thin = t_s < 0.375 || last_thickness(in) < 0.375;
    if (in->shear_planes == 2 && frame_dowel_is_nail(in->kind) && D_nom <= 0.148 && !thin) return FRAME_OK;
    return frame_fail(
        FRAME_OUTSIDE_SCOPE, "clinched", "yes", "no",
        "clinched: only nails of 12d or smaller, in double shear, with side members of 3/8 in or more, need no "
        "least penetration (NDS 12.1.6)");
}

static frame_status driven(const frame_dowel_lateral_in *in, const frame_fastener *fastener, double t_s,
                           frame_reach *reach, frame_working *w) {
    const double D_nom = fastener->nominal_in;
    point found = {0};
    frame_status status = may_clinch(in, D_nom, t_s);
    if (!status) status = find_point(in, fastener, t_s, &found, w);
    if (!status) status = enough(in, D_nom, found.penetration, &reach->least, w);
    if (status) return status;
    reach->penetration = found.penetration;
    reach->point_out = found.out;
    const int table = in->short_penetration == FRAME_SHORT_BY_TABLE;
    const double l_p =
        table ? by_table(in, D_nom, found.penetration, reach, w) : by_equations(in, D_nom, &found, reach, w);
    if (in->shear_planes == 1) {
        FRAME_STEP(w, l_m, l_p, "in", "bearing length in the main member", LENGTHS);
        FRAME_STEP(w, l_s, t_s, "in", "bearing length in the side member", LENGTHS);
        reach->l_m = l_m;
        reach->l_s = l_s;
    } else {
        FRAME_GIVEN(w, l_m, in->main_thickness_in, "in", "bearing length in the main member");
        FRAME_STEP(w, l_s, fmin(t_s, l_p), "in", "bearing length in the side members, the lesser", LENGTHS);
        reach->l_m = l_m;
        reach->l_s = l_s;
    }
    return FRAME_OK;
}

static frame_status through(const frame_dowel_lateral_in *in, double t_s, frame_reach *reach, frame_working *w) {
    const double t_2 = in->shear_planes == 2 ? last_thickness(in) : t_s;
    if (in->main_thickness_in == FRAME_NOT_GIVEN && in->penetration_in == FRAME_NOT_GIVEN)
        return needed("main_thickness_in", "a bolt bears through the whole main member");
    FRAME_GIVEN(w, l_m, in->main_thickness_in != FRAME_NOT_GIVEN ? in->main_thickness_in : in->penetration_in, "in",
                "bearing length in the main member");
    FRAME_GIVEN(w, l_s, fmin(t_s, t_2), "in", "bearing length in the side member, the lesser of two");
    *reach = (frame_reach){.l_m = l_m,
                           .l_s = l_s,
                           .penetration = FRAME_NOT_GIVEN,
                           .least = FRAME_NOT_GIVEN,
                           .factor = 1,
                           .hold = FRAME_HOLD_THROUGH};
    return FRAME_OK;
}

/* A toe-nail's side member is counted as a third of the nail long. */
static frame_status side_thickness(const frame_dowel_lateral_in *in, const frame_fastener *fastener, double *thickness,
                                   frame_working *w) {
    if (in->side_thickness_in != FRAME_NOT_GIVEN) {
        FRAME_GIVEN(w, t_s, in->side_thickness_in, "in", "thickness of the side member");
        *thickness = t_s;
        return FRAME_OK;
    }
    if (!in->toe_nail) return needed("side_thickness_in", "the side member's thickness is required");
    const double length = length_of(in, fastener);
    if (length == FRAME_NOT_GIVEN)
        return needed("length_in", "a toe-nail bears in the side member for a third of its length");
    FRAME_GIVEN(w, L_n, length, "in", "length of the nail");
    FRAME_STEP(w, t_s, L_n / 3, "in", "bearing length of a toe-nail in the side member",
               "NDS 2018 12.1.6, from memory");
    *thickness = t_s;
    return FRAME_OK;
}

static int is_steel(frame_joint_material material) {
    return material == FRAME_JOINT_STEEL || material == FRAME_JOINT_STEEL_A653 || material == FRAME_JOINT_STEEL_A36;
}

static frame_status sensible(const frame_dowel_lateral_in *in) {
    if (in->toe_nail && (!frame_dowel_is_nail(in->kind) || in->shear_planes != 1 || in->end_grain))
        return frame_fail(FRAME_CONFLICT, "toe_nail", "yes", "no",
                          "toe_nail: only a nail in single shear, not in end grain, is toe-nailed (NDS 12.5.4)");
    if (in->shear_planes == 2 && in->main_thickness_in == FRAME_NOT_GIVEN)
        return needed("main_thickness_in", "double shear needs the thickness of the middle member");
    if (in->shear_planes == 2 && in->short_penetration == FRAME_SHORT_BY_TABLE)
        return frame_fail(FRAME_CONFLICT, "short_penetration", "table", "\"equations\"",
                          "short_penetration: the tables' reduction is for single shear; use \"equations\"");
    const frame_joint_material last = in->shear_planes == 1 ? in->main_material : in->side_material;
    if (in->kind != FRAME_DOWEL_BOLT && (is_steel(last) || last == FRAME_JOINT_CONCRETE))
        return frame_fail(FRAME_OUTSIDE_SCOPE, in->shear_planes == 1 ? "main_material" : "side_material", "",
                          "wood or panels", "%s: the point of a nail or screw is held by wood only",
                          in->shear_planes == 1 ? "main_material" : "side_material");
    return FRAME_OK;
}

frame_status frame_joint_reach(const frame_dowel_lateral_in *in, const frame_fastener *fastener, frame_reach *reach,
                               frame_working *w) {
    double t_s = 0;
    FRAME_HEADING(w, "Bearing lengths");
    frame_status status = sensible(in);
    if (!status) status = side_thickness(in, fastener, &t_s, w);
    if (status) return status;
    *reach = (frame_reach){.factor = 1};
    return in->kind == FRAME_DOWEL_BOLT ? through(in, t_s, reach, w) : driven(in, fastener, t_s, reach, w);
}
