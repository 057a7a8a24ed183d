/* The joints of a frame: each against the value of one fastener and plain statics, and what they refuse. */
#include "checked.h"

/* A 16d through 1-1/2 in of G 0.5, as dowel_lateral has it. */
static double one_nail(int toe_nail, int end_grain, double angle_deg) {
    frame_dowel_lateral_in in;
    frame_dowel_lateral_out out;
    frame_dowel_lateral_in_init(&in);
    NAIL(in);
    if (!toe_nail) in.side_thickness_in = 1.5;
    in.toe_nail = toe_nail, in.end_grain = end_grain, in.side_angle_deg = in.main_angle_deg = angle_deg;
    ck_assert_msg(!frame_dowel_lateral(&in, &out, NULL), "%s", frame_error_text());
    return out.adjusted_lb;
}

START_TEST(joists_and_jacks) {
    frame_joist_hold_in in;
    frame_joist_hold_out out;
    frame_joist_hold_in_init(&in);
    in.way = FRAME_END_WAY_TOE_NAILS, in.reaction_lb = 300;
    REFUSED(joist_hold, in, FRAME_REQUIRED, "kind");
    NAIL(in);
    CHECKED(joist_hold, in, out);
    CLOSE(out.each_lb, one_nail(1, 0, 90));
    ck_assert_int_eq(out.needed_count, (int)ceil(300 / out.each_lb));
    ck_assert_int_eq(out.passes, FRAME_NOT_GIVEN_INT);
    in.count = 2;
    CHECKED(joist_hold, in, out);
    CLOSE(out.ratio, 300 / (2 * out.each_lb));
    ck_assert_int_eq(out.passes, 0);
    in.way = FRAME_END_WAY_END_NAILS, in.side_thickness_in = 1.5, in.count = 4;
    CHECKED(joist_hold, in, out);
    CLOSE(out.each_lb, one_nail(0, 1, 90));
    frame_jack_hold_in jack;
    frame_jack_hold_out held;
    frame_jack_hold_in_init(&jack);
    NAIL(jack);
    jack.way = FRAME_END_WAY_TOE_NAILS, jack.reaction_lb = 180, jack.count = 3;
    CHECKED(jack_hold, jack, held);
    ck_assert_int_eq(held.passes, 1);
}
END_TEST

/* A hanger's value is raised only where its maker allows that, and a load that it has no value for is refused. */
START_TEST(hangers) {
    frame_joist_hold_in in;
    frame_joist_hold_out out;
    frame_joist_hold_in_init(&in);
    in.way = FRAME_END_WAY_METAL, in.reaction_lb = 700;
    REFUSED(joist_hold, in, FRAME_REQUIRED, "metal_lb");
    in.metal_lb = 650, in.load_duration_factor = 1.15;
    CHECKED(joist_hold, in, out);
    CLOSE(out.ratio, 700.0 / 650);
    ck_assert_int_eq(out.passes, 0);
    in.metal_may_be_raised = 1;
    CHECKED(joist_hold, in, out);
    CLOSE(out.ratio, 700 / (650 * 1.15));
    ck_assert(FRAME_HAS(out.cautions, FRAME_FASTENING_CAUTION_RAISED));
    in.uplift_lb = 100;
    REFUSED(joist_hold, in, FRAME_REQUIRED, "metal_uplift_lb");
}
END_TEST

