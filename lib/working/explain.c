/* Which slip would lead to an answer that differs. Each slip is tried on the recorded formula itself: a symbol left
 * out, used twice, turned over; a factor between units; and so on from the likely to the far-fetched. The first kind
 * that fits the answer, at the digits it is written with, is the explanation. */
#include <math.h>
#include <string.h>

#include "base/number.h"
#include "working/slip.h"

int frame_answer_decimals(double given) {
    char chars[64];
    frame_number_print(given, 15, chars, sizeof chars);
    int decimals = 0, after = 0;
    for (const char *c = chars; *c && *c != 'e'; c++) {
        if (after) decimals++;
        if (*c == '.') after = 1;
    }
    return decimals;
}

double frame_answer_spread(double given, double tolerance) {
    double unit = pow(10, -frame_answer_decimals(given));
    while (given != 0 && unit < fabs(given) && fmod(given, unit * 10) == 0) unit *= 10; /* 1200 may be 12 hundreds */
    const double spread = given != 0 ? 0.75 * unit / fabs(given) + 2e-4 : tolerance;
    return spread < tolerance ? spread : tolerance;
}

typedef struct search {
    frame_slip slip;
    double given, expected, most;
    frame_cause best;
} search;

/* Takes a slip that comes nearer to the answer than what was found before. */
static void consider(search *s, double value, frame_cause cause) {
    if (!isfinite(value) || value == 0) return;
    frame_cause *best = &s->best;
    cause.error = fabs(value / s->given - 1);
    if (cause.error > s->most) return;
    const int single = best->symbols[0] != FRAME_NO_ROOT && best->symbols[1] == FRAME_NO_ROOT &&
                       cause.symbols[0] != FRAME_NO_ROOT && cause.symbols[1] == FRAME_NO_ROOT;
    /* Two symbols of one value do equally well. */
    if (single && best->cause == cause.cause && best->factor == cause.factor && best->symbols[0] != cause.symbols[0] &&
        fabs(best->error - cause.error) < 1e-9) {
        best->symbols[1] = cause.symbols[0];
        best->alternatives = 1;
    } else if (best->cause == FRAME_MARKING_NONE || cause.error < best->error - 1e-9) {
        *best = cause;
    }
}

/* Works the step out with one or two symbols replaced. */
static void try_replaced(search *s, size_t a, double of_a, size_t b, double of_b, frame_cause cause) {
    double value;
    s->slip.replaced[0] = a, s->slip.values_replaced[0] = of_a;
    s->slip.replaced[1] = b, s->slip.values_replaced[1] = of_b;
    if (frame_slip_work_out(&s->slip, &value)) consider(s, value, cause);
    s->slip.replaced[0] = s->slip.replaced[1] = FRAME_NO_ROOT;
}

static void try_one(search *s, size_t symbol, double value, frame_cause cause) {
    try_replaced(s, symbol, value, FRAME_NO_ROOT, 0, cause);
}

static frame_cause cause_of(frame_marking_cause kind, size_t symbol, double factor) {
    return (frame_cause){.cause = kind, .symbols = {symbol, FRAME_NO_ROOT}, .factor = factor};
}

static size_t symbol_at(const search *s, size_t index) {
    return FRAME_ITEM(const size_t, s->slip.symbols, index);
}
static double value_at(const search *s, size_t index) {
    return s->slip.student->values[symbol_at(s, index)];
}

static const double units[] = {12, 144, 1000};
enum { UNITS = sizeof units / sizeof *units };

static void try_sign(search *s) {
    consider(s, -s->expected, cause_of(FRAME_MARKING_SIGN, FRAME_NO_ROOT, -1));
}

static void try_symbols(search *s, size_t from, size_t to) {
    for (size_t i = from; i < to; i++) {
        const size_t symbol = symbol_at(s, i);
        const double value = value_at(s, i);
        if (value == 0 || value == 1) continue;
        try_one(s, symbol, 1, cause_of(FRAME_MARKING_LEFT_OUT, symbol, value));
        try_one(s, symbol, value * value, cause_of(FRAME_MARKING_TWICE, symbol, value));
        try_one(s, symbol, 1 / value, cause_of(FRAME_MARKING_INVERTED, symbol, value));
    }
}

static void try_own_symbols(search *s) {
    try_symbols(s, 0, s->slip.direct);
}
static void try_earlier_symbols(search *s) {
    try_symbols(s, s->slip.direct, s->slip.symbols.count);
}

static void try_units(search *s) {
    for (int i = 0; i < UNITS; i++) {
        frame_cause cause = cause_of(FRAME_MARKING_UNIT, FRAME_NO_ROOT, units[i]);
        consider(s, s->expected * units[i], cause);
        cause.inverse = 1;
        consider(s, s->expected / units[i], cause);
    }
}

static int is_exponent(const frame_expression *expression, const frame_node *number) {
    for (size_t i = 0; i < expression->count; i++) {
        const frame_node *node = &expression->nodes[i];
        if (node->operation == FRAME_OP_CALL && node->function == FRAME_FN_POW && node->parts[1] == number) return 1;
    }
    return 0;
}

