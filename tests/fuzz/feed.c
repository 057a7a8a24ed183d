#include "feed.h"

#include <math.h>
#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

char feed_untouched;
static _Thread_local const char *running = "";
_Thread_local size_t feed_input;
_Thread_local int feed_starved;

void feed_broken(const char *format, ...) {
    va_list list;
    va_start(list, format);
    fprintf(stderr, "input %zu: %s: ", feed_input, running);
    vfprintf(stderr, format, list);
    fprintf(stderr, "\n");
    va_end(list);
    abort();
}

void feed_begin(feed *f, const unsigned char *bytes, size_t size) {
    memset(f, 0, sizeof *f);
    f->bytes = bytes, f->size = size, f->hash = 14695981039346656037u;
}

void feed_end(feed *f) {
    for (size_t kind = 0; kind < feed_kind_count; kind++)
        for (int i = 0; i < FEED_HANDLES; i++)
            if (f->pool[kind][i]) feed_kinds[kind].release(f->pool[kind][i]);
    for (size_t i = 0; i < f->block_count; i++) free(f->blocks[i]);
    free(f->blocks);
}

/* -- plain values -- */

unsigned feed_byte(feed *f) {
    return f->at < f->size ? f->bytes[f->at++] : 0;
}

size_t feed_below(feed *f, size_t limit) {
    if (limit < 2) return 0;
    size_t value = feed_byte(f);
    if (limit > 256) value = value << 8 | feed_byte(f);
    return value % limit;
}

static double unit(feed *f) {
    const double high = feed_byte(f); /* the order of two calls in one expression is the compiler's own */
    return (high * 256 + feed_byte(f)) / 65535;
}

static double odd_number(feed *f) {
    static const double odd[] = {0,      -0.0,   1,     -1,  NAN, INFINITY, -INFINITY, 1e308,           -1e308,
                                 5e-324, 1e-300, 1e300, 0.5, 1e9, -1e9,     1e17,      FRAME_NOT_GIVEN, 2147483648.0};
    return odd[feed_below(f, sizeof odd / sizeof *odd)];
}

double feed_number(feed *f) {
    const unsigned how = feed_byte(f);
    if (how < 24) return odd_number(f);
    return (how < 128 ? 24 : 400) * unit(f) - (how & 1 ? 0 : 12);
}

static void *block(feed *f, size_t size) {
    if (f->block_count == f->block_room) {
        f->block_room = f->block_room ? 2 * f->block_room : 32;
        f->blocks = realloc(f->blocks, f->block_room * sizeof *f->blocks);
    }
    return f->blocks[f->block_count++] = calloc(1, size ? size : 1);
}

const char *feed_text(feed *f) {
    static const char *const known[] = {"2x10",
                                        "SPF",
                                        "Douglas Fir-Larch",
                                        "No.2",
                                        "7' 6-1/2\"",
                                        "8 in 12",
                                        "30 deg",
                                        "3-1/2",
                                        "16d",
                                        "joist_span",
                                        "joist_span_in",
                                        "species",
                                        "span_in",
                                        "",
                                        "1e400",
                                        "-0",
                                        "12.5",
                                        "\xff\xfe",
                                        "\"",
                                        "a,b\nc,d\n",
                                        "{\"a\": [1, 2]}",
                                        "S",
                                        "M_max",
                                        "2438 mm"};
    const unsigned how = feed_byte(f);
    if (how < 200) return known[feed_below(f, sizeof known / sizeof *known)];
    const size_t length = feed_below(f, how < 250 ? 24 : 700);
    char *chars = block(f, length + 1);
    for (size_t i = 0; i < length; i++) chars[i] = (char)feed_byte(f);
    return chars;
}

const char *feed_path(feed *f) {
    static const char *const paths[] = {"/nonexistent/folder/file", "/dev/full", "", "/dev/null/file"};
    return paths[feed_below(f, sizeof paths / sizeof *paths)];
}

