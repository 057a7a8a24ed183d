/** @file building.h
 * A job from one description: floors, roofs, headers and nailings in plain words of the trade become members with their
 * lengths, checks with their workings, marks, and a buying plan.
 */
#ifndef FRAME_BUILDING_H
#define FRAME_BUILDING_H

#include <frame/code.h>
#include <frame/joint.h>
#include <frame/layout.h>
#include <frame/material.h>
#include <frame/roof.h>
#include <frame/strength.h>
#include <frame/takeoff.h>
#include <frame/text.h>

FRAME_BEGIN

/** A floor of joists on centres between two bearings. */
typedef struct frame_building_floor {
    uint32_t struct_size, struct_id;
    const char *name;      /**< required. Name of the floor ("cabin floor"). */
    double length_in;      /**< required : >0..6000. Length of the floor along which the joists are laid out. */
    double span_in;        /**< required : >0..480. Clear span of a joist between its bearings. */
    frame_size size;       /**< required. Nominal size of the joists. */
    frame_species species; /**< required. Species of the joists. */
    frame_grade grade;     /**< required. Grade of the joists. */
    int32_t spare;
    double live_psf;       /**< required : >0..500. Live load. */
    double dead_psf;       /**< 10 : >0..200. Dead load, the joists' own weight in it. */
    double spacing_in;     /**< 16 : >0..48. Spacing on centres. */
    double bearing_in;     /**< 3.5 : 1.5..24. Length of bearing at each end. */
    double rim_thickness_in; /**< 1.5 : 0..6. Thickness of the rim (band) at both ends of the joists; it stands on the same bearing. */
} frame_building_floor;
/** Sets up a floor: every field not given. */
FRAME_ELEMENT(building_floor);

/** A roof of common rafters: a gable's two faces, or a shed's one. */
typedef struct frame_building_roof {
    uint32_t struct_size, struct_id;
    const char *name;      /**< required. Name of the roof ("cabin roof"). */
    double length_in;      /**< required : >0..6000. Length along the ridge that is laid out. */
    double run_in;         /**< required : >0..600. Run of a rafter, outside of the plate's framing to the centre of the ridge. */
    double slope;          /**< required : >0..2. Slope, rise over run. */
    frame_size size;       /**< required. Nominal size of the rafters. */
    frame_species species; /**< required. Species of the rafters. */
    frame_grade grade;     /**< required. Grade of the rafters. */
    int32_t faces;         /**< 2 : 1..2. Faces: two of a gable roof, one of a shed. */
    double snow_psf;       /**< required : 0..400. Balanced snow load of the roof on plan; 0 where there is none. */
    double roof_live_psf;  /**< required : 0..100. Roof live load on plan. */
    double dead_psf;       /**< 10 : >0..200. Dead load along the slope. */
    double spacing_in;     /**< 16 : >0..48. Spacing on centres. */
    double overhang_in;    /**< 0 : 0..120. Overhang at the eave, level. */
    double ridge_thickness_in; /**< 1.5 : 0..24. Thickness of the ridge board. */
    double seat_in;        /**< 3.5 : >0..24. Seat of the birdsmouth. */
    frame_size ridge_size; /**< optional. Nominal size of the ridge board, when it is to be bought. */
    frame_rafter_tail tail; /**< plumb. How the tails are cut. */
} frame_building_roof;
/** Sets up a roof: every field not given. */
FRAME_ELEMENT(building_roof);

/** A header over an opening. Its load is given in plf, or is that of the roof it carries. */
typedef struct frame_building_header {
    uint32_t struct_size, struct_id;
    const char *name;      /**< required. Name of the header ("lake window"). */
    const char *carries;   /**< optional. Name of the roof whose rafters bear on the wall above. */
    double opening_in;     /**< required : >0..360. Clear width of the opening between the jack studs. */
    double dead_plf;       /**< 0 : 0..20000. Dead load besides the roof's. */
    double live_plf;       /**< 0 : 0..20000. Floor live load. */
    double snow_plf;       /**< 0 : 0..20000. Snow load besides the roof's. */
    double bearing_in;     /**< 1.5 : 1.5..12. Bearing at each end: 1-1/2 in for each jack stud. */
    frame_size size;       /**< required. Nominal size of a ply. */
    int32_t plies;         /**< 2 : 1..5. Plies. */
    frame_species species; /**< required. Species. */
    frame_grade grade;     /**< required. Grade. */
} frame_building_header;
/** Sets up a header: every field not given. */
FRAME_ELEMENT(building_header);

/** A nailed joint in single shear, and what it has to carry: a demand given, or the thrust of a roof at each rafter. */
typedef struct frame_building_nailing {
    uint32_t struct_size, struct_id;
    const char *name;        /**< required. Name of the joint ("rafter to ceiling joist"). */
    const char *ties;        /**< optional. Name of the roof whose thrust the joint ties at each rafter. */
    const char *nail;        /**< required. Size of the nail ("16d"). */
    double demand_lb;        /**< optional : >0..100000. What the joint has to carry, when it ties no roof. */
    double side_thickness_in; /**< 1.5 : >0..12. Thickness of the member the nail goes through. */
    double main_thickness_in; /**< 1.5 : >0..24. Thickness of the member that holds the point. */
    frame_dowel_kind kind;   /**< common nail. Kind of nail. */
    int32_t count;           /**< required : 1..200. Nails in the joint. */
    frame_species species;   /**< required. Species of both members. */
    int32_t spare;
    double load_duration_factor; /**< required : 0.9..1.6. C_D of the load it carries, NDS table 2.3.2: 1.15 snow, 1.25 roof live. */
} frame_building_nailing;
/** Sets up a nailing: every field not given. */
FRAME_ELEMENT(building_nailing);

/** Stock of one section that can be had. */
typedef struct frame_building_stock {
    uint32_t struct_size, struct_id;
    frame_size size;   /**< required. Nominal size. */
    int32_t available; /**< optional : 0..1e6. How many there are. */
    double length_in;  /**< required : >0..1200. Length of a board. */
    double price;      /**< required : 0..1e6. Price of a board. */
} frame_building_stock;
/** Sets up a stock: every field not given. */
FRAME_ELEMENT(building_stock);

/** The job. */
typedef struct frame_building_in {
    uint32_t struct_size, struct_id;
    const char *name;                        /**< required. Name of the building ("bunk cabin"). */
    const frame_building_floor *floors;      /**< optional. Its floors. */
    size_t floor_count;                      /**< count : 0..100. */
    const frame_building_roof *roofs;        /**< optional. Its roofs. */
    size_t roof_count;                       /**< count : 0..100. */
    const frame_building_header *headers;    /**< optional. Its headers. */
    size_t header_count;                     /**< count : 0..500. */
    const frame_building_nailing *nailings;  /**< optional. Its nailed joints. */
    size_t nailing_count;                    /**< count : 0..500. */
    const frame_building_stock *stock;       /**< optional. Stock that can be had; without any nothing is planned to be bought. */
    size_t stock_count;                      /**< count : 0..500. */
    double kerf_in;                          /**< 0.125 : 0..1. What one cut turns to dust. */
} frame_building_in;

