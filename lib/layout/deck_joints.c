/* The joints of a row of deck boards: the shortest way from one end to the other, joist by joist, each board paid for
 * by the stock it is cut from. */
#include <math.h>

#include "layout/deck.h"

double frame_deck_board_for(const frame_deck_plan *plan, double length) {
    for (int i = 0; i < plan->stock_count; i++)
        if (plan->stock[i] >= length - 1e-9) return plan->stock[i];
    return plan->stock[plan->stock_count - 1];
}

void frame_deck_buy(frame_deck_plan *plan, double length) {
    plan->laid += length;
    const double longest = plan->stock[plan->stock_count - 1];
    for (; length > longest + 1e-9; length -= longest) plan->bought += longest;
    plan->bought += frame_deck_board_for(plan, length);
}

static int taken(const frame_array *beside, double at) {
    for (size_t i = 0; i < beside->count; i++)
        if (fabs(FRAME_ITEM(double, *beside, i) - at) < 1e-6) return 1;
    return 0;
}

/* One place where a board may end. */
typedef struct node {
    double at, cost;
    int from; /* the node before, on the cheapest way */
} node;

static int push_nodes(frame_array *nodes, const double *joists, int count, double from, double to,
                      const frame_array *beside) {
    node first = {from, 0, -1}, last = {to, INFINITY, -1};
    int kept = frame_array_push(nodes, &first) != NULL;
    for (int i = 0; i < count; i++) {
        const node here = {joists[i], INFINITY, -1};
        if (joists[i] < from + 16 || joists[i] > to - 16 || taken(beside, joists[i])) continue; /* no stubs */
        kept &= frame_array_push(nodes, &here) != NULL;
    }
    return kept & (frame_array_push(nodes, &last) != NULL);
}

static void find_cheapest(const frame_deck_plan *plan, frame_array *nodes) {
    const double longest = plan->stock[plan->stock_count - 1];
    for (size_t i = 1; i < nodes->count; i++) {
        node *here = &FRAME_ITEM(node, *nodes, i);
        for (size_t k = i; k-- > 0;) {
            const node *before = &FRAME_ITEM(node, *nodes, k);
            const double length = here->at - before->at;
            if (length > longest + 1e-9) break;
            const double cost = before->cost + frame_deck_board_for(plan, length) + 1e-3; /* fewer joints when alike */
            if (cost < here->cost) here->cost = cost, here->from = (int)k;
        }
    }
}

int frame_deck_joints(const frame_deck_plan *plan, const double *joists, int joist_count, double from, double to,
                      const frame_array *beside, frame_array *joints) {
    frame_array nodes = {.item_size = sizeof(node)};
    int count = -1;
    if (push_nodes(&nodes, joists, joist_count, from, to, beside)) {
        find_cheapest(plan, &nodes);
        int at = (int)nodes.count - 1;
        if (!isinf(FRAME_ITEM(node, nodes, at).cost)) {
            count = 0;
            for (at = FRAME_ITEM(node, nodes, at).from; at > 0; at = FRAME_ITEM(node, nodes, at).from, count++)
                if (!frame_array_push(joints, &FRAME_ITEM(node, nodes, at).at)) plan->answer->failed = 1;
        }
    } else {
        plan->answer->failed = 1;
    }
    frame_array_give(&nodes);
    return count;
}