int32_t feed_word(feed *f, const char *words) {
    const size_t count = frame_word_count(words);
    const unsigned how = feed_byte(f);
    if (how > 250 || !count) return how & 1 ? FRAME_NOT_GIVEN_INT : (int32_t)how - 252;
    return frame_word_at(words, feed_below(f, count));
}

/* -- structs from their facts -- */

static double in_range(feed *f, const frame_field *field) {
    const double low = field->low, high = field->high, wide = high - low;
    const unsigned how = feed_byte(f);
    if (how < 8) return low;
    if (how < 16) return high;
    /* Most ranges are far wider than what is usual: near the low end, then anywhere. */
    const double reach = how < 100 ? fmin(wide, 24) : how < 200 ? fmin(wide, 200) : wide;
    const double value = low + reach * (unit(f) * 0.98 + 0.01);
    return how & 1 ? fmin(fmax(floor(value * 16) / 16, low), high) : value;
}

static void fill(feed *f, const frame_struct *facts, void *object, int odd, int depth);

static void fill_list(feed *f, const frame_field *field, void *object, int odd, int depth) {
    const void *items = NULL;
    const size_t count = feed_below(f, feed_byte(f) > 250 ? 40 : depth ? 3 : 6);
    char *place = (char *)object + field->offset;
    if (!count && feed_byte(f) & 1) return;
    if (field->element) {
        const size_t size = frame_struct_size(field->element);
        char *made = block(f, size * count);
        for (size_t i = 0; i < count; i++) fill(f, field->element, made + i * size, odd, depth + 1);
        items = made;
    } else if (field->kind == FRAME_FIELD_WORDS) {
        int32_t *made = block(f, sizeof *made * count);
        for (size_t i = 0; i < count; i++) made[i] = feed_word(f, field->words);
        items = made;
    } else {
        double *made = block(f, sizeof *made * count);
        for (size_t i = 0; i < count; i++) made[i] = odd && feed_byte(f) < 16 ? odd_number(f) : in_range(f, field);
        items = made;
    }
    memcpy(place, &items, sizeof items);
    memcpy((char *)object + field->count_offset, &count, sizeof count);
}

static int kind_of(const char *name) {
    for (size_t i = 0; i < feed_kind_count; i++)
        if (!strcmp(feed_kinds[i].name, name)) return (int)i;
    return -1;
}

static void fill_field(feed *f, const frame_field *field, void *object, int odd, int depth) {
    char *place = (char *)object + field->offset;
    double number;
    int32_t integer;
    const void *pointer;
    switch (field->kind) {
        case FRAME_FIELD_NUMBER:
            number = odd && feed_byte(f) < 24 ? odd_number(f) : in_range(f, field);
            memcpy(place, &number, sizeof number);
            break;
        case FRAME_FIELD_INTEGER:
            number = odd && feed_byte(f) < 24 ? odd_number(f) : floor(in_range(f, field));
            integer = number >= -2147483648.0 && number < 2147483648.0 ? (int32_t)number : FRAME_NOT_GIVEN_INT;
            memcpy(place, &integer, sizeof integer);
            break;
        case FRAME_FIELD_WORD:
        case FRAME_FIELD_BOOL:
            integer = field->kind == FRAME_FIELD_BOOL ? (int32_t)(feed_byte(f) & 1) : feed_word(f, field->words);
            if (odd && feed_byte(f) < 16) integer = (int32_t)feed_byte(f) - 3;
            memcpy(place, &integer, sizeof integer);
            break;
        case FRAME_FIELD_TEXT:
            pointer = feed_text(f);
            memcpy(place, &pointer, sizeof pointer);
            break;
        case FRAME_FIELD_HANDLE:
            pointer = kind_of(field->words) < 0 ? NULL : feed_handle(f, kind_of(field->words));
            memcpy(place, &pointer, sizeof pointer);
            break;
        case FRAME_FIELD_LIST:
        case FRAME_FIELD_NUMBERS:
        case FRAME_FIELD_WORDS:
            fill_list(f, field, object, odd, depth);
            break;
        default:
            break;
    }
}

