/* Floors, stick by stick. */
#include <math.h>

#include "base/error.h"
#include "layout/platform.h"
#include "layout_facts.h"
#include "working/calculation.h"

enum { MARKS, HANGERS, PIECES, GANGS };

static const char trade[] = "common practice, floor layout";

static frame_status take_section(const frame_floor_in *in, frame_platform *p, frame_answer *answer) {
    static const frame_layout_section_fields fields = {"size", "thickness_in", "depth_in"};
    p->joist = (frame_layout_section){in->thickness_in, in->depth_in, in->size, NULL, 0};
    const frame_status status = frame_layout_take_section(answer, &fields, &p->joist);
    if (status) return status;
    p->t = p->joist.thickness;
    p->d = p->joist.depth;
    p->rim = in->rim_thickness_in == FRAME_NOT_GIVEN ? p->t : in->rim_thickness_in;
    p->ledger = in->ledger_thickness_in == FRAME_NOT_GIVEN ? p->t : in->ledger_thickness_in;
    return FRAME_OK;
}

/* IRC R502.10, from memory: headers of up to 4 ft and their trimmers may be single. */
static int plies_for(int32_t given, double width) {
    return given != FRAME_NOT_GIVEN_INT ? given : width > 48 + 1e-9 ? 2 : 1;
}

static frame_status take_openings(const frame_floor_in *in, frame_platform *p) {
    for (size_t i = 0; i < in->opening_count; i++) {
        frame_floor_opening opening;
        frame_floor_opening_item(in->openings, i, &opening);
        const frame_platform_hole hole = {"openings",
                                          (int)i,
                                          opening.x_in,
                                          opening.y_in,
                                          opening.length_in,
                                          opening.width_in,
                                          plies_for(opening.header_plies, opening.width_in),
                                          plies_for(opening.trimmer_plies, opening.width_in)};
        if (!frame_array_push(&p->holes, &hole)) return FRAME_NO_MEMORY;
    }
    return FRAME_OK;
}

static frame_status take_lists(const frame_floor_in *in, frame_platform *p) {
    for (size_t i = 0; i < in->beam_count; i++) {
        frame_floor_beam beam;
        frame_floor_beam_item(in->beams, i, &beam);
        const frame_platform_beam kept = {beam.at_in, 0};
        if (!frame_array_push(&p->beams, &kept)) return FRAME_NO_MEMORY;
    }
    for (size_t i = 0; i < in->wall_count; i++) {
        frame_floor_wall wall;
        frame_floor_wall_item(in->walls, i, &wall);
        if (!frame_array_push(&p->walls, &wall)) return FRAME_NO_MEMORY;
    }
    return take_openings(in, p);
}

static frame_status take(const frame_floor_in *in, frame_platform *p, frame_answer *answer) {
    p->span = in->span_in;
    p->width = in->width_in;
    p->spacing = in->spacing_in;
    p->datum = in->datum_in;
    p->sheet = in->sheet_in == FRAME_NOT_GIVEN ? frame_sheet_for(in->spacing_in) : in->sheet_in;
    p->gap = in->hanger_gap_in;
    p->stock = in->stock_in;
    p->lap = in->lap_in;
    p->first = in->first;
    p->ends[0] = in->near_end;
    p->ends[1] = in->far_end;
    p->joint = in->joint;
    p->end_plies = in->end_plies;
    if (fmax(in->width_in, fabs(in->datum_in)) / p->sheet > 100000)
        return frame_fail_number(FRAME_TOO_LARGE, "sheet_in", p->sheet, "at most 100,000 sheets");
    const frame_status status = take_section(in, p, answer);
    return status ? status : take_lists(in, p);
}

static frame_status add_beams(const frame_floor_in *in, frame_platform *p, frame_answer *answer) {
    static const frame_layout_section_fields fields = {"size", "size", "size"};
    double half[50] = {0}; /* the most beams there may be */
    for (size_t i = 0; i < in->beam_count; i++) {
        frame_floor_beam beam;
        frame_floor_beam_item(in->beams, i, &beam);
        if (beam.size == FRAME_NOT_GIVEN_INT) continue;
        frame_layout_section ply = {FRAME_NOT_GIVEN, FRAME_NOT_GIVEN, beam.size, NULL, 0};
        frame_status status = frame_layout_take_section(answer, &fields, &ply);
        /* Its posts are not known here: a ply reaches over all. */
        const double stock = p->stock;
        p->stock = INFINITY;
        if (!status) status = frame_platform_add_beam(p, &ply, beam.plies, beam.at_in, 0, p->width, NULL, 0);
        p->stock = stock;
        if (status) return frame_fail_within("beams[%zu].", i);
        half[i] = beam.plies * ply.thickness / 2;
    }
    return frame_platform_check_beams(p, half);
}

