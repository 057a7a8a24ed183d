/* Depths of layers, and the fastener among them: NDS 12.1.4 to 12.1.6 for what counts. */
#include "joint/layers.h"

#include <stdio.h>

#include "base/error.h"
#include "base/number.h"
#include "joint_facts.h"
#include "working/record.h"

#define ABOUT_LAYERS "geometry"

/* Depths are compared with this play, so that exactly 6 D counts. */
static const double play = 1e-9;

static int bears(frame_layer_material material) {
    return material == FRAME_LAYER_WOOD || material == FRAME_LAYER_STEEL || material == FRAME_LAYER_PANEL;
}

/* The member next to the head: the first of wood before the one that holds, else the first that bears at all. */
static int find_side(const frame_layers *layers) {
    int found = FRAME_NO_LAYER;
    for (int i = 0; i < layers->holding; i++) {
        if (layers->items[i].material == FRAME_LAYER_WOOD) return i;
        if (found == FRAME_NO_LAYER && bears(layers->items[i].material)) found = i;
    }
    return found;
}

static frame_status check_holding(const frame_dowel_reach_in *in, const frame_layers *layers) {
    if (in->holding_layer == FRAME_NOT_GIVEN_INT) return FRAME_OK;
    char value[16];
    snprintf(value, sizeof value, "%d", (int)in->holding_layer);
    if (in->holding_layer >= layers->count)
        return frame_fail(FRAME_OUT_OF_RANGE, "holding_layer", value, "the place of a layer, from 0",
                          "holding_layer: %s is not the place of one of the %d layers, counted from 0", value,
                          layers->count);
    if (layers->items[in->holding_layer].material == FRAME_LAYER_WOOD) return FRAME_OK;
    return frame_fail(FRAME_CONFLICT, "holding_layer", value, "the place of a layer of wood",
                      "holding_layer: layers[%s] is %s; only wood holds a fastener", value,
                      frame_layer_material_words.table[layers->items[in->holding_layer].material - 1].word);
}

frame_status frame_layers_read(const frame_dowel_reach_in *in, frame_layers *layers) {
    layers->count = (int)in->layer_count;
    layers->holding = layers->last = FRAME_NO_LAYER;
    for (int i = 0; i < layers->count; i++) {
        frame_dowel_layer_item(in->layers, (size_t)i, &layers->items[i]);
        layers->from[i] = i ? layers->to[i - 1] : 0;
        layers->to[i] = layers->from[i] + layers->items[i].thickness_in;
        if (layers->items[i].material == FRAME_LAYER_WOOD) layers->holding = i;
        if (layers->items[i].material != FRAME_LAYER_GAP) layers->last = i;
    }
    const frame_status status = check_holding(in, layers);
    if (in->holding_layer != FRAME_NOT_GIVEN_INT) layers->holding = in->holding_layer;
    layers->side = find_side(layers);
    if (status) return status;
    if (layers->last == FRAME_NO_LAYER)
        return frame_fail(FRAME_IMPOSSIBLE, "layers", "gap", "at least one layer that is not air",
                          "layers: all of them are air; list what the fastener passes through");
    if (in->countersink_in >= layers->items[0].thickness_in)
        return frame_fail_number(FRAME_IMPOSSIBLE, "countersink_in", in->countersink_in,
                                 "less than the thickness of the first layer");
    return FRAME_OK;
}

static double slant(const frame_drive *drive) {
    return cos(drive->angle_deg * FRAME_DEG);
}

double frame_part_in_layer(const frame_layers *layers, const frame_drive *drive, int layer, double from, double to) {
    const double near = (layers->from[layer] - drive->countersink) / slant(drive),
                 far = (layers->to[layer] - drive->countersink) / slant(drive);
    return fmax(0, fmin(to, far) - fmax(fmax(from, 0), near));
}

double frame_length_for(const frame_layers *layers, const frame_drive *drive, double depth) {
    const double tip = drive->kind == FRAME_DOWEL_LAG_SCREW ? drive->tip : 0;
    return (layers->from[layers->holding] + depth - drive->countersink) / slant(drive) + tip;
}

/* The depths that count, NDS 12.1.4 to 12.1.6; and the full ones of the printed tables. */
static void depths(const frame_drive *drive, frame_reached *reached, frame_working *w) {
    FRAME_GIVEN(w, D_nom, drive->nominal, "in", "nominal diameter");
    if (drive->kind == FRAME_DOWEL_LAG_SCREW) {
        FRAME_STEP(w, p_min, 4 * D_nom, "in", "least depth that counts, without the tip", "NDS 2018 12.1.4.6");
        FRAME_STEP(w, p_full, 8 * D_nom, "in", "depth that counts in full", "NDS 2018 table 12K footnotes");
        reached->least = p_min;
        reached->full = p_full;
    } else {
        FRAME_STEP(w, p_min, 6 * D_nom, "in", "least depth that counts, with the tip", "NDS 2018 12.1.5 and 12.1.6");
        FRAME_STEP(w, p_full, 10 * D_nom, "in", "depth that counts in full", "NDS 2018 table 12N footnotes");
        reached->least = p_min;
        reached->full = p_full;
    }
}

