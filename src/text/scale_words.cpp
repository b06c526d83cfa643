// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/scale_words.h"

#include "text/formatter.h"

#include <QtGlobal>

#include <algorithm>
#include <array>
#include <cstdlib>

namespace piolo::text {

namespace {

// Languages name notes differently: a B flat is a B in German and Si bemolle in Italian.
constexpr std::array<std::array<const char*, 3>, 7> keys{
    {{QT_TRID_NOOP("note.a-flat"), QT_TRID_NOOP("note.a"), QT_TRID_NOOP("note.a-sharp")},
     {QT_TRID_NOOP("note.b-flat"), QT_TRID_NOOP("note.b"), QT_TRID_NOOP("note.b-sharp")},
     {QT_TRID_NOOP("note.c-flat"), QT_TRID_NOOP("note.c"), QT_TRID_NOOP("note.c-sharp")},
     {QT_TRID_NOOP("note.d-flat"), QT_TRID_NOOP("note.d"), QT_TRID_NOOP("note.d-sharp")},
     {QT_TRID_NOOP("note.e-flat"), QT_TRID_NOOP("note.e"), QT_TRID_NOOP("note.e-sharp")},
     {QT_TRID_NOOP("note.f-flat"), QT_TRID_NOOP("note.f"), QT_TRID_NOOP("note.f-sharp")},
     {QT_TRID_NOOP("note.g-flat"), QT_TRID_NOOP("note.g"), QT_TRID_NOOP("note.g-sharp")}}};

struct KindWords {
    const char* name;  ///< by itself
    const char* inKey; ///< with the key
};
// In the order of ScaleKind.
constexpr std::array<KindWords, scaleKindCount> kinds{
    {{QT_TRID_NOOP("scale.kind.major"), QT_TRID_NOOP("scale.kind.major.in")},
     {QT_TRID_NOOP("scale.kind.natural-minor"), QT_TRID_NOOP("scale.kind.natural-minor.in")},
     {QT_TRID_NOOP("scale.kind.harmonic-minor"), QT_TRID_NOOP("scale.kind.harmonic-minor.in")},
     {QT_TRID_NOOP("scale.kind.melodic-minor"), QT_TRID_NOOP("scale.kind.melodic-minor.in")},
     {QT_TRID_NOOP("scale.kind.jazz-minor"), QT_TRID_NOOP("scale.kind.jazz-minor.in")},
     {QT_TRID_NOOP("scale.kind.dorian"), QT_TRID_NOOP("scale.kind.dorian.in")},
     {QT_TRID_NOOP("scale.kind.phrygian"), QT_TRID_NOOP("scale.kind.phrygian.in")},
     {QT_TRID_NOOP("scale.kind.lydian"), QT_TRID_NOOP("scale.kind.lydian.in")},
     {QT_TRID_NOOP("scale.kind.mixolydian"), QT_TRID_NOOP("scale.kind.mixolydian.in")},
     {QT_TRID_NOOP("scale.kind.locrian"), QT_TRID_NOOP("scale.kind.locrian.in")},
     {QT_TRID_NOOP("scale.kind.chromatic"), QT_TRID_NOOP("scale.kind.chromatic.in")},
     {QT_TRID_NOOP("scale.kind.whole-tone"), QT_TRID_NOOP("scale.kind.whole-tone.in")},
     {QT_TRID_NOOP("scale.kind.diminished-whole"), QT_TRID_NOOP("scale.kind.diminished-whole.in")},
     {QT_TRID_NOOP("scale.kind.diminished-half"), QT_TRID_NOOP("scale.kind.diminished-half.in")},
     {QT_TRID_NOOP("scale.kind.major-pentatonic"), QT_TRID_NOOP("scale.kind.major-pentatonic.in")},
     {QT_TRID_NOOP("scale.kind.minor-pentatonic"), QT_TRID_NOOP("scale.kind.minor-pentatonic.in")},
     {QT_TRID_NOOP("scale.kind.blues"), QT_TRID_NOOP("scale.kind.blues.in")},
     {QT_TRID_NOOP("scale.kind.altered"), QT_TRID_NOOP("scale.kind.altered.in")},
     {QT_TRID_NOOP("scale.kind.lydian-dominant"), QT_TRID_NOOP("scale.kind.lydian-dominant.in")},
     {QT_TRID_NOOP("scale.kind.bebop-dominant"), QT_TRID_NOOP("scale.kind.bebop-dominant.in")},
     {QT_TRID_NOOP("scale.kind.bebop-major"), QT_TRID_NOOP("scale.kind.bebop-major.in")},
     {QT_TRID_NOOP("scale.kind.bebop-minor"), QT_TRID_NOOP("scale.kind.bebop-minor.in")},
     {QT_TRID_NOOP("scale.kind.major-arpeggio"), QT_TRID_NOOP("scale.kind.major-arpeggio.in")},
     {QT_TRID_NOOP("scale.kind.minor-arpeggio"), QT_TRID_NOOP("scale.kind.minor-arpeggio.in")},
     {QT_TRID_NOOP("scale.kind.dominant-seventh"), QT_TRID_NOOP("scale.kind.dominant-seventh.in")},
     {QT_TRID_NOOP("scale.kind.diminished-seventh"), QT_TRID_NOOP("scale.kind.diminished-seventh.in")},
     {QT_TRID_NOOP("scale.kind.half-diminished"), QT_TRID_NOOP("scale.kind.half-diminished.in")},
     {QT_TRID_NOOP("scale.kind.augmented"), QT_TRID_NOOP("scale.kind.augmented.in")}}};

constexpr std::array<const char*, scaleRangeCount> ranges{QT_TRID_NOOP("scale.range.one-octave"),
                                                          QT_TRID_NOOP("scale.range.two-octaves"),
                                                          QT_TRID_NOOP("scale.range.whole")};
constexpr std::array<const char*, scaleRangeCount> rangesInside{QT_TRID_NOOP("scale.range.one-octave.in"),
                                                                QT_TRID_NOOP("scale.range.two-octaves.in"),
                                                                QT_TRID_NOOP("scale.range.whole.in")};
constexpr std::array<const char*, scalePatternCount> patterns{
    QT_TRID_NOOP("scale.pattern.in-order"), QT_TRID_NOOP("scale.pattern.thirds"),
    QT_TRID_NOOP("scale.pattern.fourths"), QT_TRID_NOOP("scale.pattern.turns-of-three"),
    QT_TRID_NOOP("scale.pattern.turns-of-four")};
constexpr std::array<const char*, scalePatternCount> patternsInside{
    QT_TRID_NOOP("scale.pattern.in-order.in"), QT_TRID_NOOP("scale.pattern.thirds.in"),
    QT_TRID_NOOP("scale.pattern.fourths.in"), QT_TRID_NOOP("scale.pattern.turns-of-three.in"),
    QT_TRID_NOOP("scale.pattern.turns-of-four.in")};
constexpr std::array<const char*, keyOrderCount> orders{
    QT_TRID_NOOP("scale.order.fourths"), QT_TRID_NOOP("scale.order.fifths"),
    QT_TRID_NOOP("scale.order.semitones"), QT_TRID_NOOP("scale.order.random")};

struct InstrumentWords {
    std::string_view name; ///< as in instruments()
    const char* id;
};
constexpr std::array<InstrumentWords, 22> instrumentWords{
    {{"piccolo", QT_TRID_NOOP("instrument.piccolo")},
     {"flute", QT_TRID_NOOP("instrument.flute")},
     {"oboe", QT_TRID_NOOP("instrument.oboe")},
     {"English horn", QT_TRID_NOOP("instrument.english-horn")},
     {"clarinet in E flat", QT_TRID_NOOP("instrument.clarinet-e-flat")},
     {"clarinet in B flat", QT_TRID_NOOP("instrument.clarinet-b-flat")},
     {"clarinet in A", QT_TRID_NOOP("instrument.clarinet-a")},
     {"bass clarinet", QT_TRID_NOOP("instrument.bass-clarinet")},
     {"bassoon", QT_TRID_NOOP("instrument.bassoon")},
     {"soprano saxophone", QT_TRID_NOOP("instrument.soprano-saxophone")},
     {"alto saxophone", QT_TRID_NOOP("instrument.alto-saxophone")},
     {"tenor saxophone", QT_TRID_NOOP("instrument.tenor-saxophone")},
     {"baritone saxophone", QT_TRID_NOOP("instrument.baritone-saxophone")},
     {"trumpet in B flat", QT_TRID_NOOP("instrument.trumpet-b-flat")},
     {"trumpet in C", QT_TRID_NOOP("instrument.trumpet-c")},
     {"cornet", QT_TRID_NOOP("instrument.cornet")},
     {"flugelhorn", QT_TRID_NOOP("instrument.flugelhorn")},
     {"horn in F", QT_TRID_NOOP("instrument.horn-f")},
     {"trombone", QT_TRID_NOOP("instrument.trombone")},
     {"euphonium", QT_TRID_NOOP("instrument.euphonium")},
     {"euphonium in treble clef", QT_TRID_NOOP("instrument.euphonium-treble")},
     {"tuba", QT_TRID_NOOP("instrument.tuba")}}};

constexpr std::array<const char*, instrumentFamilyCount> families{
    QT_TRID_NOOP("instruments.flutes"),     QT_TRID_NOOP("instruments.double-reeds"),
    QT_TRID_NOOP("instruments.clarinets"),  QT_TRID_NOOP("instruments.saxophones"),
    QT_TRID_NOOP("instruments.high-brass"), QT_TRID_NOOP("instruments.low-brass")};

template <typename List, typename Value>
QString word(const List& list, Value value) {
    return qtTrId(list.at(static_cast<std::size_t>(value)));
}

QString turnText(int notes, bool above) {
    if (notes == 1) return above ? qtTrId("scale.ending.over-one") : qtTrId("scale.ending.under-one");
    const char* const text = above ? QT_TRID_NOOP("scale.ending.over") : QT_TRID_NOOP("scale.ending.under");
    return qtTrId(text).arg(Formatter::countWord(notes));
}

} // namespace

QString keyName(Tonic tonic) {
    return qtTrId(
        keys.at(static_cast<std::size_t>(tonic.step - 'A')).at(static_cast<std::size_t>(tonic.alter + 1)));
}

Tonic withoutDouble(WrittenPitch pitch) { return {pitch.step, static_cast<std::int8_t>(pitch.alter % 2)}; }

QString noteName(WrittenPitch pitch) {
    const QString doubled = QString::fromUtf8(pitch.alter < -1 ? "𝄫" : pitch.alter > 1 ? "𝄪" : "");
    return keyName(withoutDouble(pitch)) + doubled + QString::number(pitch.octave);
}

QString scaleName(Tonic tonic, ScaleKind kind) {
    return qtTrId(kinds.at(static_cast<std::size_t>(kind)).inKey).arg(keyName(tonic));
}

QString kindName(ScaleKind kind) { return qtTrId(kinds.at(static_cast<std::size_t>(kind)).name); }
QString rangeName(ScaleRange range) { return word(ranges, range); }
QString patternName(ScalePattern pattern) { return word(patterns, pattern); }
QString orderName(KeyOrder order) { return word(orders, order); }
QString familyName(InstrumentFamily family) { return word(families, family); }
QString instrumentName(std::string_view name) {
    const auto* const found = std::ranges::find(instrumentWords, name, &InstrumentWords::name);
    return found == instrumentWords.end()
               ? QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()))
               : qtTrId(found->id);
}

