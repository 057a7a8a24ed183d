/* Spacing and height of studs from the code's tables and exceptions. */
#include "code/book.h"
#include "code/overlay.h"
#include "code_facts.h"
#include "table_code_studs.h"
#include "table_code_tall_studs.h"
#include "working/calculation.h"

enum { GRADE_NO_2 = 4, GRADE_UTILITY = 9, STUD_2X4 = 2, STUD_2X6 = 5 };
static const char number[] = "R602.3(5)", exceptions[] = "IRC R602.3.1, exceptions";

static int size_word(frame_size size) {
    static const frame_size sizes[] = {FRAME_SIZE(2, 3), FRAME_SIZE(2, 4), FRAME_SIZE(3, 4), FRAME_SIZE(2, 5),
                                       FRAME_SIZE(2, 6)};
    for (int i = 0; i < 5; i++)
        if (sizes[i] == size) return i + 1;
    return 0;
}

static void give(double spacing, double height, const char *source, frame_code_stud_out *out, frame_working *w) {
    FRAME_TABLE(w, s_max, spacing, "in", "greatest spacing on centres", source);
    FRAME_TABLE(w, H_max, height, "in", "greatest height between lateral supports", source);
    out->spacing_in = s_max;
    out->height_in = H_max;
}

static frame_status no_stud(const frame_code_stud_in *in, const char *why, const char *valid) {
    return frame_fail(FRAME_OUTSIDE_SCOPE, "height_in", frame_code_number(in->height_in).text, valid,
                      "height_in: %s in: %s", frame_code_number(in->height_in).text, why);
}

/* Where the wall is higher than table R602.3(5): what the exceptions ask for before they hold. */
static frame_status site_of(const frame_code_stud_in *in) {
    if (in->wind_mph == FRAME_NOT_GIVEN || in->ground_snow_psf == FRAME_NOT_GIVEN)
        return frame_fail(FRAME_REQUIRED, in->wind_mph == FRAME_NOT_GIVEN ? "wind_mph" : "ground_snow_psf", "",
                          "wind speed and ground snow load, for a stud higher than the table",
                          "%s: is required for studs higher than Table R602.3(5) has",
                          in->wind_mph == FRAME_NOT_GIVEN ? "wind_mph" : "ground_snow_psf");
    return FRAME_OK;
}

/* R602.3.1, exception 2: 2x6 under a roof of at most 6 ft, up to 18 ft at 16 in and 20 ft at 12 in. */
static int light_roof(const frame_code_stud_in *in, int size) {
    return size == STUD_2X6 && in->supports == FRAME_CODE_ON_STUDS_ROOF && in->height_in <= 240 &&
           in->wind_mph <= 130 && in->ground_snow_psf <= 25 && in->tributary_in != FRAME_NOT_GIVEN &&
           in->tributary_in <= 72 && in->grade <= GRADE_NO_2 && in->grade != FRAME_NOT_GIVEN_INT;
}

/* R602.3.1, exception 3 and table R602.3(6): exterior bearing walls of up to 12 ft. */
static int in_tall_table(const frame_code_stud_in *in) {
    return in->exterior && in->height_in <= 144 && in->wind_mph <= 140 && in->ground_snow_psf <= 30 &&
           in->roof_live_psf <= 20 && in->exposure == FRAME_CODE_EXPOSURE_B && in->span_in != FRAME_NOT_GIVEN &&
           in->span_in <= 288 && in->grade <= GRADE_NO_2 && in->grade != FRAME_NOT_GIVEN_INT &&
           !(in->attic_span_in > 0) &&
           (in->supports == FRAME_CODE_ON_STUDS_ROOF || in->supports == FRAME_CODE_ON_STUDS_FLOOR_ROOF);
}

static int tall_cell(const frame_code_tall_studs_row *row, int wide, double wind_mph) {
    if (wind_mph <= 115) return wide ? row->s24_115 : row->s12_115;
    if (wind_mph <= 130) return wide ? row->s24_130 : row->s12_130;
    return wide ? row->s24_140 : row->s12_140;
}

/* The widest spacing whose stud is no larger than the one asked for. */
static frame_status from_tall_table(const frame_code_stud_in *in, int size, frame_code_stud_out *out,
                                    frame_working *w) {
    const int height = in->height_in <= 132 ? 11 : 12, wide = in->span_in > 144;
    const int width = size == STUD_2X4 ? 4 : size == STUD_2X6 ? 6 : 0;
    const frame_code_tall_studs_row *best = NULL, *first = frame_code_tall_studs_table;
    for (int i = 0; i < frame_code_tall_studs_rows; i++) {
        const frame_code_tall_studs_row *row = &frame_code_tall_studs_table[i];
        const int cell = tall_cell(row, wide, in->wind_mph);
        if (row->height == height && row->carries == (int)in->supports && cell > 0 && cell <= width &&
            (!best || row->spacing > best->spacing))
            best = row;
    }
    if (!(first->editions & frame_code_bit(in->edition)))
        return frame_code_no_edition("R602.3(6)", in->edition, first->editions);
    FRAME_CODE_SAY(out, in->edition, first->table, frame_code_source_text(first->source), "", first->known);
    if (in->wind_mph > 115)
        FRAME_CASE(w, "wind over 115 mph", "studs held to both plates by connectors of 300 lb lateral capacity",
                   "IRC Table R602.3(6), note b");
    if (best && best->spacing <= 16)
        FRAME_CASE(w, "studs at 16 in or less", "1/2 in gypsum board inside and 3/8 in wood structural panels outside",
                   "IRC Table R602.3(6), note a");
    give(best ? best->spacing : 0, 12.0 * height, out->source, out, w);
    return FRAME_OK;
}

