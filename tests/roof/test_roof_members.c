/* Framed roofs: against the single members of this room, against each other, and against what must not fit. */
#include "plans.h"

static frame_roof_members_in *members_of(const plan *p, frame_size rafters, double overhang) {
    static frame_roof_members_in in;
    frame_roof_members_in_init(&in);
    in.corners = p->in.corners, in.corner_count = p->in.corner_count;
    in.slopes = p->in.slopes, in.slope_count = p->in.slope_count;
    in.kinds = p->in.kinds, in.kind_count = p->in.kind_count;
    in.holes = p->in.holes, in.hole_count = p->in.hole_count;
    in.rafter_size = rafters;
    in.overhang_in = overhang;
    return &in;
}

static frame_roof_members *solve(const frame_roof_members_in *in, frame_roof_members_out *out) {
    frame_roof_members *members;
    ck_assert_msg(frame_roof_members_solve(in, &members, NULL) == FRAME_OK, "%s", frame_error_text());
    ck_assert_int_eq(frame_roof_members_result(members, out), FRAME_OK);
    return members;
}

static frame_roof_members_piece piece_at(const frame_roof_members *members, size_t i) {
    frame_roof_members_piece piece;
    ck_assert_int_eq(frame_roof_members_piece_at(members, i, &piece), FRAME_OK);
    return piece;
}

static size_t count_kind(const frame_roof_members *members, frame_roof_member kind) {
    size_t count = 0;
    for (size_t i = 0; i < frame_roof_members_piece_count(members); i++) count += piece_at(members, i).kind == kind;
    return count;
}

static void rectangle(plan *p, double length, double width, double slope) {
    p->corner_count = p->hole_count = 0;
    plan_add(p, 0, 0), plan_add(p, length, 0), plan_add(p, length, width), plan_add(p, 0, width);
    plan_finish(p, slope);
}

static void assert_fits(const frame_roof_members *members, const frame_roof_members_out *out) {
    for (size_t i = 0; i < frame_roof_members_joint_count(members); i++) {
        frame_roof_members_joint joint;
        frame_roof_members_joint_at(members, i, &joint);
        ck_assert_msg(joint.holds, "%s, %s: %g of %g in2", piece_at(members, (size_t)joint.piece).name, joint.label,
                      joint.contact_in2, joint.required_in2);
    }
    ck_assert_int_eq(out->fits, 1);
    ck_assert_double_lt(out->overlap_in3, 0.001);
    ck_assert_uint_eq(frame_roof_members_overlap_count(members), 0);
    ck_assert_uint_eq(out->cautions >> FRAME_MEMBERS_CAUTION_FAULTS & 1, 0);
}

/* -- a gable roof, rafter by rafter -- */

START_TEST(a_gable_roof) {
    static plan p;
    frame_roof_members_out out;
    frame_rafter_in single;
    frame_rafter_out rafter;
    rectangle(&p, 240, 288, 7 / 12.0);
    p.kinds[1] = p.kinds[3] = FRAME_ROOF_GABLE;
    frame_roof_members *members = solve(members_of(&p, FRAME_SIZE(2, 8), 16), &out);
    assert_fits(members, &out);
    frame_rafter_in_init(&single);
    single.run_in = 144, single.slope = 7 / 12.0, single.ridge_thickness_in = 1.5, single.overhang_in = 16;
    single.size = FRAME_SIZE(2, 8);
    ck_assert_int_eq(frame_rafter(&single, &rafter, NULL), FRAME_OK);
    /* Layout at 0, 16 .. 240 less those at both gables, and an end rafter at each; on two faces. */
    ck_assert_uint_eq(count_kind(members, FRAME_MEMBER_COMMON), 2 * 14);
    ck_assert_uint_eq(count_kind(members, FRAME_MEMBER_END_RAFTER), 2 * 2);
    ck_assert_uint_eq(count_kind(members, FRAME_MEMBER_RIDGE), 1);
    for (size_t i = 0; i < frame_roof_members_piece_count(members); i++) {
        const frame_roof_members_piece piece = piece_at(members, i);
        if (piece.kind != FRAME_MEMBER_COMMON && piece.kind != FRAME_MEMBER_END_RAFTER) continue;
        ck_assert_double_eq_tol(piece.top_length_in, rafter.length_in, 1e-9);
        ck_assert_double_eq_tol(piece.length_in, rafter.stock_length_in, 1e-9);
    }
    ck_assert_double_eq_tol(out.height_above_plate_in, rafter.height_above_plate_in, 1e-12);
    frame_roof_members_free(members);
}
END_TEST