START_TEST(plates) {
    frame_stud_end_in stud;
    frame_stud_end_out out;
    frame_stud_end_in_init(&stud);
    NAIL(stud);
    stud.way = FRAME_END_WAY_END_NAILS, stud.side_thickness_in = 1.5, stud.lateral_lb = 150, stud.count = 2;
    CHECKED(stud_end, stud, out);
    CLOSE(out.ratio, 150 / (2 * one_nail(0, 1, 90)));
    stud.uplift_lb = 10;
    REFUSED(stud_end, stud, FRAME_REFUSED, "uplift_lb");
    stud.way = FRAME_END_WAY_METAL, stud.metal_lb = 200, stud.metal_uplift_lb = 400;
    stud.count = FRAME_NOT_GIVEN_INT;
    CHECKED(stud_end, stud, out);
    CLOSE(out.ratio, 150.0 / 200 + 10.0 / 400);
    stud.lateral_lb = stud.uplift_lb = 0;
    REFUSED(stud_end, stud, FRAME_REQUIRED, "uplift_lb");
    frame_rafter_uplift_in rafter;
    frame_rafter_uplift_out held;
    frame_rafter_uplift_in_init(&rafter);
    NAIL(rafter);
    rafter.way = FRAME_END_WAY_TOE_NAILS, rafter.uplift_lb = 120, rafter.lateral_lb = 60, rafter.count = 3;
    rafter.load_duration_factor = 1.6;
    CHECKED(rafter_uplift, rafter, held);
    /* Toe-nail withdrawal: 0.67 of W over L cos 30 - L/3 (NDS 12.5.4, 12.1.6). */
    const double depth = 3.5 * cos(30 * 3.14159265358979323846 / 180) - 3.5 / 3;
    CLOSE(held.each_withdrawal_lb, 1380 * pow(0.5, 2.5) * 0.162 * depth * 0.67 * 1.6);
    CLOSE(held.ratio, (120 / held.each_withdrawal_lb + 60 / held.each_lb) / 3);
    ck_assert_int_eq(held.needed_count, (int)ceil(3 * held.ratio));
}
END_TEST

START_TEST(laps_rims_plies) {
    frame_plate_lap_in lap;
    frame_plate_lap_out lapped;
    frame_plate_lap_in_init(&lap);
    NAIL(lap);
    lap.tension_lb = 1000, lap.length_in = 3;
    CHECKED(plate_lap, lap, lapped);
    ck_assert_int_eq(lapped.needed_count, (int)ceil(1000 / lapped.each_lb));
    frame_rim_joint_in rim;
    frame_rim_joint_out rimmed;
    frame_rim_joint_in_init(&rim);
    NAIL(rim);
    rim.shear_plf = 200, rim.spacing_in = 6, rim.block_length_in = 14.5, rim.block_spacing_in = 32;
    CHECKED(rim_joint, rim, rimmed);
    CLOSE(rimmed.each_lb, one_nail(1, 0, 0));
    CLOSE(rimmed.needed_spacing_in, 12 * rimmed.each_lb / 200);
    CLOSE(rimmed.ratio, 200 / (2 * rimmed.each_lb));
    ck_assert_int_eq(rimmed.per_block, (int)ceil(200 * 32.0 / 12 / rimmed.each_lb));
    rim.block_spacing_in = 10;
    REFUSED(rim_joint, rim, FRAME_IMPOSSIBLE, "block_spacing_in");
    frame_ply_joint_in ply;
    frame_ply_joint_out plied;
    frame_ply_joint_in_init(&ply);
    NAIL(ply);
    ply.length_in = 3, ply.plies = 3, ply.side_loaded = 1, ply.load_plf = 600, ply.spacing_in = 12;
    CHECKED(ply_joint, ply, plied);
    CLOSE(plied.transfer_plf, 400);
    CLOSE(plied.needed_spacing_in, fmin(16, 12 * 2 * plied.each_lb / 400));
    CLOSE(plied.ratio, 400 / (2 * plied.each_lb));
    ply.side_loaded = 0, ply.spacing_in = 18;
    CHECKED(ply_joint, ply, plied);
    ck_assert_double_eq(plied.needed_spacing_in, 16);
    ck_assert_int_eq(plied.passes, 0); /* wider than the widest allowed */
}
END_TEST

