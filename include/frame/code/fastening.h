/** @file code/fastening.h
 * Heel joints, uplift of rafters, the fastening schedule, panels and their nails.
 */
#ifndef FRAME_CODE_FASTENING_H
#define FRAME_CODE_FASTENING_H

#include <frame/base.h>
#include <frame/material.h>
#include <frame/code/book.h>

FRAME_BEGIN

/** What joins a rafter to a ceiling joist. */
typedef int32_t frame_code_heel_nail;
enum frame_code_heel_nail_values {
    FRAME_CODE_HEEL_16D = 1, /**< "16d common" | "16d" | "16d common nail". 3-1/2 in by 0.162 in. */
    FRAME_CODE_HEEL_10D = 2, /**< "10d common" | "10d" | "10d common nail". 3 in by 0.148 in; from 2021 on, at 1.2 times the number. */
    FRAME_CODE_HEEL_40D = 3  /**< "40d box" | "40d" | "40d box nail". 40d box nails, one for one; in 2015 and 2018. */
};

/** What ties the feet of the rafters together. */
typedef int32_t frame_code_heel_tie;
enum frame_code_heel_tie_values {
    FRAME_CODE_TIE_CEILING_JOISTS = 1, /**< "ceiling joists" | "ceiling joist" | "joists". Ceiling joists that run along the rafters. */
    FRAME_CODE_TIE_RAFTER_TIES = 2     /**< "rafter ties" | "rafter tie" | "ties". Rafter ties in their place: in 2015 the table is entered with two thirds of the slope. */
};

/** A heel joint to look up. */
typedef struct frame_code_heel_nails_in {
    uint32_t struct_size, struct_id;
    double slope;               /**< required : >0..4. Slope of the roof, rise over run: 3 in 12 and steeper. */
    double spacing_in;          /**< required : >0..48. Spacing of the rafters on centres: 12, 16 or 24, from 2021 on also 19.2. */
    double roof_span_in;        /**< required : >0..1200. Span of the roof, from wall to wall. */
    double ground_snow_psf;     /**< required : 0..300. Ground snow load, 0 for none: under 20 the column of 20 psf holds, for roof live loads up to 20. */
    double roof_live_psf;       /**< 20 : 0..100. Roof live load: the tables hold up to 20. */
    double tie_height_ratio;    /**< 0 : 0..<1. Height of the ties above the plate over the height of the ridge above it; 0 at the plate. */
    double span_ratio;          /**< 1 : >0..1. Span left to the rafters over the whole, where struts or purlins to a bearing wall shorten it. */
    frame_code_heel_nail nail;  /**< "16d common". The nail. */
    frame_code_heel_tie tie;    /**< ceiling joists. What ties the rafters. */
    frame_bool clinched;        /**< no. Whether the nails are clinched: in 2015 and 2018 a quarter less. */
    frame_bool ridge_carried;   /**< no. Whether a bearing wall, header or ridge beam carries the ridge: then there is no thrust to tie. */
    frame_code_edition edition; /**< required. Which edition. */
    frame_bool covering;        /**< no. Between the table's slopes, spacings, spans and loads, read the heavier, instead of refusing. */
    const frame_code_overlay *overlay; /**< optional. Local amendments, from code_overlay. */
} frame_code_heel_nails_in;

/** Nails in the heel joint. */
typedef struct frame_code_heel_nails_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : code_caution. Cautions. */
    uint64_t not_checked; /**< bits : code_not_checked. What was not checked. */
    frame_known known;    /**< How the figure is known. */
    frame_code_edition edition; /**< The edition it is from. */
    const char *table;    /**< The table's or clause's number. */
    const char *source;   /**< Where it was seen. */
    const char *note;     /**< What there is to say about it as printed; empty for most. */
    int32_t nails;       /**< Nails in each heel joint, and in each lap of the ceiling joists between; 0 where the ridge is carried. */
    int32_t table_nails; /**< 16d common nails as the table prints them. */
} frame_code_heel_nails_out;

/** Looks up the nails that join rafter and ceiling joist at the plate (IRC table R802.5.1(9) in 2015, R802.5.2 in 2018, R802.5.2(1) since),
 * with the notes: ties above the plate, other nails, clinching, struts. Slopes flatter than 3 in 12 and ties above a third of the
 * height need a ridge that is a beam. */
FRAME_CALCULATION(code_heel_nails);

