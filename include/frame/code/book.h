/** @file code/book.h
 * What every look-up shares: editions, cautions, local amendments.
 */
#ifndef FRAME_CODE_BOOK_H
#define FRAME_CODE_BOOK_H

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

FRAME_END

#endif
