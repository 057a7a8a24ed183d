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

/* ---- what the tape found ---- */

/** A reading at a place along a line. */
typedef struct frame_station {
    uint32_t struct_size, struct_id;
    double at_in;      /**< required : -12000..12000. Where, on one tape along the line. */
    double reading_in; /**< required : -1200..12000. What was read there. */
    const char *name;  /**< optional. What it is called. */
} frame_station;
/** Sets up a station: every field not given. */
FRAME_ELEMENT(station);

/** A corner of a measured plan. */
typedef struct frame_survey_corner {
    uint32_t struct_size, struct_id;
    const char *name; /**< optional. Its name ("lake side, east"). */
    double x_in;      /**< optional : -120000..120000. About where it lies, from a plan; only the side it lies on matters. */
    double y_in;      /**< optional : -120000..120000. About where it lies. */
} frame_survey_corner;
/** Sets up a corner: every field not given. */
FRAME_ELEMENT(survey_corner);

/** A distance measured between two corners. */
typedef struct frame_survey_distance {
    uint32_t struct_size, struct_id;
    int32_t corner_a;   /**< required : 1..60. Number of the one corner. */
    int32_t corner_b;   /**< required : 1..60. Number of the other. */
    double length_in;   /**< required : >0..12000. The level distance between them. */
    double error_in;    /**< 0.125 : >0..12. Standard error of such a measurement: two in three are nearer than this. */
    const char *name;   /**< optional. Its name ("long diagonal"). */
} frame_survey_distance;
/** Sets up a distance: every field not given. */
FRAME_ELEMENT(survey_distance);

/** Cautions that go with a measured plan. */
typedef int32_t frame_survey_caution;
enum frame_survey_caution_values {
    FRAME_SURVEY_CAUTION_MEASURE = 0, /**< "measure". Measure again before cutting. */
    FRAME_SURVEY_CAUTION_SUSPECT = 1, /**< "suspect". One measurement does not fit the others: measure it again. */
    FRAME_SURVEY_CAUTION_CANNOT_TELL = 2, /**< "cannot_tell". The measurements contradict each other, but too few are to spare to tell which is wrong: each shows what it would have to be. */
    FRAME_SURVEY_CAUTION_NONE_TO_SPARE = 3, /**< "none_to_spare". No measurement is to spare: a wrong one would not show. Measure a further diagonal. */
    FRAME_SURVEY_CAUTION_SIDE = 4 /**< "either_side". A corner with only two distances may lie on either side of the line between their ends; the corners are taken to go round counterclockwise without a reentrant one there. */
};
/** What a measured plan leaves unchecked. */
typedef int32_t frame_survey_not_checked;
enum frame_survey_not_checked_values {
    FRAME_SURVEY_UNCHECKED_LEVEL = 0 /**< "level". Whether the distances were measured level, and the heights of the corners. */
};

/** A plan measured with the tape alone: sides and diagonals. */
typedef struct frame_survey_in {
    uint32_t struct_size, struct_id;
    const frame_survey_distance *distances; /**< required. Sides and diagonals. */
    size_t distance_count;                  /**< count : 1..1000. */
    const frame_survey_corner *corners;     /**< optional. Names of the corners and about where they lie. */
    size_t corner_count;                    /**< count : 0..60. */
} frame_survey_in;

/** Figures of a measured plan. */
typedef struct frame_survey_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : survey_caution. Cautions. */
    uint64_t not_checked; /**< bits : survey_not_checked. What was not checked. */
    frame_known known;    /**< Geometry from what was given. */
    frame_bool consistent; /**< Whether no measurement contradicts the others. */
    int32_t to_spare;     /**< Measurements more than the plan needs. */
    int32_t suspect;      /**< Number of the measurement that does not fit, from 1; 0 when none can be named. */
    double worst_in;      /**< Largest residual. */
    double spread;        /**< How the residuals compare with the errors given: about 1 when all is well; not given without a measurement to spare. */
    double off_square_deg; /**< Most that a corner nearest to a right angle is off it. */
    double area_in2;      /**< Area of the plan, the corners taken in order. */
    double perimeter_in;  /**< Its perimeter. */
} frame_survey_out;

