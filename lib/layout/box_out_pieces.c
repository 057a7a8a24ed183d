/* The pieces of a box-out: headers and sill, jacks, members added beside the neighbours, and what is left of those that
 * are cut. */
#include <math.h>

#include "base/error.h"
#include "layout/box_out.h"
#include "layout_facts.h"

#define LEAST 0.75 /* inches: shorter ends are packing, not cripples */

static vec3 point(const frame_box_out *b, double u, double v, double w) {
    return vec_add(vec_times(b->u, u), vec_add(vec_times(b->v, v), vec_times(b->w, w)));
}

static int note_of(frame_box_out *b, int32_t piece) {
    return frame_array_push(b->of, &piece) != NULL;
}

static int number_of(const frame_box_out *b, frame_piece_kind kind) {
    int number = 1;
    for (size_t i = 0; i < b->made->pieces.count; i++) number += FRAME_LAYOUT_PIECE(b->made, i)->kind == kind;
    return number;
}

static frame_layout_piece *add(frame_box_out *b, frame_piece_kind kind, const char *name,
                               const frame_layout_section *section, vec3 start, vec3 end, vec3 crown) {
    frame_layout_piece *piece = frame_layout_add(b->made, kind, name, number_of(b, kind), section, start, end, crown);
    if (piece && !note_of(b, -1)) b->made->answer->failed = 1;
    return piece;
}

/* A piece across, from face to face of what carries it; u, w: its middle. Its depth lies along the frame's plane, or
 * through it. */
static void add_across(frame_box_out *b, frame_piece_kind kind, const char *name, const frame_layout_section *section,
                       double inset, double u, double w, int through) {
    add(b, kind, name, section, point(b, u, b->left + inset, w), point(b, u, b->right - inset, w),
        through ? b->w : b->u);
}

/* Where along u a notch lies: where its first two planes meet in the frame's plane of u and w; not given if they do
 * not. */
static double notch_at(const frame_box_out *b, const frame_layout_piece *from, int32_t notch) {
    const frame_layout_cut *first = NULL;
    for (size_t i = 0; i < from->cut_count; i++) {
        const frame_layout_cut *cut = &FRAME_ITEM(frame_layout_cut, b->set->cuts, from->cut_first + i);
        if (cut->notch != notch) continue;
        if (!first) {
            first = cut;
            continue;
        }
        const double a1 = vec_dot(first->waste, b->u), a2 = vec_dot(first->waste, b->w);
        const double c1 = vec_dot(cut->waste, b->u), c2 = vec_dot(cut->waste, b->w), det = a1 * c2 - a2 * c1;
        if (fabs(det) < 1e-9) return FRAME_NOT_GIVEN;
        return (vec_dot(first->waste, first->point) * c2 - a2 * vec_dot(cut->waste, cut->point)) / det;
    }
    return FRAME_NOT_GIVEN;
}

/* Whether a cut belongs to the part on one side: end cuts to the end they close, notches to where they lie; what runs
 * along the piece to both. */
static int belongs(const frame_box_out *b, const frame_layout_piece *from, const frame_layout_cut *cut, int upper) {
    if (cut->notch) {
        const double at = notch_at(b, from, cut->notch);
        return at == FRAME_NOT_GIVEN || (at > (b->low_u + b->high_u) / 2) == upper;
    }
    return cut->role > FRAME_STICK_MITRE_CUT || (vec_dot(cut->waste, b->u) > 0) == upper;
}

/* Of a piece's cuts, those of one of its parts. */
static void keep_cuts(frame_box_out *b, const frame_layout_piece *from, int upper) {
    for (size_t i = 0; i < from->cut_count; i++) {
        const frame_layout_cut *cut = &FRAME_ITEM(frame_layout_cut, b->set->cuts, from->cut_first + i);
        if (!belongs(b, from, cut, upper)) continue;
        frame_layout_cut *kept = frame_layout_add_cut(b->made, cut->role, cut->point, cut->waste, cut->label);
        if (!kept) return;
        kept->notch = cut->notch;
        kept->notch_kind = cut->notch_kind;
    }
}

