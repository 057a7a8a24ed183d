/* joist_check over columns of the usual kind: span, spacing, loads, bearing and lumber may vary by the row, and passes
 * and the ratios are what is wanted of them. */
#include <stddef.h>

#include "base/columns.h"
#include "strength/joist_body.h"
#include "strength_facts.h"

#include "working/plain_math.h"

#define AT(field) offsetof(frame_joist_check_in, field)
#define OUT(field) offsetof(frame_joist_check_out, field)

/* What may vary, the lanes of numbers first. */
enum { SPAN, SPACING, LIVE, DEAD, SNOW, BEARING, NUMBERS, SIZE = NUMBERS, SPECIES, GRADE, VARYING };
static const size_t varying[VARYING] = {AT(span_in),    AT(spacing_in), AT(live_psf), AT(dead_psf), AT(snow_psf),
                                        AT(bearing_in), AT(size),       AT(species),  AT(grade)};
enum { RATIO, BENDING, SHEAR, BEARING_RATIO, DEFLECTION, RATIOS, PASSES = RATIOS, WANTED };
static const size_t wanted[WANTED] = {OUT(ratio),         OUT(bending_ratio),    OUT(shear_ratio),
                                      OUT(bearing_ratio), OUT(deflection_ratio), OUT(passes)};

/* What the checks take of a member. */
enum { BREADTH, AREA, MODULUS, INERTIA, SIZE_FACTOR, FB, FV, FC_PERP, E, MEMBER };

enum { KNOWN_BY = 64 };
typedef struct known_member {
    int32_t size, species, grade, there;
    double values[MEMBER];
} known_member;

typedef struct job {
    const frame_columns *all;
    const frame_column *columns[VARYING];
    frame_joist_check_in read; /* what does not vary, with its defaults */
    frame_joist_defaults by_use;
    const double *given[NUMBERS];
    frame_lane rooms[NUMBERS], member[MEMBER], ratios[RATIOS];
    int32_t passes[FRAME_LANE];
    int passes_wanted;
    known_member known[KNOWN_BY];
} job;

static int look_up(frame_size size, frame_species species, frame_grade grade, double *values) {
    frame_member m;
    frame_bending section;
    if (!frame_member_quick(size, species, grade, 1, &m)) return 0;
    frame_bending_section(&m, &section, NULL);
    values[BREADTH] = m.breadth;
    values[AREA] = section.area;
    values[MODULUS] = section.section_modulus;
    values[INERTIA] = section.inertia;
    values[SIZE_FACTOR] = m.size_factor;
    values[FB] = m.lumber.fb_psi;
    values[FV] = m.lumber.fv_psi;
    values[FC_PERP] = m.lumber.fc_perp_psi;
    values[E] = m.lumber.e_psi;
    return 1;
}

static int lumber_varies(const job *j) {
    return j->columns[SIZE] || j->columns[SPECIES] || j->columns[GRADE];
}

/* Sets up what is the same for all rows; 0 where the check is not of the usual kind. */
static int begin(job *j, size_t from) {
    const frame_columns *all = j->all;
    frame_joist_check_in first;
    double values[MEMBER];
    if (!frame_columns_within(all->ins, all->in_count, varying, VARYING) ||
        !frame_columns_within(all->outs, all->out_count, wanted, WANTED))
        return 0;
    frame_columns_row(all, from, &first, sizeof first);
    if (!frame_joist_in_order(&first) || !look_up(first.size, first.species, first.grade, values)) return 0;
    frame_joist_read_usual(&first, &j->read);
    FRAME_JOIST_DEFAULTS(&j->read, j->read.total_deflection_limit, &j->by_use);
    if (!(j->by_use.live_limit > 0) || !(j->by_use.total_limit > 0)) return 0;
    for (int i = 0; i < VARYING; i++) j->columns[i] = frame_column_of(all->ins, all->in_count, varying[i]);
    const double same[NUMBERS] = {j->read.span_in,
                                  j->read.spacing_in,
                                  frame_or(j->read.live_psf, 0),
                                  j->by_use.dead_psf,
                                  frame_or(j->read.snow_psf, 0),
                                  j->read.bearing_in};
    for (int i = 0; i < NUMBERS; i++)
        if (!j->columns[i]) frame_lane_fill(j->rooms[i], same[i]), j->given[i] = j->rooms[i];
    for (int i = 0; i < MEMBER; i++) frame_lane_fill(j->member[i], values[i]);
    j->passes_wanted = frame_column_of(all->outs, all->out_count, wanted[PASSES]) != NULL;
    for (int i = 0; i < KNOWN_BY; i++) j->known[i].there = 0;
    return 1;
}

static int32_t word_of(const job *j, int which, int32_t same, size_t row) {
    return j->columns[which] ? frame_column_word(j->columns[which], row) : same;
}

