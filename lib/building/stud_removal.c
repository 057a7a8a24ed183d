/* May this stud go? The site worked out with it and without it, and the plates that then span from neighbour to
 * neighbour. */
#include <math.h>
#include <string.h>

#include "base/error.h"
#include "building/framing.h"
#include "building_facts.h"
#include "material/lumber.h"
#include "strength/bending.h"
#include "working/calculation.h"

/* The uprights of the wall before and after, and the loads on its plates. */
typedef struct sides {
    const char *wall;
    frame_answer *before, *after;
} sides;

static frame_status work(const frame_stud_removal_in *in, const char *removed, double at, frame_answer **made) {
    frame_framing_in ask;
    frame_framing_in_init(&ask);
    ask.site = in->site;
    ask.description = in->description;
    ask.sticks = 0;
    ask.kerf_in = 0.125;
    ask.choose = FRAME_SITE_CHEAPEST;
    frame_answer *answer = frame_answer_new(&frame_framing_calculation);
    if (!answer) return FRAME_NO_MEMORY;
    const frame_status status = frame_framing_work(&ask, removed, at, answer, answer->out);
    if (status)
        frame_answer_free(answer);
    else
        *made = answer;
    return status;
}

static const frame_framing_stud *stud_at(const frame_answer *answer, size_t i) {
    return &FRAME_ITEM(frame_framing_stud, answer->lists[FRAME_FRAMING_STUDS], i);
}
static size_t stud_count(const frame_answer *answer) {
    return answer->lists[FRAME_FRAMING_STUDS].count;
}

static int is_of(const frame_framing_stud *stud, const char *wall) {
    return !strcmp(stud->wall, wall) && strcmp(stud->piece, "jack") != 0;
}

static frame_by_kind load_of(const frame_framing_stud *stud) {
    return (frame_by_kind){{0, stud->dead_lb, stud->live_lb, stud->roof_live_lb, stud->snow_lb, stud->wind_lb}};
}

static double most_of(const frame_framing_stud *stud) {
    const frame_by_kind load = load_of(stud);
    return frame_by_kind_most(&load, NULL, NULL);
}

/* The full-height stud of the wall nearest to a place. */
static const frame_framing_stud *nearest(const frame_answer *answer, const char *wall, double at) {
    const frame_framing_stud *best = NULL;
    for (size_t i = 0; i < stud_count(answer); i++) {
        const frame_framing_stud *stud = stud_at(answer, i);
        if (is_of(stud, wall) && (!best || fabs(stud->at_in - at) < fabs(best->at_in - at))) best = stud;
    }
    return best;
}

/* The next full-height stud to one side: -1 toward the start. */
static const frame_framing_stud *beside(const frame_answer *answer, const char *wall, double at, int side) {
    const frame_framing_stud *best = NULL;
    for (size_t i = 0; i < stud_count(answer); i++) {
        const frame_framing_stud *stud = stud_at(answer, i);
        if (!is_of(stud, wall) || !(side * (stud->at_in - at) > 0.75)) continue;
        if (!best || fabs(stud->at_in - at) < fabs(best->at_in - at)) best = stud;
    }
    return best;
}

static double worst_of(const frame_answer *answer, const char *wall) {
    double worst = 0;
    for (size_t i = 0; i < stud_count(answer); i++)
        if (!strcmp(stud_at(answer, i)->wall, wall)) worst = fmax(worst, stud_at(answer, i)->ratio);
    return worst;
}

static frame_status find_wall(const frame_stud_removal_in *in, frame_part_wall *wall, frame_site **own) {
    const frame_site *site = in->site;
    uint64_t assumed = 0;
    if (!site && in->description) {
        const frame_status status = frame_site_from_json(in->description, own);
        if (status) return status;
        site = *own;
    }
    if (!site)
        return frame_fail(FRAME_REQUIRED, "site", "", "a site, or a description as JSON",
                          "site: not given; give a site, or a description as JSON");
    for (size_t i = 0; i < site->parts[FRAME_SITE_WALLS].count; i++) {
        const frame_part_wall *part = &FRAME_ITEM(frame_part_wall, site->parts[FRAME_SITE_WALLS], i);
        if (!strcmp(part->name, in->wall)) return frame_part_wall_read(part, wall, &assumed);
    }
    return frame_fail(FRAME_UNKNOWN_NAME, "wall", in->wall, "the name of a wall that is described",
                      "wall: \"%s\" is none of those described", in->wall);
}

