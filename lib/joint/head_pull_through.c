/* What pulls a round head through the member under it. */
#include <math.h>
#include <string.h>

#include "joint/bearing.h"
#include "joint/fastening.h"
#include "joint/lateral_factors.h"
#include "joint_facts.h"
#include "material/edition.h"
#include "table_nail_heads.h"
#include "working/calculation.h"

static const frame_nail_heads_row *row_of(frame_dowel_kind kind, const frame_fastener *fastener) {
    const char *word = frame_dowel_word(kind);
    for (int i = 0; i < frame_nail_heads_rows; i++) {
        const frame_nail_heads_row *row = &frame_nail_heads_table[i];
        if (!strcmp(row->kind, word) && fabs(row->diameter_in - fastener->nominal_in) < 1e-6) return row;
    }
    return NULL;
}

frame_status frame_head_diameter(frame_dowel_kind kind, const char *size, double given_in, double *head_in,
                                 frame_known *known, frame_working *w) {
    if (given_in != FRAME_NOT_GIVEN) {
        FRAME_GIVEN(w, D_H, given_in, "in", "diameter of the head");
        *head_in = D_H;
        *known = FRAME_KNOWN_USER;
        return FRAME_OK;
    }
    frame_fastener fastener;
    const int asked = kind != FRAME_NOT_GIVEN_INT && size;
    const frame_status status = asked ? frame_fastener_find(kind, size, FRAME_NOT_GIVEN, &fastener) : FRAME_OK;
    if (status) return status;
    const frame_nail_heads_row *row = asked ? row_of(kind, &fastener) : NULL;
    if (!row)
        return frame_fail(FRAME_REQUIRED, "head_diameter_in", "", "a diameter in inches, or kind and size of a nail",
                          "head_diameter_in: not given, and no table has it for this fastener");
    FRAME_TABLE(w, D_H, row->head_in, "in", "diameter of the head", row->source);
    *head_in = D_H;
    *known = row->known;
    return FRAME_OK;
}

static double reference(double D_H, double G, double t_ns, frame_working *w) {
    if (t_ns <= 2.5 * D_H) {
        FRAME_CASE(w, "t_ns <= 2.5 * D_H", "thin under the head", "NDS 2018 12.2.5.1, from memory");
        FRAME_STEP(w, W_H, 690 * FRAME_PI * D_H * pow(G, 2) * t_ns, "lb", "head pull-through value",
                   "NDS 2018 equation 12.2-6a, from memory");
        return W_H;
    }
    FRAME_CASE(w, "t_ns > 2.5 * D_H", "thick under the head", "NDS 2018 12.2.5.1, from memory");
    FRAME_STEP(w, W_H, 1725 * FRAME_PI * pow(D_H, 2) * pow(G, 2), "lb", "head pull-through value",
               "NDS 2018 equation 12.2-6b, from memory");
    return W_H;
}

static frame_status adjust(const frame_head_pull_through_in *in, frame_head_pull_through_out *out, frame_working *w) {
    frame_method_factors factors = {1, 1, 1};
    const frame_status status =
        frame_method_factors_of(in->method, in->load_duration_factor, in->time_effect_factor, &factors);
    if (status) return status;
    const double W_H = out->w_lb;
    out->wet_factor = in->service == FRAME_SERVICE_WET ? 0.7 : 1;
    out->temperature_factor = frame_connection_temperature(in->temperature_f, in->service == FRAME_SERVICE_WET);
    FRAME_TABLE(w, C_M, out->wet_factor, "", "wet service factor", "NDS 2018 table 11.3.3, from memory");
    FRAME_TABLE(w, C_t, out->temperature_factor, "", "temperature factor", "NDS 2018 table 11.3.4");
    FRAME_GIVEN(w, C_D, in->load_duration_factor, "", "load duration factor, NDS 2.3.2; 1 in LRFD");
    FRAME_TABLE(w, K_LRFD, factors.format * factors.resistance * factors.time_effect, "",
                "K_F phi lambda of LRFD, 1 in ASD", "NDS 2018 tables N1 to N3, from memory");
    FRAME_STEP(w, W_H_prime, W_H * C_D * C_M * C_t * K_LRFD, "lb", "adjusted value of the head",
               "NDS 2018 table 11.3.1");
    out->adjusted_lb = W_H_prime;
    return FRAME_OK;
}

static frame_status compute(const frame_head_pull_through_in *in, frame_head_pull_through_out *out, frame_working *w) {
    double D_H, gravity;
    frame_known head_known, known;
    if (in->edition == FRAME_NDS_2015)
        return frame_fail(
            FRAME_OUTSIDE_SCOPE, "edition", "NDS 2015", "NDS 2018 or NDS 2024",
            "edition: NDS 2015 has no value of heads pulled through (from memory: it came with NDS 2018); "
            "use that of a test report");
    frame_record_edition(in->edition, w);
    frame_status status = frame_head_diameter(in->kind, in->size, in->head_diameter_in, &D_H, &head_known, w);
    if (!status)
        status = frame_joint_gravity("side_", in->side_species, in->side_specific_gravity, &gravity, &known, w);
    if (status) return status;
    FRAME_GIVEN(w, t_ns, in->side_thickness_in, "in", "wood under the head");
    out->head_diameter_in = D_H;
    out->w_lb = reference(D_H, gravity, t_ns, w);
    status = adjust(in, out, w);
    if (status) return status;
    out->known = FRAME_KNOWN_MEMORY;
    out->cautions = FRAME_BIT(FRAME_FASTENING_CAUTION_MEMORY);
    if (in->method == FRAME_METHOD_LRFD) out->cautions |= FRAME_BIT(FRAME_FASTENING_CAUTION_LRFD);
    if (in->head_diameter_in != FRAME_NOT_GIVEN)
        out->assumed &= ~FRAME_BIT(FRAME_ASSUMED_HEAD_PULL_THROUGH_IN_HEAD_DIAMETER_IN);
    out->assumed &= ~FRAME_BIT(FRAME_ASSUMED_HEAD_PULL_THROUGH_IN_TIME_EFFECT_FACTOR);
    out->not_checked = FRAME_BIT(FRAME_FASTENING_UNCHECKED_METAL) | FRAME_BIT(FRAME_FASTENING_UNCHECKED_OTHER_WAY) |
                       FRAME_BIT(FRAME_FASTENING_UNCHECKED_CORROSION);
    return FRAME_OK;
}

FRAME_IMPLEMENT(head_pull_through, compute);
