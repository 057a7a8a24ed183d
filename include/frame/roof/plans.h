/** @file roof/plans.h
 * The roof over a plan, and roofs that run into each other.
 */
#ifndef FRAME_ROOF_PLANS_H
#define FRAME_ROOF_PLANS_H

#include <frame/base.h>
#include <frame/material.h>
#include <frame/timber.h>

FRAME_BEGIN

/** What an edge of the plan is to the roof. */
typedef int32_t frame_roof_kind;
enum frame_roof_kind_values {
    FRAME_ROOF_HIP = 1,      /**< "hip" | "eave" | "shed". A roof rises from it at its slope. */
    FRAME_ROOF_GABLE = 2,    /**< "gable". A gable stands on it, up to the roofs beside it; its slope is not looked at. */
    FRAME_ROOF_WALL = 3,     /**< "wall" | "abutting wall". A wall that is there already: roofs end at it; its slope is not looked at. */
    FRAME_ROOF_HALF_HIP = 4  /**< "half hip". A gable up to half_hip_in above its plate, from there a roof at its slope. */
};
/** What a face of a roof is. */
typedef int32_t frame_roof_face_kind;
enum frame_roof_face_kind_values {
    FRAME_FACE_ROOF = 1,       /**< "roof". A sloping roof. */
    FRAME_FACE_UPPER_ROOF = 2, /**< "upper roof". The part of it above a break of slope. */
    FRAME_FACE_GABLE = 3,      /**< "gable". Upright: a gable, or the gable under a half hip. */
    FRAME_FACE_WALL = 4,       /**< "wall". Upright: the wall that roofs end at. */
    FRAME_FACE_PLATE_WALL = 5, /**< "plate wall". Upright: the wall up to a higher plate. */
    FRAME_FACE_BREAK_WALL = 6  /**< "break wall". Upright: between roofs of unequal slopes on edges in line. */
};
/** What a line of a roof is. */
typedef int32_t frame_roof_line_kind;
enum frame_roof_line_kind_values {
    FRAME_LINE_RIDGE = 1,  /**< "ridge". Level, along the top of a roof. */
    FRAME_LINE_HIP = 2,    /**< "hip". Sloping; both roofs fall away from it. */
    FRAME_LINE_VALLEY = 3, /**< "valley". Both roofs fall towards it. */
    FRAME_LINE_EAVE = 4,   /**< "eave". Where a roof begins. */
    FRAME_LINE_RAKE = 5,   /**< "rake". Where a roof ends at a gable. */
    FRAME_LINE_BREAK = 6,  /**< "break". Where a roof changes its slope. */
    FRAME_LINE_WALL = 7,   /**< "wall line". Where a roof ends at a wall. */
    FRAME_LINE_SEAM = 8,   /**< "seam". Between roofs that lie in one plane. */
    FRAME_LINE_BASE = 9,   /**< "base". The foot of a gable or wall. */
    FRAME_LINE_CORNER = 10 /**< "corner". Between upright faces. */
};
/** Cautions that go with a roof. */
typedef int32_t frame_roof_caution;
enum frame_roof_caution_values {
    FRAME_ROOF_CAUTION_CLOCKWISE = 0, /**< "clockwise". The corners were given clockwise: edges keep their numbers and are read the other way. */
    FRAME_ROOF_CAUTION_SLOPE = 1, /**< "slope". A slope above 1.5 (18 in 12) was read as rise over run: was "2 in 12" meant by 2? */
    FRAME_ROOF_CAUTION_LOW = 2, /**< "low_slope". Under 3 in 12 the ridge must be designed as a beam (IRC R802). */
    FRAME_ROOF_CAUTION_BREAK_WALL = 3, /**< "break_wall". Edges in line have unequal slopes: an upright wall stands between their roofs. */
    FRAME_ROOF_CAUTION_VALLEY = 4, /**< "valley". Valleys gather water and snow: flashing, and snow that drifts and slides. */
    FRAME_ROOF_CAUTION_MEASURE = 5 /**< "measure". Measure the building again before cutting: the plan is not the plate. */
};
/** What a roof from a plan leaves unchecked. */
typedef int32_t frame_roof_not_checked;
enum frame_roof_not_checked_values {
    FRAME_ROOF_UNCHECKED_STRENGTH = 0, /**< "strength". Whether its members hold their loads. */
    FRAME_ROOF_UNCHECKED_OVERHANG = 1  /**< "overhang". Overhangs: areas and lengths are those inside the building lines. */
};

