// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/options/click_options.h"

#include "files/wav.h"

#include <string>
#include <string_view>
#include <vector>

namespace piolo::command {
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

std::string voiceNames() {
    std::vector<std::string_view> names;
    for (const engine::Voice voice : engine::voices) names.push_back(engine::nameOf(voice));
    return joinedWithOr(names);
}

engine::Voice readVoice(OptionReader& in) {
    const engine::Voice usual = engine::Mix{}.voice;
    const std::string word = in.text("--voice", engine::nameOf(usual));
    if (const auto voice = engine::voiceNamed(word)) return *voice;
    in.fail({FaultNumber::badVoice, {}, {word, voiceNames()}}, "--voice");
    return usual;
}

} // namespace

OptionSpecs clickSpecs() {
    return {
        {"--meter", "N/D", "4/4", "1 to 32 over 1, 2, 4, 8 or 16 (default 4/4)"},
        {"--beat", "N/D", "1/4",
         "what one beat is: 1/2, 1/4, 3/8, 1/8 or 3/4\n(default 3/8 in 6/8, 9/8 and 12/8, otherwise 1/D)"},
        {"--groups", "A+B", "2+2+3", "how the bar is grouped, in notes of 1/D"},
        {"--subdivision", "N", "7", "pulses to the beat, 1 to 8 (default 1)"},
        {"--rate", "N", "48000", "samples per second, 8000 to 192000 (default 48000)"},
        {"--voice", "NAME", "impulse",
         voiceNames() + "\n(default wood; impulse is one sample per pulse, for measuring)"},
    };
}

ClickOptions readClickOptions(OptionReader& in) {
    ClickOptions options;
    options.meter = readMeter(in);
    options.subdivision = readSubdivision(in);
    options.rate.hertz = static_cast<std::int32_t>(in.whole("--rate", {8000, 192'000}, 48'000));
    options.mix.voice = readVoice(in);
    options.mix.level = 1.0F; // a file has no level of its own: players set the volume when they play it
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

} // namespace piolo::command
