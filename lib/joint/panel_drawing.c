/* A sheet of 4 by 8 ft with its nails. */
#include <math.h>
#include <stdio.h>

#include "base/number.h"
#include "joint/panel_pattern.h"
#include "joint_facts.h"
#include "working/calculation.h"

static const double wide = 48, tall = 96, inset = 0.75;

static frame_status nail(frame_drawing *drawing, double x, double y) {
    return frame_drawing_circle(drawing, x, y, 0.45, FRAME_PEN_THIN, FRAME_HATCH_SOLID);
}

/* Nails up a line at most so far apart, evenly. */
static frame_status column(frame_drawing *drawing, double x, double spacing, int ends) {
    const double from = inset, length = tall - 2 * inset;
    const int steps = (int)ceil(length / spacing - 1e-9);
    frame_status status = FRAME_OK;
    for (int i = ends ? 0 : 1; i <= steps - (ends ? 0 : 1) && !status; i++)
        status = nail(drawing, x, from + length * i / steps);
    return status;
}

static frame_status row(frame_drawing *drawing, double y, double spacing) {
    const double length = wide - 2 * inset;
    const int steps = (int)ceil(length / spacing - 1e-9);
    frame_status status = FRAME_OK;
    for (int i = 1; i < steps && !status; i++) status = nail(drawing, inset + length * i / steps, y);
    return status;
}

static frame_status supports(frame_drawing *drawing, double centres, double field) {
    frame_status status = FRAME_OK;
    for (double x = centres; x < wide - 1 && !status; x += centres) {
        status = frame_drawing_line(drawing, x, 0, x, tall, FRAME_PEN_HIDDEN);
        if (!status) status = column(drawing, x, field, 0);
    }
    return status;
}

static double last_support(double centres) {
    return centres * (ceil((wide - 1) / centres) - 1);
}

static frame_status draw(const frame_panel_pattern_in *in, const frame_pattern_found *found, frame_drawing *drawing) {
    char label[120], edge[24];
    const double spacing = found->row.edge_in;
    frame_number_print(spacing, 4, edge, sizeof edge);
    snprintf(label, sizeof label, "%s nails, %s in at edges", found->row.nail, edge);
    frame_status status = frame_drawing_title(drawing, "Nails of a sheet");
    if (!status) status = frame_drawing_paper(drawing, 5, 7);
    if (!status) status = frame_drawing_rectangle(drawing, 0, 0, wide, tall, FRAME_PEN_CUT, FRAME_HATCH_NONE);
    if (!status) status = column(drawing, inset, spacing, 1);
    if (!status) status = column(drawing, wide - inset, spacing, 1);
    if (!status) status = row(drawing, inset, spacing);
    if (!status) status = row(drawing, tall - inset, spacing);
    if (!status) status = supports(drawing, in->support_spacing_in, FRAME_FIELD_NAILS_IN);
    if (!status) status = frame_drawing_label(drawing, wide * 0.6, tall - inset, label);
    if (!status && in->support_spacing_in < wide - 1)
        status = frame_drawing_label(drawing, last_support(in->support_spacing_in), 6, "12 in along supports between");
    if (!status) status = frame_drawing_dimension(drawing, 0, 0, wide, 0, FRAME_DIMENSION_BELOW, "");
    return status ? status : frame_drawing_dimension(drawing, 0, 0, 0, tall, FRAME_DIMENSION_LEFT, "");
}

frame_status frame_panel_pattern_drawing(const frame_panel_pattern_in *given, frame_drawing **drawing) {
    frame_panel_pattern_in in;
    frame_patterns patterns;
    uint64_t assumed = 0;
    frame_status status = frame_panel_pattern_in_read(given, &in, &assumed);
    if (!status) status = frame_patterns_find(&in, &patterns);
    if (status) return status;
    frame_drawing *made = NULL;
    status = frame_drawing_new(&made);
    if (!status) status = draw(&in, &patterns.items[0], made);
    if (status)
        frame_drawing_free(made);
    else
        *drawing = made;
    return status;
}
