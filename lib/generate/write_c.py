"""Writes, from what read_headers found, each room's tables, init functions, validation and layout asserts in C."""
import os

from read_headers import struct_id, valid_text

NEEDS = {"required": "FRAME_FIELD_REQUIRED", "optional": "FRAME_FIELD_OPTIONAL", "default": "FRAME_FIELD_DEFAULT",
         "result": "FRAME_FIELD_RESULT"}
NOTE = "/* Made from the public headers by lib/generate. Edit those. */\n"


def c_text(text):
    return '"%s"' % text.replace("\\", "\\\\").replace('"', '\\"').replace("\n", "\\n")


def c_number(value):
    if value is None:
        return "FRAME_NOT_GIVEN"
    text = repr(float(value))
    return text


def assumed_bits(struct):
    """The fields that can be assumed, each with its bit, in the order of the struct: append-only like the struct."""
    bits = {}
    for field in struct["fields"]:
        if field["need"] == "default" or field["kind"] == "list":
            bits[field["name"]] = len(bits)
    if len(bits) > 64:
        raise SystemExit("%s: more than 64 fields with defaults" % struct["name"])
    return bits


def room_header(room, reader):
    lines = [NOTE, "#ifndef FRAME_MADE_%s_FACTS_H" % room.upper(), "#define FRAME_MADE_%s_FACTS_H" % room.upper(), "",
             "#include <frame/%s.h>" % room, "", '#include "base/facts.h"', ""]
    for struct in reader.structs.values():
        if struct["room"] != room:
            continue
        name = struct["name"]
        lines.append("extern const frame_struct frame_%s_facts;" % name)
        if struct["kind"] == "out":
            lines.append("extern const frame_%s frame_%s_blank;" % (name, name))
        if has_input(struct):
            for field, bit in assumed_bits(struct).items():
                lines.append("#define FRAME_ASSUMED_%s_%s %d" % (name.upper(), field.upper(), bit))
            lines.append("/* Checks every field and applies the defaults; a bit of *assumed for each default used. */")
            lines.append("frame_status frame_%s_read(const frame_%s *in, frame_%s *read, uint64_t *assumed);" % ((name,) * 3))
            if struct["kind"] == "item":
                lines.append("/* The item at a place in a list that has been checked. */")
                lines.append("void frame_%s_item(const frame_%s *items, size_t index, frame_%s *item);" % ((name,) * 3))
    for words in reader.words.values():
        if words["room"] != room:
            continue
        lines.append("extern const frame_words frame_%s_words;" % words["name"])
        if words["found"]:
            lines.append("int frame_%s_valid(frame_%s value); /* written by hand beside the table */" % ((words["name"],) * 2))
    for calculation in reader.calculations.values():
        if calculation["room"] == room:
            lines.append("extern const frame_calculation frame_%s_calculation;" % calculation["name"])
            if not calculation["answer"]:
                lines.append("frame_status frame_%s_checked(const void *read, uint64_t assumed, void *out);" % calculation["name"])
            if has_columns(calculation):
                lines.append("size_t frame_%s_columns(const struct frame_columns *all, size_t from);" % calculation["name"])
    lines += ["", "#endif", ""]
    return "\n".join(lines)


def has_columns(calculation):
    """Whether a room has a way over many rows at once: in lib/ROOM/NAME_columns.c."""
    lib = os.path.join(os.path.dirname(os.path.abspath(__file__)), "..")
    return os.path.exists(os.path.join(lib, calculation["room"], calculation["name"] + "_columns.c"))


def has_input(struct):
    return struct["kind"] != "out" and any(f["need"] != "result" for f in struct["fields"])


def room_source(room, reader):
    lines = [NOTE, '#include "%s_facts.h"' % room, "", "#include <math.h>", "#include <stddef.h>", "#include <string.h>", "",
             '#include "base/answer.h"', '#include "base/error.h"', ""]
    lines += ['#include "%s_facts.h"' % other for other in sorted(rooms_used(room, reader) - {room})]
    lines += ['#include <frame/%s.h>' % other for other in sorted({view["room"] for c in reader.calculations.values()
              if c["room"] == room for view in c["views"]} - {room})]
    for words in reader.words.values():
        if words["room"] == room:
            lines += word_list(words)
    for struct in reader.structs.values():
        if struct["room"] == room:
            lines += layout(struct) + table(struct, reader)
            if has_input(struct):
                lines += init(struct) + read(struct, reader)
    for calculation in reader.calculations.values():
        if calculation["room"] == room:
            lines += answer(calculation) if calculation["answer"] else plain(calculation)
    return "\n".join(lines) + "\n"


