/* Putting a member together: its section, its design values, its factors. */
#include "strength/member.h"

#include "base/error.h"
#include "base/facts.h"
#include "strength/member_quick.h"
#include "strength/refusals.h"
#include "table_temperature_factors.h"

static const frame_stress_factors given = {1, 1, 1, 1, 1, 1, 1, FRAME_KNOWN_USER, "part of the values given"};

static int is_given(double value) {
    return value != FRAME_NOT_GIVEN;
}
static int has(int32_t value) {
    return value != FRAME_NOT_GIVEN_INT;
}

/* The true size of one ply: of the nominal size, which the lumber found has with it, or as given. */
static frame_status find_section(const frame_member_ask *ask, const frame_member *m, double *thickness, double *width,
                                 frame_known *known) {
    if (!has(ask->size)) {
        if (!is_given(ask->width_in)) return frame_lacks("size", "a nominal size, or width_in and depth_in");
        if (!is_given(ask->depth_in)) return frame_lacks("depth_in", "the true depth, with width_in");
        *thickness = ask->width_in;
        *width = ask->depth_in;
        *known = FRAME_KNOWN_USER;
        return FRAME_OK;
    }
    if (is_given(ask->width_in)) return frame_contradicts("width_in", "size");
    if (is_given(ask->depth_in)) return frame_contradicts("depth_in", "size");
    *known = frame_size_known(ask->size);
    if (m->user) return frame_size_dressed(ask->size, 0, thickness, width);
    *thickness = m->lumber.thickness_in;
    *width = m->lumber.width_in;
    return FRAME_OK;
}

static frame_status user_values(const frame_member_ask *ask, frame_member *m) {
    if (has(ask->species)) return frame_contradicts("fb_psi", "species");
    if (has(ask->grade)) return frame_contradicts("fb_psi", "grade");
    if (!is_given(ask->fv_psi)) return frame_lacks("fv_psi", "F_v, with fb_psi");
    if (!is_given(ask->fc_perp_psi)) return frame_lacks("fc_perp_psi", "F_c-perp, with fb_psi");
    if (!is_given(ask->e_psi)) return frame_lacks("e_psi", "E, with fb_psi");
    m->lumber = (frame_lumber){.fb_psi = ask->fb_psi,
                               .fv_psi = ask->fv_psi,
                               .fc_perp_psi = ask->fc_perp_psi,
                               .e_psi = ask->e_psi,
                               .e_min_psi = ask->e_min_psi,
                               .size_factor_fb = 1,
                               .size_factor_ft = 1,
                               .size_factor_fc = 1,
                               .known = FRAME_KNOWN_USER,
                               .source = "given",
                               .size_source = "part of the values given"};
    m->user = 1;
    m->size_factor = 1;
    m->wet = m->incised = m->flat_use = &given;
    return FRAME_OK;
}

static frame_status table_values(const frame_member_ask *ask, frame_member *m) {
    if (is_given(ask->fv_psi) || is_given(ask->fc_perp_psi) || is_given(ask->e_psi) || is_given(ask->e_min_psi))
        return frame_lacks("fb_psi", "F_b, with the other design values; or none of them and a species and grade");
    if (!has(ask->species)) return frame_lacks("species", "a species and grade, or design values from fb_psi on");
    if (!has(ask->grade)) return frame_lacks("grade", "a grade, with the species");
    if (!has(ask->size)) return frame_lacks("size", "a nominal size, with the species");
    m->user = 0;
    return frame_lumber_find(ask->species, ask->grade, ask->size, &m->lumber);
}

static void worst(frame_member *m, frame_known known) {
    if (known > m->known) m->known = known;
}

/* Southern Pine (table 4B) takes treatment without incisions: common practice, and what the deck tables of R507.6 go
 * by. */
static int is_incised(int32_t incised, const frame_lumber *lumber) {
    return incised == FRAME_INCISED_BY_SPECIES ? lumber->table[1] != 'B' : incised;
}

/* C_F of timbers is for the load on the narrow face; C_fu stands in its place on the wide one. */
static void table_factors(frame_service service, int32_t incised, frame_member *m) {
    m->wet = &frame_member_dry;
    m->incised = &frame_member_not_incised;
    m->flat_use = &frame_member_on_edge;
    m->size_factor = m->flat && m->lumber.size_class != FRAME_CLASS_DIMENSION ? 1 : m->lumber.size_factor_fb;
    if (service == FRAME_SERVICE_WET) frame_wet_factors(&m->lumber, &m->wet_room), m->wet = &m->wet_room;
    if (is_incised(incised, &m->lumber))
        frame_incising_factors(&m->lumber, &m->incised_room), m->incised = &m->incised_room;
    if (m->flat) frame_flat_use_factors(&m->lumber, &m->flat_room), m->flat_use = &m->flat_room;
    worst(m, m->wet->known);
    worst(m, m->incised->known);
    worst(m, m->flat_use->known);
}

