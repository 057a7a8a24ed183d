/* The row of a size, found in one step. */
#ifndef FRAME_LIB_MATERIAL_SIZE_ROW_H
#define FRAME_LIB_MATERIAL_SIZE_ROW_H

#include "material/lumber.h"
#include "table_lumber_sizes.h"

/* NULL for a size that is not made. A packed size holds sixteenths; every size made is whole quarters. */
static inline const frame_lumber_sizes_row *frame_size_row(frame_size size) {
    const uint32_t thickness = (uint32_t)size >> 16, width = (uint32_t)size & 0xffff;
    if ((thickness | width) % 4) return 0;
    if (thickness / 4 >= frame_lumber_sizes_at_first || width / 4 >= frame_lumber_sizes_at_second) return 0;
    const uint16_t place = frame_lumber_sizes_at[thickness / 4][width / 4];
    return place ? &frame_lumber_sizes_table[place - 1] : 0;
}

#endif