def rooms_used(room, reader):
    """The rooms whose element structs and word lists this room's structs hold."""
    fields = [f for s in reader.structs.values() if s["room"] == room for f in s["fields"]]
    return ({reader.structs[f["element"]]["room"] for f in fields if f["kind"] == "list"} |
            {reader.words[f["words"]]["room"] for f in fields if f["kind"] in ("word", "words")})


def word_list(words):
    name = words["name"]
    if words["found"]:
        return ["static frame_status find_%s(const char *text, int32_t *value) { return frame_%s_find(text, value); }" % (name, name),
                "static const char *text_of_%s(int32_t value) { return frame_%s_name(value); }" % (name, name),
                "const frame_words frame_%s_words = {\"%s\", NULL, 0, find_%s, text_of_%s, frame_%s_count, frame_%s_at};"
                % ((name,) * 6), ""]
    lines = ["static const frame_word %s_words[] = {" % name]
    for entry in words["entries"]:
        others = "\\n".join(entry["words"][1:])
        lines.append("    {%d, %s, \"%s\", %s}," % (entry["value"], c_text(entry["words"][0]), others, c_text(entry["meaning"])))
    lines += ["};", "const frame_words frame_%s_words = {\"%s\", %s_words, %d, NULL, NULL, NULL, NULL};"
              % (name, name, name, len(words["entries"])), ""]
    return lines


def layout(struct):
    """No padding: the compiler's layout is the plain sum of the fields, on every machine of the same pointer size."""
    sizes = {"double": "8", "int32_t": "4", "uint32_t": "4", "uint64_t": "8", "size_t": "sizeof(size_t)"}
    name, lines, sums = struct["name"], [], []
    for c_type, field in struct["order"]:
        size = "sizeof(void *)" if c_type.endswith("*") else sizes.get(c_type, "4")
        lines.append("static_assert(offsetof(frame_%s, %s) == %s, \"padding before %s\");" % (name, field, " + ".join(sums) or "0", field))
        sums.append(size)
    lines.append("static_assert(sizeof(frame_%s) == %s, \"padding at the end of frame_%s\");" % (name, " + ".join(sums), name))
    return ["#include <assert.h>"] + lines + [""]


def table(struct, reader):
    name = struct["name"]
    bits = assumed_bits(struct)
    lines = ["static const frame_field %s_fields[] = {" % name]
    for field in struct["fields"]:
        element = "&frame_%s_facts" % field["element"] if field["kind"] == "list" else "NULL"
        count = "offsetof(frame_%s, %s)" % (name, field["count"]) if field.get("count") else "0"
        lines.append("    {%s, %s, %s, %s, %s, %s, %s, %s, %s, %s, FRAME_FIELD_%s, %s, %d, %d, offsetof(frame_%s, %s), %s, %d, 0}," % (
            c_text(field["name"]), c_text(field["unit"]), c_text(field["meaning"]), c_text(valid_text(field, reader.words)),
            c_text(field.get("fallback_text", "")), c_text(field.get("words", "")), element,
            c_number(field.get("low")), c_number(field.get("high")), c_number(field.get("fallback")),
            field["kind"].upper(), NEEDS[field["need"]], field.get("low_open", False), field.get("high_open", False),
            name, field["name"], count, bits.get(field["name"], -1)))
    lines += ["};"]
    if has_input(struct):
        lines += blank(struct)
    elif struct["kind"] == "out":
        lines += out_blank(struct)
    lines += ["const frame_struct frame_%s_facts = {%s, %s, %s_fields, %d, sizeof(frame_%s), 0x%08xu, %s};" % (
        name, c_text(name), c_text(struct["doc"]), name, len(struct["fields"]), name, struct_id(name),
        "&blank_%s" % name if has_input(struct) else "NULL"), ""]
    return lines


def blank(struct):
    name = struct["name"]
    values = [".struct_size = sizeof(frame_%s)" % name, ".struct_id = 0x%08xu" % struct_id(name)]
    for field in struct["fields"]:
        if field["kind"] == "number":
            values.append(".%s = FRAME_NOT_GIVEN" % field["name"])
        elif field["kind"] in ("integer", "word", "bool"):
            values.append(".%s = FRAME_NOT_GIVEN_INT" % field["name"])
    return ["static const frame_%s blank_%s = {%s};" % (name, name, ", ".join(values))]


def out_blank(struct):
    return [blank(struct)[0].replace("static const frame_%s blank_%s" % (struct["name"], struct["name"]),
                                     "const frame_%s frame_%s_blank" % (struct["name"], struct["name"]))]


