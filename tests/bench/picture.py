# SPDX-License-Identifier: GPL-3.0-or-later
"""A small SVG that shows how time grows with work, on logarithmic scales. Lines differ by dash and mark, not by colour."""
import math
from dataclasses import dataclass
from html import escape

INK, PAPER = "#1d1a16", "#faf7f0"
DASHES = ("", "7 4", "2 3", "9 3 2 3", "1 5")
WIDTH, HEIGHT, LEFT, TOP, RIGHT, BOTTOM = 440, 300, 62, 36, 120, 44


class Scale:
    """Maps values to positions logarithmically."""

    def __init__(self, values, begin, end):
        self.low, self.high = math.log10(min(values)), math.log10(max(values))
        self.begin, self.end = begin, end

    def place(self, value):
        share = (math.log10(value) - self.low) / ((self.high - self.low) or 1)
        return self.begin + share * (self.end - self.begin)

    def tens(self):
        return [10.0**power for power in range(math.ceil(self.low - 1e-9), math.floor(self.high + 1e-9) + 1)]


@dataclass
class Panel:
    title: str
    work: str
    lines: dict  # name: [(work, time as a multiple of our smallest)]

    def drawn(self):
        points = [point for line in self.lines.values() for point in line]
        across = Scale([x for x, _ in points], LEFT, WIDTH - RIGHT)
        up = Scale([y for _, y in points], HEIGHT - BOTTOM, TOP)
        parts = [text(LEFT, 20, self.title, "15", weight="bold"), text(LEFT, HEIGHT - 8, self.work)]
        parts += [self._level(up, value) for value in up.tens()]
        parts += [text(across.place(x), HEIGHT - 26, plain(x), anchor="middle") for x in sorted({x for x, _ in points})]
        labels = spread([up.place(line[-1][1]) for line in self.lines.values()])
        for dash, (name, line), label in zip(DASHES, self.lines.items(), labels):
            places = " ".join(f"{across.place(x):.1f},{up.place(y):.1f}" for x, y in line)
            parts.append(f'<polyline points="{places}" fill="none" stroke="{INK}" stroke-width="2" stroke-dasharray="{dash}"/>')
            parts.append(text(WIDTH - RIGHT + 8, label + 4, name))
        return "\n".join(parts)

    @staticmethod
    def _level(up, value):
        place = up.place(value)
        line = f'<line x1="{LEFT}" x2="{WIDTH - RIGHT}" y1="{place:.1f}" y2="{place:.1f}" stroke="{INK}" stroke-opacity="0.2"/>'
        return line + text(LEFT - 6, place + 4, f"{value:g} ×", anchor="end")


def plain(value):
    return f"{value / 1000:.3g}k" if value >= 10_000 else f"{value:g}"


def spread(places, apart=14):
    """Moves labels down until none overlaps another."""
    moved = list(places)
    lowest = -math.inf
    for index in sorted(range(len(moved)), key=lambda i: moved[i]):
        moved[index] = lowest = max(moved[index], lowest + apart)
    return moved


def text(x, y, words, size="12", anchor="start", weight="normal"):
    return (f'<text x="{x:.1f}" y="{y:.1f}" font-size="{size}" text-anchor="{anchor}" font-weight="{weight}" '
            f'fill="{INK}">{escape(words)}</text>')


def drawn(panels, across=2):
    across = min(across, len(panels))
    rows = -(-len(panels) // across)
    width, height = across * WIDTH, rows * HEIGHT
    placed = "\n".join(f'<g transform="translate({index % across * WIDTH} {index // across * HEIGHT})">\n{panel.drawn()}\n</g>'
                       for index, panel in enumerate(panels))
    return (f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {width} {height}" font-family="Inter, DejaVu Sans, sans-serif">\n'
            f'<rect width="{width}" height="{height}" fill="{PAPER}"/>\n{placed}\n</svg>\n')
