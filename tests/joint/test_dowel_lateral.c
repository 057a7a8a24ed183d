/* One fastener across the joint: the modes against closed forms and one another, and the traps of penetration, threads
 * and factors. The printed tables are checked in tests/verification. */
#include <math.h>
#include <string.h>

#include "joint_facts.h"
#include "lateral.h"

static const double tight = 1e-9;
#define CLOSE(a, b) ck_assert_double_eq_tol((a) / (b), 1, tight)

/* AWC Technical Report 12, example 3.1 without a gap: all six modes as printed, to 1 lb. */
START_TEST(six_modes_of_a_bolt) {
    frame_dowel_lateral_in in = bolt_of("1/2", 1.5, 1.5);
    in.side_specific_gravity = in.main_specific_gravity = FRAME_NOT_GIVEN;
    in.side_bearing_psi = in.main_bearing_psi = 4800;
    in.bending_yield_psi = 45000;
    const frame_dowel_lateral_out out = lateral_of(&in);
    const double printed[] = {900, 900, 414, 550, 550, 663};
    const double ours[] = {out.z_im_lb, out.z_is_lb, out.z_ii_lb, out.z_iiim_lb, out.z_iiis_lb, out.z_iv_lb};
    for (size_t i = 0; i < 6; i++) ck_assert_double_eq_tol(ours[i], printed[i], 0.5);
    ck_assert_int_eq(out.mode, FRAME_MODE_II);
    ck_assert_double_eq(out.z_lb, out.z_ii_lb);
    ck_assert_int_eq(out.hold, FRAME_HOLD_THROUGH);
    ck_assert_double_eq(out.penetration_in, FRAME_NOT_GIVEN);
}
END_TEST

START_TEST(bearing_strengths) {
    frame_dowel_lateral_in in = nail_of(0.162);
    CLOSE(lateral_of(&in).fe_main_psi, 16600 * pow(0.5, 1.84));
    in.bearing_rounding = FRAME_BEARING_TO_50;
    ck_assert_double_eq(lateral_of(&in).fe_main_psi, 4650);
    in = bolt_of("1/2", 1.5, 3.5);
    CLOSE(lateral_of(&in).fe_side_psi, 5600);
    in.side_angle_deg = 90;
    const double across = 6100 * pow(0.5, 1.45) / sqrt(0.5);
    CLOSE(lateral_of(&in).fe_side_psi, across);
    in.side_angle_deg = 30;
    CLOSE(lateral_of(&in).fe_side_psi, 5600 * across / (5600 * 0.25 + across * 0.75));
    in.side_specific_gravity = FRAME_NOT_GIVEN, in.side_material = FRAME_JOINT_STEEL;
    in.side_thickness_in = 0.24;
    ck_assert_double_eq(lateral_of(&in).fe_side_psi, 61850);
    in.side_thickness_in = 0.25;
    ck_assert_double_eq(lateral_of(&in).fe_side_psi, 87000);
}
END_TEST

START_TEST(end_grain_bears_across) {
    frame_dowel_lateral_in in = bolt_of("1/2", 1.5, 3.5);
    in.kind = FRAME_DOWEL_LAG_SCREW;
    in.main_thickness_in = 6;
    in.end_grain = 1;
    const frame_dowel_lateral_out end = lateral_of(&in);
    in.end_grain = 0, in.main_angle_deg = 90;
    const frame_dowel_lateral_out across = lateral_of(&in);
    ck_assert_double_eq(end.z_lb, across.z_lb);
    CLOSE(end.adjusted_lb, 0.67 * across.adjusted_lb);
}
END_TEST

