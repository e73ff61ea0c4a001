"""Surface and volume of one part, from its sizes.

The geometry is put together from solids and integrated here: what turns about an axis from its outline, and
the chamfered hexagon by quadrature. The shapes are those that `tests/published/cad_kernel.py` describes:
thread of 60° with crest P/8 and a root at H/6 with a flat of P/6 (ISO 68-1), points of 45° from the root,
hexagons turned off at 30° from a circle of .95 s, nuts with a plain hole of D1 and countersinks of 120°.
"""

from functools import cache
from math import cos, pi, radians, sqrt, tan

import numpy

import threads
from draw import quantity

STEEL = 7.85


def revolved(points):
    """Surface and volume between (radius, height) points turned about the axis, ends not closed."""
    area = volume = 0.0
    for (r1, z1), (r2, z2) in zip(points, points[1:]):
        area += pi * (r1 + r2) * sqrt((r2 - r1) ** 2 + (z2 - z1) ** 2)
        volume += pi / 3 * abs(z2 - z1) * (r1 * r1 + r1 * r2 + r2 * r2)
    return area, volume


@cache
def chamfer():
    """What a chamfer takes from the surface and the volume of a hexagon of s = 1, at one end."""
    nodes, weights = numpy.polynomial.legendre.leggauss(60)
    t = tan(radians(30))
    r0 = 0.95 / 2
    half = pi / 12
    angles = half * (nodes + 1)
    edge = 0.5 / numpy.cos(angles)
    # Over the twelve equal parts of the hexagon, from the middle of a side to a corner.
    ring = 12 * half * numpy.sum(weights * (edge ** 2 - r0 ** 2) / 2)
    side = 12 * half * numpy.sum(weights * (edge - r0) * t * 0.5 / numpy.cos(angles) ** 2)
    taken = 12 * half * numpy.sum(weights * t * (edge ** 3 / 3 - r0 * edge ** 2 / 2 + r0 ** 3 / 6))
    return float(side - ring * (1 / cos(radians(30)) - 1)), float(taken)


def hexagon(s, height, ends):
    """A prism with both faces, chamfered at so many ends."""
    face = sqrt(3) / 2 * s * s
    area, volume = chamfer()
    return (2 * face + 2 * sqrt(3) * s * height - ends * area * s * s,
            face * height - ends * volume * s ** 3)


def root(d, p):
    return d - 17 / 12 * sqrt(3) / 2 * p


def thread(d, p, length):
    """A length of external thread."""
    d3 = root(d, p)
    flank = (1 - 1 / 8 - 1 / 6) / 2 * p
    outline, z = [(d / 2, 0.0)], 0.0
    for step, r in [(p / 8, d / 2), (flank, d3 / 2), (p / 6, d3 / 2), (flank, d / 2)]:
        z += step
        outline.append((r, z))
    area, volume = revolved(outline)
    return area * length / p, volume * length / p


def point(d, p):
    """A point of 45° with its face."""
    d3 = root(d, p)
    return revolved([(0.0, 0.0), (d3 / 2, 0.0), (d / 2, (d - d3) / 2)])


def cylinder(d, length):
    return pi * d * length, pi / 4 * d * d * length


def cap(d, k):
    """The outside of a part of a sphere."""
    return pi * (d * d / 4 + k * k), pi * k / 6 * (3 * d * d / 4 + k * k)


def total(*pieces):
    return sum(a for a, _ in pieces), sum(v for _, v in pieces)


def disc(d):
    return pi / 4 * d * d


def socket(s, t):
    return 2 * sqrt(3) * s * t, -sqrt(3) / 2 * s * s * t


def shaft(d, p, length, b, ds=None):
    """Shank, thread and point below a head."""
    c = (d - root(d, p)) / 2
    return total(cylinder(ds or d, length - b), thread(d, p, b - c), point(d, p))


def hex_head(z, d, p):
    area, volume = hexagon(z["s"], z["k"], 1)
    return total((area - disc(d), volume), shaft(d, p, z["l"], z["b"]))


def socket_head(z, d, p):
    side, volume = cylinder(z["dk"], z["k"])
    return total((side + 2 * disc(z["dk"]) - disc(d), volume), socket(z["s"], z["t"]),
                 shaft(d, p, z["l"], z["b"]))


def button_head(z, d, p):
    area, volume = cap(z["dk"], z["k"])
    return total((area + disc(z["dk"]) - disc(d), volume), socket(z["s"], z["t"]), shaft(d, p, z["l"], z["b"]))


def pan_head(z, d, p):
    """Half of the height a cylinder, half a cap."""
    side, volume = cylinder(z["dk"], z["k"] / 2)
    return total((side + disc(z["dk"]) - disc(d), volume), cap(z["dk"], z["k"] / 2),
                 shaft(d, p, z["l"], z["b"]))


