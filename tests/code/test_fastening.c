/* The fastening schedule by the two things joined, and sheathing: ways typed from the printed schedule, words,
 * refusals. */
#include "ask.h"

#include "table_code_fastenings.h"
#include "table_code_joints.h"
#include "table_code_sheathing.h"

/* Whether one of the ways is of this nail, number and spacing, driven so. */
static int has(const frame_answer *answer, const char *fastener, int count, double spacing, const char *location) {
    for (size_t i = 0; i < answer->lists[0].count; i++) {
        const frame_code_fastening_way *way = &FRAME_ANSWER_ITEM(frame_code_fastening_way, answer, 0, i);
        if (strstr(way->fastener, fastener) && way->count == count && way->spacing_in == spacing &&
            strstr(way->location, location))
            return 1;
    }
    return 0;
}

static void nailed(const char *question, const char *fastener, int count, double spacing, const char *location) {
    frame_answer *answer = ask_all("code_fastening", question);
    ck_assert_msg(has(answer, fastener, count, spacing, location), "%s: %s", question, fastener);
    frame_answer_free(answer);
}

/* Typed from the adoption text of Texas (2021); 2015 from that of Alabama. */
START_TEST(ways_as_printed) {
    const double none = FRAME_NOT_GIVEN;
    const int any = FRAME_NOT_GIVEN_INT;
    nailed("edition=2021; first=rafter; second=top plate", "16d box (3-1/2 x 0.135 in)", 3, none, "2 on one side");
    nailed("edition=2021; first=plate; second=trusses", "10d box", 4, none, "toe");
    nailed("edition=2021; first=Rafters; second=ridge board", "16d common", 2, none, "end nail");
    nailed("edition=2018; first=jack rafter; second=hip", "16d box", 4, none, "toe");
    nailed("edition=2015; first=collar ties; second=rafters", "10d common (3 x 0.148 in)", 3, none, "each rafter");
    nailed("edition=2021; first=stud; second=bottom plate", "16d common", 2, none, "end nail");
    nailed("edition=2021; first=studs; second=studs", "16d common", any, 24, "face");
    nailed("edition=2021; first=studs; second=studs", "16d box", any, 12, "face");
    nailed("edition=2021; first=joist; second=sill", "8d common", 3, none, "toe");
    nailed("edition=2021; first=rim joist; second=sill plate", "8d box", any, 4, "toe");
    nailed("edition=2021; first=sole plate; second=rim joist", "16d common", 2, 16, "face");
    nailed("edition=2015; first=built-up beam; second=built-up beam", "20d common", any, 32, "");
    nailed("edition=2024; first=king stud; second=header", "16d common", 3, none, "end nail");
    nailed("edition=2021; first=top plate; second=splice", "3 x 0.131", 12, none, "each side of end joint");
    nailed("edition=2021; first=ceiling joist; second=rafter", "code_heel_nails", any, none, "face");
}
END_TEST

START_TEST(editions_and_refusals) {
    frame_code_fastening_out out;
    const char *const name = "code_fastening";
    ASKED(&out, name, "edition=2021; first=blocking; second=top plate");
    ck_assert_int_eq(out.joint_count, 2); /* at the plate, and as rim */
    REFUSED(name, "edition=2021; first=rafter; second=sill", "second", FRAME_NO_VALUE);
    ck_assert_ptr_nonnull(strstr(frame_error_valid(), "ridge"));
    REFUSED(name, "edition=2021; first=widget; second=top plate", "first", FRAME_NO_VALUE);
    REFUSED(name, "edition=2015; first=flat blocking; second=truss", "edition", FRAME_NO_VALUE);
    REFUSED(name, "edition=DCA 6; first=rafter; second=plate", "edition", FRAME_NO_VALUE);
    REFUSED(name, "edition=2021; second=plate", "first", FRAME_REQUIRED);
}
END_TEST

