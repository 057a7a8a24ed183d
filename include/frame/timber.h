/** @file timber.h
 * A stick: a rectangular prism along an axis in space, cut by planes and notches. From that, and only from that, come
 * its lengths by name, the mitre and bevel a saw is set to, the marks to strike, the solid, and how two sticks fit.
 *
 * The stick's own axes: x along the axis from the start to the end, y across the thickness towards the left face, z
 * along the depth towards the crown (the top face). Left and right are as seen from the start, crown up; of a rafter
 * the start is the eave. y is 0 in the middle of the thickness; where z is 0 says axis_at.
 *
 * A plane takes wood away on the side its waste direction points to. A cut is one plane. A notch is several planes and
 * takes away what lies on the waste side of all of them: a birdsmouth is a seat and a heel cut. An end that no end cut
 * (square, plumb, level, cheek, mitre) has been made at stays square where the axis was given to start or end.
 *
 * What is nearer than 1e-9 in counts as touching.
 */
#ifndef FRAME_TIMBER_H
#define FRAME_TIMBER_H

#include <frame/base.h>

FRAME_BEGIN

/** A stick. Opaque; made by frame_stick_new, freed by frame_stick_free. Any number of threads may read one at once;
 * none may while it is being cut. */
typedef struct frame_stick frame_stick;

/** A side face of a stick; left and right as seen from the start, crown up. */
typedef int32_t frame_stick_face;
enum frame_stick_face_values {
    FRAME_STICK_TOP = 1,    /**< "top". The face the crown is on. */
    FRAME_STICK_BOTTOM = 2, /**< "bottom". The face opposite to the crown. */
    FRAME_STICK_LEFT = 3,   /**< "left". The face on the left, seen from the start with the crown up. */
    FRAME_STICK_RIGHT = 4   /**< "right". The face on the right, seen from the start with the crown up. */
};

/** One of the two ends of a stick. */
typedef int32_t frame_stick_end;
enum frame_stick_end_values {
    FRAME_STICK_START = 1, /**< "start". The end the axis starts from; of a rafter the eave. */
    FRAME_STICK_END = 2    /**< "end". The end the axis runs to; of a rafter the ridge. */
};

/** One of the four long edges of a stick. */
typedef int32_t frame_stick_edge;
enum frame_stick_edge_values {
    FRAME_STICK_TOP_LEFT = 1,    /**< "top left". Between the top and the left face. */
    FRAME_STICK_TOP_RIGHT = 2,   /**< "top right". Between the top and the right face. */
    FRAME_STICK_BOTTOM_LEFT = 3, /**< "bottom left". Between the bottom and the left face. */
    FRAME_STICK_BOTTOM_RIGHT = 4 /**< "bottom right". Between the bottom and the right face. */
};

/** What a plane is to the stick it cuts. The first five close an end; the others leave the ends as they are. */
typedef int32_t frame_stick_role;
enum frame_stick_role_values {
    FRAME_STICK_SQUARE_END = 1, /**< "square end" | "square cut". An end cut square to the axis. */
    FRAME_STICK_PLUMB_CUT = 2,  /**< "plumb cut" | "plumb". An end cut that stands upright in the building. */
    FRAME_STICK_LEVEL_CUT = 3,  /**< "level cut" | "level". An end cut that lies level in the building. */
    FRAME_STICK_CHEEK_CUT = 4,  /**< "cheek cut" | "side cut" | "cheek". An end cut that lies against another stick. */
    FRAME_STICK_MITRE_CUT = 5, /**< "mitre cut" | "miter cut". An end cut that halves an angle, or any other end cut. */
    FRAME_STICK_BACKING = 6,   /**< "backing". A bevel along the top of a hip that brings it into the roof plane. */
    FRAME_STICK_TAPER = 7,     /**< "taper" | "rip". A rip along the stick, parallel to a face or tapering. */
    FRAME_STICK_SEAT = 8,      /**< "seat" | "seat cut". The level face of a birdsmouth, which bears on the plate. */
    FRAME_STICK_HEEL_CUT = 9,  /**< "heel cut" | "heel". The plumb face of a birdsmouth, outside the plate. */
    FRAME_STICK_SHOULDER = 10, /**< "shoulder". The side of a lap, notch or housing. */
    FRAME_STICK_LAP_FACE = 11  /**< "lap face" | "notch bottom". The bottom of a lap, notch or housing. */
};

