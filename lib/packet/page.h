/* What both packets share: the shell of the page, its cover's counts, notes, and the boards with their cuts. */
#ifndef FRAME_LIB_PACKET_PAGE_H
#define FRAME_LIB_PACKET_PAGE_H

#include "packet/packet.h"

/* A sheet of the page, for its list of contents. */
typedef struct frame_page_sheet {
    const char *id, *title;
} frame_page_sheet;

typedef struct frame_page_note {
    const char *about, *text;
    frame_note_kind kind;
} frame_page_note;

typedef struct frame_page_purchase {
    const char *section;
    double length_in, board_feet, total;
    int32_t count;
} frame_page_purchase;

typedef struct frame_page_board {
    const char *section;
    double length_in, offcut_in;
    uint32_t cut_first, cut_count;
} frame_page_board;

typedef struct frame_page_cut {
    const char *name;
    double to_in;
} frame_page_cut;

/* Where a page's lists come from: a job's answer or a framing's. */
typedef struct frame_page_lists {
    const void *of;
    const char *name; /* of the whole: its notes come first */
    size_t note_count, purchase_count, board_count;
    double cost;
    void (*note)(const void *of, size_t i, frame_page_note *note);
    void (*purchase)(const void *of, size_t i, frame_page_purchase *purchase);
    void (*board)(const void *of, size_t i, frame_page_board *board);
    void (*cut)(const void *of, size_t i, frame_page_cut *cut);
} frame_page_lists;

/* The functions of an answer X that has notes, purchases, boards and cuts of these names. */
#define FRAME_PAGE_LISTS(X)                                                                                     \
    static void page_note(const void *of, size_t i, frame_page_note *to) {                                      \
        frame_##X##_note from;                                                                                  \
        frame_##X##_note_at(of, i, &from);                                                                      \
        *to = (frame_page_note){from.about, from.text, from.kind};                                              \
    }                                                                                                           \
    static void page_purchase(const void *of, size_t i, frame_page_purchase *to) {                              \
        frame_##X##_purchase from;                                                                              \
        frame_##X##_purchase_at(of, i, &from);                                                                  \
        *to = (frame_page_purchase){from.section, from.length_in, from.board_feet, from.total, from.count};     \
    }                                                                                                           \
    static void page_board(const void *of, size_t i, frame_page_board *to) {                                    \
        frame_##X##_board from;                                                                                 \
        frame_##X##_board_at(of, i, &from);                                                                     \
        *to = (frame_page_board){from.section, from.length_in, from.offcut_in, from.cut_first, from.cut_count}; \
    }                                                                                                           \
    static void page_cut(const void *of, size_t i, frame_page_cut *to) {                                        \
        frame_##X##_cut from;                                                                                   \
        frame_##X##_cut_at(of, i, &from);                                                                       \
        *to = (frame_page_cut){from.name, from.to_in};                                                          \
    }                                                                                                           \
    static frame_page_lists page_lists(const frame_##X *of, const char *name, double cost) {                    \
        return (frame_page_lists){of,                                                                           \
                                  name,                                                                         \
                                  frame_##X##_note_count(of),                                                   \
                                  frame_##X##_purchase_count(of),                                               \
                                  frame_##X##_board_count(of),                                                  \
                                  cost,                                                                         \
                                  page_note,                                                                    \
                                  page_purchase,                                                                \
                                  page_board,                                                                   \
                                  page_cut};                                                                    \
    }

/* Up to <main>, and from </main> on. */
void frame_page_begin(frame_text *into, const char *name);
void frame_page_end(frame_text *into);
void frame_page_contents(frame_text *into, const frame_page_sheet *sheets, size_t count);
/* Boards and money, the weakest source, and how much there is to read beside the verdict, each linked to its sheet. */
void frame_page_cover(frame_text *into, const frame_page_lists *lists, int32_t boards_used, frame_known known);
/* Notes of one kind, gathered by what they are about; those about the whole first. */
void frame_page_notes(frame_text *into, const frame_page_lists *lists, frame_note_kind kind, const char *id,
                      const char *title);
/* The shopping list and the cutting plan. */
void frame_page_buying(frame_text *into, const frame_page_lists *lists);

extern const char frame_page_script[];

#endif