/* Every way can be found by the first words of its joint, and has a number or a spacing. */
START_TEST(every_way_is_found) {
    for (int i = 0; i < frame_code_fastenings_rows; i++) {
        const frame_code_fastenings_row *row = &frame_code_fastenings_table[i];
        const frame_code_joints_row *joint = &frame_code_joints_table[row->joint - 1];
        ck_assert_int_eq(joint->id, row->joint);
        if (!strstr(row->fastener, "code_heel_nails"))
            ck_assert_msg(row->count > 0 || row->spacing > 0, "row %d", row->id);
        for (int edition = 1; edition <= 4; edition++) {
            char question[300];
            if (!(row->editions & 1u << (edition - 1))) continue;
            snprintf(question, sizeof question, "first=%.*s; second=%.*s; edition=%s", (int)strcspn(joint->first, "|"),
                     joint->first, (int)strcspn(joint->second, "|"), joint->second,
                     frame_word_text("code_edition", edition));
            frame_answer *answer = ask_all("code_fastening", question);
            ck_assert_msg(has(answer, row->fastener, row->count == FRAME_NO_CELL ? FRAME_NOT_GIVEN_INT : row->count,
                              row->spacing == FRAME_NO_CELL ? FRAME_NOT_GIVEN : row->spacing, row->location),
                          "%s: row %d", question, row->id);
            frame_answer_free(answer);
        }
    }
}
END_TEST

static frame_code_sheathing_out sheets(const char *question, const char *fastener, double edge, double field) {
    frame_answer *answer = ask_all("code_sheathing", question);
    frame_code_sheathing_out out;
    int found = 0;
    memcpy(&out, answer->out, sizeof out);
    for (size_t i = 0; i < answer->lists[0].count; i++) {
        const frame_code_sheathing_way *way = &FRAME_ANSWER_ITEM(frame_code_sheathing_way, answer, 0, i);
        found |= strstr(way->fastener, fastener) && way->edge_in == edge && way->field_in == field;
    }
    ck_assert_msg(found, "%s: %s", question, fastener);
    frame_answer_free(answer);
    return out;
}

#define ROOF "edition=2021; sheet=plywood; use=roof; thickness_in=1/2"
#define WALL "edition=2021; sheet=OSB; use=wall; thickness_in=7/16; stud_spacing_in=16; exposure=B"

START_TEST(sheathing) {
    ck_assert_str_eq(sheets(ROOF, "8d common", 6, 6).wind_note, "");
    sheets(ROOF "; edition=2015", "8d common", 6, 12);
    sheets(ROOF "; thickness_in=1-1/8", "10d common", 6, 12);
    sheets("edition=2021; sheet=gypsum; use=wall; thickness_in=5/8", "1-3/4\" x 0.120\"", 7, 7);
    sheets("edition=2018; sheet=fiberboard; use=wall; thickness_in=25/32", "roofing nail", 3, 6);
    sheets("edition=2024; sheet=combination; use=subfloor; thickness_in=3/4", "8d common", 6, 12);
    ck_assert_ptr_nonnull(strstr(sheets(ROOF "; wind_mph=131; exposure=B", "8d", 6, 6).wind_note, "4 in"));
    ck_assert_str_eq(sheets(ROOF "; wind_mph=130; exposure=B", "8d", 6, 6).wind_note, "");
    ck_assert_ptr_nonnull(strstr(sheets(ROOF "; wind_mph=111; exposure=C", "8d", 6, 6).wind_note, "4 in"));
    ck_assert_int_eq(sheets(WALL "; wind_mph=170", "8d", 6, 12).wind_holds, 1);
    ck_assert_int_eq(sheets(WALL, "8d", 6, 12).wind_holds, FRAME_NOT_GIVEN_INT);
    ck_assert_int_eq(sheets(WALL "; wind_mph=171", "8d", 6, 12).wind_holds, 0);
    ck_assert_int_eq(sheets(WALL "; wind_mph=141; stud_spacing_in=24", "8d", 6, 12).wind_holds, 0);
    ck_assert_int_eq(sheets(WALL "; wind_mph=116; exposure=C; thickness_in=3/8", "6d", 6, 12).wind_holds, 0);
    ck_assert_int_eq(sheets(WALL "; wind_mph=115; exposure=C; thickness_in=3/8", "6d", 6, 12).wind_holds, 1);
    REFUSED("code_sheathing", ROOF "; thickness_in=1/4", "thickness_in", FRAME_NO_VALUE);
    REFUSED("code_sheathing", "edition=2021; sheet=gypsum; use=roof; thickness_in=1/2", "thickness_in", FRAME_NO_VALUE);
    REFUSED("code_sheathing", ROOF "; edition=IBC 2018", "edition", FRAME_NO_VALUE);
}
END_TEST

int main(void) {
    TCase *tests = tcase_create("fastening");
    tcase_add_test(tests, ways_as_printed);
    tcase_add_test(tests, editions_and_refusals);
    tcase_add_test(tests, every_way_is_found);
    tcase_add_test(tests, sheathing);
    return run_tests(tests, "fastening");
}
