/* Local amendments: they win over the book, what the book refuses too, and are named; what cannot be read says where.
 */
#include <stdlib.h>

#include "ask.h"

#include "table_code_stair_limits.h"

static frame_code_overlay *read(const char *csv) {
    frame_code_overlay *overlay = NULL;
    ck_assert_msg(!frame_code_overlay_new(csv, &overlay), "%s", frame_error_text());
    return overlay;
}

static void set_question(frame_code_joist_span_in *in, double snow, const frame_code_overlay *overlay) {
    ck_assert(!frame_code_joist_span_in_init(in));
    in->use = FRAME_CODE_USE_RAFTER;
    ck_assert(!frame_size_find("2x8", &in->size) && !frame_species_find("SPF", &in->species));
    ck_assert(!frame_grade_find("No.2", &in->grade));
    in->spacing_in = 16;
    in->dead_psf = 10;
    in->snow_psf = snow;
    in->deflection_limit = 180;
    in->edition = FRAME_CODE_2021;
    in->overlay = overlay;
}

static const char ordinance[] =
    "\xef\xbb\xbf# City of Mill Creek\r\n"
    "lookup,use,size,snow_psf,span_in,source,table,note\r\n"
    "joist_span,rafter,2x8,30..45,12',\"Ordinance 12, \"\"sec. 3\"\"\",T-1,old barns\r\n"
    ",,,,,,,\n"
    "joist_span,rafter,2x8,,11',Ordinance 13,,\n"
    "joist_span,floor,,,1,never,,\n";

START_TEST(it_wins_and_is_named) {
    frame_code_overlay *overlay = read(ordinance);
    frame_code_joist_span_in in;
    frame_code_joist_span_out out, book;
    ck_assert_uint_eq(frame_code_overlay_rows(overlay), 3);
    set_question(&in, 30, NULL);
    ck_assert(!frame_code_joist_span(&in, &book, NULL));
    set_question(&in, 30, overlay);
    ck_assert(!frame_code_joist_span(&in, &out, NULL));
    ck_assert(out.span_in == 144 && book.span_in != 144 && out.table_span_in == book.table_span_in);
    ck_assert_str_eq(out.source, "Ordinance 12, \"sec. 3\"");
    ck_assert_str_eq(out.table, "T-1");
    ck_assert_str_eq(out.note, "old barns");
    ck_assert_int_eq(out.known, FRAME_KNOWN_USER);
    ck_assert(CAUTION(out, OVERLAY) && CAUTION(out, LOCAL) && !CAUTION(book, OVERLAY));
    /* between the book's columns, which it refuses */
    set_question(&in, 40, NULL);
    ck_assert_int_eq(frame_code_joist_span(&in, &book, NULL), FRAME_NO_VALUE);
    set_question(&in, 40, overlay);
    ck_assert(!frame_code_joist_span(&in, &out, NULL));
    ck_assert(out.span_in == 144 && out.table_span_in == FRAME_NOT_GIVEN && out.edition == FRAME_CODE_2021);
    ck_assert(CAUTION(out, OVERLAY) && CAUTION(out, SCOPE));
    /* the second line, where the first does not fit; beyond the book's scope */
    set_question(&in, 200, overlay);
    ck_assert(!frame_code_joist_span(&in, &out, NULL));
    ck_assert(out.span_in == 132);
    ck_assert_str_eq(out.source, "Ordinance 13");
    frame_code_overlay_free(overlay);
}
END_TEST

START_TEST(nothing_that_fits) {
    frame_code_overlay *overlay = read("lookup,size,span_in,source\njoist_span,2x10,1,x\nheader_span,,1,x\n");
    frame_code_joist_span_in in;
    frame_code_joist_span_out out, book;
    memset(&out, 0, sizeof out);
    memset(&book, 0, sizeof book);
    set_question(&in, 30, NULL);
    ck_assert(!frame_code_joist_span(&in, &book, NULL));
    in.overlay = overlay;
    ck_assert(!frame_code_joist_span(&in, &out, NULL));
    ck_assert(!memcmp(&out, &book, sizeof out));
    set_question(&in, 40, overlay);
    ck_assert_int_eq(frame_code_joist_span(&in, &out, NULL), FRAME_NO_VALUE);
    frame_code_overlay_free(overlay);
    frame_code_overlay_free(NULL);
    ck_assert_uint_eq(frame_code_overlay_rows(NULL), 0);
}
END_TEST

