/* The panels of a braced wall line: what they count for, and whether they stand where they must. */
#include <math.h>
#include <stdio.h>

#include "base/error.h"
#include "code/bracing.h"
#include "code_facts.h"
#include "working/calculation.h"

static const double slack = 1e-6;

static frame_code_bracing_method method_of(const frame_code_wall_line_in *in, const frame_code_wall_panel *panel) {
    return panel->method == FRAME_NOT_GIVEN_INT ? in->method : panel->method;
}

/* Methods mixed along one line (R602.10.4.1). */
static frame_status mixed(const frame_code_wall_line_in *in, const frame_code_wall_panel *panel, int quake) {
    const frame_code_bracing_method a = in->method, b = method_of(in, panel);
    const unsigned sheathed = FRAME_CODE_CONTINUOUS & ~frame_code_method_bit(FRAME_CODE_BRACING_CS_SFB);
    const int a_sheathed = frame_code_is_method(a, sheathed), b_sheathed = frame_code_is_method(b, sheathed);
    if (a == b || (a_sheathed && b_sheathed)) return FRAME_OK;
    if (a_sheathed && frame_code_is_method(b, FRAME_CODE_HELD)) return FRAME_OK;
    if (!quake && in->seismic <= FRAME_CODE_SEISMIC_C && a != FRAME_CODE_BRACING_CS_SFB &&
        b != FRAME_CODE_BRACING_CS_SFB)
        return FRAME_OK;
    return frame_fail(FRAME_REFUSED, "method", frame_word_text("code_bracing_method", b),
                      frame_word_text("code_bracing_method", a),
                      "method: %s is not mixed with %s along a line in this category (R602.10.4.1)",
                      frame_word_text("code_bracing_method", b), frame_word_text("code_bracing_method", a));
}

/* What a panel shorter than 48 in counts for (table R602.10.5.2); 0 where it does not. */
static double partial(double height, double length) {
    const double at_42 = 36, at_36 = height <= 96 * (1 + 1e-9) ? 27 : -1;
    if (height > 108 * (1 + 1e-9) || length < 36 - slack || length >= 48) return 0;
    if (length >= 42) return at_42 + (length - 42) / 6 * (48 - at_42);
    return at_36 > 0 ? at_36 + (length - 36) / 6 * (at_42 - at_36) : 0;
}

static double in_full(const frame_code_wall_line_in *in, const frame_code_wall_panel *panel,
                      frame_code_bracing_method method) {
    switch (method) {
        case FRAME_CODE_BRACING_ABW:
        case FRAME_CODE_BRACING_PFH:
            return 48;
        case FRAME_CODE_BRACING_PFG:
            return 1.5 * panel->length_in;
        case FRAME_CODE_BRACING_CS_PF:
            return in->seismic > FRAME_CODE_SEISMIC_C ? panel->length_in : 1.5 * panel->length_in;
        case FRAME_CODE_BRACING_GB:
            return panel->both_sides ? panel->length_in : 0.5 * panel->length_in;
        default:
            return panel->length_in;
    }
}

static frame_status judge(const frame_code_wall_line_in *in, const frame_code_wall_panel *panel, int quake,
                          frame_code_wall_line_panel *judged, frame_code_wall_line_out *out) {
    const frame_code_bracing_method method = method_of(in, panel);
    int counts_too;
    double least;
    frame_status status = mixed(in, panel, quake);
    if (!status)
        status = frame_code_bracing_scope(in->seismic, in->townhouse, method, in->floors_above, 1, &counts_too);
    if (!status) status = frame_code_least_panel(in, panel, method, &least, &out->source);
    if (status) return status;
    judged->start_in = panel->start_in;
    judged->length_in = panel->length_in;
    judged->method = method;
    judged->least_in = least < 0 ? FRAME_NOT_GIVEN : least;
    judged->counts_in = 0;
    judged->counts = least < 0 ? FRAME_CODE_PANEL_NOT_ALLOWED : FRAME_CODE_PANEL_TOO_SHORT;
    if (least < 0) return FRAME_OK;
    if (panel->length_in >= least - slack) {
        judged->counts = FRAME_CODE_PANEL_COUNTS;
        judged->counts_in = in_full(in, panel, method);
    } else if (frame_code_is_method(method, FRAME_CODE_SIX_METHODS) && in->seismic <= FRAME_CODE_SEISMIC_C) {
        judged->counts_in = partial(in->wall_height_in, panel->length_in);
        if (judged->counts_in > 0) judged->counts = FRAME_CODE_PANEL_IN_PART;
    }
    return FRAME_OK;
}

