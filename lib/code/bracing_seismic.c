/* The length of bracing of a wall line by earthquakes (tables R602.10.3(3) and (4)). */
#include "base/error.h"
#include "code/bracing.h"
#include "table_code_bracing_seismic.h"
#include "working/record.h"

enum { SEISMIC_LIB = 1, SEISMIC_GB, SEISMIC_BOARDS, SEISMIC_PANELS, SEISMIC_CONTINUOUS };
enum { CRIPPLE_BLOCK = 4 };
static const double lengths[] = {120, 240, 360, 480, 600};
static const char seismic_factors[] = "IRC Table R602.10.3(4)";

static int seismic_group(frame_code_bracing_method method) {
    if (method == FRAME_CODE_BRACING_LIB) return SEISMIC_LIB;
    if (method == FRAME_CODE_BRACING_GB) return SEISMIC_GB;
    if (method == FRAME_CODE_BRACING_WSP || frame_code_is_method(method, FRAME_CODE_HELD)) return SEISMIC_PANELS;
    return method == FRAME_CODE_BRACING_CS_SFB || method < FRAME_CODE_BRACING_CS_WSP ? SEISMIC_BOARDS
                                                                                     : SEISMIC_CONTINUOUS;
}

/* What earthquakes need to know besides. */
static frame_status check_seismic(const frame_code_bracing_in *in) {
    const int d = in->seismic > FRAME_CODE_SEISMIC_C;
    if (in->line_length_in == FRAME_NOT_GIVEN)
        return frame_code_bracing_needs("line_length_in", ">0..600 in", "for earthquakes: the length of the wall line");
    if (in->line_length_in > 600)
        return frame_fail_number(FRAME_OUTSIDE_SCOPE, "line_length_in", in->line_length_in,
                                 "0..600 in: a line longer than 50 ft is divided");
    if (in->roof_dead_psf == FRAME_NOT_GIVEN)
        return frame_code_bracing_needs("roof_dead_psf", "0..25 psf",
                                        "for earthquakes: the dead load of roof and ceiling");
    if (in->roof_dead_psf > 25)
        return frame_fail_number(FRAME_OUTSIDE_SCOPE, "roof_dead_psf", in->roof_dead_psf, "0..25 psf");
    if (in->wall_dead_psf > 15)
        return frame_fail_number(FRAME_OUTSIDE_SCOPE, "wall_dead_psf", in->wall_dead_psf, "0..15 psf");
    if (in->line_spacing_in > (d ? 420 : 600))
        return frame_fail_number(FRAME_OUTSIDE_SCOPE, "line_spacing_in", in->line_spacing_in,
                                 d ? "0..420 in (35 ft)" : "0..600 in (50 ft)");
    if (in->veneer == FRAME_NOT_GIVEN_INT)
        return frame_code_bracing_needs("veneer", "none, limited, above", "for earthquakes: stone or masonry veneer");
    if (d && (in->veneer == FRAME_CODE_VENEER_ABOVE || in->method == FRAME_CODE_BRACING_BV_WSP))
        return frame_fail(FRAME_NO_VALUE, "veneer", frame_word_text("code_veneer", in->veneer), "none, limited",
                          "veneer: table R602.10.6.5.4 (method BV-WSP, veneer above the first story in D0 to D2) is "
                          "not known here; townhouses are designed");
    if (d && in->veneer == FRAME_CODE_VENEER_LIMITED &&
        (in->stories > 2 || in->townhouse == 1 ||
         !(frame_code_factor_of(FRAME_CODE_VENEER, 3, in->method, FRAME_CODE_2018) > 0)))
        return frame_fail(FRAME_OUTSIDE_SCOPE, "veneer", "limited", "none",
                          "veneer: limited brick above the first story is for detached dwellings of up to two "
                          "stories, braced by WSP or CS-WSP (R602.10.6.5.3)");
    if (in->cripple && in->method != FRAME_CODE_BRACING_WSP && in->method != FRAME_CODE_BRACING_CS_WSP)
        return frame_fail(FRAME_REFUSED, "method", frame_word_text("code_bracing_method", in->method), "WSP, CS-WSP",
                          "method: cripple walls are braced by WSP or CS-WSP here (R602.10.10.1)");
    return FRAME_OK;
}

static double veneer_factor(const frame_code_bracing_in *in) {
    const int top = in->story == in->stories;
    if (in->veneer == FRAME_CODE_VENEER_NONE) return 1;
    return frame_code_factor_of(FRAME_CODE_VENEER,
                                in->seismic > FRAME_CODE_SEISMIC_C ? 3
                                : top                              ? 1
                                                                   : 2,
                                in->method, frame_code_bracing_edition(in->edition));
}

