/* Reading JSON (RFC 8259) into structs by the facts of their fields. No tree is built; nothing nests deeper than the
 * structs do, so no input can exhaust the stack. Numbers are read without locale, texts go into an arena. */
#ifndef FRAME_LIB_BUILDING_JSON_H
#define FRAME_LIB_BUILDING_JSON_H

#include "base/facts.h"
#include "base/memory.h"

typedef struct frame_json {
    const char *begin, *at;
    frame_arena *arena;
} frame_json;

/* Fails with the line at which reading stopped. */
frame_status frame_json_fail(const frame_json *json, const char *wanted);
/* Skips white space; tells whether the next character is this one, and steps over it if so. */
int frame_json_take(frame_json *json, char c);
/* The next character that is no white space, left where it is. */
char frame_json_peek(frame_json *json);
frame_status frame_json_text(frame_json *json, const char **text);
frame_status frame_json_number(frame_json *json, double *number);
/* One of true, false and null: 1, 0, -1. */
frame_status frame_json_name(frame_json *json, int *value);
/* Puts a path before the failure just recorded, whether or not it named a field. */
frame_status frame_json_within(const char *path);
/* Reads a value into a field of an object. */
frame_status frame_json_field(frame_json *json, const frame_struct *facts, const frame_field *field, void *object);
/* Finds the field a key names; its place is marked in seen, and refused when it was seen before. */
frame_status frame_json_key(const frame_struct *facts, const char *key, uint64_t *seen, const frame_field **field);
/* Reads an object {...} into a struct, which is set up first. */
frame_status frame_json_struct(frame_json *json, const frame_struct *facts, void *object);
/* Steps from item to item of a list: 1 where another begins, 0 at its end, -1 where neither is. */
int frame_json_more(frame_json *json, char end, size_t count);

#endif
