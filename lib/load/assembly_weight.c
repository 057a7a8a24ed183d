/* What usual roofs, floors and walls weigh. */
#include <math.h>
#include <stdio.h>

#include "load_facts.h"
#include "material/lumber.h"
#include "table_assembly_weights.h"
#include "working/calculation.h"

/* Water in the wood that its weight is taken with, percent: 19 is the most of dry service (NDS 4.1.4); 30 is about
 * where the fibres are full (from memory, USDA Wood Handbook). */
enum { MOISTURE_DRY = 19, MOISTURE_WET = 30 };

static int is_given(double value) {
    return value != FRAME_NOT_GIVEN;
}

static int is_whole(frame_assembly_material material) {
    return material <= FRAME_ASSEMBLY_PARTITION;
}

static frame_status lacks(const char *field, const char *valid) {
    return frame_fail(FRAME_REQUIRED, field, "", valid, "%s: not given; valid is %s", field, valid);
}

static frame_status conflict(const char *field, const char *given, const char *valid) {
    return frame_fail(FRAME_CONFLICT, field, given, valid, "%s: %s; valid is %s", field, given, valid);
}

static frame_status check_thickness(size_t i, const frame_assembly_layer *layer,
                                    const frame_assembly_weights_row *row) {
    char field[64];
    snprintf(field, sizeof field, "layers[%zu].thickness_in", i);
    if (is_given(row->psf_per_in) && !is_given(layer->thickness_in))
        return lacks(field, "the thickness, for what weighs by it");
    if (!is_given(row->psf_per_in) && is_given(layer->thickness_in))
        return conflict(field, "given for what has one weight", "none");
    return FRAME_OK;
}

/* The weight of a layer, recorded. */
static double weigh(const frame_assembly_layer *layer, const frame_assembly_weights_row *row, frame_working *record) {
    FRAME_GIVEN(record, n, layer->count, "", "how many");
    if (!is_given(row->psf_per_in)) {
        FRAME_TABLE(record, q, row->psf, "psf", row->material, row->source);
        FRAME_STEP(record, g_i, n * q, "psf", "weight", "");
        return g_i;
    }
    FRAME_TABLE(record, q, row->psf_per_in, "psf/in", row->material, row->source);
    FRAME_GIVEN(record, t, layer->thickness_in, "in", "thickness");
    FRAME_STEP(record, g_i, n * q * t, "psf", "weight", "");
    return g_i;
}

static frame_status add_layer(const frame_assembly_weight_in *in, size_t i, frame_answer *answer, double *sum,
                              frame_assembly_weight_out *out, frame_working *record) {
    frame_assembly_layer layer;
    frame_assembly_layer_item(in->layers, i, &layer);
    const frame_assembly_weights_row *row = &frame_assembly_weights_table[layer.material - 1];
    frame_status status = check_thickness(i, &layer, row);
    if (!status && is_whole(layer.material) && in->size != FRAME_NOT_GIVEN_INT)
        status = conflict("size", "given with a whole assembly, which has its framing", "single layers, or no size");
    if (status) return status;
    FRAME_ENTER(record);
    const double weight = weigh(&layer, row, record);
    FRAME_LEAVE(record);
    frame_assembly_weight_layer *item = frame_answer_add(answer, 0);
    if (!item) return FRAME_NO_MEMORY;
    item->material = layer.material;
    item->count = layer.count;
    item->weight_psf = weight;
    item->source = row->source;
    if (row->known > out->known) out->known = row->known;
    *sum += weight;
    return FRAME_OK;
}

static frame_status find_gravity(const frame_assembly_weight_in *in, double *gravity, frame_known *known) {
    *gravity = in->specific_gravity;
    if (is_given(*gravity))
        return in->species == FRAME_NOT_GIVEN_INT
                   ? FRAME_OK
                   : conflict("specific_gravity", "given with species", "one of the two");
    if (in->species == FRAME_NOT_GIVEN_INT) return lacks("species", "the species of the framing, or specific_gravity");
    frame_known of_species = FRAME_KNOWN_READ;
    *gravity = frame_species_gravity(in->species, &of_species);
    if (of_species > *known) *known = of_species;
    if (!is_given(*gravity))
        return frame_fail(FRAME_NO_VALUE, "species", frame_species_name(in->species), "specific_gravity instead",
                          "species: the table has no specific gravity for %s; valid is specific_gravity instead",
                          frame_species_name(in->species));
    return FRAME_OK;
}

