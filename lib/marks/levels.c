/* Heights of points: how far out of level, and what to do at each. */
#include <math.h>

#include "base/error.h"
#include "marks_facts.h"
#include "working/calculation.h"

typedef struct heights {
    double high, low, aim;
} heights;

static double height_of(const frame_levels_in *in, size_t index) {
    frame_station point;
    frame_station_item(in->points, index, &point);
    return in->reading == FRAME_LEVEL_DOWN ? -point.reading_in : point.reading_in;
}

static frame_status find_aim(const frame_levels_in *in, heights *h) {
    h->high = h->low = height_of(in, 0);
    for (size_t i = 1; i < in->point_count; i++) {
        h->high = fmax(h->high, height_of(in, i));
        h->low = fmin(h->low, height_of(in, i));
    }
    h->aim = in->aim == FRAME_LEVEL_LOWEST ? h->low : h->high;
    if (in->aim != FRAME_LEVEL_GIVEN) return FRAME_OK;
    if (in->aim_in == FRAME_NOT_GIVEN)
        return frame_fail(FRAME_REQUIRED, "aim_in", "", "the reading of the height to bring the points to",
                          "aim_in: not given; the aim \"given\" needs it");
    h->aim = in->reading == FRAME_LEVEL_DOWN ? -in->aim_in : in->aim_in;
    return FRAME_OK;
}

/* The straight line that fits the heights best. */
static double find_fall(const frame_levels_in *in) {
    double at = 0, height = 0, square = 0, product = 0;
    frame_station point;
    const double n = (double)in->point_count;
    for (size_t i = 0; i < in->point_count; i++) {
        frame_station_item(in->points, i, &point);
        at += point.at_in / n;
        height += height_of(in, i) / n;
    }
    for (size_t i = 0; i < in->point_count; i++) {
        frame_station_item(in->points, i, &point);
        square += (point.at_in - at) * (point.at_in - at);
        product += (point.at_in - at) * (height_of(in, i) - height);
    }
    return square > 1e-9 ? product / square : FRAME_NOT_GIVEN;
}

static frame_status add_mark(const frame_levels_in *in, const heights *h, size_t index, frame_answer *answer,
                             frame_levels_out *out) {
    frame_station point;
    frame_station_item(in->points, index, &point);
    frame_levels_mark *mark = frame_answer_add(answer, 0);
    if (!mark) return FRAME_NO_MEMORY;
    mark->at_in = point.at_in;
    mark->height_in = height_of(in, index) - h->aim;
    /* Not fmax: which zero it gives for 0 and -0 is the compiler's choice. */
    mark->shim_in = mark->height_in < 0 ? -mark->height_in : 0;
    mark->cut_in = mark->height_in > 0 ? mark->height_in : 0;
    mark->name = frame_answer_text(answer, point.name ? point.name : "");
    out->most_shim_in = fmax(out->most_shim_in, mark->shim_in);
    out->most_cut_in = fmax(out->most_cut_in, mark->cut_in);
    if (fabs(mark->height_in) > in->tolerance_in + 1e-9) out->out_count++;
    if (in->piece_in == FRAME_NOT_GIVEN) return FRAME_OK;
    mark->piece_in = in->piece_in - mark->height_in;
    if (mark->piece_in > 0) return FRAME_OK;
    frame_fail_number(FRAME_IMPOSSIBLE, "reading_in", point.reading_in, "low enough for a piece to stand on it");
    return frame_fail_within("points[%zu].", index);
}

static frame_status solve(const frame_levels_in *in, frame_answer *answer, frame_levels_out *out, frame_working *w) {
    heights h = {0, 0, 0};
    frame_status status = find_aim(in, &h);
    if (status) return status;
    FRAME_GIVEN(w, high, h.high, "in", "highest point");
    FRAME_GIVEN(w, low, h.low, "in", "lowest point");
    FRAME_STEP(w, out_of_level, high - low, "in", "out of level", "arithmetic");
    out->out_of_level_in = out_of_level;
    out->most_shim_in = out->most_cut_in = 0;
    out->out_count = 0;
    for (size_t i = 0; !status && i < in->point_count; i++) status = add_mark(in, &h, i, answer, out);
    out->fall = find_fall(in);
    out->known = FRAME_KNOWN_USER;
    out->cautions = FRAME_BIT(FRAME_LINE_CAUTION_MEASURE);
    if (out->out_count) out->cautions |= FRAME_BIT(FRAME_LINE_CAUTION_TOLERANCE);
    out->not_checked = FRAME_BIT(FRAME_LINE_UNCHECKED_STRENGTH) | FRAME_BIT(FRAME_LINE_UNCHECKED_SETTLING);
    return status;
}

FRAME_IMPLEMENT_ANSWER(levels, solve);
