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
    FRAME_CODE_CAUTION_SECONDARY = 2,  /**< "secondary". Rests on a second-hand copy of the code: look it up in the printed code before relying on it. */
    FRAME_CODE_CAUTION_MEMORY = 3,     /**< "from_memory". Recalled, the text was not seen: look it up in the printed code before relying on it. */
    FRAME_CODE_CAUTION_DOUBTFUL = 4,   /**< "doubtful". The figure is doubtful, most likely a misprint: do not build by it; see the note. */
    FRAME_CODE_CAUTION_NOTE = 5,       /**< "note". There is something to say about this figure as printed: see the note. */
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
    FRAME_CODE_CAUTION_AMENDED = 25,   /**< "amended". Taken from the code of one state or city, or a code made after this one: another place's may differ. */
    FRAME_CODE_CAUTION_RETURNS = 26,   /**< "returns". Each end of a continuously sheathed line needs an end condition of Figure R602.10.7: a return panel at the corner, a long panel or a hold-down. */
    FRAME_CODE_CAUTION_OWN_DETAIL = 27, /**< "own_detail". The panel is built by its method's own figure and table: hold-downs, straps, header and anchors. */
    FRAME_CODE_CAUTION_PINE = 28,      /**< "pine". For No.2 lumber; southern pine must be No.1 or better here (2015 and 2018). */
    FRAME_CODE_CAUTION_SHEATHING = 29 /**< "sheathing". Fastened through wood structural panels or solid lumber; through gypsum, fiberboard or foam only with bolts at the spacing for 1 in. */
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

/** Local amendments: what a place changed in its code, to be given to a look-up as overlay. Opaque; it must live as long as the
 * texts of results it went into (in Python and Lua results keep their own). */
typedef struct frame_code_overlay frame_code_overlay;

/** Reads local amendments from a CSV text. Its first line names the columns: lookup (which look-up, "joist_span"), source (where the
 * amendment is from), table and note if you like, and fields of look-ups. In the lines below, a cell under a field that is
 * asked for is a condition (30..50 for a range of numbers; empty: any), a cell under a field of the result is the figure that stands in place of
 * the book's. The first line that fits wins. For stairs and rules name the item: a limit as code_stairs lists it, or a rule of your own. For
 * fastening name the joint as code_fastening does; it and sheathing need a fastener, and every line that fits is a way.
 * Lines that begin with # are remarks. Errors name line and column. Free it with frame_code_overlay_free. */
FRAME_API frame_status frame_code_overlay_new(const char *csv, frame_code_overlay **overlay);
/** Frees local amendments; NULL is allowed. */
FRAME_API void frame_code_overlay_free(frame_code_overlay *overlay);
/** Counts the amendments. */
FRAME_API size_t frame_code_overlay_rows(const frame_code_overlay *overlay);

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
    const frame_code_overlay *overlay; /**< optional. Local amendments, from code_overlay. */
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
    const char *note;     /**< What there is to say about it as printed; empty for most. */
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
    const frame_code_overlay *overlay; /**< optional. Local amendments, from code_overlay. */
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
    const char *note;     /**< What there is to say about it as printed; empty for most. */
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
    const frame_code_overlay *overlay; /**< optional. Local amendments, from code_overlay. */
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
    const char *note;     /**< What there is to say about it as printed; empty for most. */
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
    const frame_code_overlay *overlay; /**< optional. Local amendments, from code_overlay. */
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
    const char *note;     /**< What there is to say about it as printed; empty for most. */
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
    const frame_code_overlay *overlay; /**< optional. Local amendments, from code_overlay. */
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
    const char *note;     /**< What there is to say about it as printed; empty for most. */
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
    const frame_code_overlay *overlay; /**< optional. Local amendments, from code_overlay. */
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
    const char *note;     /**< What there is to say about it as printed; empty for most. */
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

