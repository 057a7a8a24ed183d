/* Decks, stick by stick. */
#include "layout/deck.h"

#include <math.h>
#include <stdlib.h>

#include "base/error.h"
#include "layout_facts.h"
#include "material/lumber.h"
#include "working/calculation.h"

static const char trade[] = "common practice, deck layout";
static const double usual_stock[] = {96, 120, 144, 168, 192, 216, 240};

/* IRC R312.1.1: a guard where the drop is over 30 in; the code room knows the editions. */
#define GUARD_OVER 30.0

static frame_status take_section(const frame_deck_in *in, frame_platform *p, frame_answer *answer) {
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

static frame_status take_lists(const frame_deck_in *in, frame_platform *p) {
    for (size_t i = 0; i < in->beam_count; i++) {
        frame_deck_beam beam;
        frame_deck_beam_item(in->beams, i, &beam);
        const frame_platform_beam kept = {beam.at_in, 0};
        if (!frame_array_push(&p->beams, &kept)) return FRAME_NO_MEMORY;
    }
    for (size_t i = 0; i < in->opening_count; i++) {
        frame_floor_opening opening;
        frame_floor_opening_item(in->openings, i, &opening);
        const int wide = opening.width_in > 48 + 1e-9 ? 2 : 1;
        const frame_platform_hole hole = {"openings",
                                          (int)i,
                                          opening.x_in,
                                          opening.y_in,
                                          opening.length_in,
                                          opening.width_in,
                                          opening.header_plies == FRAME_NOT_GIVEN_INT ? wide : opening.header_plies,
                                          opening.trimmer_plies == FRAME_NOT_GIVEN_INT ? wide : opening.trimmer_plies};
        if (!frame_array_push(&p->holes, &hole)) return FRAME_NO_MEMORY;
    }
    return FRAME_OK;
}

static int ascending(const void *a, const void *b) {
    const double first = *(const double *)a, second = *(const double *)b;
    return (first > second) - (first < second);
}

/* Lengths of boards, sorted; owned by the answer. */
static frame_status take_stock(frame_deck_plan *plan) {
    const size_t count = plan->in->board_stock_count;
    plan->stock = usual_stock;
    plan->stock_count = (int)(sizeof usual_stock / sizeof *usual_stock);
    if (count == 0) return FRAME_OK;
    double *own = frame_take(count * sizeof *own);
    if (!own || !frame_answer_own(plan->answer, own, frame_give)) return FRAME_NO_MEMORY;
    memcpy(own, plan->in->board_stock_in, count * sizeof *own);
    qsort(own, count, sizeof *own, ascending);
    plan->stock = own;
    plan->stock_count = (int)count;
    return FRAME_OK;
}

static frame_status take(frame_deck_plan *plan) {
    const frame_deck_in *in = plan->in;
    frame_platform *p = &plan->platform;
    p->span = in->length_in;
    p->width = in->width_in;
    p->spacing = in->spacing_in;
    p->datum = in->datum_in;
    p->sheet = frame_sheet_for(in->spacing_in);
    p->gap = in->hanger_gap_in;
    p->stock = in->stock_in;
    p->lap = in->lap_in;
    p->first = in->first;
    p->ends[0] = in->near_end;
    p->ends[1] = FRAME_JOIST_END_FREE;
    p->joint = in->joint;
    p->end_plies = in->end_plies;
    frame_status status = take_section(in, p, plan->answer);
    if (!status) status = take_lists(in, p);
    if (!status) status = take_stock(plan);
    plan->top = p->d;
    plan->guard = in->guard == FRAME_NOT_GIVEN_INT
                      ? in->height_in != FRAME_NOT_GIVEN && in->height_in > GUARD_OVER + 1e-9
                      : in->guard;
    return status;
}

static void list_marks(const frame_platform *p, frame_answer *answer) {
    for (size_t i = 0; i < p->members.count; i++) {
        const frame_platform_member *member = FRAME_PLATFORM_MEMBER(p, i);
        frame_deck_mark *mark = frame_answer_add(answer, FRAME_DECK_MARKS);
        if (!mark) {
            answer->failed = 1;
            return;
        }
        mark->mark_in = member->y;
        mark->to_in = member->y + p->t;
        mark->kind = member->kind;
        mark->near_end = member->from <= FRAME_PLATFORM_BAY(p, 0)->from + 1e-9;
        mark->far_end = member->to >= FRAME_PLATFORM_BAY(p, p->bays.count - 1)->to - 1e-9;
    }
}

static void list_hangers(const frame_platform *p, frame_answer *answer) {
    for (size_t i = 0; i < p->hangers.count; i++) {
        const frame_floor_hanger *from = &FRAME_ITEM(frame_floor_hanger, p->hangers, i);
        frame_deck_hanger *hanger = frame_answer_add(answer, FRAME_DECK_HANGERS);
        if (!hanger) {
            answer->failed = 1;
            return;
        }
        hanger->x_in = from->x_in;
        hanger->y_in = from->y_in;
        hanger->thickness_in = from->thickness_in;
        hanger->depth_in = from->depth_in;
        hanger->carries = from->carries;
        hanger->on = from->on;
        hanger->stage = from->stage;
    }
}

static void list_pieces(const frame_platform *p, frame_answer *answer) {
    for (size_t i = 0; i < p->set->pieces.count; i++) {
        frame_deck_piece *item = frame_answer_add(answer, FRAME_DECK_PIECES);
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
        frame_deck_gang *item = frame_answer_add(answer, FRAME_DECK_GANGS);
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

static void count_up(const frame_deck_plan *plan, frame_deck_out *out) {
    const frame_platform *p = &plan->platform;
    double longest = 0;
    for (size_t i = 0; i < p->members.count; i++)
        longest = fmax(longest, FRAME_PLATFORM_MEMBER(p, i)->to - FRAME_PLATFORM_MEMBER(p, i)->from);
    out->blocks = 0;
    for (size_t i = 0; i < p->set->pieces.count; i++)
        out->blocks += FRAME_LAYOUT_PIECE(p->set, i)->kind == FRAME_PIECE_BLOCK;
    out->joist_length_in = longest;
    out->joists = frame_platform_joists(p);
    out->hanger_total = (int32_t)p->hangers.count;
    out->widest_in = frame_platform_widest(p);
    out->longest_span_in = frame_platform_longest_span(p);
    out->area_in2 = frame_platform_area(p);
    out->posts = plan->posts;
    out->boards = plan->rows;
    out->guard_posts = plan->guard_posts;
    out->balusters = plan->balusters;
    out->post_length_in = plan->post_length;
    if (plan->in->pattern == FRAME_DECK_STRAIGHT || plan->in->pattern == FRAME_DECK_FRAME)
        out->last_board_in = plan->last_board;
    out->board_stock_in = plan->bought;
    out->board_waste = plan->bought > 0 ? 1 - plan->laid / plan->bought : 0;
    if (plan->guard) out->baluster_gap_in = plan->baluster_gap;
}

static void record_posts(const frame_deck_plan *plan, frame_working *w) {
    const frame_deck_in *in = plan->in;
    frame_deck_beam beam;
    if (in->height_in == FRAME_NOT_GIVEN) return;
    frame_deck_beam_item(in->beams, 0, &beam);
    double thickness = 0, depth = 0;
    if (frame_size_dressed(beam.size, 0, &thickness, &depth)) return;
    FRAME_HEADING(w, "Posts under the first beam");
    FRAME_GIVEN(w, H, in->height_in, "in", "walking surface above the footings' tops");
    FRAME_GIVEN(w, T, in->board_thickness_in, "in", "boards");
    FRAME_GIVEN(w, d_joist, plan->platform.d, "in", "joists");
    FRAME_GIVEN(w, d_beam, depth, "in", "beam");
    FRAME_GIVEN(w, cap, in->cap_in, "in", "between post and beam");
    FRAME_GIVEN(w, base, in->base_in, "in", "under the post");
    FRAME_STEP(w, post, H - T - d_joist - d_beam - cap - base, "in", "length of the posts", trade);
    (void)post;
}

#define WARN_IF(condition, bit) \
    if (condition) out->cautions |= FRAME_BIT(FRAME_DECK_CAUTION_##bit)

static void sum_up(const frame_deck_plan *plan, frame_deck_out *out, frame_working *w) {
    const frame_platform *p = &plan->platform;
    const frame_deck_in *in = plan->in;
    count_up(plan, out);
    record_posts(plan, w);
    out->cantilever_in = frame_platform_cantilever(p);
    out->known = p->joist.known;
    out->cautions = plan->cautions | FRAME_BIT(FRAME_DECK_CAUTION_ONE_HOOK) | FRAME_BIT(FRAME_DECK_CAUTION_CROWN) |
                    FRAME_BIT(FRAME_DECK_CAUTION_WET);
    WARN_IF(frame_platform_overreaches(p, INFINITY), CANTILEVER);
    WARN_IF(p->hangers.count, HANGER);
    WARN_IF(in->near_end == FRAME_JOIST_END_LEDGER, LEDGER);
    WARN_IF(p->bays.count > 1 && in->joint == FRAME_JOIST_JOINT_LAPPED, LAP);
    out->not_checked = FRAME_BIT(FRAME_FLOOR_UNCHECKED_STRENGTH) | FRAME_BIT(FRAME_FLOOR_UNCHECKED_POSTS) |
                       FRAME_BIT(FRAME_FLOOR_UNCHECKED_LATERAL) | FRAME_BIT(FRAME_FLOOR_UNCHECKED_PIPES);
    if (in->near_end == FRAME_JOIST_END_LEDGER) out->not_checked |= FRAME_BIT(FRAME_FLOOR_UNCHECKED_LEDGER);
}

static frame_status lay_out(frame_deck_plan *plan) {
    frame_platform *p = &plan->platform;
    frame_status status = take(plan);
    if (!status) status = frame_platform_find_bays(p);
    if (!status) status = frame_platform_place_groups(p);
    if (!status) status = frame_platform_place_joists(p);
    if (!status) status = frame_deck_add_supports(plan);
    if (status) return status;
    frame_platform_add_rims(p);
    frame_platform_add_joists(p);
    status = frame_platform_add_blocks(p, plan->in->blocking_in, plan->in->blocking_count);
    if (!status) {
        const frame_platform_bridging bridging = {plan->in->bridging_in, plan->in->blocking_in,
                                                  plan->in->bridging_count, plan->in->blocking_count,
                                                  plan->in->bridging_size};
        status = frame_platform_add_bridging(p, &bridging);
    }
    if (!status) status = frame_deck_add_boards(plan);
    if (!status) status = frame_deck_add_guard(plan);
    if (!status && p->failed) status = FRAME_NO_MEMORY;
    if (!status) status = frame_layout_check(p->set, "width_in");
    if (!status) status = list_gangs(p, plan->answer);
    if (status) return status;
    list_marks(p, plan->answer);
    list_hangers(p, plan->answer);
    list_pieces(p, plan->answer);
    return FRAME_OK;
}

static frame_status solve(const frame_deck_in *in, frame_answer *answer, frame_deck_out *out, frame_working *w) {
    frame_deck_plan plan;
    memset(&plan, 0, sizeof plan);
    plan.in = in;
    plan.answer = answer;
    plan.post_length = FRAME_NOT_GIVEN;
    frame_layout_set *set = frame_layout_set_new(answer);
    if (!set) return FRAME_NO_MEMORY;
    set->name = frame_answer_text(answer, in->name ? in->name : "deck");
    frame_platform_begin(&plan.platform, set);
    const frame_status status = lay_out(&plan);
    if (!status) sum_up(&plan, out, w);
    frame_platform_give(&plan.platform);
    return status;
}

FRAME_IMPLEMENT_ANSWER(deck, solve);
