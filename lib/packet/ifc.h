/* Writing IFC4 (ISO 16739-1) as a STEP file (ISO 10303-21), entity by entity. */
#ifndef FRAME_LIB_PACKET_IFC_H
#define FRAME_LIB_PACKET_IFC_H

#include <stdint.h>

#include "packet/export.h"

typedef struct frame_ifc {
    const frame_framing *framing;
    const frame_framing_inside *inside;
    frame_text *into;
    unsigned long next;
    uint64_t seed;
} frame_ifc;

void frame_ifc_string(frame_text *into, const char *text);
void frame_ifc_real(frame_text *into, double value);
/* Begins an entity, gives its number; ends it. */
unsigned long frame_ifc_begin(frame_ifc *f, const char *entity);
void frame_ifc_end(frame_ifc *f);
void frame_ifc_guid(frame_ifc *f, const char *of, size_t number);
unsigned long frame_ifc_point(frame_ifc *f, vec3 at);
unsigned long frame_ifc_placement(frame_ifc *f, const frame_placement *p, unsigned long within);
/* A stick as a member: its solid, its quantities. */
frame_status frame_ifc_stick(frame_ifc *f, size_t i, unsigned long context, unsigned long storey,
                             unsigned long *member);

#endif