/* Its lengths and the angles of its ends, by the kernel. */
static frame_status measure(frame_box_out *b, size_t index) {
    frame_stick *stick = NULL;
    frame_stick_lengths_out lengths;
    frame_layout_piece *piece = FRAME_LAYOUT_PIECE(b->made, index);
    frame_status status = frame_layout_stick(b->made, index, &stick);
    if (!status) status = frame_stick_lengths(stick, &lengths);
    frame_stick_free(stick);
    if (status) return status;
    piece->length = lengths.long_point_in;
    piece->short_point = lengths.short_point_in;
    return FRAME_OK;
}

static const char *name_of_rest(frame_piece_kind kind) {
    return kind == FRAME_PIECE_STUD     ? "cripple"
           : kind == FRAME_PIECE_JOIST  ? "tail joist"
           : kind == FRAME_PIECE_RAFTER ? "cut rafter"
                                        : "cut ceiling joist";
}

static frame_piece_kind kind_of_rest(frame_piece_kind kind) {
    return kind == FRAME_PIECE_STUD ? FRAME_PIECE_CRIPPLE : kind == FRAME_PIECE_JOIST ? FRAME_PIECE_TAIL : kind;
}

/* What is left of a piece on one side: from its own end to u. */
static frame_status add_rest(frame_box_out *b, size_t index, double u, int upper) {
    const frame_layout_piece *from = FRAME_LAYOUT_PIECE(b->set, index);
    const frame_piece_kind kind = kind_of_rest(from->kind);
    const double first = vec_dot(b->u, from->start), last = vec_dot(b->u, from->end);
    const vec3 outer = upper == (last > first) ? from->end : from->start;
    const vec3 inner = vec_add(outer, vec_times(b->u, u - vec_dot(b->u, outer)));
    const frame_layout_section section = {from->thickness, from->depth, from->size, from->section, 0};
    frame_layout_piece *piece = frame_layout_add(b->made, kind, name_of_rest(from->kind), number_of(b, kind), &section,
                                                 upper ? inner : outer, upper ? outer : inner, from->crown);
    if (!piece || !note_of(b, (int32_t)index)) return FRAME_NO_MEMORY;
    piece->start_deg = upper                                                 ? 0
                       : vec_dot(b->u, vec_less(from->end, from->start)) > 0 ? from->start_deg
                                                                             : from->end_deg;
    piece->end_deg = !upper ? 0 : vec_dot(b->u, vec_less(from->end, from->start)) > 0 ? from->end_deg : from->start_deg;
    keep_cuts(b, from, upper);
    return b->made->answer->failed ? FRAME_NO_MEMORY : measure(b, b->made->pieces.count - 1);
}

/* low, high: where what is left ends; least: the shortest that can be fastened. */
static frame_status add_rests(frame_box_out *b, double low, double high, double least, int may_vanish) {
    for (size_t i = 0; i < b->cut.count; i++) {
        double from, to;
        const size_t index = FRAME_ITEM(size_t, b->cut, i);
        frame_status status = frame_box_out_reach(b, index, &from, &to);
        if (status) return status;
        if (from > low + 1e-6 || to < high - 1e-6) return FRAME_IMPOSSIBLE;
        for (int upper = 0; upper < 2; upper++) {
            const double length = upper ? to - high : low - from;
            if (length < least && !may_vanish) return FRAME_IMPOSSIBLE;
            if (length >= least) status = add_rest(b, index, upper ? high : low, upper);
            if (status) return status;
        }
    }
    return FRAME_OK;
}

/* Jacks stand where the neighbour stands, and carry the header. */
static frame_status add_jacks(frame_box_out *b) {
    const double t = b->member.thickness;
    for (int side = 0; side < 2; side++) {
        double low, high;
        const frame_status status = frame_box_out_reach(b, side ? b->right_piece : b->left_piece, &low, &high);
        if (status) return status;
        for (int i = 0; i < b->jacks; i++) {
            const double v = side ? b->right - (i + 0.5) * t : b->left + (i + 0.5) * t;
            add(b, FRAME_PIECE_JACK, "jack stud", &b->member, point(b, low, v, b->at_w),
                point(b, b->high_u, v, b->at_w), b->w);
        }
    }
    return FRAME_OK;
}

