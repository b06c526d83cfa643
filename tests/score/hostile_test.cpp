// SPDX-License-Identifier: GPL-3.0-or-later
#include "score_text.h"

#include "score/read/limits.h"

using namespace piolo;
using namespace piolo::test;

namespace {

const std::string four = signature(1, "4", "4");

Fault onlyFault(const std::string& xml) {
    const auto faults = faultsIn(xml);
    REQUIRE(faults.size() == 1);
    return faults.front();
}

Fault onlyFaultOfBar(const std::string& content) { return onlyFault(scoreOf(barsOf({content}))); }

/// The element named by the only fault of a bar.
std::string wrongElement(const std::string& content) {
    const Fault fault = onlyFaultOfBar(content);
    CHECK(fault.number == FaultNumber::scoreValue);
    CHECK(fault.location == FaultLocation{"a.musicxml", 5});
    return fault.arguments.at(0);
}

} // namespace

TEST_CASE("a file that is not a score is reported by what it is") {
    CHECK(onlyFault("").number == FaultNumber::brokenXml);
    CHECK(onlyFault("no XML at all").number == FaultNumber::brokenXml);
    CHECK(onlyFault("<html/>").number == FaultNumber::notAScore);
    CHECK(onlyFault("<score-timewise/>").number == FaultNumber::scoreByBars);
    CHECK(onlyFault("<score-partwise/>") ==
          Fault{FaultNumber::scoreElement, {"a.musicxml", 0}, {"part", "score-partwise"}});
}

TEST_CASE("a score cut short anywhere is one fault") {
    const std::string whole = scoreOf(barsOf({four + note(4)}));
    for (std::size_t size = 30; size < whole.size() - 1; size += 11)
        CHECK(onlyFault(whole.substr(0, size)).number == FaultNumber::brokenXml);
}

TEST_CASE("impossible numbers are reported with their element and line") {
    CHECK(wrongElement("<attributes><divisions>0</divisions></attributes>" + four) == "divisions");
    CHECK(wrongElement("<attributes><divisions>1000001</divisions></attributes>" + four) == "divisions");
    CHECK(wrongElement(four + note(-4)) == "duration");
    CHECK(wrongElement(four + "<note><rest/><duration>many</duration></note>") == "duration");
    CHECK(wrongElement(four + "<note><rest/><duration>99999999999999999999</duration></note>") == "duration");
    CHECK(wrongElement(four + note(4) + "<backup><duration>5</duration></backup>") == "backup");
    CHECK(wrongElement(four + note(4, pitch('H', 4))) == "step");
    CHECK(wrongElement(four + note(4, pitch('C', 10))) == "octave");
    CHECK(wrongElement(four + note(4, pitch('C', 4, 4))) == "alter");
    CHECK(wrongElement(four + note(4, pitch('B', 9))) == "pitch"); // it would be MIDI note 131
    CHECK(wrongElement(signature(1, "0", "4")) == "beats");
    CHECK(wrongElement(signature(1, "100", "4")) == "beats");
    CHECK(wrongElement(signature(1, "3+", "4")) == "beats");
    CHECK(wrongElement(signature(1, "3", "5")) == "beat-type");
    CHECK(wrongElement(four + "<sound tempo=\"-3\"/>") == "sound");
    CHECK(wrongElement("<attributes><transpose><chromatic>61</chromatic></transpose></attributes>") ==
          "chromatic");
    CHECK(wrongElement(four +
                       "<direction><direction-type><metronome><beat-unit>crotchet</beat-unit></metronome>"
                       "</direction-type></direction>") == "beat-unit");
}

TEST_CASE("a missing required element is reported by name") {
    CHECK(onlyFaultOfBar(note(4)).arguments == std::vector<std::string>{"divisions", "note"});
    CHECK(onlyFaultOfBar(four + "<note><rest/></note>").arguments ==
          std::vector<std::string>{"duration", "note"});
    CHECK(onlyFaultOfBar(four + "<note><duration>4</duration></note>").arguments ==
          std::vector<std::string>{"pitch", "note"});
    CHECK(onlyFault(scoreOf("")).arguments == std::vector<std::string>{"measure", "part"});
}