static void fill(feed *f, const frame_struct *facts, void *object, int odd, int depth) {
    if (frame_struct_init(facts, object, frame_struct_size(facts)))
        feed_broken("%s: no init", frame_struct_name(facts));
    for (size_t i = 0; i < frame_field_count(facts); i++) {
        const frame_field *field = frame_field_at(facts, i);
        if (field->need == FRAME_FIELD_RESULT) continue;
        const unsigned how = feed_byte(f);
        const unsigned chance = field->need == FRAME_FIELD_REQUIRED ? (odd ? 245 : 256) : 90;
        if (how < chance) fill_field(f, field, object, odd, depth);
    }
    if (odd && feed_byte(f) < 4) *(uint32_t *)object = (uint32_t)feed_byte(f); /* a size that cannot be */
}

const void *feed_struct(feed *f, const char *name) {
    const frame_struct *facts = frame_struct_find(name);
    if (!facts) feed_broken("%s: no such struct", name);
    void *object = block(f, frame_struct_size(facts));
    fill(f, facts, object, feed_byte(f) > 170, 0);
    return object;
}

const void *feed_array(feed *f, const char *name, size_t *count) {
    const frame_struct *facts = frame_struct_find(name);
    if (!facts) feed_broken("%s: no such struct", name);
    *count = feed_below(f, 6);
    char *items = block(f, *count * frame_struct_size(facts));
    for (size_t i = 0; i < *count; i++) fill(f, facts, items + i * frame_struct_size(facts), feed_byte(f) > 200, 0);
    return *count ? items : NULL;
}

const frame_struct *feed_facts(feed *f) {
    return frame_struct_at(feed_below(f, frame_struct_count()));
}
const frame_field *feed_field(feed *f) {
    const frame_struct *facts = feed_facts(f);
    return frame_field_at(facts, feed_below(f, frame_field_count(facts)));
}
const frame_calculation *feed_calculation(feed *f) {
    return frame_calculation_at(feed_below(f, frame_calculation_count()));
}

/* -- handles -- */

void *feed_handle(feed *f, int kind) {
    const size_t first = feed_below(f, FEED_HANDLES);
    for (size_t i = 0; i < FEED_HANDLES; i++)
        if (f->pool[kind][(first + i) % FEED_HANDLES]) return f->pool[kind][(first + i) % FEED_HANDLES];
    return NULL;
}

void *feed_take(feed *f, int kind) {
    void *handle = feed_handle(f, kind);
    for (size_t i = 0; handle && i < FEED_HANDLES; i++)
        if (f->pool[kind][i] == handle) f->pool[kind][i] = NULL;
    return handle;
}

void feed_made(feed *f, frame_status status, void *handle, int kind) {
    feed_status(f, status);
    if (status) {
        if (handle != FEED_UNTOUCHED) feed_broken("refused, and yet touched the place of the handle");
        return;
    }
    if (!handle || handle == FEED_UNTOUCHED) feed_broken("said ok, and gave no handle");
    void **slot = &f->pool[kind][feed_below(f, FEED_HANDLES)];
    if (*slot) feed_kinds[kind].release(*slot);
    *slot = handle;
}

/* -- what came back -- */

static void mix(feed *f, const void *bytes, size_t size) {
    for (size_t i = 0; i < size; i++) f->hash = (f->hash ^ ((const unsigned char *)bytes)[i]) * 1099511628211u;
}

void feed_status(feed *f, frame_status status) {
    const char *text = frame_error_text();
    mix(f, &status, sizeof status);
    if (!status && feed_starved) {
        f->swallowed++;
        if (getenv("FRAME_SWEEP_SHOW")) fprintf(stderr, "swallowed: %s\n", running);
    }
    feed_starved = 0;
    if (!status)
        f->succeeded++;
    else if (status == FRAME_NO_MEMORY)
        f->no_memory++;
    else
        f->refused++;
    if (status == FRAME_INTERNAL) feed_broken("the library calls this its own mistake: %s", text);
    if (status && (!*text || strchr(text, '\n'))) feed_broken("status %d with the text \"%s\"", status, text);
    if (status && !strcmp(frame_status_name(status), "unknown status")) feed_broken("status %d is not known", status);
}

