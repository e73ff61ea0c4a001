"""The charge of the barrel.

Least thickness of ASTM B695, Table 1. Readings scatter like a bell about the mean: all of n reach the least
with a chance p where each does with p^(1/n). Density of the deposit: .45 oz/ft² per mil to 80 % of 7.14
(`coat_thickness.py`); 93 % of the powder is plated (finishing industry guidebook). Copper of 8.96 g/cm³;
its sulfate with five waters weighs 249.68 for 63.546 of copper. Glass of 2.5 g/cm³ fills 60 % of its heap.
"""

from math import ceil, pi
from statistics import NormalDist, mean, stdev

import load
from ask import Case, Want
from coat_thickness import DEPOSIT
from draw import number, quantity

# ASTM B695, Table 1: class and least thickness on significant surfaces, µm.
CLASSES = {110: 107, 80: 80, 70: 69, 65: 66, 55: 53, 50: 50, 40: 40, 25: 25, 12: 12, 8: 8, 5: 5}
# The same in mil; classes 110 and 25 were not found in inches.
B695_MIL = {80: 3.2, 70: 2.7, 65: 2.6, 55: 2.1, 50: 2.0, 40: 1.5, 12: 0.5, 8: 0.3, 5: 0.2}
DENSITIES = {"heavy": DEPOSIT[1], "light": DEPOSIT[0]}
# A mean coat above this is refused: no class is near it, µm.
THICKEST = 200
COPPER, SULFATE, GLASS, PACKED = 8.96, 249.685 / 63.546, 2.5, 0.6


def in_inches(fields):
    """Whether a load is told in inches and pounds, if in part."""
    told = [fields[key] for key in ("bar", "plate", "weight", "area") if key in fields]
    inches = any(text.endswith((" in", "lb", "ft²")) for text in told)
    return inches if told else not fields["thread"].startswith("M")


def coat(random, fields):
    """The mean thickness to be charged for, and what an earlier load tells to multiply the powder by."""
    asked = random.choice(["class", "least", "thickness"])
    fields["asked"] = asked
    if asked == "thickness":
        fields["coat"], t = quantity(random, 5, 110, "µm", ["µm", "mil", "in"])
        return t, 1.0, []
    correction = 1.0
    if asked == "class":
        name = random.choice(list(CLASSES))
        fields["class"], least = str(name), CLASSES[name]
        # The column that the standard prints for the units of the load.
        if in_inches(fields) and name in B695_MIL:
            least = B695_MIL[name] * 25.4
    else:
        fields["least"], least = quantity(random, 5, 80, "µm", ["µm", "mil", "in"])
    n = random.randint(1, 25)
    fields["checks"] = str(n)
    text, p = number(random, 50, 99, 3)
    fields["chance"] = f"{text} %"
    wants = [Want("Chance to pass if the mean were", 100 * 0.5 ** n, "%")]
    if random.random() < 0.6:
        text, v = number(random, 2, 18, 3)
        fields["scatter"] = f"{text} %"
    else:
        texts = [number(random, 40, 70, 3) for _ in range(random.randint(3, 12))]
        fields["earlier"] = "; ".join(text for text, _ in texts)
        values = [value for _, value in texts]
        v = 100 * stdev(values) / mean(values)
        wants.append(Want("Mean of the earlier load", mean(values), "µm"))
        if random.random() < 0.5:
            fields["charged"], aimed = quantity(random, 40, 80, "µm", ["µm", "mil"])
            correction = aimed / mean(values)
    z = NormalDist().inv_cdf((p / 100) ** (1 / n))
    t = 100 * least / (100 - z * v)
    return t, correction, wants + [Want("Scatter of single readings", v, "%"), Want("Chance to pass as charged", p, "%")]


def case(random):
    fields = {}
    density = random.choice(["heavy", "light", "own"])
    fields["density"] = density
    if density == "own":
        fields["own_density"], k = quantity(random, 4.5, 7, "g/m² per µm",
                                            ["g/cm³", "g/m² per µm", "oz/ft² per mil"])
    else:
        k = DENSITIES[density]
    area, weight, wants = load.draw(random, fields, k, tapped=True)
    t, correction, more = coat(random, fields)
    if not 0 < t <= THICKEST:
        return Case("powder", fields, [], refuses=True)
    text, efficiency = number(random, 70, 100, 3)
    fields["yield"] = f"{text} %"
    additions = random.randint(1, 15)
    fields["additions"] = str(additions)
    fields["flash"], flash = quantity(random, 0.1, 2, "µm", ["µm", "mil"], 3)
    zinc = k * t * area / 1000
    powder = zinc / efficiency * 100
    copper = COPPER * flash * area
    minutes = {"promoter": random.randint(1, 6), "spacing": random.randint(2, 8),
               "tumble": random.randint(1, 9)}
    fields.update({key: f"{value} min" for key, value in minutes.items()})
    # The conditioner mixes for 2 minutes, the copper works for 5.
    turns = 2 + minutes["promoter"] + 5 + additions * minutes["spacing"] + minutes["tumble"]
    wants += more + [
        Want("Mean coat charged for", t, "µm"),
        Want("Zinc on the parts", zinc, "kg"),
        Want("Zinc powder for that coat", powder, "kg"),
        Want("Equal additions", float(additions), ""),
        Want("Zinc powder in each addition", correction * powder / additions, "kg"),
        Want("Copper of the flash", copper, "g"),
        Want("as copper sulfate pentahydrate", SULFATE * copper, "g", tolerance=2e-4),
        Want("The barrel turns for about", float(turns), "min"),
    ]
    # A trial finds its area by the density, which cancels: its zinc was weighed.
    if fields.get("load") != "trial":
        wants.append(Want("Zinc powder over the published densities",
                          tuple(powder / k * DENSITIES[name] for name in ("light", "heavy")), "kg"))
    if correction != 1:
        wants.append(Want("Zinc powder to weigh in", correction * powder, "kg"))
    for number_ in range(1, additions + 1):
        wants.append(Want(f"after addition {number_}", t * number_ / additions, "µm", "Mean coat after"))
    if weight:
        wants += vessel(random, fields, weight)
    return Case("powder", fields, wants)


def vessel(random, fields, weight):
    """Parts, beads and the barrel."""
    text, solid = number(random, 12, 45, 3)
    beads, ratio = number(random, 0.8, 3, 3)
    fields.update(solid=f"{text} %", beads=beads)
    heap = weight / 7.85 / solid * 100
    wants = [
        Want("Heap of parts", heap, "L"),
        Want("Glass beads, by volume", ratio * heap, "L"),
        Want("Glass beads, about", GLASS * PACKED * ratio * heap, "kg"),
    ]
    if random.random() < 0.5:
        fields["barrel"], litres = quantity(random, 60, 1100, "L", ["L", "m³", "ft³"])
        fields["barrel_by"] = random.choice(["working", "total"])
        # A barrel works with .25 to .35 of its volume (handbook of corrosion). Nobody fills one to the
        # hundredth: what is so little more is no further load.
        shares = (0.35, 0.25) if fields["barrel_by"] == "total" else (1,)
        loads = tuple(float(ceil(heap / (share * litres) - 0.01) or 1) for share in shares)
        wants.append(Want("Barrel loads", loads if len(set(loads)) > 1 else loads[0], ""))
    if random.random() < 0.5:
        fields["diameter"], d = quantity(random, 0.4, 1.8, "m", ["m", "mm", "in", "ft"])
        wants.append(Want("Turns of the barrel", (43 / pi / d, 75 / pi / d), "1/min", "Run sheet"))
    return wants