/** Kinds of notes. */
typedef int32_t frame_note_kind;
enum frame_note_kind_values {
    FRAME_NOTE_CAUTION = 1,    /**< "caution". Mind this. */
    FRAME_NOTE_ASSUMED = 2,    /**< "assumed". A default was used. */
    FRAME_NOTE_NOT_CHECKED = 3 /**< "not checked". Nobody has checked this yet. */
};

/** Cautions that go with a building. */
typedef int32_t frame_building_caution;
enum frame_building_caution_values {
    FRAME_BUILDING_CAUTION_LOCAL = 0, /**< "local". Local code and the building official decide; this is no licensed design. */
    FRAME_BUILDING_CAUTION_FAILS = 1, /**< "fails". At least one check does not pass: see the checks. */
    FRAME_BUILDING_CAUTION_MEASURE = 2 /**< "measure". Measure the building again before cutting. */
};
/** What a building leaves unchecked. */
typedef int32_t frame_building_not_checked;
enum frame_building_not_checked_values {
    FRAME_BUILDING_UNCHECKED_LATERAL = 0,    /**< "lateral". Wind and earthquake: bracing, uplift and hold-downs. */
    FRAME_BUILDING_UNCHECKED_GROUND = 1,     /**< "ground". Studs, posts, footings and the ground under them. */
    FRAME_BUILDING_UNCHECKED_SNOW = 2,       /**< "snow". Drifted, sliding and unbalanced snow. */
    FRAME_BUILDING_UNCHECKED_CONNECTIONS = 3 /**< "connections". Every joint that is not listed. */
};

/** Figures of a building. */
typedef struct frame_building_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : building_caution. Cautions. */
    uint64_t not_checked; /**< bits : building_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of all checks. */
    frame_bool passes;    /**< Whether every check passes. */
    double worst_ratio;   /**< Largest ratio of demand to capacity among the checks. */
    double cost;          /**< Price of all boards; not given without stock. */
    double board_feet;    /**< Board feet of all boards bought, else of all members, by nominal size. */
    int32_t member_total; /**< Members to cut. */
    int32_t boards_used;  /**< Boards to buy. */
} frame_building_out;

/** A kind of member to cut. */
typedef struct frame_building_member {
    uint32_t struct_size, struct_id;
    double length_in;    /**< Length over all, long point to long point: what it takes of the stock. */
    int32_t count;       /**< How many. */
    frame_size size;     /**< Nominal size. */
    const char *name;    /**< Name of the piece. */
    const char *of;      /**< What it belongs to. */
    const char *section; /**< Size as written. */
    const char *grade;   /**< Species and grade. */
    const char *cuts;    /**< Its cuts in words. */
} frame_building_member;

/** A check. */
typedef struct frame_building_check {
    uint32_t struct_size, struct_id;
    const char *name;    /**< What is checked. */
    const char *what;    /**< How: the calculation's name. */
    const char *governs; /**< What governs. */
    const char *block;   /**< The whole result as a block to read. */
    double ratio;        /**< Demand over capacity. */
    frame_bool passes;   /**< Whether it passes. */
    frame_known known;   /**< Worst source it rests on. */
} frame_building_check;

/** A mark of a layout. */
typedef struct frame_building_mark {
    uint32_t struct_size, struct_id;
    const char *of; /**< What is laid out. */
    double at_in;   /**< Running distance from the end to the near side of the member. */
} frame_building_mark;

/** A board of the buying plan. */
typedef struct frame_building_board {
    uint32_t struct_size, struct_id;
    const char *section; /**< Size and grade of the board. */
    double length_in;    /**< Its length. */
    double price;        /**< Its price. */
    double offcut_in;    /**< What is left of it. */
    uint32_t cut_first;  /**< range : cuts. The pieces cut from it, in order from the hooked end. */
    uint32_t cut_count;  /**< count. */
} frame_building_board;

/** A piece on a board. */
typedef struct frame_building_cut {
    uint32_t struct_size, struct_id;
    const char *name;  /**< Name of the piece. */
    double length_in;  /**< Its length. */
    double from_in;    /**< Where it begins, from the hooked end. */
    double to_in;      /**< Where it ends: strike the mark here. */
} frame_building_cut;

/** A line of the shopping list. */
typedef struct frame_building_purchase {
    uint32_t struct_size, struct_id;
    const char *section; /**< Size and grade. */
    double length_in;    /**< Length of a board. */
    double price;        /**< Price of one. */
    double total;        /**< Price of all. */
    double board_feet;   /**< Board feet of all, by nominal size. */
    int32_t count;       /**< How many. */
    int32_t spare;
} frame_building_purchase;

/** A note: a caution, an assumption, something not checked. */
typedef struct frame_building_note {
    uint32_t struct_size, struct_id;
    const char *about;    /**< What it is about. */
    const char *text;     /**< The note. */
    frame_note_kind kind; /**< What kind of note. */
    int32_t spare;
} frame_building_note;

/** Takes a described job through geometry, strength, joints and buying. Joists, rafters and headers are checked with
 * joist_check and beam_check, nailings with dowel_lateral and fastener_sum, boards planned with stock_plan for each section,
 * species and grade. A header that carries a roof takes the load on half the roof's width and the overhang; a nailing that
 * ties a roof takes its thrust, 3 w L / s plf of eave (w psf on plan, L roof span in ft, s rise in 12), at each rafter.
 * Errors name the item ("roofs[1].slope"). FRAME_UNKNOWN_NAME when carries or ties names no roof; FRAME_IMPOSSIBLE when the
 * stock has no board of a size that is needed. */
FRAME_ANSWER(building);
/** The kinds of members. */
FRAME_ANSWER_LIST(building, member, members);
/** The checks. */
FRAME_ANSWER_LIST(building, check, checks);
/** The marks of each layout. */
FRAME_ANSWER_LIST(building, mark, marks);
/** The boards, section by section. */
FRAME_ANSWER_LIST(building, board, boards);
/** The pieces on them. */
FRAME_ANSWER_LIST(building, cut, cuts);
/** The shopping list. */
FRAME_ANSWER_LIST(building, purchase, purchases);
/** The notes. */
FRAME_ANSWER_LIST(building, note, notes);

/* ---- the description of whole buildings -------------------------------------------------------------------------- */

