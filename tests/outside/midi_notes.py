# SPDX-License-Identifier: GPL-3.0-or-later
"""Standard MIDI Files with plain notes, for other programs to play. Layout: format 0, one track, FF 51 03 for the tempo."""
import struct


def variable(value):
    out = [value & 0x7F]
    while value := value >> 7:
        out.insert(0, 0x80 | (value & 0x7F))
    return bytes(out)


def midi_file(division, micros, notes, channel, hold=1, program=None, velocity=127):
    """Notes are (tick, key) in order, each `hold` ticks long; `program` is counted from 0."""
    events = sorted([(tick, 1, key) for tick, key in notes] + [(tick + hold, 0, key) for tick, key in notes])
    track = b"\0\xff\x51\3" + micros.to_bytes(3, "big")
    if program is not None:
        track += bytes([0, 0xC0 | channel, program])
    now = 0
    for tick, on, key in events:
        track += variable(tick - now) + bytes([(0x90 if on else 0x80) | channel, key, velocity if on else 0])
        now = tick
    track += b"\0\xff\x2f\0"
    return struct.pack(">4sIHHH4sI", b"MThd", 6, 0, 1, division, b"MTrk", len(track)) + track
