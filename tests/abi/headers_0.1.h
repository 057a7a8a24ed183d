/* The public headers of version 0.1 as they were released, all in one and without their comments: what programs of that time were
 * compiled with. Never edited. */
/* version.h */
#ifndef FRAME_VERSION_H
#define FRAME_VERSION_H 
#define FRAME_VERSION_MAJOR 0
#define FRAME_VERSION_MINOR 1
#define FRAME_VERSION_PATCH 0
#endif
/* base.h */
#ifndef FRAME_BASE_H
#define FRAME_BASE_H 
#include <stddef.h>
#include <stdint.h>
#if defined(__GNUC__) && !defined(_WIN32)
#define FRAME_API __attribute__((visibility("default")))
#else
#define FRAME_API 
#endif
#ifdef __cplusplus
#define FRAME_BEGIN extern "C" {
#define FRAME_END }
#else
#define FRAME_BEGIN 
#define FRAME_END 
#endif
FRAME_BEGIN
#define FRAME_NOT_GIVEN (-1e300)
#define FRAME_NOT_GIVEN_INT INT32_MIN
#define FRAME_HAS(set,bit_number) ((((uint64_t)(set)) >> (unsigned)(bit_number)) & 1u)
typedef int32_t frame_status;
enum frame_status_values {
    FRAME_OK = 0,
    FRAME_NOT_INITIALISED = 100,
    FRAME_NEWER_HEADER = 101,
    FRAME_REQUIRED = 102,
    FRAME_OUT_OF_RANGE = 103,
    FRAME_NOT_A_NUMBER = 104,
    FRAME_UNKNOWN_NAME = 105,
    FRAME_UNKNOWN_FIELD = 106,
    FRAME_UNREADABLE = 107,
    FRAME_AMBIGUOUS = 108,
    FRAME_CONFLICT = 109,
    FRAME_WRONG_TYPE = 110,
    FRAME_IMPOSSIBLE = 200,
    FRAME_UNSTABLE = 201,
    FRAME_OUTSIDE_SCOPE = 300,
    FRAME_NO_VALUE = 301,
    FRAME_REFUSED = 302,
    FRAME_NO_MEMORY = 400,
    FRAME_TOO_LARGE = 401,
    FRAME_BUFFER_TOO_SMALL = 402,
    FRAME_NOT_WRITTEN = 403,
    FRAME_ALREADY_USED = 404,
    FRAME_INTERNAL = 900
};
FRAME_API const char *frame_status_name(frame_status status);
FRAME_API const char *frame_status_text(frame_status status);
FRAME_API frame_status frame_status_at(size_t index);
FRAME_API size_t frame_status_count(void);
FRAME_API frame_status frame_error_status(void);
FRAME_API const char *frame_error_field(void);
FRAME_API const char *frame_error_value(void);
FRAME_API const char *frame_error_valid(void);
FRAME_API const char *frame_error_text(void);
FRAME_API void frame_error_clear(void);
FRAME_API const char *frame_version(void);
FRAME_API int32_t frame_version_number(void);
typedef struct frame_allocator {
    void *(*allocate)(void *user, size_t size);
    void *(*reallocate)(void *user, void *block, size_t size);
    void (*release)(void *user, void *block);
    void *user;
} frame_allocator;
FRAME_API frame_status frame_allocator_set(const frame_allocator *allocator);
typedef int32_t frame_bool;
typedef int32_t frame_known;
enum frame_known_values {
    FRAME_KNOWN_READ = 1,
    FRAME_KNOWN_COMPUTED = 2,
    FRAME_KNOWN_USER = 3,
    FRAME_KNOWN_SECONDARY = 4,
    FRAME_KNOWN_MEMORY = 5
};
typedef struct frame_working frame_working;
typedef struct frame_drawing frame_drawing;
typedef struct frame_text frame_text;
#define FRAME_CALCULATION(X) \
    FRAME_API frame_status frame_##X##_in_init_sized(frame_##X##_in *in, size_t in_size); \
    FRAME_API frame_status frame_##X##_sized(const frame_##X##_in *in, frame_##X##_out *out, size_t out_size, \
                                             frame_working *working); \
    static inline frame_status frame_##X##_in_init(frame_##X##_in *in) { \
        return frame_##X##_in_init_sized(in, sizeof *in); \
    } \
    static inline frame_status frame_##X(const frame_##X##_in *in, frame_##X##_out *out, frame_working *working) { \
        return frame_##X##_sized(in, out, sizeof *out, working); \
    } \
    typedef struct frame_##X##_in frame_##X##_in
#define FRAME_ELEMENT(X) \
    FRAME_API frame_status frame_##X##_init_sized(frame_##X *element, size_t size); \
    static inline frame_status frame_##X##_init(frame_##X *element) { \
        return frame_##X##_init_sized(element, sizeof *element); \
    } \
    typedef struct frame_##X frame_##X
#define FRAME_ANSWER(X) \
    typedef struct frame_##X frame_##X; \
    FRAME_API frame_status frame_##X##_in_init_sized(frame_##X##_in *in, size_t in_size); \
    FRAME_API frame_status frame_##X##_solve(const frame_##X##_in *in, frame_##X **answer, frame_working *working); \
    FRAME_API frame_status frame_##X##_result_sized(const frame_##X *answer, frame_##X##_out *out, size_t out_size); \
    FRAME_API void frame_##X##_free(frame_##X *answer); \
    static inline frame_status frame_##X##_in_init(frame_##X##_in *in) { \
        return frame_##X##_in_init_sized(in, sizeof *in); \
    } \
    static inline frame_status frame_##X##_result(const frame_##X *answer, frame_##X##_out *out) { \
        return frame_##X##_result_sized(answer, out, sizeof *out); \
    } \
    typedef struct frame_##X frame_##X
#define FRAME_ANSWER_LIST(X,ITEM,PLURAL) \
    FRAME_API size_t frame_##X##_##ITEM##_count(const frame_##X *answer); \
    FRAME_API frame_status frame_##X##_##ITEM##_at_sized(const frame_##X *answer, size_t index, \
                                                         frame_##X##_##ITEM *item, size_t item_size); \
    static inline frame_status frame_##X##_##ITEM##_at(const frame_##X *answer, size_t index, \
                                                       frame_##X##_##ITEM *item) { \
        return frame_##X##_##ITEM##_at_sized(answer, index, item, sizeof *item); \
    } \
    typedef struct frame_##X frame_##X
#define FRAME_ANSWER_NUMBERS(X,NAME) \
    FRAME_API const double *frame_##X##_##NAME(const frame_##X *answer, size_t *count); \
    typedef struct frame_##X frame_##X
#define FRAME_VIEW(X,VIEW) \
    FRAME_API frame_status frame_##X##_##VIEW(const frame_##X##_in *in, frame_##VIEW **view); \
    typedef struct frame_##X##_in frame_##X##_in
FRAME_END
#endif
/* fields.h */
#ifndef FRAME_FIELDS_H
#define FRAME_FIELDS_H 
FRAME_BEGIN
typedef int32_t frame_field_kind;
enum frame_field_kind_values {
    FRAME_FIELD_NUMBER = 1,
    FRAME_FIELD_INTEGER = 2,
    FRAME_FIELD_WORD = 3,
    FRAME_FIELD_BOOL = 4,
    FRAME_FIELD_TEXT = 5,
    FRAME_FIELD_LIST = 6,
    FRAME_FIELD_NUMBERS = 7,
    FRAME_FIELD_BITS = 8,
    FRAME_FIELD_RANGE = 9
};
typedef int32_t frame_field_need;
enum frame_field_need_values {
    FRAME_FIELD_REQUIRED = 1,
    FRAME_FIELD_OPTIONAL = 2,
    FRAME_FIELD_DEFAULT = 3,
    FRAME_FIELD_RESULT = 4
};
typedef struct frame_struct frame_struct;
typedef struct frame_field {
    const char *name;
    const char *unit;
    const char *meaning;
    const char *valid;
    const char *fallback_text;
    const char *words;
    const frame_struct *element;
    double low;
    double high;
    double fallback;
    int32_t kind;
    int32_t need;
    int32_t low_open;
    int32_t high_open;
    uint32_t offset;
    uint32_t count_offset;
    int32_t assumed_bit;
    int32_t spare;
} frame_field;
FRAME_API const frame_struct *frame_struct_find(const char *name);
FRAME_API size_t frame_struct_count(void);
FRAME_API const frame_struct *frame_struct_at(size_t index);
FRAME_API const char *frame_struct_name(const frame_struct *facts);
FRAME_API const char *frame_struct_meaning(const frame_struct *facts);
FRAME_API size_t frame_struct_size(const frame_struct *facts);
FRAME_API uint32_t frame_struct_id(const frame_struct *facts);
FRAME_API size_t frame_field_count(const frame_struct *facts);
FRAME_API const frame_field *frame_field_at(const frame_struct *facts, size_t index);
FRAME_API const frame_field *frame_field_find(const frame_struct *facts, const char *name);
FRAME_API const char *frame_field_nearest(const frame_struct *facts, const char *name);
FRAME_API frame_status frame_struct_init(const frame_struct *facts, void *object, size_t size);
FRAME_API frame_status frame_word_find(const char *words, const char *text, int32_t *value);
FRAME_API const char *frame_word_text(const char *words, int32_t value);
FRAME_API const char *frame_word_meaning(const char *words, int32_t value);
FRAME_API size_t frame_word_count(const char *words);
FRAME_API int32_t frame_word_at(const char *words, size_t index);
FRAME_API frame_status frame_result_text(const void *out, frame_text *into);
FRAME_API frame_status frame_assumed_text(const frame_field *field, frame_text *into);
typedef struct frame_calculation frame_calculation;
FRAME_API const frame_calculation *frame_calculation_find(const char *name);
FRAME_API size_t frame_calculation_count(void);
FRAME_API const frame_calculation *frame_calculation_at(size_t index);
FRAME_API const char *frame_calculation_name(const frame_calculation *calculation);
FRAME_API const frame_struct *frame_calculation_in(const frame_calculation *calculation);
FRAME_API const frame_struct *frame_calculation_out(const frame_calculation *calculation);
typedef struct frame_batch_column {
    const char *field;
    void *data;
    size_t stride;
} frame_batch_column;
FRAME_API frame_status frame_batch(const frame_calculation *calculation, const void *in,
                                   const frame_batch_column *in_columns, size_t in_count,
                                   const frame_batch_column *out_columns, size_t out_count,
                                   size_t rows, frame_status *statuses);
FRAME_END
#endif
/* text.h */
#ifndef FRAME_TEXT_H
#define FRAME_TEXT_H 
FRAME_BEGIN
FRAME_API frame_status frame_text_new(frame_text **text);
FRAME_API void frame_text_free(frame_text *text);
FRAME_API void frame_text_clear(frame_text *text);
FRAME_API const char *frame_text_chars(const frame_text *text);
FRAME_API size_t frame_text_length(const frame_text *text);
FRAME_API frame_status frame_text_save(const frame_text *text, const char *path);
FRAME_API frame_status frame_number_read(const char *chars, const char **end, double *value);
FRAME_API frame_status frame_number_write(double value, int32_t significant_digits, char *chars, size_t size);
FRAME_END
#endif
/* tape.h */
#ifndef FRAME_TAPE_H
#define FRAME_TAPE_H 
FRAME_BEGIN
FRAME_API frame_status frame_tape_parse(const char *text, double *inches);
typedef int32_t frame_tape_units;
enum frame_tape_units_values {
    FRAME_TAPE_FEET = 1,
    FRAME_TAPE_INCHES = 2,
    FRAME_TAPE_DECIMAL = 3,
    FRAME_TAPE_METRIC = 4
};
typedef int32_t frame_rounding;
enum frame_rounding_values {
    FRAME_ROUND_NEAREST = 1,
    FRAME_ROUND_DOWN = 2,
    FRAME_ROUND_UP = 3
};
typedef struct frame_tape_style {
    uint32_t struct_size, struct_id;
    int32_t denominator;
    frame_tape_units style;
    frame_rounding rounding;
    frame_bool strength;
    int32_t decimals;
    int32_t spare;
} frame_tape_style;
FRAME_ELEMENT(tape_style);
FRAME_API frame_status frame_tape_format(double inches, const frame_tape_style *style, char *text, size_t size);
FRAME_API frame_status frame_slope_parse(const char *text, double *slope);
FRAME_API frame_status frame_slope_format(double slope, char *text, size_t size);
FRAME_API frame_status frame_angle_parse(const char *text, double *degrees);
FRAME_END
#endif
/* working.h */
#ifndef FRAME_WORKING_H
#define FRAME_WORKING_H 
FRAME_BEGIN
typedef int32_t frame_render_format;
enum frame_render_format_values {
    FRAME_RENDER_TEXT = 1,
    FRAME_RENDER_MARKDOWN = 2,
    FRAME_RENDER_HTML = 3,
    FRAME_RENDER_JSON = 4
};
typedef int32_t frame_step_kind;
enum frame_step_kind_values {
    FRAME_STEP_GIVEN = 1,
    FRAME_STEP_TABLE = 2,
    FRAME_STEP_COMPUTED = 3,
    FRAME_STEP_CASE = 4,
    FRAME_STEP_HEADING = 5
};
typedef struct frame_working_step {
    uint32_t struct_size, struct_id;
    double value;
    const char *symbol;
    const char *formula;
    const char *numbers;
    const char *unit;
    const char *meaning;
    const char *source;
    frame_step_kind kind;
    int32_t level;
} frame_working_step;
FRAME_API frame_status frame_working_new(frame_working **working);
FRAME_API void frame_working_free(frame_working *working);
FRAME_API void frame_working_clear(frame_working *working);
FRAME_API frame_status frame_working_state(const frame_working *working);
FRAME_API size_t frame_working_step_count(const frame_working *working);
FRAME_API frame_status frame_working_step_at_sized(const frame_working *working, size_t index, frame_working_step *item,
                                                   size_t item_size);
