/* Holes and notches: the verdict at each limit, just under it and just over it; where else they may be; who is refused.
 */
#include <math.h>

#include "ask.h"

#define JOIST "edition=2021; member=joist; size=2x10; diameter_in=2"
#define NOTCH                                                                                              \
    "edition=2021; member=joist; cut=notch; size=2x10; notch_depth_in=1; notch_length_in=2; span_in=144; " \
    "position_in=24"
#define STUD "edition=2021; member=stud; size=2x4; diameter_in=1"
#define PLATE "edition=2021; member=top plate; size=2x4; diameter_in=1"
#define I_JOIST                                                                                              \
    "edition=2021; member=I-joist; depth_in=11.875; diameter_in=6; maker_diameter_in=6; maker_edge_in=1.5; " \
    "maker_end_in=24; "                                                                                      \
    "span_in=180; position_in=90"

static frame_code_hole_out hole(const char *question) {
    frame_code_hole_out out;
    ASKED(&out, "code_hole", question);
    ck_assert_msg(*out.reason, "%s: no reason", question);
    return out;
}

static void is(const char *question, frame_code_verdict verdict) {
    const frame_code_hole_out out = hole(question);
    ck_assert_msg(out.verdict == verdict, "%s: %s: %s", question, frame_word_text("code_verdict", out.verdict),
                  out.reason);
}

/* Asks with a value a hair under a limit, at it and a hair over it. */
static void limit(const char *question, const char *field, double at, frame_code_verdict within,
                  frame_code_verdict beyond) {
    static const double steps[] = {-1e-3, 0, 1e-3};
    for (int i = 0; i < 3; i++) {
        char whole[600], number[32];
        ck_assert(!frame_number_write(at + steps[i], 17, number, sizeof number));
        snprintf(whole, sizeof whole, "%s; %s=%s", question, field, number);
        is(whole, i < 2 ? within : beyond);
    }
}

START_TEST(joist_holes) {
    limit(JOIST, "diameter_in", 9.25 / 3, FRAME_CODE_ALLOWED, FRAME_CODE_NOT_ALLOWED);
    limit(JOIST "; size=2x6", "diameter_in", 1.5, FRAME_CODE_ALLOWED, FRAME_CODE_NOT_ALLOWED); /* 5.5 - 2 x 2 */
    is(JOIST "; size=2x4; diameter_in=0.01", FRAME_CODE_NOT_ALLOWED); /* no place 2 in from both edges */
    limit(JOIST, "offset_in", 9.25 - 3, FRAME_CODE_ALLOWED, FRAME_CODE_NOT_ALLOWED);
    limit(JOIST, "offset_in", 3 + 1e-3, FRAME_CODE_ALLOWED, FRAME_CODE_ALLOWED);
    is(JOIST "; offset_in=2.99", FRAME_CODE_NOT_ALLOWED);
    ck_assert_double_eq(hole(JOIST "; offset_in=1").nearest_offset_in, 3);
    ck_assert_double_eq(hole(JOIST "; offset_in=8").nearest_offset_in, 6.25);
    const frame_code_hole_out out = hole(JOIST);
    ck_assert_double_eq_tol(out.limit_diameter_in, 9.25 / 3, 1e-12);
    ck_assert(out.edge_in == 2 && out.depth_in == 9.25 && out.nearest_offset_in == FRAME_NOT_GIVEN);
    ck_assert(FRAME_HAS(out.not_checked, FRAME_CODE_UNCHECKED_OTHER_HOLES));
    /* another hole of 1 in at 60: the middles keep 1 + 0.5 + 2 in */
    limit(JOIST "; other_position_in=60; other_length_in=1", "position_in", 56.5, FRAME_CODE_ALLOWED,
          FRAME_CODE_NOT_ALLOWED);
    ck_assert_double_eq(hole(JOIST "; other_position_in=60; other_length_in=1; position_in=59").nearest_position_in,
                        56.5);
    ck_assert_double_eq(hole(JOIST "; other_position_in=60; other_length_in=1; position_in=61").nearest_position_in,
                        63.5);
    ck_assert_double_eq(hole(JOIST "; other_position_in=2; other_length_in=1; position_in=1").nearest_position_in, 5.5);
    is(JOIST "; member=ceiling joist", FRAME_CODE_ALLOWED);
    ck_assert_str_eq(hole(JOIST "; member=rafter").table, "R802.7.1");
}
END_TEST