/* -- a hip roof: hips as the hip says, jacks by the common difference, opposite faces in pairs -- */

static double along_y(const frame_roof_members_piece *piece) {
    return fabs(piece->end_y_in - piece->start_y_in);
}

START_TEST(a_hip_roof) {
    static plan p;
    frame_roof_members_out out;
    rectangle(&p, 480, 240, 0.5);
    frame_roof_members *members = solve(members_of(&p, FRAME_SIZE(2, 8), 12), &out);
    assert_fits(members, &out);
    ck_assert_uint_eq(count_kind(members, FRAME_MEMBER_HIP), 4);
    double before = 0;
    for (size_t i = 0; i < frame_roof_members_piece_count(members); i++) {
        const frame_roof_members_piece piece = piece_at(members, i);
        if (piece.kind == FRAME_MEMBER_HIP)
            ck_assert_double_eq_tol(
                fabs(piece.end_z_in - piece.start_z_in) / hypot(piece.end_x_in - piece.start_x_in, along_y(&piece)),
                0.5 / sqrt(2), 1e-9);
        if (piece.kind != FRAME_MEMBER_HIP_JACK || piece.face != 0 || piece.hand != FRAME_HAND_LEFT) continue;
        if (before > 0) ck_assert_double_eq_tol(piece.top_length_in - before, 16 * sqrt(1.25), 1e-9);
        before = piece.top_length_in;
    }
    ck_assert_double_gt(before, 100);
    frame_roof_members_free(members);
}
END_TEST

START_TEST(opposite_rafters_stand_in_pairs) {
    static plan p;
    frame_roof_members_out out;
    rectangle(&p, 487, 241, 0.5);
    frame_roof_members_in *in = members_of(&p, FRAME_SIZE(2, 6), 12);
    in->layout_x_in = 5, in->layout_y_in = 3;
    frame_roof_members *members = solve(in, &out);
    size_t pairs = 0;
    for (size_t i = 0; i < frame_roof_members_piece_count(members); i++) {
        const frame_roof_members_piece a = piece_at(members, i);
        if (a.kind != FRAME_MEMBER_COMMON || a.face != 0) continue;
        for (size_t k = 0; k < frame_roof_members_piece_count(members); k++) {
            const frame_roof_members_piece b = piece_at(members, k);
            pairs += b.kind == FRAME_MEMBER_COMMON && b.face == 2 && fabs(a.start_x_in - b.start_x_in) < 1e-9;
        }
        ck_assert_double_eq_tol(remainder(a.start_x_in - 5, 16), 0, 1e-9);
    }
    ck_assert_uint_gt(pairs, 10);
    frame_roof_members_free(members);
}
END_TEST

/* -- sticks are the pieces -- */

START_TEST(each_piece_as_a_stick) {
    static plan p;
    frame_roof_members_out out;
    frame_stick *stick;
    p.corner_count = p.hole_count = 0;
    plan_add(&p, 0, 0), plan_add(&p, 480, 0), plan_add(&p, 480, 240), plan_add(&p, 240, 240);
    plan_add(&p, 240, 480), plan_add(&p, 0, 480);
    plan_finish(&p, 8 / 12.0);
    frame_roof_members *members = solve(members_of(&p, FRAME_SIZE(2, 8), 16), &out);
    assert_fits(members, &out);
    ck_assert_uint_gt(count_kind(members, FRAME_MEMBER_VALLEY_JACK), 4);
    for (size_t i = 0; i < frame_roof_members_piece_count(members); i++) {
        frame_stick_lengths_out lengths;
        const frame_roof_members_piece piece = piece_at(members, i);
        ck_assert_int_eq(frame_roof_members_stick(members, i, &stick), FRAME_OK);
        ck_assert_int_eq(frame_stick_lengths(stick, &lengths), FRAME_OK);
        ck_assert_double_eq_tol(lengths.long_point_in, piece.length_in, 1e-9);
        ck_assert_double_eq_tol(hypot(hypot(piece.end_x_in - piece.start_x_in, piece.end_y_in - piece.start_y_in),
                                      piece.end_z_in - piece.start_z_in),
                                piece.length_in, 1e-9);
        frame_stick_free(stick);
    }
    ck_assert_int_eq(frame_roof_members_stick(members, 100000, &stick), FRAME_OUT_OF_RANGE);
    frame_roof_members_free(members);
}
END_TEST

