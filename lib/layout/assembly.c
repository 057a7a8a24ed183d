/* A frame put together of walls, floors, decks, stairs and sticks, each turned and moved to where it stands. */
#include "layout/assembly.h"

#include <math.h>

#include "base/error.h"
#include "layout/passage.h"
#include "layout_facts.h"
#include "timber/stick.h"

#define DEG (3.14159265358979323846 / 180)

typedef struct part {
    const char *name;
    int32_t piece_first, piece_count;
} part;

struct frame_assembly {
    frame_answer texts;
    frame_layout_set set;
    frame_array parts;
};

typedef struct placing {
    vec3 move;
    double cosine, sine;
} placing;

static vec3 turn(const placing *at, vec3 p) {
    return (vec3){at->cosine * p.x - at->sine * p.y, at->sine * p.x + at->cosine * p.y, p.z};
}

static vec3 put(const placing *at, vec3 p) {
    return vec_add(turn(at, p), at->move);
}

/* Quarter turns are exact, so that faces that touch go on touching. */
static frame_status take_placing(double x, double y, double z, double turn_deg, placing *at) {
    const char *const names[4] = {"x_in", "y_in", "z_in", "turn_deg"};
    const double given[4] = {x, y, z, turn_deg};
    for (int i = 0; i < 4; i++)
        if (!(fabs(given[i]) <= (i < 3 ? 12000 : 720)))
            return frame_fail_number(FRAME_OUT_OF_RANGE, names[i], given[i], i < 3 ? "-12000..12000" : "-720..720");
    const double quarters = turn_deg / 90;
    at->move = (vec3){x, y, z};
    at->cosine = cos(turn_deg * DEG);
    at->sine = sin(turn_deg * DEG);
    if (quarters != floor(quarters)) return FRAME_OK;
    const int quarter = ((int)quarters % 4 + 4) % 4;
    at->cosine = quarter == 0 ? 1 : quarter == 2 ? -1 : 0;
    at->sine = quarter == 1 ? 1 : quarter == 3 ? -1 : 0;
    return FRAME_OK;
}

frame_status frame_assembly_new(frame_assembly **made) {
    if (!made) return frame_layout_no_answer();
    frame_assembly *assembly = frame_take_zeroed(1, sizeof *assembly);
    if (!assembly) return FRAME_NO_MEMORY;
    assembly->set.answer = &assembly->texts;
    assembly->set.name = "assembly";
    assembly->set.pieces.item_size = sizeof(frame_layout_piece);
    assembly->set.cuts.item_size = sizeof(frame_layout_cut);
    assembly->parts.item_size = sizeof(part);
    *made = assembly;
    return FRAME_OK;
}

void frame_assembly_free(frame_assembly *assembly) {
    if (!assembly) return;
    frame_array_give(&assembly->set.pieces);
    frame_array_give(&assembly->set.cuts);
    frame_array_give(&assembly->parts);
    frame_arena_give(&assembly->texts.arena);
    frame_give(assembly);
}

static void add_piece(frame_assembly *assembly, const placing *at, const frame_layout_set *set, size_t index) {
    frame_layout_piece piece = *FRAME_LAYOUT_PIECE(set, index);
    const size_t first = piece.cut_first;
    piece.name = frame_answer_text(&assembly->texts, piece.name);
    piece.section = piece.section ? frame_answer_text(&assembly->texts, piece.section) : NULL;
    piece.start = put(at, piece.start);
    piece.end = put(at, piece.end);
    piece.crown = turn(at, piece.crown);
    piece.cut_first = assembly->set.cuts.count;
    piece.gang = (int32_t)assembly->parts.count + 1; /* here: the number of its part */
    for (size_t i = 0; i < piece.cut_count; i++) {
        frame_layout_cut cut = FRAME_ITEM(frame_layout_cut, set->cuts, first + i);
        cut.point = put(at, cut.point);
        cut.waste = turn(at, cut.waste);
        if (cut.label) cut.label = frame_answer_text(&assembly->texts, cut.label);
        if (!frame_array_push(&assembly->set.cuts, &cut)) assembly->texts.failed = 1;
    }
    if (!frame_array_push(&assembly->set.pieces, &piece)) assembly->texts.failed = 1;
}

