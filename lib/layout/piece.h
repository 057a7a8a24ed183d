/* The pieces behind an answer of this room: where each lies, and the planes that cut it. From them the kernel makes
 * sticks on demand; a layout of hundreds of pieces costs no kernel until somebody asks. */
#ifndef FRAME_LIB_LAYOUT_PIECE_H
#define FRAME_LIB_LAYOUT_PIECE_H

#include <frame/layout.h>

#include "base/answer.h"
#include "timber/vector.h"

/* A plane that cuts a piece, in the answer's own axes. */
typedef struct frame_layout_cut {
    vec3 point, waste;
    const char *label;
    frame_stick_role role;
    int32_t notch; /* 0 for a cut of its own */
    frame_stick_notch_kind notch_kind;
} frame_layout_cut;

typedef struct frame_layout_piece {
    const char *name, *section; /* kept by the answer */
    double thickness, depth;
    double length, short_point; /* long point to long point, short point to short point */
    vec3 start, end, crown;     /* the axis runs in the middle of the section */
    size_t cut_first, cut_count;
    double start_deg, end_deg; /* of the end cuts, from square */
    frame_piece_kind kind;
    frame_size size;       /* not given for a section of no such size */
    int32_t opening, gang; /* from 1; 0 for none */
} frame_layout_piece;

typedef struct frame_layout_set {
    frame_answer *answer; /* which owns the set and its texts */
    frame_array pieces, cuts;
    const char *name;          /* of the whole, for drawings */
    const frame_wall_in *wall; /* of a wall: what it was laid out by, without its lists; else NULL */
} frame_layout_set;

#define FRAME_LAYOUT_PIECE(set, i) (&FRAME_ITEM(frame_layout_piece, (set)->pieces, i))

/* An empty set, the first thing its answer owns. NULL without memory. */
frame_layout_set *frame_layout_set_new(frame_answer *answer);
/* The set of an answer of this room. */
static inline const frame_layout_set *frame_layout_set_of(const void *answer) {
    const frame_answer *of = answer;
    return FRAME_ITEM(frame_owned, of->owned, 0).object;
}

/* A section of lumber: by its size, or by its true measures. */
typedef struct frame_layout_section {
    double thickness, depth;
    frame_size size;
    const char *name; /* "2x12", or its measures; kept by the answer */
    frame_known known;
} frame_layout_section;
/* Fills in what was not given (size, thickness, depth) from the size, and names the section. fields: the names of the
 * three fields for messages. */
typedef struct frame_layout_section_fields {
    const char *size, *thickness, *depth;
} frame_layout_section_fields;
frame_status frame_layout_take_section(frame_answer *answer, const frame_layout_section_fields *fields,
                                       frame_layout_section *section);

/* "3/4 x 7-1/8": the name of a section of no nominal size. */
const char *frame_layout_measures(frame_answer *answer, double thickness, double depth);

/* Adds a piece whose axis runs from start to end; NULL without memory, which the answer then knows too. number: written
 * after the name unless negative. */
frame_layout_piece *frame_layout_add(frame_layout_set *set, frame_piece_kind kind, const char *name, int number,
                                     const frame_layout_section *section, vec3 start, vec3 end, vec3 crown);
/* Cuts the piece added last. */
frame_layout_cut *frame_layout_add_cut(frame_layout_set *set, frame_stick_role role, vec3 point, vec3 waste,
                                       const char *label);

/* FRAME_TOO_LARGE for a set with a piece longer than a stick may be; field: what to blame. */
frame_status frame_layout_check(const frame_layout_set *set, const char *field);

/* A piece as a stick. */
frame_status frame_layout_stick(const frame_layout_set *set, size_t index, frame_stick **stick);
/* Whether any two pieces share wood, given out as far as the caller's struct reaches. */
frame_status frame_layout_give_fit(const frame_layout_set *set, frame_fit_out *out, size_t out_size);
/* The wood that a piece of one set shares with one of another. */
frame_status frame_layout_shared(const frame_layout_set *set, size_t index, const frame_layout_set *other,
                                 size_t other_index, double *shared);
/* For a call without an answer. */
frame_status frame_layout_no_answer(void);
/* For an index past the end of a list. */
frame_status frame_layout_no_item(size_t index, size_t count);

/* What a public item of a piece has in common with the others. */
#define FRAME_LAYOUT_TELL(item, piece)                 \
    do {                                               \
        (item)->kind = (piece)->kind;                  \
        (item)->size = (piece)->size;                  \
        (item)->thickness_in = (piece)->thickness;     \
        (item)->depth_in = (piece)->depth;             \
        (item)->length_in = (piece)->length;           \
        (item)->short_point_in = (piece)->short_point; \
        (item)->start_x_in = (piece)->start.x;         \
        (item)->start_y_in = (piece)->start.y;         \
        (item)->start_z_in = (piece)->start.z;         \
        (item)->end_x_in = (piece)->end.x;             \
        (item)->end_y_in = (piece)->end.y;             \
        (item)->end_z_in = (piece)->end.z;             \
        (item)->name = (piece)->name;                  \
        (item)->section = (piece)->section;            \
    } while (0)

#define FRAME_LAYOUT_TELL_CUTS(item, piece)     \
    do {                                        \
        (item)->start_deg = (piece)->start_deg; \
        (item)->end_deg = (piece)->end_deg;     \
        (item)->opening = (piece)->opening;     \
        (item)->gang = (piece)->gang;           \
    } while (0)

/* The word for a kind of piece. */
const char *frame_layout_kind_name(frame_piece_kind kind);

/* Gathers pieces alike: gives each its gang, and the gangs in the order their first pieces go up (size_t: that piece).
 */
typedef struct frame_layout_gang {
    size_t first;
    int32_t count;
} frame_layout_gang;
frame_status frame_layout_gather(frame_layout_set *set, frame_array *gangs);
#define FRAME_LAYOUT_TELL_GANG(item, gang, piece)      \
    do {                                               \
        (item)->kind = (piece)->kind;                  \
        (item)->size = (piece)->size;                  \
        (item)->count = (gang)->count;                 \
        (item)->first = (int32_t)(gang)->first;        \
        (item)->length_in = (piece)->length;           \
        (item)->short_point_in = (piece)->short_point; \
        (item)->start_deg = (piece)->start_deg;        \
        (item)->end_deg = (piece)->end_deg;            \
        (item)->section = (piece)->section;            \
    } while (0)

#endif
