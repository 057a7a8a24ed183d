/* The length of bracing that a wall line needs: by wind, or by earthquakes where they ask for more. */
#include <math.h>
#include <string.h>

#include "base/error.h"
#include "code/bracing.h"
#include "code/overlay.h"
#include "code_facts.h"
#include "table_code_bracing_wind.h"
#include "working/calculation.h"

enum { WIND_LIB = 1, WIND_GB, WIND_PANELS, WIND_CONTINUOUS };
static const double winds[] = {95, 110, 115, 120, 130, 140}, spacings[] = {120, 240, 360, 480, 600, 720};
static const char wind_factors[] = "IRC Table R602.10.3(2)";

static int wind_group(frame_code_bracing_method method) {
    if (method == FRAME_CODE_BRACING_LIB) return WIND_LIB;
    if (method == FRAME_CODE_BRACING_GB) return WIND_GB;
    return method == FRAME_CODE_BRACING_CS_SFB || method < FRAME_CODE_BRACING_CS_WSP ? WIND_PANELS : WIND_CONTINUOUS;
}

static frame_status conflict(const char *field, const char *value, const char *valid, const char *why) {
    return frame_fail(FRAME_CONFLICT, field, value, valid, "%s: %s", field, why);
}

/* What the question itself may not leave open, or contradict. */
static frame_status check(const frame_code_bracing_in *in) {
    const frame_code_bracing_method method = in->method;
    const frame_code_edition read = frame_code_bracing_edition(in->edition);
    if (in->edition > FRAME_CODE_2024) return frame_code_no_edition("R602.10.3(1)", in->edition, 0xf);
    if (in->story > in->stories)
        return conflict("story", frame_code_number(in->story).text, "1 up to the number of stories",
                        "there are not so many stories");
    if (in->cripple && in->story != 1)
        return conflict("cripple", "yes", "no", "a cripple wall stands below the first story");
    if (in->wind_mph >= 140)
        return frame_fail(FRAME_OUTSIDE_SCOPE, "wind_mph", frame_code_number(in->wind_mph).text, "under 140 mph",
                          "wind_mph: from 140 mph up bracing is designed, not looked up (R301.2.1.1)");
    if (in->wall_height_in > 144)
        return frame_fail_number(FRAME_OUTSIDE_SCOPE, "wall_height_in", in->wall_height_in, "0..144 in (12 ft)");
    if (in->gypsum_inside == FRAME_NOT_GIVEN_INT && frame_code_factor_of(FRAME_CODE_NO_GYPSUM, 1, method, read) > 0)
        return frame_code_bracing_needs("gypsum_inside", "yes, no",
                                        "for this method: panels without gypsum board inside need more");
    if (in->blocked == FRAME_NOT_GIVEN_INT && frame_code_factor_of(FRAME_CODE_NO_BLOCKING, 1, method, read) > 0)
        return frame_code_bracing_needs("blocked", "yes, no",
                                        "for this method: panels with open horizontal joints need more");
    if (in->gypsum_close_nails && method != FRAME_CODE_BRACING_GB)
        return conflict("gypsum_close_nails", "yes", "no", "a reduction of method GB alone");
    if (in->hold_downs && (in->story < in->stories || !frame_code_is_method(method, FRAME_CODE_SIX_METHODS)))
        return conflict("hold_downs", "yes", "no",
                        "a reduction of the top story with methods DWB, WSP, SFB, PBS, PCP and HPS alone");
    return FRAME_OK;
}

static double cell(const frame_code_bracing_wind_row *row, int place) {
    const int16_t cells[] = {row->s10, row->s20, row->s30, row->s40, row->s50, row->s60};
    return cells[place] * 1.2;
}

/* The row for a wind, among the rows of an edition. */
static const frame_code_bracing_wind_row *wind_row(int story, int group, frame_code_edition edition, double wind) {
    const frame_code_bracing_wind_row *row =
        &frame_code_bracing_wind_table[frame_code_bracing_wind_at[story][group] - 1];
    while (!(row->editions & frame_code_bit(edition)) || row->wind != wind) row++;
    return row;
}

/* The length of table R602.10.3(1). */
static frame_status wind_table(const frame_code_bracing_in *in, int block, frame_code_bracing_out *out,
                               frame_working *w) {
    const int older = in->edition <= FRAME_CODE_2018;
    const frame_code_columns mph = {"R602.10.3(1)", "wind_mph", "mph", winds + older, 6 - older, 1};
    const frame_code_columns apart = {"R602.10.3(1)", "line_spacing_in", "in", spacings, 6, 1};
    int wind, spacing, slower, closer;
    double u, t;
    frame_status status = frame_code_between(&mph, in->wind_mph, &wind, &u, &slower);
    if (!status) status = frame_code_between(&apart, in->line_spacing_in, &spacing, &t, &closer);
    if (status) return status;
    const int group = wind_group(in->method);
    const frame_code_bracing_wind_row *low = wind_row(block, group, in->edition, mph.at[wind]),
                                      *high = u > 0 ? wind_row(block, group, in->edition, mph.at[wind + 1]) : low;
    const int next = t > 0 ? spacing + 1 : spacing;
    if (cell(low, spacing) < 0)
        return frame_fail(FRAME_REFUSED, "method", frame_word_text("code_bracing_method", in->method), "GB, WSP, ...",
                          "method: not permitted in this story (table R602.10.3(1))");
    if (u > 0 || t > 0) FRAME_CODE_WARN(out, BETWEEN);
    out->source = frame_code_source_text(low->source);
    FRAME_TABLE(w, L_1, cell(low, spacing), "in", "bracing at the lower wind, lines closer together", out->source);
    FRAME_TABLE(w, L_2, cell(low, next), "in", "bracing at the lower wind, lines farther apart", out->source);
    FRAME_TABLE(w, L_3, cell(high, spacing), "in", "bracing at the higher wind, lines closer together", out->source);
    FRAME_TABLE(w, L_4, cell(high, next), "in", "bracing at the higher wind, lines farther apart", out->source);
    FRAME_GIVEN(w, t_spacing, t, "", "part of the way between the spacings");
    FRAME_GIVEN(w, t_wind, u, "", "part of the way between the winds");
    FRAME_STEP(w, L_table, (L_1 + t_spacing * (L_2 - L_1)) * (1 - t_wind) + (L_3 + t_spacing * (L_4 - L_3)) * t_wind,
               "in", "bracing of the wind table", "interpolation, as its notes allow");
    out->table_wind_in = L_table;
    return FRAME_OK;
}

