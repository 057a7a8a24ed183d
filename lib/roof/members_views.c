/* Pictures of a framed roof: its plan, with the marks of the layout, and the frame as it stands. */
#include <stdio.h>
#include <stdlib.h>

#include "base/error.h"
#include "roof/members.h"
#include "roof_facts.h"
#include "timber/scene.h"

static frame_status no_members(void) {
    return frame_fail(FRAME_REQUIRED, "members", "NULL", "an answer, and where to put what is asked",
                      "members: NULL is not an answer, or there is nowhere to put what is asked");
}

static const members_set *set_of(const frame_roof_members *of) {
    return FRAME_ITEM(frame_owned, ((const frame_answer *)of)->owned, 0).object;
}

static const frame_roof_members_piece *given_at(const frame_roof_members *of, size_t i) {
    return &FRAME_ANSWER_ITEM(const frame_roof_members_piece, (const frame_answer *)of, 0, i);
}

static frame_status add_sticks(const frame_roof_members *of, frame_scene *scene) {
    const members_set *set = set_of(of);
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < set->pieces.count && !status; i++) {
        frame_stick *stick;
        status = members_stick(set, i, NULL, &stick);
        if (status) return status;
        status = frame_scene_add(scene, stick);
        frame_stick_free(stick);
    }
    return status;
}

/* -- the plan's words -- */

/* One label for each kind of piece, on the longest of it. */
static frame_status label_kinds(const frame_roof_members *of, const frame_scene *scene, frame_drawing *drawing) {
    size_t longest[24] = {0};
    int32_t counts[24] = {0};
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < set_of(of)->pieces.count; i++) {
        const frame_roof_members_piece *piece = given_at(of, i);
        if (!counts[piece->kind]++ || piece->length_in > given_at(of, longest[piece->kind])->length_in)
            longest[piece->kind] = i;
    }
    for (int kind = 1; kind <= FRAME_MEMBER_BLOCK && !status; kind++) {
        if (!counts[kind] || kind == FRAME_MEMBER_PLATE) continue;
        const frame_roof_members_piece *piece = given_at(of, longest[kind]);
        const vec3 at = frame_scene_see(scene, (vec3){(piece->start_x_in + 2 * piece->end_x_in) / 3,
                                                      (piece->start_y_in + 2 * piece->end_y_in) / 3, 0});
        char text[64];
        snprintf(text, sizeof text, "%d %s, %s", (int)counts[kind], frame_roof_member_words.table[kind - 1].word,
                 piece->section ? piece->section : "");
        status = frame_drawing_label(drawing, at.x, at.y, text);
    }
    return status;
}

/* The places of the rafters that stand on the eaves below, or on the left, on one tape from the corner of the walls. */
static frame_status measure(const frame_roof_members *of, frame_drawing *drawing, int upright) {
    const members_set *set = set_of(of);
    double low[2] = {HUGE_VAL, HUGE_VAL}, last = 0;
    for (size_t i = 0; i < set->pieces.count; i++) {
        const frame_roof_members_piece *piece = given_at(of, i);
        if (piece->kind != FRAME_MEMBER_PLATE) continue;
        low[0] = fmin(low[0], fmin(piece->start_x_in, piece->end_x_in));
        low[1] = fmin(low[1], fmin(piece->start_y_in, piece->end_y_in));
    }
    const double across = low[1 - upright];
    frame_status status = frame_drawing_mark(drawing, upright ? across : low[0], upright ? low[1] : across, NULL);
    size_t marks = 1;
    for (last = low[upright]; !status;) {
        double next = HUGE_VAL;
        for (size_t i = 0; i < set->pieces.count; i++) {
            const frame_roof_members_piece *piece = given_at(of, i);
            const double start = upright ? piece->start_y_in : piece->start_x_in;
            const double end = upright ? piece->end_y_in : piece->end_x_in;
            const double foot = upright ? piece->start_x_in : piece->start_y_in;
            if (piece->edge < 0 || piece->kind > FRAME_MEMBER_RAFTER || piece->kind < FRAME_MEMBER_COMMON) continue;
            if (fabs(start - end) > 1e-6 || foot > across + 1 || start < last + 0.5) continue;
            next = fmin(next, start);
        }
        if (next == HUGE_VAL) break;
        status = frame_drawing_mark(drawing, upright ? across : next, upright ? next : across, NULL);
        last = next;
        marks++;
    }
    if (status) return status;
    if (marks == 1)
        status = frame_drawing_mark(drawing, upright ? across : low[0] + 1, upright ? low[1] + 1 : across, NULL);
    return status ? status
                  : frame_drawing_dimension_running(drawing, upright ? FRAME_DIMENSION_LEFT : FRAME_DIMENSION_BELOW);
}

static frame_status draw_plan(const frame_roof_members *of, frame_drawing *drawing, frame_scene *scene) {
    frame_status status = frame_drawing_title(drawing, "Roof framing");
    if (!status) status = frame_drawing_view(drawing, "roof framing, in plan; marks are the middles of rafters");
    if (!status) status = add_sticks(of, scene);
    if (!status) status = frame_scene_draw(scene, drawing);
    if (!status) status = label_kinds(of, scene, drawing);
    if (!status) status = measure(of, drawing, 0);
    return status ? status : measure(of, drawing, 1);
}

static frame_status draw_standing(const frame_roof_members *of, frame_drawing *drawing, frame_scene *scene) {
    frame_status status = frame_drawing_title(drawing, "Roof frame");
    if (!status) status = frame_drawing_view(drawing, "the frame as it stands");
    if (!status) status = add_sticks(of, scene);
    return status ? status : frame_scene_draw(scene, drawing);
}

static frame_status view(const frame_roof_members *of, double turn_deg, double rise_deg, int plan,
                         frame_drawing **given) {
    frame_drawing *drawing = NULL;
    frame_scene scene;
    if (!of || !given) return no_members();
    frame_status status = frame_drawing_new(&drawing);
    if (status) return status;
    frame_scene_begin(&scene, turn_deg, rise_deg);
    status = plan ? draw_plan(of, drawing, &scene) : draw_standing(of, drawing, &scene);
    frame_scene_give(&scene);
    if (status) {
        frame_drawing_free(drawing);
        return status;
    }
    *given = drawing;
    return FRAME_OK;
}

frame_status frame_roof_members_drawing(const frame_roof_members *of, frame_drawing **drawing) {
    return view(of, 0, 90, 1, drawing);
}

frame_status frame_roof_members_isometric(const frame_roof_members *of, double turn_deg, frame_drawing **drawing) {
    if (!(turn_deg >= -360 && turn_deg <= 360))
        return frame_fail_number(isfinite(turn_deg) ? FRAME_OUT_OF_RANGE : FRAME_NOT_A_NUMBER, "turn_deg", turn_deg,
                                 "-360..360 degrees");
    return view(of, turn_deg, 35.264389682754654, 0, drawing); /* the rise at which a cube's edges look alike */
}
