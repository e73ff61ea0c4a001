"""Solids of standard parts in a CAD kernel: surface and volume, to check our own against.

    python3 -m venv venv && venv/bin/pip install build123d==0.13.0
    venv/bin/python tests/published/cad_kernel.py

build123d models on the OpenCascade kernel. Threads are modelled as a stack of rings of the basic
60° profile (crest P/8, root at H/6 with a flat of P/6), revolved as one outline; `helix` measures
how far a true helicoid differs from that. Heads and nuts are hexagons cut by a 30° cone from a
circle of 0.95 s; nuts are countersunk at 120° to 1.04 D; points are 45° from the root diameter.
Rows are printed as the table in cad_kernel.rs holds them: name, surface in mm², volume in mm³.
"""

from math import cos, pi, radians, sin, sqrt, tan

from build123d import (
    Align, Axis, Cylinder, Edge, Face, Helix, Location, Plane, Polyline, Pos, RegularPolygon, Solid, Wire,
    extrude, make_face, revolve,
)

ROOT3 = sqrt(3)
MIN = (Align.CENTER, Align.CENTER, Align.MIN)


def revolved(points):
    """A solid of revolution about Z from (radius, height) points; the axis closes it."""
    outline = Polyline(*[(r, 0, z) for r, z in points], close=True)
    return revolve(make_face(Plane.XZ * Plane.XZ.location.inverse() * outline), Axis.Z, 360)


def bolt_root(d, p):
    return d - 17 / 24 * ROOT3 * p


def nut_minor(d, p):
    return d - 5 / 8 * ROOT3 * p


def thread_outline(low, high, d, inner, p, crest, root):
    """(radius, height) along a threaded length, starting at the crest and cut off where it ends."""
    flank = (1 - crest - root) / 2
    points, z, radius_out, radius_in = [], low, d / 2, inner / 2
    steps = [(crest, radius_out), (flank, radius_in), (root, radius_in), (flank, radius_out)]
    points.append((radius_out, z))
    while z < high - 1e-9:
        for share, radius in steps:
            before, z_next = points[-1], z + share * p
            if z_next >= high - 1e-9:
                t = (high - z) / (z_next - z)
                points.append((before[0] + t * (radius - before[0]), high))
                return points
            points.append((radius, z_next))
            z = z_next
    return points


def shaft(d, p, length, thread, points=1):
    """Shank and thread from z = 0 (the head's side) to z = -length, as one revolved solid."""
    d3 = bolt_root(d, p)
    c = (d - d3) / 2
    outline = [(0, -length), (d3 / 2, -length)]
    top = -length + thread - (c if points == 2 else 0)
    outline += thread_outline(-length + c, top, d, d3, p, 1 / 8, 1 / 6)
    if points == 2:
        outline += [(d / 2, top), (d3 / 2, 0), (0, 0)]
    else:
        outline += [(d / 2, top), (d / 2, 0), (0, 0)]
    unique = [outline[0]]
    for point in outline[1:]:
        if abs(point[0] - unique[-1][0]) + abs(point[1] - unique[-1][1]) > 1e-9:
            unique.append(point)
    return revolved(unique)


def hexagon(s, height):
    return extrude(RegularPolygon(s / 2, 6, major_radius=False), height)


def chamfered(s, height, both):
    """A hexagon whose corners are turned off at 30° from a circle of 0.95 s, above or at both ends."""
    r, far = 0.95 * s / 2, s
    drop = (far - r) * tan(radians(30))
    low = (
        [(0, 0), (r, 0), (far, drop)] if both else [(0, 0), (far, 0)]
    )
    cone = revolved(low + [(far, height - drop), (r, height), (0, height)])
    return hexagon(s, height) & cone


def hex_bolt(d, p, length, thread, s, k):
    return chamfered(s, k, False) + shaft(d, p, length, thread)


def socket_screw(d, p, length, thread, dk, k, s, t):
    head = Cylinder(dk / 2, k, align=MIN) - Pos(0, 0, k - t) * hexagon(s, t)
    return head + shaft(d, p, length, thread)


def nut(d, p, s, m):
    d1, da = nut_minor(d, p), 1.04 * d
    c = (da - d1) / 2 * tan(radians(30))
    outline = [(0, 0), (da / 2, 0)]
    # The tapped hole runs from countersink to countersink and starts at its minor diameter.
    flank = (1 - 1 / 4 - 1 / 8) / 2
    z, points = c, [(d1 / 2, c)]
    steps = [(1 / 4, d1 / 2), (flank, d / 2), (1 / 8, d / 2), (flank, d1 / 2)]
    end = m - c
    while z < end - 1e-9:
        for share, radius in steps:
            before, following = points[-1], z + share * p
            if following >= end - 1e-9:
                t = (end - z) / (following - z)
                points.append((before[0] + t * (radius - before[0]), end))
                z = end
                break
            points.append((radius, following))
            z = following
    outline += points
    if abs(points[-1][0] - d1 / 2) > 1e-9:
        outline.append((d1 / 2, end))
    outline += [(da / 2, m), (0, m)]
    return chamfered(s, m, True) - revolved(outline)


def washer(d1, d2, h):
    return Cylinder(d2 / 2, h, align=MIN) - Cylinder(d1 / 2, h, align=MIN)


def helix(d, p, turns):
    """Area per turn of the true helicoid of the bolt's profile, by the kernel's ruled faces."""
    d3 = bolt_root(d, p)
    flank = 17 / 48 * p
    rails, z = [], 0.0
    for radius, step in [(d / 2, p / 8), (d / 2, flank), (d3 / 2, p / 6), (d3 / 2, flank), (d / 2, 0)]:
        rails.append(Pos(0, 0, z) * Helix(p, turns * p, radius))
        z += step
    return sum(
        Face.make_surface_from_curves(a.edge(), b.edge()).area for a, b in zip(rails, rails[1:])
    ) / turns


def row(name, solid):
    assert solid.is_valid if isinstance(solid.is_valid, bool) else solid.is_valid(), name
    print(f'    ("{name}", {solid.area:.1f}, {solid.volume:.1f}),')


IN = 25.4
row("hex bolt M16x60", hex_bolt(16, 2, 60, 38, 24, 10))
row("hex bolt M20x90", hex_bolt(20, 2.5, 90, 46, 30, 12.5))
row("hex screw M12x40", hex_bolt(12, 1.75, 40, 40 - 2 * 1.75, 18, 7.5))
row("hex bolt 3/4-10 x 3 in", hex_bolt(0.75 * IN, IN / 10, 3 * IN, 1.75 * IN, 1.125 * IN, 15 / 32 * IN))
row("hex nut M16", nut(16, 2, 24, 14.8))
row("heavy hex nut 3/4-10", nut(0.75 * IN, IN / 10, 1.25 * IN, 47 / 64 * IN))
row("washer M16", washer(17, 30, 3))
row("washer 3/4 in", washer(0.813 * IN, 1.469 * IN, (0.122 + 0.177) / 2 * IN))
row("socket screw M10x60", socket_screw(10, 1.5, 60, 32, 16, 10, 8, 5))
row("socket screw M10x40", socket_screw(10, 1.5, 40, 40 - 2 * 1.5, 16, 10, 8, 5))
row("rod M12x100", shaft(12, 1.75, 100, 100, points=2))
for d, p in [(16, 2), (12, 1.75), (5, 0.8)]:
    d3 = bolt_root(d, p)
    rings = pi * p * (d / 8 + d3 / 6 + 17 / 24 * (d + d3))
    print(f"    // M{d} helicoid against rings, per turn: {helix(d, p, 1):.3f} and {rings:.3f} mm²")