/** How open the site lies to the wind (ASCE 7). */
typedef int32_t frame_code_exposure;
enum frame_code_exposure_values {
    FRAME_CODE_EXPOSURE_B = 1, /**< "B" | "exposure B". Towns, woods, many obstructions. */
    FRAME_CODE_EXPOSURE_C = 2, /**< "C" | "exposure C". Open country. */
    FRAME_CODE_EXPOSURE_D = 3  /**< "D" | "exposure D". By open water. */
};

/** A rafter's uplift to look up. */
typedef struct frame_code_uplift_in {
    uint32_t struct_size, struct_id;
    double slope;               /**< required : >0..4. Slope of the roof, rise over run. */
    double spacing_in;          /**< required : >0..48. Spacing of rafters or trusses on centres: 12, 16 or 24. */
    double roof_span_in;        /**< required : >0..1200. Span of the roof, from wall to wall. */
    double wind_mph;            /**< required : >0..300. Ultimate design wind speed, 140 mph at most. */
    double roof_height_in;      /**< required : >0..1200. Mean roof height, 33 ft at most. */
    double overhang_in;         /**< required : 0..120. Overhang of the eave, 24 in at most. */
    double wall_gravity;        /**< optional : >0..1.5. Specific gravity of the wall's framing: from 0.42 up table nailing holds 200 lb. */
    frame_code_exposure exposure; /**< required. Wind exposure. */
    frame_bool hip;             /**< no. A hip roof of 5 in 12 or steeper: 0.70 of the force. */
    frame_bool near_corner;     /**< yes. Whether it stands within 8 ft of a corner of the building: else 0.75 of the force. */
    int32_t walls_above;        /**< 0 : 0..3. Full walls above, for a connection of wall to wall or to the foundation: 60 lb a foot less for each. */
    frame_code_edition edition; /**< required. Which edition. */
    frame_bool covering;        /**< no. Between the table's spacings, read the wider, instead of refusing. */
    const frame_code_overlay *overlay; /**< optional. Local amendments, from code_overlay. */
} frame_code_uplift_in;

/** The force a connection must hold down. */
typedef struct frame_code_uplift_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : code_caution. Cautions. */
    uint64_t not_checked; /**< bits : code_not_checked. What was not checked. */
    frame_known known;    /**< How the figure is known. */
    frame_code_edition edition; /**< The edition it is from. */
    const char *table;    /**< The table's or clause's number. */
    const char *source;   /**< Where it was seen. */
    const char *note;     /**< What there is to say about it as printed; empty for most. */
    double uplift_lb;         /**< Uplift of one rafter on its connection, allowable stress design; 0 at least. */
    double uplift_plf;        /**< The same a foot of wall. */
    double table_lb;          /**< The force as the table gives it, before its notes are applied. */
    frame_bool nailing_holds; /**< Whether the nailing of the fastening schedule is enough by the exceptions of R802.11. */
    int32_t spare2;
} frame_code_uplift_out;

/** Looks up the uplift of rafters and trusses (IRC table R802.11, 2018 on), roof and ceiling of 15 psf taken off, with its notes. Between
 * spans and wind speeds it is interpolated, as they allow. In exposure D the column of C for the next higher wind is read. */
FRAME_CALCULATION(code_uplift);

/** The span rating stamped on a wood structural panel. */
typedef int32_t frame_code_panel;
enum frame_code_panel_values {
    FRAME_CODE_PANEL_16_0 = 1,   /**< "16/0". Sheathing. */
    FRAME_CODE_PANEL_20_0 = 2,   /**< "20/0". Sheathing. */
    FRAME_CODE_PANEL_24_0 = 3,   /**< "24/0". Sheathing. */
    FRAME_CODE_PANEL_24_16 = 4,  /**< "24/16". Sheathing. */
    FRAME_CODE_PANEL_32_16 = 5,  /**< "32/16". Sheathing. */
    FRAME_CODE_PANEL_40_20 = 6,  /**< "40/20". Sheathing. */
    FRAME_CODE_PANEL_48_24 = 7,  /**< "48/24". Sheathing. */
    FRAME_CODE_PANEL_60_32 = 8,  /**< "60/32". Sheathing. */
    FRAME_CODE_PANEL_16_OC = 9,  /**< "16 oc" | "16 o.c.". Single floor. */
    FRAME_CODE_PANEL_20_OC = 10, /**< "20 oc" | "20 o.c.". Single floor. */
    FRAME_CODE_PANEL_24_OC = 11, /**< "24 oc" | "24 o.c.". Single floor. */
    FRAME_CODE_PANEL_32_OC = 12, /**< "32 oc" | "32 o.c.". Single floor. */
    FRAME_CODE_PANEL_48_OC = 13  /**< "48 oc" | "48 o.c.". Single floor. */
};

