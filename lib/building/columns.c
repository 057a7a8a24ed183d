/* Columns of the building: posts and studs under their combinations of loads, the worst of them with its working. */
#include <math.h>

#include "base/error.h"
#include "building/framing.h"

/* NDS table 2.3.2: the duration that a factor stands for. */
static frame_load_duration duration_of(double factor) {
    if (factor >= 1.6) return FRAME_DURATION_TEN_MINUTES;
    if (factor >= 1.25) return FRAME_DURATION_SEVEN_DAYS;
    if (factor >= 1.15) return FRAME_DURATION_TWO_MONTHS;
    return factor >= 1.0 ? FRAME_DURATION_TEN_YEARS : FRAME_DURATION_PERMANENT;
}

frame_status frame_column_worst(const frame_by_kind *load, double wind_plf, frame_column_check_in *in, double *ratio) {
    frame_load_case cases[FRAME_LOAD_CASES];
    frame_column_check_out out;
    unsigned kinds = wind_plf > 0 ? 1u << FRAME_LOAD_WIND : 0;
    for (int kind = 1; kind < FRAME_LOAD_KINDS; kind++)
        if (load->k[kind] != 0) kinds |= 1u << kind;
    const int count = frame_load_cases_find(kinds, FRAME_DURATION_TEN_YEARS, cases);
    frame_column_check_in worst = *in;
    worst.axial_lb = 0;
    worst.load_duration = FRAME_DURATION_PERMANENT;
    *ratio = 0;
    for (int c = 0; c < count; c++) {
        double axial = 0;
        for (int kind = 1; kind < FRAME_LOAD_KINDS; kind++) axial += cases[c].factor[kind] * load->k[kind];
        in->axial_lb = fmax(axial, 0); /* what wind lifts is a tie's */
        in->lateral_plf = wind_plf * cases[c].factor[FRAME_LOAD_WIND];
        in->load_duration = duration_of(cases[c].duration_factor);
        const frame_status status = frame_column_check(in, &out, NULL);
        if (status) return status;
        if (out.ratio > *ratio) *ratio = out.ratio, worst = *in;
    }
    *in = worst;
    return FRAME_OK;
}

frame_status frame_column_list(frame_framing_job *job, const char *name, const frame_column_check_in *worst,
                               frame_bearer_kind kind, double there, const frame_beside_code *beside) {
    frame_column_check_out out;
    frame_working *working;
    frame_status status = frame_working_new(&working);
    if (status) return status;
    status = frame_column_check(worst, &out, working);
    if (status) {
        frame_working_free(working);
        return frame_fail_within("%.80s, ", name ? name : "");
    }
    const int has_code = beside->allowed != FRAME_NOT_GIVEN && beside->allowed > 0;
    const frame_framing_made_check made = {
        .name = name ? name : "",
        .what = "column_check",
        .governs = frame_word_text("governing", out.governs),
        .code = beside->words,
        .ratio = out.ratio,
        .code_ratio = has_code ? there / beside->allowed : FRAME_NOT_GIVEN,
        .length = worst->length_in,
        .passes = out.passes,
        .code_passes = has_code ? there <= beside->allowed + 1e-9 : FRAME_NOT_GIVEN_INT,
        .known = out.known > beside->known ? out.known : beside->known,
        .kind = kind,
        .out = &out,
        .working = working};
    return frame_framing_check_add(job, &made);
}