static inline frame_status frame_working_step_at(const frame_working *working, size_t index, frame_working_step *item) {
    return frame_working_step_at_sized(working, index, item, sizeof *item);
}
FRAME_API frame_status frame_working_render(const frame_working *working, frame_render_format format, frame_text *into);
FRAME_API frame_status frame_working_check(const frame_working *working, frame_text *into);
typedef struct frame_working_answer {
    uint32_t struct_size, struct_id;
    const char *symbol;
    double value;
} frame_working_answer;
FRAME_ELEMENT(working_answer);
typedef int32_t frame_marking_verdict;
enum frame_marking_verdict_values {
    FRAME_MARKING_AGREES = 1,
    FRAME_MARKING_ROUNDED = 2,
    FRAME_MARKING_FOLLOWS = 3,
    FRAME_MARKING_DIFFERS = 4,
    FRAME_MARKING_UNKNOWN = 5
};
typedef int32_t frame_marking_cause;
enum frame_marking_cause_values {
    FRAME_MARKING_NONE = 1,
    FRAME_MARKING_LEFT_OUT = 2,
    FRAME_MARKING_TWICE = 3,
    FRAME_MARKING_INVERTED = 4,
    FRAME_MARKING_FACTOR = 5,
    FRAME_MARKING_DIVISOR = 6,
    FRAME_MARKING_SQUARE = 7,
    FRAME_MARKING_UNIT = 8,
    FRAME_MARKING_SIGN = 9,
    FRAME_MARKING_MIXED_UP = 10
};
typedef struct frame_marking_line {
    uint32_t struct_size, struct_id;
    double given;
    double expected;
    double follows;
    double ratio;
    double factor;
    const char *symbol;
    const char *unit;
    const char *cause_symbol;
    const char *explanation;
    frame_marking_verdict verdict;
    frame_marking_cause cause;
    int32_t step;
    int32_t spare;
} frame_marking_line;
typedef struct frame_marking frame_marking;
FRAME_API frame_status frame_working_mark(const frame_working *working, const frame_working_answer *answers,
                                          size_t answer_count, double tolerance, frame_marking **marking);
FRAME_API void frame_marking_free(frame_marking *marking);
FRAME_API size_t frame_marking_line_count(const frame_marking *marking);
FRAME_API frame_status frame_marking_line_at_sized(const frame_marking *marking, size_t index, frame_marking_line *item,
                                                   size_t item_size);
static inline frame_status frame_marking_line_at(const frame_marking *marking, size_t index, frame_marking_line *item) {
    return frame_marking_line_at_sized(marking, index, item, sizeof *item);
}
FRAME_API size_t frame_marking_first(const frame_marking *marking);
FRAME_API frame_status frame_marking_render(const frame_marking *marking, frame_render_format format, frame_text *into);
FRAME_END
#endif
/* drawing.h */
#ifndef FRAME_DRAWING_H
#define FRAME_DRAWING_H 
FRAME_BEGIN
typedef int32_t frame_pen;
enum frame_pen_values {
    FRAME_PEN_CUT = 1,
    FRAME_PEN_OUTLINE = 2,
    FRAME_PEN_THIN = 3,
    FRAME_PEN_HIDDEN = 4,
    FRAME_PEN_CENTRE = 5,
    FRAME_PEN_DIMENSION = 6
};
typedef int32_t frame_hatch;
enum frame_hatch_values {
    FRAME_HATCH_NONE = 1,
    FRAME_HATCH_BLANK = 2,
    FRAME_HATCH_SOLID = 3,
    FRAME_HATCH_END_GRAIN = 4,
    FRAME_HATCH_SIDE_GRAIN = 5,
    FRAME_HATCH_PANEL = 6,
    FRAME_HATCH_CONCRETE = 7,
    FRAME_HATCH_STEEL = 8,
    FRAME_HATCH_INSULATION = 9,
    FRAME_HATCH_EARTH = 10
};
typedef int32_t frame_anchor;
enum frame_anchor_values {
    FRAME_ANCHOR_START = 1,
    FRAME_ANCHOR_MIDDLE = 2,
    FRAME_ANCHOR_END = 3,
    FRAME_ANCHOR_ABOVE = 4,
    FRAME_ANCHOR_BELOW = 5
};
typedef int32_t frame_lettering;
enum frame_lettering_values {
    FRAME_LETTERING_NOTE = 1,
    FRAME_LETTERING_NAME = 2,
    FRAME_LETTERING_HEADING = 3
};
typedef int32_t frame_dimension_side;
enum frame_dimension_side_values {
    FRAME_DIMENSION_ABOVE = 1,
    FRAME_DIMENSION_BELOW = 2,
    FRAME_DIMENSION_LEFT = 3,
    FRAME_DIMENSION_RIGHT = 4,
    FRAME_DIMENSION_ALONG = 5
};
FRAME_API frame_status frame_drawing_new(frame_drawing **drawing);
FRAME_API void frame_drawing_free(frame_drawing *drawing);
FRAME_API frame_status frame_drawing_title(frame_drawing *drawing, const char *title);
FRAME_API frame_status frame_drawing_description(frame_drawing *drawing, const char *description);
FRAME_API frame_status frame_drawing_paper(frame_drawing *drawing, double width_in, double height_in);
FRAME_API frame_status frame_drawing_letter_size(frame_drawing *drawing, double points);
FRAME_API frame_status frame_drawing_denominator(frame_drawing *drawing, int32_t denominator);
FRAME_API frame_status frame_drawing_view(frame_drawing *drawing, const char *caption);
FRAME_API frame_status frame_drawing_break(frame_drawing *drawing, double from_x_in, double to_x_in);
FRAME_API frame_status frame_drawing_shorten(frame_drawing *drawing, double keep_in);
FRAME_API frame_status frame_drawing_line(frame_drawing *drawing, double x1_in, double y1_in, double x2_in,
                                          double y2_in, frame_pen pen);
FRAME_API frame_status frame_drawing_point(frame_drawing *drawing, double x_in, double y_in);
FRAME_API frame_status frame_drawing_polyline(frame_drawing *drawing, frame_pen pen);
FRAME_API frame_status frame_drawing_polygon(frame_drawing *drawing, frame_pen pen, frame_hatch hatch);
FRAME_API frame_status frame_drawing_rectangle(frame_drawing *drawing, double x1_in, double y1_in, double x2_in,
                                               double y2_in, frame_pen pen, frame_hatch hatch);
FRAME_API frame_status frame_drawing_circle(frame_drawing *drawing, double x_in, double y_in, double radius_in,
                                            frame_pen pen, frame_hatch hatch);
FRAME_API frame_status frame_drawing_arc(frame_drawing *drawing, double x_in, double y_in, double radius_in,
                                         double from_deg, double to_deg, frame_pen pen);
FRAME_API frame_status frame_drawing_text(frame_drawing *drawing, double x_in, double y_in, const char *text,
                                          frame_anchor anchor, double angle_deg, frame_lettering lettering);
FRAME_API frame_status frame_drawing_label(frame_drawing *drawing, double x_in, double y_in, const char *text);
FRAME_API frame_status frame_drawing_mark(frame_drawing *drawing, double x_in, double y_in, const char *text);
FRAME_API frame_status frame_drawing_dimension_running(frame_drawing *drawing, frame_dimension_side side);
FRAME_API frame_status frame_drawing_dimension(frame_drawing *drawing, double x1_in, double y1_in, double x2_in,
                                               double y2_in, frame_dimension_side side, const char *text);
FRAME_API frame_status frame_drawing_angle(frame_drawing *drawing, double x_in, double y_in, double from_deg,
                                           double to_deg, const char *text);
FRAME_API frame_status frame_drawing_svg(const frame_drawing *drawing, frame_text *into);
FRAME_API frame_status frame_drawing_save_svg(const frame_drawing *drawing, const char *path);
FRAME_END
#endif
/* material.h */
#ifndef FRAME_MATERIAL_H
#define FRAME_MATERIAL_H 
FRAME_BEGIN
typedef int32_t frame_size;
#define FRAME_SIZE(thickness,width) ((int32_t)((thickness) * 16) * 65536 + (int32_t)((width) * 16))
FRAME_API frame_status frame_size_find(const char *text, frame_size *size);
FRAME_API const char *frame_size_name(frame_size size);
FRAME_API size_t frame_size_count(void);
FRAME_API frame_size frame_size_at(size_t index);
typedef int32_t frame_species;
FRAME_API frame_status frame_species_find(const char *text, frame_species *species);
FRAME_API const char *frame_species_name(frame_species species);
FRAME_API size_t frame_species_count(void);
FRAME_API frame_species frame_species_at(size_t index);
typedef int32_t frame_grade;
FRAME_API frame_status frame_grade_find(const char *text, frame_grade *grade);
FRAME_API const char *frame_grade_name(frame_grade grade);
FRAME_API size_t frame_grade_count(void);
FRAME_API frame_grade frame_grade_at(size_t index);
typedef int32_t frame_turned;
enum frame_turned_values {
    FRAME_TURNED_ON_EDGE = 1,
    FRAME_TURNED_FLAT = 2
};
typedef int32_t frame_service;
enum frame_service_values {
    FRAME_SERVICE_DRY = 1,
    FRAME_SERVICE_WET = 2
};
typedef int32_t frame_section_caution;
enum frame_section_caution_values {
    FRAME_SECTION_CAUTION_FLAT_PLIES = 0,
    FRAME_SECTION_CAUTION_GREEN = 1,
    FRAME_SECTION_CAUTION_TIMBER = 2
};
typedef int32_t frame_section_not_checked;
enum frame_section_not_checked_values {
    FRAME_SECTION_UNCHECKED_TRUE_SIZE = 0
};
typedef struct frame_section_in {
    uint32_t struct_size, struct_id;
    frame_size size;
    int32_t plies;
    frame_turned turned;
    frame_bool green;
    double width_in;
    double depth_in;
} frame_section_in;
typedef struct frame_section_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    int32_t spare;
    double width_in;
    double depth_in;
    double area_in2;
    double section_modulus_in3;
    double inertia_in4;
    double board_feet_per_foot;
} frame_section_out;
FRAME_CALCULATION(section);
typedef int32_t frame_design_caution;
enum frame_design_caution_values {
    FRAME_DESIGN_CAUTION_STAMP = 0,
    FRAME_DESIGN_CAUTION_DOUBTFUL = 1,
    FRAME_DESIGN_CAUTION_MEMORY = 2,
    FRAME_DESIGN_CAUTION_SUPERSEDED = 3,
    FRAME_DESIGN_CAUTION_GRAVITY = 4
};
typedef int32_t frame_design_not_checked;
enum frame_design_not_checked_values {
    FRAME_DESIGN_UNCHECKED_FACTORS = 0
};
typedef struct frame_design_values_in {
    uint32_t struct_size, struct_id;
    frame_species species;
    frame_grade grade;
    frame_size size;
    int32_t spare;
} frame_design_values_in;
typedef struct frame_design_values_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    int32_t table_id;
    double fb_psi;
    double ft_psi;
    double fv_psi;
    double fc_perp_psi;
    double fc_psi;
    double e_psi;
    double e_min_psi;
    double specific_gravity;
    double size_factor_bending;
    double size_factor_tension;
    double size_factor_compression;
    const char *source;
} frame_design_values_out;
FRAME_CALCULATION(design_values);
FRAME_END
#endif
/* load.h */
#ifndef FRAME_LOAD_H
#define FRAME_LOAD_H 
FRAME_BEGIN
typedef int32_t frame_load_kind;
enum frame_load_kind_values {
    FRAME_LOAD_DEAD = 1,
    FRAME_LOAD_LIVE = 2,
    FRAME_LOAD_ROOF_LIVE = 3,
    FRAME_LOAD_SNOW = 4,
    FRAME_LOAD_WIND = 5
};
typedef int32_t frame_load_duration;
enum frame_load_duration_values {
    FRAME_DURATION_PERMANENT = 1,
    FRAME_DURATION_TEN_YEARS = 2,
    FRAME_DURATION_TWO_MONTHS = 3,
    FRAME_DURATION_SEVEN_DAYS = 4,
    FRAME_DURATION_TEN_MINUTES = 5,
    FRAME_DURATION_IMPACT = 6
};
typedef int32_t frame_load_combination;
enum frame_load_combination_values {
    FRAME_COMBINATION_D = 1,
    FRAME_COMBINATION_D_L = 2,
    FRAME_COMBINATION_D_LR = 3,
    FRAME_COMBINATION_D_S = 4,
    FRAME_COMBINATION_D_L_LR = 5,
    FRAME_COMBINATION_D_L_S = 6
};
typedef int32_t frame_combinations_not_checked;
enum frame_combinations_not_checked_values {
    FRAME_COMBINATIONS_UNCHECKED_WIND = 0,
    FRAME_COMBINATIONS_UNCHECKED_SNOW = 1,
    FRAME_COMBINATIONS_UNCHECKED_LIVE = 2
};
typedef int32_t frame_combinations_caution;
enum frame_combinations_caution_values {
    FRAME_COMBINATIONS_CAUTION_BASIS = 0
};
typedef struct frame_load_combinations_in {
    uint32_t struct_size, struct_id;
    double dead_plf;
    double live_plf;
    double roof_live_plf;
    double snow_plf;
    frame_load_duration live_duration;
    int32_t spare;
} frame_load_combinations_in;
typedef struct frame_load_combinations_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    frame_load_combination governs;
    double governing_plf;
    double load_duration_factor;
    double greatest_plf;
    double transient_plf;
} frame_load_combinations_out;
typedef struct frame_load_combinations_row {
    uint32_t struct_size, struct_id;
    frame_load_combination combination;
    int32_t spare;
    double total_plf;
    double load_duration_factor;
    double equivalent_plf;
} frame_load_combinations_row;
FRAME_ANSWER(load_combinations);
FRAME_ANSWER_LIST(load_combinations, row, rows);
FRAME_END
#endif
/* marks.h */
#ifndef FRAME_MARKS_H
#define FRAME_MARKS_H 
FRAME_BEGIN
typedef int32_t frame_first_mark;
enum frame_first_mark_values {
    FRAME_FIRST_MARK_SET_BACK = 1,
    FRAME_FIRST_MARK_FULL = 2
};
typedef int32_t frame_mark_side;
enum frame_mark_side_values {
    FRAME_MARK_FAR = 1,
    FRAME_MARK_NEAR = 2,
    FRAME_MARK_CENTRE = 3
};
typedef int32_t frame_mark_kind;
enum frame_mark_kind_values {
    FRAME_MARK_START = 1,
    FRAME_MARK_ON_CENTRES = 2,
    FRAME_MARK_END = 3
};
typedef int32_t frame_marks_caution;
enum frame_marks_caution_values {
    FRAME_MARKS_CAUTION_ONE_HOOK = 0,
    FRAME_MARKS_CAUTION_SIDE = 1,
    FRAME_MARKS_CAUTION_EDGES = 2,
    FRAME_MARKS_CAUTION_CLOSE = 3
};
typedef int32_t frame_marks_not_checked;
enum frame_marks_not_checked_values {
    FRAME_MARKS_UNCHECKED_OPENINGS = 0
};
typedef struct frame_layout_marks_in {
    uint32_t struct_size, struct_id;
    double length_in;
    double spacing_in;
    double thickness_in;
    double datum_in;
    double sheet_in;
    frame_first_mark first;
    frame_bool end_member;
    frame_bool start_member;
    frame_mark_side side;
} frame_layout_marks_in;
typedef struct frame_layout_marks_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    int32_t count;
    double last_space_in;
    double first_mark_in;
    double next_datum_in;
    double sheet_in;
    int32_t on_centres;
    int32_t edges_off;
} frame_layout_marks_out;
typedef struct frame_layout_marks_member {
    uint32_t struct_size, struct_id;
    double mark_in;
    double from_in;
    double to_in;
    double centre_in;
    double space_in;
    frame_mark_kind kind;
    int32_t number;
} frame_layout_marks_member;
typedef struct frame_layout_marks_edge {
    uint32_t struct_size, struct_id;
    double at_in;
    double before_in;
    double after_in;
    int32_t member;
    int32_t spare;
} frame_layout_marks_edge;
FRAME_ANSWER(layout_marks);
FRAME_ANSWER_NUMBERS(layout_marks, marks_in);
FRAME_ANSWER_LIST(layout_marks, member, members);
FRAME_ANSWER_LIST(layout_marks, edge, edges);
FRAME_END
#endif
/* timber.h */
#ifndef FRAME_TIMBER_H
#define FRAME_TIMBER_H 
FRAME_BEGIN
typedef struct frame_stick frame_stick;
typedef int32_t frame_stick_face;
enum frame_stick_face_values {
    FRAME_STICK_TOP = 1,
    FRAME_STICK_BOTTOM = 2,
    FRAME_STICK_LEFT = 3,
    FRAME_STICK_RIGHT = 4
};
typedef int32_t frame_stick_end;
enum frame_stick_end_values {
    FRAME_STICK_START = 1,
    FRAME_STICK_END = 2
};
typedef int32_t frame_stick_edge;
enum frame_stick_edge_values {
    FRAME_STICK_TOP_LEFT = 1,
    FRAME_STICK_TOP_RIGHT = 2,
    FRAME_STICK_BOTTOM_LEFT = 3,
    FRAME_STICK_BOTTOM_RIGHT = 4
};
typedef int32_t frame_stick_role;
enum frame_stick_role_values {
    FRAME_STICK_SQUARE_END = 1,
    FRAME_STICK_PLUMB_CUT = 2,
    FRAME_STICK_LEVEL_CUT = 3,
    FRAME_STICK_CHEEK_CUT = 4,
    FRAME_STICK_MITRE_CUT = 5,
    FRAME_STICK_BACKING = 6,
    FRAME_STICK_TAPER = 7,
    FRAME_STICK_SEAT = 8,
    FRAME_STICK_HEEL_CUT = 9,
    FRAME_STICK_SHOULDER = 10,
    FRAME_STICK_LAP_FACE = 11
};
typedef int32_t frame_stick_notch_kind;
enum frame_stick_notch_kind_values {
    FRAME_STICK_BIRDSMOUTH = 1,
    FRAME_STICK_LAP = 2,
    FRAME_STICK_HOUSING = 3,
    FRAME_STICK_NOTCH = 4
};
typedef int32_t frame_stick_axes;
enum frame_stick_axes_values {
    FRAME_STICK_AXES_STICK = 1,
    FRAME_STICK_AXES_WORLD = 2
};
typedef int32_t frame_stick_axis_at;
enum frame_stick_axis_at_values {
    FRAME_STICK_AXIS_CENTRE = 1,
    FRAME_STICK_AXIS_TOP = 2,
    FRAME_STICK_AXIS_BOTTOM = 3
};
typedef struct frame_stick_plane {
    uint32_t struct_size, struct_id;
    frame_stick_role role;
    frame_stick_axes axes;
    int32_t notch;
    frame_stick_notch_kind notch_kind;
    double point_x_in;
    double point_y_in;
    double point_z_in;
    double waste_x;
    double waste_y;
    double waste_z;
    const char *label;
} frame_stick_plane;
FRAME_ELEMENT(stick_plane);
typedef struct frame_stick_in {
    uint32_t struct_size, struct_id;
    const char *name;
    const char *section;
    double thickness_in;
    double depth_in;
    double length_in;
    double start_x_in;
    double start_y_in;
    double start_z_in;
    double end_x_in;
    double end_y_in;
    double end_z_in;
    double crown_x;
    double crown_y;
    double crown_z;
    frame_stick_axis_at axis_at;
    frame_stick_end measure_from;
    int32_t count;
    int32_t spare;
    const frame_stick_plane *planes;
    size_t plane_count;
} frame_stick_in;
FRAME_ELEMENT(stick_in);
FRAME_API frame_status frame_stick_new(const frame_stick_in *in, frame_stick **stick);
FRAME_API void frame_stick_free(frame_stick *stick);
FRAME_API frame_status frame_stick_cut(frame_stick *stick, const frame_stick_plane *plane);
FRAME_API frame_status frame_stick_notch(frame_stick *stick, const frame_stick_plane *planes, size_t plane_count,
                                         frame_stick_notch_kind kind);
