/* A stranger's program: the header, one call that succeeds and one that fails. */
#include <stdio.h>
#include <string.h>

#include <frame/frame.h>

int main(void) {
    frame_section_in in;
    frame_section_out out;
    if (frame_section_in_init(&in) || frame_size_find("2x10", &in.size)) return 1;
    if (frame_section(&in, &out, NULL)) return 2;
    if (out.section_modulus_in3 < 21.38 || out.section_modulus_in3 > 21.4) return 3;
    in.plies = 0;
    if (frame_section(&in, &out, NULL) != FRAME_OUT_OF_RANGE || !strstr(frame_error_text(), "plies")) return 4;
    printf("libframe %s: a 2x10 has S = %.2f in3\n", frame_version(), out.section_modulus_in3);
    return 0;
}
