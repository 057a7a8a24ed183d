/** @file layout/passages.h
 * Holes for other trades.
 */
#ifndef FRAME_LAYOUT_PASSAGES_H
#define FRAME_LAYOUT_PASSAGES_H

#include <frame/base.h>
#include <frame/code.h>
#include <frame/marks.h>
#include <frame/material.h>
#include <frame/timber.h>
#include <frame/layout/pieces.h>
#include <frame/layout/platforms.h>
#include <frame/layout/walls.h>

FRAME_BEGIN

/* ---- holes for other trades ---- */

/** Which way a pipe, duct or vent goes through a frame. */
typedef int32_t frame_passage_way;
enum frame_passage_way_values {
    FRAME_PASSAGE_X = 1, /**< "x" | "along". Along x: along a wall through its studs, along a floor's joists. */
    FRAME_PASSAGE_Y = 2, /**< "y" | "across". Along y: through a wall from outside to inside, across a floor's joists. */
    FRAME_PASSAGE_Z = 3  /**< "z" | "up". Plumb: through a wall's plates, through a floor. */
};

/** Cautions that go with a passage. */
typedef int32_t frame_passage_caution;
enum frame_passage_caution_values {
    FRAME_PASSAGE_CAUTION_SHORE = 0,  /**< "shore". A member that bears would be cut: shore both sides first; past the code's tables it is licensed design. */
    FRAME_PASSAGE_CAUTION_IDLE = 1,   /**< "idle". A member that looks idle may carry live load, snow or wind later: find its load path before cutting it. */
    FRAME_PASSAGE_CAUTION_LOCAL = 2,  /**< "local". Local amendments govern, and the building official decides: ask which edition is adopted. */
    FRAME_PASSAGE_CAUTION_OTHERS = 3, /**< "other_holes". Only this passage was judged: other holes and notches in the same members count too. */
    FRAME_PASSAGE_CAUTION_FIRE = 4,   /**< "fire". Seal what is left round it, and protect pipes and wires near a face with plates, as the code asks. */
    FRAME_PASSAGE_CAUTION_NO_BOX = 5, /**< "no_box_out". No box-out is listed: a member that may not be cut is in the way, or there is no room for headers: move the passage. */
    FRAME_PASSAGE_CAUTION_NO_HEADER = 6, /**< "no_header". No box-out is listed: the wall bears, and no header is known for it: give header_size, or lay the wall out with what its headers support. */
    FRAME_PASSAGE_CAUTION_WIDE = 7    /**< "wide_header". Headers over 48 in, and what carries them, are doubled (IRC R502.10, from memory) and want design. */
};
/** What a passage leaves unchecked. */
typedef int32_t frame_passage_not_checked;
enum frame_passage_not_checked_values {
    FRAME_PASSAGE_UNCHECKED_STRENGTH = 0, /**< "strength". Whether what is left of each member holds. */
    FRAME_PASSAGE_UNCHECKED_TRADE = 1     /**< "trade". Slopes, bends, clearances to what burns, and the trade's own rules. */
};

/** A pipe, duct or vent through a frame. */
typedef struct frame_passage_in {
    uint32_t struct_size, struct_id;
    frame_passage_way way; /**< required. Which way it goes. */
    frame_code_edition edition; /**< required. Edition of the code that judges it. */
    double x_in;         /**< optional : -12000..12000. Its middle along x; not for one that goes that way. */
    double y_in;         /**< optional : -12000..12000. Its middle along y; not for one that goes that way. */
    double z_in;         /**< optional : -12000..12000. Its middle along z; not for one that goes that way. */
    double width_in;     /**< required : >0..60. Its diameter; of a rectangular one the side that lies level. */
    double height_in;    /**< optional : >0..60. Of a rectangular one the other side: along y for one that goes up. */
    double room_in;      /**< 0 : 0..12. Room left all round it. */
    double gap_in;       /**< 0.125 : 0..1. Gap left at each end of a box-out's pieces that hang in hangers. */
    frame_size header_size; /**< "by the code table, where the wall was laid out with it; a stud laid flat in a wall that bears nothing; as the joists". Nominal size of the header of a box-out in a wall. */
    int32_t header_plies; /**< "2 in a wall that bears; of joists and rafters 1 up to 48 in, else 2" : 1..4. Plies of a box-out's headers. */
    frame_bool bearing;  /**< yes. Whether the wall carries more than itself. */
    frame_bool exterior; /**< yes. Whether it is an outer wall. */
} frame_passage_in;
/** Sets up a passage: every field not given. */
FRAME_ELEMENT(passage_in);

/** What a passage comes to. */
typedef struct frame_passage_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : passage_caution. Cautions. */
    uint64_t not_checked; /**< bits : passage_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the rules that were asked. */
    frame_code_verdict verdict; /**< The worst of all members' verdicts. */
    int32_t meet_total;   /**< Members it meets. */
    frame_bool box_out;   /**< Whether a stud, joist or the like would have to be cut: see the box-out's pieces, or lay the frame out anew with the opening below. */
    double clear_x_in;    /**< Nearest middle along x where it meets nothing, the other coordinate kept; not given where there is none. */
    double clear_y_in;    /**< The same along y. */
    double clear_z_in;    /**< The same along z. */
    double opening_low_in; /**< Where an opening for it begins: along x; of one that goes along x, along y. */
    double opening_high_in; /**< Where it ends. */
    double opening_from_in; /**< Where it begins the other way: along z; of one that goes up, along y. */
    double opening_to_in; /**< Where it ends. */
    int32_t box_out_pieces; /**< Pieces of the box-out; 0 when none is needed, or none can be. */
    int32_t cut_total;    /**< Members that the box-out cuts. */
} frame_passage_out;

