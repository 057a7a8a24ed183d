/* How many fasteners a demand needs, and a pattern with full distances that carries it. */
#include <math.h>

#include "base/error.h"
#include "joint/geometry.h"
#include "joint_facts.h"
#include "working/calculation.h"

enum { PLACES = 0, MOST_ROWS = 50, MOST_PER_ROW = 200, MOST_SPOTS = 500 };

static const double play = 1e-9;

/* What is tried, and the best so far. */
typedef struct trial {
    frame_fastener fastener;
    frame_geometry rules;
    double demand, room, edge_low, edge_up;
    int rows, per_row;
    double group_factor, capacity, length, row_spacing, spacing;
} trial;

static frame_status demand(const frame_fastener_pattern_in *in, double *demand_lb) {
    const int total = in->demand_lb != FRAME_NOT_GIVEN, line = in->demand_plf != FRAME_NOT_GIVEN;
    if (total == line)
        return frame_fail(total ? FRAME_CONFLICT : FRAME_REQUIRED, "demand_lb", "",
                          "demand_lb, or demand_plf with length_in", "demand_lb: %s",
                          total ? "demand_plf is given too; give one" : "neither it nor demand_plf is given");
    if (line && in->length_in == FRAME_NOT_GIVEN)
        return frame_fail(FRAME_REQUIRED, "length_in", "", ">0..1200 in", "length_in: not given; demand_plf needs it");
    *demand_lb = total ? in->demand_lb : in->demand_plf * in->length_in / 12;
    return FRAME_OK;
}

static frame_status rules_of(const frame_fastener_pattern_in *in, trial *t, frame_working *w) {
    const frame_geometry_ask ask = {.diameter_in = t->fastener.nominal_in,
                                    .main_in = in->main_thickness_in,
                                    .side_in = in->side_thickness_in,
                                    .tension = in->pull == FRAME_PULL_TOWARD_END,
                                    .hardwood = in->hardwood,
                                    .prebored = in->prebored,
                                    .across = in->across_grain};
    const frame_status status = frame_geometry_find(&ask, &t->rules, w);
    const int both = in->loaded_edge == FRAME_EDGE_LOADED_BOTH;
    t->edge_low = t->edge_up = t->rules.unloaded_edge;
    if (both || in->loaded_edge == FRAME_EDGE_LOADED_LOWER) t->edge_low = t->rules.loaded_edge;
    if (both || in->loaded_edge == FRAME_EDGE_LOADED_UPPER) t->edge_up = t->rules.loaded_edge;
    return status;
}

static double or_else(double given, double otherwise) {
    return given != FRAME_NOT_GIVEN ? given : otherwise;
}

static frame_group_row row_of(const frame_fastener_pattern_in *in, const trial *t, int n, double spacing) {
    const double main = or_else(in->main_area_in2, in->width_in * or_else(in->main_thickness_in, 1.5)),
                 side = or_else(in->side_area_in2, in->width_in * or_else(in->side_thickness_in, 1.5));
    return (frame_group_row){n,       in->metal_side,         t->fastener.nominal_in,
                             spacing, main * in->modulus_psi, side * or_else(in->side_modulus_psi, in->modulus_psi)};
}

static double group_factor(const frame_fastener_pattern_in *in, const trial *t, int n, double spacing,
                           frame_working *w) {
    if (t->fastener.nominal_in < 0.25 || n < 2) return 1;
    const frame_group_row row = row_of(in, t, n, spacing);
    return frame_group_factor(&row, NULL, w);
}

/* So many rows of so many: whether they fit, and what they carry. */
static int fits(const frame_fastener_pattern_in *in, trial *t, int rows, int n) {
    const frame_geometry *g = &t->rules;
    const double stout = !g->advice && !in->across_grain &&
                         fmin(in->main_thickness_in, in->side_thickness_in) > 6 * t->fastener.nominal_in;
    const double rows_span = (rows - 1) * g->row, row_span = (n - 1) * g->spacing_full;
    const double edge = stout && rows > 1 ? fmax(t->edge_low, g->row / 2) : t->edge_low;
    const double up = in->across_grain ? row_span : rows_span, along = in->across_grain ? rows_span : row_span;
    t->rows = rows, t->per_row = n;
    t->spacing = g->spacing_full, t->row_spacing = rows > 1 ? g->row : 0;
    t->length = g->end_full + along + g->far_end_full;
    if (edge + up + t->edge_up > in->width_in + play) return 0;
    if (in->length_in != FRAME_NOT_GIVEN && t->length > in->length_in + play) return 0;
    t->group_factor = group_factor(in, t, n, t->spacing, NULL);
    t->capacity = rows * n * in->each_lb * t->group_factor;
    return 1;
}

