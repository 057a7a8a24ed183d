/* Taking a name apart into letter, subscript and marks, and writing it. */
#include "working/symbol.h"

#include <string.h>

#include "text/writer.h"

typedef struct symbol {
    const char *base, *subscript;
    size_t base_length, subscript_length;
    int primes, stars;
} symbol;

static int cut_end(const char *name, size_t *length, const char *end) {
    const size_t of_end = strlen(end);
    if (*length <= of_end || strncmp(name + *length - of_end, end, of_end) != 0) return 0;
    *length -= of_end;
    return 1;
}

static symbol take_apart(const char *name, size_t length) {
    symbol s = {.base = name};
    for (;;) {
        if (cut_end(name, &length, "_prime"))
            s.primes++;
        else if (cut_end(name, &length, "_star"))
            s.stars++;
        else
            break;
    }
    const char *line = memchr(name, '_', length);
    s.base_length = line && line > name ? (size_t)(line - name) : length;
    if (s.base_length < length) {
        s.subscript = line + 1;
        s.subscript_length = length - s.base_length - 1;
    }
    return s;
}

static const struct {
    const char *name, *letter;
} signs[] = {
    {"alpha", "α"}, {"beta", "β"},  {"gamma", "γ"}, {"delta", "δ"},  {"epsilon", "ε"}, {"zeta", "ζ"},  {"eta", "η"},
    {"theta", "θ"}, {"iota", "ι"},  {"kappa", "κ"}, {"lambda", "λ"}, {"mu", "μ"},      {"nu", "ν"},    {"xi", "ξ"},
    {"pi", "π"},    {"rho", "ρ"},   {"sigma", "σ"}, {"tau", "τ"},    {"phi", "φ"},     {"chi", "χ"},   {"psi", "ψ"},
    {"omega", "ω"}, {"Gamma", "Γ"}, {"Delta", "Δ"}, {"Theta", "Θ"},  {"Lambda", "Λ"},  {"Xi", "Ξ"},    {"Pi", "Π"},
    {"Sigma", "Σ"}, {"Phi", "Φ"},   {"Psi", "Ψ"},   {"Omega", "Ω"},  {"perp", "⊥"},    {"par", "∥"},   {"'", "′"},
    {"phi", "ϕ"},   {"theta", "ϑ"}, {"mu", "µ"},    {"Omega", "Ω"},  {"par", "‖"},     {"Delta", "∆"}, {"'", "’"},
};
enum { SIGNS = sizeof signs / sizeof *signs };

/* A word as its letter, else the word itself. */
static void add_word(const char *word, size_t length, frame_text *into) {
    for (size_t i = 0; i < SIGNS; i++)
        if (strlen(signs[i].name) == length && strncmp(signs[i].name, word, length) == 0) {
            frame_text_add(into, signs[i].letter);
            return;
        }
    frame_text_add_bytes(into, word, length);
}

static int is_direction(const char *word, size_t length) {
    return (length == 4 && strncmp(word, "perp", 4) == 0) || (length == 3 && strncmp(word, "par", 3) == 0);
}

/* The parts of a subscript, a comma between them but before the signs of direction. */
static void add_subscript(const symbol *s, frame_text *into) {
    const char *part = s->subscript, *end = part + s->subscript_length;
    while (part < end) {
        const char *line = memchr(part, '_', (size_t)(end - part));
        const size_t length = (size_t)((line ? line : end) - part);
        if (part > s->subscript && !is_direction(part, length)) frame_text_add(into, ",");
        add_word(part, length, into);
        part += length + 1;
    }
}

static void add_marks(const symbol *s, const char *prime, const char *star, frame_text *into) {
    for (int i = 0; i < s->stars; i++) frame_text_add(into, star);
    for (int i = 0; i < s->primes; i++) frame_text_add(into, prime);
}

void frame_symbol_ascii(const char *name, size_t length, frame_text *into) {
    const symbol s = take_apart(name, length);
    frame_text_add_bytes(into, s.base, s.base_length + (s.subscript ? 1 + s.subscript_length : 0));
    add_marks(&s, "'", "*", into);
}

void frame_symbol_display(const char *name, size_t length, frame_text *into) {
    const symbol s = take_apart(name, length);
    add_word(s.base, s.base_length, into);
    if (s.subscript) frame_text_add(into, "_");
    if (s.subscript) add_subscript(&s, into);
    add_marks(&s, "'", "*", into);
}

/* One letter and digits, without a line between them: the digits are the subscript all the same. */
static void part_digits(symbol *s) {
    if (s->subscript || s->base_length < 2) return;
    for (size_t i = 1; i < s->base_length; i++)
        if (s->base[i] < '0' || s->base[i] > '9') return;
    s->subscript = s->base + 1;
    s->subscript_length = s->base_length - 1;
    s->base_length = 1;
}

void frame_symbol_mathml(const char *name, size_t length, frame_text *into) {
    symbol s = take_apart(name, length);
    part_digits(&s);
    const int marked = s.primes + s.stars > 0;
    frame_text_add(into, s.subscript && marked ? "<msubsup>" : s.subscript ? "<msub>" : marked ? "<msup>" : "");
    frame_text_add(into, "<mi>");
    add_word(s.base, s.base_length, into);
    frame_text_add(into, "</mi>");
    if (s.subscript) {
        frame_text_add(into, "<mi mathvariant=\"normal\">");
        add_subscript(&s, into);
        frame_text_add(into, "</mi>");
    }
    if (marked) {
        frame_text_add(into, s.primes ? "<mo class=\"frame-prime\">" : "<mo>");
        add_marks(&s, "′", "*", into);
        frame_text_add(into, "</mo>");
    }
    frame_text_add(into, s.subscript && marked ? "</msubsup>" : s.subscript ? "</msub>" : marked ? "</msup>" : "");
}

/* The next character that counts of a typed symbol, and how many bytes it takes; letters beyond ASCII by their names.
 */
typedef struct typed_reader {
    const char *at, *word; /* word: the rest of a letter's name */
} typed_reader;

static char next_typed(typed_reader *r) {
    static const char idle[] = "_ ,{}\\$";
    if (r->word && *r->word) return *r->word++;
    while (*r->at && strchr(idle, *r->at)) {
        if (strncmp(r->at, "_prime", 6) == 0) return r->at += 6, '\'';
        if (strncmp(r->at, "_star", 5) == 0) return r->at += 5, '*';
        r->at++;
    }
    if ((unsigned char)*r->at < 0x80) return *r->at ? *r->at++ : 0;
    for (size_t i = 0; i < SIGNS; i++) {
        const size_t length = strlen(signs[i].letter);
        if (strncmp(r->at, signs[i].letter, length) != 0) continue;
        r->at += length;
        r->word = signs[i].name + 1;
        return *signs[i].name;
    }
    if (strncmp(r->at, "₀", 2) == 0 && (unsigned char)r->at[2] >= 0x80 && (unsigned char)r->at[2] <= 0x89) {
        r->at += 3; /* subscript digits */
        return (char)('0' + ((unsigned char)r->at[-1] - 0x80));
    }
    return *r->at++;
}

int frame_symbol_means(const char *typed, const char *name) {
    typed_reader a = {.at = typed}, b = {.at = name};
    for (;;) {
        const char of_a = next_typed(&a), of_b = next_typed(&b);
        if (of_a != of_b) return 0;
        if (!of_a) return 1;
    }
}
