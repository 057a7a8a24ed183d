/* A description while it is being worked out: bearers, the loads that come to them, and how they pass them on.
 *
 * Every bearer has a tier, which grows with height: a bearer hands its load only to bearers of lower tiers, and bearers
 * are worked out from the highest tier down. So nothing can carry itself, and one pass is enough. */
#ifndef FRAME_LIB_BUILDING_FRAMING_H
#define FRAME_LIB_BUILDING_FRAMING_H

#include <frame/building.h>

#include <frame/working.h>

#include "base/answer.h"
#include "building/site.h"
#include "load/cases.h"
#include "text/writer.h"

enum {
    FRAME_FRAMING_CHECKS,
    FRAME_FRAMING_LOADS,
    FRAME_FRAMING_FOOTINGS,
    FRAME_FRAMING_STICKS,
    FRAME_FRAMING_OPTIONS,
    FRAME_FRAMING_JOINTS,
    FRAME_FRAMING_STUDS,
    FRAME_FRAMING_BOARDS,
    FRAME_FRAMING_CUTS,
    FRAME_FRAMING_PURCHASES,
    FRAME_FRAMING_NOTES
};

/* A load, by kind; place 0 is free. */
typedef struct frame_by_kind {
    double k[FRAME_LOAD_KINDS];
} frame_by_kind;

void frame_by_kind_add(frame_by_kind *sum, const frame_by_kind *more, double times);
/* The largest and the least of the combinations, and which. */
double frame_by_kind_most(const frame_by_kind *load, frame_load_combination *which, double *duration);
double frame_by_kind_least(const frame_by_kind *load);

typedef struct frame_at_point {
    double s; /* along the bearer, from its start */
    frame_by_kind load;
} frame_at_point;

/* Tiers of one level; each level has a band of them. */
enum {
    FRAME_TIER_POST = 1,
    FRAME_TIER_BEAM = 2,
    FRAME_TIER_TRIMMER = 3,
    FRAME_TIER_HEADER_JOIST = 4,
    FRAME_TIER_JOISTS = 5,
    FRAME_TIER_TOP_POST = 6,
    FRAME_TIER_WALL = 7,
    FRAME_TIER_TOP_BEAM = 8,
    FRAME_TIER_ROOF_POST = 9,
    FRAME_TIER_RIDGE = 10,
    FRAME_TIER_HIP = 11,
    FRAME_TIER_RAFTERS = 12,
    FRAME_TIERS = 16
};

typedef struct frame_bearer {
    frame_bearer_kind kind;
    int32_t tier;
    const char *name;
    size_t part; /* its place in the list of its parts, or the roof's */
    size_t line; /* of a roof line, its place in the roof's lines */
    double x[2], y[2], length;
    double reach;     /* how far from its line a load may stand */
    double bottom;    /* of a wall, its foot; of a post, what it carries lies at this height */
    double top, foot; /* it carries what has its foot near its top; 0 top_known: whatever comes to it */
    int top_known, spare;
    frame_array points; /* frame_at_point */
    int existing, board;
} frame_bearer;

/* What stands under a point of a bearer. */
typedef struct frame_support {
    double s;      /* along the bearer that is carried */
    size_t bearer; /* what carries it */
    double at;     /* along that */
} frame_support;

/* Roofs: what roof_solve found, made ready. */
typedef struct frame_roof_shape {
    frame_part_roof roof;
    size_t level;
    frame_roof_solve *solved;
    size_t *line_bearers; /* for each line the bearer that it is; SIZE_MAX for none */
    double first_slope;   /* of the first edge that a roof rises from: its overhang is the one given */
    frame_size size;      /* of the rafters */
    double widest_run;    /* of its common rafters */
} frame_roof_shape;

/* A drawing for the packet: of a wall with its marks, of a stair. */
typedef struct frame_framing_view {
    frame_drawing *drawing;
    const char *name;
} frame_framing_view;

typedef struct frame_framing_inside {
    frame_array views;    /* frame_framing_view */
    frame_array workings; /* frame_working *, by check */
    frame_array sticks;   /* frame_stick *, by stick */
    char *name;
    frame_size largest; /* of the sizes that were chosen */
} frame_framing_inside;

