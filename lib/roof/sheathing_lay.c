/* Courses from the eave up, joints on the layout's places, staggered by half a sheet; then what stands behind them. */
#include <stdlib.h>

#include "roof/sheathing.h"

/* The stretch of a level line within the loop; a face is crossed in more than one where it has a notch. */
static int by_value(const void *a, const void *b) {
    const double x = *(const double *)a, y = *(const double *)b;
    return (x > y) - (x < y);
}

static int cross_at(const sheathing_loop *loop, double at, int upright, double found[POLYGON2_CORNERS]) {
    int count = 0;
    for (int i = 0; i < loop->outline.count; i++) {
        v2 a = loop->outline.corners[i], b = loop->outline.corners[(i + 1) % loop->outline.count];
        if (!upright) a = (v2){a.y, a.x}, b = (v2){b.y, b.x};
        if ((a.x <= at) == (b.x <= at)) continue;
        found[count++] = a.y + (b.y - a.y) * (at - a.x) / (b.x - a.x);
    }
    qsort(found, (size_t)count, sizeof *found, by_value);
    return count - count % 2;
}

/* -- the edge between two courses -- */

/* How much of a stretch lies on rafters. */
static double on_rafters(const sheathing *s, const sheathing_loop *loop, double y, double from, double to) {
    const double half = s->m->sections[MEMBERS_RAFTERS].thickness / 2, up = y / loop->secant;
    double sum = 0;
    for (size_t i = 0; i < s->m->laid.count; i++) {
        const members_laid *laid = &FRAME_ITEM(members_laid, s->m->laid, i);
        if (MEMBERS_FACE(s->m, laid->face) != loop->face || laid->low > up || laid->high < up) continue;
        sum += fmax(0, fmin(to, laid->place + half) - fmax(from, laid->place - half));
    }
    return sum;
}

static frame_status give_edge(const sheathing *s, const sheathing_loop *loop, int32_t course, double y) {
    double found[POLYGON2_CORNERS];
    const int count = cross_at(loop, y, 0, found);
    double length = 0, held = 0;
    for (int i = 0; i < count; i += 2) {
        length += found[i + 1] - found[i];
        held += on_rafters(s, loop, y, found[i], found[i + 1]);
    }
    if (length < 1) return FRAME_OK;
    frame_roof_sheathing_course *edge = frame_answer_add(s->answer, SHEATHING_COURSES);
    if (!edge) return FRAME_NO_MEMORY;
    edge->face = loop->face->face;
    edge->course = course;
    edge->length_in = length;
    edge->unheld_in = s->in->edges_held ? 0 : fmax(0, length - held);
    s->out->unheld_in += edge->unheld_in;
    return FRAME_OK;
}

/* -- nailers -- */

static frame_status give_nailer(const sheathing *s, const sheathing_loop *loop, int32_t course, double x, double from,
                                double to) {
    const members_face *face = loop->face;
    if (to - from < 1.5) return FRAME_OK; /* the thickness of a member: it reaches so far */
    frame_roof_sheathing_nailer *nailer = frame_answer_add(s->answer, SHEATHING_NAILERS);
    if (!nailer) return FRAME_NO_MEMORY;
    const v2 low = v2_add(v2_times(face->along, x), v2_times(face->up, from / loop->secant));
    const v2 high = v2_add(v2_times(face->along, x), v2_times(face->up, to / loop->secant));
    nailer->face = face->face;
    nailer->course = course;
    nailer->length_in = to - from;
    nailer->from_x_in = low.x, nailer->from_y_in = low.y;
    nailer->to_x_in = high.x, nailer->to_y_in = high.y;
    nailer->along_in = x - v2_dot(face->along, s->m->origin);
    nailer->up_in = from - v2_dot(face->up, s->m->origin) * loop->secant;
    s->out->nailers_in += nailer->length_in;
    return FRAME_OK;
}

/* Takes the rafter on a joint away from the stretch that is not backed yet, from its lower end up. */
static double backed_to(const sheathing *s, const sheathing_loop *loop, double x, double from, double *next) {
    const double reach = s->m->sections[MEMBERS_FASCIA].thickness + 1e-3;
    double to = from;
    *next = HUGE_VAL;
    for (size_t i = 0; i < s->m->laid.count; i++) {
        const members_laid *laid = &FRAME_ITEM(members_laid, s->m->laid, i);
        if (MEMBERS_FACE(s->m, laid->face) != loop->face || fabs(laid->place - x) > 0.25) continue;
        /* Below its end lies the sub-fascia or the valley it is cut against. */
        const double low = (laid->low - reach) * loop->secant, high = laid->high * loop->secant;
        if (low <= from + 1e-6)
            to = fmax(to, high);
        else
            *next = fmin(*next, low);
    }
    return to;
}

static frame_status back_joint(const sheathing *s, const sheathing_loop *loop, int32_t course, double x, double low,
                               double high) {
    double found[POLYGON2_CORNERS];
    const int count = cross_at(loop, x, 1, found);
    frame_status status = FRAME_OK;
    for (int i = 0; i < count && !status; i += 2) {
        const double to = fmin(high, found[i + 1]);
        double from = fmax(low, found[i]), next;
        while (from < to && !status) {
            const double backed = backed_to(s, loop, x, from, &next);
            if (backed > from) {
                from = backed;
                continue;
            }
            status = give_nailer(s, loop, course, x, from, fmin(next, to));
            from = next;
        }
    }
    return status;
}

/* -- courses -- */

static frame_status lay_course(const sheathing *s, const sheathing_loop *loop, int32_t course, const double y[2],
                               const double ends[2]) {
    const double origin = v2_dot(loop->face->along, s->m->origin), gap = s->in->gap_in;
    const double half = floor(s->step / s->in->spacing_in / 2) * s->in->spacing_in;
    const double first = origin + (course % 2 ? 0 : half);
    frame_status status = FRAME_OK;
    for (double number = floor((ends[0] - first) / s->step); !status; number++) {
        const double joint = first + number * s->step, x[2] = {joint + gap / 2, joint + s->step - gap / 2};
        if (joint >= ends[1] - 1e-6) break;
        status = sheathing_give_part(s, loop, course, x, y);
        if (!status && joint > ends[0] + 1e-6) status = back_joint(s, loop, course, joint, y[0], y[1]);
    }
    return status;
}

frame_status sheathing_lay(const sheathing *s, const sheathing_loop *loop) {
    double ends[2], rises[2];
    polygon2_range(&loop->outline, (v2){1, 0}, &ends[0], &ends[1]);
    polygon2_range(&loop->outline, (v2){0, 1}, &rises[0], &rises[1]);
    const double module = s->in->sheet_width_in + s->in->gap_in;
    frame_status status = FRAME_OK;
    for (int32_t course = 1; !status; course++) {
        const double y[2] = {loop->low + (course - 1) * module, loop->low + course * module - s->in->gap_in};
        if (y[0] >= rises[1] - 1e-6) break;
        status = lay_course(s, loop, course, y, ends);
        if (!status && y[1] < rises[1] - 1e-6) status = give_edge(s, loop, course, y[1]);
    }
    return status;
}
