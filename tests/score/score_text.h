// SPDX-License-Identifier: GPL-3.0-or-later
// Small scores as text.
#pragma once

#include "score/read/score_reader.h"

#include <doctest/doctest.h>
#include <string>
#include <vector>

namespace piolo::test {

/// A score with one part and the given bars.
inline std::string scoreOf(const std::string& bars) {
    return "<?xml version=\"1.0\"?>\n<score-partwise version=\"4.0\">\n"
           "<part-list><score-part id=\"P1\"><part-name>Flute</part-name></score-part></part-list>\n"
           "<part id=\"P1\">\n" +
           bars + "</part>\n</score-partwise>\n";
}

/// Bars are numbered from 1; each is on a line of its own, the first on line 5.
inline std::string barsOf(const std::vector<std::string>& contents) {
    std::string bars;
    for (std::size_t i = 0; i < contents.size(); ++i)
        bars += "<measure number=\"" + std::to_string(i + 1) + "\">" + contents[i] + "</measure>\n";
    return bars;
}

/// Divisions per quarter, and a time signature.
inline std::string signature(int divisions, const std::string& beats, const std::string& type) {
    return "<attributes><divisions>" + std::to_string(divisions) + "</divisions><time><beats>" + beats +
           "</beats><beat-type>" + type + "</beat-type></time></attributes>";
}

inline std::string pitch(char step, int octave, int alter = 0) {
    return std::string("<pitch><step>") + step + "</step><alter>" + std::to_string(alter) +
           "</alter><octave>" + std::to_string(octave) + "</octave></pitch>";
}

/// `more` goes after the duration.
inline std::string note(int duration, const std::string& what = pitch('C', 5), const std::string& more = {}) {
    return "<note>" + what + "<duration>" + std::to_string(duration) + "</duration>" + more + "</note>";
}

inline std::string repeated(int times, const std::string& text) {
    std::string all;
    for (int i = 0; i < times; ++i) all += text;
    return all;
}

inline score::Score readWell(const std::string& xml) {
    auto reading = score::readMusicXml(xml, "a.musicxml");
    for (const Fault& fault : reading.faults) {
        CAPTURE(fault.location.line);
        CAPTURE(static_cast<int>(fault.number));
        FAIL_CHECK("a good score has a fault");
    }
    return std::move(reading.score);
}

inline std::vector<Fault> faultsIn(const std::string& xml) {
    return score::readMusicXml(xml, "a.musicxml").faults;
}

} // namespace piolo::test
