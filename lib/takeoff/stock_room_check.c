/* Whether a row of a stock room is one. */
#include "base/error.h"
#include "takeoff/sheet_polygon.h"
#include "takeoff/stock_room.h"
#include "takeoff_facts.h"

static const double LONGEST_STICK_IN = 1200, LONGEST_SHEET_IN = 1e5;

static frame_status check_number(const char *field, double value, double above, double most, const char *valid) {
    if (value > above && value <= most) return FRAME_OK;
    if (value == FRAME_NOT_GIVEN)
        return frame_fail(FRAME_REQUIRED, field, "", valid, "%s: not given; valid is %s", field, valid);
    return frame_fail_number(FRAME_OUT_OF_RANGE, field, value, valid);
}

static frame_status check_stick(const frame_stock_length *row) {
    const frame_status status = check_number("length_in", row->length_in, 0, LONGEST_STICK_IN, ">0..1200 in");
    if (status) return status;
    if (row->weight_plf != FRAME_NOT_GIVEN && !(row->weight_plf > 0 && row->weight_plf <= 1000))
        return frame_fail_number(FRAME_OUT_OF_RANGE, "weight_plf", row->weight_plf, ">0..1000");
    for (size_t d = 0; d < row->defect_count; d++)
        if (row->defect_count % 2 || !(row->defects_from_to_in[d] >= 0 && row->defects_from_to_in[d] <= row->length_in))
            return frame_fail_number(FRAME_OUT_OF_RANGE, "defects_from_to_in", row->defects_from_to_in[d],
                                     "pairs from, to within the board");
    return FRAME_OK;
}

/* A polygon of three corners or more whose edges do not cross. */
static frame_status check_outline(const char *field, const frame_room_outline *outline) {
    enum { MOST_CORNERS = 500 };
    frame_sheet_point points[MOST_CORNERS];
    const int corners = (int)(outline->count / 2);
    int one, other;
    if (outline->count % 2 || corners < 3 || corners > MOST_CORNERS)
        return frame_fail_number(FRAME_OUT_OF_RANGE, field, (double)outline->count,
                                 "x and y in turn of 3 to 500 corners");
    for (int c = 0; c < corners; c++) {
        points[c] = (frame_sheet_point){outline->numbers[2 * c], outline->numbers[2 * c + 1]};
        for (int n = 0; n < 2; n++)
            if (!(outline->numbers[2 * c + n] >= -LONGEST_SHEET_IN && outline->numbers[2 * c + n] <= LONGEST_SHEET_IN))
                return frame_fail_number(FRAME_OUT_OF_RANGE, field, outline->numbers[2 * c + n], "-1e5..1e5 in");
    }
    if (!frame_sheet_crossing(points, corners, &one, &other)) return FRAME_OK;
    return frame_fail(FRAME_IMPOSSIBLE, field, "", "a polygon whose edges do not cross or touch",
                      "%s: edges %d and %d cross or touch", field, one, other);
}

/* What only a stick has. */
static frame_status check_plain(const frame_room_row *row) {
    const frame_stock_length *of = &row->of;
    const char *field = of->defect_count                     ? "defects_from_to_in"
                        : of->weight_plf != FRAME_NOT_GIVEN  ? "weight_plf"
                        : of->size != FRAME_NOT_GIVEN_INT    ? "size"
                        : of->species != FRAME_NOT_GIVEN_INT ? "species"
                        : of->grade != FRAME_NOT_GIVEN_INT   ? "grade"
                                                             : NULL;
    const int by_board = of->price_by == FRAME_NOT_GIVEN_INT || of->price_by == FRAME_PRICE_BY_BOARD;
    if (!field && by_board) return FRAME_OK;
    return frame_fail(FRAME_CONFLICT, field ? field : "price_by", "", "left out of a sheet",
                      "%s: a sheet has none, only a stick has", field ? field : "price_by");
}

static frame_status check_offcut(const frame_room_row *row) {
    frame_status status = check_plain(row);
    if (!status && (row->of.length_in != FRAME_NOT_GIVEN || row->width_in != FRAME_NOT_GIVEN))
        return frame_fail(FRAME_CONFLICT, "corners_in", "", "either a length and a width, or corners",
                          "corners_in: given beside a length or a width; valid is either them or corners");
    if (!status) status = check_outline("corners_in", &row->corners);
    for (size_t h = 0; !status && h < row->hole_count; h++) status = check_outline("holes_in", &row->holes[h]);
    return status;
}

static frame_status check_sheet(const frame_room_row *row) {
    frame_status status = check_plain(row);
    if (!status) status = check_number("length_in", row->of.length_in, 0, LONGEST_SHEET_IN, ">0..1e5 in");
    if (!status) status = check_number("width_in", row->width_in, 0, LONGEST_SHEET_IN, ">0..1e5 in");
    return status;
}

frame_status frame_room_check(const frame_room_row *row) {
    frame_status status = check_number("price", row->of.price, -1e-300, 1e6, "0..1e6");
    if (!status && row->of.available != FRAME_NOT_GIVEN_INT && (row->of.available < 0 || row->of.available > 1000000))
        return frame_fail_number(FRAME_OUT_OF_RANGE, "available", row->of.available, "0..1e6");
    if (!status && row->hole_count && !row->corners.count)
        return frame_fail(FRAME_REQUIRED, "corners_in", "", "the outline that the holes are in",
                          "corners_in: not given, and holes are");
    if (status) return status;
    const frame_room_what what = frame_room_what_of(row);
    return what == FRAME_ROOM_STICK   ? check_stick(&row->of)
           : what == FRAME_ROOM_SHEET ? check_sheet(row)
                                      : check_offcut(row);
}
