/** @file roof/framing.h
 * A roof framed: its members, its sheathing, and the same over the corners as found.
 */
#ifndef FRAME_ROOF_FRAMING_H
#define FRAME_ROOF_FRAMING_H

#include <frame/base.h>
#include <frame/material.h>
#include <frame/timber.h>
#include <frame/roof/plans.h>
#include <frame/roof/rafters.h>

FRAME_BEGIN

/** What a member of a roof is. */
typedef int32_t frame_roof_member;
enum frame_roof_member_values {
    FRAME_MEMBER_RIDGE = 1,        /**< "ridge". Along a ridge. */
    FRAME_MEMBER_HIP = 2,          /**< "hip" | "hip rafter". Along a hip. */
    FRAME_MEMBER_VALLEY = 3,       /**< "valley" | "valley rafter". Along a valley. */
    FRAME_MEMBER_BREAK = 4,        /**< "break purlin". Along a break of slope. */
    FRAME_MEMBER_LEDGER = 5,       /**< "ledger". On a wall that a roof ends at. */
    FRAME_MEMBER_COMMON = 6,       /**< "common rafter". From the eave, or a break, up to a ridge, a ledger or a break. */
    FRAME_MEMBER_END_RAFTER = 7,   /**< "end rafter" | "gable rafter". The rafter at a gable, or beside a wall. */
    FRAME_MEMBER_HIP_JACK = 8,     /**< "hip jack". From the eave up to a hip. */
    FRAME_MEMBER_VALLEY_JACK = 9,  /**< "valley jack". From a valley up to the ridge. */
    FRAME_MEMBER_CRIPPLE_JACK = 10, /**< "cripple jack". From a valley up to a hip. */
    FRAME_MEMBER_RAFTER = 11,      /**< "rafter". Any other rafter. */
    FRAME_MEMBER_SUBFASCIA = 12,   /**< "sub-fascia". Along the tails. */
    FRAME_MEMBER_PLATE = 13,       /**< "plate". The upper plate of the wall, which carries the roof; the walls' own, here to prove the seats by. */
    FRAME_MEMBER_FLY_RAFTER = 14,  /**< "fly rafter" | "barge rafter". The outermost rafter of a gable overhang. */
    FRAME_MEMBER_LOOKOUT = 15,     /**< "lookout". Between the end rafter and the fly rafter. */
    FRAME_MEMBER_CEILING_JOIST = 16, /**< "ceiling joist" | "tie". Beside a pair of common rafters, from plate to plate; it ties them. */
    FRAME_MEMBER_BLOCK = 17        /**< "block". Between rafters, on the plate. */
};
/** Cautions that go with the members of a roof. */
typedef int32_t frame_roof_members_caution;
enum frame_roof_members_caution_values {
    FRAME_MEMBERS_CAUTION_FAULTS = 0, /**< "faults". Members share wood, or a cut bears on too little: see joints and overlaps. */
    FRAME_MEMBERS_CAUTION_NOTCH = 1, /**< "notch". A birdsmouth is deeper than a quarter of the rafter's depth (NDS 4.4.3, IRC R802.7.1.1). */
    FRAME_MEMBERS_CAUTION_BRACE = 2, /**< "brace". Ties and bracing stand before the roof is loaded; work with fall protection. */
    FRAME_MEMBERS_CAUTION_TRY_ONE = 3, /**< "try_one". Cut one of each kind, try it in place, then cut the gang. */
    FRAME_MEMBERS_CAUTION_MEASURE = 4, /**< "measure". Measure the building again before cutting: the plan is not the plate. */
    FRAME_MEMBERS_CAUTION_BEAM = 5, /**< "beam". Hips and valleys carry their jacks: they are beams, and their upper ends need support. */
    FRAME_MEMBERS_CAUTION_LOW = 6, /**< "low_slope". Under 3 in 12 the ridge must be designed as a beam (IRC R802). */
    FRAME_MEMBERS_CAUTION_LEFT_OUT = 7 /**< "left_out". Pieces of the layout were left out: too short, without a seat, or where another member stands. */
};
/** What the members of a roof leave unchecked. */
typedef int32_t frame_roof_members_not_checked;
enum frame_roof_members_not_checked_values {
    FRAME_MEMBERS_UNCHECKED_STRENGTH = 0, /**< "strength". Whether the members hold their loads. */
    FRAME_MEMBERS_UNCHECKED_THRUST = 1, /**< "thrust". Whether the thrust of the rafters is tied. */
    FRAME_MEMBERS_UNCHECKED_PROOF = 2 /**< "proof". Whether the pieces fit: the proof was not asked for. */
};

