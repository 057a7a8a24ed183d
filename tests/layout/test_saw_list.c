/* Saw lists: pieces of one shape gathered however they stand, opposite hands paired, every piece called once in the
 * order they go up; and beside them the gangs that walls find by lengths and angles. */
#include <check.h>
#include <math.h>
#include <string.h>

#include <frame/frame.h>

#include "random.h"

static frame_assembly *assembly;
static frame_saw_list *list;

static void must(frame_status status) {
    ck_assert_msg(status == FRAME_OK, "%s", frame_error_text());
}

static void begin(void) {
    assembly = NULL;
    list = NULL;
    must(frame_assembly_new(&assembly));
}

static void finish(void) {
    frame_saw_list_free(list);
    frame_assembly_free(assembly);
    assembly = NULL;
    list = NULL;
}

static void gather(void) {
    frame_saw_list_free(list);
    list = NULL;
    must(frame_assembly_saw_list(assembly, &list));
}

static frame_saw_list_gang gang_at(size_t index) {
    frame_saw_list_gang gang;
    must(frame_saw_list_gang_at(list, index, &gang));
    return gang;
}

/* A rafter's blank with a compound cut at its end, hand 1 or -1, and a notch underneath if it is wanted. */
static void add_jack(int hand, int notched, double y, double turn, frame_piece_kind kind) {
    frame_stick_in in;
    frame_stick_plane planes[3];
    frame_stick *stick = NULL;
    frame_stick_in_init(&in);
    in.name = "jack rafter";
    in.thickness_in = 1.5;
    in.depth_in = 5.5;
    in.length_in = 60;
    for (int i = 0; i < 3; i++) frame_stick_plane_init(&planes[i]);
    planes[0].role = FRAME_STICK_CHEEK_CUT;
    planes[0].point_x_in = 50;
    planes[0].point_y_in = planes[0].point_z_in = 0;
    planes[0].waste_x = 2;
    planes[0].waste_y = hand;
    planes[0].waste_z = 1;
    for (int i = 1; i < 3; i++) {
        planes[i].notch = 1;
        planes[i].notch_kind = FRAME_STICK_BIRDSMOUTH;
        planes[i].role = i == 1 ? FRAME_STICK_SEAT : FRAME_STICK_HEEL_CUT;
        planes[i].point_x_in = 12;
        planes[i].point_y_in = 0;
        planes[i].point_z_in = -1.5;
        planes[i].waste_x = i == 1 ? -0.5 : 1;
        planes[i].waste_y = 0;
        planes[i].waste_z = i == 1 ? -1 : -0.5;
    }
    in.planes = planes;
    in.plane_count = notched ? 3 : 1;
    must(frame_stick_new(&in, &stick));
    must(frame_assembly_add_stick(assembly, stick, kind, 10, y, 0, turn));
    frame_stick_free(stick);
}

START_TEST(opposite_hands_are_paired) {
    begin();
    for (int i = 0; i < 3; i++) {
        add_jack(1, 1, 16 * i, 30, FRAME_PIECE_JACK_RAFTER);
        add_jack(-1, 1, 16 * i, 137, FRAME_PIECE_JACK_RAFTER);
    }
    add_jack(1, 0, 0, 0, FRAME_PIECE_JACK_RAFTER); /* without its notch it is another piece */
    gather();
    ck_assert_uint_eq(frame_saw_list_gang_count(list), 3);
    ck_assert_int_eq(gang_at(0).count, 3);
    ck_assert_int_eq(gang_at(1).count, 3);
    ck_assert_int_eq(gang_at(0).opposite, 2);
    ck_assert_int_eq(gang_at(1).opposite, 1);
    ck_assert_int_eq(gang_at(2).count, 1);
    ck_assert_int_eq(gang_at(2).opposite, 0);
    ck_assert_int_eq(gang_at(1).first, 1);
    ck_assert_str_eq(gang_at(0).name, "jack rafter");
    ck_assert_uint_eq(frame_saw_list_call_count(list), 7);
    for (size_t i = 0; i < 6; i++) {
        frame_saw_list_call call;
        must(frame_saw_list_call_at(list, i, &call));
        ck_assert_int_eq(call.piece, (int)i);
        ck_assert_int_eq(call.gang, 1 + (int)i % 2);
        ck_assert_int_eq(call.number, 1 + (int)i / 2);
    }
    finish();
}
END_TEST

