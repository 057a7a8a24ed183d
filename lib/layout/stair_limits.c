/* The limits of an edition of the code, out of the table. */
#include "base/error.h"
#include "layout/stair.h"
#include "layout_facts.h"
#include "table_stair_limits.h"

frame_status frame_stair_limits_find(frame_code_edition edition, frame_stair_limits *limits) {
    int found = 0;
    for (int i = 0; i < frame_stair_limits_rows; i++) {
        const frame_stair_limits_row *row = &frame_stair_limits_table[i];
        if (edition > FRAME_CODE_2024 || !(row->editions >> (edition - 1) & 1)) continue;
        limits->at[row->item] = row->value;
        limits->known[row->item] = row->known;
        limits->source[row->item] = row->clause;
        found++;
    }
    if (found == FRAME_STAIR_LIMITS - 1) return FRAME_OK;
    return frame_fail(FRAME_NO_VALUE, "edition", "", "2015, 2018, 2021, 2024",
                      "edition: the limits of stairs are known for the residential code of 2015, 2018, 2021 and 2024");
}
