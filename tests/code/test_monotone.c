/* The smaller tables whole: nothing gets better with more load, wider spacing or a smaller size. (Those of joists,
 * headers, deck joists, beams, posts, footings, heel joints, uplift and bracing are held to the same beside their own
 * tests.) */
#include "ask.h"
#include "code/book.h"

#include "table_code_braced_panels.h"
#include "table_code_deck_cantilevers.h"
#include "table_code_deck_footings.h"
#include "table_code_deck_guide_posts.h"
#include "table_code_floor_cantilevers.h"
#include "table_code_ledgers.h"
#include "table_code_panels.h"
#include "table_code_studs.h"
#include "table_code_tall_studs.h"
#include "table_code_wall_sheathing.h"

/* A cell that is empty or NP is the least of all. */
static int least(int cell) {
    return cell > 0 ? cell : 0;
}

#define NO_MORE(a, b, what, first, second) \
    ck_assert_msg(least(a) >= least(b), "%s: rows %d and %d: %d, then %d", what, first, second, (int)(a), (int)(b))

START_TEST(floor_cantilevers) {
    const int rows = frame_code_floor_cantilevers_rows;
    for (int i = 0; i < rows; i++) {
        const frame_code_floor_cantilevers_row *a = &frame_code_floor_cantilevers_table[i];
        const int16_t of_a[] = {a->c24, a->c32, a->c40}, up_a[] = {a->u24, a->u32, a->u40};
        for (int c = 0; c < 2; c++) {
            if (of_a[c] > 0)
                NO_MORE(of_a[c], of_a[c + 1], "wider roof", a->id, a->id); /* the lightest cells may be empty */
            if (up_a[c + 1] > 0) ck_assert_int_ge(up_a[c + 1], up_a[c]);
        }
        for (int k = 0; k < rows; k++) {
            const frame_code_floor_cantilevers_row *b = &frame_code_floor_cantilevers_table[k];
            const int16_t of_b[] = {b->c24, b->c32, b->c40}, up_b[] = {b->u24, b->u32, b->u40};
            if (a->carries != b->carries || b->snow < a->snow || b->spacing < a->spacing || b->size > a->size) continue;
            for (int c = 0; c < 3; c++) {
                if (of_a[c] > 0) NO_MORE(of_a[c], of_b[c], "more snow, wider spacing, smaller joist", a->id, b->id);
                if (a->spacing == b->spacing && a->size == b->size && up_b[c] > 0) ck_assert_int_ge(up_b[c], up_a[c]);
            }
        }
    }
}
END_TEST

START_TEST(deck_cantilevers) {
    const int rows = frame_code_deck_cantilevers_rows;
    for (int i = 0; i < rows; i++)
        for (int k = 0; k < rows; k++) {
            const frame_code_deck_cantilevers_row *a = &frame_code_deck_cantilevers_table[i],
                                                  *b = &frame_code_deck_cantilevers_table[k];
            const int16_t of_a[] = {a->b4, a->b6, a->b8, a->b10, a->b12, a->b14, a->b16, a->b18};
            const int16_t of_b[] = {b->b4, b->b6, b->b8, b->b10, b->b12, b->b14, b->b16, b->b18};
            if (a->woods != b->woods || !(a->editions & b->editions) || b->load < a->load || b->size > a->size)
                continue;
            for (int c = 0; c < 8; c++) NO_MORE(of_a[c], of_b[c], "more load, smaller joist", a->id, b->id);
        }
}
END_TEST

START_TEST(ledgers) {
    for (int i = 0; i < frame_code_ledgers_rows; i++)
        for (int k = 0; k < frame_code_ledgers_rows; k++) {
            const frame_code_ledgers_row *a = &frame_code_ledgers_table[i], *b = &frame_code_ledgers_table[k];
            const int16_t of_a[] = {a->j6, a->j8, a->j10, a->j12, a->j14, a->j16, a->j18};
            const int16_t of_b[] = {b->j6, b->j8, b->j10, b->j12, b->j14, b->j16, b->j18};
            const int weaker = b->fastener == a->fastener || b->fastener == 1 || (a->fastener == 2 && b->fastener == 3);
            if (!(a->editions & b->editions) || b->load < a->load || !weaker) continue;
            for (int c = 0; c < 7; c++) NO_MORE(of_a[c], of_b[c], "more load, weaker fastener", a->id, b->id);
        }
}
END_TEST

/* Height of posts and size of footings by the spans that load them. */
START_TEST(guide_posts) {
    const int rows = frame_code_deck_guide_posts_rows;
    for (int i = 0; i < rows; i++)
        for (int k = 0; k < rows; k++) {
            const frame_code_deck_guide_posts_row *a = &frame_code_deck_guide_posts_table[i],
                                                  *b = &frame_code_deck_guide_posts_table[k];
            const int16_t of_a[] = {a->h1, a->h2, a->h3, a->h4, a->h5}, of_b[] = {b->h1, b->h2, b->h3, b->h4, b->h5};
            if (b->beam < a->beam || b->joist < a->joist) continue;
            for (int c = 0; c < 5; c++) NO_MORE(of_a[c], of_b[c], "longer spans", a->id, b->id);
            ck_assert(b->round >= a->round && b->square >= a->square && b->thickness >= a->thickness);
        }
}
END_TEST

static int stud_sizes(int stud) { /* breadth and depth of 2x3, 2x4, 3x4, 2x5, 2x6 */
    static const int both[] = {0, 23, 24, 34, 25, 26};
    return both[stud];
}