/** A corner of the plan, as found. Corner 1 lies at 0, corner 2 on the x axis. */
typedef struct frame_survey_point {
    uint32_t struct_size, struct_id;
    double x_in;        /**< Along the line from corner 1 to corner 2. */
    double y_in;        /**< To the left of it. */
    double error_in;    /**< Standard error of its place, from the errors given. */
    double angle_deg;   /**< Angle inside the plan, between the sides to the corners before and after it. */
    double off_square_deg; /**< How far that is from the nearest whole quarter turn. */
    double side_in;     /**< Length of the side to the next corner. */
    double bearing_deg; /**< Direction of that side, counterclockwise from the x axis. */
    const char *name;   /**< Its name. */
    int32_t number;     /**< Its number, from 1. */
    int32_t distances;  /**< How many distances hold it. */
} frame_survey_point;

/** A measurement, against the plan. */
typedef struct frame_survey_residual {
    uint32_t struct_size, struct_id;
    int32_t corner_a;      /**< Number of the one corner. */
    int32_t corner_b;      /**< Number of the other. */
    double measured_in;    /**< As measured. */
    double found_in;       /**< In the plan found. */
    double residual_in;    /**< Measured less found. */
    double share;          /**< How much of an error of its own would show in its residual: 0 when nothing checks it, 1 when all does. */
    double standardized;   /**< Residual in standard errors of a residual: beyond 3.29 in a thousand by chance; not given when nothing checks it. */
    double would_be_in;    /**< What it would be by all the others; not given when nothing checks it. */
    const char *name;      /**< Its name. */
} frame_survey_residual;

/** Finds the corners of a plan from sides and diagonals by least squares, each measurement weighed by its error, and tests
 * each against the others (Baarda's data snooping). Corners are numbered in order round the plan, counterclockwise.
 * FRAME_IMPOSSIBLE when corners are not held by the distances: the message names one. */
FRAME_ANSWER(survey);
/** The corners. */
FRAME_ANSWER_LIST(survey, point, points);
/** The measurements. */
FRAME_ANSWER_LIST(survey, residual, residuals);

/** What a piece is measured for. */
typedef int32_t frame_reading_use;
enum frame_reading_use_values {
    FRAME_READING_INFILL = 1, /**< "infill" | "between". A piece that goes in between: too long does not go in. */
    FRAME_READING_REACH = 2,  /**< "must reach" | "post" | "jack" | "tie". A post, jack or tie: too short cannot be mended. */
    FRAME_READING_LAP = 3     /**< "lapping sheet" | "lap". A sheet that laps over: it may be longer. */
};

/** Cautions that go with readings. */
typedef int32_t frame_readings_caution;
enum frame_readings_caution_values {
    FRAME_READINGS_CAUTION_DISAGREE = 0, /**< "disagree". The readings disagree by more than they should: measure again. They were not averaged. */
    FRAME_READINGS_CAUTION_ENDS = 1, /**< "ends". A bowed member is measured at its ends and straightened, not over the bow. */
    FRAME_READINGS_CAUTION_ONE = 2   /**< "one". One reading alone shows no mistake: read it again, from the other end. */
};
/** What readings leave unchecked. */
typedef int32_t frame_readings_not_checked;
enum frame_readings_not_checked_values {
    FRAME_READINGS_UNCHECKED_ALLOWANCE = 0 /**< "allowance". Gaps and allowances for fitting: they are not taken off. */
};

