# SPDX-License-Identifier: Apache-2.0
"""The other side of SpreadPeer: the same reliefs by NumPy, from the same draws, on one core.

Two ways: the formulas as they are printed, and with the two arcs made one as our array form does it. Both must give our
reliefs. Time is that of this process, best of ten; the whole of the arrays at once, and in pieces that fit the cache.
"""
import os

for name in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS"):
    os.environ[name] = "1"

import sys
import time

import numpy as np

SIZE = 1_000_000
ENDS = ((8.5, 9.5), (0.0, 0.1), (0.40, 0.47))
# examples/tap-m8.json on examples/fixture-three-lobes.json: slope of the cam, radius at mid-chamfer, tan of the lead angle
SLOPE = 180 / (np.pi * 60)
RADIUS = (8 + 6.4) / 4
ADVANCE = 1.25 / (2 * np.pi * RADIUS)


def settings(uniform):
    return [low + (high - low) * u for (low, high), u in zip(ENDS, uniform)]


def printed(uniform):
    swivel, axial, radial = settings(uniform)
    kappa = np.radians(swivel)
    fall = SLOPE * (axial * np.tan(kappa) + radial)
    return np.degrees(np.arctan(np.cos(kappa) * fall / RADIUS) - np.arctan(ADVANCE * np.sin(kappa)))


def one_arc(uniform):
    swivel, axial, radial = settings(uniform)
    tangent = np.tan(np.radians(swivel))
    cosine = 1 / np.sqrt(1 + tangent * tangent)
    ground = SLOPE * (axial * tangent + radial) * cosine / RADIUS
    loss = ADVANCE * tangent * cosine
    return np.degrees(np.arctan((ground - loss) / (1 + ground * loss)))


def pieces(way, size):
    return lambda uniform: np.concatenate([way(uniform[:, i : i + size]) for i in range(0, SIZE, size)])


def best(way, uniform):
    times = []
    for _ in range(10):
        began = time.process_time_ns()
        way(uniform)
        times.append(time.process_time_ns() - began)
    return min(times) / SIZE


def main(folder):
    uniform = np.fromfile(os.path.join(folder, "uniform.bin"), dtype="<f8").reshape(3, SIZE)
    ours = np.fromfile(os.path.join(folder, "working.bin"), dtype="<f8")
    ways = {
        "as printed": printed,
        "one arc": one_arc,
        "as printed, pieces of 4096": pieces(printed, 4096),
        "one arc, pieces of 4096": pieces(one_arc, 4096),
    }
    for name, way in ways.items():
        apart = float(np.max(np.abs(way(uniform) - ours)))
        if not apart < 1e-12:
            sys.exit(f"{name}: apart from ours by {apart}")
        print(f"NumPy {np.__version__}, {name}: {best(way, uniform):.2f} ns a setting; apart from ours by {apart:.1e} deg")


main(sys.argv[1])
