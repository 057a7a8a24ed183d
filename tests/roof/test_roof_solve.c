/* The roof over a plan: closed forms, plans of which much happens at one point, and properties of random roofs: 500, or
 * 10,000 in the long run. */
#include "plans.h"

static frame_roof_solve *solve(const frame_roof_solve_in *in, frame_roof_solve_out *out) {
    frame_roof_solve *roof;
    ck_assert_msg(frame_roof_solve_solve(in, &roof, NULL) == FRAME_OK, "%s", frame_error_text());
    ck_assert_int_eq(frame_roof_solve_result(roof, out), FRAME_OK);
    return roof;
}

static frame_roof_solve_face face_at(const frame_roof_solve *roof, size_t i) {
    frame_roof_solve_face face;
    ck_assert_int_eq(frame_roof_solve_face_at(roof, i, &face), FRAME_OK);
    return face;
}

static frame_roof_solve_outline outline_at(const frame_roof_solve *roof, size_t i) {
    frame_roof_solve_outline corner;
    ck_assert_int_eq(frame_roof_solve_outline_at(roof, i, &corner), FRAME_OK);
    return corner;
}

static size_t count_lines(const frame_roof_solve *roof, frame_roof_line_kind kind) {
    size_t count = 0;
    for (size_t i = 0; i < frame_roof_solve_line_count(roof); i++) {
        frame_roof_solve_line line;
        frame_roof_solve_line_at(roof, i, &line);
        count += line.kind == kind;
    }
    return count;
}

static void rectangle(plan *p, double length, double width) {
    p->corner_count = p->hole_count = 0;
    plan_add(p, 0, 0), plan_add(p, length, 0), plan_add(p, length, width), plan_add(p, 0, width);
}

/* -- closed forms -- */

START_TEST(a_hip_roof) {
    static plan p;
    frame_roof_solve_out out;
    rectangle(&p, 480, 240);
    frame_roof_solve *roof = solve(plan_finish(&p, 0.5), &out);
    ck_assert_double_eq_tol(out.height_in, 60, 1e-9);
    ck_assert_double_eq_tol(out.ridge_length_in, 240, 1e-9);
    ck_assert_double_eq_tol(out.hip_length_in, 4 * sqrt(120 * 120 * 2 + 60 * 60), 1e-9);
    ck_assert_double_eq_tol(out.eave_length_in, 2 * 720, 1e-9);
    ck_assert_double_eq_tol(out.surface_area_in2, 480 * 240 * sqrt(1.25), 1e-6);
    /* A prism over the ridge, and two half pyramids. */
    ck_assert_double_eq_tol(out.volume_in3, 240 * 240 * 60 / 2.0 + 240 * 240 * 60 / 3.0, 1e-6);
    ck_assert_uint_eq(count_lines(roof, FRAME_LINE_RIDGE), 1);
    ck_assert_uint_eq(count_lines(roof, FRAME_LINE_HIP), 4);
    ck_assert_uint_eq(frame_roof_solve_face_count(roof), 4);
    ck_assert_uint_eq(frame_roof_solve_point_count(roof), 6);
    frame_roof_solve_free(roof);
}
END_TEST

START_TEST(a_drawing) {
    static plan p;
    frame_roof_solve_out out;
    frame_drawing *drawing;
    frame_text *text;
    rectangle(&p, 480, 240);
    frame_roof_solve *roof = solve(plan_finish(&p, 0.5), &out);
    ck_assert_int_eq(frame_roof_solve_drawing(roof, &drawing), FRAME_OK);
    ck_assert_int_eq(frame_text_new(&text), FRAME_OK);
    ck_assert_int_eq(frame_drawing_svg(drawing, text), FRAME_OK);
    ck_assert_ptr_nonnull(strstr(frame_text_chars(text), "face 3, 6 in 12"));
    ck_assert_ptr_nonnull(strstr(frame_text_chars(text), "111.8 sq ft")); /* 120 x 240 / 2 x sqrt(1.25) sq in */
    frame_text_free(text);
    frame_drawing_free(drawing);
    ck_assert_int_eq(frame_roof_solve_drawing(NULL, &drawing), FRAME_REQUIRED);
    frame_roof_solve_free(roof);
}
END_TEST

