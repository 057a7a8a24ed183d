/* Exposure, thermal and importance factor: by the tables of ASCE 7, or as given. */
#include "base/error.h"
#include "load/snow.h"
#include "table_snow_exposure_factors.h"
#include "table_snow_importance_factors.h"
#include "table_snow_thermal_factors.h"

enum { EXPOSURES = 3 };

static int is_word(int32_t value) {
    return value != FRAME_NOT_GIVEN_INT;
}

frame_status frame_snow_lacks(const char *field, const char *valid) {
    return frame_fail(FRAME_REQUIRED, field, "", valid, "%s: not given; valid is %s", field, valid);
}

frame_status frame_snow_conflict(const char *field, const char *given, const char *valid) {
    return frame_fail(FRAME_CONFLICT, field, given, valid, "%s: %s; valid is %s", field, given, valid);
}

static void worst(frame_snow *snow, frame_known known) {
    if (known > snow->known) snow->known = known;
}

static frame_status find_edition(const frame_roof_snow_in *in, frame_snow *snow) {
    const int strength = in->basis == FRAME_SNOW_STRENGTH;
    snow->edition = is_word(in->edition) ? in->edition : strength ? FRAME_SNOW_ASCE_7_22 : FRAME_SNOW_ASCE_7_16;
    if (strength != (snow->edition == FRAME_SNOW_ASCE_7_22))
        return frame_snow_conflict("edition", "does not belong to this basis",
                                   "ASCE 7-10 or 7-16 with a 50-year load, ASCE 7-22 with one at strength level");
    return FRAME_OK;
}

static frame_status exposure(const frame_roof_snow_in *in, frame_snow *snow, frame_working *record) {
    const int words = is_word(in->terrain) || is_word(in->roof_exposure);
    if (frame_snow_given(in->exposure_factor)) {
        if (words)
            return frame_snow_conflict("exposure_factor", "given with terrain or roof_exposure", "one of the two");
        FRAME_GIVEN(record, C_e, in->exposure_factor, "", "exposure factor, as given");
        snow->C_e = C_e;
        return FRAME_OK;
    }
    if (!is_word(in->terrain))
        return frame_snow_lacks("terrain", "the country around, with roof_exposure; or exposure_factor");
    if (!is_word(in->roof_exposure))
        return frame_snow_lacks("roof_exposure", "how the wind comes to the roof, with terrain");
    const frame_snow_exposure_factors_row *row =
        &frame_snow_exposure_factors_table[(in->terrain - 1) * EXPOSURES + in->roof_exposure - 1];
    if (!frame_snow_given(row->factor))
        return frame_fail(FRAME_NO_VALUE, "roof_exposure", row->exposure, "fully or partially exposed, in this terrain",
                          "roof_exposure: %s has no factor in this terrain; valid is fully or partially exposed",
                          row->exposure);
    FRAME_TABLE(record, C_e, row->factor, "", "exposure factor", row->source);
    worst(snow, snow->edition == FRAME_SNOW_ASCE_7_22 ? FRAME_KNOWN_MEMORY : row->known);
    snow->C_e = C_e;
    return FRAME_OK;
}

static frame_status thermal(const frame_roof_snow_in *in, frame_snow *snow, frame_working *record) {
    if (frame_snow_given(in->thermal_factor)) {
        if (is_word(in->thermal)) return frame_snow_conflict("thermal_factor", "given with thermal", "one of the two");
        FRAME_GIVEN(record, C_t, in->thermal_factor, "", "thermal factor, as given");
        snow->C_t = C_t;
        return FRAME_OK;
    }
    if (snow->edition == FRAME_SNOW_ASCE_7_22)
        return frame_snow_lacks("thermal_factor", "C_t of ASCE 7-22 tables 7.3-2 and 7.3-3, which go by insulation");
    if (!is_word(in->thermal)) return frame_snow_lacks("thermal", "how warm the roof is, or thermal_factor");
    const frame_snow_thermal_factors_row *row = &frame_snow_thermal_factors_table[in->thermal - 1];
    FRAME_TABLE(record, C_t, row->factor, "", "thermal factor", row->source);
    worst(snow, row->known);
    snow->C_t = C_t;
    return FRAME_OK;
}

/* ASCE 7-22 keeps the risk category in its maps, and in the limit of the minimum load. */
static frame_status importance(const frame_roof_snow_in *in, frame_snow *snow, frame_working *record) {
    const frame_snow_importance_factors_row *row = &frame_snow_importance_factors_table[in->risk_category - 1];
    const int given = frame_snow_given(in->importance_factor);
    snow->p_m_max = row->minimum_limit_psf;
    if (snow->edition == FRAME_SNOW_ASCE_7_22) {
        if (given) return frame_snow_conflict("importance_factor", "given for ASCE 7-22", "none: its maps hold it");
        snow->I_s = 1;
        return FRAME_OK;
    }
    if (given) {
        FRAME_GIVEN(record, I_s, in->importance_factor, "", "importance factor, as given");
        snow->I_s = I_s;
        return FRAME_OK;
    }
    FRAME_TABLE(record, I_s, row->factor, "", "importance factor", row->source);
    worst(snow, row->known);
    snow->I_s = I_s;
    return FRAME_OK;
}

frame_status frame_snow_factors(const frame_roof_snow_in *in, frame_snow *snow, frame_working *record) {
    frame_status status = find_edition(in, snow);
    if (status) return status;
    FRAME_HEADING(record, "Snow on the ground, and factors");
    FRAME_GIVEN(record, p_g, in->ground_snow_psf, "psf", "ground snow load");
    snow->p_g = p_g;
    if (!(status = exposure(in, snow, record)) && !(status = thermal(in, snow, record)))
        status = importance(in, snow, record);
    return status;
}
