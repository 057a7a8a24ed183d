/* The gangs of an assembly for the saw: pieces of one shape, however they are turned in the building, and which gang is
 * the mirror image of which. A shape is the set of corners of a piece's side faces, by the kernel. */
#include <math.h>

#include "base/error.h"
#include "layout/assembly.h"
#include "layout_facts.h"

#define ALIKE (1.0 / 128) /* inches: half of what a sixteenth's mark tells apart */

typedef struct piece_shape {
    vec3 *corners; /* about the middle of its length */
    size_t count;
    double length, short_point;
} piece_shape;

typedef struct saw_gang {
    size_t first;
    int32_t count, opposite;
    piece_shape shape;
} saw_gang;

struct frame_saw_list {
    frame_answer texts;
    frame_array gangs; /* frame_saw_list_gang */
    frame_array calls; /* frame_saw_list_call */
};

/* Pieces that keep their crown up may not be turned over. */
static int keeps_crown(frame_piece_kind kind) {
    switch (kind) {
        case FRAME_PIECE_BOTTOM_PLATE:
        case FRAME_PIECE_TOP_PLATE:
        case FRAME_PIECE_CAP_PLATE:
        case FRAME_PIECE_STUD:
        case FRAME_PIECE_KING:
        case FRAME_PIECE_JACK:
        case FRAME_PIECE_CRIPPLE:
        case FRAME_PIECE_SILL:
        case FRAME_PIECE_FILLER:
        case FRAME_PIECE_HEAD:
        case FRAME_PIECE_BLOCK:
        case FRAME_PIECE_BACKING:
        case FRAME_PIECE_POST:
        case FRAME_PIECE_BOARD:
        case FRAME_PIECE_BORDER:
        case FRAME_PIECE_GUARD_POST:
        case FRAME_PIECE_RAIL:
        case FRAME_PIECE_BRIDGING:
        case FRAME_PIECE_BRACE:
            return 0;
        default:
            return 1;
    }
}

static int same(vec3 a, vec3 b) {
    return fabs(a.x - b.x) <= ALIKE && fabs(a.y - b.y) <= ALIKE && fabs(a.z - b.z) <= ALIKE;
}

static vec3 corner_in_space(const frame_layout_piece *piece, const frame_stick_corner *corner, double length) {
    const double x = corner->along_in - length / 2, y = piece->thickness / 2, z = piece->depth / 2;
    switch (corner->face) {
        case FRAME_STICK_LEFT:
            return (vec3){x, y, corner->across_in - z};
        case FRAME_STICK_RIGHT:
            return (vec3){x, -y, corner->across_in - z};
        case FRAME_STICK_TOP:
            return (vec3){x, corner->across_in - y, z};
        default:
            return (vec3){x, corner->across_in - y, -z};
    }
}

/* Each corner lies on two faces, and is kept once. */
static frame_status take_corners(const frame_layout_piece *piece, const frame_stick *stick, piece_shape *shape) {
    const size_t count = frame_stick_corner_count(stick);
    shape->corners = frame_take(count * sizeof *shape->corners);
    if (!shape->corners) return FRAME_NO_MEMORY;
    for (size_t i = 0; i < count; i++) {
        frame_stick_corner corner;
        const frame_status status = frame_stick_corner_at(stick, i, &corner);
        if (status) return status;
        const vec3 here = corner_in_space(piece, &corner, shape->length);
        int kept = 0;
        for (size_t k = 0; k < shape->count; k++) kept |= same(shape->corners[k], here);
        if (!kept) shape->corners[shape->count++] = here;
    }
    return FRAME_OK;
}

static frame_status take_shape(const frame_layout_set *set, size_t index, piece_shape *shape) {
    frame_stick *stick = NULL;
    frame_stick_lengths_out lengths;
    frame_status status = frame_layout_stick(set, index, &stick);
    if (!status) status = frame_stick_lengths(stick, &lengths);
    if (!status) {
        shape->length = lengths.long_point_in;
        shape->short_point = lengths.short_point_in;
        status = take_corners(FRAME_LAYOUT_PIECE(set, index), stick, shape);
    }
    frame_stick_free(stick);
    return status;
}

static int matches(const piece_shape *a, const piece_shape *b, vec3 turn) {
    if (a->count != b->count || fabs(a->length - b->length) > ALIKE) return 0;
    for (size_t i = 0; i < a->count; i++) {
        const vec3 here = {a->corners[i].x * turn.x, a->corners[i].y * turn.y, a->corners[i].z * turn.z};
        size_t k = 0;
        while (k < b->count && !same(here, b->corners[k])) k++;
        if (k == b->count) return 0;
    }
    return 1;
}

/* However it may be turned: as it is, end for end, and, if it has no crown to keep up, over about either axis. */
static int alike(const piece_shape *a, const piece_shape *b, int crowned, int mirrored) {
    static const vec3 turns[4] = {{1, 1, 1}, {-1, -1, 1}, {1, -1, -1}, {-1, 1, -1}};
    for (int i = 0; i < (crowned ? 2 : 4); i++) {
        const vec3 turn = {turns[i].x, mirrored ? -turns[i].y : turns[i].y, turns[i].z};
        if (matches(a, b, turn)) return 1;
    }
    return 0;
}

static int same_stock(const frame_layout_piece *a, const frame_layout_piece *b) {
    return a->kind == b->kind && fabs(a->thickness - b->thickness) < 1e-6 && fabs(a->depth - b->depth) < 1e-6;
}