START_TEST(a_pyramid) {
    static plan p;
    frame_roof_solve_out out;
    rectangle(&p, 240, 240);
    frame_roof_solve *roof = solve(plan_finish(&p, 1), &out);
    ck_assert_double_eq_tol(out.volume_in3, 240 * 240 * 120 / 3.0, 1e-6);
    ck_assert_uint_eq(count_lines(roof, FRAME_LINE_RIDGE), 0);
    ck_assert_uint_eq(frame_roof_solve_point_count(roof), 5);
    frame_roof_solve_free(roof);
}
END_TEST

START_TEST(a_gable_roof) {
    static plan p;
    frame_roof_solve_out out;
    rectangle(&p, 480, 240);
    plan_finish(&p, 0.5);
    p.kinds[1] = p.kinds[3] = FRAME_ROOF_GABLE;
    frame_roof_solve *roof = solve(&p.in, &out);
    ck_assert_double_eq_tol(out.volume_in3, 480 * 240 * 60 / 2.0, 1e-6);
    ck_assert_double_eq_tol(out.ridge_length_in, 480, 1e-9);
    ck_assert_double_eq_tol(out.rake_length_in, 4 * hypot(120, 60), 1e-9);
    ck_assert_double_eq_tol(out.upright_area_in2, 2 * 240 * 60 / 2.0, 1e-6);
    ck_assert_double_eq_tol(out.hip_length_in, 0, 1e-12);
    frame_roof_solve_free(roof);
}
END_TEST

/* One slope against a wall: a shed. */
START_TEST(a_shed_roof) {
    static plan p;
    frame_roof_solve_out out;
    rectangle(&p, 480, 240);
    plan_finish(&p, 0.25);
    p.kinds[1] = p.kinds[3] = FRAME_ROOF_GABLE;
    p.kinds[2] = FRAME_ROOF_WALL;
    frame_roof_solve *roof = solve(&p.in, &out);
    ck_assert_double_eq_tol(out.height_in, 60, 1e-9);
    ck_assert_double_eq_tol(out.volume_in3, 480 * 240 * 60 / 2.0, 1e-6);
    ck_assert_uint_eq(count_lines(roof, FRAME_LINE_WALL), 1);
    ck_assert_uint_eq(count_lines(roof, FRAME_LINE_RAKE), 2);
    frame_roof_solve_free(roof);
}
END_TEST

START_TEST(a_half_hip) {
    static plan p;
    frame_roof_solve_out out;
    rectangle(&p, 480, 240);
    plan_finish(&p, 0.5);
    p.kinds[1] = p.kinds[3] = FRAME_ROOF_HALF_HIP;
    p.in.half_hip_in = 40;
    frame_roof_solve *roof = solve(&p.in, &out);
    /* The gable roof less the two corners that the small hips cut off: pyramids over half the triangle's base. */
    const double small = 20 / 0.5; /* run of the hip and half its width, for 20 in of rise */
    ck_assert_double_eq_tol(out.ridge_length_in, 480 - 2 * small, 1e-9);
    ck_assert_double_eq_tol(out.volume_in3, 480 * 240 * 60 / 2.0 - 2 * (small * 2 * small / 2) * 20 / 3.0, 1e-6);
    ck_assert_double_eq_tol(out.upright_area_in2, 2 * (240 * 60 / 2.0 - small * 20), 1e-6);
    frame_roof_solve_free(roof);
}
END_TEST

/* Steep below, flat above. */
START_TEST(a_broken_roof) {
    static plan p;
    static const double upper[] = {0.5};
    frame_roof_solve_out out;
    rectangle(&p, 480, 240);
    plan_finish(&p, 2);
    p.kinds[1] = p.kinds[3] = FRAME_ROOF_GABLE;
    p.in.upper_slopes = upper, p.in.upper_slope_count = 1;
    p.in.break_in = 80;
    frame_roof_solve *roof = solve(&p.in, &out);
    ck_assert_double_eq_tol(out.height_in, 80 + 80 * 0.5, 1e-9);
    ck_assert_double_eq_tol(out.break_length_in, 2 * 480, 1e-9);
    const double section = 80 * (240 - 40) + 160 * 40 / 2.0; /* a trapezium under the break, a triangle over it */
    ck_assert_double_eq_tol(out.volume_in3, 480 * section, 1e-6);
    frame_roof_solve_free(roof);
}
END_TEST

