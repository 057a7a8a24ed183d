/* What fills areas: drawn on the paper in strokes of its own, so that every writer can show it and texts can stand in
 * it. The patterns are the library's own; pitches are in points and do not change with the scale. */
#include <math.h>

#include "drawing/layout.h"

/* The area being filled, along its fibres (a) and across them (b). */
typedef struct field {
    drawing_layout *layout;
    const plane_vec *edge;
    size_t count;
    plane_vec fibre, across;
    double a_low, a_high, b_low, b_high;
} field;

static plane_vec place(const field *area, double a, double b) {
    return plane_mix(area->fibre, a, area->across, b);
}

static sheet_shape hatch_stroke(const field *area) {
    return (sheet_shape){.kind = SHEET_LINE, .role = SHEET_HATCH, .pen = SHEET_PEN_HATCH, .view = area->layout->view};
}

static void end_run(const field *area) {
    frame_array *run = &area->layout->way;
    if (run->count > 1) sheet_shape_add(area->layout->sheet, hatch_stroke(area), run->items, run->count);
    run->count = 0;
}

static void step(const field *area, plane_vec to) {
    if (!frame_array_push(&area->layout->way, &to)) area->layout->sheet->status = FRAME_NO_MEMORY;
}

#define CROSSINGS_MOST 62

/* Draws the parts of a line of many points that lie within the area. */
static void curve(const field *area, const plane_vec *points, size_t count) {
    area->layout->way.count = 0;
    for (size_t i = 0; i + 1 < count; i++) {
        double at[CROSSINGS_MOST + 2] = {0};
        const size_t found = plane_crossings(points[i], points[i + 1], area->edge, area->count, at + 1, CROSSINGS_MOST);
        at[found + 1] = 1;
        for (size_t k = 0; k <= found; k++) {
            const plane_vec from = plane_between(points[i], points[i + 1], at[k]);
            const plane_vec to = plane_between(points[i], points[i + 1], at[k + 1]);
            if (!plane_inside(plane_between(from, to, 0.5), area->edge, area->count)) {
                end_run(area);
                continue;
            }
            if (!area->layout->way.count) step(area, from);
            step(area, to);
        }
    }
    end_run(area);
}

static void line(const field *area, plane_vec a, plane_vec b) {
    const plane_vec ends[] = {a, b};
    curve(area, ends, 2);
}

/* Chance that is the same on every machine. */
static double chance(unsigned a, unsigned b, unsigned c) {
    unsigned h = a * 0x9E3779B1u ^ b * 0x85EBCA77u ^ c * 0xC2B2AE3Du;
    h = (h ^ h >> 15) * 0x2C1B3C6Du;
    h = (h ^ h >> 12) * 0x297A2D39u;
    return (double)(h ^ h >> 15) / 4294967296.0;
}

/* Long fibres with breaks between them, none of them quite straight. */
static void side_grain(const field *area) {
    const double height = area->b_high - area->b_low;
    const unsigned lines = (unsigned)fmin(60, floor(height / 6.5));
    for (unsigned i = 0; i < lines; i++) {
        const double b = area->b_low + height * (i + 0.5) / lines + (chance(i, 0, 1) - 0.5) * 2;
        double a = area->a_low - 30 * chance(i, 1, 1);
        for (unsigned n = 0; a < area->a_high; n++) {
            const double length = 26 + 44 * chance(i, n, 2), rise = (chance(i, n, 3) - 0.5) * 2.4;
            plane_vec points[9];
            for (int s = 0; s <= 8; s++)
                points[s] = place(area, a + length * s / 8, b + rise * sin(3.14159265358979323846 * s / 8));
            curve(area, points, 9);
            a += length + 9 + 26 * chance(i, n, 4);
        }
    }
}

/* Growth rings about a pith below the piece, as in a board sawn beside the heart. */
static void end_grain(const field *area) {
    const double width = area->a_high - area->a_low, height = area->b_high - area->b_low;
    const plane_vec pith = place(area, area->a_low + width * 0.42, area->b_low - height * 0.3);
    const double most = hypot(width, height * 1.3), pitch = fmax(3.6, fmin(width, height) / 9);
    for (double radius = pitch * 1.4; radius < most; radius += pitch) {
        plane_vec points[73];
        for (int s = 0; s <= 72; s++) points[s] = plane_add(pith, plane_times(plane_direction(s * 5), radius));
        curve(area, points, 73);
    }
}

/* An odd number of plies, as in the sheet itself. */
static void panel(const field *area) {
    const double height = area->b_high - area->b_low;
    const int plies = height < 4 ? 1 : height < 9 ? 3 : height < 15 ? 5 : 7;
    for (int i = 1; i < plies; i++) {
        const double b = area->b_low + height * i / plies;
        line(area, place(area, area->a_low - 1, b), place(area, area->a_high + 1, b));
    }
}