def countersunk_head(z, d, p):
    """A cone of 90° (ISO 10642), of 82° in inches (ASME B18.3); the length is over all."""
    cone = (z["dk"] - d) / 2 / tan(radians(z["cone"] / 2))
    area, volume = revolved([(0, 0), (z["dk"] / 2, 0), (z["dk"] / 2, z["k"] - cone), (d / 2, z["k"])])
    return total((area, volume), socket(z["s"], z["t"]), shaft(d, p, z["l"] - z["k"], z["b"]))


def carriage_head(z, d, p):
    area, volume = cap(z["dk"], z["k"])
    neck = 4 * z["v"] * z["f"] - disc(d), z["v"] ** 2 * z["f"]
    return total((area + disc(z["dk"]), volume), neck, shaft(d, p, z["l"] - z["f"], z["b"], z["ds"]))


def flange_head(z, d, p):
    """A hexagon on a cone of 20°, which reaches its sides, on a rim."""
    s, dc, c = z["s"], z["dc"], z["c"]
    cone = tan(radians(20)) * (dc - s) / 2
    area, volume = revolved([(dc / 2, 0), (dc / 2, c), (s / 2, c + cone)])
    side, prism = hexagon(s, z["k"] - c - cone, 1)
    # The hexagon stands on the cone with one face.
    standing = side - sqrt(3) / 2 * s * s, prism
    return total((area + disc(dc) - disc(d), volume), standing, shaft(d, p, z["l"], z["b"], z["ds"]))


def eye(z, d, p):
    """A ball flattened to its thickness, with a hole; the length is from its middle."""
    de, dh, s = z["d_e"], z["d_h"], z["s"]
    flats = 2 * (pi / 4 * (de * de - s * s) - disc(dh))
    area = pi * de * s + flats + pi * dh * s - disc(d)
    volume = pi * s * (de * de / 4 - s * s / 12) - disc(dh) * s
    return total((area, volume), shaft(d, p, z["l"] - de / 2, z["b"]))


def rod(z, d, p):
    return total(thread(d, p, z["l"] - (d - root(d, p))), point(d, p), point(d, p))


def anchor(z, d, p):
    return total(cylinder(d, z["l"] - z["b"]), thread(d, p, z["b"] - (d - root(d, p))), point(d, p), point(d, p))


def set_screw(z, d, p):
    dp, d3 = z["dp"], root(d, p)
    flat = revolved([(0.0, 0.0), (dp / 2, 0.0), (d / 2, (d - dp) / 2)])
    threaded = z["l"] - (d - dp) / 2 - (d - d3) / 2
    return total(flat, point(d, p), thread(d, p, threaded), socket(z["s"], z["t"]))


def hole(z, d, p):
    """The hole of a nut with its two countersinks: what it adds, what it takes.

    Plain, of D1, in a blank that is tapped after the zinc; else with its thread (crest P/4, root P/8).
    """
    d1 = d - 10 / 8 * sqrt(3) / 2 * p
    sink = (z["da"] - d1) / 2 / tan(radians(60))
    cone = revolved([(z["da"] / 2, 0), (d1 / 2, sink)])
    inside = z["m"] - 2 * sink
    if z["tapped"]:
        flank = (1 - 1 / 4 - 1 / 8) / 2 * p
        outline, at = [(d1 / 2, 0.0)], 0.0
        for step, r in [(p / 4, d1 / 2), (flank, d / 2), (p / 8, d / 2), (flank, d1 / 2)]:
            at += step
            outline.append((r, at))
        area, volume = (value * inside / p for value in revolved(outline))
    else:
        area, volume = cylinder(d1, inside)
    return area + 2 * cone[0] - 2 * disc(z["da"]), -volume - 2 * cone[1]


def hex_nut(z, d, p):
    return total(hexagon(z["s"], z["m"], 2), hole(z, d, p))


def washer(z, d, p):
    d1, d2, h = z["d1"], z["d2"], z["h"]
    return 2 * (disc(d2) - disc(d1)) + pi * (d1 + d2) * h, (disc(d2) - disc(d1)) * h


def spring_washer(z, d, p):
    turn = pi * (z["d1"] + z["b"])
    return turn * 2 * (z["b"] + z["s"]) + 2 * z["b"] * z["s"], turn * z["b"] * z["s"]


def ring(z, d, p):
    """A ring of a mean width outside its free diameter."""
    middle = pi * (z["d3"] + z["w"])
    return middle * 2 * (z["w"] + z["s"]), middle * z["w"] * z["s"]


def spring_pin(z, d, p):
    """A strip that closes to the nominal diameter: inside, outside, both ends, both edges."""
    middle = pi * (z["d"] - z["s"])
    return 2 * middle * z["l"] + 2 * middle * z["s"] + 2 * z["s"] * z["l"], middle * z["s"] * z["l"]


