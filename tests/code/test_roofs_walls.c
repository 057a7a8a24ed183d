/* Heel joints, uplift, cantilevered floors, studs, full-height studs, panels: figures typed from the printed tables,
 * the notes, limits from both sides, refusals; the heel joints of 2021 against the statics they follow. */
#include "ask.h"

#include <math.h>

#include "table_code_heel_nails.h"
#include "table_code_king_studs.h"
#include "table_code_uplift.h"

#define HEEL "edition=2018; slope=0.3333333333333333; spacing_in=16; ground_snow_psf=30; roof_span_in=28'"
#define UPLIFT                                                                                                  \
    "edition=2021; slope=0.25; spacing_in=24; roof_span_in=28'; wind_mph=115; exposure=B; roof_height_in=25'; " \
    "overhang_in=12"
#define FLOOR "edition=2021; carries=wall and roof; size=2x10; spacing_in=16; ground_snow_psf=30; roof_width_in=24'"
#define STUD "edition=2021; size=2x4; supports=one floor, roof and ceiling; height_in=8'"
#define TALL                                                                                               \
    "edition=2021; size=2x4; supports=roof; height_in=11'; wind_mph=115; exposure=B; ground_snow_psf=30; " \
    "span_in=24'; grade=No.2"
#define KING "edition=2021; header_span_in=8'; wind_mph=120; exposure=B"

static int nails(const char *question) {
    frame_code_heel_nails_out out;
    ASKED(&out, "code_heel_nails", question);
    return out.nails;
}

START_TEST(heel_joints) {
    ck_assert_int_eq(nails(HEEL), 8);
    ck_assert_int_eq(nails(HEEL "; ground_snow_psf=70; spacing_in=24; roof_span_in=36'"), 29);
    ck_assert_int_eq(nails(HEEL "; edition=2021; ground_snow_psf=70; spacing_in=24; roof_span_in=36'"), 26);
    ck_assert_int_eq(nails(HEEL "; edition=2024; spacing_in=19.2; roof_span_in=24'"), 7);
    ck_assert_int_eq(nails(HEEL "; edition=2021; roof_span_in=24'; nail=10d common"), 8); /* 1.2 x 6 = 7.2 */
    ck_assert_int_eq(nails(HEEL "; clinched=yes"), 6);
    ck_assert_int_eq(nails(HEEL "; tie_height_ratio=0.3333"), 12);
    ck_assert_int_eq(nails(HEEL "; tie_height_ratio=0.01"), 9); /* 1.11 x 8 = 8.9 */
    ck_assert_int_eq(nails(HEEL "; span_ratio=0.6"), 5);
    ck_assert_int_eq(nails(HEEL "; ridge_carried=yes"), 0);
    ck_assert_int_eq(nails(HEEL "; edition=2015; slope=0.5; tie=rafter ties"), 8); /* 6 in 12 counts as 4 */
    ck_assert_int_eq(nails(HEEL "; slope=1.5"), 3);                                /* steeper than the last row */
    ck_assert_int_eq(nails(HEEL "; slope=0.5; covering=yes"), nails(HEEL "; slope=0.4166666666666667"));
}
END_TEST

START_TEST(heel_joints_refused) {
    const char *const name = "code_heel_nails";
    frame_code_heel_nails_out out;
    REFUSED(name, HEEL "; slope=0.249", "slope", FRAME_OUTSIDE_SCOPE);
    REFUSED(name, HEEL "; slope=0.5", "slope", FRAME_NO_VALUE);
    REFUSED(name, HEEL "; spacing_in=19.2", "spacing_in", FRAME_NO_VALUE);
    REFUSED(name, HEEL "; roof_span_in=30'", "roof_span_in", FRAME_NO_VALUE);
    REFUSED(name, HEEL "; roof_span_in=37'", "roof_span_in", FRAME_OUTSIDE_SCOPE);
    REFUSED(name, HEEL "; ground_snow_psf=40", "ground_snow_psf", FRAME_NO_VALUE);
    REFUSED(name, HEEL "; tie_height_ratio=0.34", "tie_height_ratio", FRAME_OUTSIDE_SCOPE);
    REFUSED(name, HEEL "; nail=10d common", "nail", FRAME_NO_VALUE);
    REFUSED(name, HEEL "; edition=2021; roof_span_in=24'; nail=40d box", "nail", FRAME_NO_VALUE);
    REFUSED(name, HEEL "; edition=2024; roof_span_in=24'; clinched=yes", "clinched", FRAME_NO_VALUE);
    REFUSED(name, HEEL "; roof_live_psf=25", "roof_live_psf", FRAME_OUTSIDE_SCOPE);
    REFUSED(name, HEEL "; edition=IBC 2018", "edition", FRAME_NO_VALUE);
    says(&out, name, HEEL "; covering=yes; roof_span_in=30'; tie_height_ratio=0.2", "ties");
}
END_TEST

