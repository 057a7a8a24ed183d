/* The laid-out picture: no text covers another, none is lost, none is off the paper, no light line runs through one. */
#include <check.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "drawing/layout.h"
#include "pictures.h"

static const double papers[] = {2.5, 3.7, 7, 11, 24};
static const double letters[] = {9, 12, 18};
enum { PAPERS = sizeof papers / sizeof *papers, LETTERS = sizeof letters / sizeof *letters };

static frame_drawing *drawing;
static drawing_sheet sheet;

static void begin(void) {
    ck_assert_int_eq(frame_drawing_new(&drawing), FRAME_OK);
    sheet_begin(&sheet);
}
static void end(void) {
    sheet_end(&sheet);
    frame_drawing_free(drawing);
}

static void lay_out(int place) {
    pictures[place % PICTURES](drawing);
    ck_assert_int_eq(frame_drawing_paper(drawing, papers[place / PICTURES % PAPERS], 9), FRAME_OK);
    ck_assert_int_eq(frame_drawing_letter_size(drawing, letters[place / PICTURES / PAPERS]), FRAME_OK);
    ck_assert_int_eq(drawing_lay_out(drawing, &sheet), FRAME_OK);
    ck_assert_uint_gt(sheet.texts.count, 0);
}
enum { CASES = PICTURES * PAPERS * LETTERS };

static void no_text_covers_another(int place) {
    for (size_t i = 0; i < sheet.texts.count; i++)
        for (size_t k = 0; k < i; k++) {
            const sheet_text *one = &FRAME_ITEM(sheet_text, sheet.texts, i),
                             *two = &FRAME_ITEM(sheet_text, sheet.texts, k);
            const plane_box a = sheet_text_box(one), b = sheet_text_box(two);
            ck_assert_msg(!plane_boxes_meet(&a, &b, -0.01), "case %d: %.*s over %.*s", place, (int)one->length,
                          one->chars, (int)two->length, two->chars);
        }
}

static void nothing_is_off_the_paper(void) {
    for (size_t i = 0; i < sheet.texts.count; i++) {
        plane_vec corners[4];
        const plane_box box = sheet_text_box(&FRAME_ITEM(sheet_text, sheet.texts, i));
        plane_corners(&box, corners);
        for (int k = 0; k < 4; k++) {
            ck_assert_double_ge(corners[k].x, sheet.ink.low.x - 0.001);
            ck_assert_double_le(corners[k].x, sheet.ink.high.x + 0.001);
            ck_assert_double_ge(corners[k].y, sheet.ink.low.y - 0.001);
            ck_assert_double_le(corners[k].y, sheet.ink.high.y + 0.001);
        }
    }
    for (size_t i = 0; i < sheet.points.count; i++) {
        const plane_vec at = FRAME_ITEM(plane_vec, sheet.points, i);
        ck_assert(isfinite(at.x) && isfinite(at.y));
    }
}

/* The letters stay 9 pt and more only if the picture is no wider than the paper asked for. */
static void the_picture_is_as_wide_as_the_paper_at_most(int place) {
    /* On the two smallest papers, letters of 12 and 18 pt leave no room for some chains and words. */
    if (drawing->letter_pt > 9 && drawing->width_in < 7) return;
    if (drawing->width_in < 3) return;
    ck_assert_msg(sheet.ink.high.x - sheet.ink.low.x <= drawing->width_in * 72 - 2 * SHEET_MARGIN + 0.02,
                  "case %d: %d pt on %d", place, (int)(sheet.ink.high.x - sheet.ink.low.x),
                  (int)(drawing->width_in * 72));
}

static void no_text_is_lost_or_small(void) {
    size_t given = 0, written = 0;
    for (size_t i = 0; i < drawing->items.count; i++) {
        const drawing_item *item = &FRAME_ITEM(drawing_item, drawing->items, i);
        if (item->text) given += strlen(item->text);
    }
    for (size_t i = 0; i < drawing->points.count; i++) {
        const char *text = FRAME_ITEM(drawing_point, drawing->points, i).text;
        if (text) given += strlen(text);
    }
    for (size_t i = 0; i < drawing->views.count; i++) {
        const char *text = FRAME_ITEM(drawing_view, drawing->views, i).caption;
        if (text) given += strlen(text);
    }
    for (size_t i = 0; i < sheet.texts.count; i++) {
        const sheet_text *text = &FRAME_ITEM(sheet_text, sheet.texts, i);
        ck_assert_double_ge(text->points, drawing->letter_pt);
        /* where a line was broken, a space went */
        const char *after = text->chars + text->length;
        written += text->length + (*after == ' ');
    }
    ck_assert_uint_eq(written, given);
}