/** What a notch is. */
typedef int32_t frame_stick_notch_kind;
enum frame_stick_notch_kind_values {
    FRAME_STICK_BIRDSMOUTH = 1, /**< "birdsmouth" | "bird's mouth". A seat and a heel cut over a plate. */
    FRAME_STICK_LAP = 2,        /**< "lap" | "half lap". Wood taken off so that another stick lies in its place. */
    FRAME_STICK_HOUSING = 3,    /**< "housing" | "dado". A trench that takes the end of another stick. */
    FRAME_STICK_NOTCH = 4       /**< "notch". Any other notch. */
};

/** Whose axes numbers are given in. */
typedef int32_t frame_stick_axes;
enum frame_stick_axes_values {
    FRAME_STICK_AXES_STICK = 1, /**< "stick". The stick's own: along, to the left, to the crown. */
    FRAME_STICK_AXES_WORLD = 2  /**< "world". The building's. */
};

/** Where in the section of a stick its axis runs. It is always in the middle of the thickness. */
typedef int32_t frame_stick_axis_at;
enum frame_stick_axis_at_values {
    FRAME_STICK_AXIS_CENTRE = 1, /**< "centre" | "center". In the middle of the depth. */
    FRAME_STICK_AXIS_TOP = 2,    /**< "top". In the top face, as a rafter is placed by the roof plane. */
    FRAME_STICK_AXIS_BOTTOM = 3  /**< "bottom". In the bottom face. */
};

/** A plane that cuts a stick: a point on it, and the direction in which it takes wood away. */
typedef struct frame_stick_plane {
    uint32_t struct_size, struct_id;
    frame_stick_role role; /**< required. What the plane is to the stick. */
    frame_stick_axes axes; /**< stick. Whose axes the point and the direction are given in. */
    int32_t notch;         /**< optional : 1..100. Number of the notch it bounds; without one it is a cut of its own. */
    frame_stick_notch_kind notch_kind; /**< optional. What that notch is; the first plane of the notch says it. */
    double point_x_in;                 /**< required : -1e6..1e6. A point on the plane, along x. */
    double point_y_in;                 /**< required : -1e6..1e6. The point along y. */
    double point_z_in;                 /**< required : -1e6..1e6. The point along z. */
    double waste_x;    /**< required : -1e6..1e6. Direction square to the plane into the waste, its part along x; any
                          length but zero. */
    double waste_y;    /**< required : -1e6..1e6. The direction's part along y. */
    double waste_z;    /**< required : -1e6..1e6. The direction's part along z. */
    const char *label; /**< optional. Words for its marks, in place of the role's ("tail plumb cut"). */
} frame_stick_plane;
/** Sets up a plane: every field not given. */
FRAME_ELEMENT(stick_plane);

