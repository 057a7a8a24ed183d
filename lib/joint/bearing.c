/* Dowel bearing strength: wood by its specific gravity, and from 1/4 in diameter up by the angle to the grain; panels,
 * steel and concrete by table. */
#include "joint/bearing.h"

#include <stdio.h>
#include <string.h>

#include "base/error.h"
#include "joint/small.h"
#include "joint_facts.h"
#include "material/lumber.h"
#include "table_dowel_bearing.h"
#include "working/record.h"

enum { NAME_LENGTH = 48 };

/* From here up the grain's direction matters and the standard's rules of geometry apply. */
static const double large_in = 0.25, steel_plate_in = 0.25;

static frame_status no_gravity(const char *prefix, int both) {
    char name[NAME_LENGTH], text[2 * NAME_LENGTH];
    snprintf(name, sizeof name, "%s%s", prefix, both ? "specific_gravity" : "species");
    snprintf(text, sizeof text, "%sspecies or %sspecific_gravity", prefix, prefix);
    return frame_fail(both ? FRAME_CONFLICT : FRAME_REQUIRED, name, "", text,
                      both ? "%s: the species is given too; give one of %s" : "%s: not given; a wooden member needs %s",
                      name, text);
}

static frame_status unlisted(const char *prefix, frame_species species) {
    char name[NAME_LENGTH];
    const char *word = frame_species_name(species);
    snprintf(name, sizeof name, "%sspecies", prefix);
    return frame_fail(FRAME_NO_VALUE, name, word ? word : "", "a species of NDS table 12.3.3A",
                      "%s: NDS table 12.3.3A has no specific gravity for %s; give it as a number", name,
                      word ? word : "this species");
}

frame_status frame_joint_gravity(const char *prefix, frame_species species, double given, double *gravity,
                                 frame_known *known, frame_working *w) {
    const int has_species = species != FRAME_NOT_GIVEN_INT, has_gravity = given != FRAME_NOT_GIVEN;
    if (has_species == has_gravity) return no_gravity(prefix, has_species);
    if (has_gravity) {
        FRAME_GIVEN(w, G, given, "", "specific gravity");
        *gravity = G;
        *known = FRAME_KNOWN_USER;
        return FRAME_OK;
    }
    const double listed = frame_species_gravity(species, known);
    if (listed == FRAME_NOT_GIVEN) return unlisted(prefix, species);
    char meaning[2 * NAME_LENGTH] = "";
    if (FRAME_RECORDING(w)) snprintf(meaning, sizeof meaning, "specific gravity of %s", frame_species_name(species));
    FRAME_TABLE(w, G, listed, "", meaning, "NDS 2018 table 12.3.3A");
    *gravity = G;
    return FRAME_OK;
}

/* 12.3.3.4: along the grain, across it, and between the two by Hankinson's formula. */
static frame_status at_angle(const frame_joint_member *member, double D_nom, double G, double *strength_psi,
                             frame_working *w) {
    if (member->angle_deg == FRAME_NOT_GIVEN) {
        char name[NAME_LENGTH];
        snprintf(name, sizeof name, "%sangle_deg", member->prefix);
        return frame_fail(
            FRAME_REQUIRED, name, "", "0..90 deg",
            "%s: not given; from 1/4 in diameter up the angle of the load to the grain counts (0 along, 90 "
            "across)",
            name);
    }
    FRAME_GIVEN(w, theta, member->angle_deg, "deg", "angle of the load to the grain");
    FRAME_STEP(w, F_e_par, 11200 * G, "psi", "dowel bearing strength along the grain", "NDS 2018 table 12.3.3");
    if (theta == 0) {
        *strength_psi = F_e_par;
        return FRAME_OK;
    }
    FRAME_STEP(w, F_e_perp, 6100 * pow(G, 1.45) / sqrt(D_nom), "psi", "dowel bearing strength across the grain",
               "NDS 2018 table 12.3.3");
    if (theta == 90) {
        *strength_psi = F_e_perp;
        return FRAME_OK;
    }
    FRAME_STEP(
        w, F_e_theta,
        F_e_par * F_e_perp / (F_e_par * pow(sin(theta * FRAME_DEG), 2) + F_e_perp * pow(cos(theta * FRAME_DEG), 2)),
        "psi", "dowel bearing strength at the angle", "NDS 2018 equation 12.3-11");
    *strength_psi = F_e_theta;
    return FRAME_OK;
}