/** A corner of a plan. */
typedef struct frame_roof_corner {
    uint32_t struct_size, struct_id;
    double x_in; /**< required : -1e6..1e6. Its place along x. */
    double y_in; /**< required : -1e6..1e6. Its place along y. */
} frame_roof_corner;
/** Sets up a corner: every field not given. */
FRAME_ELEMENT(roof_corner);

/** A corner of a courtyard. */
typedef struct frame_roof_hole_corner {
    uint32_t struct_size, struct_id;
    int32_t hole; /**< required : 1..1000. Number of the courtyard; its corners stand together in the list. */
    int32_t spare;
    double x_in;  /**< required : -1e6..1e6. The corner's place along x. */
    double y_in;  /**< required : -1e6..1e6. The corner's place along y. */
} frame_roof_hole_corner;
/** Sets up a courtyard's corner: every field not given. */
FRAME_ELEMENT(roof_hole_corner);

/** A plan and the slopes of its roof. Edge i runs from corner i to corner i + 1, the last one back to the first; edges of
 * courtyards are numbered after those of the outline. Lists that say something for each edge have as many items as there
 * are edges, or one for all. */
typedef struct frame_roof_solve_in {
    uint32_t struct_size, struct_id;
    const frame_roof_corner *corners; /**< required. Corners of the building lines, in order; at least 3. */
    size_t corner_count;              /**< count : 1..20000. */
    const double *slopes;             /**< required : 0..2. Slope of each edge's roof, rise over run; more than 0 where a roof rises. */
    size_t slope_count;               /**< count : 1..20000. */
    const frame_roof_kind *kinds;     /**< optional. What each edge is; hip where nothing is said. */
    size_t kind_count;                /**< count : 0..20000. */
    const frame_roof_hole_corner *holes; /**< optional. Corners of courtyards, courtyard by courtyard. */
    size_t hole_count;                /**< count : 0..20000. */
    const double *plates_in;          /**< optional : 0..2400. Height of each edge's plate above the plane of the corners. */
    size_t plate_count;               /**< count : 0..20000. */
    const double *upper_slopes;       /**< optional : >0..2. Slope of each edge's roof above the break. */
    size_t upper_slope_count;         /**< count : 0..20000. */
    double break_in;                  /**< optional : >0..2400. Height above its plate at which each roof breaks to its upper slope. */
    double half_hip_in;               /**< optional : >0..2400. Height above the plate up to which a half hip is a gable. */
} frame_roof_solve_in;

/** The measures of a whole roof. */
typedef struct frame_roof_solve_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;        /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;       /**< bits : roof_caution. Cautions. */
    uint64_t not_checked;    /**< bits : roof_not_checked. What was not checked. */
    frame_known known;       /**< Geometry from what was given. */
    int32_t edges;           /**< Edges of the plan, courtyards among them. */
    double plan_area_in2;    /**< Area of the plan. */
    double surface_area_in2; /**< Area of the sloping roofs. */
    double upright_area_in2; /**< Area of gables and walls, from the plane of the corners, or the lowest plate, up. */
    double volume_in3;       /**< Volume between the plane of the corners and the roof. */
    double height_in;        /**< Greatest height of the roof above the plane of the corners. */
    double ridge_length_in;         /**< Length of all ridges. */
    double hip_length_in;           /**< True length of all hips. */
    double valley_length_in;        /**< True length of all valleys. */
    double eave_length_in;          /**< Length of all eaves. */
    double rake_length_in;          /**< True length of all rakes. */
    double break_length_in;         /**< Length of all breaks of slope. */
} frame_roof_solve_out;

/** A face of a roof. */
typedef struct frame_roof_solve_face {
    uint32_t struct_size, struct_id;
    int32_t edge;              /**< The edge of the plan it rises from; -1 for a break wall. */
    frame_roof_face_kind kind; /**< What it is. */
    double slope;              /**< Its slope, rise over run; not given when it is upright. */
    double toward_deg;         /**< The direction up the slope in plan, counterclockwise from x; of an upright face, into the building. */
    double area_in2;           /**< Its area. */
    double plan_area_in2;      /**< Its area in plan; 0 when it is upright. */
    double volume_in3;         /**< Volume under it, down to the plane of the corners. */
    double low_in;             /**< Its lowest height. */
    double high_in;            /**< Its greatest height. */
    uint32_t outline_first;    /**< range : outlines. Its corners, counterclockwise seen from outside. */
    uint32_t outline_count;    /**< count. */
} frame_roof_solve_face;