/** Several readings of one length. */
typedef struct frame_readings_in {
    uint32_t struct_size, struct_id;
    const double *readings_in; /**< required : >0..12000. The readings. */
    size_t reading_count;      /**< count : 1..100. */
    double agree_within_in;    /**< 0.0625 : 0..12. Readings that differ by no more agree. */
    double refuse_over_in;     /**< 0.5 : >0..120. Readings for what must reach are refused when they differ by more. */
    frame_reading_use use;     /**< required. What the piece is for. */
    int32_t spare;
} frame_readings_in;

/** The length to cut to. */
typedef struct frame_readings_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : readings_caution. Cautions. */
    uint64_t not_checked; /**< bits : readings_not_checked. What was not checked. */
    frame_known known;    /**< What was given. */
    frame_bool agree;     /**< Whether the readings agree. */
    double chosen_in;     /**< The length chosen: the shortest for infill, the longest for the others. */
    double shortest_in;   /**< The shortest reading. */
    double longest_in;    /**< The longest. */
    double spread_in;     /**< How far they differ. */
} frame_readings_out;

/** Chooses among readings of one length: infill takes the shorter, what must reach and sheets that lap the longer; never the
 * average. FRAME_REFUSED for what must reach when they differ too much. */
FRAME_CALCULATION(readings);

/** How heights were read. */
typedef int32_t frame_level_reading;
enum frame_level_reading_values {
    FRAME_LEVEL_DOWN = 1, /**< "down" | "rod" | "from a level line". Down from a level line or a level's line of sight: a greater reading is lower. */
    FRAME_LEVEL_UP = 2    /**< "up" | "height". Heights: a greater reading is higher. */
};

/** What height points are brought to. */
typedef int32_t frame_level_aim;
enum frame_level_aim_values {
    FRAME_LEVEL_HIGHEST = 1, /**< "highest". The highest of them: the others are shimmed. */
    FRAME_LEVEL_LOWEST = 2,  /**< "lowest". The lowest of them: the others are planed or cut. */
    FRAME_LEVEL_GIVEN = 3    /**< "given". A reading of its own. */
};

/** Cautions that go with heights and lines. */
typedef int32_t frame_line_caution;
enum frame_line_caution_values {
    FRAME_LINE_CAUTION_MEASURE = 0,   /**< "measure". Measure again before cutting. */
    FRAME_LINE_CAUTION_TOLERANCE = 1, /**< "tolerance". At least one place is out by more than the tolerance. */
    FRAME_LINE_CAUTION_BEYOND = 2,    /**< "beyond". A place lies outside the readings: its figure goes on straight from the last two. */
    FRAME_LINE_CAUTION_SAG = 3,       /**< "string_sag". A string sags: pull it hard, or say by how much at its middle. */
    FRAME_LINE_CAUTION_HUMP = 4       /**< "hump". Posts follow the beam's own hump: it flattens under load only as far as it is allowed to. */
};
/** What heights and lines leave unchecked. */
typedef int32_t frame_line_not_checked;
enum frame_line_not_checked_values {
    FRAME_LINE_UNCHECKED_STRENGTH = 0, /**< "strength". Whether what is planed, cut or shimmed still holds. */
    FRAME_LINE_UNCHECKED_SETTLING = 1  /**< "settling". Why it is out: settling, rot or overload may go on. */
};

/** Heights of points. */
typedef struct frame_levels_in {
    uint32_t struct_size, struct_id;
    const frame_station *points;  /**< required. The points and their readings. */
    size_t point_count;           /**< count : 1..1000. */
    double aim_in;                /**< optional : -1200..12000. The reading of the height to bring them to, for the aim "given". */
    double tolerance_in;          /**< 0.125 : 0..12. How far out a point may be. */
    double piece_in;              /**< optional : >0..1200. Length of a piece that stands on a point at that height: each gets its own. */
    frame_level_reading reading;  /**< required. How the heights were read. */
    frame_level_aim aim;          /**< highest. What they are brought to. */
} frame_levels_in;

