/* A fastener's reach in plain words. */
#include <stdio.h>

#include "base/number.h"
#include "joint/dowel_reach.h"
#include "joint_facts.h"

enum { NUMBER = 32, NAME = 60, SENTENCE = 400 };

typedef struct inches {
    char text[NUMBER];
} inches;

static inches write_inches(double value) {
    inches written;
    frame_number_print(value, 4, written.text, sizeof written.text);
    return written;
}

/* "the band", or "the wood" where the layer has no name. */
static const char *name_of(const frame_layers *layers, int layer) {
    if (layer == FRAME_NO_LAYER) return "wood";
    const char *name = layers->items[layer].name;
    return name ? name : frame_layer_material_words.table[layers->items[layer].material - 1].word;
}

/* The member that should hold; a second layer of the same name is told apart as the last one. */
static void name_member(const frame_layers *layers, char *name) {
    snprintf(name, NAME, "the %s%.40s", layers->holding > 0 && !layers->items[layers->holding].name ? "last " : "",
             name_of(layers, layers->holding));
}

static int layer_at(const frame_layers *layers, double depth) {
    for (int i = 0; i < layers->count; i++)
        if (depth <= layers->to[i]) return i;
    return layers->count - 1;
}

static void bolt_in_words(const frame_layers *layers, const frame_drive *drive, const frame_reached *reached,
                          char *sentence) {
    if (reached->verdict == FRAME_REACH_HOLDS) {
        snprintf(sentence, SENTENCE, "The bolt passes all layers, with room for nut and washer: it counts in full.");
        return;
    }
    const inches lacks = write_inches(layers->to[layers->last] + drive->nominal - reached->point);
    snprintf(sentence, SENTENCE,
             "The bolt is %s in too short to pass all layers and take nut and washer: it counts for nothing.",
             lacks.text);
}

static void in_words(const frame_layers *layers, const frame_reached *reached, char *sentence) {
    char member[NAME];
    name_member(layers, member);
    const inches depth = write_inches(reached->penetration), least = write_inches(reached->least),
                 full = write_inches(reached->full);
    switch (reached->verdict) {
        case FRAME_REACH_HOLDS:
            snprintf(sentence, SENTENCE, "It is %s in deep in %s and counts in full.", depth.text, member);
            return;
        case FRAME_REACH_SHORT:
            snprintf(sentence, SENTENCE,
                     "It is %s in deep in %s: it counts, but for less than it would at %s in, its full depth.",
                     depth.text, member, full.text);
            return;
        case FRAME_REACH_TOO_SHORT:
            snprintf(sentence, SENTENCE,
                     "It is only %s in deep in %s and would have to be %s in: it counts for nothing.", depth.text,
                     member, least.text);
            return;
        default: {
            const inches lacks = write_inches(layers->from[layers->holding] - reached->point);
            snprintf(sentence, SENTENCE,
                     "The point ends in the %.40s, %s in short of %s: it reaches no wood that could hold it and "
                     "counts for nothing.",
                     name_of(layers, layer_at(layers, reached->point)), lacks.text, member);
        }
    }
}

const char *frame_reach_in_words(const frame_layers *layers, const frame_drive *drive, const frame_reached *reached,
                                 frame_answer *answer) {
    char sentence[SENTENCE];
    if (reached->verdict == FRAME_REACH_NO_WOOD)
        snprintf(sentence, sizeof sentence, "No layer listed is wood that could hold it: it counts for nothing.");
    else if (drive->kind == FRAME_DOWEL_BOLT)
        bolt_in_words(layers, drive, reached, sentence);
    else
        in_words(layers, reached, sentence);
    return frame_answer_text(answer, sentence);
}
