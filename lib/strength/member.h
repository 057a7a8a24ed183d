/* A member of sawn lumber made ready for checks: its section, design values and factors, from whatever was given. */
#ifndef FRAME_LIB_STRENGTH_MEMBER_H
#define FRAME_LIB_STRENGTH_MEMBER_H

#include <frame/strength.h>

#include "base/facts.h"
#include "material/lumber.h"

/* Besides yes and no: incised if the species must be for pressure treatment, as all but Southern Pine are taken to be.
 */
enum { FRAME_INCISED_BY_SPECIES = 2 };

/* What a calculation was given about its member; not given as usual. */
typedef struct frame_member_ask {
    frame_size size;
    frame_species species;
    frame_grade grade;
    int32_t plies;
    frame_turned turned;
    frame_service service;
    int32_t incised; /* yes, no or FRAME_INCISED_BY_SPECIES */
    frame_temperature temperature;
    double width_in, depth_in;
    double fb_psi, fv_psi, fc_perp_psi, e_psi, e_min_psi;
    frame_nds_edition edition; /* 0 as NDS 2018 */
    int32_t spare;
} frame_member_ask;

/* What the in-structs of all checks of a member on edge name alike; design values follow it. A macro, because they are
 * structs of their own with fields of the same names. */
#define FRAME_MEMBER_ON_EDGE(in)                                                              \
    .size = (in)->size, .species = (in)->species, .grade = (in)->grade, .plies = (in)->plies, \
    .turned = FRAME_TURNED_ON_EDGE, .service = (in)->service, .incised = (in)->incised,       \
    .temperature = (in)->temperature, .width_in = (in)->width_in, .depth_in = (in)->depth_in, .edition = (in)->edition

typedef struct frame_member {
    double plies, breadth, depth; /* of one ply as it is turned to the load */
    frame_bool flat;
    frame_bool user; /* design values of the caller's */
    frame_lumber lumber;
    double size_factor;                       /* C_F on F_b */
    const frame_stress_factors *wet;          /* C_M */
    const frame_stress_factors *incised;      /* C_i */
    const frame_stress_factors *flat_use;     /* C_fu */
    double temperature_stress, temperature_e; /* C_t */
    const char *section_source;
    frame_known known;
    frame_nds_edition edition;
    frame_stress_factors wet_room, incised_room, flat_room; /* what the pointers may point to: do not copy a member */
} frame_member;

/* Puts the member together. FRAME_REQUIRED or FRAME_CONFLICT where too little or too much was given, FRAME_NO_VALUE
 * where the tables have no such lumber. */
frame_status frame_member_find(const frame_member_ask *ask, frame_member *member);
/* The same where nothing but these was given. */
frame_status frame_member_of_lumber(frame_size size, frame_species species, frame_grade grade, int32_t plies,
                                    frame_turned turned, frame_service service, int32_t incised,
                                    frame_temperature temperature, frame_member *member);

/* The cautions (frame_bending_caution) that follow from the member alone. */
static inline uint64_t frame_member_cautions(const frame_member *m) {
    uint64_t cautions = FRAME_BIT(FRAME_BENDING_CAUTION_AS_ASSUMED) | FRAME_BIT(FRAME_BENDING_CAUTION_LOCAL_LOADS) |
                        FRAME_BIT(m->user ? FRAME_BENDING_CAUTION_USER_VALUES : FRAME_BENDING_CAUTION_STAMP);
    if (m->known == FRAME_KNOWN_MEMORY) cautions |= FRAME_BIT(FRAME_BENDING_CAUTION_MEMORY);
    if (m->lumber.doubtful) cautions |= FRAME_BIT(FRAME_BENDING_CAUTION_DOUBTFUL);
    if (m->lumber.superseded) cautions |= FRAME_BIT(FRAME_BENDING_CAUTION_SUPERSEDED);
    if (m->plies > 1) cautions |= FRAME_BIT(m->flat ? FRAME_BENDING_CAUTION_FLAT : FRAME_BENDING_CAUTION_PLIES);
    return cautions;
}

/* C_r. claimed is not given where the caller leaves it to the rule: joists that stand close share loads. FRAME_REFUSED
 * for a claim that NDS 4.3.9 does not allow; spacing_in may be not given. */
frame_status frame_member_load_sharing(const frame_member *member, frame_bool claimed, double spacing_in,
                                       double *factor);

#endif