/* The lumber of each row: one met before is not looked up again. */
static int find_lumber(job *j, size_t row, size_t count) {
    for (size_t i = 0; i < count; i++) {
        const int32_t size = word_of(j, SIZE, j->read.size, row + i),
                      species = word_of(j, SPECIES, j->read.species, row + i),
                      grade = word_of(j, GRADE, j->read.grade, row + i);
        known_member *k = &j->known[((uint32_t)size * 7 + (uint32_t)species * 5 + (uint32_t)grade) % KNOWN_BY];
        if (!k->there || k->size != size || k->species != species || k->grade != grade) {
            if (!look_up(size, species, grade, k->values)) return k->there = 0;
            k->size = size, k->species = species, k->grade = grade, k->there = 1;
        }
        for (int v = 0; v < MEMBER; v++) j->member[v][i] = k->values[v];
    }
    return 1;
}

/* One row: the check itself, of which the compiler keeps what comes to the ratios. */
FRAME_ALWAYS_INLINE void check_row(job *restrict j, frame_joist_use use, size_t i) {
    frame_lane *const member = j->member;
    const frame_joist_check_in in = {.use = use,
                                     .span_in = j->given[SPAN][i],
                                     .spacing_in = j->given[SPACING][i],
                                     .live_psf = j->given[LIVE][i],
                                     .snow_psf = j->given[SNOW][i],
                                     .bearing_in = j->given[BEARING][i]};
    const frame_joist_defaults by_use = {.dead_psf = j->given[DEAD][i],
                                         .live_limit = j->by_use.live_limit,
                                         .total_limit = j->by_use.total_limit,
                                         .creep = j->by_use.creep};
    const frame_member m = {.plies = 1,
                            .breadth = member[BREADTH][i],
                            .lumber = {.fb_psi = member[FB][i],
                                       .fv_psi = member[FV][i],
                                       .fc_perp_psi = member[FC_PERP][i],
                                       .e_psi = member[E][i]},
                            .size_factor = member[SIZE_FACTOR][i],
                            .wet = &frame_member_dry,
                            .incised = &frame_member_not_incised,
                            .flat_use = &frame_member_on_edge,
                            .temperature_stress = 1,
                            .temperature_e = 1};
    frame_bending r = {.area = member[AREA][i], .section_modulus = member[MODULUS][i], .inertia = member[INERTIA][i]};
    frame_bending_ask ask = {.repetitive = frame_member_quick_sharing(1, in.spacing_in)};
    frame_joist_body(&in, &by_use, &m, &ask, &r, FRAME_JOIST_IN_LINE, NULL);
    j->ratios[RATIO][i] = r.ratio;
    j->ratios[BENDING][i] = r.bending_ratio;
    j->ratios[SHEAR][i] = r.shear_ratio;
    j->ratios[BEARING_RATIO][i] = r.bearing_ratio;
    j->ratios[DEFLECTION][i] = r.deflection_ratio;
}

/* Whether every row is in order: then they are checked. */
FRAME_ALWAYS_INLINE int check_lanes(job *restrict j, frame_joist_use use, size_t row, size_t count) {
    int64_t too_long = 0;
    for (int i = 0; i < NUMBERS; i++)
        if (j->columns[i] && !(j->given[i] = frame_column_lane(j->columns[i], row, count, j->rooms[i]))) return 0;
    for (size_t i = 0; i < count; i++) too_long |= j->given[BEARING][i] * 2 > j->given[SPAN][i] ? 1 : 0;
    if (too_long) return 0;
    FRAME_ROWS_APART
    for (size_t i = 0; i < count; i++) check_row(j, use, i);
    for (size_t i = 0; i < count && j->passes_wanted; i++) j->passes[i] = frame_holds(j->ratios[RATIO][i]);
    return 1;
}

FRAME_ALWAYS_INLINE int check_use(job *j, size_t row, size_t count) {
    return j->read.use == FRAME_USE_RAFTER ? check_lanes(j, FRAME_USE_RAFTER, row, count)
                                           : check_lanes(j, FRAME_USE_FLOOR, row, count);
}
static int check_block(job *j, size_t row, size_t count) {
    return check_use(j, row, count);
}
static FRAME_WIDE int check_block_wide(job *j, size_t row, size_t count) {
    return check_use(j, row, count);
}

static void give(const job *j, size_t row, size_t count) {
    for (int i = 0; i < RATIOS; i++) frame_columns_give(j->all, wanted[i], row, count, j->ratios[i]);
    frame_columns_give_words(j->all, wanted[PASSES], row, count, j->passes);
}

size_t frame_joist_check_columns(const frame_columns *all, size_t from) {
    int (*const check)(job *, size_t, size_t) = FRAME_IS_WIDE() ? check_block_wide : check_block;
    size_t row = from;
    job j;
    j.all = all;
    if (!begin(&j, from)) return 0;
    while (row < all->rows) {
        const size_t count = all->rows - row < FRAME_LANE ? all->rows - row : FRAME_LANE;
        if ((lumber_varies(&j) && !find_lumber(&j, row, count)) || !check(&j, row, count)) break;
        give(&j, row, count);
        row += count;
    }
    return row - from;
}
