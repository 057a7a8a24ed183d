/* The elevation of a wall, seen from outside: every piece, its marks on one tape, and the heights of the openings. A
 * long wall is drawn in parts, one under another, so that the marks do not crowd; distances stay those of the one tape.
 */
#include <math.h>

#include <frame/drawing.h>

#include "layout/wall.h"
#include "tape/tape.h"
#include "text/writer.h"

typedef struct page {
    const frame_layout_set *set;
    const frame_answer *answer;
    frame_drawing *drawing;
    frame_text *words;
    double from, to; /* the part being drawn; its start lies at x = 0 of the drawing */
} page;

#define PART 264.0 /* inches: the most in one part */

/* A piece in the x-z plane: its four corners, cut by the planes that cut it. */
typedef struct outline {
    double x[12], z[12];
    int count;
} outline;

static void add_corner(outline *o, double x, double z) {
    if (o->count == 12) return;
    o->x[o->count] = x;
    o->z[o->count++] = z;
}

static void cut(outline *o, const frame_layout_cut *by) {
    outline kept = {.count = 0};
    for (int i = 0; i < o->count; i++) {
        const int next = (i + 1) % o->count;
        const double here = (o->x[i] - by->point.x) * by->waste.x + (o->z[i] - by->point.z) * by->waste.z;
        const double there = (o->x[next] - by->point.x) * by->waste.x + (o->z[next] - by->point.z) * by->waste.z;
        if (here <= 1e-9) add_corner(&kept, o->x[i], o->z[i]);
        if ((here < -1e-9 && there > 1e-9) || (here > 1e-9 && there < -1e-9)) {
            const double part = here / (here - there);
            add_corner(&kept, o->x[i] + part * (o->x[next] - o->x[i]), o->z[i] + part * (o->z[next] - o->z[i]));
        }
    }
    *o = kept;
}

/* Half of what the section measures in the wall's plane, square to the axis. */
static double half_width(const frame_layout_piece *piece) {
    return (fabs(piece->crown.y) > 0.5 ? piece->thickness : piece->depth) / 2;
}

static outline outline_of(const frame_layout_set *set, const frame_layout_piece *piece) {
    outline o = {.count = 0};
    const double dx = piece->end.x - piece->start.x, dz = piece->end.z - piece->start.z, length = hypot(dx, dz);
    const double half = half_width(piece), nx = -dz / length * half, nz = dx / length * half;
    add_corner(&o, piece->start.x + nx, piece->start.z + nz);
    add_corner(&o, piece->start.x - nx, piece->start.z - nz);
    add_corner(&o, piece->end.x - nx, piece->end.z - nz);
    add_corner(&o, piece->end.x + nx, piece->end.z + nz);
    for (size_t i = 0; i < piece->cut_count; i++)
        cut(&o, &FRAME_ITEM(frame_layout_cut, set->cuts, piece->cut_first + i));
    return o;
}

static frame_status draw_piece(const page *p, const frame_layout_piece *piece) {
    const frame_layout_cut before = {.point = {p->from > 0 ? p->from : -1e6, 0, 0},
                                     .waste = {-1, 0, 0}}; /* laps stay */
    const frame_layout_cut beyond = {.point = {fmin(p->to, 1e6), 0, 0}, .waste = {1, 0, 0}};
    outline o = outline_of(p->set, piece);
    frame_status status = FRAME_OK;
    cut(&o, &before);
    cut(&o, &beyond);
    if (o.count < 3) return FRAME_OK;
    for (int i = 0; !status && i < o.count; i++) status = frame_drawing_point(p->drawing, o.x[i] - p->from, o.z[i]);
    const frame_pen pen = piece->kind == FRAME_PIECE_BACKING ? FRAME_PEN_HIDDEN : FRAME_PEN_OUTLINE;
    return status ? status : frame_drawing_polygon(p->drawing, pen, FRAME_HATCH_NONE);
}

/* Plies and fillers behind the first one are not seen. */
static int seen(const frame_layout_piece *piece) {
    if (piece->kind == FRAME_PIECE_FILLER) return 0;
    return piece->kind != FRAME_PIECE_HEADER || piece->crown.z < 0.5 || piece->start.y < piece->thickness;
}

/* A mark at its distance along the wall, whatever part it is drawn in. */
static frame_status mark_at(const page *p, double x) {
    frame_text_clear(p->words);
    frame_tape_add(p->words, x, 16);
    return frame_drawing_mark(p->drawing, x - p->from, 0, frame_text_chars(p->words));
}

static frame_status measure_marks(const page *p) {
    frame_status status = mark_at(p, p->from);
    double last = p->from, far = 0;
    for (size_t i = 0; !status && i < p->answer->lists[FRAME_WALL_MARKS].count; i++) {
        const frame_wall_mark *mark = &FRAME_ANSWER_ITEM(frame_wall_mark, p->answer, FRAME_WALL_MARKS, i);
        if (!mark->bottom || mark->kind == FRAME_PIECE_BACKING || mark->mark_in >= p->to) continue;
        if (mark->mark_in > last + 1e-6) status = mark_at(p, mark->mark_in);
        last = fmax(last, mark->mark_in);
        far = fmax(far, mark->to_in);
    }
    if (!status && isinf(p->to) && far > last + 1e-6) status = mark_at(p, far);
    return status || last == p->from ? status : frame_drawing_dimension_running(p->drawing, FRAME_DIMENSION_BELOW);
}

