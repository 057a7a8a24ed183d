/* A plan from sides and diagonals: corners, residuals, and the measurement that does not fit. */
#include <math.h>

#include "base/error.h"
#include "marks/network.h"
#include "marks_facts.h"
#include "working/calculation.h"

enum { POINTS, RESIDUALS };

/* W. Baarda, A testing procedure for use in geodetic networks (1968): one in a thousand by chance. From memory. */
#define CRITICAL 3.29
/* Less than this much of its own error shows: nothing checks the measurement. */
#define UNCHECKED 1e-6

static frame_status take_distance(const frame_survey_in *in, size_t index, frame_network *network) {
    frame_survey_distance given;
    frame_survey_distance_item(in->distances, index, &given);
    if (given.corner_a == given.corner_b) {
        frame_fail_number(FRAME_IMPOSSIBLE, "corner_b", given.corner_b, "another corner than corner_a");
        return frame_fail_within("distances[%zu].", index);
    }
    const int highest = given.corner_a > given.corner_b ? given.corner_a : given.corner_b;
    if (highest > network->corners) network->corners = highest;
    network->line[index] =
        (frame_network_line){given.corner_a - 1, given.corner_b - 1, given.length_in, given.error_in, 0, 0};
    return FRAME_OK;
}

static void take_corner(const frame_survey_in *in, size_t index, frame_network *network) {
    frame_survey_corner corner;
    frame_survey_corner_item(in->corners, index, &corner);
    network->near[index] = corner.x_in != FRAME_NOT_GIVEN && corner.y_in != FRAME_NOT_GIVEN;
    if (!network->near[index]) return;
    network->x[index] = corner.x_in;
    network->y[index] = corner.y_in;
}

static frame_status take(const frame_survey_in *in, frame_network *network) {
    network->lines = (int)in->distance_count;
    network->corners = (int)in->corner_count;
    for (size_t i = 0; i < in->corner_count; i++) take_corner(in, i, network);
    network->line = frame_take_zeroed(in->distance_count, sizeof *network->line);
    if (!network->line) return FRAME_NO_MEMORY;
    for (size_t i = 0; i < in->distance_count; i++) {
        const frame_status status = take_distance(in, i, network);
        if (status) return status;
    }
    if (network->corners < 3)
        return frame_fail_number(FRAME_IMPOSSIBLE, "distances", network->corners,
                                 "distances between at least three corners");
    network->unknowns = 2 * network->corners - 3;
    const size_t n = (size_t)network->unknowns;
    network->normal = frame_take_zeroed(n * n, sizeof(double));
    network->right = frame_take_zeroed(n, sizeof(double));
    return network->normal && network->right ? FRAME_OK : FRAME_NO_MEMORY;
}

static double standardized(const frame_network_line *line) {
    return line->share > UNCHECKED ? line->residual / (line->error * sqrt(line->share)) : FRAME_NOT_GIVEN;
}

/* The largest residual over its own error, checked by others or not: sides that cannot close show here even where none
 * is to spare. */
static double unclosed(const frame_network *network) {
    double most = 0;
    for (int i = 0; i < network->lines; i++)
        most = fmax(most, fabs(network->line[i].residual) / network->line[i].error);
    return most;
}

/* The measurement that fits worst, if it can be told from the others: its figure must stand out among those as large.
 */
static void judge(const frame_network *network, frame_survey_out *out) {
    double worst = 0, second = 0;
    int at = -1;
    for (int i = 0; i < network->lines; i++) {
        const double figure = standardized(&network->line[i]);
        if (figure == FRAME_NOT_GIVEN) continue;
        if (fabs(figure) > worst) {
            second = worst;
            worst = fabs(figure);
            at = i;
        } else {
            second = fmax(second, fabs(figure));
        }
    }
    out->suspect = 0;
    out->consistent = worst <= CRITICAL && unclosed(network) <= CRITICAL;
    if (out->consistent) return;
    if (worst > CRITICAL && second < 0.98 * worst) {
        out->suspect = at + 1;
        out->cautions |= FRAME_BIT(FRAME_SURVEY_CAUTION_SUSPECT);
    } else {
        out->cautions |= FRAME_BIT(FRAME_SURVEY_CAUTION_CANNOT_TELL);
    }
}

static void find_fit(const frame_network *network, frame_survey_out *out, frame_working *w) {
    double squares = 0;
    out->worst_in = 0;
    for (int i = 0; i < network->lines; i++) {
        const frame_network_line *line = &network->line[i];
        squares += line->residual * line->residual / (line->error * line->error);
        out->worst_in = fmax(out->worst_in, fabs(line->residual));
    }
    FRAME_GIVEN(w, n, network->corners, "", "corners");
    FRAME_GIVEN(w, m, network->lines, "", "measurements");
    FRAME_STEP(w, f, m - (2 * n - 3), "", "measurements to spare",
               "each corner has two coordinates; three fix the plan's place");
    out->to_spare = (int32_t)f;
    if (f < 1) return;
    FRAME_GIVEN(w, vPv, squares, "", "sum of the squares of the residuals over their errors");
    FRAME_STEP(w, s, sqrt(vPv / f), "", "residuals against the errors given; about 1 when all is well",
               "least squares");
    out->spread = s;
}

