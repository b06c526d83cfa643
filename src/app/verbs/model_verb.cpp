// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/verbs/option_reader.h"
#include "app/verbs/practice_notebook.h"
#include "app/verbs/verb_list.h"
#include "practice/sound_files/playback_file.h"

namespace piolo::app {
namespace {

constexpr OptionSpec options[] = {{"--folder", "~/spring-concert"},
                                  {"--tempo", "84"},
                                  {"--no-click", ""},
                                  {"--count-in", "1"},
                                  {"--rate", "48000"},
                                  {"--out", "model.wav"}};

struct Asked {
    std::string passage;
    std::string folder;
    std::optional<Tempo> tempo; ///< none: where the passage stands
    bool click = true;
    std::optional<std::int32_t> countIn; ///< none: the passage's own
    engine::SampleRate rate;
    std::string path;
    bool midi = false;
};

Asked readOptions(OptionReader& in, const Words& words) {
    Asked asked;
    if (words.freeWords().empty())
        in.fail({FaultNumber::missingOption, {}, {"\"Letter C, bars 41 to 48\""}}, "PASSAGE");
    else
        asked.passage = words.freeWords().front();
    asked.folder = in.text("--folder");
    if (in.isGiven("--tempo")) asked.tempo = in.tempo("--tempo");
    asked.click = !in.isGiven("--no-click");
    if (in.isGiven("--count-in")) asked.countIn = static_cast<std::int32_t>(in.whole("--count-in", {0, 4}));
    asked.rate.hertz = static_cast<std::int32_t>(in.whole("--rate", {8000, 192'000}, 48'000));
    asked.path = in.text("--out");
    asked.midi = in.fileKind("--out", asked.path, {".wav", ".mid"}) == 1;
    return asked;
}

/// A file has no level of its own: the player's volume is set where it is played.
engine::Mix fullMix() {
    engine::Mix mix;
    mix.level = 1.0F;
    return mix;
}

VerbEnd run(const Words& words) {
    OptionReader in(words);
    const Asked asked = readOptions(in, words);
    if (in.fault()) return *in.fault();
    const auto notebook = readNotebook(asked.folder);
    if (!notebook) return notebook.fault();
    const auto id = passageNamed(*notebook, asked.passage, "PASSAGE");
    if (!id) return id.fault();
    const PassageRecord& record = *notebook->passage(*id);
    Passage passage = record.passage;
    passage.music.countInBars = asked.countIn.value_or(passage.music.countInBars);
    auto score = engine::playbackOf(passage, asked.tempo.value_or(record.standing.tempo));
    if (score.notes.empty()) return Fault{FaultNumber::noNotes, {asked.folder}, {passage.title.name}};
    score.click = asked.click;
    const Done written = asked.midi ? practice::writePlaybackMidi(asked.path, score, passage.music.meter)
                                    : practice::writePlaybackWav(asked.path, score, fullMix(), asked.rate);
    if (!written) return written.fault();
    return exitDone;
}

} // namespace

Verb modelVerb() { return {"model", {"piolo model", options, 1}, run}; }

} // namespace piolo::app