/* The panels, defaults and all, from left to right, and the place each had in the question. */
typedef struct ordered {
    frame_code_wall_panel panels[100];
    unsigned char place[100];
} ordered;

static void in_order(const frame_code_wall_line_in *in, ordered *all) {
    for (size_t i = 0; i < in->panel_count; i++) {
        frame_code_wall_panel panel;
        size_t at = i;
        frame_code_wall_panel_item(in->panels, i, &panel);
        for (; at && all->panels[at - 1].start_in > panel.start_in; at--) {
            all->panels[at] = all->panels[at - 1];
            all->place[at] = all->place[at - 1];
        }
        all->panels[at] = panel;
        all->place[at] = (unsigned char)i;
    }
}

static frame_status apart(const frame_code_wall_line_in *in, const ordered *all) {
    for (size_t k = 0; k < in->panel_count; k++) {
        const frame_code_wall_panel *panel = &all->panels[k];
        const int last = k + 1 == in->panel_count;
        const double end = panel->start_in + panel->length_in, most = last ? in->line_length_in : panel[1].start_in;
        if (end <= most + 1e-3) continue;
        frame_fail(FRAME_IMPOSSIBLE, "length_in", frame_code_number(panel->length_in).text,
                   "panels within the line that do not overlap",
                   "length_in: the panel from %s to %s in reaches past %s in: %s",
                   frame_code_number(panel->start_in).text, frame_code_number(end).text, frame_code_number(most).text,
                   last ? "the end of the line" : "into the next panel");
        return frame_fail_within("panels[%d].", (int)all->place[k]);
    }
    return FRAME_OK;
}

/* Sums up the panels that count, and the distances between them. */
static void sum(const frame_answer *answer, const frame_code_wall_line_in *in, frame_code_wall_line_out *out,
                double *longest) {
    double end = 0;
    *longest = 0;
    const frame_code_wall_line_panel *panels = answer->lists[0].items;
    for (size_t i = 0; i < answer->lists[0].count; i++) {
        const frame_code_wall_line_panel *panel = &panels[i];
        if (panel->counts > FRAME_CODE_PANEL_IN_PART) continue;
        const double gap = panel->start_in - end;
        if (!out->counted)
            out->end_gap_in = gap;
        else if (gap > out->gap_in)
            out->gap_in = gap;
        end = panel->start_in + panel->length_in;
        out->counted++;
        out->provided_in += panel->counts_in;
        *longest = fmax(*longest, panel->length_in);
    }
    if (in->line_length_in - end > out->end_gap_in || !out->counted) out->end_gap_in = in->line_length_in - end;
}

/* In D0 to D2 panels stand at the very ends but by two exceptions of R602.10.2.2.1: wood panels and continuous
 * sheathing whose ends are held, and, from 2021 on, panels with hold-downs of their own. */
static int off_the_ends(const frame_code_wall_line_in *in) {
    const unsigned panels = FRAME_CODE_CONTINUOUS | frame_code_method_bit(FRAME_CODE_BRACING_WSP) |
                            frame_code_method_bit(FRAME_CODE_BRACING_BV_WSP);
    const unsigned held = frame_code_method_bit(FRAME_CODE_BRACING_PFH) | frame_code_method_bit(FRAME_CODE_BRACING_ABW);
    return (in->ends_held && frame_code_is_method(in->method, panels)) ||
           (in->edition >= FRAME_CODE_2021 && frame_code_is_method(in->method, held));
}

static void limits(const frame_code_wall_line_in *in, int quake, frame_code_wall_line_out *out) {
    const int d = in->seismic > FRAME_CODE_SEISMIC_C;
    out->gap_limit_in = in->cripple && quake && in->seismic != FRAME_CODE_SEISMIC_D2 ? 168 : 240;
    out->end_limit_in = d && !off_the_ends(in) ? 0 : 120;
}

