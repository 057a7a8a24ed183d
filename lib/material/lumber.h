/* Reference design values and the factors of their tables, for the rooms above: quick look-ups without a struct to set
 * up. Nothing here allocates or keeps state; the tables are constant. Sizes, species and grades are those of
 * material.h. */
#ifndef FRAME_LIB_MATERIAL_LUMBER_H
#define FRAME_LIB_MATERIAL_LUMBER_H

#include <frame/material.h>

/* Which rules of the NDS a size falls under. */
typedef enum frame_size_class {
    FRAME_CLASS_BOARD = 1,     /* under 2 in thick: no visual stress grades in the supplement */
    FRAME_CLASS_DIMENSION = 2, /* 2 to 4 in thick: tables 4A and 4B */
    FRAME_CLASS_POST = 3,      /* Posts and Timbers: 5 in and thicker, width at most 2 in above thickness: table 4D */
    FRAME_CLASS_BEAM = 4       /* Beams and Stringers: 5 in and thicker, wider than that: table 4D */
} frame_size_class;

/* One row of the tables for one size. Values before adjustment; the size factors are the table's own for this size and
 * 1 where the values include them. That of timbers on F_b is for the load on the narrow face. */
typedef struct frame_lumber {
    double fb_psi, ft_psi, fv_psi, fc_perp_psi, fc_psi, e_psi, e_min_psi, specific_gravity;
    double size_factor_fb, size_factor_ft, size_factor_fc;
    double thickness_in, width_in; /* dressed, dry */
    frame_known known;             /* worst of the row and its size factors */
    int32_t table_id;
    const char *source;
    const char *table;       /* "4A", "4B", "4D" */
    const char *size_source; /* where the size factors are from */
    int doubtful;            /* sources differ or memory is less sure about a value of the row */
    int superseded;          /* a later supplement changed the row */
    int wet_included;        /* the values hold wet or dry (Southern Pine of table 4D): C_M is 1 */
    frame_size_class size_class;
    frame_species species;
    frame_grade grade;
    frame_size size;
} frame_lumber;

/* Finds the row. FRAME_UNKNOWN_NAME for an id that is none, FRAME_NO_VALUE (fields "species", "grade" or "size") when
 * the tables have no such row; then *lumber is untouched. */
frame_status frame_lumber_find(frame_species species, frame_grade grade, frame_size size, frame_lumber *lumber);

/* The dressed size of PS 20, dry or green. FRAME_UNKNOWN_NAME for a size that is not made. */
frame_status frame_size_dressed(frame_size size, int green, double *thickness_in, double *width_in);
/* The nominal size in inches; 0 for both when the size is not made. */
void frame_size_nominal(frame_size size, double *thickness_in, double *width_in);
/* How the dressed size is known. */
frame_known frame_size_known(frame_size size);
/* The class of a size that is made. */
frame_size_class frame_size_class_of(frame_size size);

/* Specific gravity for fasteners, NDS table 12.3.3A. FRAME_NOT_GIVEN for a species it does not list; known may be NULL.
 */
double frame_species_gravity(frame_species species, frame_known *known);

/* A factor for each of the design values; known is the worst of their sources. */
typedef struct frame_stress_factors {
    double fb, ft, fv, fc_perp, fc, e, e_min;
    frame_known known;
    const char *source;
} frame_stress_factors;

/* C_M, wet service, of the row's own table, with its footnotes: 1 on F_b where F_b C_F is at most 1,150 psi and on F_c
 * where F_c C_F is at most 750 psi (4A, 4B); 1 throughout where the values include it. */
void frame_wet_factors(const frame_lumber *lumber, frame_stress_factors *factors);
/* C_i, incised for treatment, NDS 4.3.8; dimension lumber only, 1 for others. */
void frame_incising_factors(const frame_lumber *lumber, frame_stress_factors *factors);
/* C_fu, load on the wide face: on F_b, and on E and E_min for Beams and Stringers; 1 for others. For Beams and
 * Stringers of a grade the table does not list the lowest is given. */
void frame_flat_use_factors(const frame_lumber *lumber, frame_stress_factors *factors);
/* C_fu on F_b alone. */
double frame_flat_use_factor(const frame_lumber *lumber);
/* C_r, NDS 4.3.9: 1.15 for dimension lumber, 1 for others. Whether it may be used is the caller's to judge; known and
 * source may be NULL. */
double frame_repetitive_factor(const frame_lumber *lumber, frame_known *known, const char **source);

#endif
