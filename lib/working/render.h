/* The writers of a working and of a marking, one for each format. */
#ifndef FRAME_LIB_WORKING_RENDER_H
#define FRAME_LIB_WORKING_RENDER_H

#include "working/entries.h"

void frame_working_text(const frame_working *w, frame_text *into);
void frame_working_markdown(const frame_working *w, frame_text *into);
void frame_working_html(const frame_working *w, frame_text *into);
void frame_working_json(const frame_working *w, frame_text *into);

void frame_marking_text(const frame_marking *marking, frame_text *into);
void frame_marking_markdown(const frame_marking *marking, frame_text *into);
void frame_marking_html(const frame_marking *marking, frame_text *into);
void frame_marking_json(const frame_marking *marking, frame_text *into);

/* Text escaped for Markdown, also within a table; a formula as code. */
void frame_markdown_add(frame_text *into, const char *chars);
void frame_markdown_code(frame_text *into, const char *chars);

/* The style sheet of the HTML fragments of both, for pages that have none of their own. */
const char *frame_working_stylesheet(void);

#endif
