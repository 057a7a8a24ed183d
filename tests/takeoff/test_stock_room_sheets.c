/* Sheets in the stock room: read and written without loss, cut from, taken out whole or not at all, what is left put
 * in. */
#include "sheet_check.h"

static const double NOTCHED[] = {0, 0, 48, 0, 48, 1.0 / 3 + 40, 20, 30.1, 0, 60}, KNOT[] = {5, 5, 7, 5, 7, 7};

/* Two sheets, an offcut with a knot in it, three plain ones; all "subfloor", but for one sheet. */
static void stock_up(sheet_job *job) {
    sheets_begin(job);
    have_sheet(job, 48, 96, 32.5, 2);
    have_sheet(job, 48, 120, 41.25, FRAME_NOT_GIVEN_INT);
    have_offcut(job, 1, NOTCHED, 5);
    have_hole(job, 0, KNOT, 3);
    have_offcut(job, 3, (const double[]){0, 0, 30, 0, 30, 30, 0, 30}, 4);
    job->sheets[0].name = job->offcuts[0].name = job->offcuts[1].name = "subfloor";
    job->sheets[1].name = "wall, \"long\"";
}

static frame_stock_room *room_of(const sheet_job *job) {
    frame_stock_room *room = NULL;
    ck_assert_int_eq(frame_stock_room_new(&room), FRAME_OK);
    ck_assert_int_eq(frame_stock_room_put_sheets(room, job->sheets, job->in.sheet_count), FRAME_OK);
    ck_assert_msg(
        !frame_stock_room_put_offcuts(room, job->offcuts, job->in.offcut_count, job->holes, job->in.hole_count), "%s",
        frame_error_text());
    return room;
}

static char *text_of(const frame_stock_room *room, int json) {
    frame_text *text;
    ck_assert_int_eq(frame_text_new(&text), FRAME_OK);
    ck_assert_int_eq(json ? frame_stock_room_json(room, text) : frame_stock_room_csv(room, text), FRAME_OK);
    char *copy = malloc(frame_text_length(text) + 1);
    memcpy(copy, frame_text_chars(text), frame_text_length(text) + 1);
    frame_text_free(text);
    return copy;
}

static frame_status read_room(const char *text, int json, frame_stock_room **room) {
    return json ? frame_stock_room_from_json(text, room) : frame_stock_room_from_csv(text, room);
}

START_TEST(written_and_read_without_loss) {
    static sheet_job job;
    stock_up(&job);
    frame_stock_room *room = room_of(&job);
    ck_assert_uint_eq(frame_stock_room_rows(room), 4);
    for (int by = 0; by < 2; by++) {
        frame_stock_room *again = NULL;
        char *written = text_of(room, by);
        ck_assert_msg(!read_room(written, by, &again), "%s", frame_error_text());
        for (int as = 0; as < 2; as++) {
            char *one = text_of(room, as), *other = text_of(again, as);
            ck_assert_str_eq(one, other);
            free(one), free(other);
        }
        free(written);
        frame_stock_room_free(again);
    }
    frame_stock_room_free(room);
}
END_TEST

