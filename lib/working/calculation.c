/* What every calculation says when there is nowhere to put its answer. */
#include "working/calculation.h"

frame_status frame_no_out(const char *calculation) {
    return frame_fail(FRAME_REQUIRED, "out", "NULL", "a struct for the result",
                      "out: %s was given no struct for the result", calculation);
}