/** A line of a roof. It runs upward. */
typedef struct frame_roof_solve_line {
    uint32_t struct_size, struct_id;
    frame_roof_line_kind kind; /**< What it is. */
    int32_t from_point;        /**< The point it begins at, from 0; the lower one. */
    int32_t to_point;          /**< The point it ends at. */
    int32_t right_face;        /**< The face on the right going up it, from 0; -1 for none. */
    int32_t left_face;         /**< The face on the left; -1 for none. */
    int32_t spare;
    double length_in;          /**< True length. */
    double run_in;             /**< Length in plan. */
    double rise_in;            /**< Height from its lower to its upper end. */
    double plan_deg;           /**< Its direction in plan, counterclockwise from x; not given when it is upright. */
} frame_roof_solve_line;

/** A point where lines of a roof meet. The first ones are the corners of the plan, in order. */
typedef struct frame_roof_solve_point {
    uint32_t struct_size, struct_id;
    double x_in; /**< Its place along x. */
    double y_in; /**< Its place along y. */
    double z_in; /**< Its height above the plane of the corners. */
} frame_roof_solve_point;

/** A corner of a face's outline. */
typedef struct frame_roof_solve_outline {
    uint32_t struct_size, struct_id;
    int32_t point; /**< The point it lies at, from 0. */
    int32_t face;  /**< The face, from 0. */
    int32_t loop;  /**< Number of the loop in that face, from 0; a face has more than one where it lies in several parts, as above a break. */
    int32_t spare;
    double x_in;   /**< Its place along x. */
    double y_in;   /**< Its place along y. */
    double z_in;   /**< Its height above the plane of the corners. */
} frame_roof_solve_outline;

/** Finds the roof over a plan: every face, every line, true heights, areas and volume. All edges rise at once, each at its
 * slope; where two roofs meet, there is a line. Any simple plan with courtyards; each edge its own slope, kind and plate.
 * FRAME_IMPOSSIBLE when edges cross or touch (both are named), corners coincide or fold back, a courtyard lies outside, or
 * the roof does not close because nothing but gables and walls stand around a part of it; FRAME_CONFLICT when a list has
 * neither one item nor one for each edge; FRAME_REQUIRED without half_hip_in for a half hip. */
FRAME_ANSWER(roof_solve);
/** The faces, edge by edge; then upper roofs, plate walls and what stands on half hips; then break walls. */
FRAME_ANSWER_LIST(roof_solve, face, faces);
/** The lines. */
FRAME_ANSWER_LIST(roof_solve, line, lines);
/** The points. */
FRAME_ANSWER_LIST(roof_solve, point, points);
/** The outlines of the faces, face by face. */
FRAME_ANSWER_LIST(roof_solve, outline, outlines);
/** Draws the roof in plan: lines, faces with slope and area, building lines on tapes. Free the drawing with frame_drawing_free. */
FRAME_API frame_status frame_roof_solve_drawing(const frame_roof_solve *roof, frame_drawing **drawing);

/** Which of the two roofs that meet. */
typedef int32_t frame_meeting_roof;
enum frame_meeting_roof_values {
    FRAME_MEETING_MAIN = 1, /**< "main" | "house". The main roof. */
    FRAME_MEETING_OTHER = 2 /**< "other" | "addition" | "dormer" | "porch". The roof that runs into it. */
};
/** Cautions that go with roofs that meet. */
typedef int32_t frame_roof_meet_caution;
enum frame_roof_meet_caution_values {
    FRAME_ROOF_MEET_CAUTION_APART = 0, /**< "apart". The roofs do not meet in a line: one lies wholly over the other, or they miss. */
    FRAME_ROOF_MEET_CAUTION_WALL = 1, /**< "wall". Upright faces of one roof stand in the other: a wall meets a slope there, which needs its flashing and a cricket where water is held. */
    FRAME_ROOF_MEET_CAUTION_SNOW = 2, /**< "snow". Snow drifts and slides where roofs of different heights meet: see roof_snow. */
    FRAME_ROOF_MEET_CAUTION_MEASURE = 3 /**< "measure". Measure both roofs again before cutting. */
};
/** What is left unchecked where roofs meet. */
typedef int32_t frame_roof_meet_not_checked;
enum frame_roof_meet_not_checked_values {
    FRAME_ROOF_MEET_UNCHECKED_STRENGTH = 0 /**< "strength". Whether the rafters below hold what now stands on them. */
};

