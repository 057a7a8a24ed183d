/* The version, as text and as a number. */
#include <frame/base.h>

#define TEXT_OF(x) #x
#define TEXT(x) TEXT_OF(x)

const char *frame_version(void) {
    return TEXT(FRAME_VERSION_MAJOR) "." TEXT(FRAME_VERSION_MINOR) "." TEXT(FRAME_VERSION_PATCH);
}

int32_t frame_version_number(void) {
    return FRAME_VERSION_MAJOR * 1000000 + FRAME_VERSION_MINOR * 1000 + FRAME_VERSION_PATCH;
}
