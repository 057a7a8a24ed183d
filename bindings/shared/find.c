/* Finding structs, calculations and handles by name or by their facts. */
#include <string.h>

#include "bound.h"

const bound_struct *bound_struct_of(const frame_struct *facts) {
    for (int i = 0; i < bound_struct_count; i++)
        if (bound_structs[i]->facts == facts) return bound_structs[i];
    return NULL;
}

const bound_calculation *bound_calculation_find(const char *name) {
    for (int i = 0; i < bound_calculation_count; i++)
        if (!strcmp(bound_calculations[i]->calculation->name, name)) return bound_calculations[i];
    return NULL;
}

const bound_handle *bound_handle_find(const char *name) {
    for (int i = 0; i < bound_handle_count; i++)
        if (!strcmp(bound_handles[i]->name, name)) return bound_handles[i];
    return NULL;
}

int bound_list_find(const bound_calculation *calculation, const char *plural) {
    if (!calculation) return -1;
    for (size_t i = 0; i < calculation->calculation->list_count; i++)
        if (!strcmp(calculation->calculation->lists[i].plural, plural)) return (int)i;
    return -1;
}

frame_status bound_unknown_field(const bound_struct *of, const char *name) {
    const char *near = frame_field_nearest(of->facts, name);
    char owner[96];
    size_t length = strlen(of->facts->name);
    if (length >= sizeof owner) length = sizeof owner - 1;
    memcpy(owner, of->facts->name, length);
    owner[length] = 0;
    if (length > 3 && !strcmp(owner + length - 3, "_in")) owner[length - 3] = 0;
    return frame_fail(FRAME_UNKNOWN_FIELD, name, "", near ? near : "", "%s: %s has no such field%s%s", name, owner,
                      near ? "; the nearest is " : "", near ? near : "");
}