/* The table of 2021: thrust H = 3 w L / s a foot, of 30 psf at 150 lb a nail, or 10 psf and 0.77 of the snow at 138 lb;
 * 3 nails at least. */
START_TEST(heel_joints_by_statics) {
    static const double spacings[] = {0, 12, 16, 19.2, 24};
    int cells = 0;
    for (int i = 0; i < frame_code_heel_nails_rows; i++) {
        const frame_code_heel_nails_row *row = &frame_code_heel_nails_table[i];
        const int16_t printed[] = {row->n12, row->n24, row->n36};
        if (!(row->editions & (1u << (FRAME_CODE_2021 - 1)))) continue;
        for (int c = 0; c < 3; c++, cells++) {
            const double w = row->load == 20 ? 30 : 10 + 0.77 * row->load, nail = row->load == 20 ? 150 : 138;
            const double thrust = 3 * w * 12 * (c + 1) / row->slope * spacings[row->spacing] / 12;
            ck_assert_msg(printed[c] == fmax(3, ceil(thrust / nail - 1e-9)), "row %d column %d", row->id, c);
        }
    }
    ck_assert_int_eq(cells, 288);
}
END_TEST

START_TEST(heel_joints_monotone) {
    for (int i = 0; i < frame_code_heel_nails_rows; i++)
        for (int k = 0; k < frame_code_heel_nails_rows; k++) {
            const frame_code_heel_nails_row *a = &frame_code_heel_nails_table[i], *b = &frame_code_heel_nails_table[k];
            const int16_t of_a[] = {a->n12, a->n20, a->n24, a->n28, a->n36},
                          of_b[] = {b->n12, b->n20, b->n24, b->n28, b->n36};
            /* in 2015 and 2018 the columns of roof live load and of 30 psf of snow do not follow one rule */
            if (a->editions != b->editions || b->slope > a->slope || b->spacing < a->spacing || b->load < a->load)
                continue;
            if (b->load != a->load && (a->load == 20 || b->load == 20)) continue;
            for (int c = 0; c < 5; c++) ck_assert_msg(of_b[c] >= of_a[c], "rows %d %d", a->id, b->id);
            if (i == k)
                for (int c = 0, last = 0; c < 5; c++)
                    if (of_a[c] > 0) {
                        ck_assert(of_a[c] >= last);
                        last = of_a[c];
                    }
        }
}
END_TEST

static frame_code_uplift_out uplift(const char *question) {
    frame_code_uplift_out out;
    ASKED(&out, "code_uplift", question);
    return out;
}

START_TEST(uplifts) {
    ck_assert_double_eq(uplift(UPLIFT).uplift_lb, 198);
    ck_assert_double_eq(uplift(UPLIFT).uplift_plf, 99);
    ck_assert_double_eq_tol(uplift(UPLIFT "; near_corner=no").uplift_lb, 0.75 * 198, 1e-9);
    ck_assert_double_eq_tol(uplift(UPLIFT "; slope=0.5; hip=yes").uplift_lb, 0.7 * 176, 1e-9);
    ck_assert_double_eq_tol(uplift(UPLIFT "; walls_above=1").uplift_lb, 198 - 120, 1e-9);
    ck_assert_double_eq(uplift(UPLIFT "; walls_above=2").uplift_lb, 0);
    ck_assert_double_eq(uplift(UPLIFT "; exposure=C").uplift_lb, 390);
    ck_assert_double_eq(uplift(UPLIFT "; exposure=D").uplift_lb, 450); /* C at 120 mph */
    ck_assert_double_eq(uplift(UPLIFT "; roof_span_in=30'").uplift_lb, (198 + 218) / 2.0);
    ck_assert_double_eq(uplift(UPLIFT "; wind_mph=125").uplift_lb, (242 + 334) / 2.0);
    ck_assert_double_eq(uplift(UPLIFT "; wind_mph=90").uplift_lb, 158);
    ck_assert(!uplift(UPLIFT).nailing_holds && uplift(UPLIFT "; wall_gravity=0.42").nailing_holds);
    ck_assert(!uplift(UPLIFT "; wall_gravity=0.41").nailing_holds);
    ck_assert(uplift(UPLIFT "; slope=0.4166666666666667").nailing_holds); /* 115 mph, B, 5 in 12, 32 ft, 24 in */
    ck_assert(!uplift(UPLIFT "; slope=0.4166666666666667; roof_span_in=32.1'").nailing_holds);
    ck_assert(!uplift(UPLIFT "; slope=0.4166666666666667; wind_mph=116").nailing_holds);
    REFUSED("code_uplift", UPLIFT "; wind_mph=141", "wind_mph", FRAME_OUTSIDE_SCOPE);
    REFUSED("code_uplift", UPLIFT "; wind_mph=131; exposure=D", "wind_mph", FRAME_OUTSIDE_SCOPE);
    REFUSED("code_uplift", UPLIFT "; roof_height_in=33.1'", "roof_height_in", FRAME_OUTSIDE_SCOPE);
    REFUSED("code_uplift", UPLIFT "; overhang_in=24.1", "overhang_in", FRAME_OUTSIDE_SCOPE);
    REFUSED("code_uplift", UPLIFT "; roof_span_in=48.1'", "roof_span_in", FRAME_OUTSIDE_SCOPE);
    REFUSED("code_uplift", UPLIFT "; spacing_in=19.2", "spacing_in", FRAME_NO_VALUE);
    REFUSED("code_uplift", UPLIFT "; hip=yes", "hip", FRAME_OUTSIDE_SCOPE);
    REFUSED("code_uplift", UPLIFT "; edition=2015", "edition", FRAME_NO_VALUE);
}
END_TEST