static void list_marks(const frame_platform *p, frame_answer *answer) {
    for (size_t i = 0; i < p->members.count; i++) {
        const frame_platform_member *member = FRAME_PLATFORM_MEMBER(p, i);
        frame_floor_mark *mark = frame_answer_add(answer, MARKS);
        if (!mark) return;
        mark->mark_in = member->y;
        mark->to_in = member->y + p->t;
        mark->kind = member->kind;
        mark->near_end = member->from <= FRAME_PLATFORM_BAY(p, 0)->from + 1e-9;
        mark->far_end = member->to >= FRAME_PLATFORM_BAY(p, p->bays.count - 1)->to - 1e-9;
    }
}

static void list_hangers(const frame_platform *p, frame_answer *answer) {
    for (size_t i = 0; i < p->hangers.count; i++) {
        frame_floor_hanger *hanger = frame_answer_add(answer, HANGERS);
        if (hanger) *hanger = FRAME_ITEM(frame_floor_hanger, p->hangers, i);
    }
}

static void list_pieces(const frame_platform *p, frame_answer *answer) {
    for (size_t i = 0; i < p->set->pieces.count; i++) {
        frame_floor_piece *item = frame_answer_add(answer, PIECES);
        if (!item) {
            answer->failed = 1;
            return;
        }
        FRAME_LAYOUT_TELL(item, FRAME_LAYOUT_PIECE(p->set, i));
        FRAME_LAYOUT_TELL_CUTS(item, FRAME_LAYOUT_PIECE(p->set, i));
        item->stage = FRAME_ITEM(int32_t, p->stages, i);
    }
}

static frame_status list_gangs(frame_platform *p, frame_answer *answer) {
    frame_array gangs = {0};
    const frame_status status = frame_layout_gather(p->set, &gangs);
    for (size_t i = 0; !status && i < gangs.count; i++) {
        const frame_layout_gang *gang = &FRAME_ITEM(frame_layout_gang, gangs, i);
        frame_floor_gang *item = frame_answer_add(answer, GANGS);
        if (!item) {
            answer->failed = 1;
            break;
        }
        FRAME_LAYOUT_TELL_GANG(item, gang, FRAME_LAYOUT_PIECE(p->set, gang->first));
        item->name = frame_layout_kind_name(item->kind);
    }
    frame_array_give(&gangs);
    return status;
}

/* The longest stretch of the joists without a rim, ledger, beam or row of blocking or bridging. */
static double unheld(const frame_floor_in *in, const frame_platform *p) {
    double at = 0, longest = 0;
    while (at < p->span) {
        double next = p->span;
        for (size_t i = 0; i < in->blocking_count; i++)
            if (in->blocking_in[i] > at && in->blocking_in[i] < next) next = in->blocking_in[i];
        for (size_t i = 0; i < in->bridging_count; i++)
            if (in->bridging_in[i] > at && in->bridging_in[i] < next) next = in->bridging_in[i];
        for (size_t i = 0; i < p->beams.count; i++)
            if (FRAME_PLATFORM_BEAM(p, i)->at > at && FRAME_PLATFORM_BEAM(p, i)->at < next)
                next = FRAME_PLATFORM_BEAM(p, i)->at;
        longest = fmax(longest, next - at);
        at = next;
    }
    return longest;
}

