/* The box-out round a passage: what is cut, between which neighbours, and the pieces that carry what was cut. */
#ifndef FRAME_LIB_LAYOUT_BOX_OUT_H
#define FRAME_LIB_LAYOUT_BOX_OUT_H

#include "layout/passage.h"

/* u runs along the members that are cut, v across them in the frame's plane, w through its depth. */
typedef struct frame_box_out {
    const frame_layout_set *set; /* the frame */
    const frame_passage_in *in;
    const frame_passage_box *box;
    const frame_array *all; /* size_t: pieces that the passage would cut */
    frame_array cut;        /* size_t: those of one plane, and those between the neighbours */
    frame_array done;       /* size_t: all that are cut, once their pieces are made */
    frame_array *of;        /* int32_t, for each piece made: the piece it is cut from, -1 for a new one */
    frame_layout_set *made; /* the pieces */
    frame_array in_way;     /* size_t: pieces that carry nothing, where the new ones go */
    vec3 u, v, w;
    frame_layout_section member; /* of what is cut */
    frame_piece_kind kind;
    double at_w;                         /* of the members' axes */
    double low_u, high_u, low_v, high_v; /* what must stay clear */
    double left, right;                  /* the neighbours' faces */
    size_t left_piece, right_piece;
    int jacks, doubled, plies, flat; /* plies of a header; doubled: a member is added beside each neighbour */
    frame_layout_section header;
    uint64_t cautions;
} frame_box_out;

/* Makes the pieces, or none and a caution that says why. */
frame_status frame_box_out_make(frame_box_out *out);
void frame_box_out_give(frame_box_out *out);
/* The pieces, once everything is placed; FRAME_IMPOSSIBLE when there is no room for them. */
frame_status frame_box_out_add(frame_box_out *out);

static inline double frame_box_out_at(vec3 axis, vec3 point) {
    return vec_dot(axis, point);
}
/* From where to where a piece reaches along u, long point to long point. */
frame_status frame_box_out_reach(const frame_box_out *out, size_t index, double *low, double *high);
/* Whether a kind may be cut and carried by headers; and whether it can carry a header's end. */
int frame_box_out_cuttable(frame_piece_kind kind);

#endif
