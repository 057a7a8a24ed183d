/* Which pieces are cut alike, and which are opposite hands of them: those of one kind, section and length are compared,
 * by the kernel, with the first of each gang found among them. */
#include <stdlib.h>

#include "roof/members.h"

enum { LIST_PIECES, LIST_GANGS = 3 };

typedef struct entry {
    int32_t kind, section, piece;
    double length;
} entry;

static int by_size(const void *a, const void *b) {
    const entry *x = a, *y = b;
    if (x->kind != y->kind) return x->kind - y->kind;
    if (x->section != y->section) return x->section - y->section;
    if (x->length != y->length) return x->length < y->length ? -1 : 1;
    return x->piece - y->piece;
}

typedef struct gathering {
    members *m;
    frame_stick *const *sticks;
    entry *entries;
    int32_t *leader; /* of each piece the first of its gang; itself for that one */
    uint8_t *opposite;
} gathering;

static frame_roof_members_piece *piece_at(const gathering *g, size_t i) {
    return &FRAME_ANSWER_ITEM(frame_roof_members_piece, g->m->answer, LIST_PIECES, i);
}

/* Looks back among the entries of the same size for the first of a gang. */
static frame_status join(gathering *g, size_t index) {
    const entry *own = &g->entries[index];
    g->leader[own->piece] = own->piece;
    for (size_t k = index; k--;) {
        const entry *other = &g->entries[k];
        frame_stick_likeness likeness;
        if (other->kind != own->kind || other->section != own->section || own->length - other->length > 1e-6) break;
        if (g->leader[other->piece] != other->piece) continue;
        const frame_status status = frame_stick_compare(g->sticks[other->piece], g->sticks[own->piece], &likeness);
        if (status) return status;
        if (likeness == FRAME_STICK_DIFFERENT) continue;
        g->leader[own->piece] = other->piece;
        g->opposite[own->piece] = likeness == FRAME_STICK_OPPOSITE;
        break;
    }
    return FRAME_OK;
}

/* Gangs are numbered in the order of their first pieces, and the hand of the first one is the gang's. */
static frame_status give(gathering *g, size_t count) {
    for (size_t i = 0; i < count; i++) {
        frame_roof_members_piece *piece = piece_at(g, i), *leader = piece_at(g, (size_t)g->leader[i]);
        if (leader->gang == FRAME_NOT_GIVEN_INT) {
            frame_roof_members_gang *gang = frame_answer_add(g->m->answer, LIST_GANGS);
            if (!gang) return FRAME_NO_MEMORY;
            gang->kind = piece->kind;
            gang->count = gang->opposite = 0;
            gang->first = (int32_t)i;
            gang->length_in = piece->length_in;
            gang->section = piece->section;
            leader->gang = (int32_t)frame_answer_count(g->m->answer, LIST_GANGS);
        }
        piece->gang = leader->gang;
        frame_roof_members_gang *gang =
            &FRAME_ANSWER_ITEM(frame_roof_members_gang, g->m->answer, LIST_GANGS, piece->gang - 1);
        *(g->opposite[i] == g->opposite[gang->first] ? &gang->count : &gang->opposite) += 1;
    }
    return FRAME_OK;
}

frame_status members_find_gangs(members *m, frame_stick *const *sticks) {
    const size_t count = m->set->pieces.count;
    gathering g = {m, sticks, frame_take((count + 1) * sizeof(entry)), frame_take((count + 1) * sizeof(int32_t)),
                   frame_take_zeroed(count + 1, 1)};
    frame_status status = g.entries && g.leader && g.opposite ? FRAME_OK : FRAME_NO_MEMORY;
    for (size_t i = 0; !status && i < count; i++) {
        const members_piece *piece = &FRAME_ITEM(members_piece, m->set->pieces, i);
        g.entries[i] = (entry){piece->kind, piece->section, (int32_t)i, piece_at(&g, i)->length_in};
    }
    if (!status && count) qsort(g.entries, count, sizeof(entry), by_size);
    for (size_t i = 0; !status && i < count; i++) status = join(&g, i);
    if (!status) status = give(&g, count);
    frame_give(g.entries);
    frame_give(g.leader);
    frame_give(g.opposite);
    return status;
}
