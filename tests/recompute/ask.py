"""Puts random inputs to the terminal and compares what it shows with what is computed here.

A case is one call: the calculator, its fields as text, and what is expected. An expectation is a figure by
its section and name, and the value in a unit of ours; pint converts it to the unit that was shown.
"""

import json
import re
import subprocess
from dataclasses import dataclass, field
from functools import cache

import pint

UNITS = pint.UnitRegistry()
# As the trade writes them.
NAMES = {
    "µm": "micrometer", "mil": "thousandth_inch", "in": "inch", "%": "percent", "pcs": "dimensionless",
    "": "dimensionless", "h": "hour", "t": "metric_ton", "ft": "foot", "N": "newton", "years": "year",
    "year": "year", "in²": "inch**2", "mm²": "millimeter**2", "cm²": "centimeter**2", "m²": "meter**2",
    "ft²": "foot**2", "m³": "meter**3", "ft³": "foot**3", "g/m²": "gram/meter**2", "oz/ft²": "ounce/foot**2",
    "g/m² per µm": "gram/meter**2/micrometer", "oz/ft² per mil": "ounce/foot**2/thousandth_inch",
    "µm/year": "micrometer/year", "mil/year": "thousandth_inch/year", "g/cm³": "gram/centimeter**3",
    "K·log h": "kelvin", "1/min": "1/minute", "mm³": "millimeter**3", "per t": "1/metric_ton",
    "per kg": "1/kilogram", "per lb": "1/pound", "ksi": "kip/inch**2", "L": "liter",
}
UNITS.define("thousandth_inch = 0.001 * inch")
UNITS.define("kip = 1000 * pound_force")

# Finer than any digit that is shown. What is computed in another order differs in the last digits of a
# floating number; nothing else may.
RELATIVE = 1e-9
# Of a difference of nearly equal lengths only the absolute size says something: a billionth of a unit shown.
ABSOLUTE = 1e-9


@cache
def factor(unit, into):
    """What a number in `unit` is multiplied by to stand in `into`."""
    return UNITS.Quantity(1.0, NAMES.get(unit, unit)).to(NAMES.get(into, into)).magnitude


def convert(number, unit, into):
    if unit == into:
        return number
    if unit in ("°C", "°F", "K"):
        kelvin = {"°C": number + 273.15, "°F": (number - 32) / 1.8 + 273.15, "K": number}[unit]
        return {"°C": kelvin - 273.15, "°F": (kelvin - 273.15) * 1.8 + 32, "K": kelvin}[into]
    return number * factor(unit, into)


@dataclass
class Want:
    """One figure as it is computed here: a number, the two ends of a range, or words."""

    name: str
    value: float | tuple | str
    unit: str
    section: str = ""
    tolerance: float = RELATIVE
    floor: float = ABSOLUTE
    # Of two values one is shown.
    either: bool = False


@dataclass
class Case:
    calculator: str
    fields: dict
    wants: list = field(default_factory=list)
    # Where the documents give nothing, the program has to refuse.
    refuses: bool = False

    def command(self):
        texts = [f"{key}={text}" for key, text in self.fields.items()]
        return [self.calculator, "--json", *texts]


@dataclass
class Tally:
    """What came out of one calculator."""

    inputs: int = 0
    refused: int = 0
    figures: int = 0
    largest: float = 0.0
    differ: list = field(default_factory=list)


def answer(program, case):
    run = subprocess.run([program, *case.command()], capture_output=True, text=True, check=False)
    try:
        return json.loads(run.stdout)
    except ValueError:
        return {"problems": [{"field": "?", "text": run.stdout + run.stderr}], "report": None}


def figures(report):
    """Every figure by (section, name); the first of a name counts."""
    found = {}
    groups = [("", report["figures"])] + [(s["title"], s["figures"]) for s in report["sections"]]
    for title, group in groups:
        for figure in group:
            found.setdefault((title, figure["name"]), figure["value"])
    return found


def find(found, want):
    """The figure of an expectation; its section and name may be told by their beginning."""
    exact = found.get((want.section, want.name))
    if exact is not None:
        return exact
    for (section, name), value in found.items():
        if section.startswith(want.section) and bool(section) == bool(want.section) \
                and name.startswith(want.name):
            return value
    return None


def shown_digits(text):
    """The number shown, and one unit of its last digit."""
    digits = re.match(r"[−-]?[\d]+(?:\.(\d+))?", text.replace("\u202f", "").replace(" ", ""))
    if not digits:
        return None, None
    number = float(digits.group(0).replace("−", "-"))
    return number, 10.0 ** -len(digits.group(1) or "")


def compare(case, reply, tally):
    tally.inputs += 1
    told = " ".join(f"{key}={text!r}" for key, text in case.fields.items())
    if reply["report"] is None:
        if case.refuses:
            tally.refused += 1
        else:
            problems = "; ".join(f"{p['field']}: {p['text']}" for p in reply["problems"] or [])
            tally.differ.append(f"{case.calculator} {told}: refused: {problems}")
        return
    if case.refuses:
        tally.differ.append(f"{case.calculator} {told}: answered where the documents give nothing")
        return
    found = figures(reply["report"])
    for want in case.wants:
        theirs = find(found, want)
        if theirs is None:
            tally.differ.append(f"{case.calculator} {told}: no figure {want.section!r} {want.name!r}")
            continue
        if isinstance(want.value, str):
            tally.figures += 1
            if not isinstance(theirs, str) or theirs.replace("\u00a0", " ") != want.value:
                tally.differ.append(
                    f"{case.calculator} {told}: {want.section} {want.name}: {theirs}, here {want.value}")
            continue
        ours = want.value if isinstance(want.value, tuple) else (want.value,)
        theirs = theirs if isinstance(theirs, list) else [theirs]
        if want.either:
            there, unit = theirs[0]["number"], theirs[0]["unit"]
            ours = (min(ours, key=lambda mine: abs(convert(mine, want.unit, unit) - there)),)
        if len(ours) != len(theirs) or not all(isinstance(value, dict) for value in theirs):
            tally.differ.append(f"{case.calculator} {told}: {want.section} {want.name}: {theirs}, not {ours}")
            continue
        for mine, value in zip(ours, theirs):
            tally.figures += 1
            mine = convert(mine, want.unit, value["unit"])
            away = abs(mine - value["number"])
            size = max(abs(mine), abs(value["number"]))
            number, digit = shown_digits(value["shown"])
            wrongly_shown = number is not None and abs(number - value["number"]) > 0.5001 * digit
            if away > want.tolerance * size + want.floor or wrongly_shown:
                tally.differ.append(
                    f"{case.calculator} {told}: {want.section} {want.name}: "
                    f"{value['shown']} ({value['number']!r} {value['unit']}), here {mine!r}")
            elif size > want.floor:
                tally.largest = max(tally.largest, away / size)