START_TEST(what_the_working_says) {
    frame_code_overlay *overlay = read(ordinance);
    frame_working *working;
    frame_text *text;
    frame_code_joist_span_in in;
    frame_code_joist_span_out out;
    ck_assert(!frame_working_new(&working) && !frame_text_new(&text));
    set_question(&in, 40, overlay);
    ck_assert(!frame_code_joist_span(&in, &out, working));
    ck_assert(!frame_result_text(&out, text) && !frame_working_check(working, text));
    frame_code_overlay_free(overlay);
    ck_assert(!frame_working_render(working, FRAME_RENDER_TEXT, text));
    ck_assert_ptr_nonnull(strstr(frame_text_chars(text), "Ordinance 12"));
    frame_working_free(working);
    frame_text_free(text);
}
END_TEST

START_TEST(words_and_whole_numbers) {
    frame_code_overlay *overlay = read(
        "lookup,supports,plies,jack_studs,span_in,source\n"
        "code_header_span,one floor,2..3,3,60,Ordinance 14\n");
    frame_code_header_span_in in;
    frame_code_header_span_out out;
    ck_assert(!frame_code_header_span_in_init(&in));
    in.supports = FRAME_CODE_SUPPORTS_ONE_FLOOR;
    ck_assert(!frame_size_find("2x10", &in.size));
    in.plies = 2;
    in.building_width_in = 240;
    in.location = FRAME_CODE_INTERIOR;
    in.edition = FRAME_CODE_2021;
    in.overlay = overlay;
    ck_assert_msg(!frame_code_header_span(&in, &out, NULL), "%s", frame_error_text());
    ck_assert(out.jack_studs == 3 && out.span_in == 60);
    in.plies = 4;
    ck_assert(!frame_code_header_span(&in, &out, NULL));
    ck_assert(out.known != FRAME_KNOWN_USER);
    frame_code_overlay_free(overlay);
}
END_TEST

START_TEST(limits_of_stairs) {
    frame_code_overlay *overlay = read("lookup,edition,item,most,source\nstairs,2021,riser height,8,Ordinance 12\n");
    frame_code_stairs_in in;
    frame_code_stairs *answer;
    frame_code_stairs_out out;
    frame_code_stairs_limit limit;
    ck_assert(!frame_code_stairs_in_init(&in));
    in.edition = FRAME_CODE_2021;
    in.riser_in = 8;
    in.overlay = overlay;
    ck_assert(!frame_code_stairs_solve(&in, &answer, NULL));
    frame_code_overlay_free(overlay);
    ck_assert(!frame_code_stairs_result(answer, &out) && !frame_code_stairs_limit_at(answer, 0, &limit));
    ck_assert(out.holds == 1 && CAUTION(out, OVERLAY));
    ck_assert(limit.most == 8 && limit.known == FRAME_KNOWN_USER);
    ck_assert_str_eq(limit.source, "Ordinance 12");
    frame_code_stairs_free(answer);
}
END_TEST

START_TEST(rules_of_the_place) {
    frame_code_overlay *overlay = read(
        "lookup,item,value,unit,clause,source\n"
        "rules,frost depth of footings,36,in min,R403.1.4,Ordinance 12\n");
    frame_code_rules_in in;
    frame_code_rules *answer;
    frame_code_rules_out out;
    frame_code_rules_rule rule;
    ck_assert(!frame_code_rules_in_init(&in));
    in.words = "frost footing";
    in.edition = FRAME_CODE_2021;
    in.overlay = overlay;
    ck_assert(!frame_code_rules_solve(&in, &answer, NULL));
    frame_code_overlay_free(overlay);
    ck_assert(!frame_code_rules_result(answer, &out) && !frame_code_rules_rule_at(answer, 0, &rule));
    ck_assert(CAUTION(out, OVERLAY) && rule.value == 36 && rule.known == FRAME_KNOWN_USER);
    ck_assert_str_eq(rule.source, "Ordinance 12");
    frame_code_rules_free(answer);
}
END_TEST