/** What is cut. */
typedef int32_t frame_code_member;
enum frame_code_member_values {
    FRAME_CODE_MEMBER_JOIST = 1,         /**< "joist" | "floor joist" | "sawn joist" | "beam" | "sawn beam". A sawn floor joist or beam on edge. */
    FRAME_CODE_MEMBER_CEILING_JOIST = 2, /**< "ceiling joist". A sawn ceiling joist. */
    FRAME_CODE_MEMBER_RAFTER = 3,        /**< "rafter". A sawn rafter, between its bearings and at them. */
    FRAME_CODE_MEMBER_TAIL = 4,          /**< "rafter tail" | "tail". The part of a rafter past its bearing. */
    FRAME_CODE_MEMBER_STUD = 5,          /**< "stud". A stud. */
    FRAME_CODE_MEMBER_TOP_PLATE = 6,     /**< "top plate" | "plate". The top plate of a wall. */
    FRAME_CODE_MEMBER_HEADER = 7,        /**< "header" | "girder". A header or girder: refused. */
    FRAME_CODE_MEMBER_BUILT_UP = 8,      /**< "built-up beam" | "built-up member" | "built-up". A beam of several plies: refused. */
    FRAME_CODE_MEMBER_FLAT = 9,          /**< "flat member" | "flat". A member that lies flat: refused. */
    FRAME_CODE_MEMBER_TRUSS = 10,        /**< "truss". A truss: refused. */
    FRAME_CODE_MEMBER_I_JOIST = 11,      /**< "I-joist" | "wood I-joist". An I-joist: by its maker's rule. */
    FRAME_CODE_MEMBER_ENGINEERED = 12    /**< "engineered lumber" | "LVL" | "PSL" | "LSL" | "glulam" | "structural composite lumber". Laminated or composite lumber: by its maker's rule. */
};

/** How it is cut. */
typedef int32_t frame_code_cut;
enum frame_code_cut_values {
    FRAME_CODE_CUT_HOLE = 1, /**< "hole" | "bored hole" | "bore". A hole, wood all around it. */
    FRAME_CODE_CUT_NOTCH = 2 /**< "notch" | "cut". A cut from the edge. */
};

/** Which edge a notch is cut from. */
typedef int32_t frame_code_side;
enum frame_code_side_values {
    FRAME_CODE_SIDE_TOP = 1,   /**< "top" | "upper edge". The upper edge. */
    FRAME_CODE_SIDE_BOTTOM = 2 /**< "bottom" | "lower edge". The lower edge, in tension between the supports. */
};

/** Whether a cut may be made. */
typedef int32_t frame_code_verdict;
enum frame_code_verdict_values {
    FRAME_CODE_ALLOWED = 1,         /**< "allowed". As it is. */
    FRAME_CODE_ALLOWED_DOUBLED = 2, /**< "allowed with the stud doubled" | "allowed, stud doubled". With the stud doubled, and no more than two such studs in a row. */
    FRAME_CODE_ALLOWED_TIE = 3,     /**< "allowed with a plate tie" | "allowed, plate tied". With a steel tie across the cut. */
    FRAME_CODE_NOT_ALLOWED = 4      /**< "not allowed". Not so, or not here. */
};

