/* Wall bracing by the tables of R602.10: what is shared by the length that a line needs and by its panels. */
#ifndef FRAME_LIB_CODE_BRACING_H
#define FRAME_LIB_CODE_BRACING_H

#include "code/book.h"

/* The bit of a method in a table's set of methods. */
static inline unsigned frame_code_method_bit(frame_code_bracing_method method) {
    return 1u << (method - 1);
}

#define FRAME_CODE_SIX_METHODS /* DWB, WSP, SFB, PBS, PCP, HPS */                                                   \
    (1u << (FRAME_CODE_BRACING_DWB - 1) | 1u << (FRAME_CODE_BRACING_WSP - 1) | 1u << (FRAME_CODE_BRACING_SFB - 1) | \
     1u << (FRAME_CODE_BRACING_PBS - 1) | 1u << (FRAME_CODE_BRACING_PCP - 1) | 1u << (FRAME_CODE_BRACING_HPS - 1))
#define FRAME_CODE_CONTINUOUS /* CS-WSP, CS-G, CS-PF, CS-SFB */                    \
    (1u << (FRAME_CODE_BRACING_CS_WSP - 1) | 1u << (FRAME_CODE_BRACING_CS_G - 1) | \
     1u << (FRAME_CODE_BRACING_CS_PF - 1) | 1u << (FRAME_CODE_BRACING_CS_SFB - 1))
#define FRAME_CODE_HELD /* ABW, PFH, PFG */ \
    (1u << (FRAME_CODE_BRACING_ABW - 1) | 1u << (FRAME_CODE_BRACING_PFH - 1) | 1u << (FRAME_CODE_BRACING_PFG - 1))

static inline int frame_code_is_method(frame_code_bracing_method method, unsigned set) {
    return (set & frame_code_method_bit(method)) != 0;
}

/* The edition whose figures are read: those of 2015 were not seen but for the wind table, and are recalled to be those
 * of 2018. */
static inline frame_code_edition frame_code_bracing_edition(frame_code_edition edition) {
    return edition == FRAME_CODE_2015 ? FRAME_CODE_2018 : edition;
}
static inline frame_known frame_code_bracing_known(frame_code_edition edition) {
    return edition == FRAME_CODE_2015 ? FRAME_KNOWN_MEMORY : FRAME_KNOWN_READ;
}

/* Whether earthquakes count, and whether the method is permitted at all in this story: by category, kind of building
 * and floors above. The fields seismic, townhouse and method are named in the refusal. */
frame_status frame_code_bracing_scope(frame_code_seismic category, frame_bool townhouse,
                                      frame_code_bracing_method method, int floors_above, int story,
                                      int *by_earthquake);

/* The factors of tables R602.10.3(2) and (4), in the order of the table's own words. */
enum frame_code_bracing_factor_kind {
    FRAME_CODE_BY_EXPOSURE = 1,
    FRAME_CODE_BY_RIDGE,
    FRAME_CODE_BY_HEIGHT,
    FRAME_CODE_BY_LINES,
    FRAME_CODE_BY_HOLD_DOWNS,
    FRAME_CODE_NO_GYPSUM,
    FRAME_CODE_GYPSUM_4_IN,
    FRAME_CODE_NO_BLOCKING,
    FRAME_CODE_NO_GYPSUM_SEISMIC,
    FRAME_CODE_NO_BLOCKING_SEISMIC,
    FRAME_CODE_HEIGHT_SEISMIC,
    FRAME_CODE_SPACING_SEISMIC,
    FRAME_CODE_WALL_LOAD,
    FRAME_CODE_ROOF_LOAD,
    FRAME_CODE_VENEER
};
/* A factor between the rows of its kind; 0 past the last. */
double frame_code_factor_between(int kind, int which, double at);
/* The factor of the first row that reaches so far; 0 past the last. */
double frame_code_factor_up_to(int kind, int which, double at);
/* The factor of a kind for a method; 0 where the kind is not for it. */
double frame_code_factor_of(int kind, int which, frame_code_bracing_method method, frame_code_edition edition);

/* The two factors together for panels without gypsum board inside, or with open joints, as the question says. */
double frame_code_bracing_finish(const frame_code_bracing_in *in, int gypsum, int blocking);
/* A field that this case needs was not given. */
frame_status frame_code_bracing_needs(const char *field, const char *valid, const char *why);
/* The length by earthquakes, into the result. */
frame_status frame_code_bracing_by_earthquake(const frame_code_bracing_in *in, frame_code_bracing_out *out,
                                              frame_working *w);

/* The least length of a panel, in; -1 where none is long enough. FRAME_REQUIRED and the like name fields of the panel.
 */
frame_status frame_code_least_panel(const frame_code_wall_line_in *in, const frame_code_wall_panel *panel,
                                    frame_code_bracing_method method, double *least, const char **source);

#endif
