/* STEP's texts, reals, global ids and placements. */
#include <math.h>
#include <string.h>

#include "packet/ifc.h"

/* A text in STEP: apostrophes doubled, what lies outside ASCII as its number, which this file's names seldom need. */
void frame_ifc_string(frame_text *into, const char *text) {
    char one[2] = {0, 0};
    frame_text_add(into, "'");
    for (const unsigned char *c = (const unsigned char *)text; *c; c++) {
        one[0] = (char)*c;
        if (*c == '\'')
            frame_text_add(into, "''");
        else if (*c == '\\')
            frame_text_add(into, "\\\\");
        else if (*c < 0x80 && *c >= 0x20)
            frame_text_add(into, one);
        else if (*c >= 0xC0) { /* the first byte of a character: decode it whole */
            uint32_t code = *c < 0xE0 ? *c & 0x1Fu : *c < 0xF0 ? *c & 0x0Fu : *c & 0x07u;
            while ((c[1] & 0xC0) == 0x80) code = code << 6 | (*++c & 0x3Fu);
            frame_text_addf(into, "\\X4\\%08lX\\X0\\", (unsigned long)code);
        }
    }
    frame_text_add(into, "'");
}

/* A real in STEP has a point. */
void frame_ifc_real(frame_text *into, double value) {
    const size_t before = frame_text_length(into);
    frame_text_add_number(into, fabs(value) < 1e-15 ? 0 : value, 17);
    const char *written = frame_text_chars(into) + before;
    if (strchr(written, 'e')) return;
    if (!strchr(written, '.')) frame_text_add(into, ".");
}

static void add_vector(frame_text *into, vec3 v) {
    frame_text_add(into, "(");
    frame_ifc_real(into, v.x);
    frame_text_add(into, ",");
    frame_ifc_real(into, v.y);
    frame_text_add(into, ",");
    frame_ifc_real(into, v.z);
    frame_text_add(into, ")");
}

unsigned long frame_ifc_begin(frame_ifc *f, const char *entity) {
    frame_text_addf(f->into, "#%lu=%s(", f->next, entity);
    return f->next++;
}
void frame_ifc_end(frame_ifc *f) {
    frame_text_add(f->into, ");\n");
}

/* A global id: 22 digits of IFC's base 64, from the name it is for, so that the same site has the same ids each time.
 */
void frame_ifc_guid(frame_ifc *f, const char *of, size_t number) {
    static const char digits[] = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz_$";
    uint64_t hash[2] = {f->seed ^ 14695981039346656037u, f->seed + 1099511628211u + number};
    char guid[23] = {0};
    for (const unsigned char *c = (const unsigned char *)of; *c; c++)
        for (int h = 0; h < 2; h++) hash[h] = (hash[h] ^ *c ^ (uint64_t)h) * 1099511628211u;
    for (int h = 0; h < 2; h++)
        hash[h] ^= number * 0x9E3779B97F4A7C15u, hash[h] *= 0xBF58476D1CE4E5B9u, hash[h] ^= hash[h] >> 31;
    guid[0] = digits[hash[0] & 3];
    for (int i = 1; i < 22; i++) {
        const int h = i > 11;
        guid[i] = digits[hash[h] >> (6 * (h ? i - 12 : i - 1)) & 63];
    }
    frame_text_addf(f->into, "'%s',$,", guid);
}

unsigned long frame_ifc_point(frame_ifc *f, vec3 at) {
    const unsigned long id = frame_ifc_begin(f, "IFCCARTESIANPOINT");
    add_vector(f->into, at);
    frame_ifc_end(f);
    return id;
}
static unsigned long direction(frame_ifc *f, vec3 at) {
    const unsigned long id = frame_ifc_begin(f, "IFCDIRECTION");
    add_vector(f->into, at);
    frame_ifc_end(f);
    return id;
}

unsigned long frame_ifc_placement(frame_ifc *f, const frame_placement *p, unsigned long within) {
    const unsigned long at = frame_ifc_point(f, vec_times(p->origin, FRAME_METRES)), z = direction(f, p->z),
                        x = direction(f, p->x);
    const unsigned long axes = frame_ifc_begin(f, "IFCAXIS2PLACEMENT3D");
    frame_text_addf(f->into, "#%lu,#%lu,#%lu", at, z, x);
    frame_ifc_end(f);
    const unsigned long id = frame_ifc_begin(f, "IFCLOCALPLACEMENT");
    if (within)
        frame_text_addf(f->into, "#%lu,#%lu", within, axes);
    else
        frame_text_addf(f->into, "$,#%lu", axes);
    frame_ifc_end(f);
    return id;
}
