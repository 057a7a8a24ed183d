/* A working as one JSON object. */
#include <string.h>

#include "base/facts.h"
#include "text/writer.h"
#include "working/figure.h"
#include "working/render.h"

static void add_text(frame_text *into, const char *key, const char *chars) {
    frame_text_addf(into, ", \"%s\": ", key);
    frame_text_add_json(into, chars);
}

static void write_step(frame_text *into, const frame_working_step *step) {
    frame_text_add(into, "{\"kind\": ");
    frame_text_add_json(into, frame_word_text("step_kind", step->kind));
    frame_text_addf(into, ", \"level\": %d", (int)step->level);
    add_text(into, "symbol", step->symbol);
    add_text(into, "formula", step->formula);
    add_text(into, "numbers", step->numbers);
    frame_text_add(into, ", \"value\": ");
    frame_figure_json(step->value, into);
    add_text(into, "unit", step->unit);
    add_text(into, "meaning", step->meaning);
    add_text(into, "source", step->source);
    frame_text_add(into, "}");
}

void frame_working_json(const frame_working *w, frame_text *into) {
    frame_text_addf(into, "{\"whole\": %s, \"steps\": [", w->state ? "false" : "true");
    for (size_t i = 0; i < frame_working_step_count(w); i++) {
        frame_working_step step;
        if (frame_working_step_at(w, i, &step)) {
            frame_text_fail(into);
            return;
        }
        frame_text_add(into, i ? ",\n " : "\n ");
        write_step(into, &step);
    }
    frame_text_add(into, "\n]}\n");
}
