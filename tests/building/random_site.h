/* Random buildings for tests: one storey on posts and beams or on footings, of any size, with a roof of any kind,
 * openings, a deck. */
#ifndef FRAME_TESTS_RANDOM_SITE_H
#define FRAME_TESTS_RANDOM_SITE_H

#include <stdint.h>
#include <stdio.h>

#include <frame/frame.h>

typedef struct dice {
    uint64_t state;
} dice;

static inline double roll(dice *d, double low, double high) {
    d->state = d->state * 6364136223846793005u + 1442695040888963407u;
    return low + (high - low) * (double)(d->state >> 11) / 9007199254740992.0;
}
static inline int toss(dice *d, int sides) {
    return (int)roll(d, 0, sides - 1e-9);
}

typedef struct plan {
    double width, depth, height, snow, slope, overhang, roof_dead;
    int hip, beam_ridge, on_posts, windows, deck;
    double half, broken; /* height of half hips; height of a break to half the slope; 0 without */
    double step, upper;  /* a higher wall along the right edge, its height and the length of roof behind it */
    double well[4];      /* an opening in the floor: x from and to, y from and to; none where all are 0 */
    double ground;       /* snow on it, psf: then the code's table of headers is asked as well */
    double opening;      /* width of the windows; 36 in where it is 0 */
} plan;

static inline plan random_plan(dice *d) {
    plan p;
    p.width = 12 * (10 + toss(d, 20));
    p.depth = 12 * (8 + toss(d, 8));
    p.height = 90 + toss(d, 20);
    p.snow = toss(d, 2) ? 5.0 * toss(d, 12) : 0;
    p.slope = (3 + toss(d, 9)) / 12.0;
    p.overhang = 4.0 * toss(d, 5);
    p.roof_dead = 8 + toss(d, 10);
    p.hip = toss(d, 2) && p.width > p.depth + 24;
    p.half = !p.hip && p.width > p.depth + 24 && !toss(d, 3) ? p.depth / 2 * p.slope * roll(d, 0.2, 0.7) : 0;
    p.broken = !p.hip && !(p.half > 0) && !toss(d, 3) ? p.depth / 2 * p.slope * roll(d, 0.2, 0.8) : 0;
    p.beam_ridge = p.hip || p.half > 0 || p.broken > 0 || toss(d, 2);
    p.on_posts = toss(d, 2);
    p.windows = toss(d, 3);
    p.deck = toss(d, 2);
    p.step = toss(d, 2) ? roll(d, 6, 120) : 0;
    p.upper = roll(d, 120, 1200);
    p.ground = p.opening = 0;
    for (int i = 0; i < 4; i++) p.well[i] = 0;
    if (p.on_posts && toss(d, 2)) { /* between the front and the middle beam, or over the middle one */
        p.well[0] = roll(d, 6, p.width / 2), p.well[1] = p.well[0] + roll(d, 12, 80);
        p.well[2] = roll(d, 8, p.depth / 2), p.well[3] = p.well[2] + roll(d, 12, p.depth / 2 - 20);
    }
    return p;
}