/** How the upper ends of rafters are held along a roof's ridge. */
typedef int32_t frame_site_ridge;
enum frame_site_ridge_values {
    FRAME_SITE_RIDGE_BEAM = 1, /**< "beam". The ridge is a beam on posts or walls: rafters hang on it and push nothing apart. */
    FRAME_SITE_RIDGE_BOARD = 2 /**< "board" | "ties". A board between rafters that lean on each other in pairs: their thrust is tied at the plates. */
};
/** The direction in plan that joists run in. */
typedef int32_t frame_site_along;
enum frame_site_along_values {
    FRAME_SITE_ALONG_X = 1, /**< "x". Along x. */
    FRAME_SITE_ALONG_Y = 2  /**< "y". Along y. */
};
/** An edge of a rectangle in plan. */
typedef int32_t frame_site_side;
enum frame_site_side_values {
    FRAME_SITE_SIDE_LOW_X = 1,  /**< "low x". The edge of the lesser x. */
    FRAME_SITE_SIDE_HIGH_X = 2, /**< "high x". The edge of the greater x. */
    FRAME_SITE_SIDE_LOW_Y = 3,  /**< "low y". The edge of the lesser y. */
    FRAME_SITE_SIDE_HIGH_Y = 4  /**< "high y". The edge of the greater y. */
};
/** How sizes that were left out are chosen. */
typedef int32_t frame_site_choice;
enum frame_site_choice_values {
    FRAME_SITE_CHEAPEST = 1,    /**< "cheapest". For each kind of member the cheapest that holds, by the stock's prices; by board feet without. */
    FRAME_SITE_FEWEST_SIZES = 2 /**< "fewest sizes". One size for all that were left open: the least that holds for every one of them. */
};

/** A level: what stands at one height. */
typedef struct frame_part_level {
    uint32_t struct_size, struct_id;
    const char *name;  /**< required. Its name ("bunk cabin"). */
    double base_in;    /**< required : -2400..12000. Height of the underside of its walls over the site's datum. */
    double height_in;  /**< required : >0..600. Height of its walls, from the underside of the bottom plate to the top of the top plates. */
} frame_part_level;
/** Sets up a level: every field not given. */
FRAME_ELEMENT(part_level);

/** A wall. Its line is the outside of its framing, the outside on the right going along it. */
typedef struct frame_part_wall {
    uint32_t struct_size, struct_id;
    const char *name;      /**< required. Its name ("lake wall"). */
    const char *level;     /**< required. The level it stands on. */
    double from_x_in;      /**< required : -1e6..1e6. Where its line starts, along x. */
    double from_y_in;      /**< required : -1e6..1e6. The start along y. */
    double to_x_in;        /**< required : -1e6..1e6. Where its line ends, along x. */
    double to_y_in;        /**< required : -1e6..1e6. The end along y. */
    double spacing_in;     /**< 16 : >0..48. Spacing of the studs on centres. */
    double dead_psf;       /**< 10 : 0..200. Weight of the wall on its face, openings not taken off. */
    double footing_width_in; /**< optional : >0..240. Width of the footing under it, to be checked; its least is found without one. */
    frame_size size;       /**< required. Nominal size of studs and plates. */
    frame_species species; /**< required. Species of studs, plates, headers. */
    frame_grade grade;     /**< required. Grade of studs and plates. */
    frame_bool bearing;    /**< yes. Whether it carries more than itself. */
    frame_bool existing;   /**< no. It stands already: what it carries is found, the wall and what is under it are named as not checked. */
    frame_wall_end start_end; /**< plain. How it starts. */
    frame_wall_end end_end; /**< plain. How it ends. */
    int32_t spare;
} frame_part_wall;
/** Sets up a wall: every field not given. */
FRAME_ELEMENT(part_wall);

/** An opening in a wall. */
typedef struct frame_part_opening {
    uint32_t struct_size, struct_id;
    const char *name;      /**< required. Its name ("lake window"). */
    const char *wall;      /**< required. The wall it is in. */
    double at_in;          /**< required : 0..12000. Its near side from the start of the wall. */
    double width_in;       /**< required : >0..360. Its width between the jacks. */
    double head_in;        /**< required : >0..600. Its top above the underside of the bottom plate. */
    double sill_in;        /**< 0 : 0..600. Its bottom above the underside of the bottom plate; 0 for a door. */
    frame_size header_size; /**< "chosen". Nominal size of a ply of its header. */
    int32_t plies;         /**< "chosen" : 1..5. Plies of its header. */
    frame_species species; /**< "the wall's". Species of its header. */
    frame_grade grade;     /**< "No.2". Grade of its header. */
    int32_t jacks;         /**< "as the header's bearing needs" : 1..5. Jack studs at each side. */
    frame_bool vent;       /**< no. It was cut for a pipe or duct that met a stud, and takes that stud's place. */
} frame_part_opening;
/** Sets up an opening: every field not given. */
FRAME_ELEMENT(part_opening);

/** A floor, or a deck: a rectangle of joists on the walls and beams under it. */
typedef struct frame_part_floor {
    uint32_t struct_size, struct_id;
    const char *name;      /**< required. Its name ("cabin floor"). */
    const char *level;     /**< required. The level whose walls stand on it: its top lies at that level's base. */
    double from_x_in;      /**< required : -1e6..1e6. One corner, along x. */
    double from_y_in;      /**< required : -1e6..1e6. That corner along y. */
    double to_x_in;        /**< required : -1e6..1e6. The corner across from it, along x. */
    double to_y_in;        /**< required : -1e6..1e6. That corner along y. */
    double live_psf;       /**< required : >0..500. Live load. */
    double dead_psf;       /**< 10 : >0..200. Dead load, the joists' own weight in it. */
    double snow_psf;       /**< 0 : 0..400. Snow, on a deck. */
    double spacing_in;     /**< 16 : >0..48. Spacing of the joists on centres. */
    double sheathing_in;   /**< 0.75 : 0..3. What lies between the joists and the level's base: subfloor, or a deck's boards. */
    frame_site_along along; /**< required. The direction the joists run in. */
    frame_size size;       /**< "chosen". Nominal size of the joists. */
    frame_species species; /**< required. Species of the joists. */
    frame_grade grade;     /**< required. Grade of the joists. */
    frame_bool deck;       /**< no. A deck: out of doors, wet, its lumber treated. */
    int32_t spare;
} frame_part_floor;
/** Sets up a floor: every field not given. */
FRAME_ELEMENT(part_floor);

/** An opening in a floor: for a stair, a chimney, a hatch. Headers close its ends across the joists, trimmers run beside it. */
typedef struct frame_part_floor_opening {
    uint32_t struct_size, struct_id;
    const char *name;      /**< required. Its name ("loft stair well"). */
    const char *floor;     /**< required. The floor it is in: it lies inside of it on all sides. */
    double from_x_in;      /**< required : -1e6..1e6. One corner, along x. */
    double from_y_in;      /**< required : -1e6..1e6. That corner along y. */
    double to_x_in;        /**< required : -1e6..1e6. The corner across from it, along x. */
    double to_y_in;        /**< required : -1e6..1e6. That corner along y. */
    int32_t header_plies;  /**< "chosen" : 1..4. Plies of its headers, each a joist; two at least over 48 in (IRC R502.10, from memory). */
    int32_t trimmer_plies; /**< "chosen" : 1..4. Plies of its trimmers; two at least where the headers are longer than 48 in (IRC R502.10, from memory). */
} frame_part_floor_opening;
/** Sets up an opening in a floor: every field not given. */
FRAME_ELEMENT(part_floor_opening);

