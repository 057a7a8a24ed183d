/* The pieces of a stair in space: stringers, treads and riser boards of every flight. In a flight's own axes x runs
 * level from its first riser's face, y to the left from its right side, z up from its foot. The stringers' riser cuts
 * stand a riser board's thickness behind the riser's face, their tread cuts a tread's thickness below its top. */
#include <math.h>

#include "layout/stair.h"

typedef struct place {
    vec3 origin, along, left;
} place;

static vec3 at(const place *p, double x, double y, double z) {
    return vec_add(vec_add(p->origin, vec_times(p->along, x)), vec_add(vec_times(p->left, y), (vec3){0, 0, z}));
}

/* Where the next flight begins: turns go to the left. */
static place next_place(const frame_stair *stair, const place *p, int flight) {
    const double run = frame_stair_treads_of(stair, flight) * stair->tread;
    const double rise = stair->risers_of[flight] * stair->riser;
    const vec3 back = vec_times(p->along, -1), right = vec_times(p->left, -1);
    if (stair->turn == FRAME_STAIR_QUARTER)
        return (place){at(p, run + stair->landing, stair->width, rise), p->left, back};
    if (stair->turn == FRAME_STAIR_HALF) return (place){at(p, run, 2 * stair->width, rise), back, right};
    return (place){at(p, run + stair->landing, 0, rise), p->along, p->left};
}

static double finish_below(const frame_stair *stair, int flight) {
    return flight ? 0 : stair->finish_below; /* landings are taken as finished */
}

double frame_stair_first_cut(const frame_stair *stair, int flight, double floor) {
    return stair->riser - stair->tread_thickness + finish_below(stair, flight) - floor;
}

double frame_stair_stock(const frame_stair *stair, int flight, double floor) {
    const double steps = frame_stair_treads_of(stair, flight) * stair->step;
    return steps - (stair->riser - frame_stair_first_cut(stair, flight, floor)) * sin(stair->angle);
}

/* Between the inner points of the end cuts: the foot's level cut on the lower edge or its riser cut's corner, and the
 * top's plumb cut on the lower edge or the last tread cut's corner. */
static double short_point(const frame_stair *stair, int flight, double first_cut) {
    const int treads = frame_stair_treads_of(stair, flight);
    const double depth = stair->stringer.depth, slope = tan(stair->angle);
    const double foot = fmax(depth / slope - first_cut / sin(stair->angle), 0);
    const double top = fmin(treads * stair->step - depth * slope, (treads - 1) * stair->step);
    return top - foot;
}

/* The notches between the tread cuts, but for the last tread cut, which is an end cut. */
static void cut_steps(const frame_stair *stair, frame_layout_set *set, const place *p, int treads, double first_z) {
    const double face = stair->riser_thickness;
    for (int i = 0; i + 1 < treads; i++) {
        const vec3 corner = at(p, face + (i + 1) * stair->tread, 0, first_z + i * stair->riser);
        frame_layout_cut *tread = frame_layout_add_cut(set, FRAME_STICK_LAP_FACE, corner, (vec3){0, 0, 1}, "tread cut");
        if (tread) tread->notch = i + 1, tread->notch_kind = FRAME_STICK_NOTCH;
        frame_layout_cut *riser =
            frame_layout_add_cut(set, FRAME_STICK_SHOULDER, corner, vec_times(p->along, -1), "riser cut");
        if (riser) riser->notch = i + 1, riser->notch_kind = FRAME_STICK_NOTCH;
    }
}

static void cut_ends(const frame_stair *stair, frame_layout_set *set, const place *p, int treads, double first_z,
                     double floor_z) {
    const double face = stair->riser_thickness, back = face + treads * stair->tread;
    const double last_z = first_z + (treads - 1) * stair->riser;
    frame_layout_add_cut(set, FRAME_STICK_PLUMB_CUT, at(p, face, 0, 0), vec_times(p->along, -1), "first riser cut");
    frame_layout_add_cut(set, FRAME_STICK_LEVEL_CUT, at(p, face, 0, floor_z), (vec3){0, 0, -1}, "foot");
    frame_layout_add_cut(set, FRAME_STICK_PLUMB_CUT, at(p, back, 0, 0), p->along, "cut at the header");
    frame_layout_add_cut(set, FRAME_STICK_LEVEL_CUT, at(p, back, 0, last_z), (vec3){0, 0, 1}, "last tread cut");
}

