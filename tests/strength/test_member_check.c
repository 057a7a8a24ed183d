/* Any beam against the NDS: equal to beam_check where both apply, published examples, cuts by hand, refusals,
 * properties. */
#include <check.h>
#include <math.h>
#include <string.h>

#include <frame/strength.h>
#include <frame/text.h>
#include <frame/working.h>

static const double ten_feet[] = {120}, twenty_feet[] = {240}, two_spans[] = {144, 120};

static frame_size size_of(const char *name) {
    frame_size id = 0;
    ck_assert_msg(!frame_size_find(name, &id), "%s", frame_error_text());
    return id;
}

static frame_member_check_in sawn(const char *size, const char *species, const char *grade) {
    frame_member_check_in in;
    frame_member_check_in_init(&in);
    in.size = size_of(size);
    ck_assert(!frame_species_find(species, &in.species) && !frame_grade_find(grade, &in.grade));
    in.spans_in = ten_feet, in.span_count = 1;
    in.dead_plf = 50, in.live_plf = 120;
    return in;
}

/* Solves, and works every recorded formula out anew. */
static frame_member_check *solve(const frame_member_check_in *in, frame_member_check_out *out) {
    frame_member_check *answer;
    frame_working *working;
    frame_text *wrong;
    ck_assert(!frame_working_new(&working));
    ck_assert(!frame_text_new(&wrong));
    ck_assert_msg(!frame_member_check_solve(in, &answer, working), "%s", frame_error_text());
    ck_assert_msg(!frame_working_check(working, wrong), "%s", frame_text_chars(wrong));
    ck_assert(!frame_member_check_result(answer, out));
    frame_text_free(wrong);
    frame_working_free(working);
    return answer;
}

static frame_member_check_out run(const frame_member_check_in *in) {
    frame_member_check_out out;
    frame_member_check_free(solve(in, &out));
    return out;
}

static void refused(const frame_member_check_in *in, frame_status status, const char *field) {
    frame_member_check *answer = NULL;
    ck_assert_int_eq(frame_member_check_solve(in, &answer, NULL), status);
    ck_assert_str_eq(frame_error_field(), field);
    ck_assert_ptr_null(answer);
}

static void same(double a, double b) {
    ck_assert_double_eq_tol(a, b, 1e-9 * fmax(1, fabs(b)));
}

/* One simple span under even load: the same figures as beam_check, in both methods and by both editions. */
START_TEST(as_beam_check) {
    for (int i = 0; i < 8; i++) {
        const double bearing = 3;
        frame_beam_check_in simple;
        frame_beam_check_out one;
        frame_member_check_in in = sawn(i & 4 ? "2x10" : "2x12", "SPF", "No.2");
        frame_beam_check_in_init(&simple);
        in.method = simple.method = i & 1 ? FRAME_METHOD_LRFD : FRAME_METHOD_ASD;
        in.load_edition = simple.load_edition = i & 2 ? FRAME_LOADS_ASCE_7_22 : FRAME_LOADS_ASCE_7_16;
        simple.size = in.size, simple.species = in.species, simple.grade = in.grade;
        simple.span_in = 120, simple.dead_plf = 50, simple.live_plf = 120;
        in.snow_plf = simple.snow_plf = 150;
        in.plies = simple.plies = 2;
        in.self_weight = simple.self_weight = (i & 4) != 0;
        in.bearings_in = &bearing, in.bearing_count = 1, simple.bearing_in = bearing;
        ck_assert_msg(!frame_beam_check(&simple, &one, NULL), "%s", frame_error_text());
        const frame_member_check_out all = run(&in);
        same(all.bending_ratio, one.bending_ratio);
        same(all.shear_ratio, one.shear_ratio);
        same(all.bearing_ratio, one.bearing_ratio);
        same(all.deflection_live_ratio, one.deflection_live_ratio);
        same(all.deflection_total_ratio, one.deflection_total_ratio);
        same(all.fb_adjusted_psi, one.fb_adjusted_psi);
        same(all.fv_adjusted_psi, one.fv_adjusted_psi);
        same(all.slenderness_ratio, one.slenderness_ratio);
        ck_assert_int_eq(all.combination, one.combination);
        ck_assert_int_eq(all.shear_combination, one.shear_combination);
        ck_assert_int_eq(all.governs, one.governs);
    }
}
END_TEST

/* A published example of beam stability (secondary): 4x16 Select Structural Douglas Fir-Larch, 20 ft, load at mid-span,
 * braced at its ends: l_e 375 (374.55), R_B 21.6, F_bE 1776, C_L 0.876, F_b' 1313. */
