/* A stair drawn from its right side, flights and landings in one line: treads and risers cut through, the stringer
 * seen. */
#include <math.h>

#include <frame/drawing.h>

#include "layout/stair.h"
#include "tape/tape.h"
#include "text/writer.h"

typedef struct page {
    const frame_stair *stair;
    frame_drawing *drawing;
    frame_text *words;
    double x, z; /* where the flight being drawn begins */
} page;

static frame_status draw_stringer(const page *p, int treads, double first_cut) {
    const frame_stair *stair = p->stair;
    const double first_z = stair->riser - stair->tread_thickness, x = p->x + stair->riser_thickness, z = p->z + first_z;
    const double fall = stair->stringer.depth / cos(stair->angle), slope = tan(stair->angle);
    const double foot = z - first_cut, back = x + treads * stair->tread, lower = z + treads * stair->riser - fall;
    frame_status status = frame_drawing_point(p->drawing, x, foot);
    for (int i = 0; !status && i < treads; i++) {
        status = frame_drawing_point(p->drawing, x + i * stair->tread, z + i * stair->riser);
        if (!status) status = frame_drawing_point(p->drawing, x + (i + 1) * stair->tread, z + i * stair->riser);
    }
    if (!status && lower > foot) { /* else the seat is all of the lower edge */
        status = frame_drawing_point(p->drawing, back, lower);
        if (!status) status = frame_drawing_point(p->drawing, x + (foot - (z - fall)) / slope, foot);
    } else if (!status) {
        status = frame_drawing_point(p->drawing, back, foot);
    }
    return status ? status : frame_drawing_polygon(p->drawing, FRAME_PEN_OUTLINE, FRAME_HATCH_NONE);
}

static frame_status draw_boards(const page *p, int flight) {
    const frame_stair *stair = p->stair;
    const int treads = frame_stair_treads_of(stair, flight);
    frame_status status = FRAME_OK;
    for (int i = 0; !status && i < stair->risers_of[flight]; i++) {
        const double face = p->x + i * stair->tread, top = p->z + (i + 1) * stair->riser;
        const double low = i ? top - stair->riser - stair->tread_thickness : p->z;
        const double high = i < treads ? top - stair->tread_thickness : top;
        if (stair->riser_thickness > 0)
            status = frame_drawing_rectangle(p->drawing, face, low, face + stair->riser_thickness, high,
                                             FRAME_PEN_OUTLINE, FRAME_HATCH_NONE);
        if (status || i >= treads || stair->tread_thickness == 0) continue;
        status = frame_drawing_rectangle(p->drawing, face - stair->nosing, top - stair->tread_thickness,
                                         face + stair->tread, top, FRAME_PEN_OUTLINE, FRAME_HATCH_NONE);
    }
    return status;
}

/* The landing or floor that a flight comes to. */
static frame_status draw_floor(const page *p, double x, double z, double length) {
    return frame_drawing_line(p->drawing, x - p->stair->nosing, z, x + length, z, FRAME_PEN_CUT);
}

static frame_status draw_flights(page *p) {
    const frame_stair *stair = p->stair;
    frame_status status = draw_floor(p, -12, 0, 12 + stair->tread);
    for (int flight = 0; !status && flight < stair->flights; flight++) {
        const int treads = frame_stair_treads_of(stair, flight);
        const double run = treads * stair->tread, top = p->z + stair->risers_of[flight] * stair->riser;
        if (treads)
            status = draw_stringer(p, treads, frame_stair_first_cut(stair, flight, flight ? 0 : stair->floor_at[0]));
        if (!status) status = draw_boards(p, flight);
        const int last = flight == stair->flights - 1;
        if (!status) status = draw_floor(p, p->x + run, top, last ? 24 : stair->landing);
        p->x += run + (last ? 0 : stair->landing);
        p->z = top;
    }
    return status;
}