/** A member that a passage meets. */
typedef struct frame_passage_meet {
    uint32_t struct_size, struct_id;
    int32_t piece;         /**< Its place in the list of pieces. */
    frame_piece_kind kind; /**< What it is. */
    frame_code_verdict verdict; /**< What the code says. */
    int32_t spare;
    const char *name;      /**< Its name. */
    const char *reason;    /**< What the verdict hangs on. */
    const char *needs;     /**< What must be done for it to hold; empty when nothing. */
    double overlap_in3;    /**< Wood it takes. */
    double limit_in;       /**< Largest hole such a member may have; not given where there is none. */
} frame_passage_meet;

/** A piece of the box-out round a passage, in the frame's own axes. */
typedef struct frame_passage_piece {
    uint32_t struct_size, struct_id;
    frame_piece_kind kind;  /**< What it is. */
    frame_size size;        /**< Nominal size; not given for a section of no such size. */
    double thickness_in;    /**< Thickness of its section. */
    double depth_in;        /**< Depth of its section. */
    double length_in;       /**< Length over all, long point to long point. */
    double short_point_in;  /**< Short point to short point. */
    double start_x_in;      /**< Where its axis starts, along x. */
    double start_y_in;      /**< Along y. */
    double start_z_in;      /**< Along z. */
    double end_x_in;        /**< Where its axis ends, along x. */
    double end_y_in;        /**< Along y. */
    double end_z_in;        /**< Along z. */
    double start_deg;       /**< Angle of the cut at its start from square. */
    double end_deg;         /**< Angle of the cut at its end from square. */
    const char *name;       /**< Name of the piece. */
    const char *section;    /**< Its section as written. */
    int32_t of;             /**< Place in the frame's list of the piece that it is cut from; -1 for a new one. */
    int32_t spare;
} frame_passage_piece;

/** A passage through a frame, judged. Made by frame_wall_passage and its like, freed by frame_passage_free. */
typedef struct frame_passage frame_passage;
/** Frees a passage. NULL is allowed. */
FRAME_API void frame_passage_free(frame_passage *passage);
/** As frame_passage_result, for an answer of a stated size. */
FRAME_API frame_status frame_passage_result_sized(const frame_passage *passage, frame_passage_out *out, size_t out_size);
/** Gives what a passage comes to. */
static inline frame_status frame_passage_result(const frame_passage *passage, frame_passage_out *out) {
    return frame_passage_result_sized(passage, out, sizeof *out);
}
/** Counts the members a passage meets. */
FRAME_API size_t frame_passage_meet_count(const frame_passage *passage);
/** As frame_passage_meet_at, for an item of a stated size. */
FRAME_API frame_status frame_passage_meet_at_sized(const frame_passage *passage, size_t index, frame_passage_meet *item,
                                                   size_t item_size);
/** Gives a member by its place in the list. Its texts live as long as the passage. */
static inline frame_status frame_passage_meet_at(const frame_passage *passage, size_t index, frame_passage_meet *item) {
    return frame_passage_meet_at_sized(passage, index, item, sizeof *item);
}

/** Counts the pieces of the box-out. */
FRAME_API size_t frame_passage_piece_count(const frame_passage *passage);
/** As frame_passage_piece_at, for an item of a stated size. */
FRAME_API frame_status frame_passage_piece_at_sized(const frame_passage *passage, size_t index, frame_passage_piece *item,
                                                    size_t item_size);
/** Gives a piece of the box-out by its place in the list. Its texts live as long as the passage. */
static inline frame_status frame_passage_piece_at(const frame_passage *passage, size_t index, frame_passage_piece *item) {
    return frame_passage_piece_at_sized(passage, index, item, sizeof *item);
}
/** Gives a piece of the box-out as a stick, by its place in the list. Free it with frame_stick_free. */
FRAME_API frame_status frame_passage_stick(const frame_passage *passage, size_t index, frame_stick **stick);

/** Finds which members of a wall a pipe, duct or vent meets, what the code says of each (IRC R602.6, R602.6.1), and the
 * nearest places where it meets none. Where studs would have to be cut, the pieces of the box-out are listed: a header on
 * jacks from stud to stud beside the passage (laid flat between them where the wall bears nothing), a sill, and what is left
 * of the studs as cripples. */
FRAME_API frame_status frame_wall_passage(const frame_wall *wall, const frame_passage_in *in, frame_passage **passage);
/** The same of a floor (IRC R502.8.1): headers hang between the joists on either side, and carry what is left of those that
 * are cut. */
FRAME_API frame_status frame_floor_passage(const frame_floor *floor, const frame_passage_in *in, frame_passage **passage);
/** The same of a deck. */
FRAME_API frame_status frame_deck_passage(const frame_deck *deck, const frame_passage_in *in, frame_passage **passage);

FRAME_END

#endif
