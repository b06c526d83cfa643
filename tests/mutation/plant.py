# SPDX-License-Identifier: GPL-3.0-or-later
"""Makes small changes in the rule, the fold, the notes and suggestions of scales and the pulse grid, one by one: the tests must
catch each."""
import argparse
import collections
import os
import random
import sys
import tempfile
import time
from pathlib import Path

from equivalence import Equivalence, as_entry
from operators import enumerators, mutants
from switchboard import Switchboard
from workshop import Workshop

TREE = Path(__file__).resolve().parents[2]
FILES = (
    "core/rule/rule.cpp", "core/rule/day_opening.cpp", "core/rule/ladder.cpp", "core/time/metronome_scale.cpp", "core/time/metronome_scale.h",
    "core/history/passage_fold.cpp", "core/history/passage_history.cpp", "core/history/passage_history.h", "core/history/notebook.cpp",
    "core/scales/scale_grid.cpp", "core/scales/scale_proposal.cpp", "core/scales/scale_walk.cpp",
    "engine/time/pulse_grid.cpp",
)
_DRILL = ("test_engine", "--source-file=*drill_fold_test*,*drill_tempo_test*,*drill_miss_test*")
STEPS = {
    "core": (("test_core", "--source-file-exclude=*random*"), ("test_core", "--source-file=*random*"), _DRILL),
    "engine": (("test_engine", "--source-file=*pulse_grid*"), _DRILL),
}


def options():
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--quick", type=int, metavar="N", help="plant only N of them, drawn with the seed")
    parser.add_argument("--seed", type=int, default=int(os.environ.get("PIOLO_SEED", "20260301")))
    parser.add_argument("--only", action="append", choices=FILES, help="this file alone (may be repeated)")
    parser.add_argument("--folder", help="work in this folder and keep it: the next run builds only what changed")
    parser.add_argument("--list", action="store_true", help="say what would be planted, and plant nothing")
    return parser.parse_args()


def drawn(every, count, seed):
    chosen = set(random.Random(seed).sample(range(len(every)), min(count, len(every))))
    return [mutant for index, mutant in enumerate(every) if index in chosen]


def verdicts(workshop, chosen):
    """Yields (mutant, verdict), starting with those that need a build of their own."""
    numbered = dict(enumerate(chosen, 1))
    for number, mutant in numbered.items():
        if not Switchboard(workshop.source(mutant.file), {number: mutant}).sleeping:
            yield mutant, workshop.alone(mutant)
    asleep, broken = workshop.wire(numbered)
    for number in sorted(broken):
        yield numbered[number], "does not compile"
    for number, mutant in asleep.items():
        yield mutant, workshop.woken(number, mutant)


def run(workshop, chosen, equivalence):
    """Counts of the verdicts, and the mutants whose verdict is wrong."""
    counts, wrong = collections.Counter(), []
    began = time.monotonic()
    for done, (mutant, verdict) in enumerate(verdicts(workshop, chosen), 1):
        listed = equivalence.covers(mutant)
        if verdict == "survived" and listed:
            verdict = "equivalent"
        elif verdict == "survived" or listed:
            wrong.append(mutant)
            print(f"{verdict}{', yet listed as equivalent' if listed else ''}: src/{mutant.file}:{mutant.line}: "
                  f"{as_entry(mutant)}", flush=True)
        counts[verdict] += 1
        if done % 50 == 0:
            print(f"{done} of {len(chosen)}, {time.monotonic() - began:.0f} s", flush=True)
    return counts, wrong


def report(counts, share, total):
    broken, equivalent, survived = (counts.pop(name, 0) for name in ("does not compile", "equivalent", "survived"))
    caught = sum(counts.values())
    print(f"planted            {caught + equivalent + survived}"
          f" ({share} of {total} changes tried, {broken} do not compile and do not count)")
    print(f"caught             {caught} ({', '.join(f'{name} {n}' for name, n in sorted(counts.items()))})")
    print(f"equivalent         {equivalent}")
    print(f"survived           {survived}")


def work(chosen_options, folder):
    files = chosen_options.only or FILES
    equivalence = Equivalence(Path(__file__).with_name("equivalent.txt"))
    workshop = Workshop(TREE, folder, STEPS)
    swaps = enumerators(workshop.headers())
    every = [mutant for file in files for mutant in mutants(file, workshop.source(file), swaps)]
    strangers = equivalence.strangers(every, files)
    for key in strangers:
        print(f"equivalent.txt names a change that there is not: {key}")
    chosen = drawn(every, chosen_options.quick, chosen_options.seed) if chosen_options.quick else every
    if chosen_options.list:
        print(*(as_entry(mutant) for mutant in chosen), sep="\n")
        return 0
    print(f"seed {chosen_options.seed}: {len(chosen)} of {len(every)} changes", flush=True)
    workshop.prepare()
    counts, wrong = run(workshop, chosen, equivalence)
    report(counts, len(chosen), len(every))
    return 1 if wrong or strangers else 0


def main():
    chosen_options = options()
    if chosen_options.folder:
        return work(chosen_options, chosen_options.folder)
    with tempfile.TemporaryDirectory(prefix="piolo-mutations-") as folder:
        return work(chosen_options, folder)


if __name__ == "__main__":
    sys.exit(main())