/* Pieces of lines may end beside a text, none may run through it. */
static void light_lines_give_way(int place) {
    const unsigned light = 1u << SHEET_LIGHT | 1u << SHEET_HATCH | 1u << SHEET_MEASURE | 1u << SHEET_LEADER;
    for (size_t i = 0; i < sheet.blocks.count; i++) {
        const sheet_block *block = &FRAME_ITEM(sheet_block, sheet.blocks, i);
        const plane_box box = plane_grown(block->box, -0.6);
        for (size_t k = 0; k < sheet.shapes.count; k++) {
            const sheet_shape *shape = &FRAME_ITEM(sheet_shape, sheet.shapes, k);
            const plane_vec *points = (const plane_vec *)sheet.points.items + shape->first;
            if (shape->view != block->view || shape->kind != SHEET_LINE || !(light >> shape->role & 1u)) continue;
            for (size_t p = 0; p + 1 < shape->count; p++)
                ck_assert_msg(!plane_box_hit(&box, points[p], points[p + 1]), "case %d, block %zu, shape %zu", place, i,
                              k);
        }
    }
}

static void dimensions_keep_clear_of_the_thing(void) {
    for (size_t i = 0; i < sheet.texts.count; i++) {
        const sheet_text *text = &FRAME_ITEM(sheet_text, sheet.texts, i);
        const plane_box box = plane_grown(sheet_text_box(text), -0.6);
        int is_distance = 0;
        for (size_t k = 0; k < drawing->points.count; k++)
            is_distance |= FRAME_ITEM(drawing_point, drawing->points, k).text == text->chars;
        if (is_distance) ck_assert_uint_eq(sheet_strokes_hit(&sheet, text->view, 1u << SHEET_HEAVY, &box, NULL), 0);
    }
}

START_TEST(lettering_finds_room) {
    lay_out(_i);
    no_text_covers_another(_i);
    nothing_is_off_the_paper();
    the_picture_is_as_wide_as_the_paper_at_most(_i);
    no_text_is_lost_or_small();
    light_lines_give_way(_i);
    dimensions_keep_clear_of_the_thing();
}
END_TEST

static unsigned seed;
static double chance(double low, double high) {
    seed = seed * 1664525u + 1013904223u;
    return low + (high - low) * (seed >> 8) / 16777216.0;
}

static void anything(void) {
    static const char *const names[] = {"seat", "heel cut, plumb", "ridge board 2x10", "x", "crown up\nthis end left"};
    const double x = chance(-50, 50), y = chance(-20, 20), far = chance(-300, 300);
    const char *name = names[(int)chance(0, 5)];
    const frame_dimension_side side = (frame_dimension_side)chance(1, 6);
    switch ((int)chance(0, 7)) {
        case 0:
            DRAWN(frame_drawing_rectangle(drawing, x, y, far, y + 9, (int)chance(1, 7), (int)chance(1, 11)));
            break;
        case 1:
            DRAWN(frame_drawing_circle(drawing, x, y, chance(0.1, 9), FRAME_PEN_CUT, (int)chance(1, 11)));
            break;
        case 2:
            DRAWN(frame_drawing_text(drawing, x, y, name, (int)chance(1, 6), chance(-180, 180), 1));
            break;
        case 3:
            DRAWN(frame_drawing_label(drawing, x, y, name));
            break;
        case 4:
            DRAWN(frame_drawing_dimension(drawing, x, y, far, y + 3, side, NULL));
            break;
        case 5:
            DRAWN(frame_drawing_angle(drawing, x, y, chance(0, 90), chance(90, 300), NULL));
            break;
        default:
            for (int i = 0; i < 8; i++) DRAWN(frame_drawing_mark(drawing, x + i * 1.5, y + i * 2, i % 3 ? NULL : name));
            DRAWN(frame_drawing_dimension_running(drawing, side));
    }
}

START_TEST(whatever_is_drawn) {
    seed = (unsigned)_i * 2654435761u + 7;
    for (int items = (int)chance(2, 40); items; items--) {
        anything();
        if (chance(0, 1) < 0.05) frame_drawing_view(drawing, "another view of it");
    }
    if (_i % 2) frame_drawing_shorten(drawing, 4);
    if (_i % 5 == 0) frame_drawing_break(drawing, -30, 10);
    frame_drawing_paper(drawing, papers[_i % PAPERS], 9);
    ck_assert_int_eq(drawing_lay_out(drawing, &sheet), FRAME_OK);
    no_text_covers_another(_i);
    nothing_is_off_the_paper();
    light_lines_give_way(_i);
}
END_TEST

