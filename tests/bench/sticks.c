/* Speed of one stick beside a rival in the same run: a common rafter made with all its cuts, outlines, marks and saw
 * settings, beside snprintf of its cut list (a line for each mark, and one for each setting of the saw); and two sticks
 * asked for the polygons in which they touch, beside the same for the polygons' corners. The best of several rounds
 * counts, since the machine is shared. With --check only the answers are compared. */
#define _POSIX_C_SOURCE 200809L
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#include <frame/frame.h>

enum { ROUNDS = 40, TIMES = 2000 };

static double now(void) {
    struct timespec time;
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &time);
    return (double)time.tv_sec + 1e-9 * (double)time.tv_nsec;
}

static void must(frame_status status) {
    if (!status) return;
    fprintf(stderr, "bench: %s\n", frame_error_text());
    exit(1);
}

static frame_rafter_in rafter_in(void) {
    frame_rafter_in in;
    frame_rafter_in_init(&in);
    in.run_in = 151.5;
    in.slope = 7 / 12.0;
    in.ridge_thickness_in = 1.5;
    in.overhang_in = 16;
    in.size = FRAME_SIZE(2, 8);
    return in;
}

static frame_stick *make_rafter(void) {
    const frame_rafter_in in = rafter_in();
    frame_stick *stick = NULL;
    must(frame_rafter_stick(&in, &stick));
    return stick;
}

static frame_stick *make_plate(void) {
    frame_stick_in in;
    frame_stick *stick = NULL;
    frame_stick_in_init(&in);
    in.thickness_in = 3.5, in.depth_in = 1.5, in.axis_at = FRAME_STICK_AXIS_TOP;
    in.start_x_in = in.end_x_in = 1.75;
    in.start_y_in = -60, in.end_y_in = 60, in.end_z_in = 0;
    must(frame_stick_new(&in, &stick));
    return stick;
}

/* The best time of one call, in microseconds. */
static double time_of(void (*call)(void *), void *with) {
    double best = HUGE_VAL;
    for (int round = 0; round < ROUNDS; round++) {
        const double start = now();
        for (int i = 0; i < TIMES; i++) call(with);
        best = fmin(best, (now() - start) / TIMES);
    }
    return best * 1e6;
}

static void make_and_free(void *with) {
    (void)with;
    frame_stick_free(make_rafter());
}

static void list_cuts(void *with) {
    const frame_stick *stick = with;
    static char text[8192];
    size_t used = 0;
    for (size_t i = 0; i < frame_stick_mark_count(stick); i++) {
        frame_stick_mark mark;
        must(frame_stick_mark_at(stick, i, &mark));
        used += (size_t)snprintf(text + used, sizeof text - used, "%d %.4f %.4f %s\n", (int)mark.face, mark.along_in,
                                 mark.across_in, mark.label);
    }
    for (size_t i = 0; i < frame_stick_saw_count(stick); i++) {
        frame_stick_saw saw;
        must(frame_stick_saw_at(stick, i, &saw));
        used += (size_t)snprintf(text + used, sizeof text - used, "%s %.2f %.2f\n", saw.label, saw.mitre_deg,
                                 saw.bevel_deg);
    }
}

typedef struct pair {
    frame_stick *rafter, *plate;
    frame_contact *contact;
} pair;

static void touch(void *with) {
    const pair *both = with;
    frame_contact *contact = NULL;
    must(frame_stick_contact(both->rafter, both->plate, &contact));
    frame_contact_free(contact);
}

static void list_corners(void *with) {
    const pair *both = with;
    static char text[4096];
    size_t used = 0;
    for (size_t i = 0; i < frame_contact_corner_count(both->contact); i++) {
        frame_contact_corner corner;
        must(frame_contact_corner_at(both->contact, i, &corner));
        used += (size_t)snprintf(text + used, sizeof text - used, "%d %.4f %.4f %.4f\n", (int)corner.face, corner.x_in,
                                 corner.y_in, corner.z_in);
    }
}

/* The stick's figures are the formulas'; the contact is the seat and the heel. */
static int answers_agree(const pair *both) {
    const frame_rafter_in in = rafter_in();
    frame_rafter_out out;
    frame_stick_lengths_out lengths;
    frame_stick_fit_out fit;
    double touched = 0;
    must(frame_rafter(&in, &out, NULL));
    must(frame_stick_lengths(both->rafter, &lengths));
    must(frame_stick_fit(both->rafter, both->plate, &fit));
    for (size_t i = 0; i < frame_contact_face_count(both->contact); i++) {
        frame_contact_face face;
        must(frame_contact_face_at(both->contact, i, &face));
        touched += face.area_in2;
    }
    return fabs(lengths.top_edge_in - out.length_in) < 1e-9 && fabs(touched - fit.contact_in2) < 1e-9 &&
           fabs(touched - 1.5 * (out.seat_in + fmin(out.heel_in, 1.5))) < 1e-7 &&
           frame_stick_mark_count(both->rafter) >= 16;
}

static void report(const char *what, double ours, double rival) {
    printf("%-28s %8.2f us, rival %8.2f us, ratio %5.2f\n", what, ours, rival, ours / rival);
}

int main(int count, char **words) {
    pair both = {make_rafter(), make_plate(), NULL};
    must(frame_stick_contact(both.rafter, both.plate, &both.contact));
    const int agree = answers_agree(&both);
    if (!agree) fprintf(stderr, "bench: the answers differ\n");
    if (agree && !(count > 1 && !strcmp(words[1], "--check"))) {
        report("rafter, all cuts and marks", time_of(make_and_free, NULL), time_of(list_cuts, both.rafter));
        report("contact of two sticks", time_of(touch, &both), time_of(list_corners, &both));
    }
    frame_contact_free(both.contact);
    frame_stick_free(both.rafter), frame_stick_free(both.plate);
    return !agree;
}