/** A stick: its section, where it lies, and the planes that cut it. */
typedef struct frame_stick_in {
    uint32_t struct_size, struct_id;
    const char *name;    /**< optional. Name of the piece ("jack 3 left"). */
    const char *section; /**< optional. Name of the section ("2x10"), for the drawing's title. */
    double thickness_in; /**< required : >0..60. Thickness, from the right face to the left. */
    double depth_in;     /**< required : >0..120. Depth, from the bottom face to the top. */
    double length_in;  /**< optional : >0..1200. Length of the axis along the world's x, where no end point is given. */
    double start_x_in; /**< 0 : -1e6..1e6. Where the axis starts, in the world. */
    double start_y_in; /**< 0 : -1e6..1e6. The start along the world's y. */
    double start_z_in; /**< 0 : -1e6..1e6. The start along the world's z. */
    double end_x_in;   /**< optional : -1e6..1e6. Where the axis ends, in the world. */
    double end_y_in;   /**< optional : -1e6..1e6. The end along the world's y. */
    double end_z_in;   /**< optional : -1e6..1e6. The end along the world's z. */
    double crown_x;    /**< 0 : -1e6..1e6. Direction the crown points to; what lies along the axis is left out. */
    double crown_y;    /**< 0 : -1e6..1e6. The crown's direction along the world's y. */
    double crown_z;    /**< 1 : -1e6..1e6. The crown's direction along the world's z, which points up. */
    frame_stick_axis_at axis_at;  /**< centre. Where in the section the axis runs. */
    frame_stick_end measure_from; /**< start. The end whose long point the marks are measured from. */
    int32_t count;                /**< 1 : 1..100000. How many alike, for the drawing's title. */
    int32_t spare;
    const frame_stick_plane *planes; /**< optional. The cuts and notches, in the order they are made. */
    size_t plane_count;              /**< count : 0..200. */
} frame_stick_in;
/** Sets up a stick's facts: every field not given. */
FRAME_ELEMENT(stick_in);

/** Makes a stick and cuts it by the planes listed. Free it with frame_stick_free. FRAME_IMPOSSIBLE when nothing is left
 * of it or notches cut it apart, FRAME_CONFLICT when it has no axis or the crown points along it, or an end cut runs
 * along the stick; FRAME_TOO_LARGE past 200 planes, or where more than 60 planes bound one convex part of it. */
FRAME_API frame_status frame_stick_new(const frame_stick_in *in, frame_stick **stick);
/** Frees a stick. NULL is allowed. */
FRAME_API void frame_stick_free(frame_stick *stick);
/** Cuts a stick by one more plane (its notch number is not looked at). A cut that fails leaves the stick as it was. */
FRAME_API frame_status frame_stick_cut(frame_stick *stick, const frame_stick_plane *plane);
/** Takes one more notch out of a stick: what lies on the waste side of all its planes (their notch numbers are not
 * looked at). On failure the stick stays as it was. */
FRAME_API frame_status frame_stick_notch(frame_stick *stick, const frame_stick_plane *planes, size_t plane_count,
                                         frame_stick_notch_kind kind);

/** The lengths of a stick by name. All but the first are between the end cuts, as if no notch, backing or taper were
 * made. */
typedef struct frame_stick_lengths_out {
    uint32_t struct_size, struct_id;
    double long_point_in;   /**< From the outermost point of one end to that of the other, along the stick: the stock it
                               needs, without trim. */
    double short_point_in;  /**< From the innermost point of one end's cuts to that of the other's, along the stick;
                               negative when they pass each other. */
    double centre_line_in;  /**< Along the centre line of the section. */
    double top_edge_in;     /**< Along the middle of the top face. */
    double bottom_edge_in;  /**< Along the middle of the bottom face. */
    double top_left_in;     /**< Along the edge between top and left face. */
    double top_right_in;    /**< Along the edge between top and right face. */
    double bottom_left_in;  /**< Along the edge between bottom and left face. */
    double bottom_right_in; /**< Along the edge between bottom and right face. */
    double start_long_point_x_in; /**< Where the start's long point lies, along the stick's x. */
    double end_long_point_x_in;   /**< Where the end's long point lies, along the stick's x. */
} frame_stick_lengths_out;
/** As frame_stick_lengths, for an answer of a stated size. */
FRAME_API frame_status frame_stick_lengths_sized(const frame_stick *stick, frame_stick_lengths_out *out,
                                                 size_t out_size);
/** Gives the lengths of a stick by name. A line that the end cuts leave nothing of has length 0. */
static inline frame_status frame_stick_lengths(const frame_stick *stick, frame_stick_lengths_out *out) {
    return frame_stick_lengths_sized(stick, out, sizeof *out);
}

