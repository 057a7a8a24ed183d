/** @file code.h
 * The code book: prescriptive tables and rules of the residential code, looked up as an inspector does, edition by edition.
 * Nothing here is calculated but what the tables' own notes allow: a case a table does not cover is refused, with what it
 * does cover.
 */
#ifndef FRAME_CODE_H
#define FRAME_CODE_H

#include <frame/base.h>
#include <frame/material.h>

FRAME_BEGIN

/** Which book is asked: the edition of the International Residential Code that the place has adopted, or one of the few
 * other texts that single tables know. */
typedef int32_t frame_code_edition;
enum frame_code_edition_values {
    FRAME_CODE_2015 = 1, /**< "2015" | "IRC 2015" | "2015 IRC" | "IRC2015". International Residential Code 2015. */
    FRAME_CODE_2018 = 2, /**< "2018" | "IRC 2018" | "2018 IRC" | "IRC2018". International Residential Code 2018. */
    FRAME_CODE_2021 = 3, /**< "2021" | "IRC 2021" | "2021 IRC" | "IRC2021". International Residential Code 2021. */
    FRAME_CODE_2024 = 4, /**< "2024" | "IRC 2024" | "2024 IRC" | "IRC2024". International Residential Code 2024. */
    FRAME_CODE_2012_PROPOSAL = 5, /**< "2012 proposal" | "2012" | "IRC 2012". Single-ply headers as proposed for the 2012 edition (change RB104-09/10); no other table. */
    FRAME_CODE_IBC_2018 = 6, /**< "IBC 2018" | "2018 IBC". International Building Code 2018, table 2308.7.2(2) alone, as far as it was seen. */
    FRAME_CODE_DCA6 = 7,     /**< "DCA 6" | "DCA6". Prescriptive Residential Wood Deck Construction Guide, on the 2012 and 2015 code; decks alone. */
    FRAME_CODE_DCA6_09 = 8   /**< "DCA 6-09" | "DCA6-09". The same guide of 2009 with its addendum of 2013; southern pine deck joists alone. */
};

