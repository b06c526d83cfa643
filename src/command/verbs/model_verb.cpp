// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/options/option_reader.h"
#include "command/verbs/practice_notebook.h"
#include "command/verbs/verb_list.h"
#include "practice/sound_files/playback_file.h"

namespace piolo::command::model_verb {
namespace {

struct Asked {
    std::string passage;
    std::string folder;
    std::optional<Tempo> tempo; ///< nothing: the passage's current tempo
    bool click = true;
    std::optional<std::int32_t> countIn; ///< nothing: the passage's own
    engine::SampleRate rate;
    std::string path;
    bool midi = false;
};

Asked readOptions(OptionReader& in, const Arguments& arguments) {
    Asked asked;
    if (arguments.positionals().empty())
        in.fail({FaultNumber::missingOption, {}, {"\"Letter C, bars 41 to 48\""}}, "PASSAGE");
    else
        asked.passage = arguments.positionals().front();
    asked.folder = in.text("--folder");
    if (in.isGiven("--tempo")) asked.tempo = in.tempo("--tempo");
    asked.click = !in.isGiven("--no-click");
    if (in.isGiven("--count-in")) asked.countIn = static_cast<std::int32_t>(in.whole("--count-in", {0, 4}));
    asked.rate.hertz = static_cast<std::int32_t>(in.whole("--rate", {8000, 192'000}, 48'000));
    asked.path = in.text("--out");
    asked.midi = in.fileKind("--out", asked.path, {".wav", ".mid"}) == 1;
    return asked;
}

/// A file has no level of its own: players set the volume when they play it.
engine::Mix fullMix() {
    engine::Mix mix;
    mix.level = 1.0F;
    return mix;
}

VerbEnd run(const Arguments& arguments) {
    OptionReader in(arguments);
    const Asked asked = readOptions(in, arguments);
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

Verb verb() {
    return {"model",
            "writes the notes of a passage as sound, so that you can hear it first",
            "piolo model PASSAGE --folder DIR --out FILE [OPTION VALUE]...",
            "PASSAGE is the exact title or the id of a passage whose bars were picked from a score.",
            "piolo model \"Letter C, bars 41 to 48\" --folder ~/spring-concert --tempo 72 --out letter-c.wav",
            {folderOption(),
             {"--out", "FILE", "model.wav",
              "FILE.wav (mono, 32-bit floats), or FILE.mid for a MIDI file with the same onsets"},
             {"--tempo", "N", "84",
              "beats per minute, 10 to 400, up to three decimals (default: the passage's current tempo)"},
             {"--no-click", "", "", "only the count-in clicks"},
             {"--count-in", "N", "1", "bars of beats before the notes, 0 to 4 (default: the passage's own)"},
             {"--rate", "N", "48000", "samples per second, 8000 to 192000 (default 48000)"}},
            1,
            run};
}

} // namespace piolo::command::model_verb
