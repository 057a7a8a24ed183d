/* What is written reads back: every 64th up to 60 feet, and random lengths in every style. */
#include <check.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <frame/tape.h>

static const int32_t denominators[] = {1, 2, 4, 8, 16, 32, 64};
static const double slack = 1e-9; /* inches: what tape.h allows to count as on the mark */

/* As ck_assert_msg, without its note to the parent process on every success: there are millions. */
#define HOLDS(condition, ...)                        \
    do {                                             \
        if (!(condition)) ck_abort_msg(__VA_ARGS__); \
    } while (0)

static double back(const char *text) {
    double inches = NAN;
    HOLDS(frame_tape_parse(text, &inches) == FRAME_OK, "%s: %s", text, frame_error_text());
    return inches;
}

static void write(double inches, const frame_tape_style *style, char *text) {
    HOLDS(frame_tape_format(inches, style, text, 32) == FRAME_OK, "%.17g: %s", inches, frame_error_text());
    HOLDS(!strstr(text, "12\"") || style->style == FRAME_TAPE_INCHES, "%s", text);
    HOLDS(!strstr(text, "' 12"), "%s", text);
}

START_TEST(every_64th_up_to_60_feet) {
    char text[32];
    for (int marks = -60 * 12 * 64; marks <= 60 * 12 * 64; marks++) {
        const double inches = marks / 64.0;
        for (int32_t style = FRAME_TAPE_FEET; style <= FRAME_TAPE_DECIMAL; style++)
            for (int32_t rounding = FRAME_ROUND_NEAREST; rounding <= FRAME_ROUND_UP; rounding++) {
                write(inches, &(frame_tape_style){.denominator = 64, .style = style, .rounding = rounding}, text);
                HOLDS(back(text) == inches, "%d/64 was written as %s", marks, text);
            }
        write(inches, &(frame_tape_style){.denominator = 64, .style = FRAME_TAPE_METRIC}, text);
        HOLDS(round(back(text) * 64) == marks, "%d/64 was written as %s", marks, text);
    }
}
END_TEST

START_TEST(every_millimetre_up_to_20_metres) {
    char text[32], expected[32];
    for (int mm = 0; mm <= 20000; mm++) {
        snprintf(expected, sizeof expected, "%d mm", mm);
        for (int32_t rounding = FRAME_ROUND_NEAREST; rounding <= FRAME_ROUND_UP; rounding++) {
            write(back(expected), &(frame_tape_style){.style = FRAME_TAPE_METRIC, .rounding = rounding}, text);
            HOLDS(!strcmp(text, expected), "%s was written as %s", expected, text);
        }
    }
}
END_TEST

/* A length of some random size between a 64th and the longest. */
static double random_length(uint64_t *seed) {
    *seed = *seed * UINT64_C(6364136223846793005) + UINT64_C(1442695040888963407);
    const double part = (double)(*seed >> 11) / 9007199254740992.0;
    const double size = pow(10, -2 + (double)(*seed % 97) / 97 * 8);
    return (*seed >> 7) & 1 ? -part * size : part * size;
}

static void check_one(double inches, frame_tape_style style) {
    char nearest[32], down[32], up[32], again[32];
    const int metric = style.style == FRAME_TAPE_METRIC;
    const double half = 0.5 / style.denominator + slack;
    style.rounding = FRAME_ROUND_NEAREST;
    write(inches, &style, nearest);
    HOLDS(fabs(back(nearest) - inches) <= half, "%.17g was written as %s", inches, nearest);
    write(back(nearest), &style, again);
    HOLDS(!strcmp(nearest, again), "%s was written as %s", nearest, again);
    style.rounding = FRAME_ROUND_DOWN;
    write(inches, &style, down);
    style.rounding = FRAME_ROUND_UP;
    write(inches, &style, up);
    HOLDS(back(down) <= inches + slack && inches - slack <= back(up), "%.17g: %s, %s", inches, down, up);
    HOLDS(back(up) - back(down) <= (metric ? 1 / 25.4 : 1.0 / style.denominator) + slack, "%.17g: %s, %s", inches, down,
          up);
    HOLDS(!strcmp(nearest, down) || !strcmp(nearest, up), "%.17g: %s is neither %s nor %s", inches, nearest, down, up);
}

START_TEST(random_lengths) {
    uint64_t seed = 20;
    for (int i = 0; i < 20000; i++) {
        const double inches = random_length(&seed);
        for (int32_t style = FRAME_TAPE_FEET; style <= FRAME_TAPE_METRIC; style++)
            check_one(inches, (frame_tape_style){.denominator = denominators[i % 7], .style = style});
    }
}
END_TEST

/* With the words, what was left can be told to within the hair they stand for, and the text still reads back. */
START_TEST(strength_tells_the_side) {
    uint64_t seed = 30;
    int told = 0;
    for (int i = 0; i < 20000; i++) {
        const double inches = fmod(fabs(random_length(&seed)), 1000);
        char text[32];
        const frame_tape_style style = {.denominator = denominators[i % 7], .rounding = 1 + i % 3, .strength = 1};
        write(inches, &style, text);
        const double left = inches - back(text);
        const int word = strstr(text, "strong") ? 1 : strstr(text, "light") ? -1 : 0;
        const int expected = fabs(left) < 1.0 / 128 || fabs(left) > 1.0 / 16 ? 0 : left > 0 ? 1 : -1;
        HOLDS(word == expected, "%.17g was written as %s", inches, text);
        told += word != 0;
    }
    ck_assert_int_gt(told, 2000);
}
END_TEST

START_TEST(slopes) {
    uint64_t seed = 40;
    char text[32], again[32];
    double slope;
    for (int sixteenths = -100 * 16 * 12; sixteenths <= 100 * 16 * 12; sixteenths++) {
        HOLDS(frame_slope_format(sixteenths / 192.0, text, sizeof text) == FRAME_OK, "%s", frame_error_text());
        HOLDS(frame_slope_parse(text, &slope) == FRAME_OK, "%s", frame_error_text());
        HOLDS(slope == sixteenths / 192.0, "%d/192 was written as %s", sixteenths, text);
        HOLDS(!strchr(text, '.'), "%s", text);
    }
    for (int i = 0; i < 20000; i++) {
        const double wanted = fmod(random_length(&seed), 100);
        HOLDS(frame_slope_format(wanted, text, sizeof text) == FRAME_OK, "%s", frame_error_text());
        HOLDS(frame_slope_parse(text, &slope) == FRAME_OK, "%s", frame_error_text());
        HOLDS(fabs(slope - wanted) <= 0.5e-4 / 12 + 1e-12, "%.17g was written as %s", wanted, text);
        HOLDS(frame_slope_format(slope, again, sizeof again) == FRAME_OK, "%s", frame_error_text());
        HOLDS(!strcmp(text, again), "%s was written as %s", text, again);
    }
}
END_TEST

int main(void) {
    Suite *suite = suite_create("tape round trip");
    TCase *tests = tcase_create("all");
    tcase_set_timeout(tests, 120);
    tcase_add_test(tests, every_64th_up_to_60_feet);
    tcase_add_test(tests, every_millimetre_up_to_20_metres);
    tcase_add_test(tests, random_lengths);
    tcase_add_test(tests, strength_tells_the_side);
    tcase_add_test(tests, slopes);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
