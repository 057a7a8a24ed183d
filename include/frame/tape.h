/** @file tape.h
 * Lengths, slopes and angles as carpenters write them, read and written. Nothing here takes memory, looks at the locale
 * or guesses: what can be read in two ways is refused, with the place of the trouble and what to write instead.
 */
#ifndef FRAME_TAPE_H
#define FRAME_TAPE_H

#include <frame/base.h>

FRAME_BEGIN

/**
 * Reads a length and gives it in inches.
 *
 * Feet and inches:  7' 10-3/4"   7'-10 3/4"   7 ft 10.75 in   7 feet 10 inches   7'10   8'   7.5 ft   7-1/2'
 * Inches:           94 3/4   94-3/4"   94.75 in   3/8   7-3/4 (seven and three quarters)   5/4   .5
 * Metric:           2407 mm   240.7 cm   2.407 m   2407 millimetres
 *
 * A bare number is inches. A sign before the whole makes all of it negative. Prime signs and typographic quotes stand
 * for ' and ", '' for "; the fraction characters (1/2 to 7/8, thirds, fifths, ...) and the fraction slash are read; any
 * dash, the minus sign and any Unicode space are taken for - and a space; capitals do not matter. A last word "strong"
 * or "light", as frame_tape_format writes it, is read and adds nothing.
 *
 * Refused as FRAME_AMBIGUOUS: two whole numbers with only a dash or a space between (7-10, 7 10), and a comma between
 * digits (2,407). Refused as FRAME_UNREADABLE: a unit twice or in the wrong order (7' 14', 8" 3'), a fraction over
 * zero, a fraction of 1 or more after a whole number (7-4/3), a fraction after a decimal, inches after feet that are
 * not whole (7.5' 3"), a fraction of a metric unit, an exponent (1e5), words for NaN and infinity, an empty text,
 * anything left over, and a text of more than 100 bytes. Refused as FRAME_OUT_OF_RANGE: 12 inches or more after feet
 * (7' 14"), and a length of more than 1,000,000 inches either way. A NULL is FRAME_REQUIRED.
 *
 * One number in any unit (up to 15 digits), and any length whose fraction is over a power of two, is read as the double
 * nearest to it: 2407 mm, 240.7 cm and 2.407 m are the same. On failure *inches is left alone, the error's field is
 * "text" and its value the text.
 *
 *     double inches;
 *     if (frame_tape_parse("7' 10-3/4\"", &inches)) puts(frame_error_text());    (inches is 94.75)
 */
FRAME_API frame_status frame_tape_parse(const char *text, double *inches);

/** The notation a length is written in. */
typedef int32_t frame_tape_units;
enum frame_tape_units_values {
    FRAME_TAPE_FEET = 1,    /**< "feet" | "feet and inches". 7' 10-3/4"; under a foot, 10-3/4". */
    FRAME_TAPE_INCHES = 2,  /**< "inches" | "fraction". 94-3/4". */
    FRAME_TAPE_DECIMAL = 3, /**< "decimal" | "decimal inches". 94.75 in. */
    FRAME_TAPE_METRIC = 4   /**< "metric" | "mm" | "millimetres" | "millimeters". 2407 mm. */
};

/** Which way a number goes that falls between two marks. */
typedef int32_t frame_rounding;
enum frame_rounding_values {
    FRAME_ROUND_NEAREST = 1, /**< "nearest". To the nearer mark; from halfway, away from zero. */
    FRAME_ROUND_DOWN = 2,    /**< "down". To the next smaller value (-3/8 goes to -1/2): for what must fit. */
    FRAME_ROUND_UP = 3       /**< "up". To the next greater value (-3/8 goes to -1/4): for what must reach. */
};

/** How a length is written. Set up by frame_tape_style_init, or all zero but for what you want to say:
 *
 *     frame_tape_style style = {.denominator = 8, .rounding = FRAME_ROUND_DOWN};
 *
 * In the second way struct_size and struct_id stay 0, and every other 0 means the default. */
typedef struct frame_tape_style {
    uint32_t struct_size, struct_id;
    int32_t denominator;     /**< 16 : 1..64. Finest fraction of an inch: 1, 2, 4, 8, 16, 32 or 64. */
    frame_tape_units style;  /**< feet. The notation. */
    frame_rounding rounding; /**< nearest. Which way it goes between two marks. */
    frame_bool strength;     /**< no. Say "strong" or "light" when rounding left 1/128 to 1/16 inch. */
    int32_t decimals;        /**< "as the denominator needs" : 0..6. Digits after the point. */
    int32_t spare;
} frame_tape_style;
/** Sets a style up: every field "not given". */
FRAME_ELEMENT(tape_style);

