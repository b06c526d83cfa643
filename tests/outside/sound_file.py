# SPDX-License-Identifier: GPL-3.0-or-later
"""Reads WAV files from any of these programs: 16-bit or float32, with several channels mixed to one."""
import struct

import numpy


def chunks(data):
    """(name, where its bytes begin, its bytes) for each chunk of a RIFF file."""
    at = 12
    while at + 8 <= len(data):
        name, size = struct.unpack_from("<4sI", data, at)
        yield name.decode("latin-1"), at + 8, data[at + 8:at + 8 + size]
        at += 8 + size + size % 2


def read(path):
    """(rate, samples as float64, full scale 1)."""
    with open(path, "rb") as file:
        found = {name: body for name, _, body in chunks(file.read())}
    tag, channels, rate = struct.unpack_from("<HHI", found["fmt "])
    bits = struct.unpack_from("<H", found["fmt "], 14)[0]
    if tag == 0xFFFE:
        tag = struct.unpack_from("<H", found["fmt "], 24)[0]
    kind, scale = {(3, 32): ("<f4", 1.0), (1, 16): ("<i2", 32768.0)}[(tag, bits)]
    width = bits // 8
    body = found["data"][:len(found["data"]) // width * width]
    samples = numpy.frombuffer(body, kind).astype(numpy.float64) / scale
    return rate, samples.reshape(-1, channels).mean(axis=1)
