/* Boards along the edges of a roof: plates, ledgers, sub-fascias. */
#ifndef FRAME_LIB_ROOF_MEMBERS_BOARD_H
#define FRAME_LIB_ROOF_MEMBERS_BOARD_H

#include "roof/members.h"

/* A board along a line from p to q, its inner face on the line or thickness outside it; cut by lines at both ends. */
typedef struct members_board {
    frame_roof_member kind;
    int32_t section, edge, face;
    v2 p, q, in;    /* in: square to it, to the side the ends are counted from */
    double from_in; /* where the middle of its thickness lies, to that side */
    double top;
    line2 ends[2];
    const char *label;
} members_board;

frame_status members_add_board(members *m, const members_board *board);
/* The line a board is mitred along where it meets the next one: through where their inner faces meet and where the
 * outer ones do; square where they run on. keep: a direction into the board. */
line2 members_mitre(line2 a, line2 b, double out_a, double out_b, v2 at, v2 keep);

#endif