/** The solid that is left of a stick. */
typedef struct frame_stick_solid_out {
    uint32_t struct_size, struct_id;
    double volume_in3;       /**< Volume. */
    double stock_volume_in3; /**< Volume of the square-ended piece of the same section that it is cut from: thickness
                                times depth times long point. */
    double centre_x_in;      /**< Centre of gravity along the stick's x. */
    double centre_y_in;      /**< Centre of gravity along the stick's y. */
    double centre_z_in;      /**< Centre of gravity along the stick's z. */
    double world_x_in;       /**< Centre of gravity along the world's x. */
    double world_y_in;       /**< Centre of gravity along the world's y. */
    double world_z_in;       /**< Centre of gravity along the world's z. */
} frame_stick_solid_out;
/** As frame_stick_solid, for an answer of a stated size. */
FRAME_API frame_status frame_stick_solid_sized(const frame_stick *stick, frame_stick_solid_out *out, size_t out_size);
/** Gives the volume and the centre of gravity of a stick. */
static inline frame_status frame_stick_solid(const frame_stick *stick, frame_stick_solid_out *out) {
    return frame_stick_solid_sized(stick, out, sizeof *out);
}
/** Gives the weight of a stick in pounds, at a density in pounds per cubic foot (above 0, to 200). */
FRAME_API frame_status frame_stick_weight(const frame_stick *stick, double density_pcf, double *weight_lb);

/** What to mind when a saw is set. */
typedef int32_t frame_stick_saw_caution;
enum frame_stick_saw_caution_values {
    FRAME_STICK_SAW_COMPOUND = 0, /**< "compound". Mitre and bevel at once: guard, support the piece, try a test cut. */
    FRAME_STICK_SAW_PAST_TILT = 1 /**< "past_tilt". A bevel over the 45 degrees many saws tilt to: cut another way. */
};

/** How a saw is set for one plane of a stick. The saw's base (or its table) bears on base_face, one of the two wide
 * faces: one with a line to follow; of two, the one with the long point of the cut when the blade is tilted, and the
 * left (or top) one when it is not. Both angles are 0 for a square upright cut and never negative; the ends and faces
 * they lean to are named. */
typedef struct frame_stick_saw {
    uint32_t struct_size, struct_id;
    frame_stick_role role;  /**< What the plane is to the stick. */
    frame_stick_end at_end; /**< The end it closes; not given for a plane that closes none. */
    int32_t notch; /**< Number of the notch it bounds, from 1 in the order they were made; 0 for a cut of its own. */
    frame_stick_notch_kind notch_kind; /**< What that notch is; not given for a cut of its own. */
    frame_stick_face base_face;        /**< The face the saw's base or table bears on. */
    frame_stick_face mitre_face; /**< The face at whose edge the line leans to mitre_end: top, or left where the wide
                                    faces are top and bottom. */
    frame_stick_end mitre_end;   /**< The end the line on the base face leans to at mitre_face; not given when the mitre
                                    is 0 or 90. */
    frame_stick_end bevel_end; /**< The end the blade leans to on its way from the base face through the wood; not given
                                  when the bevel is 0 or the plane runs along the stick. */
    double mitre_deg; /**< Mitre: angle on the base face between the line and square across; 90 along the stick. */
    double bevel_deg; /**< Bevel: tilt of the blade from upright on the base face, in the section square to the line. */
    double across_top_deg; /**< Angle on the top face between the line and square across; 90 when the plane does not
                              cross it. */
    double top_edge_deg; /**< Angle on the top face between the line and the edge of the stick: the handbooks' side cut
                            across the top edge; 90 for a square cut. */
    double area_in2;     /**< Area of the face that the plane leaves on the stick; 0 when it takes nothing away. */
    const char *label;   /**< Its words. */
    uint64_t cautions;   /**< bits : stick_saw_caution. What to mind. */
} frame_stick_saw;
/** Counts the saw settings of a stick: one for each plane, the end cuts that were left square among them. */
FRAME_API size_t frame_stick_saw_count(const frame_stick *stick);
/** As frame_stick_saw_at, for an item of a stated size. */
FRAME_API frame_status frame_stick_saw_at_sized(const frame_stick *stick, size_t index, frame_stick_saw *item,
                                                size_t item_size);
