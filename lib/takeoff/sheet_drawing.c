/* One sheet of a plan as it is cut: its parts with their names, what is kept, the straight cuts in their order, and the
 * corners of the parts measured along both sides of the sheet. */
#include <stdio.h>
#include <stdlib.h>

#include <frame/drawing.h>
#include <frame/takeoff.h>

#include "base/answer.h"
#include "base/error.h"
#include "text/writer.h"

enum { SHEETS = 0, PLACEMENTS = 1, OFFCUTS = 2, CORNERS = 3, CUTS = 4, MOST_MARKS = 40 };

typedef struct page {
    const frame_answer *answer;
    const frame_sheet_plan_sheet *sheet;
    frame_drawing *drawing;
    frame_text *words;
    size_t number;
} page;

static const frame_sheet_plan_corner *corner_at(const page *p, uint32_t i) {
    return &FRAME_ANSWER_ITEM(frame_sheet_plan_corner, p->answer, CORNERS, i);
}

static const frame_sheet_plan_placement *placement_at(const page *p, uint32_t i) {
    return &FRAME_ANSWER_ITEM(frame_sheet_plan_placement, p->answer, PLACEMENTS, p->sheet->placement_first + i);
}

static frame_status outline(const page *p, uint32_t first, uint32_t count, frame_pen pen, frame_hatch hatch) {
    frame_status status = FRAME_OK;
    for (uint32_t i = 0; !status && i < count; i++)
        status = frame_drawing_point(p->drawing, corner_at(p, first + i)->x_in, corner_at(p, first + i)->y_in);
    return status ? status : frame_drawing_polygon(p->drawing, pen, hatch);
}

/* The centre of an outline's area. */
static void middle_of(const page *p, uint32_t first, uint32_t count, double *x, double *y) {
    double area = 0, sum_x = 0, sum_y = 0;
    const frame_sheet_plan_corner *a = corner_at(p, first);
    for (uint32_t i = 1; i + 1 < count; i++) {
        const frame_sheet_plan_corner *b = corner_at(p, first + i), *c = corner_at(p, first + i + 1);
        const double twice = (b->x_in - a->x_in) * (c->y_in - a->y_in) - (b->y_in - a->y_in) * (c->x_in - a->x_in);
        area += twice;
        sum_x += twice * (a->x_in + b->x_in + c->x_in) / 3, sum_y += twice * (a->y_in + b->y_in + c->y_in) / 3;
    }
    *x = area != 0 ? sum_x / area : a->x_in;
    *y = area != 0 ? sum_y / area : a->y_in;
}

static frame_status draw_part(const page *p, uint32_t i) {
    const frame_sheet_plan_placement *part = placement_at(p, i);
    double x, y;
    frame_status status = outline(p, part->corner_first, part->corner_count, FRAME_PEN_CUT, FRAME_HATCH_NONE);
    middle_of(p, part->corner_first, part->corner_count, &x, &y);
    frame_text_clear(p->words);
    if (part->name && *part->name)
        frame_text_add(p->words, part->name);
    else
        frame_text_addf(p->words, "part %d", (int)part->part);
    if (part->turn_deg != 0) {
        frame_text_add(p->words, "\nturned ");
        frame_text_add_number(p->words, part->turn_deg, 5);
        frame_text_add(p->words, "°");
    }
    if (part->mirrored) frame_text_add(p->words, "\nface down");
    return status ? status
                  : frame_drawing_text(p->drawing, x, y, frame_text_chars(p->words), FRAME_ANCHOR_MIDDLE, 0,
                                       FRAME_LETTERING_NOTE);
}

static frame_status draw_offcuts(const page *p) {
    frame_status status = FRAME_OK;
    for (size_t i = 0; !status && i < p->answer->lists[OFFCUTS].count; i++) {
        const frame_sheet_plan_offcut *o = &FRAME_ANSWER_ITEM(frame_sheet_plan_offcut, p->answer, OFFCUTS, i);
        if ((size_t)o->sheet != p->number) continue;
        status = outline(p, o->corner_first, o->corner_count, FRAME_PEN_HIDDEN, FRAME_HATCH_NONE);
    }
    return status;
}

static frame_status draw_cuts(const page *p) {
    frame_status status = FRAME_OK;
    for (uint32_t i = 0; !status && i < p->sheet->cut_count; i++) {
        const frame_sheet_plan_cut *cut =
            &FRAME_ANSWER_ITEM(frame_sheet_plan_cut, p->answer, CUTS, p->sheet->cut_first + i);
        if (cut->trims >= 0) continue;
        status = frame_drawing_line(p->drawing, cut->from_x_in, cut->from_y_in, cut->to_x_in, cut->to_y_in,
                                    FRAME_PEN_CENTRE);
        frame_text_clear(p->words);
        frame_text_addf(p->words, "cut %u", (unsigned)(i + 1));
        if (!status)
            status =
                frame_drawing_label(p->drawing, cut->from_x_in + 0.3 * (cut->to_x_in - cut->from_x_in),
                                    cut->from_y_in + 0.3 * (cut->to_y_in - cut->from_y_in), frame_text_chars(p->words));
    }
    return status;
}

static frame_status draw_sheet(const page *p) {
    if (p->sheet->offcut >= 0)
        return outline(p, p->sheet->outline_first, p->sheet->outline_count, FRAME_PEN_OUTLINE, FRAME_HATCH_NONE);
    return frame_drawing_rectangle(p->drawing, 0, 0, p->sheet->x_in, p->sheet->y_in, FRAME_PEN_OUTLINE,
                                   FRAME_HATCH_NONE);
}

