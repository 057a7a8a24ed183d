/* Sticks seen from a direction, far away: their edges, less what others hide. */
#ifndef FRAME_LIB_TIMBER_SCENE_H
#define FRAME_LIB_TIMBER_SCENE_H

#include <frame/drawing.h>

#include "base/memory.h"
#include "timber/stick.h"

/* Everything is kept as the viewer sees it: x to the right, y up, z towards the eye. */
typedef struct frame_scene {
    frame_placement eye;
    frame_array edges, cells, planes;
} frame_scene;

/* turn_deg: from which side, counterclockwise from the world's x; rise_deg: how high above the level, 90 for straight
 * down (then the world's y is up the page, whatever the turn). */
void frame_scene_begin(frame_scene *scene, double turn_deg, double rise_deg);
void frame_scene_give(frame_scene *scene);
frame_status frame_scene_add(frame_scene *scene, const frame_stick *stick);
/* Draws what is seen of every edge. */
frame_status frame_scene_draw(const frame_scene *scene, frame_drawing *drawing);
/* A place of the world as the viewer sees it. */
static inline vec3 frame_scene_see(const frame_scene *scene, vec3 point) {
    return frame_to_stick_direction(&scene->eye, point);
}

#endif