START_TEST(a_break_takes_length_out_and_nothing_else) {
    frame_drawing_rectangle(drawing, 0, 0, 192, 5.5, FRAME_PEN_OUTLINE, FRAME_HATCH_NONE);
    drawing_layout layout = {.drawing = drawing, .sheet = &sheet, .scale = 2};
    const double whole = layout_map(&layout, 192, 0).x;
    frame_drawing_break(drawing, 40, 140);
    ck_assert_double_eq_tol(layout_map(&layout, 192, 0).x, whole - 200 + LAYOUT_GAP, 1e-9);
    ck_assert_double_eq_tol(layout_map(&layout, 40, 0).x, 80, 1e-9);
    ck_assert_double_eq_tol(layout_map(&layout, 90, 3).x, 80 + LAYOUT_GAP / 2, 1e-9);
    ck_assert_int_eq(drawing_lay_out(drawing, &sheet), FRAME_OK);
    /* The outline in two pieces, two waves; nothing in the gap but the waves' swing. */
    ck_assert_uint_ge(sheet.shapes.count, 4);
    const double at = layout_map(&(drawing_layout){.drawing = drawing, .scale = sheet.scale}, 90, 0).x;
    for (size_t i = 0; i < sheet.points.count; i++)
        ck_assert_double_ge(fabs(FRAME_ITEM(plane_vec, sheet.points, i).x - at), LAYOUT_GAP / 2 - 2);
}
END_TEST

START_TEST(two_views_share_the_x_axis) {
    frame_drawing_rectangle(drawing, 10, 0, 60, 5.5, FRAME_PEN_OUTLINE, FRAME_HATCH_NONE);
    frame_drawing_view(drawing, "top edge");
    frame_drawing_rectangle(drawing, 10, 100, 60, 101.5, FRAME_PEN_OUTLINE, FRAME_HATCH_NONE);
    ck_assert_int_eq(drawing_lay_out(drawing, &sheet), FRAME_OK);
    const plane_extent one = sheet_extent(&sheet, 0, SHEET_ALL_ROLES, 0),
                       two = sheet_extent(&sheet, 1, SHEET_ALL_ROLES, 0);
    ck_assert_double_eq_tol(one.low.x, two.low.x, 1e-9);
    ck_assert_double_eq_tol(one.high.x, two.high.x, 1e-9);
    ck_assert_double_gt(one.low.y, two.high.y);
}
END_TEST

START_TEST(places_are_spread_as_little_as_possible) {
    double places[] = {10, 11, 12, 50}, gaps[] = {10, 10, 10, 0};
    ck_assert_int_eq(layout_spread(places, gaps, 4, 0, 100), FRAME_OK);
    const double wanted[] = {1, 11, 21, 50};
    for (int i = 0; i < 4; i++) ck_assert_double_eq_tol(places[i], wanted[i], 1e-9);
    double late[] = {95, 96, 97};
    ck_assert_int_eq(layout_spread(late, gaps, 3, 0, 100), FRAME_OK);
    ck_assert_double_eq_tol(late[0], 80, 1e-9);
    ck_assert_double_eq_tol(late[2], 100, 1e-9);
}
END_TEST

START_TEST(long_labels_are_broken_at_spaces) {
    metrics_block block = {0};
    metrics_set(&block, "a seat cut level\nand a heel", 9, 50);
    ck_assert_int_eq(block.status, FRAME_OK);
    ck_assert_uint_ge(block.lines.count, 3);
    for (size_t i = 0; i < block.lines.count; i++) {
        const metrics_line *line = &FRAME_ITEM(metrics_line, block.lines, i);
        ck_assert_double_le(line->width, 50);
        ck_assert_int_ne(line->chars[0], ' ');
    }
    ck_assert_double_eq_tol(metrics_width("0123", 4, 10), 4 * 6.4, 1e-9);
    frame_array_give(&block.lines);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("layout");
    TCase *tests = tcase_create("all");
    tcase_set_timeout(tests, 60);
    tcase_add_checked_fixture(tests, begin, end);
    tcase_add_loop_test(tests, lettering_finds_room, 0, CASES);
    tcase_add_loop_test(tests, whatever_is_drawn, 0, 120);
    tcase_add_test(tests, a_break_takes_length_out_and_nothing_else);
    tcase_add_test(tests, two_views_share_the_x_axis);
    tcase_add_test(tests, places_are_spread_as_little_as_possible);
    tcase_add_test(tests, long_labels_are_broken_at_spaces);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