START_TEST(point_load_unbraced) {
    frame_beam_load load;
    frame_member_check_in in = sawn("4x16", "DFL", "SS");
    frame_beam_load_init(&load);
    load.kind = FRAME_LOAD_LIVE, load.at_in = 120, load.force_lb = 4000;
    in.spans_in = twenty_feet, in.loads = &load, in.load_count = 1, in.dead_plf = in.live_plf = 0;
    frame_member_check_out out = run(&in);
    ck_assert_double_eq_tol(out.effective_length_in, 374.55, 0.005);
    ck_assert_double_eq_tol(out.slenderness_ratio, 21.6, 0.05);
    ck_assert_double_eq_tol(out.beam_stability_factor, 0.876, 0.0005);
    ck_assert_double_eq_tol(out.fb_adjusted_psi, 1313, 0.5);
    same(out.moment_lb_in, 4000 * 240 / 4.0);
    /* held under the load: 1.11 l_u of each half */
    const double middle[] = {120};
    in.upper_braces_in = middle, in.upper_brace_count = 1;
    out = run(&in);
    same(out.effective_length_in, 1.11 * 120);
    same(out.unbraced_length_in, 120);
}
END_TEST

/* A published example (secondary) of a glulam 6.75 x 13.5 in, 18 ft, 24F: C_V 0.98, F_b' 2343, F_v' 265. */
START_TEST(glulam_volume) {
    const double span[] = {216};
    frame_member_check_in in;
    frame_member_check_in_init(&in);
    in.spans_in = span, in.span_count = 1, in.dead_plf = 100, in.live_plf = 600;
    in.glulam = FRAME_GLULAM_24F_V4, in.width_in = 6.75, in.depth_in = 13.5;
    in.upper_edge = FRAME_EDGE_HELD;
    frame_member_check_out out = run(&in);
    ck_assert_double_eq_tol(out.volume_factor, 0.98, 0.005);
    ck_assert_double_eq_tol(out.fb_adjusted_psi, 2343, 0.5);
    same(out.fv_adjusted_psi, 265);
    /* free edge: the lesser of C_L and C_V, E_min about y */
    in.upper_edge = FRAME_EDGE_FREE;
    out = run(&in);
    const double F_bE = 1.2 * 850000 / pow(out.slenderness_ratio, 2), a = F_bE / 2400;
    const double C_L = (1 + a) / 1.9 - sqrt(pow((1 + a) / 1.9, 2) - a / 0.95);
    same(out.fb_adjusted_psi, 2400 * fmin(C_L, out.volume_factor));
    in.turned = FRAME_TURNED_FLAT;
    refused(&in, FRAME_REFUSED, "turned");
}
END_TEST

/* NDS 5.3.10: C_vr 0.72 at an end notch, and on all shear under impact; sawn lumber knows none. */
START_TEST(glulam_shear_reduction) {
    const double span[] = {216};
    frame_member_check_in in;
    frame_member_cut cut;
    frame_member_check_cut found;
    frame_member_check *answer;
    frame_member_check_in_init(&in);
    frame_member_cut_init(&cut);
    in.spans_in = span, in.span_count = 1, in.dead_plf = 100, in.live_plf = 600;
    in.glulam = FRAME_GLULAM_24F_V4, in.width_in = 6.75, in.depth_in = 13.5;
    in.upper_edge = FRAME_EDGE_HELD;
    cut.at_in = 2, cut.length_in = 4, cut.depth_in = 1;
    in.cuts = &cut, in.cut_count = 1;
    same(run(&in).fv_adjusted_psi, 265);
    ck_assert(!frame_member_check_solve(&in, &answer, NULL));
    ck_assert(!frame_member_check_cut_at(answer, 0, &found));
    frame_member_check_free(answer);
    same(found.shear_ratio, 1.5 * found.shear_lb / (6.75 * 12.5 * pow(12.5 / 13.5, 2)) / (0.72 * 265));
    in.cut_count = 0, in.live_duration = FRAME_DURATION_IMPACT;
    same(run(&in).fv_adjusted_psi, 0.72 * 2 * 265);
    in.live_plf = 0; /* no impact without live load */
    same(run(&in).fv_adjusted_psi, 0.9 * 265);
}
END_TEST