/** How far out of level. */
typedef struct frame_levels_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : line_caution. Cautions. */
    uint64_t not_checked; /**< bits : line_not_checked. What was not checked. */
    frame_known known;    /**< What was given. */
    int32_t out_count;    /**< Points out by more than the tolerance. */
    double out_of_level_in; /**< Highest less lowest. */
    double most_shim_in;  /**< Most to be shimmed up. */
    double most_cut_in;   /**< Most to be planed or cut down. */
    double fall;          /**< Fall of the straight line that fits best along the tape, rise over run; not given for a single place. */
} frame_levels_out;

/** A point. */
typedef struct frame_levels_mark {
    uint32_t struct_size, struct_id;
    double at_in;     /**< Where. */
    double height_in; /**< Above what it is brought to; negative below. */
    double shim_in;   /**< To be shimmed up. */
    double cut_in;    /**< To be planed or cut down. */
    double piece_in;  /**< Length of the piece that stands on it; not given without one. */
    const char *name; /**< What it is called. */
} frame_levels_mark;

/** Compares heights: how far out of level, what to shim, plane or cut at each point, and each piece's own length.
 * FRAME_REQUIRED for the aim "given" without aim_in; FRAME_IMPOSSIBLE when a piece would have no length. */
FRAME_ANSWER(levels);
/** The points. */
FRAME_ANSWER_LIST(levels, mark, marks);

/** A post under a beam. */
typedef struct frame_post_station {
    uint32_t struct_size, struct_id;
    double at_in;   /**< required : 0..12000. Where it stands, along the string. */
    double drop_in; /**< required : >0..1200. From the string down to what it stands on. */
    double hump_in; /**< 0 : -12..12. How far the beam's underside, lying free, is above the straight line between its ends there. */
    const char *name; /**< optional. What it is called. */
} frame_post_station;
/** Sets up a post's station: every field not given. */
FRAME_ELEMENT(post_station);

/** Posts under a beam. The string is stretched where the beam's underside comes at its ends, over the outside posts. */
typedef struct frame_post_lengths_in {
    uint32_t struct_size, struct_id;
    const frame_post_station *posts; /**< required. The posts, outside ones included, in order. */
    size_t post_count;               /**< count : 2..200. */
    double sag_in;                   /**< 0 : 0..12. Sag of the string at its middle. */
    double cap_in;                   /**< 0 : 0..12. What lies between post and beam: a cap's seat. */
    double base_in;                  /**< 0 : 0..12. What lies under the post: a base's stand-off. */
    frame_bool straighten;           /**< no. Pull the beam straight, instead of letting the posts follow its hump. */
    int32_t spare;
} frame_post_lengths_in;

/** Figures of the posts. */
typedef struct frame_post_lengths_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : line_caution. Cautions. */
    uint64_t not_checked; /**< bits : line_not_checked. What was not checked. */
    frame_known known;    /**< What was given. */
    int32_t spare;
    double longest_in;    /**< Longest post. */
    double shortest_in;   /**< Shortest post. */
    double most_hump_in;  /**< Most that the beam humps at a post. */
} frame_post_lengths_out;

/** A post. */
typedef struct frame_post_lengths_post {
    uint32_t struct_size, struct_id;
    double at_in;     /**< Where. */
    double length_in; /**< Length to cut it to. */
    double sag_in;    /**< How far the string hangs below the straight line there. */
    double pull_in;   /**< How far the beam is pulled down there to be straight; negative: held up. 0 when the posts follow it. */
    const char *name; /**< What it is called. */
} frame_post_lengths_post;

/** Finds the length of each post under a beam from a string. FRAME_IMPOSSIBLE when a post would have no length or the posts are
 * not in order. */
FRAME_ANSWER(post_lengths);
/** The posts. */
FRAME_ANSWER_LIST(post_lengths, post, posts);