QString subdivisionOf(std::int32_t notesPerBeat) {
    return Formatter::subdivision(BeatUnit::quarter, notesPerBeat);
}

QString scaleTitle(const Scale& scale) {
    const QString name = word(patternsInside, scale.pattern).arg(scaleName(scale.tonic, scale.kind));
    return qtTrId("scale.title")
        .arg(name, word(rangesInside, scale.range), subdivisionOf(scale.notesPerBeat));
}

QString endingText(const ScaleEnding& ending) {
    QStringList parts;
    if (ending.topTwice) parts << qtTrId("scale.ending.top-twice");
    if (ending.turn != 0) parts << turnText(std::abs(ending.turn) / 2, ending.turn < 0);
    if (ending.tonicTwice) parts << qtTrId("scale.ending.tonic-twice");
    if (parts.isEmpty()) return {};
    return qtTrId("scale.ending.sentence").arg(parts.join(qtTrId("scale.ending.comma")));
}

QString signatureText(std::optional<int> fifths) {
    if (!fifths) return qtTrId("scale.signature.none");
    if (*fifths == 0) return qtTrId("scale.signature.empty");
    const int count = std::abs(*fifths);
    if (*fifths < 0) return qtTrId("scale.signature.flats", count);
    return qtTrId("scale.signature.sharps", count);
}

} // namespace piolo::text