/** A panel to look up. */
typedef struct frame_code_panel_span_in {
    uint32_t struct_size, struct_id;
    frame_code_panel rating;    /**< required. Span rating. */
    frame_code_edition edition; /**< required. Which edition. */
    const frame_code_overlay *overlay; /**< optional. Local amendments, from code_overlay. */
} frame_code_panel_span_in;

/** How far the panel spans. */
typedef struct frame_code_panel_span_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : code_caution. Cautions. */
    uint64_t not_checked; /**< bits : code_not_checked. What was not checked. */
    frame_known known;    /**< How the figure is known. */
    frame_code_edition edition; /**< The edition it is from. */
    const char *table;    /**< The table's or clause's number. */
    const char *source;   /**< Where it was seen. */
    const char *note;     /**< What there is to say about it as printed; empty for most. */
    const char *thickness;      /**< Thicknesses made with this rating, in. */
    double roof_span_held_in;   /**< Longest span on a roof with the edges held by blocking, clips or tongue and groove. */
    double roof_span_free_in;   /**< Longest span on a roof with free edges. */
    double roof_total_psf;      /**< Total load it carries at that span. */
    double roof_live_psf;       /**< Live load it carries at that span. */
    double live_16_psf;         /**< Live load with rafters 16 in on centres; not given where the table has none. */
    double live_24_psf;         /**< Live load with rafters 24 in on centres; not given where the table has none. */
    double floor_span_in;       /**< Longest span as a subfloor; 0 where it is none. */
} frame_code_panel_span_out;

/** Looks up the spans and loads of a wood structural panel as roof sheathing and subfloor (IRC table R503.2.1.1(1)): the strength axis across
 * the supports, over two spans or more. */
FRAME_CALCULATION(code_panel_span);

/** Two things to fasten to one another. */
typedef struct frame_code_fastening_in {
    uint32_t struct_size, struct_id;
    const char *first;          /**< required. One of them: "rafter", "stud", "joist", "rim joist", "blocking", "top plate", "collar tie", ... */
    const char *second;         /**< required. The other: "top plate", "ridge", "sill", "girder", ... In either order. */
    frame_code_edition edition; /**< required. Which edition. */
    int32_t spare;
    const frame_code_overlay *overlay; /**< optional. Local amendments, from code_overlay. */
} frame_code_fastening_in;

/** The joints found. */
typedef struct frame_code_fastening_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : code_caution. Cautions. */
    uint64_t not_checked; /**< bits : code_not_checked. What was not checked. */
    frame_known known;    /**< How the figure is known. */
    frame_code_edition edition; /**< The edition it is from. */
    const char *table;    /**< The table's or clause's number. */
    const char *source;   /**< Where it was seen. */
    const char *note;     /**< What there is to say about it as printed; empty for most. */
    int32_t joint_count;  /**< Joints of the schedule that these two things make: read which is meant in each way's joint. */
    int32_t way_count;    /**< Ways to fasten them, in all. */
} frame_code_fastening_out;

/** One way to fasten them. */
typedef struct frame_code_fastening_way {
    uint32_t struct_size, struct_id;
    const char *joint;    /**< The joint in full. */
    const char *fastener; /**< The fastener: common, box or other nail by its size, or a staple. */
    const char *location; /**< How it is driven. */
    const char *note;     /**< What there is to say about it as printed; empty for most. */
    const char *source;   /**< Where it was seen. */
    double length_in;     /**< Length of the nail; not given for a staple. */
    double diameter_in;   /**< Diameter of the nail; not given for a staple. */
    double spacing_in;    /**< Greatest spacing on centres; not given where a number is asked for. */
    int32_t count;        /**< How many; not given where a spacing is asked for. */
    int32_t alternative;  /**< Its number among the ways of one joint and place. */
    int32_t item;         /**< Item of the schedule. */
    frame_known known;    /**< How it is known. */
} frame_code_fastening_way;

