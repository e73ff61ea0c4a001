"""Statistics of a lot.

Limits: ASTM A153 Table 1 (average of specimens, individual specimen; mass and thickness), ASTM F2329, ISO
10684 8.3, ISO 1461 Tables 3 and 4, ASTM B695 Table 1, ISO 4042:1999 batch averages. One-sided bound of a mean
by Student's t (ISO 2602): quantiles by mpmath. Sample sizes: the table of A123, A153 and ISO 1461. Risk of a
plan: binomial. The program rounds readings far below what any gauge shows, so differences are compared to
.00001 µm.
"""

from math import sqrt
from statistics import mean, stdev

import mpmath

from ask import Case, Want, convert
from draw import number, quantity
from powder import B695_MIL, CLASSES

FLOOR = 1e-5
# Squared deviations are rounded to a millionth of a µm²; what follows from them moves by less than this.
SCATTER = 1e-4
# ASTM A153, Table 1: average of all, individual; in µm, and in mil as printed beside it.
A153 = {"class-a": ((86, 3.4), (79, 3.1)), "class-b-1": ((86, 3.4), (79, 3.1)),
        "class-b-2": ((66, 2.6), (53, 2.1)), "class-b-3": ((56, 2.2), (48, 1.9)),
        "class-c": ((53, 2.1), (43, 1.7)), "class-d": ((43, 1.7), (36, 1.4))}
# The same in oz/ft² and in g/m².
A153_MASS = {"class-a": ((2.0, 610), (1.8, 550)), "class-b-1": ((2.0, 610), (1.8, 550)),
             "class-b-2": ((1.5, 458), (1.25, 381)), "class-b-3": ((1.3, 397), (1.1, 336)),
             "class-c": ((1.25, 381), (1.0, 305)), "class-d": ((1.0, 305), (0.85, 259))}
# ASTM F2329: production lot, batch lot, individual; mil.
F2329 = {"over-3-8-in": (2.0, 1.7, 1.7), "3-8-in-and-under": (1.7, 1.5, 1.5)}
# ISO 1461:2009, Tables 3 and 4: mean, local; µm.
ISO1461 = {"threads-over-6-mm": (50, 40), "threads-of-6-mm-and-under": (25, 20), "spun-3-mm-and-over": (55, 45),
           "spun-under-3-mm": (45, 35), "steel-over-6-mm": (85, 70), "steel-over-3-to-6-mm": (70, 55),
           "steel-1-5-to-3-mm": (55, 45), "steel-under-1-5-mm": (45, 35), "castings-6-mm-and-over": (80, 70),
           "castings-under-6-mm": (70, 60)}
# ISO 4042:1999, batch average for a nominal thickness: least, greatest; µm.
ISO4042 = {3: (3, 5), 5: (4, 6), 8: (7, 10), 10: (9, 12), 12: (11, 15), 15: (14, 18), 20: (18, 23),
           25: (23, 28), 30: (27, 35)}
SAMPLES = [(3, None), (500, 3), (1200, 5), (3200, 8), (10_000, 13), (10 ** 9, 20)]
MIL = 25.4


def limits(random, fields, inch):
    """Least and greatest lot mean, least article, least reading; µm, none where there is none.

    A document that prints two columns is read in the one that belongs to the unit of the readings.
    """
    standard = random.choice(["a153", "f2329-batch", "f2329-lot", "iso10684", "iso1461", "b695", "iso4042", "own"])
    fields["standard"] = standard
    if standard == "a153":
        fields["a153"] = random.choice(list(A153))
        average, individual = (mil * MIL if inch else um for um, mil in A153[fields["a153"]])
        return average, None, individual, None
    if standard.startswith("f2329"):
        fields["f2329"] = random.choice(list(F2329))
        lot, batch, individual = (value * MIL for value in F2329[fields["f2329"]])
        return (batch if standard == "f2329-batch" else lot), None, individual, None
    if standard == "iso10684":
        return 50, None, 40, None
    if standard == "iso1461":
        fields["iso1461"] = random.choice(list(ISO1461))
        average, local = ISO1461[fields["iso1461"]]
        return average, None, local, None
    if standard == "b695":
        name = random.choice(list(CLASSES))
        fields["b695"] = f"class-{name}"
        return None, None, None, B695_MIL[name] * MIL if inch and name in B695_MIL else CLASSES[name]
    if standard == "iso4042":
        nominal = random.choice(list(ISO4042))
        fields["iso4042"] = f"nominal-{nominal}"
        least, greatest = ISO4042[nominal]
        return least, greatest, nominal, None
    fields["own_mean"], average = quantity(random, 20, 80, "µm", ["µm", "mil", "mm", "in"], 3)
    # A mean below what each article has to reach is refused, and so are the others the wrong way round.
    fields["own_article"], article = quantity(random, 15, min(70, average), "µm", ["µm", "mil"], 3)
    reading = greatest = None
    if random.random() < 0.5:
        fields["own_reading"], reading = quantity(random, 10, min(60, article), "µm", ["µm", "mil"], 3)
        fields["own_greatest"], greatest = quantity(random, 90, 150, "µm", ["µm", "mil"], 4)
    return average, greatest, article, reading