/* The row of table R602.10.3(3). */
static frame_status seismic_row(const frame_code_bracing_in *in, const frame_code_bracing_seismic_row **row) {
    const int above = in->stories - in->story, d2 = in->seismic == FRAME_CODE_SEISMIC_D2;
    const int block = in->cripple && d2 ? CRIPPLE_BLOCK : above + 1;
    if (d2 && in->stories == 3)
        return frame_fail(FRAME_OUTSIDE_SCOPE, "stories", "3", "1, 2",
                          "stories: in D2 dwellings of more than two stories are designed (table R602.10.3(3))");
    const int at =
        frame_code_bracing_seismic_at[in->seismic - FRAME_CODE_SEISMIC_C + 1][block][seismic_group(in->method)];
    *row = &frame_code_bracing_seismic_table[at - 1];
    if ((*row)->l10 >= 0) return FRAME_OK;
    return frame_fail(FRAME_REFUSED, "method", frame_word_text("code_bracing_method", in->method), "WSP, CS-WSP, ...",
                      "method: not permitted in this story and category (table R602.10.3(3))");
}

frame_status frame_code_bracing_by_earthquake(const frame_code_bracing_in *in, frame_code_bracing_out *out,
                                              frame_working *w) {
    const frame_code_columns along = {"R602.10.3(3)", "line_length_in", "in", lengths, 5, 1};
    const frame_code_bracing_seismic_row *row;
    const int d = in->seismic > FRAME_CODE_SEISMIC_C, top = in->story == in->stories;
    int place, shorter;
    double t;
    frame_status status = check_seismic(in);
    if (!status) status = seismic_row(in, &row);
    if (!status) status = frame_code_between(&along, in->line_length_in, &place, &t, &shorter);
    if (status) return status;
    const int16_t cells[] = {row->l10, row->l20, row->l30, row->l40, row->l50, row->l50};
    if (t > 0) FRAME_CODE_WARN(out, BETWEEN);
    FRAME_TABLE(w, L_5, cells[place] * 1.2, "in", "bracing for earthquakes, shorter line", row->source);
    FRAME_TABLE(w, L_6, cells[place + 1] * 1.2, "in", "bracing for earthquakes, longer line", row->source);
    FRAME_GIVEN(w, t_line, t, "", "part of the way between the lines");
    FRAME_TABLE(w, F_story, frame_code_factor_up_to(FRAME_CODE_HEIGHT_SEISMIC, 1, in->wall_height_in / 12), "",
                "factor for the height of the story", seismic_factors);
    FRAME_TABLE(w, F_spacing, frame_code_factor_up_to(FRAME_CODE_SPACING_SEISMIC, 1 + d, in->line_spacing_in / 12), "",
                "factor for the distance between lines", seismic_factors);
    FRAME_TABLE(w, F_wall, frame_code_factor_up_to(FRAME_CODE_WALL_LOAD, 1, in->wall_dead_psf < 8 ? 8 : 15), "",
                "factor for the weight of the walls", seismic_factors);
    FRAME_TABLE(w, F_roof, frame_code_factor_up_to(FRAME_CODE_ROOF_LOAD, top ? 1 : 2, in->roof_dead_psf), "",
                "factor for the weight of the roof", seismic_factors);
    FRAME_TABLE(w, F_veneer, veneer_factor(in), "", "factor for veneer", seismic_factors);
    FRAME_TABLE(w, F_finish,
                frame_code_bracing_finish(in, FRAME_CODE_NO_GYPSUM_SEISMIC, FRAME_CODE_NO_BLOCKING_SEISMIC), "",
                "factors for gypsum board and blocking", seismic_factors);
    FRAME_TABLE(w, F_below, in->cripple && in->seismic != FRAME_CODE_SEISMIC_D2 ? 1.15 : 1, "",
                "factor for a cripple wall", "IRC R602.10.10");
    FRAME_STEP(w, F_seismic, F_story * F_spacing * F_wall * F_roof * F_veneer * F_finish * F_below, "",
               "factors together", seismic_factors);
    FRAME_STEP(w, L_seismic, (L_5 + t_line * (L_6 - L_5)) * F_seismic, "in", "bracing by earthquakes", seismic_factors);
    out->table_seismic_in = L_5 + t * (L_6 - L_5);
    out->seismic_factor = F_seismic;
    out->seismic_length_in = L_seismic;
    if (L_seismic > out->wind_length_in) out->source = row->source;
    return FRAME_OK;
}