/* Faster wind, wider roof, wider spacing, lower slope, exposure C: never less; and the force follows the spacing to 2
 * lb. */
START_TEST(uplifts_monotone) {
    for (int i = 0; i < frame_code_uplift_rows; i++)
        for (int k = 0; k < frame_code_uplift_rows; k++) {
            const frame_code_uplift_row *a = &frame_code_uplift_table[i], *b = &frame_code_uplift_table[k];
            const int16_t of_a[] = {a->v110, a->v115, a->v120, a->v130, a->v140},
                          of_b[] = {b->v110, b->v115, b->v120, b->v130, b->v140};
            for (int c = 0; c < 5; c++) {
                if (c) ck_assert_msg(of_a[c] >= of_a[c - 1], "row %d", a->id);
                if (b->exposure >= a->exposure && b->pitch <= a->pitch && b->spacing >= a->spacing &&
                    b->span >= a->span)
                    ck_assert_msg(of_b[c] >= of_a[c], "rows %d %d", a->id, b->id);
                if (b->exposure == a->exposure && b->pitch == a->pitch && b->span == a->span && a->spacing == 12)
                    ck_assert_msg(fabs(of_b[c] - of_a[c] * b->spacing / 12.0) <= 2, "rows %d %d", a->id, b->id);
            }
        }
}
END_TEST

static frame_code_floor_cantilever_out floor_of(const char *question) {
    frame_code_floor_cantilever_out out;
    ASKED(&out, "code_floor_cantilever", question);
    return out;
}

START_TEST(cantilevers) {
    const char *const name = "code_floor_cantilever";
    ck_assert_double_eq(floor_of(FLOOR).cantilever_in, 26);
    ck_assert_double_eq_tol(floor_of(FLOOR).uplift_lb, 271, 1e-9);
    ck_assert_double_eq_tol(floor_of(FLOOR "; back_span_in=156").uplift_lb, 271 / 2.0, 1e-9); /* six times */
    ck_assert_double_eq_tol(floor_of(FLOOR "; back_span_in=60").cantilever_in, 20, 1e-9);
    ck_assert_double_eq(floor_of(FLOOR "; roof_width_in=28'").cantilever_in, 22);
    ck_assert_double_eq(floor_of(FLOOR "; ground_snow_psf=40").cantilever_in, 23);
    ck_assert_double_eq(floor_of(FLOOR "; ground_snow_psf=10; roof_width_in=20'").cantilever_in, 29);
    ck_assert_double_eq(
        floor_of("edition=2015; carries=balcony; size=2x8; spacing_in=12; ground_snow_psf=50").cantilever_in, 39);
    ck_assert_double_eq(
        floor_of("edition=2015; carries=balcony; size=2x12; spacing_in=24; ground_snow_psf=70; back_span_in=188")
            .uplift_lb,
        165);
    REFUSED(name, FLOOR "; roof_width_in=36'", "ground_snow_psf", FRAME_NO_VALUE); /* beside an empty cell */
    /* an empty cell at the light end: 48 under a roof of 32 ft covers one of 24 ft, 40 under 50 psf does not beat it */
    ck_assert_double_eq(floor_of(FLOOR "; size=2x12; spacing_in=8; ground_snow_psf=20").cantilever_in, 48);
    ck_assert(CAUTION(floor_of(FLOOR "; size=2x12; spacing_in=8; ground_snow_psf=20"), COVERED));
    ck_assert_double_eq(floor_of(FLOOR "; size=2x12; ground_snow_psf=20").cantilever_in, 36); /* of 30 psf */
    REFUSED(name, FLOOR "; roof_width_in=41'", "roof_width_in", FRAME_OUTSIDE_SCOPE);
    REFUSED(name, FLOOR "; ground_snow_psf=71", "ground_snow_psf", FRAME_OUTSIDE_SCOPE);
    REFUSED(name, FLOOR "; spacing_in=24", "size", FRAME_NO_VALUE);
    REFUSED(name, FLOOR "; size=2x6", "size", FRAME_NO_VALUE);
    REFUSED(name, "edition=2021; carries=wall; size=2x10; spacing_in=16; ground_snow_psf=30", "roof_width_in",
            FRAME_REQUIRED);
    ck_assert(!CAUTION(floor_of(FLOOR), PINE) && CAUTION(floor_of(FLOOR "; edition=2018"), PINE));
    frame_code_floor_cantilever_out out;
    says(&out, name, FLOOR "; back_span_in=10'; roof_width_in=28'", "held down");
}
END_TEST

