# SPDX-License-Identifier: GPL-3.0-or-later
"""How far a click stands out from a line in the critical band where it stands out most."""
import numpy

from critical_bands import EDGES, energies

WINDOW = 0.020
LEAST_SHARE = 0.01  # of the click's energy: a band with less does not count as the click
HIGHEST = 5300  # Hz: small loudspeakers and older ears miss what is above


class Line:
    def __init__(self, samples, rate):
        self.rate = rate
        self.begins = range(rate // 4, len(samples) - rate // 4, rate // 50)
        self.energy = energies(samples, rate, self.begins, WINDOW)

    def stands_out(self, click):
        """(band, median dB over all windows, dB that nine windows in ten reach): the energy of the click relative to the line.
        The
        first two are for the band with the highest median, the third for whichever band stands out most at each moment."""
        own = energies(click, self.rate, [0], WINDOW)[:, 0]
        ratio = 10 * numpy.log10(numpy.maximum(own[:, None], 1e-15) / numpy.maximum(self.energy, 1e-15))
        counts = (own >= LEAST_SHARE * own.sum()) & (numpy.array(EDGES[1:]) <= HIGHEST)
        middle = numpy.where(counts, numpy.median(ratio, axis=1), -numpy.inf)
        best = int(numpy.argmax(middle))
        return best, middle[best], numpy.percentile(numpy.where(counts[:, None], ratio, -numpy.inf).max(axis=0), 10)