/** A straight stair up through an opening in a floor. */
typedef struct frame_part_stair {
    uint32_t struct_size, struct_id;
    const char *name;      /**< required. Its name ("loft stair"). */
    const char *opening;   /**< required. The opening it comes up through; it lies in the middle of its width. */
    double foot_in;        /**< required : -2400..12000. Height over the site's datum of the floor it stands on. */
    double width_in;       /**< 36 : >0..240. Its width. */
    double live_psf;       /**< 40 : >0..500. Live load on plan (IRC table R301.5, from memory). */
    double dead_psf;       /**< 10 : >0..200. Dead load on plan. */
    frame_site_side head;  /**< required. The edge of the opening at which it arrives: its header carries the upper half of the stair. */
    frame_size size;       /**< "2x12". Nominal size of the stringers. */
    frame_species species; /**< required. Species of the stringers. */
    frame_grade grade;     /**< required. Grade of the stringers. */
} frame_part_stair;
/** Sets up a stair: every field not given. */
FRAME_ELEMENT(part_stair);

/** A beam or girder under joists, walls or posts. Its top lies under the joists of its level's floor, or at the top of the walls. */
typedef struct frame_part_beam {
    uint32_t struct_size, struct_id;
    const char *name;      /**< required. Its name ("lake beam"). */
    const char *level;     /**< required. The level whose floor it carries; with at_top, whose walls it is as high as. */
    double from_x_in;      /**< required : -1e6..1e6. Where its centre line starts, along x. */
    double from_y_in;      /**< required : -1e6..1e6. The start along y. */
    double to_x_in;        /**< required : -1e6..1e6. Where it ends, along x. */
    double to_y_in;        /**< required : -1e6..1e6. The end along y. */
    double bearing_in;     /**< 3 : 1.5..24. Length of bearing on each support. */
    frame_size size;       /**< "chosen". Nominal size of a ply. */
    int32_t plies;         /**< "chosen" : 1..5. Plies. */
    frame_species species; /**< required. Species. */
    frame_grade grade;     /**< required. Grade. */
    frame_bool at_top;     /**< no. It carries a roof: its top is as high as its level's walls. */
    frame_bool wet;        /**< no. It lies out of doors. */
} frame_part_beam;
/** Sets up a beam: every field not given. */
FRAME_ELEMENT(part_beam);

/** A post, with its footing where it stands on the ground. */
typedef struct frame_part_post {
    uint32_t struct_size, struct_id;
    const char *name;      /**< required. Its name ("post 2"). */
    const char *level;     /**< required. The level whose floor, beam or roof it carries. */
    double x_in;           /**< required : -1e6..1e6. Its centre along x. */
    double y_in;           /**< required : -1e6..1e6. Its centre along y. */
    double bottom_in;      /**< optional : -2400..12000. Height of its foot over the site's datum, as measured: the top of its footing. Without it, it stands on what is under it. */
    double footing_in2;    /**< optional : >0..100000. Area of its footing, to be checked; the least is found without it. */
    frame_size size;       /**< required. Nominal size. */
    frame_species species; /**< required. Species. */
    frame_grade grade;     /**< required. Grade. */
    frame_bool to_roof;    /**< no. It stands up to the roof: it carries a ridge, hip or valley. */
    frame_bool wet;        /**< no. It stands out of doors. */
    int32_t spare;
} frame_part_post;
/** Sets up a post: every field not given. */
FRAME_ELEMENT(part_post);

/** A roof over a plan. Corners are the outsides of its walls' framing; edges run from each to the next. */
typedef struct frame_part_roof {
    uint32_t struct_size, struct_id;
    const char *name;      /**< required. Its name ("boathouse roof"). */
    const char *level;     /**< required. The level whose walls it stands on. */
    const frame_roof_corner *corners; /**< required. Corners of its building lines, in order. */
    size_t corner_count;   /**< count : 3..1000. */
    const double *slopes;  /**< required : 0..2. Slope of each edge's roof, rise over run, or one for all. */
    size_t slope_count;    /**< count : 1..1000. */
    const frame_roof_kind *kinds; /**< optional. What each edge is: hip, gable, half hip or wall; hip where nothing is said. */
    size_t kind_count;     /**< count : 0..1000. */
    const double *upper_slopes; /**< optional : >0..2. Slope of each edge's roof above the break, or one for all: a gambrel. Its breaks are beams. */
    size_t upper_slope_count; /**< count : 0..1000. */
    double break_in;       /**< optional : >0..2400. Height above the plate at which each roof breaks to its upper slope. */
    double half_hip_in;    /**< optional : >0..2400. Height above the plate up to which a half hip is a gable. */
    double dead_psf;       /**< 10 : >0..200. Dead load along the slope. */
    double roof_live_psf;  /**< 20 : 0..100. Roof live load on plan. */
    double snow_psf;       /**< "from the snow on the ground" : 0..400. Balanced snow on plan, at the level that the combinations take. */
    double wind_uplift_psf; /**< 0 : 0..200. Net wind upward on plan, at strength level. */
    double spacing_in;     /**< 16 : >0..48. Spacing of the rafters on centres. */
    double overhang_in;    /**< 0 : 0..120. Overhang at the eaves, level. */
    double seat_in;        /**< 3.5 : >0..24. Seat of the birdsmouths. */
    frame_site_ridge ridge; /**< required. How the rafters' upper ends are held. */
    frame_size size;       /**< "chosen". Nominal size of the rafters. */
    frame_size beam_size;  /**< "chosen". Nominal size of ridge beams, hips and valleys. */
    int32_t beam_plies;    /**< "chosen" : 1..4. Their plies. */
    frame_species species; /**< required. Species. */
    frame_grade grade;     /**< required. Grade. */
    frame_snow_thermal thermal; /**< optional. How warm it is, for the snow on it. */
    int32_t spare;
} frame_part_roof;
/** Sets up a roof: every field not given. */
FRAME_ELEMENT(part_roof);

/** A higher wall or roof along an edge of a roof: snow drifts against it, and slides down from it. */
typedef struct frame_part_snow_step {
    uint32_t struct_size, struct_id;
    const char *name;        /**< required. Its name ("ice house wall"). */
    const char *roof;        /**< required. The lower roof. */
    int32_t edge;            /**< required : 0..999. The edge of that roof along which it stands, from corner to corner, the first from corner 0. */
    frame_bool slippery;     /**< no. Whether the roof above is slippery: its snow then slides down at any slope over 1/4 in 12. */
    double height_in;        /**< required : >0..12000. How high it rises over the lower roof where they meet. */
    double upper_length_in;  /**< required : >0..120000. Length of the roof above, square to the edge: what the wind brings the snow from. */
    double upper_slope;      /**< optional : 0..4. Slope of the roof above where it falls toward the lower one: its snow slides down. */
    double upper_run_in;     /**< optional : >0..12000. Level distance from eave to ridge of that roof; needed with upper_slope. */
} frame_part_snow_step;
/** Sets up a snow step: every field not given. */
FRAME_ELEMENT(part_snow_step);