/** Pieces between two lines that are not parallel. */
typedef struct frame_own_lengths_in {
    uint32_t struct_size, struct_id;
    const frame_station *stations; /**< required. The clear distance measured at some places, in order. */
    size_t station_count;          /**< count : 1..1000. */
    const double *marks_in;        /**< required : -12000..12000. Where the pieces go, on the same tape. */
    size_t mark_count;             /**< count : 1..10000. */
    double deduct_in;              /**< 0 : -120..120. Taken off each: gaps, hangers; negative to add bearings. */
    double tolerance_in;           /**< 0.125 : 0..12. Pieces whose lengths differ by no more may be cut alike. */
} frame_own_lengths_in;

/** Figures of the pieces. */
typedef struct frame_own_lengths_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : line_caution. Cautions. */
    uint64_t not_checked; /**< bits : line_not_checked. What was not checked. */
    frame_known known;    /**< What was given. */
    int32_t spare;
    double longest_in;    /**< Longest piece. */
    double shortest_in;   /**< Shortest piece. */
    double out_of_parallel_in; /**< Longest clear distance measured less the shortest. */
} frame_own_lengths_out;

/** A piece. */
typedef struct frame_own_lengths_piece {
    uint32_t struct_size, struct_id;
    double mark_in;    /**< Where it goes. */
    double clear_in;   /**< Clear distance there. */
    double length_in;  /**< Its own length. */
    double taper_deg;  /**< Angle of the one line to the other there: cut one end by so much off square. */
    frame_bool beyond; /**< Whether it lies outside the readings. */
    int32_t number;    /**< Its number, from 1. */
} frame_own_lengths_piece;

/** Gives each joist, rafter or stud its own length between two lines that are not parallel, straight from reading to
 * reading. FRAME_IMPOSSIBLE when the readings are not in order, or a piece would have no length. */
FRAME_ANSWER(own_lengths);
/** The pieces. */
FRAME_ANSWER_LIST(own_lengths, piece, pieces);

/** A girder, ledger or plate along a string. The string is stretched on the side the joists come to. */
typedef struct frame_straightness_in {
    uint32_t struct_size, struct_id;
    const frame_station *stations; /**< required. From the string to the face, at some places, in order. */
    size_t station_count;          /**< count : 2..1000. */
    const double *marks_in;        /**< optional : -12000..12000. Where joists come to it. */
    size_t mark_count;             /**< count : 0..10000. */
    double block_in;               /**< "as at the ends" : 0..120. What a straight face would read: the blocks the string is held off by. */
    double tolerance_in;           /**< 0.125 : 0..12. Widest gap that a joist's hanger may show. */
} frame_straightness_in;

/** Figures of the line. */
typedef struct frame_straightness_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : line_caution. Cautions. */
    uint64_t not_checked; /**< bits : line_not_checked. What was not checked. */
    frame_known known;    /**< What was given. */
    int32_t over;         /**< Joists whose gap would be over the tolerance. */
    double bow_away_in;   /**< Most that the face lies away from the joists. */
    double bow_toward_in; /**< Most that it lies toward them. */
} frame_straightness_out;

/** A joist at the line. */
typedef struct frame_straightness_joist {
    uint32_t struct_size, struct_id;
    double at_in;         /**< Where. */
    double bow_in;        /**< How far the face lies away from the joists there; negative: toward them. */
    double gap_in;        /**< Gap that its hanger shows when the joist is cut for a straight line. */
    double correction_in; /**< What to add to the joist's length for a straight line, to fit as it is. */
    frame_bool over;      /**< Whether the gap is over the tolerance. */
    frame_bool beyond;    /**< Whether it lies outside the readings. */
} frame_straightness_joist;

/** Compares a line of framing with a string: how far it bows, and at each joist the correction to its length and the gap
 * its hanger would show. FRAME_IMPOSSIBLE when the readings are not in order. */
FRAME_ANSWER(straightness);
/** The joists. */
FRAME_ANSWER_LIST(straightness, joist, joists);

FRAME_END

#endif
