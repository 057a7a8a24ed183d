/* A plan of sheets as CSV and JSON: which part lies where on which sheet, and what is left of it. */
#include "takeoff/sheet_write.h"

/* What of a sheet is written, in order: itself, its parts, what is kept, its straight cuts. */
typedef struct writer {
    void (*sheet)(const frame_sheet_plan *plan, size_t number, const frame_sheet_plan_sheet *sheet, frame_text *into);
    void (*part)(const frame_sheet_plan *plan, const frame_sheet_plan_placement *part, frame_text *into);
    void (*offcut)(const frame_sheet_plan *plan, const frame_sheet_plan_offcut *offcut, frame_text *into);
    void (*cut)(const frame_sheet_plan *plan, const frame_sheet_plan_cut *cut, frame_text *into);
} writer;

/* The numbers of corners, x and y in turn, with something between. */
static void write_corners(const frame_sheet_plan *plan, uint32_t first, uint32_t count, const char *between,
                          frame_text *into) {
    for (uint32_t c = 0; c < count; c++) {
        frame_sheet_plan_corner corner = {0};
        frame_sheet_plan_corner_at(plan, first + c, &corner);
        frame_text_add(into, c ? between : "");
        frame_text_add_number(into, corner.x_in, 17);
        frame_text_add(into, between);
        frame_text_add_number(into, corner.y_in, 17);
    }
}

/* -- CSV -- */

static void number_cell(frame_text *into, double value) {
    if (value != FRAME_NOT_GIVEN) frame_text_add_number(into, value, 17);
    frame_text_add(into, ",");
}

static void begin_line(frame_text *into, int32_t sheet, const char *what, const char *name) {
    frame_text_addf(into, "%d,%s,", (int)sheet + 1, what);
    frame_text_add_csv(into, name ? name : "");
    frame_text_add(into, ",");
}

static void end_line(const frame_sheet_plan *plan, uint32_t first, uint32_t count, frame_text *into) {
    write_corners(plan, first, count, " ", into);
    frame_text_add(into, "\r\n");
}

static void sheet_line(const frame_sheet_plan *plan, size_t number, const frame_sheet_plan_sheet *sheet,
                       frame_text *into) {
    const int on_hand = sheet->offcut >= 0;
    begin_line(into, (int32_t)number, on_hand ? "offcut on hand" : "sheet", sheet->name);
    frame_text_addf(into, "%d,", (int)(on_hand ? sheet->offcut : sheet->sheet));
    number_cell(into, sheet->x_in);
    number_cell(into, sheet->y_in);
    frame_text_add(into, ",,");
    number_cell(into, sheet->price);
    end_line(plan, sheet->outline_first, sheet->outline_count, into);
}

static void part_line(const frame_sheet_plan *plan, const frame_sheet_plan_placement *part, frame_text *into) {
    begin_line(into, part->sheet, "part", part->name);
    frame_text_addf(into, "%d,", (int)part->part);
    number_cell(into, part->x_in);
    number_cell(into, part->y_in);
    number_cell(into, part->turn_deg);
    frame_text_add(into, part->mirrored ? "yes,," : "no,,");
    end_line(plan, part->corner_first, part->corner_count, into);
}

static void offcut_line(const frame_sheet_plan *plan, const frame_sheet_plan_offcut *offcut, frame_text *into) {
    begin_line(into, offcut->sheet, offcut->hole_of >= 0 ? "hole" : "offcut kept", NULL);
    frame_text_add(into, ",,,,,,");
    end_line(plan, offcut->corner_first, offcut->corner_count, into);
}

static void cut_line(const frame_sheet_plan *plan, const frame_sheet_plan_cut *cut, frame_text *into) {
    (void)plan;
    begin_line(into, cut->sheet, cut->trims >= 0 ? "trim" : "cut", NULL);
    if (cut->trims >= 0) frame_text_addf(into, "%d", (int)cut->trims);
    frame_text_add(into, ",,,,,,");
    const double ends[] = {cut->from_x_in, cut->from_y_in, cut->to_x_in, cut->to_y_in};
    for (int e = 0; e < 4; e++) {
        frame_text_add(into, e ? " " : "");
        frame_text_add_number(into, ends[e], 17);
    }
    frame_text_add(into, "\r\n");
}

/* -- each sheet in turn -- */

static void write_sheets(const frame_sheet_plan *plan, const writer *by, frame_text *into) {
    size_t o = 0;
    for (size_t s = 0; s < frame_sheet_plan_sheet_count(plan); s++) {
        frame_sheet_plan_sheet sheet;
        frame_sheet_plan_placement part;
        frame_sheet_plan_offcut offcut;
        frame_sheet_plan_cut cut;
        frame_sheet_plan_sheet_at(plan, s, &sheet);
        by->sheet(plan, s, &sheet, into);
        for (uint32_t p = 0; p < sheet.placement_count; p++)
            if (!frame_sheet_plan_placement_at(plan, sheet.placement_first + p, &part)) by->part(plan, &part, into);
        for (; o < frame_sheet_plan_offcut_count(plan) && !frame_sheet_plan_offcut_at(plan, o, &offcut) &&
               offcut.sheet == (int32_t)s;
             o++)
            by->offcut(plan, &offcut, into);
        for (uint32_t c = 0; c < sheet.cut_count; c++)
            if (!frame_sheet_plan_cut_at(plan, sheet.cut_first + c, &cut)) by->cut(plan, &cut, into);
    }
}

