/* The frame as IFC4 (ISO 16739-1) in a STEP file (ISO 10303-21): project, site, building, a storey for each level, the
 * sticks in them and what they are of. In metres. */
#include <string.h>

#include "base/error.h"
#include "packet/ifc.h"

/* What sticks are of, and what they belong to. */
typedef struct listing {
    const char *name;
    unsigned long id, placement;
} listing;

/* The place in a list of names; a new one is added. */
static size_t find_name(frame_array *list, const char *name) {
    for (size_t i = 0; i < list->count; i++)
        if (!strcmp(FRAME_ITEM(listing, *list, i).name, name)) return i;
    const listing made = {name, 0, 0};
    return frame_array_push(list, &made) ? list->count - 1 : (size_t)-1;
}

static void relate(frame_ifc *f, const char *relation, const char *of, size_t number, const unsigned long *members,
                   const size_t *belongs, size_t count, size_t which, unsigned long to) {
    int written = 0;
    frame_ifc_begin(f, relation);
    frame_ifc_guid(f, of, number);
    frame_text_add(f->into, "$,$,(");
    for (size_t i = 0; i < count; i++)
        if (belongs[i] == which) frame_text_addf(f->into, written++ ? ",#%lu" : "#%lu", members[i]);
    frame_text_addf(f->into, "),#%lu", to);
    frame_ifc_end(f);
}

static void head(frame_ifc *f) {
    frame_text_add(
        f->into,
        "ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION(('ViewDefinition [ReferenceView_V1.2]'),'2;1');\nFILE_NAME(");
    frame_ifc_string(f->into, f->inside->name);
    frame_text_addf(
        f->into,
        ",'1970-01-01T00:00:00',(''),(''),'libframe %s','libframe %s','');\nFILE_SCHEMA(('IFC4'));\nENDSEC;\nDATA;\n",
        frame_version(), frame_version());
}

static const frame_placement upright = {{0, 0, 0}, {1, 0, 0}, {0, 1, 0}, {0, 0, 1}};

static unsigned long units_of(frame_ifc *f) {
    static const char *const units[] = {"*,.LENGTHUNIT.,$,.METRE.", "*,.AREAUNIT.,$,.SQUARE_METRE.",
                                        "*,.VOLUMEUNIT.,$,.CUBIC_METRE.", "*,.MASSUNIT.,.KILO.,.GRAM.",
                                        "*,.PLANEANGLEUNIT.,$,.RADIAN."};
    unsigned long ids[5];
    for (int i = 0; i < 5; i++) {
        ids[i] = frame_ifc_begin(f, "IFCSIUNIT");
        frame_text_add(f->into, units[i]);
        frame_ifc_end(f);
    }
    const unsigned long all = frame_ifc_begin(f, "IFCUNITASSIGNMENT");
    frame_text_addf(f->into, "(#%lu,#%lu,#%lu,#%lu,#%lu)", ids[0], ids[1], ids[2], ids[3], ids[4]);
    frame_ifc_end(f);
    return all;
}

static unsigned long context_of(frame_ifc *f) {
    const unsigned long origin = frame_ifc_point(f, (vec3){0, 0, 0});
    const unsigned long axes = frame_ifc_begin(f, "IFCAXIS2PLACEMENT3D");
    frame_text_addf(f->into, "#%lu,$,$", origin);
    frame_ifc_end(f);
    const unsigned long context = frame_ifc_begin(f, "IFCGEOMETRICREPRESENTATIONCONTEXT");
    frame_text_addf(f->into, "$,'Model',3,1.E-7,#%lu,$", axes);
    frame_ifc_end(f);
    return context;
}

/* One part of the whole that another is made of. */
static void made_of(frame_ifc *f, const char *what, unsigned long whole, unsigned long part) {
    frame_ifc_begin(f, "IFCRELAGGREGATES");
    frame_ifc_guid(f, what, 0);
    frame_text_addf(f->into, "$,$,#%lu,(#%lu)", whole, part);
    frame_ifc_end(f);
}

/* Project, site and building; gives the context, the building and where it stands. */
static unsigned long frame_work(frame_ifc *f, unsigned long *building, unsigned long *place) {
    const unsigned long units = units_of(f), context = context_of(f);
    const unsigned long project = frame_ifc_begin(f, "IFCPROJECT");
    frame_ifc_guid(f, "project", 0);
    frame_ifc_string(f->into, f->inside->name);
    frame_text_addf(f->into, ",$,$,$,$,(#%lu),#%lu", context, units);
    frame_ifc_end(f);
    const unsigned long site_place = frame_ifc_placement(f, &upright, 0);
    const unsigned long site = frame_ifc_begin(f, "IFCSITE");
    frame_ifc_guid(f, "site", 0);
    frame_ifc_string(f->into, f->inside->name);
    frame_text_addf(f->into, ",$,$,#%lu,$,$,.ELEMENT.,$,$,$,$,$", site_place);
    frame_ifc_end(f);
    *place = frame_ifc_placement(f, &upright, site_place);
    *building = frame_ifc_begin(f, "IFCBUILDING");
    frame_ifc_guid(f, "building", 0);
    frame_ifc_string(f->into, f->inside->name);
    frame_text_addf(f->into, ",$,$,#%lu,$,$,.ELEMENT.,$,$,$", *place);
    frame_ifc_end(f);
    made_of(f, "project of site", project, site);
    made_of(f, "site of building", site, *building);
    return context;
}