/* Members of the same wood: swapping them swaps the modes and leaves the value. */
START_TEST(members_may_be_swapped) {
    static const double thickness[] = {0.75, 1.5, 2.5, 3.5, 5.5};
    for (size_t i = 0; i < 5; i++)
        for (size_t j = 0; j < 5; j++) {
            const frame_dowel_lateral_in one = bolt_of("5/8", thickness[i], thickness[j]),
                                         other = bolt_of("5/8", thickness[j], thickness[i]);
            const frame_dowel_lateral_out a = lateral_of(&one), b = lateral_of(&other);
            CLOSE(a.z_im_lb, b.z_is_lb);
            CLOSE(a.z_ii_lb, b.z_ii_lb);
            CLOSE(a.z_iiim_lb, b.z_iiis_lb);
            CLOSE(a.z_iv_lb, b.z_iv_lb);
            CLOSE(a.z_lb, b.z_lb);
        }
}
END_TEST

static void grows(double before, double after, const char *what, double at) {
    ck_assert_msg(after >= before * (1 - tight), "falls with %s at %g: %g to %g", what, at, before, after);
}

START_TEST(more_never_holds_less) {
    double before = 0;
    for (double d = 0.08; d < 0.2499; d += 0.0007) {
        frame_dowel_lateral_in in = nail_of(d);
        in.bending_yield_psi = 90000;
        const double z = lateral_of(&in).z_lb;
        grows(before, z, "diameter", d);
        before = z;
    }
    before = 0;
    for (double g = 0.3; g < 0.75; g += 0.003) {
        frame_dowel_lateral_in in = nail_of(0.148);
        in.main_specific_gravity = g;
        const double z = lateral_of(&in).z_lb;
        grows(before, z, "specific gravity", g);
        before = z;
    }
}
END_TEST

START_TEST(deeper_never_holds_less) {
    for (int kind = FRAME_DOWEL_COMMON_NAIL; kind <= FRAME_DOWEL_LAG_SCREW; kind++)
        for (int route = FRAME_SHORT_BY_EQUATIONS; route <= FRAME_SHORT_BY_TABLE; route++) {
            double before = 0;
            frame_dowel_lateral_in in = nail_of(kind == FRAME_DOWEL_LAG_SCREW ? 0.375 : 0.19);
            in.kind = kind, in.short_penetration = route;
            in.side_angle_deg = in.main_angle_deg = 0;
            for (double p = 1.51; p < 4; p += 0.01) {
                in.penetration_in = p;
                const double z = lateral_of(&in).z_lb;
                grows(before, z, "penetration", p);
                before = z;
            }
        }
}
END_TEST

/* Technical Report 12 without a gap is NDS 12.3.1; a gap only takes away. */
START_TEST(a_gap) {
    for (int planes = 1; planes <= 2; planes++)
        for (double side = 0.5; side < 4; side += 0.5) {
            frame_dowel_lateral_in in = bolt_of("1/2", side, 2.5);
            in.shear_planes = planes, in.main_angle_deg = 60;
            const frame_dowel_lateral_out closed = lateral_of(&in);
            in.gap_in = 1e-12;
            const frame_dowel_lateral_out nearly = lateral_of(&in);
            CLOSE(nearly.z_im_lb, closed.z_im_lb);
            CLOSE(nearly.z_is_lb, closed.z_is_lb);
            CLOSE(nearly.z_iiis_lb, closed.z_iiis_lb);
            CLOSE(nearly.z_iv_lb, closed.z_iv_lb);
            if (planes == 1) {
                CLOSE(nearly.z_ii_lb, closed.z_ii_lb);
                CLOSE(nearly.z_iiim_lb, closed.z_iiim_lb);
            }
            in.gap_in = 0.5;
            const frame_dowel_lateral_out apart = lateral_of(&in);
            ck_assert_double_lt(apart.z_iv_lb, closed.z_iv_lb);
            ck_assert_double_le(apart.z_lb, closed.z_lb);
            ck_assert(FRAME_HAS(apart.cautions, FRAME_DOWEL_LATERAL_CAUTION_GAP));
            ck_assert_int_eq(apart.known, FRAME_KNOWN_MEMORY);
        }
}
END_TEST

