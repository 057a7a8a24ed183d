/* Rules of thumb beside what is counted. */
#include <math.h>

#include "base/error.h"
#include "table_thumb_rules.h"
#include "takeoff/thumb_nails.h"
#include "takeoff_facts.h"
#include "working/calculation.h"

enum { RULES = 0, NAILS = 1 };
enum { ROUND_UP = 1, ROUND_NEAREST = 2 };
/* A whole number may come out of a division a little above itself. */
static const double NEARLY = 1e-9;

static double whole_or_none(int32_t value) {
    return value == FRAME_NOT_GIVEN_INT ? FRAME_NOT_GIVEN : value;
}

/* What a rule takes, in the unit of its factor: feet, square feet, pieces; in the order of the table's words. */
static double taken(const frame_rules_of_thumb_in *in, int takes) {
    const double measures[] = {in->length_in == FRAME_NOT_GIVEN ? FRAME_NOT_GIVEN : in->length_in / 12,
                               whole_or_none(in->corners),
                               in->area_in2 == FRAME_NOT_GIVEN ? FRAME_NOT_GIVEN : in->area_in2 / 144,
                               in->board_feet,
                               whole_or_none(in->pieces),
                               whole_or_none(in->nails)};
    return measures[takes - 1];
}

static double quantity_of(const frame_thumb_rules_row *row, double measure, double penny) {
    const double quantity = row->factor * measure * (row->by_penny > 0 ? penny : 1) + row->plus;
    if (row->round == ROUND_UP) return ceil(quantity - NEARLY);
    if (row->round == ROUND_NEAREST) return floor(quantity + 0.5 + NEARLY);
    return quantity;
}

static frame_status add_rule(const frame_thumb_rules_row *row, double quantity, frame_answer *answer,
                             frame_working *w) {
    static const char *const topics[] = {"studs",    "joists", "plates",   "sheets", "boards",
                                         "flooring", "siding", "shingles", "waste",  "nails"};
    frame_rules_of_thumb_rule *rule = frame_answer_add(answer, RULES);
    if (!rule) return FRAME_NO_MEMORY;
    rule->topic = topics[row->topic - 1];
    rule->rule = row->rule;
    rule->unit = row->unit;
    rule->source = row->source;
    rule->quantity = quantity;
    rule->known = row->known;
    if (w) FRAME_CASE(w, row->rule, rule->topic, row->source);
    return FRAME_OK;
}

static frame_status list_rules(const frame_rules_of_thumb_in *in, frame_answer *answer, frame_rules_of_thumb_out *out,
                               frame_working *w) {
    frame_status status = FRAME_OK;
    for (size_t r = 0; !status && r < frame_thumb_rules_rows; r++) {
        const frame_thumb_rules_row *row = &frame_thumb_rules_table[r];
        const double measure = taken(in, row->takes);
        if (measure == FRAME_NOT_GIVEN || (row->by_penny > 0 && in->penny == FRAME_NOT_GIVEN)) continue;
        if (row->spacing_in != FRAME_NOT_GIVEN && fabs(row->spacing_in - in->spacing_in) > NEARLY) continue;
        status = add_rule(row, quantity_of(row, measure, in->penny), answer, w);
        if (row->known > out->known) out->known = row->known;
    }
    return status;
}

/* A member's near side stands every spacing while there is room before the last one, which stands at the end. */
static double count_on_centres(double length, double spacing, double thickness) {
    return length <= thickness ? 1 : ceil((length - thickness) / spacing - NEARLY) + 1;
}

