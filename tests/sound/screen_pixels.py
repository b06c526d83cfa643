# SPDX-License-Identifier: GPL-3.0-or-later
"""A virtual screen whose pixels can be read."""
import pathlib
import shutil
import struct
import tempfile
import zlib

from player_window import Display
from waiting import wait


def png_of(screen):
    """The PNG of an X window dump with 32 bits per pixel, as Xvfb keeps its screen."""
    header = struct.unpack(">25I", screen[:100])
    size, width, height, row, colours = header[0], header[4], header[5], header[12], header[19]
    start = size + 12 * colours
    lines = []
    for y in range(height):
        line = screen[start + y * row:start + y * row + 4 * width]
        pixels = bytearray(3 * width)
        pixels[0::3], pixels[1::3], pixels[2::3] = line[2::4], line[1::4], line[0::4]
        lines.append(b"\0" + bytes(pixels))

    def chunk(kind, data):
        return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))
    return (b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", struct.pack(">IIBBBBB", width, height, 8, 2, 0, 0, 0)) +
            chunk(b"IDAT", zlib.compress(b"".join(lines), 6)) + chunk(b"IEND", b""))


class Screen(Display):
    """A virtual screen whose pixels can be read."""

    def __init__(self, size):
        self.folder = tempfile.mkdtemp(prefix="screen-")
        super().__init__(size, "-fbdir", self.folder)

    def __enter__(self):
        super().__enter__()
        wait("the screen's pixels", lambda: pathlib.Path(self.folder, "Xvfb_screen0").exists())
        return self

    def __exit__(self, *_):
        super().__exit__()
        shutil.rmtree(self.folder, ignore_errors=True)

    def png(self):
        return png_of(pathlib.Path(self.folder, "Xvfb_screen0").read_bytes())