/* Plates of unequal height: a gable roof whose ridge is not in the middle (ridge_place says where). */
START_TEST(unequal_plates) {
    static plan p;
    frame_roof_solve_out out;
    frame_ridge_place_in place;
    frame_ridge_place_out placed;
    rectangle(&p, 480, 240);
    plan_finish(&p, 0.5);
    p.kinds[1] = p.kinds[3] = FRAME_ROOF_GABLE;
    p.plates[2] = 24;
    p.in.plates_in = p.plates, p.in.plate_count = 4;
    frame_roof_solve *roof = solve(&p.in, &out);
    frame_ridge_place_in_init(&place);
    place.span_in = 240, place.slope_a = 0.5, place.plate_b_in = 24;
    ck_assert_int_eq(frame_ridge_place(&place, &placed, NULL), FRAME_OK);
    ck_assert_double_eq_tol(out.height_in, placed.rise_a_in, 1e-9);
    const double section = placed.run_a_in * placed.rise_a_in / 2 + placed.run_b_in * (24 + placed.rise_b_in / 2);
    ck_assert_double_eq_tol(out.volume_in3, 480 * section, 1e-6);
    frame_roof_solve_free(roof);
}
END_TEST

/* A square courtyard in a square: a ring of gable roofs, mitred at the corners. */
START_TEST(a_courtyard) {
    static plan p;
    frame_roof_solve_out out;
    rectangle(&p, 600, 600);
    plan_add_hole(&p, 1, 200, 200), plan_add_hole(&p, 1, 400, 200), plan_add_hole(&p, 1, 400, 400),
        plan_add_hole(&p, 1, 200, 400);
    frame_roof_solve *roof = solve(plan_finish(&p, 0.5), &out);
    ck_assert_double_eq_tol(out.plan_area_in2, 600 * 600 - 200 * 200, 1e-6);
    ck_assert_double_eq_tol(out.height_in, 50, 1e-9);
    ck_assert_double_eq_tol(out.ridge_length_in, 4 * 400, 1e-9);
    ck_assert_double_eq_tol(out.volume_in3, 4 * 400 * 200 * 50 / 2.0, 1e-6);
    ck_assert_uint_eq(count_lines(roof, FRAME_LINE_VALLEY), 4);
    frame_roof_solve_free(roof);
}
END_TEST

/* Edges in line: with one slope they are one roof; with two, a wall stands between. */
START_TEST(edges_in_line) {
    static plan p;
    frame_roof_solve_out out;
    p.corner_count = p.hole_count = 0;
    plan_add(&p, 0, 0), plan_add(&p, 240, 0), plan_add(&p, 480, 0), plan_add(&p, 480, 240), plan_add(&p, 0, 240);
    frame_roof_solve *roof = solve(plan_finish(&p, 0.5), &out);
    ck_assert_double_eq_tol(out.volume_in3, 240 * 240 * 60 / 2.0 + 240 * 240 * 60 / 3.0, 1e-6);
    ck_assert_uint_eq(count_lines(roof, FRAME_LINE_SEAM), 1);
    ck_assert(!FRAME_HAS(out.cautions, FRAME_ROOF_CAUTION_BREAK_WALL));
    frame_roof_solve_free(roof);
    p.slopes[0] = 1;
    roof = solve(&p.in, &out);
    ck_assert(FRAME_HAS(out.cautions, FRAME_ROOF_CAUTION_BREAK_WALL));
    frame_roof_solve_free(roof);
}
END_TEST

/* -- properties -- */

/* Area and volume of a face from triangles of its outline, without its plane. */
static void by_triangles(const frame_roof_solve *roof, const frame_roof_solve_face *face, double *area,
                         double *volume) {
    const uint32_t last = face->outline_first + face->outline_count;
    *area = *volume = 0;
    for (uint32_t i = face->outline_first, first = i; i < last; i++) {
        const frame_roof_solve_outline a = outline_at(roof, first), b = outline_at(roof, i);
        if (b.loop != a.loop) first = i;
        if (i + 1 == last || i == first) continue;
        const frame_roof_solve_outline c = outline_at(roof, i + 1);
        if (c.loop != b.loop || a.loop != b.loop) continue;
        const double twice = (b.x_in - a.x_in) * (c.y_in - a.y_in) - (b.y_in - a.y_in) * (c.x_in - a.x_in);
        *area += twice / 2;
        *volume += twice / 6 * (a.z_in + b.z_in + c.z_in);
    }
}

