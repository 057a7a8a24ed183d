/* dowel_lateral over columns of the usual kind: smooth nails in single shear, wood to wood. Diameter, length, side
 * member, specific gravities and load duration may vary by the row, and the values of the modes are what is wanted of
 * them. */
#include <stddef.h>

#include "base/columns.h"
#include "joint/lateral_usual.h"
#include "joint/small.h"
#include "joint/yield_single.h"
#include "joint_facts.h"
#include "material/lumber.h"

#include "working/plain_math.h"

#define AT(field) offsetof(frame_dowel_lateral_in, field)
#define OUT(field) offsetof(frame_dowel_lateral_out, field)

/* What may vary, the lanes of numbers first. */
enum { DIAMETER, LENGTH, SIDE, SIDE_GRAVITY, MAIN_GRAVITY, DURATION, NUMBERS };
enum { SIDE_SPECIES = NUMBERS, MAIN_SPECIES, VARYING };
static const size_t varying[VARYING] = {AT(diameter_in),           AT(length_in),
                                        AT(side_thickness_in),     AT(side_specific_gravity),
                                        AT(main_specific_gravity), AT(load_duration_factor),
                                        AT(side_species),          AT(main_species)};
enum { ADJUSTED, VALUE, IM, IS, II, IIIM, IIIS, IV, WANTED };
static const size_t wanted[WANTED] = {OUT(adjusted_lb), OUT(z_lb),      OUT(z_im_lb),   OUT(z_is_lb),
                                      OUT(z_ii_lb),     OUT(z_iiim_lb), OUT(z_iiis_lb), OUT(z_iv_lb)};

/* What is worked out of one number by a table or a power: met before, it is not worked out again. */
enum { KNOWN_BY = 64 };
typedef struct known_number {
    uint64_t from; /* its bits */
    double value;
} known_number;

typedef struct job {
    const frame_columns *all;
    const frame_column *columns[VARYING];
    frame_dowel_kind kind;
    const double *given[NUMBERS];
    frame_lane rooms[NUMBERS], side_strength, main_strength, steel, values[WANTED];
    known_number strengths[KNOWN_BY], steels[KNOWN_BY];
} job;

static FRAME_RECORD_COLD double work_out(const job *j, int steel, double number) {
    double yield;
    frame_known how;
    const char *source;
    if (!steel) return frame_small_bearing(number, NULL);
    return frame_fastener_yield_quietly(j->kind, number, &yield, &how, &source) ? yield : 0;
}

/* From specific gravities the strengths of wood, or from diameters the yield of steel. */
static void look_up(const job *j, int steel, known_number *known, const double *numbers, double *found, size_t count) {
    for (size_t i = 0; i < count; i++) {
        uint64_t bits;
        memcpy(&bits, &numbers[i], sizeof bits);
        known_number *k = &known[(bits * UINT64_C(0x9E3779B97F4A7C15)) >> 58];
        if (k->from != bits) k->from = bits, k->value = work_out(j, steel, numbers[i]);
        found[i] = k->value;
    }
}

/* 0 where the tables have no steel for a row. */
static int find_strengths(job *j, size_t count) {
    int found = 1;
    look_up(j, 0, j->strengths, j->given[SIDE_GRAVITY], j->side_strength, count);
    look_up(j, 0, j->strengths, j->given[MAIN_GRAVITY], j->main_strength, count);
    look_up(j, 1, j->steels, j->given[DIAMETER], j->steel, count);
    for (size_t i = 0; i < count; i++) found &= j->steel[i] > 0;
    return found;
}

/* Specific gravities of a column of species; 0 where one has none. */
static int find_gravities(job *j, int species, int gravity, size_t row, size_t count) {
    frame_known how;
    j->given[gravity] = j->rooms[gravity];
    for (size_t i = 0; i < count; i++)
        if (!((j->rooms[gravity][i] = frame_species_gravity(frame_column_word(j->columns[species], row + i), &how)) >
              0))
            return 0;
    return 1;
}