/* A gable roof with all that goes between its rafters: counted, and all of it fits. */
START_TEST(with_what_goes_between) {
    static plan p;
    frame_roof_members_out out;
    rectangle(&p, 200, 240, 0.5);
    p.kinds[1] = p.kinds[3] = FRAME_ROOF_GABLE;
    frame_roof_members_in *in = members_of(&p, FRAME_SIZE(2, 8), 16);
    in->rake_overhang_in = 14, in->joist_size = FRAME_SIZE(2, 6), in->blocking = 1;
    frame_roof_members *members = solve(in, &out);
    assert_fits(members, &out);
    ck_assert_uint_eq(count_kind(members, FRAME_MEMBER_FLY_RAFTER), 4);
    ck_assert_uint_eq(count_kind(members, FRAME_MEMBER_CEILING_JOIST), count_kind(members, FRAME_MEMBER_COMMON) / 2);
    ck_assert_uint_gt(count_kind(members, FRAME_MEMBER_LOOKOUT), 4 * 6);
    /* Between 12 commons and 2 end rafters on each wall there are 13 places, 12 of them parted by a joist's thickness.
     */
    ck_assert_uint_eq(count_kind(members, FRAME_MEMBER_BLOCK), 2 * 13);
    for (size_t i = 0; i < frame_roof_members_piece_count(members); i++) {
        const frame_roof_members_piece piece = piece_at(members, i);
        if (piece.kind == FRAME_MEMBER_LOOKOUT) ck_assert_double_eq_tol(piece.length_in, 14 - 1.5, 1e-9);
        if (piece.kind == FRAME_MEMBER_CEILING_JOIST) ck_assert_double_eq_tol(piece.length_in, 240, 1e-9);
        if (piece.kind == FRAME_MEMBER_RIDGE) ck_assert_double_eq_tol(piece.length_in, 200 + 2 * 14, 1e-9);
    }
    frame_roof_members_free(members);
    in->rake_overhang_in = 2;
    ck_assert_int_eq(frame_roof_members_solve(in, &members, NULL), FRAME_IMPOSSIBLE);
    ck_assert_str_eq(frame_error_field(), "rake_overhang_in");
}
END_TEST

/* A porch with hipped ends against a wall: the ledger runs on until the hips bear whole. */
START_TEST(a_porch_against_a_wall) {
    static plan p;
    frame_roof_members_out out;
    rectangle(&p, 360, 120, 0.5);
    p.kinds[2] = FRAME_ROOF_WALL;
    frame_roof_members *members = solve(members_of(&p, FRAME_SIZE(2, 6), 12), &out);
    assert_fits(members, &out);
    ck_assert_uint_eq(count_kind(members, FRAME_MEMBER_HIP), 2);
    ck_assert_uint_eq(count_kind(members, FRAME_MEMBER_LEDGER), 1);
    ck_assert_uint_eq(count_kind(members, FRAME_MEMBER_END_RAFTER), 2);
    for (size_t i = 0; i < frame_roof_members_piece_count(members); i++) {
        const frame_roof_members_piece piece = piece_at(members, i);
        /* From 120 to 240 in plan, and past both by 1-1/2 in and half the hip over the sine of 45 degrees. */
        if (piece.kind == FRAME_MEMBER_LEDGER)
            ck_assert_double_eq_tol(piece.length_in, 120 + 2 * (1.5 + 0.75 * sqrt(2)), 1e-9);
    }
    frame_roof_members_free(members);
}
END_TEST

