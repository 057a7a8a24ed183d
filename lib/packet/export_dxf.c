/* The sticks in plan as DXF of release 12, the oldest that every reader knows: closed polylines, a layer for each level
 * and stage. */
#include <stdio.h>

#include "base/error.h"
#include "packet/export.h"
#include "packet/framing.h"

static void pair(frame_text *into, int code, const char *value) {
    frame_text_addf(into, "%d\n%s\n", code, value);
}

static void number(frame_text *into, int code, double value) {
    frame_text_addf(into, "%d\n", code);
    frame_text_add_fixed(into, value, 6);
    frame_text_add(into, "\n");
}

/* Layers of release 12 are of letters, figures, hyphens and underlines, 31 at most. */
static void layer_of(const frame_framing_stick *stick, char layer[32]) {
    char level[80], stage[80];
    frame_packet_slug(stick->level, level);
    frame_packet_slug(frame_word_text("stage", stick->stage), stage);
    snprintf(layer, 32, "%.14s-%.16s", level, stage);
}

static void one_stick(frame_text *into, const frame_framing_stick *stick, const frame_stick *wood) {
    vec3 hull[FRAME_EXPORT_HULL];
    char layer[32];
    const int count = frame_export_hull(wood, hull);
    layer_of(stick, layer);
    pair(into, 0, "POLYLINE");
    pair(into, 8, layer);
    pair(into, 66, "1");
    pair(into, 70, "1");
    number(into, 10, 0);
    number(into, 20, 0);
    number(into, 30, 0);
    for (int i = 0; i < count; i++) {
        pair(into, 0, "VERTEX");
        pair(into, 8, layer);
        number(into, 10, hull[i].x);
        number(into, 20, hull[i].y);
        number(into, 30, 0);
    }
    pair(into, 0, "SEQEND");
    pair(into, 8, layer);
}

frame_status frame_framing_dxf(const frame_framing *framing, frame_text *into) {
    if (!framing) return frame_fail(FRAME_REQUIRED, "framing", "NULL", "a framing", "framing: NULL is no framing");
    const frame_framing_inside *inside = frame_framing_inside_of(framing);
    if (!inside->sticks.count)
        return frame_fail(FRAME_IMPOSSIBLE, "sticks", "", "a framing with sticks placed",
                          "sticks: none were placed; there is nothing to show");
    pair(into, 0, "SECTION");
    pair(into, 2, "HEADER");
    pair(into, 9, "$ACADVER");
    pair(into, 1, "AC1009");
    pair(into, 0, "ENDSEC");
    pair(into, 0, "SECTION");
    pair(into, 2, "ENTITIES");
    for (size_t i = 0; i < inside->sticks.count; i++) {
        frame_framing_stick stick;
        frame_framing_stick_at(framing, i, &stick);
        one_stick(into, &stick, FRAME_ITEM(frame_stick *, inside->sticks, i));
    }
    pair(into, 0, "ENDSEC");
    pair(into, 0, "EOF");
    return frame_text_state(into);
}