START_TEST(ledgers) {
    frame_ledger_joint_in in;
    frame_ledger_joint_out out, through;
    frame_ledger_joint_in_init(&in);
    in.kind = FRAME_DOWEL_LAG_SCREW, in.size = "1/2", in.length_in = 5;
    in.side_specific_gravity = in.main_specific_gravity = 0.5, in.backing = FRAME_LEDGER_BACKING_BAND;
    in.joist_span_in = 144, in.live_psf = 40, in.sheathing_in = 0, in.main_thickness_in = 3;
    in.length_of_ledger_in = 240;
    CHECKED(ledger_joint, in, out);
    CLOSE(out.load_plf, 50 * 12.0 / 2);
    CLOSE(out.needed_spacing_in, 12 * out.each_lb / 300);
    ck_assert_int_eq(out.needed_count, (int)ceil(240 / out.needed_spacing_in) + 1);
    ck_assert(FRAME_HAS(out.cautions, FRAME_FASTENING_CAUTION_DECK));
    /* Wet by default: C_M 0.7. What lies between costs value. */
    in.service = FRAME_SERVICE_DRY;
    CHECKED(ledger_joint, in, through);
    CLOSE(out.each_lb, through.each_lb * 0.7);
    in.sheathing_in = 0.5, in.foam_in = 1, in.length_in = 6;
    CHECKED(ledger_joint, in, out);
    ck_assert(out.each_lb < through.each_lb);
    ck_assert_double_eq(out.gap_in, 1.5);
    ck_assert(FRAME_HAS(out.cautions, FRAME_FASTENING_CAUTION_GAP));
    in.ties = 2;
    REFUSED(ledger_joint, in, FRAME_REQUIRED, "tie_lb");
    in.tie_lb = 1500;
    CHECKED(ledger_joint, in, out);
    ck_assert_int_eq(out.ties_pass, 1);
    in.tie_lb = 750;
    CHECKED(ledger_joint, in, out);
    ck_assert_int_eq(out.ties_pass, 0);
    in.ties = 4;
    CHECKED(ledger_joint, in, out);
    ck_assert_int_eq(out.ties_pass, 1);
    in.foam_in = 3;
    REFUSED(ledger_joint, in, FRAME_OUTSIDE_SCOPE, "penetration_in"); /* it does not reach */
    in.foam_in = 0, in.backing = FRAME_LEDGER_BACKING_VENEER;
    REFUSED(ledger_joint, in, FRAME_REFUSED, "backing");
    in.backing = FRAME_LEDGER_BACKING_CANTILEVER;
    REFUSED(ledger_joint, in, FRAME_REFUSED, "backing");
}
END_TEST

static frame_heel_joint_in heel_of(double slope) {
    frame_heel_joint_in in;
    frame_heel_joint_in_init(&in);
    in.slope = slope, in.span_in = 288, in.spacing_in = 24, in.load_psf = 35, in.each_lb = 138;
    return in;
}

START_TEST(heels) {
    frame_heel_joint_in in = heel_of(5.0 / 12);
    frame_heel_joint_out out;
    CHECKED(heel_joint, in, out);
    CLOSE(out.thrust_plf, 35 * 24 * 24 / (8 * (24 * 5.0 / 24)));
    CLOSE(out.tie_lb, out.thrust_plf * 2);
    ck_assert_int_eq(out.needed_count, (int)ceil(out.tie_lb / 138));
    ck_assert_double_eq(out.rafter_moment_lb_in, 0);
    in.tie_height_in = 20; /* of 60 in */
    CHECKED(heel_joint, in, out);
    CLOSE(out.raise_factor, 1.5);
    /* Above the tie, the rafter's moment by the tie and the load comes to nothing at the ridge. */
    const double run = 144, per_in = 35 * 24 / 144.0, thrust = out.tie_lb;
    ck_assert_double_eq_tol(per_in * run * run - per_in * run * run / 2 - thrust * (60 - 20), 0, 1e-6);
    CLOSE(out.rafter_moment_lb_in, per_in * (run * 48 - 48 * 48 / 2.0));
    in.tie_height_in = 41;
    REFUSED(heel_joint, in, FRAME_REFUSED, "tie_height_in");
    in = heel_of(2.5 / 12);
    REFUSED(heel_joint, in, FRAME_REFUSED, "slope");
    in = heel_of(0.5);
    in.each_lb = FRAME_NOT_GIVEN;
    REFUSED(heel_joint, in, FRAME_REQUIRED, "each_lb");
    NAIL(in);
    CHECKED(heel_joint, in, out);
    CLOSE(out.value_lb, one_nail(0, 0, 0));
    in = heel_of(1), in.load_psf = 1, in.count = 2;
    CHECKED(heel_joint, in, out);
    ck_assert_int_eq(out.needed_count, 3);
    ck_assert_int_eq(out.passes, 0); /* two carry it; the table asks for three */
}
END_TEST