/* A gambrel and a mansard: purlins along the breaks, rafters below and above them, all of it fits. */
START_TEST(with_breaks) {
    static plan p;
    frame_roof_members_out out;
    const double upper = 0.4;
    for (int gambrel = 0; gambrel < 2; gambrel++) {
        rectangle(&p, 360, 264, 20 / 12.0);
        if (gambrel) p.kinds[1] = p.kinds[3] = FRAME_ROOF_GABLE;
        frame_roof_members_in *in = members_of(&p, FRAME_SIZE(2, 8), 6);
        in->upper_slopes = &upper, in->upper_slope_count = 1, in->break_in = 84;
        in->seat_in = 2.5, in->blocking = 1, in->rake_overhang_in = 12;
        frame_roof_members *members = solve(in, &out);
        assert_fits(members, &out);
        ck_assert_uint_ge(count_kind(members, FRAME_MEMBER_BREAK), gambrel ? 2 : 4);
        for (size_t i = 0; i < frame_roof_members_piece_count(members); i++) {
            const frame_roof_members_piece piece = piece_at(members, i);
            if (piece.kind == FRAME_MEMBER_BREAK) ck_assert_double_eq_tol(piece.start_z_in, piece.end_z_in, 1e-9);
        }
        frame_roof_members_free(members);
    }
}
END_TEST

/* A roof with two planes of symmetry has its hips and jacks in pairs of both hands, and all commons alike. */
START_TEST(gangs) {
    static plan p;
    frame_roof_members_out out;
    rectangle(&p, 360, 240, 0.5);
    frame_roof_members_in *in = members_of(&p, FRAME_SIZE(2, 8), 16);
    in->layout_x_in = 180, in->layout_y_in = 120;
    frame_roof_members *members = solve(in, &out);
    size_t pieces = 0, before = 0;
    for (size_t i = 0; i < frame_roof_members_gang_count(members); i++) {
        frame_roof_members_gang gang;
        frame_roof_members_gang_at(members, i, &gang);
        pieces += (size_t)(gang.count + gang.opposite);
        ck_assert_int_eq(piece_at(members, (size_t)gang.first).gang, (int)i + 1);
        ck_assert_uint_ge((size_t)gang.first, before);
        before = (size_t)gang.first;
        if (gang.kind == FRAME_MEMBER_HIP || gang.kind == FRAME_MEMBER_HIP_JACK) {
            ck_assert_int_eq(gang.count, 2);
            ck_assert_int_eq(gang.opposite, 2);
        }
        if (gang.kind == FRAME_MEMBER_COMMON) ck_assert_int_eq(gang.opposite, 0);
    }
    ck_assert_uint_eq(pieces, frame_roof_members_piece_count(members));
    frame_roof_members_free(members);
}
END_TEST

/* -- pictures -- */

static size_t lines_in(const frame_drawing *drawing) {
    frame_text *text;
    size_t lines = 0;
    ck_assert_int_eq(frame_text_new(&text), FRAME_OK);
    ck_assert_int_eq(frame_drawing_svg(drawing, text), FRAME_OK);
    for (const char *at = frame_text_chars(text); (at = strchr(at, 'M')); at++) lines++;
    frame_text_free(text);
    return lines;
}

START_TEST(pictures) {
    static plan p;
    frame_roof_members_out out;
    frame_drawing *drawing;
    rectangle(&p, 240, 200, 0.5);
    frame_roof_members *members = solve(members_of(&p, FRAME_SIZE(2, 6), 12), &out);
    ck_assert_int_eq(frame_roof_members_drawing(members, &drawing), FRAME_OK);
    ck_assert_uint_gt(lines_in(drawing), 100);
    frame_drawing_free(drawing);
    ck_assert_int_eq(frame_roof_members_isometric(members, -60, &drawing), FRAME_OK);
    ck_assert_uint_gt(lines_in(drawing), 100);
    frame_drawing_free(drawing);
    ck_assert_int_eq(frame_roof_members_isometric(members, 1000, &drawing), FRAME_OUT_OF_RANGE);
    ck_assert_int_eq(frame_roof_members_drawing(NULL, &drawing), FRAME_REQUIRED);
    frame_roof_members_free(members);
}
END_TEST

/* -- what does not fit is named -- */