typedef struct frame_stick_lengths_out {
    uint32_t struct_size, struct_id;
    double long_point_in;
    double short_point_in;
    double centre_line_in;
    double top_edge_in;
    double bottom_edge_in;
    double top_left_in;
    double top_right_in;
    double bottom_left_in;
    double bottom_right_in;
    double start_long_point_x_in;
    double end_long_point_x_in;
} frame_stick_lengths_out;
FRAME_API frame_status frame_stick_lengths_sized(const frame_stick *stick, frame_stick_lengths_out *out,
                                                 size_t out_size);
static inline frame_status frame_stick_lengths(const frame_stick *stick, frame_stick_lengths_out *out) {
    return frame_stick_lengths_sized(stick, out, sizeof *out);
}
typedef struct frame_stick_solid_out {
    uint32_t struct_size, struct_id;
    double volume_in3;
    double stock_volume_in3;
    double centre_x_in;
    double centre_y_in;
    double centre_z_in;
    double world_x_in;
    double world_y_in;
    double world_z_in;
} frame_stick_solid_out;
FRAME_API frame_status frame_stick_solid_sized(const frame_stick *stick, frame_stick_solid_out *out, size_t out_size);
static inline frame_status frame_stick_solid(const frame_stick *stick, frame_stick_solid_out *out) {
    return frame_stick_solid_sized(stick, out, sizeof *out);
}
FRAME_API frame_status frame_stick_weight(const frame_stick *stick, double density_pcf, double *weight_lb);
typedef int32_t frame_stick_saw_caution;
enum frame_stick_saw_caution_values {
    FRAME_STICK_SAW_COMPOUND = 0,
    FRAME_STICK_SAW_PAST_TILT = 1
};
typedef struct frame_stick_saw {
    uint32_t struct_size, struct_id;
    frame_stick_role role;
    frame_stick_end at_end;
    int32_t notch;
    frame_stick_notch_kind notch_kind;
    frame_stick_face base_face;
    frame_stick_face mitre_face;
    frame_stick_end mitre_end;
    frame_stick_end bevel_end;
    double mitre_deg;
    double bevel_deg;
    double across_top_deg;
    double top_edge_deg;
    double area_in2;
    const char *label;
    uint64_t cautions;
} frame_stick_saw;
FRAME_API size_t frame_stick_saw_count(const frame_stick *stick);
FRAME_API frame_status frame_stick_saw_at_sized(const frame_stick *stick, size_t index, frame_stick_saw *item,
                                                size_t item_size);
static inline frame_status frame_stick_saw_at(const frame_stick *stick, size_t index, frame_stick_saw *item) {
    return frame_stick_saw_at_sized(stick, index, item, sizeof *item);
}
typedef struct frame_stick_mark {
    uint32_t struct_size, struct_id;
    frame_stick_face face;
    frame_stick_edge edge;
    double along_in;
    double across_in;
    int32_t line;
    int32_t saw;
    const char *label;
} frame_stick_mark;
FRAME_API size_t frame_stick_mark_count(const frame_stick *stick);
FRAME_API frame_status frame_stick_mark_at_sized(const frame_stick *stick, size_t index, frame_stick_mark *item,
                                                 size_t item_size);
static inline frame_status frame_stick_mark_at(const frame_stick *stick, size_t index, frame_stick_mark *item) {
    return frame_stick_mark_at_sized(stick, index, item, sizeof *item);
}
typedef struct frame_stick_corner {
    uint32_t struct_size, struct_id;
    frame_stick_face face;
    int32_t loop;
    double along_in;
    double across_in;
} frame_stick_corner;
FRAME_API size_t frame_stick_corner_count(const frame_stick *stick);
FRAME_API frame_status frame_stick_corner_at_sized(const frame_stick *stick, size_t index, frame_stick_corner *item,
                                                   size_t item_size);
static inline frame_status frame_stick_corner_at(const frame_stick *stick, size_t index, frame_stick_corner *item) {
    return frame_stick_corner_at_sized(stick, index, item, sizeof *item);
}
typedef struct frame_stick_fit_out {
    uint32_t struct_size, struct_id;
    double overlap_in3;
} frame_stick_fit_out;
FRAME_API frame_status frame_stick_fit_sized(const frame_stick *stick, const frame_stick *other,
                                             frame_stick_fit_out *out, size_t out_size);
