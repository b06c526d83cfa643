// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/text/scale_words.h"

#include "models/settings/setting_choices.h"
#include "models/text/formatter.h"

#include <QCoreApplication>

#include <array>
#include <cstdlib>

namespace piolo::models {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Scale)
};

// Languages name notes in their own ways: a B flat is a B in German, and Si bemolle in Italian.
constexpr std::array<std::array<const char*, 3>, 7> keys{
    {{QT_TRANSLATE_NOOP("Scale", "A♭"), QT_TRANSLATE_NOOP("Scale", "A"), QT_TRANSLATE_NOOP("Scale", "A♯")},
     {QT_TRANSLATE_NOOP("Scale", "B♭"), QT_TRANSLATE_NOOP("Scale", "B"), QT_TRANSLATE_NOOP("Scale", "B♯")},
     {QT_TRANSLATE_NOOP("Scale", "C♭"), QT_TRANSLATE_NOOP("Scale", "C"), QT_TRANSLATE_NOOP("Scale", "C♯")},
     {QT_TRANSLATE_NOOP("Scale", "D♭"), QT_TRANSLATE_NOOP("Scale", "D"), QT_TRANSLATE_NOOP("Scale", "D♯")},
     {QT_TRANSLATE_NOOP("Scale", "E♭"), QT_TRANSLATE_NOOP("Scale", "E"), QT_TRANSLATE_NOOP("Scale", "E♯")},
     {QT_TRANSLATE_NOOP("Scale", "F♭"), QT_TRANSLATE_NOOP("Scale", "F"), QT_TRANSLATE_NOOP("Scale", "F♯")},
     {QT_TRANSLATE_NOOP("Scale", "G♭"), QT_TRANSLATE_NOOP("Scale", "G"), QT_TRANSLATE_NOOP("Scale", "G♯")}}};

struct KindWords {
    const char* name;  ///< by itself
    const char* inKey; ///< with the key
};
// In the order of ScaleKind.
constexpr std::array<KindWords, scaleKindCount> kinds{
    {{QT_TRANSLATE_NOOP("Scale", "Major"), QT_TRANSLATE_NOOP("Scale", "%1 major")},
     {QT_TRANSLATE_NOOP("Scale", "Natural minor (aeolian)"), QT_TRANSLATE_NOOP("Scale", "%1 natural minor")},
     {QT_TRANSLATE_NOOP("Scale", "Harmonic minor"), QT_TRANSLATE_NOOP("Scale", "%1 harmonic minor")},
     {QT_TRANSLATE_NOOP("Scale", "Melodic minor, classical"), QT_TRANSLATE_NOOP("Scale", "%1 melodic minor")},
     {QT_TRANSLATE_NOOP("Scale", "Melodic minor, jazz"), QT_TRANSLATE_NOOP("Scale", "%1 jazz minor")},
     {QT_TRANSLATE_NOOP("Scale", "Dorian"), QT_TRANSLATE_NOOP("Scale", "%1 dorian")},
     {QT_TRANSLATE_NOOP("Scale", "Phrygian"), QT_TRANSLATE_NOOP("Scale", "%1 phrygian")},
     {QT_TRANSLATE_NOOP("Scale", "Lydian"), QT_TRANSLATE_NOOP("Scale", "%1 lydian")},
     {QT_TRANSLATE_NOOP("Scale", "Mixolydian"), QT_TRANSLATE_NOOP("Scale", "%1 mixolydian")},
     {QT_TRANSLATE_NOOP("Scale", "Locrian"), QT_TRANSLATE_NOOP("Scale", "%1 locrian")},
     {QT_TRANSLATE_NOOP("Scale", "Chromatic"), QT_TRANSLATE_NOOP("Scale", "chromatic from %1")},
     {QT_TRANSLATE_NOOP("Scale", "Whole tone"), QT_TRANSLATE_NOOP("Scale", "whole tone from %1")},
     {QT_TRANSLATE_NOOP("Scale", "Diminished, whole step first"),
      QT_TRANSLATE_NOOP("Scale", "%1 diminished, whole step first")},
     {QT_TRANSLATE_NOOP("Scale", "Diminished, half step first"),
      QT_TRANSLATE_NOOP("Scale", "%1 diminished, half step first")},
     {QT_TRANSLATE_NOOP("Scale", "Major pentatonic"), QT_TRANSLATE_NOOP("Scale", "%1 major pentatonic")},
     {QT_TRANSLATE_NOOP("Scale", "Minor pentatonic"), QT_TRANSLATE_NOOP("Scale", "%1 minor pentatonic")},
     {QT_TRANSLATE_NOOP("Scale", "Blues"), QT_TRANSLATE_NOOP("Scale", "%1 blues")},
     {QT_TRANSLATE_NOOP("Scale", "Altered"), QT_TRANSLATE_NOOP("Scale", "%1 altered")},
     {QT_TRANSLATE_NOOP("Scale", "Lydian dominant"), QT_TRANSLATE_NOOP("Scale", "%1 lydian dominant")},
     {QT_TRANSLATE_NOOP("Scale", "Bebop dominant"), QT_TRANSLATE_NOOP("Scale", "%1 bebop dominant")},
     {QT_TRANSLATE_NOOP("Scale", "Bebop major"), QT_TRANSLATE_NOOP("Scale", "%1 bebop major")},
     {QT_TRANSLATE_NOOP("Scale", "Bebop minor"), QT_TRANSLATE_NOOP("Scale", "%1 bebop minor")},
     {QT_TRANSLATE_NOOP("Scale", "Major arpeggio"), QT_TRANSLATE_NOOP("Scale", "%1 major arpeggio")},
     {QT_TRANSLATE_NOOP("Scale", "Minor arpeggio"), QT_TRANSLATE_NOOP("Scale", "%1 minor arpeggio")},
     {QT_TRANSLATE_NOOP("Scale", "Dominant seventh arpeggio"),
      QT_TRANSLATE_NOOP("Scale", "%1 dominant seventh arpeggio")},
     {QT_TRANSLATE_NOOP("Scale", "Diminished seventh arpeggio"),
      QT_TRANSLATE_NOOP("Scale", "%1 diminished seventh arpeggio")},
     {QT_TRANSLATE_NOOP("Scale", "Half-diminished arpeggio"),
      QT_TRANSLATE_NOOP("Scale", "%1 half-diminished arpeggio")},
     {QT_TRANSLATE_NOOP("Scale", "Augmented arpeggio"),
      QT_TRANSLATE_NOOP("Scale", "%1 augmented arpeggio")}}};