START_TEST(joist_notches) {
    const char *const end = NOTCH "; end_notch=yes";
    limit(NOTCH, "notch_depth_in", 9.25 / 6, FRAME_CODE_ALLOWED, FRAME_CODE_NOT_ALLOWED);
    limit(NOTCH, "notch_length_in", 9.25 / 3, FRAME_CODE_ALLOWED, FRAME_CODE_NOT_ALLOWED);
    limit(NOTCH, "position_in", 47, FRAME_CODE_ALLOWED, FRAME_CODE_NOT_ALLOWED); /* 48 less half the notch */
    is(NOTCH "; position_in=72", FRAME_CODE_NOT_ALLOWED);
    is(NOTCH "; position_in=96.9", FRAME_CODE_NOT_ALLOWED);
    is(NOTCH "; position_in=97", FRAME_CODE_ALLOWED);
    ck_assert_double_eq(hole(NOTCH "; position_in=60").nearest_position_in, 47);
    ck_assert_double_eq(hole(NOTCH "; position_in=90").nearest_position_in, 97);
    limit(end, "notch_depth_in", 9.25 / 4, FRAME_CODE_ALLOWED, FRAME_CODE_NOT_ALLOWED);
    /* nominal 4 in and thicker: none in the tension side but at the ends */
    is(NOTCH "; size=4x10", FRAME_CODE_NOT_ALLOWED);
    is(NOTCH "; size=3x10", FRAME_CODE_ALLOWED);
    is(NOTCH "; size=4x10; side=top", FRAME_CODE_ALLOWED);
    is(NOTCH "; size=4x10; end_notch=yes", FRAME_CODE_ALLOWED);
    limit("edition=2024; member=rafter tail; cut=notch; size=2x8; notch_depth_in=2; tail_in=20", "notch_depth_in", 3.75,
          FRAME_CODE_ALLOWED, FRAME_CODE_NOT_ALLOWED);
    limit("edition=2024; member=rafter tail; cut=notch; size=2x8; notch_depth_in=2", "tail_in", 24 + 1e-9,
          FRAME_CODE_ALLOWED, FRAME_CODE_NOT_ALLOWED);
}
END_TEST

START_TEST(studs) {
    const char *const inner = STUD "; bearing=no; exterior=no";
    limit(STUD, "diameter_in", 0.4 * 3.5, FRAME_CODE_ALLOWED, FRAME_CODE_ALLOWED_DOUBLED);
    limit(STUD, "diameter_in", 0.6 * 3.5, FRAME_CODE_ALLOWED_DOUBLED, FRAME_CODE_NOT_ALLOWED);
    limit(STUD "; size=2x6", "diameter_in", 0.4 * 5.5, FRAME_CODE_ALLOWED, FRAME_CODE_ALLOWED_DOUBLED);
    limit(STUD "; doubled=yes", "diameter_in", 0.6 * 3.5, FRAME_CODE_ALLOWED, FRAME_CODE_NOT_ALLOWED);
    limit(inner, "diameter_in", 0.6 * 3.5, FRAME_CODE_ALLOWED, FRAME_CODE_NOT_ALLOWED);
    is(STUD "; bearing=no; diameter_in=2", FRAME_CODE_ALLOWED_DOUBLED); /* an outer wall counts */
    limit(STUD, "offset_in", 3.5 - 0.625 - 0.5, FRAME_CODE_ALLOWED, FRAME_CODE_NOT_ALLOWED);
    ck_assert_double_eq(hole(STUD "; offset_in=0.5").nearest_offset_in, 1.125);
    is(STUD "; beside_notch=yes", FRAME_CODE_NOT_ALLOWED);
    is(STUD "; diameter_in=2; successive=2", FRAME_CODE_ALLOWED_DOUBLED);
    is(STUD "; diameter_in=2; successive=3", FRAME_CODE_NOT_ALLOWED);
    is(STUD "; diameter_in=1; successive=3", FRAME_CODE_ALLOWED);
    ck_assert_ptr_nonnull(strstr(hole(STUD "; diameter_in=2").needs, "second stud"));
    limit(STUD "; cut=notch", "notch_depth_in", 0.25 * 3.5, FRAME_CODE_ALLOWED, FRAME_CODE_NOT_ALLOWED);
    limit(STUD "; cut=notch; bearing=no; exterior=no", "notch_depth_in", 0.4 * 3.5, FRAME_CODE_ALLOWED,
          FRAME_CODE_NOT_ALLOWED);
    const frame_code_hole_out out = hole(STUD);
    ck_assert(CAUTION(out, PROTECT) && CAUTION(out, SHORE) && out.known == FRAME_KNOWN_READ);
    ck_assert(hole(STUD "; edition=2015").known == FRAME_KNOWN_SECONDARY);
    ck_assert(hole(STUD "; edition=2024").known == FRAME_KNOWN_READ);
}
END_TEST

