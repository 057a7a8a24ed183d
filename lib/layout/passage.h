/* A passage through a frame: its box, and how it stands to each piece. */
#ifndef FRAME_LIB_LAYOUT_PASSAGE_H
#define FRAME_LIB_LAYOUT_PASSAGE_H

#include "layout/piece.h"

/* Axes are 0, 1, 2 for x, y, z. at and half are of the two axes across the way. */
typedef struct frame_passage_box {
    int way, round;
    double at[3], half[3], size; /* size: the larger side, room counted */
    int doubled;                 /* studs in a row so far that must be doubled */
} frame_passage_box;

typedef struct frame_passage_verdict {
    frame_code_verdict verdict;
    frame_known known;
    const char *reason, *needs; /* static, or the thread's error text */
    double overlap, limit;
    int cuts_off; /* the member would have to be cut */
} frame_passage_verdict;

/* Judges a passage through any set of pieces. */
frame_status frame_passage_make(const frame_layout_set *set, const frame_passage_in *given, frame_passage **made);

/* Whether the box round a piece reaches into the passage. */
int frame_passage_near(const frame_layout_piece *piece, const frame_passage_box *box);
/* The passage as a stick, as long as the frame. */
frame_status frame_passage_pipe(const frame_layout_set *set, const frame_passage_box *box, frame_stick **stick);
/* The wood a piece and the passage share. */
frame_status frame_passage_share(const frame_layout_set *set, size_t index, const frame_stick *pipe, double *overlap);
/* What the code says of a piece that the passage meets. */
frame_status frame_passage_judge(const frame_layout_piece *piece, const frame_passage_in *in, frame_passage_box *box,
                                 frame_passage_verdict *verdict);
/* Whether a kind of piece carries anything but itself. */
int frame_passage_carries(frame_piece_kind kind);
/* The nearest middle along an axis where the passage meets nothing; not given when there is none within the frame. */
frame_status frame_passage_clear(const frame_layout_set *set, const frame_passage_box *box, int axis, double *clear);

#endif
