/* A guard round the three open sides of a deck: posts outside the rims, rails between them, balusters counted. */
#include <math.h>

#include "base/error.h"
#include "layout/deck.h"

/* Along one side, from its start to its end; the posts stand outside the rim's face. */
typedef struct side {
    double from, to, face; /* along the side, and where the rim's face lies across it */
    int along_y, outward;  /* which way the side runs, and which way is out: -1 or 1 */
} side;

static vec3 place(const side *s, double along, double across, double z) {
    const double out = s->face + s->outward * across;
    return s->along_y ? (vec3){out, along, z} : (vec3){along, out, z};
}

static void add_bay(frame_deck_plan *plan, const side *s, double from, double to, int *rails) {
    const frame_deck_in *in = plan->in;
    const double floor_z = plan->top + in->board_thickness_in, middle = plan->guard_post.depth / 2;
    const double half = plan->rail.depth / 2;
    /* The lower rail's underside lies 3 in over the boards: a 4 in sphere must not pass there either. */
    const double heights[2] = {floor_z + 3 + half, floor_z + in->guard_height_in - half};
    for (int i = 0; i < 2; i++)
        frame_platform_add(&plan->platform, FRAME_STAGE_GUARDS, FRAME_PIECE_RAIL, ++*rails, &plan->rail,
                           place(s, from, middle, heights[i]), place(s, to, middle, heights[i]), (vec3){0, 0, 1});
    const double clear = to - from, b = in->baluster_in;
    const double count = fmax(ceil((clear - in->baluster_gap_in) / (b + in->baluster_gap_in) - 1e-9), 0);
    plan->balusters += (int)count;
    plan->baluster_gap = fmax(plan->baluster_gap, (clear - count * b) / (count + 1));
}

static frame_status add_side(frame_deck_plan *plan, const side *s, int *posts, int *rails) {
    const frame_deck_in *in = plan->in;
    const double wide = plan->guard_post.thickness, between = s->to - s->from - wide;
    if (between <= 0)
        return frame_fail_number(FRAME_IMPOSSIBLE, "guard_post_size", wide, "posts narrower than half a side");
    const double spaces = fmax(ceil(between / in->guard_spacing_in - 1e-9), 1);
    const double high = plan->top + in->board_thickness_in + in->guard_height_in, out = plan->guard_post.depth / 2;
    for (int i = 0; i <= (int)spaces; i++) {
        const double at = s->from + wide / 2 + i * between / spaces;
        frame_platform_add(&plan->platform, FRAME_STAGE_GUARDS, FRAME_PIECE_GUARD_POST, ++*posts, &plan->guard_post,
                           place(s, at, out, 0), place(s, at, out, high),
                           s->along_y ? (vec3){1, 0, 0} : (vec3){0, 1, 0}); /* their depth goes outward */
        if (i) add_bay(plan, s, at - between / spaces + wide / 2, at - wide / 2, rails);
    }
    return FRAME_OK;
}

static frame_status take_sections(frame_deck_plan *plan) {
    static const frame_layout_section_fields posts = {"guard_post_size", "guard_post_size", "guard_post_size"};
    static const frame_layout_section_fields rails = {"rail_size", "rail_size", "rail_size"};
    const frame_deck_in *in = plan->in;
    plan->guard_post = (frame_layout_section){
        FRAME_NOT_GIVEN, FRAME_NOT_GIVEN,
        in->guard_post_size == FRAME_NOT_GIVEN_INT ? FRAME_SIZE(4, 4) : in->guard_post_size, NULL, 0};
    plan->rail =
        (frame_layout_section){FRAME_NOT_GIVEN, FRAME_NOT_GIVEN,
                               in->rail_size == FRAME_NOT_GIVEN_INT ? FRAME_SIZE(2, 4) : in->rail_size, NULL, 0};
    const frame_status status = frame_layout_take_section(plan->answer, &posts, &plan->guard_post);
    return status ? status : frame_layout_take_section(plan->answer, &rails, &plan->rail);
}

frame_status frame_deck_add_guard(frame_deck_plan *plan) {
    const frame_deck_in *in = plan->in;
    int posts = 0, rails = 0;
    if (!plan->guard) return FRAME_OK;
    if (in->overhang_in > 0 && in->pattern != FRAME_DECK_BARE)
        return frame_fail_number(FRAME_IMPOSSIBLE, "overhang_in", in->overhang_in,
                                 "0 where guard posts stand outside the rims");
    const side sides[3] = {
        {0, in->length_in, 0, 0, -1}, {0, in->width_in, in->length_in, 1, 1}, {0, in->length_in, in->width_in, 0, 1}};
    plan->baluster_gap = 0;
    frame_status status = take_sections(plan);
    for (int i = 0; !status && i < 3; i++) status = add_side(plan, &sides[i], &posts, &rails);
    plan->guard_posts = posts;
    plan->cautions |= FRAME_BIT(FRAME_DECK_CAUTION_GUARD);
    return status;
}