static int better(const trial *a, const trial *b) {
    const int ca = a->rows * a->per_row, cb = b->rows * b->per_row;
    if (!b->rows || ca != cb) return !b->rows || ca < cb;
    return a->length < b->length - play;
}

static int search(const frame_fastener_pattern_in *in, const trial *base, trial *best) {
    best->rows = 0;
    for (int rows = 1; rows <= MOST_ROWS; rows++)
        for (int n = 1; n <= MOST_PER_ROW; n++) {
            trial t = *base;
            if (rows * n > MOST_SPOTS || !fits(in, &t, rows, n)) break;
            if (rows * n < in->least_count || t.capacity < t.demand * (1 - play)) continue;
            if (better(&t, best)) *best = t;
            break;
        }
    return best->rows > 0;
}

/* Along a run with a line load the fasteners are spread out evenly. */
static void spread(const frame_fastener_pattern_in *in, trial *t) {
    if (in->demand_plf == FRAME_NOT_GIVEN) return;
    const int along = in->across_grain ? t->rows : t->per_row;
    if (along < 2) return;
    const double step = (in->length_in - t->rules.end_full - t->rules.far_end_full) / (along - 1);
    if (in->across_grain)
        t->row_spacing = step;
    else
        t->spacing = step;
    t->length = in->length_in;
}

static double lower_edge(const frame_fastener_pattern_in *in, const trial *t) {
    const double up = in->across_grain ? (t->per_row - 1) * t->spacing : (t->rows - 1) * t->row_spacing;
    const double middle = (in->width_in - up) / 2;
    return fmax(t->edge_low, fmin(middle, in->width_in - up - t->edge_up));
}

static frame_spot spot(const frame_fastener_pattern_in *in, const trial *t, int row, int i) {
    const double edge = lower_edge(in, t), end = t->rules.end_full;
    if (in->across_grain) return (frame_spot){end + row * t->row_spacing, edge + i * t->spacing};
    return (frame_spot){end + i * t->spacing, edge + row * t->row_spacing};
}

static frame_status find(const frame_fastener_pattern_in *in, trial *best, frame_working *w) {
    trial base = {0};
    frame_status status = demand(in, &base.demand);
    if (!status) status = frame_fastener_find(in->kind, in->size, in->diameter_in, &base.fastener);
    if (!status && in->metal_side && in->side_modulus_psi == FRAME_NOT_GIVEN && base.fastener.nominal_in >= 0.25)
        status = frame_fail(FRAME_REQUIRED, "side_modulus_psi", "", ">0..40000000 psi",
                            "side_modulus_psi: not given; metal side plates need their modulus (steel 30000000 psi)");
    if (!status) status = rules_of(in, &base, w);
    if (status) return status;
    if (!search(in, &base, best))
        return frame_fail(FRAME_IMPOSSIBLE, "demand_lb", "", "a wider or longer member, or stronger fasteners",
                          "demand_lb: no pattern with full end, edge and row distances carries it in this member");
    spread(in, best);
    best->group_factor = group_factor(in, best, best->per_row, best->spacing, w);
    best->capacity = best->rows * best->per_row * in->each_lb * best->group_factor;
    return FRAME_OK;
}