/** Gives a saw setting by its place in the list: first the end cuts and other cuts, then the notches' planes. Its texts
 * live as long as the stick. */
static inline frame_status frame_stick_saw_at(const frame_stick *stick, size_t index, frame_stick_saw *item) {
    return frame_stick_saw_at_sized(stick, index, item, sizeof *item);
}

/** How two sticks compare as pieces to cut, wherever they lie. */
typedef int32_t frame_stick_likeness;
enum frame_stick_likeness_values {
    FRAME_STICK_DIFFERENT = 1, /**< "different". They are cut differently. */
    FRAME_STICK_ALIKE = 2,     /**< "alike". One cut list for both, crown up. */
    FRAME_STICK_OPPOSITE = 3   /**< "opposite" | "opposite hand". Mirror images of each other: left and right. */
};
/** Tells whether two sticks are cut alike, or are opposite hands of one another: sections, and every plane that leaves a face,
 * to 1e-6 in. Turning a piece end for end with its crown up counts as the same; one that is its own mirror image is alike. */
FRAME_API frame_status frame_stick_compare(const frame_stick *stick, const frame_stick *other,
                                           frame_stick_likeness *likeness);

/** A way to make a cut. */
typedef int32_t frame_stick_making;
enum frame_stick_making_values {
    FRAME_STICK_MAKING_AS_SET = 1, /**< "as set". The saw tilts so far: its setting as listed. */
    FRAME_STICK_MAKING_FROM_EDGE = 2, /**< "from the edge". In one pass, the base on the narrow face. */
    FRAME_STICK_MAKING_FROM_BOTH_EDGES = 3, /**< "from both edges". In two passes that meet, the base on one narrow face and then on the other. */
    FRAME_STICK_MAKING_BY_HAND = 4 /**< "from both edges, the rest by hand". As before, but a strip is left in the middle for a hand saw. */
};
/** What to mind when a cut is made in such a way. */
typedef int32_t frame_stick_way_caution;
enum frame_stick_way_caution_values {
    FRAME_STICK_WAY_CAUTION_EDGE = 0 /**< "edge". The base has a narrow face to bear on: clamp a block beside the piece, make a test cut. */
};
/** How a cut is made with a saw that tilts only so far and cuts only so deep. */
typedef struct frame_stick_way_out {
    uint32_t struct_size, struct_id;
    uint64_t cautions;           /**< bits : stick_way_caution. What to mind. */
    frame_stick_making making;   /**< The way. */
    frame_stick_face base_face;  /**< The face the saw's base bears on in the first pass; in the second, the one opposite. */
    frame_stick_face mitre_face; /**< The face at whose edge the line leans to mitre_end. */
    frame_stick_end mitre_end;   /**< The end the line leans to there; not given when the mitre is 0 or 90. */
    frame_stick_end bevel_end;   /**< The end the blade leans to on its way into the wood in the first pass; in the second it leans to the other end. Not given when the bevel is 0. */
    int32_t passes;              /**< Passes of the saw. */
    double mitre_deg;            /**< Mitre on that face, from square across. */
    double bevel_deg;            /**< Bevel of the blade. */
    double depth_in;             /**< Depth the blade is set to in each pass, along the blade. */
    double by_hand_in;           /**< What is left in the middle for a hand saw, along the blade. */
} frame_stick_way_out;
/** As frame_stick_way, for an answer of a stated size. */
FRAME_API frame_status frame_stick_way_sized(const frame_stick *stick, size_t saw, double tilt_deg, double saw_depth_in,
                                             frame_stick_way_out *out, size_t out_size);
