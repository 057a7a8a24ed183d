"""A neighbourhood of houses taken off, checked and bought on many machines: Dask's distributed scheduler, whose workers this
example starts here.     neighbourhood.py [HOUSES] [WORKERS]      (Debian: python3-distributed)"""
import sys
import time

import frame

STOCK = [("8'", 6.2), ("10'", 7.9), ("12'", 9.4), ("16'", 12.9)]


def house(number):
    """One house: its rafters cut, its joists checked, its sticks bought. The same number gives the same house."""
    span, run = 120 + number * 37 % 60, 72 + number * 53 % 48
    joist = frame.joist_check(use="floor", size="2x10", species="SPF", grade="No.2", span_in=span, spacing_in=16, live_psf=40, dead_psf=10)
    rafter = frame.rafter(run_in=run, slope="7 in 12", ridge_thickness_in=1.5, overhang_in=12, depth_in=7.25, seat_in=3.5)
    plan = frame.stock_plan(pieces=[(rafter.stock_length_in, 30), (92.625, 80), (14.5, 60)], stock=STOCK)
    return number, joist.passes, round(joist.ratio, 9), len(plan.boards), round(plan.cost, 2)


def summary(houses):
    hold = sum(1 for found in houses if found[1])
    return "%d houses: %d floors hold, %d boards for %.2f" % (len(houses), hold, sum(h[3] for h in houses), sum(h[4] for h in houses))


def main(count, workers):
    from dask.distributed import Client, LocalCluster

    begun = time.perf_counter()
    serial = [house(number) for number in range(count)]
    alone = time.perf_counter() - begun
    with LocalCluster(n_workers=workers, threads_per_worker=1, dashboard_address=None) as cluster, Client(cluster) as client:
        client.gather(client.map(house, range(workers)))  # each worker has imported frame
        begun = time.perf_counter()
        spread = client.gather(client.map(house, range(count), batch_size=50, pure=False))
        together = time.perf_counter() - begun
    print(summary(serial))
    print("the same from %d workers: %s" % (workers, spread == serial))
    print("one after another %.2f s, spread %.2f s: %.2f times as fast" % (alone, together, alone / together), file=sys.stderr)
    return spread != serial


if __name__ == "__main__":
    sys.exit(main(*(int(word) for word in sys.argv[1:3] or ("1000", "2"))))