START_TEST(double_shear_has_four_modes) {
    frame_dowel_lateral_in in = bolt_of("1/2", 1.5, 1.5);
    const frame_dowel_lateral_out one = lateral_of(&in);
    in.shear_planes = 2;
    const frame_dowel_lateral_out two = lateral_of(&in);
    ck_assert_double_eq(two.z_ii_lb, FRAME_NOT_GIVEN);
    ck_assert_double_eq(two.z_iiim_lb, FRAME_NOT_GIVEN);
    CLOSE(two.z_im_lb, one.z_im_lb);
    CLOSE(two.z_is_lb, 2 * one.z_is_lb);
    CLOSE(two.z_iiis_lb, 2 * one.z_iiis_lb);
    CLOSE(two.z_iv_lb, 2 * one.z_iv_lb);
    in.second_side_thickness_in = 0.75;
    CLOSE(lateral_of(&in).z_is_lb, one.z_is_lb);
}
END_TEST

/* Six diameters with the tip, or nothing; the table takes p/10D, the equations leave half of the tip out. */
START_TEST(short_nails) {
    frame_dowel_lateral_in in = nail_of(0.162);
    in.penetration_in = 6 * 0.162;
    const frame_dowel_lateral_out least = lateral_of(&in);
    CLOSE(least.main_bearing_in, 5 * 0.162);
    ck_assert_int_eq(least.hold, FRAME_HOLD_BY_EQUATIONS);
    ck_assert(FRAME_HAS(least.cautions, FRAME_DOWEL_LATERAL_CAUTION_SHORT));
    ck_assert_int_eq(least.known, FRAME_KNOWN_MEMORY);
    in.penetration_in = 0.97;
    refused(&in, FRAME_OUTSIDE_SCOPE, "penetration_in");
    ck_assert_str_eq(frame_error_valid(), "at least 0.972 in");
    in.penetration_in = 1.62;
    const frame_dowel_lateral_out full = lateral_of(&in);
    CLOSE(full.main_bearing_in, 1.62);
    ck_assert_int_eq(full.hold, FRAME_HOLD_FULL);
    ck_assert_int_eq(full.known, FRAME_KNOWN_SECONDARY);
    in.short_penetration = FRAME_SHORT_BY_TABLE;
    in.penetration_in = 1.25;
    const frame_dowel_lateral_out table = lateral_of(&in);
    CLOSE(table.penetration_factor, 1.25 / 1.62);
    CLOSE(table.z_lb, full.z_lb * 1.25 / 1.62);
    ck_assert_int_eq(table.hold, FRAME_HOLD_BY_TABLE);
    in.penetration_in = 3;
    ck_assert_double_eq(lateral_of(&in).penetration_factor, 1);
}
END_TEST

/* The nail's own length, less what lies before; a point that stands out leaves its tip outside. */
START_TEST(length_makes_penetration) {
    frame_dowel_lateral_in in = nail_of(FRAME_NOT_GIVEN);
    in.size = "16d";
    const frame_dowel_lateral_out out = lateral_of(&in);
    CLOSE(out.penetration_in, 2);
    ck_assert(FRAME_HAS(out.cautions, FRAME_DOWEL_LATERAL_CAUTION_REACH));
    in.gap_in = 0.5;
    CLOSE(lateral_of(&in).penetration_in, 1.5);
    in.gap_in = 2.5;
    refused(&in, FRAME_OUTSIDE_SCOPE, "penetration_in");
    in.gap_in = 0, in.main_thickness_in = 1.5;
    const frame_dowel_lateral_out through = lateral_of(&in);
    CLOSE(through.penetration_in, 1.5);
    CLOSE(through.main_bearing_in, 1.5);
    CLOSE(through.point_out_in, 0.5);
    ck_assert_int_eq(through.hold, FRAME_HOLD_THROUGH);
    ck_assert_int_eq(through.known, FRAME_KNOWN_SECONDARY);
    ck_assert(FRAME_HAS(through.cautions, FRAME_DOWEL_LATERAL_CAUTION_POINT_OUT));
    in.side_thickness_in = 1.9;
    CLOSE(lateral_of(&in).main_bearing_in, 1.5 - (0.324 - 0.1) / 2);
}
END_TEST