/* Heights of the treads on one tape, and the risers' faces on another. */
static frame_status measure(const page *p) {
    const frame_stair *stair = p->stair;
    frame_status status = frame_drawing_mark(p->drawing, -stair->nosing, 0, NULL);
    for (int i = 1; !status && i <= stair->risers; i++)
        status = frame_drawing_mark(p->drawing, -stair->nosing, i * stair->riser, NULL);
    if (!status) status = frame_drawing_dimension_running(p->drawing, FRAME_DIMENSION_LEFT);
    double x = 0;
    if (!status) status = frame_drawing_mark(p->drawing, 0, 0, NULL);
    for (int flight = 0; !status && flight < stair->flights; flight++) {
        for (int i = 1; !status && i <= frame_stair_treads_of(stair, flight); i++)
            status = frame_drawing_mark(p->drawing, x + i * stair->tread, 0, NULL);
        x += frame_stair_treads_of(stair, flight) * stair->tread + stair->landing;
        if (!status && flight + 1 < stair->flights) status = frame_drawing_mark(p->drawing, x, 0, NULL);
    }
    return status || frame_stair_treads(stair) == 0
               ? status
               : frame_drawing_dimension_running(p->drawing, FRAME_DIMENSION_BELOW);
}

/* The well's edge one passes under, and what is clear below it. */
static frame_status draw_headroom(const page *p) {
    const frame_stair *stair = p->stair;
    if (frame_stair_headroom(stair) == FRAME_NOT_GIVEN) return FRAME_OK;
    const double x = frame_stair_run(stair) - stair->well, line = frame_stair_line(stair, stair->well);
    frame_status status = frame_drawing_rectangle(
        p->drawing, x - 18, stair->ceiling, x, fmax(stair->rise, stair->ceiling + 1), FRAME_PEN_CUT, FRAME_HATCH_NONE);
    if (!status) status = frame_drawing_line(p->drawing, x, line, x, stair->ceiling, FRAME_PEN_CENTRE);
    frame_text_clear(p->words);
    frame_text_add(p->words, "headroom ");
    frame_tape_add(p->words, stair->ceiling - line, 16);
    return status ? status
                  : frame_drawing_label(p->drawing, x, (line + stair->ceiling) / 2, frame_text_chars(p->words));
}

static frame_status label_square(const page *p) {
    const frame_stair *stair = p->stair;
    frame_text_clear(p->words);
    frame_text_add(p->words, "square at ");
    frame_inches_add(p->words, stair->tread, 16);
    frame_text_add(p->words, " and ");
    frame_inches_add(p->words, stair->riser, 16);
    frame_text_addf(p->words, "\n%d risers, %d treads", stair->risers, frame_stair_treads(stair));
    if (frame_stair_treads(stair) == 0) return FRAME_OK;
    return frame_drawing_label(p->drawing, stair->riser_thickness, stair->riser - stair->tread_thickness,
                               frame_text_chars(p->words));
}

static frame_status draw(page *p, const char *name) {
    frame_status status = frame_drawing_title(p->drawing, name);
    frame_text_addf(p->words, "%s, from its right side", name);
    if (!status) status = frame_drawing_view(p->drawing, frame_text_chars(p->words));
    if (!status) status = draw_flights(p);
    if (!status) status = draw_headroom(p);
    if (!status) status = label_square(p);
    if (!status) status = measure(p);
    return status ? status : frame_text_state(p->words);
}

frame_status frame_stairs_drawing(const frame_stairs *stairs, frame_drawing **given) {
    page p = {NULL, NULL, NULL, 0, 0};
    if (!stairs || !given) return frame_layout_no_answer();
    const frame_answer *answer = (const frame_answer *)(const void *)stairs;
    p.stair = FRAME_ITEM(frame_owned, answer->owned, 1).object;
    frame_status status = frame_drawing_new(&p.drawing);
    if (!status) status = frame_text_new(&p.words);
    if (!status) status = draw(&p, frame_layout_set_of(stairs)->name);
    frame_text_free(p.words);
    if (status) {
        frame_drawing_free(p.drawing);
        return status;
    }
    *given = p.drawing;
    return FRAME_OK;
}
