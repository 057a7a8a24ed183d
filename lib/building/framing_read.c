/* The parts of a description, checked, in the order of their names, so that the order of adding them tells nothing; and
 * what they say of one another found. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/error.h"
#include "building/framing.h"
#include "building_facts.h"

static int by_name(const void *a, const void *b) {
    const frame_part_level *const *one = a, *const *two = b;
    return strcmp((*one)->name, (*two)->name);
}

/* Pointers to the parts of a kind, by name; each begins with its name. */
static frame_status in_order(const frame_framing_job *job, frame_site_part kind, const void ***order) {
    const frame_array *parts = &job->site->parts[kind];
    const void **made = frame_take(sizeof *made * (parts->count + 1));
    if (!made) return FRAME_NO_MEMORY;
    for (size_t i = 0; i < parts->count; i++) made[i] = (const char *)parts->items + i * parts->item_size;
    if (parts->count) qsort(made, parts->count, sizeof *made, by_name);
    *order = made;
    return FRAME_OK;
}

#define READER(kind, KIND, list, number)                                                                              \
    static frame_status read_##list(frame_framing_job *job) {                                                         \
        const void **order;                                                                                           \
        frame_status status = in_order(job, KIND, &order);                                                            \
        if (status) return status;                                                                                    \
        job->number = job->site->parts[KIND].count;                                                                   \
        job->list = frame_arena_take(&job->arena, (job->number + 1) * sizeof *job->list);                             \
        if (!job->list) status = FRAME_NO_MEMORY;                                                                     \
        for (size_t i = 0; i < job->number && !status; i++) {                                                         \
            uint64_t assumed = 0;                                                                                     \
            status = frame_part_##kind##_read(order[i], &job->list[i], &assumed);                                     \
            if (!status) status = frame_framing_assumed(job, job->list[i].name, &frame_part_##kind##_facts, assumed); \
        }                                                                                                             \
        frame_give(order);                                                                                            \
        return status;                                                                                                \
    }
READER(level, FRAME_SITE_LEVELS, levels, level_count)
READER(wall, FRAME_SITE_WALLS, walls, wall_count)
READER(opening, FRAME_SITE_OPENINGS, openings, opening_count)
READER(floor, FRAME_SITE_FLOORS, floors, floor_count)
READER(floor_opening, FRAME_SITE_FLOOR_OPENINGS, floor_openings, floor_opening_count)
READER(stair, FRAME_SITE_STAIRS, stairs, stair_count)
READER(beam, FRAME_SITE_BEAMS, beams, beam_count)
READER(post, FRAME_SITE_POSTS, posts, post_count)
READER(snow_step, FRAME_SITE_SNOW_STEPS, snow_steps, snow_step_count)
READER(load, FRAME_SITE_LOADS, loads, load_count)

static frame_status read_roofs(frame_framing_job *job) {
    const void **order;
    frame_status status = in_order(job, FRAME_SITE_ROOFS, &order);
    if (status) return status;
    job->roof_count = job->site->parts[FRAME_SITE_ROOFS].count;
    job->roofs = frame_arena_take(&job->arena, (job->roof_count + 1) * sizeof *job->roofs);
    if (!job->roofs) status = FRAME_NO_MEMORY;
    if (job->roofs) memset(job->roofs, 0, (job->roof_count + 1) * sizeof *job->roofs);
    for (size_t i = 0; i < job->roof_count && !status; i++) {
        uint64_t assumed = 0;
        status = frame_part_roof_read(order[i], &job->roofs[i].roof, &assumed);
        if (!status) status = frame_framing_assumed(job, job->roofs[i].roof.name, &frame_part_roof_facts, assumed);
    }
    frame_give(order);
    return status;
}

/* The level or wall of a name. The path names the part by its kind and name. */
static frame_status find(const char *kind, const char *part, const char *field, const char *name, const void *list,
                         size_t count, size_t size, size_t *found) {
    for (size_t i = 0; i < count; i++) {
        const frame_part_level *item = (const void *)((const char *)list + i * size);
        if (strcmp(item->name, name) != 0) continue;
        *found = i;
        return FRAME_OK;
    }
    char path[160];
    snprintf(path, sizeof path, "%s %.100s", kind, part);
    return frame_fail(FRAME_UNKNOWN_NAME, field, name, "the name of a part that is described",
                      "%s: %s \"%s\" is none of those described", path, field, name);
}

/* Of each part of a list the place of the part that it names in a field. */
#define NAMED(list, count, found, kind, field_name, field, in, in_count)                                   \
    job->found = frame_arena_take(&job->arena, (job->count + 1) * sizeof(size_t));                         \
    if (!job->found) return FRAME_NO_MEMORY;                                                               \
    for (size_t i = 0; i < job->count; i++) {                                                              \
        const frame_status status = find(kind, job->list[i].name, field_name, job->list[i].field, job->in, \
                                         job->in_count, sizeof *job->in, &job->found[i]);                  \
        if (status) return status;                                                                         \
    }
#define LEVELS(list, count, levels_of, kind) NAMED(list, count, levels_of, kind, "level", level, levels, level_count)

