/* Which bracing methods are permitted where, and the factors on the length of bracing. */
#include "code/bracing.h"

#include "base/error.h"
#include "table_code_bracing_factors.h"

static frame_status not_permitted(frame_code_bracing_method method, const char *valid, const char *why) {
    const char *name = frame_word_text("code_bracing_method", method);
    return frame_fail(FRAME_REFUSED, "method", name, valid, "method: %s is not permitted %s", name, why);
}

static frame_status by_category(frame_code_seismic category, frame_bool townhouse, frame_code_bracing_method method,
                                int *by_earthquake) {
    *by_earthquake = category > FRAME_CODE_SEISMIC_C;
    if (category == FRAME_CODE_SEISMIC_E)
        return frame_fail(FRAME_OUTSIDE_SCOPE, "seismic", "E", "A, B, C, D0, D1, D2",
                          "seismic: category E is beyond the residential code's bracing: licensed design");
    if (category == FRAME_CODE_SEISMIC_C) {
        if (townhouse == FRAME_NOT_GIVEN_INT)
            return frame_fail(FRAME_REQUIRED, "townhouse", "", "yes, no",
                              "townhouse: category C needs to know whether it is a townhouse");
        *by_earthquake = townhouse != 0;
    }
    if (category <= FRAME_CODE_SEISMIC_C) return FRAME_OK;
    if (method == FRAME_CODE_BRACING_LIB || method == FRAME_CODE_BRACING_PFG || method == FRAME_CODE_BRACING_CS_SFB)
        return not_permitted(method, "WSP, CS-WSP, CS-G, CS-PF, ABW, PFH, GB, DWB, SFB, PBS, PCP, HPS",
                             "in categories D0, D1 and D2");
    return FRAME_OK;
}

frame_status frame_code_bracing_scope(frame_code_seismic category, frame_bool townhouse,
                                      frame_code_bracing_method method, int floors_above, int story,
                                      int *by_earthquake) {
    const frame_status status = by_category(category, townhouse, method, by_earthquake);
    if (status) return status;
    if (frame_code_is_method(method, FRAME_CODE_HELD) && (floors_above > 1 || story > 1))
        return not_permitted(method, "WSP, CS-WSP, GB, ...", "but in a single story or the first of two");
    if (method == FRAME_CODE_BRACING_CS_G && floors_above > 0)
        return not_permitted(method, "CS-WSP, CS-PF, ...", "under a floor: beside garage doors, under a roof alone");
    if (method == FRAME_CODE_BRACING_LIB && floors_above > 1)
        return not_permitted(method, "GB, WSP, CS-WSP, ...", "in the first of three stories");
    return FRAME_OK;
}

static const frame_code_bracing_factors_row *first(int kind, int which) {
    return &frame_code_bracing_factors_table[frame_code_bracing_factors_at[kind][which] - 1];
}

static int same_kind(const frame_code_bracing_factors_row *row, int kind, int which) {
    return row < frame_code_bracing_factors_table + frame_code_bracing_factors_rows && row->what == kind &&
           row->which == which;
}

double frame_code_factor_between(int kind, int which, double at) {
    const frame_code_bracing_factors_row *row = first(kind, which);
    if (at <= row->at) return row->factor;
    for (; same_kind(row + 1, kind, which); row++)
        if (at <= row[1].at)
            return row->factor + (at - row->at) / (row[1].at - row->at) * (row[1].factor - row->factor);
    return at <= row->at * (1 + 1e-9) ? row->factor : 0;
}

double frame_code_factor_up_to(int kind, int which, double at) {
    for (const frame_code_bracing_factors_row *row = first(kind, which); same_kind(row, kind, which); row++)
        if (at <= row->at * (1 + 1e-9)) return row->factor;
    return 0;
}

double frame_code_factor_of(int kind, int which, frame_code_bracing_method method, frame_code_edition edition) {
    for (const frame_code_bracing_factors_row *row = first(kind, which); same_kind(row, kind, which); row++)
        if (row->editions & frame_code_bit(edition) && frame_code_is_method(method, row->methods)) return row->factor;
    return 0;
}

frame_status frame_code_bracing_needs(const char *field, const char *valid, const char *why) {
    return frame_fail(FRAME_REQUIRED, field, "", valid, "%s: needed %s", field, why);
}

double frame_code_bracing_finish(const frame_code_bracing_in *in, int gypsum, int blocking) {
    const frame_code_edition read = frame_code_bracing_edition(in->edition);
    double factor = 1;
    if (!in->gypsum_inside && frame_code_factor_of(gypsum, 1, in->method, read) > 0)
        factor *= frame_code_factor_of(gypsum, 1, in->method, read);
    if (!in->blocked && frame_code_factor_of(blocking, 1, in->method, read) > 0)
        factor *= frame_code_factor_of(blocking, 1, in->method, read);
    return factor;
}