static void stud_is(const char *question, double spacing, double height) {
    frame_code_stud_out out;
    ASKED(&out, "code_stud", question);
    ck_assert_msg(out.spacing_in == spacing && out.height_in == height, "%s: %g %g", question, out.spacing_in,
                  out.height_in);
}

START_TEST(studs) {
    const char *const name = "code_stud";
    stud_is(STUD, 16, 120);
    stud_is(STUD "; supports=roof and ceiling", 24, 120);
    stud_is(STUD "; size=2x6; supports=two floors, roof and ceiling", 16, 120);
    stud_is(STUD "; size=2x6; supports=nonbearing; height_in=20'", 24, 240);
    stud_is(STUD "; supports=roof; grade=Utility", 16, 96);
    stud_is(STUD "; supports=nothing; exterior=no; grade=Utility; height_in=10'", 16, 120);
    stud_is(STUD "; size=2x3; supports=nothing; exterior=no", 16, 120);
    stud_is(TALL, 16, 132);
    stud_is(TALL "; wind_mph=130", 12, 132);
    stud_is(TALL "; height_in=11.1'; span_in=12'", 16, 144);
    stud_is(TALL "; span_in=12'", 16, 132);
    stud_is(TALL "; size=2x6", 24, 132);
    stud_is(TALL "; size=2x6; height_in=12'; wind_mph=140; supports=one floor and roof", 16, 144);
    stud_is(TALL "; wind_mph=130; height_in=12'", 0, 144);
    stud_is(
        "edition=2021; size=2x6; supports=roof; height_in=18'; grade=No.2; wind_mph=130; ground_snow_psf=25; "
        "tributary_in=6'",
        16, 216);
    stud_is(
        "edition=2021; size=2x6; supports=roof; height_in=18.1'; grade=No.2; wind_mph=130; ground_snow_psf=25; "
        "tributary_in=6'",
        12, 240);
    REFUSED(name, STUD "; supports=two floors and roof", "supports", FRAME_NO_VALUE);
    REFUSED(name, STUD "; size=2x3; supports=nothing", "size", FRAME_OUTSIDE_SCOPE);
    REFUSED(name, STUD "; size=2x8", "size", FRAME_NO_VALUE);
    REFUSED(name, STUD "; attic_span_in=32.1'", "attic_span_in", FRAME_OUTSIDE_SCOPE);
    REFUSED(name, STUD "; grade=Utility", "grade", FRAME_OUTSIDE_SCOPE);
    REFUSED(name, STUD "; supports=roof; grade=Utility; height_in=8.1'", "height_in", FRAME_OUTSIDE_SCOPE);
    REFUSED(name, STUD "; height_in=10.1'", "wind_mph", FRAME_REQUIRED);
    REFUSED(name, TALL "; height_in=12.1'", "height_in", FRAME_OUTSIDE_SCOPE);
    REFUSED(name, TALL "; wind_mph=141", "height_in", FRAME_OUTSIDE_SCOPE);
    REFUSED(name, TALL "; ground_snow_psf=31", "height_in", FRAME_OUTSIDE_SCOPE);
    REFUSED(name, TALL "; exposure=C", "height_in", FRAME_OUTSIDE_SCOPE);
    REFUSED(name, TALL "; grade=Stud", "height_in", FRAME_OUTSIDE_SCOPE);
    REFUSED(name, TALL "; edition=2015", "edition", FRAME_NO_VALUE);
    REFUSED(name,
            "edition=2021; size=2x6; supports=roof; height_in=18'; grade=No.2; wind_mph=130; ground_snow_psf=26; "
            "tributary_in=6'",
            "height_in", FRAME_OUTSIDE_SCOPE);
    REFUSED(name,
            "edition=2021; size=2x6; supports=roof; height_in=18'; grade=No.2; wind_mph=130; ground_snow_psf=25; "
            "tributary_in=6.1'",
            "height_in", FRAME_OUTSIDE_SCOPE);
    REFUSED(name, "edition=2021; size=2x6; supports=nothing; height_in=20.1'", "height_in", FRAME_OUTSIDE_SCOPE);
}
END_TEST