#define WARN_IF(condition, bit) \
    if (condition) out->cautions |= FRAME_BIT(FRAME_FLOOR_CAUTION_##bit)

static void sum_up(const frame_floor_in *in, const frame_platform *p, frame_floor_out *out, frame_working *w) {
    double longest = 0;
    int wide = 0;
    for (size_t i = 0; i < p->members.count; i++)
        longest = fmax(longest, FRAME_PLATFORM_MEMBER(p, i)->to - FRAME_PLATFORM_MEMBER(p, i)->from);
    for (size_t i = 0; i < p->holes.count; i++) wide |= FRAME_PLATFORM_HOLE(p, i)->width > 48 + 1e-9;
    FRAME_GIVEN(w, span, in->span_in, "in", "size along the joists");
    FRAME_GIVEN(w, near, frame_platform_end(p, 0) + frame_platform_gap(p, 0), "in",
                "rim, or ledger and gap, at the near end");
    FRAME_GIVEN(w, far, frame_platform_end(p, 1) + frame_platform_gap(p, 1), "in", "the same at the far end");
    FRAME_STEP(w, between, span - near - far, "in", "from end to end of the joists", trade);
    (void)between;
    out->joist_length_in = longest;
    out->joists = frame_platform_joists(p);
    out->blocks = 0;
    for (size_t i = 0; i < p->set->pieces.count; i++)
        out->blocks += FRAME_LAYOUT_PIECE(p->set, i)->kind == FRAME_PIECE_BLOCK;
    out->bridging = frame_platform_bridged(p);
    out->hanger_total = (int32_t)p->hangers.count;
    out->edges_off = frame_platform_edges_off(p);
    out->joints = frame_platform_joints(p);
    out->widest_in = frame_platform_widest(p);
    out->cantilever_in = frame_platform_cantilever(p);
    out->longest_span_in = frame_platform_longest_span(p);
    out->area_in2 = frame_platform_area(p);
    out->known = p->joist.known;
    out->cautions = FRAME_BIT(FRAME_FLOOR_CAUTION_ONE_HOOK) | FRAME_BIT(FRAME_FLOOR_CAUTION_CROWN);
    WARN_IF(out->edges_off, EDGES);
    WARN_IF(frame_platform_overreaches(p, p->d), CANTILEVER);
    WARN_IF(p->hangers.count, HANGER);
    WARN_IF(in->near_end == FRAME_JOIST_END_LEDGER || in->far_end == FRAME_JOIST_END_LEDGER, LEDGER);
    WARN_IF(wide, HEADER);
    WARN_IF(p->d > 11.25 + 1e-9 && unheld(in, p) > 96 + 1e-9, BRIDGING);
    WARN_IF(p->beams.count > p->bays.count - 1, SUPPORT);
    WARN_IF(p->bays.count > 1 && in->joint == FRAME_JOIST_JOINT_LAPPED, LAP);
    out->not_checked = FRAME_BIT(FRAME_FLOOR_UNCHECKED_STRENGTH) | FRAME_BIT(FRAME_FLOOR_UNCHECKED_POSTS) |
                       FRAME_BIT(FRAME_FLOOR_UNCHECKED_LATERAL) | FRAME_BIT(FRAME_FLOOR_UNCHECKED_PIPES);
    if (out->cautions & FRAME_BIT(FRAME_FLOOR_CAUTION_LEDGER))
        out->not_checked |= FRAME_BIT(FRAME_FLOOR_UNCHECKED_LEDGER);
}

static frame_status lay_out(const frame_floor_in *in, frame_platform *p, frame_answer *answer) {
    frame_status status = take(in, p, answer);
    if (!status) status = frame_platform_find_bays(p);
    if (!status) status = frame_platform_place_groups(p);
    if (!status) status = frame_platform_place_joists(p);
    if (!status) status = add_beams(in, p, answer);
    if (status) return status;
    frame_platform_add_rims(p);
    frame_platform_add_joists(p);
    status = frame_platform_add_blocks(p, in->blocking_in, in->blocking_count);
    if (!status) {
        const frame_platform_bridging bridging = {in->bridging_in, in->blocking_in, in->bridging_count,
                                                  in->blocking_count, in->bridging_size};
        status = frame_platform_add_bridging(p, &bridging);
    }
    if (!status && p->failed) status = FRAME_NO_MEMORY;
    if (!status) status = frame_layout_check(p->set, "width_in");
    if (!status) status = list_gangs(p, answer);
    if (status) return status;
    list_marks(p, answer);
    list_hangers(p, answer);
    list_pieces(p, answer);
    return FRAME_OK;
}

static frame_status solve(const frame_floor_in *in, frame_answer *answer, frame_floor_out *out, frame_working *w) {
    frame_platform platform;
    memset(&platform, 0, sizeof platform);
    frame_layout_set *set = frame_layout_set_new(answer);
    if (!set) return FRAME_NO_MEMORY;
    set->name = frame_answer_text(answer, in->name ? in->name : "floor");
    frame_platform_begin(&platform, set);
    const frame_status status = lay_out(in, &platform, answer);
    if (!status) sum_up(in, &platform, out, w);
    frame_platform_give(&platform);
    return status;
}

FRAME_IMPLEMENT_ANSWER(floor, solve);