void feed_figure(feed *f, double value) {
    if (!isfinite(value)) feed_broken("a figure is %g", value);
    mix(f, &value, sizeof value);
}

void feed_chars(feed *f, const char *chars) {
    if (chars) mix(f, chars, strlen(chars));
}

void *feed_out(feed *f, size_t size) {
    if (size > FEED_OUT) feed_broken("a struct of %zu bytes", size);
    return memset(f->out, 0xA5, size);
}

static void judge_field(feed *f, const frame_field *field) {
    const unsigned char *place = f->out + field->offset;
    double number;
    int32_t integer;
    const char *chars;
    switch (field->kind) {
        case FRAME_FIELD_NUMBER:
            memcpy(&number, place, sizeof number);
            if (!isfinite(number)) feed_broken("%s is %g", field->name, number);
            mix(f, &number, sizeof number);
            break;
        case FRAME_FIELD_WORD:
            memcpy(&integer, place, sizeof integer);
            if (integer != FRAME_NOT_GIVEN_INT && !frame_word_text(field->words, integer))
                feed_broken("%s is %d, no word of %s", field->name, integer, field->words);
            mix(f, &integer, sizeof integer);
            break;
        case FRAME_FIELD_INTEGER:
        case FRAME_FIELD_BOOL:
            mix(f, place, sizeof integer);
            break;
        case FRAME_FIELD_BITS:
            mix(f, place, sizeof(uint64_t));
            break;
        case FRAME_FIELD_TEXT:
            memcpy(&chars, place, sizeof chars);
            feed_chars(f, chars);
            break;
        default:
            break;
    }
}

void feed_judge(feed *f, frame_status status, const char *name, size_t size) {
    feed_status(f, status);
    if (status) {
        for (size_t i = 0; i < size; i++)
            if (f->out[i] != 0xA5) feed_broken("refused, and yet touched byte %zu of %s", i, name);
        return;
    }
    const frame_struct *facts = frame_struct_find(name);
    if (!facts) return;
    for (size_t i = 0; i < frame_field_count(facts); i++) judge_field(f, frame_field_at(facts, i));
    if (f->hash & 7) return;
    frame_text *text = NULL;
    if (frame_text_new(&text)) {
        feed_starved = 0;
        return;
    }
    feed_status(f, frame_result_text(f->out, text));
    frame_text_free(text);
}

/* By a mark made of the name, so that inputs saved mean much the same after functions have been added. */
static size_t choose(feed *f) {
    static _Thread_local uint16_t marks[2048];
    static _Thread_local size_t marked;
    for (; marked < feed_call_count; marked++) {
        uint32_t mark = 2166136261u;
        for (const char *c = feed_calls[marked].name; *c; c++) mark = (mark ^ (unsigned char)*c) * 16777619u;
        marks[marked] = (uint16_t)(mark ^ (mark >> 16));
    }
    const unsigned high = feed_byte(f);
    const uint16_t wanted = (uint16_t)(high << 8 | feed_byte(f));
    size_t nearest = 0;
    for (size_t i = 1; i < feed_call_count; i++)
        if ((uint16_t)(marks[i] - wanted) < (uint16_t)(marks[nearest] - wanted)) nearest = i;
    return nearest;
}

void feed_run(feed *f, const unsigned char *bytes, size_t size, const char *only) {
    const int trace = getenv("FRAME_FUZZ_TRACE") != NULL; /* to find the call in which two builds part */
    feed_begin(f, bytes, size);
    for (int calls = 0; f->at < f->size && calls < 48; calls++) {
        size_t which = choose(f);
        for (size_t i = 0; only && feed_byte(f) < 160 && i < feed_call_count; i++)
            if (!strcmp(feed_calls[i].name, only)) which = i;
        running = feed_calls[which].name;
        frame_error_clear();
        feed_starved = 0;
        feed_calls[which].run(f);
        if (trace) printf("%zu %s %016llx\n", feed_input, running, (unsigned long long)f->hash);
    }
}
