/* The box-out round a passage: studs, joists or rafters in its way are cut, and headers from neighbour to neighbour
 * carry what is left of them. Where that cannot be, a caution says so and no pieces are listed. */
#include "layout/box_out.h"

#include <math.h>

#include "base/error.h"
#include "layout/wall.h"
#include "layout_facts.h"

#define SAME 1e-6 /* inches */

int frame_box_out_cuttable(frame_piece_kind kind) {
    return kind == FRAME_PIECE_STUD || kind == FRAME_PIECE_JOIST || kind == FRAME_PIECE_RAFTER ||
           kind == FRAME_PIECE_CEILING_JOIST;
}

static int can_carry(frame_piece_kind kind) {
    return frame_box_out_cuttable(kind) || kind == FRAME_PIECE_KING || kind == FRAME_PIECE_END_JOIST ||
           kind == FRAME_PIECE_TRIMMER || kind == FRAME_PIECE_DOUBLE;
}

frame_status frame_box_out_reach(const frame_box_out *b, size_t index, double *low, double *high) {
    frame_stick *stick = NULL;
    frame_stick_lengths_out lengths;
    frame_status status = frame_layout_stick(b->set, index, &stick);
    if (!status) status = frame_stick_lengths(stick, &lengths);
    frame_stick_free(stick);
    if (status) return status;
    const frame_layout_piece *piece = FRAME_LAYOUT_PIECE(b->set, index);
    const double start = vec_dot(b->u, piece->start);
    const double way = vec_dot(b->u, vec_less(piece->end, piece->start)) > 0 ? 1 : -1;
    const double first = start + way * lengths.start_long_point_x_in, last = start + way * lengths.end_long_point_x_in;
    *low = fmin(first, last);
    *high = fmax(first, last);
    return FRAME_OK;
}

/* The axes are those of the first piece that is cut, u going up or away from the start. */
static void find_axes(frame_box_out *b) {
    const frame_layout_piece *first = FRAME_LAYOUT_PIECE(b->set, FRAME_ITEM(size_t, b->cut, 0));
    const vec3 axis = vec_less(first->end, first->start);
    b->u = vec_times(axis, 1 / vec_length(axis));
    if (b->u.z < -SAME || (fabs(b->u.z) < SAME && b->u.x + b->u.y < 0)) b->u = vec_times(b->u, -1);
    const vec3 across = vec_cross(first->crown, b->u);
    b->v = vec_times(across, 1 / vec_length(across));
    b->w = vec_cross(b->u, b->v);
    b->at_w = vec_dot(b->w, first->start);
    b->kind = first->kind;
    b->member =
        (frame_layout_section){first->thickness, first->depth, first->size, first->section, FRAME_KNOWN_COMPUTED};
}

/* Whether a piece lies in the plane of those that are cut, side by side with them. */
static int beside(const frame_box_out *b, const frame_layout_piece *piece) {
    const vec3 axis = vec_less(piece->end, piece->start);
    return fabs(fabs(vec_dot(axis, b->u)) - vec_length(axis)) < SAME &&
           fabs(vec_dot(b->w, piece->start) - b->at_w) < 1e-3 && fabs(piece->depth - b->member.depth) < 1e-3 &&
           fabs(vec_dot(piece->crown, b->v)) < 1e-3 * vec_length(piece->crown);
}

static int all_cuttable(const frame_box_out *b) {
    for (size_t i = 0; i < b->cut.count; i++) {
        const frame_layout_piece *piece = FRAME_LAYOUT_PIECE(b->set, FRAME_ITEM(size_t, b->cut, i));
        if (!frame_box_out_cuttable(piece->kind) || !beside(b, piece)) return 0;
    }
    return 1;
}

/* What the passage takes of the frame's plane, from face to face; 0 when it runs along the plane. */
static int find_extents(frame_box_out *b) {
    const vec3 ways[3] = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
    const vec3 way = ways[b->box->way], first = ways[(b->box->way + 1) % 3], second = ways[(b->box->way + 2) % 3];
    const double through = vec_dot(way, b->w);
    if (fabs(through) < 0.1) return 0;
    b->low_u = b->low_v = INFINITY;
    b->high_u = b->high_v = -INFINITY;
    for (int corner = 0; corner < 8; corner++) {
        const double *at = b->box->at, *half = b->box->half;
        const int one = (b->box->way + 1) % 3, two = (b->box->way + 2) % 3;
        const vec3 p = vec_add(vec_times(first, at[one] + (corner & 1 ? half[one] : -half[one])),
                               vec_times(second, at[two] + (corner & 2 ? half[two] : -half[two])));
        const double face = b->at_w + (corner & 4 ? b->member.depth / 2 : -b->member.depth / 2);
        const vec3 on = vec_add(p, vec_times(way, (face - vec_dot(b->w, p)) / through));
        b->low_u = fmin(b->low_u, vec_dot(b->u, on));
        b->high_u = fmax(b->high_u, vec_dot(b->u, on));
        b->low_v = fmin(b->low_v, vec_dot(b->v, on));
        b->high_v = fmax(b->high_v, vec_dot(b->v, on));
    }
    return 1;
}

