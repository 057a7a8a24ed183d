/* Unit shear of nailed panels, by the tables of the wind and seismic provisions. */
#include <math.h>
#include <string.h>

#include "joint/bearing.h"
#include "joint/nailing.h"
#include "joint_facts.h"
#include "table_sdpws_diaphragms.h"
#include "table_sdpws_gypsum.h"
#include "table_sdpws_walls.h"
#include "working/calculation.h"

/* What a row of either table has. */
typedef struct found {
    double seismic, wind, osb, plywood;
    const char *source;
    frame_known known;
} found;

static int same(double a, double b) {
    return fabs(a - b) < 1e-3;
}

static int of_sheathing(const frame_panel_shear_in *in, const char *sheathing, const char *nail, double panel_in) {
    return !strcmp(frame_panel_sheathing_words.table[in->sheathing - 1].word, sheathing) && !strcmp(in->nail, nail) &&
           same(in->panel_in, panel_in);
}

static int in_walls(const frame_panel_shear_in *in, found *row) {
    for (int i = 0; i < frame_sdpws_walls_rows; i++) {
        const frame_sdpws_walls_row *r = &frame_sdpws_walls_table[i];
        if (!of_sheathing(in, r->sheathing, r->nail, r->panel_in) || !same(r->spacing_in, in->edge_spacing_in))
            continue;
        *row = (found){r->seismic_plf, r->wind_plf, r->stiffness_osb, r->stiffness_plywood, r->source, r->known};
        return 1;
    }
    return 0;
}

static int in_diaphragms(const frame_panel_shear_in *in, found *row) {
    const int layout = in->blocked ? 0 : (in->long_edge_across ? 1 : 2);
    for (int i = 0; i < frame_sdpws_diaphragms_rows; i++) {
        const frame_sdpws_diaphragms_row *r = &frame_sdpws_diaphragms_table[i];
        if (!of_sheathing(in, r->sheathing, r->nail, r->panel_in) || !same(r->spacing_in, in->edge_spacing_in))
            continue;
        if (r->blocked != in->blocked || r->layout != layout || r->framing_in != in->framing_nominal_in) continue;
        *row = (found){r->seismic_plf, r->wind_plf, FRAME_NOT_GIVEN, FRAME_NOT_GIVEN, r->source, r->known};
        return 1;
    }
    return 0;
}

/* Gypsum has its own table: by the studs' centres and, with screws, those within the board. */
static int in_gypsum(const frame_panel_shear_in *in, found *row) {
    for (int i = 0; i < frame_sdpws_gypsum_rows; i++) {
        const frame_sdpws_gypsum_row *r = &frame_sdpws_gypsum_table[i];
        const int field = r->field_in == 0 || same(r->field_in, in->field_spacing_in);
        if (strcmp(in->nail, r->nail) || !same(in->panel_in, r->panel_in) || !field) continue;
        if (!same(r->edge_in, in->edge_spacing_in) || !same(r->studs_in, in->stud_spacing_in)) continue;
        if (r->blocked != in->blocked) continue;
        *row = (found){r->shear_plf, r->shear_plf, FRAME_NOT_GIVEN, FRAME_NOT_GIVEN, r->source, r->known};
        return 1;
    }
    return 0;
}

static frame_status find_gypsum(const frame_panel_shear_in *in, found *row) {
    if (in->use != FRAME_PANEL_USE_WALL)
        return frame_fail(FRAME_OUTSIDE_SCOPE, "sheathing", "gypsum wallboard", "wood panels in diaphragms",
                          "sheathing: gypsum wallboard has values here for walls only");
    if (in->edition == FRAME_SDPWS_2021)
        return frame_fail(FRAME_NO_VALUE, "edition", "2021", "2015",
                          "edition: the values of gypsum in the 2021 edition are not known here; they changed");
    if (in->stud_spacing_in == FRAME_NOT_GIVEN)
        return frame_fail(FRAME_REQUIRED, "stud_spacing_in", "", ">0..24 in",
                          "stud_spacing_in: not given; the value of gypsum goes by it");
    if (in_gypsum(in, row)) return FRAME_OK;
    return frame_fail(FRAME_NO_VALUE, "nail", in->nail, "a row of SDPWS table 4.3C",
                      "nail: %s has no row with this board, spacing, studs and blocking (SDPWS 4.3C)", in->nail);
}