/** A load of others: a truss's reaction, a tank, what the existing house sets down here. */
typedef struct frame_part_load {
    uint32_t struct_size, struct_id;
    const char *name;     /**< required. Its name ("truss 3"). */
    const char *level;    /**< required. The level whose walls or beams it stands on. */
    double x_in;          /**< required : -1e6..1e6. Where it stands, along x. */
    double y_in;          /**< required : -1e6..1e6. Along y. */
    double dead_lb;       /**< 0 : -1e6..1e6. Dead load, down positive. */
    double live_lb;       /**< 0 : 0..1e6. Floor live load. */
    double roof_live_lb;  /**< 0 : 0..1e6. Roof live load. */
    double snow_lb;       /**< 0 : 0..1e6. Snow. */
    double wind_lb;       /**< 0 : -1e6..1e6. Wind at strength level, down positive. */
    frame_bool on_floor;  /**< no. It stands at the level's base, not on top of its walls. */
    int32_t spare;
} frame_part_load;
/** Sets up a load: every field not given. */
FRAME_ELEMENT(part_load);

/** The site: what holds for all that is built on it. */
typedef struct frame_site_conditions {
    uint32_t struct_size, struct_id;
    const char *name;       /**< required. Name of the job ("lakeside field station"). */
    double ground_snow_psf; /**< required : 0..1000. Ground snow load; 0 where there is none. */
    double soil_psf;        /**< 1500 : 100..20000. Bearing that the soil is taken to have (IRC table R401.4.1, from memory: the least it lists). */
    double exposure_factor; /**< 1 : 0.5..2. Exposure factor C_e for the snow on roofs. */
    double importance_factor; /**< 1 : 0.5..2. Importance factor I_s for the snow on roofs. */
    double winter_wind;     /**< optional : 0.1..0.9. Winter wind parameter W_2 of ASCE 7-22, for drifts under a load at strength level. */
    double wind_wall_psf;   /**< optional : 0..200. Wind square to the walls at strength level; without it studs are not checked for wind. */
    double building_width_in; /**< optional : >0..1200. Width of the building square to the ridge, for the code's table of headers. */
    frame_snow_basis snow_basis; /**< required. What the ground snow load means. */
    frame_code_edition code_edition; /**< required. Edition of the residential code whose tables stand beside the calculations. */
} frame_site_conditions;
/** Sets up the site: every field not given. */
FRAME_ELEMENT(site_conditions);

/** A description of buildings, made part by part. Opaque; made by frame_site_new or frame_site_from_json, freed by frame_site_free. */
typedef struct frame_site frame_site;
/** Begins a description. Parts may be added in any order; names must differ among parts of a kind. Free it with frame_site_free. */
FRAME_API frame_status frame_site_new(const frame_site_conditions *in, frame_site **site);
/** Frees a description. NULL is allowed. */
FRAME_API void frame_site_free(frame_site *site);
/** Adds a level. */
FRAME_API frame_status frame_site_level(frame_site *site, const frame_part_level *in);
/** Adds a wall. */
FRAME_API frame_status frame_site_wall(frame_site *site, const frame_part_wall *in);
/** Adds an opening in a wall. */
FRAME_API frame_status frame_site_opening(frame_site *site, const frame_part_opening *in);
/** Adds a floor or deck. */
FRAME_API frame_status frame_site_floor(frame_site *site, const frame_part_floor *in);
/** Adds an opening in a floor. */
FRAME_API frame_status frame_site_floor_opening(frame_site *site, const frame_part_floor_opening *in);
/** Adds a stair. */
FRAME_API frame_status frame_site_stair(frame_site *site, const frame_part_stair *in);
/** Adds a beam. */
FRAME_API frame_status frame_site_beam(frame_site *site, const frame_part_beam *in);
/** Adds a post. */
FRAME_API frame_status frame_site_post(frame_site *site, const frame_part_post *in);
/** Adds a roof. */
FRAME_API frame_status frame_site_roof(frame_site *site, const frame_part_roof *in);
/** Adds a higher wall or roof along an edge of a roof. */
FRAME_API frame_status frame_site_snow_step(frame_site *site, const frame_part_snow_step *in);
/** Adds a load of others. */
FRAME_API frame_status frame_site_load(frame_site *site, const frame_part_load *in);
/** Reads a description from JSON, as frame_site_json writes it: an object with the site's conditions and a list for each kind of
 * part. Lengths may be texts in tape notation, slopes "7 in 12". Errors name the path ("roofs[1].slopes[2]"). Free it with
 * frame_site_free. */
FRAME_API frame_status frame_site_from_json(const char *json, frame_site **site);
/** Writes a description as JSON: every field that was given. */
FRAME_API frame_status frame_site_json(const frame_site *site, frame_text *into);
/** Writes the JSON Schema (draft 2020-12) of such a description. */
FRAME_API frame_status frame_site_schema(frame_text *into);

/* ---- framing: a description worked out ---------------------------------------------------------------------------- */

/** What carries a load, on its way to the ground. */
typedef int32_t frame_bearer_kind;
enum frame_bearer_kind_values {
    FRAME_BEARER_RAFTERS = 1, /**< "rafters". The rafters of a roof face. */
    FRAME_BEARER_HIP = 2,     /**< "hip". A hip. */
    FRAME_BEARER_VALLEY = 3,  /**< "valley". A valley. */
    FRAME_BEARER_RIDGE = 4,   /**< "ridge". A ridge. */
    FRAME_BEARER_JOISTS = 5,  /**< "joists". The joists of a floor or deck. */
    FRAME_BEARER_BEAM = 6,    /**< "beam". A beam. */
    FRAME_BEARER_POST = 7,    /**< "post". A post. */
    FRAME_BEARER_WALL = 8,    /**< "wall". A wall. */
    FRAME_BEARER_FOOTING = 9, /**< "footing". A footing on the ground. */
    FRAME_BEARER_EXISTING = 10, /**< "existing house". What stands already. */
    FRAME_BEARER_GIVEN = 11,  /**< "given". A load of others, before anything carries it. */
    FRAME_BEARER_NOTHING = 12, /**< "nothing". Nothing: the description has nothing that could carry it. */
    FRAME_BEARER_TRIMMER = 13, /**< "trimmer". A joist beside an opening in a floor: it carries the headers. */
    FRAME_BEARER_HEADER_JOIST = 14, /**< "header joist". Across the end of an opening in a floor: it carries the tail joists. */
    FRAME_BEARER_STAIR = 15,  /**< "stair". A stair. */
    FRAME_BEARER_BREAK = 16   /**< "break". A beam where a roof breaks from one slope to another. */
};
/** Kinds of sticks by the part of the work they belong to: the order of erection. */
typedef int32_t frame_stage;
enum frame_stage_values {
    FRAME_STAGE_FOUNDATION = 1, /**< "posts and beams". Posts on their footings, and the beams on them. */
    FRAME_STAGE_FLOOR = 2,      /**< "floor". Joists, rims, blocking. */
    FRAME_STAGE_WALLS = 3,      /**< "walls". Walls, braced both ways as they stand. */
    FRAME_STAGE_ROOF_BEAMS = 4, /**< "roof beams". Posts and beams that carry the roof. */
    FRAME_STAGE_ROOF = 5,       /**< "roof". Rafters, ridges, hips, valleys. */
    FRAME_STAGE_STAIRS = 6      /**< "stairs". Stairs, once what carries their heads is nailed. */
};

