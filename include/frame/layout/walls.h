/** @file layout/walls.h
 * Walls, stick by stick.
 */
#ifndef FRAME_LAYOUT_WALLS_H
#define FRAME_LAYOUT_WALLS_H

#include <frame/base.h>
#include <frame/code.h>
#include <frame/marks.h>
#include <frame/material.h>
#include <frame/timber.h>
#include <frame/layout/pieces.h>

FRAME_BEGIN

/* ---- walls ---- */

/** How a wall ends. */
typedef int32_t frame_wall_end;
enum frame_wall_end_values {
    FRAME_WALL_END_PLAIN = 1, /**< "plain" | "end stud". With an end stud. */
    FRAME_WALL_END_CORNER = 2, /**< "corner". Another wall butts against its inner face here: an end stud, and a stud turned flat behind it as backing; the other's cap plate laps over this wall. */
    FRAME_WALL_END_CORNER_THREE = 3, /**< "three-stud corner". The same with an end stud, blocks, and a further stud as backing. */
    FRAME_WALL_END_BUTT = 4   /**< "butt". It butts against another wall, and its cap plate laps over that one. */
};

/** How a partition that meets a wall between its ends finds backing. */
typedef int32_t frame_wall_backing;
enum frame_wall_backing_values {
    FRAME_WALL_BACKING_CHANNEL = 1, /**< "channel". A stud turned flat between two studs. */
    FRAME_WALL_BACKING_LADDER = 2   /**< "ladder". Blocks between the studs on either side, 24 in apart. */
};

/** Where a header lies. */
typedef int32_t frame_header_at;
enum frame_header_at_values {
    FRAME_HEADER_AT_OPENING = 1, /**< "opening". On top of the opening, cripples on it. */
    FRAME_HEADER_AT_PLATES = 2   /**< "plates" | "high". Right under the plates, cripples below it down to a head plate. */
};

/** An opening in a wall. Its measures are those of the rough opening. */
typedef struct frame_wall_opening {
    uint32_t struct_size, struct_id;
    const char *name;       /**< optional. Its name ("lake window"). */
    double at_in;           /**< required : 0..12000. Its near side from the start of the wall. */
    double width_in;        /**< required : >0..600. Its width, between the jacks. */
    double head_in;         /**< required : >0..600. Its top above the underside of the bottom plate. */
    double sill_in;         /**< 0 : 0..600. Its bottom above the underside of the bottom plate; 0 for a door: the bottom plate is cut out. */
    frame_size header_size; /**< "the smallest the code table allows, where supports is given; a stud laid flat in a wall that bears nothing". Nominal size of a ply of the header. */
    int32_t header_plies;   /**< "2 on edge, 1 flat" : 1..6. Plies of the header. */
    frame_turned header_turned; /**< "on edge where the wall bears". How the header lies. */
    frame_header_at header_at; /**< opening. Where the header lies. */
    frame_bool filler;      /**< yes. Fill the header up to the wall's depth, where no more than filler_most_in is missing. */
    int32_t jacks;          /**< "by the code table where supports is given, else 1" : 0..6. Jack studs at each side. */
    int32_t kings;          /**< "by the code table where the wind is given, or the edition is 2015; else 1" : 1..8. King studs at each side. */
    int32_t sills;          /**< 1 : 1..2. Plies of the sill. */
    double filler_most_in;  /**< 1 : 0..24. Most that is filled: a single ply's filler may be as thick as what it leaves of the wall. */
    frame_bool caps;        /**< no. A stud laid flat under a header on edge, and another on it unless plates are: what a single ply takes (IRC R602.7.1, from memory). */
    int32_t spare;
} frame_wall_opening;
/** Sets up an opening: every field not given. */
FRAME_ELEMENT(wall_opening);

/** A partition that meets a wall between its ends. */
typedef struct frame_wall_crossing {
    uint32_t struct_size, struct_id;
    double at_in;          /**< required : 0..12000. Near side of the partition's framing from the start of the wall. */
    double width_in;       /**< "as deep as this wall" : >0..24. Width of the partition's framing. */
    frame_wall_backing backing; /**< channel. How it finds backing. */
    frame_bool lap;        /**< yes. The partition's cap plate laps over this wall: its own is cut out there. */
} frame_wall_crossing;
/** Sets up a partition: every field not given. */
FRAME_ELEMENT(wall_crossing);