static frame_status of_wood(const frame_joint_member *member, double D_nom, frame_bearing *bearing, frame_working *w) {
    frame_status status = frame_joint_gravity(member->prefix, member->species, member->specific_gravity,
                                              &bearing->gravity, &bearing->known, w);
    if (status) return status;
    const double G = bearing->gravity;
    bearing->known = frame_known_worse(bearing->known, FRAME_KNOWN_SECONDARY);
    if (D_nom >= large_in) {
        bearing->angle_deg = member->angle_deg;
        return at_angle(member, D_nom, G, &bearing->strength_psi, w);
    }
    bearing->strength_psi = frame_small_bearing(G, w);
    return FRAME_OK;
}

static const frame_dowel_bearing_row *row_of(frame_joint_material material, double thickness_in) {
    if (material == FRAME_JOINT_STEEL)
        material = thickness_in < steel_plate_in ? FRAME_JOINT_STEEL_A653 : FRAME_JOINT_STEEL_A36;
    const char *word = frame_joint_material_words.table[material - 1].word;
    for (int i = 0; i < frame_dowel_bearing_rows; i++)
        if (!strcmp(frame_dowel_bearing_table[i].material, word)) return &frame_dowel_bearing_table[i];
    return NULL;
}

static frame_status of_table(const frame_joint_member *member, double D_nom, frame_bearing *bearing, frame_working *w) {
    const frame_dowel_bearing_row *row = row_of(member->material, member->thickness_in);
    char name[NAME_LENGTH];
    snprintf(name, sizeof name, "%smaterial", member->prefix);
    if (!row) return frame_fail(FRAME_INTERNAL, name, "", "", "%s: no row in the table of bearing strengths", name);
    if (row->most_in != FRAME_NOT_GIVEN && D_nom > row->most_in)
        return frame_fail(FRAME_NO_VALUE, name, row->material, "a fastener of 1/4 in or less, or its bearing strength",
                          "%s: %s has a bearing strength only for fasteners of 1/4 in or less; give %sbearing_psi",
                          name, row->material, member->prefix);
    FRAME_TABLE(w, F_e, row->bearing_psi, "psi", row->material, row->source);
    *bearing = (frame_bearing){F_e, 0, FRAME_NOT_GIVEN, row->known};
    return FRAME_OK;
}

static frame_status of_user(const frame_joint_member *member, double D_nom, frame_bearing *bearing, frame_working *w) {
    FRAME_GIVEN(w, F_e, member->bearing_psi, "psi", "dowel bearing strength");
    const int grained = member->material == FRAME_JOINT_WOOD && D_nom >= large_in;
    if (grained && member->angle_deg == FRAME_NOT_GIVEN) return at_angle(member, D_nom, F_e, NULL, w);
    *bearing = (frame_bearing){F_e, grained ? member->angle_deg : 0, FRAME_NOT_GIVEN, FRAME_KNOWN_USER};
    return FRAME_OK;
}

static void round_to_50(frame_bearing *bearing, frame_working *w) {
    FRAME_TABLE(w, F_e_exact, bearing->strength_psi, "psi", "dowel bearing strength before rounding", "above");
    FRAME_STEP(w, F_e, 50 * floor(F_e_exact / 50 + 0.5), "psi", "to the nearest 50 psi, as the printed tables have it",
               "NDS 2018 table 12.3.3 footnote 2");
    bearing->strength_psi = F_e;
}

static frame_status grainless(const frame_joint_member *member) {
    if (member->material == FRAME_JOINT_WOOD) return FRAME_OK;
    if (member->species == FRAME_NOT_GIVEN_INT && member->specific_gravity == FRAME_NOT_GIVEN) return FRAME_OK;
    char name[NAME_LENGTH];
    snprintf(name, sizeof name, "%smaterial", member->prefix);
    const char *word = frame_joint_material_words.table[member->material - 1].word;
    return frame_fail(FRAME_CONFLICT, name, word, "\"wood\"", "%s: %s has no species or specific gravity", name, word);
}

frame_status frame_joint_bearing(const frame_joint_member *member, double nominal_in, frame_bearing_rounding rounding,
                                 frame_bearing *bearing, frame_working *w) {
    frame_status status = grainless(member);
    if (status) return status;
    *bearing = (frame_bearing){0, 0, FRAME_NOT_GIVEN, FRAME_KNOWN_READ};
    if (member->bearing_psi != FRAME_NOT_GIVEN) return of_user(member, nominal_in, bearing, w);
    if (member->material != FRAME_JOINT_WOOD) return of_table(member, nominal_in, bearing, w);
    status = of_wood(member, nominal_in, bearing, w);
    if (!status && rounding == FRAME_BEARING_TO_50) round_to_50(bearing, w);
    return status;
}
