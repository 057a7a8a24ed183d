/* A plan of sheets for the yard, as text. */
#include "base/error.h"
#include "takeoff/sheet_write.h"
#include "tape/tape.h"

frame_status frame_sheet_need_text(const frame_sheet_plan *plan, const frame_text *into) {
    if (!plan) return frame_fail(FRAME_REQUIRED, "plan", "NULL", "a plan", "plan: NULL is no plan");
    if (!into) return frame_fail(FRAME_REQUIRED, "into", "NULL", "a text", "into: NULL is no text");
    return FRAME_OK;
}

static void add_money(const char *before, double money, const char *after, frame_text *into) {
    frame_text_add(into, before);
    frame_text_add_fixed(into, money, 2);
    frame_text_add(into, after);
}

/* So many sheets, or pieces on hand, of one kind. */
static void add_kind(const frame_sheet_plan_sheet *of, size_t count, frame_text *into) {
    frame_text_addf(into, "  %zu x %s", count, of->offcut >= 0 ? "offcut on hand, within " : "");
    frame_tape_add(into, of->x_in, 16);
    frame_text_add(into, " by ");
    frame_tape_add(into, of->y_in, 16);
    if (of->name && *of->name) frame_text_addf(into, " %s", of->name);
    add_money(" at ", of->price, "", into);
    add_money("  ", of->price * (double)count, "\n", into);
}

/* Sheets of one kind stand together. */
static void add_kinds(const frame_sheet_plan *plan, frame_text *into) {
    const size_t all = frame_sheet_plan_sheet_count(plan);
    size_t count = 0;
    for (size_t s = 0; s < all; s++) {
        frame_sheet_plan_sheet sheet, next = {0};
        frame_sheet_plan_sheet_at(plan, s, &sheet);
        count++;
        if (s + 1 < all) frame_sheet_plan_sheet_at(plan, s + 1, &next);
        if (s + 1 < all && next.sheet == sheet.sheet && next.offcut == sheet.offcut) continue;
        add_kind(&sheet, count, into);
        count = 0;
    }
}

frame_status frame_sheet_plan_shopping(const frame_sheet_plan *plan, frame_text *into) {
    frame_sheet_plan_out out;
    frame_status status = frame_sheet_need_text(plan, into);
    if (!status) status = frame_sheet_plan_result(plan, &out);
    if (status) return status;
    frame_text_add(into, "Sheets\n");
    add_kinds(plan, into);
    frame_text_addf(into, "In all: %d to buy, %d offcuts from hand", (int)out.sheets_used, (int)out.offcuts_used);
    add_money("  ", out.cost, "\n", into);
    frame_text_add(into, "Not in a part: ");
    frame_text_add_fixed(into, 100 * out.waste_share, 1);
    frame_text_add(into, " %; neither in a part nor kept: ");
    frame_text_add_fixed(into, 100 * out.lost_share, 1);
    frame_text_add(into, " %.\n");
    if (out.optimal)
        frame_text_add(into, "No plan costs less.\n");
    else
        add_money("No plan costs less than ", out.cost_bound, ".\n", into);
    if (out.shelves_cost != FRAME_NOT_GIVEN)
        add_money("On shelves, the usual way, it would have cost ", out.shelves_cost, ".\n", into);
    return frame_text_state(into);
}
