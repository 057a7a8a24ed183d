/** @file building.h
 * A job from one description: floors, roofs, headers and nailings in plain words of the trade become members with their
 * lengths, checks with their workings, marks, and a buying plan.
 */
#ifndef FRAME_BUILDING_H
#define FRAME_BUILDING_H

#include <frame/joint.h>
#include <frame/material.h>
#include <frame/roof.h>
#include <frame/strength.h>
#include <frame/takeoff.h>

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

FRAME_END

#endif
