/* A batch of three rows over two columns of a calculation that the bytes choose. */
#include "feed.h"

void feed_batch(feed *f);
void feed_batch(feed *f) {
    const frame_calculation *calculation = feed_calculation(f);
    const frame_struct *in_facts = frame_calculation_in(calculation), *out_facts = frame_calculation_out(calculation);
    char name[80];
    double given[3], came[3];
    frame_status statuses[3];
    for (int i = 0; i < 3; i++) given[i] = feed_number(f);
    for (size_t i = 0; i < sizeof name; i++) name[i] = 0;
    for (size_t i = 0; frame_struct_name(in_facts)[i] && i + 1 < sizeof name; i++)
        name[i] = frame_struct_name(in_facts)[i];
    const void *in = feed_struct(f, name);
    const frame_field *from = frame_field_at(in_facts, feed_below(f, frame_field_count(in_facts)));
    const frame_field *to = frame_field_at(out_facts, feed_below(f, frame_field_count(out_facts)));
    if (!from || !to || from->kind != FRAME_FIELD_NUMBER || to->kind != FRAME_FIELD_NUMBER) return;
    const frame_batch_column in_column = {from->name, given, feed_byte(f) & 1 ? sizeof *given : 0};
    const frame_batch_column out_column = {to->name, came, sizeof *came};
    const frame_status status = frame_batch(calculation, in, &in_column, 1, &out_column, 1, 3, statuses);
    feed_status(f, status);
    for (int i = 0; !status && i < 3; i++) feed_figure(f, came[i]);
}