/* A size that was chosen, or given. */
typedef struct frame_chosen {
    frame_size size;
    int32_t plies, jacks, is_ridge;
    size_t roof;
    double length;
} frame_chosen;

/* Joists that stand together under a wall. */
typedef struct frame_doubled {
    size_t floor;
    double across; /* where, from the floor's lower or left edge */
    int32_t plies, spare;
} frame_doubled;

/* Snow on top of the balanced load beside a step, in bands parallel to an edge: at their near and far sides, falling
 * evenly between. */
typedef struct frame_snow_band {
    double near, far, near_psf, far_psf;
} frame_snow_band;
typedef struct frame_snow_field {
    double x, y, along_x, along_y, in_x, in_y, length; /* the edge, and the way into the roof */
    frame_snow_band bands[4];
    int32_t count, spare;
} frame_snow_field;

/* The members round an opening in a floor: its rectangle in the floor's own axes, its headers and trimmers as bearers
 * (at the lesser side first), and the plies that were chosen. */
typedef struct frame_floor_edges {
    double u[2], v[2];
    size_t headers[2], trimmers[2];
    int32_t header_plies, trimmer_plies;
} frame_floor_edges;

typedef struct frame_framing_job {
    const frame_framing_in *in;
    const frame_site *site;
    frame_site *own_site; /* when it was read from text */
    frame_site_conditions conditions;
    frame_answer *answer;
    frame_framing_out *out;
    frame_framing_inside *inside;
    frame_text *text;
    frame_part_level *levels;
    size_t *level_rank;
    frame_part_wall *walls;
    frame_part_opening *openings;
    frame_part_floor *floors;
    frame_part_floor_opening *floor_openings;
    frame_part_stair *stairs;
    frame_part_snow_step *snow_steps;
    frame_part_beam *beams;
    frame_part_post *posts;
    frame_part_load *loads;
    frame_roof_shape *roofs;
    size_t level_count, wall_count, opening_count, floor_count, floor_opening_count, stair_count, snow_step_count,
        beam_count, post_count, load_count, roof_count;
    size_t *level_of_wall, *level_of_floor, *level_of_beam, *level_of_post, *level_of_load, *wall_of_opening,
        *floor_of_opening, *opening_of_stair, *roof_of_step;
    frame_snow_field *snow_fields;  /* by snow step */
    frame_floor_edges *floor_edges; /* by opening in a floor */
    frame_array bearers;            /* frame_bearer */
    frame_arena arena;
    frame_by_kind put, down;
    frame_known known;
    const char *removed_wall; /* a stud taken out */
    double removed_at;
    int beside_fails; /* something is carried by nothing */
    int footing_fails;
    int not_placed;                /* some sticks could not be placed */
    double *post_tops, *post_feet; /* by post; not given where it carries nothing */
    int uplift, wind_given, existing_loads;
    int step_untold;      /* a roof meets a wall, and no step is described there */
    frame_size only_size; /* the one size of "fewest sizes"; 0 while it is looked for */
    frame_size largest_chosen;
    frame_chosen *chosen_beams;              /* by beam */
    frame_chosen *chosen_headers;            /* by opening */
    double *floor_spans, *floor_cantilevers; /* of the joists, by floor */
    frame_size *floor_sizes;                 /* by floor */
    frame_array doubled;                     /* frame_doubled: joists under walls */
    frame_array chosen_lines;                /* frame_chosen, of roofs */
} frame_framing_job;

#define FRAME_BEARER(job, i) (&FRAME_ITEM(frame_bearer, (job)->bearers, i))
#define FRAME_NOBODY ((size_t)-1)

/* The answer's parts that the packet asks for. */
frame_framing_inside *frame_framing_inside_of(const frame_framing *framing);

/* -- reading -- */
frame_status frame_framing_read(frame_framing_job *job);
void frame_framing_give(frame_framing_job *job);

/* -- bearers -- */
frame_status frame_bearer_add(frame_framing_job *job, const frame_bearer *bearer, size_t *place);
frame_status frame_framing_bearers(frame_framing_job *job);
int32_t frame_framing_tier(const frame_framing_job *job, size_t level, int32_t in_level);
/* What may stand under a point: bearers of tiers from least to under below, their tops near the foot of what they
 * carry: more than 3 ft under it is another storey. */