def init(struct):
    name = struct["name"]
    return ["frame_status frame_%s_init_sized(frame_%s *in, size_t in_size) {" % (name, name),
            "    return frame_struct_init(&frame_%s_facts, in, in_size);" % name, "}", ""]


def range_test(field, variable):
    low = "%s %s %s" % (variable, ">" if field["low_open"] else ">=", c_number(field["low"]))
    high = "%s %s %s" % (variable, "<" if field["high_open"] else "<=", c_number(field["high"]))
    return "!(%s && %s)" % (low, high)


def read(struct, reader):
    """Straight-line validation. It only says good or bad; the table words the message."""
    name, bits = struct["name"], assumed_bits(struct)
    lines = ["frame_status frame_%s_read(const frame_%s *in, frame_%s *read, uint64_t *assumed) {" % ((name,) * 3),
             "    uint64_t used = 0;", "    int bad = 0;",
             "    if (!in || in->struct_id != 0x%08xu || in->struct_size != sizeof *in) {" % struct_id(name),
             "        frame_status status = frame_struct_widen(&frame_%s_facts, in, read);" % name,
             "        if (status) return status;", "    } else {", "        *read = *in;", "    }"]
    after = []
    for field in struct["fields"]:
        if field["need"] == "result" or field["kind"] == "handle":
            continue
        variable = "read->%s" % field["name"]
        if field["kind"] == "number":
            given, missing = "frame_given_at(&%s)" % variable, "!frame_given_at(&%s)" % variable
        else:
            given, missing = "%s != FRAME_NOT_GIVEN_INT" % variable, "%s == FRAME_NOT_GIVEN_INT" % variable
        if field["kind"] == "number" or (field["kind"] == "integer"):
            test = range_test(field, variable)
        elif field["kind"] == "word":
            words = reader.words[field["words"]]
            if words["found"]:
                test = "!frame_%s_valid(%s)" % (field["words"], variable)
            else:
                values = [e["value"] for e in words["entries"]]
                if values != list(range(values[0], values[0] + len(values))):
                    raise SystemExit("word list %s has gaps: it cannot be an input" % field["words"])
                test = "!(%s >= %d && %s <= %d)" % (variable, values[0], variable, values[-1])
        elif field["kind"] == "bool":
            test = "!(%s == 0 || %s == 1)" % (variable, variable)
        elif field["kind"] == "text":
            if field["need"] == "required":
                lines.append("    bad |= !%s;" % variable)
            continue
        else:
            after.append(field)
            continue
        if field["need"] == "required":
            lines.append("    bad |= %s;" % test)
        elif field["need"] == "optional":
            lines.append("    bad |= %s && %s;" % (given, test))
        else:
            bit = "used |= UINT64_C(1) << %d" % bits[field["name"]]
            if "fallback" in field:
                lines.append("    if (%s) %s = %s, %s;" % (missing, variable, c_number(field["fallback"])
                             if field["kind"] == "number" else "%d" % field["fallback"], bit))
                lines.append("    bad |= %s;" % test)
            else:
                lines += ["    if (%s)" % missing, "        %s;" % bit, "    else",
                          "        bad |= %s;" % test]
    lines += ["    if (bad) return frame_struct_explain(&frame_%s_facts, read);" % name]
    for field in after:
        lines += ["    if (frame_struct_list(&frame_%s_facts, \"%s\", read, %s, %s)) return frame_error_status();" % (
            name, field["name"], c_number(field["least"]), c_number(field["most"]))]
        if field["kind"] == "list":
            lines += ["    for (size_t i = 0; i < read->%s; i++) {" % field["count"],
                      "        frame_%s item;" % field["element"], "        uint64_t of_item = 0;",
                      "        const void *place = (const char *)read->%s + i * read->%s->struct_size;" % (field["name"], field["name"]),
                      "        if (frame_%s_read(place, &item, &of_item)) return frame_fail_within(\"%s[%%zu].\", i);" % (
                          field["element"], field["name"]),
                      "        if (of_item) used |= UINT64_C(1) << %d;" % bits[field["name"]], "    }"]
    lines += ["    *assumed |= used;", "    return FRAME_OK;", "}", ""]
    if struct["kind"] == "item":
        lines += ["void frame_%s_item(const frame_%s *items, size_t index, frame_%s *item) {" % ((name,) * 3),
                  "    uint64_t assumed = 0;",
                  "    (void)frame_%s_read((const void *)((const char *)items + index * items->struct_size), item, &assumed);" % name,
                  "}", ""]
    return lines