static void dot(const field *area, plane_vec at) {
    const sheet_shape shape = {.kind = SHEET_DOT, .role = SHEET_HATCH, .view = area->layout->view, .radius = 0.45};
    if (plane_inside(at, area->edge, area->count)) sheet_shape_add(area->layout->sheet, shape, &at, 1);
}

static void concrete(const field *area) {
    const double pitch = 6.5;
    const unsigned rows = (unsigned)ceil((area->b_high - area->b_low) / pitch);
    const unsigned columns = (unsigned)ceil((area->a_high - area->a_low) / pitch);
    for (unsigned r = 0; r < rows; r++)
        for (unsigned c = 0; c < columns; c++) {
            const plane_vec at =
                place(area, area->a_low + (c + chance(r, c, 5)) * pitch, area->b_low + (r + chance(r, c, 6)) * pitch);
            if (chance(r, c, 7) > 0.14) {
                dot(area, at);
                continue;
            }
            plane_vec stone[4];
            for (int s = 0; s < 4; s++)
                stone[s] = plane_add(at, plane_times(plane_direction(360 * chance(r, c, 8) + 120 * s), 2.2));
            curve(area, stone, 4);
        }
}

static void steel(const field *area) {
    const double half = hypot(area->a_high - area->a_low, area->b_high - area->b_low) / 2;
    const plane_vec middle = place(area, (area->a_low + area->a_high) / 2, (area->b_low + area->b_high) / 2);
    const plane_vec along = plane_direction(45), across = plane_left(along);
    for (double b = -half; b < half; b += 5)
        for (int twice = 0; twice < 2; twice++) {
            const double at = b + 1.5 * twice;
            line(area, plane_add(middle, plane_mix(along, -half, across, at)),
                 plane_add(middle, plane_mix(along, half, across, at)));
        }
}

static void insulation(const field *area) {
    const double pitch = fmax(3, fmin(12, (area->b_high - area->b_low) * 0.3));
    int low = 1;
    for (double a = area->a_low; a < area->a_high; a += pitch, low = !low)
        line(area, place(area, a, low ? area->b_low : area->b_high),
             place(area, a + pitch, low ? area->b_high : area->b_low));
}

static void earth(const field *area) {
    const double pitch = 13;
    const unsigned rows = (unsigned)ceil((area->b_high - area->b_low) / pitch);
    const unsigned columns = (unsigned)ceil((area->a_high - area->a_low) / pitch);
    for (unsigned r = 0; r < rows; r++)
        for (unsigned c = 0; c < columns; c++)
            for (int s = 0; s < 3; s++) {
                const plane_vec lean = plane_direction((r + c) % 2 ? 45 : 135);
                const double a = area->a_low + (c + 0.5) * pitch, b = area->b_low + (r + 0.5) * pitch;
                const plane_vec foot = plane_add(place(area, a, b), plane_times(plane_left(lean), (s - 1) * 2.4));
                line(area, plane_add(foot, plane_times(lean, -4)), plane_add(foot, plane_times(lean, 4)));
            }
}

static void find_bounds(field *area) {
    area->a_low = area->b_low = HUGE_VAL;
    area->a_high = area->b_high = -HUGE_VAL;
    for (size_t i = 0; i < area->count; i++) {
        const double a = plane_dot(area->edge[i], area->fibre), b = plane_dot(area->edge[i], area->across);
        area->a_low = fmin(area->a_low, a);
        area->a_high = fmax(area->a_high, a);
        area->b_low = fmin(area->b_low, b);
        area->b_high = fmax(area->b_high, b);
    }
}

void layout_hatch(drawing_layout *layout, frame_hatch hatch, plane_vec fibre) {
    field area = {layout, layout->visible.items, layout->visible.count, fibre, plane_left(fibre), 0, 0, 0, 0};
    find_bounds(&area);
    switch (hatch) {
        case FRAME_HATCH_END_GRAIN:
            end_grain(&area);
            break;
        case FRAME_HATCH_SIDE_GRAIN:
            side_grain(&area);
            break;
        case FRAME_HATCH_PANEL:
            panel(&area);
            break;
        case FRAME_HATCH_CONCRETE:
            concrete(&area);
            break;
        case FRAME_HATCH_STEEL:
            steel(&area);
            break;
        case FRAME_HATCH_INSULATION:
            insulation(&area);
            break;
        case FRAME_HATCH_EARTH:
            earth(&area);
            break;
        default:
            break;
    }
}
