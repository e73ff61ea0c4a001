"""The life of a zinc coat.

ISO 9223:2012: Table 2 (first-year loss by category), Eq. (2) with its ranges (dose and response), Table A.1
(a measured loss within 5 %, an estimated one 33 % less to 50 % more). ISO 9224:2012: D = r t^b up to 20 years,
a straight line of the slope at 20 years beyond; b = .813, upper bound .873. ISO 14713-1: thickness over rate.
Years at the greatest loss are cut, to a tenth below twenty and to whole years above; past 100 they are words.
"""

from math import exp, floor

from ask import Case, Want
from coat_thickness import DEPOSIT
from draw import number, quantity

CATEGORIES = {"C1": (0.0, 0.1), "C2": (0.1, 0.7), "C3": (0.7, 2.1), "C4": (2.1, 4.2), "C5": (4.2, 8.4),
              "CX": (8.4, 25.0)}
# Common practice: what the processes usually put on.
USUAL = [("Hot-dip: spun hot-dip coat", 40, 60), ("Mechanical: thick mechanical coat", 40, 60),
         ("Mechanical: mechanical coat on small screws", 5, 12), ("Electroplating: electroplate", 4, 6)]


def place(random, fields):
    """The least and greatest first-year loss in µm, and what else is shown of the place."""
    known = random.choice(["category", "climate", "climate", "rate"])
    fields["place"] = known
    if known == "category":
        fields["category"] = random.choice(list(CATEGORIES))
        return CATEGORIES[fields["category"]], []
    if known == "rate":
        fields["rate"], r = quantity(random, 0.05, 20, "µm/year", ["µm/year", "mil/year"], 3)
        return (0.95 * r, 1.05 * r), []
    fields["temperature"], t = quantity(random, -15, 28, "°C", ["°C", "°F"], 3)
    text, rh = number(random, 35, 92, 3)
    fields["humidity"] = f"{text} %"
    text, p = number(random, 1, 60, 3)
    if random.random() < 0.5:
        fields["so2"] = f"{text} mg/(m²·d)"
    else:
        fields["so2"] = f"{text} µg/m³"
        p *= 0.8
    text, s = number(random, 0.5, 100, 3)
    fields["chloride"] = f"{text} mg/(m²·d)"
    f = 0.038 * (t - 10) if t <= 10 else -0.071 * (t - 10)
    r = 0.0129 * p ** 0.44 * exp(0.046 * rh + f) + 0.0175 * s ** 0.57 * exp(0.008 * rh + 0.085 * t)
    return (0.67 * r, 1.5 * r), [Want("First-year loss, as estimated", r, "µm/year")]


def case(random):
    fields = {}
    (low, high), wants = place(random, fields)
    if low > 0:
        wants.append(Want("First-year loss of zinc", (low, high), "µm/year"))
    fields["thickness"], mean = quantity(random, 5, 120, "µm", ["µm", "mil", "mm", "in"], 4)
    coats = [("average", mean, mean)]
    least = greatest = mean
    if random.random() < 0.5:
        fields["least"], least = quantity(random, 2, mean, "µm", ["µm", "mil"], 5)
        fields["greatest"], greatest = quantity(random, mean, 180, "µm", ["µm", "mil"], 6)
        coats = [("least", least, least), ("average", mean, mean), ("greatest", greatest, greatest)]
    ways = [("ISO 14713-1", None), ("ISO 9224, upper bound", 0.873), ("ISO 9224, mean", 0.813)]
    for name, d, _ in coats:
        wants.append(span(f"Years of the {name} thickness", years(d, high, None), years(d, low, None), ""))
        for section, b in ways:
            wants.append(span(f"Years of the {name} thickness", years(d, high, b), years(d, low, b), section))
    for name, thin, thick in USUAL:
        wants.append(span(name, years(thin, high, None), years(thick, low, None), "The three processes"))
    solid = (least * DEPOSIT[0] / 7.14, greatest * DEPOSIT[1] / 7.14)
    wants.append(Want("As solid zinc", solid, "µm", "If the coat is mechanical"))
    wants.append(span("Years by that", years(solid[0], high, None), years(solid[1], low, None),
                      "If the coat is mechanical"))
    if random.random() < 0.5:
        text, wanted = number(random, 1, 100, 3)
        fields["years"] = text
        wants.append(Want("Thickness sure to last", high * wanted, "µm"))
        for section, b in ways:
            wants.append(Want("Thickness for", thickness(high, wanted, b), "µm", section))
    return Case("life", fields, wants)


def years(d, r, b):
    if r == 0:
        return float("inf")
    if b is None:
        return d / r
    if d / r <= 20 ** b:
        return (d / r) ** (1 / b)
    return 20 + (d / r - 20 ** b) / (b * 20 ** (b - 1))


def thickness(r, t, b):
    if b is None:
        return r * t
    if t <= 20:
        return r * t ** b
    return r * (20 ** b + b * 20 ** (b - 1) * (t - 20))


def cut(t):
    return floor(t * 10 + 1e-9) / 10 if t < 20 else float(floor(t + 1e-9))


def span(name, short, long, section):
    if short > 100:
        return Want(name, "over 100 years", "", section)
    if long == float("inf"):
        return Want(name, f"{cut(short):g} years or more", "", section)
    if long > 100:
        return Want(name, f"{cut(short):g} to over 100 years", "", section)
    return Want(name, (cut(short), long), "years", section)
