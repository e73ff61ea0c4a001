"""The chance that a coated bolt and a nut bind, by drawing pairs at random.

Pitch diameters lie between their limits, the coat on the flanks between its least and its greatest with the
unevenness; a coat t takes 4 t of the room. Spread like a bell whose limits lie six standard deviations apart
and outside of which nothing lies, evenly, or like bells of given deviations: as the calculator says.
"""

import numpy

import threads
from ask import Case, answer, figures
from draw import number, quantity
from oversize_tap import coat, pair

DRAWS = 1_000_000


def bell(generator, low, high):
    """Draws again what falls outside."""
    values = generator.normal((low + high) / 2, (high - low) / 6, DRAWS)
    while (outside := (values < low) | (values > high)).any():
        values[outside] = generator.normal((low + high) / 2, (high - low) / 6, outside.sum())
    return values


def even(generator, low, high):
    return generator.uniform(low, high, DRAWS)


def cases(random):
    """Pairs about as wide as their coat, so that some bind and some do not."""
    while True:
        thread = threads.any_thread(random)
        room, bolt, nut = pair(random, thread)
        if bolt is None or nut is None:
            continue
        thickness, least, greatest = coat(random)
        text, percent = number(random, 0, 60, 2)
        sizes = random.choice(["bell", "even", "own"])
        fields = {"thread": thread.name, **room, **thickness, "spread": f"{text} %", "sizes": sizes}
        deviations = []
        for key, most in [("bolt_deviation", 60), ("nut_deviation", 60), ("coat_deviation", 15)]:
            spread, value = quantity(random, 1, most, "µm", ["µm", "mm", "mil"], 3)
            deviations.append(value / 1000)
            if sizes == "own":
                fields[key] = spread
        inch = 25.4 if thread.unit == "in" else 1.0
        spans = [tuple(v * inch for v in bolt.d2), tuple(v * inch for v in nut.d2),
                 (least, greatest * (1 + percent / 100))]
        middle = [sum(span) / 2 for span in spans]
        if abs(middle[1] - middle[0] - 4 * middle[2]) < 0.12:
            yield fields, spans, deviations


def run(program, random, seed, how_many):
    """Prints each case; the disagreements."""
    generator = numpy.random.default_rng(seed)
    differ = []
    drawn = cases(random)
    done = 0
    while done < how_many:
        fields, spans, deviations = next(drawn)
        if fields["sizes"] == "own":
            bolt, nut, zinc = (generator.normal(sum(span) / 2, deviation, DRAWS)
                               for span, deviation in zip(spans, deviations))
        else:
            spread = bell if fields["sizes"] == "bell" else even
            bolt, nut, zinc = (spread(generator, *span) for span in spans)
        share = float((nut - bolt - 4 * zinc < 0).mean())
        if not 0.0005 < share < 0.9995:
            continue
        done += 1
        reply = answer(program, Case("oversize-tap", fields))
        theirs = next(value for (_, name), value in figures(reply["report"]).items()
                      if name.startswith("Pairs that bind"))["number"] / 100
        # Five standard errors of the simulation, and what the grid of the program is right to.
        allowed = 5 * (share * (1 - share) / DRAWS) ** 0.5 + 1e-4
        if abs(share - theirs) > allowed:
            told = " ".join(f"{key}={text!r}" for key, text in fields.items())
            differ.append(f"oversize-tap {told}: {100 * theirs:.3f} % bind, by drawing {100 * share:.3f} %")
    print(f"{'chance of binding':18}{done:8}{0:9}{done:9}{len(differ):10}   by {DRAWS:,} draws each")
    return differ

