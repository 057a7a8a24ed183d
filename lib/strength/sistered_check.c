/* Unlike pieces side by side: they bend alike, so that each carries load by its stiffness; each share is a beam_check.
 */
#include "base/answer.h"
#include "base/error.h"
#include "strength/member.h"
#include "strength/one_span.h"
#include "strength_facts.h"
#include "working/calculation.h"

#include "working/plain_math.h"

enum { PIECES = 8, LIST_PIECES = 0 };

typedef struct sistering {
    frame_sister_piece piece[PIECES];
    double stiffness[PIECES]; /* E'I of all alike */
    double sum;
} sistering;

static int is_given(double value) {
    return value != FRAME_NOT_GIVEN;
}

/* What a piece is checked as, under a share of the loads; all alike together. */
static void set_check(const frame_sistered_check_in *in, const frame_sister_piece *p, double share,
                      frame_beam_check_in *check) {
    frame_beam_check_in_init(check);
    check->size = p->size, check->species = p->species, check->grade = p->grade, check->plies = p->count;
    check->width_in = p->width_in, check->depth_in = p->depth_in;
    check->fb_psi = p->fb_psi, check->fv_psi = p->fv_psi, check->fc_perp_psi = p->fc_perp_psi, check->e_psi = p->e_psi;
    check->compression_edge = FRAME_EDGE_HELD;
    check->service = in->service, check->incised = in->incised, check->live_duration = in->live_duration;
    check->method = in->method, check->load_edition = in->load_edition;
    check->span_in = in->span_in, check->bearing_in = in->bearing_in;
    check->dead_plf = in->dead_plf * share, check->live_plf = in->live_plf * share;
    check->roof_live_plf = in->roof_live_plf * share, check->snow_plf = in->snow_plf * share;
    check->deflection_limit = in->deflection_limit, check->total_deflection_limit = in->total_deflection_limit;
    check->creep_factor = in->creep_factor;
}

/* A failure of a piece's own field gets its place in the list before its name. */
static frame_status within_piece(frame_status status, size_t place) {
    if (status == FRAME_NO_MEMORY || !frame_field_find(&frame_sister_piece_facts, frame_error_field())) return status;
    return frame_fail_within("pieces[%zu].", place);
}

static frame_status find_stiffness(const frame_sistered_check_in *in, sistering *s) {
    s->sum = 0;
    for (size_t i = 0; i < in->piece_count; i++) {
        frame_beam_check_in check;
        frame_beam_check_out found;
        frame_sister_piece_item(in->pieces, i, &s->piece[i]);
        set_check(in, &s->piece[i], 1, &check);
        const frame_status status = frame_beam_check(&check, &found, NULL);
        if (status) return within_piece(status, i);
        s->stiffness[i] = found.e_adjusted_psi * found.inertia_in4;
        s->sum += s->stiffness[i];
    }
    return FRAME_OK;
}

static double record_share(const sistering *s, size_t i, frame_working *record) {
    FRAME_HEADING(record, "Share of the next piece");
    FRAME_TABLE(record, EI_i, s->stiffness[i], "lb-in2", "stiffness of the piece, E'I", "NDS 2018 table 4.3.1");
    FRAME_TABLE(record, EI_sum, s->sum, "lb-in2", "stiffness of all pieces", "all bend alike");
    FRAME_STEP(record, k_i, EI_i / EI_sum, "", "its part of the load", "elastic theory of beams");
    return k_i;
}

static void give_piece(const frame_sister_piece *p, double share, const frame_beam_check_out *found,
                       frame_sistered_check_piece *given) {
    given->size = p->size, given->count = p->count;
    given->governs = found->governs, given->passes = found->passes;
    given->share = share;
    given->ratio = found->ratio, given->bending_ratio = found->bending_ratio, given->shear_ratio = found->shear_ratio;
    given->bearing_ratio = found->bearing_ratio, given->deflection_ratio = found->deflection_ratio;
}

static frame_status check_piece(const frame_sistered_check_in *in, const sistering *s, size_t i, frame_answer *answer,
                                frame_sistered_check_out *out, frame_working *record) {
    frame_beam_check_in check;
    frame_beam_check_out found;
    const double share = record_share(s, i, record);
    set_check(in, &s->piece[i], share, &check);
    if (record) FRAME_ENTER(record);
    const frame_status status = frame_beam_check(&check, &found, record);
    if (record) FRAME_LEAVE(record);
    if (status) return within_piece(status, i);
    frame_sistered_check_piece *given = frame_answer_add(answer, LIST_PIECES);
    if (!given) return FRAME_NO_MEMORY;
    give_piece(&s->piece[i], share, &found, given);
    given->share_plf = found.moment_lb_in * 8 / (in->span_in * in->span_in) * 12; /* M = w L^2 / 8 */
    if (found.known > out->known) out->known = found.known;
    out->deflection_live_in = found.deflection_live_in, out->deflection_total_in = found.deflection_total_in;
    if (is_given(out->ratio) && found.ratio <= out->ratio) return FRAME_OK;
    out->ratio = found.ratio, out->governs = found.governs, out->weakest = (int32_t)i + 1;
    return FRAME_OK;
}

static void remark(const frame_sistered_check_in *in, const sistering *s, frame_sistered_check_out *out) {
    out->passes = frame_holds(out->ratio);
    out->stiffness_lb_in2 = s->sum;
    out->cautions = FRAME_BIT(FRAME_SISTER_CAUTION_FULL) | FRAME_BIT(FRAME_SISTER_CAUTION_SAG);
    for (size_t i = 0; i < in->piece_count; i++)
        out->cautions |=
            FRAME_BIT(is_given(s->piece[i].fb_psi) ? FRAME_SISTER_CAUTION_USER_VALUES : FRAME_SISTER_CAUTION_STAMP);
    if (out->known == FRAME_KNOWN_MEMORY) out->cautions |= FRAME_BIT(FRAME_SISTER_CAUTION_MEMORY);
    if (in->snow_plf > 0 && in->load_edition == FRAME_LOADS_ASCE_7_16)
        out->cautions |= FRAME_BIT(FRAME_SISTER_CAUTION_SNOW_BASIS);
    out->not_checked = FRAME_BIT(FRAME_SISTER_UNCHECKED_FASTENERS) | FRAME_BIT(FRAME_SISTER_UNCHECKED_LOCAL) |
                       FRAME_BIT(FRAME_SISTER_UNCHECKED_CUTS) | FRAME_BIT(FRAME_SISTER_UNCHECKED_SUPPORTS) |
                       FRAME_BIT(FRAME_SISTER_UNCHECKED_EDGE);
}

static frame_status solve(const frame_sistered_check_in *in, frame_answer *answer, frame_sistered_check_out *out,
                          frame_working *record) {
    sistering s;
    frame_status status = find_stiffness(in, &s);
    out->known = FRAME_KNOWN_READ;
    for (size_t i = 0; i < in->piece_count && !status; i++) status = check_piece(in, &s, i, answer, out, record);
    if (!status) remark(in, &s, out);
    return status;
}
FRAME_IMPLEMENT_ANSWER(sistered_check, solve);
