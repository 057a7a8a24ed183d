/* The packet of a framed site: whole files, escaped names, every list, nothing fetched from anywhere. */
#include <check.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "../building/random_site.h"
#include "../scratch.h"

static frame_framing *work(void) {
    dice d = {1};
    const plan p = {.width = 240,
                    .depth = 144,
                    .height = 96,
                    .snow = 30,
                    .slope = 0.5,
                    .overhang = 12,
                    .roof_dead = 10,
                    .windows = 1,
                    .on_posts = 1};
    frame_site *site;
    frame_framing_in in;
    frame_framing *framing = NULL;
    ck_assert_int_eq(random_site(&d, &p, &site), 0);
    ck_assert_int_eq(add_window(site, "<hatch> & \"flap\"", "left", 40, 36), 0);
    frame_framing_in_init(&in);
    in.site = site;
    frame_building_stock stock;
    frame_building_stock_init(&stock);
    stock.size = FRAME_SIZE(2, 10), stock.length_in = 240, stock.price = 30;
    in.stock = &stock, in.stock_count = 1;
    ck_assert_msg(!frame_framing_solve(&in, &framing, NULL), "%s", frame_error_text());
    frame_site_free(site);
    return framing;
}

START_TEST(the_page_is_whole) {
    frame_framing *framing = work();
    frame_packet *packet;
    frame_text *text;
    ck_assert_msg(!frame_framing_packet(framing, &packet), "%s", frame_error_text());
    frame_note_kind kinds[1000];
    const size_t note_total = frame_framing_note_count(framing);
    ck_assert_uint_lt(note_total, 1000);
    for (size_t i = 0; i < note_total; i++) {
        frame_framing_note note;
        frame_framing_note_at(framing, i, &note);
        kinds[i] = note.kind;
    }
    frame_framing_free(framing); /* the packet has its own copy */
    frame_text_new(&text);
    ck_assert_int_eq(frame_packet_html(packet, text), FRAME_OK);
    const char *page = frame_text_chars(text);
    ck_assert_ptr_nonnull(strstr(page, "&lt;hatch&gt; &amp; &quot;flap&quot;"));
    ck_assert_ptr_null(strstr(page, "<hatch>"));
    ck_assert_ptr_null(strstr(page, "src=\"http"));
    ck_assert_ptr_null(strstr(page, "href=\"http"));
    ck_assert_ptr_nonnull(strstr(page, "<label for=\"find\">"));
    ck_assert_ptr_nonnull(strstr(page, "type=\"checkbox\""));
    ck_assert_ptr_nonnull(strstr(page, "id=\"unchecked\""));
    /* Under the verdict: how much there is to read, each with its sheet. */
    const char *mind = strstr(page, "class=\"mind\"");
    ck_assert_ptr_nonnull(mind);
    ck_assert(mind > strstr(page, "class=\"verdict\"") && mind < strstr(page, "</header>"));
    char counted[80];
    int notes[4] = {0};
    for (size_t i = 0; i < note_total; i++) notes[kinds[i]]++;
    snprintf(counted, sizeof counted, "<a href=\"#unchecked\">%d things", notes[FRAME_NOTE_NOT_CHECKED]);
    ck_assert_ptr_nonnull(strstr(mind, counted));
    snprintf(counted, sizeof counted, "<a href=\"#assumed\">%d assumptions", notes[FRAME_NOTE_ASSUMED]);
    ck_assert_ptr_nonnull(strstr(mind, counted));
    ck_assert_ptr_nonnull(strstr(page, "No stock of 2x6 is given"));
    ck_assert_ptr_nonnull(strstr(page, "</html>"));
    frame_text_free(text);
    frame_packet_free(packet);
}
END_TEST

START_TEST(the_lists_are_there) {
    frame_framing *framing = work();
    frame_packet *packet;
    char folder[300], path[400];
    ck_assert_ptr_nonnull(scratch_folder(folder, sizeof folder, "site"));
    ck_assert_int_eq(frame_framing_packet(framing, &packet), FRAME_OK);
    ck_assert_int_eq(frame_packet_write(packet, folder), FRAME_OK);
    static const char *const files[] = {"index.html",
                                        "all.json",
                                        "checks.csv",
                                        "loads.csv",
                                        "sticks.csv",
                                        "boards.csv",
                                        "notes.csv",
                                        "main-the-frame-as-it-stands.svg",
                                        "front-from-outside.svg"};
    for (size_t i = 0; i < sizeof files / sizeof *files; i++) {
        snprintf(path, sizeof path, "%s/%s", folder, files[i]);
        ck_assert_msg(access(path, R_OK) == 0, "%s", path);
    }
    frame_text *text;
    frame_text_new(&text);
    ck_assert_int_eq(frame_packet_cuts_csv(packet, text), FRAME_OK);
    size_t lines = 0;
    for (const char *c = frame_text_chars(text); *c; c++) lines += *c == '\n';
    ck_assert_uint_eq(lines, frame_framing_stick_count(framing) + 1);
    ck_assert_int_eq(frame_packet_write(packet, "no/such/folder"), FRAME_NOT_WRITTEN);
    ck_assert_int_eq(frame_framing_packet(NULL, &packet), FRAME_REQUIRED);
    frame_text_free(text);
    frame_packet_free(packet);
    frame_framing_free(framing);
    snprintf(path, sizeof path, "rm -r %s", folder);
    ck_assert_int_eq(system(path), 0);
}
END_TEST