START_TEST(short_lags) {
    frame_dowel_lateral_in in = bolt_of("1/2", 1.5, FRAME_NOT_GIVEN);
    in.kind = FRAME_DOWEL_LAG_SCREW;
    refused(&in, FRAME_REQUIRED, "penetration_in");
    in.length_in = 4;
    const frame_dowel_lateral_out out = lateral_of(&in);
    CLOSE(out.penetration_in, 4 - 1.5 - 0.3125);
    CLOSE(out.main_bearing_in, 4 - 1.5 - 0.3125);
    ck_assert_int_eq(out.hold, FRAME_HOLD_FULL);
    CLOSE(out.least_penetration_in, 2);
    CLOSE(out.diameter_in, 0.371);
    in.length_in = 3.8;
    refused(&in, FRAME_OUTSIDE_SCOPE, "penetration_in");
    in.length_in = 4, in.short_penetration = FRAME_SHORT_BY_TABLE;
    const frame_dowel_lateral_out table = lateral_of(&in);
    CLOSE(table.penetration_factor, 2.1875 / 4);
    CLOSE(table.main_bearing_in, 4);
}
END_TEST

/* NDS table 12.3.1B: K_D by the diameter that bears, K_theta from 1/4 in up, both for threads with a slender root. */
START_TEST(reduction_terms) {
    frame_dowel_lateral_in in = nail_of(0.162);
    CLOSE(lateral_of(&in).reduction_i, 2.2);
    in.diameter_in = 0.2;
    CLOSE(lateral_of(&in).reduction_iii, 2.5);
    in = bolt_of("1/4", 1.5, 6);
    in.kind = FRAME_DOWEL_LAG_SCREW, in.main_angle_deg = 90;
    CLOSE(lateral_of(&in).reduction_i, (10 * 0.173 + 0.5) * 1.25);
    in.main_angle_deg = 45, in.side_angle_deg = 18;
    CLOSE(lateral_of(&in).reduction_iii, (10 * 0.173 + 0.5) * 1.125);
    in.kind = FRAME_DOWEL_WOOD_SCREW, in.size = "No.16", in.main_angle_deg = in.side_angle_deg = 0;
    const frame_dowel_lateral_out screw = lateral_of(&in);
    CLOSE(screw.reduction_ii, 10 * 0.209 + 0.5);
    CLOSE(screw.fe_main_psi, 5600);
    in = bolt_of("3/4", 1.5, 3.5);
    in.main_angle_deg = 90;
    const frame_dowel_lateral_out bolt = lateral_of(&in);
    CLOSE(bolt.reduction_i, 5);
    CLOSE(bolt.reduction_ii, 4.5);
    CLOSE(bolt.reduction_iii, 4);
}
END_TEST

START_TEST(threads) {
    frame_dowel_lateral_in in = bolt_of("1/2", 1.5, 3.5);
    const frame_dowel_lateral_out shank = lateral_of(&in);
    CLOSE(shank.diameter_in, 0.5);
    ck_assert(FRAME_HAS(shank.cautions, FRAME_DOWEL_LATERAL_CAUTION_THREADS));
    ck_assert(FRAME_HAS(shank.assumed, FRAME_ASSUMED_DOWEL_LATERAL_IN_THREADS_IN_PLANE));
    in.threads_in_plane = 1;
    const frame_dowel_lateral_out threaded = lateral_of(&in);
    CLOSE(threaded.diameter_in, 0.406);
    ck_assert_double_lt(threaded.z_lb, shank.z_lb);
    in.root_diameter_in = 0.6;
    refused(&in, FRAME_IMPOSSIBLE, "root_diameter_in");
    in.root_diameter_in = FRAME_NOT_GIVEN, in.size = NULL, in.diameter_in = 0.55;
    refused(&in, FRAME_REQUIRED, "root_diameter_in");
}
END_TEST