static int contains(const frame_roof_solve *roof, const frame_roof_solve_face *face, double x, double y) {
    const uint32_t last = face->outline_first + face->outline_count;
    int inside = 0;
    for (uint32_t i = face->outline_first, first = i; i < last; i++) {
        const frame_roof_solve_outline a = outline_at(roof, i);
        if (a.loop != outline_at(roof, first).loop) first = i;
        const int closes = i + 1 == last || outline_at(roof, i + 1).loop != a.loop;
        const frame_roof_solve_outline b = outline_at(roof, closes ? first : i + 1);
        if ((a.y_in > y) != (b.y_in > y) && x < a.x_in + (y - a.y_in) / (b.y_in - a.y_in) * (b.x_in - a.x_in))
            inside = !inside;
    }
    return inside;
}

/* Each point of the plan lies in exactly one sloping face, each point outside in none. */
static void check_cover(const plan *p, const frame_roof_solve *roof, const frame_roof_solve_out *out) {
    double low[2] = {HUGE_VAL, HUGE_VAL}, high[2] = {-HUGE_VAL, -HUGE_VAL};
    for (size_t i = 0; i < p->corner_count; i++) {
        low[0] = fmin(low[0], p->corners[i].x_in), high[0] = fmax(high[0], p->corners[i].x_in);
        low[1] = fmin(low[1], p->corners[i].y_in), high[1] = fmax(high[1], p->corners[i].y_in);
    }
    double area = 0;
    for (size_t i = 0; i < frame_roof_solve_face_count(roof); i++) area += face_at(roof, i).plan_area_in2;
    ck_assert_double_eq_tol(area, out->plan_area_in2, 1e-9 * area);
    ck_assert_double_eq_tol(plan_area(p), out->plan_area_in2, 1e-9 * area);
    for (int k = 0; k < 8; k++) {
        const double x = random_in(low[0], high[0]), y = random_in(low[1], high[1]);
        int inside = 0, faces = 0;
        for (size_t i = 0; i < p->corner_count; i++) {
            const frame_roof_corner *a = &p->corners[i], *b = &p->corners[(i + 1) % p->corner_count];
            if ((a->y_in > y) != (b->y_in > y) &&
                x < a->x_in + (y - a->y_in) / (b->y_in - a->y_in) * (b->x_in - a->x_in))
                inside = !inside;
        }
        for (size_t i = 0, first = 0; i < p->hole_count; i++) {
            const int last = i + 1 == p->hole_count || p->holes[i + 1].hole != p->holes[i].hole;
            const frame_roof_hole_corner *a = &p->holes[i], *b = &p->holes[last ? first : i + 1];
            if ((a->y_in > y) != (b->y_in > y) &&
                x < a->x_in + (y - a->y_in) / (b->y_in - a->y_in) * (b->x_in - a->x_in))
                inside = !inside;
            if (last) first = i + 1;
        }
        for (size_t i = 0; i < frame_roof_solve_face_count(roof); i++) {
            const frame_roof_solve_face face = face_at(roof, i);
            if (face.slope != FRAME_NOT_GIVEN) faces += contains(roof, &face, x, y);
        }
        ck_assert_msg(faces == inside, "point %.17g, %.17g lies in %d faces, %d expected", x, y, faces, inside);
    }
}

/* By planes and by triangles the volume is the same, and no line lies under the eaves. */
static void check_measures(const frame_roof_solve *roof, const frame_roof_solve_out *out) {
    double sum = 0;
    for (size_t i = 0; i < frame_roof_solve_face_count(roof); i++) {
        const frame_roof_solve_face face = face_at(roof, i);
        double area, volume;
        if (face.slope == FRAME_NOT_GIVEN) continue;
        by_triangles(roof, &face, &area, &volume);
        ck_assert_double_eq_tol(area, face.plan_area_in2, 1e-9 * out->plan_area_in2);
        ck_assert_double_ge(face.plan_area_in2, -1e-9 * out->plan_area_in2);
        ck_assert_double_eq_tol(face.area_in2, face.plan_area_in2 * sqrt(1 + face.slope * face.slope), 1e-6);
        sum += volume;
    }
    ck_assert_double_eq_tol(sum, out->volume_in3, 1e-9 * out->volume_in3);
    for (size_t i = 0; i < frame_roof_solve_point_count(roof); i++) {
        frame_roof_solve_point point;
        frame_roof_solve_point_at(roof, i, &point);
        ck_assert_double_ge(point.z_in, -1e-9);
        ck_assert_double_le(point.z_in, out->height_in + 1e-9);
    }
}