/** A description to be worked out. Give site, or description. */
typedef struct frame_framing_in {
    uint32_t struct_size, struct_id;
    const frame_site *site;    /**< optional. The description, made by site or site_from_json. */
    const char *description;   /**< optional. Or the description as JSON, as a site's json gives it. */
    const frame_building_stock *stock; /**< optional. Stock that can be had; without any nothing is planned to be bought. */
    size_t stock_count;        /**< count : 0..500. */
    double kerf_in;            /**< 0.125 : 0..1. What one cut turns to dust. */
    frame_site_choice choose;  /**< cheapest. How sizes that were left out are chosen. */
    frame_bool sticks;         /**< yes. Place every stick in space, prove that they fit, and plan the buying. */
} frame_framing_in;

/** Cautions that go with the framing of a site. */
typedef int32_t frame_framing_caution;
enum frame_framing_caution_values {
    FRAME_FRAMING_CAUTION_LOCAL = 0,   /**< "local". Local code and the building official decide; this is no licensed design. */
    FRAME_FRAMING_CAUTION_FAILS = 1,   /**< "fails". At least one check does not pass: see the checks before anything is cut. */
    FRAME_FRAMING_CAUTION_MEASURE = 2, /**< "measure". Measure the building again before cutting. */
    FRAME_FRAMING_CAUTION_NOTHING = 3, /**< "nothing_carries". Some load comes to a place where nothing carries it: see the loads on nothing. */
    FRAME_FRAMING_CAUTION_OVERLAP = 4, /**< "overlap". Some sticks share wood where they are placed: see the note that names them. */
    FRAME_FRAMING_CAUTION_BRACE = 5,   /**< "brace". Brace walls and roof as they go up; ties and bracing stand before any load. */
    FRAME_FRAMING_CAUTION_UPLIFT = 6,  /**< "uplift". Wind lifts some members off what they stand on: each place needs its tie, see the joints. */
    FRAME_FRAMING_CAUTION_EXISTING = 7 /**< "existing". It leans on a house that stands: its wall, header and footing take the loads listed, and nobody has checked them. */
};
/** What the framing of a site leaves unchecked. */
typedef int32_t frame_framing_not_checked;
enum frame_framing_not_checked_values {
    FRAME_FRAMING_UNCHECKED_LATERAL = 0,    /**< "lateral". Wind and earthquake sideways: bracing, shear walls, hold-downs, anchor bolts. */
    FRAME_FRAMING_UNCHECKED_FOUNDATION = 1, /**< "foundation". Footings beyond their area: thickness, reinforcement, frost, settlement, the soil itself. */
    FRAME_FRAMING_UNCHECKED_CONNECTORS = 2, /**< "connectors". Hangers, caps, bases and straps: their makers' values decide. */
    FRAME_FRAMING_UNCHECKED_SNOW_FORMS = 3, /**< "snow_forms". Snow in valleys, against chimneys and other projections, drifts on overhangs, ice at eaves. */
    FRAME_FRAMING_UNCHECKED_WEATHER = 4,    /**< "weathering". Weathering, decay, insects, treatment. */
    FRAME_FRAMING_UNCHECKED_FIRE = 5,       /**< "fire". Fireblocking, draftstopping, fire resistance. */
    FRAME_FRAMING_UNCHECKED_VENTILATION = 6, /**< "ventilation". Ventilation, insulation, moisture. */
    FRAME_FRAMING_UNCHECKED_WIND_STUDS = 7, /**< "wind_on_studs". Wind on the studs: no wind was given. */
    FRAME_FRAMING_UNCHECKED_UPLIFT = 8,     /**< "uplift". Wind uplift: none was given for a roof. */
    FRAME_FRAMING_UNCHECKED_SHEATHING = 9,  /**< "sheathing". Sheathing, subfloor and deck boards, and their nailing. */
    FRAME_FRAMING_UNCHECKED_PATTERN = 10,   /**< "patterns". Reactions passed on are those of all loads at once; patterns of live load are tried on each beam by itself. */
    FRAME_FRAMING_UNCHECKED_RAKES = 11,     /**< "rakes". Overhangs at gables. */
    FRAME_FRAMING_UNCHECKED_PLACED = 12,    /**< "placed". Whether the sticks fit: some, or all, were not placed in space. */
    FRAME_FRAMING_UNCHECKED_UNBALANCED = 13, /**< "unbalanced". Unbalanced snow on ridge, hips, walls and ground: rafters alone are checked for it. */
    FRAME_FRAMING_UNCHECKED_DRIFT = 14,     /**< "drift". Drifted and sliding snow: a roof meets a wall, and no snow_step says how high that rises; or none is described at all. */
    FRAME_FRAMING_UNCHECKED_RAFTERS_UP = 15 /**< "rafters_up". Rafters and joists bent upward by wind: what holds them down is found, their lower edges are not checked. */
};

/** Figures of a site's framing. */
typedef struct frame_framing_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : framing_caution. Cautions. */
    uint64_t not_checked; /**< bits : framing_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of all checks. */
    frame_bool passes;    /**< Whether every check passes and everything is carried. */
    frame_bool fits;      /**< Whether no two sticks share wood; not given where none were placed. */
    int32_t check_total;  /**< Checks that were made. */
    int32_t failed_total; /**< Of them, those that do not pass. */
    int32_t stick_total;  /**< Sticks that were placed. */
    int32_t boards_used;  /**< Boards to buy. */
    int32_t spare;
    double worst_ratio;   /**< Largest ratio of demand to capacity among the checks. */
    double dead_lb;       /**< Dead load put on, all of it. */
    double live_lb;       /**< Floor live load. */
    double roof_live_lb;  /**< Roof live load. */
    double snow_lb;       /**< Snow. */
    double wind_lb;       /**< Wind, down positive. */
    double ground_dead_lb; /**< Dead load that came down: to footings, to what stands already, or to where nothing carries it. */
    double ground_live_lb; /**< Floor live load there. */
    double ground_roof_live_lb; /**< Roof live load there. */
    double ground_snow_lb; /**< Snow there. */
    double ground_wind_lb; /**< Wind there. */
    double balance;       /**< The largest difference between what was put on and what came down, over what was put on. */
    double wood_lb;       /**< Weight of the sticks, by their solids and specific gravity at 12 % moisture. */
    double board_feet;    /**< Board feet of the sticks, by nominal size. */
    double cost;          /**< Price of all boards; not given without stock. */
    double worst_overlap_in3; /**< The largest volume two sticks share. */
} frame_framing_out;