/* Room that jacks, or the members added beside the neighbours, take on each side. */
static double room(const frame_box_out *b) {
    return (b->jacks + b->doubled) * b->member.thickness;
}

static int reaches_past(const frame_box_out *b, const frame_layout_piece *piece) {
    const double from = vec_dot(b->u, piece->start), to = vec_dot(b->u, piece->end);
    return fmin(from, to) < b->low_u && fmax(from, to) > b->high_u;
}

/* The nearest member on either side that can carry, with room for what comes beside it. */
static int find_neighbours(frame_box_out *b) {
    b->left = -INFINITY;
    b->right = INFINITY;
    for (size_t i = 0; i < b->set->pieces.count; i++) {
        const frame_layout_piece *piece = FRAME_LAYOUT_PIECE(b->set, i);
        if (!can_carry(piece->kind) || !beside(b, piece) || !reaches_past(b, piece)) continue;
        const double middle = vec_dot(b->v, piece->start), half = piece->thickness / 2;
        if (middle + half + room(b) <= b->low_v + SAME && middle + half > b->left) {
            b->left = middle + half;
            b->left_piece = i;
        }
        if (middle - half - room(b) >= b->high_v - SAME && middle - half < b->right) {
            b->right = middle - half;
            b->right_piece = i;
        }
    }
    return b->left > -INFINITY && b->right < INFINITY;
}

static int listed(const frame_array *list, size_t index) {
    for (size_t i = 0; i < list->count; i++)
        if (FRAME_ITEM(size_t, *list, i) == index) return 1;
    return 0;
}

/* Members between the neighbours are cut too, though the passage itself misses them. */
static frame_status cut_between(frame_box_out *b) {
    for (size_t i = 0; i < b->set->pieces.count; i++) {
        const frame_layout_piece *piece = FRAME_LAYOUT_PIECE(b->set, i);
        const double middle = vec_dot(b->v, piece->start);
        if (middle < b->left || middle > b->right || !beside(b, piece) || !can_carry(piece->kind)) continue;
        if (!listed(&b->cut, i) && !frame_array_push(&b->cut, &i)) return FRAME_NO_MEMORY;
    }
    return FRAME_OK;
}

/* A wall's header: as asked for, by the code table if the wall was laid out with it, or a stud laid flat. */
static frame_status size_header(frame_box_out *b) {
    static const frame_layout_section none = {FRAME_NOT_GIVEN, FRAME_NOT_GIVEN, FRAME_NOT_GIVEN_INT, NULL, 0};
    frame_wall_in in;
    frame_wall_opening opening;
    frame_wall_hole hole;
    frame_wall_plan plan;
    memset(&plan, 0, sizeof plan);
    memset(&hole, 0, sizeof hole);
    if (b->set->wall)
        in = *b->set->wall;
    else
        frame_wall_in_init(&in);
    in.bearing = b->in->bearing;
    if (!in.bearing) in.supports = FRAME_NOT_GIVEN_INT;
    plan.in = &in;
    plan.stud = b->member;
    frame_wall_opening_init(&opening);
    opening.header_size = b->in->header_size;
    opening.header_plies = b->in->header_plies;
    hole.from = b->left + room(b);
    hole.to = b->right - room(b);
    hole.header = none;
    const frame_status status = frame_wall_size_header(&plan, &opening, &hole, b->made->answer);
    if (status) return status;
    b->header = hole.header;
    b->plies = hole.plies;
    b->flat = hole.turned == FRAME_TURNED_FLAT;
    b->jacks = in.bearing ? (hole.jacks > b->jacks ? hole.jacks : b->jacks) : 0;
    return FRAME_OK;
}