/* What spreadsheets would take for a formula is a text; names that differ by capitals have files of their own. */
START_TEST(hostile_names) {
    dice d = {1};
    const plan p = {.width = 240, .depth = 144, .height = 96, .slope = 0.5, .roof_dead = 10};
    frame_site *site;
    frame_framing_in in;
    frame_framing *framing;
    frame_packet *packet;
    char folder[300], path[400];
    ck_assert_int_eq(random_site(&d, &p, &site), 0);
    ck_assert_int_eq(add_wall(site, "=1+1", 400, 0, 500, 0), 0);
    ck_assert_int_eq(add_wall(site, "FRONT", 600, 0, 700, 0), 0);
    ck_assert_int_eq(add_wall(site, "\xe5\xb1\x8b", 800, 0, 900, 0), 0);
    frame_framing_in_init(&in);
    in.site = site;
    ck_assert_msg(!frame_framing_solve(&in, &framing, NULL), "%s", frame_error_text());
    ck_assert_msg(!frame_framing_packet(framing, &packet), "%s", frame_error_text());
    ck_assert_ptr_nonnull(scratch_folder(folder, sizeof folder, "hostile"));
    ck_assert_int_eq(frame_packet_write(packet, folder), FRAME_OK);
    static const char *const files[] = {"front-from-outside.svg", "front-from-outside-2.svg", "from-outside.svg"};
    for (size_t i = 0; i < sizeof files / sizeof *files; i++) {
        snprintf(path, sizeof path, "%s/%s", folder, files[i]);
        ck_assert_msg(access(path, R_OK) == 0, "%s", path);
    }
    frame_text *text;
    frame_text_new(&text);
    ck_assert_int_eq(frame_packet_cuts_csv(packet, text), FRAME_OK);
    ck_assert_ptr_null(strstr(frame_text_chars(text), ",=1+1"));
    ck_assert_ptr_nonnull(strstr(frame_text_chars(text), ",'=1+1"));
    frame_text_free(text);
    frame_packet_free(packet);
    frame_framing_free(framing);
    frame_site_free(site);
    snprintf(path, sizeof path, "rm -r %s", folder);
    ck_assert_int_eq(system(path), 0);
}
END_TEST

START_TEST(open_standards) {
    frame_framing *framing = work();
    frame_text *text;
    frame_text_new(&text);
    const size_t count = frame_framing_stick_count(framing);
    ck_assert_int_eq(frame_framing_gltf(framing, text), FRAME_OK);
    size_t meshes = 0;
    for (const char *at = frame_text_chars(text); (at = strstr(at, "\"primitives\"")); at++) meshes++;
    ck_assert_uint_eq(meshes, count);
    frame_text_clear(text);
    ck_assert_int_eq(frame_framing_ifc(framing, text), FRAME_OK);
    size_t members = 0;
    for (const char *at = frame_text_chars(text); (at = strstr(at, "=IFCMEMBER(")); at++) members++;
    ck_assert_uint_eq(members, count);
    ck_assert_ptr_nonnull(strstr(frame_text_chars(text), "END-ISO-10303-21;"));
    frame_text_clear(text);
    ck_assert_int_eq(frame_framing_dxf(framing, text), FRAME_OK);
    size_t outlines = 0;
    for (const char *at = frame_text_chars(text); (at = strstr(at, "\nPOLYLINE\n")); at++) outlines++;
    ck_assert_uint_eq(outlines, count);
    frame_framing_free(framing);
    dice d = {1};
    const plan p = {.width = 240, .depth = 144, .height = 96, .slope = 0.5, .roof_dead = 10};
    frame_site *site;
    frame_framing_in in;
    ck_assert_int_eq(random_site(&d, &p, &site), 0);
    frame_framing_in_init(&in);
    in.site = site, in.sticks = 0;
    ck_assert_int_eq(frame_framing_solve(&in, &framing, NULL), FRAME_OK);
    ck_assert_int_eq(frame_framing_gltf(framing, text), FRAME_IMPOSSIBLE);
    ck_assert_int_eq(frame_framing_ifc(framing, text), FRAME_IMPOSSIBLE);
    ck_assert_int_eq(frame_framing_dxf(framing, text), FRAME_IMPOSSIBLE);
    frame_framing_free(framing);
    frame_site_free(site);
    frame_text_free(text);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("site packet");
    TCase *tests = tcase_create("all");
    tcase_set_timeout(tests, 60);
    tcase_add_test(tests, the_page_is_whole);
    tcase_add_test(tests, the_lists_are_there);
    tcase_add_test(tests, hostile_names);
    tcase_add_test(tests, open_standards);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
