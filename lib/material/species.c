/* Species and species groups: names, stamps, specific gravity. */
#include "base/error.h"
#include "material/lumber.h"
#include "material/names.h"
#include "material_facts.h"
#include "table_species.h"

/* Ids run from 1 in the order of the table and are never used again, so that the place follows from the id. */
static const frame_species_row *row_of(frame_species species) {
    return species >= 1 && species <= frame_species_rows ? &frame_species_table[species - 1] : NULL;
}

static frame_name name_at(size_t index) {
    const frame_species_row *row = &frame_species_table[index];
    return (frame_name){row->name, row->short_name, row->spellings};
}

frame_status frame_species_find(const char *text, frame_species *species) {
    size_t place;
    if (!species)
        return frame_fail(FRAME_REQUIRED, "species", "NULL", "a place for the id", "species: no place for the id");
    const frame_status status = frame_name_find("species", text, name_at, frame_species_rows, &place);
    if (!status) *species = frame_species_table[place].id;
    return status;
}

int frame_species_valid(frame_species species) {
    return row_of(species) != NULL;
}

const char *frame_species_name(frame_species species) {
    const frame_species_row *row = row_of(species);
    return row ? row->name : NULL;
}

size_t frame_species_count(void) {
    return frame_species_rows;
}

frame_species frame_species_at(size_t index) {
    return index < frame_species_rows ? frame_species_table[index].id : FRAME_NOT_GIVEN_INT;
}

double frame_species_gravity(frame_species species, frame_known *known) {
    const frame_species_row *row = row_of(species);
    if (row && known) *known = row->known;
    return row ? row->specific_gravity : FRAME_NOT_GIVEN;
}
