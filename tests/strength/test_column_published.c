/* column_check against published problems of square columns by trial: Gere and Goodno, Mechanics of Materials,
 * instructor solutions, problems 11.9-33 to 36 (read). They take F_cE as 0.3 E/(l_e/d)^2, which E_min of 0.3 E/0.822
 * gives. */
#include "lumber_names.h"

typedef struct trial {
    double side, slenderness, stability, load; /* in or mm, l/d, C_P, kip or kN; 0 where none is printed */
    double slenderness_place, stability_place, load_place;
} trial;

static const double in_of_mm = 1 / 25.4, psi_of_mpa = 1 / 0.00689475729316836, lb_of_kn = 1 / 0.0044482216152605;

static frame_column_check_out square(double side_in, double length_in, double fc_psi, double e_psi) {
    frame_column_check_in in;
    frame_column_check_out out;
    frame_column_check_in_init(&in);
    in.width_in = in.depth_in = side_in;
    in.length_in = length_in;
    in.axial_lb = 1000;
    in.fc_psi = fc_psi;
    in.e_min_psi = 0.3 * e_psi / 0.822;
    ck_assert_msg(!frame_column_check(&in, &out, NULL), "%s", frame_error_text());
    return out;
}

static void near(double value, double printed, double place, const char *what) {
    ck_assert_msg(fabs(value - printed) <= 0.501 * place, "%s: %.10g, printed %.10g", what, value, printed);
}

static void compare(const trial *t, double fc_psi, double e_psi, double length_in, double side_unit, double lb_per) {
    const frame_column_check_out out = square(t->side * side_unit, length_in, fc_psi, e_psi);
    near(out.slenderness_strong, t->slenderness, t->slenderness_place, "l/d");
    near(out.cp, t->stability, t->stability_place, "C_P");
    near(out.capacity_lb / lb_per, t->load, t->load_place, "load");
}

/* The longest column of a side for a load: its C_P is P/(A F_c). */
static void longest(double side_in, double load_lb, double fc_psi, double e_psi, double slenderness, double cp,
                    double cp_place) {
    const frame_column_check_out out = square(side_in, slenderness * side_in, fc_psi, e_psi);
    near(load_lb / (side_in * side_in * fc_psi), cp, cp_place, "C_P asked for");
    ck_assert_double_eq_tol(out.cp, cp, 0.0002); /* l/d is printed to four figures */
}

START_TEST(problem_33) {
    const trial trials[] = {{6.5, 20.308, 0.49942, 35.87, 0.001, 0.00001, 0.01},
                            {6.7, 19.701, 0.52230, 39.86, 0.001, 0.00001, 0.01},
                            {6.71, 19.672, 0.52343, 40.06, 0.001, 0.00001, 0.01}};
    longest(5.5, 40000, 1700, 1.4e6, 13.67, 0.77783, 0.00001);
    for (int i = 0; i < 3; i++) compare(&trials[i], 1700, 1.4e6, 132, 1, 1000);
    ck_assert(square(6.70, 132, 1700, 1.4e6).capacity_lb < 40000);
    ck_assert(square(6.71, 132, 1700, 1.4e6).capacity_lb >= 40000);
}
END_TEST

START_TEST(problem_34) {
    const trial trials[] = {{180, 22.22, 0.55547, 189.0, 0.01, 0.00001, 0.1},
                            {182, 21.98, 0.56394, 196.1, 0.01, 0.00001, 0.1},
                            {183, 21.86, 0.56814, 199.8, 0.01, 0.00001, 0.1},
                            {184, 21.74, 0.57231, 203.5, 0.01, 0.00001, 0.1}};
    longest(150 * in_of_mm, 200 * lb_of_kn, 10.5 * psi_of_mpa, 12000 * psi_of_mpa, 13.876, 0.84656, 0.00001);
    for (int i = 0; i < 4; i++)
        compare(&trials[i], 10.5 * psi_of_mpa, 12000 * psi_of_mpa, 4000 * in_of_mm, in_of_mm, lb_of_kn);
}
END_TEST

START_TEST(problem_35) {
    longest(3.5, 8000, 900, 1.5e6, 21.23, 0.72562, 0.00001);
}
END_TEST

START_TEST(problem_36) {
    const trial trials[] = {{160, 25.00, 0.44060, 90.23, 0.01, 0.00001, 0.01},
                            {164, 24.39, 0.45828, 98.61, 0.01, 0.00001, 0.01},
                            {165, 24.24, 0.46269, 100.77, 0.01, 0.00001, 0.01}};
    longest(120 * in_of_mm, 100 * lb_of_kn, 8 * psi_of_mpa, 8500 * psi_of_mpa, 12.592, 0.86806, 0.00001);
    for (int i = 0; i < 3; i++)
        compare(&trials[i], 8 * psi_of_mpa, 8500 * psi_of_mpa, 4000 * in_of_mm, in_of_mm, lb_of_kn);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("columns, published");
    TCase *tests = tcase_create("problems");
    tcase_add_test(tests, problem_33);
    tcase_add_test(tests, problem_34);
    tcase_add_test(tests, problem_35);
    tcase_add_test(tests, problem_36);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_ENV);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
