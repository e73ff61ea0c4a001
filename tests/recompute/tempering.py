"""The tempering parameter: P = T (20 + log t), in kelvin and hours (Hollomon and Jaffe 1945, as restated).

Least tempering temperatures: ISO 898-1:2009, Table 2 (8.8, 9.8, 10.9: 425 °C; 12.9: 425 °C, underlined
380 °C), SAE J429, 5 and 8 (800 °F), ASTM A193 B7 (1100 °F), ASTM A574-17 (700 °F).
"""

from math import log10

from ask import Case, Want, convert
from draw import quantity

LEAST = {
    "8.8": 425, "9.8": 425, "10.9": 425, "12.9": 425, "12.9u": 380, "a193-b7": convert(1100, "°F", "°C"),
    "j429-5": convert(800, "°F", "°C"), "j429-8": convert(800, "°F", "°C"), "a574": convert(700, "°F", "°C"),
}


def case(random):
    fields = {}
    # A class 9.8 and the grades of SAE end at small sizes.
    fields["diameter"], _ = quantity(random, 7, 16, "mm", ["mm", "in"], 3)
    fields["bath"], bath = quantity(random, 440, 560, "°C", ["°C", "°F"], 4)
    fields["dip"], dip = quantity(random, 0.5 / 60, 0.3, "h", ["min", "s"], 3)
    if random.random() < 0.5:
        grade = random.choice(list(LEAST))
        fields.update(known="grade", grade=grade)
        temper, hours = LEAST[grade], 1.0
    else:
        fields.update(known="temper")
        fields["temper"], temper = quantity(random, 250, 700, "°C", ["°C", "°F"], 4)
        fields["temper_time"], hours = quantity(random, 0.25, 6, "h", ["h", "min"], 3)
    p_temper = (temper + 273.15) * (20 + log10(hours))
    p_dip = (bath + 273.15) * (20 + log10(dip))
    hottest = p_temper / (20 + log10(dip)) - 273.15
    return Case("tempering", fields, [
        Want("Temper, ", temper, "°C"),
        Want("Margin: temper less bath", temper - bath, "°C"),
        Want("The same as one-hour tempers", (p_temper - p_dip) / 20, "°C"),
        Want("Tempering parameter of the temper", p_temper, "K·log h"),
        Want("Tempering parameter of the dip", p_dip, "K·log h"),
        Want("One-hour temper", p_dip / 20 - 273.15, "°C"),
        Want("Hottest bath", hottest, "°C"),
        Want("Bath in °F", convert(bath, "°C", "°F"), "°F"),
    ])