/* All or nothing: what was added before memory ran out is taken off again. */
static frame_status add_set(frame_assembly *assembly, const frame_layout_set *set, const placing *at) {
    const size_t pieces = assembly->set.pieces.count, cuts = assembly->set.cuts.count;
    const part added = {frame_answer_text(&assembly->texts, set->name), (int32_t)pieces, (int32_t)set->pieces.count};
    for (size_t i = 0; i < set->pieces.count && !assembly->texts.failed; i++) add_piece(assembly, at, set, i);
    if (!assembly->texts.failed && frame_array_push(&assembly->parts, &added)) return FRAME_OK;
    assembly->set.pieces.count = pieces;
    assembly->set.cuts.count = cuts;
    assembly->texts.failed = 0;
    return FRAME_NO_MEMORY;
}

static frame_status add_answer(frame_assembly *assembly, const void *answer, double x, double y, double z,
                               double turn_deg) {
    placing at;
    if (!assembly || !answer) return frame_layout_no_answer();
    const frame_status status = take_placing(x, y, z, turn_deg, &at);
    return status ? status : add_set(assembly, frame_layout_set_of(answer), &at);
}

frame_status frame_assembly_add_wall(frame_assembly *assembly, const frame_wall *wall, double x_in, double y_in,
                                     double z_in, double turn_deg) {
    return add_answer(assembly, wall, x_in, y_in, z_in, turn_deg);
}

frame_status frame_assembly_add_floor(frame_assembly *assembly, const frame_floor *floor, double x_in, double y_in,
                                      double z_in, double turn_deg) {
    return add_answer(assembly, floor, x_in, y_in, z_in, turn_deg);
}

frame_status frame_assembly_add_deck(frame_assembly *assembly, const frame_deck *deck, double x_in, double y_in,
                                     double z_in, double turn_deg) {
    return add_answer(assembly, deck, x_in, y_in, z_in, turn_deg);
}

frame_status frame_assembly_add_stairs(frame_assembly *assembly, const frame_stairs *stairs, double x_in, double y_in,
                                       double z_in, double turn_deg) {
    return add_answer(assembly, stairs, x_in, y_in, z_in, turn_deg);
}

/* The planes of a stick, in the world; its first two records are the square ends it has of itself. */
static int copy_cuts(const frame_stick *stick, frame_array *cuts) {
    for (size_t i = 2; i < stick->records.count; i++) {
        const frame_stick_record *record = FRAME_RECORD(stick, i);
        const vec3 waste = frame_to_world_direction(&stick->placement, record->plane.normal);
        const vec3 point = frame_to_world(&stick->placement, vec_times(record->plane.normal, record->plane.at));
        const frame_layout_cut cut = {point, waste, record->label, record->role, record->notch, record->kind};
        if (!frame_array_push(cuts, &cut)) return 0;
    }
    return 1;
}

