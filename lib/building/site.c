/* A description of buildings: its parts are kept as they were given, in lists by kind. */
#include "building/site.h"

#include <string.h>

#include "base/error.h"
#include "base/utf8.h"
#include "building_facts.h"

#define CHECK(kind)                                             \
    static frame_status check_##kind(const void *part) {        \
        frame_part_##kind read;                                 \
        uint64_t assumed = 0;                                   \
        return frame_part_##kind##_read(part, &read, &assumed); \
    }
CHECK(level)
CHECK(wall)
CHECK(opening)
CHECK(floor)
CHECK(floor_opening)
CHECK(stair)
CHECK(beam)
CHECK(post)
CHECK(roof)
CHECK(snow_step)
CHECK(load)

const frame_site_list frame_site_lists[FRAME_SITE_PARTS] = {
    {"levels", &frame_part_level_facts, check_level},
    {"walls", &frame_part_wall_facts, check_wall},
    {"openings", &frame_part_opening_facts, check_opening},
    {"floors", &frame_part_floor_facts, check_floor},
    {"floor_openings", &frame_part_floor_opening_facts, check_floor_opening},
    {"stairs", &frame_part_stair_facts, check_stair},
    {"beams", &frame_part_beam_facts, check_beam},
    {"posts", &frame_part_post_facts, check_post},
    {"roofs", &frame_part_roof_facts, check_roof},
    {"snow_steps", &frame_part_snow_step_facts, check_snow_step},
    {"loads", &frame_part_load_facts, check_load},
};

frame_site *frame_site_blank(void) {
    frame_site *made = frame_take_zeroed(1, sizeof *made);
    if (!made) return NULL;
    frame_site_conditions_init(&made->conditions);
    for (int kind = 0; kind < FRAME_SITE_PARTS; kind++)
        made->parts[kind].item_size = frame_site_lists[kind].facts->size;
    return made;
}

void frame_site_free(frame_site *site) {
    if (!site) return;
    for (int kind = 0; kind < FRAME_SITE_PARTS; kind++) frame_array_give(&site->parts[kind]);
    frame_arena_give(&site->arena);
    frame_give(site);
}

/* Names stand in pages, drawings, lists and models: each of them must be able to hold them. */
frame_status frame_site_check_texts(const frame_struct *facts, const void *object) {
    for (size_t i = 0; i < facts->field_count; i++) {
        const frame_field *field = &facts->fields[i];
        if (field->kind != FRAME_FIELD_TEXT) continue;
        const char *text = *(const char *const *)(const void *)((const char *)object + field->offset);
        if (!text) continue;
        if (!*text || strlen(text) > FRAME_SITE_NAME)
            return frame_fail(FRAME_OUT_OF_RANGE, field->name, text, "1 to 80 bytes",
                              "%s: a name has 1 to 80 bytes of UTF-8, this one has %zu", field->name, strlen(text));
        if (!frame_utf8_is_plain(text, NULL))
            return frame_fail(FRAME_UNREADABLE, field->name, text, "UTF-8 without control characters",
                              "%s: \"%s\" is no UTF-8 text, or has a control character in it", field->name, text);
    }
    return FRAME_OK;
}

frame_status frame_site_new(const frame_site_conditions *in, frame_site **site) {
    frame_site_conditions read;
    uint64_t assumed = 0;
    if (!site) return frame_fail(FRAME_REQUIRED, "site", "NULL", "a place for the site", "site: NULL is no place");
    frame_status status = frame_site_conditions_read(in, &read, &assumed);
    if (!status) status = frame_site_check_texts(&frame_site_conditions_facts, &read);
    if (status) return status;
    frame_site *made = frame_site_blank();
    if (!made) return FRAME_NO_MEMORY;
    status = frame_struct_widen(&frame_site_conditions_facts, in, &made->conditions);
    if (!status) status = frame_struct_keep(&frame_site_conditions_facts, &made->conditions, &made->arena);
    if (status)
        frame_site_free(made);
    else
        *site = made;
    return status;
}

/* Names tell parts of a kind apart: each begins with its name. */
static const char *name_of(const frame_array *parts, size_t i) {
    const frame_part_level *part = (const void *)((const char *)parts->items + i * parts->item_size);
    return part->name;
}

static frame_status refuse_twin(const frame_site *site, frame_site_part kind, const char *name) {
    for (size_t i = 0; i < site->parts[kind].count; i++)
        if (!strcmp(name_of(&site->parts[kind], i), name))
            return frame_fail(FRAME_CONFLICT, "name", name, "a name of its own", "name: two %s are named \"%s\"",
                              frame_site_lists[kind].plural, name);
    return FRAME_OK;
}

frame_status frame_site_add(frame_site *site, frame_site_part kind, const void *part) {
    const frame_struct *facts = frame_site_lists[kind].facts;
    frame_array *parts = &site->parts[kind];
    frame_status status = frame_site_lists[kind].check(part);
    if (!status) status = refuse_twin(site, kind, ((const frame_part_level *)part)->name);
    if (status) return status;
    void *kept = frame_array_push(parts, NULL);
    if (!kept) return FRAME_NO_MEMORY;
    status = frame_struct_widen(facts, part, kept);
    if (!status) status = frame_site_check_texts(facts, kept);
    if (!status) status = frame_struct_keep(facts, kept, &site->arena);
    if (status) parts->count--;
    return status;
}

static frame_status add(frame_site *site, frame_site_part kind, const void *part) {
    if (!site) return frame_fail(FRAME_REQUIRED, "site", "NULL", "a site", "site: NULL is no site");
    return frame_site_add(site, kind, part);
}

frame_status frame_site_level(frame_site *site, const frame_part_level *in) {
    return add(site, FRAME_SITE_LEVELS, in);
}
frame_status frame_site_wall(frame_site *site, const frame_part_wall *in) {
    return add(site, FRAME_SITE_WALLS, in);
}
frame_status frame_site_opening(frame_site *site, const frame_part_opening *in) {
    return add(site, FRAME_SITE_OPENINGS, in);
}
frame_status frame_site_floor(frame_site *site, const frame_part_floor *in) {
    return add(site, FRAME_SITE_FLOORS, in);
}
frame_status frame_site_floor_opening(frame_site *site, const frame_part_floor_opening *in) {
    return add(site, FRAME_SITE_FLOOR_OPENINGS, in);
}
frame_status frame_site_stair(frame_site *site, const frame_part_stair *in) {
    return add(site, FRAME_SITE_STAIRS, in);
}
frame_status frame_site_beam(frame_site *site, const frame_part_beam *in) {
    return add(site, FRAME_SITE_BEAMS, in);
}
frame_status frame_site_post(frame_site *site, const frame_part_post *in) {
    return add(site, FRAME_SITE_POSTS, in);
}
frame_status frame_site_roof(frame_site *site, const frame_part_roof *in) {
    return add(site, FRAME_SITE_ROOFS, in);
}
frame_status frame_site_snow_step(frame_site *site, const frame_part_snow_step *in) {
    return add(site, FRAME_SITE_SNOW_STEPS, in);
}
frame_status frame_site_load(frame_site *site, const frame_part_load *in) {
    return add(site, FRAME_SITE_LOADS, in);
}
