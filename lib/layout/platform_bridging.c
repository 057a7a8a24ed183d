/* Cross bridging: between each two joists of a row two struts that cross, side by side along the joists, their ends cut
 * to the joists' faces, from just under the one's top edge to just over the other's lower edge. */
#include <math.h>

#include "base/error.h"
#include "layout/platform.h"

#define APART 0.5 /* in between the two struts, lest they squeak: common practice */
#define LEAST 3.0 /* in between joists: narrower bays take no struts */

/* The lean of a strut, thickness t, that fills a bay of width c and depth d: its corners lie on the joists' edges, so
 * that c tan(lean) + t / cos(lean) = d. */
static double lean_of(double c, double d, double t) {
    return acos(t / hypot(c, d)) - atan2(c, d);
}

static void add_strut(frame_platform *p, const frame_layout_section *strut, double x, double from, double to, int up,
                      int number) {
    const double lean = lean_of(to - from, p->d, strut->thickness), half = strut->thickness / 2 / cos(lean);
    const double low = up ? half : p->d - half, high = up ? p->d - half : half, past = 1;
    const vec3 along = {0, cos(lean), up ? sin(lean) : -sin(lean)};
    frame_layout_piece *piece =
        frame_platform_add(p, FRAME_STAGE_BLOCKS, FRAME_PIECE_BRIDGING, number, strut,
                           vec_less((vec3){x, from, low}, vec_times(along, past)),
                           vec_add((vec3){x, to, high}, vec_times(along, past)), (vec3){1, 0, 0});
    if (!piece) return;
    const double axis = (to - from) / cos(lean), slant = strut->thickness * tan(lean);
    piece->length = axis + slant;
    piece->short_point = axis - slant;
    piece->start_deg = piece->end_deg = lean * 180 / 3.14159265358979323846;
    frame_layout_add_cut(p->set, FRAME_STICK_MITRE_CUT, (vec3){x, from, low}, (vec3){0, -1, 0}, "end cut");
    frame_layout_add_cut(p->set, FRAME_STICK_MITRE_CUT, (vec3){x, to, high}, (vec3){0, 1, 0}, "end cut");
}

static void add_row(frame_platform *p, const frame_layout_section *strut, double x, double reach, int *number) {
    double far = FRAME_NOT_GIVEN;
    for (size_t i = 0; i < p->members.count; i++) {
        const frame_platform_member *member = FRAME_PLATFORM_MEMBER(p, i);
        if (member->from > x - reach + 1e-9 || member->to < x + reach - 1e-9) {
            /* One that ends within the row is in the way of both struts. */
            if (member->from < x + reach - 1e-9 && member->to > x - reach + 1e-9) far = FRAME_NOT_GIVEN;
            continue;
        }
        if (far != FRAME_NOT_GIVEN && member->y - far > LEAST && !frame_platform_in_hole(p, x, reach, far, member->y)) {
            add_strut(p, strut, x - reach + strut->depth / 2, far, member->y, 1, ++*number);
            add_strut(p, strut, x + reach - strut->depth / 2, far, member->y, 0, ++*number);
        }
        far = fmax(far, member->y + p->t);
    }
}

/* Refuses a row that leaves the floor or meets another, of struts or of blocks. */
static frame_status check_row(const frame_platform *p, const double *rows, size_t index, double reach,
                              const double *blocks, size_t block_count) {
    const double x = rows[index], near = frame_platform_end(p, 0), far = p->span - frame_platform_end(p, 1);
    if (x < near + reach - 1e-9 || x > far - reach + 1e-9)
        return frame_fail_number(FRAME_IMPOSSIBLE, "bridging_in", x, "a place between the rims");
    for (size_t k = 0; k < index; k++)
        if (fabs(x - rows[k]) < 2 * reach - 1e-9)
            return frame_fail_number(FRAME_IMPOSSIBLE, "bridging_in", x, "farther from the other rows");
    for (size_t k = 0; k < block_count; k++)
        if (fabs(x - blocks[k]) < reach + p->t / 2 - 1e-9)
            return frame_fail_number(FRAME_IMPOSSIBLE, "bridging_in", x, "farther from the rows of blocking");
    return FRAME_OK;
}

frame_status frame_platform_add_bridging(frame_platform *p, const frame_platform_bridging *given) {
    static const frame_layout_section_fields fields = {"bridging_size", "bridging_size", "bridging_size"};
    frame_layout_section strut = {FRAME_NOT_GIVEN, FRAME_NOT_GIVEN,
                                  given->size == FRAME_NOT_GIVEN_INT ? FRAME_SIZE(1, 3) : given->size, NULL, 0};
    int number = 0;
    if (given->count == 0) return FRAME_OK;
    frame_status status = frame_layout_take_section(p->set->answer, &fields, &strut);
    if (status) return status;
    if (strut.thickness > p->d / 3)
        return frame_fail_number(FRAME_IMPOSSIBLE, "bridging_size", strut.thickness,
                                 "thinner than a third of the depth");
    const double reach = strut.depth + APART / 2;
    for (size_t i = 0; i < given->count; i++) {
        status = check_row(p, given->rows, i, reach, given->blocks, given->block_count);
        if (status) return status;
        add_row(p, &strut, given->rows[i], reach, &number);
    }
    return FRAME_OK;
}