START_TEST(ridges_and_posts) {
    frame_ridge_tie_in in;
    frame_ridge_tie_out out;
    frame_ridge_tie_in_init(&in);
    in.kind = FRAME_DOWEL_COMMON_NAIL, in.size = "10d", in.main_specific_gravity = 0.5, in.side_thickness_in = 0.036;
    in.slope = 0.5, in.span_in = 288, in.spacing_in = 48, in.uplift_psf = 20, in.load_duration_factor = 1.6;
    CHECKED(ridge_tie, in, out);
    CLOSE(out.tie_lb, 20 * 4 * 24 * 24 / (8 * 6.0) * sqrt(1.25));
    ck_assert_int_eq(out.needed_count, (int)ceil(out.tie_lb / out.each_lb));
    in.drop_in = 18, in.side_thickness_in = 0.75, in.side_specific_gravity = 0.5;
    CHECKED(ridge_tie, in, out);
    CLOSE(out.tie_lb, 20 * 4 * 24 * 24 / (8 * 4.5));
    in.drop_in = 30;
    REFUSED(ridge_tie, in, FRAME_OUTSIDE_SCOPE, "drop_in");
    frame_post_end_in post;
    frame_post_end_out held;
    frame_post_end_in_init(&post);
    REFUSED(post_end, post, FRAME_REQUIRED, "down_lb");
    post.down_lb = 4000, post.uplift_lb = 500, post.lateral_lb = 300;
    REFUSED(post_end, post, FRAME_REQUIRED, "metal_down_lb");
    post.metal_down_lb = 6000, post.metal_uplift_lb = 1000, post.metal_lateral_lb = 500;
    CHECKED(post_end, post, held);
    CLOSE(held.ratio, 0.5 + 0.6);
    ck_assert_int_eq(held.passes, 0);
}
END_TEST

START_TEST(chains) {
    static const char *const names[] = {"rafter tie", "stud strap", "sill anchor"};
    static const double holds[] = {500, 420, 900}, dead[] = {0, 0, 300};
    frame_uplift_link links[3];
    frame_uplift_chain_in in;
    frame_uplift_chain_out out;
    frame_uplift_chain *answer;
    for (int i = 0; i < 3; i++) {
        frame_uplift_link_init(&links[i]);
        links[i].name = names[i], links[i].allowable_lb = holds[i], links[i].dead_lb = dead[i];
    }
    frame_uplift_chain_in_init(&in);
    in.links = links, in.link_count = 3, in.uplift_lb = 450;
    ck_assert_msg(!frame_uplift_chain_solve(&in, &answer, NULL), "%s", frame_error_text());
    ck_assert(!frame_uplift_chain_result(answer, &out));
    ck_assert_int_eq(out.weakest, 1);
    ck_assert_str_eq(out.weakest_name, "stud strap");
    CLOSE(out.ratio, 450.0 / 420);
    CLOSE(out.foundation_lb, 450 - 0.6 * 300);
    ck_assert_int_eq(out.passes, 0);
    CLOSE(out.capacity_lb, 420);
    ck_assert_uint_eq(frame_uplift_chain_link_count(answer), 3);
    frame_uplift_chain_free(answer);
    in.uplift_lb = out.capacity_lb;
    ck_assert(!frame_uplift_chain_solve(&in, &answer, NULL));
    ck_assert(!frame_uplift_chain_result(answer, &out));
    CLOSE(out.ratio, 1);
    frame_uplift_chain_free(answer);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("joints of a frame");
    TCase *cases = tcase_create("all");
    tcase_add_test(cases, joists_and_jacks);
    tcase_add_test(cases, hangers);
    tcase_add_test(cases, plates);
    tcase_add_test(cases, laps_rims_plies);
    tcase_add_test(cases, ledgers);
    tcase_add_test(cases, heels);
    tcase_add_test(cases, ridges_and_posts);
    tcase_add_test(cases, chains);
    suite_add_tcase(suite, cases);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
