/* The display texts of the entries. */
#include <stdatomic.h>

#include "working/entries.h"

void frame_shown_drop(frame_working *w) {
    (void)w;
}