static double direction(const frame_network *network, int from, int to) {
    return atan2(network->y[to] - network->y[from], network->x[to] - network->x[from]) / FRAME_DEG;
}

static int add_point(const frame_network *network, int i, const char *name, frame_answer *answer,
                     frame_survey_out *out) {
    const int n = network->corners, next = (i + 1) % n, before = (i + n - 1) % n;
    frame_survey_point *point = frame_answer_add(answer, POINTS);
    if (!point) return 0;
    point->x_in = network->x[i];
    point->y_in = network->y[i];
    point->error_in = network->error[i];
    point->angle_deg = fmod(direction(network, i, before) - direction(network, i, next) + 720, 360);
    point->off_square_deg = remainder(point->angle_deg, 90);
    point->side_in = hypot(network->x[next] - network->x[i], network->y[next] - network->y[i]);
    point->bearing_deg = direction(network, i, next);
    point->name = frame_answer_text(answer, name ? name : "");
    point->number = i + 1;
    point->distances = 0;
    for (int k = 0; k < network->lines; k++) point->distances += network->line[k].from == i || network->line[k].to == i;
    out->perimeter_in += point->side_in;
    out->area_in2 += (network->x[i] * network->y[next] - network->x[next] * network->y[i]) / 2;
    if (fabs(remainder(point->angle_deg, 180)) > 45)
        out->off_square_deg = fmax(out->off_square_deg, fabs(point->off_square_deg));
    return 1;
}

static int add_residual(const frame_survey_in *in, const frame_network *network, size_t i, frame_answer *answer) {
    frame_survey_distance given;
    frame_survey_distance_item(in->distances, i, &given);
    const frame_network_line *line = &network->line[i];
    frame_survey_residual *item = frame_answer_add(answer, RESIDUALS);
    if (!item) return 0;
    item->corner_a = given.corner_a;
    item->corner_b = given.corner_b;
    item->measured_in = line->length;
    item->found_in = line->length - line->residual;
    item->residual_in = line->residual;
    item->share = line->share;
    item->standardized = standardized(line);
    if (line->share > UNCHECKED) item->would_be_in = line->length - line->residual / line->share;
    item->name = frame_answer_text(answer, given.name ? given.name : "");
    return 1;
}

static frame_status list(const frame_survey_in *in, const frame_network *network, frame_answer *answer,
                         frame_survey_out *out) {
    int kept = 1;
    out->off_square_deg = out->area_in2 = out->perimeter_in = 0;
    for (int i = 0; i < network->corners; i++) {
        frame_survey_corner corner = {.name = NULL};
        if ((size_t)i < in->corner_count) frame_survey_corner_item(in->corners, (size_t)i, &corner);
        kept &= add_point(network, i, corner.name, answer, out);
    }
    for (size_t i = 0; i < in->distance_count; i++) kept &= add_residual(in, network, i, answer);
    return kept ? FRAME_OK : FRAME_NO_MEMORY;
}

static frame_status solve_with(const frame_survey_in *in, frame_network *network, frame_answer *answer,
                               frame_survey_out *out, frame_working *w) {
    frame_status status = take(in, network);
    if (!status) status = frame_network_place(network);
    if (!status) status = frame_network_settle(network);
    if (status) return status;
    out->known = FRAME_KNOWN_USER;
    out->cautions = FRAME_BIT(FRAME_SURVEY_CAUTION_MEASURE);
    out->not_checked = FRAME_BIT(FRAME_SURVEY_UNCHECKED_LEVEL);
    find_fit(network, out, w);
    judge(network, out);
    if (out->to_spare < 1) out->cautions |= FRAME_BIT(FRAME_SURVEY_CAUTION_NONE_TO_SPARE);
    if (network->either_side) out->cautions |= FRAME_BIT(FRAME_SURVEY_CAUTION_SIDE);
    return list(in, network, answer, out);
}

static frame_status solve(const frame_survey_in *in, frame_answer *answer, frame_survey_out *out, frame_working *w) {
    frame_network *network = frame_take_zeroed(1, sizeof *network);
    if (!network) return FRAME_NO_MEMORY;
    const frame_status status = solve_with(in, network, answer, out, w);
    frame_give(network->line);
    frame_give(network->normal);
    frame_give(network->right);
    frame_give(network);
    return status;
}

FRAME_IMPLEMENT_ANSWER(survey, solve);