/** Gives a way to make a cut (its place in the list of saw settings) with a saw that tilts to tilt_deg (>0 to 60; common saws 45 or
 * 50) and cuts saw_depth_in deep, square (>0 to 24). A bevel past the tilt is cut from the narrow face instead, where the same
 * plane needs less of it. FRAME_IMPOSSIBLE for a plane that runs along the stick past the tilt on every face. */
static inline frame_status frame_stick_way(const frame_stick *stick, size_t saw, double tilt_deg, double saw_depth_in,
                                           frame_stick_way_out *out) {
    return frame_stick_way_sized(stick, saw, tilt_deg, saw_depth_in, out, sizeof *out);
}

/** One end of a line to strike on a face. Marks are listed by face (left, right, top, bottom) and there by their
 * distance from the long point of the end that measure_from names. */
typedef struct frame_stick_mark {
    uint32_t struct_size, struct_id;
    frame_stick_face face; /**< The face the line is struck on. */
    frame_stick_edge edge; /**< The long edge of the stick it is at; not given for a point within the face. */
    double along_in;       /**< Running distance from the long point of the end measured from. */
    double across_in;      /**< Distance across the face: up from the bottom edge, or leftward from the right edge. */
    int32_t line;          /**< Number of the line, from 0: its two ends carry the same number. */
    int32_t saw;           /**< Number in the list of saw settings, from 0, of the plane it belongs to. */
    const char *label;     /**< Words of the plane. */
} frame_stick_mark;
/** Counts the marks of a stick. */
FRAME_API size_t frame_stick_mark_count(const frame_stick *stick);
/** As frame_stick_mark_at, for an item of a stated size. */
FRAME_API frame_status frame_stick_mark_at_sized(const frame_stick *stick, size_t index, frame_stick_mark *item,
                                                 size_t item_size);
/** Gives a mark by its place in the list. Its texts live as long as the stick. */
static inline frame_status frame_stick_mark_at(const frame_stick *stick, size_t index, frame_stick_mark *item) {
    return frame_stick_mark_at_sized(stick, index, item, sizeof *item);
}

/** A corner of the outline of a side face, after all cuts. Corners are listed by face (left, right, top, bottom), by
 * loop and in order round it, the wood on the left hand as along and across grow; holes run the other way. */
typedef struct frame_stick_corner {
    uint32_t struct_size, struct_id;
    frame_stick_face face; /**< The face. */
    int32_t loop;          /**< Number of the loop on that face, from 0. */
    double along_in;       /**< Running distance from the long point of the end measured from. */
    double across_in;      /**< Distance across the face: up from the bottom edge, or leftward from the right edge. */
} frame_stick_corner;
/** Counts the corners of the outlines of a stick's side faces. */
FRAME_API size_t frame_stick_corner_count(const frame_stick *stick);
/** As frame_stick_corner_at, for an item of a stated size. */
FRAME_API frame_status frame_stick_corner_at_sized(const frame_stick *stick, size_t index, frame_stick_corner *item,
                                                   size_t item_size);
/** Gives a corner by its place in the list. Its texts live as long as the stick. */
static inline frame_status frame_stick_corner_at(const frame_stick *stick, size_t index, frame_stick_corner *item) {
    return frame_stick_corner_at_sized(stick, index, item, sizeof *item);
}

/** How two placed sticks fit. */
typedef struct frame_stick_fit_out {
    uint32_t struct_size, struct_id;
    double overlap_in3; /**< Volume that lies in both; 0 when they touch or miss. */
    double contact_in2; /**< Area in which they touch, face on face. */
    double gap_in;      /**< Least distance between them; 0 when they touch or overlap. */
} frame_stick_fit_out;
/** As frame_stick_fit, for an answer of a stated size. */
FRAME_API frame_status frame_stick_fit_sized(const frame_stick *stick, const frame_stick *other,
                                             frame_stick_fit_out *out, size_t out_size);
/** Tells how two sticks fit where they lie in the world. */
static inline frame_status frame_stick_fit(const frame_stick *stick, const frame_stick *other,
                                           frame_stick_fit_out *out) {
    return frame_stick_fit_sized(stick, other, out, sizeof *out);
}

