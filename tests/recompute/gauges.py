"""Limits of gauges before and after a coat, and the tap.

A coat on both flanks widens the pitch diameter by 4 t, crest and root by 2 t (Machinery's Handbook, after ASME
B1.13M and B1.1); a coat within a quarter of the allowance passes a GO ring of basic size (B1.13M, 8.2). Taps:
ISO 2857, class 2 for 6H, from .3 to .5 of the tolerance TD2 of grade 5 above the basic size.
"""

import iso_965_1 as iso
import threads
from ask import Case, Want
from draw import number
from oversize_tap import coat, pair

CUTS_LARGER = 0.0127


def case(random):
    thread = threads.any_thread(random)
    while True:
        room, bolt, nut = pair(random, thread)
        if "way" not in room:
            break
    thickness, least, greatest = coat(random)
    text, percent = number(random, 0, 60, 2)
    fields = {"thread": thread.name, **room, **thickness, "inside": f"{text} %"}
    if bolt is None or nut is None:
        return Case("gauges", fields, [], refuses=True)
    if thread.unit == "in":
        least, greatest = least / 25.4, greatest / 25.4
    return Case("gauges", fields, wants(thread, room, bolt, nut, least, greatest, percent / 100))


def wants(thread, room, bolt, nut, least, greatest, share):
    unit = thread.unit
    name = room.get("bolt_class") or ("6g" if unit == "mm" else "2A")
    section = f"Bolt {name} before the coat"
    fitted = threads.bolt(thread, "6h" if unit == "mm" else "3A")
    thin, thick = share * least, share * greatest
    rows = [
        Want("GO plug for the nut", nut.d2[0], unit),
        Want("NOT-GO plug for the nut", nut.d2[1], unit),
        Want("Tap over size by", nut.ei, unit),
        Want("GO ring, pitch diameter", bolt.d2[1], unit, section),
        Want("NOT-GO ring, pitch diameter", bolt.d2[0], unit, section),
        Want("GO ring, minor diameter", bolt.d1_max, unit, section),
        Want("Major diameter, plain", bolt.d, unit, section),
        Want("GO ring of basic size", thread.d2, unit, "Bolt after the coat"),
        Want("Ring of the nut's minimum size, pitch", nut.d2[0], unit, "Bolt after the coat"),
        Want("Ring of the nut's minimum size, minor", nut.d1[0], unit, "Bolt after the coat"),
        Want("GO plug, pitch diameter", nut.d2[0], unit, "Nut as it is mated"),
        Want("GO plug, major diameter", nut.d_min, unit, "Nut as it is mated"),
        Want("NOT-GO plug, pitch diameter", nut.d2[1], unit, "Nut as it is mated"),
        Want("Plain GO plug", nut.d1[0], unit, "Nut as it is mated"),
        Want("Plain NOT-GO plug", nut.d1[1], unit, "Nut as it is mated"),
    ]
    if bolt.es > 0:
        rows.append(Want("Thickest coat that passes it", bolt.es / 4, unit, "Bolt after the coat"))
    own2 = (nut.d2[0] + 4 * thick, nut.d2[1] + 4 * thin)
    # Its coat may spread more than the tolerance of the nut takes.
    fits = own2[0] < own2[1]
    if thick > 0 and fits:
        rows += [
            Want("Pitch diameter", own2, unit, "Nut before its own"),
            Want("Minor diameter", (nut.d1[0] + 2 * thick, nut.d1[1] + 2 * thin), unit, "Nut before its own"),
        ]
    # The class is kept after the coat: its least limit less the thinnest coat; and a GO ring of basic size
    # passes: basic size less the thickest, but never wider than the class itself.
    cut2 = (bolt.d2[0] - 4 * least, min(bolt.d2[1], fitted.d2[1] - 4 * greatest))
    cut = (bolt.d[0] - 2 * least, min(bolt.d[1], fitted.d[1] - 2 * greatest))
    # A coat may spread more than the tolerance takes.
    if cut2[0] < cut2[1] and cut[0] < cut[1]:
        rows += [Want("Pitch diameter", cut2, unit, "To keep its class"),
                 Want("Major diameter", cut, unit, "To keep its class")]
    if unit == "mm" and fits and (t := threads.by_range(iso.NUT_PITCH, 5, thread)):
        over = nut.ei + 4 * thick
        tap = (thread.d2 + over + 0.3 * t / 1000, thread.d2 + over + 0.5 * t / 1000)
        # What ground taps cut larger at least (tap makers' data) has to have room.
        if own2[1] - tap[1] < CUTS_LARGER:
            return rows
        rows += [
            Want("Its pitch diameter", tap, unit, "The tap"),
            Want("Room above it", own2[1] - tap[1], unit, "The tap"),
            Want("Room below it", tap[0] - own2[0], unit, "The tap"),
        ]
    return rows
