/* A description inside the library: its parts as they were given, by kind. */
#ifndef FRAME_LIB_BUILDING_SITE_H
#define FRAME_LIB_BUILDING_SITE_H

#include <frame/building.h>

#include "base/facts.h"
#include "base/memory.h"

typedef enum frame_site_part {
    FRAME_SITE_LEVELS,
    FRAME_SITE_WALLS,
    FRAME_SITE_OPENINGS,
    FRAME_SITE_FLOORS,
    FRAME_SITE_FLOOR_OPENINGS,
    FRAME_SITE_STAIRS,
    FRAME_SITE_BEAMS,
    FRAME_SITE_POSTS,
    FRAME_SITE_ROOFS,
    FRAME_SITE_SNOW_STEPS,
    FRAME_SITE_LOADS,
    FRAME_SITE_PARTS
} frame_site_part;

struct frame_site {
    frame_site_conditions conditions;
    frame_array parts[FRAME_SITE_PARTS]; /* structs as given, their texts and lists in the arena */
    frame_arena arena;
};

/* What a list of parts is called, what it is made of, and how one is checked. */
typedef struct frame_site_list {
    const char *plural;
    const frame_struct *facts;
    frame_status (*check)(const void *part);
} frame_site_list;
extern const frame_site_list frame_site_lists[FRAME_SITE_PARTS];

/* An empty description. */
frame_site *frame_site_blank(void);
/* Adds a part that was checked: a copy. */
frame_status frame_site_add(frame_site *site, frame_site_part kind, const void *part);
/* Refuses texts that are empty, too long for a name, or no UTF-8. */
enum { FRAME_SITE_NAME = 80 };
frame_status frame_site_check_texts(const frame_struct *facts, const void *object);
/* Copies the texts and lists that a struct of today's size points to into an arena. */
frame_status frame_struct_keep(const frame_struct *facts, void *object, frame_arena *arena);

/* The part at a place of its list, checked, with its defaults. */
#define FRAME_SITE_READ(site, KIND, kind, i, part, assumed) \
    frame_part_##kind##_read(&FRAME_ITEM(frame_part_##kind, (site)->parts[KIND], i), part, assumed)

/* Whether a number of this field may be written as the trade writes it: as a length, a slope or an angle. */
typedef enum frame_notation { FRAME_PLAIN, FRAME_LENGTH, FRAME_SLOPE, FRAME_ANGLE } frame_notation;
frame_notation frame_field_notation(const frame_field *field);

#endif
