/* What a framed roof rests on: the roof itself, the sections, and the heights of its planes. */
#include <stdio.h>

#include "base/error.h"
#include "material/lumber.h"
#include "roof/members.h"
#include "roof_facts.h"

static frame_status solve_roof(members *m) {
    frame_roof_solve_in in;
    frame_roof_solve_in_init(&in);
    in.corners = m->in->corners, in.corner_count = m->in->corner_count;
    in.slopes = m->in->slopes, in.slope_count = m->in->slope_count;
    in.kinds = m->in->kinds, in.kind_count = m->in->kind_count;
    in.holes = m->in->holes, in.hole_count = m->in->hole_count;
    in.upper_slopes = m->in->upper_slopes, in.upper_slope_count = m->in->upper_slope_count;
    in.break_in = m->in->break_in;
    in.plates_in = m->in->plates_in, in.plate_count = m->in->plate_count;
    in.half_hip_in = m->in->half_hip_in;
    return frame_roof_solve_solve(&in, &m->roof, NULL);
}

static frame_status refuse_break_walls(const members *m) {
    for (size_t i = 0; i < MEMBERS_ROOF_COUNT(m, MEMBERS_ROOF_FACES); i++)
        if (MEMBERS_ROOF_FACE(m, i)->kind == FRAME_FACE_BREAK_WALL)
            return frame_fail(FRAME_OUTSIDE_SCOPE, "slopes", "", "one slope for edges in line",
                              "slopes: edges in line have unequal slopes; the wall between them is not framed");
    return FRAME_OK;
}

static frame_status take_section(members *m, int which, frame_size size, int32_t plies) {
    members_section *section = &m->sections[which];
    const frame_status status = frame_size_dressed(size, 0, &section->thickness, &section->depth);
    if (status) return status;
    section->size = size;
    section->plies = plies;
    section->thickness *= plies;
    section->name = frame_size_name(size);
    if (plies > 1) {
        char name[32];
        snprintf(name, sizeof name, "%d-%s", (int)plies, section->name);
        section->name = frame_answer_text(m->answer, name);
    }
    m->out->known = frame_size_known(size) > m->out->known ? frame_size_known(size) : m->out->known;
    return section->name ? FRAME_OK : FRAME_NO_MEMORY;
}

/* The slope of the first edge that a roof rises from. */
static double first_slope(const members *m) {
    const frame_roof_solve_face *first = NULL;
    for (size_t i = 0; i < MEMBERS_ROOF_COUNT(m, MEMBERS_ROOF_FACES); i++) {
        const frame_roof_solve_face *face = MEMBERS_ROOF_FACE(m, i);
        if (face->kind != FRAME_FACE_ROOF || MEMBERS_ROOF_FACE(m, face->edge)->kind == FRAME_FACE_GABLE) continue;
        if (!first || face->edge < first->edge) first = face;
    }
    return first ? first->slope : 0;
}

/* One height above plate for all planes: then they meet over the corners of the walls. */
static frame_status find_height(members *m) {
    const frame_roof_members_in *in = m->in;
    const double slope = m->slope = first_slope(m), depth = m->sections[MEMBERS_RAFTERS].depth;
    if (in->seat_in != FRAME_NOT_GIVEN && in->height_above_plate_in != FRAME_NOT_GIVEN)
        return frame_fail_number(FRAME_CONFLICT, "height_above_plate_in", in->height_above_plate_in,
                                 "left out where seat_in is given: one follows from the other");
    const double seat = in->seat_in == FRAME_NOT_GIVEN ? 3.5 : in->seat_in;
    m->height = in->height_above_plate_in == FRAME_NOT_GIVEN ? depth * sqrt(1 + slope * slope) - seat * slope
                                                             : in->height_above_plate_in;
    return FRAME_OK;
}

static frame_status check_height(const members *m) {
    const double depth = m->sections[MEMBERS_RAFTERS].depth;
    const char *field = m->in->height_above_plate_in == FRAME_NOT_GIVEN ? "seat_in" : "height_above_plate_in";
    const double given = m->in->height_above_plate_in == FRAME_NOT_GIVEN
                             ? (m->in->seat_in == FRAME_NOT_GIVEN ? 3.5 : m->in->seat_in)
                             : m->in->height_above_plate_in;
    if (!(m->height > 0))
        return frame_fail_number(FRAME_IMPOSSIBLE, field, given, "less: the birdsmouth would cut the rafter through");
    for (size_t i = 0; i < MEMBERS_ROOF_COUNT(m, MEMBERS_ROOF_FACES); i++) {
        const frame_roof_solve_face *face = MEMBERS_ROOF_FACE(m, i);
        if (face->kind != FRAME_FACE_ROOF) continue;
        const double secant = sqrt(1 + face->slope * face->slope), seat = (depth * secant - m->height) / face->slope;
        if (!(seat > 0))
            return frame_fail_number(FRAME_IMPOSSIBLE, field, given,
                                     "such that every roof has a seat: the rafters of one lie above its plate");
        if (seat * face->slope / secant > depth / 4 + 1e-9) m->out->cautions |= FRAME_BIT(FRAME_MEMBERS_CAUTION_NOTCH);
    }
    return FRAME_OK;
}

