# SPDX-License-Identifier: GPL-3.0-or-later
"""Piolo's WAV files as read by SoX and libsndfile, and the header byte by byte.

The header's table was read from a file that SoX 14.4.2 wrote for float32 mono; the same SoX writes one again here, and
both must be the same 58 bytes. Tag 3 is IEEE float, and a format that is not PCM needs a fact chunk (wavecomp.htm, stored
copy at icculus.org/SDL_sound/downloads/external_documentation). Debian 12's packages sox and sndfile-programs.

    test_wav.py PIOLO
"""
import pathlib
import struct
import sys
import tempfile

import numpy

import sound_file
from program import finish, held, run

RATES = (8_000, 44_100, 48_000, 96_000, 192_000)
HEADER = 58


def table(rate, frames):
    """(offset, what, its bytes) of every field."""
    return [(0, "RIFF", b"RIFF"), (4, "size", struct.pack("<I", HEADER - 8 + 4 * frames)), (8, "WAVE", b"WAVE"),
            (12, "fmt", b"fmt "), (16, "size of fmt", struct.pack("<I", 18)), (20, "tag, IEEE float", struct.pack("<H", 3)),
            (22, "channels", struct.pack("<H", 1)), (24, "rate", struct.pack("<I", rate)),
            (28, "bytes a second", struct.pack("<I", 4 * rate)), (32, "bytes a frame", struct.pack("<H", 4)),
            (34, "bits", struct.pack("<H", 32)), (36, "size of what else is in fmt", struct.pack("<H", 0)),
            (38, "fact", b"fact"), (42, "size of fact", struct.pack("<I", 4)), (46, "frames", struct.pack("<I", frames)),
            (50, "data", b"data"), (54, "size of data", struct.pack("<I", 4 * frames))]


def header_holds(head, rate, frames):
    wrong = [what for at, what, value in table(rate, frames) if head[at:at + len(value)] != value]
    covered = sum(len(value) for _, _, value in table(rate, frames))
    return held(not wrong and covered == HEADER, f"{rate} Hz: {covered} bytes of header as in the table{wrong or ''}")


def by_sox(path, rate, frames):
    said = [run("soxi", flag, path).decode().strip() for flag in ("-r", "-c", "-s", "-b", "-e")]
    yield held(said == [str(rate), "1", str(frames), "32", "Floating Point PCM"], f"{rate} Hz: soxi says {', '.join(said)}")
    raw = numpy.frombuffer(run("sox", "-D", path, "-t", "raw", "-e", "floating-point", "-b", "32", "-L", "-"), "<f4")
    ours = sound_file.read(path)[1]
    # SoX works with 32-bit integers: samples are rounded to 2^-31, and 1.0 becomes the largest integer.
    yield held(len(raw) == len(ours) and numpy.abs(raw - ours).max() <= 2.0**-24, f"{rate} Hz: SoX reads the same samples")


def by_sndfile(path, rate, frames, folder):
    lines = run("sndfile-info", path).decode().splitlines()
    said = dict(line.split(":", 1) for line in lines if ":" in line)
    said = {key.strip(): value.strip() for key, value in said.items()}
    wanted = {"Sample Rate": str(rate), "Frames": str(frames), "Channels": "1", "Format": "0x00010006", "data": str(4 * frames)}
    yield held(all(said.get(key) == value for key, value in wanted.items()) and lines.count("End") == 1,
               f"{rate} Hz: sndfile-info reads WAV, float, {said.get('Frames')} frames")
    run("sndfile-convert", "-float32", path, folder / "again.wav")
    same = numpy.array_equal(sound_file.read(folder / "again.wav")[1], sound_file.read(path)[1])
    yield held(same, f"{rate} Hz: libsndfile writes the same samples again")


def compare(piolo, rate, folder):
    ours, theirs = folder / "ours.wav", folder / "sox.wav"
    run(piolo, "click", "--tempo", "137", "--subdivision", "7", "--bars", "2", "--rate", rate, "--voice", "wood", "--out", ours)
    frames = (ours.stat().st_size - HEADER) // 4
    run("sox", "-r", rate, "-n", "-r", rate, "-c", "1", "-e", "floating-point", "-b", "32", theirs, "trim", "0", f"{frames}s")
    head = ours.read_bytes()[:HEADER]
    yield header_holds(head, rate, frames)
    yield held(head == theirs.read_bytes()[:HEADER], f"{rate} Hz: the header is the one that SoX writes")
    yield from by_sox(ours, rate, frames)
    yield from by_sndfile(ours, rate, frames, folder)


def main():
    with tempfile.TemporaryDirectory() as folder:
        finish([result for rate in RATES for result in compare(sys.argv[1], rate, pathlib.Path(folder))])


if __name__ == "__main__":
    main()
