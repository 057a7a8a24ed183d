/* The frame as IFC4 (ISO 16739-1) in a STEP file (ISO 10303-21): each stick an IfcMember with its cut solid as closed
 * faceted breps, its material and its quantities, under the storey that is its level. In metres. */
#include <math.h>
#include <stdint.h>
#include <string.h>

#include "base/error.h"
#include "packet/export.h"

typedef struct ifc {
    const frame_framing *framing;
    const frame_framing_inside *inside;
    frame_text *into;
    unsigned long next;
    uint64_t seed;
} ifc;

/* A text in STEP: apostrophes doubled, what lies outside ASCII as its number, which this file's names seldom need. */
static void add_string(frame_text *into, const char *text) {
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
static void add_real(frame_text *into, double value) {
    const size_t before = frame_text_length(into);
    frame_text_add_number(into, fabs(value) < 1e-15 ? 0 : value, 17);
    const char *written = frame_text_chars(into) + before;
    if (strchr(written, 'e')) return;
    if (!strchr(written, '.')) frame_text_add(into, ".");
}

static void add_vector(frame_text *into, vec3 v) {
    frame_text_add(into, "(");
    add_real(into, v.x);
    frame_text_add(into, ",");
    add_real(into, v.y);
    frame_text_add(into, ",");
    add_real(into, v.z);
    frame_text_add(into, ")");
}

static unsigned long begin(ifc *f, const char *entity) {
    frame_text_addf(f->into, "#%lu=%s(", f->next, entity);
    return f->next++;
}
static void end(ifc *f) {
    frame_text_add(f->into, ");\n");
}

/* A global id: 22 digits of IFC's base 64, from the name it is for, so that the same site has the same ids each time.
 */
static void add_guid(ifc *f, const char *of, size_t number) {
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

static unsigned long point(ifc *f, vec3 at) {
    const unsigned long id = begin(f, "IFCCARTESIANPOINT");
    add_vector(f->into, at);
    end(f);
    return id;
}
static unsigned long direction(ifc *f, vec3 at) {
    const unsigned long id = begin(f, "IFCDIRECTION");
    add_vector(f->into, at);
    end(f);
    return id;
}

static unsigned long placement(ifc *f, const frame_placement *p, unsigned long within) {
    const unsigned long at = point(f, vec_times(p->origin, FRAME_METRES)), z = direction(f, p->z),
                        x = direction(f, p->x);
    const unsigned long axes = begin(f, "IFCAXIS2PLACEMENT3D");
    frame_text_addf(f->into, "#%lu,#%lu,#%lu", at, z, x);
    end(f);
    const unsigned long id = begin(f, "IFCLOCALPLACEMENT");
    if (within)
        frame_text_addf(f->into, "#%lu,#%lu", within, axes);
    else
        frame_text_addf(f->into, "$,#%lu", axes);
    end(f);
    return id;
}

/* -- one stick -- */

static unsigned long face(ifc *f, const frame_polygon *polygon) {
    unsigned long corners[POLYGON_CORNERS];
    for (int i = 0; i < polygon->count; i++) corners[i] = point(f, vec_times(polygon->corners[i], FRAME_METRES));
    const unsigned long loop = begin(f, "IFCPOLYLOOP");
    for (int i = 0; i < polygon->count; i++) frame_text_addf(f->into, i ? ",#%lu" : "(#%lu", corners[i]);
    frame_text_add(f->into, ")");
    end(f);
    const unsigned long bound = begin(f, "IFCFACEOUTERBOUND");
    frame_text_addf(f->into, "#%lu,.T.", loop);
    end(f);
    const unsigned long id = begin(f, "IFCFACE");
    frame_text_addf(f->into, "(#%lu)", bound);
    end(f);
    return id;
}

static unsigned long brep(ifc *f, const frame_stick *stick, size_t cell) {
    unsigned long faces[CELL_FACES];
    const int count = frame_export_faces(stick, cell);
    for (int i = 0; i < count; i++) {
        frame_polygon polygon;
        frame_export_face(stick, cell, i, &polygon);
        faces[i] = face(f, &polygon);
    }
    const unsigned long shell = begin(f, "IFCCLOSEDSHELL");
    for (int i = 0; i < count; i++) frame_text_addf(f->into, i ? ",#%lu" : "(#%lu", faces[i]);
    frame_text_add(f->into, ")");
    end(f);
    const unsigned long id = begin(f, "IFCFACETEDBREP");
    frame_text_addf(f->into, "#%lu", shell);
    end(f);
    return id;
}

static unsigned long shape(ifc *f, const frame_stick *stick, unsigned long context) {
    unsigned long breps[64];
    size_t count = 0;
    for (size_t cell = 0; cell < frame_export_cells(stick) && count < 64; cell++)
        if (frame_export_faces(stick, cell)) breps[count++] = brep(f, stick, cell);
    const unsigned long body = begin(f, "IFCSHAPEREPRESENTATION");
    frame_text_addf(f->into, "#%lu,'Body','Brep',", context);
    for (size_t i = 0; i < count; i++) frame_text_addf(f->into, i ? ",#%lu" : "(#%lu", breps[i]);
    frame_text_add(f->into, ")");
    end(f);
    const unsigned long id = begin(f, "IFCPRODUCTDEFINITIONSHAPE");
    frame_text_addf(f->into, "$,$,(#%lu)", body);
    end(f);
    return id;
}

static unsigned long quantity(ifc *f, const char *entity, const char *name, double value) {
    const unsigned long id = begin(f, entity);
    frame_text_addf(f->into, "'%s',$,$,", name);
    add_real(f->into, value);
    frame_text_add(f->into, ",$");
    end(f);
    return id;
}

static void quantities(ifc *f, unsigned long member, const frame_framing_stick *stick, double volume_in3,
                       size_t number) {
    const unsigned long length = quantity(f, "IFCQUANTITYLENGTH", "Length", stick->length_in * FRAME_METRES),
                        volume = quantity(f, "IFCQUANTITYVOLUME", "NetVolume", volume_in3 * pow(FRAME_METRES, 3)),
                        weight = quantity(f, "IFCQUANTITYWEIGHT", "NetWeight", stick->weight_lb * 0.45359237);
    const unsigned long set = begin(f, "IFCELEMENTQUANTITY");
    add_guid(f, "quantities", number);
    frame_text_addf(f->into, "'Qto_MemberBaseQuantities',$,$,(#%lu,#%lu,#%lu)", length, volume, weight);
    end(f);
    begin(f, "IFCRELDEFINESBYPROPERTIES");
    add_guid(f, "defines", number);
    frame_text_addf(f->into, "$,$,(#%lu),#%lu", member, set);
    end(f);
}

static const char *member_type(const char *name) {
    if (strstr(name, "stud") || strstr(name, "cripple") || strstr(name, "jack stud")) return "STUD";
    if (strstr(name, "plate") || strstr(name, "sill")) return "PLATE";
    if (strstr(name, "rafter") || strstr(name, "hip") || strstr(name, "valley")) return "RAFTER";
    if (strstr(name, "post")) return "POST";
    if (strstr(name, "ridge")) return "PURLIN";
    return "MEMBER";
}

static frame_status one_stick(ifc *f, size_t i, unsigned long context, unsigned long storey, unsigned long *member) {
    frame_framing_stick stick;
    frame_stick_solid_out solid;
    const frame_stick *wood = FRAME_ITEM(frame_stick *, f->inside->sticks, i);
    frame_framing_stick_at(f->framing, i, &stick);
    const frame_status status = frame_stick_solid(wood, &solid);
    if (status) return status;
    const unsigned long at = placement(f, &wood->placement, storey), body = shape(f, wood, context);
    *member = begin(f, "IFCMEMBER");
    add_guid(f, "stick", i);
    add_string(f->into, stick.name);
    frame_text_add(f->into, ",");
    add_string(f->into, stick.section);
    frame_text_add(f->into, ",");
    add_string(f->into, stick.of);
    frame_text_addf(f->into, ",#%lu,#%lu,'%zu',.%s.", at, body, i + 1, member_type(stick.name));
    end(f);
    quantities(f, *member, &stick, solid.volume_in3, i);
    return FRAME_OK;
}

/* -- what they are of, and what they belong to -- */

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

static void relate(ifc *f, const char *relation, const char *of, size_t number, const unsigned long *members,
                   const size_t *belongs, size_t count, size_t which, unsigned long to) {
    int written = 0;
    begin(f, relation);
    add_guid(f, of, number);
    frame_text_add(f->into, "$,$,(");
    for (size_t i = 0; i < count; i++)
        if (belongs[i] == which) frame_text_addf(f->into, written++ ? ",#%lu" : "#%lu", members[i]);
    frame_text_addf(f->into, "),#%lu", to);
    end(f);
}

static void head(ifc *f) {
    frame_text_add(
        f->into,
        "ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION(('ViewDefinition [ReferenceView_V1.2]'),'2;1');\nFILE_NAME(");
    add_string(f->into, f->inside->name);
    frame_text_addf(
        f->into,
        ",'1970-01-01T00:00:00',(''),(''),'libframe %s','libframe %s','');\nFILE_SCHEMA(('IFC4'));\nENDSEC;\nDATA;\n",
        frame_version(), frame_version());
}

static const frame_placement upright = {{0, 0, 0}, {1, 0, 0}, {0, 1, 0}, {0, 0, 1}};

/* Project, units, context, site and building; gives the context, the building and where it stands. */
static unsigned long frame_work(ifc *f, unsigned long *building, unsigned long *place) {
    const unsigned long length = begin(f, "IFCSIUNIT");
    frame_text_add(f->into, "*,.LENGTHUNIT.,$,.METRE.");
    end(f);
    const unsigned long area = begin(f, "IFCSIUNIT");
    frame_text_add(f->into, "*,.AREAUNIT.,$,.SQUARE_METRE.");
    end(f);
    const unsigned long volume = begin(f, "IFCSIUNIT");
    frame_text_add(f->into, "*,.VOLUMEUNIT.,$,.CUBIC_METRE.");
    end(f);
    const unsigned long mass = begin(f, "IFCSIUNIT");
    frame_text_add(f->into, "*,.MASSUNIT.,.KILO.,.GRAM.");
    end(f);
    const unsigned long angle = begin(f, "IFCSIUNIT");
    frame_text_add(f->into, "*,.PLANEANGLEUNIT.,$,.RADIAN.");
    end(f);
    const unsigned long units = begin(f, "IFCUNITASSIGNMENT");
    frame_text_addf(f->into, "(#%lu,#%lu,#%lu,#%lu,#%lu)", length, area, volume, mass, angle);
    end(f);
    const unsigned long origin = point(f, (vec3){0, 0, 0});
    const unsigned long axes = begin(f, "IFCAXIS2PLACEMENT3D");
    frame_text_addf(f->into, "#%lu,$,$", origin);
    end(f);
    const unsigned long context = begin(f, "IFCGEOMETRICREPRESENTATIONCONTEXT");
    frame_text_addf(f->into, "$,'Model',3,1.E-7,#%lu,$", axes);
    end(f);
    const unsigned long project = begin(f, "IFCPROJECT");
    add_guid(f, "project", 0);
    add_string(f->into, f->inside->name);
    frame_text_addf(f->into, ",$,$,$,$,(#%lu),#%lu", context, units);
    end(f);
    const unsigned long site_place = placement(f, &upright, 0);
    const unsigned long site = begin(f, "IFCSITE");
    add_guid(f, "site", 0);
    add_string(f->into, f->inside->name);
    frame_text_addf(f->into, ",$,$,#%lu,$,$,.ELEMENT.,$,$,$,$,$", site_place);
    end(f);
    *place = placement(f, &upright, site_place);
    *building = begin(f, "IFCBUILDING");
    add_guid(f, "building", 0);
    add_string(f->into, f->inside->name);
    frame_text_addf(f->into, ",$,$,#%lu,$,$,.ELEMENT.,$,$,$", *place);
    end(f);
    begin(f, "IFCRELAGGREGATES");
    add_guid(f, "project of site", 0);
    frame_text_addf(f->into, "$,$,#%lu,(#%lu)", project, site);
    end(f);
    begin(f, "IFCRELAGGREGATES");
    add_guid(f, "site of building", 0);
    frame_text_addf(f->into, "$,$,#%lu,(#%lu)", site, *building);
    end(f);
    return context;
}

static void storeys(ifc *f, frame_array *levels, unsigned long building, unsigned long place) {
    for (size_t i = 0; i < levels->count; i++) {
        listing *level = &FRAME_ITEM(listing, *levels, i);
        level->placement = placement(f, &upright, place);
        level->id = begin(f, "IFCBUILDINGSTOREY");
        add_guid(f, "storey", i);
        add_string(f->into, level->name);
        frame_text_addf(f->into, ",$,$,#%lu,$,$,.ELEMENT.,$", level->placement);
        end(f);
    }
    begin(f, "IFCRELAGGREGATES");
    add_guid(f, "building of storeys", 0);
    frame_text_addf(f->into, "$,$,#%lu,", building);
    for (size_t i = 0; i < levels->count; i++)
        frame_text_addf(f->into, i ? ",#%lu" : "(#%lu", FRAME_ITEM(listing, *levels, i).id);
    frame_text_add(f->into, ")");
    end(f);
}

static frame_status write_all(ifc *f, frame_array *levels, frame_array *woods, unsigned long *members, size_t *level_of,
                              size_t *wood_of) {
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
            one_stick(f, i, context, FRAME_ITEM(listing, *levels, level_of[i]).placement, &members[i]);
        if (status) return status;
    }
    for (size_t i = 0; i < levels->count; i++)
        relate(f, "IFCRELCONTAINEDINSPATIALSTRUCTURE", "contained", i, members, level_of, count, i,
               FRAME_ITEM(listing, *levels, i).id);
    for (size_t i = 0; i < woods->count; i++) {
        const unsigned long material = begin(f, "IFCMATERIAL");
        add_string(f->into, FRAME_ITEM(listing, *woods, i).name);
        frame_text_add(f->into, ",$,'wood'");
        end(f);
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
    ifc f = {.framing = framing, .inside = frame_framing_inside_of(framing), .into = into, .next = 1};
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
