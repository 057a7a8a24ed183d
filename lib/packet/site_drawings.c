/* The drawings: of each level its floor, walls and roof in plan and the frame as it stands; of each wall its elevation.
 */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <frame/drawing.h>

#include "packet/export.h"
#include "packet/framing.h"
#include "timber/scene.h"

static const frame_framing_stick *stick_at(const frame_site_page *page, size_t i) {
    return &FRAME_ITEM(frame_framing_stick, page->answer->lists[FRAME_FRAMING_STICKS], i);
}

static const frame_stick *solid_at(const frame_site_page *page, size_t i) {
    return FRAME_ITEM(frame_stick *, page->inside->sticks, i);
}

/* Of a drawing the page has two widths, of which it shows the one that fits. */
frame_status frame_site_drawing(frame_site_page *page, frame_drawing *drawing, const char *name, double height_in) {
    static const struct {
        const char *shown;
        double width_in;
    } widths[] = {{"wide", 6.9}, {"narrow", 3.6}};
    char slug[80], file[96];
    frame_packet_slug(name, slug);
    snprintf(file, sizeof file, "%.80s.svg", slug);
    frame_status status = frame_drawing_title(drawing, name);
    for (int i = 0; i < 2 && !status; i++) {
        frame_text_addf(page->into, "<figure class=\"%s\">\n", widths[i].shown);
        status = frame_drawing_paper(drawing, widths[i].width_in, i ? fmin(height_in, 5) : height_in);
        if (!status) status = frame_drawing_svg(drawing, page->into);
        frame_text_add(page->into, "\n</figure>\n");
    }
    if (status) return status;
    frame_text *own = frame_packet_file_new(page->files, file);
    if (!own) return FRAME_NO_MEMORY;
    status = frame_drawing_paper(drawing, 10, 8);
    return status ? status : frame_drawing_svg(drawing, own);
}

/* -- plans -- */

typedef struct seen {
    size_t index;
    double top;
} seen;

static int by_top(const void *a, const void *b) {
    const seen *one = a, *two = b;
    if (one->top != two->top) return one->top < two->top ? -1 : 1;
    return one->index < two->index ? -1 : 1;
}

static double top_of(const frame_stick *stick) {
    double top = -1e300;
    for (int c = 0; c < 8; c++) {
        const vec3 at = frame_to_world(
            &stick->placement, (vec3){c & 1 ? stick->low : stick->high, stick->y[c >> 1 & 1], stick->z[c >> 2 & 1]});
        top = fmax(top, at.z);
    }
    return top;
}

static void reach(const frame_stick *stick, double low[2], double high[2]) {
    for (int c = 0; c < 8; c++) {
        const vec3 at = frame_to_world(
            &stick->placement, (vec3){c & 1 ? stick->low : stick->high, stick->y[c >> 1 & 1], stick->z[c >> 2 & 1]});
        low[0] = fmin(low[0], at.x), high[0] = fmax(high[0], at.x);
        low[1] = fmin(low[1], at.y), high[1] = fmax(high[1], at.y);
    }
}

static frame_status outline(frame_drawing *drawing, const frame_stick *stick, frame_hatch hatch) {
    vec3 hull[FRAME_EXPORT_HULL];
    const int count = frame_export_hull(stick, hull);
    frame_status status = FRAME_OK;
    for (int i = 0; i < count && !status; i++) status = frame_drawing_point(drawing, hull[i].x, hull[i].y);
    return status ? status : frame_drawing_polygon(drawing, FRAME_PEN_OUTLINE, hatch);
}

static int in_plan(const frame_framing_stick *stick, const char *level, frame_stage first, frame_stage last) {
    return !strcmp(stick->level, level) && stick->stage >= first && stick->stage <= last;
}

static frame_status overall(frame_drawing *drawing, const double low[2], const double high[2]) {
    frame_status status =
        frame_drawing_dimension(drawing, low[0], low[1], high[0], low[1], FRAME_DIMENSION_BELOW, NULL);
    return status ? status
                  : frame_drawing_dimension(drawing, low[0], low[1], low[0], high[1], FRAME_DIMENSION_LEFT, NULL);
}

static frame_status name_footings(frame_site_page *page, frame_drawing *drawing, const double low[2],
                                  const double high[2]) {
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < frame_framing_footing_count(page->framing) && !status; i++) {
        frame_framing_footing footing;
        frame_framing_footing_at(page->framing, i, &footing);
        if (footing.x_in < low[0] - 1 || footing.x_in > high[0] + 1 || footing.y_in < low[1] - 1 ||
            footing.y_in > high[1] + 1)
            continue;
        if (footing.needed_in2 != FRAME_NOT_GIVEN) {
            char number[24]; /* its line in the table of footings */
            snprintf(number, sizeof number, "%zu", i + 1);
            status = frame_drawing_label(drawing, footing.x_in, footing.y_in, number);
        }
    }
    return status;
}

