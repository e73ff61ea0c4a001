"""Loads at which bolt and threads give way.

Alexander 1977, as in ISO/TR 16224:2012, 4.2; FED-STD-H28/2B, Table II.B.1. H28 asks which thread would strip by
the greatest shear area of the bolt (6b) over the least of the nut (2a): so its printed example selects; its
stress area and pitch diameter are the basic ones.
The countersink (ISO 4032, from memory): da of 1.08 D at 90°, so that its depth is half of da less D1.
"""

from math import pi, sqrt

import threads
from ask import Case, Want
from draw import quantity
from oversize_tap import pair


def case(random):
    thread = threads.any_thread(random)
    room, bolt, nut = pair(random, thread)
    fields = {"thread": thread.name, **room, "bolt_grade": "own", "nut_grade": "own", "nut_style": "own"}
    inch = 25.4 if thread.unit == "in" else 1.0
    d = thread.d * inch
    fields["bolt_tensile"], rm = quantity(random, 400, 1250, "MPa", ["MPa", "ksi"])
    fields["nut_level"], rmn = quantity(random, 0.6 * rm, 1.4 * rm, "MPa", ["MPa", "ksi"])
    fields["nut_height"], m = quantity(random, 0.6 * d, 1.2 * d, "mm", ["mm", "in"])
    fields["nut_width"], s = quantity(random, 1.42 * d, 1.79 * d, "mm", ["mm", "in"])
    ends = random.choice([0, 1, 2])
    fields["countersunk"] = str(ends)
    if bolt is None or nut is None:
        return Case("thread-strength", fields, [], refuses=True)
    rows = wants(thread, room, bolt, nut, rm, rmn, m / inch, s / inch, ends)
    return Case("thread-strength", fields, rows or [], refuses=rows is None)


def alexander(thread, d, d2, nut_d2, nut_d1, height, rm, rmn, ratio):
    """Areas of bolt and nut thread, their strength ratio and the two loads that strip them."""
    p = thread.p

    def bolt_area(length, diameter):
        return length / p * pi * diameter * (p / 2 + (d2 - diameter) / sqrt(3))

    # Where the opened nut passes the bolt, that part carries nothing.
    opened = 0.0 if 1.026 * nut_d1 >= d else bolt_area(height, 1.026 * nut_d1)
    asb = 0.6 * bolt_area(height, nut_d1) + 0.4 * opened
    asn = height / p * pi * d * (p / 2 + (d - nut_d2) / sqrt(3))
    rs = rmn * asn / (rm * asb)
    c1 = min(1.0, -ratio ** 2 + 3.8 * ratio - 2.6)
    c2 = 0.897 if rs <= 1 else 5.594 - 13.682 * rs + 14.107 * rs ** 2 - 6.057 * rs ** 3 + 0.9353 * rs ** 4
    c3 = 0.897 if rs >= 1 else 0.728 + 1.769 * rs - 2.896 * rs ** 2 + 1.296 * rs ** 3
    return asb, asn, rs, 0.6 * rm * asb * c1 * c2, 0.6 * rmn * asn * c1 * c3


def wants(thread, room, bolt, nut, rm, rmn, m, s, ends):
    unit, square = thread.unit, f"{thread.unit}²"
    # MPa is N/mm²; loads in newtons.
    newton = 25.4 ** 2 if unit == "in" else 1.0
    basic_d1 = thread.d1 if unit == "mm" else threads.rounded(thread.d1, 4)
    depth = (1.08 * thread.d - basic_d1) / 2
    height = m - 0.6 * ends * depth
    area = threads.az_stress_area(thread) if room.get("way") == "under" else thread.stress_area
    usual, standard = threads.bolt(thread), threads.nut(thread)

    def least(b, n):
        return alexander(thread, b.d[0], b.d2[0], n.d2[1], n.d1[1], height, rm, rmn, s / thread.d)

    def middle(b, n):
        return alexander(thread, sum(b.d) / 2, sum(b.d2) / 2, sum(n.d2) / 2, sum(n.d1) / 2, height, rm, rmn,
                         s / thread.d)

    this, plain = least(bolt, nut), least(usual, standard)
    # Threads that do not overlap carry nothing; the polynomials hold from .4 to 2.2.
    if bolt.d[0] <= nut.d1[1] or not all(0.4 < one[2] < 2.2 for one in (this, plain, middle(bolt, nut))):
        return None
    rows = [
        Want("Minimum height", m, unit, "The nut"),
        Want("Depth of a countersink", depth, unit, "The nut"),
        Want("Height that carries", height, unit, "The nut"),
    ]
    for section, result, bolt_area in [
        ("This pair at least material", this, area),
        ("This pair with every size", middle(bolt, nut), area),
        ("Usual bolt in a standard nut", plain, thread.stress_area),
    ]:
        asb, asn, rs, fsb, fsn = result
        rows += [
            Want("The bolt breaks", rm * bolt_area * newton, "N", section),
            Want("The bolt's thread strips", fsb * newton, "N", section),
            Want("The nut's thread strips", fsn * newton, "N", section),
            Want("Stress area", bolt_area, square, section),
            Want("Shear area of the bolt's thread", asb, square, section),
            Want("Shear area of the nut's thread", asn, square, section),
            Want("Strength ratio", rs, "", section),
        ]
    strips, breaks = min(this[3:]) * newton, rm * area * newton
    lost = min(plain[3:]) * newton - strips
    rows += [
        Want("At a load of", min(strips, breaks), "N"),
        Want("Stripping above breaking", 100 * (strips / breaks - 1), "%"),
        Want("Stripping strength lost", lost, "N"),
        Want("As a share", 100 * lost / (min(plain[3:]) * newton), "%"),
    ]
    return rows + h28(thread, bolt, nut, height, rm, rmn, basic_d1)


def h28(thread, bolt, nut, height, rm, rmn, basic_d1):
    unit, square, section = thread.unit, f"{thread.unit}²", "By FED-STD-H28"
    p, area = thread.p, thread.stress_area
    asn = pi * height / p * bolt.d[0] * (p / 2 + (bolt.d[0] - nut.d2[1]) / sqrt(3))
    ass = pi * height / p * nut.d1[1] * (p / 2 + (bolt.d2[0] - nut.d1[1]) / sqrt(3))
    together = 4 * area / (pi * thread.d2)
    r1, r2 = pi * basic_d1 * 0.75 * height / asn, rmn / rm
    engagement = 2 * area / ass * height if r1 / r2 < 1 else max(together, 2 * area / asn * height / r2)
    return [
        Want("Nut thread, least material", asn, square, section),
        Want("Bolt thread, least material", ass, square, section),
        Want("Nut thread, simplified", pi * thread.d2 * 0.75 * height, square, section),
        Want("Bolt thread, simplified", pi * thread.d2 * 5 / 8 * height, square, section),
        Want("Engagement at which", engagement, unit, section),
    ]
