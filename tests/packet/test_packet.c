/* The packet: whole files, one page without a network, lists that read back. */
#include <check.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include <frame/frame.h>

#include "../scratch.h"

static frame_building_roof roof;

static frame_building_in describe(void) {
    frame_building_in in;
    frame_building_roof_init(&roof);
    roof.name = "roof of the <boathouse> & dock";
    roof.length_in = 120;
    roof.run_in = 60;
    roof.slope = 0.5;
    roof.snow_psf = 30;
    roof.roof_live_psf = 20;
    roof.size = FRAME_SIZE(2, 6);
    frame_species_find("DFL", &roof.species);
    frame_grade_find("No.2", &roof.grade);
    frame_building_in_init(&in);
    in.name = "Boathouse \"north\"";
    in.roofs = &roof;
    in.roof_count = 1;
    return in;
}

static char *read_file(const char *path) {
    FILE *file = fopen(path, "rb");
    ck_assert_msg(file != NULL, "%s", path);
    char *bytes = calloc(1, 4000000);
    ck_assert_uint_gt(fread(bytes, 1, 3999999, file), 0);
    fclose(file);
    return bytes;
}

START_TEST(writes_three_whole_files) {
    char folder[300], path[400];
    const frame_building_in in = describe();
    frame_packet *packet;
    ck_assert_ptr_nonnull(scratch_folder(folder, sizeof folder, "packet"));
    ck_assert_msg(frame_building_packet(&in, &packet) == FRAME_OK, "%s", frame_error_text());
    ck_assert_int_eq(frame_packet_write(packet, folder), FRAME_OK);
    static const char *const files[] = {"index.html", "cuts.csv", "cuts.json"};
    for (size_t i = 0; i < 3; i++) {
        snprintf(path, sizeof path, "%s/%s", folder, files[i]);
        char *text = read_file(path);
        if (i == 0) {
            ck_assert_ptr_nonnull(strstr(text, "&lt;boathouse&gt; &amp; dock"));
            ck_assert_ptr_null(strstr(text, "<boathouse>"));
            ck_assert_ptr_null(strstr(text, "src=\"http"));
            ck_assert_ptr_null(strstr(text, "<script src"));
            ck_assert_ptr_nonnull(strstr(text, "<a href=\"#cautions\">"));
            ck_assert_ptr_nonnull(strstr(text, "</html>"));
            ck_assert_ptr_nonnull(strstr(text, "<svg"));
            ck_assert_ptr_nonnull(strstr(text, "<math"));
        }
        free(text);
        unlink(path);
    }
    rmdir(folder);
    frame_packet_free(packet);
    frame_packet_free(NULL);
}
END_TEST

START_TEST(a_folder_that_is_not_there) {
    const frame_building_in in = describe();
    frame_packet *packet;
    ck_assert_int_eq(frame_building_packet(&in, &packet), FRAME_OK);
    ck_assert_int_eq(frame_packet_write(packet, "no/such/folder"), FRAME_NOT_WRITTEN);
    ck_assert_ptr_nonnull(strstr(frame_error_text(), "no/such/folder"));
    ck_assert_int_eq(frame_packet_write(packet, NULL), FRAME_REQUIRED);
    frame_packet_free(packet);
}
END_TEST

START_TEST(the_cut_list_in_csv) {
    const frame_building_in in = describe();
    frame_packet *packet;
    frame_text *text;
    ck_assert_int_eq(frame_building_packet(&in, &packet), FRAME_OK);
    ck_assert_int_eq(frame_text_new(&text), FRAME_OK);
    ck_assert_int_eq(frame_packet_cuts_csv(packet, text), FRAME_OK);
    ck_assert_ptr_nonnull(strstr(frame_text_chars(text), "piece,of,section,grade,count,length_in,length,cuts\r\n"));
    ck_assert_ptr_nonnull(
        strstr(frame_text_chars(text), "rafter,roof of the <boathouse> & dock,2x6,Douglas Fir-Larch No.2,18,"));
    frame_text_free(text);
    frame_packet_free(packet);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("packet");
    TCase *tests = tcase_create("all");
    tcase_add_test(tests, writes_three_whole_files);
    tcase_add_test(tests, a_folder_that_is_not_there);
    tcase_add_test(tests, the_cut_list_in_csv);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
