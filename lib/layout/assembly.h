/* The pieces of an assembly. */
#ifndef FRAME_LIB_LAYOUT_ASSEMBLY_H
#define FRAME_LIB_LAYOUT_ASSEMBLY_H

#include "layout/piece.h"

const frame_layout_set *frame_assembly_set(const frame_assembly *assembly);

#endif
