/* Numbers and units for reading. */
#include "working/figure.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

#include "base/number.h"
#include "text/writer.h"

/* A number that so many digits write exactly is written so; any other with fewer. */
enum { DIGITS = 5, EXACT_DIGITS = 7 };

static int is_exact(double value, char *chars, size_t size) {
    double back;
    frame_number_print(value, EXACT_DIGITS, chars, size);
    frame_number_scan(chars, &back);
    return back == value;
}

int frame_figure_is_product(double value) {
    const double size = fabs(value);
    return isfinite(value) && value != 0 && (size >= 1e9 ? size != floor(size) || size >= 1e15 : size < 1e-5);
}

/* Splits off the power of ten: 1.2346 and -7. */
static void split(double value, char *digits, size_t size, int *power) {
    char all[48];
    *power = (int)floor(log10(fabs(value)));
    frame_number_print(value * pow(10, -*power), DIGITS, all, sizeof all);
    /* 9.99999 rounds up to 10 */
    if (strcmp(all, "10") == 0 || strcmp(all, "-10") == 0) {
        memmove(strchr(all, '0'), "", 1);
        ++*power;
    }
    snprintf(digits, size, "%s", all);
}

static void plain(double value, char *chars, size_t size) {
    const double length = fabs(value);
    if (value == 0)
        snprintf(chars, size, "0"); /* no "-0" */
    else if (!isfinite(value) || value == floor(value))
        frame_number_print(value, 15, chars, size);
    else if (is_exact(value, chars, size))
        return;
    else if (length >= 1e5)
        frame_number_print_fixed(value, 0, chars, size);
    else
        frame_number_print(value, DIGITS, chars, size);
}

void frame_figure_display(double value, frame_text *into) {
    char chars[48];
    if (!frame_figure_is_product(value)) {
        plain(value, chars, sizeof chars);
        frame_text_add(into, chars);
        return;
    }
    int power;
    split(value, chars, sizeof chars, &power);
    frame_text_add(into, chars);
    frame_text_add(into, "·10");
    frame_figure_superscript(power, into);
}

static void add_mathml(const char *chars, frame_text *into) {
    if (*chars == '-') frame_text_add(into, "<mo form=\"prefix\">−</mo>");
    frame_text_add(into, "<mn>");
    frame_text_add(into, chars + (*chars == '-'));
    frame_text_add(into, "</mn>");
}

void frame_figure_mathml(double value, frame_text *into) {
    char chars[48];
    if (!frame_figure_is_product(value)) {
        plain(value, chars, sizeof chars);
        add_mathml(chars, into);
        return;
    }
    int power;
    split(value, chars, sizeof chars, &power);
    add_mathml(chars, into);
    frame_text_addf(into, "<mo>·</mo><msup><mn>10</mn><mn>%s%d</mn></msup>", power < 0 ? "−" : "",
                    power < 0 ? -power : power);
}

void frame_figure_superscript(int value, frame_text *into) {
    static const char *const digits[] = {"⁰", "¹", "²", "³", "⁴", "⁵", "⁶", "⁷", "⁸", "⁹"};
    char chars[16];
    snprintf(chars, sizeof chars, "%d", value);
    for (const char *c = chars; *c; c++) frame_text_add(into, *c == '-' ? "⁻" : digits[*c - '0']);
}

void frame_figure_json(double value, frame_text *into) {
    if (!isfinite(value) || value == FRAME_NOT_GIVEN) {
        frame_text_add(into, "null");
        return;
    }
    char chars[48];
    for (int digits = 15; digits <= 17; digits++) {
        double back;
        frame_number_print(value, digits, chars, sizeof chars);
        frame_number_scan(chars, &back);
        if (back == value) break;
    }
    frame_text_add(into, chars);
}

void frame_unit_display(const char *unit, frame_text *into) {
    char before = 0;
    for (const char *c = unit; *c; before = *c++)
        if (*c >= '0' && *c <= '9' && ((before >= 'a' && before <= 'z') || before == '^'))
            frame_figure_superscript(*c - '0', into);
        else if (*c != '^')
            frame_text_add_bytes(into, c, 1);
}