/* Sets up what is the same for all rows; 0 where the question is not of the usual kind. */
static int begin(job *j, size_t from) {
    const frame_columns *all = j->all;
    frame_dowel_lateral_in first;
    frame_lateral_numbers same;
    if (!frame_columns_within(all->ins, all->in_count, varying, VARYING) ||
        !frame_columns_within(all->outs, all->out_count, wanted, WANTED))
        return 0;
    frame_columns_row(all, from, &first, sizeof first);
    if (!frame_lateral_is_usual(&first, &same)) return 0;
    for (int i = 0; i < VARYING; i++) j->columns[i] = frame_column_of(all->ins, all->in_count, varying[i]);
    j->kind = first.kind;
    const double lanes[NUMBERS] = {same.diameter,     same.length,       same.side_thickness,
                                   same.side_gravity, same.main_gravity, same.duration};
    for (int i = 0; i < NUMBERS; i++)
        if (!j->columns[i]) frame_lane_fill(j->rooms[i], lanes[i]), j->given[i] = j->rooms[i];
    memset(j->strengths, 0, sizeof j->strengths); /* no gravity and no diameter is 0 */
    memset(j->steels, 0, sizeof j->steels);
    return 1;
}

/* Thin enough to be a nail, and deep enough to count. */
FRAME_ALWAYS_INLINE int in_order(const job *j, size_t count) {
    int64_t outside = 0;
    for (size_t i = 0; i < count; i++) {
        const double D = j->given[DIAMETER][i], p = j->given[LENGTH][i] - j->given[SIDE][i];
        outside |= D < 0.25 && p >= 6 * D - FRAME_DEPTH_PLAY ? 0 : 1;
    }
    return !outside;
}

FRAME_ALWAYS_INLINE void value_row(job *j, size_t i) {
    const double D = j->given[DIAMETER][i], t_s = j->given[SIDE][i], p = j->given[LENGTH][i] - t_s;
    frame_dowel_hold hold;
    frame_yield_values z;
    frame_yield joint = {.D = D,
                         .l_s = t_s,
                         .l_m = frame_bearing_of_point(p, 2 * D, D, &hold, NULL),
                         .F_em = j->main_strength[i],
                         .F_es = j->side_strength[i],
                         .F_yb = j->steel[i],
                         .R_d_I = frame_small_reduction(D, NULL)};
    joint.R_d_II = joint.R_d_III = joint.R_d_I;
    frame_yield_in_single_shear(&joint, &z, NULL);
    j->values[ADJUSTED][i] = z.z * j->given[DURATION][i];
    j->values[VALUE][i] = z.z;
    j->values[IM][i] = z.im;
    j->values[IS][i] = z.is;
    j->values[II][i] = z.ii;
    j->values[IIIM][i] = z.iiim;
    j->values[IIIS][i] = z.iiis;
    j->values[IV][i] = z.iv;
}

/* Whether every row is in order: then its values are found. */
FRAME_ALWAYS_INLINE int value_lanes(job *j, size_t row, size_t count) {
    for (int i = 0; i < NUMBERS; i++)
        if (j->columns[i] && !(j->given[i] = frame_column_lane(j->columns[i], row, count, j->rooms[i]))) return 0;
    if (j->columns[SIDE_SPECIES] && !find_gravities(j, SIDE_SPECIES, SIDE_GRAVITY, row, count)) return 0;
    if (j->columns[MAIN_SPECIES] && !find_gravities(j, MAIN_SPECIES, MAIN_GRAVITY, row, count)) return 0;
    if (!in_order(j, count) || !find_strengths(j, count)) return 0;
    FRAME_ROWS_APART
    for (size_t i = 0; i < count; i++) value_row(j, i);
    return 1;
}
static int value_block(job *j, size_t row, size_t count) {
    return value_lanes(j, row, count);
}
static FRAME_WIDE int value_block_wide(job *j, size_t row, size_t count) {
    return value_lanes(j, row, count);
}

size_t frame_dowel_lateral_columns(const frame_columns *all, size_t from) {
    int (*const value)(job *, size_t, size_t) = FRAME_IS_WIDE() ? value_block_wide : value_block;
    size_t row = from;
    job j;
    j.all = all;
    if (!begin(&j, from)) return 0;
    while (row < all->rows) {
        const size_t count = all->rows - row < FRAME_LANE ? all->rows - row : FRAME_LANE;
        if (!value(&j, row, count)) break;
        for (int i = 0; i < WANTED; i++) frame_columns_give(all, wanted[i], row, count, j.values[i]);
        row += count;
    }
    return row - from;
}