/** Cautions that go with what the code book says. */
typedef int32_t frame_code_caution;
enum frame_code_caution_values {
    FRAME_CODE_CAUTION_LOCAL = 0,      /**< "local". Local amendments govern, and the building official decides: ask which edition is adopted and what was changed in it. */
    FRAME_CODE_CAUTION_SCOPE = 1,      /**< "scope". Holds for buildings within the scope of the residential code and of this table; beyond it, licensed design. */
    FRAME_CODE_CAUTION_SECONDARY = 2,  /**< "secondary". Rests on somebody's transcription of the code: look it up in the printed code before relying on it. */
    FRAME_CODE_CAUTION_MEMORY = 3,     /**< "from_memory". Recalled, the text was not seen: look it up in the printed code before relying on it. */
    FRAME_CODE_CAUTION_DOUBTFUL = 4,   /**< "doubtful". The figure is doubtful, most likely a misprint: do not build by it; see the note. */
    FRAME_CODE_CAUTION_NOTE = 5,       /**< "note". There is something odd about this figure as printed: see the note. */
    FRAME_CODE_CAUTION_OVERLAY = 6,    /**< "overlay". A local amendment that you gave stands here in place of the book. */
    FRAME_CODE_CAUTION_COVERED = 7,    /**< "covered". Read in a heavier column or row that covers what was asked: the table has none for it. */
    FRAME_CODE_CAUTION_BETWEEN = 8,    /**< "between". Interpolated between two columns, as the table's notes allow. */
    FRAME_CODE_CAUTION_OVER_26 = 9,    /**< "over_26". The table says only that the span exceeds 26 ft: 26 ft is given, and lumber that long is hard to get. */
    FRAME_CODE_CAUTION_NO_SNOW = 10,   /**< "no_snow". Asked for roof live load alone: holds only where there is no more ground snow load than the table allows for. */
    FRAME_CODE_CAUTION_TIES = 11,      /**< "ties". Holds only with ceiling joists or rafter ties at the plate, or a ridge that is carried: without them rafters push the walls apart. */
    FRAME_CODE_CAUTION_TOP_BRACED = 12, /**< "top_braced". Holds only where joists or rafters brace the top of the header along its length: cripples do not, then 2x8 and deeper have 0.7 of the span. */
    FRAME_CODE_CAUTION_POINT_LOADS = 13, /**< "point_loads". For evenly spread loads only: no post, girder or header may stand on it. */
    FRAME_CODE_CAUTION_STAMP = 14,     /**< "stamp". For lumber with the grade stamp asked for; unstamped or old lumber is not covered. */
    FRAME_CODE_CAUTION_UPLIFT = 15,    /**< "uplift". Uplift at the back end must be held down. */
    FRAME_CODE_CAUTION_BEHIND = 16,    /**< "behind". Look at what lies behind a ledger before fastening to it: a band joist of the thickness asked for, no veneer, no cantilevered floor; and flash it. */
    FRAME_CODE_CAUTION_LATERAL = 17,   /**< "lateral". What holds it sideways and against uplift is not in this table. */
    FRAME_CODE_CAUTION_SHORE = 18,     /**< "shore". Shore both sides of a bearing wall before a stud or plate of it is cut. */
    FRAME_CODE_CAUTION_MAKER = 19,     /**< "maker". The maker's own rule, as you gave it, governs: keep its sheet on the job. */
    FRAME_CODE_CAUTION_ORDER = 20,     /**< "order". The text shows the blocks of this table by pictures: their order was taken from their values. */
    FRAME_CODE_CAUTION_SOIL = 21,      /**< "soil". The bearing value of the soil is your word: where it is not known the code takes 1,500 psf, and poor soil needs a report. */
    FRAME_CODE_CAUTION_FROST = 22,     /**< "frost". Footings reach below the frost line, 12 in at least. */
    FRAME_CODE_CAUTION_TREATED = 23,   /**< "treated". Lumber out of doors or on concrete is naturally durable or treated, and its fasteners are made for that. */
    FRAME_CODE_CAUTION_PROTECT = 24,   /**< "protect". Pipes and wires near the edge of a stud or plate are covered by steel plates. */
    FRAME_CODE_CAUTION_AMENDED = 25    /**< "amended". Taken from the code of one state or city, or a code made after this one: another place's may differ. */
};
/** What the code book leaves unchecked. */
typedef int32_t frame_code_not_checked;
enum frame_code_not_checked_values {
    FRAME_CODE_UNCHECKED_BEARING = 0,    /**< "bearing". Bearing at the ends, and what carries them down to the ground. */
    FRAME_CODE_UNCHECKED_LATERAL = 1,    /**< "lateral_support". Blocking, bridging and lateral support at the ends. */
    FRAME_CODE_UNCHECKED_NOTCHES = 2,    /**< "notches". Notches and holes: see code_hole. */
    FRAME_CODE_UNCHECKED_CALCULATED = 3, /**< "calculated". The calculation beside it: see joist_span, beam_check. */
    FRAME_CODE_UNCHECKED_UPLIFT = 4,     /**< "uplift". Wind uplift and its path down to the foundation. */
    FRAME_CODE_UNCHECKED_DRIFT = 5,      /**< "drift". Drifted, sliding and unbalanced snow: the tables know the ground snow load alone. */
    FRAME_CODE_UNCHECKED_FOOTINGS = 6,   /**< "footings". Posts, footings and soil under it. */
    FRAME_CODE_UNCHECKED_CONNECTIONS = 7, /**< "connections". The connections to what it stands on and what stands on it. */
    FRAME_CODE_UNCHECKED_WIND = 8,       /**< "wind". Whether the place's wind lies within the code's prescriptive scope. */
    FRAME_CODE_UNCHECKED_SEISMIC = 9,    /**< "seismic". Earthquakes: design category, irregular buildings, heavy veneer. */
    FRAME_CODE_UNCHECKED_OTHER_HOLES = 10 /**< "other_holes". Holes and notches that were not told of. */
};

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
    const char *note;     /**< What is odd about it as printed; empty for most. */
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
    frame_bool covering;          /**< no. Between the table's snow loads, read the heavier one, instead of refusing. */
    frame_code_edition edition;   /**< required. Which edition. */
    int32_t spare;
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
    const char *note;     /**< What is odd about it as printed; empty for most. */
    double span_in;       /**< Longest clear span. */
    double table_span_in; /**< The span the table gives for this width, before the factor for an unbraced top. */
    int32_t jack_studs;   /**< Jack studs at each end; not given for a porch, whose table has none. */
    frame_bool anchor_allowed; /**< Whether a framing anchor on the full-height stud may stand in for the jack stud (one jack stud asked for). */
} frame_code_header_span_out;

/** Looks up the span and jack studs of a header or girder: in exterior bearing walls (IRC table R602.7(1)), interior bearing
 * walls (R602.7(2)) and open porches (R602.7(3)). Between the widths the span is interpolated, as the notes allow, and the jack
 * studs are those of the wider column; between snow loads it is not. A top that is not braced takes 0.7 off headers of 2x8 and
 * deeper. */