/** A hole or notch to judge: for a pipe, wire or duct of a size, at a place. */
typedef struct frame_code_hole_in {
    uint32_t struct_size, struct_id;
    frame_code_member member;   /**< required. What is cut. */
    frame_code_cut cut;         /**< hole. How. */
    frame_size size;            /**< optional. Nominal size of the member; this or depth_in. */
    frame_code_edition edition; /**< required. Which edition. */
    double depth_in;            /**< optional : >0..60. True depth of the member, the larger face, instead of its size. */
    double thickness_in;        /**< optional : >0..60. Its true thickness; from the size where it is given. */
    double diameter_in;         /**< optional : >0..60. Diameter of the hole, room for the pipe in it counted, or the larger side of a square one. */
    double notch_depth_in;      /**< optional : >0..60. Depth of the notch, square to the edge. */
    double notch_length_in;     /**< optional : >0..600. Length of the notch along the member. */
    double span_in;             /**< optional : >0..1200. Span of a joist or rafter; notches need it. */
    double position_in;         /**< optional : 0..1200. Middle of the cut from the face of the left bearing; notches need it. */
    double offset_in;           /**< "the middle of the depth" : 0..60. Middle of a hole from the lower edge; in a stud or plate, from one face. */
    double other_position_in;   /**< optional : 0..1200. Middle of the nearest other hole or notch of the member, from the same bearing. */
    double other_length_in;     /**< optional : >0..600. Its diameter, or its length along the member. */
    double tail_in;             /**< optional : >0..240. Length of a rafter's tail, level. */
    double maker_diameter_in;   /**< optional : 0..60. Largest hole the maker allows at this place, for I-joists and engineered lumber. */
    double maker_edge_in;       /**< optional : 0..60. Least distance from the hole to the edges, or to an I-joist's flanges, that the maker asks for. */
    double maker_end_in;        /**< optional : 0..1200. Least distance from the hole to a bearing that the maker asks for. */
    frame_code_side side;       /**< bottom. Which edge a notch is cut from. */
    frame_bool end_notch;       /**< no. Whether the notch is at the end of the member, over its bearing. */
    frame_bool bearing;         /**< yes. Whether the wall carries more than itself. */
    frame_bool exterior;        /**< yes. Whether it is an outer wall. */
    frame_bool doubled;         /**< no. Whether the stud is doubled already. */
    int32_t successive;         /**< 1 : 1..20. Doubled studs bored so in a row, this one counted. */
    frame_bool beside_notch;    /**< no. Whether a notch lies in the same section as a stud's hole. */
    frame_bool sheathed;        /**< no. Whether wood structural panels cover the whole side of the wall that is cut. */
    frame_code_cut other_cut;   /**< hole. What the nearest other cut is: notches keep away from holes, not from one another. */
    int32_t spare;
    const frame_code_overlay *overlay; /**< optional. Local amendments, from code_overlay. */
} frame_code_hole_in;

/** The verdict, what it hangs on, and where else it may be. */
typedef struct frame_code_hole_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : code_caution. Cautions. */
    uint64_t not_checked; /**< bits : code_not_checked. What was not checked. */
    frame_known known;    /**< How the figure is known. */
    frame_code_edition edition; /**< The edition it is from. */
    const char *table;    /**< The table's or clause's number. */
    const char *source;   /**< Where it was seen. */
    const char *note;     /**< What there is to say about it as printed; empty for most. */
    frame_code_verdict verdict;  /**< The verdict. */
    int32_t spare2;
    const char *reason;          /**< What it hangs on, in a sentence. */
    const char *needs;           /**< What must be done for it to hold; empty when nothing. */
    double depth_in;             /**< True depth of the member. */
    double limit_diameter_in;    /**< Largest hole such a member may have, as it stands; not given for a notch. */
    double limit_notch_depth_in; /**< Deepest notch at this place; not given for a hole. */
    double limit_notch_length_in; /**< Longest notch; not given where there is no limit. */
    double edge_in;              /**< Least distance from a hole to the edges; not given where there is none. */
    double nearest_position_in;  /**< Nearest place along the member where the cut may be, with nearest_offset_in where that is given too; not given when this one will do, or none. */
    double nearest_offset_in;    /**< Nearest place across the depth where the hole may be; not given when this one will do, or none. */
} frame_code_hole_out;

/** Judges a hole or notch for a pipe, wire or duct by the code: sawn joists and beams (IRC R502.8.1), rafters and ceiling joists (R802.7.1), rafter
 * tails (R802.7.1.1), studs (R602.6) and top plates (R602.6.1). Headers, built-up and flat members and trusses are FRAME_REFUSED with
 * what would be needed; I-joists and engineered lumber without their maker's rule too. */
FRAME_CALCULATION(code_hole);

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

