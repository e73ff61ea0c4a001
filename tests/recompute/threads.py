"""Limits of size of threads.

Metric: basic profile of ISO 68-1 and ISO 724 (diameters to the micrometre), deviations and tolerances of
ISO 965-1 (`iso_965_1.py`), AZ and AX of ISO 965-5, az of ISO 965-4, M8 by ISO 10684.
Inch: the formulas of ASME B1.1, 5.8 and 8.3, with its rounding; zinc allowances of ASTM A563 (`astm_a563.py`).
Stress areas: ISO 898-1 and ASME B1.1, Appendix B.
"""

from dataclasses import dataclass
from decimal import ROUND_HALF_UP, Decimal
from math import pi, sqrt

import iso_965_1 as iso

H = sqrt(3) / 2

COARSE = {
    3: 0.5, 4: 0.7, 5: 0.8, 6: 1, 8: 1.25, 10: 1.5, 12: 1.75, 14: 2, 16: 2, 18: 2.5, 20: 2.5, 22: 2.5,
    24: 3, 27: 3, 30: 3.5, 33: 3.5, 36: 4, 39: 4, 42: 4.5, 45: 4.5, 48: 5, 52: 5, 56: 5.5, 60: 5.5, 64: 6,
}
FINE = [(8, 1), (10, 1.25), (10, 1), (12, 1.5), (12, 1.25), (14, 1.5), (16, 1.5), (20, 1.5), (20, 2), (24, 2),
        (27, 2), (30, 2), (36, 3), (42, 3), (48, 3), (56, 4), (64, 4)]
UNC = {
    "1/4": 20, "5/16": 18, "3/8": 16, "7/16": 14, "1/2": 13, "9/16": 12, "5/8": 11, "3/4": 10, "7/8": 9,
    "1": 8, "1-1/8": 7, "1-1/4": 7, "1-3/8": 6, "1-1/2": 6, "1-3/4": 5, "2": 4.5, "2-1/4": 4.5, "2-1/2": 4,
    "2-3/4": 4, "3": 4,
}
UNF = {
    "1/4": 28, "5/16": 24, "3/8": 24, "7/16": 20, "1/2": 20, "9/16": 18, "5/8": 18, "3/4": 16, "7/8": 14,
    "1": 12, "1-1/8": 12, "1-1/4": 12, "1-3/8": 12, "1-1/2": 12,
}
# ASTM A563, Table 5: diametral allowance of nuts tapped over, inch.
A563 = {
    ("1/4", 20): 0.016, ("5/16", 18): 0.017, ("3/8", 16): 0.017, ("7/16", 14): 0.018, ("1/2", 13): 0.018,
    ("9/16", 12): 0.020, ("5/8", 11): 0.020, ("3/4", 10): 0.020, ("7/8", 9): 0.022, ("1", 8): 0.024,
    ("1-1/8", 8): 0.024, ("1-1/8", 7): 0.024, ("1-1/4", 8): 0.024, ("1-1/4", 7): 0.024, ("1-3/8", 8): 0.027,
    ("1-3/8", 6): 0.027, ("1-1/2", 8): 0.027, ("1-1/2", 6): 0.027, ("1-3/4", 5): 0.050, ("2", 4.5): 0.050,
    ("2-1/4", 4.5): 0.050, ("2-1/2", 4): 0.050, ("2-3/4", 4): 0.050, ("3", 4): 0.050,
}
# ASME B1.1 prints .0001 in less than its formula gives.
PRINTED_ALLOWANCE = {("5/8", 11): 0.0016}
# And .001 in more here.
PRINTED_MINOR = {("1-3/4", 5): (1.534, 1.568)}


def rounded(value, digits):
    """Half up in decimal, as tables are rounded."""
    exact = Decimal(repr(round(value, 12)))
    return float(exact.quantize(Decimal(1).scaleb(-digits), ROUND_HALF_UP))


@dataclass
class Thread:
    """A thread without tolerances; lengths in `unit`."""

    name: str
    unit: str
    d: float
    p: float
    size: object
    n: float = 0.0
    coarse: bool = True

    @property
    def h(self):
        return H * self.p

    @property
    def d2(self):
        """Basic pitch diameter."""
        return rounded(self.d - 0.649519053 * self.p, 3 if self.unit == "mm" else 4)

    @property
    def d1(self):
        """Basic minor diameter."""
        if self.unit == "mm":
            return rounded(self.d - 1.082531755 * self.p, 3)
        return self.d - 1.082531755 * self.p

    @property
    def stress_area(self):
        """ISO 898-1, 9.1.6, and ASME B1.1, Appendix B; unrounded."""
        if self.unit == "mm":
            d2, d3 = self.d - 0.75 * self.h, self.d - 17 / 12 * self.h
            return pi / 4 * ((d2 + d3) / 2) ** 2
        return pi / 4 * (self.d - 0.9743 / self.n) ** 2


@dataclass
class Bolt:
    """Limits of an external thread; `es` is how far it lies below the basic size."""

    es: float
    d: tuple
    d2: tuple
    d1_max: float


@dataclass
class Nut:
    """Limits of an internal thread; `ei` is how far it lies above the basic size."""

    ei: float
    d_min: float
    d2: tuple
    d1: tuple


def inches(text):
    """1-3/4 as a number."""
    total = 0.0
    for piece in text.split("-"):
        top, _, bottom = piece.partition("/")
        total += float(top) / float(bottom or 1)
    return total


