# SPDX-License-Identifier: GPL-3.0-or-later
"""Contenders that take turns, and the ratios of their times: always within one round, never across rounds."""
import statistics


def take_turns(contenders, rounds):
    """Takes {name: work} and returns {name: [seconds, one for each round]}. Each work() returns its seconds. One turn before
    the first round is discarded, and each round begins with another contender."""
    names = list(contenders)
    times = {name: [] for name in names}
    for work in contenders.values():
        work()
    for number in range(rounds):
        shift = number % len(names)
        for name in names[shift:] + names[:shift]:
            times[name].append(contenders[name]())
    return times


class Ratio:
    """How many times as long as `base` something took: the median over the rounds, and the middle half of them."""

    def __init__(self, times, base):
        if len(times) != len(base) or not times:
            raise ValueError("as many rounds for both, and at least one")
        ratios = sorted(a / b for a, b in zip(times, base))
        self.median = statistics.median(ratios)
        self.low, self.high = quartiles(ratios)

    def __str__(self):
        return f"{short(self.median)} ({short(self.low)}–{short(self.high)})"


def quartiles(ordered):
    """The medians of the lower and the upper half; a middle value belongs to both."""
    half = (len(ordered) + 1) // 2
    return statistics.median(ordered[:half]), statistics.median(ordered[-half:])


def slope(works, seconds):
    """Seconds per additional unit of work, by least squares; the cost of starting is not included."""
    mean_work, mean_seconds = statistics.mean(works), statistics.mean(seconds)
    spread = sum((work - mean_work) ** 2 for work in works)
    return sum((work - mean_work) * (second - mean_seconds) for work, second in zip(works, seconds)) / spread


def short(value):
    """Two or three significant digits: 1234 is "1,230", 0.0512 is "0.051"."""
    if value >= 100:
        digits = len(str(int(value))) - 3
        return f"{int(round(value / 10**digits)) * 10**digits:,}"
    if value >= 10:
        return f"{value:.0f}"
    return f"{value:.1f}" if value >= 0.995 else f"{value:.2g}"