START_TEST(plates) {
    limit(PLATE, "diameter_in", 1.75, FRAME_CODE_ALLOWED, FRAME_CODE_ALLOWED_TIE);
    limit(PLATE "; cut=notch", "notch_depth_in", 1.75, FRAME_CODE_ALLOWED, FRAME_CODE_ALLOWED_TIE);
    is(PLATE "; diameter_in=3; sheathed=yes", FRAME_CODE_ALLOWED);
    is(PLATE "; diameter_in=3; bearing=no; exterior=no", FRAME_CODE_ALLOWED);
    ck_assert_ptr_nonnull(strstr(hole(PLATE "; diameter_in=3").needs, "eight 10d"));
    ck_assert_int_eq(hole(PLATE "; edition=2015").known, FRAME_KNOWN_MEMORY);
    ck_assert_int_eq(hole(PLATE "; edition=2024").known, FRAME_KNOWN_READ);
}
END_TEST

START_TEST(by_the_maker) {
    limit(I_JOIST, "diameter_in", 6, FRAME_CODE_ALLOWED, FRAME_CODE_NOT_ALLOWED);
    limit(I_JOIST, "position_in", 180 - 24 - 3, FRAME_CODE_ALLOWED, FRAME_CODE_NOT_ALLOWED);
    ck_assert_double_eq(hole(I_JOIST "; position_in=10").nearest_position_in, 27);
    limit(I_JOIST, "offset_in", 11.875 - 4.5, FRAME_CODE_ALLOWED, FRAME_CODE_NOT_ALLOWED);
    const frame_code_hole_out out = hole(I_JOIST);
    ck_assert(CAUTION(out, MAKER) && out.known == FRAME_KNOWN_USER);
    REFUSED("code_hole", "edition=2021; member=I-joist; depth_in=11.875; diameter_in=6; span_in=180; position_in=90",
            "maker_diameter_in", FRAME_REFUSED);
    REFUSED("code_hole", "edition=2021; member=LVL; depth_in=11.875; cut=notch", "cut", FRAME_REFUSED);
}
END_TEST