/* Where all slopes are equal, no roof is higher over a point than its slope times the distance to the nearest eave. */
static void check_under_distance(const plan *p, const frame_roof_solve *roof, double slope) {
    for (size_t k = 0; k < frame_roof_solve_point_count(roof); k += 3) {
        frame_roof_solve_point point;
        double nearest = HUGE_VAL;
        frame_roof_solve_point_at(roof, k, &point);
        for (size_t i = 0; i < p->corner_count; i++) {
            const frame_roof_corner *a = &p->corners[i], *b = &p->corners[(i + 1) % p->corner_count];
            const double x = b->x_in - a->x_in, y = b->y_in - a->y_in;
            const double share = ((point.x_in - a->x_in) * x + (point.y_in - a->y_in) * y) / (x * x + y * y);
            const double at = fmin(fmax(share, 0), 1);
            nearest = fmin(nearest, hypot(point.x_in - a->x_in - at * x, point.y_in - a->y_in - at * y));
        }
        ck_assert_double_le(point.z_in, slope * nearest + 1e-7);
    }
}

static void random_plan(plan *p, int i) {
    if (i % 3 == 0)
        plan_star(p, 5 + rand() % 40, 60, 400);
    else
        plan_cells(p, 2 + rand() % 45, i % 3 == 1 ? 48 : 100.7, rand() % 4 == 0);
}

/* What may be refused: walls between edges in line, or gables all round, leave a part open. */
static frame_roof_solve *solve_or_open(const frame_roof_solve_in *in, frame_roof_solve_out *out) {
    frame_roof_solve *roof = NULL;
    const frame_status status = frame_roof_solve_solve(in, &roof, NULL);
    ck_assert_msg(status == FRAME_OK || status == FRAME_IMPOSSIBLE, "%s", frame_error_text());
    if (!status) frame_roof_solve_result(roof, out);
    return roof;
}

static int rounds(void) {
    return getenv("FRAME_LONG") ? 10000 : 500;
}

START_TEST(random_roofs_of_one_slope) {
    static plan p;
    for (int i = 0; i < rounds(); i++) {
        frame_roof_solve_out out;
        random_plan(&p, i);
        const double slope = random_in(0.2, 1.9);
        frame_roof_solve *roof = solve(plan_finish(&p, slope), &out);
        check_cover(&p, roof, &out);
        check_measures(roof, &out);
        check_under_distance(&p, roof, slope);
        ck_assert_double_eq_tol(out.surface_area_in2, out.plan_area_in2 * sqrt(1 + slope * slope),
                                1e-9 * out.surface_area_in2);
        frame_roof_solve_free(roof);
    }
}
END_TEST

static void vary(plan *p, int i) {
    static const double steps[] = {0.25, 0.5, 1};
    static const double plates[] = {0, 0, 0, 12, 36};
    for (size_t k = 0; k < plan_edges(p); k++) {
        p->slopes[k] = i % 2 ? steps[rand() % 3] : random_in(0.1, 2);
        if (i % 5 == 1 && rand() % 4 == 0) p->kinds[k] = FRAME_ROOF_GABLE + rand() % 2;
        if (i % 5 == 2) p->plates[k] = plates[rand() % 5];
        if (i % 5 == 3 && rand() % 5 == 0) p->kinds[k] = FRAME_ROOF_HALF_HIP;
    }
    if (i % 5 == 2) p->in.plates_in = p->plates, p->in.plate_count = plan_edges(p);
    p->in.half_hip_in = 30;
}

START_TEST(random_roofs_of_many_kinds) {
    static plan p;
    int solved = 0;
    for (int i = 0; i < rounds(); i++) {
        frame_roof_solve_out out;
        random_plan(&p, i);
        plan_finish(&p, 1);
        vary(&p, i);
        frame_roof_solve *roof = solve_or_open(&p.in, &out);
        if (!roof) continue;
        check_cover(&p, roof, &out);
        check_measures(roof, &out);
        frame_roof_solve_free(roof);
        solved++;
    }
    ck_assert_int_gt(solved, rounds() / 2);
}
END_TEST

