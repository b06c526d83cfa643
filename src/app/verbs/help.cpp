// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/verbs/help.h"

#include <algorithm>

namespace piolo::app {
namespace {

struct HelpText {
    std::string_view verb;
    const char* text;
};

constexpr HelpText texts[] = {
    {"",
     R"(piolo: a practice-room click that follows how cleanly a passage is played

piolo [--folder DIR] [--drill PASSAGE]   opens the window
piolo click    writes a click at one tempo as a WAV file
piolo track    writes a click that climbs from tempo to tempo as a WAV or MIDI file
piolo ladder   reads marks and prints the tempo that the rule gives after each
piolo curve    draws the tempo curves of passages as SVG, PNG, PDF or CSV
piolo sheet    draws ladders to print and tick in pencil, as PDF, SVG or PNG
piolo bars     reads a score in MusicXML and makes a passage of bars picked from it
piolo model    writes the notes of a passage, to be heard before they are played
piolo staff    draws the notes of a passage on a staff as SVG, PNG or PDF
piolo scale    lists a scale as it is played, or writes it as notes
piolo check    says what is wrong with practice folders, journal files, passage files and scores
piolo export   writes passages and their pieces as a file for another player
piolo import   takes pieces and passages from such a file
piolo VERB --help   tells more of one verb

  --folder DIR     the practice folder; made when missing
  --drill PASSAGE  opens the drill at this passage, by its title or id
  --screen NAME    opens passages, drill, scales, log, settings or help
  --language CODE  the window speaks system, en, de or it for this once
  --shot FILE      writes a PNG of the window there and ends
  --size WxH       of the window and that picture
  --version        prints the version
Exit code: 0 done, 1 input or output at fault, 2 wrong use.
Example: piolo --folder ~/spring-concert --drill "Letter C, bars 41 to 48"
)"},
    {"click",
     R"(piolo click: writes a click at one tempo as a WAV file (float32, mono)

  --tempo N        beats per minute, 10 to 400, up to three decimals
  --bars N         how many bars
  --out FILE.wav   where to; an old file is replaced only by a whole new one
  --meter N/D      4/4 when not given
  --beat N/D       what one beat is: 1/2, 1/4, 3/8, 1/8 or 3/4
                   (when not given: 3/8 in 6/8, 9/8 and 12/8, else 1/D)
  --groups A+B     how the bar is grouped, in notes of 1/D
  --subdivision N  pulses to the beat, 1 to 8; 1 when not given
  --count-in N     bars of beats before the first bar, 0 to 4; 0 when not given
  --rate N         samples per second, 8000 to 192000; 48000 when not given
  --voice NAME     impulse, wood, metal, reed or dry; wood when not given
                   (impulse: one sample a pulse, for measuring)
Where and how it clicks; the count-in always clicks its beats:
  --click WORD     beats, downbeats, backbeats (on 2 and 4) or offbeats; beats when not given
  --accents A,B…   strong, group, plain or silent for each beat of the bar
  --swing L:S      long to short of each pair of eighths or sixteenths, 1:1 to 3:1
  --bars-on N      so many bars click, 1 to 99 …
  --bars-off N     … and then so many do not, 0 to 99, in turn
  --silent-bars N  so many bars of a hundred are silent, at random
  --left-out N     so many beats of a hundred are left out, at random
  --seed N         another number, other bars and beats; 1 when not given
  --breath LIST    BAR:BEAT:BEATS,…: before that beat the click waits so many beats
  --breath-below N only at tempi below this one; below 400 when not given
Example: piolo click --tempo 137 --subdivision 7 --bars 8 --out septuplets.wav
)"},
    {"track", R"(piolo track: writes a click that climbs from tempo to tempo

At each tempo, from start to target, come so many runs, each with its count-in.
  --start N        first tempo, 10 to 400, up to three decimals
  --target N       last tempo; the last step is shortened to end on it
  --climb N        beats per minute from one tempo to the next, 1 to 100
  --bars N         bars of one run
  --runs N         runs at each tempo, 1 to 10000
  --out FILE       FILE.wav, or FILE.mid for a MIDI file with the same onsets
  --count-in N     bars of beats before each run, 0 to 4; 1 when not given
  --meter --beat --groups --subdivision --rate --voice   as in piolo click
  --click --accents --swing --bars-on --bars-off --silent-bars --left-out --seed
  --breath --breath-below   as in piolo click; chance chooses anew in every run
Example: piolo track --start 60 --target 96 --climb 4 --bars 4 --runs 5 --out ladder.mid
)"},
    {"ladder", R"(piolo ladder: reads marks and prints the tempo that the rule gives after each

Marks come from standard input, one a line: clean, miss, back, or tempo and a
number. Rows of comma-separated values go to standard output.
  --start N        where the passage begins, 10 to 400, up to three decimals
  --target N       where it shall arrive
  --drop N         how far a miss takes the tempo down, 1 to 100
  --climb N        how far a full row of clean runs takes it up, 1 to 100
  --clean-runs N   clean runs in a row for a climb, 1 to 100
  --floor N        never below this; 40 or the start, if that is lower, when not given
  --step WORD      bpm, or notches of the traditional metronome scale; bpm when not given
  --gentle         within two climbs of the target a miss drops one climb; at the
                   target one miss only ends the row, and two running drop
Example: printf 'clean\nclean\nmiss\nback\n' | piolo ladder --start 72 --target 96 --drop 4 --climb 2 --clean-runs 5
)"},
    {"curve", R"(piolo curve: draws the tempo curves of passages

piolo curve PASSAGE... --folder DIR --out FILE   PASSAGE is the exact title or the id, up to 20 of them
  --folder DIR     the practice folder
  --by runs|days   as on the log's screen, along runs or days; several passages are drawn along runs without it
  --out FILE       FILE.svg, FILE.png, FILE.pdf, or FILE.csv for the runs as comma-separated values
  --size WxH       of the picture, 64x64 to 8192x8192; 960x360 when not given
Example: piolo curve "Letter C, bars 41 to 48" --folder ~/spring-concert --out curve.svg
)"},
    {"sheet",
     R"(piolo sheet: draws practice sheets: ladders to print and tick in pencil

piolo sheet PASSAGE... --folder DIR --out FILE   PASSAGE is the exact title or the id, up to 20 of them
  --folder DIR     the practice folder
  --paper WORD     a4 or letter; a4 when not given
  --out FILE       FILE.pdf, FILE.svg or FILE.png; the last two have their pages one
                   below the other, 10 at most
Example: piolo sheet "Letter C, bars 41 to 48" --folder ~/spring-concert --out sheet.pdf
)"},
    {"bars", R"(piolo bars: reads a score in MusicXML and makes a passage of bars picked from it

piolo bars FILE   lists parts, bars, meters and tempo marks; FILE.musicxml, FILE.xml or FILE.mxl
piolo bars FILE --from BAR --to BAR   prints the passage that these bars make, with its notes
  --part NAME             a part's number or whole name; the first when not given
  --from BAR              the first bar, by its printed number
  --to BAR                the last bar; the first when not given
  --out FILE.piolo.json   writes the passage and its piece, for piolo import
Example: piolo bars ferrywake.musicxml --from 0 --to 4 --out ferrywake.piolo.json
)"},
    {"model", R"(piolo model: writes the notes of a passage, to be heard before they are played

piolo model PASSAGE --folder DIR --out FILE   PASSAGE is the exact title or the id; its bars were picked from a score
  --folder DIR     the practice folder
  --out FILE       FILE.wav (float32, mono), or FILE.mid for a MIDI file with the same onsets
  --tempo N        10 to 400, up to three decimals; where the passage stands when not given
  --no-click       only the count-in clicks
  --count-in N     bars of beats before the notes, 0 to 4; the passage's own when not given
  --rate N         samples per second, 8000 to 192000; 48000 when not given
Example: piolo model "Letter C, bars 41 to 48" --folder ~/spring-concert --tempo 72 --out letter-c.wav
)"},
    {"scale",
     R"(piolo scale: lists a scale as it is played on an instrument, or writes it as notes

  --key KEY          as written for the instrument: "E flat", Eb, "F sharp", F#, C
  --instrument NAME  "alto saxophone", "clarinet in B flat", trombone …; a wrong name lists them all
  --kind NAME        major when not given; a wrong name lists them all
  --range NAME       "one octave", "two octaves" (when not given) or "whole range"
  --pattern NAME     "in order" (when not given), "in thirds", "in fourths", "in turns of three", "in turns of four"
  --subdivision N    notes to the beat, 1 to 7; 1 when not given
  --lowest NOTE      the instrument's lowest note as written, where it differs: A3
  --highest NOTE     its highest: F#6
  --tempo N          of a MIDI file, 60 when not given; the tempo mark of a score, none when not given
  --out FILE         FILE.mid, FILE.musicxml for a score, or FILE.svg, FILE.png or FILE.pdf for a staff;
                     when not given the notes are listed
Example: piolo scale --key "E flat" --kind major --subdivision 5 --instrument "alto saxophone"
)"},
    {"staff", R"(piolo staff: draws the notes of a passage on a staff

piolo staff PASSAGE --folder DIR --out FILE   PASSAGE is the exact title or the id; its bars were picked from a score
  --folder DIR     the practice folder
  --out FILE       FILE.svg, FILE.png or FILE.pdf; as tall as the music needs
  --width N        of the picture, 240 to 8192 dots, 96 to the inch; 960 when not given
  --space N        from line to line of the staff, 4 to 60 dots; 9 when not given
Example: piolo staff "Letter C, bars 41 to 48" --folder ~/spring-concert --out letter-c.svg
)"},
    {"check",
     R"(piolo check: says what is wrong with practice folders, journal files, passage files and scores

piolo check FILE-OR-FOLDER…   one fault a line on standard output; nothing when all is well
FILE.piolo.json is read as a passage file, FILE.musicxml, FILE.xml and FILE.mxl as scores, any other
file as a journal file.
Nothing is changed. Exit code: 0 all is well, 1 something is wrong, 2 wrong use.
Example: piolo check ~/spring-concert
)"},
    {"export",
     R"(piolo export: writes passages and their pieces as a file for another player

piolo export [PASSAGE…] --folder DIR --out FILE.piolo.json
piolo export PASSAGE --folder DIR --out FILE.musicxml   its notes as a score, where they are known
Each PASSAGE is an exact title or an id; without any, all passages and pieces are written.
What was played is not in the file.
  --folder DIR   the practice folder
  --out FILE     where to; an old file is replaced only by a whole new one
Example: piolo export "Letter C, bars 41 to 48" --folder ~/spring-concert --out sectional.piolo.json
)"},
    {"import",
     R"(piolo import: takes pieces and passages from a file that piolo export wrote

piolo import FILE --folder DIR [--replace]
What is new is added. What differs from the folder, or was removed there, is told and left
alone. The same file twice changes nothing. Close the window on that folder first.
  --folder DIR   the practice folder; made when missing
  --replace      takes what differs from the file
Example: piolo import sectional.piolo.json --folder ~/spring-concert
)"},
};

} // namespace

std::string helpOf(std::string_view verb) {
    const auto* const found = std::ranges::find(texts, verb, &HelpText::verb);
    if (found == std::end(texts)) return {};
    return found->text;
}

} // namespace piolo::app