START_TEST(a_ridge_too_shallow_is_named) {
    static plan p;
    frame_roof_members_out out;
    rectangle(&p, 480, 240, 0.5);
    frame_roof_members_in *in = members_of(&p, FRAME_SIZE(2, 8), 12);
    in->ridge_size = FRAME_SIZE(2, 6);
    frame_roof_members *members = solve(in, &out);
    ck_assert_int_eq(out.fits, 0);
    ck_assert_uint_eq(out.cautions >> FRAME_MEMBERS_CAUTION_FAULTS & 1, 1);
    size_t failing = 0;
    for (size_t i = 0; i < frame_roof_members_joint_count(members); i++) {
        frame_roof_members_joint joint;
        frame_roof_members_joint_at(members, i, &joint);
        if (joint.holds) continue;
        ck_assert_int_eq(piece_at(members, (size_t)joint.on).kind, FRAME_MEMBER_RIDGE);
        failing++;
    }
    ck_assert_uint_eq(failing, count_kind(members, FRAME_MEMBER_COMMON) + 4);
    frame_roof_members_free(members);
}
END_TEST

START_TEST(what_is_refused) {
    static plan p;
    frame_roof_members *members;
    rectangle(&p, 480, 240, 0.5);
    frame_roof_members_in *in = members_of(&p, FRAME_SIZE(2, 6), 12);
    in->seat_in = 20;
    ck_assert_int_eq(frame_roof_members_solve(in, &members, NULL), FRAME_IMPOSSIBLE);
    ck_assert_str_eq(frame_error_field(), "seat_in");
    in->height_above_plate_in = 4;
    ck_assert_int_eq(frame_roof_members_solve(in, &members, NULL), FRAME_CONFLICT);
    in->seat_in = FRAME_NOT_GIVEN, in->height_above_plate_in = 30;
    ck_assert_int_eq(frame_roof_members_solve(in, &members, NULL), FRAME_IMPOSSIBLE);
    in->height_above_plate_in = FRAME_NOT_GIVEN;
    p.kinds[1] = FRAME_ROOF_HALF_HIP;
    ck_assert_int_eq(frame_roof_members_solve(in, &members, NULL), FRAME_REQUIRED);
    ck_assert_str_eq(frame_error_field(), "half_hip_in");
    p.kinds[1] =
        FRAME_ROOF_HIP; /* the first plate a foot higher than the second: no eave can reach down to one fascia */
    p.plates[0] = 12;
    in->plates_in = p.plates, in->plate_count = 4;
    ck_assert_int_eq(frame_roof_members_solve(in, &members, NULL), FRAME_IMPOSSIBLE);
    ck_assert_str_eq(frame_error_field(), "plates_in[1]");
    in->plate_count = 3;
    ck_assert_int_eq(frame_roof_members_solve(in, &members, NULL), FRAME_CONFLICT);
    in->plate_count = 0;
    p.kinds[0] = p.kinds[1] = p.kinds[2] = p.kinds[3] = FRAME_ROOF_GABLE;
    ck_assert_int_eq(frame_roof_members_solve(in, &members, NULL), FRAME_IMPOSSIBLE);
}
END_TEST

/* The eaves of opposite walls of a courtyard would meet: the edge is named. */
START_TEST(an_overhang_over_a_courtyard) {
    static plan p;
    frame_roof_members *members = NULL;
    rectangle(&p, 480, 480, 0.5);
    plan_add_hole(&p, 1, 220, 220), plan_add_hole(&p, 1, 260, 220), plan_add_hole(&p, 1, 260, 260);
    plan_add_hole(&p, 1, 220, 260);
    plan_finish(&p, 0.5);
    ck_assert_int_eq(frame_roof_members_solve(members_of(&p, FRAME_SIZE(2, 6), 20), &members, NULL), FRAME_IMPOSSIBLE);
    ck_assert_str_eq(frame_error_field(), "overhang_in");
    ck_assert_msg(strstr(frame_error_text(), "edge 4") != NULL, "%s", frame_error_text());
    ck_assert_ptr_null(members);
}
END_TEST

/* -- any plan of one slope is framed so that it closes -- */

static int plan_total(void) {
    return getenv("FRAME_LONG") ? 1000 : 25;
}

START_TEST(random_plans_close) {
    static plan p;
    frame_roof_members_out out;
    for (int i = 0; i < plan_total(); i++) {
        srand((unsigned)i);
        plan_cells(&p, 3 + rand() % 7, 144, 0);
        plan_finish(&p, random_in(0.3, 1.1));
        frame_roof_members_in *in = members_of(&p, FRAME_SIZE(2, 8), i & 1 ? 16 : 0);
        in->spacing_in = i & 2 ? 16 : 24;
        if (i & 4) in->joist_size = FRAME_SIZE(2, 6), in->blocking = 1;
        frame_roof_members *members = solve(in, &out);
        assert_fits(members, &out);
        frame_roof_members_free(members);
    }
}
END_TEST