START_TEST(adjustment) {
    frame_dowel_lateral_in in = nail_of(0.148);
    in.load_duration_factor = 1.6, in.service = FRAME_SERVICE_WET, in.temperature_f = 110, in.diaphragm = 1;
    frame_dowel_lateral_out out = lateral_of(&in);
    CLOSE(out.adjusted_lb, out.z_lb * 1.6 * 0.7 * 0.7 * 1.1);
    in = bolt_of("1/2", 1.5, 3.5);
    in.made = FRAME_SERVICE_WET, in.temperature_f = 150, in.group_factor = 0.9, in.geometry_factor = 0.5;
    out = lateral_of(&in);
    CLOSE(out.adjusted_lb, out.z_lb * 0.4 * 0.7 * 0.9 * 0.5);
    ck_assert(FRAME_HAS(out.cautions, FRAME_DOWEL_LATERAL_CAUTION_SHRINKAGE));
    ck_assert(FRAME_HAS(out.cautions, FRAME_DOWEL_LATERAL_CAUTION_GROUP));
    in.shrinks_freely = 1;
    ck_assert_double_eq(lateral_of(&in).wet_factor, 1);
    in = nail_of(0.148);
    in.made = FRAME_SERVICE_WET;
    ck_assert_double_eq(lateral_of(&in).wet_factor, 1);
    in.load_duration_factor = 2;
    refused(&in, FRAME_OUT_OF_RANGE, "load_duration_factor");
}
END_TEST

/* A toe-nail bears a third of its length in the side member and is driven at 30 degrees. */
START_TEST(toe_nails) {
    frame_dowel_lateral_in in = nail_of(FRAME_NOT_GIVEN);
    in.size = "16d", in.toe_nail = 1, in.side_thickness_in = in.main_thickness_in = FRAME_NOT_GIVEN;
    const frame_dowel_lateral_out out = lateral_of(&in);
    CLOSE(out.side_bearing_in, 3.5 / 3);
    CLOSE(out.penetration_in, 3.5 * sqrt(0.75) - 3.5 / 3);
    CLOSE(out.adjusted_lb, 0.83 * out.z_lb);
    ck_assert(FRAME_HAS(out.cautions, FRAME_DOWEL_LATERAL_CAUTION_TOE_NAIL));
    in.toe_nail = 0;
    refused(&in, FRAME_REQUIRED, "side_thickness_in");
    in.toe_nail = 1, in.kind = FRAME_DOWEL_WOOD_SCREW, in.size = "No.10", in.side_thickness_in = 1,
    in.penetration_in = 2;
    refused(&in, FRAME_CONFLICT, "toe_nail");
}
END_TEST

/* AWC Structural Wood Design Examples, E2.4, with the root diameter throughout as NDS 12.3.7 has it. */
START_TEST(a_screw_in_double_shear) {
    frame_dowel_lateral_in in = nail_of(FRAME_NOT_GIVEN);
    in.kind = FRAME_DOWEL_WOOD_SCREW, in.size = "No.10", in.length_in = 6, in.shear_planes = 2,
    in.main_thickness_in = 3;
    in.side_specific_gravity = in.main_specific_gravity = 0.55;
    const frame_dowel_lateral_out out = lateral_of(&in);
    CLOSE(out.side_bearing_in, 1.5 - 0.19);
    ck_assert_double_eq_tol(out.z_lb, 254.9568, 5e-4);
    in.short_penetration = FRAME_SHORT_BY_TABLE;
    refused(&in, FRAME_CONFLICT, "short_penetration");
    in.short_penetration = FRAME_NOT_GIVEN_INT, in.main_thickness_in = FRAME_NOT_GIVEN;
    refused(&in, FRAME_REQUIRED, "main_thickness_in");
}
END_TEST

START_TEST(clinched_nails) {
    frame_dowel_lateral_in in = nail_of(FRAME_NOT_GIVEN);
    in.size = "10d", in.shear_planes = 2, in.side_thickness_in = 0.5, in.main_thickness_in = 1.5;
    refused(&in, FRAME_OUTSIDE_SCOPE, "penetration_in");
    in.clinched = 1;
    const frame_dowel_lateral_out out = lateral_of(&in);
    CLOSE(out.side_bearing_in, 0.5);
    ck_assert_double_eq(out.least_penetration_in, 0);
    ck_assert(FRAME_HAS(out.cautions, FRAME_DOWEL_LATERAL_CAUTION_CLINCHED));
    in.size = "16d";
    refused(&in, FRAME_OUTSIDE_SCOPE, "clinched");
}
END_TEST