static frame_status find_row(const frame_panel_shear_in *in, found *row) {
    const int wall = in->use == FRAME_PANEL_USE_WALL;
    if (in->sheathing == FRAME_PANEL_GYPSUM) return find_gypsum(in, row);
    if (!wall && in->both_sides)
        return frame_fail(FRAME_CONFLICT, "both_sides", "yes", "no", "both_sides: a diaphragm is sheathed on one side");
    if (wall ? in_walls(in, row) : in_diaphragms(in, row)) return FRAME_OK;
    return frame_fail(FRAME_NO_VALUE, "nail", in->nail,
                      wall ? "a row of SDPWS table 4.3A" : "a row of SDPWS table 4.2A or 4.2C",
                      "nail: %s has no row with this panel, spacing%s in the table (%s)", in->nail,
                      wall ? "" : " and framing", wall ? "SDPWS 4.3A" : "SDPWS 4.2A, 4.2C");
}

/* Unblocked walls are nailed at 6 in, and worth less with studs farther apart: SDPWS table 4.3.3.2. */
static frame_status unblocked(const frame_panel_shear_in *in, frame_panel_shear_out *out) {
    static const double centres[] = {12, 16, 20, 24}, close[] = {1, 0.8, 0.6, 0.5}, wide[] = {0.8, 0.6, 0.5, 0.4};
    out->unblocked_factor = 1;
    if (in->blocked || in->use != FRAME_PANEL_USE_WALL || in->sheathing == FRAME_PANEL_GYPSUM) return FRAME_OK;
    if (in->stud_spacing_in == FRAME_NOT_GIVEN)
        return frame_fail(FRAME_REQUIRED, "stud_spacing_in", "", ">0..24 in",
                          "stud_spacing_in: not given; an unblocked wall's value goes by it");
    if (!same(in->edge_spacing_in, 6))
        return frame_fail_number(FRAME_OUTSIDE_SCOPE, "edge_spacing_in", in->edge_spacing_in,
                                 "6 in for unblocked walls (SDPWS 4.3.3.2)");
    for (int i = 0; i < 4; i++)
        if (in->stud_spacing_in <= centres[i] + 1e-9) {
            out->unblocked_factor = in->field_spacing_in <= 6 + 1e-9 ? close[i] : wide[i];
            break;
        }
    out->known = FRAME_KNOWN_MEMORY;
    return FRAME_OK;
}

/* From the nominal value to the design value: SDPWS 4.2.3, 4.3.3; 2021: 4.1.4. */
static double designed(const frame_panel_shear_in *in, double nominal, frame_panel_shear_out *out, frame_working *w) {
    const int new = in->edition == FRAME_SDPWS_2021, quake = in->load == FRAME_LATERAL_SEISMIC;
    const double sides = in->both_sides ? 2 : 1;
    FRAME_TABLE(w, v_n, nominal, "plf", "nominal unit shear", "above");
    FRAME_GIVEN(w, n_sides, sides, "", "sides sheathed alike");
    FRAME_TABLE(w, k_G, out->gravity_factor, "", "framing lighter than G 0.5",
                "SDPWS tables 4.2A and 4.3A, notes, from memory");
    FRAME_TABLE(w, C_ub, out->unblocked_factor, "", "unblocked walls", "SDPWS table 4.3.3.2, from memory");
    if (in->method == FRAME_METHOD_ASD) {
        FRAME_TABLE(w, Omega, new &&quake ? 2.8 : 2.0, "", "reduction to allowable stress design",
                    "SDPWS 4.2.3, 4.3.3; 2021: 4.1.4, from memory");
        FRAME_STEP(w, v, v_n * n_sides * k_G * C_ub / Omega, "plf", "allowable unit shear", "SDPWS 4.3.3");
        return v;
    }
    FRAME_TABLE(w, phi, new &&quake ? 0.5 : 0.8, "", "resistance factor",
                "SDPWS 4.2.3, 4.3.3; 2021: 4.1.4, from memory");
    FRAME_STEP(w, v, v_n * n_sides * k_G * C_ub * phi, "plf", "factored unit shear resistance", "SDPWS 4.3.3");
    return v;
}