/** A plan, the slopes of its roof, and what it is framed of. Corners, slopes, kinds, courtyards, breaks and plates are those of
 * roof_solve. The fascia is level all round: with plates at one height overhangs are in inverse ratio of the slopes; plates that
 * differ by the overhang times the difference of slopes make them equal. A half hip overhangs its gable as far as rakes do. */
typedef struct frame_roof_members_in {
    uint32_t struct_size, struct_id;
    const frame_roof_corner *corners; /**< required. Corners of the building lines, in order; at least 3. */
    size_t corner_count;              /**< count : 1..2000. */
    const double *slopes;             /**< required : 0..2. Slope of each edge's roof, rise over run, or one for all. */
    size_t slope_count;               /**< count : 1..2000. */
    const frame_roof_kind *kinds;     /**< optional. What each edge is; hip where nothing is said. */
    size_t kind_count;                /**< count : 0..2000. */
    const frame_roof_hole_corner *holes; /**< optional. Corners of courtyards, courtyard by courtyard. */
    size_t hole_count;                /**< count : 0..2000. */
    frame_size rafter_size;           /**< required. Nominal size of rafters and jacks. */
    frame_size ridge_size;            /**< "the least that covers what is cut against it". Nominal size of ridges and ledgers. */
    frame_size hip_size;              /**< "the least that covers the jacks' cuts". Nominal size of hips. */
    frame_size valley_size;           /**< "the least that covers the jacks' cuts". Nominal size of valleys. */
    frame_size fascia_size;           /**< "the rafters' size". Nominal size of the sub-fascia. */
    frame_bool prove;                 /**< yes. Whether every pair of neighbours is tried. */
    int32_t hip_plies;                /**< 1 : 1..4. Plies of each hip. */
    int32_t valley_plies;             /**< 1 : 1..4. Plies of each valley. */
    double spacing_in;                /**< 16 : >0..96. Spacing of rafters on centres. */
    double overhang_in;               /**< 0 : 0..120. Overhang of the first edge that a roof rises from, level, to the outer face of the tail cut. */
    double seat_in;                   /**< "3-1/2 in" : >0..24. Level seat of the rafters on that edge; the others follow from the height above plate, which is one all round. */
    double height_above_plate_in;     /**< optional : >0..48. Height above plate, plumb at the building line, instead of the seat. */
    double plate_width_in;            /**< 3.5 : >0..24. Width of the plates. */
    double stock_in;                  /**< 240 : 48..1200. Longest piece of ridge or sub-fascia; longer ones are spliced on a rafter. */
    double layout_x_in;               /**< optional : -1e6..1e6. A point that all layouts start from; the first corner where it is not given. */
    double layout_y_in;               /**< optional : -1e6..1e6. That point along y. */
    double rake_overhang_in;          /**< 0 : 0..48. Overhang at gables, level, to the outer face of the fly rafter. */
    frame_size joist_size;            /**< optional. Nominal size of ceiling joists; without it none are laid out. */
    frame_bool blocking;              /**< no. Whether blocks stand between the rafters on the plates. */
    const double *upper_slopes;       /**< optional : >0..2. Slope of each edge's roof above the break, or one for all: a gambrel, a mansard. */
    size_t upper_slope_count;         /**< count : 0..2000. */
    double break_in;                  /**< optional : >0..2400. Height above its plate at which each roof breaks to its upper slope. */
    const double *plates_in;          /**< optional : 0..2400. Height of each edge's plate above the plane of the corners, or one for all. */
    size_t plate_count;               /**< count : 0..2000. */
    double half_hip_in;               /**< optional : >0..2400. Height above the plate up to which a half hip is a gable. */
} frame_roof_members_in;