START_TEST(damage_is_named_by_line_and_column) {
    static const struct {
        int json;
        const char *text, *where;
    } damaged[] = {
        {0, "price,corners_in\n0,0 0 5 0 5 5 x\n", "line 2, column 3:"},
        {0, "price,corners_in\n0,0 0 5 0 0 5 5 5\n", "line 2, column 1:"},
        {0, "price,corners_in\n0,0 0 5 0 5\n", "line 2, column 1:"},
        {0, "price,corners_in,holes_in\n0,0 0 5 0 5 5,1 1 2 1; 3\n", "line 2, column 1:"},
        {0, "price,width_in,length_in,size\n3,48,96,2x4\n", "line 2, column 1:"},
        {0, "price,width_in\n3,48\n", "line 2, column 1:"},
        {0, "price,holes_in\n3,0 0 5 0 5 5\n", "line 2, column 1:"},
        {0, "price,width_in,corners_in\n3,48,0 0 5 0 5 5\n", "line 2, column 1:"},
        {1, "[{\"price\": 0,\n\"corners_in\": [0, 0, 5, 0, oak]}]", "line 2, column 28:"},
        {1, "[{\"price\": 0, \"corners_in\": [0,0,5,0,5,5],\n\"holes_in\": [[1,1,2,1,2,2], 3]}]", "line 2, column 29:"},
        {1, "[{\"price\": 0, \"corners_in\": [0,0,5,0,5,5],\n\"holes_in\": [[1,1,2,1,2,2]}]", "line 2, column 27:"},
    };
    for (size_t i = 0; i < sizeof damaged / sizeof *damaged; i++) {
        frame_stock_room *room = NULL;
        ck_assert_int_ne(read_room(damaged[i].text, damaged[i].json, &room), FRAME_OK);
        ck_assert_ptr_null(room);
        ck_assert_msg(strstr(frame_error_text(), damaged[i].where) != NULL, "%zu: %s, not %s", i, frame_error_text(),
                      damaged[i].where);
    }
}
END_TEST

/* However a file is cut off or changed, it is read whole or refused. */
START_TEST(damage_at_random) {
    static sheet_job job;
    stock_up(&job);
    frame_stock_room *room = room_of(&job);
    char *texts[] = {text_of(room, 0), text_of(room, 1)};
    srand(4);
    for (int n = 0; n < 4000; n++) {
        frame_stock_room *again = NULL;
        const size_t length = strlen(texts[n % 2]), at = (size_t)rand() % length;
        const char before = texts[n % 2][at];
        texts[n % 2][at] = (char)(n % 3 ? rand() % 256 : 0);
        const frame_status status = read_room(texts[n % 2], n % 2, &again);
        ck_assert_int_eq(status == FRAME_OK, again != NULL);
        frame_stock_room_free(again);
        texts[n % 2][at] = before;
    }
    free(texts[0]), free(texts[1]);
    frame_stock_room_free(room);
}
END_TEST

/* -- plans -- */

static char *plan_text(const frame_sheet_plan *plan,
                       frame_status (*write)(const frame_sheet_plan *plan, frame_text *into)) {
    frame_text *text;
    ck_assert_int_eq(frame_text_new(&text), FRAME_OK);
    ck_assert_int_eq(write(plan, text), FRAME_OK);
    char *copy = malloc(frame_text_length(text) + 1);
    memcpy(copy, frame_text_chars(text), frame_text_length(text) + 1);
    frame_text_free(text);
    return copy;
}

static void want_some(sheet_job *job) {
    want_rectangle(job, 3, 28, 25);
    want_rectangle(job, 2, 40, 50);
    want_polygon(job, 2, (const double[]){0, 0, 30, 0, 0, 30}, 3);
    job->in.time_limit_s = FRAME_NOT_GIVEN;
}

/* A room is cut from as the same lists are, and the plan is the same to the last digit. */
START_TEST(a_room_is_like_its_lists) {
    static sheet_job job;
    stock_up(&job);
    want_some(&job);
    frame_stock_room *room = room_of(&job);
    frame_sheet_plan *plan = plan_sheets(&job);
    verify_sheets(&job, plan);
    sheet_job from_room = job;
    from_room.in.sheet_count = from_room.in.offcut_count = from_room.in.hole_count = 0;
    from_room.in.room = room;
    from_room.in.parts = job.parts;
    frame_sheet_plan *other = plan_sheets(&from_room);
    char *one = plan_text(plan, frame_sheet_plan_json), *two = plan_text(other, frame_sheet_plan_json);
    ck_assert_str_eq(one, two);
    free(one), free(two);
    frame_sheet_plan_free(plan), frame_sheet_plan_free(other);
    from_room.in.room_name = "roof";
    ck_assert_int_eq(frame_sheet_plan_solve(&from_room.in, &plan, NULL), FRAME_REQUIRED);
    frame_stock_room_free(room);
}
END_TEST