START_TEST(sizes_as_people_write_them) {
    static const struct {
        frame_dowel_kind kind;
        const char *size;
        double diameter_in;
    } sizes[] = {
        {FRAME_DOWEL_COMMON_NAIL, "16d", 0.162},
        {FRAME_DOWEL_COMMON_NAIL, "16 D", 0.162},
        {FRAME_DOWEL_COMMON_NAIL, "16-penny", 0.162},
        {FRAME_DOWEL_BOX_NAIL, "16 penny", 0.135},
        {FRAME_DOWEL_SINKER_NAIL, "16d", 0.148},
        {FRAME_DOWEL_RING_SHANK_NAIL, "0.148 x 3", 0.148},
        {FRAME_DOWEL_WOOD_SCREW, "No.10", 0.152},
        {FRAME_DOWEL_WOOD_SCREW, "no. 10", 0.152},
        {FRAME_DOWEL_WOOD_SCREW, "#10", 0.152},
        {FRAME_DOWEL_WOOD_SCREW, "10", 0.152},
        {FRAME_DOWEL_BOLT, "1/2", 0.5},
        {FRAME_DOWEL_BOLT, "1/2 in", 0.5},
        {FRAME_DOWEL_BOLT, "1/2\"", 0.5},
        {FRAME_DOWEL_LAG_SCREW, "3/8 inch", 0.265},
    };
    for (size_t i = 0; i < sizeof sizes / sizeof *sizes; i++) {
        frame_dowel_lateral_in in = nail_of(FRAME_NOT_GIVEN);
        in.kind = sizes[i].kind, in.size = sizes[i].size, in.penetration_in = 2.5;
        in.side_angle_deg = in.main_angle_deg = 0;
        ck_assert_double_eq(lateral_of(&in).diameter_in, sizes[i].diameter_in);
    }
}
END_TEST

START_TEST(what_is_not_a_size) {
    static const char *const sizes[] = {
        "17d", "", "d", "16", "penny", "No.", "\"", "in", "a text much longer than any size of a nail could ever be"};
    for (size_t i = 0; i < sizeof sizes / sizeof *sizes; i++) {
        frame_dowel_lateral_in in = nail_of(FRAME_NOT_GIVEN);
        in.size = sizes[i];
        refused(&in, FRAME_UNKNOWN_NAME, "size");
        ck_assert_ptr_nonnull(strstr(frame_error_text(), "6d, 7d, 8d, 10d, 12d, 16d, 20d"));
    }
    frame_dowel_lateral_in in = nail_of(FRAME_NOT_GIVEN);
    refused(&in, FRAME_REQUIRED, "size");
    in.size = "16d", in.diameter_in = 0.162;
    refused(&in, FRAME_CONFLICT, "diameter_in");
    in.kind = FRAME_DOWEL_OTHER_DRIVEN, in.diameter_in = FRAME_NOT_GIVEN;
    refused(&in, FRAME_CONFLICT, "size");
}
END_TEST

START_TEST(wood_by_species_or_gravity) {
    frame_dowel_lateral_in in = nail_of(0.148);
    frame_species fir;
    ck_assert(!frame_species_find("DFL", &fir));
    const double by_gravity = lateral_of(&in).z_lb;
    in.main_specific_gravity = FRAME_NOT_GIVEN;
    refused(&in, FRAME_REQUIRED, "main_species");
    in.main_species = fir;
    ck_assert_double_eq(lateral_of(&in).z_lb, by_gravity);
    in.main_specific_gravity = 0.5;
    refused(&in, FRAME_CONFLICT, "main_specific_gravity");
    in.main_specific_gravity = FRAME_NOT_GIVEN, in.side_material = FRAME_JOINT_STEEL;
    refused(&in, FRAME_CONFLICT, "side_material");
}
END_TEST