constexpr std::array<const char*, scaleRangeCount> ranges{QT_TRANSLATE_NOOP("Scale", "One octave"),
                                                          QT_TRANSLATE_NOOP("Scale", "Two octaves"),
                                                          QT_TRANSLATE_NOOP("Scale", "The whole range")};
constexpr std::array<const char*, scaleRangeCount> rangesInside{
    QT_TRANSLATE_NOOP("Scale", "one octave"), QT_TRANSLATE_NOOP("Scale", "two octaves"),
    QT_TRANSLATE_NOOP("Scale", "the whole range")};
constexpr std::array<const char*, scalePatternCount> patterns{
    QT_TRANSLATE_NOOP("Scale", "In order"), QT_TRANSLATE_NOOP("Scale", "In thirds"),
    QT_TRANSLATE_NOOP("Scale", "In fourths"), QT_TRANSLATE_NOOP("Scale", "In turns of three"),
    QT_TRANSLATE_NOOP("Scale", "In turns of four")};
constexpr std::array<const char*, scalePatternCount> patternsInside{
    QT_TRANSLATE_NOOP("Scale", "%1"), QT_TRANSLATE_NOOP("Scale", "%1 in thirds"),
    QT_TRANSLATE_NOOP("Scale", "%1 in fourths"), QT_TRANSLATE_NOOP("Scale", "%1 in turns of three"),
    QT_TRANSLATE_NOOP("Scale", "%1 in turns of four")};
constexpr std::array<const char*, keyOrderCount> orders{
    QT_TRANSLATE_NOOP("Scale", "By fourths"), QT_TRANSLATE_NOOP("Scale", "By fifths"),
    QT_TRANSLATE_NOOP("Scale", "By semitones"), QT_TRANSLATE_NOOP("Scale", "Drawn by lot")};

// As instruments() names them.
constexpr const char* instrumentWords[] = {QT_TRANSLATE_NOOP("Scale", "piccolo"),
                                           QT_TRANSLATE_NOOP("Scale", "flute"),
                                           QT_TRANSLATE_NOOP("Scale", "oboe"),
                                           QT_TRANSLATE_NOOP("Scale", "English horn"),
                                           QT_TRANSLATE_NOOP("Scale", "clarinet in E flat"),
                                           QT_TRANSLATE_NOOP("Scale", "clarinet in B flat"),
                                           QT_TRANSLATE_NOOP("Scale", "clarinet in A"),
                                           QT_TRANSLATE_NOOP("Scale", "bass clarinet"),
                                           QT_TRANSLATE_NOOP("Scale", "bassoon"),
                                           QT_TRANSLATE_NOOP("Scale", "soprano saxophone"),
                                           QT_TRANSLATE_NOOP("Scale", "alto saxophone"),
                                           QT_TRANSLATE_NOOP("Scale", "tenor saxophone"),
                                           QT_TRANSLATE_NOOP("Scale", "baritone saxophone"),
                                           QT_TRANSLATE_NOOP("Scale", "trumpet in B flat"),
                                           QT_TRANSLATE_NOOP("Scale", "trumpet in C"),
                                           QT_TRANSLATE_NOOP("Scale", "cornet"),
                                           QT_TRANSLATE_NOOP("Scale", "flugelhorn"),
                                           QT_TRANSLATE_NOOP("Scale", "horn in F"),
                                           QT_TRANSLATE_NOOP("Scale", "trombone"),
                                           QT_TRANSLATE_NOOP("Scale", "euphonium"),
                                           QT_TRANSLATE_NOOP("Scale", "euphonium in treble clef"),
                                           QT_TRANSLATE_NOOP("Scale", "tuba")};
