/* What sheathing nailed to a cut stud and its neighbours would hold: a figure, never a pass. */
#include "joint/nailing.h"
#include "joint_facts.h"
#include "working/calculation.h"

static const char why[] =
    "The building code counts sheathing for shear in the plane of the wall, tested so; no table or test "
    "gives it a load down from a stud. Its nails already carry wind and earthquake, the panel may buckle "
    "or its joint lie at the cut, and nothing holds the stud in line. Shore it, and frame a header.";

static frame_status compute(const frame_cut_stud_in *in, frame_cut_stud_out *out, frame_working *w) {
    frame_nailing nailing = FRAME_NAILING_OF(in);
    frame_dowel_lateral_out value;
    nailing.side_angle_deg = 90;
    nailing.main_angle_deg = 0;
    const frame_status status = frame_nailing_lateral(&nailing, &value, w);
    if (status) return status;
    FRAME_HEADING(w, "The figure");
    FRAME_TABLE(w, Z_prime, value.adjusted_lb, "lb", "adjusted lateral value of one nail", "above");
    FRAME_GIVEN(w, n_stud, in->nails_stud, "", "nails in the cut stud");
    FRAME_GIVEN(w, n_near, in->nails_neighbours, "", "nails in its neighbours");
    FRAME_STEP(w, P_stud, n_stud * Z_prime, "lb", "from the cut stud to the sheathing", "NDS 2018 11.2.2");
    FRAME_STEP(w, P_near, n_near * Z_prime, "lb", "from the sheathing to its neighbours", "NDS 2018 11.2.2");
    FRAME_STEP(w, P_figure, fmin(P_stud, P_near), "lb", "what the nails alone would hold",
               "the lesser; no code counts it");
    out->each_lb = Z_prime;
    out->stud_lb = P_stud;
    out->neighbours_lb = P_near;
    out->figure_lb = P_figure;
    if (in->load_lb != FRAME_NOT_GIVEN) out->load_over_figure = in->load_lb / P_figure;
    out->reason = why;
    out->known = value.known;
    out->cautions = frame_nailing_cautions(&nailing, &value) | FRAME_BIT(FRAME_FASTENING_CAUTION_FIGURE);
    out->not_checked = frame_nailing_unchecked() | FRAME_BIT(FRAME_FASTENING_UNCHECKED_BEARING);
    FRAME_NAILING_FORGET(CUT_STUD, &nailing, 1, 0, out->assumed);
    return FRAME_OK;
}

FRAME_IMPLEMENT(cut_stud, compute);
