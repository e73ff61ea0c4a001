"""Thickness and mass of a coat, every unit.

Factors: 7.067 g/m² per µm of ASTM A123 (with which .02316 oz/ft² per µm agrees), 7.2 of ISO 1461, 7.14 of
ASTM A653, 7.0 of older British practice, and of a mechanical deposit .45 oz/ft² per mil to 80 % of 7.14.
"""

from ask import Case, Want, convert
from draw import quantity

FACTORS = {"a123": 7.067, "iso1461": 7.2, "a653": 7.14, "bs729": 7.0}
DEPOSIT = (convert(0.45, "oz/ft² per mil", "g/m² per µm"), 0.8 * 7.14)


def case(random):
    factor = random.choice([*FACTORS, "deposit", "own"])
    fields = {"factor": factor}
    if factor == "own":
        fields["own_factor"], k = quantity(random, 4, 7.2, "g/m² per µm", ["g/m² per µm", "oz/ft² per mil"])
        ks = (k,)
    else:
        ks = DEPOSIT if factor == "deposit" else (FACTORS[factor],)
    if random.random() < 0.6:
        fields["coat"], t = quantity(random, 1, 200, "µm", ["µm", "mm", "mil", "in"])
        thick, mass = (t,), tuple(k * t for k in ks)
    else:
        fields["coat"], m = quantity(random, 10, 1500, "g/m²", ["g/m²", "oz/ft²"])
        thick, mass = tuple(sorted(m / k for k in ks)), (m,)
    return Case("coat", fields, [
        Want("Thickness, micrometres", thick, "µm"),
        Want("Thickness, thousandths", thick, "µm"),
        Want("Thickness, millimetres", thick, "µm"),
        Want("Thickness, inches", thick, "µm"),
        Want("Mass, grams", mass, "g/m²"),
        Want("Mass, ounces", mass, "g/m²"),
    ])