/** Where two sticks touch: the polygons, face by face. Opaque; made by frame_stick_contact, freed by frame_contact_free. It
 * keeps nothing of the sticks. */
typedef struct frame_contact frame_contact;
/** Finds where a stick touches another one where they lie in the world, face on face: what frame_stick_fit gives the area of. Faces
 * up to 1e-7 in apart touch. It is empty where they share only an edge or a point, or nothing. Free it with frame_contact_free. */
FRAME_API frame_status frame_stick_contact(const frame_stick *stick, const frame_stick *other, frame_contact **contact);
/** Frees a contact. NULL is allowed. */
FRAME_API void frame_contact_free(frame_contact *contact);

/** A plane on which two sticks touch. */
typedef struct frame_contact_face {
    uint32_t struct_size, struct_id;
    double area_in2;             /**< Area in which they touch on it. */
    double normal_x;             /**< Direction out of the first stick into the other one, its part along the world's x. */
    double normal_y;             /**< The direction's part along the world's y. */
    double normal_z;             /**< The direction's part along the world's z. */
    frame_stick_face face;       /**< The side face of the first stick that is touched; not given where it is a cut. */
    int32_t saw;                 /**< The cut of the first stick that is touched: its place in the list of saw settings, from 0; not given where it is a side face. */
    frame_stick_face other_face; /**< The side face of the other stick; not given where it is a cut. */
    int32_t other_saw;           /**< The cut of the other stick, in the same way. */
} frame_contact_face;
/** Counts the planes on which two sticks touch. */
FRAME_API size_t frame_contact_face_count(const frame_contact *contact);
/** As frame_contact_face_at, for an item of a stated size. */
FRAME_API frame_status frame_contact_face_at_sized(const frame_contact *contact, size_t index, frame_contact_face *item,
                                                   size_t item_size);
/** Gives a plane on which they touch, by its place in the list. */
static inline frame_status frame_contact_face_at(const frame_contact *contact, size_t index, frame_contact_face *item) {
    return frame_contact_face_at_sized(contact, index, item, sizeof *item);
}

/** A corner of a contact's polygons. They are listed by face, loop and in order round it: anticlockwise seen from the other
 * stick's side, against the direction out of the first; holes run the other way. */
typedef struct frame_contact_corner {
    uint32_t struct_size, struct_id;
    int32_t face;           /**< Number of the face in the list of faces, from 0. */
    int32_t loop;           /**< Number of the loop on that face, from 0. */
    double x_in;            /**< The corner along the world's x. */
    double y_in;            /**< The corner along the world's y. */
    double z_in;            /**< The corner along the world's z. */
    double along_in;        /**< On the first stick: running distance, as its marks have it. */
    double across_in;       /**< Distance across its side face, as its marks have it; not given on a cut. */
    double other_along_in;  /**< On the other stick: running distance, as its marks have it. */
    double other_across_in; /**< Distance across its side face; not given on a cut. */
} frame_contact_corner;
/** Counts the corners of a contact's polygons. */
FRAME_API size_t frame_contact_corner_count(const frame_contact *contact);
/** As frame_contact_corner_at, for an item of a stated size. */
FRAME_API frame_status frame_contact_corner_at_sized(const frame_contact *contact, size_t index,
                                                     frame_contact_corner *item, size_t item_size);
/** Gives a corner by its place in the list. */
static inline frame_status frame_contact_corner_at(const frame_contact *contact, size_t index,
                                                   frame_contact_corner *item) {
    return frame_contact_corner_at_sized(contact, index, item, sizeof *item);
}

/** Draws a stick to cut it by: its wide faces (one when both are alike), the top edge where a cut is compound, marks
 * with running dimensions in tape notation, and the saw's settings. Free it with frame_drawing_free. */
FRAME_API frame_status frame_stick_drawing(const frame_stick *stick, frame_drawing **drawing);

FRAME_END

#endif