/** Finds how two pieces are fastened to one another by the fastening schedule (IRC table R602.3(1)): every joint they make, every way allowed. Any one
 * way does. */
FRAME_ANSWER(code_fastening);
/** The ways, joint by joint. */
FRAME_ANSWER_LIST(code_fastening, way, ways);

/** What a sheet is made of. */
typedef int32_t frame_code_sheet;
enum frame_code_sheet_values {
    FRAME_CODE_SHEET_PANEL = 1,      /**< "wood structural panel" | "panel" | "plywood" | "OSB" | "WSP". Plywood or oriented strand board. */
    FRAME_CODE_SHEET_FIBERBOARD = 2, /**< "structural fiberboard" | "fiberboard" | "fibreboard". Structural cellulosic fiberboard, on walls. */
    FRAME_CODE_SHEET_GYPSUM = 3,     /**< "gypsum sheathing" | "gypsum". Gypsum sheathing, on walls. */
    FRAME_CODE_SHEET_COMBINATION = 4 /**< "combination subfloor underlayment" | "combination" | "single floor". Panels that are subfloor and underlayment at once. */
};

/** What a sheet is for. */
typedef int32_t frame_code_sheet_use;
enum frame_code_sheet_use_values {
    FRAME_CODE_SHEET_ROOF = 1,    /**< "roof". Roof sheathing. */
    FRAME_CODE_SHEET_WALL = 2,    /**< "wall". Wall sheathing. */
    FRAME_CODE_SHEET_SUBFLOOR = 3 /**< "subfloor" | "floor". Subfloor. */
};

/** Sheets to fasten. */
typedef struct frame_code_sheathing_in {
    uint32_t struct_size, struct_id;
    frame_code_sheet sheet;     /**< required. What it is made of. */
    frame_code_sheet_use use;   /**< required. What it is for. */
    double thickness_in;        /**< required : >0..4. Thickness. */
    double stud_spacing_in;     /**< optional : >0..48. Spacing of the studs, for panels on an exterior wall in the wind. */
    double wind_mph;            /**< optional : >0..300. Ultimate design wind speed. */
    frame_code_exposure exposure; /**< optional. Wind exposure. */
    frame_code_edition edition; /**< required. Which edition. */
    const frame_code_overlay *overlay; /**< optional. Local amendments, from code_overlay. */
} frame_code_sheathing_in;

/** What was found, and what the wind asks for besides. */
typedef struct frame_code_sheathing_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : code_caution. Cautions. */
    uint64_t not_checked; /**< bits : code_not_checked. What was not checked. */
    frame_known known;    /**< How the figure is known. */
    frame_code_edition edition; /**< The edition it is from. */
    const char *table;    /**< The table's or clause's number. */
    const char *source;   /**< Where it was seen. */
    const char *note;     /**< What there is to say about it as printed; empty for most. */
    const char *wind_note;     /**< What the wind asks for besides the schedule; empty when nothing was found or no wind given. */
    int32_t way_count;         /**< Ways to fasten them. */
    frame_bool wind_holds;     /**< Whether one of the ways on an exterior wall holds the wind given; not given when not asked. */
} frame_code_sheathing_out;

/** One way to fasten the sheets. */
typedef struct frame_code_sheathing_way {
    uint32_t struct_size, struct_id;
    const char *fastener;   /**< The fastener. */
    const char *source;     /**< Where it was seen. */
    double length_in;       /**< Length of the nail; not given for a staple or screw. */
    double diameter_in;     /**< Its diameter; not given for a staple or screw. */
    double edge_in;         /**< Greatest spacing at the edges. */
    double field_in;        /**< Greatest spacing at the supports between. */
    double penetration_in;  /**< Least length in the framing, where the table asks for one. */
    double wind_mph;        /**< Greatest ultimate wind speed in the exposure asked for; not given where the table has none. */
    int32_t alternative;    /**< Its number among the ways of one item. */
    int32_t item;           /**< Item of the schedule; 0 for the table of exterior walls. */
} frame_code_sheathing_way;

/** Finds how sheathing and subfloors are fastened (IRC table R602.3(1)), and on exterior walls how panels hold the wind (R602.3(3)). */
FRAME_ANSWER(code_sheathing);
/** The ways. */
FRAME_ANSWER_LIST(code_sheathing, way, ways);

FRAME_END

#endif