/* Lower sticks first, each hiding what it lies on. Studs are cut through. */
static frame_status plan(frame_site_page *page, const char *level, const char *what, frame_stage first,
                         frame_stage last) {
    const size_t count = page->inside->sticks.count;
    seen *order = frame_take(sizeof *order * (count + 1));
    frame_drawing *drawing = NULL;
    size_t found = 0;
    double low[2] = {1e300, 1e300}, high[2] = {-1e300, -1e300}, foot = 1e300;
    for (size_t i = 0; i < count; i++)
        if (in_plan(stick_at(page, i), level, first, last)) foot = fmin(foot, stick_at(page, i)->start_z_in);
    frame_status status = order ? frame_drawing_new(&drawing) : FRAME_NO_MEMORY;
    for (size_t i = 0; i < count && !status; i++) {
        const frame_framing_stick *stick = stick_at(page, i);
        if (!in_plan(stick, level, first, last)) continue;
        if (first == FRAME_STAGE_WALLS && stick->start_z_in == stick->end_z_in && strcmp(stick->name, "bottom plate") &&
            strcmp(stick->name, "sill"))
            continue; /* cut above the sills: headers and top plates are left out */
        if (first == FRAME_STAGE_WALLS && stick->start_z_in > foot + 48) continue; /* and what stands on headers */
        order[found++] = (seen){i, top_of(solid_at(page, i))};
        reach(solid_at(page, i), low, high);
    }
    if (!status && found) {
        qsort(order, found, sizeof *order, by_top);
        for (size_t i = 0; i < found && !status; i++) {
            const frame_framing_stick *stick = stick_at(page, order[i].index);
            const int upright = stick->start_x_in == stick->end_x_in && stick->start_y_in == stick->end_y_in;
            status = outline(drawing, solid_at(page, order[i].index), upright ? FRAME_HATCH_SOLID : FRAME_HATCH_BLANK);
        }
        if (!status) status = overall(drawing, low, high);
        if (!status && first == FRAME_STAGE_FOUNDATION) status = name_footings(page, drawing, low, high);
        char name[160];
        snprintf(name, sizeof name, "%.90s, %s", level, what);
        frame_text_add(page->into, "<article class=\"find\"><h3>");
        frame_text_add_xml(page->into, name);
        frame_text_add(page->into, "</h3>\n");
        if (!status) status = frame_site_drawing(page, drawing, name, 7);
        frame_text_add(page->into, "</article>\n");
    }
    frame_drawing_free(drawing);
    frame_give(order);
    return status;
}

/* -- as it stands -- */

static frame_status stands(frame_site_page *page, const char *level) {
    frame_scene scene;
    frame_drawing *drawing;
    size_t found = 0;
    char name[240];
    frame_status status = frame_drawing_new(&drawing);
    if (status) return status;
    frame_scene_begin(&scene, 30, 30);
    for (size_t i = 0; i < page->inside->sticks.count && !status; i++) {
        if (strcmp(stick_at(page, i)->level, level) != 0) continue;
        found++;
        status = frame_scene_add(&scene, solid_at(page, i));
    }
    if (!status && found) {
        status = frame_scene_draw(&scene, drawing);
        snprintf(name, sizeof name, "%zu sticks of %.90s where they stand, seen from above and one side.", found,
                 level);
        if (!status) status = frame_drawing_description(drawing, name);
        snprintf(name, sizeof name, "%.90s, the frame as it stands", level);
        frame_text_add(page->into, "<article class=\"find\"><h3>");
        frame_text_add_xml(page->into, name);
        frame_text_add(page->into, "</h3>\n");
        if (!status) status = frame_site_drawing(page, drawing, name, 6);
        frame_text_add(page->into, "</article>\n");
    }
    frame_scene_give(&scene);
    frame_drawing_free(drawing);
    return status;
}

static int seen_before(const frame_site_page *page, size_t i) {
    for (size_t k = 0; k < i; k++)
        if (!strcmp(stick_at(page, k)->level, stick_at(page, i)->level)) return 1;
    return 0;
}

static frame_status one_level(frame_site_page *page, const char *level) {
    frame_status status = stands(page, level);
    if (!status)
        status = plan(page, level, "plan of posts, beams and joists", FRAME_STAGE_FOUNDATION, FRAME_STAGE_FLOOR);
    if (!status) status = plan(page, level, "plan of walls, cut above the sills", FRAME_STAGE_WALLS, FRAME_STAGE_WALLS);
    if (!status) status = plan(page, level, "plan of the roof", FRAME_STAGE_ROOF_BEAMS, FRAME_STAGE_ROOF);
    return status;
}

static frame_status walls(frame_site_page *page) {
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < page->inside->views.count && !status; i++) {
        const frame_framing_view *view = &FRAME_ITEM(frame_framing_view, page->inside->views, i);
        frame_text_add(page->into, "<article class=\"find\"><h3>");
        frame_text_add_xml(page->into, view->name);
        frame_text_add(page->into, "</h3>\n");
        status = frame_site_drawing(page, view->drawing, view->name, 4);
        frame_text_add(page->into, "</article>\n");
    }
    return status;
}

frame_status frame_site_drawings(frame_site_page *page) {
    const size_t count = page->answer->lists[FRAME_FRAMING_STICKS].count;
    const char *last = "";
    frame_status status = FRAME_OK;
    frame_packet_heading(page->into, "drawings", "Drawings and layout marks");
    for (size_t i = 0; i < count && !status; i++) {
        if (!strcmp(stick_at(page, i)->level, last)) continue;
        last = stick_at(page, i)->level;
        if (!seen_before(page, i)) status = one_level(page, last);
    }
    if (!status) status = walls(page);
    frame_text_add(page->into, "</section>\n");
    return status;
}
