/** @file code/spans.h
 * Spans of joists, rafters, girders and headers; floors that run past a wall.
 */
#ifndef FRAME_CODE_SPANS_H
#define FRAME_CODE_SPANS_H

#include <frame/base.h>
#include <frame/material.h>
#include <frame/code/book.h>

FRAME_BEGIN

/** What a joist is part of. */
typedef int32_t frame_code_use;
enum frame_code_use_values {
    FRAME_CODE_USE_FLOOR = 1,   /**< "floor" | "floor joist". A floor joist. */
    FRAME_CODE_USE_CEILING = 2, /**< "ceiling" | "ceiling joist". A ceiling joist. */
    FRAME_CODE_USE_RAFTER = 3   /**< "rafter" | "roof". A rafter; its span is level, not along the slope. */
};

/** A joist or rafter to look up. */
typedef struct frame_code_joist_span_in {
    uint32_t struct_size, struct_id;
    frame_code_use use;       /**< required. What it is part of. */
    frame_size size;          /**< required. Nominal size, 2x4 to 2x12. */
    frame_species species;    /**< required. Douglas Fir-Larch, Hem-Fir, Southern Pine or Spruce-Pine-Fir. */
    frame_grade grade;        /**< required. Select Structural, No.1, No.2 or No.3. */
    double spacing_in;        /**< required : >0..48. Spacing on centres: 12, 16, 19.2 or 24. */
    double live_psf;          /**< optional : 0..200. Live load; a rafter's roof live load; not for a rafter under snow. */
    double dead_psf;          /**< required : 0..100. Dead load. */
    double snow_psf;          /**< optional : 0..300. Ground snow load on a rafter, 0 for none. */
    double deflection_limit;  /**< "360 for floors, 240 for ceilings, 180 for rafters without a ceiling" : 1..2000. Deflection limit, span over this; 240 for rafters with a ceiling on them. */
    double tie_height_ratio;  /**< 0 : 0..<1. Height of the rafter ties above the plate over the height of the ridge above it; 0 with ties at the plate. */
    frame_code_edition edition; /**< required. Which edition. */
    frame_bool covering;      /**< no. Between the table's columns, read the heavier one that covers the case, instead of refusing. */
    frame_bool doubtful;      /**< no. Give a figure that is marked doubtful, as printed, instead of refusing it. */
    int32_t spare;
    const frame_code_overlay *overlay; /**< optional. Local amendments, from code_overlay. */
} frame_code_joist_span_in;

/** The longest span the table allows. */
typedef struct frame_code_joist_span_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : code_caution. Cautions. */
    uint64_t not_checked; /**< bits : code_not_checked. What was not checked. */
    frame_known known;    /**< How the figure is known. */
    frame_code_edition edition; /**< The edition it is from. */
    const char *table;    /**< The table's number. */
    const char *source;   /**< Where it was seen. */
    const char *note;     /**< What there is to say about it as printed; empty for most. */
    double span_in;       /**< Longest clear span, level. */
    double table_span_in; /**< The span as the table prints it, before its notes are applied. */
} frame_code_joist_span_out;

/** Looks up the span of a floor joist (IRC tables R502.3.1), ceiling joist (R802.5.1) or rafter (R802.4.1). The tables know
 * sleeping rooms (live 30 psf) and other rooms (40), attics without (10) and with limited storage (20), roof live load 20,
 * ground snow 30, 50 and 70, dead load 10 or 20 (attics 5 or 10), and no interpolation. FRAME_NO_VALUE between columns and
 * for an edition whose table is not known, FRAME_OUTSIDE_SCOPE beyond them, FRAME_REFUSED for a doubtful figure. */
FRAME_CALCULATION(code_joist_span);

/** What a header or girder carries. */
typedef int32_t frame_code_supports;
enum frame_code_supports_values {
    FRAME_CODE_SUPPORTS_ROOF = 1, /**< "roof and ceiling" | "roof+ceiling" | "roof, ceiling". Roof and ceiling, exterior wall. */
    FRAME_CODE_SUPPORTS_ROOF_1 = 2, /**< "roof, ceiling and one center-bearing floor" | "roof+ceiling+1 center-bearing floor" | "roof, ceiling and one centre-bearing floor". Roof, ceiling and a floor that a wall or girder carries in the middle. */
    FRAME_CODE_SUPPORTS_ROOF_1_CLEAR = 3, /**< "roof, ceiling and one clear-span floor" | "roof+ceiling+1 clear-span floor". Roof, ceiling and a floor that spans from wall to wall. */
    FRAME_CODE_SUPPORTS_ROOF_2 = 4, /**< "roof, ceiling and two center-bearing floors" | "roof+ceiling+2 center-bearing floors" | "roof, ceiling and two centre-bearing floors". Roof, ceiling and two floors carried in the middle. */
    FRAME_CODE_SUPPORTS_ROOF_2_CLEAR = 5, /**< "roof, ceiling and two clear-span floors" | "roof+ceiling+2 clear-span floors". Roof, ceiling and two floors from wall to wall. */
    FRAME_CODE_SUPPORTS_ONE_FLOOR = 6, /**< "one floor" | "one floor only" | "floor" | "one floor only (interior bearing wall)". One floor: an interior bearing wall, or the floor of a porch. */
    FRAME_CODE_SUPPORTS_TWO_FLOORS = 7, /**< "two floors" | "two floors (interior bearing wall)". Two floors: an interior bearing wall. */
    FRAME_CODE_SUPPORTS_PORCH_ROOF = 8 /**< "roof" | "porch roof". The roof of an open porch. */
};

