/* The pieces behind an answer of this room, and their sticks. */
#include "layout/piece.h"

#include <stdio.h>

#include "base/error.h"
#include "material/lumber.h"
#include "tape/tape.h"

static void give_set(void *object) {
    frame_layout_set *set = object;
    frame_array_give(&set->pieces);
    frame_array_give(&set->cuts);
    frame_give(set);
}

frame_layout_set *frame_layout_set_new(frame_answer *answer) {
    frame_layout_set *set = frame_take_zeroed(1, sizeof *set);
    if (!set) return NULL;
    set->answer = answer;
    set->pieces.item_size = sizeof(frame_layout_piece);
    set->cuts.item_size = sizeof(frame_layout_cut);
    return frame_answer_own(answer, set, give_set);
}

frame_layout_piece *frame_layout_add(frame_layout_set *set, frame_piece_kind kind, const char *name, int number,
                                     const frame_layout_section *section, vec3 start, vec3 end, vec3 crown) {
    char numbered[80];
    frame_layout_piece *piece = frame_array_push(&set->pieces, NULL);
    if (!piece) {
        set->answer->failed = 1;
        return NULL;
    }
    if (number >= 0) {
        snprintf(numbered, sizeof numbered, "%s %d", name, number);
        name = frame_answer_text(set->answer, numbered);
    }
    piece->name = name;
    piece->section = section->name;
    piece->thickness = section->thickness;
    piece->depth = section->depth;
    piece->size = section->size;
    piece->start = start;
    piece->end = end;
    piece->crown = crown;
    piece->kind = kind;
    piece->cut_first = set->cuts.count;
    piece->length = piece->short_point = vec_length(vec_less(end, start));
    return piece;
}

frame_layout_cut *frame_layout_add_cut(frame_layout_set *set, frame_stick_role role, vec3 point, vec3 waste,
                                       const char *label) {
    const frame_layout_cut cut = {point, waste, label, role, 0, FRAME_NOT_GIVEN_INT};
    if (!set->pieces.count || !frame_array_push(&set->cuts, &cut)) {
        set->answer->failed = 1;
        return NULL;
    }
    FRAME_LAYOUT_PIECE(set, set->pieces.count - 1)->cut_count++;
    return &FRAME_ITEM(frame_layout_cut, set->cuts, set->cuts.count - 1);
}

/* As the timber room has it. */
#define LONGEST 1200.0

frame_status frame_layout_check(const frame_layout_set *set, const char *field) {
    for (size_t i = 0; i < set->pieces.count; i++) {
        const frame_layout_piece *piece = FRAME_LAYOUT_PIECE(set, i);
        const double length = vec_length(vec_less(piece->end, piece->start));
        if (length > LONGEST)
            return frame_fail_number(FRAME_TOO_LARGE, field, length, "smaller: no piece may be longer than 1200 in");
    }
    return FRAME_OK;
}

static void take_plane(const frame_layout_cut *cut, frame_stick_plane *plane) {
    frame_stick_plane_init(plane);
    plane->role = cut->role;
    plane->axes = FRAME_STICK_AXES_WORLD;
    plane->point_x_in = cut->point.x;
    plane->point_y_in = cut->point.y;
    plane->point_z_in = cut->point.z;
    plane->waste_x = cut->waste.x;
    plane->waste_y = cut->waste.y;
    plane->waste_z = cut->waste.z;
    plane->label = cut->label;
    if (!cut->notch) return;
    plane->notch = cut->notch;
    plane->notch_kind = cut->notch_kind;
}

static void take_place(const frame_layout_piece *piece, frame_stick_in *in) {
    frame_stick_in_init(in);
    in->name = piece->name;
    in->section = piece->section;
    in->thickness_in = piece->thickness;
    in->depth_in = piece->depth;
    in->start_x_in = piece->start.x;
    in->start_y_in = piece->start.y;
    in->start_z_in = piece->start.z;
    in->end_x_in = piece->end.x;
    in->end_y_in = piece->end.y;
    in->end_z_in = piece->end.z;
    in->crown_x = piece->crown.x;
    in->crown_y = piece->crown.y;
    in->crown_z = piece->crown.z;
}