static frame_status find_gang(const frame_layout_set *set, frame_array *gangs, size_t index, size_t *found) {
    const frame_layout_piece *piece = FRAME_LAYOUT_PIECE(set, index);
    saw_gang here = {.first = index, .count = 1};
    const frame_status status = take_shape(set, index, &here.shape);
    if (status) {
        frame_give(here.shape.corners);
        return status;
    }
    for (size_t g = 0; g < gangs->count; g++) {
        saw_gang *other = &FRAME_ITEM(saw_gang, *gangs, g);
        if (!same_stock(piece, FRAME_LAYOUT_PIECE(set, other->first))) continue;
        if (alike(&here.shape, &other->shape, keeps_crown(piece->kind), 0)) {
            other->count++;
            *found = g;
            frame_give(here.shape.corners);
            return FRAME_OK;
        }
        if (!other->opposite && alike(&here.shape, &other->shape, keeps_crown(piece->kind), 1))
            here.opposite = (int32_t)g + 1;
    }
    *found = gangs->count;
    if (!frame_array_push(gangs, &here)) {
        frame_give(here.shape.corners);
        return FRAME_NO_MEMORY;
    }
    if (here.opposite) FRAME_ITEM(saw_gang, *gangs, here.opposite - 1).opposite = (int32_t)*found + 1;
    return FRAME_OK;
}

static frame_status call_all(const frame_layout_set *set, frame_array *gangs, frame_saw_list *list) {
    for (size_t i = 0; i < set->pieces.count; i++) {
        frame_saw_list_call call;
        size_t found = 0;
        const frame_status status = find_gang(set, gangs, i, &found);
        if (status) return status;
        frame_struct_blank(&frame_saw_list_call_facts, &call);
        call.piece = (int32_t)i;
        call.gang = (int32_t)found + 1;
        call.number = FRAME_ITEM(saw_gang, *gangs, found).count;
        call.spare = 0;
        if (!frame_array_push(&list->calls, &call)) return FRAME_NO_MEMORY;
    }
    return FRAME_OK;
}

static frame_status tell_gangs(const frame_layout_set *set, const frame_array *gangs, frame_saw_list *list) {
    for (size_t g = 0; g < gangs->count; g++) {
        const saw_gang *from = &FRAME_ITEM(saw_gang, *gangs, g);
        const frame_layout_piece *first = FRAME_LAYOUT_PIECE(set, from->first);
        frame_saw_list_gang told;
        frame_struct_blank(&frame_saw_list_gang_facts, &told);
        told.kind = first->kind;
        told.size = first->size;
        told.thickness_in = first->thickness;
        told.depth_in = first->depth;
        told.length_in = from->shape.length;
        told.short_point_in = from->shape.short_point;
        told.count = from->count;
        told.first = (int32_t)from->first;
        told.opposite = from->opposite;
        told.spare = 0;
        told.name = frame_layout_kind_name(first->kind);
        told.section = first->section ? frame_answer_text(&list->texts, first->section) : NULL;
        if (list->texts.failed || !frame_array_push(&list->gangs, &told)) return FRAME_NO_MEMORY;
    }
    return FRAME_OK;
}

frame_status frame_assembly_saw_list(const frame_assembly *assembly, frame_saw_list **made) {
    frame_array gangs = {.item_size = sizeof(saw_gang)};
    if (!assembly || !made) return frame_layout_no_answer();
    frame_saw_list *list = frame_take_zeroed(1, sizeof *list);
    if (!list) return FRAME_NO_MEMORY;
    list->gangs.item_size = sizeof(frame_saw_list_gang);
    list->calls.item_size = sizeof(frame_saw_list_call);
    const frame_layout_set *set = frame_assembly_set(assembly);
    frame_status status = call_all(set, &gangs, list);
    if (!status) status = tell_gangs(set, &gangs, list);
    for (size_t g = 0; g < gangs.count; g++) frame_give(FRAME_ITEM(saw_gang, gangs, g).shape.corners);
    frame_array_give(&gangs);
    if (status)
        frame_saw_list_free(list);
    else
        *made = list;
    return status;
}

void frame_saw_list_free(frame_saw_list *list) {
    if (!list) return;
    frame_array_give(&list->gangs);
    frame_array_give(&list->calls);
    frame_arena_give(&list->texts.arena);
    frame_give(list);
}

size_t frame_saw_list_gang_count(const frame_saw_list *list) {
    return list ? list->gangs.count : 0;
}

frame_status frame_saw_list_gang_at_sized(const frame_saw_list *list, size_t index, frame_saw_list_gang *item,
                                          size_t item_size) {
    if (!list || !item) return frame_layout_no_answer();
    if (index >= list->gangs.count) return frame_layout_no_item(index, list->gangs.count);
    frame_struct_give(&frame_saw_list_gang_facts, &FRAME_ITEM(frame_saw_list_gang, list->gangs, index), item,
                      item_size);
    return FRAME_OK;
}

size_t frame_saw_list_call_count(const frame_saw_list *list) {
    return list ? list->calls.count : 0;
}

frame_status frame_saw_list_call_at_sized(const frame_saw_list *list, size_t index, frame_saw_list_call *item,
                                          size_t item_size) {
    if (!list || !item) return frame_layout_no_answer();
    if (index >= list->calls.count) return frame_layout_no_item(index, list->calls.count);
    frame_struct_give(&frame_saw_list_call_facts, &FRAME_ITEM(frame_saw_list_call, list->calls, index), item,
                      item_size);
    return FRAME_OK;
}