def views_of(calculation):
    lines, name = [], calculation["name"]
    if calculation["views"]:
        for view in calculation["views"]:
            lines.append("static frame_status %s_%s(const void *in, void **view) { return frame_%s_%s(in, (frame_%s **)view); }"
                         % (name, view["view"], name, view["view"], view["view"]))
        lines.append("static const frame_view %s_views[] = {%s};" % (name, ", ".join(
            "{\"%s\", %s_%s}" % (v["view"], name, v["view"]) for v in calculation["views"])))
    return lines


def plain(calculation):
    name = calculation["name"]
    return views_of(calculation) + [
        "static frame_status run_%s(const void *in, void *out, size_t out_size, frame_working *working) {" % name,
        "    return frame_%s_sized(in, out, out_size, working);" % name, "}",
        "static frame_status read_%s(const void *in, void *read, uint64_t *assumed) {" % name,
        "    return frame_%s_in_read(in, read, assumed);" % name, "}",
        "const frame_calculation frame_%s_calculation = {%s, %s, &frame_%s_in_facts, &frame_%s_out_facts, run_%s, NULL, NULL, 0, %s, %d, read_%s, frame_%s_checked, %s};" % (
            name, c_text(name), c_text(calculation["doc"]), name, name, name,
            "%s_views" % name if calculation["views"] else "NULL", len(calculation["views"]), name, name,
            "frame_%s_columns" % name if has_columns(calculation) else "NULL"), ""]


def answer(calculation):
    name = calculation["name"]
    lines = views_of(calculation) + [
        "static frame_status solve_%s(const void *in, frame_answer **answer, frame_working *working) {" % name,
        "    return frame_%s_solve(in, (frame_%s **)answer, working);" % (name, name), "}"]
    if calculation["lists"]:
        lines.append("static const frame_answer_list %s_lists[] = {%s};" % (name, ", ".join(
            "{\"%s\", \"%s\", %s}" % (l["item"], l["plural"], "&frame_%s_facts" % l["struct"] if l["struct"] else "NULL")
            for l in calculation["lists"])))
    lines += ["const frame_calculation frame_%s_calculation = {%s, %s, &frame_%s_in_facts, &frame_%s_out_facts, NULL, solve_%s, %s, %d, %s, %d};" % (
        name, c_text(name), c_text(calculation["doc"]), name, name, name,
        "%s_lists" % name if calculation["lists"] else "NULL", len(calculation["lists"]),
        "%s_views" % name if calculation["views"] else "NULL", len(calculation["views"]))]
    lines[-1] = lines[-1].replace("};", ", NULL, NULL, NULL};")
    lines += ["void frame_%s_free(frame_%s *answer) { frame_answer_free((frame_answer *)answer); }" % (name, name),
              "frame_status frame_%s_result_sized(const frame_%s *answer, frame_%s_out *out, size_t out_size) {" % ((name,) * 3),
              "    return frame_answer_result((const frame_answer *)answer, out, out_size);", "}"]
    for index, item in enumerate(calculation["lists"]):
        if not item["struct"]:
            lines += ["const double *frame_%s_%s(const frame_%s *answer, size_t *count) {" % (name, item["plural"], name),
                      "    return frame_answer_numbers((const frame_answer *)answer, %d, count);" % index, "}"]
            continue
        full = "%s_%s" % (name, item["item"])
        lines += ["size_t frame_%s_count(const frame_%s *answer) { return frame_answer_count((const frame_answer *)answer, %d); }" % (full, name, index),
                  "frame_status frame_%s_at_sized(const frame_%s *answer, size_t index, frame_%s *item, size_t item_size) {" % (full, name, full),
                  "    return frame_answer_at((const frame_answer *)answer, %d, index, item, item_size);" % index, "}"]
    return lines + [""]


def registry(reader):
    rooms = sorted({s["room"] for s in list(reader.structs.values()) + list(reader.words.values())})
    lines = [NOTE, '#include "base/facts.h"', ""] + ['#include "%s_facts.h"' % room for room in rooms] + [""]

    def array(c_type, name, items):
        return ["static const %s *const %s[] = {" % (c_type, name)] + ["    &%s," % i for i in items] + ["    NULL,", "};"]
    lines += array("frame_struct", "structs", ["frame_%s_facts" % n for n in reader.structs])
    lines += array("frame_words", "words", ["frame_%s_words" % n for n in reader.words])
    lines += array("frame_calculation", "calculations", ["frame_%s_calculation" % n for n in reader.calculations])
    lines += ["const frame_registry frame_all = {structs, %d, words, %d, calculations, %d};" % (
        len(reader.structs), len(reader.words), len(reader.calculations)), ""]
    return "\n".join(lines)