/* The message says line and column. */
static void bad(int at, const char *csv, frame_status status, int line, int column) {
    char place[40];
    frame_code_overlay *overlay = NULL;
    const frame_status got = frame_code_overlay_new(csv, &overlay);
    ck_assert_msg(got == status, "line %d: came to %s: %s", at, frame_status_name(got), got ? frame_error_text() : "");
    ck_assert(!overlay);
    ck_assert_str_eq(frame_error_field(), "csv");
    snprintf(place, sizeof place, "line %d, column %d:", line, column);
    ck_assert_msg(!line || strstr(frame_error_text(), place), "line %d: %s", at, frame_error_text());
    ck_assert(*frame_error_valid() && !strchr(frame_error_text(), '\n'));
}
#define BAD(csv, status, line, column) bad(__LINE__, csv, status, line, column)
#define NAMES "lookup,source,use,span_in\n"

START_TEST(what_cannot_be_read) {
    BAD("", FRAME_REQUIRED, 0, 0);
    BAD("# nothing\n\n", FRAME_REQUIRED, 0, 0);
    BAD(NAMES, FRAME_REQUIRED, 0, 0);
    BAD("lookup,span_in\njoist_span,12\n", FRAME_REQUIRED, 0, 0);
    BAD("lookup,source,spam\n", FRAME_UNKNOWN_FIELD, 1, 15);
    BAD("lookup,source,span_in,span_in\n", FRAME_CONFLICT, 1, 23);
    BAD(NAMES "widget,x,,12\n", FRAME_UNKNOWN_NAME, 2, 1);
    BAD(NAMES "rafter,x,,12\n", FRAME_UNKNOWN_NAME, 2, 1);    /* of another room */
    BAD(NAMES "wall_line,x,,12\n", FRAME_UNKNOWN_NAME, 2, 1); /* takes none */
    BAD("lookup,source,joint,fastener,count\nfastening,x,rafter to cloud,tie,1\n", FRAME_UNKNOWN_NAME, 2, 13);
    BAD("lookup,source,joint,fastener,count\nfastening,x,,tie,1\n", FRAME_REQUIRED, 2, 13);
    BAD("lookup,source,sheet,use,edge_in\nsheathing,x,panel,roof,4\n", FRAME_REQUIRED, 2, 1);
    BAD("lookup,source,joint,fastener,count\nfastening,x,\"rafter or roof truss to plate\",tie,1.5\n",
        FRAME_OUT_OF_RANGE, 2, 49);
    BAD(NAMES "joist_span,\"x,,12\n", FRAME_UNREADABLE, 2, 12); /* never closed */
    BAD(NAMES "joist_span,\"", FRAME_UNREADABLE, 2, 12);
    BAD(NAMES "joist_span,\"x\" y,,12\n", FRAME_UNREADABLE, 2, 12);
    BAD("lookup,source,\"use,span_in\njoist_span,x,,12\n", FRAME_UNREADABLE, 1, 15);
    BAD("lookup,source,snow_psf,span_in\njoist_span,x,301..400,12\n", FRAME_OUT_OF_RANGE, 2, 14);
    BAD("lookup,source,plies,span_in\nheader_span,x,7,12\n", FRAME_OUT_OF_RANGE, 2, 15);
    BAD("lookup,source,member,limit_diameter_in\nhole,x,stud,1\n", FRAME_REQUIRED, 2, 1);
    BAD(NAMES "joist_span,,,12\n", FRAME_REQUIRED, 2, 1);
    BAD(NAMES "joist_span,x,,\n", FRAME_REQUIRED, 2, 1);
    BAD(NAMES "joist_span,x,floor,12x\n", FRAME_UNREADABLE, 2, 20);
    BAD(NAMES "joist_span,x,flour,12\n", FRAME_UNKNOWN_NAME, 2, 14);
    BAD(NAMES "joist_span,x,floor,-12\n", FRAME_OUT_OF_RANGE, 2, 20);
    BAD(NAMES "joist_span,x,floor,1e9\n", FRAME_OUT_OF_RANGE, 2, 20);
    BAD(NAMES "joist_span,x,floor,10..12\n", FRAME_UNREADABLE, 2, 20);
    BAD(NAMES "joist_span,x,floor,12,13\n", FRAME_TOO_LARGE, 2, 23);
    BAD(NAMES "heel_nails,x,floor,12\n", FRAME_UNKNOWN_FIELD, 2, 14);
    BAD("lookup,source,spacing_in,span_in\njoist_span,x,16..12,12\n", FRAME_UNREADABLE, 2, 14);
    BAD("lookup,source,plies,span_in\nheader_span,x,1.5,12\n", FRAME_OUT_OF_RANGE, 2, 15);
    BAD("lookup,source,covering,span_in\njoist_span,x,maybe,12\n", FRAME_UNREADABLE, 2, 14);
    BAD("lookup,source,item,most\nstairs,x,,8\n", FRAME_REQUIRED, 2, 1);
    BAD("lookup,source,item,most\nstairs,x,rizer,8\n", FRAME_UNKNOWN_NAME, 2, 10);
    BAD("lookup,\"sour\nce\",x\n", FRAME_UNKNOWN_FIELD, 1, 8);
    BAD(NAMES "joist_span,\"a\nb\",,1\n\n# remark\njoist_span,x,,one\n", FRAME_UNREADABLE, 6, 15);
    frame_code_overlay *overlay;
    ck_assert_int_eq(frame_code_overlay_new(NULL, &overlay), FRAME_REQUIRED);
    ck_assert_int_eq(frame_code_overlay_new(NAMES "joist_span,x,,12\n", NULL), FRAME_REQUIRED);
}
END_TEST