typedef struct frame_below {
    int32_t least, below;
    double foot, reach_down;
} frame_below;
#define FRAME_STOREY_GAP 36.0
/* The highest of them under a point; FRAME_NOBODY without one. */
size_t frame_bearer_under(const frame_framing_job *job, double x, double y, const frame_below *below, double *at);
/* The wall that a roof or ledger leans on. */
size_t frame_bearer_beside(const frame_framing_job *job, double x, double y, double *at);
/* Finds what stands under a line between its ends: sorted, merged. */
frame_status frame_bearer_supports(const frame_framing_job *job, const frame_bearer *bearer, frame_array *supports);
/* Sorts supports along the bearer; of those within 8 in of each other only the highest counts. */
void frame_supports_merge(const frame_framing_job *job, frame_array *supports);
/* Hands a load on, and lists it. */
frame_status frame_deliver(frame_framing_job *job, frame_bearer_kind of_kind, const char *of, size_t to, double at,
                           double x, double y, const frame_by_kind *load);
/* The load comes to the ground, to what stands already, or to nothing. */
frame_status frame_deliver_down(frame_framing_job *job, frame_bearer_kind of_kind, const char *of, frame_bearer_kind to,
                                const char *on, double x, double y, const frame_by_kind *load);
void frame_bearer_point(const frame_bearer *bearer, double s, double *x, double *y);
/* Where a post stands that stops at this height at most. */
void frame_bearer_lower(frame_framing_job *job, size_t bearer, double height);

/* -- surfaces -- */
frame_status frame_framing_roofs(frame_framing_job *job);
frame_status frame_framing_roof_strips(frame_framing_job *job, size_t roof);
/* What the rafters of a face go by. */
typedef struct frame_rafter_face {
    double run, slope, snow, unbalanced, drift;
    int32_t edge, upper; /* above a break */
} frame_rafter_face;
frame_status frame_framing_rafters(frame_framing_job *job, size_t roof, const frame_rafter_face *faces, size_t count);
frame_status frame_framing_roof_snow(frame_framing_job *job, const frame_roof_shape *shape, double slope, double run,
                                     double *balanced, double *unbalanced);
/* What roof_snow is asked of a roof. */
void frame_framing_describe_snow(const frame_framing_job *job, const frame_roof_shape *shape, double slope, double run,
                                 frame_roof_snow_in *in);
/* Drifts and slides beside the steps, as fields over their roofs. */
frame_status frame_framing_snow_steps(frame_framing_job *job);
frame_status frame_framing_floors(frame_framing_job *job);
frame_status frame_framing_loads(frame_framing_job *job);
frame_status frame_framing_stairs(frame_framing_job *job);
/* The rectangles of the floors' openings, and their headers and trimmers as bearers. */
frame_status frame_floor_openings(frame_framing_job *job);
/* What has nothing to stand on at one end or both: all on it is listed as carried by nothing. */
frame_status frame_line_fall(frame_framing_job *job, const frame_bearer *bearer);
/* What stands on a trimmer or header joist: checked, its plies chosen, handed on. */
frame_status frame_floor_edge(frame_framing_job *job, size_t bearer);
/* A floor of a level over a point, with so much of it round the point; FRAME_NOBODY without one. */
size_t frame_floor_over(const frame_framing_job *job, size_t level, double x, double y, double within);
/* Loads that stand on a floor's joists, where neither beam nor wall lies under them: the joists hand them on. */
typedef struct frame_on_floor {
    double x, y;
    frame_by_kind load;
} frame_on_floor;
frame_status frame_floor_carry(frame_framing_job *job, size_t floor, const char *name, const frame_on_floor *loads,
                               size_t count);
frame_status frame_roof_board(frame_framing_job *job, size_t bearer);

/* -- lines, walls, posts -- */
frame_status frame_framing_line(frame_framing_job *job, size_t bearer);
frame_status frame_framing_wall(frame_framing_job *job, size_t bearer);
frame_status frame_framing_post(frame_framing_job *job, size_t bearer);

