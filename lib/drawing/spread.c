/* Moving crowded places apart by as little as possible. */
#include <math.h>

#include "drawing/layout.h"

/* A run of places that touch: they share one shift, the mean of what each would like. */
typedef struct group {
    double sum;
    size_t count;
} group;

static double shift_of(const group *g) {
    return g->sum / (double)g->count;
}

/* With each place measured from the sum of the gaps before it, "apart by the gaps" becomes "not falling"; the nearest
 * sequence that does not fall is found by pooling neighbours that do. */
frame_status layout_spread(double *places, const double *gaps, size_t count, double low, double high) {
    group *groups = frame_take((count + 1) * sizeof *groups);
    if (!groups) return FRAME_NO_MEMORY;
    size_t made = 0;
    double before = 0;
    for (size_t i = 0; i < count; i++) {
        groups[made++] = (group){places[i] - before, 1};
        while (made > 1 && shift_of(&groups[made - 2]) > shift_of(&groups[made - 1])) {
            groups[made - 2].sum += groups[made - 1].sum;
            groups[made - 2].count += groups[made - 1].count;
            made--;
        }
        if (i + 1 < count) before += gaps[i];
    }
    const double highest = fmax(low, high - before);
    size_t at = 0;
    before = 0;
    for (size_t g = 0; g < made; g++) {
        const double shift = fmin(fmax(shift_of(&groups[g]), low), highest);
        for (size_t k = 0; k < groups[g].count; k++, at++) {
            places[at] = before + shift;
            if (at + 1 < count) before += gaps[at];
        }
    }
    frame_give(groups);
    return FRAME_OK;
}
