"""The numbers a second time, in another language and from the documents; see `ask.py` and `--help`.

    python tests/recompute --program target/debug/kettle-barrel
"""

import argparse
import os
import sys
from concurrent.futures import ThreadPoolExecutor
from itertools import islice
from random import Random

import binding
import coat_room
import coat_thickness
import gauges
import kettle
import life
import lot
import oversize_tap
import powder
import tempering
import thread_strength
from ask import RELATIVE, Tally, answer, compare

# The calculators, and how often each is asked.
CALCULATORS = [
    (coat_thickness.case, 1),
    (oversize_tap.case, 1),
    (coat_room.case, 1),
    (tempering.case, 1),
    (life.case, 1),
    (thread_strength.case, 1),
    (gauges.case, 1),
    (powder.case, 2),
    (lot.case, 1),
    (kettle.case, 1),
]


def cases(seed, only):
    random = Random(seed)
    kinds = [case for case, share in CALCULATORS for _ in range(share)
             if only in (None, case.__module__)]
    while True:
        yield random.choice(kinds)(random)


def main():
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("--program", required=True, help="the terminal, built")
    options.add_argument("--inputs", type=int, default=10_000)
    options.add_argument("--seed", type=int, default=1901)
    options.add_argument("--most", type=int, default=20, help="disagreements printed of each calculator")
    options.add_argument("--binding", type=int, default=20, help="chances of binding found by drawing pairs")
    options.add_argument("--only", help="one calculator alone")
    options = options.parse_args()

    tallies = {}
    with ThreadPoolExecutor(os.cpu_count()) as pool:
        drawn = islice(cases(options.seed, options.only), options.inputs)
        for case, reply in pool.map(lambda case: (case, answer(options.program, case)), drawn):
            compare(case, reply, tallies.setdefault(case.calculator, Tally()))

    print(f"seed {options.seed}; every figure to {RELATIVE:g} of itself, and rounded where it is shown")
    print(f"{'calculator':18}{'inputs':>8}{'refused':>9}{'figures':>9}{'disagree':>10}   largest difference")
    for name, tally in sorted(tallies.items()):
        print(f"{name:18}{tally.inputs:8}{tally.refused:9}{tally.figures:9}{len(tally.differ):10}"
              f"   {tally.largest:.0e}")
    differ = [line for tally in tallies.values() for line in tally.differ[: options.most]]
    if options.only is None:
        differ += binding.run(options.program, Random(options.seed), options.seed, options.binding)
    for line in differ:
        print(line)
    sys.exit(bool(differ))


main()
