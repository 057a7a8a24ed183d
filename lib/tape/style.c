/* What a style comes to: given, all zero but for some fields, or NULL. */
#include "tape/style.h"

#include "base/error.h"
#include "tape_facts.h"

static const frame_tape_style defaults = {
    .denominator = 16, .style = FRAME_TAPE_FEET, .rounding = FRAME_ROUND_NEAREST, .decimals = FRAME_NOT_GIVEN_INT};

static int32_t given(int32_t value) {
    return value ? value : FRAME_NOT_GIVEN_INT;
}

/* A struct written as {.denominator = 8}: it has today's layout only as far as 0.1's, the first, and a 0 says nothing.
 */
static void spell_out(const frame_tape_style *style, frame_tape_style *full) {
    frame_tape_style_init(full);
    full->denominator = given(style->denominator);
    full->style = given(style->style);
    full->rounding = given(style->rounding);
    full->strength = given(style->strength);
    full->decimals = given(style->decimals);
}

frame_status frame_tape_style_resolve(const frame_tape_style *style, frame_tape_style *resolved) {
    frame_tape_style full;
    uint64_t assumed = 0;
    *resolved = defaults;
    if (!style) return FRAME_OK;
    if (!style->struct_size && !style->struct_id) {
        spell_out(style, &full);
        style = &full;
    }
    const frame_status status = frame_tape_style_read(style, resolved, &assumed);
    if (status) return status;
    if (resolved->denominator & (resolved->denominator - 1))
        return frame_fail_number(FRAME_OUT_OF_RANGE, "denominator", resolved->denominator, "1, 2, 4, 8, 16, 32, 64");
    return FRAME_OK;
}