/* IRC R502.10, from memory: headers of more than 4 ft, and the members that carry them, are doubled. */
static void size_joists(frame_box_out *b) {
    const int wide = b->right - b->left > 48 + SAME;
    b->header = b->member;
    b->header.thickness = b->member.thickness;
    b->plies = b->in->header_plies != FRAME_NOT_GIVEN_INT ? b->in->header_plies : wide ? 2 : 1;
    b->doubled = wide;
    if (wide) b->cautions |= FRAME_BIT(FRAME_PASSAGE_CAUTION_WIDE);
}

/* Each widening may call for more beside the neighbours, and that for farther neighbours. */
static frame_status place(frame_box_out *b) {
    for (int tries = 0; tries < 6; tries++) {
        const int before = b->jacks + b->doubled;
        if (!find_neighbours(b)) return FRAME_IMPOSSIBLE;
        frame_status status = FRAME_OK;
        if (b->kind == FRAME_PIECE_STUD)
            status = size_header(b);
        else
            size_joists(b);
        if (status) return status;
        if (b->jacks + b->doubled == before) return cut_between(b);
    }
    return FRAME_IMPOSSIBLE;
}

/* New pieces where a member of the frame already lies: those that carry nothing give way, others do not. */
static frame_status look_round(frame_box_out *b) {
    for (size_t i = 0; i < b->set->pieces.count; i++) {
        const frame_layout_piece *piece = FRAME_LAYOUT_PIECE(b->set, i);
        if (listed(&b->cut, i) || listed(&b->done, i)) continue;
        for (size_t k = 0; k < b->made->pieces.count; k++) {
            double shared = 0;
            const frame_status status = frame_layout_shared(b->set, i, b->made, k, &shared);
            if (status) return status;
            if (shared < SAME) continue;
            if (frame_passage_carries(piece->kind)) return FRAME_IMPOSSIBLE;
            if (!frame_array_push(&b->in_way, &i)) return FRAME_NO_MEMORY;
            break;
        }
    }
    return FRAME_OK;
}

static frame_status make(frame_box_out *b) {
    if (!all_cuttable(b) || !find_extents(b)) return FRAME_IMPOSSIBLE;
    b->jacks = b->kind == FRAME_PIECE_STUD && b->in->bearing;
    b->doubled = 0;
    frame_status status = place(b);
    if (status) return status;
    if (!all_cuttable(b)) return FRAME_IMPOSSIBLE;
    status = frame_box_out_add(b);
    if (!status && b->made->answer->failed) status = FRAME_NO_MEMORY;
    return status ? status : look_round(b);
}

/* A passage may cut a floor's joists, and above them a roof's rafters: each plane has its own box-out. */
static frame_status make_group(frame_box_out *b, size_t first) {
    frame_status status = FRAME_OK;
    b->cut.count = 0;
    if (!frame_array_push(&b->cut, &first)) return FRAME_NO_MEMORY;
    find_axes(b);
    for (size_t i = 0; i < b->all->count; i++) {
        const size_t index = FRAME_ITEM(size_t, *b->all, i);
        if (index == first || !beside(b, FRAME_LAYOUT_PIECE(b->set, index))) continue;
        if (!frame_array_push(&b->cut, &index)) return FRAME_NO_MEMORY;
    }
    status = make(b);
    for (size_t i = 0; !status && i < b->cut.count; i++) {
        const size_t index = FRAME_ITEM(size_t, b->cut, i);
        if (!frame_array_push(&b->done, &index)) status = FRAME_NO_MEMORY;
    }
    return status;
}

frame_status frame_box_out_make(frame_box_out *b) {
    frame_status status = FRAME_OK;
    b->cut.item_size = b->done.item_size = b->in_way.item_size = sizeof(size_t);
    for (size_t i = 0; !status && i < b->all->count; i++) {
        const size_t index = FRAME_ITEM(size_t, *b->all, i);
        if (!listed(&b->done, index)) status = make_group(b, index);
    }
    if (!status || status == FRAME_NO_MEMORY) return status;
    b->cautions =
        FRAME_BIT(status == FRAME_IMPOSSIBLE ? FRAME_PASSAGE_CAUTION_NO_BOX : FRAME_PASSAGE_CAUTION_NO_HEADER);
    b->made->pieces.count = b->made->cuts.count = b->of->count = b->in_way.count = b->done.count = 0;
    frame_error_clear();
    return FRAME_OK;
}

void frame_box_out_give(frame_box_out *b) {
    frame_array_give(&b->cut);
    frame_array_give(&b->done);
    frame_array_give(&b->in_way);
}