FRAME_CALCULATION(code_header_span);

/** A deck joist to look up. */
typedef struct frame_code_deck_joist_span_in {
    uint32_t struct_size, struct_id;
    frame_size size;            /**< required. Nominal size, 2x6 to 2x12. */
    frame_species species;      /**< required. Southern Pine; Douglas Fir-Larch, Hem-Fir, Spruce-Pine-Fir; Redwood, Western Cedars, Ponderosa Pine, Red Pine. */
    frame_grade grade;          /**< "No.2". Grade: the tables are for No.2 and better. */
    frame_bool cantilevered;    /**< no. Whether the joists run on past the beam: in 2015 that shortens the span. */
    double spacing_in;          /**< required : >0..48. Spacing on centres: 12, 16 or 24. */
    double live_psf;            /**< optional : 0..200. Live load: 40 for decks by the code; give it or the ground snow load. */
    double ground_snow_psf;     /**< optional : 0..300. Ground snow load, 0 for none: the greater of the two picks the table. */
    double back_span_in;        /**< "the longest span" : >0..480. The joists' own span, for the longest cantilever it allows. */
    frame_code_edition edition; /**< required. Which edition. */
    frame_bool covering;        /**< no. Between the table's columns, read the heavier one that covers the case, instead of refusing. */
} frame_code_deck_joist_span_in;

/** The longest span of a deck joist, and its longest cantilever. */
typedef struct frame_code_deck_joist_span_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : code_caution. Cautions. */
    uint64_t not_checked; /**< bits : code_not_checked. What was not checked. */
    frame_known known;    /**< How the figure is known. */
    frame_code_edition edition; /**< The edition it is from. */
    const char *table;    /**< The table's number. */
    const char *source;   /**< Where it was seen. */
    const char *note;     /**< What is odd about it as printed; empty for most. */
    double span_in;       /**< Longest span between supports. */
    double cantilever_in; /**< Longest cantilever with the back span asked for; 0 where none is permitted. */
} frame_code_deck_joist_span_out;

/** Looks up the span and cantilever of a deck joist, wet and No.2 (IRC table R507.5 in 2015, R507.6 since; DCA 6 table 2). The
 * cantilever is at most a quarter of the back span (2015), of that and the table's (2018, DCA 6), or the table's by back span
 * (2021 and 2024, interpolated as the note allows). */
FRAME_CALCULATION(code_deck_joist_span);

/** A deck beam to look up. */
typedef struct frame_code_deck_beam_span_in {
    uint32_t struct_size, struct_id;
    frame_size size;            /**< required. Nominal size of a ply, 2x6 to 2x12; until 2018 also 3x and 4x. */
    int32_t plies;              /**< required : 1..4. Plies. */
    frame_species species;      /**< required. Southern Pine; Douglas Fir-Larch, Hem-Fir, Spruce-Pine-Fir; Redwood, Western Cedars, Ponderosa Pine, Red Pine. */
    frame_grade grade;          /**< "No.2". Grade: the tables are for No.2 and better. */
    double joist_span_in;       /**< required : >0..480. Span of the joists that the beam carries from one side. */
    double joist_cantilever_in; /**< "a quarter of the joists' span, the most" : 0..240. Their cantilever past this beam; 0 for none. It counts from 2021 on. */
    double live_psf;            /**< optional : 0..200. Live load: 40 for decks by the code; give it or the ground snow load. */
    double ground_snow_psf;     /**< optional : 0..300. Ground snow load, 0 for none: the greater of the two picks the table. */
    frame_code_edition edition; /**< required. Which edition. */
    frame_bool covering;        /**< no. Between the table's columns, read the heavier one that covers the case, instead of refusing. */
    frame_bool doubtful;        /**< no. Give a figure that is marked doubtful, as printed, instead of refusing it. */
    int32_t spare;
} frame_code_deck_beam_span_in;

/** The longest span of a deck beam. */
typedef struct frame_code_deck_beam_span_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : code_caution. Cautions. */
    uint64_t not_checked; /**< bits : code_not_checked. What was not checked. */
    frame_known known;    /**< How the figure is known. */
    frame_code_edition edition; /**< The edition it is from. */
    const char *table;    /**< The table's number. */
    const char *source;   /**< Where it was seen. */
    const char *note;     /**< What is odd about it as printed; empty for most. */
    double span_in;                  /**< Longest span between posts. */
    double cantilever_in;            /**< Longest cantilever of the beam past its post: a quarter of the span beside it; here of the longest. */
    double effective_joist_span_in;  /**< The joists' span the table was entered with. */
} frame_code_deck_beam_span_out;

