/* Layouts of all parts on sheets, and the search for a better one. */
#ifndef FRAME_LIB_TAKEOFF_SHEET_SEARCH_H
#define FRAME_LIB_TAKEOFF_SHEET_SEARCH_H

#include "takeoff/sheet_fit.h"

/* Sheets with what lies on them, and the kinds of the parts that lie nowhere. */
typedef struct frame_sheet_layout {
    frame_array bins; /* frame_sheet_bin */
    frame_array left; /* int */
} frame_sheet_layout;

/* What a layout is worth, the weightiest first. */
typedef struct frame_sheet_worth {
    double left; /* area of the parts that lie nowhere */
    double cost;
    int sheets; /* to buy */
    int spare;
    double on_hand; /* area of parts on offcuts */
    double dense;   /* the more unequal the sheets, the nearer is one to being empty */
} frame_sheet_worth;

typedef struct frame_sheet_limits {
    double cost_bound;
    int sheet_bound;
    int spare;
    int64_t work; /* the most that is tried */
    double until; /* when the time is up, by frame_sheet_clock; 0 without a limit */
} frame_sheet_limits;

typedef struct frame_sheet_search {
    const frame_sheet_job *job;
    frame_sheet_fitter fitter;
    frame_sheet_limits limits;
    int64_t *used; /* of each stock, by the layout and what is being packed */
    signed char
        *pairs; /* of kinds on the largest sheet: 0 not known, 1 fits, -1 does not; NULL when there are too many */
    int widest; /* that sheet */
    int ended, spare; /* frame_stock_end; 0 while it goes on */
    const frame_watch *watch;
    double next_look;          /* of whoever watches, by the clock */
    frame_sheet_worth shelves; /* what the usual way comes to; sheets -1 when there is none */
    uint64_t random;
    frame_sheet_layout layout;
} frame_sheet_search;

frame_status frame_sheet_search_begin(frame_sheet_search *search, const frame_sheet_job *job);
void frame_sheet_search_give(frame_sheet_search *search);
/* Lays everything out and betters it until it is proven best, or work or time is up. */
frame_status frame_sheet_search_run(frame_sheet_search *search);
frame_sheet_worth frame_sheet_worth_of(const frame_sheet_job *job, const frame_sheet_layout *layout);
int frame_sheet_better(const frame_sheet_worth *one, const frame_sheet_worth *other);
/* Whether two kinds can lie on the largest sheet together. */
int frame_sheet_kinds_pair(frame_sheet_search *search, int one, int other);
double frame_sheet_clock(void);
/* Whether time or whoever watches ends the search; looks only now and then. best: the cost so far, if any. */
int frame_sheet_is_stopped(frame_sheet_search *search, double best);
uint64_t frame_sheet_random(frame_sheet_search *search, uint64_t below);
void frame_sheet_layout_give(frame_sheet_layout *layout);

/* How a list of parts is packed. */
typedef struct frame_sheet_rule {
    frame_sheet_pull pull;
    int first_fit; /* else the fullest sheet first */
    int cheapest;  /* new sheets: the cheapest that does, else the cheapest for its area */
    int choice;    /* added to that, to try other sizes */
    int way;       /* of rectangles: how a space is chosen and cut */
} frame_sheet_rule;
/* Packs kinds in the order given into the layout's sheets and new ones. */
frame_status frame_sheet_pack(frame_sheet_search *search, const int *kinds, int count, const frame_sheet_rule *rule,
                              frame_sheet_layout *layout);

#endif
