"""The coated fit: a nut tapped over or a bolt cut under, and a coat on the bolt.

Written from Machinery's Handbook (a coat t on flanks of 60° adds 4 t to the pitch diameter and 2 t to the
major and minor diameter), and from what the calculator says it assumes: flanks and roots carry up to (1 + u)
times the thickness, crests down to (1 - u) times. Depth of thread in contact: 5/8 H of ISO 68-1.
"""

import threads
from ask import Case, Want
from draw import number, quantity

ALLOWANCES = {"az": threads.az, "ax": threads.ax, "a563": threads.a563, "a563m": threads.ax}
METRIC_CLASSES = ["", "", "6g", "6h", "6e", "6f", "4h", "8g", "5g6g", "7g6g"]
INCH_CLASSES = ["", "", "2A", "1A", "3A"]


def pair(random, thread):
    """How room is made: the fields, the bolt and the nut; no pair where nothing is published."""
    if random.random() < 0.15 and threads.has_az_bolt(thread):
        return {"way": "under"}, threads.bolt(thread, "6az"), threads.nut(thread)
    name = random.choice(METRIC_CLASSES if thread.unit == "mm" else INCH_CLASSES)
    way = random.choice(["usual", "usual", "own", "standard", "az", "ax", "a563", "a563m"])
    fields = {"bolt_class": name, "allowance": way}
    if way == "own":
        text, ei = quantity(random, 0.05, 0.9, "mm", ["mm", "µm", "in", "mil"])
        fields["own_allowance"] = text
        ei = ei if thread.unit == "mm" else ei / 25.4
    elif way == "standard":
        ei = 0.0
    elif way == "usual":
        ei = threads.az(thread) if thread.unit == "mm" else threads.a563(thread)
    else:
        ei = ALLOWANCES[way](thread)
    nut = None if ei is None else threads.nut(thread, ei)
    return fields, threads.bolt(thread, name), nut


def coat(random):
    """Least and greatest thickness in millimetres, as fields."""
    low, least = quantity(random, 2, 90, "µm", ["µm", "mil", "mm"], 3)
    high, greatest = quantity(random, least, 130, "µm", ["µm", "mil", "in"], 5)
    return {"coat_least": low, "coat_greatest": high}, least / 1000, greatest / 1000


def case(random):
    thread = threads.any_thread(random)
    room, bolt, nut = pair(random, thread)
    thickness, least, greatest = coat(random)
    text, percent = number(random, 0, 60, 2)
    fields = {"thread": thread.name, **room, **thickness, "spread": f"{text} %"}
    if bolt is None or nut is None:
        return Case("oversize-tap", fields, [], refuses=True)
    return Case("oversize-tap", fields, wants(thread, room, bolt, nut, least, greatest, percent / 100))


def wants(thread, room, bolt, nut, least, greatest, u):
    unit = thread.unit
    if unit == "in":
        least, greatest = least / 25.4, greatest / 25.4
    flank = greatest * (1 + u)
    coated = ((bolt.d[0] + 2 * least * (1 - u), bolt.d[1] + 2 * greatest),
              (bolt.d2[0] + 4 * least, bolt.d2[1] + 4 * flank), bolt.d1_max + 2 * flank)
    rooms = ((nut.d2[0] - bolt.d2[1]) / 4, (nut.d1[0] - bolt.d1_max) / 2)
    crest = (nut.d_min - bolt.d[1]) / 2
    middle = sum(nut.d2) / 2 - sum(bolt.d2) / 2 - 4 * (least + greatest) / 2 * (1 + u / 2)
    standard, usual = threads.nut(thread), threads.bolt(thread)
    depth = (bolt.d[0] - nut.d1[1]) / 2 / (5 / 8 * thread.h)
    plain = (usual.d[0] - standard.d1[1]) / 2 / (5 / 8 * thread.h)
    under = room.get("way") == "under"
    area = threads.az_stress_area(thread) if under else thread.stress_area
    square = f"{unit}²"
    rows = [
        Want("Nut, pitch diameter", nut.d2, unit),
        Want("Nut, minor diameter", nut.d1, unit),
        Want("Thickest even coat that assembles", min(*rooms, crest), unit),
        Want("Thickest coat that assembles with", min(*(room / (1 + u) for room in rooms), crest), unit),
        Want("Clearance on the pitch diameter, coated", (nut.d2[0] - coated[1][1], nut.d2[1] - coated[1][0]),
             unit),
        Want("Major diameter, minimum", nut.d_min, unit, "Nut"),
        Want("Pitch diameter", nut.d2, unit, "Nut"),
        Want("Minor diameter", nut.d1, unit, "Nut"),
        Want("Above the basic size", nut.ei, unit, "Nut"),
        Want("Major diameter", bolt.d, unit, before(room, thread)),
        Want("Pitch diameter", bolt.d2, unit, before(room, thread)),
        Want("Minor diameter, maximum", bolt.d1_max, unit, before(room, thread)),
        Want("Below the basic size", bolt.es, unit, before(room, thread)),
        Want("Major diameter", coated[0], unit, "Bolt after the coat"),
        Want("Pitch diameter", coated[1], unit, "Bolt after the coat"),
        Want("Minor diameter, maximum", coated[2], unit, "Bolt after the coat"),
        Want("Pitch diameter, worst to best", (nut.d2[0] - coated[1][1], nut.d2[1] - coated[1][0]), unit,
             "Clearance"),
        Want("Pitch diameter, everything in the middle", middle, unit, "Clearance"),
        Want("Major diameter, worst corner", nut.d_min - coated[0][1], unit, "Clearance"),
        Want("Minor diameter, worst corner", nut.d1[0] - coated[2], unit, "Clearance"),
        Want("Stress area of the bolt", area, square, "What it costs"),
        Want("Stress area of a bolt of standard size", thread.stress_area, square, "What it costs"),
        Want("Depth of thread in contact at least", 100 * depth, "%", "What it costs"),
        Want("The same with a standard bolt and nut", 100 * plain, "%", "What it costs"),
    ]
    if not under:
        rows.append(Want("Thread left in the nut at least material", 100 * depth / plain, "%"))
    return rows


def before(room, thread):
    name = "6az" if room.get("way") == "under" else room.get("bolt_class") or (
        "6g" if thread.unit == "mm" else "2A")
    return f"Bolt {name} before the coat"