#define SITE_CALL(call)                                             \
    do {                                                            \
        if (call) {                                                 \
            fprintf(stderr, "%s: %s\n", #call, frame_error_text()); \
            return 1;                                               \
        }                                                           \
    } while (0)

static inline void of_wood(frame_species *species, frame_grade *grade) {
    frame_species_find("SPF", species);
    frame_grade_find("No.2", grade);
}

static inline int add_wall(frame_site *site, const char *name, double x0, double y0, double x1, double y1) {
    frame_part_wall wall;
    frame_part_wall_init(&wall);
    wall.name = name, wall.level = "main";
    wall.from_x_in = x0, wall.from_y_in = y0, wall.to_x_in = x1, wall.to_y_in = y1;
    wall.size = FRAME_SIZE(2, 6);
    of_wood(&wall.species, &wall.grade);
    const int long_wall = y0 == y1;
    wall.start_end = wall.end_end = long_wall ? FRAME_WALL_END_CORNER : FRAME_WALL_END_BUTT;
    SITE_CALL(frame_site_wall(site, &wall));
    return 0;
}

static inline int add_beam(frame_site *site, const char *name, double y, double x1) {
    frame_part_beam beam;
    frame_part_beam_init(&beam);
    beam.name = name, beam.level = "main";
    beam.from_x_in = 0, beam.from_y_in = beam.to_y_in = y, beam.to_x_in = x1;
    beam.bearing_in = 5.5;
    of_wood(&beam.species, &beam.grade);
    SITE_CALL(frame_site_beam(site, &beam));
    return 0;
}

static inline int add_post(frame_site *site, const char *name, double x, double y, int to_roof) {
    frame_part_post post;
    frame_part_post_init(&post);
    post.name = name, post.level = "main";
    post.x_in = x, post.y_in = y;
    post.size = FRAME_SIZE(6, 6);
    post.to_roof = to_roof;
    if (!to_roof)
        post.bottom_in = -30;
    else
        post.bottom_in = -10;
    of_wood(&post.species, &post.grade);
    SITE_CALL(frame_site_post(site, &post));
    return 0;
}

static inline int add_window(frame_site *site, const char *name, const char *wall, double at, double width) {
    frame_part_opening opening;
    frame_part_opening_init(&opening);
    opening.name = name, opening.wall = wall;
    opening.at_in = at, opening.width_in = width, opening.head_in = 78, opening.sill_in = 30;
    SITE_CALL(frame_site_opening(site, &opening));
    return 0;
}

static inline int add_roof(frame_site *site, const plan *p) {
    frame_part_roof roof;
    frame_roof_corner corners[4];
    const double x[4] = {0, p->width, p->width, 0}, y[4] = {0, 0, p->depth, p->depth};
    const frame_roof_kind end = p->hip ? FRAME_ROOF_HIP : p->half > 0 ? FRAME_ROOF_HALF_HIP : FRAME_ROOF_GABLE;
    const frame_roof_kind kinds[4] = {FRAME_ROOF_HIP, end, FRAME_ROOF_HIP, end};
    const double upper = p->slope / 2;
    for (int i = 0; i < 4; i++) {
        frame_roof_corner_init(&corners[i]);
        corners[i].x_in = x[i], corners[i].y_in = y[i];
    }
    frame_part_roof_init(&roof);
    roof.name = "roof", roof.level = "main";
    roof.corners = corners, roof.corner_count = 4;
    roof.slopes = &p->slope, roof.slope_count = 1;
    roof.kinds = kinds, roof.kind_count = 4;
    if (p->half > 0) roof.half_hip_in = p->half;
    if (p->broken > 0) roof.break_in = p->broken, roof.upper_slopes = &upper, roof.upper_slope_count = 1;
    roof.dead_psf = p->roof_dead;
    roof.snow_psf = p->snow;
    roof.overhang_in = p->overhang;
    roof.size = FRAME_SIZE(2, 10);
    roof.ridge = p->beam_ridge ? FRAME_SITE_RIDGE_BEAM : FRAME_SITE_RIDGE_BOARD;
    of_wood(&roof.species, &roof.grade);
    SITE_CALL(frame_site_roof(site, &roof));
    if (p->step > 0) {
        frame_part_snow_step step;
        frame_part_snow_step_init(&step);
        step.name = "tower", step.roof = "roof", step.edge = 1;
        step.height_in = p->step, step.upper_length_in = p->upper;
        step.upper_slope = 0.5, step.upper_run_in = p->upper / 2;
        SITE_CALL(frame_site_snow_step(site, &step));
    }
    if (!p->hip && !(p->half > 0)) return 0;
    const double from = p->depth / 2 - p->half / p->slope; /* where the ridge begins */
    return add_post(site, "ridge post 1", from, p->depth / 2, 1) ||
           add_post(site, "ridge post 2", p->width - from, p->depth / 2, 1);
}

static inline int add_floor(frame_site *site, const plan *p) {
    frame_part_floor floor;
    frame_part_floor_init(&floor);
    floor.name = "floor", floor.level = "main";
    floor.from_x_in = 0, floor.from_y_in = 0, floor.to_x_in = p->width, floor.to_y_in = p->depth;
    floor.live_psf = 40;
    floor.along = FRAME_SITE_ALONG_Y;
    of_wood(&floor.species, &floor.grade);
    floor.size = FRAME_SIZE(2, 10);
    SITE_CALL(frame_site_floor(site, &floor));
    if (p->well[1] > 0) {
        frame_part_floor_opening well;
        frame_part_floor_opening_init(&well);
        well.name = "well", well.floor = "floor";
        well.from_x_in = p->well[0], well.to_x_in = p->well[1], well.from_y_in = p->well[2], well.to_y_in = p->well[3];
        SITE_CALL(frame_site_floor_opening(site, &well));
    }
    const double at[3] = {2.75, p->depth / 2, p->depth - 2.75};
    static const char *const beams[3] = {"front beam", "middle beam", "back beam"};
    for (int b = 0; b < 3; b++) {
        if (add_beam(site, beams[b], at[b], p->width)) return 1;
        const int posts = 2 + (int)(p->width / 72);
        for (int i = 0; i < posts; i++) {
            char name[40];
            snprintf(name, sizeof name, "%s post %d", beams[b], i);
            if (add_post(site, name, 3 + (p->width - 6) * i / (posts - 1), at[b], 0)) return 1;
        }
    }
    return 0;
}

/* The parts in an order that the dice decide. */
static inline int random_site(dice *d, const plan *p, frame_site **made) {
    frame_site_conditions conditions;
    frame_part_level level;
    const double wide = p->opening > 0 ? p->opening : 36;
    frame_site_conditions_init(&conditions);
    conditions.name = "random building";
    conditions.ground_snow_psf = p->step > 0 ? 30 : p->ground;
    if (p->ground > 0) conditions.building_width_in = p->depth;
    conditions.snow_basis = FRAME_SNOW_50_YEAR;
    conditions.code_edition = FRAME_CODE_2021;
    SITE_CALL(frame_site_new(&conditions, made));
    frame_part_level_init(&level);
    level.name = "main", level.base_in = 0, level.height_in = p->height;
    int order[8];
    for (int i = 0; i < 8; i++) order[i] = i;
    for (int i = 7; i > 0; i--) {
        const int k = toss(d, i + 1), swap = order[i];
        order[i] = order[k], order[k] = swap;
    }
    const double w = p->width, t = p->depth;
    for (int i = 0; i < 8; i++) switch (order[i]) {
            case 0:
                SITE_CALL(frame_site_level(*made, &level));
                break;
            case 1:
                if (add_wall(*made, "front", 0, 0, w, 0)) return 1;
                break;
            case 2:
                if (add_wall(*made, "back", w, t, 0, t)) return 1;
                break;
            case 3:
                if (add_wall(*made, "right", w, 5.5, w, t - 5.5)) return 1;
                break;
            case 4:
                if (add_wall(*made, "left", 0, t - 5.5, 0, 5.5)) return 1;
                break;
            case 5:
                if (add_roof(*made, p)) return 1;
                break;
            case 6:
                if (p->on_posts && add_floor(*made, p)) return 1;
                break;
            default:
                if (p->windows > 0 && add_window(*made, "window 1", "front", 30, wide)) return 1;
                if (p->windows > 1 && add_window(*made, "window 2", "back", 40, wide)) return 1;
        }
    return 0;
}

#endif