/* What a joist in the middle of a floor bears on; give the array back. */
frame_status frame_floor_supports(const frame_framing_job *job, size_t floor, frame_array *supports);
/* Chooses and checks a floor's joists. */
frame_status frame_floor_joists(frame_framing_job *job, size_t floor, double span, double cantilever);
/* The dressed size of a floor's joists. */
frame_status frame_floor_depth(const frame_framing_job *job, size_t floor, double *thickness, double *depth);
/* Remembers what was chosen for a beam or a roof's line, for the sticks. */
frame_status frame_framing_chosen(frame_framing_job *job, const frame_bearer *bearer, frame_size size, int32_t plies);

/* A beam with its supports and whatever stands on it. */
typedef struct frame_line_beam {
    const char *name;
    frame_bearer_kind kind;
    double length;
    frame_by_kind uniform_plf;
    const frame_at_point *points;
    size_t point_count;
    const frame_support *supports;
    size_t support_count;
    frame_size size; /* FRAME_NOT_GIVEN_INT: to be chosen */
    int32_t plies;   /* the same */
    int32_t most_plies;
    double most_depth, least_depth; /* where it must fit; what is cut against it; 0 for none */
    frame_species species;
    frame_grade grade;
    double bearing_in;
    double unbraced_in; /* 0 where its compression edge is held */
    double live_limit, total_limit;
    int wet, header, joist;
    double spacing_in; /* of joists */
    double clear_span; /* of a header, for the code's table */
    int32_t least_plies, spare;
    size_t deck; /* of a deck's beam, the place of its floor, from 1; 0 for others */
} frame_line_beam;

typedef struct frame_line_result {
    double ratio, bending, shear, bearing, deflection, reaction, moment;
    frame_governing governs;
    frame_known known;
    double self_plf, depth;
    frame_size size;
    int32_t plies;
} frame_line_result;

/* Tries one size; w may be NULL. */
frame_status frame_line_try(const frame_line_beam *beam, frame_size size, int32_t plies, frame_line_result *result,
                            frame_working *w);
/* Chooses where sizes are open, checks, lists the check and the sizes tried. */
frame_status frame_line_choose(frame_framing_job *job, const frame_line_beam *beam, frame_line_result *result);
/* What each support carries, by kind, the beam's own weight in it. */
frame_status frame_line_reactions(const frame_line_beam *beam, double self_plf, frame_by_kind *reactions);

/* -- lists -- */
typedef struct frame_framing_made_check {
    const char *name, *what, *governs, *code;
    const char *block; /* in place of out */
    double ratio, code_ratio, length;
    frame_bool passes, code_passes;
    frame_known known;
    frame_bearer_kind kind;
    const void *out;
    frame_working *working;
} frame_framing_made_check;
frame_status frame_framing_check_add(frame_framing_job *job, const frame_framing_made_check *check);
frame_status frame_framing_note_add(frame_framing_job *job, frame_note_kind kind, const char *about, const char *text);
frame_status frame_framing_notes(frame_framing_job *job, const char *about, const void *out);
frame_status frame_framing_assumed(frame_framing_job *job, const char *about, const frame_struct *facts,
                                   uint64_t assumed);
frame_status frame_framing_option_add(frame_framing_job *job, const char *name, frame_size size, int32_t plies,
                                      double ratio, double cost, frame_bool taken, int32_t governs, const char *reason);
const char *frame_framing_text(frame_framing_job *job, const char *format, ...);
/* The price of a foot of a size by the stock; not given where it has none. */
double frame_framing_price(const frame_framing_job *job, frame_size size);
/* What a length of it costs; board feet where the stock has no price. */
double frame_framing_cost(const frame_framing_job *job, frame_size size, int32_t plies, double length_in);
/* Words on a size: "2-2x10". */
void frame_framing_size_words(frame_size size, int32_t plies, char words[32]);

