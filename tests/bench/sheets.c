/* Speed of sheet_plan: the sheathing of a hip roof, about a hundred parts, beside first-fit on shelves of bounding
 * boxes in the same run. With --check only the answer is looked at: every part there, no more sheets than the shelves
 * need. */
#define _POSIX_C_SOURCE 200809L
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#include <frame/frame.h>

enum { MOST = 400 };

static frame_sheet_corner corners[MOST][4];
static frame_sheet_part parts[MOST];
static double heights[MOST], widths[MOST];
static size_t part_count;

static double now(void) {
    struct timespec time;
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &time);
    return (double)time.tv_sec + 1e-9 * (double)time.tv_nsec;
}

static void put(int corner, double x, double y) {
    frame_sheet_corner_init(&corners[part_count][corner]);
    corners[part_count][corner].x_in = x;
    corners[part_count][corner].y_in = y;
}

/* What of a course between x and x + 96 lies between the two hips; both lean in by 0.92 of the rise. */
static void add_piece(double x, double low_left, double low_right, double top_left, double top_right, double height) {
    const double left = fmax(x, low_left), right = fmin(x + 96, low_right);
    const double up_left = fmax(x, top_left), up_right = fmin(x + 96, top_right);
    if (part_count == MOST || right - left < 1 || up_right - up_left < 1) return;
    put(0, left, 0), put(1, right, 0), put(2, fmin(right, up_right), height), put(3, fmax(left, up_left), height);
    frame_sheet_part_init(&parts[part_count]);
    parts[part_count].corners = corners[part_count];
    parts[part_count].corner_count = 4;
    widths[part_count] = right - left, heights[part_count++] = height;
}

/* A face of the roof, an eave's length wide, in courses of 48 in, every second one begun half a sheet later. */
static void add_face(double eave) {
    const double lean = 0.92;
    for (int course = 0; course < 5; course++) {
        const double low = lean * 48 * course, top = low + lean * 48;
        for (double x = course % 2 ? -48 : 0; x < eave; x += 96) add_piece(x, low, eave - low, top, eave - top, 48);
    }
}

/* The rival: bounding boxes, all of one height here, side by side on shelves, longest first. */
static int shelves(void) {
    static double room[MOST];
    static int done[MOST];
    int sheets = 0;
    memset(done, 0, sizeof done);
    for (size_t n = 0; n < part_count; n++) {
        size_t longest = MOST;
        for (size_t i = 0; i < part_count; i++)
            if (!done[i] && (longest == MOST || widths[i] > widths[longest])) longest = i;
        done[longest] = 1;
        int s = 0;
        while (s < sheets && room[s] < widths[longest] + 0.125 && room[s] != widths[longest]) s++;
        if (s == sheets) room[sheets++] = 96;
        room[s] -= widths[longest] + 0.125;
    }
    return sheets;
}

int main(int count, char **words) {
    const int quick = count > 1 && !strcmp(words[1], "--check");
    frame_sheet_size size;
    frame_sheet_plan_in in;
    frame_sheet_plan *plan;
    frame_sheet_plan_out out;
    add_face(760), add_face(760), add_face(520), add_face(520);
    frame_sheet_size_init(&size);
    size.width_in = 96, size.length_in = 48, size.price = 20;
    frame_sheet_plan_in_init(&in);
    in.parts = parts, in.part_count = part_count, in.sheets = &size, in.sheet_count = 1;
    if (quick) in.time_limit_s = 0.2;
    const double begun = now();
    if (frame_sheet_plan_solve(&in, &plan, NULL)) return fprintf(stderr, "%s\n", frame_error_text()), 1;
    const double ours = now() - begun, then = now();
    const int theirs = shelves();
    const double rival = now() - then;
    frame_sheet_plan_result(plan, &out);
    if (!quick)
        printf("sheet_plan, C, %zu sheathing parts %20.3f s: %d sheets, bound %d   shelves %.6f s: %d sheets\n",
               part_count, ours, out.sheets_used, out.bound, rival, theirs);
    const int good = out.parts_cut == (int)part_count && out.sheets_used <= theirs && out.bound <= out.sheets_used;
    frame_sheet_plan_free(plan);
    return !good;
}
