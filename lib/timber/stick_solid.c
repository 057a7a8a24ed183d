/* Volume, centre of gravity and weight of a stick. */
#include "base/error.h"
#include "timber/stick.h"
#include "timber_facts.h"

frame_status frame_stick_solid_sized(const frame_stick *stick, frame_stick_solid_out *out, size_t out_size) {
    if (!stick || !out || out_size < 2 * sizeof(uint32_t)) return frame_no_stick();
    frame_moments sum = {0, {0, 0, 0}};
    frame_solid_measure(&stick->solid, &sum);
    const vec3 centre = vec_times(sum.first, 1 / sum.volume), world = frame_to_world(&stick->placement, centre);
    frame_stick_solid_out solid = frame_stick_solid_out_blank;
    solid.volume_in3 = sum.volume;
    solid.stock_volume_in3 = (stick->high - stick->low) * (stick->y[1] - stick->y[0]) * (stick->z[1] - stick->z[0]);
    solid.centre_x_in = centre.x;
    solid.centre_y_in = centre.y;
    solid.centre_z_in = centre.z;
    solid.world_x_in = world.x;
    solid.world_y_in = world.y;
    solid.world_z_in = world.z;
    const frame_status status =
        frame_struct_finite(&frame_stick_solid_out_facts, &solid); /* a shaving without volume */
    if (status) return status;
    frame_struct_give(&frame_stick_solid_out_facts, &solid, out, out_size);
    return FRAME_OK;
}

frame_status frame_stick_weight(const frame_stick *stick, double density_pcf, double *weight_lb) {
    if (!stick || !weight_lb) return frame_no_stick();
    if (!(density_pcf > 0 && density_pcf <= 200))
        return frame_fail_number(isfinite(density_pcf) ? FRAME_OUT_OF_RANGE : FRAME_NOT_A_NUMBER, "density_pcf",
                                 density_pcf, ">0..200 pcf");
    frame_moments sum = {0, {0, 0, 0}};
    frame_solid_measure(&stick->solid, &sum);
    *weight_lb = sum.volume / (12.0 * 12 * 12) * density_pcf;
    return FRAME_OK;
}