/* Mirrored, turned, scaled, and read the other way round, a plan has the same roof. */
START_TEST(one_roof_however_it_lies) {
    static plan p, q;
    for (int i = 0; i < rounds() / 5; i++) {
        frame_roof_solve_out out, other;
        random_plan(&p, i);
        plan_finish(&p, 1);
        vary(&p, i / 3 * 5); /* hips of any slope */
        frame_roof_solve *roof = solve_or_open(&p.in, &out);
        if (!roof) continue;
        if (FRAME_HAS(out.cautions, FRAME_ROOF_CAUTION_BREAK_WALL)) { /* where that wall stands, rounding may decide */
            frame_roof_solve_free(roof);
            continue;
        }
        const double size = random_in(0.2, 5), angle = i % 2 ? 0 : random_in(0, 6);
        q = p;
        for (size_t k = 0; k < p.corner_count; k++) {
            const double x = -p.corners[k].x_in, y = p.corners[k].y_in;
            q.corners[k].x_in = size * (x * cos(angle) - y * sin(angle)) + 1000;
            q.corners[k].y_in = size * (x * sin(angle) + y * cos(angle)) - 300;
        }
        for (size_t k = 0; k < p.hole_count; k++) {
            const double x = -p.holes[k].x_in, y = p.holes[k].y_in;
            q.holes[k].x_in = size * (x * cos(angle) - y * sin(angle)) + 1000;
            q.holes[k].y_in = size * (x * sin(angle) + y * cos(angle)) - 300;
        }
        q.in.corners = q.corners, q.in.holes = q.hole_count ? q.holes : NULL;
        q.in.slopes = q.slopes, q.in.kinds = q.kinds;
        frame_roof_solve *turned = solve(&q.in, &other);
        ck_assert_double_eq_tol(other.volume_in3, size * size * size * out.volume_in3, 1e-7 * other.volume_in3);
        ck_assert_double_eq_tol(other.height_in, size * out.height_in, 1e-7 * other.height_in);
        ck_assert_double_eq_tol(other.surface_area_in2, size * size * out.surface_area_in2,
                                1e-7 * other.surface_area_in2);
        ck_assert(FRAME_HAS(other.cautions, FRAME_ROOF_CAUTION_CLOCKWISE) !=
                  FRAME_HAS(out.cautions, FRAME_ROOF_CAUTION_CLOCKWISE));
        frame_roof_solve_free(turned);
        frame_roof_solve_free(roof);
    }
}
END_TEST

/* -- refusals -- */

static void refused(const frame_roof_solve_in *in, frame_status status, const char *field, const char *part) {
    frame_roof_solve *roof = NULL;
    ck_assert_int_eq(frame_roof_solve_solve(in, &roof, NULL), status);
    ck_assert_str_eq(frame_error_field(), field);
    ck_assert_msg(strstr(frame_error_text(), part) != NULL, "%s", frame_error_text());
    ck_assert_ptr_null(roof);
}

START_TEST(what_cannot_be_is_refused) {
    static plan p;
    p.corner_count = p.hole_count = 0;
    plan_add(&p, 0, 0), plan_add(&p, 100, 100), plan_add(&p, 100, 0), plan_add(&p, 0, 100);
    refused(plan_finish(&p, 1), FRAME_IMPOSSIBLE, "corners", "edges 0 and 2");
    rectangle(&p, 100, 50);
    plan_finish(&p, 1);
    p.corners[2] = p.corners[1];
    refused(&p.in, FRAME_IMPOSSIBLE, "corners[2]", "same point");
    rectangle(&p, 100, 50);
    plan_add(&p, 0, -20);
    refused(plan_finish(&p, 1), FRAME_IMPOSSIBLE, "corners[4]", "fold back");
    rectangle(&p, 100, 50);
    plan_finish(&p, 1);
    p.in.slope_count = 3;
    refused(&p.in, FRAME_CONFLICT, "slopes", "3 items");
    plan_finish(&p, 1);
    p.slopes[1] = 0;
    refused(&p.in, FRAME_OUT_OF_RANGE, "slopes[1]", ">0..2");
    p.slopes[1] = 2.5;
    refused(&p.in, FRAME_OUT_OF_RANGE, "slopes[1]", "0..2");
    plan_finish(&p, 1);
    for (int i = 0; i < 4; i++) p.kinds[i] = FRAME_ROOF_GABLE;
    refused(&p.in, FRAME_IMPOSSIBLE, "kinds", "does not close");
    plan_finish(&p, 1);
    p.kinds[0] = FRAME_ROOF_HALF_HIP;
    refused(&p.in, FRAME_REQUIRED, "half_hip_in", "half hip");
    plan_finish(&p, 1);
    p.in.break_in = 20;
    refused(&p.in, FRAME_REQUIRED, "upper_slopes", "break_in alone");
    plan_add_hole(&p, 1, 200, 0), plan_add_hole(&p, 1, 210, 0), plan_add_hole(&p, 1, 200, 10);
    refused(plan_finish(&p, 1), FRAME_IMPOSSIBLE, "holes[0]", "outside");
    p.hole_count = 2;
    refused(plan_finish(&p, 1), FRAME_IMPOSSIBLE, "holes[0]", "2 corners");
}
END_TEST

