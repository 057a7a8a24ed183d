/* The stock room: read and written without loss, atomic, with errors by line and column; plans out of it; and what a
 * plan is written as. */
#include "plan_check.h"

static void same_text(frame_text *one, frame_text *other) {
    ck_assert_str_eq(frame_text_chars(one), frame_text_chars(other));
}

static frame_stock_room *a_room(void) {
    static const double knots[] = {40.1, 41.25, 100, 1.0 / 3 + 102};
    frame_stock_length rows[3];
    frame_stock_room *room = NULL;
    for (int r = 0; r < 3; r++) frame_stock_length_init(&rows[r]);
    rows[0].length_in = 192, rows[0].price = 15.4, rows[0].available = 3, rows[0].size = FRAME_SIZE(2, 6);
    rows[0].name = "long, \"clear\"\nboard", rows[0].weight_plf = 0.1 + 0.2;
    rows[1].length_in = 1000.0 / 3, rows[1].price = 0, rows[1].available = 1, rows[1].size = FRAME_SIZE(2, 6);
    rows[1].defects_from_to_in = knots, rows[1].defect_count = 4;
    rows[2].length_in = 96, rows[2].price = 0.71, rows[2].price_by = FRAME_PRICE_BY_BOARD_FOOT;
    rows[2].size = FRAME_SIZE(2, 6);
    ck_assert_int_eq(frame_species_find("SPF", &rows[2].species), FRAME_OK);
    ck_assert_int_eq(frame_grade_find("No.2", &rows[2].grade), FRAME_OK);
    ck_assert_int_eq(frame_stock_room_new(&room), FRAME_OK);
    ck_assert_int_eq(frame_stock_room_put(room, rows, 3), FRAME_OK);
    ck_assert_uint_eq(frame_stock_room_rows(room), 3);
    return room;
}

START_TEST(written_and_read_without_loss) {
    frame_stock_room *room = a_room(), *again = NULL;
    frame_text *csv, *json, *other;
    frame_text_new(&csv), frame_text_new(&json), frame_text_new(&other);
    ck_assert_int_eq(frame_stock_room_csv(room, csv), FRAME_OK);
    ck_assert_int_eq(frame_stock_room_json(room, json), FRAME_OK);
    ck_assert_msg(!frame_stock_room_from_csv(frame_text_chars(csv), &again), "%s", frame_error_text());
    ck_assert_int_eq(frame_stock_room_csv(again, other), FRAME_OK);
    same_text(csv, other);
    frame_text_clear(other);
    ck_assert_int_eq(frame_stock_room_json(again, other), FRAME_OK);
    same_text(json, other);
    frame_stock_room_free(again);
    ck_assert_msg(!frame_stock_room_from_json(frame_text_chars(json), &again), "%s", frame_error_text());
    frame_text_clear(other);
    ck_assert_int_eq(frame_stock_room_csv(again, other), FRAME_OK);
    same_text(csv, other);
    frame_stock_room_free(again);
    frame_stock_room_free(room);
    frame_text_free(csv), frame_text_free(json), frame_text_free(other);
}
END_TEST

START_TEST(damage_is_named_by_line_and_column) {
    static const struct {
        int json;
        const char *text, *where;
    } damaged[] = {
        {0, "name,length_in,price\nlong,192,15\nshort,x,7\n", "line 3, column 7:"},
        {0, "name,length_in,price\nlong,192\n", "line 2, column 6:"},
        {0, "name,length_in,colour\n", "line 1, column 16:"},
        {0, "length_in,price\n\"192,5\n", "line 2, column 1:"},
        {0, "length_in,price\n192,-5\n", "line 2, column 1:"},
        {0, "length_in,price,available\n192,5,1.5\n", "line 2, column 7:"},
        {1, "[{\"length_in\": 192, \"price\": 5},\n {\"length_in\": oak}]", "line 2, column 16:"},
        {1, "[{\"length_in\": 192, \"colour\": 5}]", "line 1, column 21:"},
        {1, "[{\"length_in\": 192, \"price\": 5}", "line 1, column 32:"},
        {1, "[{\"length_in\": 192}]", "line 1, column 2:"},
        {1, "[] x", "line 1, column 4:"},
        {1, "", "line 1, column 1:"},
    };
    for (size_t i = 0; i < sizeof damaged / sizeof *damaged; i++) {
        frame_stock_room *room = NULL;
        const frame_status status = damaged[i].json ? frame_stock_room_from_json(damaged[i].text, &room)
                                                    : frame_stock_room_from_csv(damaged[i].text, &room);
        ck_assert_int_ne(status, FRAME_OK);
        ck_assert_ptr_null(room);
        ck_assert_msg(strstr(frame_error_text(), damaged[i].where) != NULL, "%zu: %s, not %s", i, frame_error_text(),
                      damaged[i].where);
    }
}
END_TEST

/* However a file is cut off or changed, it is read whole or refused. */
START_TEST(damage_at_random) {
    frame_stock_room *room = a_room();
    frame_text *texts[2];
    srand(3);
    frame_text_new(&texts[0]), frame_text_new(&texts[1]);
    frame_stock_room_csv(room, texts[0]);
    frame_stock_room_json(room, texts[1]);
    for (int n = 0; n < 4000; n++) {
        char copy[2000];
        frame_stock_room *again = NULL;
        const size_t length = frame_text_length(texts[n % 2]);
        ck_assert_uint_lt(length, sizeof copy);
        memcpy(copy, frame_text_chars(texts[n % 2]), length + 1);
        copy[(size_t)rand() % length] = (char)(n % 3 ? rand() % 256 : 0);
        const frame_status status =
            n % 2 ? frame_stock_room_from_json(copy, &again) : frame_stock_room_from_csv(copy, &again);
        ck_assert_int_eq(status == FRAME_OK, again != NULL);
        frame_stock_room_free(again);
    }
    frame_text_free(texts[0]), frame_text_free(texts[1]);
    frame_stock_room_free(room);
}
END_TEST