/* The numbers that stand in the formula itself; for exponents see try_powers. */
static void try_constants(search *s) {
    if (!s->slip.formulas.count) return;
    frame_expression *own = &FRAME_ITEM(frame_slip_formula, s->slip.formulas, s->slip.formulas.count - 1).expression;
    for (size_t i = 0; i < own->count; i++) {
        frame_node *node = &own->nodes[i];
        const double number = node->number;
        if (node->operation != FRAME_OP_NUMBER || number == 0 || number == 1 || is_exponent(own, node)) continue;
        node->number = 1;
        try_one(s, FRAME_NO_ROOT, 0, cause_of(FRAME_MARKING_LEFT_OUT, FRAME_NO_ROOT, number));
        node->number = 1 / number;
        try_one(s, FRAME_NO_ROOT, 0, cause_of(FRAME_MARKING_INVERTED, FRAME_NO_ROOT, number));
        node->number = number;
    }
}

/* A power too many or too few: d for d². */
static void try_powers(search *s) {
    for (size_t i = 0; i < s->slip.direct; i++) {
        const size_t symbol = symbol_at(s, i);
        const double value = value_at(s, i);
        if (value == 0 || value == 1) continue;
        consider(s, s->expected * value, cause_of(FRAME_MARKING_FACTOR, symbol, value));
        consider(s, s->expected / value, cause_of(FRAME_MARKING_DIVISOR, symbol, value));
        frame_cause cause = cause_of(FRAME_MARKING_SQUARE, symbol, value);
        consider(s, s->expected * value * value, cause);
        cause.inverse = 1;
        consider(s, s->expected / value / value, cause);
    }
}

/* One symbol taken in another unit. */
static void try_units_of(search *s, size_t from, size_t to) {
    for (size_t i = from; i < to; i++)
        for (int j = 0; j < UNITS; j++) {
            frame_cause cause = cause_of(FRAME_MARKING_UNIT, symbol_at(s, i), units[j]);
            try_one(s, symbol_at(s, i), value_at(s, i) * units[j], cause);
            cause.inverse = 1;
            try_one(s, symbol_at(s, i), value_at(s, i) / units[j], cause);
        }
}

static void try_units_of_own(search *s) {
    try_units_of(s, 0, s->slip.direct);
}
static void try_units_of_earlier(search *s) {
    try_units_of(s, s->slip.direct, s->slip.symbols.count);
}

static void try_pairs(search *s) {
    for (size_t i = 0; i < s->slip.symbols.count; i++)
        for (size_t j = i + 1; j < s->slip.symbols.count; j++) {
            if (value_at(s, i) == 1 || value_at(s, j) == 1) continue;
            frame_cause cause = cause_of(FRAME_MARKING_LEFT_OUT, symbol_at(s, i), value_at(s, i) * value_at(s, j));
            cause.symbols[1] = symbol_at(s, j);
            try_replaced(s, symbol_at(s, i), 1, symbol_at(s, j), 1, cause);
        }
}

static void try_others_values(search *s) {
    const frame_working *w = s->slip.student->w;
    for (size_t i = 0; i < w->entries.count; i++) {
        const frame_entry *entry = frame_entry_at(w, i);
        if (i == s->slip.at || !frame_entry_has_value(entry)) continue;
        if (strcmp(entry->unit, frame_entry_at(w, s->slip.at)->unit) != 0) continue;
        consider(s, entry->value, cause_of(FRAME_MARKING_MIXED_UP, i, entry->value));
    }
}

/* Any value of the working: it may belong to another step's formula. So many are tried that it must fit closely. */
static void try_others_factors(search *s) {
    const frame_working *w = s->slip.student->w;
    s->most = fmin(s->most, 1e-3);
    for (size_t i = 0; i < w->entries.count && s->slip.formulas.count; i++) {
        const frame_entry *entry = frame_entry_at(w, i);
        if (i == s->slip.at || !frame_entry_has_value(entry) || entry->value == 0 || entry->value == 1) continue;
        consider(s, s->expected * entry->value, cause_of(FRAME_MARKING_FACTOR, i, entry->value));
        consider(s, s->expected / entry->value, cause_of(FRAME_MARKING_DIVISOR, i, entry->value));
    }
}

frame_status frame_student_explain(const frame_student *student, size_t at, double given, double expected,
                                   frame_cause *cause) {
    static void (*const slips[])(search *) = {try_sign,      try_own_symbols,   try_units,         try_earlier_symbols,
                                              try_constants, try_powers,        try_units_of_own,  try_units_of_earlier,
                                              try_pairs,     try_others_values, try_others_factors};
    search s = {.given = given, .expected = expected, .most = frame_answer_spread(given, student->tolerance)};
    s.best = cause_of(FRAME_MARKING_NONE, FRAME_NO_ROOT, FRAME_NOT_GIVEN);
    const frame_status status = frame_slip_begin(&s.slip, student, at);
    for (size_t i = 0; !status && i < sizeof slips / sizeof *slips && s.best.cause == FRAME_MARKING_NONE; i++)
        slips[i](&s);
    frame_slip_end(&s.slip);
    *cause = s.best;
    return status;
}