def metric(d, p=None):
    coarse = p is None or COARSE.get(d) == p
    p = COARSE[d] if p is None else p
    return Thread(f"M{d}" if coarse else f"M{d}x{p:g}", "mm", float(d), float(p), d, coarse=coarse)


def unified(size, n):
    return Thread(f"{size}-{n:g}", "in", inches(size), 1 / n, size, n=n)


def by_range(table, grade, thread):
    for (over, upto), grades in table.items():
        if over < thread.d <= upto:
            return grades.get(grade, {}).get(thread.p)
    return None


def metric_bolt(thread, name):
    """A bolt of a class as 6g, 5g6g (pitch diameter first) or 6az; none where a table is blank."""
    pitch = name[:-2] if name.endswith("az") else name[:2]
    crest = name if name.endswith("az") else name[-2:]
    position = name.lstrip("0123456789") if name.endswith("az") else crest[1:]
    if position == "az":
        es, grade, crest_grade = 300 + 20 * thread.p, 6, 6
    else:
        es = 0 if position == "h" else -iso.DEVIATION[thread.p].get(position)
        grade, crest_grade = int(pitch[0]), int(crest[0])
    td2, td = by_range(iso.BOLT_PITCH, grade, thread), iso.BOLT_MAJOR[crest_grade].get(thread.p)
    if td2 is None or td is None:
        return None
    es, td2, td = es / 1000, td2 / 1000, td / 1000
    high, high2 = thread.d - es, thread.d2 - es
    return Bolt(es, (high - td, high), (high2 - td2, high2), thread.d1 - es)


def metric_nut(thread, ei, grade=6):
    td2, td1 = by_range(iso.NUT_PITCH, grade, thread), iso.NUT_MINOR[grade].get(thread.p)
    if td2 is None or td1 is None:
        return None
    low2, low1 = thread.d2 + ei, thread.d1 + ei
    return Nut(ei, thread.d + ei, (low2, low2 + td2 / 1000), (low1, low1 + td1 / 1000))


def unified_pitch_tolerance(thread):
    """Td2 of class 2A, unrounded; the length of engagement is D in the series that are used here."""
    root = thread.p ** 2
    return 0.0015 * thread.d ** (1 / 3) + 0.0015 * sqrt(thread.d) + 0.015 * root ** (1 / 3)


def unified_bolt(thread, name):
    td2 = unified_pitch_tolerance(thread)
    es = PRINTED_ALLOWANCE.get((thread.size, thread.n)) or rounded(0.3 * rounded(td2, 6), 4)
    es = 0.0 if name == "3A" else es
    td2 = rounded({"1A": 1.5, "2A": 1.0, "3A": 0.75}[name] * td2, 6)
    td = rounded((0.09 if name == "1A" else 0.06) * (thread.p ** 2) ** (1 / 3), 6)
    high = rounded(thread.d - es, 4)
    high2 = rounded(thread.d - es - 0.649519053 * thread.p, 4)
    d1_max = rounded(thread.d - es - 1.082531755 * thread.p, 4)
    return Bolt(es, (rounded(high - td, 4), high), (rounded(high2 - td2, 4), high2), d1_max)


def unified_nut(thread, ei):
    """Class 2B, moved up by an allowance."""
    tolerance = 1.3 * unified_pitch_tolerance(thread)
    high2 = rounded(thread.d2 + rounded(tolerance, 6), 4)
    p = thread.p
    td1 = 0.25 * p - 0.4 * p * p if thread.n >= 4 else 0.15 * p
    low1, high1 = PRINTED_MINOR.get((thread.size, thread.n)) or (
        rounded(thread.d1, 3), rounded(thread.d1 + td1, 3))
    return Nut(ei, thread.d + ei, (thread.d2 + ei, high2 + ei), (low1 + ei, high1 + ei))


def bolt(thread, name=""):
    if thread.unit == "mm":
        return metric_bolt(thread, name or "6g")
    return unified_bolt(thread, name or "2A")


def nut(thread, ei=0.0):
    return metric_nut(thread, ei) if thread.unit == "mm" else unified_nut(thread, ei)


def az(thread):
    """ISO 965-5, clause 1, whose Table 1 holds the same values; ISO 10684 has M8."""
    return (300 + 20 * thread.p) / 1000 if thread.unit == "mm" else None


def ax(thread):
    """ISO 965-5, clause 1; ASTM A563M, whose table was not seen, is remembered as the same."""
    return (220 * thread.p - 20) / 1000 if thread.unit == "mm" else None


def a563(thread):
    return A563.get((thread.size, thread.n)) if thread.unit == "in" else None


def has_az_bolt(thread):
    """ISO 965-4 and ISO 10684: coarse threads of M8 to M64."""
    return thread.unit == "mm" and thread.coarse and 8 <= thread.d <= 64


def az_stress_area(thread):
    """With d3 for stress of ISO 965-4, Table 1, to the micrometre, and the greatest d2."""
    bolt_az = metric_bolt(thread, "6az")
    d3 = rounded(thread.d - 17 / 12 * thread.h - bolt_az.es, 3)
    return pi / 4 * ((bolt_az.d2[1] + d3) / 2) ** 2


def any_thread(random):
    kind = random.random()
    if kind < 0.5:
        return metric(random.choice(list(COARSE)))
    if kind < 0.65:
        return metric(*random.choice(FINE))
    if kind < 0.85:
        return unified(*random.choice(list(UNC.items())))
    if kind < 0.95:
        return unified(*random.choice(list(UNF.items())))
    return unified(random.choice(["1-1/8", "1-1/4", "1-3/8", "1-1/2"]), 8)
