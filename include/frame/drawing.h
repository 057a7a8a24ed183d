/** @file drawing.h
 * A drawing in black and white: lines, hatches, lettering, labels, dimensions. Coordinates are inches of the thing
 * drawn, x to the right and y up; the writer chooses the scale. Lettering, line weights, hatches and the distances of
 * dimensions belong to the paper: they stay as they are whatever the scale.
 *
 * Whatever is drawn is kept in a list, in order. Texts are laid out when the drawing is written, so that none covers
 * another and nothing falls off the paper. The same drawing always gives the same bytes.
 */
#ifndef FRAME_DRAWING_H
#define FRAME_DRAWING_H

#include <frame/text.h>

FRAME_BEGIN

/** What a line stands for, and with that its weight and its dashes. */
typedef int32_t frame_pen;
enum frame_pen_values {
    FRAME_PEN_CUT = 1,      /**< "cut". Wood the drawing cuts through, a line to saw; the heaviest. */
    FRAME_PEN_OUTLINE = 2,  /**< "outline". An edge that is seen. */
    FRAME_PEN_THIN = 3,     /**< "thin". A line marked on a face, a detail. */
    FRAME_PEN_HIDDEN = 4,   /**< "hidden". An edge behind something; dashed. */
    FRAME_PEN_CENTRE = 5,   /**< "centre" | "center". An axis; long dash and dot. */
    FRAME_PEN_DIMENSION = 6 /**< "dimension". What measures; the lightest. */
};

/** What fills an area. */
typedef int32_t frame_hatch;
enum frame_hatch_values {
    FRAME_HATCH_NONE = 1,       /**< "none". Nothing; what was drawn before shows through. */
    FRAME_HATCH_BLANK = 2,      /**< "blank". Paper; it hides what was drawn before. */
    FRAME_HATCH_SOLID = 3,      /**< "solid". Black. */
    FRAME_HATCH_END_GRAIN = 4,  /**< "end grain". Wood cut across: growth rings. */
    FRAME_HATCH_SIDE_GRAIN = 5, /**< "side grain". Wood seen from a side: fibres along the longest edge. */
    FRAME_HATCH_PANEL = 6,      /**< "panel" | "sheathing". Plies along the longest edge. */
    FRAME_HATCH_CONCRETE = 7,   /**< "concrete". Sand and a few stones. */
    FRAME_HATCH_STEEL = 8,      /**< "steel". Pairs of slanting lines. */
    FRAME_HATCH_INSULATION = 9, /**< "insulation". A zigzag from face to face. */
    FRAME_HATCH_EARTH = 10      /**< "earth". Tufts of three strokes. */
};

/** Which part of a text stands at its point. */
typedef int32_t frame_anchor;
enum frame_anchor_values {
    FRAME_ANCHOR_START = 1,  /**< "start". The text begins at the point. */
    FRAME_ANCHOR_MIDDLE = 2, /**< "middle". The middle of the text. */
    FRAME_ANCHOR_END = 3,    /**< "end". The text ends at the point. */
    FRAME_ANCHOR_ABOVE = 4,  /**< "above". The text stands above the point, centred. */
    FRAME_ANCHOR_BELOW = 5   /**< "below". The text hangs below the point, centred. */
};

/** How large a text is written, against the drawing's own letter size. */
typedef int32_t frame_lettering;
enum frame_lettering_values {
    FRAME_LETTERING_NOTE = 1,   /**< "note". The drawing's letter size; dimensions and labels are written so. */
    FRAME_LETTERING_NAME = 2,   /**< "name". One and a fifth of it; names of pieces, captions of views. */
    FRAME_LETTERING_HEADING = 3 /**< "heading". One and a half of it. */
};

/** Where a dimension stands, and with that what it measures. */
typedef int32_t frame_dimension_side;
enum frame_dimension_side_values {
    FRAME_DIMENSION_ABOVE = 1, /**< "above". Over the view; measures level. */
    FRAME_DIMENSION_BELOW = 2, /**< "below". Under the view; measures level. */
    FRAME_DIMENSION_LEFT = 3,  /**< "left". Left of the view; measures plumb. */
    FRAME_DIMENSION_RIGHT = 4, /**< "right". Right of the view; measures plumb. */
    FRAME_DIMENSION_ALONG = 5  /**< "along". Left of the way from the first point to the last; measures along it. */
};

/** Makes an empty drawing: one view, 7 in of paper, 9 pt letters, sixteenths. Free it with frame_drawing_free. */
FRAME_API frame_status frame_drawing_new(frame_drawing **drawing);
/** Frees a drawing. NULL is allowed. */
FRAME_API void frame_drawing_free(frame_drawing *drawing);

/** Names the drawing; screen readers say it and browsers show it as the title. */
FRAME_API frame_status frame_drawing_title(frame_drawing *drawing, const char *title);
/** Describes the drawing for those who cannot see it. Without one, the writer lists the dimensions and labels. */
FRAME_API frame_status frame_drawing_description(frame_drawing *drawing, const char *description);
/** Sets the largest picture: width 2..48 in (7 at first), height 1..96 in (9 at first). The scale is the largest at
 * which the drawing fits, never beyond full size. Dimensions and labels come first: when there are more of them than
 * such a paper can take, the picture grows downward, and only a single word wider than the paper makes it wider. For a
 * page that is also read on a telephone write the drawing twice, 7 in and 3.7 in wide, and let the page show the one
 * that fits. */
