// SPDX-License-Identifier: GPL-3.0-or-later
// The staff compared with LilyPond 2.24 (Debian's package lilypond), which is independent of this program.
#include "plots/staff/staff_pitch.h"
#include "staff_passages.h"

#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

using namespace piolo;
using namespace piolo::plots;

namespace {

/// The signs on one of LilyPond's staves, as steps above the lowest line, from left to right.
struct Engraved {
    std::vector<int> signature;
    std::vector<int> accidentals;
};

struct Sign {
    QString name;
    double x = 0;
    double y = 0;
};

std::string listed(const std::vector<int>& positions) {
    std::string text;
    for (const int position : positions) text += std::to_string(position) + ' ';
    return text;
}

/// LilyPond's SVG uses staff spaces; the groups have the class names given in the input file below.
std::vector<Engraved> read(const QString& svg) {
    static const QRegularExpression group(QStringLiteral("<g class=\"(\\w+)\">"));
    static const QRegularExpression place(
        QStringLiteral("<g transform=\"translate\\(([-.0-9]+), ([-.0-9]+)\\)\">"));
    std::vector<double> lowest;
    std::vector<Sign> signs;
    auto groups = group.globalMatch(svg);
    while (groups.hasNext()) {
        const auto found = groups.next();
        const auto next = groups.hasNext() ? groups.peekNext().capturedStart() : svg.size();
        const QString inside = svg.mid(found.capturedEnd(), next - found.capturedEnd());
        if (found.captured(1) == QStringLiteral("staff")) {
            lowest.push_back(place.match(inside).captured(2).toDouble());
            continue;
        }
        if (inside.trimmed().startsWith(QStringLiteral("</g>"))) continue; // C major has no signs
        // A group ends before whatever comes after it.
        auto places = place.globalMatch(inside.left(inside.indexOf(QStringLiteral("</g>\n</g>"))));
        while (places.hasNext()) {
            const auto at = places.next();
            signs.push_back({found.captured(1), at.captured(1).toDouble(), at.captured(2).toDouble()});
        }
    }
    std::vector<Engraved> staves(lowest.size());
    std::stable_sort(signs.begin(), signs.end(), [](const Sign& a, const Sign& b) { return a.x < b.x; });
    for (const auto& [name, x, y] : signs) {
        std::size_t nearest = 0;
        for (std::size_t i = 1; i < lowest.size(); ++i)
            if (std::abs(lowest[i] - 2 - y) < std::abs(lowest[nearest] - 2 - y)) nearest = i;
        const int position = static_cast<int>(std::lround(2 * (lowest[nearest] - y)));
        (name == QStringLiteral("key") ? staves[nearest].signature : staves[nearest].accidentals)
            .push_back(position);
    }
    return staves;
}

QByteArray pitchName(WrittenPitch pitch) {
    QByteArray name(1, static_cast<char>(pitch.step - 'A' + 'a'));
    for (int i = 0; i < std::abs(pitch.alter); ++i) name += pitch.alter > 0 ? "is" : "es";
    for (int octave = pitch.octave; octave > 3; --octave) name += '\'';
    for (int octave = pitch.octave; octave < 3; ++octave) name += ',';
    return name;
}

QByteArray staffText(const StaffMusic& music) {
    constexpr const char* keys[] = {"ces", "ges", "des", "aes", "ees", "bes", "f",  "c",
                                    "g",   "d",   "a",   "e",   "b",   "fis", "cis"};
    QByteArray text = "\\new Staff { \\clef ";
    text += music.clef == Clef::treble ? "treble" : "bass";
    text += QByteArray(" \\key ") + keys[music.fifths + 7] + " \\major";
    for (const Note& note : music.notes) text += ' ' + pitchName(note.written) + '8';
    return text + " }\n";
}

std::vector<Engraved> engrave(const std::vector<StaffMusic>& staves) {
    const QTemporaryDir folder;
    QFile file(folder.filePath(QStringLiteral("a.ly")));
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write("\\version \"2.24.0\" \\pointAndClickOff\n"
               "\\paper { page-breaking = #ly:one-page-breaking system-system-spacing.basic-distance = #30\n"
               "  markup-system-spacing.basic-distance = #30 score-system-spacing.basic-distance = #30\n"
               "  line-width = 600\\mm paper-width = 640\\mm indent = 0 }\n"
               "\\layout { \\context { \\Staff extraNatural = ##f\n"
               "  \\override KeySignature.output-attributes = #'((class . \"key\"))\n"
               "  \\override Accidental.output-attributes = #'((class . \"accidental\"))\n"
               "  \\override StaffSymbol.output-attributes = #'((class . \"staff\")) } }\n");
    for (const StaffMusic& music : staves) file.write(staffText(music));
    file.close();
    QProcess lilypond;
    lilypond.setWorkingDirectory(folder.path());
    lilypond.start(QStringLiteral("lilypond"),
                   {QStringLiteral("-dbackend=svg"), QStringLiteral("-s"), QStringLiteral("a.ly")});
    REQUIRE(lilypond.waitForFinished(120'000));
    REQUIRE(lilypond.exitCode() == 0);
    QFile picture(folder.filePath(QStringLiteral("a.svg")));
    REQUIRE(picture.open(QIODevice::ReadOnly));
    return read(QString::fromUtf8(picture.readAll()));
}

/// Two bars of eighths near the staff; every fourth note has an accidental of its own.
StaffMusic twoBars(std::mt19937& random, Clef clef, int fifths) {
    StaffMusic music;
    music.clef = clef;
    music.fifths = static_cast<std::int8_t>(fifths);
    music.music.bars = 2;
    for (int i = 0; i < 16; ++i) {
        Note note;
        note.written = inKey((clef == Clef::treble ? 28 : 16) + static_cast<int>(random() % 6), fifths);
        if (random() % 4 == 0)
            note.written.alter = static_cast<std::int8_t>(static_cast<int>(random() % 5) - 2);
        note.onset = Fraction{i, 8}.reduced();
        note.length = {1, 8};
        music.notes.push_back(note);
    }
    return music;
}

std::vector<int> shownAccidentals(const StaffMusic& music) {
    const StaffRhythm rhythm = rhythmOf(music);
    const auto shown = accidentalsOf(music, rhythm);
    std::vector<int> positions;
    for (std::size_t i = 0; i < shown.size(); ++i)
        for (std::size_t k = 0; k < shown[i].size(); ++k)
            if (shown[i][k])
                positions.push_back(
                    staffPosition(music.notes[rhythm.events[i].notes[k]].written, music.clef));
    return positions;
}

} // namespace

TEST_CASE("signatures and accidentals are where LilyPond puts them, in every key and both clefs") {
    const unsigned seed = 20260419;
    CAPTURE(seed);
    std::mt19937 random(seed);
    std::vector<StaffMusic> staves;
    for (const Clef clef : {Clef::treble, Clef::bass})
        for (int fifths = -7; fifths <= 7; ++fifths) staves.push_back(twoBars(random, clef, fifths));
    const std::vector<Engraved> engraved = engrave(staves);
    REQUIRE(engraved.size() == staves.size());
    std::size_t accidentals = 0;
    for (std::size_t i = 0; i < staves.size(); ++i) {
        CAPTURE(int(staves[i].clef));
        CAPTURE(int(staves[i].fifths));
        CHECK(listed(engraved[i].signature) == listed(signaturePositions(staves[i].fifths, staves[i].clef)));
        CHECK(listed(engraved[i].accidentals) == listed(shownAccidentals(staves[i])));
        accidentals += engraved[i].accidentals.size();
    }
    CHECK(accidentals > 100);
}
