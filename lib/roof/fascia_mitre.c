/* Fascias that meet at a corner. The plane between them is upright and halves the corner; of its normal, taken apart
 * along the board, across its face and square to it, the saw's two angles follow. */
#include <math.h>

#include "base/error.h"
#include "roof/cut_list.h"
#include "roof_facts.h"
#include "working/calculation.h"

static const char parts[] = "parts of the normal of the plane that halves the corner";

static frame_status compute(const frame_fascia_mitre_in *in, frame_fascia_mitre_out *out, frame_working *w) {
    const int square = in->stands == FRAME_FASCIA_SQUARE;
    FRAME_GIVEN(w, m, in->slope, "", "slope, rise over run");
    FRAME_GIVEN(w, C, in->corner_deg, "deg", "angle of the corner");
    FRAME_GIVEN(w, leans, square ? 1 : 0, "", "1 for a board square to the roof, 0 for a plumb one");
    FRAME_STEP(w, tilt, leans * atan(m) / FRAME_DEG, "deg", "how far the board leans", "right triangle");
    FRAME_STEP(w, mitre, atan2(cos(C / 2 * FRAME_DEG) * sin(tilt * FRAME_DEG), sin(C / 2 * FRAME_DEG)) / FRAME_DEG,
               "deg", "the saw's mitre, from square", parts);
    FRAME_STEP(w, bevel, asin(cos(C / 2 * FRAME_DEG) * cos(tilt * FRAME_DEG)) / FRAME_DEG, "deg", "the saw's bevel",
               parts);
    out->tilt_deg = tilt;
    out->mitre_deg = mitre;
    out->bevel_deg = bevel;
    out->cautions = square ? FRAME_BIT(FRAME_FASCIA_MITRE_CAUTION_COMPOUND) : 0;
    if (bevel > 45 + 1e-9) out->cautions |= FRAME_BIT(FRAME_FASCIA_MITRE_CAUTION_PAST_TILT);
    out->not_checked = FRAME_BIT(FRAME_FASCIA_MITRE_UNCHECKED_AS_BUILT);
    out->known = FRAME_KNOWN_USER;
    return FRAME_OK;
}

FRAME_IMPLEMENT(fascia_mitre, compute);

frame_status frame_fascia_mitre_stick(const frame_fascia_mitre_in *given, frame_stick **stick) {
    frame_fascia_mitre_in in;
    uint64_t assumed = 0;
    const frame_status status = frame_fascia_mitre_in_read(given, &in, &assumed);
    if (status) return status;
    const double half = in.corner_deg / 2 * FRAME_DEG, lean = in.stands == FRAME_FASCIA_SQUARE ? in.slope : 0;
    const double corner[3] = {0, 0, 0}, beyond[3] = {-sin(half), cos(half), 0};
    frame_cut_list cuts = {.count = 0};
    frame_cut_list_add(&cuts, FRAME_STICK_MITRE_CUT, corner, beyond, "corner mitre");
    frame_stick_in facts;
    frame_stick_in_init(&facts);
    facts.name = "fascia";
    facts.thickness_in = in.thickness_in;
    facts.depth_in = in.depth_in;
    facts.start_x_in = 0;
    facts.end_x_in = 96;
    facts.end_y_in = facts.end_z_in = 0;
    facts.crown_y = -lean; /* the roof rises to +y: its normal leans out over the eave */
    facts.crown_z = 1;
    facts.axis_at = FRAME_STICK_AXIS_TOP;
    facts.planes = cuts.planes;
    facts.plane_count = cuts.count;
    return frame_stick_new(&facts, stick);
}
