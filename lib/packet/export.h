/* What the exports to open standards share: the faces of a stick's solid, in its own axes. */
#ifndef FRAME_LIB_PACKET_EXPORT_H
#define FRAME_LIB_PACKET_EXPORT_H

#include "building/framing.h"
#include "packet/packet.h"
#include "timber/polygon.h"
#include "timber/stick.h"
#include "timber/vector.h"

/* The convex cells of a stick one by one, and of each its faces: cell from 0, face from 0; 0 past the end. A cell that
 * a notch has replaced has no faces. */
size_t frame_export_cells(const frame_stick *stick);
int frame_export_faces(const frame_stick *stick, size_t cell);
void frame_export_face(const frame_stick *stick, size_t cell, int face, frame_polygon *polygon);
vec3 frame_export_normal(const frame_polygon *polygon);

/* The outline of a stick from above: the hull of the eight corners of its box, counterclockwise. Gives their count. */
enum { FRAME_EXPORT_HULL = 17 };
int frame_export_hull(const frame_stick *stick, vec3 hull[FRAME_EXPORT_HULL]);

#define FRAME_METRES 0.0254

#endif
