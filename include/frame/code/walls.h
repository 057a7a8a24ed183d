/** @file code/walls.h
 * Studs, braced walls.
 */
#ifndef FRAME_CODE_WALLS_H
#define FRAME_CODE_WALLS_H

#include <frame/base.h>
#include <frame/material.h>
#include <frame/code/book.h>
#include <frame/code/fastening.h>

FRAME_BEGIN

/** What a wall's studs carry. */
typedef int32_t frame_code_on_studs;
enum frame_code_on_studs_values {
    FRAME_CODE_ON_STUDS_NOTHING = 1,    /**< "nothing" | "nonbearing" | "none". A wall that carries nothing but itself. */
    FRAME_CODE_ON_STUDS_ROOF = 2,       /**< "roof and ceiling" | "roof" | "roof only" | "roof and ceiling or habitable attic only". Roof and ceiling, or a habitable attic. */
    FRAME_CODE_ON_STUDS_FLOOR_ROOF = 3, /**< "one floor, roof and ceiling" | "one floor and roof" | "roof and one floor". One floor, roof and ceiling. */
    FRAME_CODE_ON_STUDS_FLOORS_ROOF = 4, /**< "two floors, roof and ceiling" | "two floors and roof". Two floors, roof and ceiling. */
    FRAME_CODE_ON_STUDS_FLOOR = 5       /**< "one floor" | "one floor only". One floor. */
};

/** Studs to look up. */
typedef struct frame_code_stud_in {
    uint32_t struct_size, struct_id;
    frame_size size;            /**< required. Nominal size: 2x3, 2x4, 3x4, 2x5 or 2x6. */
    frame_code_on_studs supports; /**< required. What they carry. */
    double height_in;           /**< required : >0..480. Height between lateral supports, from plate to plate. */
    frame_grade grade;          /**< "No.3, Stud or Standard, the least". Grade of the studs. */
    frame_bool exterior;        /**< yes. Whether the wall is an outer one. */
    double attic_span_in;       /**< 0 : 0..1200. Span of the roof over a habitable attic that they carry; 0 without one. */
    double wind_mph;            /**< optional : >0..300. Ultimate design wind speed, for studs higher than the table. */
    double ground_snow_psf;     /**< optional : 0..300. Ground snow load, for studs higher than the table. */
    double roof_live_psf;       /**< 20 : 0..100. Roof live load, for studs higher than the table. */
    double span_in;             /**< optional : >0..600. Longest span of roof or floor they carry, for studs up to 12 ft high. */
    double tributary_in;        /**< optional : >0..600. Width of roof they carry, for 2x6 studs up to 20 ft high. */
    frame_code_exposure exposure; /**< optional. Wind exposure, for studs higher than the table. */
    frame_code_edition edition; /**< required. Which edition. */
    const frame_code_overlay *overlay; /**< optional. Local amendments, from code_overlay. */
} frame_code_stud_in;

/** How far apart they may stand. */
typedef struct frame_code_stud_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : code_caution. Cautions. */
    uint64_t not_checked; /**< bits : code_not_checked. What was not checked. */
    frame_known known;    /**< How the figure is known. */
    frame_code_edition edition; /**< The edition it is from. */
    const char *table;    /**< The table's or clause's number. */
    const char *source;   /**< Where it was seen. */
    const char *note;     /**< What there is to say about it as printed; empty for most. */
    double spacing_in;    /**< Greatest spacing on centres; 0 where the code has none for such a stud. */
    double height_in;     /**< Greatest height of this size by the rule that was used. */
} frame_code_stud_out;

/** Looks up the spacing and height of studs (IRC table R602.3(5)) and, where they are higher than that, the alternatives of R602.3.1: bearing
 * walls of up to 12 ft (table R602.3(6)) and 2x6 studs of up to 20 ft under a light roof; utility grade by its own exception. */
FRAME_CALCULATION(code_stud);

/** Full-height studs beside a header to look up. */
typedef struct frame_code_king_studs_in {
    uint32_t struct_size, struct_id;
    double header_span_in;      /**< required : >0..240. Span of the header. */
    double stud_spacing_in;     /**< optional : >0..48. Spacing of the wall's studs; required in 2015. */
    double wind_mph;            /**< optional : >0..300. Ultimate design wind speed; required from 2018 on. */
    frame_code_exposure exposure; /**< optional. Wind exposure; required from 2018 on. */
    frame_bool anchored;        /**< no. Whether framing anchors stand in for the jack studs. */
    frame_code_edition edition; /**< required. Which edition. */
    int32_t spare;
    const frame_code_overlay *overlay; /**< optional. Local amendments, from code_overlay. */
} frame_code_king_studs_in;

