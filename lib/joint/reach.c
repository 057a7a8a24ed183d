/* Penetration and bearing lengths: NDS 12.1.4 to 12.1.6 for what counts at all, 12.3.5 for what bears. */
#include "joint/reach.h"

#include <stdio.h>

#include "base/error.h"
#include "base/number.h"
#include "joint/small.h"

#define LENGTHS "NDS 2018 12.3.5"

enum { NUMBER_LENGTH = 32 };

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
    if (in->kind == FRAME_DOWEL_DRIFT_PIN) {
        *least = 0;
        return p <= FRAME_DEPTH_PLAY ? too_short(in, p, 0) : FRAME_OK;
    }
    if (in->clinched) {
        FRAME_CASE(w, "points clinched", "no least penetration", "NDS 2018 12.1.6, from memory");
        *least = 0;
        return p < -FRAME_DEPTH_PLAY ? too_short(in, p, 0) : FRAME_OK;
    }
    if (in->kind == FRAME_DOWEL_LAG_SCREW) {
        FRAME_STEP(w, p_min, 4 * D_nom, "in", "least penetration that counts, without the tip", "NDS 2018 12.1.4.6");
        *least = p_min;
    } else {
        FRAME_STEP(w, p_min, 6 * D_nom, "in", "least penetration that counts, with the tip",
                   in->kind == FRAME_DOWEL_WOOD_SCREW ? "NDS 2018 12.1.5.6" : "NDS 2018 12.1.6.5");
        *least = p_min;
    }
    return p < *least - FRAME_DEPTH_PLAY ? too_short(in, p, *least) : FRAME_OK;
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

/* The equations' way: what bears, half of a tapered tip left out; all of it of lag screws, as their tables have it
 * (12.3.5.3 would let half of it bear). */
static double by_equations(const frame_dowel_lateral_in *in, double D_nom, const frame_point *found, frame_reach *reach,
                           frame_working *w) {
    const double p = found->penetration, E = found->tip;
    if (in->kind == FRAME_DOWEL_DRIFT_PIN) {
        FRAME_STEP(w, l_p, p, "in", "bearing length", LENGTHS);
        reach->hold = FRAME_HOLD_FULL;
        return l_p;
    }
    if (in->kind == FRAME_DOWEL_LAG_SCREW) {
        FRAME_STEP(w, l_p, p, "in", "bearing length, the tip left out", LENGTHS);
        reach->hold = FRAME_HOLD_FULL;
        return l_p;
    }
    return frame_bearing_of_point(p, E, D_nom, &reach->hold, w);
}

/* A nail of 12d or smaller in double shear, through side members of 3/8 in and more. */
static frame_status may_clinch(const frame_dowel_lateral_in *in, double D_nom, double t_s) {
    if (!in->clinched) return FRAME_OK;
    const int thin = t_s < 0.375 || frame_last_thickness(in) < 0.375;
    if (in->shear_planes == 2 && frame_dowel_is_nail(in->kind) && D_nom <= 0.148 && !thin) return FRAME_OK;
    return frame_fail(
        FRAME_OUTSIDE_SCOPE, "clinched", "yes", "no",
        "clinched: only nails of 12d or smaller, in double shear, with side members of 3/8 in or more, need no "
        "least penetration (NDS 12.1.6)");
}

static frame_status driven(const frame_dowel_lateral_in *in, const frame_fastener *fastener, double t_s,
                           frame_reach *reach, frame_working *w) {
    const double D_nom = fastener->nominal_in;
    frame_point found = {0};
    frame_status status = may_clinch(in, D_nom, t_s);
    if (!status) status = frame_find_point(in, fastener, t_s, &found, w);
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
    const double t_2 = in->shear_planes == 2 ? frame_last_thickness(in) : t_s;
    if (in->main_thickness_in == FRAME_NOT_GIVEN && in->penetration_in == FRAME_NOT_GIVEN)
        return frame_length_needed("main_thickness_in", "a bolt bears through the whole main member");
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
    if (!in->toe_nail) return frame_length_needed("side_thickness_in", "the side member's thickness is required");
    const double length = frame_driven_length(in, fastener);
    if (length == FRAME_NOT_GIVEN)
        return frame_length_needed("length_in", "a toe-nail bears in the side member for a third of its length");
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
        return frame_length_needed("main_thickness_in", "double shear needs the thickness of the middle member");
    if (in->shear_planes == 2 && in->short_penetration == FRAME_SHORT_BY_TABLE)
        return frame_fail(FRAME_CONFLICT, "short_penetration", "table", "\"equations\"",
                          "short_penetration: the tables' reduction is for single shear; use \"equations\"");
    if (in->kind == FRAME_DOWEL_DRIFT_PIN && in->short_penetration == FRAME_SHORT_BY_TABLE)
        return frame_fail(FRAME_CONFLICT, "short_penetration", "table", "\"equations\"",
                          "short_penetration: no table has drift pins; use \"equations\"");
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
