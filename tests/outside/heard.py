# SPDX-License-Identifier: GPL-3.0-or-later
"""Where clicks lie in a rendering."""
import numpy


def impulses(samples):
    """The places of the samples that are not silence."""
    return numpy.flatnonzero(numpy.abs(samples) > 0.01)


def alike(samples, expected, reach=120, length=48):
    """The places of clicks that all look like the first one, to the sample: for each expected place (after the first
    click's) the shift of at most `reach` samples at which the rendering looks most like the first click."""
    first = int(impulses(samples)[0])
    samples = numpy.concatenate([samples, numpy.zeros(reach + length)])
    model = samples[first:first + length]
    places = []
    for place in expected:
        begin = max(0, first + round(place) - reach)
        windows = numpy.lib.stride_tricks.sliding_window_view(samples[begin:begin + 2 * reach + length], length)
        places.append(begin + int(numpy.argmin(((windows - model) ** 2).sum(axis=1))))
    return numpy.array(places)
