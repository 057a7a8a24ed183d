"""Speed of the Python binding: joist checks one by one and in batches, against numpy doing the same formulas over arrays."""
import sys
import threading
import time

import numpy

import frame

ROWS = 200_000


def best(run, rounds=5):
    least = float("inf")
    for _ in range(rounds):
        begun = time.process_time()
        run()
        least = min(least, time.process_time() - begun)
    return least


def columns():
    i = numpy.arange(ROWS)
    return {"span_in": 90.0 + i % 97, "spacing_in": numpy.array([12, 16, 19.2, 24])[i % 4], "live_psf": 30.0 + 10 * (i % 2),
            "dead_psf": 10.0 + i % 3, "snow_psf": 5.0 * (i % 7)}


def by_numpy(c, b, d, values):
    """The same checks over whole arrays: combinations, bending, shear, bearing, deflection."""
    per_in = c["spacing_in"] / 144
    dead, live, snow = c["dead_psf"] * per_in, c["live_psf"] * per_in, c["snow_psf"] * per_in
    with_snow = dead + 0.75 * live + 0.75 * snow
    snowy = snow > 0
    equivalent = numpy.maximum(dead / 0.9, dead + live)
    equivalent = numpy.where(snowy, numpy.maximum(equivalent, numpy.maximum(dead + snow, with_snow) / 1.15), equivalent)
    greatest = numpy.where(snowy, numpy.maximum(dead + live, numpy.maximum(dead + snow, with_snow)), dead + live)
    area, s, i = b * d, b * d * d / 6, b * d ** 3 / 12
    span = c["span_in"]
    bending = equivalent * span ** 2 / 8 / s / (values.fb_psi * values.size_factor_bending * 1.15)
    shear = 1.5 * equivalent * (span / 2 - d) / area / values.fv_psi
    bearing = greatest * span / 2 / (b * 1.5) / values.fc_perp_psi
    transient = numpy.maximum(numpy.maximum(live, snow), 0.75 * (live + snow))
    bend = 5 * span ** 4 / (384 * values.e_psi * i)
    sag = numpy.maximum(transient * bend / (span / 360), (transient + 1.5 * dead) * bend / (span / 240))
    return numpy.maximum(numpy.maximum(bending, shear), numpy.maximum(bearing, sag))


def by_batch(fixed, c):
    return frame.batch(frame.joist_check, want=["ratio"], **fixed, **c)


