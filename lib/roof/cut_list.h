/* The planes that cut a stick, gathered before it is made. All are in the world's axes. */
#ifndef FRAME_LIB_ROOF_CUT_LIST_H
#define FRAME_LIB_ROOF_CUT_LIST_H

#include <frame/drawing.h>
#include <frame/timber.h>

enum { FRAME_CUT_LIST_PLANES = 16 };

typedef struct frame_cut_list {
    frame_stick_plane planes[FRAME_CUT_LIST_PLANES];
    size_t count;
} frame_cut_list;

/* Adds a plane through a point; waste: the direction in which it takes wood away. */
frame_stick_plane *frame_cut_list_add(frame_cut_list *list, frame_stick_role role, const double point[3],
                                      const double waste[3], const char *label);
/* Makes the last planes, so many of them, one notch. */
void frame_cut_list_notch(frame_cut_list *list, size_t planes, int32_t number, frame_stick_notch_kind kind);

/* Where a stick lies before it is cut, and what it is called. */
typedef struct frame_cut_list_body {
    const char *name;
    double thickness, depth, from[3], to[3], crown[3]; /* the crown is up where all of it is 0 */
    frame_stick_axis_at axis_at;
} frame_cut_list_body;
/* Makes the stick, cut by the planes of the list. */
frame_status frame_cut_list_stick(const frame_cut_list *list, const frame_cut_list_body *body, frame_stick **stick);

/* The view of a calculation that draws its stick. */
#define FRAME_DRAW_STICK(X)                                                               \
    frame_status frame_##X##_drawing(const frame_##X##_in *in, frame_drawing **drawing) { \
        frame_stick *stick;                                                               \
        frame_status status = frame_##X##_stick(in, &stick);                              \
        if (status) return status;                                                        \
        status = frame_stick_drawing(stick, drawing);                                     \
        frame_stick_free(stick);                                                          \
        return status;                                                                    \
    }                                                                                     \
    typedef struct frame_##X##_in frame_##X##_in

#endif