static frame_status by_wind(const frame_code_bracing_in *in, frame_code_bracing_out *out, frame_working *w) {
    const int above = in->stories - in->story;
    const double ridge = frame_code_factor_between(FRAME_CODE_BY_RIDGE, above + 1, in->eave_to_ridge_in / 12);
    const frame_status status = wind_table(in, above + 1, out, w);
    if (status) return status;
    if (!(ridge > 0))
        return frame_fail_number(FRAME_OUTSIDE_SCOPE, "eave_to_ridge_in", in->eave_to_ridge_in,
                                 above == 2 ? "0..180 in (15 ft)" : "0..240 in (20 ft)");
    FRAME_GIVEN(w, L_wind_table, out->table_wind_in, "in", "bracing of the wind table");
    FRAME_TABLE(w, F_exposure, frame_code_factor_between(FRAME_CODE_BY_EXPOSURE, in->stories, (int)in->exposure), "",
                "factor for the exposure", wind_factors);
    FRAME_TABLE(w, F_ridge, ridge, "", "factor for the height from eaves to ridge", wind_factors);
    FRAME_TABLE(w, F_height, frame_code_factor_between(FRAME_CODE_BY_HEIGHT, 1, in->wall_height_in / 12), "",
                "factor for the height of the story", wind_factors);
    FRAME_TABLE(w, F_lines, frame_code_factor_between(FRAME_CODE_BY_LINES, 1, in->lines > 5 ? 5 : in->lines), "",
                "factor for the number of lines", wind_factors);
    FRAME_TABLE(w, F_panels,
                frame_code_bracing_finish(in, FRAME_CODE_NO_GYPSUM, FRAME_CODE_NO_BLOCKING) *
                    (in->hold_downs ? 0.8 : 1) * (in->gypsum_close_nails ? 0.7 : 1),
                "", "factors for hold-downs, gypsum board and blocking", wind_factors);
    FRAME_TABLE(w, F_cripple, in->cripple ? 1.15 : 1, "", "factor for a cripple wall", "IRC R602.10.10");
    FRAME_STEP(w, L_wind, L_wind_table * F_exposure * F_ridge * F_height * F_lines * F_panels * F_cripple, "in",
               "bracing by wind", wind_factors);
    out->exposure_factor = F_exposure;
    out->ridge_factor = F_ridge;
    out->height_factor = F_height;
    out->lines_factor = F_lines;
    out->panel_factor = F_panels;
    out->wind_length_in = L_wind;
    return FRAME_OK;
}

static void say(const frame_code_bracing_in *in, frame_code_bracing_out *out) {
    const int quake = out->governs == FRAME_CODE_BRACING_EARTHQUAKE;
    FRAME_CODE_SAY(out, in->edition, quake ? "R602.10.3(3)" : "R602.10.3(1)", out->source,
                   in->edition == FRAME_CODE_2015 ? "the factors of 2015 were not seen: those of 2018 are taken" : "",
                   frame_code_bracing_known(in->edition));
    FRAME_CODE_WARN(out, ORDER);
    if (frame_code_is_method(in->method, FRAME_CODE_CONTINUOUS)) FRAME_CODE_WARN(out, RETURNS);
    if (frame_code_is_method(in->method, FRAME_CODE_HELD) || in->method == FRAME_CODE_BRACING_CS_PF ||
        in->method == FRAME_CODE_BRACING_BV_WSP)
        FRAME_CODE_WARN(out, OWN_DETAIL);
    FRAME_CODE_UNCHECKED(out, WIND);
    FRAME_CODE_UNCHECKED(out, UPLIFT);
    FRAME_CODE_UNCHECKED(out, CONNECTIONS);
}

static frame_status compute(const frame_code_bracing_in *in, frame_code_bracing_out *out, frame_working *w) {
    int quake;
    frame_status status = check(in);
    if (!status)
        status = frame_code_bracing_scope(in->seismic, in->townhouse, in->method, in->stories - in->story, in->story,
                                          &quake);
    if (status) return status;
    FRAME_HEADING(w, "Bracing of a wall line by the code's tables");
    status = by_wind(in, out, w);
    if (!status && quake) status = frame_code_bracing_by_earthquake(in, out, w);
    if (status) return status;
    out->governs = FRAME_CODE_BRACING_WIND;
    out->length_in = out->wind_length_in;
    if (quake && out->seismic_length_in > out->length_in) {
        out->governs = FRAME_CODE_BRACING_EARTHQUAKE;
        out->length_in = out->seismic_length_in;
    }
    FRAME_CASE(w, quake ? "earthquakes count in this category" : "wind alone counts in this category",
               out->governs == FRAME_CODE_BRACING_WIND ? "the wind governs" : "earthquakes govern", "IRC R602.10.3");
    say(in, out);
    return FRAME_OK;
}

FRAME_CODE_IMPLEMENT(code_bracing, compute);
