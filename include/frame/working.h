/** @file working.h
 * The working of a calculation: every given, every table value, every step with its formula, its numbers, its value,
 * its unit and the clause it comes from. Hand one to any calculation, then read it, render it, or mark a student's
 * answers against it.
 */
#ifndef FRAME_WORKING_H
#define FRAME_WORKING_H

#include <frame/base.h>

FRAME_BEGIN

/** What a renderer writes. */
typedef int32_t frame_render_format;
enum frame_render_format_values {
    FRAME_RENDER_TEXT = 1,     /**< "text" | "plain text". Plain text, UTF-8, to be read at 100 columns. */
    FRAME_RENDER_MARKDOWN = 2, /**< "markdown" | "md". Markdown with tables. */
    FRAME_RENDER_HTML = 3,     /**< "html". A fragment of HTML; formulas in MathML. */
    FRAME_RENDER_JSON = 4      /**< "json". One JSON object. */
};

/** What an entry of a working is. */
typedef int32_t frame_step_kind;
enum frame_step_kind_values {
    FRAME_STEP_GIVEN = 1,    /**< "given". An input. */
    FRAME_STEP_TABLE = 2,    /**< "table". A value taken from a table or from an earlier result. */
    FRAME_STEP_COMPUTED = 3, /**< "step". A value computed by a formula from values before it. */
    FRAME_STEP_CASE = 4,     /**< "case". A branch that was taken, and why. */
    FRAME_STEP_HEADING = 5   /**< "heading". The title of the entries after it. */
};

/** One entry of a working. Its texts live until the working is written to, cleared or freed. */
typedef struct frame_working_step {
    uint32_t struct_size, struct_id;
    double value;         /**< The value in full; not given for a case or a heading. */
    const char *symbol;   /**< The symbol in plain ASCII ("F_b'", "Delta_LL"); empty for a case or a heading. */
    const char *formula;  /**< The formula in symbols; for a case its condition; empty for what has none. */
    const char *numbers;  /**< The formula with the numbers of earlier entries; empty for what has none. */
    const char *unit;     /**< The unit of the value; empty without one. */
    const char *meaning;  /**< What the value is; for a case what was done; for a heading its title. */
    const char *source;   /**< Standard and clause; empty without one. */
    frame_step_kind kind; /**< What the entry is. */
    int32_t level;        /**< How deeply its calculation stands within others: 0 for the outermost. */
} frame_working_step;

/** Makes an empty working. Free it with frame_working_free. FRAME_NO_MEMORY when the allocator gives nothing. */
FRAME_API frame_status frame_working_new(frame_working **working);
/** Frees a working. NULL is allowed. */
FRAME_API void frame_working_free(frame_working *working);
/** Empties a working for the next calculation. */
FRAME_API void frame_working_clear(frame_working *working);
/** Tells whether the record is whole: FRAME_NO_MEMORY when an entry could not be kept since the last clear. The
 * calculation's own result is right in either case. */
FRAME_API frame_status frame_working_state(const frame_working *working);
/** Counts the entries of a working. */
FRAME_API size_t frame_working_step_count(const frame_working *working);
/** As frame_working_step_at, for an item of a stated size. */
FRAME_API frame_status frame_working_step_at_sized(const frame_working *working, size_t index, frame_working_step *item,
                                                   size_t item_size);
/** Gives an entry of a working, in the order they were made. Its texts live until the working is written to, cleared or
 * freed. */
static inline frame_status frame_working_step_at(const frame_working *working, size_t index, frame_working_step *item) {
    return frame_working_step_at_sized(working, index, item, sizeof *item);
}

/** Writes the whole working in a format, appended to what the text holds. */
FRAME_API frame_status frame_working_render(const frame_working *working, frame_render_format format, frame_text *into);

/** Works every recorded formula out anew from the values recorded before it, and names each that does not come to its
 * recorded value (to a relative 1e-12) or uses a symbol not recorded before it, one line each. FRAME_OK when all agree;
 * FRAME_INTERNAL when not. */
FRAME_API frame_status frame_working_check(const frame_working *working, frame_text *into);

/** One answer of a student's. */
typedef struct frame_working_answer {
    uint32_t struct_size, struct_id;
    const char *symbol; /**< required. The symbol as the working writes it: "F_b'", "f_b", "S". */
    double value;       /**< required : -1e15..1e15. The student's value, in the unit of the working. */
} frame_working_answer;
FRAME_ELEMENT(working_answer);

