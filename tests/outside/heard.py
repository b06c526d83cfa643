# SPDX-License-Identifier: GPL-3.0-or-later
"""Finds where clicks are in a rendering."""
import numpy


def impulses(samples):
    """The positions of the samples that are not silent."""
    return numpy.flatnonzero(numpy.abs(samples) > 0.01)


def alike(samples, expected, reach=120, length=48):
    """The positions, to the sample, of clicks that all look like the first one: for each expected position (after the first
    click's), the shift of at most `reach` samples at which the rendering is most similar to the first click."""
    first = int(impulses(samples)[0])
    samples = numpy.concatenate([samples, numpy.zeros(reach + length)])
    model = samples[first:first + length]
    places = []
    for place in expected:
        begin = max(0, first + round(place) - reach)
        windows = numpy.lib.stride_tricks.sliding_window_view(samples[begin:begin + 2 * reach + length], length)
        places.append(begin + int(numpy.argmin(((windows - model) ** 2).sum(axis=1))))
    return numpy.array(places)