static frame_status find_levels(frame_framing_job *job) {
    LEVELS(walls, wall_count, level_of_wall, "wall")
    LEVELS(floors, floor_count, level_of_floor, "floor")
    LEVELS(beams, beam_count, level_of_beam, "beam")
    LEVELS(posts, post_count, level_of_post, "post")
    LEVELS(loads, load_count, level_of_load, "load")
    for (size_t i = 0; i < job->roof_count; i++) {
        const frame_status status = find("roof", job->roofs[i].roof.name, "level", job->roofs[i].roof.level,
                                         job->levels, job->level_count, sizeof *job->levels, &job->roofs[i].level);
        if (status) return status;
    }
    NAMED(openings, opening_count, wall_of_opening, "opening", "wall", wall, walls, wall_count)
    NAMED(floor_openings, floor_opening_count, floor_of_opening, "floor opening", "floor", floor, floors, floor_count)
    NAMED(snow_steps, snow_step_count, roof_of_step, "snow step", "roof", roof, roofs, roof_count)
    NAMED(stairs, stair_count, opening_of_stair, "stair", "opening", opening, floor_openings, floor_opening_count)
    return FRAME_OK;
}

/* Levels counted from the lowest up; those of one height have one rank. */
static frame_status rank_levels(frame_framing_job *job) {
    job->level_rank = frame_arena_take(&job->arena, (job->level_count + 1) * sizeof(size_t));
    if (!job->level_rank) return FRAME_NO_MEMORY;
    for (size_t i = 0; i < job->level_count; i++) {
        job->level_rank[i] = 0;
        for (size_t j = 0; j < job->level_count; j++) {
            int first = job->levels[j].base_in < job->levels[i].base_in;
            for (size_t k = 0; k < j && first; k++) first = job->levels[k].base_in != job->levels[j].base_in;
            job->level_rank[i] += (size_t)first;
        }
    }
    return FRAME_OK;
}

static frame_status refuse_lines(const frame_framing_job *job) {
    if (!(job->wall_count + job->floor_count + job->beam_count + job->post_count + job->roof_count))
        return frame_fail(FRAME_REQUIRED, "walls", "", "at least one wall, floor, beam, post or roof",
                          "walls: nothing is described; give at least one wall, floor, beam, post or roof");
    for (size_t i = 0; i < job->wall_count; i++)
        if (job->walls[i].from_x_in == job->walls[i].to_x_in && job->walls[i].from_y_in == job->walls[i].to_y_in)
            return frame_fail(FRAME_IMPOSSIBLE, "to_x_in", "", "an end apart from the start",
                              "wall %s: it ends where it starts", job->walls[i].name);
    for (size_t i = 0; i < job->beam_count; i++)
        if (job->beams[i].from_x_in == job->beams[i].to_x_in && job->beams[i].from_y_in == job->beams[i].to_y_in)
            return frame_fail(FRAME_IMPOSSIBLE, "to_x_in", "", "an end apart from the start",
                              "beam %s: it ends where it starts", job->beams[i].name);
    for (size_t i = 0; i < job->floor_count; i++)
        if (job->floors[i].from_x_in == job->floors[i].to_x_in || job->floors[i].from_y_in == job->floors[i].to_y_in)
            return frame_fail(FRAME_IMPOSSIBLE, "to_x_in", "", "a corner across", "floor %s: it has no area",
                              job->floors[i].name);
    return FRAME_OK;
}

/* A site is given, or text to read one from. */
static frame_status find_site(frame_framing_job *job) {
    if (job->in->site && job->in->description)
        return frame_fail(FRAME_CONFLICT, "description", "", "left out where site is given",
                          "description: a site is given too; give one of them");
    if (job->in->description) {
        const frame_status status = frame_site_from_json(job->in->description, &job->own_site);
        job->site = job->own_site;
        return status;
    }
    job->site = job->in->site;
    if (job->site) return FRAME_OK;
    return frame_fail(FRAME_REQUIRED, "site", "", "a site, or a description as JSON",
                      "site: not given; give a site, or a description as JSON");
}

frame_status frame_framing_read(frame_framing_job *job) {
    uint64_t assumed = 0;
    frame_status status = find_site(job);
    if (!status) status = frame_site_conditions_read(&job->site->conditions, &job->conditions, &assumed);
    if (!status) status = frame_framing_assumed(job, job->conditions.name, &frame_site_conditions_facts, assumed);
    if (!status) status = read_levels(job);
    if (!status) status = read_walls(job);
    if (!status) status = read_openings(job);
    if (!status) status = read_floors(job);
    if (!status) status = read_floor_openings(job);
    if (!status) status = read_stairs(job);
    if (!status) status = read_beams(job);
    if (!status) status = read_posts(job);
    if (!status) status = read_snow_steps(job);
    if (!status) status = read_loads(job);
    if (!status) status = read_roofs(job);
    if (!status) status = find_levels(job);
    if (!status) status = rank_levels(job);
    return status ? status : refuse_lines(job);
}

void frame_framing_give(frame_framing_job *job) {
    for (size_t i = 0; i < job->bearers.count; i++) frame_array_give(&FRAME_BEARER(job, i)->points);
    frame_array_give(&job->bearers);
    frame_array_give(&job->doubled);
    frame_array_give(&job->chosen_lines);
    for (size_t i = 0; job->roofs && i < job->roof_count; i++) frame_roof_solve_free(job->roofs[i].solved);
    frame_site_free(job->own_site);
    frame_text_free(job->text);
    frame_arena_give(&job->arena);
}
