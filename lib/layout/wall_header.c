/* The header of an opening: as it was given, by the code table, or a stud laid flat where the wall bears nothing. */
#include <math.h>

#include "base/error.h"
#include "layout/wall.h"
#include "layout_facts.h"

/* IRC R602.7.4 (read in a state's older edition): a single flat 2x4 over openings of up to 8 ft in walls that bear
 * nothing. */
#define FLAT_HEADER_SPAN 96.0

static frame_status ask_table(const frame_wall_plan *plan, const frame_wall_hole *hole, frame_size size,
                              frame_code_header_span_out *found) {
    frame_code_header_span_in asked;
    frame_code_header_span_in_init(&asked);
    asked.supports = plan->in->supports;
    asked.size = size;
    asked.plies = hole->plies;
    asked.ground_snow_psf = plan->in->ground_snow_psf;
    asked.building_width_in = plan->in->building_width_in;
    asked.top_braced = hole->at == FRAME_HEADER_AT_PLATES; /* cripples do not brace it */
    asked.covering = 1;
    asked.edition = plan->in->edition;
    return frame_code_header_span(&asked, found, NULL);
}

static void take_table(frame_wall_plan *plan, frame_wall_hole *hole, frame_size size, int jacks_given,
                       const frame_code_header_span_out *found) {
    hole->header.size = size;
    hole->code_span = found->span_in;
    hole->source = found->source;
    if (!jacks_given) hole->jacks = found->jack_studs;
    if (found->known > plan->known) plan->known = found->known;
    plan->cautions |= FRAME_BIT(FRAME_WALL_CAUTION_CODE);
    if (hole->to - hole->from <= found->span_in + 1e-9) return;
    plan->cautions |= FRAME_BIT(FRAME_WALL_CAUTION_SHORT);
    plan->passes = 0;
}

/* The smallest of the table that spans the opening. */
static frame_status choose(frame_wall_plan *plan, frame_wall_hole *hole, int jacks_given) {
    const int widths[] = {4, 6, 8, 10, 12};
    double longest = 0;
    for (int i = 0; i < 5; i++) {
        frame_code_header_span_out found;
        const frame_status status = ask_table(plan, hole, FRAME_SIZE(2, widths[i]), &found);
        if (status == FRAME_NO_VALUE || status == FRAME_OUTSIDE_SCOPE) continue;
        if (status) return status;
        longest = fmax(longest, found.span_in);
        if (found.span_in < hole->to - hole->from - 1e-9) continue;
        take_table(plan, hole, FRAME_SIZE(2, widths[i]), jacks_given, &found);
        return FRAME_OK;
    }
    if (longest == 0) return frame_error_status(); /* the table's own refusal says what it needs */
    return frame_fail_number(FRAME_NO_VALUE, "width_in", hole->to - hole->from,
                             "what a header of the code table spans; give more plies, or a header of your own");
}

static frame_status by_table(frame_wall_plan *plan, const frame_wall_opening *opening, frame_wall_hole *hole) {
    const int jacks_given = opening->jacks != FRAME_NOT_GIVEN_INT;
    frame_code_header_span_out found;
    if (plan->in->edition == FRAME_NOT_GIVEN_INT)
        return frame_fail(FRAME_REQUIRED, "edition", "", "the edition of the code",
                          "edition: not given; supports needs it");
    if (hole->turned == FRAME_TURNED_FLAT)
        return frame_fail(FRAME_OUTSIDE_SCOPE, "header_turned", "flat", "on edge",
                          "header_turned: the code table knows no header that lies flat; leave supports out");
    if (opening->header_size == FRAME_NOT_GIVEN_INT) return choose(plan, hole, jacks_given);
    const frame_status status = ask_table(plan, hole, opening->header_size, &found);
    if (!status) take_table(plan, hole, opening->header_size, jacks_given, &found);
    return status;
}

static frame_status kings_by_table(frame_wall_plan *plan, frame_wall_hole *hole) {
    frame_code_king_studs_in asked;
    frame_code_king_studs_out found;
    frame_code_king_studs_in_init(&asked);
    asked.header_span_in = hole->to - hole->from;
    asked.stud_spacing_in = plan->in->spacing_in;
    asked.wind_mph = plan->in->wind_mph;
    asked.exposure = plan->in->exposure;
    asked.edition = plan->in->edition;
    const frame_status status = frame_code_king_studs(&asked, &found, NULL);
    if (status) return status;
    hole->kings = found.full_height_studs;
    if (found.known > plan->known) plan->known = found.known;
    plan->cautions |= FRAME_BIT(FRAME_WALL_CAUTION_CODE);
    return FRAME_OK;
}

static frame_status own_size(const frame_wall_plan *plan, const frame_wall_opening *opening, frame_wall_hole *hole) {
    hole->header.size = opening->header_size;
    if (opening->header_size != FRAME_NOT_GIVEN_INT) return FRAME_OK;
    if (plan->in->bearing)
        return frame_fail(
            FRAME_REQUIRED, "header_size", "", "a size, or supports for the code table",
            "header_size: not given; a wall that bears needs a header's size, or supports to look one up");
    if (hole->to - hole->from > FLAT_HEADER_SPAN + 1e-9)
        return frame_fail_number(FRAME_REQUIRED, "header_size", hole->to - hole->from,
                                 "a size: a stud laid flat spans at most 96 in");
    hole->header = plan->stud; /* laid flat */
    return FRAME_OK;
}

frame_status frame_wall_size_header(frame_wall_plan *plan, const frame_wall_opening *opening, frame_wall_hole *hole,
                                    frame_answer *answer) {
    static const frame_layout_section_fields fields = {"header_size", "header_size", "header_size"};
    const int flat_stud =
        !plan->in->bearing && opening->header_size == FRAME_NOT_GIVEN_INT && plan->in->supports == FRAME_NOT_GIVEN_INT;
    hole->turned = opening->header_turned;
    if (hole->turned == FRAME_NOT_GIVEN_INT) hole->turned = flat_stud ? FRAME_TURNED_FLAT : FRAME_TURNED_ON_EDGE;
    hole->plies = opening->header_plies;
    if (hole->plies == FRAME_NOT_GIVEN_INT) hole->plies = hole->turned == FRAME_TURNED_FLAT ? 1 : 2;
    hole->jacks = opening->jacks == FRAME_NOT_GIVEN_INT ? 1 : opening->jacks;
    hole->kings = opening->kings == FRAME_NOT_GIVEN_INT ? 1 : opening->kings;
    hole->header = (frame_layout_section){FRAME_NOT_GIVEN, FRAME_NOT_GIVEN, FRAME_NOT_GIVEN_INT, NULL, 0};
    const int table = plan->in->supports != FRAME_NOT_GIVEN_INT;
    frame_status status = table ? by_table(plan, opening, hole) : own_size(plan, opening, hole);
    const int known = plan->in->edition != FRAME_NOT_GIVEN_INT &&
                      (plan->in->wind_mph != FRAME_NOT_GIVEN || plan->in->edition == FRAME_CODE_2015);
    if (!status && known && opening->kings == FRAME_NOT_GIVEN_INT) status = kings_by_table(plan, hole);
    if (!status && hole->header.name == NULL) status = frame_layout_take_section(answer, &fields, &hole->header);
    return status;
}
