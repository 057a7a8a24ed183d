/* Visual grades: names and stamps. */
#include "base/error.h"
#include "material/names.h"
#include "material_facts.h"
#include "table_grades.h"

/* Ids run from 1 in the order of the table, as those of species do. */
static const frame_grades_row *row_of(frame_grade grade) {
    return grade >= 1 && grade <= frame_grades_rows ? &frame_grades_table[grade - 1] : NULL;
}

static frame_name name_at(size_t index) {
    const frame_grades_row *row = &frame_grades_table[index];
    return (frame_name){row->name, "", row->spellings};
}

frame_status frame_grade_find(const char *text, frame_grade *grade) {
    size_t place;
    if (!grade) return frame_fail(FRAME_REQUIRED, "grade", "NULL", "a place for the id", "grade: no place for the id");
    const frame_status status = frame_name_find("grade", text, name_at, frame_grades_rows, &place);
    if (!status) *grade = frame_grades_table[place].id;
    return status;
}

int frame_grade_valid(frame_grade grade) {
    return row_of(grade) != NULL;
}

const char *frame_grade_name(frame_grade grade) {
    const frame_grades_row *row = row_of(grade);
    return row ? row->name : NULL;
}

size_t frame_grade_count(void) {
    return frame_grades_rows;
}

frame_grade frame_grade_at(size_t index) {
    return index < frame_grades_rows ? frame_grades_table[index].id : FRAME_NOT_GIVEN_INT;
}
