/** @file packet.h
 * The packet for the site: a job as one self-contained HTML page, for a phone and for paper, and its cut list as CSV and
 * JSON.
 */
#ifndef FRAME_PACKET_H
#define FRAME_PACKET_H

#include <frame/building.h>
#include <frame/text.h>

FRAME_BEGIN

/** A packet. Opaque; made by frame_building_packet, freed by frame_packet_free. */
typedef struct frame_packet frame_packet;

/** Makes the packet of a job: describes, checks and plans it as frame_building_solve does. Free it with frame_packet_free. */
FRAME_VIEW(building, packet);
/** Makes the packet of a framed site: its page, every list as CSV, everything as JSON, each drawing as SVG. The packet has its own copy
 * of all it holds. Free it with frame_packet_free. */
FRAME_API frame_status frame_framing_packet(const frame_framing *framing, frame_packet **packet);
/** Writes the frame of a site as glTF 2.0 (Khronos), in metres, each stick a node. FRAME_IMPOSSIBLE when no sticks were placed. */
FRAME_API frame_status frame_framing_gltf(const frame_framing *framing, frame_text *into);
/** Writes the frame of a site as an IFC4 (ISO 16739-1) STEP file: each stick a member with its cut solid, material and quantities.
 * FRAME_IMPOSSIBLE when no sticks were placed. */
FRAME_API frame_status frame_framing_ifc(const frame_framing *framing, frame_text *into);
/** Writes the sticks of a site in plan as DXF (release 12), in inches, a layer for each level and stage. FRAME_IMPOSSIBLE when no
 * sticks were placed. */
FRAME_API frame_status frame_framing_dxf(const frame_framing *framing, frame_text *into);
/** Frees a packet. NULL is allowed. */
FRAME_API void frame_packet_free(frame_packet *packet);
/** Writes the page: the sheet list, each stick's drawing and cut list, the checks with their workings folded under them, the
 * shopping list, the cautions. It needs no network. */
FRAME_API frame_status frame_packet_html(const frame_packet *packet, frame_text *into);
/** Writes the cut list as CSV (RFC 4180), a kind of member a line; of a framed site a stick a line. */
FRAME_API frame_status frame_packet_cuts_csv(const frame_packet *packet, frame_text *into);
/** Writes the cut list, the boards and the checks as JSON; of a framed site all its lists. */
FRAME_API frame_status frame_packet_cuts_json(const frame_packet *packet, frame_text *into);
/** Writes index.html, cuts.csv and cuts.json into a folder that exists; of a framed site index.html, all.json, a CSV for each list and
 * an SVG for each drawing. FRAME_NOT_WRITTEN names the file that failed; each
 * file is whole or not there. */
FRAME_API frame_status frame_packet_write(const frame_packet *packet, const char *folder);

FRAME_END

#endif
