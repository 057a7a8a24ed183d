/* What is written on a drawing of a stick: its title, and at each line what it is and how the saw is set. */
#include <frame/tape.h>

#include "text/writer.h"
#include "timber/stick_drawing.h"
#include "timber_facts.h"

static frame_status add_length(frame_text *words, double inches, frame_rounding rounding, frame_tape_units units) {
    char text[32];
    const frame_tape_style style = {.rounding = rounding, .style = units};
    const frame_status status = frame_tape_format(inches, &style, text, sizeof text);
    if (!status) frame_text_add(words, text);
    return status;
}

static frame_status add_section(const frame_stick *stick, frame_text *words) {
    if (stick->section) {
        frame_text_add(words, stick->section);
        return FRAME_OK;
    }
    frame_status status = add_length(words, stick->y[1] - stick->y[0], FRAME_ROUND_NEAREST, FRAME_TAPE_INCHES);
    frame_text_add(words, " x ");
    if (!status) status = add_length(words, stick->z[1] - stick->z[0], FRAME_ROUND_NEAREST, FRAME_TAPE_INCHES);
    return status;
}

frame_status frame_stick_write_title(const frame_stick *stick, frame_text *words) {
    frame_text_clear(words);
    if (stick->name) frame_text_addf(words, "%s, ", stick->name);
    frame_status status = add_section(stick, words);
    if (stick->count > 1) frame_text_addf(words, ", %d pieces", (int)stick->count);
    frame_text_add(words, ", from ");
    if (!status) status = add_length(words, stick->high - stick->low, FRAME_ROUND_UP, FRAME_TAPE_FEET);
    frame_text_add(words, " of stock");
    return status ? status : frame_text_state(words);
}

/* Degrees to a tenth, without a zero at the end. */
static void add_degrees(frame_text *words, const char *before, double degrees) {
    frame_text_add(words, before);
    frame_text_add_number(words, round(degrees * 10) / 10, 4);
    frame_text_add(words, "\xc2\xb0");
}

static void add_setting(frame_text *words, const frame_stick_saw *saw) {
    if (saw->bevel_deg == 90) {
        frame_text_add(words, "parallel to the face");
        return;
    }
    if (saw->mitre_deg == 90)
        frame_text_add(words, "rip");
    else if (saw->mitre_deg == 0 && saw->bevel_deg == 0)
        frame_text_add(words, saw->role == FRAME_STICK_SQUARE_END ? "" : "square");
    else
        add_degrees(words, "mitre ", saw->mitre_deg);
    if (saw->bevel_deg > 0) add_degrees(words, ", bevel ", saw->bevel_deg);
    if (saw->bevel_end != FRAME_NOT_GIVEN_INT)
        frame_text_addf(words, " to the %s", frame_stick_end_words.table[saw->bevel_end - 1].word);
}

/* Without a bevel the first wide face stands for both. */
static int shows_setting(const frame_stick_view *view, const frame_stick_saw *saw) {
    return saw->bevel_deg > 0 ? saw->base_face == frame_stick_face_of[view->face] : view->place == 0;
}

/* What a line is; on one wide face its setting, on the top edge the angle the handbooks call the side cut. */
static frame_status write_note(const frame_stick_view *view, const frame_stick_saw *saw) {
    const frame_stick_face face = frame_stick_face_of[view->face];
    frame_text_clear(view->words);
    frame_text_add(view->words, saw->label);
    if (shows_setting(view, saw)) {
        frame_text_add(view->words, "\n");
        add_setting(view->words, saw);
    } else if (view->place == 1 && face == FRAME_STICK_TOP && saw->across_top_deg > 0 && saw->across_top_deg < 90) {
        add_degrees(view->words, "\n", saw->top_edge_deg);
        frame_text_add(view->words, " with the edge");
    }
    return frame_text_state(view->words);
}

/* How far within the face a line stops short of the edge it comes from, or runs along an edge. */
static frame_status add_distance(const frame_stick_view *view, const frame_stick_point *a, const frame_stick_point *b) {
    const frame_stick_point *within = a->edge ? b : a, *other = a->edge ? a : b;
    const int near_low = within->across < view->height / 2;
    const double distance = near_low ? within->across : view->height - within->across;
    const double from = near_low ? other->across : view->height - other->across;
    if (within->edge || distance < 1.0 / 32) return FRAME_OK;
    if (from > 1e-7 && fabs(from - distance) > 1e-7) return FRAME_OK;
    frame_text_add(view->words, from > 1e-7 ? "\n" : "\nto ");
    const frame_status status = add_length(view->words, distance, FRAME_ROUND_NEAREST, FRAME_TAPE_INCHES);
    frame_text_add(view->words, " from the edge");
    return status;
}

/* One line of a plane is enough to say what it is. */
static int noted_before(const frame_stick_view *view, size_t mark) {
    const frame_stick_point *marks = view->stick->marks.items;
    for (size_t i = 0; i < mark; i++)
        if (marks[i].face == marks[mark].face && marks[i].record == marks[mark].record) return 1;
    return 0;
}

/* The note points at the middle of the line that begins at a mark. */
static frame_status add_note(const frame_stick_view *view, size_t mark, const frame_stick_saw *saw) {
    const frame_stick_point *marks = view->stick->marks.items;
    size_t other = mark + 1;
    while (other < view->stick->marks.count && marks[other].group != marks[mark].group) other++;
    if (other == view->stick->marks.count) return FRAME_OK;
    const double x = (marks[mark].x + marks[other].x) / 2, across = (marks[mark].across + marks[other].across) / 2;
    frame_status status = write_note(view, saw);
    if (!status && (view->place == 1 || shows_setting(view, saw)))
        status = add_distance(view, &marks[mark], &marks[other]);
    return status ? status
                  : frame_drawing_label(view->drawing, frame_stick_running(view->stick, x),
                                        frame_stick_up(view, across), frame_text_chars(view->words));
}

frame_status frame_stick_draw_notes(const frame_stick_view *view) {
    for (size_t i = 0; i < frame_stick_mark_count(view->stick); i++) {
        frame_stick_mark mark;
        frame_stick_saw saw;
        frame_status status = frame_stick_mark_at(view->stick, i, &mark);
        if (!status) status = frame_stick_saw_at(view->stick, (size_t)mark.saw, &saw);
        if (!status && mark.face == frame_stick_face_of[view->face] && !noted_before(view, i))
            status = add_note(view, i, &saw);
        if (status) return status;
    }
    return FRAME_OK;
}