/* There is room for a fly rafter, and for lookouts behind it. */
static frame_status check_rake(const members *m) {
    const double rake = m->in->rake_overhang_in, least = 2 * m->sections[MEMBERS_RAFTERS].thickness;
    if (rake <= 0 || rake >= least) return FRAME_OK;
    return frame_fail_number(FRAME_IMPOSSIBLE, "rake_overhang_in", rake, "0, or at least twice the rafters' thickness");
}

frame_status members_read(members *m) {
    const frame_size fascia = m->in->fascia_size == FRAME_NOT_GIVEN_INT ? m->in->rafter_size : m->in->fascia_size;
    m->out->known = FRAME_KNOWN_USER;
    frame_status status = solve_roof(m);
    if (!status) status = refuse_break_walls(m);
    if (!status) status = take_section(m, MEMBERS_RAFTERS, m->in->rafter_size, 1);
    if (!status) status = take_section(m, MEMBERS_FASCIA, fascia, 1);
    if (!status && m->in->joist_size != FRAME_NOT_GIVEN_INT)
        status = take_section(m, MEMBERS_JOISTS, m->in->joist_size, 1);
    if (!status) status = check_rake(m);
    if (!status) status = find_height(m);
    return status ? status : check_height(m);
}

/* -- sections that cover what is cut against them -- */

/* The least depth of 2 in lumber that reaches, or the deepest. */
static frame_size covering(double depth) {
    static const int widths[] = {4, 6, 8, 10, 12, 14, 16};
    double thickness, dressed = 0;
    size_t i = 0;
    for (; i + 1 < sizeof widths / sizeof *widths; i++) {
        if (frame_size_dressed(FRAME_SIZE(2, widths[i]), 0, &thickness, &dressed)) continue;
        if (dressed > depth - 1e-9) break;
    }
    return FRAME_SIZE(2, widths[i]);
}

static double rafter_plumb(const members *m, int32_t face) {
    const double slope = MEMBERS_FACE(m, face)->slope;
    return m->sections[MEMBERS_RAFTERS].depth * sqrt(1 + slope * slope);
}

/* How deep the members of one kind must be, square to their edges, to cover the jacks' cuts. */
static double needed_depth(const members *m, frame_roof_line_kind kind) {
    double most = 0;
    for (size_t i = 0; i < m->runs.count; i++) {
        const members_run *run = MEMBERS_RUN(m, i);
        if (run->kind != kind) continue;
        const double plumb = fmax(rafter_plumb(m, run->face[0]), rafter_plumb(m, run->face[1]));
        most = fmax(most, plumb / sqrt(1 + run->slope * run->slope));
    }
    return most;
}

/* A ridge covers the rafters' cuts, and those of hips and valleys, which slope along it by their own thickness. */
static double needed_ridge(const members *m) {
    double most = 0;
    for (size_t i = 0; i < m->faces.count; i++) most = fmax(most, rafter_plumb(m, (int32_t)i));
    for (size_t i = 0; i < m->runs.count; i++) {
        const members_run *run = MEMBERS_RUN(m, i);
        const members_section *section = &m->sections[run->section];
        if (run->slope == 0) continue;
        most = fmax(most, section->depth * sqrt(1 + run->slope * run->slope) + run->slope * section->thickness / 2);
    }
    return most;
}

static frame_status take_or_choose(members *m, int which, frame_size given, int32_t plies, double depth) {
    return take_section(m, which, given == FRAME_NOT_GIVEN_INT ? covering(depth) : given, plies);
}

/* How far the square top lies under the line, so that its edges do not stand above the planes. */
static void drop_run(members *m, const members_side *side) {
    const members_face *face = MEMBERS_FACE(m, m->face_of[side->face]);
    members_run *run = MEMBERS_RUN(m, side->run);
    run->half = m->sections[run->section].thickness / 2;
    run->drop = fmax(run->drop, -run->half * face->slope * v2_dot(face->up, side->line.n));
}

frame_status members_take_sections(members *m) {
    const frame_roof_members_in *in = m->in;
    frame_status status = take_or_choose(m, MEMBERS_HIPS, in->hip_size, in->hip_plies, needed_depth(m, FRAME_LINE_HIP));
    if (!status)
        status =
            take_or_choose(m, MEMBERS_VALLEYS, in->valley_size, in->valley_plies, needed_depth(m, FRAME_LINE_VALLEY));
    if (!status) status = take_or_choose(m, MEMBERS_RIDGES, in->ridge_size, 1, needed_ridge(m));
    for (size_t i = 0; i < m->sides.count && !status; i++) {
        members_side *side = MEMBERS_SIDE(m, i);
        if (side->run >= 0) {
            drop_run(m, side);
            side->off = MEMBERS_RUN(m, side->run)->half;
        } else if (side->kind == FRAME_LINE_WALL && MEMBERS_LINE(m, side->of)->rise_in < 1e-6) {
            side->off = m->sections[MEMBERS_RIDGES].thickness;
        }
    }
    return status;
}