static double area_of_room(const frame_stock_room *room) {
    char *text = text_of(room, 0);
    double area = 0;
    for (char *line = strtok(text, "\r\n"); line; line = strtok(NULL, "\r\n")) {
        char *corners = strrchr(line, ',');
        double xy[200], sum = 0;
        int count = 0;
        *corners = 0; /* no holes in this test */
        corners = strrchr(line, ',') + 1;
        for (char *at = corners; *at && count < 200;) xy[count++] = strtod(at, &at);
        for (int c = 0; c < count; c += 2) sum += xy[c] * xy[(c + 3) % count] - xy[(c + 2) % count] * xy[c + 1];
        const char *available = line;
        for (int c = 0; c < 4; c++) available = strchr(available, ',') + 1;
        if (count >= 6 && xy[0] == xy[0]) area += fabs(sum) / 2 * strtod(available, NULL);
    }
    free(text);
    return area;
}

/* Job after job out of one room: every area is accounted for, and what is left is cut before anything is bought. */
START_TEST(the_next_job_finds_what_is_left) {
    static sheet_job job;
    frame_stock_room *room;
    double bought = 0, parts = 0, lost = 0;
    int32_t sheets = 0;
    ck_assert_int_eq(frame_stock_room_new(&room), FRAME_OK);
    srand(9);
    for (int n = 0; n < 12; n++) {
        sheets_begin(&job);
        for (int i = 0; i < 3; i++) want_rectangle(&job, 1 + rand() % 2, 8 + rand() % 30, 8 + rand() % 30);
        have_sheet(&job, 48, 96, 30, FRAME_NOT_GIVEN_INT);
        job.sheets[0].name = "roof";
        job.in.room = room;
        job.in.cuts = n % 2 ? FRAME_SHEET_CUTS_FREE : FRAME_SHEET_CUTS_STRAIGHT;
        frame_sheet_plan *plan = plan_sheets(&job);
        frame_sheet_plan_out out;
        ck_assert_int_eq(frame_sheet_plan_result(plan, &out), FRAME_OK);
        job.sheets[0].available = out.sheets_used;
        if (out.sheets_used) {
            ck_assert_int_eq(frame_stock_room_take_sheets(room, plan), FRAME_IMPOSSIBLE); /* not bought yet */
            ck_assert_int_eq(frame_stock_room_put_sheets(room, job.sheets, 1), FRAME_OK);
        }
        ck_assert_msg(!frame_stock_room_take_sheets(room, plan), "%s", frame_error_text());
        bought += 4608 * out.sheets_used, parts += out.part_area_in2, sheets += out.sheets_used;
        lost += out.lost_share * out.sheet_area_in2;
        frame_sheet_plan_free(plan);
    }
    ck_assert_double_eq_tol(area_of_room(room), bought - parts - lost, 1e-2);
    ck_assert_double_lt(sheets * 4608, 2 * parts); /* a sheet a job would be twelve */
    frame_stock_room_free(room);
}
END_TEST

START_TEST(short_of_sheets) {
    static sheet_job job;
    frame_text *text;
    frame_text_new(&text);
    stock_up(&job);
    want_rectangle(&job, 3, 47, 95);
    frame_stock_room *room = room_of(&job);
    frame_sheet_plan *plan = plan_sheets(&job);
    char *before = text_of(room, 0);
    ck_assert_int_eq(frame_stock_room_short_sheets(room, plan, text), FRAME_OK);
    ck_assert_str_eq(frame_text_chars(text), "");
    ck_assert_int_eq(frame_stock_room_take_sheets(room, plan), FRAME_OK);
    ck_assert_int_eq(frame_stock_room_short_sheets(room, plan, text), FRAME_OK);
    ck_assert_str_eq(frame_text_chars(text), "2 x 4' 0\" by 8' 0\" subfloor\n");
    char *after = text_of(room, 0), *still;
    ck_assert_str_ne(before, after);
    ck_assert_int_eq(frame_stock_room_take_sheets(room, plan), FRAME_IMPOSSIBLE);
    still = text_of(room, 0);
    ck_assert_str_eq(after, still); /* nothing was half taken */
    free(before), free(after), free(still);
    frame_sheet_plan_free(plan);
    frame_stock_room_free(room);
    frame_text_free(text);
}
END_TEST

