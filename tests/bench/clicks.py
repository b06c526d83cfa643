# SPDX-License-Identifier: GPL-3.0-or-later
"""A click in septuplets at 137 BPM, 48 kHz, mono: rendered and discarded, and written as a WAV file."""
from page import table
from picture import Panel
from workspace import processor_seconds, printed, printed_seconds
from ratios import Ratio, short, slope, take_turns

from steady_click import SOUNDFONT, SteadyClick

TEMPO, PARTS, RATE, VOICE = 137, 7, 48_000, "wood"
BEATS_PER_BAR = 4
MINUTES = (1, 2, 4, 8, 16)
WHOLE = 8  # minutes, for the ratios
OURS, COPY, CSOUND, TIMIDITY, FLUIDSYNTH = "Piolo", "copy loop", "Csound", "TiMidity", "FluidSynth"
BYTES = "writing as many bytes, nothing computed"


class Track:
    """This many minutes of it, in the form each program expects."""

    def __init__(self, where, minutes):
        self.where, self.minutes = where, minutes
        self.bars = round(minutes * TEMPO / BEATS_PER_BAR)
        self.seconds = self.bars * BEATS_PER_BAR * 60 / TEMPO
        click = SteadyClick(TEMPO, PARTS, RATE, 60 * minutes)
        self.score, self.midi = where.path(f"{minutes}.csd"), where.path(f"{minutes}.mid")
        with open(self.score, "w", encoding="ascii") as file:
            file.write(click.csound_score())
        with open(self.midi, "wb") as file:
            file.write(click.midi())
        with open(where.path("timidity.cfg"), "w", encoding="ascii") as file:
            file.write(f"soundfont {SOUNDFONT}\n")

    def in_memory(self, what):
        return [self.where.program("click_in_memory"), what, self.bars, VOICE]

    def csound(self, *out):
        """256 samples per block: of 64, 128, 256, 512 and 1024, none was faster by more than its own spread."""
        return ["csound", "-d", "-m0", "--sample-accurate", "--ksmps=256", *out, self.score]

    def timidity(self, out):
        return ["timidity", "-c", self.where.path("timidity.cfg"), "-OwM", "-s", RATE, "-EFreverb=0", "-EFchorus=0", "-o", out,
                self.midi]

    def fluidsynth(self, kind, out):
        return ["fluidsynth", "-ni", "-R", "0", "-C", "0", "-r", RATE, "-z", "1024", "-T", kind, "-F", out, SOUNDFONT, self.midi]

    def rendered(self):
        """Each program from start to end; its sound is discarded."""
        return {OURS: self.in_memory("ours"), COPY: self.in_memory("copy"), CSOUND: self.csound("-n"),
                TIMIDITY: self.timidity("/dev/null"), FLUIDSYNTH: self.fluidsynth("raw", "/dev/null")}

    def written(self):
        """The same into a file; cp takes the place of the copy loop."""
        ours = self.where.path("ours.wav")
        return {OURS: [self.where.program("piolo"), "click", "--tempo", TEMPO, "--subdivision", PARTS, "--bars", self.bars,
                       "--voice", VOICE, "--out", ours],
                BYTES: [self.where.program("write_bytes"), round(self.seconds * RATE), self.where.path("bytes.wav")],
                "cp of that file": ["cp", ours, self.where.path("copy.wav")],
                CSOUND: self.csound("-W", "-f", "-o", self.where.path("csound.wav")),
                TIMIDITY: self.timidity(self.where.path("timidity.wav")),
                FLUIDSYNTH: self.fluidsynth("wav", self.where.path("fluidsynth.wav"))}


def turns(words, rounds):
    return take_turns({key: lambda line=line: processor_seconds(line) for key, line in words.items()}, rounds)


def turns_of_all_lengths(where):
    """{minutes: {name: seconds}}; all lengths in each round."""
    took = turns({(minutes, name): line for minutes in MINUTES for name, line in Track(where, minutes).rendered().items()},
                 where.rounds)
    return {minutes: {name: took[length, name] for length, name in took if length == minutes} for minutes in MINUTES}


def loops(track, rounds):
    """Inside a single program each, without its start: rendering, and copying what was rendered before."""
    return take_turns({what: lambda what=what: printed_seconds(track.in_memory(what)) for what in ("ours", "copy")}, rounds)


def measure(where):
    if printed(Track(where, 1).in_memory("same")) != ["same"]:
        raise SystemExit("the copy loop makes other samples: nothing to compare")
    rendered = turns_of_all_lengths(where)
    track = Track(where, WHOLE)
    written = turns(track.written(), where.rounds)
    inside = loops(track, where.rounds)
    return page_of(track, rendered, written, inside), [panel_of(rendered)]


def page_of(track, rendered, written, inside):
    rows = [[name, str(Ratio(rendered[WHOLE][name], rendered[WHOLE][OURS])), short(growth(rendered, name) / growth(rendered, OURS)),
             real_time(track, rendered[WHOLE][name])] for name in rendered[WHOLE]]
    text = table([f"{WHOLE} minutes, discarded", "time as a multiple of Piolo's", "the same for each further minute, without the start",
                  "× real time"], rows)
    rows = [[name, str(Ratio(times, written[OURS])), real_time(track, times)] for name, times in written.items()]
    text += "\n" + table([f"{WHOLE} minutes, into a WAV file", "time as a multiple of Piolo's", "× real time"], rows)
    frames = track.seconds * RATE
    text += (f"\nRendering alone, without the program's start: {real_time(track, inside['ours'])} × real time, "
             f"{Ratio(inside['ours'], inside['copy'])} times as long as the copy loop "
             f"({frames / RATE / 60:.1f} minutes of sound).\n")
    return text


def growth(rendered, name):
    return slope(MINUTES, [sorted(rendered[m][name])[len(rendered[m][name]) // 2] for m in MINUTES])


def real_time(track, times):
    return short(track.seconds / sorted(times)[len(times) // 2])


def panel_of(rendered):
    """Time relative to Piolo's for the shortest track."""
    base = rendered[MINUTES[0]][OURS]
    return Panel("Rendering a click track", "minutes of sound", {
        name: [(m, Ratio(rendered[m][name], base).median) for m in MINUTES] for name in rendered[MINUTES[0]]})
