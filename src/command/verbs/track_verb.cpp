// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/options/click_options.h"
#include "command/options/pattern_options.h"
#include "command/verbs/verb_list.h"
#include "practice/sound_files/track_file.h"

#include <algorithm>

namespace piolo::command::track_verb {
namespace {

// More than fits in any file; if it is too large, the fault says so.
constexpr std::int64_t mostBars = 1'000'000'000'000;
constexpr std::int64_t mostRuns = 10'000;

struct Climb {
    std::vector<Tempo> tempi;
    std::int64_t bars = 1;
    std::int64_t runs = 1;
    std::int64_t countIn = 1;
};

// Start, start + climb, … target; the last step is shortened.
std::vector<Tempo> tempiOf(Tempo start, Tempo target, std::int64_t climb) {
    std::vector<Tempo> tempi{start};
    while (tempi.back() < target)
        tempi.push_back(
            std::min(target, Tempo::clampedThousandths(tempi.back().thousandths() + climb * 1000)));
    return tempi;
}

Climb readClimb(OptionReader& in) {
    const Tempo start = in.tempo("--start");
    const Tempo target = in.tempo("--target");
    const std::int64_t climb = in.whole("--climb", {1, 100});
    Climb read;
    read.bars = in.whole("--bars", {1, mostBars});
    read.runs = in.whole("--runs", {1, mostRuns});
    read.countIn = in.whole("--count-in", {0, 4}, 1);
    in.inOrder("--start", start, "--target", target);
    if (!in.fault()) read.tempi = tempiOf(start, target, climb);
    return read;
}

unsigned __int128 framesOfAll(const engine::ClickTrack& track, engine::SampleRate rate, const Climb& climb) {
    unsigned __int128 frames = 0;
    for (const Tempo tempo : climb.tempi) {
        frames += framesOf(track, rate, {tempo, climb.countIn, true}, climb.runs);
        frames += framesOf(track, rate, {tempo, climb.bars, false}, climb.runs);
    }
    return frames;
}

void addStretches(engine::ClickTrack& track, const Climb& climb) {
    for (const Tempo tempo : climb.tempi) {
        for (std::int64_t i = 0; i < climb.runs; ++i) {
            if (climb.countIn > 0) track.stretches.push_back({tempo, climb.countIn, true});
            track.stretches.push_back({tempo, climb.bars, false});
        }
    }
}

VerbEnd run(const Arguments& arguments) {
    OptionReader in(arguments);
    const Climb climb = readClimb(in);
    const ClickOptions click = readClickOptions(in);
    const ClickPattern pattern = readClickPattern(in, click, climb.bars);
    const std::string path = in.text("--out");
    const bool midi = in.fileKind("--out", path, {".wav", ".mid"}) == 1;
    if (in.fault()) return *in.fault();
    engine::ClickTrack track = emptyTrack(click, pattern);
    const Done fits = fitsWav(path, framesOfAll(track, click.rate, climb));
    if (!fits) return fits.fault();
    addStretches(track, climb);
    const Done written = midi ? practice::writeTrackMidi(path, track, click.rate)
                              : practice::writeTrackWav(path, track, click.rate);
    if (!written) return written.fault();
    return exitDone;
}

} // namespace

Verb verb() {
    return {"track",
            "writes a click that climbs from tempo to tempo as a WAV or MIDI file",
            "piolo track --start N --target N --climb N --bars N --runs N --out FILE [OPTION VALUE]...",
            "At each tempo, from start to target, there are as many runs as you ask for, each with its "
            "count-in.\n"
            "Random choices differ from run to run.",
            "piolo track --start 60 --target 96 --climb 4 --bars 4 --runs 5 --out ladder.mid",
            joined({{{"--start", "N", "60", "first tempo: beats per minute, 10 to 400, up to three decimals"},
                     {"--target", "N", "96", "last tempo; the last step is shortened to end on it"},
                     {"--climb", "N", "4", "beats per minute from one tempo to the next, 1 to 100"},
                     {"--bars", "N", "4", "bars of one run"},
                     {"--runs", "N", "5", "runs at each tempo, 1 to 10000"},
                     {"--out", "FILE", "x.wav", "FILE.wav, or FILE.mid for a MIDI file with the same onsets"},
                     {"--count-in", "N", "1", "bars of beats before each run, 0 to 4 (default 1)"}},
                    clickSpecs(),
                    patternSpecs()}),
            0,
            run};
}

} // namespace piolo::command::track_verb
