/* Inside the packet. */
#ifndef FRAME_LIB_PACKET_PACKET_H
#define FRAME_LIB_PACKET_PACKET_H

#include <frame/packet.h>

#include "base/memory.h"
#include "building/building.h"
#include "text/writer.h"

struct frame_packet {
    frame_building *building;
    frame_building_out out;
    char name[120];
    frame_array files; /* of a framed site: its files, made with it; building is NULL then */
};

extern const char frame_packet_style[];

/* The sections of the page. Each writes itself, or nothing when it has nothing to say. */
frame_status frame_packet_members(const frame_packet *packet, frame_text *into);
frame_status frame_packet_checks(const frame_packet *packet, frame_text *into);
frame_status frame_packet_marks(const frame_packet *packet, frame_text *into);

/* Copies a file of a framed site's packet. */
frame_status frame_packet_copy(const frame_packet *packet, const char *name, frame_text *into);
/* A text as a cell of CSV. One that a spreadsheet would take for a formula gets an apostrophe before it. */
void frame_packet_csv_text(frame_text *into, const char *text);
/* A length in tape notation, escaped for the page. */
void frame_packet_length(frame_text *into, double inches);
void frame_packet_heading(frame_text *into, const char *id, const char *title);

#endif
