/** @file marks.h
 * Marks on centres: where the members of a wall, floor, roof or deck go; and what the tape found.
 */
#ifndef FRAME_MARKS_H
#define FRAME_MARKS_H

#include <frame/base.h>

FRAME_BEGIN

/** Where the first member on centres comes. */
typedef int32_t frame_first_mark;
enum frame_first_mark_values {
    FRAME_FIRST_MARK_SET_BACK = 1, /**< "sheet edges on centres" | "set back". A spacing less half a thickness from the datum: sheets laid from there break on centres. */
    FRAME_FIRST_MARK_FULL = 2 /**< "full spacing". A whole spacing from the datum to the near side of the member. */
};

/** Where a member lies to its mark. */
typedef int32_t frame_mark_side;
enum frame_mark_side_values {
    FRAME_MARK_FAR = 1,    /**< "far" | "beyond". Beyond the mark, away from the hook: the X goes there. */
    FRAME_MARK_NEAR = 2,   /**< "near" | "before". Before the mark, on the hook's side. */
    FRAME_MARK_CENTRE = 3  /**< "centre" | "center". The mark is its centre line. */
};

/** Why a member stands where it does. */
typedef int32_t frame_mark_kind;
enum frame_mark_kind_values {
    FRAME_MARK_START = 1,   /**< "start". At the end the tape is hooked. */
    FRAME_MARK_ON_CENTRES = 2, /**< "on centres". A whole number of spacings from the datum. */
    FRAME_MARK_END = 3      /**< "end". At the far end. */
};

/** Cautions that go with marks. */
typedef int32_t frame_marks_caution;
enum frame_marks_caution_values {
    FRAME_MARKS_CAUTION_ONE_HOOK = 0, /**< "one_hook". Pull every mark from one hook of the tape; do not carry a spacing from mark to mark. */
    FRAME_MARKS_CAUTION_SIDE = 1, /**< "side". Draw the X on the side of the mark where the member lies, the same for all. */
    FRAME_MARKS_CAUTION_EDGES = 2, /**< "sheet_edges". A sheet edge lands off a member, or with less than half an inch on one: add a member or blocking, cut the sheet, or move the datum. */
    FRAME_MARKS_CAUTION_CLOSE = 3 /**< "close". A member on centres was left out because it would meet one at an end. */
};
/** What marks leave unchecked. */
typedef int32_t frame_marks_not_checked;
enum frame_marks_not_checked_values {
    FRAME_MARKS_UNCHECKED_OPENINGS = 0 /**< "openings". Openings, partitions and pipes that want a member moved or added. */
};

/** What is to be marked. The tape is hooked at the near end of the length, 0; sheets and spacings begin at the datum. */
typedef struct frame_layout_marks_in {
    uint32_t struct_size, struct_id;
    double length_in;      /**< required : >0..12000. Length of the plate or band that is marked. */
    double spacing_in;     /**< 16 : >0..120. Spacing on centres. */
    double thickness_in;   /**< 1.5 : >0..24. Thickness of the members. */
    double datum_in;       /**< 0 : -12000..12000. Where the first sheet begins, from the near end: behind a panel or another member its thickness (0.5), before the end (a corner lapped, a layout carried on) negative. */
    double sheet_in;       /**< "the sheet that the spacing divides: 48 or 96 in, 1200 or 2400 mm; else 48 in" : >0..600. From one sheet edge to the next. */
    frame_first_mark first; /**< sheet edges on centres. Where the first member on centres comes. */
    frame_bool end_member; /**< yes. A member stands at the far end whatever the spacing leaves. */
    frame_bool start_member; /**< yes. A member stands at the near end. */
    frame_mark_side side;  /**< far. Where a member lies to its mark. */
} frame_layout_marks_in;

/** Figures of a layout. */
typedef struct frame_layout_marks_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : marks_caution. Cautions. */
    uint64_t not_checked; /**< bits : marks_not_checked. What was not checked. */
    frame_known known;    /**< Geometry from what was given. */
    int32_t count;        /**< Members, those at the ends included. */
    double last_space_in; /**< Clear space between the last two members; not given with fewer than two. */
    double first_mark_in; /**< Mark of the first member on centres; not given when none fits. */
    double next_datum_in; /**< Datum of a length that goes on where this one ends, so that the spacing goes on across the joint. */
    double sheet_in;      /**< From one sheet edge to the next. */
    int32_t on_centres;   /**< Members on centres. */
    int32_t edges_off;    /**< Sheet edges with less than half an inch on a member. */
} frame_layout_marks_out;

/** A member. */
typedef struct frame_layout_marks_member {
    uint32_t struct_size, struct_id;
    double mark_in;   /**< Its mark, on one tape hooked at the near end. */
    double from_in;   /**< Its near side. */
    double to_in;     /**< Its far side. */
    double centre_in; /**< Its centre. */
    double space_in;  /**< Clear space before it; not given for the first. */
    frame_mark_kind kind; /**< Why it stands there. */
    int32_t number;   /**< Its number, from 1. */
} frame_layout_marks_member;

/** A sheet edge within the length. */
typedef struct frame_layout_marks_edge {
    uint32_t struct_size, struct_id;
    double at_in;     /**< Where it lands. */
    double before_in; /**< How much of the member it lands on lies before it: what the one sheet bears on; 0 off a member. */
    double after_in;  /**< How much lies beyond it: what the next sheet bears on. */
    int32_t member;   /**< Number of the member it lands on; 0 for none. */
    int32_t spare;
} frame_layout_marks_edge;

/** Lays members out on centres along a length. Marks are running distances from the near end, never chained. Members on
 * centres stand a whole number of spacings from the datum, on both sides of it, wherever they clear those at the ends; so
 * layouts with one datum stack, from wall to floor to roof and across joints and corners. FRAME_IMPOSSIBLE when the spacing
 * is no larger than the thickness, or two members do not fit in the length; FRAME_TOO_LARGE beyond 10,000 members. */
FRAME_ANSWER(layout_marks);
/** The marks: running distances from the near end. */
FRAME_ANSWER_NUMBERS(layout_marks, marks_in);
/** The members. */
FRAME_ANSWER_LIST(layout_marks, member, members);
/** The sheet edges between the ends. */
FRAME_ANSWER_LIST(layout_marks, edge, edges);

FRAME_END

#endif
