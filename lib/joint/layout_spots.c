/* Where the fasteners of a layout stand. */
#include <math.h>
#include <stdio.h>

#include "base/error.h"
#include "base/number.h"
#include "joint/fastener_layout.h"
#include "joint_facts.h"

static frame_status missing(const char *field, const char *valid, const char *why) {
    return frame_fail(FRAME_REQUIRED, field, "", valid, "%s: not given; %s", field, why);
}

static frame_status one_way(const frame_fastener_layout_in *in) {
    const int pattern = in->per_row != FRAME_NOT_GIVEN_INT;
    if (pattern && in->place_count)
        return frame_fail(FRAME_CONFLICT, "places", "", "places or per_row",
                          "places: per_row is given too; give the places or a pattern");
    if (!pattern && !in->place_count)
        return missing("places", "places, or per_row with spacing_in and end_distance_in",
                       "nor is a pattern (per_row)");
    if (!pattern) return FRAME_OK;
    if (in->end_distance_in == FRAME_NOT_GIVEN) return missing("end_distance_in", ">0..120 in", "a pattern needs it");
    if (in->per_row > 1 && in->spacing_in == FRAME_NOT_GIVEN)
        return missing("spacing_in", ">0..120 in", "a row of several needs it");
    if (in->rows > 1 && in->row_spacing_in == FRAME_NOT_GIVEN)
        return missing("row_spacing_in", ">0..48 in", "several rows need it");
    if ((size_t)in->rows * (size_t)in->per_row <= FRAME_MOST_SPOTS) return FRAME_OK;
    return frame_fail_number(FRAME_IMPOSSIBLE, "per_row", in->per_row, "rows and per_row of at most 500 fasteners");
}

static frame_status inside(const frame_fastener_layout_in *in, const frame_spots *spots, size_t i) {
    const frame_spot *at = &spots->at[i];
    const double far = in->length_in != FRAME_NOT_GIVEN ? in->length_in : HUGE_VAL;
    if (at->x > 0 && at->x < far && at->y > 0 && at->y < in->width_in) return FRAME_OK;
    char field[32], x[32], y[32];
    snprintf(field, sizeof field, "places[%zu]", i);
    frame_number_print(at->x, 5, x, sizeof x);
    frame_number_print(at->y, 5, y, sizeof y);
    return frame_fail(FRAME_IMPOSSIBLE, field, x, "a place within the member",
                      "%s: %s in from the end and %s in from the edge is not within the member", field, x, y);
}

static void lay_pattern(const frame_fastener_layout_in *in, frame_spots *spots) {
    const int across = in->angle_deg == 90;
    const double spacing = in->per_row > 1 ? in->spacing_in : 0, between = in->rows > 1 ? in->row_spacing_in : 0;
    const double up = across ? spacing * (in->per_row - 1) : between * (in->rows - 1);
    const double edge = in->edge_distance_in != FRAME_NOT_GIVEN ? in->edge_distance_in : (in->width_in - up) / 2;
    for (int r = 0; r < in->rows; r++)
        for (int i = 0; i < in->per_row; i++) {
            const double x = across ? r * between : i * spacing, y = across ? i * spacing : r * between;
            spots->at[spots->count++] = (frame_spot){in->end_distance_in + x, edge + y};
        }
}

frame_status frame_spots_read(const frame_fastener_layout_in *in, frame_spots *spots) {
    frame_fastener fastener;
    frame_status status = one_way(in);
    if (!status) status = frame_fastener_find(in->kind, in->size, in->diameter_in, &fastener);
    if (status) return status;
    spots->count = 0;
    spots->diameter_in = fastener.nominal_in;
    spots->known = fastener.known;
    for (size_t i = 0; i < in->place_count; i++) {
        frame_fastener_place place;
        frame_fastener_place_item(in->places, i, &place);
        spots->at[spots->count++] = (frame_spot){place.x_in, place.y_in};
    }
    if (!in->place_count) lay_pattern(in, spots);
    for (size_t i = 0; i < spots->count && !status; i++) status = inside(in, spots, i);
    return status;
}
