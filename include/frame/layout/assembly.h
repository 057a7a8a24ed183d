/** @file layout/assembly.h
 * Frames put together, and their lists for the saw.
 */
#ifndef FRAME_LAYOUT_ASSEMBLY_H
#define FRAME_LAYOUT_ASSEMBLY_H

#include <frame/base.h>
#include <frame/code.h>
#include <frame/marks.h>
#include <frame/material.h>
#include <frame/timber.h>
#include <frame/layout/passages.h>
#include <frame/layout/pieces.h>
#include <frame/layout/platforms.h>
#include <frame/layout/stairs.h>
#include <frame/layout/walls.h>

FRAME_BEGIN

/* ---- frames put together ---- */

/** A frame put together of walls, floors, decks, stairs and sticks. Each part is first turned about its own origin,
 * counterclockwise seen from above, and then moved: a point x, y, z of it comes to lie at
 *
 *   x_in + x cos(turn) - y sin(turn),   y_in + x sin(turn) + y cos(turn),   z_in + z.
 *
 * So a wall along the side of a building from one corner to the next, corners counterclockwise, is turned by that side's
 * direction and moved to its first corner: its outside then looks outward. Walls that butt against others begin that wall's
 * depth farther on. A floor's joists run along its x: turn it by 90 degrees for joists along the building's y, and move it
 * to the corner that is then at its right. Parts are copied: they may be freed once added. */
typedef struct frame_assembly frame_assembly;

/** A piece of an assembly, where it stands. */
typedef struct frame_assembly_piece {
    uint32_t struct_size, struct_id;
    frame_piece_kind kind;  /**< What it is. */
    frame_size size;        /**< Nominal size; not given for a section of no such size. */
    double thickness_in;    /**< Thickness of its section. */
    double depth_in;        /**< Depth of its section. */
    double length_in;       /**< Length over all, long point to long point. */
    double short_point_in;  /**< Short point to short point. */
    double start_x_in;      /**< Where its axis starts, along x. */
    double start_y_in;      /**< Along y. */
    double start_z_in;      /**< Along z. */
    double end_x_in;        /**< Where its axis ends, along x. */
    double end_y_in;        /**< Along y. */
    double end_z_in;        /**< Along z. */
    double crown_x;         /**< Direction of its crown, along x. */
    double crown_y;         /**< Along y. */
    double crown_z;         /**< Along z. */
    double start_deg;       /**< Angle of the cut at its start from square; not given for a stick that was added as one: see the stick. */
    double end_deg;         /**< Angle of the cut at its end from square; not given for a stick that was added as one. */
    const char *name;       /**< Name of the piece. */
    const char *section;    /**< Its section as written. */
    const char *of;         /**< Name of the part it belongs to. */
    int32_t part;           /**< Number of that part, from 1, in the order they were added. */
    int32_t spare;
} frame_assembly_piece;

/** Makes an assembly of nothing yet. Free it with frame_assembly_free. */
FRAME_API frame_status frame_assembly_new(frame_assembly **assembly);
/** Frees an assembly. NULL is allowed. */
FRAME_API void frame_assembly_free(frame_assembly *assembly);
/** Adds a wall. FRAME_OUT_OF_RANGE for places beyond 12,000 in, or turns beyond 720 degrees. */
FRAME_API frame_status frame_assembly_add_wall(frame_assembly *assembly, const frame_wall *wall, double x_in, double y_in,
                                               double z_in, double turn_deg);
/** Adds a floor. */
FRAME_API frame_status frame_assembly_add_floor(frame_assembly *assembly, const frame_floor *floor, double x_in,
                                                double y_in, double z_in, double turn_deg);
/** Adds a deck. */
FRAME_API frame_status frame_assembly_add_deck(frame_assembly *assembly, const frame_deck *deck, double x_in, double y_in,
                                               double z_in, double turn_deg);
/** Adds a stair. */
FRAME_API frame_status frame_assembly_add_stairs(frame_assembly *assembly, const frame_stairs *stairs, double x_in,
                                                 double y_in, double z_in, double turn_deg);
/** Adds a stick of any room, such as a rafter; kind tells what it is, and so what the code says of holes in it. */
FRAME_API frame_status frame_assembly_add_stick(frame_assembly *assembly, const frame_stick *stick, frame_piece_kind kind,
                                                double x_in, double y_in, double z_in, double turn_deg);
/** Counts the pieces of an assembly. */
FRAME_API size_t frame_assembly_piece_count(const frame_assembly *assembly);
/** As frame_assembly_piece_at, for an item of a stated size. */
FRAME_API frame_status frame_assembly_piece_at_sized(const frame_assembly *assembly, size_t index,
                                                     frame_assembly_piece *item, size_t item_size);