/** Full-height studs. */
typedef struct frame_code_king_studs_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : code_caution. Cautions. */
    uint64_t not_checked; /**< bits : code_not_checked. What was not checked. */
    frame_known known;    /**< How the figure is known. */
    frame_code_edition edition; /**< The edition it is from. */
    const char *table;    /**< The table's or clause's number. */
    const char *source;   /**< Where it was seen. */
    const char *note;     /**< What there is to say about it as printed; empty for most. */
    int32_t full_height_studs; /**< Full-height studs at each end of the header. */
    int32_t spare2;
} frame_code_king_studs_out;

/** Looks up the full-height studs at each end of a header in an exterior wall (IRC table R602.7.5): in 2015 by the studs' spacing, since by
 * wind and exposure. Between spans that of the longer header. */
FRAME_CALCULATION(code_king_studs);

/** A way to brace a wall: the methods of IRC table R602.10.4. */
typedef int32_t frame_code_bracing_method;
enum frame_code_bracing_method_values {
    FRAME_CODE_BRACING_LIB = 1,     /**< "LIB" | "let-in bracing". Let-in 1x4 or a metal strap, with gypsum board. */
    FRAME_CODE_BRACING_DWB = 2,     /**< "DWB" | "diagonal wood boards". Boards set diagonally. */
    FRAME_CODE_BRACING_WSP = 3,     /**< "WSP" | "wood structural panel" | "wood structural panels". Single wood structural panels. */
    FRAME_CODE_BRACING_BV_WSP = 4,  /**< "BV-WSP". Wood structural panels behind masonry veneer. */
    FRAME_CODE_BRACING_SFB = 5,     /**< "SFB" | "structural fiberboard". Structural fiberboard. */
    FRAME_CODE_BRACING_GB = 6,      /**< "GB" | "gypsum board". Gypsum board. */
    FRAME_CODE_BRACING_PBS = 7,     /**< "PBS" | "particleboard". Particleboard. */
    FRAME_CODE_BRACING_PCP = 8,     /**< "PCP" | "portland cement plaster" | "stucco". Portland cement plaster. */
    FRAME_CODE_BRACING_HPS = 9,     /**< "HPS" | "hardboard panel siding" | "hardboard". Hardboard panel siding. */
    FRAME_CODE_BRACING_ABW = 10,    /**< "ABW" | "alternate braced wall". Alternate braced wall, held down. */
    FRAME_CODE_BRACING_PFH = 11,    /**< "PFH" | "portal frame with hold-downs". Portal frame with hold-downs. */
    FRAME_CODE_BRACING_PFG = 12,    /**< "PFG" | "portal frame at garage". Portal frame at a garage door. */
    FRAME_CODE_BRACING_CS_WSP = 13, /**< "CS-WSP" | "continuous sheathing" | "continuously sheathed". Wood structural panels over the whole line. */
    FRAME_CODE_BRACING_CS_G = 14,   /**< "CS-G". The same, beside a garage door. */
    FRAME_CODE_BRACING_CS_PF = 15,  /**< "CS-PF" | "continuously sheathed portal frame". The same, as a portal frame. */
    FRAME_CODE_BRACING_CS_SFB = 16  /**< "CS-SFB". Structural fiberboard over the whole line. */
};

/** Seismic design category. */
typedef int32_t frame_code_seismic;
enum frame_code_seismic_values {
    FRAME_CODE_SEISMIC_A = 1,  /**< "A" | "SDC A". Category A. */
    FRAME_CODE_SEISMIC_B = 2,  /**< "B" | "SDC B". Category B. */
    FRAME_CODE_SEISMIC_C = 3,  /**< "C" | "SDC C". Category C. */
    FRAME_CODE_SEISMIC_D0 = 4, /**< "D0" | "SDC D0" | "D_0". Category D0. */
    FRAME_CODE_SEISMIC_D1 = 5, /**< "D1" | "SDC D1" | "D_1". Category D1. */
    FRAME_CODE_SEISMIC_D2 = 6, /**< "D2" | "SDC D2" | "D_2". Category D2. */
    FRAME_CODE_SEISMIC_E = 7   /**< "E" | "SDC E". Category E: beyond the prescriptive code. */
};

/** Stone or masonry veneer. */
typedef int32_t frame_code_veneer;
enum frame_code_veneer_values {
    FRAME_CODE_VENEER_NONE = 1,   /**< "none". None, or on the first story only. */
    FRAME_CODE_VENEER_LIMITED = 2, /**< "limited". Brick above the first story within the limits of R602.10.6.5.3. */
    FRAME_CODE_VENEER_ABOVE = 3   /**< "above" | "above the first story". Higher than the first story. */
};

