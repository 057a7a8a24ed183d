/* Dowel bearing strength of one member of a joint. */
#ifndef FRAME_LIB_JOINT_BEARING_H
#define FRAME_LIB_JOINT_BEARING_H

#include <frame/joint.h>
#include <frame/working.h>

/* What is known of the member. prefix ("side_", "main_" or "") begins the names of its fields in messages. */
typedef struct frame_joint_member {
    const char *prefix;
    frame_joint_material material;
    frame_species species;
    double specific_gravity, bearing_psi, angle_deg, thickness_in;
} frame_joint_member;

/* What follows from it: F_e, and the angle of load to grain that counts for K_theta (0 where there is no grain). */
typedef struct frame_bearing {
    double strength_psi, angle_deg, gravity;
    frame_known known;
} frame_bearing;

/* Dowel bearing strength, NDS 12.3.3, for a fastener of this nominal diameter. */
frame_status frame_joint_bearing(const frame_joint_member *member, double nominal_in, frame_bearing_rounding rounding,
                                 frame_bearing *bearing, frame_working *w);

/* The specific gravity given, or that of the species. */
frame_status frame_joint_gravity(const char *prefix, frame_species species, double given, double *gravity,
                                 frame_known *known, frame_working *w);

#endif