TEST_CASE("all faults are reported, each with its line, up to a hundred") {
    const auto faults = faultsIn(scoreOf(barsOf({four + note(-1), note(4), note(4, pitch('X', 4))})));
    REQUIRE(faults.size() == 2);
    CHECK(faults[0].location.line == 5);
    CHECK(faults[1].location.line == 7);
    CHECK(faultsIn(scoreOf(barsOf({four + repeated(300, note(-1))}))).size() == score::mostFaults);
}

TEST_CASE("entities defined in the file are refused and never expanded") {
    const std::string score = scoreOf(barsOf({four + note(4)}));
    const std::string body = score.substr(score.find('\n') + 1);
    const std::string bomb =
        "<!DOCTYPE score-partwise [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;\">]>\n";
    CHECK(onlyFault(bomb + body).number == FaultNumber::ownEntities);
    CHECK(onlyFault("<!DOCTYPE score-partwise [<!ENTITY a SYSTEM \"file:///etc/passwd\">]>" + body).number ==
          FaultNumber::ownEntities);
    CHECK(faultsIn("<!DOCTYPE score-partwise PUBLIC \"-//Recordare//DTD MusicXML 4.0 Partwise//EN\" "
                   "\"http://www.musicxml.org/dtds/partwise.dtd\">" +
                   body)
              .empty());
}

TEST_CASE("bytes not in the declared encoding are reported with their line") {
    const std::string bad = scoreOf(barsOf({four + note(4), "<!-- \xC3\x28 -->" + note(4)}));
    CHECK(onlyFault(bad) == Fault{FaultNumber::scoreEncoding, {"a.musicxml", 6}, {}});
    for (const char* bytes : {"\x80", "\xC0\xAF", "\xED\xA0\x80", "\xF4\x90\x80\x80", "\xE2\x82", "\xFF"})
        CHECK(onlyFault("<score-partwise>" + std::string(bytes)).number == FaultNumber::scoreEncoding);
    CHECK(onlyFault("<?xml version=\"1.0\" encoding=\"EBCDIC\"?><score-partwise/>").number ==
          FaultNumber::scoreEncoding);
}

TEST_CASE("elements lie sixty-four deep and no deeper") {
    const auto nested = [](int depth) {
        // score-partwise, part, measure and note are four levels.
        const std::string inside = repeated(depth - 4, "<a>") + repeated(depth - 4, "</a>");
        return scoreOf(barsOf({four + "<note><rest/><duration>4</duration>" + inside + "</note>"}));
    };
    CHECK(faultsIn(nested(score::deepestElement)).empty());
    CHECK(onlyFault(nested(score::deepestElement + 1)).number == FaultNumber::scoreTooLarge);
    CHECK(onlyFault(nested(500'000)).number == FaultNumber::scoreTooLarge);
    CHECK(onlyFault(repeated(1'900'000, "<a>")).number == FaultNumber::brokenXml);
}

TEST_CASE("a score holds so much markup, so many bytes, notes and bars, and no more") {
    const auto rests = [](std::size_t count) {
        return scoreOf("<measure number=\"1\">" + signature(1, "4", "4") +
                       repeated(static_cast<int>(count), "<note><rest/><duration>1</duration></note>") +
                       "</measure>");
    };
    CHECK(faultsIn(rests(score::mostNotes)).empty());
    CHECK(onlyFault(rests(score::mostNotes + 1)).arguments.at(0) == "200000 notes");
    const auto bars = [](std::size_t count) {
        return scoreOf(repeated(static_cast<int>(count), "<measure/>"));
    };
    CHECK(faultsIn(bars(score::mostBars)).empty());
    CHECK(onlyFault(bars(score::mostBars + 1)).arguments.at(0) == "100000 bars");
    CHECK(onlyFault("<a>" + std::string(score::mostMarkup - 2, '=') + "</a>").number ==
          FaultNumber::notAScore);
    CHECK(onlyFault("<a>" + std::string(score::mostMarkup - 1, '=') + "</a>").number ==
          FaultNumber::scoreTooLarge);
    const std::string end = "<a></a>";
    CHECK(onlyFault(std::string(score::largestScore - end.size(), ' ') + end).number ==
          FaultNumber::notAScore);
    CHECK(onlyFault(std::string(score::largestScore - end.size() + 1, ' ') + end).number ==
          FaultNumber::scoreTooLarge);
}
