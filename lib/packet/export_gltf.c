/* The frame as glTF 2.0 (Khronos): each stick a node with its name, its solid a mesh in its own axes, in metres. */
#include <math.h>
#include <stdint.h>
#include <stdio.h>
#include <string.h>

#include "base/error.h"
#include "packet/export.h"

/* A stick's mesh: each face has its own corners, so that edges stay sharp. */
typedef struct mesh {
    frame_array floats;  /* of position and normal, by turns */
    frame_array indices; /* uint16_t */
    float low[3], high[3];
} mesh;

static int push_floats(mesh *m, vec3 at, int is_position) {
    const float values[3] = {(float)at.x, (float)at.y, (float)at.z};
    for (int a = 0; a < 3; a++) {
        if (!frame_array_push(&m->floats, &values[a])) return 0;
        if (!is_position) continue;
        if (values[a] < m->low[a]) m->low[a] = values[a];
        if (values[a] > m->high[a]) m->high[a] = values[a];
    }
    return 1;
}

static int push_face(mesh *m, const frame_polygon *polygon) {
    const vec3 normal = frame_export_normal(polygon);
    const size_t first = m->floats.count / 6;
    for (int i = 0; i < polygon->count; i++)
        if (!push_floats(m, vec_times(polygon->corners[i], FRAME_METRES), 1) || !push_floats(m, normal, 0)) return 0;
    for (int i = 1; i + 1 < polygon->count; i++) {
        const uint16_t corners[3] = {(uint16_t)first, (uint16_t)(first + (size_t)i), (uint16_t)(first + (size_t)i + 1)};
        for (int k = 0; k < 3; k++)
            if (!frame_array_push(&m->indices, &corners[k])) return 0;
    }
    return 1;
}

static frame_status make_mesh(const frame_stick *stick, mesh *m) {
    *m = (mesh){.floats.item_size = sizeof(float), .indices.item_size = sizeof(uint16_t)};
    for (int a = 0; a < 3; a++) m->low[a] = HUGE_VALF, m->high[a] = -HUGE_VALF;
    for (size_t cell = 0; cell < frame_export_cells(stick); cell++)
        for (int face = 0; face < frame_export_faces(stick, cell); face++) {
            frame_polygon polygon;
            frame_export_face(stick, cell, face, &polygon);
            if (!push_face(m, &polygon)) return FRAME_NO_MEMORY;
        }
    return m->floats.count / 6 < 65535 ? FRAME_OK : FRAME_TOO_LARGE;
}

/* -- bytes -- */

static int push_bytes(frame_array *bytes, const void *from, size_t count) {
    for (size_t i = 0; i < count; i++)
        if (!frame_array_push(bytes, (const char *)from + i)) return 0;
    return 1;
}

/* glTF's numbers are little-endian whatever the machine's are. */
static int push_mesh(frame_array *bytes, const mesh *m) {
    for (size_t i = 0; i < m->floats.count; i++) {
        uint32_t bits;
        memcpy(&bits, &FRAME_ITEM(float, m->floats, i), sizeof bits);
        const unsigned char four[4] = {bits & 255, bits >> 8 & 255, bits >> 16 & 255, bits >> 24 & 255};
        if (!push_bytes(bytes, four, 4)) return 0;
    }
    for (size_t i = 0; i < m->indices.count; i++) {
        const uint16_t index = FRAME_ITEM(uint16_t, m->indices, i);
        const unsigned char two[2] = {index & 255, index >> 8 & 255};
        if (!push_bytes(bytes, two, 2)) return 0;
    }
    static const char zeros[4] = {0};
    return push_bytes(bytes, zeros, (4 - bytes->count % 4) % 4);
}

static void add_base64(frame_text *into, const frame_array *bytes) {
    static const char digits[] = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    const unsigned char *b = bytes->items;
    char four[5] = {0};
    for (size_t i = 0; i < bytes->count; i += 3) {
        const size_t left = bytes->count - i;
        const uint32_t three =
            (uint32_t)b[i] << 16 | (left > 1 ? (uint32_t)b[i + 1] << 8 : 0) | (left > 2 ? b[i + 2] : 0);
        four[0] = digits[three >> 18];
        four[1] = digits[three >> 12 & 63];
        four[2] = left > 1 ? digits[three >> 6 & 63] : '=';
        four[3] = left > 2 ? digits[three & 63] : '=';
        frame_text_add(into, four);
    }
}

