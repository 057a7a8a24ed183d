/* Numbers in and out without locale. Printing leans on snprintf and mends the decimal point; reading has an exact fast
 * path (up to 15 digits and a power of ten that a double holds exactly) and leans on strtod for the rest. */
#include "base/number.h"

#include <locale.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* Replaces the locale's decimal point, whatever its length, by '.'. */
static size_t mend_point(char *chars) {
    char *from = chars, *to = chars;
    while (*from) {
        const unsigned char c = (unsigned char)*from;
        if ((c >= '0' && c <= '9') || c == '-' || c == '+' || c == 'e' || c == '.') {
            *to++ = *from++;
        } else {
            *to++ = '.';
            while (*from && !(*from >= '0' && *from <= '9')) from++;
        }
    }
    *to = 0;
    return (size_t)(to - chars);
}

static size_t give_out(const char *written, size_t length, char *chars, size_t size) {
    if (!size) return length;
    size_t fits = length < size ? length : size - 1;
    memcpy(chars, written, fits);
    chars[fits] = 0;
    return length;
}

/* Whole numbers, the commonest case, need no printf. */
static size_t print_whole(double value, char *written) {
    char digits[24];
    size_t count = 0, length = 0;
    uint64_t rest = (uint64_t)fabs(value);
    do digits[count++] = (char)('0' + rest % 10);
    while (rest /= 10);
    if (value < 0) written[length++] = '-';
    while (count) written[length++] = digits[--count];
    written[length] = 0;
    return length;
}

size_t frame_number_print(double value, int digits, char *chars, size_t size) {
    char written[400];
    size_t length;
    if (isnan(value)) return give_out("nan", 3, chars, size);
    if (isinf(value)) return value > 0 ? give_out("inf", 3, chars, size) : give_out("-inf", 4, chars, size);
    if (value == floor(value) && fabs(value) < 1e9 && digits >= 9) {
        length = print_whole(value, written);
    } else {
        snprintf(written, sizeof written, "%.*g", digits, value);
        length = mend_point(written);
        const double size_of = fabs(value);
        if (strchr(written, 'e') && size_of >= 1e-5 && size_of < 1e15) {
            /* %g turns to exponents early when few digits are asked; people do not read those. */
            const int decimals = digits - 1 - (int)floor(log10(size_of));
            snprintf(written, sizeof written, "%.*f", decimals > 0 ? decimals : 0,
                     decimals >= 0 ? value : round(value * pow(10, decimals)) / pow(10, decimals));
            length = mend_point(written);
            while (decimals > 0 && length && written[length - 1] == '0') written[--length] = 0;
            if (length && written[length - 1] == '.') written[--length] = 0;
        }
    }
    return give_out(written, length, chars, size);
}

size_t frame_number_print_fixed(double value, int decimals, char *chars, size_t size) {
    char written[400];
    if (!(fabs(value) < 1e15)) return frame_number_print(value, 15, chars, size);
    snprintf(written, sizeof written, "%.*f", decimals, value);
    size_t length = mend_point(written);
    if (written[0] == '-' && strspn(written + 1, "0.") == length - 1) {
        memmove(written, written + 1, length); /* no "-0.00" */
        length--;
    }
    return give_out(written, length, chars, size);
}

static const double exact_tens[] = {1e0,  1e1,  1e2,  1e3,  1e4,  1e5,  1e6,  1e7,  1e8,  1e9,  1e10, 1e11,
                                    1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22};

static int is_digit(char c) {
    return c >= '0' && c <= '9';
}

/* strtod on a copy that carries the locale's own decimal point. */
static double read_slowly(const char *chars, size_t length) {
    char copy[512];
    const struct lconv *local = localeconv();
    const char *point = local && local->decimal_point && *local->decimal_point ? local->decimal_point : ".";
    size_t used = 0;
    for (size_t i = 0; i < length && used + 8 < sizeof copy; i++) {
        if (chars[i] == '.')
            for (const char *p = point; *p && used + 8 < sizeof copy; p++) copy[used++] = *p;
        else
            copy[used++] = chars[i];
    }
    copy[used] = 0;
    return strtod(copy, NULL);
}

const char *frame_number_scan(const char *chars, double *value) {
    const char *at = chars;
    const int negative = *at == '-';
    if (*at == '-' || *at == '+') at++;
    uint64_t whole = 0;
    int digits = 0, seen = 0, power = 0;
    for (; is_digit(*at); at++, seen++)
        if (digits < 18 && (digits || *at != '0'))
            whole = whole * 10 + (uint64_t)(*at - '0'), digits++;
        else if (digits)
            digits++;
    if (*at == '.') {
        at++;
        for (; is_digit(*at); at++, seen++) {
            if (digits < 18) {
                if (digits || *at != '0') digits++;
                whole = whole * 10 + (uint64_t)(*at - '0');
                power--;
            } else {
                digits++;
            }
        }
    }
    if (!seen) return chars;
    if ((*at == 'e' || *at == 'E') && (is_digit(at[1]) || ((at[1] == '-' || at[1] == '+') && is_digit(at[2])))) {
        const char *e = at + 1;
        int exponent = 0;
        const int down = *e == '-';
        if (*e == '-' || *e == '+') e++;
        for (; is_digit(*e); e++)
            if (exponent < 100000) exponent = exponent * 10 + (*e - '0');
        power += down ? -exponent : exponent;
        at = e;
    }
    double found;
    if (digits <= 15 && power >= -22 && power <= 22)
        found = power < 0 ? (double)whole / exact_tens[-power] : (double)whole * exact_tens[power];
    else
        found = fabs(read_slowly(chars, (size_t)(at - chars)));
    *value = negative ? -found : found;
    return at;
}
