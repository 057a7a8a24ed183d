/* The least lengths of braced wall panels (table R602.10.5). */
#include "base/error.h"
#include "code/bracing.h"
#include "table_code_braced_panels.h"

enum { GROUP_PANELS = 1, GROUP_GB, GROUP_LIB, GROUP_ABW, GROUP_CS_G, GROUP_CS_WSP, GROUP_PFH, GROUP_PFG, GROUP_CS_PF };

static int group_of(frame_code_bracing_method method) {
    static const signed char groups[] = {
        0,         GROUP_LIB,    GROUP_PANELS, GROUP_PANELS, GROUP_PANELS, GROUP_PANELS,
        GROUP_GB,  GROUP_PANELS, GROUP_PANELS, GROUP_PANELS, GROUP_ABW,    GROUP_PFH,
        GROUP_PFG, GROUP_CS_WSP, GROUP_CS_G,   GROUP_CS_PF,  GROUP_CS_WSP};
    return groups[method];
}

/* The cell between heights; -1 where one of the two is not permitted. Lower walls have the lengths of 8 ft. */
static double at_height(const frame_code_braced_panels_row *row, double height) {
    const int16_t cells[] = {row->h8, row->h9, row->h10, row->h11, row->h12, row->h12};
    const double feet = height / 12 - 8;
    if (feet <= 0) return cells[0];
    const int place = (int)(feet + 1e-9);
    const double part = feet - place > 1e-9 ? feet - place : 0;
    if (cells[place] < 0 || (part > 0 && cells[place + 1] < 0)) return -1;
    return cells[place] + part * (cells[place + 1] - cells[place]);
}

/* Between the openings of continuous sheathing. */
static double beside_opening(const frame_code_braced_panels_row *row, double height, double opening) {
    const frame_code_braced_panels_row *const end = frame_code_braced_panels_table + frame_code_braced_panels_rows;
    if (opening <= row->which) return at_height(row, height);
    for (; row + 1 < end && row[1].group == row->group; row++) {
        const double here = at_height(row, height), next = at_height(row + 1, height);
        if (opening > row[1].which) continue;
        if (next < 0 || here < 0) return -1;
        return here + (opening - row->which) / (row[1].which - row->which) * (next - here);
    }
    return -1;
}

/* The height by which a portal frame's length is read: to the top of its header. */
static frame_status portal_height(const frame_code_wall_line_in *in, const frame_code_wall_panel *panel,
                                  double *height) {
    *height = panel->portal_height_in != FRAME_NOT_GIVEN ? panel->portal_height_in : in->wall_height_in;
    if (*height > in->wall_height_in * (1 + 1e-9))
        return frame_fail_number(FRAME_CONFLICT, "portal_height_in", *height, "0 up to the height of the wall");
    if (*height <= 120 * (1 + 1e-9)) return FRAME_OK;
    if (panel->portal_height_in != FRAME_NOT_GIVEN)
        return frame_fail_number(FRAME_OUTSIDE_SCOPE, "portal_height_in", *height, "0..120 in (10 ft)");
    return frame_fail(FRAME_REQUIRED, "portal_height_in", "", "0..120 in",
                      "portal_height_in: a portal frame in a wall higher than 10 ft needs the height of its header");
}

frame_status frame_code_least_panel(const frame_code_wall_line_in *in, const frame_code_wall_panel *panel,
                                    frame_code_bracing_method method, double *least, const char **source) {
    const int group = group_of(method), d = in->seismic > FRAME_CODE_SEISMIC_C;
    const frame_code_braced_panels_row *row = &frame_code_braced_panels_table[frame_code_braced_panels_at[group] - 1];
    double height = in->wall_height_in;
    if (group >= GROUP_PFH) {
        const frame_status status = portal_height(in, panel, &height);
        if (status) return status;
    }
    if (((group == GROUP_ABW || group == GROUP_CS_PF) && d) || (group == GROUP_PFH && in->floors_above > 0)) row++;
    *source = frame_code_source_text(row->source);
    *least = group == GROUP_CS_WSP ? beside_opening(row, height, panel->opening_height_in) : at_height(row, height);
    return FRAME_OK;
}
