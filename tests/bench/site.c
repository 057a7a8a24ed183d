/* Whole buildings: described, checked, placed and proved; how the time grows with their number. --check: the answers
 * alone. */
#include <stdio.h>
#include <string.h>
#include <sys/resource.h>
#include <time.h>

#include <frame/frame.h>

static double now(void) {
    struct timespec t;
    clock_gettime(CLOCK_MONOTONIC, &t);
    return (double)t.tv_sec + 1e-9 * (double)t.tv_nsec;
}

static int fail(void) {
    fprintf(stderr, "%s\n", frame_error_text());
    return 1;
}

static frame_species spf;
static frame_grade no2;

static int add_wall(frame_site *site, const char *level, const char *side, double x0, double y0, double x1, double y1,
                    int butt) {
    char name[40];
    frame_part_wall wall;
    frame_part_wall_init(&wall);
    snprintf(name, sizeof name, "%s %s", level, side);
    wall.name = name, wall.level = level;
    wall.from_x_in = x0, wall.from_y_in = y0, wall.to_x_in = x1, wall.to_y_in = y1;
    wall.size = FRAME_SIZE(2, 6), wall.species = spf, wall.grade = no2;
    wall.start_end = wall.end_end = butt ? FRAME_WALL_END_BUTT : FRAME_WALL_END_CORNER;
    return frame_site_wall(site, &wall);
}

static int add_beam(frame_site *site, const char *level, const char *side, double x, double y, int posts) {
    char name[40];
    frame_part_beam beam;
    frame_part_beam_init(&beam);
    snprintf(name, sizeof name, "%s beam %s", level, side);
    beam.name = name, beam.level = level;
    beam.from_x_in = x, beam.to_x_in = x + 240, beam.from_y_in = beam.to_y_in = y, beam.bearing_in = 5.5;
    beam.species = spf, beam.grade = no2;
    if (frame_site_beam(site, &beam)) return 1;
    for (int i = 0; i < posts; i++) {
        frame_part_post post;
        frame_part_post_init(&post);
        snprintf(name, sizeof name, "%s post %s%d", level, side, i);
        post.name = name, post.level = level;
        post.x_in = x + 3 + i * 234.0 / (posts - 1), post.y_in = y, post.bottom_in = -30;
        post.size = FRAME_SIZE(6, 6), post.species = spf, post.grade = no2;
        if (frame_site_post(site, &post)) return 1;
    }
    return 0;
}

/* A cabin of some 157 sticks, 24 ft from the last. */
static int add_cabin(frame_site *site, int number) {
    char level[24], name[40];
    const double x = number * 288.0;
    frame_part_level floor_level;
    frame_part_floor floor;
    frame_part_opening opening;
    frame_part_roof roof;
    frame_roof_corner corners[4];
    const double slope = 0.5, cx[4] = {x, x + 240, x + 240, x}, cy[4] = {0, 0, 144, 144};
    const frame_roof_kind kinds[4] = {FRAME_ROOF_HIP, FRAME_ROOF_GABLE, FRAME_ROOF_HIP, FRAME_ROOF_GABLE};
    snprintf(level, sizeof level, "cabin %d", number);
    frame_part_level_init(&floor_level);
    floor_level.name = level, floor_level.base_in = 0, floor_level.height_in = 97.125;
    if (frame_site_level(site, &floor_level) || add_wall(site, level, "front", x, 0, x + 240, 0, 0) ||
        add_wall(site, level, "back", x + 240, 144, x, 144, 0) ||
        add_wall(site, level, "right", x + 240, 5.5, x + 240, 138.5, 1) ||
        add_wall(site, level, "left", x, 138.5, x, 5.5, 1))
        return 1;
    frame_part_opening_init(&opening);
    char wall[40];
    snprintf(name, sizeof name, "%s window", level);
    snprintf(wall, sizeof wall, "%s front", level);
    opening.name = name, opening.wall = wall;
    opening.at_in = 76, opening.width_in = 60, opening.head_in = 80, opening.sill_in = 30;
    if (frame_site_opening(site, &opening)) return 1;
    frame_part_floor_init(&floor);
    snprintf(name, sizeof name, "%s floor", level);
    floor.name = name, floor.level = level;
    floor.from_x_in = x, floor.from_y_in = 0, floor.to_x_in = x + 240, floor.to_y_in = 144;
    floor.live_psf = 40, floor.along = FRAME_SITE_ALONG_Y, floor.species = spf, floor.grade = no2;
    if (frame_site_floor(site, &floor) || add_beam(site, level, "a", x, 2.75, 4) ||
        add_beam(site, level, "b", x, 141.25, 4))
        return 1;
    frame_part_roof_init(&roof);
    for (int i = 0; i < 4; i++) {
        frame_roof_corner_init(&corners[i]);
        corners[i].x_in = cx[i], corners[i].y_in = cy[i];
    }
    snprintf(name, sizeof name, "%s roof", level);
    roof.name = name, roof.level = level;
    roof.corners = corners, roof.corner_count = 4;
    roof.slopes = &slope, roof.slope_count = 1;
    roof.kinds = kinds, roof.kind_count = 4;
    roof.overhang_in = 12, roof.snow_psf = 30, roof.ridge = FRAME_SITE_RIDGE_BOARD, roof.species = spf,
    roof.grade = no2;
    return frame_site_roof(site, &roof);
}

static int run(int cabins, double *seconds, frame_framing_out *out) {
    frame_site_conditions conditions;
    frame_site *site;
    frame_framing_in in;
    frame_framing *framing;
    const double begun = now();
    frame_site_conditions_init(&conditions);
    conditions.name = "a row of cabins", conditions.ground_snow_psf = 40;
    conditions.snow_basis = FRAME_SNOW_50_YEAR, conditions.code_edition = FRAME_CODE_2021;
    if (frame_site_new(&conditions, &site)) return fail();
    for (int i = 0; i < cabins; i++)
        if (add_cabin(site, i)) return fail();
    frame_framing_in_init(&in);
    in.site = site;
    if (frame_framing_solve(&in, &framing, NULL)) return fail();
    *seconds = now() - begun;
    frame_framing_result(framing, out);
    frame_framing_free(framing);
    frame_site_free(site);
    if (out->fits == 1 && out->balance < 1e-9) return 0;
    fprintf(stderr, "%d cabins: they do not fit, or loads were lost\n", cabins);
    return 1;
}

int main(int count, char **words) {
    const int check = count > 1 && !strcmp(words[1], "--check");
    const int sizes[] = {2, 20, 65};
    if (frame_species_find("SPF", &spf) || frame_grade_find("No.2", &no2)) return fail();
    for (int i = 0; i < (check ? 1 : 3); i++) {
        double seconds;
        struct rusage usage;
        frame_framing_out out;
        if (run(sizes[i], &seconds, &out)) return 1;
        getrusage(RUSAGE_SELF, &usage);
        printf("%6d sticks, %5d checks: %7.3f s, %6.1f us a stick, at most %ld MB\n", (int)out.stick_total,
               (int)out.check_total, seconds, 1e6 * seconds / out.stick_total, usage.ru_maxrss / 1024);
    }
    return 0;
}
