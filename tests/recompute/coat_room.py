"""Which coat each pair of bolt and nut takes.

By the worst corner: room on the pitch diameter over 4 (1 + u) n, n the threads that carry the coat
(Machinery's Handbook, 4 t). By a quarter of the allowance: ASME B1.13M, 8.2, and ASTM F1941, Appendix X3.
By ISO 4042:1999: the greatest nominal thickness of its row not above |es| over 4, 4, 5, 6; its Table 2, as
far as it was seen, prints 3 where that rule gives 5 (P = 1, g, more than 5 to 10 diameters).
"""

import iso_965_1 as iso
import threads
from ask import Case, Want
from draw import number, quantity

NOMINAL = [3, 5, 8, 10, 12, 15, 20, 25, 30]
DIVISOR = {"local": 4, "batch5": 4, "batch10": 5, "batch15": 6}


def case(random):
    thread = threads.any_thread(random)
    fields = {"thread": thread.name}
    fields["coat"], coat = quantity(random, 3, 100, "µm", ["µm", "mm", "mil", "in"], 3)
    rule = random.choice(["corner", "corner", "quarter", "iso4042"])
    if rule == "iso4042" and thread.unit == "in":
        rule = "quarter"
    fields["rule"] = rule
    text, percent = number(random, 0, 60, 2)
    u, n = percent / 100, 1.0
    fields["spread"] = f"{text} %"
    coated = random.choice(["bolt", "shared", "both"])
    if coated == "shared":
        text, percent = number(random, 1, 99, 2)
        fields["inside"] = f"{text} %"
        n = 1 + percent / 100
    elif coated == "both":
        n = 2.0
    fields["coated"] = coated
    measured = random.choice(list(DIVISOR))
    fields["measured"] = measured

    usual, standard = threads.bolt(thread), threads.nut(thread)
    wants = []
    if rule == "corner":
        for bolt, nut, name in corners(thread):
            wants.append(want(name, min(
                (nut.d2[0] - bolt.d2[1]) / 4 / (1 + u) / n,
                (nut.d1[0] - bolt.d1_max) / 2 / (1 + u) / n,
                (nut.d_min - bolt.d[1]) / 2 / n), thread.unit))
    elif rule == "quarter":
        for name in ["6g", "6f", "6e"] if thread.unit == "mm" else ["2A"]:
            wants.append(want(f"Bolt {name} in nut", threads.bolt(thread, name).es / 4, thread.unit))
    else:
        for position in "gfe":
            es = -iso.DEVIATION[thread.p][position]
            fits = [t for t in NOMINAL if t <= es / DIVISOR[measured]]
            if thread.p == 1 and position == "g" and measured == "batch10":
                fits = [3]
            if fits:
                wants.append(want(f"Bolt 6{position} in nut", fits[-1], "µm"))
        wants.append(Want("Deviation that the coat asks for", DIVISOR[measured] * coat, "µm"))
    t = coat / 1000 if thread.unit == "mm" else coat / 25400
    room = 4 * t * (1 + u) * n - (standard.d2[0] - usual.d2[1])
    if room > 0 and rule == "corner":
        wants.append(Want("Allowance on a standard nut", room, thread.unit))
    return Case("coat-room", fields, wants)


def want(name, value, unit):
    return Want(name, value, unit, "Pairs tried")


def corners(thread):
    """Pairs with a published class."""
    if thread.unit == "in":
        yield threads.bolt(thread), threads.nut(thread), "Bolt 2A in nut 2B"
        if threads.a563(thread):
            yield threads.bolt(thread), threads.nut(thread, threads.a563(thread)), "Bolt 2A in nut ASTM A563"
        return
    for position in "gfe":
        bolt = threads.bolt(thread, f"6{position}")
        yield bolt, threads.nut(thread), f"Bolt 6{position} in nut 6H"
        yield bolt, threads.nut(thread, iso.DEVIATION[thread.p]["G"] / 1000), f"Bolt 6{position} in nut 6G"
    yield threads.bolt(thread), threads.nut(thread, threads.az(thread)), "Bolt 6g in nut 6AZ"
    yield threads.bolt(thread), threads.nut(thread, threads.ax(thread)), "Bolt 6g in nut 6AX"
    yield threads.bolt(thread, "6az"), threads.nut(thread), "Bolt 6az in nut 6H"
