/* Editions of the NDS in a working. */
#ifndef FRAME_LIB_MATERIAL_EDITION_H
#define FRAME_LIB_MATERIAL_EDITION_H

#include <frame/material.h>

#include "working/record.h"

#include "working/plain_math.h"

/* Every source in a working names NDS 2018: another edition is said once, before them. */
FRAME_ALWAYS_INLINE void frame_record_edition(frame_nds_edition edition, frame_working *record) {
    if (!FRAME_RECORDING(record) || edition == FRAME_NDS_2018) return;
    FRAME_CASE(
        record, edition == FRAME_NDS_2015 ? "NDS 2015 is asked for" : "NDS 2024 is asked for",
        "clauses, formulas and values below are those of NDS 2018; that this edition has the same is from memory", "");
}

#endif