/** Where a header or girder stands. */
typedef int32_t frame_code_location;
enum frame_code_location_values {
    FRAME_CODE_EXTERIOR = 1, /**< "exterior" | "exterior wall". An exterior bearing wall. */
    FRAME_CODE_INTERIOR = 2, /**< "interior" | "interior wall". An interior bearing wall. */
    FRAME_CODE_PORCH = 3     /**< "porch" | "open porch". The outer edge of an open porch. */
};

/** A header or girder to look up. */
typedef struct frame_code_header_span_in {
    uint32_t struct_size, struct_id;
    frame_code_supports supports; /**< required. What it carries. */
    frame_size size;              /**< required. Nominal size of a ply, 2x4 to 2x12. */
    int32_t plies;                /**< required : 1..6. Plies. */
    frame_code_location location; /**< "by what it carries". Where it stands. */
    double ground_snow_psf;       /**< optional : 0..300. Ground snow load; required where a roof is carried. */
    double roof_live_psf;         /**< optional : 0..100. Roof live load, where ground snow is under 30 psf: the table then holds up to 20. */
    double building_width_in;     /**< optional : >0..1200. Width of the building square to the ridge; of a porch, its depth from the wall to the centre of the header. */
    double porch_depth_in;        /**< optional : >0..1200. Depth of a porch, instead of building_width_in. */
    frame_species species;        /**< "any of Douglas Fir-Larch, Hem-Fir, Southern Pine, Spruce-Pine-Fir". Species; required for the proposal of 2012. */
    frame_grade grade;            /**< "No.2; southern pine No.1 in 2015". Grade. */
    frame_bool top_braced;        /**< yes. Whether joists or rafters brace its top along its length; cripples do not. */
    frame_bool covering;          /**< no. Between the table's snow loads (and the widths of the proposal of 2012), read the heavier one, instead of refusing. */
    frame_code_edition edition;   /**< required. Which edition. */
    int32_t spare;
    const frame_code_overlay *overlay; /**< optional. Local amendments, from code_overlay. */
} frame_code_header_span_in;

/** The longest span the table allows, and what it stands on. */
typedef struct frame_code_header_span_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : code_caution. Cautions. */
    uint64_t not_checked; /**< bits : code_not_checked. What was not checked. */
    frame_known known;    /**< How the figure is known. */
    frame_code_edition edition; /**< The edition it is from. */
    const char *table;    /**< The table's number. */
    const char *source;   /**< Where it was seen. */
    const char *note;     /**< What there is to say about it as printed; empty for most. */
    double span_in;       /**< Longest clear span. */
    double table_span_in; /**< The span the table gives for this width, before the factor for an unbraced top. */
    int32_t jack_studs;   /**< Jack studs at each end; not given for a porch, whose table has none. */
    frame_bool anchor_allowed; /**< Whether a framing anchor on the full-height stud may stand in for the jack stud (one jack stud asked for). */
} frame_code_header_span_out;

/** Looks up the span and jack studs of a header or girder: in exterior bearing walls (IRC table R602.7(1)), interior bearing
 * walls (R602.7(2)) and open porches (R602.7(3)). Between the widths the span is interpolated, as the notes allow, and the jack
 * studs are those of the wider column; between snow loads, and in the proposal of 2012, it is not. A top that is not braced takes 0.7 off headers of 2x8 and
 * deeper. */
FRAME_CALCULATION(code_header_span);

/** What a cantilevered floor carries. */
typedef int32_t frame_code_cantilever_carries;
enum frame_code_cantilever_carries_values {
    FRAME_CODE_CANTILEVER_WALL = 1,   /**< "wall and roof" | "bearing wall and roof" | "wall". A light bearing wall and a roof, and nothing else. */
    FRAME_CODE_CANTILEVER_BALCONY = 2 /**< "balcony" | "exterior balcony". An open balcony. */
};

/** A floor cantilever to look up. */
typedef struct frame_code_floor_cantilever_in {
    uint32_t struct_size, struct_id;
    frame_code_cantilever_carries carries; /**< required. What it carries. */
    frame_size size;            /**< required. Nominal size of the joists, 2x8 to 2x12. */
    double spacing_in;          /**< required : >0..48. Spacing on centres. */
    double ground_snow_psf;     /**< required : 0..300. Ground snow load, 70 at most. */
    double roof_width_in;       /**< optional : >0..1200. Width of the roof on the wall, 40 ft at most; required under a wall. */
    double back_span_in;        /**< optional : >0..600. Span of the joists behind the support: three times the cantilever at least, twice for a balcony. */
    frame_code_edition edition; /**< required. Which edition. */
    int32_t spare;
    const frame_code_overlay *overlay; /**< optional. Local amendments, from code_overlay. */
} frame_code_floor_cantilever_in;

/** The longest cantilever and what must be held down behind it. */
typedef struct frame_code_floor_cantilever_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : code_caution. Cautions. */
    uint64_t not_checked; /**< bits : code_not_checked. What was not checked. */
    frame_known known;    /**< How the figure is known. */
    frame_code_edition edition; /**< The edition it is from. */
    const char *table;    /**< The table's or clause's number. */
    const char *source;   /**< Where it was seen. */
    const char *note;     /**< What there is to say about it as printed; empty for most. */
    double cantilever_in; /**< Longest cantilever; less where the back span asks for it. */
    double uplift_lb;     /**< Uplift at the support behind, for this back span; of the least back span when none was given. */
} frame_code_floor_cantilever_out;

/** Looks up the cantilever of floor joists of No.2 lumber, three or more (IRC tables R502.3.3(1) and (2)): interpolated between roof
 * widths and snow loads, as the notes allow; beside an empty cell a heavier one that covers the case. Rim joist at the end and blocking at the support belong to it. */
FRAME_CALCULATION(code_floor_cantilever);

FRAME_END

#endif
