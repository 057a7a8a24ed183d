/* Calls of the joint room that the tests share. */
#ifndef FRAME_TESTS_JOINT_LATERAL_H
#define FRAME_TESTS_JOINT_LATERAL_H

#include <check.h>
#include <frame/joint.h>

/* A nail of a diameter through 1.5 in into thick wood, both of specific gravity 0.5. */
static inline frame_dowel_lateral_in nail_of(double diameter_in) {
    frame_dowel_lateral_in in;
    frame_dowel_lateral_in_init(&in);
    in.kind = FRAME_DOWEL_COMMON_NAIL;
    in.diameter_in = diameter_in;
    in.side_thickness_in = 1.5;
    in.main_thickness_in = 6;
    in.side_specific_gravity = in.main_specific_gravity = 0.5;
    return in;
}

/* A bolt by size, along the grain of both members. */
static inline frame_dowel_lateral_in bolt_of(const char *size, double side_in, double main_in) {
    frame_dowel_lateral_in in;
    frame_dowel_lateral_in_init(&in);
    in.kind = FRAME_DOWEL_BOLT;
    in.size = size;
    in.side_thickness_in = side_in;
    in.main_thickness_in = main_in;
    in.side_specific_gravity = in.main_specific_gravity = 0.5;
    in.side_angle_deg = in.main_angle_deg = 0;
    return in;
}

static inline frame_dowel_lateral_out lateral_of(const frame_dowel_lateral_in *in) {
    frame_dowel_lateral_out out;
    ck_assert_msg(!frame_dowel_lateral(in, &out, NULL), "%s", frame_error_text());
    return out;
}

/* That a call is refused, with which status, for which field; and that the answer stays as it was. */
static inline void refused(const frame_dowel_lateral_in *in, frame_status status, const char *field) {
    frame_dowel_lateral_out out = {.z_lb = 4.25};
    ck_assert_int_eq(frame_dowel_lateral(in, &out, NULL), status);
    ck_assert_str_eq(frame_error_field(), field);
    ck_assert_double_eq(out.z_lb, 4.25);
    ck_assert_uint_eq(out.struct_size, 0);
}

#endif
