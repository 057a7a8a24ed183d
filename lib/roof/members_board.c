/* Boards along the edges of a roof. */
#include "roof/members_board.h"

frame_status members_add_board(members *m, const members_board *b) {
    const v2 way = v2_unit(v2_less(b->q, b->p)), middle = v2_times(b->in, b->from_in);
    const v2 from = v2_add(v2_less(b->p, way), middle), to = v2_add(v2_add(b->q, way), middle);
    members_piece *piece =
        members_add_piece(m, b->kind, b->section, (vec3){from.x, from.y, b->top}, (vec3){to.x, to.y, b->top});
    if (!piece) return FRAME_NO_MEMORY;
    piece->edge = b->edge;
    piece->face = b->face;
    for (int end = 0; end < 2; end++)
        if (!members_add_upright(m, b->ends[end], v2_left(way), b->label, 0)) return FRAME_NO_MEMORY;
    return FRAME_OK;
}

line2 members_mitre(line2 a, line2 b, double out_a, double out_b, v2 at, v2 keep) {
    v2 inner, outer, n = v2_unit(keep);
    if (line2_meet(a, b, &inner) && line2_meet(line2_moved(a, -out_a), line2_moved(b, -out_b), &outer)) {
        n = v2_left(v2_unit(v2_less(outer, inner)));
        at = inner;
    }
    if (v2_dot(n, keep) < 0) n = v2_times(n, -1);
    return line2_through(at, n);
}
