/* Rectangles in great number: patterns of shelves, each used as often as the demand lets it. */
#ifndef FRAME_LIB_TAKEOFF_SHEET_PATTERN_H
#define FRAME_LIB_TAKEOFF_SHEET_PATTERN_H

#include "takeoff/sheet_search.h"

/* Whether patterns are worth trying: rectangles, many of them, one sheet size that does not run out. */
int frame_sheet_patterns_apply(const frame_sheet_search *search);
/* Lays out all parts by patterns, chosen by price, and corrects the prices by how well the patterns were filled. mixed:
 * most of the sheets are the cheapest mix of patterns. */
frame_status frame_sheet_pack_patterns(frame_sheet_search *search, double *prices, int mixed,
                                       frame_sheet_layout *layout);

#endif
