"""Random inputs as people write them: a number with few digits, and one of the units that a field takes."""

from ask import convert


def number(random, low, high, digits=3):
    """A number as text, to so many significant digits, that lies between the two."""
    while True:
        text = f"{random.uniform(low, high):.{digits}g}"
        value = float(text)
        if low <= value <= high:
            return f"{value:.12f}".rstrip("0").rstrip("."), value


def quantity(random, low, high, unit, units=None, digits=4):
    """A quantity as text in one of the units, and its value in `unit`, in which the bounds are given."""
    other = random.choice(units or [unit])
    while True:
        text, value = number(random, *sorted((convert(low, unit, other), convert(high, unit, other))), digits)
        back = convert(value, other, unit)
        if low <= back <= high:
            return f"{text} {other}".strip(), back
