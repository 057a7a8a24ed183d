/* The entry of libFuzzer; and, with any compiler, a program that replays saved inputs or makes its own.
 *   fuzz FILE|FOLDER...     replays
 *   fuzz --random N [NAME]  N inputs from a fixed seed, all functions or mostly one
 *   fuzz --hash N           the same, printing a hash of all that came back: equal for every compiler
 */
#include <dirent.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "feed.h"

int LLVMFuzzerTestOneInput(const unsigned char *bytes, size_t size);
int LLVMFuzzerTestOneInput(const unsigned char *bytes, size_t size) {
    static feed f;
    feed_run(&f, bytes, size, getenv("FRAME_FUZZ_ONLY"));
    feed_end(&f);
    return 0;
}

#ifdef FRAME_FUZZ_MAIN
static size_t replayed;

static void replay(const char *path) {
    static unsigned char bytes[1 << 16];
    DIR *folder = opendir(path);
    if (folder) {
        for (const struct dirent *entry; (entry = readdir(folder));) {
            char inside[4096];
            if (entry->d_name[0] == '.') continue;
            snprintf(inside, sizeof inside, "%s/%s", path, entry->d_name);
            replay(inside);
        }
        closedir(folder);
        return;
    }
    FILE *file = fopen(path, "rb");
    if (!file) {
        fprintf(stderr, "%s cannot be read\n", path);
        exit(1);
    }
    const size_t size = fread(bytes, 1, sizeof bytes, file);
    fclose(file);
    LLVMFuzzerTestOneInput(bytes, size);
    replayed++;
}

static uint64_t next(uint64_t *state) { /* splitmix64 */
    uint64_t z = (*state += 0x9E3779B97F4A7C15u);
    z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9u;
    z = (z ^ (z >> 27)) * 0x94D049BB133111EBu;
    return z ^ (z >> 31);
}

static int make_own(size_t count, const char *only, int show_hash) {
    static unsigned char bytes[1536];
    static feed f;
    uint64_t hash = 0;
    size_t succeeded = 0, refused = 0;
    const char *from = getenv("FRAME_FUZZ_FROM"); /* to go on after one that broke */
    for (size_t i = from ? strtoul(from, NULL, 10) : 0; i < count; i++) {
        uint64_t state = i;
        feed_input = i;
        for (size_t k = 0; k < sizeof bytes; k++) bytes[k] = (unsigned char)(next(&state) >> 24);
        feed_run(&f, bytes, sizeof bytes, only);
        succeeded += f.succeeded, refused += f.refused;
        hash = hash * 1099511628211u ^ f.hash;
        feed_end(&f);
    }
    if (show_hash)
        printf("%016llx\n", (unsigned long long)hash);
    else
        printf("%zu inputs: %zu calls succeeded, %zu were refused, nothing broke\n", count, succeeded, refused);
    return succeeded == 0;
}

int main(int argc, char **argv) {
    if (argc > 2 && (!strcmp(argv[1], "--random") || !strcmp(argv[1], "--hash")))
        return make_own(strtoul(argv[2], NULL, 10), argc > 3 ? argv[3] : NULL, !strcmp(argv[1], "--hash"));
    for (int i = 1; i < argc; i++) replay(argv[i]);
    printf("%zu inputs replayed, nothing broke\n", replayed);
    return replayed == 0;
}
#endif