/** A step in the foundation or floor under a wall. */
typedef struct frame_wall_step {
    uint32_t struct_size, struct_id;
    double at_in;   /**< required : >0..12000. Where it is, from the start of the wall. */
    double rise_in; /**< required : -240..240. How much higher it goes on; negative for lower. */
} frame_wall_step;
/** Sets up a step: every field not given. */
FRAME_ELEMENT(wall_step);

/** Cautions that go with a wall. */
typedef int32_t frame_wall_caution;
enum frame_wall_caution_values {
    FRAME_WALL_CAUTION_ONE_HOOK = 0, /**< "one_hook". Pull every mark from one hook of the tape; do not carry a spacing from mark to mark. */
    FRAME_WALL_CAUTION_HEADER = 1,   /**< "header". No point loads but those given rest on the headers; cripples do not brace their tops. */
    FRAME_WALL_CAUTION_EDGES = 2,    /**< "sheet_edges". A sheet edge lands off a member, or with less than half an inch on one: add blocking, cut the sheet, or move the datum. */
    FRAME_WALL_CAUTION_SHORT = 3,    /**< "short_header". A header spans more than the code table allows: it does not pass. */
    FRAME_WALL_CAUTION_PACK = 4,     /**< "packing". Less than 1-1/2 in is left over a header: pack it tight instead of cripples. */
    FRAME_WALL_CAUTION_TIE = 5,      /**< "plate_tie". A single top plate needs a steel tie at each joint, corner and intersection (IRC R602.3.2). */
    FRAME_WALL_CAUTION_SINGLE = 6,   /**< "single_plate". Under a single top plate the rafters or joists stand centred over studs within 1 in (IRC R602.3.2, from memory). */
    FRAME_WALL_CAUTION_BRACE = 7,    /**< "brace". Brace the wall both ways as it is stood up, before anything is set on it. */
    FRAME_WALL_CAUTION_CODE = 8,     /**< "code". Headers, jacks or kings by the code table hold within its scope and edition; local amendments govern. */
    FRAME_WALL_CAUTION_CUT_PLATE = 9, /**< "cut_plate". The bottom plate is listed as it is when the doorways are cut out: run it through while the wall is framed and stood. */
    FRAME_WALL_CAUTION_SINGLE_PLY = 10 /**< "single_ply". A header of a single ply takes a flat member under it and one on it (IRC R602.7.1, from memory): see caps. */
};
/** What a wall leaves unchecked. */
typedef int32_t frame_wall_not_checked;
enum frame_wall_not_checked_values {
    FRAME_WALL_UNCHECKED_STUDS = 0,   /**< "studs". Whether the studs and plates hold: see code_stud, column_check. */
    FRAME_WALL_UNCHECKED_HEADERS = 1, /**< "headers". Whether the headers hold: see beam_check or code_header_span. */
    FRAME_WALL_UNCHECKED_BRACING = 2, /**< "bracing". Bracing, uplift and hold-downs. */
    FRAME_WALL_UNCHECKED_PIPES = 3    /**< "pipes". Holes for pipes, wires and ducts. */
};