/** What the length of bracing is from. */
typedef int32_t frame_code_bracing_governs;
enum frame_code_bracing_governs_values {
    FRAME_CODE_BRACING_WIND = 1,       /**< "wind". Wind. */
    FRAME_CODE_BRACING_EARTHQUAKE = 2  /**< "earthquake" | "seismic". Earthquakes. */
};

/** A braced wall line of one story. */
typedef struct frame_code_bracing_in {
    uint32_t struct_size, struct_id;
    frame_code_bracing_method method; /**< required. How it is braced; of several methods in one line, the one that asks for most. */
    frame_code_edition edition;  /**< required. Which edition. */
    int32_t stories;             /**< required : 1..3. Stories of the building. */
    int32_t story;               /**< required : 1..3. Which story the line is in, the lowest being 1. */
    double wind_mph;             /**< required : >0..300. Ultimate design wind speed. */
    frame_code_exposure exposure; /**< required. Wind exposure; the worst of the building. */
    frame_code_seismic seismic;  /**< required. Seismic design category. */
    double line_spacing_in;      /**< required : >0..2400. From this braced wall line to the next; the average of two that differ. */
    double line_length_in;       /**< optional : >0..2400. Length of the line; earthquakes need it. */
    int32_t lines;               /**< required : 2..20. Braced wall lines in this direction. */
    frame_bool cripple;          /**< no. Whether it is the cripple wall below the first story. */
    double eave_to_ridge_in;     /**< required : 0..600. Height of the ridge above the eaves. */
    double wall_height_in;       /**< required : >0..300. Height of the story, floor to ceiling. */
    double wall_dead_psf;        /**< 15 : 0..100. Dead load of the walls, for earthquakes. */
    double roof_dead_psf;        /**< optional : 0..100. Dead load of roof and ceiling; earthquakes need it. */
    frame_bool townhouse;        /**< optional. Whether it is a townhouse; category C needs it. */
    frame_code_veneer veneer;    /**< optional. Stone or masonry veneer; earthquakes need it. */
    frame_bool gypsum_inside;    /**< optional. Whether gypsum board stands on the inside of the panels; most methods need it. */
    frame_bool blocked;          /**< optional. Whether the horizontal joints of wood panels (and of particleboard, from 2021 on) are blocked; those methods need it. */
    frame_bool hold_downs;       /**< no. Whether every panel of a top story has an 800 lb hold-down at both ends. */
    frame_bool gypsum_close_nails;      /**< no. Whether a gypsum board panel is fastened every 4 in at its edges, all joints blocked. */
    const frame_code_overlay *overlay; /**< optional. Local amendments, from code_overlay. */
} frame_code_bracing_in;

/** How much bracing the line needs. */
typedef struct frame_code_bracing_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : code_caution. Cautions. */
    uint64_t not_checked; /**< bits : code_not_checked. What was not checked. */
    frame_known known;    /**< How the figure is known. */
    frame_code_edition edition; /**< The edition it is from. */
    const char *table;    /**< The table's or clause's number. */
    const char *source;   /**< Where it was seen. */
    const char *note;     /**< What there is to say about it as printed; empty for most. */

    frame_code_bracing_governs governs; /**< What governs. */
    int32_t spare2;
    double length_in;         /**< Length of bracing that the line needs. */
    double wind_length_in;    /**< Length by wind, all factors applied. */
    double table_wind_in;     /**< Length of the wind table before its factors. */
    double exposure_factor;   /**< Factor for the exposure. */
    double ridge_factor;      /**< Factor for the height from eaves to ridge. */
    double height_factor;     /**< Factor for the height of the story. */
    double lines_factor;      /**< Factor for the number of lines. */
    double panel_factor;      /**< Factors for what the panels have or lack: hold-downs, gypsum, blocking. */
    double seismic_length_in; /**< Length by earthquakes, all factors applied; not given where they do not count. */
    double table_seismic_in;  /**< Length of the seismic table before its factors. */
    double seismic_factor;    /**< Its factors together. */
} frame_code_bracing_out;

/** Finds the length of bracing of a wall line (IRC tables R602.10.3(1) and (3), with the factors of (2) and (4)): by wind everywhere, by
 * earthquakes in townhouses of category C and in D0 to D2. Both tables may be interpolated; wind of 140 mph and more, lines more
 * than 60 ft apart (50 or 35 ft by earthquakes) and category E are FRAME_OUTSIDE_SCOPE. */
FRAME_CALCULATION(code_bracing);