static void count(const frame_rules_of_thumb_in *in, frame_rules_of_thumb_out *out, frame_working *w) {
    if (in->length_in != FRAME_NOT_GIVEN)
        out->counted_studs = count_on_centres(in->length_in, in->spacing_in, in->thickness_in);
    if (in->area_in2 != FRAME_NOT_GIVEN) out->counted_sheets = ceil(in->area_in2 / in->sheet_in2 - NEARLY);
    if (in->nails == FRAME_NOT_GIVEN_INT || in->nail_length_in == FRAME_NOT_GIVEN ||
        in->nail_diameter_in == FRAME_NOT_GIVEN)
        return;
    FRAME_GIVEN(w, n, (double)in->nails, "", "nails of the job");
    FRAME_GIVEN(w, l, in->nail_length_in, "in", "length of a nail");
    FRAME_GIVEN(w, d, in->nail_diameter_in, "in", "its diameter");
    FRAME_GIVEN(w, g, FRAME_THUMB_STEEL_LB_PER_IN3, "lb/in3", "weight of steel (EN 1991-1-1, table A.4, from memory)");
    FRAME_STEP(w, W, n * l * d * d * 3.14159265358979 / 4 * g, "lb", "pounds of nails, heads and points not counted",
               "geometry");
    out->counted_nail_lb = W;
    out->known = FRAME_KNOWN_MEMORY;
}

/* -- the nailing, size by size -- */

static frame_status add_nails(const frame_rules_of_thumb_in *in, size_t place, frame_answer *answer,
                              frame_rules_of_thumb_out *out) {
    frame_thumb_nailing of;
    frame_thumb_nailing_item(in->nailing, place, &of);
    frame_rules_of_thumb_nail *nails = frame_answer_add(answer, NAILS);
    if (!nails) return FRAME_NO_MEMORY;
    const frame_status status = frame_thumb_nails(&of, nails);
    if (status) return frame_fail_within("nailing[%zu].", place);
    nails->size = frame_answer_text(answer, of.size);
    out->nailing_lb += nails->nail_lb;
    out->nailing_wire_lb += nails->wire_lb;
    if (nails->known > out->known) out->known = nails->known;
    return FRAME_OK;
}

static frame_status weigh_nails(const frame_rules_of_thumb_in *in, frame_answer *answer, frame_rules_of_thumb_out *out,
                                frame_working *w) {
    frame_status status = FRAME_OK;
    if (!in->nailing_count) return FRAME_OK;
    out->nailing_lb = out->nailing_wire_lb = 0;
    for (size_t i = 0; !status && i < in->nailing_count; i++) status = add_nails(in, i, answer, out);
    if (status) return status;
    FRAME_GIVEN(w, W_pounds, out->nailing_lb, "lb", "pounds of the nailing, by how many of each go to a pound");
    FRAME_GIVEN(w, W_wire, out->nailing_wire_lb, "lb", "the same as wire");
    FRAME_STEP(w, apart, W_pounds - W_wire, "lb", "what the two are apart", "arithmetic");
    (void)apart;
    return FRAME_OK;
}

/* The nails of the nailing, when no number of nails is given. */
static int32_t nails_of(const frame_rules_of_thumb_in *in) {
    double sum = 0;
    if (in->nails != FRAME_NOT_GIVEN_INT || !in->nailing_count) return in->nails;
    for (size_t i = 0; i < in->nailing_count; i++) {
        frame_thumb_nailing of;
        frame_thumb_nailing_item(in->nailing, i, &of);
        sum += of.count;
    }
    return sum < INT32_MAX ? (int32_t)sum : INT32_MAX;
}

static frame_status solve(const frame_rules_of_thumb_in *given, frame_answer *answer, frame_rules_of_thumb_out *out,
                          frame_working *w) {
    frame_rules_of_thumb_in measures = *given;
    const frame_rules_of_thumb_in *in = &measures;
    measures.nails = nails_of(given);
    FRAME_HEADING(w, "Rules of thumb");
    out->known = FRAME_KNOWN_READ;
    out->cautions = FRAME_BIT(FRAME_THUMB_CAUTION_ESTIMATE);
    out->not_checked = FRAME_BIT(FRAME_THUMB_UNCHECKED_JOB);
    frame_status status = list_rules(in, answer, out, w);
    if (!status) count(in, out, w);
    return status ? status : weigh_nails(in, answer, out, w);
}

FRAME_IMPLEMENT_ANSWER(rules_of_thumb, solve);