static void temperature_factors(frame_service service, frame_temperature temperature, frame_member *m) {
    const frame_temperature_factors_row *row = &frame_temperature_factors_table[temperature - 1];
    m->temperature_e = row->e;
    m->temperature_stress = service == FRAME_SERVICE_WET ? row->stress_wet : row->stress_dry;
    if (temperature != FRAME_TEMPERATURE_100F) worst(m, row->known);
}

static void turn(frame_member *m, int32_t plies, frame_turned turned, double thickness, double width) {
    m->plies = plies;
    m->flat = turned == FRAME_TURNED_FLAT;
    m->breadth = m->flat ? width : thickness;
    m->depth = m->flat ? thickness : width;
}

/* Of other editions nothing was read: that they agree with NDS 2018 is memory, and of species that were changed since
 * it is known to be false. */
static frame_status heed_edition(frame_nds_edition edition, frame_member *m) {
    const char *valid = "NDS 2018; or design values of your own";
    m->edition = edition ? edition : FRAME_NDS_2018;
    if (m->edition == FRAME_NDS_2018) return FRAME_OK;
    worst(m, FRAME_KNOWN_MEMORY);
    if (m->edition != FRAME_NDS_2024 || m->user || !m->lumber.superseded) return FRAME_OK;
    return frame_fail(FRAME_NO_VALUE, "edition", "NDS 2024", valid,
                      "edition: the values of this species were changed after NDS 2018; valid is %s", valid);
}

frame_status frame_member_find(const frame_member_ask *ask, frame_member *m) {
    double thickness, width;
    frame_status status = is_given(ask->fb_psi) ? user_values(ask, m) : table_values(ask, m);
    if (!status) status = find_section(ask, m, &thickness, &width, &m->known);
    if (status) return status;
    m->section_source = has(ask->size) ? "PS 20 dressed dry size" : "given";
    turn(m, ask->plies, ask->turned, thickness, width);
    worst(m, m->lumber.known);
    if (!m->user) table_factors(ask->service, ask->incised, m);
    temperature_factors(ask->service, ask->temperature, m);
    return heed_edition(ask->edition, m);
}

frame_status frame_member_of_lumber(frame_size size, frame_species species, frame_grade grade, int32_t plies,
                                    frame_turned turned, frame_service service, int32_t incised,
                                    frame_temperature temperature, frame_member *m) {
    if (!has(species)) return frame_lacks("species", "a species and grade, or design values from fb_psi on");
    if (!has(grade)) return frame_lacks("grade", "a grade, with the species");
    if (!has(size)) return frame_lacks("size", "a nominal size, with the species");
    const frame_status status = frame_lumber_find(species, grade, size, &m->lumber);
    if (status) return status;
    m->user = 0;
    m->edition = FRAME_NDS_2018;
    m->section_source = "PS 20 dressed dry size";
    m->known = m->lumber.known;
    worst(m, frame_size_known(size));
    turn(m, plies, turned, m->lumber.thickness_in, m->lumber.width_in);
    table_factors(service, incised, m);
    temperature_factors(service, temperature, m);
    return FRAME_OK;
}

/* NDS 4.3.9: three or more, in contact or at most 24 in apart, joined by what spreads the load; built-up members of two
 * plies never. On F_b of dimension lumber only. Values of the caller's may hold it already: only where it is claimed.
 */
frame_status frame_member_load_sharing(const frame_member *m, frame_bool claimed, double spacing_in, double *factor) {
    static const frame_lumber dimension = {.size_class = FRAME_CLASS_DIMENSION};
    const char *valid =
        "no; or yes for single members at most 24 in apart, or three plies and more on edge (NDS 4.3.9)";
    const int close = is_given(spacing_in) && spacing_in <= 24;
    const int single = m->plies == 1 && close && !m->flat, built_up = m->plies >= 3 && !m->flat;
    *factor = 1;
    if (claimed == 0 || (!has(claimed) && (m->user || !single))) return FRAME_OK;
    if (!single && !built_up)
        return frame_fail(FRAME_REFUSED, "repetitive", "yes", valid,
                          "repetitive: yes is refused for this member; valid is %s", valid);
    *factor = frame_repetitive_factor(m->user ? &dimension : &m->lumber, NULL, NULL);
    return FRAME_OK;
}