/** Gives a piece by its place in the list. Its texts live as long as the assembly. */
static inline frame_status frame_assembly_piece_at(const frame_assembly *assembly, size_t index,
                                                   frame_assembly_piece *item) {
    return frame_assembly_piece_at_sized(assembly, index, item, sizeof *item);
}
/** Gives a piece of an assembly as a stick, by its place in the list. Free it with frame_stick_free. */
FRAME_API frame_status frame_assembly_stick(const frame_assembly *assembly, size_t index, frame_stick **stick);
/** As frame_assembly_fit, for an answer of a stated size. */
FRAME_API frame_status frame_assembly_fit_sized(const frame_assembly *assembly, frame_fit_out *out, size_t out_size);
/** Proves that no two pieces of an assembly share wood. */
static inline frame_status frame_assembly_fit(const frame_assembly *assembly, frame_fit_out *out) {
    return frame_assembly_fit_sized(assembly, out, sizeof *out);
}
/** The pieces of an assembly gathered for the saw: all of one shape in one gang, however they stand in the building. Made by
 * frame_assembly_saw_list, freed by frame_saw_list_free. */
typedef struct frame_saw_list frame_saw_list;

/** Pieces of one shape, to be cut in one gang. */
typedef struct frame_saw_list_gang {
    uint32_t struct_size, struct_id;
    frame_piece_kind kind; /**< What they are. */
    frame_size size;       /**< Nominal size; not given for a section of no such size. */
    double thickness_in;   /**< Thickness of their section. */
    double depth_in;       /**< Depth of their section. */
    double length_in;      /**< Length over all, long point to long point. */
    double short_point_in; /**< Short point to short point. */
    int32_t count;         /**< How many. */
    int32_t first;         /**< Place among the assembly's pieces of the first of them: its stick has the marks to strike and the saw's settings. */
    int32_t opposite;      /**< Number of the gang of their opposite hands, from 1; 0 for none. */
    int32_t spare;
    const char *name;      /**< What they are called. */
    const char *section;   /**< Their section as written. */
} frame_saw_list_gang;

/** A piece as it is called for, in the order they go up. */
typedef struct frame_saw_list_call {
    uint32_t struct_size, struct_id;
    int32_t piece;  /**< Its place among the assembly's pieces. */
    int32_t gang;   /**< Number of its gang, from 1. */
    int32_t number; /**< Its number within the gang, from 1. */
    int32_t spare;
} frame_saw_list_call;

/** Gathers the pieces of an assembly for the saw. Pieces belong together when one can be turned to lie where the other does,
 * corner by corner within 1/128 in; those with a crown to keep up (joists, rafters, beams, headers) are only turned end for
 * end, never over. Gangs that are each other's mirror image name one another. Free it with frame_saw_list_free. */
FRAME_API frame_status frame_assembly_saw_list(const frame_assembly *assembly, frame_saw_list **saw_list);
/** Frees a saw list. NULL is allowed. */
FRAME_API void frame_saw_list_free(frame_saw_list *saw_list);
/** Counts the gangs. */
FRAME_API size_t frame_saw_list_gang_count(const frame_saw_list *saw_list);
/** As frame_saw_list_gang_at, for an item of a stated size. */
FRAME_API frame_status frame_saw_list_gang_at_sized(const frame_saw_list *saw_list, size_t index, frame_saw_list_gang *item,
                                                    size_t item_size);
/** Gives a gang by its place in the list: in the order their first pieces go up. Its texts live as long as the saw list. */
static inline frame_status frame_saw_list_gang_at(const frame_saw_list *saw_list, size_t index, frame_saw_list_gang *item) {
    return frame_saw_list_gang_at_sized(saw_list, index, item, sizeof *item);
}
/** Counts the calls: the assembly's pieces. */
FRAME_API size_t frame_saw_list_call_count(const frame_saw_list *saw_list);
/** As frame_saw_list_call_at, for an item of a stated size. */
FRAME_API frame_status frame_saw_list_call_at_sized(const frame_saw_list *saw_list, size_t index, frame_saw_list_call *item,
                                                    size_t item_size);
/** Gives a call by its place in the list. */
static inline frame_status frame_saw_list_call_at(const frame_saw_list *saw_list, size_t index, frame_saw_list_call *item) {
    return frame_saw_list_call_at_sized(saw_list, index, item, sizeof *item);
}
/** Finds which members of an assembly a pipe, duct or vent meets, along the assembly's own axes: of a roof's rafters too
 * (IRC R802.7.1). What would have to be cut is boxed out with headers as in a wall or a floor. */
FRAME_API frame_status frame_assembly_passage(const frame_assembly *assembly, const frame_passage_in *in,
                                              frame_passage **passage);

FRAME_END

#endif
