/* Names as people and grade stamps write them: capitals, spaces, hyphens, full stops, brackets, # and & make no
 * difference. */
#ifndef FRAME_LIB_MATERIAL_NAMES_H
#define FRAME_LIB_MATERIAL_NAMES_H

#include <frame/base.h>

/* One entry of a list of names; short_name may be "", spellings are further ones parted by "|". */
typedef struct frame_name {
    const char *name, *short_name, *spellings;
} frame_name;
typedef frame_name frame_name_at(size_t index);

/* Finds the place of a name. FRAME_UNKNOWN_NAME, naming the field, the nearest name and all of them. */
frame_status frame_name_find(const char *field, const char *text, frame_name_at *name_at, size_t count, size_t *place);

#endif