static inline frame_status frame_stick_fit(const frame_stick *stick, const frame_stick *other,
                                           frame_stick_fit_out *out) {
    return frame_stick_fit_sized(stick, other, out, sizeof *out);
}
FRAME_API frame_status frame_stick_drawing(const frame_stick *stick, frame_drawing **drawing);
FRAME_END
#endif
/* strength.h */
#ifndef FRAME_STRENGTH_H
#define FRAME_STRENGTH_H 
FRAME_BEGIN
typedef int32_t frame_governing;
enum frame_governing_values {
    FRAME_GOVERNS_BENDING = 1,
    FRAME_GOVERNS_SHEAR = 2,
    FRAME_GOVERNS_BEARING = 3,
    FRAME_GOVERNS_DEFLECTION = 4,
    FRAME_GOVERNS_COMPRESSION = 5,
    FRAME_GOVERNS_COMBINED = 6
};
typedef int32_t frame_compression_edge;
enum frame_compression_edge_values {
    FRAME_EDGE_HELD = 1,
    FRAME_EDGE_FREE = 2
};
typedef int32_t frame_temperature;
enum frame_temperature_values {
    FRAME_TEMPERATURE_100F = 1,
    FRAME_TEMPERATURE_125F = 2,
    FRAME_TEMPERATURE_150F = 3
};
typedef int32_t frame_joist_use;
enum frame_joist_use_values {
    FRAME_USE_FLOOR = 1,
    FRAME_USE_CEILING = 2,
    FRAME_USE_RAFTER = 3,
    FRAME_USE_DECK = 4
};
typedef int32_t frame_bending_caution;
enum frame_bending_caution_values {
    FRAME_BENDING_CAUTION_AS_ASSUMED = 0,
    FRAME_BENDING_CAUTION_LOCAL_LOADS = 1,
    FRAME_BENDING_CAUTION_STAMP = 2,
    FRAME_BENDING_CAUTION_MEMORY = 3,
    FRAME_BENDING_CAUTION_DOUBTFUL = 4,
    FRAME_BENDING_CAUTION_SUPERSEDED = 5,
    FRAME_BENDING_CAUTION_USER_VALUES = 6,
    FRAME_BENDING_CAUTION_PLIES = 7,
    FRAME_BENDING_CAUTION_FLAT = 8,
    FRAME_BENDING_CAUTION_EDGE_HELD = 9,
    FRAME_BENDING_CAUTION_RAFTER = 10,
    FRAME_BENDING_CAUTION_SHORT_BEARING = 11,
    FRAME_BENDING_CAUTION_NOTCH = 12,
    FRAME_BENDING_CAUTION_SNOW_BASIS = 13,
    FRAME_BENDING_CAUTION_SPAN_TABLES = 14
};
typedef int32_t frame_bending_not_checked;
enum frame_bending_not_checked_values {
    FRAME_BENDING_UNCHECKED_SUPPORTS = 0,
    FRAME_BENDING_UNCHECKED_CUTS = 1,
    FRAME_BENDING_UNCHECKED_CONCENTRATED = 2,
    FRAME_BENDING_UNCHECKED_WIND = 3,
    FRAME_BENDING_UNCHECKED_VIBRATION = 4,
    FRAME_BENDING_UNCHECKED_SNOW_FORMS = 5,
    FRAME_BENDING_UNCHECKED_THRUST = 6,
    FRAME_BENDING_UNCHECKED_BEARING = 7,
    FRAME_BENDING_UNCHECKED_TOTAL = 8,
    FRAME_BENDING_UNCHECKED_SELF_WEIGHT = 9,
    FRAME_BENDING_UNCHECKED_SLOPE = 10,
    FRAME_BENDING_UNCHECKED_ROLLING = 11,
    FRAME_BENDING_UNCHECKED_SIDE_HUNG = 12
};
typedef struct frame_joist_check_in {
    uint32_t struct_size, struct_id;
    frame_joist_use use;
    frame_size size;
    frame_species species;
    frame_grade grade;
    int32_t plies;
    frame_service service;
    frame_bool incised;
    frame_bool repetitive;
    frame_compression_edge compression_edge;
    frame_temperature temperature;
    double span_in;
    double spacing_in;
    double live_psf;
    double dead_psf;
    double snow_psf;
    double slope;
    double bearing_in;
    double deflection_limit;
    double total_deflection_limit;
    double creep_factor;
    double unbraced_length_in;
    double width_in;
    double depth_in;
    double fb_psi;
    double fv_psi;
    double fc_perp_psi;
    double e_psi;
    double e_min_psi;
} frame_joist_check_in;
typedef struct frame_joist_check_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    frame_bool passes;
    frame_governing governs;
    frame_load_combination combination;
    double ratio;
    double bending_ratio;
    double shear_ratio;
    double bearing_ratio;
    double deflection_ratio;
    double deflection_live_ratio;
    double deflection_total_ratio;
    double moment_lb_in;
    double shear_lb;
    double reaction_lb;
    double fb_actual_psi;
    double fb_adjusted_psi;
    double fv_actual_psi;
    double fv_adjusted_psi;
    double fc_perp_actual_psi;
    double fc_perp_adjusted_psi;
    double e_adjusted_psi;
    double deflection_live_in;
    double deflection_total_in;
    double bearing_needed_in;
    double load_duration_factor;
    double wet_service_factor;
    double temperature_factor;
    double beam_stability_factor;
    double size_factor;
    double incising_factor;
    double repetitive_member_factor;
    double slenderness_ratio;
} frame_joist_check_out;
FRAME_CALCULATION(joist_check);
typedef struct frame_joist_span_in {
    uint32_t struct_size, struct_id;
    frame_joist_use use;
    frame_size size;
    frame_species species;
    frame_grade grade;
    int32_t plies;
    frame_service service;
    frame_bool incised;
    frame_bool repetitive;
    frame_temperature temperature;
    int32_t spare;
    double spacing_in;
    double live_psf;
    double dead_psf;
    double snow_psf;
    double slope;
    double bearing_in;
    double deflection_limit;
    double total_deflection_limit;
    double creep_factor;
    double width_in;
    double depth_in;
    double fb_psi;
    double fv_psi;
    double fc_perp_psi;
    double e_psi;
} frame_joist_span_in;
typedef struct frame_joist_span_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    frame_governing governs;
    frame_load_combination combination;
    int32_t spare;
    double span_in;
    double bending_span_in;
    double shear_span_in;
    double deflection_span_in;
    double total_deflection_span_in;
    double bearing_span_in;
    double bearing_needed_in;
    double fb_adjusted_psi;
    double fv_adjusted_psi;
    double fc_perp_adjusted_psi;
    double e_adjusted_psi;
    double load_duration_factor;
    double wet_service_factor;
    double size_factor;
    double incising_factor;
    double repetitive_member_factor;
} frame_joist_span_out;
FRAME_CALCULATION(joist_span);
typedef struct frame_beam_check_in {
    uint32_t struct_size, struct_id;
    frame_size size;
    frame_species species;
    frame_grade grade;
    int32_t plies;
    frame_turned turned;
    frame_service service;
    frame_bool incised;
    frame_bool repetitive;
    frame_compression_edge compression_edge;
    frame_temperature temperature;
    frame_load_duration live_duration;
    frame_bool shear_at_depth;
    frame_bool self_weight;
    int32_t spare;
    double span_in;
    double dead_plf;
    double live_plf;
    double roof_live_plf;
    double snow_plf;
    double spacing_in;
    double dead_psf;
    double live_psf;
    double roof_live_psf;
    double snow_psf;
    double bearing_in;
    double unbraced_length_in;
    double notch_in;
    double deflection_limit;
    double total_deflection_limit;
    double creep_factor;
    double width_in;
    double depth_in;
    double fb_psi;
    double fv_psi;
    double fc_perp_psi;
    double e_psi;
    double e_min_psi;
    double specific_gravity;
} frame_beam_check_in;
typedef struct frame_beam_check_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    frame_bool passes;
    frame_governing governs;
    frame_load_combination combination;
    frame_load_combination shear_combination;
    int32_t spare;
    double ratio;
    double bending_ratio;
    double shear_ratio;
    double bearing_ratio;
    double deflection_ratio;
    double deflection_live_ratio;
    double deflection_total_ratio;
    double dead_plf;
    double transient_plf;
    double moment_lb_in;
    double shear_lb;
    double reaction_lb;
    double fb_actual_psi;
    double fb_adjusted_psi;
    double fv_actual_psi;
    double fv_adjusted_psi;
    double fc_perp_actual_psi;
    double fc_perp_adjusted_psi;
    double e_adjusted_psi;
    double deflection_live_in;
    double deflection_total_in;
    double deflection_live_limit_in;
    double deflection_total_limit_in;
    double bearing_needed_in;
    double section_modulus_in3;
    double inertia_in4;
    double load_duration_factor;
    double shear_load_duration_factor;
    double wet_service_factor;
    double temperature_factor;
    double beam_stability_factor;
    double size_factor;
    double flat_use_factor;
    double incising_factor;
    double repetitive_member_factor;
    double bearing_area_factor;
    double slenderness_ratio;
} frame_beam_check_out;
FRAME_CALCULATION(beam_check);
typedef int32_t frame_column_fastening;
enum frame_column_fastening_values {
    FRAME_COLUMN_NAILED = 1,
    FRAME_COLUMN_BOLTED = 2
};
typedef int32_t frame_column_caution;
enum frame_column_caution_values {
    FRAME_COLUMN_CAUTION_AS_ASSUMED = 0,
    FRAME_COLUMN_CAUTION_STAMP = 1,
    FRAME_COLUMN_CAUTION_MEMORY = 2,
    FRAME_COLUMN_CAUTION_DOUBTFUL = 3,
    FRAME_COLUMN_CAUTION_SUPERSEDED = 4,
    FRAME_COLUMN_CAUTION_USER_VALUES = 5,
    FRAME_COLUMN_CAUTION_PLIES = 6,
    FRAME_COLUMN_CAUTION_POST = 7
};
typedef int32_t frame_column_not_checked;
enum frame_column_not_checked_values {
    FRAME_COLUMN_UNCHECKED_ENDS = 0,
    FRAME_COLUMN_UNCHECKED_ECCENTRICITY = 1,
    FRAME_COLUMN_UNCHECKED_COMBINATIONS = 2,
    FRAME_COLUMN_UNCHECKED_LATERAL = 3,
    FRAME_COLUMN_UNCHECKED_UPLIFT = 4,
    FRAME_COLUMN_UNCHECKED_DEFLECTION = 5,
    FRAME_COLUMN_UNCHECKED_CUTS = 6
};
typedef struct frame_column_check_in {
    uint32_t struct_size, struct_id;
    frame_size size;
    frame_species species;
    frame_grade grade;
    int32_t plies;
    frame_column_fastening fastening;
    frame_service service;
    frame_bool incised;
    frame_bool repetitive;
    frame_temperature temperature;
    frame_load_duration load_duration;
    frame_bool weak_axis_held;
    int32_t spare;
    double length_in;
    double axial_lb;
    double lateral_plf;
    double weak_braces_in;
    double strong_braces_in;
    double effective_length_factor;
    double spacing_in;
    double width_in;
    double depth_in;
    double fc_psi;
    double e_min_psi;
    double fb_psi;
} frame_column_check_in;
typedef struct frame_column_check_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    frame_bool passes;
    frame_governing governs;
    int32_t spare;
    double ratio;
    double compression_ratio;
    double combined_ratio;
    double cp;
    double fc_adjusted_psi;
    double capacity_lb;
    double fc_actual_psi;
    double fc_star_psi;
    double fb_actual_psi;
    double fb_adjusted_psi;
    double slenderness_strong;
    double slenderness_weak;
    double ply_factor;
    double load_duration_factor;
    double wet_service_factor;
    double size_factor;
    double beam_stability_factor;
} frame_column_check_out;
FRAME_CALCULATION(column_check);
FRAME_END
#endif
/* joint.h */
#ifndef FRAME_JOINT_H
#define FRAME_JOINT_H 
FRAME_BEGIN
typedef int32_t frame_dowel_kind;
enum frame_dowel_kind_values {
    FRAME_DOWEL_COMMON_NAIL = 1,
    FRAME_DOWEL_BOX_NAIL = 2,
    FRAME_DOWEL_SINKER_NAIL = 3,
    FRAME_DOWEL_RING_SHANK_NAIL = 4,
    FRAME_DOWEL_WOOD_SCREW = 5,
    FRAME_DOWEL_LAG_SCREW = 6,
    FRAME_DOWEL_BOLT = 7,
    FRAME_DOWEL_OTHER_DRIVEN = 8
};
typedef int32_t frame_joint_material;
enum frame_joint_material_values {
    FRAME_JOINT_WOOD = 1,
    FRAME_JOINT_STEEL = 2,
    FRAME_JOINT_STEEL_A653 = 3,
    FRAME_JOINT_STEEL_A36 = 4,
    FRAME_JOINT_PLYWOOD = 5,
    FRAME_JOINT_PLYWOOD_ONE = 6,
    FRAME_JOINT_OSB = 7,
    FRAME_JOINT_CONCRETE = 8
};
typedef int32_t frame_yield_mode;
enum frame_yield_mode_values {
    FRAME_MODE_IM = 1,
    FRAME_MODE_IS = 2,
    FRAME_MODE_II = 3,
    FRAME_MODE_IIIM = 4,
    FRAME_MODE_IIIS = 5,
    FRAME_MODE_IV = 6
};
typedef int32_t frame_short_penetration;
enum frame_short_penetration_values {
    FRAME_SHORT_BY_EQUATIONS = 1,
    FRAME_SHORT_BY_TABLE = 2
};
typedef int32_t frame_bearing_rounding;
enum frame_bearing_rounding_values {
    FRAME_BEARING_EXACT = 1,
    FRAME_BEARING_TO_50 = 2
};
typedef int32_t frame_dowel_hold;
enum frame_dowel_hold_values {
    FRAME_HOLD_FULL = 1,
    FRAME_HOLD_BY_EQUATIONS = 2,
    FRAME_HOLD_BY_TABLE = 3,
    FRAME_HOLD_THROUGH = 4
};
typedef int32_t frame_dowel_lateral_caution;
enum frame_dowel_lateral_caution_values {
    FRAME_DOWEL_LATERAL_CAUTION_REACH = 0,
    FRAME_DOWEL_LATERAL_CAUTION_SHORT = 1,
    FRAME_DOWEL_LATERAL_CAUTION_POINT_OUT = 2,
    FRAME_DOWEL_LATERAL_CAUTION_GROUP = 3,
    FRAME_DOWEL_LATERAL_CAUTION_GEOMETRY = 4,
    FRAME_DOWEL_LATERAL_CAUTION_THREADS = 5,
    FRAME_DOWEL_LATERAL_CAUTION_SHRINKAGE = 6,
    FRAME_DOWEL_LATERAL_CAUTION_GAP = 7,
    FRAME_DOWEL_LATERAL_CAUTION_REPORT = 8,
    FRAME_DOWEL_LATERAL_CAUTION_TOE_NAIL = 9,
    FRAME_DOWEL_LATERAL_CAUTION_CLINCHED = 10,
    FRAME_DOWEL_LATERAL_CAUTION_MEMORY = 11
};
typedef int32_t frame_dowel_lateral_not_checked;
enum frame_dowel_lateral_not_checked_values {
    FRAME_DOWEL_LATERAL_UNCHECKED_SPACING = 0,
    FRAME_DOWEL_LATERAL_UNCHECKED_SPLITTING = 1,
    FRAME_DOWEL_LATERAL_UNCHECKED_MEMBER = 2,
    FRAME_DOWEL_LATERAL_UNCHECKED_METAL = 3,
    FRAME_DOWEL_LATERAL_UNCHECKED_WITHDRAWAL = 4,
    FRAME_DOWEL_LATERAL_UNCHECKED_CORROSION = 5
};
typedef struct frame_dowel_lateral_in {
    uint32_t struct_size, struct_id;
    frame_dowel_kind kind;
    frame_joint_material side_material;
    frame_joint_material main_material;
    int32_t shear_planes;
    frame_species side_species;
    frame_species main_species;
    frame_short_penetration short_penetration;
    frame_bearing_rounding bearing_rounding;
    frame_service service;
    frame_service made;
    frame_bool shrinks_freely;
    frame_bool end_grain;
    frame_bool toe_nail;
    frame_bool diaphragm;
    frame_bool clinched;
    frame_bool threads_in_plane;
    const char *size;
    double diameter_in;
    double root_diameter_in;
    double length_in;
    double tip_in;
    double bending_yield_psi;
    double side_thickness_in;
    double second_side_thickness_in;
    double main_thickness_in;
    double penetration_in;
    double gap_in;
    double side_specific_gravity;
    double main_specific_gravity;
    double side_bearing_psi;
    double main_bearing_psi;
    double side_angle_deg;
    double main_angle_deg;
    double load_duration_factor;
    double temperature_f;
    double group_factor;
    double geometry_factor;
} frame_dowel_lateral_in;
typedef struct frame_dowel_lateral_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    frame_yield_mode mode;
    frame_dowel_hold hold;
    int32_t spare;
    double z_lb;
    double adjusted_lb;
    double z_im_lb;
    double z_is_lb;
    double z_ii_lb;
    double z_iiim_lb;
    double z_iiis_lb;
    double z_iv_lb;
    double reduction_i;
    double reduction_ii;
    double reduction_iii;
    double diameter_in;
    double fe_main_psi;
    double fe_side_psi;
    double fyb_psi;
    double main_bearing_in;
    double side_bearing_in;
    double penetration_in;
    double least_penetration_in;
    double penetration_factor;
    double point_out_in;
    double duration_factor;
    double wet_factor;
    double temperature_factor;
    double end_grain_factor;
    double toe_nail_factor;
    double diaphragm_factor;
} frame_dowel_lateral_out;
FRAME_CALCULATION(dowel_lateral);
typedef int32_t frame_dowel_withdrawal_caution;
enum frame_dowel_withdrawal_caution_values {
    FRAME_DOWEL_WITHDRAWAL_CAUTION_REACH = 0,
    FRAME_DOWEL_WITHDRAWAL_CAUTION_NAILS = 1,
    FRAME_DOWEL_WITHDRAWAL_CAUTION_DRYING = 2,
    FRAME_DOWEL_WITHDRAWAL_CAUTION_POINT_OUT = 3,
    FRAME_DOWEL_WITHDRAWAL_CAUTION_TOE_NAIL = 4,
    FRAME_DOWEL_WITHDRAWAL_CAUTION_THREAD = 5,
    FRAME_DOWEL_WITHDRAWAL_CAUTION_MEMORY = 6
};
typedef int32_t frame_dowel_withdrawal_not_checked;
enum frame_dowel_withdrawal_not_checked_values {
    FRAME_DOWEL_WITHDRAWAL_UNCHECKED_HEAD = 0,
    FRAME_DOWEL_WITHDRAWAL_UNCHECKED_TENSION = 1,
    FRAME_DOWEL_WITHDRAWAL_UNCHECKED_SPACING = 2,
    FRAME_DOWEL_WITHDRAWAL_UNCHECKED_SPLITTING = 3,
    FRAME_DOWEL_WITHDRAWAL_UNCHECKED_LATERAL = 4,
    FRAME_DOWEL_WITHDRAWAL_UNCHECKED_CORROSION = 5
};
typedef struct frame_dowel_withdrawal_in {
    uint32_t struct_size, struct_id;
    frame_dowel_kind kind;
    frame_species species;
    frame_service service;
    frame_service made;
    frame_bool end_grain;
    frame_bool toe_nail;
    const char *size;
    double diameter_in;
    double specific_gravity;
    double length_in;
    double thread_in;
    double tip_in;
    double side_thickness_in;
    double main_thickness_in;
    double penetration_in;
    double load_duration_factor;
    double temperature_f;
} frame_dowel_withdrawal_in;
typedef struct frame_dowel_withdrawal_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    int32_t spare;
    double w_lb_per_in;
    double penetration_in;
    double w_lb;
    double adjusted_lb;
    double point_out_in;
    double duration_factor;
    double wet_factor;
    double temperature_factor;
    double end_grain_factor;
    double toe_nail_factor;
} frame_dowel_withdrawal_out;
FRAME_CALCULATION(dowel_withdrawal);
typedef int32_t frame_unlike_fasteners;
enum frame_unlike_fasteners_values {
    FRAME_UNLIKE_REFUSE = 1,
    FRAME_UNLIKE_STRONGEST = 2
};
typedef struct frame_fastener_group {
    uint32_t struct_size, struct_id;
    frame_dowel_kind kind;
    int32_t spare;
    const char *size;
    int32_t count;
    int32_t spare2;
    double each_lb;
    double diameter_in;
    frame_yield_mode mode;
    int32_t spare3;
} frame_fastener_group;
FRAME_ELEMENT(fastener_group);
typedef int32_t frame_fastener_sum_caution;
enum frame_fastener_sum_caution_values {
    FRAME_FASTENER_SUM_CAUTION_ADJUSTED = 0,
    FRAME_FASTENER_SUM_CAUTION_STRONGEST = 1,
    FRAME_FASTENER_SUM_CAUTION_GROUP = 2,
    FRAME_FASTENER_SUM_CAUTION_MODES = 3
};
typedef int32_t frame_fastener_sum_not_checked;
enum frame_fastener_sum_not_checked_values {
    FRAME_FASTENER_SUM_UNCHECKED_SPACING = 0,
    FRAME_FASTENER_SUM_UNCHECKED_SPLITTING = 1,
    FRAME_FASTENER_SUM_UNCHECKED_MEMBER = 2,
    FRAME_FASTENER_SUM_UNCHECKED_CENTRE = 3
};
typedef struct frame_fastener_sum_in {
    uint32_t struct_size, struct_id;
    const frame_fastener_group *groups;
    size_t group_count;
    frame_unlike_fasteners unlike;
    int32_t spare;
    double demand_lb;
    double demand_plf;
    double spacing_in;
    double group_factor;
} frame_fastener_sum_in;
typedef struct frame_fastener_sum_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    frame_bool passes;
    int32_t count;
    int32_t needed_count;
    int32_t strongest_group;
    int32_t spare;
    double capacity_lb;
    double demand_lb;
    double ratio;
    double strongest_lb;
    double least_each_lb;
    double needed_spacing_in;
} frame_fastener_sum_out;
FRAME_CALCULATION(fastener_sum);
FRAME_END
#endif
/* code.h */
#ifndef FRAME_CODE_H
#define FRAME_CODE_H 
FRAME_BEGIN
typedef int32_t frame_code_edition;
enum frame_code_edition_values {
    FRAME_CODE_2015 = 1,
    FRAME_CODE_2018 = 2,
    FRAME_CODE_2021 = 3,
    FRAME_CODE_2024 = 4,
    FRAME_CODE_2012_PROPOSAL = 5,
    FRAME_CODE_IBC_2018 = 6,
    FRAME_CODE_DCA6 = 7,
    FRAME_CODE_DCA6_09 = 8
};
typedef int32_t frame_code_caution;
enum frame_code_caution_values {
    FRAME_CODE_CAUTION_LOCAL = 0,
    FRAME_CODE_CAUTION_SCOPE = 1,
    FRAME_CODE_CAUTION_SECONDARY = 2,
    FRAME_CODE_CAUTION_MEMORY = 3,
    FRAME_CODE_CAUTION_DOUBTFUL = 4,
    FRAME_CODE_CAUTION_NOTE = 5,
    FRAME_CODE_CAUTION_OVERLAY = 6,
    FRAME_CODE_CAUTION_COVERED = 7,
    FRAME_CODE_CAUTION_BETWEEN = 8,
    FRAME_CODE_CAUTION_OVER_26 = 9,
    FRAME_CODE_CAUTION_NO_SNOW = 10,
    FRAME_CODE_CAUTION_TIES = 11,
    FRAME_CODE_CAUTION_TOP_BRACED = 12,
    FRAME_CODE_CAUTION_POINT_LOADS = 13,
    FRAME_CODE_CAUTION_STAMP = 14,
    FRAME_CODE_CAUTION_UPLIFT = 15,
    FRAME_CODE_CAUTION_BEHIND = 16,
    FRAME_CODE_CAUTION_LATERAL = 17,
    FRAME_CODE_CAUTION_SHORE = 18,
    FRAME_CODE_CAUTION_MAKER = 19,
    FRAME_CODE_CAUTION_ORDER = 20,
    FRAME_CODE_CAUTION_SOIL = 21,
    FRAME_CODE_CAUTION_FROST = 22,
    FRAME_CODE_CAUTION_TREATED = 23,
    FRAME_CODE_CAUTION_PROTECT = 24,
    FRAME_CODE_CAUTION_AMENDED = 25
};
typedef int32_t frame_code_not_checked;
enum frame_code_not_checked_values {
    FRAME_CODE_UNCHECKED_BEARING = 0,
    FRAME_CODE_UNCHECKED_LATERAL = 1,
    FRAME_CODE_UNCHECKED_NOTCHES = 2,
    FRAME_CODE_UNCHECKED_CALCULATED = 3,
    FRAME_CODE_UNCHECKED_UPLIFT = 4,
    FRAME_CODE_UNCHECKED_DRIFT = 5,
    FRAME_CODE_UNCHECKED_FOOTINGS = 6,
    FRAME_CODE_UNCHECKED_CONNECTIONS = 7,
    FRAME_CODE_UNCHECKED_WIND = 8,
    FRAME_CODE_UNCHECKED_SEISMIC = 9,
    FRAME_CODE_UNCHECKED_OTHER_HOLES = 10
};
typedef int32_t frame_code_use;
enum frame_code_use_values {
    FRAME_CODE_USE_FLOOR = 1,
    FRAME_CODE_USE_CEILING = 2,
    FRAME_CODE_USE_RAFTER = 3
};
typedef struct frame_code_joist_span_in {
    uint32_t struct_size, struct_id;
    frame_code_use use;
    frame_size size;
    frame_species species;
    frame_grade grade;
    double spacing_in;
    double live_psf;
    double dead_psf;
    double snow_psf;
    double deflection_limit;
    double tie_height_ratio;
    frame_code_edition edition;
    frame_bool covering;
    frame_bool doubtful;
    int32_t spare;
} frame_code_joist_span_in;
typedef struct frame_code_joist_span_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    frame_code_edition edition;
    const char *table;
    const char *source;
    const char *note;
    double span_in;
    double table_span_in;
} frame_code_joist_span_out;
FRAME_CALCULATION(code_joist_span);
typedef int32_t frame_code_supports;
enum frame_code_supports_values {
    FRAME_CODE_SUPPORTS_ROOF = 1,
    FRAME_CODE_SUPPORTS_ROOF_1 = 2,
    FRAME_CODE_SUPPORTS_ROOF_1_CLEAR = 3,
    FRAME_CODE_SUPPORTS_ROOF_2 = 4,
    FRAME_CODE_SUPPORTS_ROOF_2_CLEAR = 5,
    FRAME_CODE_SUPPORTS_ONE_FLOOR = 6,
    FRAME_CODE_SUPPORTS_TWO_FLOORS = 7,
    FRAME_CODE_SUPPORTS_PORCH_ROOF = 8
};
typedef int32_t frame_code_location;
enum frame_code_location_values {
    FRAME_CODE_EXTERIOR = 1,
    FRAME_CODE_INTERIOR = 2,
    FRAME_CODE_PORCH = 3
};
typedef struct frame_code_header_span_in {
    uint32_t struct_size, struct_id;
    frame_code_supports supports;
    frame_size size;
    int32_t plies;
    frame_code_location location;
    double ground_snow_psf;
    double roof_live_psf;
    double building_width_in;
    double porch_depth_in;
    frame_species species;
    frame_grade grade;
    frame_bool top_braced;
    frame_bool covering;
    frame_code_edition edition;
    int32_t spare;
} frame_code_header_span_in;
typedef struct frame_code_header_span_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    frame_code_edition edition;
    const char *table;
    const char *source;
    const char *note;
    double span_in;
    double table_span_in;
    int32_t jack_studs;
    frame_bool anchor_allowed;
} frame_code_header_span_out;
FRAME_CALCULATION(code_header_span);
typedef struct frame_code_deck_joist_span_in {
    uint32_t struct_size, struct_id;
    frame_size size;
    frame_species species;
    frame_grade grade;
    frame_bool cantilevered;
    double spacing_in;
    double live_psf;
    double ground_snow_psf;
    double back_span_in;
    frame_code_edition edition;
    frame_bool covering;
} frame_code_deck_joist_span_in;
typedef struct frame_code_deck_joist_span_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    frame_code_edition edition;
    const char *table;
    const char *source;
    const char *note;
    double span_in;
    double cantilever_in;
} frame_code_deck_joist_span_out;
FRAME_CALCULATION(code_deck_joist_span);
typedef struct frame_code_deck_beam_span_in {
    uint32_t struct_size, struct_id;
    frame_size size;
    int32_t plies;
    frame_species species;
    frame_grade grade;
    double joist_span_in;
    double joist_cantilever_in;
    double live_psf;
    double ground_snow_psf;
    frame_code_edition edition;
    frame_bool covering;
    frame_bool doubtful;
    int32_t spare;
} frame_code_deck_beam_span_in;
typedef struct frame_code_deck_beam_span_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    frame_code_edition edition;
    const char *table;
    const char *source;
    const char *note;
    double span_in;
    double cantilever_in;
    double effective_joist_span_in;
} frame_code_deck_beam_span_out;
FRAME_CALCULATION(code_deck_beam_span);
typedef struct frame_code_deck_post_in {
    uint32_t struct_size, struct_id;
    frame_size size;
    frame_species species;
    double tributary_ft2;
    double live_psf;
    double ground_snow_psf;
    int32_t beam_plies;
    frame_code_edition edition;
    frame_bool covering;
    int32_t spare;
} frame_code_deck_post_in;
typedef struct frame_code_deck_post_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    frame_code_edition edition;
    const char *table;
    const char *source;
    const char *note;
    double height_in;
} frame_code_deck_post_out;
FRAME_CALCULATION(code_deck_post);
typedef struct frame_code_deck_footing_in {
    uint32_t struct_size, struct_id;
    double tributary_ft2;
    double soil_psf;
    double live_psf;
    double ground_snow_psf;
    frame_code_edition edition;
    frame_bool covering;
    frame_bool doubtful;
    int32_t spare;
} frame_code_deck_footing_in;
typedef struct frame_code_deck_footing_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    frame_code_edition edition;
    const char *table;
    const char *source;
    const char *note;
    double square_side_in;
    double round_diameter_in;
    double thickness_in;
} frame_code_deck_footing_out;
FRAME_CALCULATION(code_deck_footing);
typedef struct frame_code_deck_guide_post_in {
    uint32_t struct_size, struct_id;
    frame_species species;
    frame_bool corner;
    double beam_span_in;
    double joist_span_in;
    frame_code_edition edition;
    int32_t spare;
} frame_code_deck_guide_post_in;
typedef struct frame_code_deck_guide_post_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    frame_code_edition edition;
    const char *table;
    const char *source;
    const char *note;
    double height_in;
    double round_diameter_in;
    double square_side_in;
    double thickness_in;
} frame_code_deck_guide_post_out;
FRAME_CALCULATION(code_deck_guide_post);
typedef int32_t frame_code_ledger_fastener;
enum frame_code_ledger_fastener_values {
    FRAME_CODE_LEDGER_LAG = 1,
    FRAME_CODE_LEDGER_BOLT = 2
};
typedef struct frame_code_ledger_spacing_in {
    uint32_t struct_size, struct_id;
    frame_code_ledger_fastener fastener;
    frame_code_edition edition;
    double joist_span_in;
    double sheathing_in;
    double live_psf;
    double ground_snow_psf;
    frame_size ledger_size;
    frame_bool covering;
} frame_code_ledger_spacing_in;
typedef struct frame_code_ledger_spacing_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    frame_code_edition edition;
    const char *table;
    const char *source;
    const char *note;
    double spacing_in;
    double ledger_top_in;
    double ledger_bottom_in;
    double band_top_in;
    double band_bottom_in;
    double end_in;
    double row_spacing_in;
    double row_spacing_most_in;
} frame_code_ledger_spacing_out;
FRAME_CALCULATION(code_ledger_spacing);
typedef int32_t frame_code_heel_nail;
enum frame_code_heel_nail_values {
    FRAME_CODE_HEEL_16D = 1,
    FRAME_CODE_HEEL_10D = 2,
    FRAME_CODE_HEEL_40D = 3
};
typedef int32_t frame_code_heel_tie;
enum frame_code_heel_tie_values {
    FRAME_CODE_TIE_CEILING_JOISTS = 1,
    FRAME_CODE_TIE_RAFTER_TIES = 2
};
typedef struct frame_code_heel_nails_in {
    uint32_t struct_size, struct_id;
    double slope;
    double spacing_in;
    double roof_span_in;
    double ground_snow_psf;
    double roof_live_psf;
    double tie_height_ratio;
    double span_ratio;
    frame_code_heel_nail nail;
    frame_code_heel_tie tie;
    frame_bool clinched;
    frame_bool ridge_carried;
    frame_code_edition edition;
    frame_bool covering;
} frame_code_heel_nails_in;
typedef struct frame_code_heel_nails_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    frame_code_edition edition;
    const char *table;
    const char *source;
    const char *note;
    int32_t nails;
    int32_t table_nails;
} frame_code_heel_nails_out;
FRAME_CALCULATION(code_heel_nails);
typedef int32_t frame_code_exposure;
enum frame_code_exposure_values {
    FRAME_CODE_EXPOSURE_B = 1,
    FRAME_CODE_EXPOSURE_C = 2,
    FRAME_CODE_EXPOSURE_D = 3
};
typedef struct frame_code_uplift_in {
    uint32_t struct_size, struct_id;
    double slope;
    double spacing_in;
    double roof_span_in;
    double wind_mph;
    double roof_height_in;
    double overhang_in;
    double wall_gravity;
    frame_code_exposure exposure;
    frame_bool hip;
    frame_bool near_corner;
    int32_t walls_above;
    frame_code_edition edition;
    frame_bool covering;
} frame_code_uplift_in;
typedef struct frame_code_uplift_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    frame_code_edition edition;
    const char *table;
    const char *source;
    const char *note;
    double uplift_lb;
    double uplift_plf;
    double table_lb;
    frame_bool nailing_holds;
    int32_t spare2;
} frame_code_uplift_out;
FRAME_CALCULATION(code_uplift);
typedef int32_t frame_code_cantilever_carries;
enum frame_code_cantilever_carries_values {
    FRAME_CODE_CANTILEVER_WALL = 1,
    FRAME_CODE_CANTILEVER_BALCONY = 2
};
typedef struct frame_code_floor_cantilever_in {
    uint32_t struct_size, struct_id;
    frame_code_cantilever_carries carries;
    frame_size size;
    double spacing_in;
    double ground_snow_psf;
    double roof_width_in;
    double back_span_in;
    frame_code_edition edition;
    int32_t spare;
} frame_code_floor_cantilever_in;
typedef struct frame_code_floor_cantilever_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    frame_code_edition edition;
    const char *table;
    const char *source;
    const char *note;
    double cantilever_in;
    double uplift_lb;
} frame_code_floor_cantilever_out;
FRAME_CALCULATION(code_floor_cantilever);
typedef int32_t frame_code_on_studs;
enum frame_code_on_studs_values {
    FRAME_CODE_ON_STUDS_NOTHING = 1,
    FRAME_CODE_ON_STUDS_ROOF = 2,
    FRAME_CODE_ON_STUDS_FLOOR_ROOF = 3,
    FRAME_CODE_ON_STUDS_FLOORS_ROOF = 4,
    FRAME_CODE_ON_STUDS_FLOOR = 5
};
typedef struct frame_code_stud_in {
    uint32_t struct_size, struct_id;
    frame_size size;
    frame_code_on_studs supports;
    double height_in;
    frame_grade grade;
    frame_bool exterior;
    double attic_span_in;
    double wind_mph;
    double ground_snow_psf;
    double roof_live_psf;
    double span_in;
    double tributary_in;
    frame_code_exposure exposure;
    frame_code_edition edition;
} frame_code_stud_in;
typedef struct frame_code_stud_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    frame_code_edition edition;
    const char *table;
    const char *source;
    const char *note;
    double spacing_in;
    double height_in;
} frame_code_stud_out;
FRAME_CALCULATION(code_stud);
typedef struct frame_code_king_studs_in {
    uint32_t struct_size, struct_id;
    double header_span_in;
    double stud_spacing_in;
    double wind_mph;
    frame_code_exposure exposure;
    frame_bool anchored;
    frame_code_edition edition;
    int32_t spare;
} frame_code_king_studs_in;
typedef struct frame_code_king_studs_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    frame_code_edition edition;
    const char *table;
    const char *source;
    const char *note;
    int32_t full_height_studs;
    int32_t spare2;
} frame_code_king_studs_out;
FRAME_CALCULATION(code_king_studs);
typedef int32_t frame_code_panel;
enum frame_code_panel_values {
    FRAME_CODE_PANEL_16_0 = 1,
    FRAME_CODE_PANEL_20_0 = 2,
    FRAME_CODE_PANEL_24_0 = 3,
    FRAME_CODE_PANEL_24_16 = 4,
    FRAME_CODE_PANEL_32_16 = 5,
    FRAME_CODE_PANEL_40_20 = 6,
    FRAME_CODE_PANEL_48_24 = 7,
    FRAME_CODE_PANEL_60_32 = 8,
    FRAME_CODE_PANEL_16_OC = 9,
    FRAME_CODE_PANEL_20_OC = 10,
    FRAME_CODE_PANEL_24_OC = 11,
    FRAME_CODE_PANEL_32_OC = 12,
    FRAME_CODE_PANEL_48_OC = 13
};
typedef struct frame_code_panel_span_in {
    uint32_t struct_size, struct_id;
    frame_code_panel rating;
    frame_code_edition edition;
} frame_code_panel_span_in;
typedef struct frame_code_panel_span_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    frame_code_edition edition;
    const char *table;
    const char *source;
    const char *note;
    const char *thickness;
    double roof_span_held_in;
    double roof_span_free_in;
    double roof_total_psf;
    double roof_live_psf;
    double live_16_psf;
    double live_24_psf;
    double floor_span_in;
} frame_code_panel_span_out;
FRAME_CALCULATION(code_panel_span);
typedef int32_t frame_code_member;
enum frame_code_member_values {
    FRAME_CODE_MEMBER_JOIST = 1,
    FRAME_CODE_MEMBER_CEILING_JOIST = 2,
    FRAME_CODE_MEMBER_RAFTER = 3,
    FRAME_CODE_MEMBER_TAIL = 4,
    FRAME_CODE_MEMBER_STUD = 5,
    FRAME_CODE_MEMBER_TOP_PLATE = 6,
    FRAME_CODE_MEMBER_HEADER = 7,
    FRAME_CODE_MEMBER_BUILT_UP = 8,
    FRAME_CODE_MEMBER_FLAT = 9,
    FRAME_CODE_MEMBER_TRUSS = 10,
    FRAME_CODE_MEMBER_I_JOIST = 11,
    FRAME_CODE_MEMBER_ENGINEERED = 12
};
typedef int32_t frame_code_cut;
enum frame_code_cut_values {
    FRAME_CODE_CUT_HOLE = 1,
    FRAME_CODE_CUT_NOTCH = 2
};
typedef int32_t frame_code_side;
enum frame_code_side_values {
    FRAME_CODE_SIDE_TOP = 1,
    FRAME_CODE_SIDE_BOTTOM = 2
};
typedef int32_t frame_code_verdict;
enum frame_code_verdict_values {
    FRAME_CODE_ALLOWED = 1,
    FRAME_CODE_ALLOWED_DOUBLED = 2,
    FRAME_CODE_ALLOWED_TIE = 3,
    FRAME_CODE_NOT_ALLOWED = 4
};
typedef struct frame_code_hole_in {
    uint32_t struct_size, struct_id;
    frame_code_member member;
    frame_code_cut cut;
    frame_size size;
    frame_code_edition edition;
    double depth_in;
    double thickness_in;
    double diameter_in;
    double notch_depth_in;
    double notch_length_in;
    double span_in;
    double position_in;
    double offset_in;
    double other_position_in;
    double other_length_in;
    double tail_in;
    double maker_diameter_in;
    double maker_edge_in;
    double maker_end_in;
    frame_code_side side;
    frame_bool end_notch;
    frame_bool bearing;
    frame_bool exterior;
    frame_bool doubled;
    int32_t successive;
    frame_bool beside_notch;
    frame_bool sheathed;
} frame_code_hole_in;
typedef struct frame_code_hole_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    frame_code_edition edition;
    const char *table;
    const char *source;
    const char *note;
    frame_code_verdict verdict;
    int32_t spare2;
    const char *reason;
    const char *needs;
    double depth_in;
    double limit_diameter_in;
    double limit_notch_depth_in;
    double limit_notch_length_in;
    double edge_in;
    double nearest_position_in;
    double nearest_offset_in;
} frame_code_hole_out;
FRAME_CALCULATION(code_hole);
typedef struct frame_code_fastening_in {
    uint32_t struct_size, struct_id;
    const char *first;
    const char *second;
    frame_code_edition edition;
    int32_t spare;
} frame_code_fastening_in;
typedef struct frame_code_fastening_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    frame_code_edition edition;
    const char *table;
    const char *source;
    const char *note;
    int32_t joint_count;
    int32_t way_count;
} frame_code_fastening_out;
typedef struct frame_code_fastening_way {
    uint32_t struct_size, struct_id;
    const char *joint;
    const char *fastener;
    const char *location;
    const char *note;
    const char *source;
    double length_in;
    double diameter_in;
    double spacing_in;
    int32_t count;
    int32_t alternative;
    int32_t item;
    frame_known known;
} frame_code_fastening_way;
FRAME_ANSWER(code_fastening);
FRAME_ANSWER_LIST(code_fastening, way, ways);
typedef int32_t frame_code_sheet;
enum frame_code_sheet_values {
    FRAME_CODE_SHEET_PANEL = 1,
    FRAME_CODE_SHEET_FIBERBOARD = 2,
    FRAME_CODE_SHEET_GYPSUM = 3,
    FRAME_CODE_SHEET_COMBINATION = 4
};
typedef int32_t frame_code_sheet_use;
enum frame_code_sheet_use_values {
    FRAME_CODE_SHEET_ROOF = 1,
    FRAME_CODE_SHEET_WALL = 2,
    FRAME_CODE_SHEET_SUBFLOOR = 3
};
typedef struct frame_code_sheathing_in {
    uint32_t struct_size, struct_id;
    frame_code_sheet sheet;
    frame_code_sheet_use use;
    double thickness_in;
    double stud_spacing_in;
    double wind_mph;
    frame_code_exposure exposure;
    frame_code_edition edition;
} frame_code_sheathing_in;
typedef struct frame_code_sheathing_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    frame_code_edition edition;
    const char *table;
    const char *source;
    const char *note;
    const char *wind_note;
    int32_t way_count;
    frame_bool wind_holds;
} frame_code_sheathing_out;
typedef struct frame_code_sheathing_way {
    uint32_t struct_size, struct_id;
    const char *fastener;
    const char *source;
    double length_in;
    double diameter_in;
    double edge_in;
    double field_in;
    double penetration_in;
    double wind_mph;
    int32_t alternative;
    int32_t item;
} frame_code_sheathing_way;
FRAME_ANSWER(code_sheathing);
FRAME_ANSWER_LIST(code_sheathing, way, ways);
FRAME_END
#endif
/* roof.h */
#ifndef FRAME_ROOF_H
#define FRAME_ROOF_H 
FRAME_BEGIN
typedef int32_t frame_rafter_tail;
enum frame_rafter_tail_values {
    FRAME_RAFTER_TAIL_PLUMB = 1,
    FRAME_RAFTER_TAIL_SQUARE = 2,
    FRAME_RAFTER_TAIL_LEVEL = 3,
    FRAME_RAFTER_TAIL_PLUMB_AND_LEVEL = 4
};
typedef int32_t frame_rafter_caution;
enum frame_rafter_caution_values {
    FRAME_RAFTER_CAUTION_BRACE = 0,
    FRAME_RAFTER_CAUTION_TRY_ONE = 1,
    FRAME_RAFTER_CAUTION_NOTCH = 2,
    FRAME_RAFTER_CAUTION_BEARING = 3,
    FRAME_RAFTER_CAUTION_SLOPE = 4,
    FRAME_RAFTER_CAUTION_LOW = 5,
    FRAME_RAFTER_CAUTION_MEASURE = 6
};
typedef int32_t frame_rafter_not_checked;
enum frame_rafter_not_checked_values {
    FRAME_RAFTER_UNCHECKED_STRENGTH = 0,
    FRAME_RAFTER_UNCHECKED_THRUST = 1
};
typedef struct frame_rafter_in {
    uint32_t struct_size, struct_id;
    double run_in;
    double slope;
    double ridge_thickness_in;
    double ledger_thickness_in;
    double overhang_in;
    double depth_in;
    double seat_in;
    double height_above_plate_in;
    double fascia_depth_in;
    double thickness_in;
    frame_size size;
    frame_rafter_tail tail;
    const char *name;
} frame_rafter_in;
typedef struct frame_rafter_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    int32_t full_steps;
    double rise_in;
    double line_length_in;
    double shortened_length_in;
    double tail_length_in;
    double length_in;
    double stock_length_in;
    double deduction_in;
    double deduction_along_in;
    double plumb_cut_deg;
    double level_cut_deg;
    double depth_in;
    double plumb_depth_in;
    double seat_in;
    double heel_in;
    double notch_depth_in;
    double notch_limit_in;
    double height_above_plate_in;
    double ridge_height_in;
    double square_blade_in;
    double square_tongue_in;
    double step_length_in;
    double odd_step_in;
    double tail_odd_step_in;
    int32_t tail_full_steps;
    int32_t spare;
    double shortened_run_in;
} frame_rafter_out;
FRAME_CALCULATION(rafter);
FRAME_VIEW(rafter, stick);
FRAME_VIEW(rafter, drawing);
typedef int32_t frame_unequal_eaves;
enum frame_unequal_eaves_values {
    FRAME_EAVES_PLATES_LEVEL = 1,
    FRAME_EAVES_OVERHANGS_EQUAL = 2
};
typedef int32_t frame_hip_head;
enum frame_hip_head_values {
    FRAME_HIP_HEAD_COMMONS = 1,
    FRAME_HIP_HEAD_RIDGE = 2,
    FRAME_HIP_HEAD_PLUMB = 3
};
typedef int32_t frame_hip_top;
enum frame_hip_top_values {
    FRAME_HIP_TOP_DROPPED = 1,
    FRAME_HIP_TOP_BACKED = 2
};
typedef int32_t frame_hip_tail;
enum frame_hip_tail_values {
    FRAME_HIP_TAIL_FASCIA = 1,
    FRAME_HIP_TAIL_PLUMB = 2
};
typedef int32_t frame_hip_caution;
enum frame_hip_caution_values {
    FRAME_HIP_CAUTION_BEAM = 0,
    FRAME_HIP_CAUTION_COMPOUND = 1,
    FRAME_HIP_CAUTION_PAST_TILT = 2,
    FRAME_HIP_CAUTION_NOTCH = 3,
    FRAME_HIP_CAUTION_SLOPE = 4,
    FRAME_HIP_CAUTION_MEASURE = 5
};
typedef int32_t frame_hip_not_checked;
enum frame_hip_not_checked_values {
    FRAME_HIP_UNCHECKED_STRENGTH = 0,
    FRAME_HIP_UNCHECKED_THRUST = 1
};
typedef struct frame_hip_in {
    uint32_t struct_size, struct_id;
    double slope_a;
    double slope_b;
    double corner_deg;
    double run_in;
    double thickness_in;
    double depth_in;
    double overhang_in;
    double height_above_plate_in;
    double against_thickness_in;
    double plate_width_in;
    frame_size size;
    frame_hip_head head;
    frame_hip_top top;
    frame_hip_tail tail;
    frame_unequal_eaves eaves;
    int32_t spare;
    const char *name;
} frame_hip_in;
typedef struct frame_hip_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    int32_t spare2;
    double length_in;
    double line_length_in;
    double shortened_length_in;
    double tail_length_in;
    double per_foot_in;
    double run_per_foot_in;
    double plan_run_in;
    double rise_in;
    double slope;
    double plumb_cut_deg;
    double level_cut_deg;
    double cheek_a_deg;
    double cheek_b_deg;
    double top_edge_a_deg;
    double top_edge_b_deg;
    double side_cut_a_in;
    double side_cut_b_in;
    double ridge_cheek_a_deg;
    double ridge_cheek_b_deg;
    double backing_a_deg;
    double backing_b_deg;
    double drop_a_in;
    double drop_b_in;
    double deduction_in;
    double deduction_along_in;
    double run_b_in;
    double overhang_b_in;
    double plate_b_in;
    double planes_deg;
    double sheathing_a_deg;
    double sheathing_b_deg;
    double height_in;
    double seat_in;
    double heel_in;
    double notch_depth_in;
    double notch_limit_in;
    double square_blade_in;
    double square_tongue_in;
    double odd_step_in;
    int32_t full_steps;
    int32_t spare;
} frame_hip_out;
FRAME_CALCULATION(hip);
FRAME_VIEW(hip, stick);
FRAME_VIEW(hip, drawing);
typedef int32_t frame_valley_head;
enum frame_valley_head_values {
    FRAME_VALLEY_HEAD_RIDGES = 1,
    FRAME_VALLEY_HEAD_RIDGE = 2,
    FRAME_VALLEY_HEAD_PLUMB = 3
};
typedef int32_t frame_valley_caution;
enum frame_valley_caution_values {
    FRAME_VALLEY_CAUTION_BEAM = 0,
    FRAME_VALLEY_CAUTION_COMPOUND = 1,
    FRAME_VALLEY_CAUTION_PAST_TILT = 2,
    FRAME_VALLEY_CAUTION_NOTCH = 3,
    FRAME_VALLEY_CAUTION_SLOPE = 4,
    FRAME_VALLEY_CAUTION_MEASURE = 5,
    FRAME_VALLEY_CAUTION_PROUD = 6
};
typedef int32_t frame_valley_not_checked;
enum frame_valley_not_checked_values {
    FRAME_VALLEY_UNCHECKED_STRENGTH = 0,
    FRAME_VALLEY_UNCHECKED_SNOW = 1
};
typedef struct frame_valley_in {
    uint32_t struct_size, struct_id;
    double slope_a;
    double slope_b;
    double corner_deg;
    double run_in;
    double thickness_in;
    double depth_in;
    double overhang_in;
    double height_above_plate_in;
    double against_thickness_in;
    double plate_width_in;
    frame_size size;
    frame_valley_head head;
    frame_hip_tail tail;
    frame_unequal_eaves eaves;
    const char *name;
} frame_valley_in;
typedef struct frame_valley_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    int32_t spare2;
    double length_in;
    double line_length_in;
    double shortened_length_in;
    double tail_length_in;
    double per_foot_in;
    double run_per_foot_in;
    double plan_run_in;
    double rise_in;
    double slope;
    double plumb_cut_deg;
    double level_cut_deg;
    double cheek_a_deg;
    double cheek_b_deg;
    double top_edge_a_deg;
    double top_edge_b_deg;
    double side_cut_a_in;
    double side_cut_b_in;
    double ridge_cheek_a_deg;
    double ridge_cheek_b_deg;
    double backing_a_deg;
    double backing_b_deg;
    double drop_a_in;
    double drop_b_in;
    double deduction_in;
    double deduction_along_in;
    double run_b_in;
    double overhang_b_in;
    double plate_b_in;
    double planes_deg;
    double sheathing_a_deg;
    double sheathing_b_deg;
    double height_in;
    double seat_in;
    double heel_in;
    double notch_depth_in;
    double notch_limit_in;
    double square_blade_in;
    double square_tongue_in;
    double odd_step_in;
    int32_t full_steps;
    int32_t spare;
} frame_valley_out;
FRAME_CALCULATION(valley);
FRAME_VIEW(valley, stick);
FRAME_VIEW(valley, drawing);
typedef int32_t frame_jack_kind;
enum frame_jack_kind_values {
    FRAME_JACK_HIP = 1,
    FRAME_JACK_VALLEY = 2,
    FRAME_JACK_CRIPPLE = 3
};
typedef int32_t frame_hand;
enum frame_hand_values {
    FRAME_HAND_LEFT = 1,
    FRAME_HAND_RIGHT = 2
};
typedef int32_t frame_jacks_caution;
enum frame_jacks_caution_values {
    FRAME_JACKS_CAUTION_COMPOUND = 0,
    FRAME_JACKS_CAUTION_PAST_TILT = 1,
    FRAME_JACKS_CAUTION_PAIRS = 2,
    FRAME_JACKS_CAUTION_SLOPE = 3,
    FRAME_JACKS_CAUTION_NOTCH = 4
};
typedef int32_t frame_jacks_not_checked;
enum frame_jacks_not_checked_values {
    FRAME_JACKS_UNCHECKED_STRENGTH = 0,
    FRAME_JACKS_UNCHECKED_THRUST = 1
};
typedef struct frame_jacks_in {
    uint32_t struct_size, struct_id;
    double slope;
    double spacing_in;
    double other_slope;
    double corner_deg;
    double run_in;
    double between_in;
    double first_in;
    double hip_thickness_in;
    double valley_thickness_in;
    double ridge_thickness_in;
    double overhang_in;
    double height_above_plate_in;
    double thickness_in;
    double depth_in;
    frame_size size;
    frame_jack_kind kind;
    frame_hand hand;
    int32_t piece;
} frame_jacks_in;
typedef struct frame_jacks_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    int32_t count;
    double difference_in;
    double run_difference_in;
    double first_length_in;
    double plumb_cut_deg;
    double cheek_deg;
    double top_edge_deg;
    double side_cut_in;
    double square_tongue_in;
    double square_blade_in;
    double deduction_in;
    double deduction_along_in;
    double long_point_more_in;
} frame_jacks_out;
typedef struct frame_jacks_piece {
    uint32_t struct_size, struct_id;
    const char *name;
    double distance_in;
    double run_in;
    double line_length_in;
    double length_in;
    double long_point_in;
} frame_jacks_piece;
FRAME_ANSWER(jacks);
FRAME_ANSWER_LIST(jacks, piece, pieces);
FRAME_VIEW(jacks, stick);
FRAME_VIEW(jacks, drawing);
typedef int32_t frame_brace_not_checked;
enum frame_brace_not_checked_values {
    FRAME_BRACE_UNCHECKED_STRENGTH = 0
};
typedef int32_t frame_brace_caution;
enum frame_brace_caution_values {
    FRAME_BRACE_CAUTION_SQUARE = 0
};
typedef struct frame_brace_in {
    uint32_t struct_size, struct_id;
    double run_in;
    double rise_in;
    double depth_in;
    double thickness_in;
    const char *name;
} frame_brace_in;
typedef struct frame_brace_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    int32_t spare;
    double length_in;
    double inner_length_in;
    double post_cut_deg;
    double beam_cut_deg;
} frame_brace_out;
FRAME_CALCULATION(brace);
FRAME_VIEW(brace, stick);
FRAME_VIEW(brace, drawing);
typedef int32_t frame_polygon_plan_caution;
enum frame_polygon_plan_caution_values {
    FRAME_POLYGON_CAUTION_DIAGONALS = 0
};
typedef int32_t frame_polygon_plan_not_checked;
enum frame_polygon_plan_not_checked_values {
    FRAME_POLYGON_UNCHECKED_AS_BUILT = 0
};
typedef struct frame_polygon_plan_in {
    uint32_t struct_size, struct_id;
    int32_t sides;
    int32_t spare;
    double side_in;
    double run_in;
    double corner_run_in;
    double width_in;
} frame_polygon_plan_in;
typedef struct frame_polygon_plan_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    int32_t spare;
    double side_in;
    double run_in;
    double corner_run_in;
    double width_in;
    double corner_width_in;
    double corner_deg;
    double mitre_deg;
    double mitre_on_12_in;
    double corner_run_per_foot_in;
    double half_side_per_width;
    double area_in2;
} frame_polygon_plan_out;
FRAME_CALCULATION(polygon_plan);
typedef int32_t frame_ridge_place_caution;
enum frame_ridge_place_caution_values {
    FRAME_RIDGE_PLACE_CAUTION_SLOPE = 0
};
typedef int32_t frame_ridge_place_not_checked;
enum frame_ridge_place_not_checked_values {
    FRAME_RIDGE_PLACE_UNCHECKED_THRUST = 0
};
typedef struct frame_ridge_place_in {
    uint32_t struct_size, struct_id;
    double span_in;
    double slope_a;
    double slope_b;
    double plate_b_in;
} frame_ridge_place_in;
typedef struct frame_ridge_place_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    int32_t spare;
    double run_a_in;
    double run_b_in;
    double rise_a_in;
    double rise_b_in;
    double extra_run_in;
    double equivalent_span_a_in;
} frame_ridge_place_out;
FRAME_CALCULATION(ridge_place);
FRAME_END
#endif
/* layout.h */
#ifndef FRAME_LAYOUT_H
#define FRAME_LAYOUT_H 
FRAME_BEGIN
typedef int32_t frame_piece_kind;
enum frame_piece_kind_values {
    FRAME_PIECE_STRINGER = 1,
    FRAME_PIECE_TREAD = 2,
    FRAME_PIECE_RISER = 3,
    FRAME_PIECE_BOTTOM_PLATE = 4,
    FRAME_PIECE_TOP_PLATE = 5,
    FRAME_PIECE_CAP_PLATE = 6,
    FRAME_PIECE_STUD = 7,
    FRAME_PIECE_KING = 8,
    FRAME_PIECE_JACK = 9,
    FRAME_PIECE_CRIPPLE = 10,
    FRAME_PIECE_SILL = 11,
    FRAME_PIECE_HEADER = 12,
    FRAME_PIECE_FILLER = 13,
    FRAME_PIECE_HEAD = 14,
    FRAME_PIECE_BLOCK = 15,
    FRAME_PIECE_BACKING = 16
};
typedef struct frame_fit_out {
    uint32_t struct_size, struct_id;
    frame_bool fits;
    int32_t pairs;
    int32_t overlaps;
    int32_t first;
    int32_t second;
    int32_t spare;
    double overlap_in3;
} frame_fit_out;
typedef int32_t frame_stair_top;
enum frame_stair_top_values {
    FRAME_STAIR_TOP_FLOOR = 1,
    FRAME_STAIR_TOP_TREAD = 2
};
typedef int32_t frame_stair_turn;
enum frame_stair_turn_values {
    FRAME_STAIR_STRAIGHT = 1,
    FRAME_STAIR_QUARTER = 2,
    FRAME_STAIR_HALF = 3
};
typedef int32_t frame_stairs_caution;
enum frame_stairs_caution_values {
    FRAME_STAIRS_CAUTION_MEASURE = 0,
    FRAME_STAIRS_CAUTION_LOCAL = 1,
    FRAME_STAIRS_CAUTION_MEMORY = 2,
    FRAME_STAIRS_CAUTION_RISER = 3,
    FRAME_STAIRS_CAUTION_TREAD = 4,
    FRAME_STAIRS_CAUTION_NOSING = 5,
    FRAME_STAIRS_CAUTION_RUN = 6,
    FRAME_STAIRS_CAUTION_HEADROOM = 7,
    FRAME_STAIRS_CAUTION_FLIGHT = 8,
    FRAME_STAIRS_CAUTION_LANDING = 9,
    FRAME_STAIRS_CAUTION_WIDTH = 10,
    FRAME_STAIRS_CAUTION_OPEN = 11,
    FRAME_STAIRS_CAUTION_UNEVEN = 12,
    FRAME_STAIRS_CAUTION_THROAT = 13,
    FRAME_STAIRS_CAUTION_THIN = 14,
    FRAME_STAIRS_CAUTION_LIMITS = 15,
    FRAME_STAIRS_CAUTION_ALIKE = 16
};
typedef int32_t frame_stairs_not_checked;
enum frame_stairs_not_checked_values {
    FRAME_STAIRS_UNCHECKED_STRENGTH = 0,
    FRAME_STAIRS_UNCHECKED_TOP = 1,
    FRAME_STAIRS_UNCHECKED_LANDING = 2,
    FRAME_STAIRS_UNCHECKED_GUARD = 3,
    FRAME_STAIRS_UNCHECKED_HEADROOM = 4,
    FRAME_STAIRS_UNCHECKED_DOORS = 5
};
typedef struct frame_stairs_in {
    uint32_t struct_size, struct_id;
    double rise_in;
    double finish_below_in;
    double finish_above_in;
    double usual_riser_in;
    double tread_in;
    double run_in;
    double run_limit_in;
    double tread_thickness_in;
    double riser_thickness_in;
    double nosing_in;
    double width_in;
    double well_length_in;
    double ceiling_in;
    double landing_length_in;
    double stringer_depth_in;
    double stringer_thickness_in;
    double stringer_spacing_in;
    double max_riser_in;
    double min_tread_in;
    double min_headroom_in;
    double max_flight_rise_in;
    double min_width_in;
    int32_t risers;
    int32_t landings;
    int32_t stringers;
    frame_size size;
    frame_code_edition edition;
    frame_stair_top top;
    frame_stair_turn turn;
    int32_t spare;
    const double *floor_at_stringers_in;
    size_t floor_at_stringers_count;
    const char *name;
} frame_stairs_in;
typedef struct frame_stairs_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    frame_bool passes;
    int32_t risers;
    int32_t treads;
    int32_t flight_total;
    int32_t stringers;
    double total_rise_in;
    double riser_in;
    double tread_in;
    double nosing_in;
    double tread_board_in;
    double total_run_in;
    double leg_run_in;
    double angle_deg;
    double two_risers_and_tread_in;
    double square_blade_in;
    double square_tongue_in;
    double step_length_in;
    double stringer_length_in;
    double stepped_length_in;
    double stringer_stock_in;
    double drop_in;
    double first_riser_cut_in;
    double top_riser_in;
    double notch_depth_in;
    double throat_in;
    double headroom_in;
    double well_needed_in;
    double landing_length_in;
    double handrail_low_in;
    double handrail_high_in;
    double handrail_length_in;
    double guard_stair_in;
    double guard_level_in;
    frame_bool handrail_needed;
    int32_t guard_from_tread;
} frame_stairs_out;
typedef struct frame_stairs_flight {
    uint32_t struct_size, struct_id;
    int32_t risers;
    int32_t treads;
    double rise_in;
    double run_in;
    double from_height_in;
    double stringer_length_in;
    double stringer_stock_in;
    double stepped_length_in;
} frame_stairs_flight;
typedef struct frame_stairs_step {
    uint32_t struct_size, struct_id;
    int32_t flight;
    int32_t number;
    double height_in;
    double run_in;
    double mark_in;
    double from_foot_in;
} frame_stairs_step;
typedef struct frame_stairs_piece {
    uint32_t struct_size, struct_id;
    frame_piece_kind kind;
    frame_size size;
    double thickness_in;
    double depth_in;
    double length_in;
    double short_point_in;
    double start_x_in;
    double start_y_in;
    double start_z_in;
    double end_x_in;
    double end_y_in;
    double end_z_in;
    const char *name;
    const char *section;
} frame_stairs_piece;
FRAME_ANSWER(stairs);
FRAME_ANSWER_LIST(stairs, flight, flights);
FRAME_ANSWER_LIST(stairs, step, steps);
FRAME_ANSWER_LIST(stairs, piece, pieces);
FRAME_API frame_status frame_stairs_stick(const frame_stairs *stairs, size_t index, frame_stick **stick);
FRAME_API frame_status frame_stairs_fit_sized(const frame_stairs *stairs, frame_fit_out *out, size_t out_size);
static inline frame_status frame_stairs_fit(const frame_stairs *stairs, frame_fit_out *out) {
    return frame_stairs_fit_sized(stairs, out, sizeof *out);
}
FRAME_API frame_status frame_stairs_drawing(const frame_stairs *stairs, frame_drawing **drawing);
typedef int32_t frame_winders_caution;
enum frame_winders_caution_values {
    FRAME_WINDERS_CAUTION_WALKLINE = 0,
    FRAME_WINDERS_CAUTION_NARROW = 1,
    FRAME_WINDERS_CAUTION_LOCAL = 2,
    FRAME_WINDERS_CAUTION_MEMORY = 3,
    FRAME_WINDERS_CAUTION_ALIKE = 4
};
typedef int32_t frame_winders_not_checked;
enum frame_winders_not_checked_values {
    FRAME_WINDERS_UNCHECKED_HEADROOM = 0,
    FRAME_WINDERS_UNCHECKED_STRENGTH = 1,
    FRAME_WINDERS_UNCHECKED_RAIL = 2
};
typedef struct frame_winders_in {
    uint32_t struct_size, struct_id;
    double width_in;
    double turn_deg;
    double offset_in;
    int32_t winders;
    frame_code_edition edition;
} frame_winders_in;
typedef struct frame_winders_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    frame_bool passes;
    double each_deg;
    double offset_in;
    double offset_needed_in;
    double walkline_radius_in;
    double walkline_tread_in;
    double narrow_tread_in;
    double wide_tread_in;
    double walkline_run_in;
} frame_winders_out;
FRAME_CALCULATION(winders);
typedef int32_t frame_wall_end;
enum frame_wall_end_values {
    FRAME_WALL_END_PLAIN = 1,
    FRAME_WALL_END_CORNER = 2,
    FRAME_WALL_END_CORNER_THREE = 3,
    FRAME_WALL_END_BUTT = 4
};
typedef int32_t frame_wall_backing;
enum frame_wall_backing_values {
    FRAME_WALL_BACKING_CHANNEL = 1,
    FRAME_WALL_BACKING_LADDER = 2
};
typedef int32_t frame_header_at;
enum frame_header_at_values {
    FRAME_HEADER_AT_OPENING = 1,
    FRAME_HEADER_AT_PLATES = 2
};
typedef struct frame_wall_opening {
    uint32_t struct_size, struct_id;
    const char *name;
    double at_in;
    double width_in;
    double head_in;
    double sill_in;
    frame_size header_size;
    int32_t header_plies;
    frame_turned header_turned;
    frame_header_at header_at;
    frame_bool filler;
    int32_t jacks;
    int32_t kings;
    int32_t sills;
} frame_wall_opening;
FRAME_ELEMENT(wall_opening);
typedef struct frame_wall_crossing {
    uint32_t struct_size, struct_id;
    double at_in;
    double width_in;
    frame_wall_backing backing;
    frame_bool lap;
} frame_wall_crossing;
FRAME_ELEMENT(wall_crossing);
typedef struct frame_wall_step {
    uint32_t struct_size, struct_id;
    double at_in;
    double rise_in;
} frame_wall_step;
FRAME_ELEMENT(wall_step);
typedef int32_t frame_wall_caution;
enum frame_wall_caution_values {
    FRAME_WALL_CAUTION_ONE_HOOK = 0,
    FRAME_WALL_CAUTION_HEADER = 1,
    FRAME_WALL_CAUTION_EDGES = 2,
    FRAME_WALL_CAUTION_SHORT = 3,
    FRAME_WALL_CAUTION_PACK = 4,
    FRAME_WALL_CAUTION_TIE = 5,
    FRAME_WALL_CAUTION_SINGLE = 6,
    FRAME_WALL_CAUTION_BRACE = 7,
    FRAME_WALL_CAUTION_CODE = 8,
    FRAME_WALL_CAUTION_CUT_PLATE = 9
};
typedef int32_t frame_wall_not_checked;
enum frame_wall_not_checked_values {
    FRAME_WALL_UNCHECKED_STUDS = 0,
    FRAME_WALL_UNCHECKED_HEADERS = 1,
    FRAME_WALL_UNCHECKED_BRACING = 2,
    FRAME_WALL_UNCHECKED_PIPES = 3
};
typedef struct frame_wall_in {
    uint32_t struct_size, struct_id;
    double length_in;
    double height_in;
    double ceiling_in;
    double stud_length_in;
    double floor_finish_in;
    double ceiling_finish_in;
    double spacing_in;
    double datum_in;
    double sheet_in;
    double slope;
    double peak_in;
    double far_slope;
    double bottom_slope;
    double plate_stock_in;
    double joint_offset_in;
    double start_other_in;
    double end_other_in;
    double stud_thickness_in;
    double stud_depth_in;
    double ground_snow_psf;
    double building_width_in;
    double wind_mph;
    frame_size size;
    frame_first_mark first;
    frame_bool bearing;
    int32_t top_plates;
    int32_t bottom_plates;
    frame_bool studs_flat;
    frame_wall_end start_end;
    frame_wall_end end_end;
    frame_code_supports supports;
    frame_code_edition edition;
    frame_code_exposure exposure;
    int32_t spare;
    const frame_wall_opening *openings;
    size_t opening_count;
    const frame_wall_crossing *crossings;
    size_t crossing_count;
    const frame_wall_step *steps;
    size_t step_count;
    const double *blocking_in;
    size_t blocking_count;
    const char *name;
} frame_wall_in;
typedef struct frame_wall_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    frame_bool passes;
    int32_t studs;
    int32_t kings;
    int32_t jacks;
    int32_t cripples;
    int32_t blocks;
    int32_t edges_off;
    double height_in;
    double stud_length_in;
    double longest_in;
    double shortest_in;
    double difference_in;
    double top_angle_deg;
    double widest_in;
    double plates_in;
} frame_wall_out;
typedef struct frame_wall_mark {
    uint32_t struct_size, struct_id;
    double mark_in;
    double to_in;
    frame_piece_kind kind;
    frame_bool bottom;
    frame_bool top;
    int32_t opening;
} frame_wall_mark;
typedef struct frame_wall_header {
    uint32_t struct_size, struct_id;
    int32_t opening;
    int32_t plies;
    frame_size size;
    frame_turned turned;
    double length_in;
    double bottom_in;
    double top_in;
    double code_span_in;
    int32_t jacks;
    int32_t kings;
    const char *name;
    const char *source;
} frame_wall_header;
typedef struct frame_wall_piece {
    uint32_t struct_size, struct_id;
    frame_piece_kind kind;
    frame_size size;
    double thickness_in;
    double depth_in;
    double length_in;
    double short_point_in;
    double start_x_in;
    double start_y_in;
    double start_z_in;
    double end_x_in;
    double end_y_in;
    double end_z_in;
    double start_deg;
    double end_deg;
    const char *name;
    const char *section;
    int32_t opening;
    int32_t gang;
} frame_wall_piece;
typedef struct frame_wall_gang {
    uint32_t struct_size, struct_id;
    frame_piece_kind kind;
    frame_size size;
    int32_t count;
    int32_t first;
    double length_in;
    double short_point_in;
    double start_deg;
    double end_deg;
    const char *name;
    const char *section;
} frame_wall_gang;
FRAME_ANSWER(wall);
FRAME_ANSWER_LIST(wall, mark, marks);
FRAME_ANSWER_LIST(wall, header, headers);
FRAME_ANSWER_LIST(wall, piece, pieces);
FRAME_ANSWER_LIST(wall, gang, gangs);
FRAME_API frame_status frame_wall_stick(const frame_wall *wall, size_t index, frame_stick **stick);
FRAME_API frame_status frame_wall_fit_sized(const frame_wall *wall, frame_fit_out *out, size_t out_size);
static inline frame_status frame_wall_fit(const frame_wall *wall, frame_fit_out *out) {
    return frame_wall_fit_sized(wall, out, sizeof *out);
}
FRAME_API frame_status frame_wall_drawing(const frame_wall *wall, frame_drawing **drawing);
FRAME_END
#endif
/* takeoff.h */
#ifndef FRAME_TAKEOFF_H
#define FRAME_TAKEOFF_H 
FRAME_BEGIN
typedef struct frame_stock_piece {
    uint32_t struct_size, struct_id;
    double length_in;
    int32_t count;
    int32_t spare;
    const char *name;
} frame_stock_piece;
FRAME_ELEMENT(stock_piece);
typedef struct frame_stock_length {
    uint32_t struct_size, struct_id;
    double length_in;
    double price;
    int32_t available;
    int32_t spare;
    const char *name;
} frame_stock_length;
FRAME_ELEMENT(stock_length);
typedef int32_t frame_stock_caution;
enum frame_stock_caution_values {
    FRAME_STOCK_CAUTION_TRUE_STOCK = 0,
    FRAME_STOCK_CAUTION_NOT_PROVEN = 1
};
typedef int32_t frame_stock_not_checked;
enum frame_stock_not_checked_values {
    FRAME_STOCK_UNCHECKED_ENDS = 0
};
typedef struct frame_stock_plan_in {
    uint32_t struct_size, struct_id;
    const frame_stock_piece *pieces;
    size_t piece_count;
    const frame_stock_length *stock;
    size_t stock_count;
    double kerf_in;
    double end_trim_in;
    double time_limit_s;
} frame_stock_plan_in;
typedef struct frame_stock_plan_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    frame_bool optimal;
    double cost;
    double bound;
    double first_fit_cost;
    double piece_length_in;
    double stock_length_in;
    double offcut_length_in;
    double waste_share;
    int32_t boards_used;
    int32_t pieces_cut;
} frame_stock_plan_out;
typedef struct frame_stock_plan_board {
    uint32_t struct_size, struct_id;
    double length_in;
    double price;
    double offcut_in;
    int32_t stock;
    int32_t spare;
    uint32_t piece_first;
    uint32_t piece_count;
} frame_stock_plan_board;
typedef struct frame_stock_plan_piece {
    uint32_t struct_size, struct_id;
    double length_in;
    double from_in;
    double to_in;
    int32_t piece;
    int32_t board;
    const char *name;
} frame_stock_plan_piece;
FRAME_ANSWER(stock_plan);
FRAME_ANSWER_LIST(stock_plan, board, boards);
FRAME_ANSWER_LIST(stock_plan, piece, pieces);
FRAME_END
#endif
/* building.h */
#ifndef FRAME_BUILDING_H
#define FRAME_BUILDING_H 
FRAME_BEGIN
typedef struct frame_building_floor {
    uint32_t struct_size, struct_id;
    const char *name;
    double length_in;
    double span_in;
    frame_size size;
    frame_species species;
    frame_grade grade;
    int32_t spare;
    double live_psf;
    double dead_psf;
    double spacing_in;
    double bearing_in;
    double rim_thickness_in;
} frame_building_floor;
FRAME_ELEMENT(building_floor);
typedef struct frame_building_roof {
    uint32_t struct_size, struct_id;
    const char *name;
    double length_in;
    double run_in;
    double slope;
    frame_size size;
    frame_species species;
    frame_grade grade;
    int32_t faces;
    double snow_psf;
    double roof_live_psf;
    double dead_psf;
    double spacing_in;
    double overhang_in;
    double ridge_thickness_in;
    double seat_in;
    frame_size ridge_size;
    frame_rafter_tail tail;
} frame_building_roof;
FRAME_ELEMENT(building_roof);
typedef struct frame_building_header {
    uint32_t struct_size, struct_id;
    const char *name;
    const char *carries;
    double opening_in;
    double dead_plf;
    double live_plf;
    double snow_plf;
    double bearing_in;
    frame_size size;
    int32_t plies;
    frame_species species;
    frame_grade grade;
} frame_building_header;
FRAME_ELEMENT(building_header);
typedef struct frame_building_nailing {
    uint32_t struct_size, struct_id;
    const char *name;
    const char *ties;
    const char *nail;
    double demand_lb;
    double side_thickness_in;
    double main_thickness_in;
    frame_dowel_kind kind;
    int32_t count;
    frame_species species;
    int32_t spare;
    double load_duration_factor;
} frame_building_nailing;
FRAME_ELEMENT(building_nailing);
typedef struct frame_building_stock {
    uint32_t struct_size, struct_id;
    frame_size size;
    int32_t available;
    double length_in;
    double price;
} frame_building_stock;
FRAME_ELEMENT(building_stock);
typedef struct frame_building_in {
    uint32_t struct_size, struct_id;
    const char *name;
    const frame_building_floor *floors;
    size_t floor_count;
    const frame_building_roof *roofs;
    size_t roof_count;
    const frame_building_header *headers;
    size_t header_count;
    const frame_building_nailing *nailings;
    size_t nailing_count;
    const frame_building_stock *stock;
    size_t stock_count;
    double kerf_in;
} frame_building_in;
typedef int32_t frame_note_kind;
enum frame_note_kind_values {
    FRAME_NOTE_CAUTION = 1,
    FRAME_NOTE_ASSUMED = 2,
    FRAME_NOTE_NOT_CHECKED = 3
};
typedef int32_t frame_building_caution;
enum frame_building_caution_values {
    FRAME_BUILDING_CAUTION_LOCAL = 0,
    FRAME_BUILDING_CAUTION_FAILS = 1,
    FRAME_BUILDING_CAUTION_MEASURE = 2
};
typedef int32_t frame_building_not_checked;
enum frame_building_not_checked_values {
    FRAME_BUILDING_UNCHECKED_LATERAL = 0,
    FRAME_BUILDING_UNCHECKED_GROUND = 1,
    FRAME_BUILDING_UNCHECKED_SNOW = 2,
    FRAME_BUILDING_UNCHECKED_CONNECTIONS = 3
};
typedef struct frame_building_out {
    uint32_t struct_size, struct_id;
    uint64_t assumed;
    uint64_t cautions;
    uint64_t not_checked;
    frame_known known;
    frame_bool passes;
    double worst_ratio;
    double cost;
    double board_feet;
    int32_t member_total;
    int32_t boards_used;
} frame_building_out;
typedef struct frame_building_member {
    uint32_t struct_size, struct_id;
    double length_in;
    int32_t count;
    frame_size size;
    const char *name;
    const char *of;
    const char *section;
    const char *grade;
    const char *cuts;
} frame_building_member;
typedef struct frame_building_check {
    uint32_t struct_size, struct_id;
    const char *name;
    const char *what;
    const char *governs;
    const char *block;
    double ratio;
    frame_bool passes;
    frame_known known;
} frame_building_check;
typedef struct frame_building_mark {
    uint32_t struct_size, struct_id;
    const char *of;
    double at_in;
} frame_building_mark;
typedef struct frame_building_board {
    uint32_t struct_size, struct_id;
    const char *section;
    double length_in;
    double price;
    double offcut_in;
    uint32_t cut_first;
    uint32_t cut_count;
} frame_building_board;
typedef struct frame_building_cut {
    uint32_t struct_size, struct_id;
    const char *name;
    double length_in;
    double from_in;
    double to_in;
} frame_building_cut;
typedef struct frame_building_purchase {
    uint32_t struct_size, struct_id;
    const char *section;
    double length_in;
    double price;
    double total;
    double board_feet;
    int32_t count;
    int32_t spare;
} frame_building_purchase;
typedef struct frame_building_note {
    uint32_t struct_size, struct_id;
    const char *about;
    const char *text;
    frame_note_kind kind;
    int32_t spare;
} frame_building_note;
FRAME_ANSWER(building);
FRAME_ANSWER_LIST(building, member, members);
FRAME_ANSWER_LIST(building, check, checks);
FRAME_ANSWER_LIST(building, mark, marks);
FRAME_ANSWER_LIST(building, board, boards);
FRAME_ANSWER_LIST(building, cut, cuts);
FRAME_ANSWER_LIST(building, purchase, purchases);
FRAME_ANSWER_LIST(building, note, notes);
FRAME_END
#endif
/* packet.h */
#ifndef FRAME_PACKET_H
#define FRAME_PACKET_H 
FRAME_BEGIN
typedef struct frame_packet frame_packet;
FRAME_VIEW(building, packet);
FRAME_API void frame_packet_free(frame_packet *packet);
FRAME_API frame_status frame_packet_html(const frame_packet *packet, frame_text *into);
FRAME_API frame_status frame_packet_cuts_csv(const frame_packet *packet, frame_text *into);
FRAME_API frame_status frame_packet_cuts_json(const frame_packet *packet, frame_text *into);
FRAME_API frame_status frame_packet_write(const frame_packet *packet, const char *folder);
FRAME_END
#endif
