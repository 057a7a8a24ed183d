/* The bunk cabin of the lakeside field station, shorter than in Lua: its roof and the header under it.
 * Usage: bunk_cabin FOLDER      writes FOLDER/index.html, cuts.csv and cuts.json */
#include <stdio.h>
#include <sys/stat.h>

#include <frame/frame.h>

static int report(void) {
    fprintf(stderr, "bunk_cabin: %s\n", frame_error_text());
    return 1;
}

/* A length as it is called out on site. */
static double tape(const char *text) {
    double inches = FRAME_NOT_GIVEN; /* what cannot be read stays not given, and is refused by name later */
    if (frame_tape_parse(text, &inches)) report();
    return inches;
}

int main(int count, char **words) {
    const char *folder = count > 1 ? words[1] : ".";
    frame_building_roof roof;
    frame_building_header header;
    frame_building_stock stock[3];
    frame_building_in cabin;

    frame_building_roof_init(&roof);
    roof.name = "cabin roof";
    roof.length_in = tape("20'");
    roof.run_in = tape("6'");
    roof.slope = 7.0 / 12;
    roof.overhang_in = 16;
    roof.size = FRAME_SIZE(2, 8);
    roof.dead_psf = 12;
    roof.snow_psf = 35;
    roof.roof_live_psf = 20;
    if (frame_species_find("S-P-F", &roof.species) || frame_grade_find("NO. 2", &roof.grade)) return report();

    frame_building_header_init(&header);
    header.name = "lake window header";
    header.carries = roof.name;
    header.opening_in = tape("6'");
    header.bearing_in = 3;
    header.size = FRAME_SIZE(2, 10);
    header.species = roof.species;
    header.grade = roof.grade;

    static const struct {
        int width;
        double length_in, price;
    } yard[] = {{8, 120, 12.90}, {8, 192, 21.70}, {10, 144, 21.40}};
    for (size_t i = 0; i < 3; i++) {
        frame_building_stock_init(&stock[i]);
        stock[i].size = FRAME_SIZE(2, yard[i].width);
        stock[i].length_in = yard[i].length_in;
        stock[i].price = yard[i].price;
    }

    frame_building_in_init(&cabin);
    cabin.name = "Bunk cabin, lakeside field station";
    cabin.roofs = &roof, cabin.roof_count = 1;
    cabin.headers = &header, cabin.header_count = 1;
    cabin.stock = stock, cabin.stock_count = 3;

    frame_building *answer;
    if (frame_building_solve(&cabin, &answer, NULL)) return report();
    for (size_t i = 0; i < frame_building_check_count(answer); i++) {
        frame_building_check check;
        frame_building_check_at(answer, i, &check);
        printf("%-20s %5.1f %%  %s, %s governs\n", check.name, 100 * check.ratio, check.passes ? "passes" : "FAILS",
               check.governs);
    }
    frame_building_free(answer);

    frame_packet *packet;
    if (frame_building_packet(&cabin, &packet)) return report();
    mkdir(folder, 0777);
    const frame_status status = frame_packet_write(packet, folder);
    frame_packet_free(packet);
    return status ? report() : 0;
}