static frame_status taller(const frame_code_stud_in *in, int size, frame_code_stud_out *out, frame_working *w) {
    const frame_status status = in->supports == FRAME_CODE_ON_STUDS_NOTHING ? FRAME_OK : site_of(in);
    if (status) return status;
    if (in->supports != FRAME_CODE_ON_STUDS_NOTHING && in_tall_table(in)) return from_tall_table(in, size, out, w);
    if (in->supports != FRAME_CODE_ON_STUDS_NOTHING && light_roof(in, size)) {
        FRAME_CODE_SAY(out, in->edition, "R602.3.1", "IRC 2021 R602.3.1, exception 2, adoption text of Texas", "",
                       in->edition == FRAME_CODE_2021 ? FRAME_KNOWN_READ : FRAME_KNOWN_SECONDARY);
        give(in->height_in <= 216 ? 16 : 12, in->height_in <= 216 ? 216 : 240, exceptions, out, w);
        return FRAME_OK;
    }
    return no_stud(
        in, "higher than Table R602.3(5) allows, and no exception of R602.3.1 holds: design the wall",
        "10 ft and less for bearing walls; exterior walls to 12 ft of No.2 studs, exposure B, snow to 30 psf and "
        "wind to 140 mph; 2x6 No.2 to 20 ft under a roof of 6 ft, snow to 25 psf and wind to 130 mph");
}

/* Utility grade: R602.3.1, exception 1. */
static frame_status utility(const frame_code_stud_in *in, double *spacing, double *height) {
    const int bearing = in->supports != FRAME_CODE_ON_STUDS_NOTHING, inner = !in->exterior && !bearing;
    if (in->supports > FRAME_CODE_ON_STUDS_ROOF)
        return frame_fail(FRAME_OUTSIDE_SCOPE, "grade", "Utility", "No.3, Stud or Standard and better",
                          "grade: Utility studs carry no more than a roof and ceiling (IRC R602.3.1)");
    if (*spacing > 16) *spacing = 16;
    if (*height > (inner ? 120 : 96)) *height = inner ? 120 : 96;
    return FRAME_OK;
}

static frame_status check(const frame_code_stud_in *in, int size) {
    const char *const name = frame_size_name(in->size);
    if (!size)
        return frame_fail(FRAME_NO_VALUE, "size", name ? name : "", "2x3, 2x4, 3x4, 2x5, 2x6",
                          "size: %s is not in Table R602.3(5), which has 2x3, 2x4, 3x4, 2x5 and 2x6",
                          name ? name : "?");
    if (size == 1 && in->exterior)
        return frame_fail(FRAME_OUTSIDE_SCOPE, "size", "2x3", "2x4 and larger in exterior walls",
                          "size: 2x3 studs may not stand in exterior walls (IRC Table R602.3(5), note b)");
    if (size == STUD_2X4 && in->attic_span_in > 384)
        return frame_fail(FRAME_OUTSIDE_SCOPE, "attic_span_in", frame_code_number(in->attic_span_in).text,
                          "0..384 in for 2x4",
                          "attic_span_in: a habitable attic on 2x4 studs has 32 ft of roof span at most (IRC Table "
                          "R602.3(5), note c)");
    return FRAME_OK;
}

static frame_status compute(const frame_code_stud_in *in, frame_code_stud_out *out, frame_working *w) {
    const int size = size_word(in->size);
    frame_status status = check(in, size);
    if (status) return status;
    const int first = frame_code_studs_at[size][in->supports];
    if (!first)
        return frame_fail(FRAME_NO_VALUE, "supports", frame_word_text("code_on_studs", in->supports),
                          "less, or a larger stud", "supports: Table %s has no spacing for %s carrying %s", number,
                          frame_size_name(in->size), frame_word_text("code_on_studs", in->supports));
    const frame_code_studs_row *row = &frame_code_studs_table[first - 1];
    if (!(row->editions & frame_code_bit(in->edition)))
        return frame_code_no_edition(number, in->edition, row->editions);
    FRAME_HEADING(w, "Studs by the code");
    FRAME_CODE_WARN(out, STAMP);
    FRAME_CODE_UNCHECKED(out, NOTCHES);
    FRAME_CODE_UNCHECKED(out, WIND);
    double spacing = row->spacing, height = 12.0 * row->height;
    if (in->grade == GRADE_UTILITY && (status = utility(in, &spacing, &height))) return status;
    if (in->height_in > height) {
        if (in->grade == GRADE_UTILITY)
            return no_stud(in, "utility grade studs are 8 ft high at most, 10 ft in inner walls that carry nothing",
                           "96 in; 120 in");
        return taller(in, size, out, w);
    }
    FRAME_CODE_SAY(out, in->edition, row->table, frame_code_source_text(row->source), "", row->known);
    give(spacing, height, out->source, out, w);
    return FRAME_OK;
}

FRAME_CODE_IMPLEMENT(code_stud, compute);
