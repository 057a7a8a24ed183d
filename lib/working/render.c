/* From a format's number to its writer. */
#include "working/render.h"

#include "base/error.h"
#include "text/writer.h"
#include "working/marking.h"

/* Fails for a handle that is missing or a format that is none. */
static frame_status check(const void *handle, const char *name, frame_render_format format, const frame_text *into) {
    if (!handle) return frame_fail(FRAME_REQUIRED, name, "NULL", "a handle", "%s: NULL is not a %s", name, name);
    if (!into) return frame_fail(FRAME_REQUIRED, "into", "NULL", "a text", "into: NULL is not a text");
    if (format < FRAME_RENDER_TEXT || format > FRAME_RENDER_JSON)
        return frame_fail_number(FRAME_OUT_OF_RANGE, "format", format, "1..4 (text, markdown, html, json)");
    return FRAME_OK;
}

/* A text that could not hold it all is cut back to what it held: half a rendering is none. */
static frame_status finish(frame_text *into, size_t before) {
    const frame_status state = frame_text_state(into);
    if (state) frame_text_cut(into, before);
    return state ? frame_fail(state, "", "", "", "no memory") : FRAME_OK;
}

frame_status frame_working_render(const frame_working *working, frame_render_format format, frame_text *into) {
    static void (*const writers[])(const frame_working *, frame_text *) = {
        [FRAME_RENDER_TEXT] = frame_working_text,
        [FRAME_RENDER_MARKDOWN] = frame_working_markdown,
        [FRAME_RENDER_HTML] = frame_working_html,
        [FRAME_RENDER_JSON] = frame_working_json,
    };
    const frame_status status = check(working, "working", format, into);
    if (status) return status;
    const size_t before = frame_text_length(into);
    writers[format](working, into);
    return finish(into, before);
}

frame_status frame_marking_render(const frame_marking *marking, frame_render_format format, frame_text *into) {
    static void (*const writers[])(const frame_marking *, frame_text *) = {
        [FRAME_RENDER_TEXT] = frame_marking_text,
        [FRAME_RENDER_MARKDOWN] = frame_marking_markdown,
        [FRAME_RENDER_HTML] = frame_marking_html,
        [FRAME_RENDER_JSON] = frame_marking_json,
    };
    const frame_status status = check(marking, "marking", format, into);
    if (status) return status;
    const size_t before = frame_text_length(into);
    writers[format](marking, into);
    return finish(into, before);
}