static frame_status measure_heights(const page *p) {
    const frame_wall_out *out = p->answer->out;
    frame_status status = frame_drawing_mark(p->drawing, 0, 0, NULL);
    double plate = 0;
    for (size_t i = 0; i < p->set->pieces.count; i++) {
        const frame_layout_piece *piece = FRAME_LAYOUT_PIECE(p->set, i);
        if (piece->kind == FRAME_PIECE_STUD && plate == 0) plate = piece->start.z;
    }
    if (!status && plate > 0) status = frame_drawing_mark(p->drawing, 0, plate, NULL);
    if (!status && out->stud_length_in != FRAME_NOT_GIVEN)
        status = frame_drawing_mark(p->drawing, 0, plate + out->stud_length_in, NULL);
    if (!status) status = frame_drawing_mark(p->drawing, 0, out->height_in, NULL);
    return status ? status : frame_drawing_dimension_running(p->drawing, FRAME_DIMENSION_LEFT);
}

static frame_status label_headers(const page *p) {
    frame_text *words = p->words;
    frame_status status = FRAME_OK;
    for (size_t i = 0; !status && i < p->answer->lists[FRAME_WALL_HEADERS].count; i++) {
        const frame_wall_header *header = &FRAME_ANSWER_ITEM(frame_wall_header, p->answer, FRAME_WALL_HEADERS, i);
        const frame_layout_piece *piece = NULL;
        for (size_t k = 0; k < p->set->pieces.count && !piece; k++)
            if (FRAME_LAYOUT_PIECE(p->set, k)->kind == FRAME_PIECE_HEADER &&
                FRAME_LAYOUT_PIECE(p->set, k)->opening == header->opening)
                piece = FRAME_LAYOUT_PIECE(p->set, k);
        if (!piece) continue;
        const double middle = (piece->start.x + piece->end.x) / 2;
        if (middle < p->from || middle >= p->to) continue;
        frame_text_clear(words);
        if (*header->name) frame_text_addf(words, "%s\n", header->name);
        frame_text_addf(words, "%d-%s, ", header->plies, piece->section);
        frame_tape_add(words, header->length_in, 16);
        frame_text_add(words, "\nunderside ");
        frame_tape_add(words, header->bottom_in, 16);
        status = frame_drawing_label(p->drawing, middle - p->from, (header->bottom_in + header->top_in) / 2,
                                     frame_text_chars(words));
    }
    return status ? status : frame_text_state(words);
}

static frame_status draw_part(const page *p) {
    frame_text_clear(p->words);
    frame_text_addf(p->words, "%s, from outside", p->set->name);
    if (p->from > 0) {
        frame_text_add(p->words, ", from ");
        frame_tape_add(p->words, p->from, 16);
        frame_text_add(p->words, " on");
    }
    frame_status status = frame_drawing_view(p->drawing, frame_text_chars(p->words));
    for (size_t i = 0; !status && i < p->set->pieces.count; i++)
        if (seen(FRAME_LAYOUT_PIECE(p->set, i))) status = draw_piece(p, FRAME_LAYOUT_PIECE(p->set, i));
    if (!status) status = label_headers(p);
    if (!status) status = measure_marks(p);
    return status || p->from > 0 ? status : measure_heights(p);
}

/* A place near x that no stud is cut at. */
static double clear_of_studs(const page *p, double x) {
    for (size_t i = 0; i < p->answer->lists[FRAME_WALL_MARKS].count; i++) {
        const frame_wall_mark *mark = &FRAME_ANSWER_ITEM(frame_wall_mark, p->answer, FRAME_WALL_MARKS, i);
        if (x > mark->mark_in - 1e-9 && x < mark->to_in + 1e-9) x = mark->to_in + 0.5;
    }
    return x;
}

static frame_status draw(page *p, double length) {
    const int parts = (int)ceil(length / PART - 1e-9);
    frame_status status = frame_drawing_title(p->drawing, p->set->name);
    for (int i = 1; !status && i <= parts; i++) {
        p->to = i == parts ? INFINITY : clear_of_studs(p, i * length / parts);
        status = draw_part(p);
        p->from = p->to;
    }
    return status ? status : frame_text_state(p->words);
}

/* How far the marks reach: the wall's length. */
static double reach(const frame_answer *answer) {
    double far = 0;
    for (size_t i = 0; i < answer->lists[FRAME_WALL_MARKS].count; i++)
        far = fmax(far, FRAME_ANSWER_ITEM(frame_wall_mark, answer, FRAME_WALL_MARKS, i).to_in);
    return far;
}

frame_status frame_wall_drawing(const frame_wall *wall, frame_drawing **given) {
    page p = {NULL, (const frame_answer *)(const void *)wall, NULL, NULL, 0, 0};
    if (!wall || !given) return frame_layout_no_answer();
    p.set = frame_layout_set_of(wall);
    frame_status status = frame_drawing_new(&p.drawing);
    if (!status) status = frame_text_new(&p.words);
    if (!status) status = draw(&p, reach(p.answer));
    frame_text_free(p.words);
    if (status) {
        frame_drawing_free(p.drawing);
        return status;
    }
    *given = p.drawing;
    return FRAME_OK;
}
