/* The rows of the tables for a species, grade and size, found in a few steps and not copied: for checks by the million.
 */
#ifndef FRAME_LIB_MATERIAL_LUMBER_ROWS_H
#define FRAME_LIB_MATERIAL_LUMBER_ROWS_H

#include "material/lumber.h"
#include "material/size_row.h"
#include "table_grades.h"
#include "table_lumber_factors.h"
#include "table_lumber_size_factors.h"
#include "table_lumber_values.h"

/* The rows of lumber_factors, in their order. */
enum {
    FRAME_FACTORS_WET_DIMENSION,
    FRAME_FACTORS_WET_TIMBER,
    FRAME_FACTORS_WET_LIMIT,
    FRAME_FACTORS_INCISED,
    FRAME_FACTORS_REPETITIVE
};

/* The size groups of the table grades that the code tells apart. */
enum {
    FRAME_SIZE_GROUP_NO_3 = 1,
    FRAME_SIZE_GROUP_STUD = 2,
    FRAME_SIZE_GROUP_4B = 5,
    FRAME_SIZE_GROUP_DENSE_STRUCTURAL = 6
};

/* The first row of a species and grade, 0 without one; ids that are none give 0 too. */
static inline const frame_lumber_values_row *frame_lumber_first_row(frame_species species, frame_grade grade) {
    if ((uint32_t)species >= frame_lumber_values_at_first || (uint32_t)grade >= frame_lumber_values_at_second) return 0;
    const uint16_t place = frame_lumber_values_at[species][grade];
    return place ? &frame_lumber_values_table[place - 1] : 0;
}

/* The row that holds for a size, 0 without one. */
static inline const frame_lumber_values_row *frame_lumber_row(frame_species species, frame_grade grade,
                                                              const frame_lumber_sizes_row *size) {
    const frame_lumber_values_row *row = frame_lumber_first_row(species, grade);
    if (!row) return 0;
    for (; row < frame_lumber_values_table + frame_lumber_values_rows && row->species == species && row->grade == grade;
         row++)
        if (row->size_class == size->size_class && size->width_in >= row->least_width_in &&
            size->width_in <= row->most_width_in && size->thickness_in >= row->least_thickness_in &&
            size->thickness_in <= row->most_thickness_in)
            return row;
    return 0;
}

/* The row of the size factors; 0 where they go by the depth instead (timbers and Dense Structural grades, NDS 4.3.6.2).
 */
static inline const frame_lumber_size_factors_row *frame_lumber_size_factors(const frame_lumber_values_row *values,
                                                                             const frame_lumber_sizes_row *size) {
    int group = (int)frame_grades_table[(int)values->grade - 1].size_group;
    if (size->size_class != FRAME_CLASS_DIMENSION || group == FRAME_SIZE_GROUP_DENSE_STRUCTURAL) return 0;
    if (values->table_name[1] == 'B')
        group = FRAME_SIZE_GROUP_4B;
    else if (group == FRAME_SIZE_GROUP_STUD && size->width_in > 6) /* goes by the values and size factors of No.3 */
        group = FRAME_SIZE_GROUP_NO_3;
    const frame_lumber_size_factors_row *row =
        &frame_lumber_size_factors_table[frame_lumber_size_factors_at[group][size->thickness_in >= 4] - 1];
    while (size->width_in > row->most_width_in) row++;
    return row;
}

#endif