START_TEST(the_next_job_finds_what_is_left) {
    job made;
    frame_stock_plan *plan;
    frame_stock_plan_out out;
    frame_stock_room *room;
    frame_text *text;
    frame_text_new(&text);
    begin(&made);
    frame_stock_length *bought = have(&made, 192, 14, 1);
    bought->size = FRAME_SIZE(2, 6);
    ck_assert_int_eq(frame_stock_room_new(&room), FRAME_OK);
    ck_assert_int_eq(frame_stock_room_put(room, made.stock, 1), FRAME_OK);
    want(&made, 100, 1)->size = FRAME_SIZE(2, 6);
    made.in.stock = NULL, made.in.stock_count = 0;
    made.in.room = room;
    made.in.kept_offcut_in = 24;
    ck_assert_msg(!frame_stock_plan_solve(&made.in, &plan, NULL), "%s", frame_error_text());
    frame_stock_plan_result(plan, &out);
    ck_assert_double_eq(out.cost, 14);
    ck_assert_int_eq(frame_stock_room_short(room, plan, text), FRAME_OK);
    ck_assert_str_eq(frame_text_chars(text), "");
    ck_assert_int_eq(frame_stock_room_take(room, plan), FRAME_OK);
    ck_assert_int_eq(frame_stock_room_take(room, plan), FRAME_IMPOSSIBLE); /* the board is gone */
    ck_assert_int_eq(frame_stock_room_short(room, plan, text), FRAME_OK);
    ck_assert_str_eq(frame_text_chars(text), "1 x 16' 0\" 2x6\n");
    frame_stock_plan_free(plan);
    made.pieces[0].length_in = 91.875; /* just what is left beside the kerf */
    ck_assert_msg(!frame_stock_plan_solve(&made.in, &plan, NULL), "%s", frame_error_text());
    frame_stock_plan_result(plan, &out);
    ck_assert_double_eq(out.cost, 0);
    ck_assert_int_eq(frame_stock_room_take(room, plan), FRAME_OK);
    ck_assert_uint_eq(frame_stock_room_rows(room), 0);
    frame_stock_plan_free(plan);
    ck_assert_int_eq(frame_stock_plan_solve(&made.in, &plan, NULL), FRAME_REQUIRED);
    frame_stock_room_free(room);
    frame_text_free(text);
}
END_TEST

static size_t lines(const char *text) {
    size_t count = 0;
    for (; *text; text++) count += *text == '\n';
    return count;
}

START_TEST(a_plan_is_written) {
    job made;
    frame_stock_plan *plan;
    frame_text *text;
    frame_drawing *drawing = NULL;
    frame_text_new(&text);
    begin(&made);
    frame_stock_piece *piece = want(&made, 95, 3);
    piece->name = "stud", piece->size = FRAME_SIZE(2, 4);
    piece = want(&made, 22.5, 3);
    piece->name = "block", piece->size = FRAME_SIZE(2, 4);
    have(&made, 120, 4.5, FRAME_NOT_GIVEN_INT)->size = FRAME_SIZE(2, 4);
    ck_assert_int_eq(frame_stock_plan_solve(&made.in, &plan, NULL), FRAME_OK);
    ck_assert_int_eq(frame_stock_plan_cuts(plan, text), FRAME_OK);
    ck_assert_uint_eq(lines(frame_text_chars(text)), 2);
    ck_assert_msg(strstr(frame_text_chars(text), "boards 1 to 3") != NULL, "%s", frame_text_chars(text));
    ck_assert(strstr(frame_text_chars(text), "7' 11\" stud (7' 11\") | 9' 9-5/8\" block (1' 10-1/2\")") != NULL);
    frame_text_clear(text);
    ck_assert_int_eq(frame_stock_plan_shopping(plan, text), FRAME_OK);
    ck_assert_msg(strstr(frame_text_chars(text), "3 x 10' 0\" at 4.50  20.0 board feet  13.50") != NULL, "%s",
                  frame_text_chars(text));
    ck_assert(strstr(frame_text_chars(text), "No plan costs less.") != NULL);
    frame_text_clear(text);
    ck_assert_int_eq(frame_stock_plan_csv(plan, text), FRAME_OK);
    ck_assert_uint_eq(lines(frame_text_chars(text)), 1 + 6 + frame_stock_plan_offcut_count(plan));
    frame_text_clear(text);
    ck_assert_int_eq(frame_stock_plan_json(plan, text), FRAME_OK);
    ck_assert(strstr(frame_text_chars(text), "\"cost\":13.5") != NULL);
    ck_assert_int_eq(frame_stock_plan_drawing(plan, 3, &drawing), FRAME_OUT_OF_RANGE);
    ck_assert_int_eq(frame_stock_plan_drawing(plan, 2, &drawing), FRAME_OK);
    frame_text_clear(text);
    ck_assert_int_eq(frame_drawing_svg(drawing, text), FRAME_OK);
    ck_assert(strstr(frame_text_chars(text), "stud") != NULL);
    frame_drawing_free(drawing);
    frame_stock_plan_free(plan);
    frame_text_free(text);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("stock_room");
    TCase *tests = tcase_create("all");
    tcase_add_test(tests, written_and_read_without_loss);
    tcase_add_test(tests, damage_is_named_by_line_and_column);
    tcase_add_test(tests, damage_at_random);
    tcase_add_test(tests, the_next_job_finds_what_is_left);
    tcase_add_test(tests, a_plan_is_written);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
