// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/options/click_options.h"
#include "command/options/pattern_options.h"
#include "command/verbs/verb_list.h"
#include "practice/sound_files/track_file.h"

namespace piolo::command::click_verb {
namespace {

// More than fits in any file; if it is too large, the fault says so.
constexpr std::int64_t mostBars = 1'000'000'000'000;

VerbEnd run(const Arguments& arguments) {
    OptionReader in(arguments);
    const Tempo tempo = in.tempo("--tempo");
    const ClickOptions click = readClickOptions(in);
    const std::int64_t bars = in.whole("--bars", {1, mostBars});
    const std::int64_t countIn = in.whole("--count-in", {0, 4}, 0);
    const ClickPattern pattern = readClickPattern(in, click, bars);
    const std::string path = in.text("--out");
    in.fileKind("--out", path, {".wav"});
    if (in.fault()) return *in.fault();

    engine::ClickTrack track = emptyTrack(click, pattern);
    if (countIn > 0) track.stretches.push_back({tempo, countIn, true});
    track.stretches.push_back({tempo, bars, false});
    unsigned __int128 frames = 0;
    for (const auto& stretch : track.stretches) frames += framesOf(track, click.rate, stretch);
    const Done fits = fitsWav(path, frames);
    if (!fits) return fits.fault();
    const Done written = practice::writeTrackWav(path, track, click.rate);
    if (!written) return written.fault();
    return exitDone;
}

} // namespace

Verb verb() {
    return {"click",
            "writes a click at one tempo as a WAV file",
            "piolo click --tempo N --bars N --out FILE.wav [OPTION VALUE]...",
            "The file is mono, with samples as 32-bit floats.",
            "piolo click --tempo 137 --subdivision 7 --bars 8 --out septuplets.wav",
            joined({{{"--tempo", "N", "137", "beats per minute, 10 to 400, up to three decimals"},
                     {"--bars", "N", "8", "number of bars"},
                     {"--out", "FILE.wav", "x.wav",
                      "where to write; an existing file is replaced only by a complete new one"},
                     {"--count-in", "N", "1", "bars of beats before the first bar, 0 to 4 (default 0)"}},
                    clickSpecs(),
                    patternSpecs()}),
            0,
            run};
}

} // namespace piolo::command::click_verb