/* Another hole near a notch; two notches may lie as near as one likes. */
START_TEST(notches_and_holes) {
    limit(NOTCH "; other_position_in=20; other_length_in=2; position_in=30", "position_in", 24 + 1e-3,
          FRAME_CODE_ALLOWED, FRAME_CODE_ALLOWED);
    is(NOTCH "; other_position_in=20; other_length_in=2; position_in=23.99", FRAME_CODE_NOT_ALLOWED);
    ck_assert_double_eq(hole(NOTCH "; other_position_in=20; other_length_in=2; position_in=22").nearest_position_in,
                        24);
    ck_assert_double_eq(hole(NOTCH "; other_position_in=45; other_length_in=2; position_in=46").nearest_position_in,
                        41);
    is(NOTCH "; other_position_in=20; other_length_in=2; other_cut=notch; position_in=22", FRAME_CODE_ALLOWED);
    REFUSED("code_hole", NOTCH "; other_position_in=20", "other_length_in", FRAME_REQUIRED);
    REFUSED("code_hole", JOIST "; span_in=100; position_in=101", "position_in", FRAME_IMPOSSIBLE);
    /* both at once: an edge and another hole */
    const frame_code_hole_out out =
        hole(JOIST "; other_position_in=60; other_length_in=1; position_in=59; offset_in=1");
    ck_assert(out.nearest_position_in == 56.5 && out.nearest_offset_in == 3);
    /* nowhere along a short member: no place at all, though the offset alone would do */
    const frame_code_hole_out none =
        hole(JOIST "; span_in=6; other_position_in=3; other_length_in=1; position_in=3; offset_in=1");
    ck_assert(none.nearest_position_in == FRAME_NOT_GIVEN && none.nearest_offset_in == FRAME_NOT_GIVEN);
    /* a notch in the same section spoils the stud wherever the hole is */
    ck_assert(hole(STUD "; beside_notch=yes; offset_in=0.5").nearest_offset_in == FRAME_NOT_GIVEN);
}
END_TEST

static uint32_t seed = 7;
static double between(double low, double high) {
    seed = seed * 1664525u + 1013904223u;
    return low + (high - low) * (seed >> 8) / 16777216.0;
}

static frame_code_hole_in random_cut(void) {
    static const frame_code_member members[] = {FRAME_CODE_MEMBER_JOIST, FRAME_CODE_MEMBER_RAFTER,
                                                FRAME_CODE_MEMBER_STUD, FRAME_CODE_MEMBER_I_JOIST};
    frame_code_hole_in in;
    ck_assert(!frame_code_hole_in_init(&in));
    in.member = members[(int)between(0, 3.99)];
    in.edition = FRAME_CODE_2021;
    in.depth_in = between(3, 16);
    in.thickness_in = between(1, 4);
    in.diameter_in = between(0.3, 4);
    in.offset_in = between(0, in.depth_in);
    in.span_in = between(10, 200);
    in.position_in = between(0, in.span_in);
    in.notch_depth_in = between(0.2, 3);
    in.notch_length_in = between(0.2, 5);
    if (in.member != FRAME_CODE_MEMBER_I_JOIST && in.member != FRAME_CODE_MEMBER_STUD && between(0, 1) < 0.5)
        in.cut = FRAME_CODE_CUT_NOTCH;
    if (between(0, 1) < 0.6) {
        in.other_position_in = fmin(fmax(in.position_in + between(-6, 6), 0), in.span_in);
        in.other_length_in = between(0.2, 5);
        if (between(0, 1) < 0.2) in.other_cut = FRAME_CODE_CUT_NOTCH;
    }
    in.maker_diameter_in = between(2, 6);
    in.maker_edge_in = between(0, 4);
    in.maker_end_in = between(0, 40);
    in.beside_notch = between(0, 1) < 0.1;
    in.successive = between(0, 1) < 0.1 ? 3 : 1;
    return in;
}

static int may(const frame_code_hole_in *in, double position, double offset) {
    frame_code_hole_in there = *in;
    frame_code_hole_out out;
    there.position_in = position;
    there.offset_in = offset;
    ck_assert_msg(!frame_code_hole(&there, &out, NULL), "%s", frame_error_text());
    return out.verdict != FRAME_CODE_NOT_ALLOWED;
}

/* No place on a grid is allowed and nearer, along the member or across it; none at all where none is named. */
static void none_nearer(const frame_code_hole_in *in, double position, double offset, int named) {
    for (int i = 0; i <= 100; i++) {
        const double along = in->span_in * i / 100, across = in->depth_in * i / 100;
        if (named && fabs(along - in->position_in) < fabs(position - in->position_in) - 1e-6)
            ck_assert(!may(in, along, offset));
        if (named && fabs(across - in->offset_in) < fabs(offset - in->offset_in) - 1e-6)
            ck_assert(!may(in, position, across));
        for (int k = 0; !named && k <= 20; k++) ck_assert(!may(in, along, in->depth_in * k / 20));
    }
}