static int by_size(const void *a, const void *b) {
    const double x = *(const double *)a, y = *(const double *)b;
    return (x > y) - (x < y);
}

/* Where a sheet begins and ends along one side; an offcut lies where it lay on its sheet. */
static void find_ends(const page *p, int along_x, double *from, double *to) {
    *from = p->sheet->offcut >= 0 ? 1e300 : 0;
    *to = p->sheet->offcut >= 0 ? -1e300 : along_x ? p->sheet->x_in : p->sheet->y_in;
    for (uint32_t i = 0; i < p->sheet->outline_count; i++) {
        const frame_sheet_plan_corner *c = corner_at(p, p->sheet->outline_first + i);
        const double at = along_x ? c->x_in : c->y_in;
        if (at < *from) *from = at;
        if (at > *to) *to = at;
    }
}

/* The distances of all corners along one side, each once; none when there are too many to read. */
static size_t collect(const page *p, int along_x, double *marks) {
    size_t count = 2, kept = 0;
    find_ends(p, along_x, &marks[0], &marks[1]);
    for (uint32_t i = 0; i < p->sheet->placement_count; i++)
        for (uint32_t k = 0; k < placement_at(p, i)->corner_count; k++) {
            const frame_sheet_plan_corner *c = corner_at(p, placement_at(p, i)->corner_first + k);
            if (count < 2 * MOST_MARKS) marks[count++] = along_x ? c->x_in : c->y_in;
        }
    qsort(marks, count, sizeof *marks, by_size);
    for (size_t i = 0; i < count; i++)
        if (!kept || marks[i] > marks[kept - 1] + 1.0 / 32) marks[kept++] = marks[i];
    return kept;
}

static frame_status measure(const page *p, int along_x) {
    double marks[2 * MOST_MARKS], beside, end;
    const size_t count = collect(p, along_x, marks);
    find_ends(p, !along_x, &beside, &end);
    frame_status status = FRAME_OK;
    for (size_t i = 0; !status && i < count; i++) {
        const int last = i + 1 == count;
        if (count > MOST_MARKS / 2 && i && !last) continue;
        status = frame_drawing_mark(p->drawing, along_x ? marks[i] : beside, along_x ? beside : marks[i], NULL);
    }
    if (status || count < 2) return status;
    return frame_drawing_dimension_running(p->drawing, along_x ? FRAME_DIMENSION_BELOW : FRAME_DIMENSION_LEFT);
}

/* "sheet 3, and 4 more cut alike". */
static frame_status caption(const page *p) {
    const size_t count = p->answer->lists[SHEETS].count;
    int alike = 0;
    for (size_t i = 0; i < count; i++)
        alike += FRAME_ANSWER_ITEM(frame_sheet_plan_sheet, p->answer, SHEETS, i).same_as == p->sheet->same_as;
    frame_text_clear(p->words);
    frame_text_addf(p->words, "%s %zu of %zu", p->sheet->offcut >= 0 ? "offcut, piece" : "sheet", p->number + 1, count);
    if (p->sheet->name && *p->sheet->name) frame_text_addf(p->words, ", %s", p->sheet->name);
    if (alike > 1) frame_text_addf(p->words, "; %d are cut alike", alike);
    frame_text_add(p->words, "; dashed: what is kept");
    const frame_status status = frame_drawing_title(p->drawing, frame_text_chars(p->words));
    return status ? status : frame_drawing_view(p->drawing, frame_text_chars(p->words));
}

static frame_status draw(const page *p) {
    frame_status status = caption(p);
    if (!status) status = draw_sheet(p);
    if (!status) status = draw_offcuts(p);
    for (uint32_t i = 0; !status && i < p->sheet->placement_count; i++) status = draw_part(p, i);
    if (!status) status = draw_cuts(p);
    if (!status) status = measure(p, 1);
    if (!status) status = measure(p, 0);
    return status ? status : frame_text_state(p->words);
}

static frame_status refuse(const frame_answer *answer, size_t number) {
    char valid[48];
    if (!answer || number < answer->lists[SHEETS].count)
        return frame_fail(FRAME_REQUIRED, "answer", "NULL", "an answer, and where to put the drawing",
                          "answer: NULL is not an answer, or there is nowhere to put the drawing");
    snprintf(valid, sizeof valid, "0 to %zu", answer->lists[SHEETS].count - 1);
    return frame_fail_number(FRAME_OUT_OF_RANGE, "sheet", (double)number, valid);
}

frame_status frame_sheet_plan_drawing(const frame_sheet_plan *plan, size_t sheet, frame_drawing **given) {
    const frame_answer *answer = (const frame_answer *)(const void *)plan;
    if (!answer || !given || sheet >= answer->lists[SHEETS].count) return refuse(answer, sheet);
    page p = {
        .answer = answer, .sheet = &FRAME_ANSWER_ITEM(frame_sheet_plan_sheet, answer, SHEETS, sheet), .number = sheet};
    frame_status status = frame_drawing_new(&p.drawing);
    if (!status) status = frame_text_new(&p.words);
    if (!status) status = draw(&p);
    frame_text_free(p.words);
    if (status)
        frame_drawing_free(p.drawing);
    else
        *given = p.drawing;
    return status;
}
