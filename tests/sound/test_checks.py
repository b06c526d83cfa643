# SPDX-License-Identifier: GPL-3.0-or-later
"""Shows that the checks themselves can fail: recordings made here, correct ones and ones with a single error."""
import array
import math
import unittest
import unittest.mock
from fractions import Fraction

import stalls
from drilled import DOWNBEAT, Listener, Music
from recording import counted_faults, onsets, period, WRAP
from test_kills import join_faults, log_faults

RATE = 48_000
MUSIC = Music(beats=4, bars=2, parts=7, breath=2)
RUNS = [(125.0, "clean"), (125.0, "missed"), (120.0, "clean")]
PLAYED_OF_MISSED = 19


def place(exact):
    return math.floor(exact + Fraction(1, 2))


def drill(drop_to=120, origin=Fraction(1234, 7)):
    """The recording of RUNS, by an independent step-by-step implementation of the cycle."""
    pulses = []

    def bar_of_count_in(at, tempo):
        for beat in range(4):
            pulses.append((at + beat * period(tempo, RATE), 0.75 if beat else 1.0))
        return at + 4 * period(tempo, RATE)

    def run(at, tempo, count):
        for pulse in range(count):
            size = 1.0 if pulse % 28 == 0 else 0.75 if pulse % 7 == 0 else 0.5
            pulses.append((at + pulse * period(tempo, RATE, 7), size))
        return at + count * period(tempo, RATE, 7)

    at = run(bar_of_count_in(origin, 125), 125, 57)
    at += 6 * period(125, RATE, 7) + 2 * period(125, RATE)
    at = run(bar_of_count_in(at, 125), 125, PLAYED_OF_MISSED)
    at += 4 * period(drop_to, RATE)
    run(bar_of_count_in(at, drop_to), drop_to, 57)
    samples = array.array("f", bytes(4 * (place(pulses[-1][0]) + 100)))
    for when, size in pulses:
        samples[place(when)] = size
    return samples


def faults(heard, runs=None):
    listener = Listener(heard, MUSIC, RATE)
    listener.follow(runs or RUNS)
    return listener.faults


def moved(heard, index, by):
    """As if `by` samples had been inserted between the onset `index` and the next."""
    return heard[:index + 1] + [(where + by, size) for where, size in heard[index + 1:]]


RIGHT = onsets(drill())


class Drilled(unittest.TestCase):
    def test_a_right_recording_passes_from_any_origin(self):
        for origin in (0, Fraction(1, 2), Fraction(99_999, 100_000)):
            self.assertEqual(faults(onsets(drill(origin=Fraction(origin)))), [])

    def test_one_sample_lost_or_doubled_is_found_wherever_it_is(self):
        self.assertEqual(faults(RIGHT), [])
        for index in range(len(RIGHT) - 1):
            self.assertTrue(faults(moved(RIGHT, index, -1)), f"lost after onset {index}")
            self.assertTrue(faults(moved(RIGHT, index, 1)), f"doubled after onset {index}")

    def test_a_recording_with_one_sample_taken_out_is_found(self):
        right = drill()
        self.assertTrue(faults(onsets(right[:200_000] + right[200_001:])))

    def test_an_onset_that_is_lost_or_changed_is_found(self):
        for index, (where, size) in enumerate(RIGHT):
            self.assertTrue(faults(RIGHT[:index] + RIGHT[index + 1:]), f"lost at {where}")
            self.assertTrue(faults(RIGHT[:index] + [(where, size / 2)] + RIGHT[index + 1:]), f"changed at {where}")

    def test_a_wrong_drop_is_found(self):
        self.assertTrue(faults(onsets(drill(drop_to=121))))
        self.assertTrue(faults(onsets(drill(drop_to=Fraction(119_999, 1000)))))

    def test_a_journal_that_tells_another_story_is_found(self):
        self.assertTrue(faults(RIGHT, [(125.0, "clean"), (125.0, "clean"), (120.0, "clean")]))
        self.assertTrue(faults(RIGHT, RUNS[:2]))

    def test_sound_that_should_not_be_there_is_found(self):
        self.assertTrue(faults(RIGHT + [(RIGHT[-1][0] + 100, 1.0)]))


class Counted(unittest.TestCase):
    def setUp(self):
        self.right = [0.0] * 50 + [(n % WRAP + 1) / WRAP for n in range(5000)] + [0.0] * 50

    def test_a_right_recording_passes(self):
        self.assertEqual(counted_faults(self.right), [])

    def test_nothing_heard_is_a_fault(self):
        self.assertTrue(counted_faults([0.0] * 100))

    def test_a_sample_lost_doubled_or_silent_is_found(self):
        self.assertTrue(counted_faults(self.right[:1000] + self.right[1001:]))
        self.assertTrue(counted_faults(self.right[:1000] + self.right[999:]))
        self.assertTrue(counted_faults(self.right[:1000] + [0.0] + self.right[1000:]))

    def test_a_lost_beginning_is_found(self):
        self.assertTrue(counted_faults(self.right[60:]))


class Joined(unittest.TestCase):
    """What is heard after a silence. The onsets of RIGHT: a count-in, a run, a pause, and so on."""

    def test_a_sound_that_joins_with_a_bar_passes_and_inside_one_does_not(self):
        bars = [index for index, (_, size) in enumerate(RIGHT) if size == DOWNBEAT]
        for index in bars:
            self.assertEqual(join_faults(RIGHT[index:]), [], f"from onset {index}")
        for index in set(range(len(RIGHT))) - set(bars):
            self.assertTrue(join_faults(RIGHT[index:]), f"from onset {index}")

    def test_an_onset_off_the_grid_is_found(self):
        self.assertTrue(join_faults(moved(RIGHT[:20], 10, 3)))

    def test_a_log_with_a_fact_lost_or_doubled_is_found(self):
        facts = [{"id": str(number), "seq": number} for number in range(5, 9)]
        self.assertEqual(log_faults(facts), [])
        self.assertTrue(log_faults(facts[:1] + facts[2:]))
        self.assertTrue(log_faults(facts + [dict(facts[0], seq=9)]))


class Stalls(unittest.TestCase):
    """A fault counts unless the machine stopped, and even that is excused only a limited number of times."""

    def turns(self, stall, *faults):
        """How often it was played, and which faults counted, if the machine stops for `stall` seconds each time."""
        class Stood(stalls.Watch):
            def __exit__(self, *_):
                super().__exit__()
                self.longest = stall
        reported = list(faults)
        with unittest.mock.patch.object(stalls, "Watch", Stood):
            counted = stalls.until_kept(lambda: reported.pop(0))
        return len(faults) - len(reported), counted

    def test_a_fault_counts_at_once_where_the_machine_kept_time(self):
        self.assertEqual(self.turns(0.001, ["late"], []), (1, ["late"]))

    def test_a_fault_is_played_again_where_it_did_not_and_counts_the_third_time(self):
        self.assertEqual(self.turns(0.5, ["late"], []), (2, []))
        self.assertEqual(self.turns(0.5, ["late"], ["late"], ["late"], []), (3, ["late"]))


if __name__ == "__main__":
    unittest.main()