static void depth_of_point(const frame_layers *layers, const frame_drive *drive, frame_reached *reached,
                           frame_working *w) {
    const double L = drive->length;
    FRAME_GIVEN(w, c_head, drive->countersink, "in", "depth of the head below the face");
    FRAME_GIVEN(w, alpha, drive->angle_deg, "deg", "angle of drive, from square to the face");
    FRAME_STEP(w, z_point, c_head + L * cos(alpha * FRAME_DEG), "in", "depth of the point below the first face",
               ABOUT_LAYERS);
    FRAME_GIVEN(w, z_end, layers->to[layers->last], "in", "all layers together");
    FRAME_STEP(w, out_all, fmax(0, z_point - z_end), "in", "point beyond the last layer", ABOUT_LAYERS);
    reached->point = z_point;
    reached->stands_out = out_all / slant(drive);
}

/* A bolt passes everything; a nut and washer need about a diameter more. */
static void through_all(const frame_layers *layers, const frame_drive *drive, frame_reached *reached,
                        frame_working *w) {
    const double z_point = reached->point;
    FRAME_GIVEN(w, D_nom, drive->nominal, "in", "nominal diameter");
    FRAME_GIVEN(w, z_end, layers->to[layers->last], "in", "all layers together");
    FRAME_STEP(w, z_nut, z_end + D_nom, "in", "depth a bolt must reach for its nut and washer",
               "common practice, bolts");
    reached->verdict = z_point >= z_nut - play ? FRAME_REACH_HOLDS : FRAME_REACH_NOT_REACHED;
    reached->held = frame_part_in_layer(layers, drive, layers->holding, 0, drive->length);
    reached->penetration = reached->held * slant(drive);
    reached->out = fmax(0, z_point - layers->to[layers->holding]) / slant(drive);
    reached->least = reached->full = FRAME_NOT_GIVEN;
}

static frame_reach_verdict judge(const frame_reached *reached, double past) {
    if (past <= play) return FRAME_REACH_NOT_REACHED;
    if (reached->penetration < reached->least - play) return FRAME_REACH_TOO_SHORT;
    return reached->penetration < reached->full - play ? FRAME_REACH_SHORT : FRAME_REACH_HOLDS;
}

static void into_member(const frame_layers *layers, const frame_drive *drive, frame_reached *reached,
                        frame_working *w) {
    const double z_point = reached->point;
    FRAME_GIVEN(w, z_near, layers->from[layers->holding], "in",
                "depth of the near face of the member that should hold");
    FRAME_GIVEN(w, z_far, layers->to[layers->holding], "in", "depth of its far face");
    FRAME_STEP(w, p_in, fmax(0, fmin(z_point, z_far) - z_near), "in", "depth in that member", ABOUT_LAYERS);
    reached->out = fmax(0, z_point - z_far) / slant(drive);
    if (drive->kind == FRAME_DOWEL_LAG_SCREW) {
        FRAME_GIVEN(w, E, fmax(0, drive->tip - reached->out) * slant(drive), "in", "tapered tip in that member");
        FRAME_STEP(w, p, fmax(0, p_in - E), "in", "penetration, without the tip", "NDS 2018 12.1.4");
        reached->penetration = p;
    } else {
        FRAME_STEP(w, p, p_in, "in", "penetration, with the tip", "NDS 2018 12.1.5 and 12.1.6");
        reached->penetration = p;
    }
    reached->held = p_in / slant(drive);
    depths(drive, reached, w);
    reached->verdict = judge(reached, z_point - z_near);
}

static double thread_held(const frame_layers *layers, const frame_drive *drive) {
    if (drive->thread == FRAME_NOT_GIVEN) return FRAME_NOT_GIVEN;
    const double end = drive->kind == FRAME_DOWEL_LAG_SCREW ? drive->length - drive->tip : drive->length;
    return frame_part_in_layer(layers, drive, layers->holding, drive->length - drive->thread, end);
}

void frame_reach_layers(const frame_layers *layers, const frame_drive *drive, frame_reached *reached,
                        frame_working *w) {
    *reached = (frame_reached){.least = FRAME_NOT_GIVEN, .full = FRAME_NOT_GIVEN, .verdict = FRAME_REACH_NO_WOOD};
    depth_of_point(layers, drive, reached, w);
    if (layers->holding == FRAME_NO_LAYER) return;
    if (drive->kind == FRAME_DOWEL_BOLT)
        through_all(layers, drive, reached, w);
    else
        into_member(layers, drive, reached, w);
    reached->held_thread = thread_held(layers, drive);
}