/** Two roofs over plans that overlap: each as for roof_solve. */
typedef struct frame_roof_meet_in {
    uint32_t struct_size, struct_id;
    const frame_roof_corner *corners; /**< required. Corners of the main roof's building lines. */
    size_t corner_count;              /**< count : 1..2000. */
    const double *slopes;             /**< required : 0..2. Slope of each edge of it, or one for all. */
    size_t slope_count;               /**< count : 1..2000. */
    const frame_roof_kind *kinds;     /**< optional. What each edge of it is: hip, gable or wall. */
    size_t kind_count;                /**< count : 0..2000. */
    const frame_roof_corner *other_corners; /**< required. Corners of the other roof's building lines, in the same axes; it may reach as far under the main roof as you like. */
    size_t other_corner_count;              /**< count : 1..2000. */
    const double *other_slopes;             /**< required : 0..2. Slope of each edge of the other roof, or one for all. */
    size_t other_slope_count;               /**< count : 1..2000. */
    const frame_roof_kind *other_kinds;     /**< optional. What each edge of the other roof is: hip, gable or wall. */
    size_t other_kind_count;                /**< count : 0..2000. */
    double other_height_in;                 /**< required : -2400..2400. How much higher than the main roof's the other's plane of the corners lies. */
} frame_roof_meet_in;

/** The figures of two roofs that meet. */
typedef struct frame_roof_meet_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : roof_meet_caution. Cautions. */
    uint64_t not_checked; /**< bits : roof_meet_not_checked. What was not checked. */
    frame_known known;    /**< Geometry from what was given. */
    int32_t spare;
    double meeting_length_in;  /**< True length of all lines in which sloping roofs meet: the valleys on the main roof. */
    double main_area_in2;      /**< Area of the main roof. */
    double main_covered_in2;   /**< What of it the other roof covers. */
    double other_area_in2;     /**< Area of the other roof. */
    double other_buried_in2;   /**< What of that lies under the main roof, and is not built. */
    double seen_area_in2;      /**< Area of what is seen of both: what water runs over. */
} frame_roof_meet_out;

/** A line in which a face of each roof meet. */
typedef struct frame_roof_meet_line {
    uint32_t struct_size, struct_id;
    int32_t main_face;  /**< The face of the main roof, as roof_solve numbers them. */
    int32_t other_face; /**< The face of the other roof. */
    double from_x_in;   /**< Its lower end, along x. */
    double from_y_in;   /**< The lower end along y. */
    double from_z_in;   /**< Its height above the main roof's plane of the corners. */
    double to_x_in;     /**< Its upper end, along x. */
    double to_y_in;     /**< The upper end along y. */
    double to_z_in;     /**< Its height. */
    double length_in;   /**< True length. */
    double run_in;      /**< Length in plan. */
    double rise_in;     /**< Height from the lower end to the upper. */
    double main_deg;    /**< Angle on the main roof's face between the line and the eave. */
    double other_deg;   /**< Angle on the other roof's face between the line and the eave. */
} frame_roof_meet_line;

/** A face of either roof, and what is seen of it. */
typedef struct frame_roof_meet_face {
    uint32_t struct_size, struct_id;
    frame_meeting_roof roof; /**< Which roof. */
    int32_t face;            /**< The face, as roof_solve numbers them. */
    double area_in2;         /**< Its area. */
    double under_in2;        /**< What of it lies under the other roof. */
    double seen_in2;         /**< What remains. */
} frame_roof_meet_face;

/** Finds where two roofs meet: an addition against the house, a dormer on a face, a porch under an eave. Each is solved over its own plan;
 * of both, the higher is seen. Lines in which they meet, faces and areas covered, buried and seen. FRAME_IMPOSSIBLE as for
 * roof_solve, its field named for the roof at fault. */
FRAME_ANSWER(roof_meet);
/** The lines in which faces of both roofs meet. */
FRAME_ANSWER_LIST(roof_meet, line, lines);
/** The sloping faces, those of the main roof first. */
FRAME_ANSWER_LIST(roof_meet, face, faces);

FRAME_END

#endif