START_TEST(what_the_standard_does_not_give) {
    frame_dowel_lateral_in in = bolt_of("1/2", 0.75, 3.5);
    in.side_angle_deg = FRAME_NOT_GIVEN;
    refused(&in, FRAME_REQUIRED, "side_angle_deg");
    in.side_specific_gravity = FRAME_NOT_GIVEN, in.side_material = FRAME_JOINT_OSB;
    refused(&in, FRAME_NO_VALUE, "side_material");
    in.side_bearing_psi = 3000;
    ck_assert_int_eq(lateral_of(&in).known, FRAME_KNOWN_SECONDARY);
    in = nail_of(0.09);
    refused(&in, FRAME_NO_VALUE, "bending_yield_psi");
    in = nail_of(0.148);
    in.main_specific_gravity = FRAME_NOT_GIVEN, in.main_material = FRAME_JOINT_STEEL;
    refused(&in, FRAME_OUTSIDE_SCOPE, "main_material");
    in = bolt_of("1/2", 1.5, FRAME_NOT_GIVEN);
    refused(&in, FRAME_REQUIRED, "main_thickness_in");
    in = bolt_of(NULL, 1.5, 3.5);
    in.diameter_in = 1.125;
    refused(&in, FRAME_OUTSIDE_SCOPE, "diameter_in");
}
END_TEST

/* Panels come from a recalled table, and the result says so. */
START_TEST(sources_are_carried) {
    frame_dowel_lateral_in in = nail_of(0.131);
    ck_assert_int_eq(lateral_of(&in).known, FRAME_KNOWN_SECONDARY);
    in.side_specific_gravity = FRAME_NOT_GIVEN, in.side_material = FRAME_JOINT_OSB, in.side_thickness_in = 7.0 / 16;
    const frame_dowel_lateral_out out = lateral_of(&in);
    ck_assert_int_eq(out.known, FRAME_KNOWN_MEMORY);
    ck_assert(FRAME_HAS(out.cautions, FRAME_DOWEL_LATERAL_CAUTION_MEMORY));
    ck_assert_double_eq(out.fe_side_psi, 4650);
    ck_assert(FRAME_HAS(out.not_checked, FRAME_DOWEL_LATERAL_UNCHECKED_SPACING));
    ck_assert(!FRAME_HAS(out.assumed, FRAME_ASSUMED_DOWEL_LATERAL_IN_SIDE_MATERIAL));
    ck_assert(FRAME_HAS(out.assumed, FRAME_ASSUMED_DOWEL_LATERAL_IN_LOAD_DURATION_FACTOR));
}
END_TEST

int main(void) {
    Suite *suite = suite_create("dowel_lateral");
    TCase *tests = tcase_create("all");
    tcase_add_test(tests, six_modes_of_a_bolt);
    tcase_add_test(tests, bearing_strengths);
    tcase_add_test(tests, end_grain_bears_across);
    tcase_add_test(tests, members_may_be_swapped);
    tcase_add_test(tests, more_never_holds_less);
    tcase_add_test(tests, deeper_never_holds_less);
    tcase_add_test(tests, a_gap);
    tcase_add_test(tests, double_shear_has_four_modes);
    tcase_add_test(tests, short_nails);
    tcase_add_test(tests, length_makes_penetration);
    tcase_add_test(tests, short_lags);
    tcase_add_test(tests, reduction_terms);
    tcase_add_test(tests, threads);
    tcase_add_test(tests, adjustment);
    tcase_add_test(tests, toe_nails);
    tcase_add_test(tests, a_screw_in_double_shear);
    tcase_add_test(tests, clinched_nails);
    tcase_add_test(tests, sizes_as_people_write_them);
    tcase_add_test(tests, what_is_not_a_size);
    tcase_add_test(tests, wood_by_species_or_gravity);
    tcase_add_test(tests, what_the_standard_does_not_give);
    tcase_add_test(tests, sources_are_carried);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