static void add_stringer(const frame_stair *stair, frame_layout_set *set, const place *p, int flight, int which,
                         int number) {
    const int treads = frame_stair_treads_of(stair, flight);
    const double floor = flight ? 0 : stair->floor_at[which];
    const double first_z = stair->riser - stair->tread_thickness, floor_z = floor - finish_below(stair, flight);
    const double first_cut = frame_stair_first_cut(stair, flight, floor), margin = 1;
    const double thickness = stair->stringer.thickness;
    const double y = thickness / 2 + which * (stair->width - thickness) / (stair->stringers - 1);
    const double sine = sin(stair->angle), cosine = cos(stair->angle), half = stair->stringer.depth / 2;
    const double low = -first_cut * sine - margin, high = treads * stair->step - stair->riser * sine + margin;
    const vec3 start =
        at(p, stair->riser_thickness + low * cosine + half * sine, y, first_z + low * sine - half * cosine);
    const vec3 end =
        at(p, stair->riser_thickness + high * cosine + half * sine, y, first_z + high * sine - half * cosine);
    frame_layout_piece *piece =
        frame_layout_add(set, FRAME_PIECE_STRINGER, "stringer", number, &stair->stringer, start, end, (vec3){0, 0, 1});
    if (!piece) return;
    piece->length = frame_stair_stock(stair, flight, floor);
    piece->short_point = short_point(stair, flight, first_cut);
    piece->start_deg = piece->end_deg =
        stair->angle / FRAME_DEG; /* the plumb cuts; the level ones are square to them */
    cut_ends(stair, set, p, treads, first_z, floor_z);
    cut_steps(stair, set, p, treads, first_z);
}

static frame_layout_section board(frame_layout_set *set, double thickness, double depth) {
    return (frame_layout_section){thickness, depth, FRAME_NOT_GIVEN_INT,
                                  frame_layout_measures(set->answer, thickness, depth), FRAME_KNOWN_USER};
}

static void add_treads(const frame_stair *stair, frame_layout_set *set, const place *p, int flight, int *number) {
    if (stair->tread_thickness == 0) return;
    const double depth = stair->tread + stair->nosing;
    const frame_layout_section section = board(set, stair->tread_thickness, depth);
    for (int i = 0; i < frame_stair_treads_of(stair, flight); i++) {
        const double x = (i + 1) * stair->tread - depth / 2, z = (i + 1) * stair->riser - stair->tread_thickness / 2;
        frame_layout_add(set, FRAME_PIECE_TREAD, "tread", ++*number, &section, at(p, x, 0, z),
                         at(p, x, stair->width, z), p->along);
    }
}

/* The lowest floor under the stringers: the first riser board reaches down to it, to be scribed. */
static double lowest_floor(const frame_stair *stair, int flight) {
    double lowest = 0;
    for (int i = 0; flight == 0 && i < stair->stringers; i++) lowest = fmin(lowest, stair->floor_at[i]);
    return lowest - finish_below(stair, flight);
}

static void add_risers(const frame_stair *stair, frame_layout_set *set, const place *p, int flight, int *number) {
    const double thickness = stair->riser_thickness;
    if (thickness == 0) return;
    for (int i = 0; i < stair->risers_of[flight]; i++) {
        const int last = flight == stair->flights - 1 && i == stair->risers_of[flight] - 1;
        const double under_tread = (i + 1) * stair->riser - stair->tread_thickness;
        const double low = i ? i * stair->riser - stair->tread_thickness : lowest_floor(stair, flight);
        const int at_header = i == frame_stair_treads_of(stair, flight);
        const double high = at_header ? (i + 1) * stair->riser - (last ? stair->finish_above : 0) : under_tread;
        if (high - low < 1e-6) continue;
        const frame_layout_section section = board(set, thickness, high - low);
        const double x = i * stair->tread + thickness / 2, z = (low + high) / 2;
        frame_layout_add(set, FRAME_PIECE_RISER, "riser", ++*number, &section, at(p, x, 0, z),
                         at(p, x, stair->width, z), (vec3){0, 0, 1});
    }
}

void frame_stair_add_pieces(const frame_stair *stair, frame_layout_set *set) {
    place p = {{0, 0, 0}, {1, 0, 0}, {0, 1, 0}};
    int stringers = 0, risers = 0, treads = 0;
    for (int flight = 0; flight < stair->flights; flight++) {
        for (int i = 0; frame_stair_treads_of(stair, flight) && i < stair->stringers; i++)
            add_stringer(stair, set, &p, flight, i, ++stringers);
        add_risers(stair, set, &p, flight, &risers);
        add_treads(stair, set, &p, flight, &treads);
        p = next_place(stair, &p, flight);
    }
}