/* -- the code's tables beside the calculation -- */
typedef struct frame_beside_code {
    double allowed, jacks; /* not given where no table tells */
    const char *words;
    frame_known known;
} frame_beside_code;
void frame_code_beside_joist(frame_framing_job *job, frame_code_use use, frame_size size, frame_species species,
                             frame_grade grade, double spacing, double live, double dead, double snow,
                             frame_beside_code *beside);
void frame_code_beside_header(frame_framing_job *job, frame_code_supports supports, frame_size size, int32_t plies,
                              frame_beside_code *beside);
void frame_code_beside_deck_beam(frame_framing_job *job, size_t floor, frame_size size, int32_t plies,
                                 frame_species species, frame_beside_code *beside);
void frame_code_beside_deck_post(frame_framing_job *job, size_t floor, frame_size size, frame_species species,
                                 double live_lb, frame_beside_code *beside);
void frame_code_beside_deck_footing(frame_framing_job *job, size_t floor, double live_lb, frame_beside_code *beside);
/* A deck of a level; FRAME_NOBODY without one. */
size_t frame_floor_deck_of(const frame_framing_job *job, size_t level);
void frame_code_beside_stud(frame_framing_job *job, frame_size size, frame_code_on_studs supports, double height,
                            frame_grade grade, frame_beside_code *beside);
void frame_code_beside_deck_joist(frame_framing_job *job, frame_size size, frame_species species, frame_grade grade,
                                  double spacing, double live, double snow, frame_beside_code *beside);

/* -- walls -- */
/* What stands upright in a wall and carries: a stud, a king, or the jacks beside an opening. */
typedef struct frame_upright {
    double s;
    int32_t plies, is_jack;
    int32_t opening; /* from 1 */
    frame_bool king;
    frame_by_kind load;
} frame_upright;
/* The opening's header: its size, its jacks. */
frame_status frame_framing_header(frame_framing_job *job, size_t wall, size_t opening, const frame_at_point *points,
                                  size_t count, frame_by_kind ends[2]);
/* How the wall is laid out, with the headers chosen; openings is room for its openings. */
void frame_framing_wall_describe(const frame_framing_job *job, size_t wall, frame_wall_opening *openings,
                                 frame_wall_in *in);
/* Its uprights, from the start. */
frame_status frame_framing_uprights(frame_framing_job *job, size_t wall, frame_array *uprights);
/* Checks them as columns, lists them. */
frame_status frame_framing_uprights_check(frame_framing_job *job, size_t wall, const frame_array *uprights);
/* The largest ratio of one as a column over its combinations, and what it is under the worst. */
frame_status frame_upright_ratio(const frame_framing_job *job, size_t wall, const frame_by_kind *load, int32_t plies,
                                 double length, int lateral, double *ratio, frame_column_check_in *worst);

/* -- columns -- */
/* The largest ratio over the combinations of a load; in is then as under the worst. */
frame_status frame_column_worst(const frame_by_kind *load, double wind_plf, frame_column_check_in *in, double *ratio);
/* Lists its check with its working; there: what is compared with what the code's table allows. */
frame_status frame_column_list(frame_framing_job *job, const char *name, const frame_column_check_in *worst,
                               frame_bearer_kind kind, double there, const frame_beside_code *beside);
/* What wood weighs in service. */
double frame_wood_weight(double volume_in3, double gravity);
/* The top of a beam: at the top of its level's walls, or under the joists of its floor. */
double frame_beam_top(const frame_framing_job *job, size_t beam);

/* -- footings, joints, sticks, buying -- */
/* The footing of a post or stair; deck: the deck it carries, FRAME_NOBODY for none. */
frame_status frame_framing_pad(frame_framing_job *job, const char *name, double x, double y, double given_in2,
                               const frame_by_kind *load, size_t deck);
frame_status frame_framing_thrust(frame_framing_job *job, size_t roof, double thrust_lb, double duration,
                                  int32_t places);
frame_status frame_framing_uplift(frame_framing_job *job);
frame_status frame_framing_place(frame_framing_job *job);
frame_status frame_framing_buy(frame_framing_job *job);

/* The whole of it, as if a stud were out: of a wall, at a place. */
frame_status frame_framing_work(const frame_framing_in *in, const char *removed_wall, double removed_at,
                                frame_answer *answer, frame_framing_out *out);

#endif