/** A wall. It is laid out from its start, the outside on its right. */
typedef struct frame_wall_in {
    uint32_t struct_size, struct_id;
    double length_in;      /**< required : >0..12000. Length of its framing. */
    double height_in;      /**< optional : >0..600. Height at its start, from the underside of the bottom plate to the top of the top plates; or the ceiling, or the studs' length. */
    double ceiling_in;     /**< optional : >0..600. Height of the finished ceiling wanted above the finished floor. */
    double stud_length_in; /**< optional : >0..600. Length of the studs at hand (92.625, 104.625). */
    double floor_finish_in; /**< 0 : 0..12. Finish on the floor the wall stands on, counted with ceiling_in. */
    double ceiling_finish_in; /**< 0.5 : 0..12. What hangs under the framing of the ceiling, counted with ceiling_in. */
    double spacing_in;     /**< 16 : >0..48. Spacing of the studs on centres. */
    double datum_in;       /**< 0 : -12000..12000. Where the first sheet begins, from the start of the wall: see layout_marks. */
    double sheet_in;       /**< "the sheet that the spacing divides: 48 or 96 in, 1200 or 2400 mm; else 48 in" : >0..600. From one sheet edge to the next. */
    double slope;          /**< 0 : -2..2. Slope of its top, rise over run: a raked wall, or a gable with a peak. */
    double peak_in;        /**< optional : >0..12000. Where the top turns, from the start. */
    double far_slope;      /**< "minus the slope" : -2..2. Slope of the top beyond the peak. */
    double bottom_slope;   /**< 0 : -1..1. Slope of what it stands on. */
    double plate_stock_in; /**< 192 : 12..600. Longest piece of plate. */
    double joint_offset_in; /**< 24 : 0..120. Joints of the top plates are at least so far from one another (IRC R602.3.2). */
    double start_other_in; /**< "as deep as this wall" : >0..24. Width of the wall that meets it at its start. */
    double end_other_in;   /**< "as deep as this wall" : >0..24. Width of the wall that meets it at its end. */
    double stud_thickness_in; /**< optional : >0..24. True thickness of studs and plates, instead of their size. */
    double stud_depth_in;  /**< optional : >0..24. True depth of studs and plates, instead of their size. */
    double ground_snow_psf; /**< optional : 0..300. Ground snow load, for the code table of headers. */
    double building_width_in; /**< optional : >0..1200. Width of the building square to the ridge, for the code table of headers. */
    double wind_mph;       /**< optional : >0..300. Ultimate design wind speed, for the code table of king studs. */
    frame_size size;       /**< optional. Nominal size of studs and plates. */
    frame_first_mark first; /**< sheet edges on centres. Where the first stud on centres comes. */
    frame_bool bearing;    /**< yes. Whether it carries more than itself. */
    int32_t top_plates;    /**< 2 : 1..3. Top plates. */
    int32_t bottom_plates; /**< 1 : 1..2. Bottom plates. */
    frame_bool studs_flat; /**< no. Studs on centres stand with their wide face in the wall's face, as in thin partitions. */
    frame_wall_end start_end; /**< plain. How it starts. */
    frame_wall_end end_end; /**< plain. How it ends. */
    frame_code_supports supports; /**< optional. What its headers carry, to size them and their jacks by the code table. */
    frame_code_edition edition; /**< optional. Edition of the code table; required with supports. */
    frame_code_exposure exposure; /**< optional. Wind exposure, for the code table of king studs. */
    int32_t spare;
    const frame_wall_opening *openings; /**< optional. Its openings. */
    size_t opening_count;  /**< count : 0..200. */
    const frame_wall_crossing *crossings; /**< optional. Partitions that meet it between its ends. */
    size_t crossing_count; /**< count : 0..200. */
    const frame_wall_step *steps; /**< optional. Steps of what it stands on, in order. */
    size_t step_count;     /**< count : 0..50. */
    const double *blocking_in; /**< optional : >0..600. Heights of the middle of rows of blocking above the underside of the bottom plate at the start: where sheets' level edges meet. */
    size_t blocking_count; /**< count : 0..20. */
    const char *name;      /**< optional. Name of the wall, for its drawing. */
} frame_wall_in;

/** Figures of a wall. */
typedef struct frame_wall_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : wall_caution. Cautions. */
    uint64_t not_checked; /**< bits : wall_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of what was looked up. */
    frame_bool passes;    /**< Whether every header that was looked up is within its table's span. */
    int32_t studs;        /**< Studs, those of ends, corners and channels too. */
    int32_t kings;        /**< King studs. */
    int32_t jacks;        /**< Jack studs. */
    int32_t cripples;     /**< Cripples. */
    int32_t blocks;       /**< Blocks. */
    int32_t edges_off;    /**< Upright sheet edges with less than half an inch on a member, openings not counted. */
    double height_in;     /**< Height at the start, underside of bottom plate to top of top plates. */
    double stud_length_in; /**< Length of the studs of a level wall; not given for one that is raked or stepped. */
    double longest_in;    /**< Longest stud or king, long point to long point. */
    double shortest_in;   /**< Shortest stud or king, long point to long point. */
    double difference_in; /**< How much longer each stud on centres of a raked wall is than the one before it: spacing times slope; 0 for a level one. */
    double top_angle_deg; /**< Angle of the studs' top cut from square, before the peak. */
    double widest_in;     /**< Widest spacing on centres between members that stand side by side. */
    double plates_in;     /**< Length of all plates together. */
} frame_wall_out;