/** The figures of a framed roof. */
typedef struct frame_roof_members_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : roof_members_caution. Cautions. */
    uint64_t not_checked; /**< bits : roof_members_not_checked. What was not checked. */
    frame_known known;    /**< Geometry from what was given; worst source of a size. */
    frame_bool fits;      /**< No pieces share wood, and every cut bears as its joint's rule asks; not given without the proof. */
    int32_t left_out;     /**< Pieces of the layout that were left out: too short, without a seat, or where another stands. */
    int32_t pairs;        /**< Pairs of neighbours that were tried. */
    double height_above_plate_in; /**< Height above plate, plumb at the building lines. */
    double fascia_height_in;      /**< Height of the roof plane at the tail cuts above the plane of the corners; negative below. */
    double ridge_height_in;       /**< Greatest height of the roof planes above the plane of the corners. */
    double board_feet;            /**< Lumber of all pieces but the plates, by nominal size and by the stock each is cut from. */
    double overlap_in3;           /**< The largest volume that two pieces share. */
    double least_share;           /**< Of all joints, the least contact over what its rule asks; 1 or more where all hold. */
} frame_roof_members_out;

/** A piece of a roof. Its axis runs along the middle of its top; from the eave up, or from the line's lower end to its upper. */
typedef struct frame_roof_members_piece {
    uint32_t struct_size, struct_id;
    frame_roof_member kind; /**< What it is. */
    int32_t face;           /**< The roof face it lies in, as roof_solve numbers them; -1 for one between faces. */
    int32_t line;           /**< The roof line it follows, as roof_solve numbers them; -1 for one that lies in a face. */
    int32_t edge;           /**< The edge of the plan it stands on or runs along; -1 for none. */
    frame_size size;        /**< Nominal size; of doubled pieces that of one ply. Not given for a plate. */
    int32_t plies;          /**< Plies. */
    frame_hand hand;        /**< The hand of a piece with a cheek at its upper end, or at its only one; not given without one. */
    int32_t gang;           /**< Number of its gang, from 1: pieces cut alike. */
    double thickness_in;    /**< True thickness. */
    double depth_in;        /**< True depth. */
    double length_in;       /**< Long point to long point: the stock it is cut from. */
    double top_length_in;   /**< Along the middle of its top edge. */
    double start_x_in;      /**< Where its axis starts: level with its lower long point. */
    double start_y_in;      /**< The start along y. */
    double start_z_in;      /**< The start's height above the plane of the corners: the plates, where none lies higher. */
    double end_x_in;        /**< Where its axis ends: level with its upper long point. */
    double end_y_in;        /**< The end along y. */
    double end_z_in;        /**< The end's height above the plane of the corners. */
    double crown_x;         /**< Direction of its crown, square to the axis; length 1. */
    double crown_y;         /**< The crown's direction along y. */
    double crown_z;         /**< The crown's direction upward. */
    const char *name;       /**< Name of the piece. */
    const char *section;    /**< Name of its section ("2x10"). */
    int32_t rises_from;     /**< The edge of the plan that its face rises from; -1 for one between faces. */
    int32_t spare;
} frame_roof_members_piece;

/** A cut that must bear on another piece, and what it bears on. */
typedef struct frame_roof_members_joint {
    uint32_t struct_size, struct_id;
    int32_t piece;       /**< The piece, from 0. */
    int32_t saw;         /**< Number of the cut among the saw settings of its stick, from 0. */
    int32_t on;          /**< The piece it bears on most; -1 for none. */
    frame_bool holds;    /**< Whether it bears as its rule asks. */
    double area_in2;     /**< Area of the cut face. */
    double contact_in2;  /**< Area of it that bears on other pieces. */
    double required_in2; /**< Area that the joint's rule asks for. */
    const char *label;   /**< The cut. */
} frame_roof_members_joint;

/** Two pieces that share wood. */
typedef struct frame_roof_members_overlap {
    uint32_t struct_size, struct_id;
    int32_t first;      /**< A piece, from 0. */
    int32_t second;     /**< The other one. */
    double overlap_in3; /**< The volume they share. */
} frame_roof_members_overlap;

/** Pieces that are cut alike, with those of the opposite hand. */
typedef struct frame_roof_members_gang {
    uint32_t struct_size, struct_id;
    frame_roof_member kind; /**< What they are. */
    int32_t count;          /**< How many are cut as the first one is. */
    int32_t opposite;       /**< How many are cut opposite to it, left for right. */
    int32_t first;          /**< The first piece of the gang, from 0. */
    double length_in;       /**< Long point to long point. */
    const char *section;    /**< Name of the section. */
} frame_roof_members_gang;

