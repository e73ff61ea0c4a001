"""What kernel.rs computes, with pint: the rows from the command line; nanoseconds for a row, and the sum."""

import sys
import time

import pint

UNITS = pint.UnitRegistry()
MM, UM, YEAR = UNITS.millimeter, UNITS.micrometer, UNITS.year
DENSITY = 7.2 * UNITS.gram / UNITS.centimeter**3
B, TURN = 0.873, 20.0


def row(at: int) -> float:
    bolt = (14.0 + at % 997 / 1000.0) * MM
    nut = bolt + 0.4 * MM
    coat = (40.0 + at % 61) * UM
    rate = (0.7 + at % 350 / 100.0) * UM / YEAR

    play = nut - (bolt + 4.0 * coat)
    zinc = DENSITY * coat
    ratio = (coat / (rate * YEAR)).to("dimensionless").magnitude
    at_turn = TURN**B
    life = ratio ** (1.0 / B) if ratio <= at_turn else TURN + (ratio - at_turn) / (B * TURN ** (B - 1.0))
    return play.to(UM).magnitude + zinc.to("gram/meter**2").magnitude + life


rows = int(sys.argv[1])
start = time.perf_counter()
total = sum(row(at) for at in range(rows))
print((time.perf_counter() - start) * 1e9 / rows, f"{total:.6f}")
