/* What all look-ups share: nothing is allocated by those that give one figure; every result says how it is known, in
 * its cautions, its text and its working; an edition without a table is refused with those that have one. */
#include <stdlib.h>

#include "ask.h"

static size_t allocations;

static void *count_allocate(void *user, size_t size) {
    (void)user;
    allocations++;
    return malloc(size);
}

static void *count_reallocate(void *user, void *block, size_t size) {
    (void)user;
    allocations++;
    return realloc(block, size);
}

static void count_release(void *user, void *block) {
    (void)user;
    free(block);
}

/* A question of each look-up with an answer; where there is one, one that rests on memory or on a copy. */
static const struct question {
    const char *look_up, *good, *weak;
} questions[] = {
    {"code_joist_span",
     "edition=2021; use=floor; size=2x10; species=SPF; grade=No.2; spacing_in=16; live_psf=40; dead_psf=10", NULL},
    {"code_header_span",
     "edition=2021; supports=roof and ceiling; size=2x10; plies=2; ground_snow_psf=30; building_width_in=24'", NULL},
    {"code_deck_joist_span", "edition=2021; size=2x8; species=SP; spacing_in=16; live_psf=40", NULL},
    {"code_deck_beam_span", "edition=2018; size=2x10; plies=2; species=SP; joist_span_in=10'; live_psf=40", NULL},
    {"code_deck_post", "edition=2021; size=6x6; species=SP; tributary_ft2=60; live_psf=40", NULL},
    {"code_deck_footing", "edition=2021; tributary_ft2=60; soil_psf=1500; live_psf=40", NULL},
    {"code_deck_guide_post", NULL, "edition=DCA 6; species=SP; beam_span_in=8'; joist_span_in=10'"},
    {"code_ledger_spacing", "edition=2021; fastener=lag screw; joist_span_in=10'; sheathing_in=0.5; live_psf=40", NULL},
    {"code_heel_nails", "edition=2018; slope=0.33333333333; spacing_in=16; roof_span_in=28'; ground_snow_psf=30", NULL},
    {"code_uplift",
     "edition=2021; slope=0.4; spacing_in=24; roof_span_in=28'; wind_mph=115; roof_height_in=25'; overhang_in=12; "
     "exposure=B",
     NULL},
    {"code_floor_cantilever",
     "edition=2021; carries=wall and roof; size=2x10; spacing_in=16; ground_snow_psf=30; roof_width_in=24'", NULL},
    {"code_stud", "edition=2021; size=2x6; supports=one floor, roof and ceiling; height_in=97.125",
     "edition=2024; size=2x6; supports=roof; height_in=18'; wind_mph=115; ground_snow_psf=20; tributary_in=60; "
     "grade=No.2; exposure=B"},
    {"code_king_studs", "edition=2021; header_span_in=6'; wind_mph=115; exposure=B", NULL},
    {"code_panel_span", "edition=2021; rating=32/16", NULL},
    {"code_hole", "edition=2021; member=joist; size=2x10; diameter_in=2",
     "edition=2015; member=top plate; size=2x4; diameter_in=2"},
    {"code_bracing",
     "edition=2021; method=WSP; stories=2; story=1; wind_mph=115; exposure=B; seismic=B; line_spacing_in=25'; lines=2; "
     "eave_to_ridge_in=10'; "
     "wall_height_in=9'; gypsum_inside=yes; blocked=yes",
     "edition=2015; method=WSP; stories=2; story=1; wind_mph=115; exposure=B; seismic=B; line_spacing_in=25'; lines=2; "
     "eave_to_ridge_in=10'; "
     "wall_height_in=9'; gypsum_inside=yes; blocked=yes"},
    {"code_fastening", "edition=2021; first=rafter; second=top plate", NULL},
    {"code_sheathing", "edition=2021; sheet=plywood; use=roof; thickness_in=1/2", NULL},
    {"code_stairs", "edition=2021; riser_in=7.5", NULL},
    {"code_rules", "edition=2021; words=deck lateral", "edition=2021; words=nosing needed"},
};
enum { QUESTIONS = sizeof questions / sizeof *questions };