/** Frames a roof: lays out every member on centres, places it in space, and cuts it where it meets the others. Layouts of all faces
 * are counted from one point, so that rafters of opposite faces stand in pairs. Where members meet, the rank decides: ridges before
 * hips, valleys and breaks, then the thicker, then the longer; a lower one is cut against the sides of a higher one, and a ridge that
 * ends at hips runs on until they bear whole; where no ridge is, all are mitred; members of several points that all but meet are cut
 * along the side of the higher in rank. End rafters go before those of the layout.
 * The proof finds the neighbours by a sweep: no two may share 0.001 cubic inch, and an end cut must bear on 95 % of its face, less
 * what stands proud of the other's top; a seat on 1-1/2 in of its length (IRC R802.6), a tail on 95 % of what it has in common with
 * the sub-fascia's height, the ends of hips and valleys on 85 %, on each other 75 %, as their slopes and depths differ. Refuses what roof_solve refuses; FRAME_OUTSIDE_SCOPE for
 * edges in line with unequal slopes; FRAME_IMPOSSIBLE when the birdsmouth would cut a rafter through or miss it, or an
 * overhang takes an eave away. */
FRAME_ANSWER(roof_members);
/** The pieces: plates, ridges, hips, valleys, ledgers, rafters with fly rafters and lookouts, ceiling joists, blocks, sub-fascia. */
FRAME_ANSWER_LIST(roof_members, piece, pieces);
/** Every cut that must bear on something. */
FRAME_ANSWER_LIST(roof_members, joint, joints);
/** Pairs of pieces that share 0.001 cubic inch or more; none when all fit. */
FRAME_ANSWER_LIST(roof_members, overlap, overlaps);
/** The gangs: pieces cut alike, in the order of their first pieces. */
FRAME_ANSWER_LIST(roof_members, gang, gangs);
/** Gives a piece of a roof as a stick, by its place in the list. Free it with frame_stick_free. */
FRAME_API frame_status frame_roof_members_stick(const frame_roof_members *members, size_t index, frame_stick **stick);
/** Draws the roof framing in plan, with the marks of its layout. Free the drawing with frame_drawing_free. */
FRAME_API frame_status frame_roof_members_drawing(const frame_roof_members *members, frame_drawing **drawing);
/** Draws the frame as it stands, hidden lines removed, seen isometrically from a side (turn_deg: counterclockwise from x, -360 to
 * 360). Free the drawing with frame_drawing_free. */
FRAME_API frame_status frame_roof_members_isometric(const frame_roof_members *members, double turn_deg, frame_drawing **drawing);

/** What the edge of a part of sheathing lies along. */
typedef int32_t frame_sheathing_edge;
enum frame_sheathing_edge_values {
    FRAME_SHEATHING_COURSE = 1, /**< "course". The next course, or the eave. */
    FRAME_SHEATHING_JOINT = 2,  /**< "joint". The next part of the course. */
    FRAME_SHEATHING_SKEW = 3    /**< "skew". A hip, a valley, a ridge, a rake, or a wall. */
};
/** Cautions that go with sheathing. */
typedef int32_t frame_roof_sheathing_caution;
enum frame_roof_sheathing_caution_values {
    FRAME_SHEATHING_CAUTION_NAILERS = 0, /**< "nailers". Joints without a member behind them need a nailer: see nailers. */
    FRAME_SHEATHING_CAUTION_EDGES = 1, /**< "edges". Edges between courses are held at the rafters only: see courses. */
    FRAME_SHEATHING_CAUTION_SUPPORTS = 2, /**< "supports". Parts lie on fewer than three members: their strip is weak and needs edge support. */
    FRAME_SHEATHING_CAUTION_FALL = 3 /**< "fall". Sheets slide: stops at the eave and fall protection before the first one is laid. */
};
/** What sheathing leaves unchecked. */
typedef int32_t frame_roof_sheathing_not_checked;
enum frame_roof_sheathing_not_checked_values {
    FRAME_SHEATHING_UNCHECKED_SPAN = 0, /**< "span". Whether the panels span the rafters under the loads: see code_panel_span. */
    FRAME_SHEATHING_UNCHECKED_NAILING = 1 /**< "nailing". Fasteners, and the diaphragm that the sheathing makes. */
};

