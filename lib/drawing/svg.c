/* The SVG writer: what stands on the sheet, in SVG 1.1 as every browser and printer reads it. */
#include <math.h>

#include "drawing/describe.h"
#include "drawing/sheet.h"
#include "text/writer.h"

typedef struct svg {
    const drawing_sheet *sheet;
    frame_text *into;
    double left, top; /* of the paper, on the sheet */
    int open;         /* a group of strokes is open, with this pen and kind */
    frame_pen pen;
} svg;

/* Two decimals, no more digits than needed and no minus zero: the same picture gives the same bytes. */
static void number(frame_text *into, double value) {
    const double hundredths = floor(fabs(value) * 100 + 0.5);
    if (value < 0 && hundredths > 0) frame_text_add(into, "-");
    const long long whole = (long long)hundredths;
    frame_text_addf(into, "%lld", whole / 100);
    if (whole % 10)
        frame_text_addf(into, ".%02lld", whole % 100);
    else if (whole % 100)
        frame_text_addf(into, ".%lld", whole % 100 / 10);
}

static void attribute(frame_text *into, const char *name, double value) {
    frame_text_addf(into, " %s=\"", name);
    number(into, value);
    frame_text_add(into, "\"");
}

static double across(const svg *picture, plane_vec at) {
    return at.x - picture->left;
}
static double down(const svg *picture, plane_vec at) {
    return picture->top - at.y;
}

static void head(const svg *picture, const frame_drawing *drawing, double width, double height) {
    frame_text *into = picture->into;
    frame_text_add(into, "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" viewBox=\"0 0 ");
    number(into, width);
    frame_text_add(into, " ");
    number(into, height);
    frame_text_add(into, "\" width=\"100%\" style=\"display:block;max-width:");
    number(into, width);
    frame_text_add(into, "pt;height:auto;break-inside:avoid\" font-family=\"sans-serif\">\n<title>");
    frame_text_add_xml(into, drawing->title ? drawing->title : "Drawing");
    frame_text_add(into, "</title>\n<desc>");
    drawing_describe(drawing, into);
    frame_text_add(into, "</desc>\n");
}

static void close_group(svg *picture) {
    if (picture->open) frame_text_add(picture->into, "\"/>\n");
    picture->open = 0;
}

static void open_group(svg *picture, frame_pen pen) {
    static const char *const dashes[] = {"", "", "", "", "4 2", "12 2 2 2", "", ""};
    if (picture->open && picture->pen == pen) return;
    close_group(picture);
    frame_text_add(picture->into, "<path fill=\"none\" stroke=\"#000\"");
    attribute(picture->into, "stroke-width", sheet_pen_width(pen));
    if (*dashes[pen]) frame_text_addf(picture->into, " stroke-dasharray=\"%s\"", dashes[pen]);
    if (pen <= FRAME_PEN_THIN || pen == SHEET_PEN_HATCH)
        frame_text_add(picture->into, " stroke-linecap=\"round\" stroke-linejoin=\"round\"");
    frame_text_add(picture->into, " d=\"");
    picture->open = 1;
    picture->pen = pen;
}

static void points(const svg *picture, const sheet_shape *shape) {
    for (size_t k = 0; k < shape->count; k++) {
        const plane_vec at = FRAME_ITEM(plane_vec, picture->sheet->points, shape->first + k);
        frame_text_add(picture->into, k == 0 ? "M" : k == 1 ? "L" : " ");
        number(picture->into, across(picture, at));
        frame_text_add(picture->into, " ");
        number(picture->into, down(picture, at));
    }
    if (shape->kind != SHEET_LINE) frame_text_add(picture->into, "Z");
}

static void round_thing(const svg *picture, const sheet_shape *shape) {
    const plane_vec at = FRAME_ITEM(plane_vec, picture->sheet->points, shape->first);
    frame_text_add(picture->into, "<circle");
    attribute(picture->into, "cx", across(picture, at));
    attribute(picture->into, "cy", down(picture, at));
    attribute(picture->into, "r", shape->radius);
    if (shape->kind == SHEET_RING) {
        frame_text_add(picture->into, " fill=\"#fff\" stroke=\"#000\"");
        attribute(picture->into, "stroke-width", sheet_pen_width(shape->pen));
    }
    frame_text_add(picture->into, "/>\n");
}

static void shapes(svg *picture) {
    for (size_t i = 0; i < picture->sheet->shapes.count; i++) {
        const sheet_shape *shape = &FRAME_ITEM(sheet_shape, picture->sheet->shapes, i);
        if (shape->kind == SHEET_LINE || shape->kind == SHEET_LOOP) {
            open_group(picture, shape->pen);
            points(picture, shape);
            continue;
        }
        close_group(picture);
        if (shape->radius > 0) {
            round_thing(picture, shape);
            continue;
        }
        frame_text_add(picture->into, shape->kind == SHEET_BLANK ? "<path fill=\"#fff\" d=\"" : "<path d=\"");
        points(picture, shape);
        frame_text_add(picture->into, "\"/>\n");
    }
    close_group(picture);
}

static void text(const svg *picture, const sheet_text *line) {
    static const char *const anchors[] = {"", "", " text-anchor=\"middle\"", " text-anchor=\"end\""};
    frame_text *into = picture->into;
    const double x = across(picture, line->at), y = down(picture, line->at);
    frame_text_add(into, "<text");
    attribute(into, "x", x);
    attribute(into, "y", y);
    attribute(into, "font-size", line->points);
    frame_text_add(into, anchors[line->anchor]);
    if (line->angle_deg != 0) {
        frame_text_add(into, " transform=\"rotate(");
        number(into, -line->angle_deg);
        frame_text_add(into, " ");
        number(into, x);
        frame_text_add(into, " ");
        number(into, y);
        frame_text_add(into, ")\"");
    }
    frame_text_add(into, ">");
    for (size_t i = 0; i < line->length; i++) {
        const char one[] = {line->chars[i], 0};
        frame_text_add_xml(into, one);
    }
    frame_text_add(into, "</text>\n");
}

static void write(const frame_drawing *drawing, const drawing_sheet *sheet, frame_text *into) {
    plane_extent paper = sheet->ink;
    if (plane_is_empty(&paper)) paper = (plane_extent){{0, 0}, {0, 0}};
    svg picture = {
        .sheet = sheet, .into = into, .left = paper.low.x - SHEET_MARGIN, .top = paper.high.y + SHEET_MARGIN};
    head(&picture, drawing, paper.high.x - paper.low.x + 2 * SHEET_MARGIN,
         paper.high.y - paper.low.y + 2 * SHEET_MARGIN);
    shapes(&picture);
    for (size_t i = 0; i < sheet->texts.count; i++) text(&picture, &FRAME_ITEM(sheet_text, sheet->texts, i));
    frame_text_add(into, "</svg>\n");
}

frame_status frame_drawing_svg(const frame_drawing *drawing, frame_text *into) {
    drawing_sheet sheet;
    sheet_begin(&sheet);
    frame_status status = drawing_lay_out(drawing, &sheet);
    const size_t before = frame_text_length(into);
    if (!status) {
        write(drawing, &sheet, into);
        status = frame_text_state(into);
        if (status) frame_text_cut(into, before);
    }
    sheet_end(&sheet);
    return status;
}

frame_status frame_drawing_save_svg(const frame_drawing *drawing, const char *path) {
    frame_text *text_of_file;
    frame_status status = frame_text_new(&text_of_file);
    if (status) return status;
    status = frame_drawing_svg(drawing, text_of_file);
    if (!status) status = frame_text_save(text_of_file, path);
    frame_text_free(text_of_file);
    return status;
}