/** A braced wall panel of a line. */
typedef struct frame_code_wall_panel {
    uint32_t struct_size, struct_id;
    double start_in;          /**< required : 0..2400. From the left end of the line to the panel. */
    double length_in;         /**< required : >0..2400. Its length. */
    double opening_height_in; /**< 0 : 0..300. Clear height of the taller opening beside it; continuous sheathing needs it. */
    double portal_height_in;  /**< optional : >0..300. Height to the top of a portal frame's header; the wall's height unless given. */
    frame_code_bracing_method method; /**< optional. Its method, where it is not the line's. */
    frame_bool both_sides;    /**< no. Whether gypsum board braces both sides. */
} frame_code_wall_panel;
FRAME_ELEMENT(code_wall_panel);

/** A wall line and its panels. */
typedef struct frame_code_wall_line_in {
    uint32_t struct_size, struct_id;
    frame_code_bracing_method method; /**< required. How the line is braced. */
    frame_code_edition edition; /**< required. Which edition. */
    double required_in;         /**< required : 0..2400. Length of bracing it needs: see code_bracing. */
    double line_length_in;      /**< required : >0..2400. Length of the line. */
    double wall_height_in;      /**< required : >0..300. Height of the story. */
    frame_code_seismic seismic; /**< required. Seismic design category. */
    int32_t floors_above;       /**< required : 0..2. Stories above this one. */
    const frame_code_wall_panel *panels; /**< required. The panels, in any order. */
    size_t panel_count;         /**< count : 1..100. */
    frame_bool townhouse;       /**< optional. Whether it is a townhouse; category C needs it. */
    frame_bool ends_held;       /**< no. Whether both ends meet the exception for wood panels and continuous sheathing in D0 to D2: 24 in panels around the corner, or an 1,800 lb hold-down. */
    frame_bool cripple;         /**< no. Whether it is a cripple wall. */
    int32_t spare;
} frame_code_wall_line_in;

/** Whether the line is braced. */
typedef struct frame_code_wall_line_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : code_caution. Cautions. */
    uint64_t not_checked; /**< bits : code_not_checked. What was not checked. */
    frame_known known;    /**< How the figure is known. */
    frame_code_edition edition; /**< The edition it is from. */
    const char *table;    /**< The table's or clause's number. */
    const char *source;   /**< Where it was seen. */
    const char *note;     /**< What there is to say about it as printed; empty for most. */

    frame_bool holds;         /**< Whether all of it holds. */
    frame_bool length_holds;  /**< Whether the panels come to the length needed. */
    frame_bool ends_hold;     /**< Whether a panel begins near enough to each end. */
    frame_bool gaps_hold;     /**< Whether the panels are near enough to one another. */
    frame_bool count_holds;   /**< Whether there are panels enough: two, or one of 48 in in a line up to 16 ft. */
    int32_t counted;          /**< Panels that count, in full or in part. */
    double provided_in;       /**< Length that the panels count for. */
    double length_ratio;      /**< Length needed over the length provided; not given where nothing counts. */
    double end_gap_in;        /**< Greater distance from an end of the line to its nearest panel that counts. */
    double end_limit_in;      /**< Greatest allowed. */
    double gap_in;            /**< Greatest distance between panels that count. */
    double gap_limit_in;      /**< Greatest allowed. */
    const char *reason;       /**< What fails first; empty when all holds. */
} frame_code_wall_line_out;

/** What a panel counts for. */
typedef int32_t frame_code_panel_counts;
enum frame_code_panel_counts_values {
    FRAME_CODE_PANEL_COUNTS = 1,     /**< "counts". In full. */
    FRAME_CODE_PANEL_IN_PART = 2,    /**< "counts in part". In part: shorter than 48 in. */
    FRAME_CODE_PANEL_TOO_SHORT = 3,  /**< "too short". Not at all: too short. */
    FRAME_CODE_PANEL_NOT_ALLOWED = 4 /**< "not permitted". Not at all: the method is not permitted at this height or opening. */
};

/** A panel of the line, judged. */
typedef struct frame_code_wall_line_panel {
    uint32_t struct_size, struct_id;
    double start_in;     /**< From the left end of the line. */
    double length_in;    /**< Its length. */
    double least_in;     /**< Least length it must have to count in full; not given where no length would do. */
    double counts_in;    /**< Length it counts for. */
    frame_code_bracing_method method; /**< Its method. */
    frame_code_panel_counts counts;   /**< What it counts for. */
} frame_code_wall_line_panel;

/** Checks the panels of a braced wall line: their least lengths and what they count for (IRC tables R602.10.5 and R602.10.5.2), their places (R602.10.2.2)
 * and number (R602.10.2.3). */
FRAME_ANSWER(code_wall_line);
/** The panels, from left to right. */
FRAME_ANSWER_LIST(code_wall_line, panel, panels);

FRAME_END

#endif