/** What a student's answer came to. */
typedef int32_t frame_marking_verdict;
enum frame_marking_verdict_values {
    FRAME_MARKING_AGREES = 1,  /**< "agrees". It is the working's value. */
    FRAME_MARKING_ROUNDED = 2, /**< "rounded". It is the working's value, rounded more coarsely than the tolerance. */
    FRAME_MARKING_FOLLOWS = 3, /**< "follows". It differs, but follows rightly from an earlier answer that differs. */
    FRAME_MARKING_DIFFERS = 4, /**< "differs". Neither is it the value, nor does it follow from earlier answers. */
    FRAME_MARKING_UNKNOWN = 5  /**< "unknown". The working has no such symbol. */
};

/** What would explain an answer that differs. */
typedef int32_t frame_marking_cause;
enum frame_marking_cause_values {
    FRAME_MARKING_NONE = 1,     /**< "none". Nothing that was tried explains it. */
    FRAME_MARKING_LEFT_OUT = 2, /**< "left out". As if the named symbol had been left out. */
    FRAME_MARKING_TWICE = 3,    /**< "used twice". As if the named symbol had been used twice. */
    FRAME_MARKING_INVERTED = 4, /**< "inverted". As if the named symbol multiplied for divided, or the other way. */
    FRAME_MARKING_FACTOR = 5,   /**< "factor". As if multiplied once more by the named symbol. */
    FRAME_MARKING_DIVISOR = 6,  /**< "divisor". As if divided once more by the named symbol. */
    FRAME_MARKING_SQUARE = 7,   /**< "square". As if multiplied or divided by the square of the named symbol. */
    FRAME_MARKING_UNIT = 8,     /**< "unit". As if a usual factor between units (12, 144, 1000) were in or out. */
    FRAME_MARKING_SIGN = 9,     /**< "sign". The sign alone is wrong. */
    FRAME_MARKING_MIXED_UP = 10 /**< "mixed up". It is the value of the named symbol. */
};

/** One answer, marked. Its texts live until the marking is freed. */
typedef struct frame_marking_line {
    uint32_t struct_size, struct_id;
    double given;             /**< The student's value. */
    double expected;          /**< The working's value; not given when it has no such symbol. */
    double follows;           /**< What the step's formula gives with the student's own earlier answers. */
    double ratio;             /**< Given over expected; not given when expected is zero or unknown. */
    double factor;            /**< The value of what would explain it; not given without a cause. */
    const char *symbol;       /**< The symbol, as the working writes it. */
    const char *unit;         /**< The unit of the values. */
    const char *cause_symbol; /**< What would explain it: a symbol of the working or a number; empty without a cause. */
    const char *explanation;  /**< The mark in a sentence. */
    frame_marking_verdict verdict; /**< What the answer came to. */
    frame_marking_cause cause;     /**< What would explain it. */
    int32_t step;                  /**< The entry of the working it was marked against; -1 for none. */
    int32_t spare;                 /**< Zero. */
} frame_marking_line;

/** A student's answers, marked; see frame_working_mark. */
typedef struct frame_marking frame_marking;

/** Marks a student's answers against a working. An answer agrees when it is within tolerance (relative; FRAME_NOT_GIVEN
 * stands for 0.005) of the value. A later answer that follows rightly from an earlier wrong one is told apart from a
 * second mistake. Free the marking with frame_marking_free. */
FRAME_API frame_status frame_working_mark(const frame_working *working, const frame_working_answer *answers,
                                          size_t answer_count, double tolerance, frame_marking **marking);
/** Frees a marking. NULL is allowed. */
FRAME_API void frame_marking_free(frame_marking *marking);
/** Counts the answers that were marked. */
FRAME_API size_t frame_marking_line_count(const frame_marking *marking);
/** As frame_marking_line_at, for an item of a stated size. */
FRAME_API frame_status frame_marking_line_at_sized(const frame_marking *marking, size_t index, frame_marking_line *item,
                                                   size_t item_size);
/** Gives a marked answer: in the order of the working, unknown symbols last. Its texts live as long as the marking. */
static inline frame_status frame_marking_line_at(const frame_marking *marking, size_t index, frame_marking_line *item) {
    return frame_marking_line_at_sized(marking, index, item, sizeof *item);
}
/** Gives the place in the list of the first line that differs; the count of lines when none does. */
FRAME_API size_t frame_marking_first(const frame_marking *marking);
/** Writes a marking in a format, appended to what the text holds. */
FRAME_API frame_status frame_marking_render(const frame_marking *marking, frame_render_format format, frame_text *into);

FRAME_END

#endif