/** A stair, its handrail and its guard, as measured: give what you measured. */
typedef struct frame_code_stairs_in {
    uint32_t struct_size, struct_id;
    frame_code_edition edition;   /**< required. Which edition. */
    frame_bool spiral;            /**< no. Whether it is a spiral stair. */
    double riser_in;              /**< optional : >0..48. Highest riser. */
    double riser_variation_in;    /**< optional : 0..48. Highest riser less the lowest of the flight. */
    double tread_in;              /**< optional : >0..120. Shallowest tread, nosing to nosing; of a spiral stair at the walkline. */
    double tread_variation_in;    /**< optional : 0..120. Deepest tread less the shallowest of the flight. */
    double winder_walkline_in;    /**< optional : >0..120. Shallowest winder at the walkline, 12 in from the inside. */
    double winder_least_in;       /**< optional : 0..120. Shallowest winder anywhere in the clear width. */
    double winder_variation_in;   /**< optional : 0..120. Deepest winder less the shallowest, at the walkline. */
    double nosing_in;             /**< optional : 0..24. Nosing projection. */
    double nosing_variation_in;   /**< optional : 0..24. Largest nosing projection less the smallest. */
    double nosing_radius_in;      /**< optional : 0..24. Radius of the nosings. */
    double headroom_in;           /**< optional : >0..600. Headroom, plumb above the line of the nosings. */
    double width_in;              /**< optional : >0..600. Clear width above the handrails. */
    double width_at_rail_in;      /**< optional : >0..600. Clear width at and below the handrails. */
    double rise_in;               /**< optional : >0..1200. Rise of the flight between floors or landings. */
    double landing_in;            /**< optional : >0..600. Depth of the landing in the direction of travel. */
    double slope_percent;         /**< optional : 0..100. Slope of treads and landings. */
    double handrail_height_in;    /**< optional : >0..120. Height of the handrail above the nosings. */
    double handrail_projection_in; /**< optional : 0..60. How far the handrail stands into the stair. */
    double handrail_clearance_in; /**< optional : 0..60. Space between handrail and wall. */
    double grip_diameter_in;      /**< optional : >0..24. Diameter of a round handrail. */
    double grip_perimeter_in;     /**< optional : >0..96. Perimeter of a handrail that is not round. */
    double grip_section_in;       /**< optional : >0..48. Its greatest cross section. */
    double guard_height_in;       /**< optional : 0..240. Height of the guard; 0 for none. */
    double opening_in;            /**< optional : 0..240. Largest opening in the guard, as the sphere that passes it. */
    double triangle_in;           /**< optional : 0..240. Triangle between riser, tread and bottom rail, as the sphere that passes it. */
    double open_riser_in;         /**< optional : 0..48. Opening of open risers more than 30 in above the floor, as the sphere that passes it. */
    double walkline_radius_in;    /**< optional : >0..240. Radius of the walkline of a spiral stair. */
    double drop_in;               /**< optional : 0..12000. Drop to the floor or grade within 36 in of the open side. */
    int32_t risers;               /**< optional : 1..200. Risers of the flight. */
    int32_t rails;                /**< optional : 0..2. Sides with a handrail. */
    frame_bool on_stairs;         /**< no. Whether the guard stands on the open side of the stair, not at a floor or landing. */
    frame_bool guard_is_rail;     /**< no. Whether the top of that guard is the handrail. */
    frame_bool open_risers;       /**< no. Whether the risers are open. */
    int32_t spare;
    const frame_code_overlay *overlay; /**< optional. Local amendments, from code_overlay. */
} frame_code_stairs_in;

/** How the stair stands. */
typedef struct frame_code_stairs_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : code_caution. Cautions. */
    uint64_t not_checked; /**< bits : code_not_checked. What was not checked. */
    frame_known known;    /**< How the figure is known. */
    frame_code_edition edition; /**< The edition it is from. */
    const char *table;    /**< The table's or clause's number. */
    const char *source;   /**< Where it was seen. */
    const char *note;     /**< What there is to say about it as printed; empty for most. */

    frame_bool holds;         /**< Whether all that was measured holds; not given when nothing was measured. */
    int32_t measured;         /**< Limits that were checked. */
    int32_t failed;           /**< Limits that do not hold. */
    frame_bool guard_needed;  /**< Whether the open side needs a guard; not given without its drop. */
    frame_bool handrail_needed; /**< Whether the flight needs a handrail; not given without its risers. */
    int32_t spare2;
    const char *reason;       /**< The first limit that does not hold; empty when all do. */
} frame_code_stairs_out;