/* NDS 5.3.8 and 5.4.1 by hand: C_c on bending, 15 psi along the radius where the curve is flattened, else F_c-perp'. */
START_TEST(glulam_curved) {
    const double span[] = {216}, M = 700.0 / 12 * 216 * 216 / 8, A = 6.75 * 13.5;
    frame_member_check_in in;
    frame_member_check_in_init(&in);
    in.spans_in = span, in.span_count = 1, in.dead_plf = 100, in.live_plf = 600;
    in.glulam = FRAME_GLULAM_24F_V4, in.width_in = 6.75, in.depth_in = 13.5;
    in.upper_edge = FRAME_EDGE_HELD;
    const frame_member_check_out straight = run(&in);
    ck_assert_double_eq(straight.curvature_factor, FRAME_NOT_GIVEN);
    ck_assert_double_eq(straight.radial_ratio, FRAME_NOT_GIVEN);
    in.curve_radius_in = 300, in.lamination_in = 1.5;
    frame_member_check_out out = run(&in);
    same(out.curvature_factor, 0.95);
    same(out.fb_adjusted_psi, 0.95 * straight.fb_adjusted_psi);
    same(out.bending_ratio, straight.bending_ratio / 0.95);
    same(out.radial_actual_psi, 3 * M / (2 * 306.75 * A));
    same(out.radial_allowed_psi, 15);
    same(out.ratio, out.radial_ratio);
    ck_assert_int_eq(out.governs, FRAME_GOVERNS_RADIAL);
    ck_assert(FRAME_HAS(out.cautions, FRAME_MEMBER_CAUTION_CURVED) && out.known == FRAME_KNOWN_MEMORY);
    in.radial_tension_psi = 60;
    same(run(&in).radial_ratio, out.radial_ratio / 4);
    in.radial_tension_psi = FRAME_NOT_GIVEN, in.bowed_up = 0; /* pressed together */
    out = run(&in);
    same(out.radial_allowed_psi, out.fc_perp_adjusted_psi);
    in.curve_radius_in = 187;
    refused(&in, FRAME_OUTSIDE_SCOPE, "curve_radius_in");
    in.curve_radius_in = FRAME_NOT_GIVEN;
    refused(&in, FRAME_REQUIRED, "curve_radius_in");
    in.curve_radius_in = 300, in.lamination_in = FRAME_NOT_GIVEN;
    refused(&in, FRAME_REQUIRED, "lamination_in");
}
END_TEST

/* The maker's values: C_V by depth; above 1 together with C_L, below 1 the lesser; C_r 1.04. */
START_TEST(composite) {
    frame_member_check_in in;
    frame_member_check_in_init(&in);
    in.product = FRAME_PRODUCT_COMPOSITE;
    in.spans_in = ten_feet, in.span_count = 1, in.dead_plf = 100, in.live_plf = 400;
    in.width_in = 1.75, in.depth_in = 9.5, in.plies = 3;
    in.fb_psi = 2600, in.fv_psi = 285, in.fc_perp_psi = 750, in.e_psi = 1.9e6, in.e_min_psi = 970000;
    in.volume_exponent = 0.136;
    in.upper_edge = FRAME_EDGE_HELD;
    in.repetitive = 1;
    const frame_member_check_out out = run(&in);
    same(out.volume_factor, pow(12 / 9.5, 0.136));
    same(out.fb_adjusted_psi, 2600 * 1.04 * pow(12 / 9.5, 0.136));
    in.depth_in = 16;
    same(run(&in).fb_adjusted_psi, 2600 * 1.04 * pow(12 / 16.0, 0.136));
}
END_TEST

/* Over an inner support the lower edge is in compression: free there though the floor holds the upper one. */
START_TEST(lower_edge) {
    const double braces[] = {108, 180};
    frame_member_check_out out;
    frame_member_check_in in = sawn("2x10", "SPF", "No.2");
    in.spans_in = two_spans, in.span_count = 2;
    in.upper_edge = FRAME_EDGE_HELD;
    frame_member_check *answer = solve(&in, &out);
    ck_assert_int_eq(out.compressed, FRAME_MEMBER_LOWER);
    ck_assert_double_lt(out.beam_stability_factor, 1);
    ck_assert_uint_eq(frame_member_check_stretch_count(answer), 4);
    frame_member_check_free(answer);
    in.lower_braces_in = braces, in.lower_brace_count = 2;
    const frame_member_check_out braced = run(&in);
    ck_assert_double_gt(braced.beam_stability_factor, out.beam_stability_factor);
    ck_assert_double_lt(braced.bending_ratio, out.bending_ratio);
    same(braced.moment_lb_in, out.moment_lb_in);
    in.lower_edge = FRAME_EDGE_HELD, in.lower_brace_count = 0, in.lower_braces_in = NULL;
    same(run(&in).beam_stability_factor, 1);
}
END_TEST

