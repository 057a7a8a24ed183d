/* What the code says of a member that a passage meets: bored through its wide face it is the code book's to judge;
 * through its edges, or along it, it would be cut in two. */
#include <math.h>
#include <string.h>

#include "base/error.h"
#include "layout/passage.h"

enum { NO_RULE = 0 };

/* The code book's word for a kind of piece. */
static frame_code_member member_of(frame_piece_kind kind) {
    switch (kind) {
        case FRAME_PIECE_STUD:
        case FRAME_PIECE_KING:
        case FRAME_PIECE_JACK:
        case FRAME_PIECE_CRIPPLE:
            return FRAME_CODE_MEMBER_STUD;
        case FRAME_PIECE_TOP_PLATE:
        case FRAME_PIECE_CAP_PLATE:
            return FRAME_CODE_MEMBER_TOP_PLATE;
        case FRAME_PIECE_RAFTER:
        case FRAME_PIECE_JACK_RAFTER:
            return FRAME_CODE_MEMBER_RAFTER;
        case FRAME_PIECE_CEILING_JOIST:
            return FRAME_CODE_MEMBER_CEILING_JOIST;
        case FRAME_PIECE_JOIST:
        case FRAME_PIECE_TAIL:
        case FRAME_PIECE_END_JOIST:
        case FRAME_PIECE_RIM:
            return FRAME_CODE_MEMBER_JOIST;
        case FRAME_PIECE_HEADER:
        case FRAME_PIECE_HEADER_JOIST:
        case FRAME_PIECE_LEDGER:
            return FRAME_CODE_MEMBER_HEADER;
        case FRAME_PIECE_TRIMMER:
        case FRAME_PIECE_DOUBLE:
        case FRAME_PIECE_BEAM:
            return FRAME_CODE_MEMBER_BUILT_UP;
        default:
            return NO_RULE;
    }
}

/* What carries nothing but itself may be cut as the work asks. */
int frame_passage_carries(frame_piece_kind kind) {
    return member_of(kind) != NO_RULE || kind == FRAME_PIECE_POST || kind == FRAME_PIECE_GUARD_POST ||
           kind == FRAME_PIECE_STRINGER || kind == FRAME_PIECE_BACKING || kind == FRAME_PIECE_BOTTOM_PLATE ||
           (kind >= FRAME_PIECE_HIP && kind <= FRAME_PIECE_BRACE);
}

static double along(vec3 v, int axis) {
    return axis == 0 ? v.x : axis == 1 ? v.y : v.z;
}

/* How the way lies to a piece: 0 along it, 1 through its wide face, 2 through its edges. */
static int lies(const frame_layout_piece *piece, int way, vec3 *up) {
    const vec3 axis = vec_less(piece->end, piece->start), unit = vec_times(axis, 1 / vec_length(axis));
    const vec3 across = vec_cross(piece->crown, unit), left = vec_times(across, 1 / vec_length(across));
    *up = vec_cross(unit, left);
    if (fabs(along(unit, way)) > 0.7) return 0;
    const int wide = piece->depth >= piece->thickness; /* the wide face is square to the thickness */
    const double through_thickness = fabs(along(left, way));
    return (through_thickness > 0.7) == wide ? 1 : 2;
}

static frame_status ask(const frame_layout_piece *piece, const frame_passage_in *in, frame_passage_box *box, vec3 up,
                        frame_passage_verdict *v) {
    frame_code_hole_in asked;
    frame_code_hole_out found;
    frame_code_hole_in_init(&asked);
    asked.member = member_of(piece->kind);
    asked.edition = in->edition;
    asked.depth_in = fmax(piece->depth, piece->thickness);
    asked.thickness_in = fmin(piece->depth, piece->thickness);
    asked.diameter_in = box->size;
    asked.successive = box->doubled + 1;
    asked.bearing = in->bearing;
    asked.exterior = in->exterior;
    /* How far the middle lies from the edge that up points away from. */
    const vec3 middle = {box->at[0], box->at[1], box->at[2]};
    vec3 from = vec_less(middle, piece->start);
    if (box->way == 0) from.x = 0;
    if (box->way == 1) from.y = 0;
    if (box->way == 2) from.z = 0;
    const vec3 axis = vec_less(piece->end, piece->start), unit = vec_times(axis, 1 / vec_length(axis));
    from = vec_less(from, vec_times(unit, vec_dot(from, unit)));
    asked.offset_in = fmin(fmax(vec_dot(from, up) + piece->depth / 2, 0), asked.depth_in);
    const frame_status status = frame_code_hole(&asked, &found, NULL);
    if (status == FRAME_REFUSED || status == FRAME_OUTSIDE_SCOPE || status == FRAME_IMPOSSIBLE ||
        status == FRAME_OUT_OF_RANGE) {
        v->verdict = FRAME_CODE_NOT_ALLOWED;
        v->reason = frame_error_text();
        return FRAME_OK;
    }
    if (status) return status;
    v->verdict = found.verdict;
    v->reason = found.reason;
    v->needs = found.needs;
    v->limit = found.limit_diameter_in;
    v->known = found.known;
    if (asked.member == FRAME_CODE_MEMBER_STUD)
        box->doubled = v->verdict == FRAME_CODE_ALLOWED_DOUBLED ? box->doubled + 1 : 0;
    return FRAME_OK;
}

frame_status frame_passage_judge(const frame_layout_piece *piece, const frame_passage_in *in, frame_passage_box *box,
                                 frame_passage_verdict *v) {
    vec3 up;
    const int how = lies(piece, box->way, &up);
    v->verdict = FRAME_CODE_ALLOWED;
    v->known = FRAME_KNOWN_READ;
    v->needs = "";
    v->limit = FRAME_NOT_GIVEN;
    v->cuts_off = 0;
    if (piece->kind == FRAME_PIECE_BOTTOM_PLATE) {
        v->reason =
            "The code sets no limit for a bottom plate: keep the studs' bearing, and fasten both parts where it is cut "
            "through.";
        return FRAME_OK;
    }
    if (!frame_passage_carries(piece->kind)) {
        v->reason =
            "It carries nothing but itself: cut it as the work asks, and put in another beside it where one is needed.";
        return FRAME_OK;
    }
    if (how == 1 && member_of(piece->kind) != NO_RULE) {
        const frame_status status = ask(piece, in, box, up, v);
        v->cuts_off = !status && v->verdict == FRAME_CODE_NOT_ALLOWED;
        return status;
    }
    v->verdict = FRAME_CODE_NOT_ALLOWED;
    v->cuts_off = 1;
    v->reason = how == 0 ? "It would run along this piece, inside it."
                : member_of(piece->kind) == NO_RULE
                    ? "The code has no rule for a hole through such a piece: it is taken to cut it in two."
                    : "It would go through this piece's edges and cut it in two.";
    return FRAME_OK;
}
