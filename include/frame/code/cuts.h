/** @file code/cuts.h
 * Holes and notches.
 */
#ifndef FRAME_CODE_CUTS_H
#define FRAME_CODE_CUTS_H

#include <frame/base.h>
#include <frame/material.h>
#include <frame/code/book.h>

FRAME_BEGIN

/** What is cut. */
typedef int32_t frame_code_member;
enum frame_code_member_values {
    FRAME_CODE_MEMBER_JOIST = 1,         /**< "joist" | "floor joist" | "sawn joist" | "beam" | "sawn beam". A sawn floor joist or beam on edge. */
    FRAME_CODE_MEMBER_CEILING_JOIST = 2, /**< "ceiling joist". A sawn ceiling joist. */
    FRAME_CODE_MEMBER_RAFTER = 3,        /**< "rafter". A sawn rafter, between its bearings and at them. */
    FRAME_CODE_MEMBER_TAIL = 4,          /**< "rafter tail" | "tail". The part of a rafter past its bearing. */
    FRAME_CODE_MEMBER_STUD = 5,          /**< "stud". A stud. */
    FRAME_CODE_MEMBER_TOP_PLATE = 6,     /**< "top plate" | "plate". The top plate of a wall. */
    FRAME_CODE_MEMBER_HEADER = 7,        /**< "header" | "girder". A header or girder: refused. */
    FRAME_CODE_MEMBER_BUILT_UP = 8,      /**< "built-up beam" | "built-up member" | "built-up". A beam of several plies: refused. */
    FRAME_CODE_MEMBER_FLAT = 9,          /**< "flat member" | "flat". A member that lies flat: refused. */
    FRAME_CODE_MEMBER_TRUSS = 10,        /**< "truss". A truss: refused. */
    FRAME_CODE_MEMBER_I_JOIST = 11,      /**< "I-joist" | "wood I-joist". An I-joist: by its maker's rule. */
    FRAME_CODE_MEMBER_ENGINEERED = 12    /**< "engineered lumber" | "LVL" | "PSL" | "LSL" | "glulam" | "structural composite lumber". Laminated or composite lumber: by its maker's rule. */
};

/** How it is cut. */
typedef int32_t frame_code_cut;
enum frame_code_cut_values {
    FRAME_CODE_CUT_HOLE = 1, /**< "hole" | "bored hole" | "bore". A hole, wood all around it. */
    FRAME_CODE_CUT_NOTCH = 2 /**< "notch" | "cut". A cut from the edge. */
};

/** Which edge a notch is cut from. */
typedef int32_t frame_code_side;
enum frame_code_side_values {
    FRAME_CODE_SIDE_TOP = 1,   /**< "top" | "upper edge". The upper edge. */
    FRAME_CODE_SIDE_BOTTOM = 2 /**< "bottom" | "lower edge". The lower edge, in tension between the supports. */
};

/** Whether a cut may be made. */
typedef int32_t frame_code_verdict;
enum frame_code_verdict_values {
    FRAME_CODE_ALLOWED = 1,         /**< "allowed". As it is. */
    FRAME_CODE_ALLOWED_DOUBLED = 2, /**< "allowed with the stud doubled" | "allowed, stud doubled". With the stud doubled, and no more than two such studs in a row. */
    FRAME_CODE_ALLOWED_TIE = 3,     /**< "allowed with a plate tie" | "allowed, plate tied". With a steel tie across the cut. */
    FRAME_CODE_NOT_ALLOWED = 4      /**< "not allowed". Not so, or not here. */
};