static void conclude(const frame_code_wall_line_in *in, double longest, frame_code_wall_line_out *out) {
    out->length_holds = out->provided_in >= in->required_in - slack;
    out->ends_hold = out->counted && out->end_gap_in <= out->end_limit_in + 1e-3;
    out->gaps_hold = out->gap_in <= out->gap_limit_in + 1e-3;
    out->count_holds =
        out->counted >= 2 || (out->counted == 1 && in->line_length_in <= 192 + 1e-3 && longest >= 48 - slack);
    out->holds = out->length_holds && out->ends_hold && out->gaps_hold && out->count_holds;
    out->length_ratio = FRAME_NOT_GIVEN;
    out->reason = out->holds           ? ""
                  : !out->counted      ? "no panel is long enough to count"
                  : !out->length_holds ? "the panels do not come to the length needed"
                  : !out->ends_hold    ? "a panel begins too far from an end of the line"
                  : !out->gaps_hold    ? "two panels are too far apart"
                                       : "there are too few panels: two, or one of 48 in in a line up to 16 ft";
}

static frame_status check(const frame_code_wall_line_in *in, int *quake) {
    if (in->edition > FRAME_CODE_2024) return frame_code_no_edition("R602.10.5", in->edition, 0xf);
    if (in->wall_height_in > 144)
        return frame_fail_number(FRAME_OUTSIDE_SCOPE, "wall_height_in", in->wall_height_in, "0..144 in (12 ft)");
    return frame_code_bracing_scope(in->seismic, in->townhouse, in->method, in->floors_above, 1, quake);
}

static void say(const frame_code_wall_line_in *in, const frame_answer *answer, frame_code_wall_line_out *out) {
    FRAME_CODE_SAY(out, in->edition, "R602.10.5", out->source,
                   in->edition == FRAME_CODE_2015 ? "the table of 2015 was not seen: that of 2018 is taken" : "",
                   frame_code_bracing_known(in->edition));
    const frame_code_wall_line_panel *panels = answer->lists[0].items;
    for (size_t i = 0; i < answer->lists[0].count; i++) {
        const frame_code_bracing_method method = panels[i].method;
        if (frame_code_is_method(method, FRAME_CODE_CONTINUOUS)) FRAME_CODE_WARN(out, RETURNS);
        if (frame_code_is_method(method, FRAME_CODE_HELD) || method == FRAME_CODE_BRACING_CS_PF ||
            method == FRAME_CODE_BRACING_BV_WSP)
            FRAME_CODE_WARN(out, OWN_DETAIL);
    }
    FRAME_CODE_UNCHECKED(out, UPLIFT);
    FRAME_CODE_UNCHECKED(out, CONNECTIONS);
}

static frame_status solve(const frame_code_wall_line_in *in, frame_answer *answer, frame_code_wall_line_out *out,
                          frame_working *w) {
    ordered all;
    int quake;
    double longest;
    frame_status status = check(in, &quake);
    if (status) return status;
    in_order(in, &all);
    status = apart(in, &all);
    if (status) return status;
    out->counted = 0;
    out->provided_in = out->gap_in = out->end_gap_in = 0;
    FRAME_HEADING(w, "Panels of a braced wall line");
    for (size_t k = 0; k < in->panel_count; k++) {
        frame_code_wall_line_panel *judged = frame_answer_add(answer, 0);
        if (!judged) return FRAME_NO_MEMORY;
        if (judge(in, &all.panels[k], quake, judged, out)) return frame_fail_within("panels[%d].", (int)all.place[k]);
        FRAME_CASE(w, frame_word_text("code_bracing_method", judged->method),
                   frame_word_text("code_panel_counts", judged->counts), "IRC Table R602.10.5");
    }
    sum(answer, in, out, &longest);
    limits(in, quake, out);
    conclude(in, longest, out);
    FRAME_GIVEN(w, L_required, in->required_in, "in", "length of bracing needed");
    FRAME_GIVEN(w, L_provided, out->provided_in, "in", "length that the panels count for");
    if (L_provided > 0) {
        FRAME_STEP(w, r_needed, L_required / L_provided, "", "length needed over length provided", "IRC R602.10.3");
        out->length_ratio = r_needed;
    }
    FRAME_CASE(w, out->holds ? "all holds" : out->reason, out->holds ? "the line is braced" : "the line is not braced",
               "IRC R602.10");
    say(in, answer, out);
    frame_code_record_known(out->known, out->note, w);
    return FRAME_OK;
}

FRAME_IMPLEMENT_ANSWER(code_wall_line, solve);