/** The sheathing of a roof framed as roof_members frames it: the fields of that name mean the same. */
typedef struct frame_roof_sheathing_in {
    uint32_t struct_size, struct_id;
    const frame_roof_corner *corners; /**< required. Corners of the building lines, in order; at least 3. */
    size_t corner_count;              /**< count : 1..2000. */
    const double *slopes;             /**< required : 0..2. Slope of each edge's roof, rise over run, or one for all. */
    size_t slope_count;               /**< count : 1..2000. */
    const frame_roof_kind *kinds;     /**< optional. What each edge is; hip where nothing is said. */
    size_t kind_count;                /**< count : 0..2000. */
    const frame_roof_hole_corner *holes; /**< optional. Corners of courtyards, courtyard by courtyard. */
    size_t hole_count;                /**< count : 0..2000. */
    frame_size rafter_size;           /**< required. Nominal size of rafters and jacks. */
    frame_size fascia_size;           /**< "the rafters' size". Nominal size of the sub-fascia, which the first course covers. */
    double spacing_in;                /**< 16 : >0..96. Spacing of rafters on centres. */
    double overhang_in;               /**< 0 : 0..120. Overhang of the first edge that a roof rises from, level, to the outer face of the tail cut. */
    double rake_overhang_in;          /**< 0 : 0..48. Overhang at gables, level. */
    double layout_x_in;               /**< optional : -1e6..1e6. A point that all layouts start from; the first corner where it is not given. */
    double layout_y_in;               /**< optional : -1e6..1e6. That point along y. */
    double sheet_length_in;           /**< 96 : 24..288. Length of a sheet, its strong way, along the eave. */
    double sheet_width_in;            /**< 48 : 12..96. Width of a sheet, up the slope. */
    double gap_in;                    /**< 0.125 : 0..1. Gap between sheets. */
    frame_bool edges_held;            /**< no. Whether clips, tongues or blocks hold the edges between rafters. */
    int32_t spare;
    const double *plates_in;          /**< optional : 0..2400. Height of each edge's plate above the plane of the corners, or one for all. */
    size_t plate_count;               /**< count : 0..2000. */
    double half_hip_in;               /**< optional : >0..2400. Height above the plate up to which a half hip is a gable. */
} frame_roof_sheathing_in;

/** The figures of the sheathing. */
typedef struct frame_roof_sheathing_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : roof_sheathing_caution. Cautions. */
    uint64_t not_checked; /**< bits : roof_sheathing_not_checked. What was not checked. */
    frame_known known;    /**< Geometry from what was given; worst source of a size. */
    int32_t whole;        /**< Parts that are whole sheets, or sheets cut to the layout. */
    double area_in2;        /**< Area of all faces, overhangs among them. */
    double parts_area_in2;  /**< Area of all parts: less by the gaps. */
    double unheld_in;       /**< Length of the edges between courses that nothing holds between rafters. */
    double nailers_in;      /**< Length of all nailers. */
} frame_roof_sheathing_out;

/** A part of the sheathing: a sheet or what is cut of one. Its corners lie in the face, along the eave and up the slope. */
typedef struct frame_roof_sheathing_part {
    uint32_t struct_size, struct_id;
    int32_t face;        /**< The roof face, as roof_solve numbers them. */
    int32_t course;      /**< Course, from 1 at the eave. */
    frame_bool whole;    /**< A whole rectangle of the course. */
    int32_t supports;    /**< Rafters it lies on. */
    double length_in;    /**< Greatest length, along the eave. */
    double width_in;     /**< Greatest width, up the slope. */
    double area_in2;     /**< Area. */
    uint32_t corner_first; /**< range : corners. Its corners, counterclockwise seen from above. */
    uint32_t corner_count; /**< count. */
    double along_in;     /**< Where it lies in the face: along the eave, from the point the layout is counted from to the part's end. */
    double up_in;        /**< Up the slope, from that point's level line to the part's lower edge. */
} frame_roof_sheathing_part;

/** A corner of a part, and the edge from it to the next. */
typedef struct frame_roof_sheathing_corner {
    uint32_t struct_size, struct_id;
    frame_sheathing_edge edge; /**< What the edge from here lies along. */
    int32_t spare;
    double along_in;  /**< Its place in the part: along the eave from the part's end. */
    double up_in;     /**< Up the slope from the part's lower edge. */
    double angle_deg; /**< Angle of the edge from here to the next corner, from the courses: 90 for a square joint. */
    double bevel_deg; /**< Tilt of the saw from square to the face, so that the sheathing of two faces meets in the plane that halves them; 0 where no other face is. */
} frame_roof_sheathing_corner;

