/* The packet of a framed site: files, each made whole when the packet is made. */
#ifndef FRAME_LIB_PACKET_FRAMING_H
#define FRAME_LIB_PACKET_FRAMING_H

#include "building/framing.h"
#include "packet/packet.h"

typedef struct frame_packet_file {
    char name[96];
    frame_text *text;
} frame_packet_file;

typedef struct frame_site_page {
    const frame_framing *framing;
    const frame_answer *answer;
    const frame_framing_inside *inside;
    frame_framing_out out;
    frame_array *files; /* frame_packet_file */
    frame_text *into;   /* the page */
    frame_text *scratch;
} frame_site_page;

/* A new file of the packet; NULL without memory. */
frame_text *frame_packet_file_new(frame_array *files, const char *name);
/* A name that may stand in a file's name or an id: letters, figures and hyphens. */
void frame_packet_slug(const char *name, char slug[80]);

/* Sections. */
frame_status frame_site_drawings(frame_site_page *page);
frame_status frame_site_sticks(frame_site_page *page);
frame_status frame_site_checks(frame_site_page *page);
frame_status frame_site_tables(frame_site_page *page);

/* All lists, by the facts of their items. */
frame_status frame_site_csv(const frame_answer *answer, size_t list, frame_text *into);
frame_status frame_site_all_json(const frame_answer *answer, frame_text *into);
/* Puts a drawing into the page, in two widths, and into a file of its own. */
frame_status frame_site_drawing(frame_site_page *page, frame_drawing *drawing, const char *name, double height_in);

#endif
