"""Random measured plans, settled by the library and by numpy's least squares on the same distances."""
import math
import random
import sys

try:
    import numpy
except ImportError:
    sys.exit(77)
import frame


def random_plan(draw):
    """Corners round an uneven polygon without reentrant corners, and enough distances to hold them, some to spare."""
    n = draw.randint(3, 12)
    turns = sorted(draw.uniform(0.2, 1) for _ in range(n))
    total, at, corners = sum(turns), 0, []
    for turn in turns:
        at += turn / total * 2 * math.pi
        corners.append((300 * math.cos(at), 200 * math.sin(at)))
    pairs = [(i, j) for i in range(n) for j in range(i + 1, n)]
    keep = [p for p in pairs if p[1] - p[0] <= 2 or p == (0, n - 1) or draw.random() < 0.5]
    return corners, keep


def settle(lengths, start):
    """Gauss and Newton with numpy's lstsq; corner 1 at 0, corner 2 on the x axis."""
    n = len(start)
    x = numpy.array([c for point in start for c in point], dtype=float)
    free = [2] + list(range(4, 2 * n))
    for _ in range(100):
        rows, off = [], []
        for i, j, length, error in lengths:
            dx, dy = x[2 * j] - x[2 * i], x[2 * j + 1] - x[2 * i + 1]
            found = math.hypot(dx, dy)
            row = numpy.zeros(2 * n)
            row[2 * i:2 * i + 2] = -dx / found, -dy / found
            row[2 * j:2 * j + 2] = dx / found, dy / found
            rows.append(row[free] / error)
            off.append((length - found) / error)
        matrix, right = numpy.array(rows), numpy.array(off)
        step = numpy.linalg.lstsq(matrix, right, rcond=None)[0]
        x[free] += step
        if abs(step).max() < 1e-11:
            break
    inverse = numpy.linalg.inv(matrix.T @ matrix)
    shares = 1 - numpy.einsum("ij,jk,ik->i", matrix, inverse, matrix)
    return x.reshape(n, 2), shares


def turned(corners):
    (ox, oy), (px, py) = corners[0], corners[1]
    angle = math.atan2(py - oy, px - ox)
    c, s = math.cos(angle), math.sin(angle)
    return [((x - ox) * c + (y - oy) * s, (y - oy) * c - (x - ox) * s) for x, y in corners]


def main():
    draw = random.Random(11)
    worst = 0
    for _ in range(200):
        corners, pairs = random_plan(draw)
        lengths = []
        for i, j in pairs:
            error = draw.choice((0.0625, 0.125, 0.5))
            lengths.append((i, j, math.dist(corners[i], corners[j]) + draw.gauss(0, error), error))
        ours = frame.survey(distances=[{"corner_a": i + 1, "corner_b": j + 1, "length_in": length, "error_in": error}
                                       for i, j, length, error in lengths])
        theirs, shares = settle(lengths, turned(corners))
        for point, (x, y) in zip(ours.points, theirs):
            worst = max(worst, abs(point.x_in - x), abs(point.y_in - y))
        for residual, share, (i, j, length, error) in zip(ours.residuals, shares, lengths):
            assert abs(residual.share - share) < 1e-6, (residual.share, share)
            if share > 1e-3:  # leaving it out gives what it would be
                rest = [row for row in lengths if row[:2] != (i, j)]
                if draw.random() < 0.05 and len(rest) >= 2 * len(corners) - 3:
                    alone, _ = settle(rest, theirs)
                    found = math.dist(alone[i], alone[j])
                    assert abs(found - residual.would_be_in) < 0.01 + 0.1 * abs(residual.residual_in / share), (found, residual.would_be_in)
    assert worst < 1e-6, worst
    print("200 plans, farthest corner apart %.1e in" % worst)


main()
