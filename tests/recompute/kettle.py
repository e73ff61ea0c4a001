"""The zinc that a load takes out of the kettle.

Mass of a coat by 7.2 g/m² per µm of ISO 1461, 7.067 of ASTM A123 or 7.14 of ASTM A653; dross and ash as
shares of all the zinc used, as the trade associations state them. The longest dip is that whose tempering
parameter is the temper's (`tempering.py`), in the bath entered, or in the hottest that ISO 10684 advises (455
to 480 °C) where that one lies outside.
"""

from math import ceil, log10

import load
from ask import Case, Want
from coat_thickness import FACTORS
from draw import number, quantity
from tempering import LEAST


def case(random):
    fields = {}
    factor = random.choice(["iso1461", "a123", "a653"])
    k = FACTORS[factor]
    area, weight, wants = load.draw(random, fields, k)
    fields["factor"] = factor
    fields["coat"], t = quantity(random, 20, 150, "µm", ["µm", "mil", "in"])
    zinc = k * t * area / 1000
    wants.append(Want("Zinc on the parts", zinc, "kg"))
    if weight:
        wants.append(Want("Zinc for the weight of steel", 100 * zinc / weight, "%"))
    if random.random() < 0.6:
        dross, d = number(random, 1, 30, 2)
        ash, e = number(random, 1, 30, 2)
        fields.update(dross=f"{dross} %", ash=f"{ash} %")
        fed = zinc / (1 - (d + e) / 100)
        wants.append(Want("Zinc lost with the dross", fed * d / 100, "kg"))
        wants.append(Want("Zinc lost with the ash", fed * e / 100, "kg"))
        wants.append(Want("Zinc fed to the kettle", fed, "kg"))
        if random.random() < 0.7:
            fields["price"], price = quantity(random, 1, 6, "per kg", ["per t", "per kg", "per lb"])
            wants.append(Want("Cost", price * fed, ""))
    # Rods of half a metre and more may hang without a basket.
    if weight and fields["load"] not in ("count", "weight") and random.random() < 0.5:
        fields["basket"], holds = quantity(random, 20, 400, "kg", ["kg", "lb"])
        wants.append(Want("Baskets", float(ceil(weight / holds - 1e-9)), ""))
    if random.random() < 0.4:
        grade = random.choice(["10.9", "12.9"])
        fields["grade"] = grade
        fields["bath"], bath = quantity(random, 445, 480, "°C", ["°C", "°F"], 4)
        bath = bath if 455 <= bath <= 480 else 480
        longest = 10 ** ((LEAST[grade] + 273.15) * (20 + log10(1)) / (bath + 273.15) - 20)
        wants.append(Want("Longest dip that the temper bears", longest, "h"))
    return Case("kettle", fields, wants)