static int kings(const char *question) {
    frame_code_king_studs_out out;
    ASKED(&out, "code_king_studs", question);
    return out.full_height_studs;
}

START_TEST(king_studs) {
    const char *const name = "code_king_studs";
    ck_assert_int_eq(kings(KING), 2);
    ck_assert_int_eq(kings(KING "; wind_mph=115"), 1);
    ck_assert_int_eq(kings(KING "; wind_mph=115; anchored=yes"), 2);
    ck_assert_int_eq(kings(KING "; wind_mph=115; exposure=C"), 2);
    ck_assert_int_eq(kings(KING "; header_span_in=8.1'"), 3);
    ck_assert_int_eq(kings(KING "; header_span_in=2'"), 1);
    ck_assert_int_eq(kings("edition=2015; header_span_in=8'; stud_spacing_in=16"), 3);
    ck_assert_int_eq(kings("edition=2015; header_span_in=9'; stud_spacing_in=24"), 3);
    REFUSED(name, KING "; wind_mph=140", "wind_mph", FRAME_OUTSIDE_SCOPE);
    REFUSED(name, KING "; wind_mph=130; exposure=C", "wind_mph", FRAME_OUTSIDE_SCOPE);
    REFUSED(name, KING "; exposure=D", "wind_mph", FRAME_OUTSIDE_SCOPE);
    REFUSED(name, KING "; header_span_in=18.1'", "header_span_in", FRAME_OUTSIDE_SCOPE);
    REFUSED(name, "edition=2015; header_span_in=8'", "stud_spacing_in", FRAME_REQUIRED);
    REFUSED(name, "edition=2018; header_span_in=8'; exposure=B", "wind_mph", FRAME_REQUIRED);
    for (int i = 0; i + 1 < frame_code_king_studs_rows; i++) {
        const frame_code_king_studs_row *a = &frame_code_king_studs_table[i], *b = a + 1;
        ck_assert(a->first >= a->second);
        if (a->editions == b->editions) ck_assert(b->span > a->span && b->first >= a->first && b->second >= a->second);
    }
}
END_TEST

START_TEST(panels) {
    frame_code_panel_span_out out;
    ASKED(&out, "code_panel_span", "edition=2015; rating=32/16");
    ck_assert(out.roof_span_held_in == 32 && out.roof_span_free_in == 28 && out.floor_span_in == 16 &&
              out.live_24_psf == 70);
    ck_assert_str_eq(out.thickness, "15/32; 1/2");
    ASKED(&out, "code_panel_span", "edition=2024; rating=48 o.c.");
    ck_assert(out.floor_span_in == 48 && out.live_16_psf == FRAME_NOT_GIVEN && out.live_24_psf == 290);
    REFUSED("code_panel_span", "edition=DCA 6; rating=16/0", "edition", FRAME_NO_VALUE);
}
END_TEST

int main(void) {
    TCase *tests = tcase_create("roofs and walls");
    tcase_add_test(tests, heel_joints);
    tcase_add_test(tests, heel_joints_refused);
    tcase_add_test(tests, heel_joints_by_statics);
    tcase_add_test(tests, heel_joints_monotone);
    tcase_add_test(tests, uplifts);
    tcase_add_test(tests, uplifts_monotone);
    tcase_add_test(tests, cantilevers);
    tcase_add_test(tests, studs);
    tcase_add_test(tests, king_studs);
    tcase_add_test(tests, panels);
    return run_tests(tests, "roofs_walls");
}