/* A hip: a triangular load on a simple span, R = w L/6 and w L/3, M = w L^2/(9 sqrt 3). */
START_TEST(hip) {
    frame_beam_load load;
    frame_member_check_out out;
    frame_member_check_in in = sawn("2x10", "DFL", "No.2");
    frame_beam_load_init(&load);
    load.kind = FRAME_LOAD_SNOW, load.plf = 0, load.to_plf = 240;
    in.loads = &load, in.load_count = 1, in.dead_plf = in.live_plf = 0;
    frame_member_check_support first, last;
    frame_member_check *answer = solve(&in, &out);
    ck_assert(!frame_member_check_support_at(answer, 0, &first));
    ck_assert(!frame_member_check_support_at(answer, 1, &last));
    same(first.max_reaction_lb, 240.0 * 10 / 6);
    same(last.max_reaction_lb, 240.0 * 10 / 3);
    same(out.moment_lb_in, 12 * 240 * 100 / (9 * sqrt(3)));
    frame_member_check_free(answer);
}
END_TEST

/* End notch: f_v = 3V/(2 b d_n) (d/d_n)^2; hole: net section; notch in the upper edge past the face of the support. */
START_TEST(cuts) {
    const double bearing = 3;
    frame_member_cut cut;
    frame_member_check_cut found;
    frame_member_check_out out;
    frame_member_check_in in = sawn("2x12", "SPF", "No.2");
    frame_member_cut_init(&cut);
    cut.at_in = 1.5, cut.length_in = 3, cut.depth_in = 2;
    in.cuts = &cut, in.cut_count = 1, in.bearings_in = &bearing, in.bearing_count = 1;
    frame_member_check *answer = solve(&in, &out);
    ck_assert(!frame_member_check_cut_at(answer, 0, &found));
    const double d = 11.25, d_n = 9.25, V = 170 * 5;
    ck_assert_int_eq(found.at_support, 1);
    same(found.shear_ratio, 1.5 * V / (1.5 * d_n) * pow(d / d_n, 2) / 135);
    same(out.cut_ratio, found.shear_ratio);
    frame_member_check_free(answer);
    cut.edge = FRAME_MEMBER_UPPER, cut.at_in = 3, cut.length_in = 6; /* to 6 in: 4.5 past the face */
    answer = solve(&in, &out);
    ck_assert(!frame_member_check_cut_at(answer, 0, &found));
    same(found.shear_ratio, 1.5 * V / (1.5 * (d - (d - d_n) / d_n * 4.5)) / 135);
    frame_member_check_free(answer);
    frame_member_cut_init(&cut);
    cut.at_in = 40, cut.hole_in = 2, cut.height_in = 6;
    answer = solve(&in, &out);
    ck_assert(!frame_member_check_cut_at(answer, 0, &found));
    same(found.net_section_modulus_in3, 1.5 * (pow(d, 3) / 12 - 8 / 12.0 - 2 * pow(6 - d / 2, 2)) / (d / 2));
    same(found.moment_lb_in, 170.0 / 12 * (41 * (120 - 41)) / 2);
    frame_member_check_free(answer);
}
END_TEST

START_TEST(cuts_refused) {
    frame_member_cut cut;
    frame_member_check_in in = sawn("2x12", "SPF", "No.2");
    frame_member_cut_init(&cut);
    in.cuts = &cut, in.cut_count = 1;
    cut.at_in = 0;
    refused(&in, FRAME_REQUIRED, "cuts[0].depth_in");
    cut.depth_in = 3;
    refused(&in, FRAME_OUTSIDE_SCOPE, "cuts[0].depth_in"); /* over a quarter */
    cut.depth_in = 1, cut.at_in = 60;
    refused(&in, FRAME_OUTSIDE_SCOPE, "cuts[0].at_in"); /* the middle third */
    cut.at_in = 130;
    refused(&in, FRAME_OUT_OF_RANGE, "cuts[0].at_in");
    cut.at_in = 40, cut.depth_in = FRAME_NOT_GIVEN, cut.hole_in = 4;
    refused(&in, FRAME_OUTSIDE_SCOPE, "cuts[0].hole_in");
    cut.hole_in = 2, cut.height_in = 2;
    refused(&in, FRAME_OUTSIDE_SCOPE, "cuts[0].height_in");
    in.size = size_of("4x12"), cut.hole_in = cut.height_in = FRAME_NOT_GIVEN, cut.depth_in = 1, cut.at_in = 30;
    refused(&in, FRAME_OUTSIDE_SCOPE, "cuts[0].edge"); /* tension side, 3-1/2 in thick */
}
END_TEST