/* The verdict on a hole, and what hung on the book's. */
START_TEST(verdicts) {
    frame_code_overlay *overlay = read(
        "lookup,member,diameter_in,verdict,source,note\n"
        "hole,stud,1-1/2..12,not allowed,Ordinance 15,no large holes in studs here\n"
        "hole,truss,0..1,allowed,Ordinance 15,small holes in webs\n");
    frame_code_hole_in in;
    frame_code_hole_out out;
    ck_assert(!frame_code_hole_in_init(&in) && !frame_size_find("2x6", &in.size));
    in.member = FRAME_CODE_MEMBER_STUD;
    in.edition = FRAME_CODE_2021;
    in.diameter_in = 2;
    ck_assert(!frame_code_hole(&in, &out, NULL) && out.verdict == FRAME_CODE_ALLOWED);
    in.overlay = overlay;
    ck_assert(!frame_code_hole(&in, &out, NULL));
    ck_assert(out.verdict == FRAME_CODE_NOT_ALLOWED && CAUTION(out, OVERLAY) && out.known == FRAME_KNOWN_USER);
    ck_assert(strstr(out.reason, "amendment") && !*out.needs && !strcmp(out.note, "no large holes in studs here"));
    in.diameter_in = 1;
    ck_assert(!frame_code_hole(&in, &out, NULL) && out.verdict == FRAME_CODE_ALLOWED && !CAUTION(out, OVERLAY));
    in.member = FRAME_CODE_MEMBER_TRUSS; /* refused by the book */
    ck_assert(!frame_code_hole(&in, &out, NULL) && out.verdict == FRAME_CODE_ALLOWED);
    frame_text *text;
    ck_assert(!frame_text_new(&text) && !frame_result_text(&out, text));
    ck_assert_ptr_nonnull(strstr(frame_text_chars(text), "Ordinance 15"));
    frame_text_free(text);
    frame_code_overlay_free(overlay);
}
END_TEST