/** A hole or notch to judge: for a pipe, wire or duct of a size, at a place. */
typedef struct frame_code_hole_in {
    uint32_t struct_size, struct_id;
    frame_code_member member;   /**< required. What is cut. */
    frame_code_cut cut;         /**< hole. How. */
    frame_size size;            /**< optional. Nominal size of the member; this or depth_in. */
    frame_code_edition edition; /**< required. Which edition. */
    double depth_in;            /**< optional : >0..60. True depth of the member, the larger face, instead of its size. */
    double thickness_in;        /**< optional : >0..60. Its true thickness; from the size where it is given. */
    double diameter_in;         /**< optional : >0..60. Diameter of the hole, room for the pipe in it counted, or the larger side of a square one. */
    double notch_depth_in;      /**< optional : >0..60. Depth of the notch, square to the edge. */
    double notch_length_in;     /**< optional : >0..600. Length of the notch along the member. */
    double span_in;             /**< optional : >0..1200. Span of a joist or rafter; notches need it. */
    double position_in;         /**< optional : 0..1200. Middle of the cut from the face of the left bearing; notches need it. */
    double offset_in;           /**< "the middle of the depth" : 0..60. Middle of a hole from the lower edge; in a stud or plate, from one face. */
    double other_position_in;   /**< optional : 0..1200. Middle of the nearest other hole or notch of the member, from the same bearing. */
    double other_length_in;     /**< optional : >0..600. Its diameter, or its length along the member. */
    double tail_in;             /**< optional : >0..240. Length of a rafter's tail, level. */
    double maker_diameter_in;   /**< optional : 0..60. Largest hole the maker allows at this place, for I-joists and engineered lumber. */
    double maker_edge_in;       /**< optional : 0..60. Least distance from the hole to the edges, or to an I-joist's flanges, that the maker asks for. */
    double maker_end_in;        /**< optional : 0..1200. Least distance from the hole to a bearing that the maker asks for. */
    frame_code_side side;       /**< bottom. Which edge a notch is cut from. */
    frame_bool end_notch;       /**< no. Whether the notch is at the end of the member, over its bearing. */
    frame_bool bearing;         /**< yes. Whether the wall carries more than itself. */
    frame_bool exterior;        /**< yes. Whether it is an outer wall. */
    frame_bool doubled;         /**< no. Whether the stud is doubled already. */
    int32_t successive;         /**< 1 : 1..20. Doubled studs bored so in a row, this one counted. */
    frame_bool beside_notch;    /**< no. Whether a notch lies in the same section as a stud's hole. */
    frame_bool sheathed;        /**< no. Whether wood structural panels cover the whole side of the wall that is cut. */
    frame_code_cut other_cut;   /**< hole. What the nearest other cut is: notches keep away from holes, not from one another. */
    int32_t spare;
    const frame_code_overlay *overlay; /**< optional. Local amendments, from code_overlay. */
} frame_code_hole_in;

/** The verdict, what it hangs on, and where else it may be. */
typedef struct frame_code_hole_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : code_caution. Cautions. */
    uint64_t not_checked; /**< bits : code_not_checked. What was not checked. */
    frame_known known;    /**< How the figure is known. */
    frame_code_edition edition; /**< The edition it is from. */
    const char *table;    /**< The table's or clause's number. */
    const char *source;   /**< Where it was seen. */
    const char *note;     /**< What there is to say about it as printed; empty for most. */
    frame_code_verdict verdict;  /**< The verdict. */
    int32_t spare2;
    const char *reason;          /**< What it hangs on, in a sentence. */
    const char *needs;           /**< What must be done for it to hold; empty when nothing. */
    double depth_in;             /**< True depth of the member. */
    double limit_diameter_in;    /**< Largest hole such a member may have, as it stands; not given for a notch. */
    double limit_notch_depth_in; /**< Deepest notch at this place; not given for a hole. */
    double limit_notch_length_in; /**< Longest notch; not given where there is no limit. */
    double edge_in;              /**< Least distance from a hole to the edges; not given where there is none. */
    double nearest_position_in;  /**< Nearest place along the member where the cut may be, with nearest_offset_in where that is given too; not given when this one will do, or none. */
    double nearest_offset_in;    /**< Nearest place across the depth where the hole may be; not given when this one will do, or none. */
} frame_code_hole_out;

/** Judges a hole or notch for a pipe, wire or duct by the code: sawn joists and beams (IRC R502.8.1), rafters and ceiling joists (R802.7.1), rafter
 * tails (R802.7.1.1), studs (R602.6) and top plates (R602.6.1). Headers, built-up and flat members and trusses are FRAME_REFUSED with
 * what would be needed; I-joists and engineered lumber without their maker's rule too. */
FRAME_CALCULATION(code_hole);

FRAME_END

#endif
