/* Section properties of sawn lumber: plies side by side, or flat on one another and then not one block. */
#include "material/lumber.h"
#include "material_facts.h"
#include "working/calculation.h"

static int given(double value) {
    return value != FRAME_NOT_GIVEN;
}

/* The faces of one ply, and the board feet in a foot of it. */
typedef struct ply {
    double thickness_in, face_in, board_feet;
} ply;

static frame_status true_ply(const frame_section_in *in, frame_section_out *out, ply *one) {
    if (!given(in->width_in))
        return frame_fail(FRAME_REQUIRED, "width_in", "not given", "a width beside depth_in",
                          "width_in: not given; give it with depth_in, or give size");
    if (!given(in->depth_in))
        return frame_fail(FRAME_REQUIRED, "depth_in", "not given", "a depth beside width_in",
                          "depth_in: not given; give it with width_in, or give size");
    if (in->green)
        return frame_fail(
            FRAME_CONFLICT, "green", "yes", "no, with a true size",
            "green: yes goes with a nominal size, not with width_in and depth_in, which are true already");
    one->thickness_in = in->width_in;
    one->face_in = in->depth_in;
    one->board_feet = in->width_in * in->depth_in / 12;
    out->known = FRAME_KNOWN_USER;
    return FRAME_OK;
}

static frame_status dressed_ply(const frame_section_in *in, frame_section_out *out, ply *one) {
    double thickness_in, width_in;
    const frame_status status = frame_size_dressed(in->size, in->green, &one->thickness_in, &one->face_in);
    if (status) return status;
    frame_size_nominal(in->size, &thickness_in, &width_in);
    one->board_feet = thickness_in * width_in / 12;
    out->known = frame_size_known(in->size);
    out->not_checked |= FRAME_BIT(FRAME_SECTION_UNCHECKED_TRUE_SIZE);
    if (in->green) out->cautions |= FRAME_BIT(FRAME_SECTION_CAUTION_GREEN);
    if (thickness_in >= 5 && width_in >= 7 && !in->green) out->cautions |= FRAME_BIT(FRAME_SECTION_CAUTION_TIMBER);
    return FRAME_OK;
}

static frame_status find_ply(const frame_section_in *in, frame_section_out *out, ply *one) {
    const int by_size = in->size != FRAME_NOT_GIVEN_INT, by_true = given(in->width_in) || given(in->depth_in);
    if (by_size && by_true)
        return frame_fail(FRAME_CONFLICT, "size", frame_size_name(in->size), "size, or width_in and depth_in",
                          "size: %s and width_in or depth_in are given; give one or the other",
                          frame_size_name(in->size));
    if (!by_size && !by_true)
        return frame_fail(FRAME_REQUIRED, "size", "not given", "size, or width_in and depth_in",
                          "size: not given; give size, or width_in and depth_in");
    return by_size ? dressed_ply(in, out, one) : true_ply(in, out, one);
}

static frame_status compute(const frame_section_in *in, frame_section_out *out, frame_working *w) {
    ply one = {0, 0, 0};
    const frame_status status = find_ply(in, out, &one);
    if (status) return status;
    const int flat = in->turned == FRAME_TURNED_FLAT;
    const char *source = out->known == FRAME_KNOWN_USER ? "given" : "PS 20";
    FRAME_GIVEN(w, n, in->plies, "", "plies");
    FRAME_TABLE(w, b_1, flat ? one.face_in : one.thickness_in, "in", "breadth of one ply, across the load", source);
    FRAME_TABLE(w, d, flat ? one.thickness_in : one.face_in, "in", "depth of one ply, along the load", source);
    if (flat && in->plies > 1) {
        FRAME_CASE(w, "plies lie flat on one another",
                   "each bends by itself: S and I are sums of single plies, not of one block", "mechanics");
        out->cautions |= FRAME_BIT(FRAME_SECTION_CAUTION_FLAT_PLIES);
    }
    FRAME_STEP(w, A, n * b_1 * d, "in2", "area", "mechanics");
    FRAME_STEP(w, S, n * b_1 * d * d / 6, "in3", "section modulus", "NDS 3.3.2");
    FRAME_STEP(w, I, n * b_1 * d * d * d / 12, "in4", "moment of inertia", "NDS 3.3.2");
    out->width_in = flat ? b_1 : n * b_1;
    out->depth_in = d;
    out->area_in2 = A;
    out->section_modulus_in3 = S;
    out->inertia_in4 = I;
    out->board_feet_per_foot = n * one.board_feet;
    return FRAME_OK;
}

FRAME_IMPLEMENT(section, compute);
