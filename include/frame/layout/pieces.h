/** @file layout/pieces.h
 * What the layouts share: the kinds of pieces, and how they fit.
 */
#ifndef FRAME_LAYOUT_PIECES_H
#define FRAME_LAYOUT_PIECES_H

#include <frame/base.h>
#include <frame/code.h>
#include <frame/marks.h>
#include <frame/material.h>
#include <frame/timber.h>

FRAME_BEGIN

/** What a piece is called. */
typedef int32_t frame_piece_kind;
enum frame_piece_kind_values {
    FRAME_PIECE_STRINGER = 1, /**< "stringer" | "carriage" | "stair horse". Carries the treads of a stair. */
    FRAME_PIECE_TREAD = 2,    /**< "tread". What one steps on. */
    FRAME_PIECE_RISER = 3,    /**< "riser". The upright board between two treads. */
    FRAME_PIECE_BOTTOM_PLATE = 4, /**< "bottom plate" | "sole plate" | "sole". Lies under the studs. */
    FRAME_PIECE_TOP_PLATE = 5, /**< "top plate". Lies on the studs. */
    FRAME_PIECE_CAP_PLATE = 6, /**< "cap plate" | "double plate" | "upper top plate". Lies on the top plate and laps over other walls. */
    FRAME_PIECE_STUD = 7,     /**< "stud". Stands from plate to plate. */
    FRAME_PIECE_KING = 8,     /**< "king stud" | "king" | "full-height stud". Stands from plate to plate beside an opening. */
    FRAME_PIECE_JACK = 9,     /**< "jack stud" | "trimmer stud". Carries the end of a header. */
    FRAME_PIECE_CRIPPLE = 10, /**< "cripple" | "cripple stud". Stands under a sill, or on a header. */
    FRAME_PIECE_SILL = 11,    /**< "sill" | "rough sill". Lies under a window. */
    FRAME_PIECE_HEADER = 12,  /**< "header" | "lintel". Carries what is over an opening; one ply of it. */
    FRAME_PIECE_FILLER = 13,  /**< "filler". Fills a header up to the wall's depth. */
    FRAME_PIECE_HEAD = 14,    /**< "head plate" | "head". Closes the top of an opening under a header that lies higher. */
    FRAME_PIECE_BLOCK = 15,   /**< "block" | "blocking". Fills a bay. */
    FRAME_PIECE_BACKING = 16, /**< "backing" | "nailer". Gives what meets here something to be nailed to. */
    FRAME_PIECE_LEDGER = 17,  /**< "ledger". Fixed to what stands there; joists hang from it. */
    FRAME_PIECE_RIM = 18,     /**< "rim joist" | "band joist" | "rim" | "band". Closes the ends of the joists. */
    FRAME_PIECE_END_JOIST = 19, /**< "end joist". A joist at the edge of a floor. */
    FRAME_PIECE_JOIST = 20,   /**< "joist". Carries a floor or deck. */
    FRAME_PIECE_TRIMMER = 21, /**< "trimmer joist" | "trimmer". Beside an opening; carries its headers. */
    FRAME_PIECE_HEADER_JOIST = 22, /**< "header joist". Across the end of an opening; carries the tail joists. */
    FRAME_PIECE_TAIL = 23,    /**< "tail joist" | "tail". Between a header joist and a support. */
    FRAME_PIECE_DOUBLE = 24,  /**< "joist under wall" | "doubled joist". One of several under a wall that runs with the joists. */
    FRAME_PIECE_BEAM = 25,    /**< "beam" | "girder". Carries joists; one ply of it. */
    FRAME_PIECE_POST = 26,    /**< "post". Carries a beam. */
    FRAME_PIECE_BOARD = 27,   /**< "deck board" | "board". What one walks on. */
    FRAME_PIECE_BORDER = 28,  /**< "border board" | "picture frame". A deck board round the others. */
    FRAME_PIECE_GUARD_POST = 29, /**< "guard post". Holds a guard's rails. */
    FRAME_PIECE_RAIL = 30,    /**< "rail". Between guard posts. */
    FRAME_PIECE_BRIDGING = 31, /**< "bridging" | "cross bridging" | "strut". One of two struts that cross between two joists. */
    FRAME_PIECE_RAFTER = 32,  /**< "rafter" | "common rafter". Carries a roof, from plate to ridge. */
    FRAME_PIECE_JACK_RAFTER = 33, /**< "jack rafter" | "hip jack" | "valley jack". A rafter that ends at a hip or valley. */
    FRAME_PIECE_CEILING_JOIST = 34, /**< "ceiling joist". Carries a ceiling, and ties rafters. */
    FRAME_PIECE_HIP = 35,     /**< "hip rafter" | "hip". Where two roof planes meet over an outer corner. */
    FRAME_PIECE_VALLEY = 36,  /**< "valley rafter" | "valley". Where two roof planes meet over an inner corner. */
    FRAME_PIECE_RIDGE = 37,   /**< "ridge" | "ridge board" | "ridge beam". Where rafters meet at the top. */
    FRAME_PIECE_BRACE = 38,   /**< "brace" | "knee brace". Stiffens a corner. */
    FRAME_PIECE_OTHER = 39    /**< "other". Anything else. */
};

/** Whether pieces fit where they lie. */
typedef struct frame_fit_out {
    uint32_t struct_size, struct_id;
    frame_bool fits;      /**< No two pieces share wood. */
    int32_t pairs;        /**< Pairs of pieces that were near enough to be tried. */
    int32_t overlaps;     /**< Pairs that share wood. */
    int32_t first;        /**< Place in the list of a piece of the worst pair; -1 when all fit. */
    int32_t second;       /**< Place of the other; -1 when all fit. */
    int32_t spare;
    double overlap_in3;   /**< What the worst pair shares; 0 when all fit. */
} frame_fit_out;

FRAME_END

#endif