/** Looks up the span of a deck beam, wet and No.2 (IRC table R507.6 in 2015, R507.5 since). 2015 and 2018 know the joists' span up to
 * so much; 2021 multiplies it by a factor for their cantilever and allows interpolation; 2024 has columns for span and cantilever
 * together, and interpolation without a cantilever. */
FRAME_CALCULATION(code_deck_beam_span);

/** A deck post to look up. */
typedef struct frame_code_deck_post_in {
    uint32_t struct_size, struct_id;
    frame_size size;            /**< required. Nominal size: 4x4, 4x6, 6x6 or 8x8. */
    frame_species species;      /**< optional. Species; required from 2021 on. */
    double tributary_ft2;       /**< optional : >0..2000. Area of deck the post carries; required from 2021 on. */
    double live_psf;            /**< optional : 0..200. Live load: 40 for decks by the code; give it or the ground snow load. */
    double ground_snow_psf;     /**< optional : 0..300. Ground snow load, 0 for none: the greater of the two picks the table. */
    int32_t beam_plies;         /**< 3 : 1..4. Plies of the beam on it: in 2018 a 4x4 may be higher under one or two. */
    frame_code_edition edition; /**< required. Which edition. */
    frame_bool covering;        /**< no. Between the table's loads, read the heavier one, instead of refusing. */
    int32_t spare;
} frame_code_deck_post_in;

/** The greatest height of a deck post. */
typedef struct frame_code_deck_post_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : code_caution. Cautions. */
    uint64_t not_checked; /**< bits : code_not_checked. What was not checked. */
    frame_known known;    /**< How the figure is known. */
    frame_code_edition edition; /**< The edition it is from. */
    const char *table;    /**< The table's number. */
    const char *source;   /**< Where it was seen. */
    const char *note;     /**< What is odd about it as printed; empty for most. */
    double height_in;     /**< Greatest height, from the top of the footing to the underside of the beam; 0 where the post is not permitted. */
} frame_code_deck_post_out;

/** Looks up how high a deck post may be (IRC table R507.8 in 2015, R507.4 since), No.2 and wet, single-level decks. From 2021 on by
 * species and the area carried, interpolated between areas as the note allows. */
FRAME_CALCULATION(code_deck_post);

/** A deck footing to look up. */
typedef struct frame_code_deck_footing_in {
    uint32_t struct_size, struct_id;
    double tributary_ft2;       /**< required : >0..2000. Area of deck the footing carries. */
    double soil_psf;            /**< required : >0..20000. Bearing value of the soil, 1,500 psf where it is not known (IRC R401.4.1). */
    double live_psf;            /**< optional : 0..200. Live load: 40 for decks by the code; give it or the ground snow load. */
    double ground_snow_psf;     /**< optional : 0..300. Ground snow load, 0 for none: the greater of the two picks the table. */
    frame_code_edition edition; /**< required. Which edition. */
    frame_bool covering;        /**< no. Between the table's loads, read the heavier one, instead of refusing. */
    frame_bool doubtful;        /**< no. Give a figure that is marked doubtful, as printed, instead of refusing it. */
    int32_t spare;
} frame_code_deck_footing_in;

/** The least footing of a deck. */
typedef struct frame_code_deck_footing_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : code_caution. Cautions. */
    uint64_t not_checked; /**< bits : code_not_checked. What was not checked. */
    frame_known known;    /**< How the figure is known. */
    frame_code_edition edition; /**< The edition it is from. */
    const char *table;    /**< The table's number. */
    const char *source;   /**< Where it was seen. */
    const char *note;     /**< What is odd about it as printed; empty for most. */
    double square_side_in;    /**< Side of a square footing. */
    double round_diameter_in; /**< Diameter of a round one. */
    double thickness_in;      /**< Thickness, for plain concrete. */
} frame_code_deck_footing_out;

/** Looks up the least concrete footing under a deck post (IRC table R507.3.1, 2018 on). Between areas and bearing values it is
 * interpolated, as the note allows; between loads it is not. */
FRAME_CALCULATION(code_deck_footing);

