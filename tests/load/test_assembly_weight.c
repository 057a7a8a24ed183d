/* assembly_weight: sums by hand, what is refused, the working. */
#include <check.h>
#include <math.h>
#include <string.h>

#include <frame/load.h>
#include <frame/text.h>
#include <frame/working.h>

#define CLOSE(value, wanted) ck_assert_double_eq_tol(value, wanted, 1e-12 * (fabs((double)(wanted)) + 1e-3))

static frame_assembly_layer layers[3];

static frame_assembly_weight_in assembly(size_t count) {
    frame_assembly_weight_in in;
    frame_assembly_weight_in_init(&in);
    for (size_t i = 0; i < 3; i++) frame_assembly_layer_init(&layers[i]);
    layers[0].material = FRAME_ASSEMBLY_ASPHALT_SHINGLES;
    layers[1].material = FRAME_ASSEMBLY_PLYWOOD;
    layers[1].thickness_in = 0.5;
    layers[2].material = FRAME_ASSEMBLY_GYPSUM;
    layers[2].thickness_in = 0.5;
    layers[2].count = 2;
    in.layers = layers;
    in.layer_count = count;
    return in;
}

static frame_assembly_weight_out run(const frame_assembly_weight_in *in) {
    frame_assembly_weight *answer;
    frame_assembly_weight_out out;
    ck_assert_msg(!frame_assembly_weight_solve(in, &answer, NULL), "%s", frame_error_text());
    ck_assert(!frame_assembly_weight_result(answer, &out));
    ck_assert_uint_eq(frame_assembly_weight_layer_count(answer), in->layer_count);
    double sum = out.framing_psf;
    for (size_t i = 0; i < in->layer_count; i++) {
        frame_assembly_weight_layer layer;
        ck_assert(!frame_assembly_weight_layer_at(answer, i, &layer));
        ck_assert_uint_gt(strlen(layer.source), 0);
        sum += layer.weight_psf;
    }
    CLOSE(out.weight_psf, sum);
    frame_assembly_weight_free(answer);
    return out;
}

static void refused(const frame_assembly_weight_in *in, frame_status status, const char *field) {
    frame_assembly_weight *answer = NULL;
    ck_assert_int_eq(frame_assembly_weight_solve(in, &answer, NULL), status);
    ck_assert_ptr_null(answer);
    ck_assert_str_eq(frame_error_field(), field);
}

START_TEST(a_roof_by_hand) {
    frame_assembly_weight_in in = assembly(3);
    CLOSE(run(&in).weight_psf, 2 + 3.2 / 2 + 2 * 4.4 / 2);
    ck_assert(FRAME_HAS(run(&in).cautions, FRAME_ASSEMBLY_CAUTION_MEMORY));
    in.size = FRAME_SIZE(2, 8);
    in.specific_gravity = 0.42;
    in.spacing_in = 16;
    const double wood = 62.4 * 0.42 / (1 + 0.42 * 0.009 * 19) * 1.19;
    CLOSE(run(&in).framing_psf, wood * 1.5 * 7.25 / 144 * 12 / 16);
    in.slope = 0.75;
    CLOSE(run(&in).plan_psf, run(&in).weight_psf * 1.25);
    in.specific_gravity = FRAME_NOT_GIVEN;
    ck_assert(!frame_species_find("SPF", &in.species));
    CLOSE(run(&in).framing_psf, wood * 1.5 * 7.25 / 144 * 12 / 16);
}
END_TEST

/* HUD Residential Structural Design Guide, table 3.2: the whole roof and floor as printed. Secondary. */
START_TEST(whole_assemblies) {
    const frame_assembly_material wholes[] = {FRAME_ASSEMBLY_ROOF_SHINGLES, FRAME_ASSEMBLY_ROOF_CLAY_TILE,
                                              FRAME_ASSEMBLY_FLOOR_CARPET,  FRAME_ASSEMBLY_FLOOR_SLATE,
                                              FRAME_ASSEMBLY_WALL_BRICK,    FRAME_ASSEMBLY_PARTITION};
    const double psf[] = {15, 27, 10, 19, 45, 6};
    for (int i = 0; i < 6; i++) {
        frame_assembly_weight_in in = assembly(1);
        layers[0].material = wholes[i];
        ck_assert_double_eq(run(&in).weight_psf, psf[i]);
        ck_assert_int_eq(run(&in).known, FRAME_KNOWN_SECONDARY);
        in.size = FRAME_SIZE(2, 8), in.spacing_in = 16, in.specific_gravity = 0.42;
        refused(&in, FRAME_CONFLICT, "size");
    }
}
END_TEST

START_TEST(nonsense) {
    frame_assembly_weight_in in = assembly(3);
    layers[1].thickness_in = FRAME_NOT_GIVEN;
    refused(&in, FRAME_REQUIRED, "layers[1].thickness_in");
    in = assembly(3);
    layers[0].thickness_in = 0.25;
    refused(&in, FRAME_CONFLICT, "layers[0].thickness_in");
    in = assembly(3);
    in.spacing_in = 16;
    refused(&in, FRAME_REQUIRED, "size");
    in.size = FRAME_SIZE(2, 8);
    refused(&in, FRAME_REQUIRED, "species");
    in.spacing_in = FRAME_NOT_GIVEN;
    refused(&in, FRAME_REQUIRED, "spacing_in");
}
END_TEST

START_TEST(working_is_sound) {
    frame_assembly_weight_in in = assembly(3);
    in.size = FRAME_SIZE(2, 8), in.spacing_in = 16, in.specific_gravity = 0.42, in.slope = 0.5;
    frame_assembly_weight *answer;
    frame_working *w;
    frame_text *text;
    ck_assert(!frame_working_new(&w) && !frame_text_new(&text));
    ck_assert(!frame_assembly_weight_solve(&in, &answer, w));
    ck_assert_msg(!frame_working_check(w, text), "%s", frame_text_chars(text));
    frame_assembly_weight_free(answer);
    frame_text_free(text);
    frame_working_free(w);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("assembly_weight");
    TCase *tests = tcase_create("assembly_weight");
    tcase_add_test(tests, a_roof_by_hand);
    tcase_add_test(tests, whole_assemblies);
    tcase_add_test(tests, nonsense);
    tcase_add_test(tests, working_is_sound);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_ENV);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
