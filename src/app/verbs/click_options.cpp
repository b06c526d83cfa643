// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/verbs/click_options.h"

#include "files/wav.h"

#include <array>

namespace piolo::app {
namespace {

std::string_view optionOf(FaultNumber number) {
    switch (number) {
    case FaultNumber::badBeat:
    case FaultNumber::beatDoesNotDivide:
        return "--beat";
    case FaultNumber::badGroups:
        return "--groups";
    default:
        return "--meter";
    }
}

Meter readMeter(OptionReader& in) {
    const std::string meter = in.text("--meter", "4/4");
    const std::string beat = in.text("--beat", "");
    const std::string groups = in.text("--groups", "");
    if (in.fault()) return {};
    const auto made = Meter::parse(meter, beat, groups);
    if (made) return *made;
    in.fail(made.fault(), optionOf(made.fault().number));
    return {};
}

std::int32_t readSubdivision(OptionReader& in) {
    const std::string word = in.text("--subdivision", "1");
    if (word.size() == 1 && word[0] >= '1' && word[0] <= '8') return word[0] - '0';
    in.fail({FaultNumber::badSubdivision, {}, {word}}, "--subdivision");
    return 1;
}

engine::Voice readVoice(OptionReader& in) {
    const engine::Voice usual = engine::Mix{}.voice;
    const std::string word = in.text("--voice", engine::nameOf(usual));
    if (const auto voice = engine::voiceNamed(word)) return *voice;
    std::array<std::string_view, engine::voices.size()> names;
    for (std::size_t i = 0; i < names.size(); ++i) names.at(i) = engine::nameOf(engine::voices.at(i));
    in.fail({FaultNumber::badVoice, {}, {word, joinedWithOr(names)}}, "--voice");
    return usual;
}

} // namespace

ClickOptions readClickOptions(OptionReader& in) {
    ClickOptions options;
    options.meter = readMeter(in);
    options.subdivision = readSubdivision(in);
    options.rate.hertz = static_cast<std::int32_t>(in.whole("--rate", {8000, 192'000}, 48'000));
    options.mix.voice = readVoice(in);
    options.mix.level = 1.0F; // a file has no level of its own: the player's volume is set where it is played
    return options;
}

unsigned __int128 framesOf(const engine::ClickTrack& track, engine::SampleRate rate,
                           const engine::Stretch& stretch, std::int64_t times) {
    const auto beats = static_cast<unsigned __int128>(engine::beatsOf(track, stretch)) *
                       static_cast<unsigned __int128>(times);
    const auto samples = beats * 60'000U * static_cast<unsigned>(rate.hertz);
    const auto perBeat = static_cast<unsigned>(stretch.tempo.thousandths());
    return (samples + perBeat - 1) / perBeat;
}

Done fitsWav(const std::string& path, unsigned __int128 frames) {
    if (frames <= files::mostWavFrames()) return done();
    return Fault{FaultNumber::tooLarge, {path}, {}};
}

engine::ClickTrack emptyTrack(const ClickOptions& options, const ClickPattern& pattern) {
    return {options.meter, options.subdivision, {}, options.mix, pattern};
}

} // namespace piolo::app
