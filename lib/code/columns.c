/* Finding the column of a table, and refusing what lies between or beyond its columns. */
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "base/error.h"
#include "base/number.h"
#include "code/book.h"

static int same(double a, double b) {
    return fabs(a - b) <= 1e-6 * fabs(b) + 1e-9;
}

frame_code_figure frame_code_number(double value) {
    frame_code_figure figure;
    frame_number_print(value, 6, figure.text, sizeof figure.text);
    return figure;
}

void frame_code_list(const double *values, int count, char *text, size_t size) {
    size_t used = 0;
    *text = 0;
    for (int i = 0; i < count && used + 28 < size; i++)
        used += (size_t)snprintf(text + used, size - used, "%s%s", i ? ", " : "", frame_code_number(values[i]).text);
}

static frame_status refuse(frame_status status, const frame_code_columns *columns, double value, const char *why) {
    char list[200];
    frame_code_list(columns->at, columns->count, list, sizeof list);
    return frame_fail(status, columns->field, frame_code_number(value).text, list,
                      "%s: %s %s %s Table %s, which has %s%s", columns->field, frame_code_number(value).text,
                      columns->unit, why, columns->table, list,
                      status == FRAME_OUTSIDE_SCOPE ? ": beyond it, licensed design" : " and no interpolation");
}

frame_status frame_code_column(const frame_code_columns *columns, double value, int covering, int *place,
                               int *covered) {
    int i = 0;
    while (i < columns->count && value > columns->at[i] && !same(value, columns->at[i])) i++;
    if (i == columns->count) return refuse(FRAME_OUTSIDE_SCOPE, columns, value, "is beyond");
    *covered = !same(value, columns->at[i]);
    if (*covered && !covering && !(columns->lighter && !i))
        return refuse(FRAME_NO_VALUE, columns, value, "is no column of");
    *place = i;
    return FRAME_OK;
}

frame_status frame_code_between(const frame_code_columns *columns, double value, int *place, double *fraction,
                                int *covered) {
    const frame_status status = frame_code_column(columns, value, 1, place, covered);
    *fraction = 0;
    if (status || !*covered) return status;
    if (!*place) return columns->lighter ? FRAME_OK : refuse(FRAME_OUTSIDE_SCOPE, columns, value, "is below");
    *covered = 0;
    *place -= 1;
    *fraction = (value - columns->at[*place]) / (columns->at[*place + 1] - columns->at[*place]);
    return FRAME_OK;
}

void frame_code_editions(unsigned set, char *text, size_t size) {
    size_t used = 0;
    *text = 0;
    for (frame_code_edition each = 1; each <= FRAME_CODE_DCA6_09; each++)
        if (set & frame_code_bit(each) && used + 20 < size)
            used += (size_t)snprintf(text + used, size - used, "%s%s", used ? ", " : "",
                                     frame_word_text("code_edition", each));
}

frame_status frame_code_no_edition(const char *table, frame_code_edition edition, unsigned known) {
    char list[120];
    const char *asked = frame_word_text("code_edition", edition);
    frame_code_editions(known, list, sizeof list);
    return frame_fail(FRAME_NO_VALUE, "edition", asked ? asked : "", list,
                      "edition: Table %s of %s is not known here; it is known of %s", table, asked ? asked : "?", list);
}

frame_status frame_code_doubtful(const char *table, const char *note) {
    return frame_fail(FRAME_REFUSED, "doubtful", "no", "yes",
                      "doubtful: the figure of Table %s is not to be built by (%s); set doubtful to get it as printed",
                      table, note);
}