/* -- JSON -- */

typedef struct gltf {
    const frame_framing *framing;
    const frame_framing_inside *inside;
    frame_array bytes;
    frame_text *nodes, *meshes, *accessors, *views;
} gltf;

static void add_numbers(frame_text *into, const double *numbers, int count, int digits) {
    frame_text_add(into, "[");
    for (int i = 0; i < count; i++) {
        if (i) frame_text_add(into, ",");
        frame_text_add_number(into, numbers[i], digits);
    }
    frame_text_add(into, "]");
}

static void add_node(gltf *g, size_t i) {
    frame_framing_stick stick;
    const frame_placement *p = &FRAME_ITEM(frame_stick *, g->inside->sticks, i)->placement;
    frame_framing_stick_at(g->framing, i, &stick);
    const double matrix[16] = {p->x.x,
                               p->x.y,
                               p->x.z,
                               0,
                               p->y.x,
                               p->y.y,
                               p->y.z,
                               0,
                               p->z.x,
                               p->z.y,
                               p->z.z,
                               0,
                               p->origin.x * FRAME_METRES,
                               p->origin.y * FRAME_METRES,
                               p->origin.z * FRAME_METRES,
                               1};
    frame_text_addf(g->nodes, ",\n  {\"mesh\": %zu, \"name\": ", i);
    char name[200];
    snprintf(name, sizeof name, "%.90s, %.90s", stick.name, stick.of);
    frame_text_add_json(g->nodes, name);
    frame_text_add(g->nodes, ", \"matrix\": ");
    add_numbers(g->nodes, matrix, 16, 17);
    frame_text_add(g->nodes, ", \"extras\": {\"section\": ");
    frame_text_add_json(g->nodes, stick.section);
    frame_text_add(g->nodes, ", \"grade\": ");
    frame_text_add_json(g->nodes, stick.grade);
    frame_text_add(g->nodes, ", \"length_in\": ");
    frame_text_add_json_number(g->nodes, stick.length_in);
    frame_text_add(g->nodes, "}}");
}

static void add_mesh(gltf *g, size_t i, const mesh *m, size_t offset) {
    frame_framing_stick stick;
    frame_framing_stick_at(g->framing, i, &stick);
    const size_t corners = m->floats.count / 6, floats = m->floats.count * 4, indices = m->indices.count;
    const double low[3] = {m->low[0], m->low[1], m->low[2]}, high[3] = {m->high[0], m->high[1], m->high[2]};
    const char *comma = i ? ",\n  " : "\n  ";
    frame_text_addf(g->meshes,
                    "%s{\"primitives\": [{\"attributes\": {\"POSITION\": %zu, \"NORMAL\": %zu}, \"indices\": %zu, "
                    "\"material\": %d}]}",
                    comma, 3 * i, 3 * i + 1, 3 * i + 2, (int)stick.stage - 1);
    frame_text_addf(
        g->views,
        "%s{\"buffer\": 0, \"byteOffset\": %zu, \"byteLength\": %zu, \"byteStride\": 24, \"target\": 34962},\n  "
        "{\"buffer\": 0, \"byteOffset\": %zu, \"byteLength\": %zu, \"target\": 34963}",
        comma, offset, floats, offset + floats, 2 * indices);
    frame_text_addf(g->accessors,
                    "%s{\"bufferView\": %zu, \"componentType\": 5126, \"count\": %zu, \"type\": \"VEC3\", \"min\": ",
                    comma, 2 * i, corners);
    add_numbers(g->accessors, low, 3, 17);
    frame_text_add(g->accessors, ", \"max\": ");
    add_numbers(g->accessors, high, 3, 17);
    frame_text_addf(g->accessors,
                    "},\n  {\"bufferView\": %zu, \"byteOffset\": 12, \"componentType\": 5126, \"count\": %zu, "
                    "\"type\": \"VEC3\"},\n  "
                    "{\"bufferView\": %zu, \"componentType\": 5123, \"count\": %zu, \"type\": \"SCALAR\"}",
                    2 * i, corners, 2 * i + 1, indices);
}

