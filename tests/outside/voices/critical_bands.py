# SPDX-License-Identifier: GPL-3.0-or-later
"""Energy in critical bands, in short windows.

Edges of the 24 bands: E. Zwicker, "Subdivision of the audible frequency range into critical bands", JASA 33(2):248, 1961,
as printed in hackage.haskell.org/package/hmt-0.18 (Music/Theory/Pitch/Bark.hs).
"""
import numpy

EDGES = (0, 100, 200, 300, 400, 510, 630, 770, 920, 1080, 1270, 1480, 1720, 2000, 2320, 2700, 3150, 3700, 4400, 5300, 6400,
         7700, 9500, 12000, 15500)
BANDS = len(EDGES) - 1


def energies(sound, rate, begins, seconds):
    """An array [band, window]: each band is filtered out of the whole sound, then cut into windows."""
    count = round(seconds * rate)
    size = 1 << (len(sound) + 2 * rate // 10).bit_length()
    whole = numpy.fft.rfft(sound, size)
    hertz = numpy.fft.rfftfreq(size, 1 / rate)
    found = numpy.empty((BANDS, len(begins)))
    for band in range(BANDS):
        inside = (hertz >= EDGES[band]) & (hertz < EDGES[band + 1])
        summed = numpy.concatenate([[0.0], numpy.cumsum(numpy.fft.irfft(numpy.where(inside, whole, 0), size) ** 2)])
        found[band] = [summed[begin + count] - summed[begin] for begin in begins]
    return found
