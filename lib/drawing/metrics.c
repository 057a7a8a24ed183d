/* How wide a text is written. The reader's font is not known here, so each character counts with the wider of its
 * advances in two free fonts that stand at the ends of what "sans-serif" comes to: DejaVu Sans 2.37 (wide) and
 * Liberation Sans 2.1 (the usual narrow proportions), read from their tables and rounded up to hundredths of an em.
 */
#include "drawing/metrics.h"

#include <string.h>

/* From the space, U+0020. */
static const unsigned char ascii[] = {32, 41, 46, 84, 64, 96, 78, 28, 40, 40, 50, 84, 32, 37,  32, 34, 64, 64, 64,
                                      64, 64, 64, 64, 64, 64, 64, 34, 34, 84, 84, 84, 56, 102, 69, 69, 73, 78, 67,
                                      62, 78, 76, 30, 50, 67, 56, 87, 75, 79, 67, 79, 73, 67,  62, 74, 69, 99, 69,
                                      67, 69, 40, 34, 40, 84, 56, 50, 62, 64, 55, 64, 62, 36,  64, 64, 28, 28, 58,
                                      28, 98, 64, 62, 64, 64, 42, 53, 40, 64, 60, 82, 60, 60,  53, 64, 34, 64, 84};

/* From the no-break space, U+00A0. */
static const unsigned char latin[] = {32, 41, 64, 64, 64, 64, 34, 56, 50, 100, 48, 62, 84, 41, 100, 56, 50, 84, 41,  41,
                                      50, 64, 64, 34, 50, 41, 48, 62, 97, 97,  97, 62, 69, 69, 69,  69, 69, 69, 100, 73,
                                      67, 67, 67, 67, 30, 30, 30, 30, 78, 75,  79, 79, 79, 79, 79,  84, 79, 74, 74,  74,
                                      74, 67, 67, 63, 62, 62, 62, 62, 62, 62,  99, 55, 62, 62, 62,  62, 28, 28, 28,  28,
                                      62, 64, 62, 62, 62, 62, 62, 84, 62, 64,  64, 64, 64, 60, 64,  60};

/* Beyond those: letters of other European scripts and signs stay within 1.05 em, but for the per-mille signs and the
 * letters that are two letters in one; pictures count one and a half. */
static unsigned width_of(unsigned long character) {
    if (character >= 0x20 && character - 0x20 < sizeof ascii) return ascii[character - 0x20];
    if (character >= 0xA0 && character - 0xA0 < sizeof latin) return latin[character - 0xA0];
    if (character == 0x2032 || character == 0x2033) return 40; /* prime and double prime: feet and inches */
    if (character == 0x2030 || character == 0x2031) return 175;
    return character < 0x0250 ? 145 : character < 0x10000 ? 105 : 150;
}

/* The characters of a text are well formed: the list takes no others. */
static size_t next_character(const char *chars, unsigned long *character) {
    const unsigned char *c = (const unsigned char *)chars;
    const size_t length = c[0] < 0x80 ? 1 : c[0] < 0xE0 ? 2 : c[0] < 0xF0 ? 3 : 4;
    *character = length == 1 ? c[0] : c[0] & (0xFFu >> (length + 1));
    for (size_t i = 1; i < length; i++) *character = *character << 6 | (c[i] & 0x3Fu);
    return length;
}

double metrics_width(const char *chars, size_t length, double points) {
    unsigned long total = 0, character;
    for (size_t at = 0; at < length;) {
        at += next_character(chars + at, &character);
        total += width_of(character);
    }
    return (double)total * points / 100;
}

static void add_line(metrics_block *block, const char *chars, size_t length) {
    const metrics_line line = {chars, length, metrics_width(chars, length, block->points)};
    if (!frame_array_push(&block->lines, &line)) {
        block->status = FRAME_NO_MEMORY;
        return;
    }
    if (line.width > block->width) block->width = line.width;
    block->height += METRICS_LINE * block->points;
}

/* Breaks one paragraph at its spaces. A word wider than the line keeps a line to itself. */
static void wrap(metrics_block *block, const char *chars, size_t length, double widest) {
    size_t from = 0, fits = 0;
    for (size_t at = 0; at <= length; at++) {
        if (at < length && chars[at] != ' ') continue;
        if (fits > from && metrics_width(chars + from, at - from, block->points) > widest) {
            add_line(block, chars + from, fits - from);
            from = fits + 1;
        }
        fits = at;
    }
    add_line(block, chars + from, length - from);
}

void metrics_set(metrics_block *block, const char *text, double points, double widest) {
    block->lines.item_size = sizeof(metrics_line);
    block->lines.count = 0;
    block->points = points;
    block->width = block->height = 0;
    for (;;) {
        const char *end = strchr(text, '\n');
        wrap(block, text, end ? (size_t)(end - text) : strlen(text), widest);
        if (!end) return;
        text = end + 1;
    }
}