/* -- gables, slopes and walls of many kinds -- */

static double turn_at(const plan *p, size_t i) {
    const size_t n = p->corner_count;
    const frame_roof_corner *a = &p->corners[(i + n - 1) % n], *b = &p->corners[i % n], *c = &p->corners[(i + 1) % n];
    return (b->x_in - a->x_in) * (c->y_in - b->y_in) - (b->y_in - a->y_in) * (c->x_in - b->x_in);
}

/* Gables on every other edge between outer corners, hips beside them. */
static void add_gables(plan *p) {
    const size_t n = p->corner_count;
    for (size_t k = 0; k < n; k++) {
        if (turn_at(p, k) <= 0 || turn_at(p, k + 1) <= 0 || rand() % 2) continue;
        if (p->kinds[(k + n - 1) % n] == FRAME_ROOF_HIP && p->kinds[(k + 1) % n] == FRAME_ROOF_HIP)
            p->kinds[k] = FRAME_ROOF_GABLE;
    }
}

START_TEST(random_gables_close) {
    static plan p;
    frame_roof_members_out out;
    for (int i = 0; i < plan_total(); i++) {
        srand((unsigned)i);
        plan_cells(&p, 3 + rand() % 7, 144, 0);
        plan_finish(&p, random_in(0.3, 1.1));
        add_gables(&p);
        frame_roof_members_in *in = members_of(&p, FRAME_SIZE(2, 8), i & 1 ? 16 : 0);
        if (i & 4) in->joist_size = FRAME_SIZE(2, 6), in->blocking = 1;
        frame_roof_members *members = solve(in, &out);
        assert_fits(members, &out);
        frame_roof_members_free(members);
    }
}
END_TEST

/* Slopes of whole inches, and walls anywhere: nothing overlaps, and few are left whose faults are named: hips that die
 * at the corner of a wall, and members shorter than they are thick. */
START_TEST(random_slopes_and_walls) {
    static plan p;
    frame_roof_members_out out;
    int solved = 0, faulty = 0;
    for (int i = 0; i < plan_total(); i++) {
        srand((unsigned)i);
        plan_cells(&p, 3 + rand() % 7, 144, 0);
        plan_finish(&p, 1);
        for (size_t k = 0; k < plan_edges(&p); k++) {
            p.slopes[k] = (4 + rand() % 7) / 12.0;
            if (i & 2 && rand() % 5 == 0) p.kinds[k] = FRAME_ROOF_WALL;
        }
        frame_roof_members_in *in = members_of(&p, FRAME_SIZE(2, 8), i & 1 ? 16 : 0);
        frame_roof_members *members = NULL;
        in->height_above_plate_in = 5.5;
        const frame_status status = frame_roof_members_solve(in, &members, NULL);
        if (status == FRAME_OUTSIDE_SCOPE || status == FRAME_IMPOSSIBLE) continue; /* edges that come into line */
        ck_assert_msg(status == FRAME_OK, "%s", frame_error_text());
        frame_roof_members_result(members, &out);
        ck_assert_uint_eq(frame_roof_members_overlap_count(members), 0);
        solved++, faulty += !out.fits;
        ck_assert_int_eq(!out.fits, (int)(out.cautions >> FRAME_MEMBERS_CAUTION_FAULTS & 1));
        frame_roof_members_free(members);
    }
    ck_assert_int_gt(solved, plan_total() / 2);
    ck_assert_msg(20 * faulty <= solved + 20, "%d of %d", faulty, solved);
}
END_TEST