/* Ways to fasten: those of the place stand in place of the schedule's, joint by joint. */
START_TEST(ways) {
    frame_code_overlay *overlay = read(
        "lookup,joint,sheet,use,thickness_in,fastener,count,edge_in,field_in,source,note\n"
        "fastening,\"rafter or roof truss to plate\",,,,steel tie of 500 lb,1,,,Ordinance 16,coast\n"
        "sheathing,,panel,roof,3/8..5/8,8d ring-shank nail,,4,6,Ordinance 16,\n");
    frame_code_fastening_in in;
    frame_code_fastening *answer;
    frame_code_fastening_out out;
    frame_code_fastening_way way;
    ck_assert(!frame_code_fastening_in_init(&in));
    in.first = "rafter", in.second = "top plate", in.edition = FRAME_CODE_2021;
    ck_assert(!frame_code_fastening_solve(&in, &answer, NULL) && !frame_code_fastening_result(answer, &out));
    ck_assert(out.way_count > 1 && out.known == FRAME_KNOWN_READ && !CAUTION(out, OVERLAY));
    frame_code_fastening_free(answer);
    in.overlay = overlay;
    ck_assert(!frame_code_fastening_solve(&in, &answer, NULL) && !frame_code_fastening_result(answer, &out));
    ck_assert(out.way_count == 1 && out.known == FRAME_KNOWN_USER && CAUTION(out, OVERLAY));
    ck_assert_str_eq(out.source, "Ordinance 16");
    ck_assert(!frame_code_fastening_way_at(answer, 0, &way) && way.count == 1 && way.spacing_in == FRAME_NOT_GIVEN);
    ck_assert(!strcmp(way.fastener, "steel tie of 500 lb") && !strcmp(way.note, "coast") && !*way.location);
    frame_code_fastening_free(answer);
    frame_code_sheathing_in sheet;
    frame_code_sheathing *nails;
    frame_code_sheathing_out nailed;
    frame_code_sheathing_way nail;
    ck_assert(!frame_code_sheathing_in_init(&sheet));
    sheet.sheet = FRAME_CODE_SHEET_PANEL, sheet.use = FRAME_CODE_SHEET_ROOF, sheet.thickness_in = 0.5;
    sheet.edition = FRAME_CODE_2021, sheet.overlay = overlay;
    ck_assert(!frame_code_sheathing_solve(&sheet, &nails, NULL));
    frame_code_overlay_free(overlay);
    ck_assert(!frame_code_sheathing_result(nails, &nailed) && !frame_code_sheathing_way_at(nails, 0, &nail));
    ck_assert(nailed.way_count == 1 && CAUTION(nailed, OVERLAY) && nailed.known == FRAME_KNOWN_USER);
    ck_assert(nail.edge_in == 4 && nail.field_in == 6 && !strcmp(nail.fastener, "8d ring-shank nail"));
    frame_code_sheathing_free(nails);
}
END_TEST

/* Every cell in quotes, four megabytes of it: read in one pass. */
START_TEST(large) {
    enum { ROWS = 60000 };
    const char *const names = "lookup,source,use,span_in\n", *const row =
                                                                 "\"joist_span\",\"a \"\"b\"\"\",\"floor\",\"12\"\n";
    char *csv = malloc(strlen(names) + ROWS * strlen(row) + 1), *at = csv + strlen(names);
    ck_assert_ptr_nonnull(csv);
    strcpy(csv, names);
    for (int i = 0; i < ROWS; i++, at += strlen(row)) strcpy(at, row);
    frame_code_overlay *overlay = read(csv);
    ck_assert_uint_eq(frame_code_overlay_rows(overlay), ROWS);
    frame_code_overlay_free(overlay);
    free(csv);
}
END_TEST

/* Any bytes: an overlay or a refusal, never a crash. */
START_TEST(odd_bytes) {
    const char good[] = NAMES "joist_span,\"x \"\" y\",floor,12'\nstairs,x,,\n";
    char csv[sizeof good];
    for (size_t i = 0; i < sizeof good - 1; i++)
        for (const char *c = "\",\n\r#. '-\xff"; *c; c++) {
            frame_code_overlay *overlay = NULL;
            memcpy(csv, good, sizeof good);
            csv[i] = *c;
            if (!frame_code_overlay_new(csv, &overlay)) frame_code_overlay_free(overlay);
            csv[i] = 0;
            if (!frame_code_overlay_new(csv, &overlay)) frame_code_overlay_free(overlay);
        }
}
END_TEST

int main(void) {
    TCase *tests = tcase_create("overlay");
    tcase_add_test(tests, it_wins_and_is_named);
    tcase_add_test(tests, nothing_that_fits);
    tcase_add_test(tests, what_the_working_says);
    tcase_add_test(tests, words_and_whole_numbers);
    tcase_add_test(tests, limits_of_stairs);
    tcase_add_test(tests, rules_of_the_place);
    tcase_add_test(tests, what_cannot_be_read);
    tcase_add_test(tests, verdicts);
    tcase_add_test(tests, ways);
    tcase_add_test(tests, large);
    tcase_add_test(tests, odd_bytes);
    return run_tests(tests, "overlay");
}