/** A check. */
typedef struct frame_framing_check {
    uint32_t struct_size, struct_id;
    const char *name;    /**< What is checked. */
    const char *what;    /**< How: the calculation's name. */
    const char *governs; /**< What governs in the calculation. */
    const char *code;    /**< What the code's table says beside it, in words; empty where it has no such table. */
    const char *verdict; /**< Which of the two governs, and why. */
    const char *block;   /**< The whole result as a block to read. */
    double ratio;        /**< Demand over capacity by calculation. */
    double code_ratio;   /**< What there is over what the code's table allows; not given without a table. */
    double length_in;    /**< Span or height checked. */
    frame_bool passes;   /**< Whether it passes by calculation. */
    frame_bool code_passes; /**< Whether the code's table allows it; not given without a table. */
    frame_known known;   /**< Worst source it rests on. */
    frame_bearer_kind kind; /**< What it is. */
} frame_framing_check;

/** A load on its way down: what one bearer sets on another. */
typedef struct frame_framing_load {
    uint32_t struct_size, struct_id;
    const char *of;       /**< What it comes from. */
    const char *on;       /**< What carries it. */
    double x_in;          /**< Where, along x. */
    double y_in;          /**< Along y. */
    double dead_lb;       /**< Dead load. */
    double live_lb;       /**< Floor live load. */
    double roof_live_lb;  /**< Roof live load. */
    double snow_lb;       /**< Snow. */
    double wind_lb;       /**< Wind, down positive. */
    frame_bearer_kind of_kind; /**< What it comes from. */
    frame_bearer_kind on_kind;   /**< What carries it. */
} frame_framing_load;

/** A footing. */
typedef struct frame_framing_footing {
    uint32_t struct_size, struct_id;
    const char *name;     /**< What stands on it. */
    const char *code;     /**< What the code's table of deck footings says beside it, in words; empty where it has no such table. */
    double x_in;          /**< Its middle along x. */
    double y_in;          /**< Its middle along y. */
    double length_in;     /**< Length along a wall; not given for a post's. */
    double service_lb;    /**< Largest load of the combinations, on all of it. */
    double service_plf;   /**< The same on the heaviest 4 ft of a wall's footing; not given for a post's. */
    double needed_in2;    /**< Area needed under a post at the soil's bearing; not given for a wall. */
    double needed_width_in; /**< Width needed under a wall, or side of a square under a post. */
    double code_width_in; /**< Side of a square footing by that table; not given without one. */
    double given_in2;     /**< Area that was given; not given without. */
    double given_width_in; /**< Width that was given; not given without. */
    frame_bool passes;    /**< Whether what was given suffices, by calculation and by the table; not given where nothing was. */
    frame_load_combination combination; /**< The combination that governs. */
} frame_framing_footing;

/** A stick where it stands. */
typedef struct frame_framing_stick {
    uint32_t struct_size, struct_id;
    const char *name;     /**< Its name. */
    const char *of;       /**< The part it belongs to. */
    const char *level;    /**< The level it belongs to. */
    const char *section;  /**< Its section as written. */
    const char *grade;    /**< Species and grade. */
    frame_size size;      /**< Nominal size; not given for a section of no such size. */
    frame_stage stage;    /**< When it goes up. */
    double length_in;     /**< Long point to long point. */
    double weight_lb;     /**< Weight, by its solid and specific gravity. */
    double start_x_in;    /**< Where its axis starts, along x. */
    double start_y_in;    /**< Along y. */
    double start_z_in;    /**< Along z. */
    double end_x_in;      /**< Where its axis ends, along x. */
    double end_y_in;      /**< Along y. */
    double end_z_in;      /**< Along z. */
    int32_t gang;         /**< Number of its gang, from 1: sticks of the site cut alike. */
    int32_t plies;        /**< Boards it is made of: each is bought and cut by itself. */
} frame_framing_stick;

/** A size that was tried for a member left open. */
typedef struct frame_framing_option {
    uint32_t struct_size, struct_id;
    const char *name;     /**< The member. */
    const char *section;  /**< The size tried ("2-2x10"). */
    const char *reason;   /**< Why it lost, or that it was taken. */
    double ratio;         /**< Its largest ratio; not given where it could not be checked. */
    double cost;          /**< Price of it by the foot and its length; board feet without prices. */
    frame_bool taken;     /**< Whether it was taken. */
    frame_governing governs; /**< The check with its largest ratio; not given where it could not be checked. */
} frame_framing_option;

/** A joint and what it has to carry. */
typedef struct frame_framing_joint {
    uint32_t struct_size, struct_id;
    const char *name;     /**< The joint ("rafter to tie, boathouse roof"). */
    const char *fastening; /**< What holds it, in words. */
    const char *code;     /**< What the code's table asks for; empty where it has none. */
    double demand_lb;     /**< What it has to carry. */
    double capacity_lb;   /**< What its fasteners carry; not given where a connector of others is needed. */
    double ratio;         /**< Demand over capacity. */
    int32_t count;        /**< Fasteners in one joint. */
    int32_t places;       /**< How many such joints there are. */
    frame_bool passes;    /**< Whether it passes; not given where a connector of others is needed. */
    int32_t spare;
} frame_framing_joint;

/** A stud of a bearing wall and its load. */
typedef struct frame_framing_stud {
    uint32_t struct_size, struct_id;
    const char *wall;     /**< Its wall. */
    const char *piece;    /**< What it is: stud, king, jack, end stud. */
    double at_in;         /**< Its middle from the start of the wall. */
    double dead_lb;       /**< Dead load. */
    double live_lb;       /**< Floor live load. */
    double roof_live_lb;  /**< Roof live load. */
    double snow_lb;       /**< Snow. */
    double wind_lb;       /**< Wind, down positive. */
    double ratio;         /**< Demand over capacity as a column; not given in a wall that stands already. */
    int32_t plies;        /**< Studs that act as one here. */
    frame_bool passes;    /**< Whether it passes. */
} frame_framing_stud;

/** A board of the buying plan. */
typedef struct frame_framing_board {
    uint32_t struct_size, struct_id;
    const char *section; /**< Size and grade of the board. */
    double length_in;    /**< Its length. */
    double price;        /**< Its price. */
    double offcut_in;    /**< What is left of it. */
    uint32_t cut_first;  /**< range : cuts. The pieces cut from it, in order from the hooked end. */
    uint32_t cut_count;  /**< count. */
} frame_framing_board;