/** A mark on the plates. */
typedef struct frame_wall_mark {
    uint32_t struct_size, struct_id;
    double mark_in; /**< Running distance from the start of the wall to the near side of the member. */
    double to_in;   /**< Its far side. */
    frame_piece_kind kind; /**< What stands there. */
    frame_bool bottom; /**< Whether it is marked on the bottom plate. */
    frame_bool top; /**< Whether it is marked on the top plate. */
    int32_t opening; /**< Number of the opening it belongs to, from 1; 0 for none. */
} frame_wall_mark;

/** A header. */
typedef struct frame_wall_header {
    uint32_t struct_size, struct_id;
    int32_t opening;    /**< Number of its opening, from 1. */
    int32_t plies;      /**< Its plies. */
    frame_size size;    /**< Nominal size of a ply. */
    frame_turned turned; /**< How it lies. */
    double length_in;   /**< Its length: the opening and the jacks. */
    double bottom_in;   /**< Its underside above z = 0. */
    double top_in;      /**< Its top above z = 0. */
    double code_span_in; /**< The code table's span for it; not given when it was not looked up. */
    int32_t jacks;      /**< Jack studs at each side. */
    int32_t kings;      /**< King studs at each side. */
    const char *name;   /**< Name of the opening. */
    const char *source; /**< Where the table was seen; empty when it was not looked up. */
} frame_wall_header;

/** A piece of a wall. */
typedef struct frame_wall_piece {
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
    int32_t opening;        /**< Number of the opening it belongs to, from 1; 0 for none. */
    int32_t gang;           /**< Number of its gang, from 1: pieces alike. */
} frame_wall_piece;

/** Pieces alike, to be cut in one gang. */
typedef struct frame_wall_gang {
    uint32_t struct_size, struct_id;
    frame_piece_kind kind; /**< What they are. */
    frame_size size;       /**< Nominal size; not given for a section of no such size. */
    int32_t count;         /**< How many. */
    int32_t first;         /**< Place in the list of pieces of the first of them. */
    double length_in;      /**< Length over all, long point to long point. */
    double short_point_in; /**< Short point to short point. */
    double start_deg;      /**< Angle of the cut at the start from square. */
    double end_deg;        /**< Angle of the cut at the end from square. */
    const char *name;      /**< What they are called. */
    const char *section;   /**< Their section as written. */
} frame_wall_gang;

/** Lays a wall out: plates with their joints, studs on their marks, corners, partitions, openings with kings, jacks,
 * headers, sills and cripples, blocking; level, raked, with a peak, on a slope or on steps. A stud on centres that would run
 * into a king, a corner or a channel is set against it, so that no spacing grows and each sheet edge keeps its bearing.
 * Sheets are taken to be cut at openings, their edges above and below them on cripples.
 *
 * x runs along the wall from its start, y from its outside to its inside, z up from the underside of the bottom plate at the
 * start. FRAME_IMPOSSIBLE, with the item's name, when openings or partitions overlap, leave the wall, or leave no room for jacks and
 * kings; when a header does not fit under the plates, or no plate joint can be placed; FRAME_REQUIRED without a height or a
 * section, and for a header of a bearing wall without size and supports; FRAME_NO_VALUE when no size of the code table
 * spans an opening. */
FRAME_ANSWER(wall);
/** The marks on the plates, in order. */
FRAME_ANSWER_LIST(wall, mark, marks);
/** The headers. */
FRAME_ANSWER_LIST(wall, header, headers);
/** The pieces, in the order they go up. */
FRAME_ANSWER_LIST(wall, piece, pieces);
/** The gangs. */
FRAME_ANSWER_LIST(wall, gang, gangs);
/** Gives a piece of a wall as a stick, by its place in the list. Free it with frame_stick_free. */
FRAME_API frame_status frame_wall_stick(const frame_wall *wall, size_t index, frame_stick **stick);
/** As frame_wall_fit, for an answer of a stated size. */
FRAME_API frame_status frame_wall_fit_sized(const frame_wall *wall, frame_fit_out *out, size_t out_size);
/** Proves that no two pieces of a wall share wood. */
static inline frame_status frame_wall_fit(const frame_wall *wall, frame_fit_out *out) {
    return frame_wall_fit_sized(wall, out, sizeof *out);
}
/** Draws a wall from its outside, with running dimensions. Free it with frame_drawing_free. */
FRAME_API frame_status frame_wall_drawing(const frame_wall *wall, frame_drawing **drawing);

FRAME_END

#endif