FRAME_API frame_status frame_drawing_paper(frame_drawing *drawing, double width_in, double height_in);
/** Sets the letter size in points, 9..24 (9 at first). */
FRAME_API frame_status frame_drawing_letter_size(frame_drawing *drawing, double points);
/** Sets the smallest fraction of an inch in dimensions whose text is left to the library: 1/denominator, a power of two
 * 1..64 (16 at first). It counts for the dimensions drawn after it. */
FRAME_API frame_status frame_drawing_denominator(frame_drawing *drawing, int32_t denominator);

/** Begins another view of the same thing, under those before it: another face, a section. All views share one scale,
 * one x axis and the breaks; each has its own dimensions around it. caption is written below the view; NULL or "" for
 * none. In a drawing where nothing is drawn yet it only captions the first view. */
FRAME_API frame_status frame_drawing_view(frame_drawing *drawing, const char *caption);

/** Takes a stretch of the x axis out of the picture, so that a long stick need not be drawn as a needle. Lines and
 * areas that cross it are cut and closed with break lines; the rest keeps its true proportions and every coordinate and
 * dimension stays true. Breaks that overlap become one. */
FRAME_API frame_status frame_drawing_break(frame_drawing *drawing, double from_x_in, double to_x_in);
/** Breaks every long stretch of the x axis where nothing is drawn or measured but lines passing through, keeping so
 * much of it at both ends. A stretch is long when at least two thirds of it would go. Call it when all is drawn. */
FRAME_API frame_status frame_drawing_shorten(frame_drawing *drawing, double keep_in);

/** Draws a straight line. */
FRAME_API frame_status frame_drawing_line(frame_drawing *drawing, double x1_in, double y1_in, double x2_in,
                                          double y2_in, frame_pen pen);
/** Adds a corner to the path being drawn; frame_drawing_polyline or frame_drawing_polygon ends the path. */
FRAME_API frame_status frame_drawing_point(frame_drawing *drawing, double x_in, double y_in);
/** Draws the path as an open line; at least two points. */
FRAME_API frame_status frame_drawing_polyline(frame_drawing *drawing, frame_pen pen);
/** Draws the path as a closed outline filled with a hatch; at least three points. */
FRAME_API frame_status frame_drawing_polygon(frame_drawing *drawing, frame_pen pen, frame_hatch hatch);
/** Draws a rectangle by two opposite corners. */
FRAME_API frame_status frame_drawing_rectangle(frame_drawing *drawing, double x1_in, double y1_in, double x2_in,
                                               double y2_in, frame_pen pen, frame_hatch hatch);
/** Draws a circle. */
FRAME_API frame_status frame_drawing_circle(frame_drawing *drawing, double x_in, double y_in, double radius_in,
                                            frame_pen pen, frame_hatch hatch);
/** Draws an arc, counterclockwise from one direction to another; 0 degrees points right, 90 up. */
FRAME_API frame_status frame_drawing_arc(frame_drawing *drawing, double x_in, double y_in, double radius_in,
                                         double from_deg, double to_deg, frame_pen pen);

/** Writes a text at a point, turned counterclockwise by angle_deg. A line feed begins another line. Where it would cover
 * another text or an outline it moves a line aside, or is written elsewhere with a leader to the point. */
FRAME_API frame_status frame_drawing_text(frame_drawing *drawing, double x_in, double y_in, const char *text,
                                          frame_anchor anchor, double angle_deg, frame_lettering lettering);
/** Names something: a text placed near the point where there is room, with a leader to the point. Long texts are
 * written in several lines; a line feed forces one. */
FRAME_API frame_status frame_drawing_label(frame_drawing *drawing, double x_in, double y_in, const char *text);

/** Adds a mark to the running dimension being drawn; the first is where the tape is hooked. Without a text (NULL or "")
 * the mark's true distance from the hook is written in tape notation. frame_drawing_dimension_running ends it. */
FRAME_API frame_status frame_drawing_mark(frame_drawing *drawing, double x_in, double y_in, const char *text);
/** Draws the marks as one running dimension: every distance is read on one tape hooked at the first mark, so that no
 * error is carried from mark to mark. At least two marks, the first of them an end. Where marks crowd, their texts are
 * spread and set in rows. */
FRAME_API frame_status frame_drawing_dimension_running(frame_drawing *drawing, frame_dimension_side side);
/** Draws the distance between two points. Without a text (NULL or "") the true distance is written in tape notation.
 * Dimensions on one side stand in lanes, the shorter nearer to the view. */
FRAME_API frame_status frame_drawing_dimension(frame_drawing *drawing, double x1_in, double y1_in, double x2_in,
                                               double y2_in, frame_dimension_side side, const char *text);
/** Marks the angle at a point, counterclockwise from one direction to another. Without a text (NULL or "") the angle is
 * written in degrees, to a tenth. */
FRAME_API frame_status frame_drawing_angle(frame_drawing *drawing, double x_in, double y_in, double from_deg,
                                           double to_deg, const char *text);

/** Writes the drawing as one SVG element that stands alone or in a page: it takes the width it is given up to its
 * natural one, its letters are generic sans-serif, everything is black on whatever paper is behind, and nothing lies
 * outside its frame. At its natural width the letters have the size that was set. The text is added at the end of into.
 */
FRAME_API frame_status frame_drawing_svg(const frame_drawing *drawing, frame_text *into);
/** Writes the drawing to an SVG file, whole or not at all. FRAME_NOT_WRITTEN names the path when that fails. */
FRAME_API frame_status frame_drawing_save_svg(const frame_drawing *drawing, const char *path);

FRAME_END

#endif