frame_status frame_layout_no_answer(void) {
    return frame_fail(FRAME_REQUIRED, "answer", "NULL", "an answer, and where to put what is asked",
                      "answer: NULL is not an answer, or there is nowhere to put what is asked");
}

frame_status frame_layout_no_item(size_t index, size_t count) {
    char valid[48];
    snprintf(valid, sizeof valid, "0..%zu (count %zu)", count ? count - 1 : 0, count);
    return frame_fail_number(FRAME_OUT_OF_RANGE, "index", (double)index, valid);
}

frame_status frame_layout_stick(const frame_layout_set *set, size_t index, frame_stick **stick) {
    frame_stick_in in;
    frame_stick_plane few[8], *planes = few;
    if (index >= set->pieces.count) return frame_layout_no_item(index, set->pieces.count);
    const frame_layout_piece *piece = FRAME_LAYOUT_PIECE(set, index);
    if (piece->cut_count > 8 && !(planes = frame_take_zeroed(piece->cut_count, sizeof *planes))) return FRAME_NO_MEMORY;
    take_place(piece, &in);
    for (size_t i = 0; i < piece->cut_count; i++)
        take_plane(&FRAME_ITEM(frame_layout_cut, set->cuts, piece->cut_first + i), &planes[i]);
    in.planes = planes;
    in.plane_count = piece->cut_count;
    const frame_status status = frame_stick_new(&in, stick);
    if (planes != few) frame_give(planes);
    return status;
}

const char *frame_layout_measures(frame_answer *answer, double thickness, double depth) {
    char first[FRAME_TAPE_TEXT], second[FRAME_TAPE_TEXT], both[2 * FRAME_TAPE_TEXT + 4];
    frame_inches_write(thickness, 16, first);
    frame_inches_write(depth, 16, second);
    snprintf(both, sizeof both, "%s x %s", first, second);
    return frame_answer_text(answer, both);
}

frame_status frame_layout_take_section(frame_answer *answer, const frame_layout_section_fields *fields,
                                       frame_layout_section *section) {
    double thickness, depth;
    section->known = FRAME_KNOWN_USER;
    if (section->size != FRAME_NOT_GIVEN_INT) {
        const frame_status status = frame_size_dressed(section->size, 0, &thickness, &depth);
        if (status) return status;
        if ((section->thickness != FRAME_NOT_GIVEN && fabs(section->thickness - thickness) > 1e-9) ||
            (section->depth != FRAME_NOT_GIVEN && fabs(section->depth - depth) > 1e-9))
            return frame_fail(FRAME_CONFLICT, fields->size, frame_size_name(section->size), "size or true measures",
                              "%s: %s is not of the true measures given; give %s, or %s and %s", fields->size,
                              frame_size_name(section->size), fields->size, fields->thickness, fields->depth);
        section->thickness = thickness;
        section->depth = depth;
        section->known = FRAME_KNOWN_READ; /* PS 20 */
    }
    if (section->thickness == FRAME_NOT_GIVEN)
        return frame_fail(FRAME_REQUIRED, fields->thickness, "", "the true thickness", "%s: not given, nor is %s",
                          fields->thickness, fields->size);
    if (section->depth == FRAME_NOT_GIVEN)
        return frame_fail(FRAME_REQUIRED, fields->depth, "", "the true depth", "%s: not given, nor is %s",
                          fields->depth, fields->size);
    section->name = section->size != FRAME_NOT_GIVEN_INT
                        ? frame_size_name(section->size)
                        : frame_layout_measures(answer, section->thickness, section->depth);
    return FRAME_OK;
}