static void remarks(const frame_panel_shear_in *in, frame_panel_shear_out *out) {
    out->known = FRAME_KNOWN_MEMORY; /* the factors from nominal to design values are recalled */
    out->cautions = FRAME_BIT(FRAME_FASTENING_CAUTION_PANELS) | FRAME_BIT(FRAME_FASTENING_CAUTION_MEMORY);
    const int close = in->edge_spacing_in <= 2 || (!strcmp(in->nail, "10d") && in->edge_spacing_in <= 3);
    if (close && in->framing_nominal_in < 3) out->cautions |= FRAME_BIT(FRAME_FASTENING_CAUTION_THICK_FRAMING);
    if (in->method == FRAME_METHOD_LRFD) out->cautions |= FRAME_BIT(FRAME_FASTENING_CAUTION_LRFD);
    out->not_checked = FRAME_BIT(FRAME_FASTENING_UNCHECKED_DEFLECTION) |
                       FRAME_BIT(FRAME_FASTENING_UNCHECKED_COLLECTOR) | FRAME_BIT(FRAME_FASTENING_UNCHECKED_SEISMIC);
}

/* Defaults that this use has no need of. */
static void assumed(const frame_panel_shear_in *in, uint64_t *bits) {
    const int wall = in->use == FRAME_PANEL_USE_WALL, gypsum = in->sheathing == FRAME_PANEL_GYPSUM;
    if (wall)
        *bits &= ~(FRAME_BIT(FRAME_ASSUMED_PANEL_SHEAR_IN_LONG_EDGE_ACROSS) |
                   FRAME_BIT(FRAME_ASSUMED_PANEL_SHEAR_IN_FRAMING_NOMINAL_IN));
    else
        *bits &= ~FRAME_BIT(FRAME_ASSUMED_PANEL_SHEAR_IN_BOTH_SIDES);
    if (in->blocked) *bits &= ~FRAME_BIT(FRAME_ASSUMED_PANEL_SHEAR_IN_LONG_EDGE_ACROSS);
    if (!wall || (in->blocked && !gypsum)) *bits &= ~FRAME_BIT(FRAME_ASSUMED_PANEL_SHEAR_IN_FIELD_SPACING_IN);
}

static double lighter(double gravity, frame_working *w) {
    FRAME_GIVEN(w, G_framing, gravity, "", "specific gravity of the framing");
    FRAME_STEP(w, k_gravity, fmin(1, 1 - (0.5 - G_framing)), "", "framing lighter than G 0.5",
               "SDPWS tables 4.2A and 4.3A, notes, from memory");
    return k_gravity;
}

static frame_status compute(const frame_panel_shear_in *in, frame_panel_shear_out *out, frame_working *w) {
    found row;
    double gravity = 0.5;
    frame_known known;
    const int gypsum = in->sheathing == FRAME_PANEL_GYPSUM;
    frame_status status = find_row(in, &row);
    if (!status && !gypsum)
        status =
            frame_joint_gravity("framing_", in->framing_species, in->framing_specific_gravity, &gravity, &known, w);
    if (!status) status = unblocked(in, out);
    if (status) return status;
    const int wind = in->load == FRAME_LATERAL_WIND || in->edition == FRAME_SDPWS_2021;
    FRAME_TABLE(w, v_table, wind ? row.wind : row.seismic, "plf", "nominal unit shear", row.source);
    out->nominal_plf = v_table;
    out->gravity_factor = gypsum ? 1 : lighter(gravity, w);
    out->stiffness_osb_kip_per_in = row.osb;
    out->stiffness_plywood_kip_per_in = row.plywood;
    out->unit_plf = designed(in, v_table, out, w);
    remarks(in, out);
    assumed(in, &out->assumed);
    return FRAME_OK;
}

FRAME_IMPLEMENT(panel_shear, compute);