/** A limit, and how the stair stands to it. */
typedef struct frame_code_stairs_limit {
    uint32_t struct_size, struct_id;
    const char *item;   /**< What is limited. */
    const char *clause; /**< Clause. */
    const char *unit;   /**< Unit of its figures: in, percent or risers. */
    const char *source; /**< Where it was seen. */
    double least;       /**< Least allowed; not given where there is no such limit. */
    double most;        /**< Greatest allowed; not given where there is no such limit. */
    double under;       /**< What it must stay below; not given where there is no such limit. */
    double measured;    /**< What was measured; not given when it was not. */
    frame_bool holds;   /**< Whether it holds; not given when it was not measured. */
    frame_known known;  /**< How it is known. */
} frame_code_stairs_limit;

/** Checks stairs, handrails and guards by the code (IRC R311.7 and R312; in 2024 R318.7, R320 and R321): what was measured against its limit.
 * Every limit of the edition is listed, measured or not: give nothing and you get the list. */
FRAME_ANSWER(code_stairs);
/** The limits. */
FRAME_ANSWER_LIST(code_stairs, limit, limits);

/** What to look for among the rules. */
typedef struct frame_code_rules_in {
    uint32_t struct_size, struct_id;
    const char *words;          /**< required. Words that the rule must have, or its clause: "joist bearing", "collar tie", "R602.7". */
    frame_code_edition edition; /**< required. Which edition. */
    frame_bool elsewhere;       /**< no. Whether rules of single states and cities, and of other editions, are given as well. */
    const frame_code_overlay *overlay; /**< optional. Local amendments, from code_overlay. */
} frame_code_rules_in;

/** What was found. */
typedef struct frame_code_rules_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;     /**< bits : assumed. Defaults that were used. */
    uint64_t cautions;    /**< bits : code_caution. Cautions. */
    uint64_t not_checked; /**< bits : code_not_checked. What was not checked. */
    frame_known known;    /**< How the figure is known. */
    frame_code_edition edition; /**< The edition it is from. */
    const char *table;    /**< The table's or clause's number. */
    const char *source;   /**< Where it was seen. */
    const char *note;     /**< What there is to say about it as printed; empty for most. */

    int32_t rule_count; /**< Rules found. */
    int32_t spare2;
} frame_code_rules_out;

/** A rule. */
typedef struct frame_code_rules_rule {
    uint32_t struct_size, struct_id;
    const char *item;      /**< What is ruled. */
    const char *condition; /**< Where it holds, and what it may be besides; empty for most. */
    const char *text;      /**< What stands in place of a number; empty where there is one. */
    const char *unit;      /**< Unit, and whether it is the least or the most. */
    const char *clause;    /**< Clause or table. */
    const char *book;      /**< Which book and edition it was seen in. */
    const char *source;    /**< Where it was seen. */
    const char *note;      /**< What is odd about it; empty for most. */
    double value;          /**< Its number; not given where it has none. */
    frame_known known;     /**< How it is known. */
    frame_bool elsewhere;  /**< Whether it is of another place or edition. */
} frame_code_rules_rule;

/** Finds rules of framing by their words: headers and trimmers, bearing, blocking and bridging, lateral support, ties, plates, studs, decks, stairs.
 * Spans, fasteners, bracing, holes and the like have look-ups of their own. The result is known as well as the worst of its rules. */
FRAME_ANSWER(code_rules);
/** The rules, those best known first. */
FRAME_ANSWER_LIST(code_rules, rule, rules);

FRAME_END

#endif