/* Every second corner of a great star points inward, and all of them run into each other: it must not take for ever. */
START_TEST(a_great_star) {
    enum { CORNERS = 2000 };
    static frame_roof_corner corners[CORNERS];
    static const double slope = 1;
    frame_roof_solve_in in;
    frame_roof_solve_out out;
    double twice = 0;
    srand(1);
    for (int i = 0; i < CORNERS; i++) {
        const double angle = 2 * acos(-1.0) * i / CORNERS, radius = (i & 1 ? 700 : 1000) + random_in(0, 200);
        frame_roof_corner_init(&corners[i]);
        corners[i].x_in = radius * cos(angle), corners[i].y_in = radius * sin(angle);
    }
    for (int i = 0; i < CORNERS; i++) {
        const frame_roof_corner *a = &corners[i], *b = &corners[(i + 1) % CORNERS];
        twice += a->x_in * b->y_in - a->y_in * b->x_in;
    }
    frame_roof_solve_in_init(&in);
    in.corners = corners, in.corner_count = CORNERS, in.slopes = &slope, in.slope_count = 1;
    frame_roof_solve *roof = solve(&in, &out);
    ck_assert_double_eq_tol(out.plan_area_in2, twice / 2, 1e-9 * twice);
    ck_assert_double_eq_tol(out.surface_area_in2, out.plan_area_in2 * sqrt(2), 1e-9 * twice);
    frame_roof_solve_free(roof);
}
END_TEST

START_TEST(the_working_re_evaluates) {
    static plan p;
    frame_working *working;
    frame_text *problems;
    frame_roof_solve *roof;
    plan_cells(&p, 12, 96, 0);
    ck_assert_int_eq(frame_working_new(&working), FRAME_OK);
    ck_assert_int_eq(frame_text_new(&problems), FRAME_OK);
    ck_assert_int_eq(frame_roof_solve_solve(plan_finish(&p, 0.5), &roof, working), FRAME_OK);
    ck_assert_msg(frame_working_check(working, problems) == FRAME_OK, "%s", frame_text_chars(problems));
    ck_assert_uint_gt(frame_working_step_count(working), 20);
    frame_roof_solve_free(roof);
    frame_text_free(problems);
    frame_working_free(working);
}
END_TEST

int main(void) {
    srand(8);
    Suite *suite = suite_create("roof_solve");
    TCase *tests = tcase_create("all");
    tcase_set_timeout(tests, 1200);
    tcase_add_test(tests, a_hip_roof);
    tcase_add_test(tests, a_pyramid);
    tcase_add_test(tests, a_drawing);
    tcase_add_test(tests, a_gable_roof);
    tcase_add_test(tests, a_shed_roof);
    tcase_add_test(tests, a_half_hip);
    tcase_add_test(tests, a_broken_roof);
    tcase_add_test(tests, unequal_plates);
    tcase_add_test(tests, a_courtyard);
    tcase_add_test(tests, edges_in_line);
    tcase_add_test(tests, random_roofs_of_one_slope);
    tcase_add_test(tests, random_roofs_of_many_kinds);
    tcase_add_test(tests, one_roof_however_it_lies);
    tcase_add_test(tests, what_cannot_be_is_refused);
    tcase_add_test(tests, a_great_star);
    tcase_add_test(tests, the_working_re_evaluates);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
