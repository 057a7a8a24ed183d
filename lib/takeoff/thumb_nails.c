/* Pounds of nails: by how many go to a pound, and as wire. */
#include "takeoff/thumb_nails.h"

#include <math.h>

#include "base/error.h"
#include "joint/fastener.h"
#include "table_nails_to_a_pound.h"
#include "takeoff_facts.h"

static const double PI = 3.14159265358979324, SAME_IN = 1e-6;

static const frame_nails_to_a_pound_row *find_row(frame_dowel_kind kind, const frame_fastener *nail) {
    for (size_t r = 0; r < frame_nails_to_a_pound_rows; r++) {
        const frame_nails_to_a_pound_row *row = &frame_nails_to_a_pound_table[r];
        if (row->kind == kind && fabs(row->diameter_in - nail->nominal_in) < SAME_IN &&
            fabs(row->length_in - nail->length_in) < SAME_IN)
            return row;
    }
    return NULL;
}

frame_status frame_thumb_nails(const frame_thumb_nailing *of, frame_rules_of_thumb_nail *nails) {
    frame_fastener nail;
    if (!frame_dowel_is_nail(of->kind))
        return frame_fail(FRAME_OUT_OF_RANGE, "kind", frame_dowel_word(of->kind), "a kind of nail",
                          "kind: %s is not a nail; valid is common, box, sinker or ring-shank nail",
                          frame_dowel_word(of->kind));
    const frame_status status = frame_fastener_find(of->kind, of->size, FRAME_NOT_GIVEN, &nail);
    if (status) return status;
    const frame_nails_to_a_pound_row *row = find_row(of->kind, &nail);
    const double area = PI / 4 * nail.nominal_in * nail.nominal_in;
    const double wire_lb = nail.length_in * area * FRAME_THUMB_STEEL_LB_PER_IN3;
    nails->kind = of->kind;
    nails->count = of->count;
    nails->per_lb = row ? row->per_lb : 1 / wire_lb;
    nails->nail_lb = of->count / nails->per_lb;
    nails->wire_lb = of->count * wire_lb;
    nails->known = row ? row->known : FRAME_KNOWN_MEMORY;
    nails->source = row ? row->source : "reckoned as wire of its length and diameter";
    return FRAME_OK;
}