def case(random):
    fields = {}
    unit = random.choice(["µm", "µm", "mil", "mm", "in", "g/m²", "oz/ft²"])
    base = "g/m²" if "²" in unit else "µm"
    if base == "µm":
        average, greatest, article, reading = limits(random, fields, unit in ("mil", "in"))
    else:
        # Stripped and weighed.
        fields.update(standard="a153", a153=random.choice(list(A153_MASS)), method="strip")
        average, article = (convert(ounces, unit, base) if unit == "oz/ft²" else grams
                            for ounces, grams in A153_MASS[fields["a153"]])
        greatest = reading = None

    def near(name, value, section="", floor=FLOOR):
        return Want(name, value, base, section, floor=floor)

    per = random.randint(1, 10)
    articles = random.randint(1, 14)
    middle = random.uniform(0.7, 1.5) * (average or reading)
    texts, values = [], []
    for _ in range(per * articles):
        value = max(0.5, random.gauss(middle, 0.12 * middle))
        text = f"{convert(value, base, unit):.{3 if value < 100 else 4}g}"
        if "e" in text:
            text = f"{float(text):.7f}"
        texts.append(f"{text} {unit}")
        values.append(convert(float(text), unit, base))
    fields["readings"] = "; ".join(texts)
    fields["per_article"] = str(per)
    pieces = random.randint(articles, 60_000)
    fields["lot"] = str(pieces)
    text, confidence = number(random, 60, 99, 3)
    fields["confidence"] = f"{text} %"
    means = [mean(values[i * per:(i + 1) * per]) for i in range(articles)]
    m = mean(means)
    wants = [
        Want("Articles measured", float(articles), ""),
        Want("Readings", float(len(values)), ""),
        near("Lot mean", m),
        near("Article means", (min(means), max(means))),
        near("Single readings", (min(values), max(values))),
    ]
    if fields["standard"] in ("a153", "iso1461"):
        wanted = next(size for upto, size in SAMPLES if pieces <= upto)
        wants.append(Want("Articles wanted", float(wanted or pieces), ""))
    if average is not None:
        wants.append(near("Lot mean above its least", m - average))
    if greatest is not None:
        wants.append(near("Lot mean below its greatest", greatest - m))
    if article is not None:
        wants.append(near("Least article above its least", min(means) - article))
    if reading is not None:
        wants.append(near("Least reading above its least", min(values) - reading))
    if articles > 1:
        s = stdev(means)
        wants.append(near("Standard deviation of the article means", s, floor=SCATTER))
        least = m - student(confidence / 100, articles - 1) * s / sqrt(articles)
        # Below nothing it says nothing.
        if least > 0:
            wants.append(near("The lot's mean is at least", least, floor=SCATTER))
        if average is not None:
            wants += sureness((m - average) / (s / sqrt(articles)), articles - 1)
    if random.random() < 0.3 and fields["standard"] in ("own", "b695", "iso10684"):
        fields["agreed"] = str(articles)
        wants += risk(articles)
    for i, value in enumerate(means[:6]):
        wants.append(near(f"Article {i + 1}, {per} reading", value, "Article means"))
    return Case("lot", fields, wants)


def student(p, nu):
    """The quantile of Student's t, found on its distribution function by bisection."""
    low, high = mpmath.mpf(0), mpmath.mpf(10) ** 4
    for _ in range(80):
        middle = (low + high) / 2
        low, high = (middle, high) if below(middle, nu) < p else (low, middle)
    return float(low)


def below(t, nu):
    """The chance that Student's t is at most t."""
    tail = mpmath.betainc(nu / mpmath.mpf(2), mpmath.mpf(1) / 2, 0, nu / (nu + mpmath.mpf(t) ** 2),
                          regularized=True) / 2
    return 1 - tail if t > 0 else tail


def sureness(t, nu):
    """The confidence that the mean reaches its limit; near none and near all it is words."""
    sure = 100 * float(below(t, nu))
    if not 0.2 < sure < 99.8:
        return []
    return [Want("Confidence that the lot's mean reaches", sure, "%", floor=SCATTER)]


def risk(n):
    """The share of articles that miss with which a lot passes once in ten times, and 95 times in 100."""
    return [Want("A lot passes this plan once in ten", 100 * (1 - 0.1 ** (1 / n)), "%", tolerance=1e-6),
            Want("and 95 times in 100", 100 * (1 - 0.95 ** (1 / n)), "%", tolerance=1e-6)]