def nail_columns():
    i = numpy.arange(ROWS)
    pick = lambda values, by: numpy.array(values)[i // by % len(values)]
    return {"diameter_in": pick([0.131, 0.148, 0.162, 0.192], 1), "length_in": pick([2.5, 3, 3.5, 4.0], 1),
            "side_thickness_in": 0.75 + i % 7 * 0.125, "side_specific_gravity": pick([0.5, 0.43, 0.42, 0.55], 1),
            "main_specific_gravity": pick([0.5, 0.43, 0.42, 0.55], 4), "load_duration_factor": numpy.where(i % 3, 1.0, 1.6)}


def nails_by_numpy(c):
    """All six modes of common nails over whole arrays."""
    d, ls, penetration = c["diameter_in"], c["side_thickness_in"], c["length_in"] - c["side_thickness_in"]
    fyb = numpy.where(d <= 0.142, 100000.0, numpy.where(d <= 0.177, 90000.0, 80000.0))
    fem, fes = 16600 * c["main_specific_gravity"] ** 1.84, 16600 * c["side_specific_gravity"] ** 1.84
    kd = numpy.where(d <= 0.17, 2.2, 10 * d + 0.5)
    lm = numpy.where(penetration < 10 * d, penetration - d, penetration)
    re, rt = fem / fes, lm / ls
    k1 = (numpy.sqrt(re + 2 * re * re * (1 + rt + rt * rt) + rt * rt * re * re * re) - re * (1 + rt)) / (1 + re)
    k2 = -1 + numpy.sqrt(2 * (1 + re) + 2 * fyb * (1 + 2 * re) * d * d / (3 * fem * lm * lm))
    k3 = -1 + numpy.sqrt(2 * (1 + re) / re + 2 * fyb * (2 + re) * d * d / (3 * fem * ls * ls))
    modes = (d * lm * fem / kd, d * ls * fes / kd, k1 * d * ls * fes / kd, k2 * d * lm * fem / ((1 + 2 * re) * kd),
             k3 * d * ls * fem / ((2 + re) * kd), d * d / kd * numpy.sqrt(2 * fem * fyb / (3 * (1 + re))))
    least = modes[0]
    for mode in modes[1:]:
        least = numpy.minimum(least, mode)
    return least * c["load_duration_factor"]


def nails_by_batch(c):
    return frame.batch(frame.dowel_lateral, kind="common nail", want=["adjusted_lb"], **c)


def report(what, ns, numpy_ns):
    print("%-42s %9.1f ns %9.2f million/s   %6.2f x numpy over arrays (%.1f ns)" % (what, ns, 1e3 / ns, ns / numpy_ns, numpy_ns))


def nails(check_only):
    c = nail_columns()
    ours, rival = nails_by_batch(c).adjusted_lb, nails_by_numpy(c)
    if not numpy.allclose(ours, rival, rtol=1e-9):
        worst = int(numpy.argmax(abs(ours - rival)))
        sys.exit("nail %d: %r, numpy %r" % (worst, ours[worst], rival[worst]))
    if check_only:
        return
    numpy_ns = best(lambda: nails_by_numpy(c)) / ROWS * 1e9
    report("dowel_lateral, Python, batch of arrays",
           best(lambda: nails_by_batch(c)) / ROWS * 1e9, numpy_ns)


def threads(run):
    """The same batch in one thread and in two at once, as the clock has it: on a machine with nothing else to do."""
    def clock(count):
        begun, started = time.perf_counter(), [threading.Thread(target=run) for _ in range(count)]
        for thread in started:
            thread.start()
        for thread in started:
            thread.join()
        return time.perf_counter() - begun
    one, two = (min(clock(count) for _ in range(7)) for count in (1, 2))
    print("%-42s %9.2f times the rows of one (goal 1.8)" % ("joist_check, Python, batches in two threads", 2 * one / two))


def main(check_only):
    nails(check_only)
    fixed = dict(use="floor", size="2x10", species="SPF", grade="No.2", bearing_in=1.5)
    values = frame.design_values(species="SPF", grade="No.2", size="2x10")
    c = columns()
    ours = by_batch(fixed, c).ratio
    rival = by_numpy(c, 1.5, 9.25, values)
    if not numpy.allclose(ours, rival, rtol=1e-9):
        worst = int(numpy.argmax(abs(ours - rival)))
        sys.exit("row %d: %r, numpy %r" % (worst, ours[worst], rival[worst]))
    if check_only:
        return
    numpy_s = best(lambda: by_numpy(c, 1.5, 9.25, values)) / ROWS * 1e9
    batch_s = best(lambda: by_batch(fixed, c)) / ROWS * 1e9
    lazy_s = best(lambda: frame.batch(frame.joist_check, **fixed, **c)) / ROWS * 1e9

    def one_by_one():
        check = frame.joist_check
        for _ in range(20_000):
            check(use="floor", size="2x10", species="SPF", grade="No.2", bearing_in=1.5, span_in=140.0, spacing_in=16.0,
                  live_psf=40.0, dead_psf=10.0, snow_psf=0.0)

    single_s = best(one_by_one) / 20_000 * 1e9
    for what, ns in (("joist_check, Python, batch of arrays", batch_s),
                     ("joist_check, Python, batch, any figure later", lazy_s), ("joist_check, Python, one by one", single_s)):
        report(what, ns, numpy_s)
    print("%-42s %9.1f ns over a row of the batch (goal 1500)" % ("joist_check, what a call through Python adds", single_s - batch_s))
    threads(lambda: frame.batch(frame.joist_check, **fixed, **c))


if __name__ == "__main__":
    main("--check" in sys.argv)
