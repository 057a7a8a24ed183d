/* The section through the layers, head to the left, with the fastener in it. */
#include <stdio.h>

#include "joint/dowel_reach.h"
#include "joint_facts.h"
#include "working/record.h"

static const frame_hatch hatches[] = {FRAME_HATCH_END_GRAIN, FRAME_HATCH_PANEL,    FRAME_HATCH_INSULATION,
                                      FRAME_HATCH_NONE,      FRAME_HATCH_STEEL,    FRAME_HATCH_NONE,
                                      FRAME_HATCH_NONE,      FRAME_HATCH_CONCRETE, FRAME_HATCH_CONCRETE};

static frame_status draw_layer(frame_drawing *drawing, const frame_layers *layers, int i, double half) {
    const frame_dowel_layer *layer = &layers->items[i];
    const char *word = frame_layer_material_words.table[layer->material - 1].word;
    char label[80];
    frame_status status = FRAME_OK;
    if (layer->material != FRAME_LAYER_GAP)
        status = frame_drawing_rectangle(drawing, layers->from[i], -half, layers->to[i], half, FRAME_PEN_CUT,
                                         hatches[layer->material - 1]);
    if (layer->name)
        snprintf(label, sizeof label, "%.40s (%s)", layer->name, word);
    else
        snprintf(label, sizeof label, "%s", word);
    if (!status) status = frame_drawing_label(drawing, (layers->from[i] + layers->to[i]) / 2, -half * 0.6, label);
    return status;
}

/* Along the fastener and square to it, from under its head, to the paper. */
static frame_status corner(frame_drawing *drawing, const frame_drive *drive, double along, double across) {
    const double c = cos(drive->angle_deg * FRAME_DEG), s = sin(drive->angle_deg * FRAME_DEG);
    return frame_drawing_point(drawing, drive->countersink + along * c + across * s, across * c - along * s);
}

static frame_status draw_fastener(frame_drawing *drawing, const frame_drive *drive) {
    const double r = drive->nominal / 2, head = 2 * r, L = drive->length, E = drive->tip;
    const double at[][2] = {{0, head},   {-r, head}, {-r, -head}, {0, -head}, {0, -r},
                            {L - E, -r}, {L, 0},     {L - E, r},  {0, r}};
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < sizeof at / sizeof *at && !status; i++) status = corner(drawing, drive, at[i][0], at[i][1]);
    return status ? status : frame_drawing_polygon(drawing, FRAME_PEN_OUTLINE, FRAME_HATCH_BLANK);
}

static frame_status measure(frame_drawing *drawing, const frame_layers *layers, const frame_reached *reached,
                            double half) {
    frame_status status = frame_drawing_mark(drawing, 0, half, "");
    for (int i = 0; i < layers->count && !status; i++) status = frame_drawing_mark(drawing, layers->to[i], half, "");
    if (!status) status = frame_drawing_dimension_running(drawing, FRAME_DIMENSION_ABOVE);
    if (status || layers->holding == FRAME_NO_LAYER || reached->held <= 0) return status;
    const double near = layers->from[layers->holding], far = fmin(reached->point, layers->to[layers->holding]);
    return frame_drawing_dimension(drawing, near, -half, far, -half, FRAME_DIMENSION_BELOW, "");
}

static frame_status draw(frame_drawing *drawing, const frame_layers *layers, const frame_drive *drive,
                         const frame_reached *reached) {
    const double slip = drive->length * sin(drive->angle_deg * FRAME_DEG);
    const double half = fmax(1.5, fmax(layers->to[layers->count - 1] / 4, slip + 2 * drive->nominal));
    frame_status status = frame_drawing_title(drawing, "What the fastener passes through");
    for (int i = 0; i < layers->count && !status; i++) status = draw_layer(drawing, layers, i, half);
    if (!status) status = draw_fastener(drawing, drive);
    return status ? status : measure(drawing, layers, reached, half);
}

frame_status frame_dowel_reach_drawing(const frame_dowel_reach_in *given, frame_drawing **drawing) {
    frame_dowel_reach_in in;
    frame_layers layers;
    frame_drive drive;
    frame_reached reached;
    uint64_t assumed = 0;
    frame_status status = frame_dowel_reach_in_read(given, &in, &assumed);
    if (!status) status = frame_dowel_reach_find(&in, &layers, &drive, &reached);
    frame_drawing *made = NULL;
    if (!status) status = frame_drawing_new(&made);
    if (!status) status = draw(made, &layers, &drive, &reached);
    if (status)
        frame_drawing_free(made);
    else
        *drawing = made;
    return status;
}
