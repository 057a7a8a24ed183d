/* What a plate, sill or header allows across its grain. */
#include "strength/plate.h"

#include "material/lumber.h"
#include "strength/format.h"
#include "strength/one_span.h"
#include "strength/refusals.h"
#include "working/record.h"

frame_status frame_plate_find(frame_species species, double given_psi, const char *species_field,
                              const char *given_field, frame_plate *plate) {
    frame_lumber lumber;
    frame_grade grade;
    *plate = (frame_plate){.F_c_perp = given_psi, .source = "given", .known = FRAME_KNOWN_USER};
    if (species == FRAME_NOT_GIVEN_INT) return FRAME_OK;
    if (frame_given(given_psi)) return frame_contradicts(given_field, species_field);
    frame_status status = frame_grade_find("No.2", &grade); /* F_c-perp is one for all grades but the densest */
    if (!status) status = frame_lumber_find(species, grade, FRAME_SIZE(2, 4), &lumber);
    if (status) return status;
    plate->F_c_perp = lumber.fc_perp_psi, plate->source = lumber.source, plate->known = lumber.known;
    return FRAME_OK;
}

double frame_plate_allowed(const frame_plate *plate, const frame_plate_lie *lie, frame_working *record) {
    const int away = lie->away && lie->length < 6;
    FRAME_TABLE(record, F_c_perp, plate->F_c_perp, "psi", "design value across the grain", plate->source);
    FRAME_TABLE(record, C_M_p, lie->wet ? 0.67 : 1, "", "wet service factor on F_c-perp", "NDS Supplement table 4A");
    FRAME_TABLE(record, C_t_p, lie->temperature_factor, "", "temperature factor on F_c-perp", "NDS 2018 table 2.3.3");
    FRAME_GIVEN(record, l_b, lie->length, "in", "length of bearing along the grain");
    FRAME_TABLE(record, C_b, away ? (l_b + 0.375) / l_b : 1, "",
                "bearing area factor, (l_b + 0.375)/l_b away from the ends", "NDS 2018 3.10.4 (from memory)");
    FRAME_TABLE(record, k_p,
                lie->lrfd ? FRAME_FORMAT_KF(FRAME_FORMAT_FC_PERP) * FRAME_FORMAT_PHI(FRAME_FORMAT_FC_PERP) : 1, "",
                lie->lrfd ? "K_F phi" : "1 in allowable stress design", FRAME_FORMAT_SOURCE);
    FRAME_STEP(record, F_c_perp_prime, F_c_perp * C_M_p * C_t_p * C_b * k_p, "psi",
               "adjusted design value across the grain", "NDS 2018 table 4.3.1");
    return F_c_perp_prime;
}