static frame_status copy_stick(const frame_stick *stick, frame_piece_kind kind, frame_layout_set *set) {
    const frame_placement *at = &stick->placement;
    frame_stick_lengths_out lengths;
    frame_layout_piece piece;
    const frame_status status = frame_stick_lengths(stick, &lengths);
    if (status) return status;
    memset(&piece, 0, sizeof piece);
    piece.name = stick->name;
    piece.section = stick->section;
    piece.kind = kind;
    piece.size = FRAME_NOT_GIVEN_INT;
    if (!stick->section || frame_size_find(stick->section, &piece.size)) piece.size = FRAME_NOT_GIVEN_INT;
    piece.thickness = stick->y[1] - stick->y[0];
    piece.depth = stick->z[1] - stick->z[0];
    piece.length = lengths.long_point_in;
    piece.short_point = lengths.short_point_in;
    piece.start_deg = piece.end_deg = FRAME_NOT_GIVEN;
    piece.start = vec_add(at->origin, vec_add(vec_times(at->y, (stick->y[0] + stick->y[1]) / 2),
                                              vec_times(at->z, (stick->z[0] + stick->z[1]) / 2)));
    piece.end = vec_add(piece.start, vec_times(at->x, stick->length));
    piece.crown = at->z;
    if (!copy_cuts(stick, &set->cuts)) return FRAME_NO_MEMORY;
    piece.cut_count = set->cuts.count;
    return frame_array_push(&set->pieces, &piece) ? FRAME_OK : FRAME_NO_MEMORY;
}

frame_status frame_assembly_add_stick(frame_assembly *assembly, const frame_stick *stick, frame_piece_kind kind,
                                      double x_in, double y_in, double z_in, double turn_deg) {
    placing at;
    frame_layout_set one = {.name = stick ? stick->name : ""};
    if (!assembly || !stick) return frame_layout_no_answer();
    if (kind < 1 || (size_t)kind > frame_piece_kind_words.table_count)
        return frame_fail_number(FRAME_OUT_OF_RANGE, "kind", kind, "a word for a kind of piece");
    frame_status status = take_placing(x_in, y_in, z_in, turn_deg, &at);
    if (status) return status;
    one.pieces.item_size = sizeof(frame_layout_piece);
    one.cuts.item_size = sizeof(frame_layout_cut);
    status = copy_stick(stick, kind, &one);
    if (!status) status = add_set(assembly, &one, &at);
    frame_array_give(&one.pieces);
    frame_array_give(&one.cuts);
    return status;
}

const frame_layout_set *frame_assembly_set(const frame_assembly *assembly) {
    return &assembly->set;
}

size_t frame_assembly_piece_count(const frame_assembly *assembly) {
    return assembly ? assembly->set.pieces.count : 0;
}

frame_status frame_assembly_piece_at_sized(const frame_assembly *assembly, size_t index, frame_assembly_piece *item,
                                           size_t item_size) {
    frame_assembly_piece told;
    if (!assembly || !item) return frame_layout_no_answer();
    if (index >= assembly->set.pieces.count) return frame_layout_no_item(index, assembly->set.pieces.count);
    const frame_layout_piece *piece = FRAME_LAYOUT_PIECE(&assembly->set, index);
    frame_struct_blank(&frame_assembly_piece_facts, &told);
    FRAME_LAYOUT_TELL(&told, piece);
    told.start_deg = piece->start_deg;
    told.end_deg = piece->end_deg;
    told.crown_x = piece->crown.x;
    told.crown_y = piece->crown.y;
    told.crown_z = piece->crown.z;
    told.part = piece->gang;
    told.of = FRAME_ITEM(part, assembly->parts, piece->gang - 1).name;
    frame_struct_give(&frame_assembly_piece_facts, &told, item, item_size);
    return FRAME_OK;
}

frame_status frame_assembly_stick(const frame_assembly *assembly, size_t index, frame_stick **stick) {
    if (!assembly || !stick) return frame_layout_no_answer();
    return frame_layout_stick(&assembly->set, index, stick);
}

frame_status frame_assembly_fit_sized(const frame_assembly *assembly, frame_fit_out *out, size_t out_size) {
    if (!assembly || !out || out_size < 2 * sizeof(uint32_t)) return frame_layout_no_answer();
    return frame_layout_give_fit(&assembly->set, out, out_size);
}

frame_status frame_assembly_passage(const frame_assembly *assembly, const frame_passage_in *in,
                                    frame_passage **passage) {
    return frame_passage_make(assembly ? &assembly->set : NULL, in, passage);
}