/** A post and footing of the deck guide to look up. */
typedef struct frame_code_deck_guide_post_in {
    uint32_t struct_size, struct_id;
    frame_species species;      /**< required. Species of the 6x6 post. */
    frame_bool corner;          /**< no. A corner post: its footing may be nine tenths of the size. */
    double beam_span_in;        /**< required : >0..480. Span of the beam on it: 6 to 16 ft. */
    double joist_span_in;       /**< required : >0..480. Span of the joists: up to 18 ft. */
    frame_code_edition edition; /**< required. The guide: DCA 6. */
    int32_t spare;
} frame_code_deck_guide_post_in;

/** Height of the post and size of its footing. */
typedef struct frame_code_deck_guide_post_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : code_caution. Cautions. */
    uint64_t not_checked; /**< bits : code_not_checked. What was not checked. */
    frame_known known;    /**< How the figure is known. */
    frame_code_edition edition; /**< The edition it is from. */
    const char *table;    /**< The table's number. */
    const char *source;   /**< Where it was seen. */
    const char *note;     /**< What is odd about it as printed; empty for most. */
    double height_in;         /**< Greatest height of a 6x6 post; 0 where it is not permitted. */
    double round_diameter_in; /**< Diameter of a round footing. */
    double square_side_in;    /**< Side of a square one. */
    double thickness_in;      /**< Thickness of both. */
} frame_code_deck_guide_post_out;

/** Looks up post heights and footings of the Prescriptive Residential Wood Deck Construction Guide (DCA 6, table 4): 6x6 posts, 40 psf
 * live load, by the spans of beam and joists. The headings of its five columns of species were not legible: their order is from
 * memory. */
FRAME_CALCULATION(code_deck_guide_post);

/** What holds a ledger to the band joist. */
typedef int32_t frame_code_ledger_fastener;
enum frame_code_ledger_fastener_values {
    FRAME_CODE_LEDGER_LAG = 1, /**< "lag screw" | "1/2 in lag screw" | "lag" | "lags" | "1/2 lag screw". Half-inch lag screw whose tip reaches past the band joist. */
    FRAME_CODE_LEDGER_BOLT = 2 /**< "bolt" | "1/2 in bolt" | "bolts" | "through bolt" | "1/2 bolt". Half-inch bolt with washers. */
};

/** A ledger's fasteners to look up. */
typedef struct frame_code_ledger_spacing_in {
    uint32_t struct_size, struct_id;
    frame_code_ledger_fastener fastener; /**< required. Lag screw or bolt, half an inch thick. */
    frame_code_edition edition; /**< required. Which edition. */
    double joist_span_in;       /**< required : >0..480. Span of the joists that hang on the ledger. */
    double sheathing_in;        /**< required : 0..12. Thickness of what lies between ledger and band joist, stacked washers counted. */
    double live_psf;            /**< optional : 0..200. Live load: 40 for decks by the code; give it or the ground snow load. */
    double ground_snow_psf;     /**< optional : 0..300. Ground snow load, 0 for none: the greater of the two picks the table. */
    frame_size ledger_size;     /**< "2x8". Size of the ledger, 2x8 at least. */
    frame_bool covering;        /**< no. Between the table's loads, read the heavier one, instead of refusing. */
} frame_code_ledger_spacing_in;

/** How far apart, and how far from the edges. */
typedef struct frame_code_ledger_spacing_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : code_caution. Cautions. */
    uint64_t not_checked; /**< bits : code_not_checked. What was not checked. */
    frame_known known;    /**< How the figure is known. */
    frame_code_edition edition; /**< The edition it is from. */
    const char *table;    /**< The table's number. */
    const char *source;   /**< Where it was seen. */
    const char *note;     /**< What is odd about it as printed; empty for most. */
    double spacing_in;          /**< Greatest spacing along the ledger, the fasteners staggered in two rows. */
    double ledger_top_in;       /**< Least distance to the top edge of the ledger. */
    double ledger_bottom_in;    /**< Least distance to its bottom edge. */
    double band_top_in;         /**< Least distance to the top edge of the band joist. */
    double band_bottom_in;      /**< Least distance to its bottom edge. */
    double end_in;              /**< Least distance to the ends of both. */
    double row_spacing_in;      /**< Least distance between the two rows. */
    double row_spacing_most_in; /**< Greatest distance between the two rows. */
} frame_code_ledger_spacing_out;

/** Looks up the fasteners of a deck's ledger to a band joist (IRC table R507.2 in 2015, R507.9.1.3 since): half-inch lag screws or
 * bolts, their spacing, edges and rows. 2015 and 2018 have ranges of joist span, 2021 and 2024 allow interpolation. */
FRAME_CALCULATION(code_ledger_spacing);

FRAME_END

#endif
