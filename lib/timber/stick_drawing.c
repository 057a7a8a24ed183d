/* The drawing of a stick: its faces unrolled like the sides of a box, so that each is seen as it lies before the saw,
 * the end measured from always on the left. The first wide face is at the bottom, over it the edge that adjoins it,
 * over that the other wide face, upside down. One wide face is enough where every cut goes straight through. */
#include "timber/stick_drawing.h"

#include "text/writer.h"
#include "timber_facts.h"

/* The faces of the views from the bottom up, and whether each is rolled; by the end measured from, then on edge or
 * flat. */
static const struct {
    int face, rolled;
} unrolled[2][2][3] = {
    {{{PLANE_RIGHT, 0}, {PLANE_TOP, 0}, {PLANE_LEFT, 1}}, {{PLANE_TOP, 0}, {PLANE_LEFT, 1}, {PLANE_BOTTOM, 1}}},
    {{{PLANE_LEFT, 0}, {PLANE_TOP, 1}, {PLANE_RIGHT, 1}}, {{PLANE_TOP, 1}, {PLANE_RIGHT, 1}, {PLANE_BOTTOM, 0}}},
};

static int on_edge(const frame_stick *stick) {
    return stick->z[1] - stick->z[0] >= stick->y[1] - stick->y[0];
}

/* Whether each cut goes straight through from one wide face to the other. */
static int straight_through(const frame_stick *stick) {
    for (size_t i = 0; i < frame_stick_saw_count(stick); i++) {
        frame_stick_saw saw;
        if (frame_stick_saw_at(stick, i, &saw)) return 0;
        if (saw.area_in2 > 0 && saw.bevel_deg > 0) return 0;
    }
    return 1;
}

static frame_stick_view look_at(const frame_stick *stick, frame_drawing *drawing, frame_text *words, int place) {
    const int from = stick->measure_from == FRAME_STICK_END, flat = !on_edge(stick);
    const int face = unrolled[from][flat][place].face;
    const double *range = face <= PLANE_RIGHT ? stick->z : stick->y;
    return (frame_stick_view){
        stick, drawing, words, face, unrolled[from][flat][place].rolled, place, range[1] - range[0]};
}

/* Under a view: which face it is, and how it lies. */
static frame_status caption(const frame_stick_view *view, int both) {
    const char *from = frame_stick_end_words.table[view->stick->measure_from - 1].word;
    const char *face = frame_stick_face_words.table[frame_stick_face_of[view->face] - 1].word;
    frame_text_clear(view->words);
    if (view->place == 0) {
        const frame_status status = frame_stick_write_title(view->stick, view->words);
        if (status) return status;
        frame_text_add(view->words, ": ");
    }
    if (both)
        frame_text_addf(view->words, "both wide faces alike, %s at the left", from);
    else
        frame_text_addf(view->words, "%s face%s, %s at the left", face, view->place == 2 ? ", rolled over" : "", from);
    return frame_drawing_view(view->drawing, frame_text_chars(view->words));
}

static frame_status draw_view(const frame_stick_view *view, int both) {
    frame_status status = caption(view, both);
    if (!status) status = frame_stick_draw_face(view);
    if (!status && view->place != 1) status = frame_stick_draw_running(view);
    if (!status) status = frame_stick_draw_notes(view);
    return status;
}

static frame_status draw(const frame_stick *stick, frame_drawing *drawing, frame_text *words) {
    const int both = straight_through(stick);
    frame_status status = frame_stick_write_title(stick, words);
    if (!status) status = frame_drawing_title(drawing, frame_text_chars(words));
    for (int place = both ? 0 : 2; !status && place >= 0; place--) {
        const frame_stick_view view = look_at(stick, drawing, words, place);
        status = draw_view(&view, both);
    }
    if (!status) status = frame_drawing_shorten(drawing, fmax(stick->z[1] - stick->z[0], stick->y[1] - stick->y[0]));
    return status ? status : frame_text_state(words);
}

frame_status frame_stick_drawing(const frame_stick *stick, frame_drawing **given) {
    frame_drawing *drawing = NULL;
    frame_text *words = NULL;
    if (!stick || !given) return frame_no_stick();
    frame_status status = frame_drawing_new(&drawing);
    if (!status) status = frame_text_new(&words);
    if (!status) status = draw(stick, drawing, words);
    frame_text_free(words);
    if (status) {
        frame_drawing_free(drawing);
        return status;
    }
    *given = drawing;
    return FRAME_OK;
}