/** A piece on a board. */
typedef struct frame_framing_cut {
    uint32_t struct_size, struct_id;
    const char *name;  /**< Name of the piece. */
    double length_in;  /**< Its length. */
    double from_in;    /**< Where it begins, from the hooked end. */
    double to_in;      /**< Where it ends: strike the mark here. */
} frame_framing_cut;

/** A line of the shopping list. */
typedef struct frame_framing_purchase {
    uint32_t struct_size, struct_id;
    const char *section; /**< Size and grade, or what it is. */
    double length_in;    /**< Length of a board; not given for fasteners. */
    double price;        /**< Price of one; not given without. */
    double total;        /**< Price of all; not given without. */
    double board_feet;   /**< Board feet of all, by nominal size; not given for fasteners. */
    int32_t count;       /**< How many. */
    int32_t spare;
} frame_framing_purchase;

/** A note: a caution, an assumption, something not checked. */
typedef struct frame_framing_note {
    uint32_t struct_size, struct_id;
    const char *about;    /**< What it is about. */
    const char *text;     /**< The note. */
    frame_note_kind kind; /**< What kind of note. */
    int32_t spare;
} frame_framing_note;

/** Works a description out: every load from where it lies down to the ground, kept apart by kind; every member checked by
 * calculation and, where the code has a table, by the table; sizes left open chosen; every stick placed and proved to fit; the
 * buying planned. Rafters go from eave, hip or valley to ridge, hip or valley by roof_solve; hips, valleys, ridges and beams are beams on
 * the walls and posts found under them; a ridge board hands its load to both eaves with its thrust. FRAME_REQUIRED without a description;
 * FRAME_UNKNOWN_NAME when a part names another that is not there; FRAME_CONFLICT for two of one name; FRAME_IMPOSSIBLE when parts carry each
 * other in a ring. What nothing carries is no error: it is listed as a load on nothing, and nothing passes. */
FRAME_ANSWER(framing);
/** The checks. */
FRAME_ANSWER_LIST(framing, check, checks);
/** Every load passed on, from top to ground. */
FRAME_ANSWER_LIST(framing, load, loads);
/** The footings. */
FRAME_ANSWER_LIST(framing, footing, footings);
/** The sticks, stage by stage. */
FRAME_ANSWER_LIST(framing, stick, sticks);
/** The sizes tried for members left open. */
FRAME_ANSWER_LIST(framing, option, options);
/** The joints. */
FRAME_ANSWER_LIST(framing, joint, joints);
/** The studs of bearing walls. */
FRAME_ANSWER_LIST(framing, stud, studs);
/** The boards to buy. */
FRAME_ANSWER_LIST(framing, board, boards);
/** The pieces on them. */
FRAME_ANSWER_LIST(framing, cut, cuts);
/** The shopping list. */
FRAME_ANSWER_LIST(framing, purchase, purchases);
/** The notes. */
FRAME_ANSWER_LIST(framing, note, notes);

/* ---- stud_removal: may this stud go? ------------------------------------------------------------------------------ */

/** Cautions that go with taking a stud out. */
typedef int32_t frame_stud_removal_caution;
enum frame_stud_removal_caution_values {
    FRAME_STUD_REMOVAL_CAUTION_SHORE = 0,  /**< "shore_first". Shore both sides of the wall before anything is cut; take the shores away when what replaces the stud is in and nailed. */
    FRAME_STUD_REMOVAL_CAUTION_PLATES = 1, /**< "plate_joint". Holds only where neither top plate has a joint between the neighbours. */
    FRAME_STUD_REMOVAL_CAUTION_IDLE = 2,   /**< "looks_idle". A stud that carries nothing today may carry snow, wind or a floor's load later: its load path is the one described, not the one that was built. */
    FRAME_STUD_REMOVAL_CAUTION_OPENING = 3, /**< "beside_opening". It stands beside an opening and holds its header or its edge: it may not go without another in its place. */
    FRAME_STUD_REMOVAL_CAUTION_HEADER = 4  /**< "header". Where it does not hold, frame an opening with a header there instead. */
};
/** What taking a stud out leaves unchecked. */
typedef int32_t frame_stud_removal_not_checked;
enum frame_stud_removal_not_checked_values {
    FRAME_STUD_REMOVAL_UNCHECKED_SHEATHING = 0, /**< "sheathing". What sheathing, siding or drywall on the wall spans and holds. */
    FRAME_STUD_REMOVAL_UNCHECKED_LATERAL = 1,   /**< "lateral". What the stud does against wind and earthquake: as edge of a braced panel, as nailing for sheathing. */
    FRAME_STUD_REMOVAL_UNCHECKED_BELOW = 2      /**< "below". Beams, joists and footings under the neighbours, which take more at their places. */
};
/** A stud that is to go. */
typedef struct frame_stud_removal_in {
    uint32_t struct_size, struct_id;
    const frame_site *site;  /**< optional. The description; or give it as JSON. */
    const char *description; /**< optional. The description as JSON, instead of site. */
    const char *wall;        /**< required. Name of the wall. */
    double at_in;            /**< required : 0..12000. Where the stud is, from the start of the wall: the nearest one is meant, within half the spacing. */
} frame_stud_removal_in;
/** Who takes its load, and whether they can. */
typedef struct frame_stud_removal_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : stud_removal_caution. Cautions; shoring first. */
    uint64_t not_checked; /**< bits : stud_removal_not_checked. What was not checked. */
    frame_known known;    /**< Worst source of the checks. */
    frame_bool passes;    /**< Whether its neighbours and the plates hold without it. False for one beside an opening. */
    frame_bool carries;   /**< Whether it carries more than the wall's own weight. */
    int32_t spare;
    double at_in;         /**< Middle of the stud. */
    double load_lb;       /**< Its largest load of the combinations today. */
    double ratio;         /**< Demand over capacity of it today. */
    double left_at_in;    /**< Middle of the neighbour nearer to the start. */
    double left_before_lb; /**< Largest load of that neighbour today. */
    double left_after_lb; /**< The same without the stud. */
    double left_ratio;    /**< Demand over capacity of it then. */
    double right_at_in;   /**< Middle of the other neighbour. */
    double right_before_lb; /**< Largest load of that neighbour today. */
    double right_after_lb; /**< The same without the stud. */
    double right_ratio;   /**< Demand over capacity of it then. */
    double plate_span_in; /**< Span of the top plates then. */
    double plate_ratio;   /**< Bending of both top plates, laid flat and not one block, over what they may. */
    double worst_before;  /**< Largest ratio of any upright of the wall today. */
    double worst_after;   /**< The same without the stud. */
} frame_stud_removal_out;
/** Works the site out with and without a stud: who takes its load, and whether they hold. FRAME_UNKNOWN_NAME for a wall that is not there,
 * FRAME_OUTSIDE_SCOPE for one that stands already or bears nothing, FRAME_IMPOSSIBLE where no stud stands there or it is the first or last. */
FRAME_CALCULATION(stud_removal);

FRAME_END

#endif
