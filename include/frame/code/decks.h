/** @file code/decks.h
 * Decks: joists, beams, posts, footings, ledgers.
 */
#ifndef FRAME_CODE_DECKS_H
#define FRAME_CODE_DECKS_H

#include <frame/base.h>
#include <frame/material.h>
#include <frame/code/book.h>

FRAME_BEGIN

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

FRAME_END

#endif