/* A plain bevel has no hand where the piece may be turned over, and two where its crown keeps it from that. */
static void add_bevel(double lean, frame_piece_kind kind) {
    frame_stick_in in;
    frame_stick_plane plane;
    frame_stick *stick = NULL;
    frame_stick_in_init(&in);
    frame_stick_plane_init(&plane);
    in.thickness_in = 1.5;
    in.depth_in = 3.5;
    in.length_in = 90;
    plane.role = FRAME_STICK_MITRE_CUT;
    plane.point_x_in = 80;
    plane.point_y_in = plane.point_z_in = 0;
    plane.waste_x = 1;
    plane.waste_y = 0;
    plane.waste_z = lean;
    in.planes = &plane;
    in.plane_count = 1;
    must(frame_stick_new(&in, &stick));
    must(frame_assembly_add_stick(assembly, stick, kind, 0, 0, 0, 0));
    frame_stick_free(stick);
}

START_TEST(crowns_are_kept_up) {
    begin();
    add_bevel(0.5, FRAME_PIECE_STUD);
    add_bevel(-0.5, FRAME_PIECE_STUD); /* turned over it is the first */
    gather();
    ck_assert_uint_eq(frame_saw_list_gang_count(list), 1);
    finish();
    begin();
    add_bevel(0.5, FRAME_PIECE_JOIST);
    add_bevel(-0.5, FRAME_PIECE_JOIST); /* that would turn its crown down, and no mirror does either */
    gather();
    ck_assert_uint_eq(frame_saw_list_gang_count(list), 2);
    ck_assert_int_eq(gang_at(0).opposite, 0);
    finish();
}
END_TEST

/* What walls gather by lengths and angles, the corners of the pieces gather too. */
START_TEST(beside_the_walls_own_gangs) {
    const int rounds = random_rounds(40, 400);
    for (int i = 0; i < rounds; i++) {
        frame_wall_in w;
        frame_wall_opening opening;
        frame_wall *wall = NULL;
        frame_wall_in_init(&w);
        frame_wall_opening_init(&opening);
        w.length_in = random_between(120, 400);
        w.height_in = 240;
        w.size = FRAME_SIZE(2, 4);
        if (random_whole(0, 1)) w.slope = random_whole(1, 4) / 12.0;
        if (random_whole(0, 1)) w.peak_in = w.length_in / 2;
        if (random_whole(0, 2) == 0) w.bottom_slope = random_whole(0, 1) ? w.slope : -1.0 / 12;
        opening.at_in = 20;
        opening.width_in = 36;
        opening.head_in = 80;
        opening.sill_in = 30;
        opening.header_size = FRAME_SIZE(2, 6);
        w.openings = &opening;
        w.opening_count = w.bottom_slope == FRAME_NOT_GIVEN;
        must(frame_wall_solve(&w, &wall, NULL));
        begin();
        must(frame_assembly_add_wall(assembly, wall, random_between(-100, 100), 7, 9, random_between(0, 360)));
        gather();
        ck_assert_uint_eq(frame_saw_list_gang_count(list), frame_wall_gang_count(wall));
        for (size_t g = 0; g < frame_wall_gang_count(wall); g++) {
            frame_wall_gang own;
            must(frame_wall_gang_at(wall, g, &own));
            ck_assert_int_eq(gang_at(g).count, own.count);
            ck_assert_int_eq(gang_at(g).first, own.first);
            ck_assert_double_eq_tol(gang_at(g).length_in, own.length_in, 1e-7);
        }
        frame_wall_free(wall);
        finish();
    }
}
END_TEST

START_TEST(refusals) {
    frame_saw_list_gang gang;
    frame_saw_list_call call;
    begin();
    ck_assert_int_eq(frame_assembly_saw_list(NULL, &list), FRAME_REQUIRED);
    ck_assert_int_eq(frame_assembly_saw_list(assembly, NULL), FRAME_REQUIRED);
    gather();
    ck_assert_uint_eq(frame_saw_list_gang_count(list), 0);
    ck_assert_int_eq(frame_saw_list_gang_at(list, 0, &gang), FRAME_OUT_OF_RANGE);
    ck_assert_int_eq(frame_saw_list_call_at(list, 0, &call), FRAME_OUT_OF_RANGE);
    ck_assert_uint_eq(frame_saw_list_call_count(NULL), 0);
    frame_saw_list_free(NULL);
    finish();
}
END_TEST

int main(void) {
    Suite *suite = suite_create("saw_list");
    TCase *tests = tcase_create("all");
    tcase_set_timeout(tests, 600);
    tcase_add_test(tests, opposite_hands_are_paired);
    tcase_add_test(tests, crowns_are_kept_up);
    tcase_add_test(tests, beside_the_walls_own_gangs);
    tcase_add_test(tests, refusals);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
