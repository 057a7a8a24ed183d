/* The distances that fasteners need: NDS 2018 tables 12.5.1A to 12.5.1D. */
#include "joint/geometry.h"

#include <math.h>

#include "base/error.h"
#include "working/record.h"

#define ENDS "NDS 2018 table 12.5.1A"
#define SPACING "NDS 2018 table 12.5.1B"
#define EDGES "NDS 2018 table 12.5.1C"
#define ROWS "NDS 2018 table 12.5.1D"
#define ADVICE "NDS commentary table C12.1.5.7, wood side members, from memory"

/* Under 1/4 in. Diameters by way: not bored, bored. */
static void advised(const frame_geometry_ask *ask, frame_geometry *rules, frame_working *w) {
    const int bored = ask->prebored;
    FRAME_GIVEN(w, D, ask->diameter_in, "in", "diameter");
    FRAME_TABLE(w, k_tension, bored ? 10 : 15, "", "diameters to an end pulled toward", ADVICE);
    FRAME_TABLE(w, k_compression, bored ? 5 : 10, "", "diameters to another end", ADVICE);
    FRAME_TABLE(w, k_spacing, ask->across ? (bored ? 5 : 10) : (bored ? 10 : 15), "", "diameters in a row", ADVICE);
    FRAME_TABLE(w, k_row, bored ? 3 : 5, "", "diameters between rows in line", ADVICE);
    FRAME_STEP(w, e_end, k_tension * D, "in", "end distance, pulled toward", ADVICE);
    FRAME_STEP(w, e_other, k_compression * D, "in", "end distance, else", ADVICE);
    FRAME_STEP(w, e_edge, 2.5 * D, "in", "edge distance", ADVICE);
    FRAME_STEP(w, s_row, k_spacing * D, "in", "spacing in a row", ADVICE);
    FRAME_STEP(w, s_rows, k_row * D, "in", "spacing of rows", ADVICE);
    const double near = ask->tension && !ask->across ? e_end : e_other,
                 far = !ask->tension && !ask->across ? e_end : e_other;
    *rules = (frame_geometry){near, near, far, far, e_edge, e_edge, s_row, s_row, s_rows, 1};
}

static void ends(const frame_geometry_ask *ask, double D, frame_geometry *rules, frame_working *w) {
    FRAME_TABLE(w, k_tension, ask->across ? 4 : (ask->hardwood ? 5 : 7), "", "diameters to an end pulled toward", ENDS);
    FRAME_STEP(w, e_tension, k_tension * D, "in", "end distance for full value, pulled toward", ENDS);
    FRAME_STEP(w, e_other, 4 * D, "in", "end distance for full value, else", ENDS);
    const double near = ask->tension ? e_tension : e_other, far = ask->tension ? e_other : e_tension;
    rules->end_least = near / 2, rules->end_full = near;
    rules->far_end_least = far / 2, rules->far_end_full = far;
}

static void across(double D, double ratio, frame_geometry *rules, frame_working *w) {
    FRAME_GIVEN(w, l_over_D, ratio, "", "bearing length over diameter, the lesser of main and side");
    FRAME_STEP(w, e_loaded, 4 * D, "in", "loaded edge", EDGES);
    FRAME_STEP(w, e_unloaded, 1.5 * D, "in", "unloaded edge", EDGES);
    FRAME_STEP(w, s_rows, l_over_D <= 2 ? 2.5 * D : (l_over_D < 6 ? (5 * l_over_D * D + 10 * D) / 8 : 5 * D), "in",
               "spacing of rows", ROWS);
    FRAME_STEP(w, s_row, 3 * D, "in", "spacing in a row, as the attached members need beyond that", SPACING);
    rules->loaded_edge = e_loaded, rules->unloaded_edge = e_unloaded;
    rules->spacing_least = rules->spacing_full = s_row;
    rules->row = s_rows;
}

static void along(const frame_geometry_ask *ask, double D, double ratio, frame_geometry *rules, frame_working *w) {
    FRAME_GIVEN(w, l_over_D, ratio, "", "bearing length over diameter, the lesser of main and side");
    FRAME_GIVEN(w, s_between, ask->row_spacing_in, "in", "spacing of the rows, 0 for one row");
    FRAME_STEP(w, e_edge, l_over_D <= 6 ? 1.5 * D : fmax(1.5 * D, s_between / 2), "in", "edge distance", EDGES);
    FRAME_STEP(w, s_rows, 1.5 * D, "in", "spacing of rows", ROWS);
    FRAME_STEP(w, s_least, 3 * D, "in", "least spacing in a row", SPACING);
    FRAME_STEP(w, s_full, 4 * D, "in", "spacing in a row for full value", SPACING);
    rules->loaded_edge = rules->unloaded_edge = e_edge;
    rules->spacing_least = s_least, rules->spacing_full = s_full;
    rules->row = s_rows;
}

/* Lag screws loaded along themselves only. */
static void pulled(const frame_geometry_ask *ask, frame_geometry *rules, frame_working *w) {
    FRAME_GIVEN(w, D, ask->diameter_in, "in", "diameter");
    FRAME_STEP(w, e_edge, 1.5 * D, "in", "edge distance in withdrawal", "NDS 2018 table 12.5.1E");
    FRAME_STEP(w, e_end, 4 * D, "in", "end distance in withdrawal", "NDS 2018 table 12.5.1E");
    FRAME_STEP(w, s_all, 4 * D, "in", "spacing in withdrawal", "NDS 2018 table 12.5.1E");
    *rules = (frame_geometry){e_end, e_end, e_end, e_end, e_edge, e_edge, s_all, s_all, s_all, 0};
}

frame_status frame_geometry_find(const frame_geometry_ask *ask, frame_geometry *rules, frame_working *w) {
    if (ask->diameter_in < 0.25) {
        advised(ask, rules, w);
        return FRAME_OK;
    }
    if (ask->pulled) {
        pulled(ask, rules, w);
        return FRAME_OK;
    }
    const int no_main = ask->main_in == FRAME_NOT_GIVEN;
    if (no_main || ask->side_in == FRAME_NOT_GIVEN) {
        const char *field = no_main ? "main_thickness_in" : "side_thickness_in";
        return frame_fail(FRAME_REQUIRED, field, "", ">0..48 in",
                          "%s: not given; from 1/4 in diameter up edge and row distances go by it (NDS 12.5.1)", field);
    }
    FRAME_GIVEN(w, D, ask->diameter_in, "in", "diameter");
    const double ratio = fmin(ask->main_in, ask->side_in) / D;
    *rules = (frame_geometry){0};
    ends(ask, D, rules, w);
    if (ask->across)
        across(D, ratio, rules, w);
    else
        along(ask, D, ratio, rules, w);
    return FRAME_OK;
}