START_TEST(what_cannot_be_put_in) {
    static sheet_job job;
    frame_stock_room *room;
    frame_stock_room_new(&room);
    stock_up(&job);
    job.sheets[1].width_in = -48;
    ck_assert_int_eq(frame_stock_room_put_sheets(room, job.sheets, 2), FRAME_OUT_OF_RANGE);
    ck_assert_str_eq(frame_error_field(), "sheets[1].width_in");
    job.holes[0].offcut = 7;
    ck_assert_int_eq(frame_stock_room_put_offcuts(room, job.offcuts, 2, job.holes, 1), FRAME_OUT_OF_RANGE);
    ck_assert_str_eq(frame_error_field(), "holes[0].offcut");
    job.holes[0].offcut = 0;
    put_corners(job.on_hand[1], (const double[]){0, 0, 30, 30, 30, 0, 0, 30}, 4);
    ck_assert_int_eq(frame_stock_room_put_offcuts(room, job.offcuts, 2, job.holes, 1), FRAME_IMPOSSIBLE);
    ck_assert_str_eq(frame_error_field(), "offcuts[1].corners_in");
    ck_assert_uint_eq(frame_stock_room_rows(room), 0); /* all or nothing */
    frame_stock_room_free(room);
}
END_TEST

static size_t lines(const char *text) {
    size_t count = 0;
    for (; *text; text++) count += *text == '\n';
    return count;
}

START_TEST(a_plan_is_written) {
    static sheet_job job;
    stock_up(&job);
    want_some(&job);
    job.in.cuts = FRAME_SHEET_CUTS_STRAIGHT;
    frame_sheet_plan *plan = plan_sheets(&job);
    frame_sheet_plan_out out = verify_sheets(&job, plan);
    char *csv = plan_text(plan, frame_sheet_plan_csv), *json = plan_text(plan, frame_sheet_plan_json),
         *shopping = plan_text(plan, frame_sheet_plan_shopping);
    const size_t things = frame_sheet_plan_sheet_count(plan) + frame_sheet_plan_placement_count(plan) +
                          frame_sheet_plan_offcut_count(plan) + frame_sheet_plan_cut_count(plan);
    ck_assert_uint_eq(lines(csv), 1 + things);
    ck_assert_uint_eq(lines(json), 3 + things);
    ck_assert_int_gt(out.offcuts_used, 0);
    ck_assert_msg(strstr(shopping, "offcut on hand, within 2' 6\" by 2' 6\" subfloor at 0.00") != NULL, "%s", shopping);
    free(csv), free(json), free(shopping);
    ck_assert_int_eq(frame_sheet_plan_csv(NULL, NULL), FRAME_REQUIRED);
    ck_assert_int_eq(frame_sheet_plan_json(plan, NULL), FRAME_REQUIRED);
    frame_sheet_plan_free(plan);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("stock_room_sheets");
    TCase *tests = tcase_create("all");
    tcase_set_timeout(tests, 60);
    tcase_add_test(tests, written_and_read_without_loss);
    tcase_add_test(tests, damage_is_named_by_line_and_column);
    tcase_add_test(tests, damage_at_random);
    tcase_add_test(tests, a_room_is_like_its_lists);
    tcase_add_test(tests, the_next_job_finds_what_is_left);
    tcase_add_test(tests, short_of_sheets);
    tcase_add_test(tests, what_cannot_be_put_in);
    tcase_add_test(tests, a_plan_is_written);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
