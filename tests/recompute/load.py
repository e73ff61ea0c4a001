"""A load of parts: its area and its weight, stated in five ways. Steel of 7.85 g/cm³.

The area of a bar is 4 over density and diameter for a kilogram, half as much again where it is threaded; that
of a plate 2 over density and thickness.
"""

import shape
import threads
from ask import Want
from draw import number, quantity


POUND = 0.45359237


def draw(random, fields, factor, tapped=False):
    """Area in m² and weight in kg (none where it is not known), and what is shown of them."""
    way = random.choice(["count", "count", "weight", "area", "measured", "trial"])
    fields["load"] = way
    wants = []
    if way in ("count", "weight"):
        thread = threads.any_thread(random)
        kind, thread, sizes, one, mass = shape.draw(random, thread, tapped)
        fields.update(part=kind, thread=thread.name, sizes=sizes)
        if "l = " in sizes:
            fields["length"] = sizes.split("l = ")[1].split(";")[0]
        if way == "count":
            # A load of more than 1000 t is refused.
            pieces = random.randint(1, min(50_000, int(9e8 / mass)))
            fields["pieces"] = str(pieces)
        else:
            fields["weight"], weight = quantity(random, 5, 2000, "kg", ["kg", "lb", "t"])
            pieces = weight * 1000 / mass
        wants.append(Want("Pieces", pieces, ""))
        wants.append(Want("Surface of one", one, "cm²", "Sizes of"))
        wants.append(Want("Mass of one", mass, "g", "Sizes of"))
        area, weight = pieces * one / 10_000, pieces * mass / 1000
    elif way == "area":
        fields["area"], area = quantity(random, 1, 300, "m²", ["m²", "ft²", "cm²"])
        weight = None
        if random.random() < 0.7:
            fields["area_weight"], weight = quantity(random, 20, 3000, "kg", ["kg", "lb", "t"])
    elif way == "measured":
        fields["part"] = "other"
        fields["weight"], weight = quantity(random, 5, 2000, "kg", ["kg", "lb", "t"])
        if random.random() < 0.5:
            fields["nearest"] = "round"
            fields["bar"], d = quantity(random, 3, 40, "mm", ["mm", "in"])
            text, share = number(random, 0, 100, 2)
            fields["threaded"] = f"{text} %"
            a = 4 / (shape.STEEL * d) * (1 + 0.5 * share / 100)
        else:
            fields["nearest"] = "flat"
            fields["plate"], h = quantity(random, 0.8, 12, "mm", ["mm", "in"])
            a = 2 / (shape.STEEL * h)
        area = a * weight
    else:
        fields["weight"], weight = quantity(random, 5, 2000, "kg", ["kg", "lb", "t"])
        fields["trial_parts"], parts = quantity(random, 200, 5000, "g", ["g", "kg", "oz", "lb"])
        fields["trial_coat"], t = quantity(random, 10, 90, "µm", ["µm", "mil", "in"])
        fields["trial_zinc"], zinc = quantity(random, 0.01 * parts, 0.06 * parts, "g", ["g", "oz"])
        area = zinc / (factor * t) * weight * 1000 / parts
    wants.append(Want("Area of the load", area, "m²"))
    if weight is not None:
        wants.append(Want("Weight of the load", weight, "kg"))
        # Shown of a pound where the load is told in pounds.
        wants.append(Want("Area of one ", (area / weight, area / weight * POUND), "m²", either=True))
    return area, weight, wants