frame_status frame_sheet_plan_csv(const frame_sheet_plan *plan, frame_text *into) {
    static const writer lines = {sheet_line, part_line, offcut_line, cut_line};
    const frame_status status = frame_sheet_need_text(plan, into);
    if (status) return status;
    frame_text_add(into, "sheet,what,name,place,x_in,y_in,turn_deg,mirrored,price,corners_in\r\n");
    write_sheets(plan, &lines, into);
    return frame_text_state(into);
}

/* -- JSON -- */

static void key(frame_text *into, const char *before, const char *name) {
    frame_text_addf(into, "%s\"%s\":", before, name);
}

static void number(frame_text *into, const char *name, double value) {
    key(into, ",", name);
    if (value == FRAME_NOT_GIVEN)
        frame_text_add(into, "null");
    else
        frame_text_add_number(into, value, 17);
}

/* A thing begins a line of its own: what it is, and its name. */
static void begin_thing(frame_text *into, const char *what, const char *name) {
    frame_text_addf(into, ",\n  {\"what\":\"%s\"", what);
    if (!name || !*name) return;
    key(into, ",", "name");
    frame_text_add_json(into, name);
}

static void corners(const frame_sheet_plan *plan, uint32_t first, uint32_t count, frame_text *into) {
    key(into, ",", "corners_in");
    frame_text_add(into, "[");
    write_corners(plan, first, count, ",", into);
    frame_text_add(into, "]}");
}

static void sheet_object(const frame_sheet_plan *plan, size_t place, const frame_sheet_plan_sheet *sheet,
                         frame_text *into) {
    const int on_hand = sheet->offcut >= 0;
    frame_text_add(into, place ? "],\n [" : " [");
    frame_text_addf(into, "{\"what\":\"%s\"", on_hand ? "offcut on hand" : "sheet");
    if (sheet->name && *sheet->name) {
        key(into, ",", "name");
        frame_text_add_json(into, sheet->name);
    }
    number(into, on_hand ? "offcut" : "sheet", on_hand ? sheet->offcut : sheet->sheet);
    number(into, "x_in", sheet->x_in);
    number(into, "y_in", sheet->y_in);
    number(into, "price", sheet->price);
    corners(plan, sheet->outline_first, sheet->outline_count, into);
}

static void part_object(const frame_sheet_plan *plan, const frame_sheet_plan_placement *part, frame_text *into) {
    begin_thing(into, "part", part->name);
    number(into, "part", part->part);
    number(into, "x_in", part->x_in);
    number(into, "y_in", part->y_in);
    number(into, "turn_deg", part->turn_deg);
    key(into, ",", "mirrored");
    frame_text_add(into, part->mirrored ? "true" : "false");
    corners(plan, part->corner_first, part->corner_count, into);
}

static void offcut_object(const frame_sheet_plan *plan, const frame_sheet_plan_offcut *offcut, frame_text *into) {
    begin_thing(into, offcut->hole_of >= 0 ? "hole" : "offcut kept", NULL);
    if (offcut->hole_of < 0) number(into, "area_in2", offcut->area_in2);
    corners(plan, offcut->corner_first, offcut->corner_count, into);
}

static void cut_object(const frame_sheet_plan *plan, const frame_sheet_plan_cut *cut, frame_text *into) {
    (void)plan;
    begin_thing(into, cut->trims >= 0 ? "trim" : "cut", NULL);
    if (cut->trims >= 0) number(into, "part", cut->trims);
    number(into, "from_x_in", cut->from_x_in);
    number(into, "from_y_in", cut->from_y_in);
    number(into, "to_x_in", cut->to_x_in);
    number(into, "to_y_in", cut->to_y_in);
    frame_text_add(into, "}");
}

frame_status frame_sheet_plan_json(const frame_sheet_plan *plan, frame_text *into) {
    static const writer objects = {sheet_object, part_object, offcut_object, cut_object};
    frame_sheet_plan_out out;
    frame_status status = frame_sheet_need_text(plan, into);
    if (!status) status = frame_sheet_plan_result(plan, &out);
    if (status) return status;
    key(into, "{", "optimal");
    frame_text_add(into, out.optimal ? "true" : "false");
    number(into, "cost", out.cost);
    number(into, "cost_bound", out.cost_bound);
    number(into, "sheets_used", out.sheets_used);
    number(into, "bound", out.bound);
    number(into, "offcuts_used", out.offcuts_used);
    number(into, "parts_cut", out.parts_cut);
    number(into, "waste_share", out.waste_share);
    number(into, "lost_share", out.lost_share);
    number(into, "shelves_cost", out.shelves_cost);
    key(into, ",\n", "sheets");
    frame_text_add(into, "[\n");
    write_sheets(plan, &objects, into);
    frame_text_add(into, "]\n]}\n");
    return frame_text_state(into);
}