/* What every out-struct of this room begins with. */
typedef struct said {
    uint32_t struct_size, struct_id;
    uint64_t assumed, cautions, not_checked;
    frame_known known;
    frame_code_edition edition;
    const char *table, *source, *note;
} said;

static double space[200];

START_TEST(nothing_is_allocated) {
    const frame_allocator counting = {count_allocate, count_reallocate, count_release, NULL};
    ck_assert_msg(!frame_allocator_set(&counting), "%s", frame_error_text());
    for (int i = 0; i < QUESTIONS; i++) {
        const frame_calculation *asked = frame_calculation_find(questions[i].look_up);
        if (!asked->run) continue; /* an answer that is a list takes memory for its list */
        const char *question = questions[i].good ? questions[i].good : questions[i].weak;
        const void *in = ask_fill(asked, question);
        allocations = 0;
        ck_assert_msg(!asked->run(in, space, asked->out->size, NULL), "%s: %s", question, frame_error_text());
        ck_assert_msg(!allocations, "%s: %zu allocations", questions[i].look_up, allocations);
        in = ask_fill(asked, "edition=IBC 2018");
        ck_assert(asked->run(in, space, asked->out->size, NULL));
        ck_assert_msg(!allocations, "%s refused: %zu allocations", questions[i].look_up, allocations);
    }
}
END_TEST

/* Every result has its source, table and the two cautions that all have. */
START_TEST(every_result_says_where_it_is_from) {
    for (int i = 0; i < QUESTIONS; i++)
        for (int weak = 0; weak < 2; weak++) {
            const char *question = weak ? questions[i].weak : questions[i].good;
            const said *out = (const said *)space;
            if (!question) continue;
            ASKED(space, questions[i].look_up, question);
            ck_assert_msg(*out->source && *out->table && out->note, "%s", question);
            ck_assert(CAUTION(*out, LOCAL) && CAUTION(*out, SCOPE));
            ck_assert_msg(weak == (out->known == FRAME_KNOWN_SECONDARY || out->known == FRAME_KNOWN_MEMORY),
                          "%s: known %d", question, out->known);
            ck_assert(CAUTION(*out, SECONDARY) == (out->known == FRAME_KNOWN_SECONDARY));
            ck_assert(CAUTION(*out, MEMORY) == (out->known == FRAME_KNOWN_MEMORY));
            ck_assert(CAUTION(*out, NOTE) == (*out->note != 0));
            if (weak) says(space, questions[i].look_up, question, "in the printed code");
        }
}
END_TEST

/* The working, in each of its forms, says it too; and so does the note on a misprint. */
START_TEST(every_rendering_says_how_it_is_known) {
    static const frame_render_format forms[] = {FRAME_RENDER_TEXT, FRAME_RENDER_MARKDOWN, FRAME_RENDER_HTML,
                                                FRAME_RENDER_JSON};
    for (int i = 0; i < QUESTIONS; i++) {
        if (!questions[i].weak) continue;
        frame_working *working;
        ck_assert(!frame_working_new(&working));
        ck_assert(!ask_with(space, questions[i].look_up, working, questions[i].weak));
        for (int k = 0; k < 4; k++) {
            frame_text *text;
            ck_assert(!frame_text_new(&text) && !frame_working_render(working, forms[k], text));
            ck_assert_msg(strstr(frame_text_chars(text), "printed code"), "%s:\n%s", questions[i].weak,
                          frame_text_chars(text));
            frame_text_free(text);
        }
        frame_working_free(working);
    }
    says(space, "code_joist_span",
         "edition=2021; use=floor; size=2x10; species=SP; grade=No.3; spacing_in=16; live_psf=30; dead_psf=10",
         "there is a note on the figure");
}
END_TEST

int main(void) {
    TCase *tests = tcase_create("look-ups"), *first = tcase_create("memory");
    tcase_add_test(first, nothing_is_allocated);
    tcase_add_test(tests, every_result_says_where_it_is_from);
    tcase_add_test(tests, every_rendering_says_how_it_is_known);
    tcase_set_timeout(tests, 60);
    Suite *suite = suite_create("code look-ups");
    suite_add_tcase(suite, first);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