/* Both plates lie flat: their strengths are summed, they are not one block. Loads stand on them as on a simple span. */
static frame_status check_plates(const frame_part_wall *wall, const frame_answer *after, double left, double right,
                                 double *ratio, frame_working *record) {
    frame_member member;
    frame_bending bending = {0};
    frame_status status = frame_member_of_lumber(wall->size, wall->species, wall->grade, 2, FRAME_TURNED_FLAT,
                                                 FRAME_SERVICE_DRY, 0, FRAME_TEMPERATURE_100F, &member);
    if (status) return status;
    const double dx = wall->to_x_in - wall->from_x_in, dy = wall->to_y_in - wall->from_y_in, length = hypot(dx, dy);
    const frame_array *loads = &after->lists[FRAME_FRAMING_LOADS];
    double most = 0, moment = 0, factor = 1;
    for (size_t here = 0; here < loads->count; here++) {
        const frame_framing_load *at = &FRAME_ITEM(frame_framing_load, *loads, here);
        const double s = ((at->x_in - wall->from_x_in) * dx + (at->y_in - wall->from_y_in) * dy) / length;
        frame_by_kind sum = {{0}}; /* the moment under this load, of all of them, kind by kind */
        if (at->on_kind != FRAME_BEARER_WALL || strcmp(at->on, wall->name) != 0 || s <= left || s >= right) continue;
        for (size_t k = 0; k < loads->count; k++) {
            const frame_framing_load *load = &FRAME_ITEM(frame_framing_load, *loads, k);
            const double t = ((load->x_in - wall->from_x_in) * dx + (load->y_in - wall->from_y_in) * dy) / length;
            if (load->on_kind != FRAME_BEARER_WALL || strcmp(load->on, wall->name) != 0 || t <= left || t >= right)
                continue;
            const double a = fmin(s, t) - left, b = right - fmax(s, t);
            const frame_by_kind one = {
                {0, load->dead_lb, load->live_lb, load->roof_live_lb, load->snow_lb, load->wind_lb}};
            frame_by_kind_add(&sum, &one, a * b / (right - left));
        }
        double C_D = 1;
        const double M = frame_by_kind_most(&sum, NULL, &C_D);
        if (M / C_D > most) most = M / C_D, moment = M, factor = C_D;
    }
    FRAME_HEADING(record, "The top plates from neighbour to neighbour");
    FRAME_GIVEN(record, L, right - left, "in", "span of the plates");
    (void)L;
    FRAME_TABLE(record, M, moment, "lb-in", "largest moment, the loads as on a simple span", "statics");
    FRAME_TABLE(record, n, 2, "", "plates, each by itself", "NDS 2018 3.3");
    FRAME_TABLE(record, b, member.breadth, "in", "breadth of a plate", member.section_source);
    FRAME_TABLE(record, t, member.depth, "in", "thickness of a plate", member.section_source);
    FRAME_STEP(record, S, n * b * pow(t, 2) / 6, "in3", "section modulus of both, not as one block", "rectangles");
    const double F_b_prime = frame_bending_allowed(&member, 1, factor, 0, &bending, record);
    FRAME_STEP(record, plate_ratio, M / S / F_b_prime, "", "share of the bending strength used", "NDS 2018 3.3.1");
    *ratio = plate_ratio;
    return FRAME_OK;
}

static int is_beside_opening(const frame_framing_stud *stud) {
    return !strcmp(stud->piece, "king stud");
}