# Each kind: how it is computed, and its sizes as shares of the diameter. Lengths are drawn apart.
KINDS = {
    "hex-bolt": (hex_head, {"s": (1.4, 1.9), "k": (0.55, 0.75)}),
    "structural-bolt": (hex_head, {"s": (1.5, 1.9), "k": (0.55, 0.75)}),
    "hex-screw": (hex_head, {"s": (1.4, 1.9), "k": (0.55, 0.75)}),
    "socket-screw": (socket_head, {"dk": (1.45, 1.7), "k": (0.9, 1.1), "s": (0.7, 0.85), "t": (0.4, 0.6)}),
    "button-screw": (button_head, {"dk": (1.7, 1.9), "k": (0.5, 0.6), "s": (0.5, 0.65), "t": (0.25, 0.35)}),
    "machine-screw": (pan_head, {"dk": (1.8, 2.1), "k": (0.6, 0.8)}),
    "countersunk-screw": (countersunk_head,
                          {"dk": (1.75, 1.95), "k": (0.57, 0.65), "s": (0.5, 0.7), "t": (0.25, 0.4)}),
    "carriage-bolt": (carriage_head, {"ds": (0.88, 1), "dk": (2, 2.6), "k": (0.4, 0.6), "v": (0.95, 1.1),
                                      "f": (0.4, 0.7)}),
    "flange-bolt": (flange_head, {"ds": (0.95, 1), "s": (1.35, 1.55), "k": (0.9, 1.1), "dc": (2.1, 2.3),
                                  "c": (0.1, 0.15)}),
    "eye-bolt": (eye, {"d_e": (1.9, 2.2), "d_h": (0.8, 1.05), "s": (1.05, 1.25)}),
    "stud": (rod, {}),
    "rod": (rod, {}),
    "anchor-rod": (anchor, {}),
    "set-screw": (set_screw, {"dp": (0.6, 0.75), "s": (0.45, 0.55), "t": (0.4, 0.7)}),
    "hex-nut": (hex_nut, {"s": (1.4, 1.9), "m": (0.7, 1.1), "da": (1.02, 1.08)}),
    "heavy-hex-nut": (hex_nut, {"s": (1.6, 1.9), "m": (0.9, 1.1), "da": (1.02, 1.08)}),
    "washer": (washer, {"d1": (1.03, 1.15), "d2": (1.8, 2.5), "h": (0.12, 0.25)}),
    "wide-washer": (washer, {"d1": (1.03, 1.15), "d2": (2.6, 3.5), "h": (0.12, 0.25)}),
    "conical-washer": (washer, {"d1": (1.03, 1.1), "d2": (2, 2.5), "h": (0.15, 0.3)}),
    "spring-washer": (spring_washer, {"d1": (1.01, 1.05), "b": (0.25, 0.4), "s": (0.15, 0.25)}),
    "retaining-ring": (ring, {"d3": (0.9, 0.95), "s": (0.05, 0.1), "w": (0.08, 0.15)}),
    "spring-pin": (spring_pin, {"d": (1, 1.1), "s": (0.1, 0.2)}),
}
LENGTH = {"hex-bolt": "lb", "structural-bolt": "lb", "hex-screw": "lb", "socket-screw": "lb",
          "button-screw": "lb", "machine-screw": "lb", "countersunk-screw": "lb", "carriage-bolt": "lb",
          "flange-bolt": "lb", "eye-bolt": "lb", "anchor-rod": "lb", "stud": "l", "rod": "l", "set-screw": "l",
          "spring-pin": "l"}


# Kinds whose shank has a diameter of its own, where their standards have the size.
OWN_SHANK = ("flange-bolt", "carriage-bolt")


def draw(random, thread_, tapped):
    """A part: its key and thread, its sizes as text, its surface in cm² and its mass in grams."""
    kind = random.choice(list(KINDS))
    compute, shares = KINDS[kind]
    if kind in OWN_SHANK:
        thread_ = threads.metric(random.choice([6, 8, 10, 12, 16, 20]))
    d, p = (thread_.d, thread_.p) if thread_.unit == "mm" else (thread_.d * 25.4, thread_.p * 25.4)
    texts, z = [], {"tapped": tapped, "cone": 90 if thread_.unit == "mm" else 82}
    for key, (low, high) in shares.items():
        text, z[key] = quantity(random, low * d, high * d, "mm", ["mm", "in"], 5)
        texts.append(f"{key} = {text}")
    length = LENGTH.get(kind, "")
    if "l" in length:
        text, z["l"] = quantity(random, 4.5 * d, 9 * d, "mm", ["mm", "in"], 4)
        texts.append(f"l = {text}")
    if "b" in length:
        text, z["b"] = quantity(random, 0.8 * d, 2.2 * d, "mm", ["mm", "in"], 4)
        texts.append(f"b = {text}")
    area, volume = compute(z, d, p)
    return kind, thread_, "; ".join(texts), area / 100, volume * STEEL / 1000
