// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/verbs/click_options.h"
#include "app/verbs/pattern_options.h"
#include "app/verbs/verb_list.h"
#include "practice/sound_files/track_file.h"

namespace piolo::app {
namespace {

constexpr OptionSpec options[] = {
    {"--tempo", "137"},     {"--beat", "1/4"},  {"--meter", "4/4"},    {"--groups", "2+2+3"},
    {"--subdivision", "7"}, {"--bars", "8"},    {"--count-in", "1"},   {"--rate", "48000"},
    {"--voice", "impulse"}, {"--out", "x.wav"}, {"--click", "beats"},  {"--accents", "strong,plain"},
    {"--swing", "2:1"},     {"--bars-on", "3"}, {"--bars-off", "1"},   {"--silent-bars", "25"},
    {"--left-out", "10"},   {"--seed", "7"},    {"--breath", "4:3:1"}, {"--breath-below", "84"},
};
// More than any file holds: what is too large is told as such.
constexpr std::int64_t mostBars = 1'000'000'000'000;

VerbEnd run(const Words& words) {
    OptionReader in(words);
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

Verb clickVerb() { return {"click", {"piolo click", options}, run}; }

} // namespace piolo::app