/* The nearest place holds, and is the nearest. */
START_TEST(nearest_places) {
    int named = 0, nowhere = 0;
    for (int i = 0; i < 3000; i++) {
        const frame_code_hole_in in = random_cut();
        frame_code_hole_out out;
        ck_assert_msg(!frame_code_hole(&in, &out, NULL), "%s", frame_error_text());
        const int moves = out.nearest_position_in != FRAME_NOT_GIVEN || out.nearest_offset_in != FRAME_NOT_GIVEN;
        const double position = out.nearest_position_in == FRAME_NOT_GIVEN ? in.position_in : out.nearest_position_in;
        const double offset = out.nearest_offset_in == FRAME_NOT_GIVEN ? in.offset_in : out.nearest_offset_in;
        if (out.verdict != FRAME_CODE_NOT_ALLOWED) {
            ck_assert(!moves);
            continue;
        }
        if (moves) ck_assert_msg(may(&in, position, offset), "case %d: %s", i, out.reason);
        if (moves ? named++ % 4 == 0 : nowhere++ % 40 == 0) none_nearer(&in, position, offset, moves);
    }
    ck_assert_msg(named > 300 && nowhere > 300, "%d named, %d nowhere", named, nowhere);
}
END_TEST

START_TEST(refused) {
    static const char *const members[] = {"header", "built-up beam", "flat member", "truss"};
    for (int i = 0; i < 4; i++) {
        char question[200];
        snprintf(question, sizeof question, JOIST "; member=%s", members[i]);
        REFUSED("code_hole", question, "member", FRAME_REFUSED);
        ck_assert_ptr_nonnull(strstr(frame_error_text(), "designer")
                                  ? frame_error_text()
                                  : strstr(frame_error_text(), "design professional"));
    }
    REFUSED("code_hole", "edition=2021; member=joist; diameter_in=2", "size", FRAME_REQUIRED);
    REFUSED("code_hole", "edition=2021; member=joist; size=2x10", "diameter_in", FRAME_REQUIRED);
    REFUSED("code_hole", JOIST "; depth_in=9", "depth_in", FRAME_CONFLICT);
    REFUSED("code_hole", JOIST "; other_position_in=20", "position_in", FRAME_REQUIRED);
    REFUSED("code_hole", NOTCH "; position_in=145", "position_in", FRAME_IMPOSSIBLE);
    REFUSED("code_hole",
            "edition=2021; member=joist; cut=notch; size=2x10; notch_depth_in=1; notch_length_in=2; position_in=24",
            "span_in", FRAME_REQUIRED);
    REFUSED("code_hole", JOIST "; edition=DCA 6", "edition", FRAME_NO_VALUE);
    REFUSED("code_hole", "edition=2024; member=tail; size=2x8; diameter_in=1; tail_in=20", "cut", FRAME_NO_VALUE);
}
END_TEST

START_TEST(workings) {
    frame_code_hole_out out;
    says(&out, "code_hole", JOIST "; offset_in=1", "R502.8.1");
    says(&out, "code_hole", NOTCH, "middle");
    says(&out, "code_hole", STUD "; diameter_in=2", "second stud");
    says(&out, "code_hole", PLATE "; diameter_in=3", "galvanised");
    says(&out, "code_hole", I_JOIST, "maker");
    says(&out, "code_hole", "edition=2021; member=tail; cut=notch; size=2x8; notch_depth_in=1; tail_in=20",
         "second-hand copy");
}
END_TEST

int main(void) {
    TCase *tests = tcase_create("holes");
    tcase_add_test(tests, joist_holes);
    tcase_add_test(tests, joist_notches);
    tcase_add_test(tests, studs);
    tcase_add_test(tests, plates);
    tcase_add_test(tests, by_the_maker);
    tcase_add_test(tests, notches_and_holes);
    tcase_add_test(tests, nearest_places);
    tcase_add_test(tests, refused);
    tcase_add_test(tests, workings);
    return run_tests(tests, "code_hole");
}