static frame_status add_wall(frame_box_out *b) {
    const double t = b->member.thickness, face = b->at_w - b->member.depth / 2;
    const double ply = b->header.thickness, tall = b->flat ? b->plies * ply : b->header.depth;
    if (!b->flat && b->plies * ply > b->member.depth + 1e-9) return FRAME_IMPOSSIBLE;
    const frame_status status = add_jacks(b);
    if (status) return status;
    for (int i = 0; i < b->plies; i++)
        add_across(b, FRAME_PIECE_HEADER, "header", &b->header, 0, b->high_u + (b->flat ? (i + 0.5) * ply : tall / 2),
                   b->flat ? b->at_w : face + (i + 0.5) * ply, b->flat);
    add_across(b, FRAME_PIECE_SILL, "sill", &b->member, b->jacks * t, b->low_u - t / 2, b->at_w, 1);
    return add_rests(b, b->low_u - t, b->high_u + tall, LEAST, 1);
}

/* A further member against each neighbour, cut as it is. */
static void add_doubled(frame_box_out *b, const char *name) {
    for (int side = 0; side < 2; side++) {
        const size_t index = side ? b->right_piece : b->left_piece;
        const frame_layout_piece *from = FRAME_LAYOUT_PIECE(b->set, index);
        const double v = side ? b->right - b->member.thickness / 2 : b->left + b->member.thickness / 2;
        const vec3 move = vec_times(b->v, v - vec_dot(b->v, from->start));
        const frame_piece_kind kind = b->kind == FRAME_PIECE_JOIST ? FRAME_PIECE_TRIMMER : b->kind;
        frame_layout_piece *piece =
            add(b, kind, name, &b->member, vec_add(from->start, move), vec_add(from->end, move), from->crown);
        if (!piece) return;
        piece->length = from->length;
        piece->short_point = from->short_point;
        piece->start_deg = from->start_deg;
        piece->end_deg = from->end_deg;
        for (size_t i = 0; i < from->cut_count; i++) {
            const frame_layout_cut *cut = &FRAME_ITEM(frame_layout_cut, b->set->cuts, from->cut_first + i);
            frame_layout_cut *kept =
                frame_layout_add_cut(b->made, cut->role, vec_add(cut->point, move), cut->waste, cut->label);
            if (!kept) return;
            kept->notch = cut->notch;
            kept->notch_kind = cut->notch_kind;
        }
    }
}

static frame_status add_joists(frame_box_out *b) {
    const double t = b->header.thickness, gap = b->in->gap_in, inset = b->doubled * b->member.thickness + gap;
    const frame_piece_kind kind = b->kind == FRAME_PIECE_JOIST ? FRAME_PIECE_HEADER_JOIST : FRAME_PIECE_HEADER;
    const char *name = b->kind == FRAME_PIECE_JOIST ? "header joist" : "header";
    if (b->doubled)
        add_doubled(b, b->kind == FRAME_PIECE_JOIST    ? "trimmer joist"
                       : b->kind == FRAME_PIECE_RAFTER ? "trimmer rafter"
                                                       : "trimmer");
    for (int upper = 0; upper < 2; upper++)
        for (int i = 0; i < b->plies; i++)
            add_across(b, kind, name, &b->header, inset, upper ? b->high_u + (i + 0.5) * t : b->low_u - (i + 0.5) * t,
                       b->at_w, 1);
    const double reach = b->plies * t + gap;
    /* A rest shorter than it is deep has no room for its hanger and its bearing. */
    return add_rests(b, b->low_u - reach, b->high_u + reach, b->member.depth, 0);
}

frame_status frame_box_out_add(frame_box_out *b) {
    return b->kind == FRAME_PIECE_STUD ? add_wall(b) : add_joists(b);
}
