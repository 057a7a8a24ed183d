/* A stick as IfcMember: its cut solid as closed faceted breps, and its quantities. */
#include <math.h>
#include <string.h>

#include "packet/ifc.h"

static unsigned long face(frame_ifc *f, const frame_polygon *polygon) {
    unsigned long corners[POLYGON_CORNERS];
    for (int i = 0; i < polygon->count; i++)
        corners[i] = frame_ifc_point(f, vec_times(polygon->corners[i], FRAME_METRES));
    const unsigned long loop = frame_ifc_begin(f, "IFCPOLYLOOP");
    for (int i = 0; i < polygon->count; i++) frame_text_addf(f->into, i ? ",#%lu" : "(#%lu", corners[i]);
    frame_text_add(f->into, ")");
    frame_ifc_end(f);
    const unsigned long bound = frame_ifc_begin(f, "IFCFACEOUTERBOUND");
    frame_text_addf(f->into, "#%lu,.T.", loop);
    frame_ifc_end(f);
    const unsigned long id = frame_ifc_begin(f, "IFCFACE");
    frame_text_addf(f->into, "(#%lu)", bound);
    frame_ifc_end(f);
    return id;
}

static unsigned long brep(frame_ifc *f, const frame_stick *stick, size_t cell) {
    unsigned long faces[CELL_FACES];
    const int count = frame_export_faces(stick, cell);
    for (int i = 0; i < count; i++) {
        frame_polygon polygon;
        frame_export_face(stick, cell, i, &polygon);
        faces[i] = face(f, &polygon);
    }
    const unsigned long shell = frame_ifc_begin(f, "IFCCLOSEDSHELL");
    for (int i = 0; i < count; i++) frame_text_addf(f->into, i ? ",#%lu" : "(#%lu", faces[i]);
    frame_text_add(f->into, ")");
    frame_ifc_end(f);
    const unsigned long id = frame_ifc_begin(f, "IFCFACETEDBREP");
    frame_text_addf(f->into, "#%lu", shell);
    frame_ifc_end(f);
    return id;
}

static unsigned long shape(frame_ifc *f, const frame_stick *stick, unsigned long context) {
    const size_t cells = frame_export_cells(stick);
    unsigned long *breps = frame_take(cells * sizeof *breps + sizeof *breps);
    size_t count = 0;
    if (!breps) frame_text_fail(f->into);
    for (size_t cell = 0; cell < cells && breps; cell++)
        if (frame_export_faces(stick, cell)) breps[count++] = brep(f, stick, cell);
    const unsigned long body = frame_ifc_begin(f, "IFCSHAPEREPRESENTATION");
    frame_text_addf(f->into, "#%lu,'Body','Brep',", context);
    for (size_t i = 0; i < count; i++) frame_text_addf(f->into, i ? ",#%lu" : "(#%lu", breps[i]);
    frame_text_add(f->into, ")");
    frame_ifc_end(f);
    frame_give(breps);
    const unsigned long id = frame_ifc_begin(f, "IFCPRODUCTDEFINITIONSHAPE");
    frame_text_addf(f->into, "$,$,(#%lu)", body);
    frame_ifc_end(f);
    return id;
}

static unsigned long quantity(frame_ifc *f, const char *entity, const char *name, double value) {
    const unsigned long id = frame_ifc_begin(f, entity);
    frame_text_addf(f->into, "'%s',$,$,", name);
    frame_ifc_real(f->into, value);
    frame_text_add(f->into, ",$");
    frame_ifc_end(f);
    return id;
}

static void quantities(frame_ifc *f, unsigned long member, const frame_framing_stick *stick, double volume_in3,
                       size_t number) {
    const unsigned long length = quantity(f, "IFCQUANTITYLENGTH", "Length", stick->length_in * FRAME_METRES),
                        volume = quantity(f, "IFCQUANTITYVOLUME", "NetVolume", volume_in3 * pow(FRAME_METRES, 3));
    const int weighed = stick->weight_lb != FRAME_NOT_GIVEN;
    if (weighed) quantity(f, "IFCQUANTITYWEIGHT", "NetWeight", stick->weight_lb * 0.45359237);
    const unsigned long set = frame_ifc_begin(f, "IFCELEMENTQUANTITY");
    frame_ifc_guid(f, "quantities", number);
    frame_text_addf(f->into, "'Qto_MemberBaseQuantities',$,$,(#%lu,#%lu", length, volume);
    frame_text_addf(f->into, weighed ? ",#%lu)" : ")", volume + 1);
    frame_ifc_end(f);
    frame_ifc_begin(f, "IFCRELDEFINESBYPROPERTIES");
    frame_ifc_guid(f, "defines", number);
    frame_text_addf(f->into, "$,$,(#%lu),#%lu", member, set);
    frame_ifc_end(f);
}

static const char *member_type(const char *name) {
    if (strstr(name, "stud") || strstr(name, "cripple") || strstr(name, "jack stud")) return "STUD";
    if (strstr(name, "plate") || strstr(name, "sill")) return "PLATE";
    if (strstr(name, "rafter") || strstr(name, "hip") || strstr(name, "valley")) return "RAFTER";
    if (strstr(name, "post")) return "POST";
    if (strstr(name, "ridge")) return "PURLIN";
    return "MEMBER";
}

frame_status frame_ifc_stick(frame_ifc *f, size_t i, unsigned long context, unsigned long storey,
                             unsigned long *member) {
    frame_framing_stick stick;
    frame_stick_solid_out solid;
    const frame_stick *wood = FRAME_ITEM(frame_stick *, f->inside->sticks, i);
    frame_framing_stick_at(f->framing, i, &stick);
    const frame_status status = frame_stick_solid(wood, &solid);
    if (status) return status;
    const unsigned long at = frame_ifc_placement(f, &wood->placement, storey), body = shape(f, wood, context);
    *member = frame_ifc_begin(f, "IFCMEMBER");
    frame_ifc_guid(f, "stick", i);
    frame_ifc_string(f->into, stick.name);
    frame_text_add(f->into, ",");
    frame_ifc_string(f->into, stick.section);
    frame_text_add(f->into, ",");
    frame_ifc_string(f->into, stick.of);
    frame_text_addf(f->into, ",#%lu,#%lu,'%zu',.%s.", at, body, i + 1, member_type(stick.name));
    frame_ifc_end(f);
    quantities(f, *member, &stick, solid.volume_in3, i);
    return FRAME_OK;
}