static frame_status one_stick(gltf *g, size_t i) {
    mesh m;
    frame_status status = make_mesh(FRAME_ITEM(frame_stick *, g->inside->sticks, i), &m);
    const size_t offset = g->bytes.count;
    if (!status && !push_mesh(&g->bytes, &m)) status = FRAME_NO_MEMORY;
    if (!status) {
        add_node(g, i);
        add_mesh(g, i, &m, offset);
    }
    frame_array_give(&m.floats);
    frame_array_give(&m.indices);
    return status;
}

/* One shade of wood for each stage. */
static const char *const shades[] = {"0.55, 0.42, 0.27", "0.78, 0.62, 0.40", "0.90, 0.78, 0.56",
                                     "0.62, 0.47, 0.33", "0.84, 0.69, 0.48", "0.70, 0.52, 0.31"};

static void put_together(gltf *g, size_t count, frame_text *into) {
    /* The root turns z up into glTF's y up. */
    frame_text_add(into,
                   "{\n \"asset\": {\"version\": \"2.0\", \"generator\": \"libframe\"},\n \"scene\": 0,\n \"scenes\": "
                   "[{\"nodes\": [0]}],\n"
                   " \"nodes\": [\n  {\"name\": ");
    frame_text_add_json(into, g->inside->name);
    frame_text_add(into, ", \"rotation\": [-0.70710678118654752, 0, 0, 0.70710678118654752], \"children\": [");
    for (size_t i = 0; i < count; i++) frame_text_addf(into, i ? ",%zu" : "%zu", i + 1);
    frame_text_add(into, "]}");
    frame_text_add(into, frame_text_chars(g->nodes));
    frame_text_add(into, "\n ],\n \"meshes\": [");
    frame_text_add(into, frame_text_chars(g->meshes));
    frame_text_add(into, "\n ],\n \"materials\": [");
    for (int i = 0; i < (int)(sizeof shades / sizeof *shades); i++)
        frame_text_addf(
            into,
            "%s\n  {\"name\": \"%s\", \"pbrMetallicRoughness\": {\"baseColorFactor\": [%s, 1], \"metallicFactor\": 0, "
            "\"roughnessFactor\": 0.9}}",
            i ? "," : "", frame_word_text("stage", i + 1), shades[i]);
    frame_text_add(into, "\n ],\n \"accessors\": [");
    frame_text_add(into, frame_text_chars(g->accessors));
    frame_text_add(into, "\n ],\n \"bufferViews\": [");
    frame_text_add(into, frame_text_chars(g->views));
    frame_text_addf(into,
                    "\n ],\n \"buffers\": [{\"byteLength\": %zu, \"uri\": \"data:application/octet-stream;base64,",
                    g->bytes.count);
    add_base64(into, &g->bytes);
    frame_text_add(into, "\"}]\n}\n");
}

frame_status frame_framing_gltf(const frame_framing *framing, frame_text *into) {
    if (!framing) return frame_fail(FRAME_REQUIRED, "framing", "NULL", "a framing", "framing: NULL is no framing");
    gltf g = {.framing = framing, .inside = frame_framing_inside_of(framing), .bytes.item_size = 1};
    frame_text **texts[] = {&g.nodes, &g.meshes, &g.accessors, &g.views};
    const size_t count = g.inside->sticks.count;
    if (!count)
        return frame_fail(FRAME_IMPOSSIBLE, "sticks", "", "a framing with sticks placed",
                          "sticks: none were placed; there is nothing to show");
    frame_status status = FRAME_OK;
    for (int i = 0; i < 4 && !status; i++) status = frame_text_new(texts[i]);
    for (size_t i = 0; i < count && !status; i++) status = one_stick(&g, i);
    for (int i = 0; i < 4 && !status; i++) status = frame_text_state(*texts[i]);
    if (!status) put_together(&g, count, into);
    for (int i = 0; i < 4; i++) frame_text_free(*texts[i]);
    frame_array_give(&g.bytes);
    return status ? status : frame_text_state(into);
}