START_TEST(nonsense) {
    const double long_bearing[] = {40, 45}, short_span[] = {72}, past[] = {130};
    frame_beam_support free_ends[2];
    frame_member_check_in in = sawn("2x12", "SPF", "No.2");
    in.spans_in = short_span, in.bearings_in = long_bearing, in.bearing_count = 2;
    refused(&in, FRAME_IMPOSSIBLE, "bearings_in");
    in.bearing_count = 0, in.bearings_in = NULL, in.spans_in = ten_feet;
    in.upper_braces_in = past, in.upper_brace_count = 1;
    refused(&in, FRAME_OUT_OF_RANGE, "upper_braces_in[0]");
    in.upper_brace_count = 0, in.upper_braces_in = NULL;
    frame_beam_support_init(&free_ends[0]);
    frame_beam_support_init(&free_ends[1]);
    free_ends[0].kind = FRAME_SUPPORT_PINNED, free_ends[1].kind = FRAME_SUPPORT_NONE;
    in.supports = free_ends, in.support_count = 2;
    frame_member_check *answer = NULL;
    ck_assert_int_eq(frame_member_check_solve(&in, &answer, NULL), FRAME_UNSTABLE);
    in.supports = NULL, in.support_count = 0;
    const double far_apart[] = {600};
    in.spans_in = far_apart;
    refused(&in, FRAME_OUTSIDE_SCOPE, "upper_braces_in"); /* R_B over 50 */
    in.spans_in = ten_feet, in.glulam = FRAME_GLULAM_24F_V4;
    refused(&in, FRAME_CONFLICT, "glulam");
}
END_TEST

/* Load within d of the faces left out: V at d + half the bearing from the centre. */
START_TEST(shear_at_depth) {
    const double bearing = 3;
    frame_member_check_in in = sawn("2x12", "SPF", "No.2");
    in.bearings_in = &bearing, in.bearing_count = 1, in.shear_at_depth = 1;
    same(run(&in).shear_lb, 170.0 / 12 * (60 - 11.25 - 1.5));
}
END_TEST

/* First mode of a simple beam: pi/2 sqrt(E I g/(w L^4)). */
START_TEST(frequency) {
    frame_member_check_in in = sawn("2x12", "SPF", "No.2");
    const frame_member_check_out out = run(&in);
    same(out.frequency_hz, acos(-1) / 2 * sqrt(1.4e6 * out.inertia_in4 * 386.09 / (50 / 12.0 * pow(120, 4))));
}
END_TEST

/* More load, a longer span, a lower grade never lower a ratio. */
START_TEST(monotone) {
    const char *const grades[] = {"SS", "No.1", "No.2", "No.3"};
    double before = 0;
    for (int i = 0; i < 4; i++) {
        frame_member_check_in in = sawn("2x10", "DFL", grades[i]);
        const double ratio = run(&in).bending_ratio;
        ck_assert_double_ge(ratio, before);
        before = ratio;
    }
    before = 0;
    for (int i = 0; i < 12; i++) {
        const double spans[] = {100 + 10 * i, 90};
        frame_member_check_in in = sawn("2x10", "DFL", "No.2");
        in.spans_in = spans, in.span_count = 2, in.live_plf = 100 + 10 * i, in.right_overhang_in = 20;
        const frame_member_check_out out = run(&in);
        ck_assert_double_ge(out.ratio, before);
        before = out.ratio;
    }
}
END_TEST

int main(void) {
    Suite *suite = suite_create("any beam against the NDS");
    TCase *all = tcase_create("all");
    tcase_add_test(all, as_beam_check);
    tcase_add_test(all, point_load_unbraced);
    tcase_add_test(all, glulam_volume);
    tcase_add_test(all, glulam_curved);
    tcase_add_test(all, glulam_shear_reduction);
    tcase_add_test(all, composite);
    tcase_add_test(all, lower_edge);
    tcase_add_test(all, hip);
    tcase_add_test(all, cuts);
    tcase_add_test(all, cuts_refused);
    tcase_add_test(all, nonsense);
    tcase_add_test(all, shear_at_depth);
    tcase_add_test(all, frequency);
    tcase_add_test(all, monotone);
    suite_add_tcase(suite, all);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_ENV);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