static frame_status fill(const frame_part_wall *wall, const sides *s, const frame_framing_stud *gone,
                         frame_stud_removal_out *out, frame_working *w) {
    const frame_framing_stud *left = beside(s->before, s->wall, gone->at_in, -1),
                             *right = beside(s->before, s->wall, gone->at_in, 1);
    const frame_framing_stud *left_after = beside(s->after, s->wall, gone->at_in, -1),
                             *right_after = beside(s->after, s->wall, gone->at_in, 1);
    if (!left || !right || !left_after || !right_after)
        return frame_fail_number(FRAME_IMPOSSIBLE, "at_in", gone->at_in, "a stud with a neighbour on either side");
    out->at_in = gone->at_in;
    out->load_lb = most_of(gone);
    out->ratio = gone->ratio;
    out->carries = gone->live_lb != 0 || gone->roof_live_lb != 0 || gone->snow_lb != 0 || gone->wind_lb != 0;
    out->left_at_in = left->at_in, out->right_at_in = right->at_in;
    out->left_before_lb = most_of(left), out->right_before_lb = most_of(right);
    out->left_after_lb = most_of(left_after), out->right_after_lb = most_of(right_after);
    out->left_ratio = left_after->ratio, out->right_ratio = right_after->ratio;
    out->plate_span_in = right_after->at_in - left_after->at_in;
    out->worst_before = worst_of(s->before, s->wall);
    out->worst_after = worst_of(s->after, s->wall);
    FRAME_HEADING(w, "Before and after");
    FRAME_TABLE(w, P, out->load_lb, "lb", "largest load of the stud today", "framing");
    FRAME_TABLE(w, P_left, out->left_after_lb, "lb", "largest load of the neighbour toward the start, without it",
                "framing");
    FRAME_TABLE(w, P_right, out->right_after_lb, "lb", "largest load of the other neighbour, without it", "framing");
    (void)P, (void)P_left, (void)P_right;
    return check_plates(wall, s->after, left_after->at_in, right_after->at_in, &out->plate_ratio, w);
}

static void judge(const frame_framing_stud *gone, frame_known known, frame_stud_removal_out *out) {
    const int edge = is_beside_opening(gone);
    out->known = known;
    out->passes = !edge && out->worst_after <= 1 + 1e-9 && out->plate_ratio <= 1 + 1e-9;
    out->cautions = FRAME_BIT(FRAME_STUD_REMOVAL_CAUTION_SHORE) | FRAME_BIT(FRAME_STUD_REMOVAL_CAUTION_PLATES);
    if (!out->carries) out->cautions |= FRAME_BIT(FRAME_STUD_REMOVAL_CAUTION_IDLE);
    if (edge) out->cautions |= FRAME_BIT(FRAME_STUD_REMOVAL_CAUTION_OPENING);
    if (!out->passes) out->cautions |= FRAME_BIT(FRAME_STUD_REMOVAL_CAUTION_HEADER);
    out->not_checked = FRAME_BIT(FRAME_STUD_REMOVAL_UNCHECKED_SHEATHING) |
                       FRAME_BIT(FRAME_STUD_REMOVAL_UNCHECKED_LATERAL) | FRAME_BIT(FRAME_STUD_REMOVAL_UNCHECKED_BELOW);
}

static frame_status with_and_without(const frame_stud_removal_in *in, const frame_part_wall *wall,
                                     frame_stud_removal_out *out, frame_working *w) {
    sides s = {in->wall, NULL, NULL};
    frame_status status = work(in, NULL, 0, &s.before);
    const frame_framing_stud *gone = status ? NULL : nearest(s.before, in->wall, in->at_in);
    if (!status && (!gone || fabs(gone->at_in - in->at_in) > wall->spacing_in / 2))
        status = frame_fail_number(FRAME_IMPOSSIBLE, "at_in", in->at_in, "a place where a stud stands");
    if (!status) status = work(in, in->wall, gone->at_in, &s.after);
    if (!status) status = fill(wall, &s, gone, out, w);
    if (!status) judge(gone, ((const frame_framing_out *)s.after->out)->known, out);
    if (s.before) frame_answer_free(s.before);
    if (s.after) frame_answer_free(s.after);
    return status;
}

static frame_status compute(const frame_stud_removal_in *in, frame_stud_removal_out *out, frame_working *w) {
    frame_part_wall wall;
    frame_site *own = NULL;
    frame_status status = find_wall(in, &wall, &own);
    if (!status && (wall.existing || !wall.bearing))
        status = frame_fail(
            FRAME_OUTSIDE_SCOPE, "wall", in->wall, "a bearing wall that is described to be built", "wall: \"%s\" %s",
            in->wall, wall.existing ? "stands already: its studs are not known" : "bears nothing by its description");
    if (!status) status = with_and_without(in, &wall, out, w);
    frame_site_free(own);
    return status;
}
FRAME_IMPLEMENT(stud_removal, compute);
