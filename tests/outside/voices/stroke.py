# SPDX-License-Identifier: GPL-3.0-or-later
"""The strokes of a voice, one by one, as `piolo click` writes them at full level, and measurements of each."""
import numpy

import sound_file
from program import run

RATE = 48_000
VOICES = ("wood", "metal", "reed", "dry")
#: One bar of count-in and one of 5/4 as 2+3 in eighths, at 60: which second has which stroke.
STROKES = {"count-in's bar": 0.0, "count-in": 1.0, "downbeat": 5.0, "subdivision": 5.5, "beat": 6.0, "group": 7.0}
MOST_SECONDS = 0.06


def strokes(piolo, voice, path):
    """{name: samples}, each cut after its last sample that is not 0."""
    run(piolo, "click", "--tempo", 60, "--meter", "5/4", "--groups", "2+3", "--subdivision", 2, "--count-in", 1, "--bars", 1,
        "--rate", RATE, "--voice", voice, "--out", path)
    samples = sound_file.read(path)[1]
    cut = {}
    for name, second in STROKES.items():
        begin = round(second * RATE)
        sound = samples[begin:begin + round(0.4 * RATE)]
        cut[name] = sound[:numpy.flatnonzero(sound)[-1] + 1]
    return cut


def decibels(ratio):
    """Of amplitudes; full scale is 1, so levels are dB re full scale, which says nothing about loudness in a room."""
    return 20 * numpy.log10(max(ratio, 1e-9))


def envelope(sound):
    """The magnitude of the analytic signal, which has no ripple at the pitch of the tone."""
    padded = numpy.concatenate([numpy.zeros(RATE // 100), sound, numpy.zeros(RATE // 100)])
    spectrum = numpy.fft.fft(padded)
    half = len(padded) // 2
    spectrum[1:half] *= 2
    spectrum[half + 1:] = 0
    return numpy.abs(numpy.fft.ifft(spectrum))


def attack_ms(sound):
    """From a tenth to nine tenths of the envelope's peak."""
    size = envelope(sound)
    peak = size.max()
    return 1000 * (numpy.argmax(size >= 0.9 * peak) - numpy.argmax(size >= 0.1 * peak)) / RATE


def level(sound, seconds=0.020):
    """RMS of the loudest stretch of that length, in dB re full scale."""
    count = round(seconds * RATE)
    power = numpy.convolve(numpy.concatenate([sound, numpy.zeros(count)]) ** 2, numpy.ones(count) / count)
    return decibels(numpy.sqrt(power.max()))


def crest(sound):
    """Peak over RMS of the same 20 ms, in dB."""
    return decibels(numpy.abs(sound).max()) - level(sound)


def spectrum(sound):
    """(Hz, magnitude) of a padded transform."""
    count = RATE // 4
    return numpy.fft.rfftfreq(count, 1 / RATE), numpy.abs(numpy.fft.rfft(sound, count))


def centroid(sound):
    hertz, size = spectrum(sound)
    return (hertz * size**2).sum() / (size**2).sum()


def partials(sound, most=3, apart=150):
    """The strongest peaks of the spectrum, strongest first, at least `apart` Hz from each other and within 20 dB."""
    hertz, size = spectrum(sound)
    found = []
    for place in numpy.argsort(size)[::-1]:
        if size[place] < 0.1 * size.max() or len(found) == most:
            break
        if all(abs(hertz[place] - other) >= apart for other in found) and size[place] == size[max(0, place - 9):place + 10].max():
            found.append(hertz[place])
    return found


def steady_part(sound):
    """The mean over the click as a fraction of its peak: a direct current that would offset a loudspeaker's cone."""
    return abs(sound.mean()) / numpy.abs(sound).max()


def ends(sound):
    """The last sample as a fraction of the peak."""
    return abs(sound[-1]) / numpy.abs(sound).max()


def second_blow(sound):
    """How far the envelope, over 2 ms, rises again after its peak, as a fraction of it: an echo or a flutter."""
    count = RATE // 500
    smooth = numpy.convolve(envelope(sound), numpy.ones(count) / count, "valid")
    smooth = smooth[numpy.argmax(smooth):] / smooth.max()
    lowest = numpy.minimum.accumulate(smooth)
    return float((smooth - lowest).max())