static_assert(std::size(instrumentWords) == 22);

template <typename List, typename Value>
QString word(const List& list, Value value) {
    return Words::tr(list.at(static_cast<std::size_t>(value)));
}

/// A choice for each value, named as core names it.
template <typename Value, typename Text>
QVariantList choicesOf(std::size_t count, const Text& text) {
    QVariantList list;
    for (std::size_t place = 0; place < count; ++place) {
        const auto value = static_cast<Value>(place);
        list << choice(wordOf(nameOf(value)), text(value));
    }
    return list;
}

QString turnText(int notes, bool above) {
    if (notes == 1)
        return above ? Words::tr("it goes one note over the last tonic and comes back")
                     : Words::tr("it goes one note under the last tonic and comes back");
    const char* const text =
        above ? QT_TRANSLATE_NOOP("Scale", "it goes %1 notes over the last tonic and comes back")
              : QT_TRANSLATE_NOOP("Scale", "it goes %1 notes under the last tonic and comes back");
    return Words::tr(text).arg(Formatter::countWord(notes));
}

} // namespace

QString wordOf(std::string_view name) {
    return QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
}

QString keyName(Tonic tonic) {
    return Words::tr(
        keys.at(static_cast<std::size_t>(tonic.step - 'A')).at(static_cast<std::size_t>(tonic.alter + 1)));
}

Tonic withoutDouble(WrittenPitch pitch) { return {pitch.step, static_cast<std::int8_t>(pitch.alter % 2)}; }

QString noteName(WrittenPitch pitch) {
    const QString doubled = QString::fromUtf8(pitch.alter < -1 ? "𝄫" : pitch.alter > 1 ? "𝄪" : "");
    return keyName(withoutDouble(pitch)) + doubled + QString::number(pitch.octave);
}

QString scaleName(Tonic tonic, ScaleKind kind) {
    return Words::tr(kinds.at(static_cast<std::size_t>(kind)).inKey).arg(keyName(tonic));
}

QString kindName(ScaleKind kind) { return Words::tr(kinds.at(static_cast<std::size_t>(kind)).name); }
QString rangeName(ScaleRange range) { return word(ranges, range); }
QString patternName(ScalePattern pattern) { return word(patterns, pattern); }
QString instrumentName(std::string_view name) { return Words::tr(std::string(name).c_str()); }

QString subdivisionOf(std::int32_t notesPerBeat) {
    return Formatter::subdivision(BeatUnit::quarter, notesPerBeat);
}

QString scaleTitle(const Scale& scale) {
    const QString name = word(patternsInside, scale.pattern).arg(scaleName(scale.tonic, scale.kind));
    return Words::tr("%1, %2, %3", "a scale, its range, its subdivision")
        .arg(name, word(rangesInside, scale.range), subdivisionOf(scale.notesPerBeat));
}

QString endingText(const ScaleEnding& ending) {
    QStringList parts;
    if (ending.topTwice) parts << Words::tr("the top note is played twice");
    if (ending.turn != 0) parts << turnText(std::abs(ending.turn) / 2, ending.turn < 0);
    if (ending.tonicTwice) parts << Words::tr("the last tonic is played twice");
    if (parts.isEmpty()) return {};
    return Words::tr("To end on a beat, %1.").arg(parts.join(Words::tr(", ")));
}

QString signatureText(std::optional<int> fifths) {
    if (!fifths) return Words::tr("no key signature: its accidentals stand at the notes");
    if (*fifths == 0) return Words::tr("no sharps or flats");
    const int count = std::abs(*fifths);
    if (*fifths < 0) return count == 1 ? Words::tr("1 flat") : Words::tr("%n flats", nullptr, count);
    return count == 1 ? Words::tr("1 sharp") : Words::tr("%n sharps", nullptr, count);
}

QVariantList scaleKindChoices() { return choicesOf<ScaleKind>(scaleKindCount, kindName); }
QVariantList rangeChoices() { return choicesOf<ScaleRange>(scaleRangeCount, rangeName); }
QVariantList patternChoices() { return choicesOf<ScalePattern>(scalePatternCount, patternName); }

QVariantList instrumentChoices() {
    QVariantList list;
    for (const Instrument& instrument : instruments())
        list << choice(wordOf(instrument.name), instrumentName(instrument.name));
    return list;
}

QVariantList keyOrderChoices() {
    return choicesOf<KeyOrder>(keyOrderCount, [](KeyOrder order) { return word(orders, order); });
}

} // namespace piolo::models