static void storeys(frame_ifc *f, frame_array *levels, unsigned long building, unsigned long place) {
    for (size_t i = 0; i < levels->count; i++) {
        listing *level = &FRAME_ITEM(listing, *levels, i);
        level->placement = frame_ifc_placement(f, &upright, place);
        level->id = frame_ifc_begin(f, "IFCBUILDINGSTOREY");
        frame_ifc_guid(f, "storey", i);
        frame_ifc_string(f->into, level->name);
        frame_text_addf(f->into, ",$,$,#%lu,$,$,.ELEMENT.,$", level->placement);
        frame_ifc_end(f);
    }
    frame_ifc_begin(f, "IFCRELAGGREGATES");
    frame_ifc_guid(f, "building of storeys", 0);
    frame_text_addf(f->into, "$,$,#%lu,", building);
    for (size_t i = 0; i < levels->count; i++)
        frame_text_addf(f->into, i ? ",#%lu" : "(#%lu", FRAME_ITEM(listing, *levels, i).id);
    frame_text_add(f->into, ")");
    frame_ifc_end(f);
}

static frame_status write_all(frame_ifc *f, frame_array *levels, frame_array *woods, unsigned long *members,
                              size_t *level_of, size_t *wood_of) {
    const size_t count = f->inside->sticks.count;
    unsigned long building, place;
    for (size_t i = 0; i < count; i++) {
        frame_framing_stick stick;
        frame_framing_stick_at(f->framing, i, &stick);
        level_of[i] = find_name(levels, stick.level);
        wood_of[i] = find_name(woods, stick.grade);
        if (level_of[i] == (size_t)-1 || wood_of[i] == (size_t)-1) return FRAME_NO_MEMORY;
    }
    head(f);
    const unsigned long context = frame_work(f, &building, &place);
    storeys(f, levels, building, place);
    for (size_t i = 0; i < count; i++) {
        const frame_status status =
            frame_ifc_stick(f, i, context, FRAME_ITEM(listing, *levels, level_of[i]).placement, &members[i]);
        if (status) return status;
    }
    for (size_t i = 0; i < levels->count; i++)
        relate(f, "IFCRELCONTAINEDINSPATIALSTRUCTURE", "contained", i, members, level_of, count, i,
               FRAME_ITEM(listing, *levels, i).id);
    for (size_t i = 0; i < woods->count; i++) {
        const unsigned long material = frame_ifc_begin(f, "IFCMATERIAL");
        frame_ifc_string(f->into, FRAME_ITEM(listing, *woods, i).name);
        frame_text_add(f->into, ",$,'wood'");
        frame_ifc_end(f);
        relate(f, "IFCRELASSOCIATESMATERIAL", "material", i, members, wood_of, count, i, material);
    }
    frame_text_add(f->into, "ENDSEC;\nEND-ISO-10303-21;\n");
    return frame_text_state(f->into);
}

static uint64_t seed_of(const char *name) {
    uint64_t seed = 1469598103934665603u;
    for (const unsigned char *c = (const unsigned char *)name; *c; c++) seed = (seed ^ *c) * 1099511628211u;
    return seed;
}

frame_status frame_framing_ifc(const frame_framing *framing, frame_text *into) {
    if (!framing) return frame_fail(FRAME_REQUIRED, "framing", "NULL", "a framing", "framing: NULL is no framing");
    frame_ifc f = {.framing = framing, .inside = frame_framing_inside_of(framing), .into = into, .next = 1};
    const size_t count = f.inside->sticks.count;
    if (!count)
        return frame_fail(FRAME_IMPOSSIBLE, "sticks", "", "a framing with sticks placed",
                          "sticks: none were placed; there is nothing to show");
    f.seed = seed_of(f.inside->name);
    frame_array levels = {.item_size = sizeof(listing)}, woods = {.item_size = sizeof(listing)};
    unsigned long *members = frame_take(count * sizeof *members);
    size_t *level_of = frame_take(count * sizeof *level_of), *wood_of = frame_take(count * sizeof *wood_of);
    const frame_status status =
        members && level_of && wood_of ? write_all(&f, &levels, &woods, members, level_of, wood_of) : FRAME_NO_MEMORY;
    frame_give(members);
    frame_give(level_of);
    frame_give(wood_of);
    frame_array_give(&levels);
    frame_array_give(&woods);
    return status;
}