/* A half hip: the plate on its gable carries its rafters; its hips start over the ends of that plate. */
START_TEST(half_hips) {
    static plan p;
    frame_roof_members_out out;
    for (int rake = 0; rake < 2; rake++) {
        rectangle(&p, 480, 240, 0.5);
        p.kinds[1] = p.kinds[3] = FRAME_ROOF_HALF_HIP;
        frame_roof_members_in *in = members_of(&p, FRAME_SIZE(2, 8), 12);
        in->half_hip_in = 30, in->rake_overhang_in = rake ? 12 : 0, in->blocking = 1;
        frame_roof_members *members = solve(in, &out);
        assert_fits(members, &out);
        ck_assert_uint_eq(count_kind(members, FRAME_MEMBER_HIP), 4);
        ck_assert_uint_eq(count_kind(members, FRAME_MEMBER_END_RAFTER), 4);
        size_t upper = 0;
        for (size_t i = 0; i < frame_roof_members_piece_count(members); i++) {
            const frame_roof_members_piece piece = piece_at(members, i);
            if (piece.kind == FRAME_MEMBER_PLATE && fabs(piece.start_z_in - 30) < 1e-9) {
                ck_assert_double_eq_tol(piece.length_in, 240 - 2 * 30 / 0.5, 1e-9);
                upper++;
            }
            /* Of a common rafter of the half hip: it rises from over that plate. */
            if (piece.kind == FRAME_MEMBER_COMMON && piece.edge % 2) ck_assert_double_gt(piece.start_z_in, 20);
        }
        ck_assert_uint_eq(upper, 2);
        frame_roof_members_free(members);
    }
}
END_TEST

/* Unequal slopes with equal overhangs: the steeper roof's plates lie higher by the overhang times the difference of
 * slopes, and the hips run down to the corners of the fascia. */
START_TEST(equal_overhangs_by_plates) {
    static plan p;
    frame_roof_members_out out;
    rectangle(&p, 480, 240, 0.5);
    p.slopes[1] = p.slopes[3] = 0.75;
    p.plates[1] = p.plates[3] = 16 * 0.25;
    frame_roof_members_in *in = members_of(&p, FRAME_SIZE(2, 8), 16);
    in->height_above_plate_in = 5.5, in->plates_in = p.plates, in->plate_count = 4, in->blocking = 1;
    frame_roof_members *members = solve(in, &out);
    assert_fits(members, &out);
    ck_assert_double_eq_tol(out.fascia_height_in, 5.5 - 16 * 0.5, 1e-12);
    double low[2] = {1e9, 1e9};
    for (size_t i = 0; i < frame_roof_members_piece_count(members); i++) {
        const frame_roof_members_piece piece = piece_at(members, i);
        if (piece.kind != FRAME_MEMBER_SUBFASCIA) continue;
        low[0] = fmin(low[0], piece.start_x_in), low[1] = fmin(low[1], piece.start_y_in);
    }
    ck_assert_double_eq_tol(low[0], low[1], 1e-9); /* as far out on every side */
    frame_roof_members_free(members);
}
END_TEST

/* Half hips on any plan, and plates for equal overhangs: few keep a fault. */
START_TEST(random_half_hips_and_plates) {
    static plan p;
    frame_roof_members_out out;
    int faulty = 0;
    for (int i = 0; i < plan_total(); i++) {
        srand((unsigned)i);
        plan_cells(&p, 3 + rand() % 7, 144, 0);
        plan_finish(&p, random_in(0.4, 1.1));
        frame_roof_members_in *in = members_of(&p, FRAME_SIZE(2, 8), i & 2 ? 12 : 0);
        if (i & 1) {
            add_gables(&p);
            for (size_t k = 0; k < plan_edges(&p); k++)
                if (p.kinds[k] == FRAME_ROOF_GABLE) p.kinds[k] = FRAME_ROOF_HALF_HIP;
            in->half_hip_in = 20, in->rake_overhang_in = i & 4 ? 12 : 0;
        } else {
            for (size_t k = 0; k < plan_edges(&p); k++) {
                p.slopes[k] = (5 + rand() % 5) / 12.0;
                p.plates[k] = 12 * (p.slopes[k] - 5 / 12.0);
            }
            in->overhang_in = 12;
            in->height_above_plate_in = 5.5, in->plates_in = p.plates, in->plate_count = plan_edges(&p);
        }
        frame_roof_members *members = solve(in, &out);
        faulty += !out.fits;
        frame_roof_members_free(members);
    }
    ck_assert_msg(20 * faulty <= plan_total() + 20, "%d", faulty);
}
END_TEST