static void record(const frame_fastener_pattern_in *in, const trial *t, frame_fastener_pattern_out *out,
                   frame_working *w) {
    FRAME_HEADING(w, "The pattern");
    FRAME_GIVEN(w, P, t->demand, "lb", "demand");
    FRAME_GIVEN(w, Z_one, in->each_lb, "lb", "adjusted value of one");
    FRAME_TABLE(w, n_rows, t->rows, "", "rows", "the fewest fasteners, then the shortest joint");
    FRAME_TABLE(w, n_row, t->per_row, "", "in a row", "the fewest fasteners, then the shortest joint");
    FRAME_TABLE(w, C_g, t->group_factor, "", "group action factor", "above; 1 under 1/4 in and for one in a row");
    FRAME_STEP(w, Z_group, n_rows * n_row * Z_one * C_g, "lb", "capacity", "NDS 2018 11.2.2");
    FRAME_STEP(w, ratio, P / Z_group, "", "demand over capacity", "at most 1");
    out->demand_lb = P;
    out->capacity_lb = Z_group;
    out->ratio = ratio;
    out->group_factor = C_g;
}

static frame_status solve(const frame_fastener_pattern_in *in, frame_answer *answer, frame_fastener_pattern_out *out,
                          frame_working *w) {
    trial t;
    const frame_status status = find(in, &t, w);
    if (status) return status;
    record(in, &t, out, w);
    out->rows = t.rows;
    out->per_row = t.per_row;
    out->count = t.rows * t.per_row;
    out->spacing_in = t.spacing;
    out->row_spacing_in = t.row_spacing;
    out->end_distance_in = t.rules.end_full;
    out->edge_distance_in = lower_edge(in, &t);
    out->used_length_in = t.length;
    out->known = t.rules.advice ? FRAME_KNOWN_MEMORY : FRAME_KNOWN_SECONDARY;
    out->cautions = FRAME_BIT(FRAME_FASTENING_CAUTION_ADJUSTED);
    if (t.rules.advice)
        out->cautions |= FRAME_BIT(FRAME_FASTENING_CAUTION_ADVICE) | FRAME_BIT(FRAME_FASTENING_CAUTION_MEMORY);
    if (out->count == in->least_count) out->cautions |= FRAME_BIT(FRAME_FASTENING_CAUTION_LEAST);
    out->not_checked = FRAME_BIT(FRAME_FASTENING_UNCHECKED_MEMBER) | FRAME_BIT(FRAME_FASTENING_UNCHECKED_SPLITTING) |
                       FRAME_BIT(FRAME_FASTENING_UNCHECKED_METAL);
    if (t.fastener.nominal_in < 0.25)
        out->assumed &= ~(FRAME_BIT(FRAME_ASSUMED_FASTENER_PATTERN_IN_MODULUS_PSI) |
                          FRAME_BIT(FRAME_ASSUMED_FASTENER_PATTERN_IN_SIDE_MODULUS_PSI) |
                          FRAME_BIT(FRAME_ASSUMED_FASTENER_PATTERN_IN_MAIN_AREA_IN2) |
                          FRAME_BIT(FRAME_ASSUMED_FASTENER_PATTERN_IN_SIDE_AREA_IN2));
    for (int r = 0; r < t.rows; r++)
        for (int i = 0; i < t.per_row; i++) {
            frame_fastener_pattern_place *place = frame_answer_add(answer, PLACES);
            if (!place) return FRAME_NO_MEMORY;
            const frame_spot at = spot(in, &t, r, i);
            place->x_in = at.x, place->y_in = at.y;
        }
    return FRAME_OK;
}

FRAME_IMPLEMENT_ANSWER(fastener_pattern, solve);

static frame_status draw(const frame_fastener_pattern_in *in, const trial *t, frame_drawing *drawing) {
    frame_spot spots[MOST_SPOTS];
    size_t count = 0;
    for (int r = 0; r < t->rows; r++)
        for (int i = 0; i < t->per_row; i++) spots[count++] = spot(in, t, r, i);
    const frame_face face = {in->width_in, in->length_in, t->fastener.nominal_in};
    return frame_face_draw(drawing, &face, spots, count, "Pattern of the fasteners");
}

frame_status frame_fastener_pattern_drawing(const frame_fastener_pattern_in *given, frame_drawing **drawing) {
    frame_fastener_pattern_in in;
    trial t;
    uint64_t assumed = 0;
    frame_status status = frame_fastener_pattern_in_read(given, &in, &assumed);
    if (!status) status = find(&in, &t, NULL);
    frame_drawing *made = NULL;
    if (!status) status = frame_drawing_new(&made);
    if (!status) status = draw(&in, &t, made);
    if (status)
        frame_drawing_free(made);
    else
        *drawing = made;
    return status;
}