/**
 * Writes a length given in inches (-1,000,000 to 1,000,000) into a buffer of size bytes; 32 always suffice. style NULL
 * is feet and inches to the nearest sixteenth. What it writes, frame_tape_parse reads.
 *
 * feet: 7' 10-3/4", 8' 0", 10-3/4", 0". inches: 94-3/4". Fractions are reduced, and 12 inches are never written: they
 * become a foot. decimal: 94.75 in; without decimals asked for, at most as many as the denominator needs to be written
 * exactly (4 for 16, 6 for 64) and no zeros at the end; with decimals, exactly so many. metric: 2407 mm; without
 * decimals asked for, whole millimetres, and tenths for a denominator of 32 or 64.
 *
 * Rounding down and up go toward the smaller and the greater value. A length within 1e-9 inch of a mark is on it, so
 * the last bit of a calculation never costs a sixteenth. With strength, "strong" means that the length is a little more
 * than the marks say and "light" a little less (by size, for negative ones too); what is left under 1/128 inch is not
 * mentioned.
 *
 * FRAME_NOT_A_NUMBER for NaN and infinity, FRAME_OUT_OF_RANGE for a length or a style out of range (a denominator that
 * is not a power of two too), FRAME_BUFFER_TOO_SMALL, FRAME_REQUIRED for a NULL text, FRAME_NOT_INITIALISED and
 * FRAME_NEWER_HEADER for the style's struct. On failure text is left alone.
 *
 *     char text[32];
 *     frame_tape_format(94.77, NULL, text, sizeof text);    (7' 10-3/4")
 */
FRAME_API frame_status frame_tape_format(double inches, const frame_tape_style *style, char *text, size_t size);

/**
 * Reads a slope and gives it as rise over run.
 *
 * Rise and run: 8/12   8 in 12   8:12   8-1/2 in 12   8.5 on 12   8" in 12"   12 in 8   3/4 in 12
 * Angle:        33.69 deg   33.69 degrees   33.69 with a degree sign   0.588 rad
 * Others:       66.7% (66.7 percent)   flat, level (0)   0.667 (a bare number is rise over run as it stands)
 *
 * Any bare number is accepted, 8 too; a calculation that takes slopes cautions above 1.5. A sign at the start is read.
 * Spaces, dashes, primes and fraction characters are read as frame_tape_parse reads them.
 *
 * Refused as FRAME_AMBIGUOUS: 8-12, 8 12, a comma between digits, and a whole number with a fraction but no run
 * (8-1/2). Refused as FRAME_OUT_OF_RANGE: a run of zero, 90 degrees or more, the words plumb and vertical, and slopes
 * over 100 (89.4 degrees) either way. The rest as FRAME_UNREADABLE; NULL as FRAME_REQUIRED. On failure *slope is left
 * alone, the error's field is "text" and its value the text.
 *
 *     double slope;
 *     frame_slope_parse("8-1/2 in 12", &slope);    (slope is 0.708333...)
 */
FRAME_API frame_status frame_slope_parse(const char *text, double *slope);

/**
 * Writes a slope (rise over run, -100 to 100) as the rise in a run of 12, into a buffer of size bytes; 32 always
 * suffice: "8 in 12", "8-1/2 in 12", "-2 in 12", "0 in 12". The rise is rounded to 1/10000; it is written as a fraction
 * where it is then a sixteenth, as a decimal ("8.07 in 12") elsewhere. frame_slope_parse reads it.
 *
 * FRAME_NOT_A_NUMBER, FRAME_OUT_OF_RANGE, FRAME_BUFFER_TOO_SMALL, FRAME_REQUIRED for a NULL text; text is then left
 * alone.
 *
 *     char text[32];
 *     frame_slope_format(2.0 / 3.0, text, sizeof text);    (8 in 12)
 */
FRAME_API frame_status frame_slope_format(double slope, char *text, size_t size);

/**
 * Reads an angle and gives it in degrees, -360 to 360: "30", "30 deg", "30 degrees", "22-1/2 deg", "0.5 rad", and with
 * the degree sign, also degrees with minutes and seconds of arc (33 deg 41' 24"). A bare number is degrees.
 *
 * Refused as FRAME_AMBIGUOUS: a bare fraction (8/12: a slope? write "1/2 deg" or "8 in 12" where a slope is asked for),
 * and what frame_tape_parse finds ambiguous. FRAME_OUT_OF_RANGE: over 360 degrees, 60 minutes or seconds. The rest as
 * FRAME_UNREADABLE; NULL as FRAME_REQUIRED. On failure *degrees is left alone, the error's field is "text" and its
 * value the text.
 *
 *     double degrees;
 *     frame_angle_parse("22-1/2 deg", &degrees);    (degrees is 22.5)
 */
FRAME_API frame_status frame_angle_parse(const char *text, double *degrees);

FRAME_END

#endif