static frame_status check_framing(const frame_assembly_weight_in *in) {
    const int others = in->species != FRAME_NOT_GIVEN_INT || is_given(in->specific_gravity) || is_given(in->spacing_in);
    if (in->size == FRAME_NOT_GIVEN_INT)
        return others ? lacks("size", "the size of the framing, with its other facts") : FRAME_OK;
    return is_given(in->spacing_in) ? FRAME_OK : lacks("spacing_in", "the spacing of the framing, with its size");
}

static frame_status weigh_framing(const frame_assembly_weight_in *in, double *weight, frame_known *known,
                                  frame_working *record) {
    double gravity, thickness, width;
    *weight = 0;
    frame_status status = check_framing(in);
    if (status || in->size == FRAME_NOT_GIVEN_INT) return status;
    if (!(status = find_gravity(in, &gravity, known))) status = frame_size_dressed(in->size, 0, &thickness, &width);
    if (status) return status;
    if (frame_size_known(in->size) > *known) *known = frame_size_known(in->size);
    FRAME_HEADING(record, "Framing");
    FRAME_TABLE(record, b, thickness, "in", "thickness of one member", "PS 20 dressed dry size");
    FRAME_TABLE(record, d, width, "in", "width of one member", "PS 20 dressed dry size");
    FRAME_GIVEN(record, n, in->plies, "", "members side by side");
    FRAME_GIVEN(record, s_c, in->spacing_in, "in", "centre to centre");
    FRAME_TABLE(record, G, gravity, "", "specific gravity",
                is_given(in->specific_gravity) ? "given" : "NDS 2018 table 12.3.3A");
    FRAME_GIVEN(record, m_c, in->service == FRAME_SERVICE_WET ? MOISTURE_WET : MOISTURE_DRY, "%", "water in the wood");
    FRAME_STEP(record, rho, 62.4 * (G / (1 + G * 0.009 * m_c)) * (1 + m_c / 100), "pcf", "weight of the wood",
               "NDS Supplement 3.1.3 (from memory)");
    FRAME_STEP(record, g_f, rho * n * b * d / 144 * 12 / s_c, "psf", "weight of the framing", "");
    *weight = g_f;
    return FRAME_OK;
}

static void sum_up(const frame_assembly_weight_in *in, double layers, double framing, frame_assembly_weight_out *out,
                   frame_working *record) {
    FRAME_HEADING(record, "In all");
    FRAME_TABLE(record, g_l, layers, "psf", "all layers together", "the sum of the layers");
    FRAME_TABLE(record, g_w, framing, "psf", "framing", "above; 0 where it is in a whole assembly");
    FRAME_STEP(record, g, g_l + g_w, "psf", "weight on a square foot of the assembly", "");
    FRAME_GIVEN(record, m, in->slope, "", "slope, rise over run");
    FRAME_STEP(record, g_p, g * sqrt(1 + pow(m, 2)), "psf", "weight on a square foot of plan", "geometry");
    out->weight_psf = g;
    out->plan_psf = g_p;
    out->framing_psf = framing;
    out->cautions = FRAME_BIT(FRAME_ASSEMBLY_CAUTION_USUAL) | FRAME_BIT(FRAME_ASSEMBLY_CAUTION_RELIEF);
    if (out->known == FRAME_KNOWN_MEMORY) out->cautions |= FRAME_BIT(FRAME_ASSEMBLY_CAUTION_MEMORY);
    out->not_checked = FRAME_BIT(FRAME_ASSEMBLY_UNCHECKED_OTHERS);
}

static frame_status solve(const frame_assembly_weight_in *in, frame_answer *answer, frame_assembly_weight_out *out,
                          frame_working *record) {
    double layers = 0, framing;
    out->known = FRAME_KNOWN_READ;
    FRAME_HEADING(record, "Layers");
    for (size_t i = 0; i < in->layer_count; i++) {
        const frame_status status = add_layer(in, i, answer, &layers, out, record);
        if (status) return status;
    }
    frame_known known = out->known;
    const frame_status status = weigh_framing(in, &framing, &known, record);
    if (status) return status;
    if (framing > 0) known = FRAME_KNOWN_MEMORY; /* the formula of the wood's weight */
    out->known = known;
    sum_up(in, layers, framing, out, record);
    return FRAME_OK;
}
FRAME_IMPLEMENT_ANSWER(assembly_weight, solve);