/* Doubled hips and valleys: cut to their own thickness, the jacks shortened by it. */
START_TEST(doubled_hips_and_valleys) {
    static plan p;
    frame_roof_members_out out;
    for (int32_t plies = 1; plies < 4; plies++) {
        p.corner_count = p.hole_count = 0;
        plan_add(&p, 0, 0), plan_add(&p, 480, 0), plan_add(&p, 480, 240), plan_add(&p, 220, 240);
        plan_add(&p, 220, 430), plan_add(&p, 0, 430);
        plan_finish(&p, 0.5);
        frame_roof_members_in *in = members_of(&p, FRAME_SIZE(2, 8), 12);
        in->hip_plies = in->valley_plies = plies;
        frame_roof_members *members = solve(in, &out);
        assert_fits(members, &out);
        for (size_t i = 0; i < frame_roof_members_piece_count(members); i++) {
            const frame_roof_members_piece piece = piece_at(members, i);
            if (piece.kind != FRAME_MEMBER_HIP && piece.kind != FRAME_MEMBER_VALLEY) continue;
            ck_assert_int_eq(piece.plies, plies);
            ck_assert_double_eq_tol(piece.thickness_in, 1.5 * plies, 1e-12);
        }
        frame_roof_members_free(members);
    }
}
END_TEST

/* Mirrored, it has the same pieces with the hands changed. */
START_TEST(a_mirrored_plan) {
    static plan p;
    frame_roof_members_out out, mirrored;
    p.corner_count = p.hole_count = 0;
    plan_add(&p, 0, 0), plan_add(&p, 480, 0), plan_add(&p, 480, 230), plan_add(&p, 250, 230);
    plan_add(&p, 250, 400), plan_add(&p, 0, 400);
    plan_finish(&p, 0.7);
    frame_roof_members *a = solve(members_of(&p, FRAME_SIZE(2, 8), 16), &out);
    for (size_t i = 0; i < p.corner_count; i++) p.corners[i].x_in *= -1;
    frame_roof_members *b = solve(members_of(&p, FRAME_SIZE(2, 8), 16), &mirrored);
    ck_assert_uint_eq(frame_roof_members_piece_count(a), frame_roof_members_piece_count(b));
    ck_assert_double_eq_tol(out.board_feet, mirrored.board_feet, 1e-6);
    for (size_t i = 0; i < frame_roof_members_piece_count(a); i++) {
        const frame_roof_members_piece one = piece_at(a, i);
        int found = 0;
        for (size_t k = 0; k < frame_roof_members_piece_count(b) && !found; k++) {
            const frame_roof_members_piece two = piece_at(b, k);
            found = one.kind == two.kind && fabs(one.length_in - two.length_in) < 1e-7 &&
                    fabs(one.start_y_in - two.start_y_in) < 1e-7 && fabs(one.start_z_in - two.start_z_in) < 1e-7 &&
                    fabs(one.start_x_in + two.start_x_in) < 1e-7 &&
                    (one.hand == FRAME_NOT_GIVEN_INT ? two.hand == one.hand : two.hand == 3 - one.hand);
        }
        if (fabs(one.end_z_in - one.start_z_in) < 1e-9) continue; /* level ones may run the other way */
        ck_assert_msg(found, "%s", one.name);
    }
    frame_roof_members_free(a);
    frame_roof_members_free(b);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("roof_members");
    TCase *tests = tcase_create("roof_members");
    tcase_set_timeout(tests, 600);
    tcase_add_test(tests, a_gable_roof);
    tcase_add_test(tests, a_hip_roof);
    tcase_add_test(tests, opposite_rafters_stand_in_pairs);
    tcase_add_test(tests, each_piece_as_a_stick);
    tcase_add_test(tests, with_what_goes_between);
    tcase_add_test(tests, a_porch_against_a_wall);
    tcase_add_test(tests, with_breaks);
    tcase_add_test(tests, gangs);
    tcase_add_test(tests, pictures);
    tcase_add_test(tests, a_ridge_too_shallow_is_named);
    tcase_add_test(tests, what_is_refused);
    tcase_add_test(tests, an_overhang_over_a_courtyard);
    tcase_add_test(tests, random_plans_close);
    tcase_add_test(tests, half_hips);
    tcase_add_test(tests, equal_overhangs_by_plates);
    tcase_add_test(tests, random_half_hips_and_plates);
    tcase_add_test(tests, doubled_hips_and_valleys);
    tcase_add_test(tests, random_gables_close);
    tcase_add_test(tests, random_slopes_and_walls);
    tcase_add_test(tests, a_mirrored_plan);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed ? EXIT_FAILURE : EXIT_SUCCESS;
}