/** An edge between two courses of a face. */
typedef struct frame_roof_sheathing_course {
    uint32_t struct_size, struct_id;
    int32_t face;     /**< The roof face. */
    int32_t course;   /**< The lower of the two courses, from 1. */
    double length_in; /**< Length of the edge. */
    double unheld_in; /**< What of it lies between rafters with nothing that holds it. */
} frame_roof_sheathing_course;

/** A nailer: where a joint has no member behind it. */
typedef struct frame_roof_sheathing_nailer {
    uint32_t struct_size, struct_id;
    int32_t face;     /**< The roof face. */
    int32_t course;   /**< The course of the joint, from 1. */
    double length_in; /**< Its length, up the slope. */
    double from_x_in; /**< Its lower end in plan, along x. */
    double from_y_in; /**< The lower end along y. */
    double to_x_in;   /**< Its upper end in plan, along x. */
    double to_y_in;   /**< The upper end along y. */
    double along_in;  /**< Its lower end in the face, as a part's: along the eave. */
    double up_in;     /**< Its lower end up the slope. */
} frame_roof_sheathing_nailer;

/** Lays out the sheathing of a roof: courses from the eave, joints on rafters and staggered by half a sheet from course to course, every
 * part with its outline and the angles of its edges; where a joint has no rafter behind it (near hips and valleys) a nailer is named,
 * and so is every edge between courses that nothing holds. Refuses what roof_members refuses; FRAME_IMPOSSIBLE when a sheet is
 * shorter than twice the spacing of the rafters. */
FRAME_ANSWER(roof_sheathing);
/** The parts, face by face, course by course. */
FRAME_ANSWER_LIST(roof_sheathing, part, parts);
/** The corners of the parts, part by part. */
FRAME_ANSWER_LIST(roof_sheathing, corner, corners);
/** The edges between courses. */
FRAME_ANSWER_LIST(roof_sheathing, course, courses);
/** The nailers. */
FRAME_ANSWER_LIST(roof_sheathing, nailer, nailers);
/** Draws a face (its number in the list of roof_solve's faces) with its sheets, square to it: courses, joints, every part with its number in
 * the list from 1 and what it is cut to, nailers dashed, tapes along the eave and up the slope. FRAME_OUT_OF_RANGE for a face without
 * parts. Free it with frame_drawing_free. */
FRAME_API frame_status frame_roof_sheathing_drawing(const frame_roof_sheathing *sheathing, int32_t face,
                                                    frame_drawing **drawing);

