// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/options/option_reader.h"
#include "command/output/report.h"
#include "command/output/staff_file.h"
#include "command/output/written_file.h"
#include "command/verbs/verb_list.h"
#include "core/music/pitch_text.h"
#include "core/scales/scale_passage.h"
#include "practice/scores/passage_score.h"
#include "practice/sound_files/playback_file.h"
#include "score/read/score_file.h"
#include "score/write/musicxml_writer.h"

#include <algorithm>
#include <cstdlib>

namespace piolo::command::scale_verb {
namespace {

struct Asked {
    Scale scale;
    const Instrument* instrument = nullptr;
    NoteRange range;
    std::optional<Tempo> tempo;
    std::string path;                          ///< "": list the notes
    std::optional<plots::PictureKind> picture; ///< nothing: a sound file or a score
};

template <typename Value, std::size_t Count>
std::vector<std::string_view> namesOf() {
    std::vector<std::string_view> names;
    for (std::size_t place = 0; place < Count; ++place) names.push_back(nameOf(static_cast<Value>(place)));
    return names;
}

/// The value with that name; badChoice, with all names, for any other.
template <typename Value, std::size_t Count>
Value chosen(OptionReader& in, std::string_view option,
             std::optional<Value> (*read)(std::string_view) noexcept, std::string_view fallback) {
    const std::string text = in.text(option, fallback);
    const auto value = read(text);
    if (!value) in.fail({FaultNumber::badChoice, {}, {text, joinedWithOr(namesOf<Value, Count>())}}, option);
    return value.value_or(Value{});
}

Tonic keyOf(OptionReader& in) {
    const std::string text = in.text("--key");
    const auto tonic = tonicNamed(text);
    if (!tonic) in.fail({FaultNumber::badKey, {}, {text}}, "--key");
    return tonic.value_or(Tonic{});
}

const Instrument* instrumentOf(OptionReader& in) {
    const std::string text = in.text("--instrument");
    const Instrument* const found = instrumentNamed(text);
    if (found != nullptr) return found;
    std::vector<std::string_view> names;
    for (const Instrument& instrument : instruments()) names.push_back(instrument.name);
    in.fail({FaultNumber::badChoice, {}, {text, joinedWithOr(names)}}, "--instrument");
    return &instruments().front();
}

WrittenPitch pitchOf(OptionReader& in, std::string_view option, WrittenPitch usual) {
    if (!in.isGiven(option)) return usual;
    const std::string text = in.text(option);
    const auto pitch = pitchNamed(text);
    if (!pitch) in.fail({FaultNumber::badPitch, {}, {text}}, option);
    return pitch.value_or(usual);
}

Asked readOptions(OptionReader& in) {
    Asked asked;
    asked.scale.tonic = keyOf(in);
    asked.scale.kind = chosen<ScaleKind, scaleKindCount>(in, "--kind", scaleKindNamed, "major");
    asked.scale.range = chosen<ScaleRange, scaleRangeCount>(in, "--range", scaleRangeNamed, "two octaves");
    asked.scale.pattern =
        chosen<ScalePattern, scalePatternCount>(in, "--pattern", scalePatternNamed, "in order");
    asked.scale.notesPerBeat =
        static_cast<std::int32_t>(in.whole("--subdivision", {1, Scale::mostNotesPerBeat}, 1));
    asked.instrument = instrumentOf(in);
    asked.scale.instrument = asked.instrument->name;
    asked.range.lowest = pitchOf(in, "--lowest", asked.instrument->range.lowest);
    asked.range.highest = pitchOf(in, "--highest", asked.instrument->range.highest);
    if (in.isGiven("--tempo")) asked.tempo = in.tempo("--tempo");
    if (!in.isGiven("--out")) return asked;
    asked.path = in.text("--out");
    const std::size_t kind = in.fileKind("--out", asked.path, {".svg", ".png", ".pdf", ".mid", ".musicxml"});
    if (kind < 3) asked.picture = static_cast<plots::PictureKind>(kind);
    return asked;
}

std::string signatureText(std::optional<int> fifths) {
    if (!fifths) return "none: it would need more than seven signs";
    const int count = std::abs(*fifths);
    if (count == 0) return "no sharps or flats";
    return std::to_string(count) + (*fifths < 0 ? " flat" : " sharp") + (count == 1 ? "" : "s");
}

std::string endingText(const ScaleEnding& ending) {
    std::string text;
    const auto add = [&text](const std::string& part) { text += (text.empty() ? "" : ", ") + part; };
    if (ending.topTwice) add("top note twice");
    if (ending.turn != 0) {
        std::string turn = ending.turn < 0 ? "turn above the last tonic: " : "turn below the last tonic: ";
        add(turn.append(std::to_string(std::abs(ending.turn))).append(" notes"));
    }
    if (ending.tonicTwice) add("last tonic twice");
    return text.empty() ? "comes out even" : text;
}

std::string listing(const Asked& asked, const ScalePart& part) {
    std::string text = "scale: " + textOf(asked.scale) + "\n";
    text.append("instrument: ").append(asked.instrument->name);
    text += "\nconcert: " +
            spoken(concertOf(asked.scale.tonic, asked.scale.kind, asked.instrument->transposition));
    text += "\nsignature: " + signatureText(part.fifths);
    text += "\nfrom: " + pitchText(part.lowest) + "\nto: " + pitchText(part.highest);
    if (part.altissimo) text += " (altissimo: above " + pitchText(asked.range.highest) + ")";
    text += "\nbars: " + std::to_string(part.music.bars) + (part.music.landing ? " and a landing note" : "");
    text += "\nends: " + endingText(part.ending) + "\nnotes:";
    for (const Note& note : part.notes) text += ' ' + pitchText(note.written);
    text += "\nsounding:";
    for (const Note& note : part.notes) text += ' ' + std::to_string(note.sounding);
    return text + "\n";
}

Done writeMidi(const Asked& asked, const ScalePart& part) {
    Passage passage = scalePassage({}, asked.scale, part, {});
    passage.music.countInBars = 0;
    auto score = engine::playbackOf(passage, asked.tempo.value_or(Tempo::bpm(60)));
    score.click = false;
    return practice::writePlaybackMidi(asked.path, score, passage.music.meter);
}

Done writeScore(const Asked& asked, const ScalePart& part) {
    score::WrittenPart written = practice::writtenPartOf(scalePassage({}, asked.scale, part, {}), {});
    written.tempo = asked.tempo;
    const auto text = score::musicXmlOf(written);
    return text ? writeInFolder(asked.path, *text) : Done(text.fault());
}

Done drawStaff(const Asked& asked, const ScalePart& part) {
    const StaffMusic music = staffOf(scalePassage({}, asked.scale, part, {}));
    return writeStaff(asked.path, *asked.picture, music, textOf(asked.scale), {});
}

Done write(const Asked& asked, const ScalePart& part) {
    if (asked.path.empty()) return say(listing(asked, part));
    if (asked.picture) return drawStaff(asked, part);
    return score::isScoreFile(asked.path) ? writeScore(asked, part) : writeMidi(asked, part);
}

VerbEnd run(const Arguments& arguments) {
    OptionReader in(arguments);
    const Asked asked = readOptions(in);
    if (in.fault()) return *in.fault();
    const auto part = scalePart(asked.scale, asked.instrument->transposition, asked.range);
    if (!part)
        return Fault{FaultNumber::noSuchScale,
                     {},
                     {textOf(asked.scale), pitchText(asked.range.lowest), pitchText(asked.range.highest)}};
    const Done done = write(asked, *part);
    if (!done) return done.fault();
    return exitDone;
}

} // namespace

Verb verb() {
    return {
        "scale",
        "lists a scale as you play it, or writes it as notes",
        "piolo scale --key KEY --instrument NAME [OPTION VALUE]...",
        "If a kind or an instrument is not valid, the answer lists all that are.",
        "piolo scale --key \"E flat\" --kind major --subdivision 5 --instrument \"alto saxophone\"",
        {{"--key", "KEY", "\"E flat\"", "as written for the instrument: \"E flat\", Eb, \"F sharp\", F#, C"},
         {"--instrument", "NAME", "\"alto saxophone\"",
          "\"alto saxophone\", \"clarinet in B flat\", trombone ..."},
         {"--kind", "NAME", "major", "\"harmonic minor\", dorian, \"whole tone\" ... (default major)"},
         {"--range", "NAME", "\"two octaves\"",
          joinedWithOr(namesOf<ScaleRange, scaleRangeCount>()) + " (default two octaves)"},
         {"--pattern", "NAME", "\"in thirds\"",
          joinedWithOr(namesOf<ScalePattern, scalePatternCount>()) + "\n(default in order)"},
         {"--subdivision", "N", "5", "notes to the beat, 1 to 7 (default 1)"},
         {"--lowest", "NOTE", "Bb3",
          "lowest note you play, as written, if it is not the usual one of the instrument: A3"},
         {"--highest", "NOTE", "F#6", "highest note you play"},
         {"--tempo", "N", "60", "tempo of a MIDI file (default 60), or tempo mark of a score (default none)"},
         {"--out", "FILE", "scale.svg",
          "FILE.mid, FILE.musicxml for a score, or FILE.svg, FILE.png or FILE.pdf for a staff\n"
          "(default: lists the notes)"}},
        0,
        run};
}

} // namespace piolo::command::scale_verb
