/** @file marks.h
 * Marks on centres: where the members of a wall, floor, roof or deck go.
 */
#ifndef FRAME_MARKS_H
#define FRAME_MARKS_H

#include <frame/base.h>

FRAME_BEGIN

/** Where the first member on centres comes. */
typedef int32_t frame_first_mark;
enum frame_first_mark_values {
    FRAME_FIRST_MARK_SET_BACK = 1, /**< "sheet edges on centres" | "set back". A spacing less half a thickness from the end: sheets laid from the end break on centres. */
    FRAME_FIRST_MARK_FULL = 2 /**< "full spacing". A whole spacing from the end to the near side of the member. */
};

/** Cautions that go with marks. */
typedef int32_t frame_marks_caution;
enum frame_marks_caution_values {
    FRAME_MARKS_CAUTION_ONE_HOOK = 0, /**< "one_hook". Pull every mark from one hook of the tape; do not carry a spacing from mark to mark. */
    FRAME_MARKS_CAUTION_SIDE = 1 /**< "side". The member lies on the far side of its mark (the X goes there). */
};
/** What marks leave unchecked. */
typedef int32_t frame_marks_not_checked;
enum frame_marks_not_checked_values {
    FRAME_MARKS_UNCHECKED_OPENINGS = 0 /**< "openings". Openings, partitions and pipes that want a member moved or added. */
};

/** What is to be marked. */
typedef struct frame_layout_marks_in {
    uint32_t struct_size, struct_id;
    double length_in;      /**< required : >0..12000. Length of the plate or band that is marked. */
    double spacing_in;     /**< 16 : >0..120. Spacing on centres. */
    double thickness_in;   /**< 1.5 : >0..24. Thickness of the members. */
    frame_first_mark first; /**< sheet edges on centres. Where the first member on centres comes. */
    frame_bool end_member; /**< yes. A member stands at the far end whatever the spacing leaves. */
} frame_layout_marks_in;

/** Figures of a layout. */
typedef struct frame_layout_marks_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : marks_caution. Cautions. */
    uint64_t not_checked; /**< bits : marks_not_checked. What was not checked. */
    frame_known known;    /**< Geometry from what was given. */
    int32_t count;        /**< Members, those at both ends included. */
    double last_space_in; /**< Clear space between the last two members. */
} frame_layout_marks_out;

/** Lays members out on centres along a length. Marks are running distances from the end, each to the near side of its
 * member, the first at 0; the last member ends flush with the far end. FRAME_IMPOSSIBLE when the spacing is no larger than
 * the thickness, or two members do not fit in the length; FRAME_TOO_LARGE beyond 10,000 members. */
FRAME_ANSWER(layout_marks);
/** The marks: running distances to the near side of each member. */
FRAME_ANSWER_NUMBERS(layout_marks, marks_in);

FRAME_END

#endif