/** What became of a piece. */
typedef int32_t frame_as_found;
enum frame_as_found_values {
    FRAME_AS_FOUND_SAME = 1,    /**< "same". Cut as planned, to 1/64 in. */
    FRAME_AS_FOUND_CHANGED = 2, /**< "changed". The same piece, cut otherwise. */
    FRAME_AS_FOUND_NEW = 3,     /**< "new". Only what was found needs it. */
    FRAME_AS_FOUND_GONE = 4     /**< "gone". Only the plan had it. */
};
/** Cautions that go with a roof as found. */
typedef int32_t frame_roof_as_found_caution;
enum frame_roof_as_found_caution_values {
    FRAME_ROOF_AS_FOUND_CAUTION_CHANGED = 0, /**< "changed". Pieces are cut otherwise than planned: do not cut them by the plan. */
    FRAME_ROOF_AS_FOUND_CAUTION_NUMBER = 1, /**< "number". Other pieces are needed than planned: buy and lay out by what was found. */
    FRAME_ROOF_AS_FOUND_CAUTION_FAULTS = 2, /**< "faults". The roof as found does not close everywhere: frame it by roof_members and see its joints. */
    FRAME_ROOF_AS_FOUND_CAUTION_MEASURE = 3, /**< "measure". Readings that disagree are never averaged: see readings. */
    FRAME_ROOF_AS_FOUND_CAUTION_READINGS = 4 /**< "readings". Two readings of a plate disagree: each piece is cut by the longer of its two lengths, and fitted in place. */
};
/** What a roof as found leaves unchecked. */
typedef int32_t frame_roof_as_found_not_checked;
enum frame_roof_as_found_not_checked_values {
    FRAME_ROOF_AS_FOUND_UNCHECKED_LEVEL = 0 /**< "level". Whether each plate is level along its length, and, where no heights were given, whether all are: see levels. */
};
/** A planned roof and the corners and plates that were found; the fields of roof_members of the same name mean the same. */
typedef struct frame_roof_as_found_in {
    uint32_t struct_size, struct_id;
    const frame_roof_corner *corners; /**< required. The corners as planned, in order; at least 3. */
    size_t corner_count;              /**< count : 1..2000. */
    const frame_roof_corner *found;   /**< required. The same corners as found, in the same order: from survey, for one. */
    size_t found_count;               /**< count : 1..2000. */
    const double *slopes;             /**< required : 0..2. Slope of each edge's roof, rise over run, or one for all. */
    size_t slope_count;               /**< count : 1..2000. */
    const frame_roof_kind *kinds;     /**< optional. What each edge is; hip where nothing is said. */
    size_t kind_count;                /**< count : 0..2000. */
    frame_size rafter_size;           /**< required. Nominal size of rafters and jacks. */
    int32_t spare;
    double spacing_in;                /**< 16 : >0..96. Spacing of rafters on centres. */
    double overhang_in;               /**< 0 : 0..120. Overhang of the first edge that a roof rises from, level. */
    double seat_in;                   /**< "3-1/2 in" : >0..24. Level seat of the rafters on that edge. */
    const double *plates_in;          /**< optional : 0..2400. Planned height of each edge's plate above the plane of the corners, or one for all. */
    size_t plate_count;               /**< count : 0..2000. */
    const double *found_plates_in;    /**< optional : 0..2400. The same heights as found; as planned where they are not given. */
    size_t found_plate_count;         /**< count : 0..2000. */
    const double *second_plates_in;   /**< optional : 0..2400. A second reading of the same heights. */
    size_t second_plate_count;        /**< count : 0..2000. */
    double refuse_over_in;            /**< 0.5 : >0..120. Two readings of a plate that differ by more are refused. */
    double half_hip_in;               /**< optional : >0..2400. Height above the plate up to which a half hip is a gable. */
} frame_roof_as_found_in;
/** How a roof as found differs from the planned one. */
typedef struct frame_roof_as_found_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : roof_as_found_caution. Cautions. */
    uint64_t not_checked; /**< bits : roof_as_found_not_checked. What was not checked. */
    frame_known known;    /**< Geometry from what was given; worst source of a size. */
    int32_t changed;      /**< Pieces that are cut otherwise. */
    int32_t added;        /**< Pieces that only what was found needs. */
    int32_t gone;         /**< Pieces that only the plan had. */
    double largest_in;    /**< The largest difference of length. */
    double moved_in;      /**< The farthest that a corner was found from where it was planned. */
    double ridge_change_in; /**< What the highest ridge lies higher than planned; negative lower. */
    double plate_moved_in;  /**< The most that a plate was found above or below its planned height. */
    double readings_in;     /**< The most that two readings of a plate differ; 0 with one of each. */
} frame_roof_as_found_out;
/** A piece, as planned and as found. */
typedef struct frame_roof_as_found_piece {
    uint32_t struct_size, struct_id;
    frame_roof_member kind;   /**< What it is. */
    frame_as_found became;    /**< What became of it. */
    int32_t planned;          /**< Its place in the list of roof_members for the plan; -1 for none. */
    int32_t found;            /**< Its place in that list for the corners found; -1 for none. */
    double planned_length_in; /**< Long point to long point as planned; not given for a new one. */
    double found_length_in;   /**< The same as found; not given for one that is gone. */
    double difference_in;     /**< What it is longer than planned; not given where there is nothing to compare. */
    const char *name;         /**< Its name as found; of one that is gone as planned. */
    double second_length_in;  /**< Its length by the second reading of the plates; not given without one. */
    double cut_length_in;     /**< The length to cut to: the longer of the two. Not given for one that is gone. */
} frame_roof_as_found_piece;
/** Frames a roof over the corners and plates as planned and again over those found, and tells piece by piece what changed. With a second
 * reading of the plates it is framed a third time, and every piece is cut by the longer of its two lengths: never by an average. Refuses
 * what roof_members refuses; FRAME_CONFLICT when there are not as many corners or plates found as planned; FRAME_REFUSED when two
 * readings of a plate differ by too much. */
FRAME_ANSWER(roof_as_found);
/** The pieces that roof_members lists for what was found, then those that are gone. */
FRAME_ANSWER_LIST(roof_as_found, piece, pieces);

FRAME_END

#endif