START_TEST(studs) {
    for (int i = 0; i < frame_code_studs_rows; i++)
        for (int k = 0; k < frame_code_studs_rows; k++) {
            const frame_code_studs_row *a = &frame_code_studs_table[i], *b = &frame_code_studs_table[k];
            const int of_a = stud_sizes(a->stud), of_b = stud_sizes(b->stud);
            /* the words of what is carried go from nothing over a roof to two floors; one floor alone stands last */
            if (of_b / 10 > of_a / 10 || of_b % 10 > of_a % 10 || (b->carries < a->carries && b->carries != 1) ||
                b->carries == 5 || a->carries == 5)
                continue;
            if (b->carries < a->carries) continue;
            NO_MORE(a->spacing, b->spacing, "carries more, smaller stud", a->id, b->id);
            NO_MORE(a->height, b->height, "carries more, smaller stud", a->id, b->id);
        }
}
END_TEST

/* What is asked of a tall stud: 4, 6 or a design. */
static int demand(int cell) {
    return cell == FRAME_CELL_DESIGN ? 99 : cell;
}

START_TEST(tall_studs) {
    for (int i = 0; i < frame_code_tall_studs_rows; i++)
        for (int k = 0; k < frame_code_tall_studs_rows; k++) {
            const frame_code_tall_studs_row *a = &frame_code_tall_studs_table[i], *b = &frame_code_tall_studs_table[k];
            const int16_t of_a[] = {a->s12_115, a->s24_115, a->s12_130, a->s24_130, a->s12_140, a->s24_140};
            const int16_t of_b[] = {b->s12_115, b->s24_115, b->s12_130, b->s24_130, b->s12_140, b->s24_140};
            if (b->height < a->height || b->carries < a->carries || b->spacing < a->spacing) continue;
            for (int c = 0; c < 6; c++) ck_assert_int_le(demand(of_a[c]), demand(of_b[c]));
            for (int c = 0; c < 4; c++) ck_assert_int_le(demand(of_a[c]), demand(of_a[c + 2]));    /* more wind */
            for (int c = 0; c < 6; c += 2) ck_assert_int_le(demand(of_a[c]), demand(of_a[c + 1])); /* wider */
        }
}
END_TEST

/* Sheathing ratings one after another, then the single floors: no span gets shorter, and free edges never span more
 * than held ones. */
START_TEST(panels) {
    for (int i = 0; i < frame_code_panels_rows; i++) {
        const frame_code_panels_row *a = &frame_code_panels_table[i], *b = a + 1;
        ck_assert(a->roof_free <= a->roof_held && a->live < a->total);
        if (i + 1 == frame_code_panels_rows || i == 7) continue; /* the single floors begin */
        ck_assert_msg(a->roof_held <= b->roof_held && a->roof_free <= b->roof_free && a->floor <= b->floor, "row %d",
                      b->id);
        if (a->live24 > 0 && b->live24 > 0) ck_assert_int_le(a->live24, b->live24);
        if (a->live16 > 0 && b->live16 > 0) ck_assert_int_le(a->live16, b->live16);
    }
    for (int i = 0; i < frame_code_wall_sheathing_rows; i++) {
        const frame_code_wall_sheathing_row *row = &frame_code_wall_sheathing_table[i];
        ck_assert(row->vB >= row->vC && row->vC >= row->vD);
    }
}
END_TEST

/* The search for a load goes eight rows at a time. */
START_TEST(footings_in_groups) {
    int count = 1;
    for (int i = 1; i <= frame_code_deck_footings_rows; i++, count++) {
        const frame_code_deck_footings_row *a = &frame_code_deck_footings_table[i - 1], *b = a + 1;
        if (i < frame_code_deck_footings_rows && a->load == b->load && a->editions == b->editions) continue;
        ck_assert_msg(count >= 8 && (count == 8 || a->editions & 1u << (FRAME_CODE_2021 - 1)), "row %d", a->id);
        count = 0;
    }
}
END_TEST

/* A taller opening never asks for less beside it. */
START_TEST(braced_panels) {
    for (int i = 0; i + 1 < frame_code_braced_panels_rows; i++) {
        const frame_code_braced_panels_row *a = &frame_code_braced_panels_table[i], *b = a + 1;
        const int16_t of_a[] = {a->h8, a->h9, a->h10, a->h11, a->h12}, of_b[] = {b->h8, b->h9, b->h10, b->h11, b->h12};
        if (a->group != b->group || a->which < 3 || a->editions != b->editions) continue;
        ck_assert_int_gt(b->which, a->which);
        for (int c = 0; c < 5; c++) ck_assert_msg(of_b[c] < 0 || (of_a[c] >= 0 && of_b[c] >= of_a[c]), "row %d", b->id);
    }
}
END_TEST

int main(void) {
    TCase *tests = tcase_create("monotone");
    tcase_add_test(tests, floor_cantilevers);
    tcase_add_test(tests, deck_cantilevers);
    tcase_add_test(tests, ledgers);
    tcase_add_test(tests, guide_posts);
    tcase_add_test(tests, studs);
    tcase_add_test(tests, tall_studs);
    tcase_add_test(tests, panels);
    tcase_add_test(tests, footings_in_groups);
    tcase_add_test(tests, braced_panels);
    return run_tests(tests, "code_monotone");
}
