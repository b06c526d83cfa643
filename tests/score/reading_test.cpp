// SPDX-License-Identifier: GPL-3.0-or-later
#include "score_text.h"

#include "score/read/score_file.h"

using namespace piolo;
using namespace piolo::test;

namespace {

const std::string fourFour = signature(4, "4", "4");

score::Bar barOf(const std::string& content) {
    return readWell(scoreOf(barsOf({content}))).parts.at(0).bars.at(0);
}

} // namespace

TEST_CASE("the sample march is read as it is written") {
    const auto reading = score::readScoreFile(PIOLO_SOURCE_DIR "/samples/ferrywake.musicxml");
    REQUIRE(reading.faults.empty());
    const auto& score = reading.score;
    CHECK(score.title == "Ferrywake");
    CHECK(score.composer.find("band") != std::string::npos);
    REQUIRE(score.parts.size() == 1);
    const auto& part = score.parts[0];
    CHECK(part.name == "Alto Saxophone");
    REQUIRE(part.bars.size() == 13);
    CHECK(part.bars[0].implicit);
    CHECK(part.bars[0].length == Fraction{1, 4});
    CHECK(part.bars[0].fifths == 2);
    CHECK(part.bars[0].notes.at(0).sounding == 65); // D5 on an alto saxophone sounds as F4
    CHECK(part.bars[1].notes.at(0).articulation.accent);
    CHECK(part.bars[3].notes.at(1).onset == Fraction{1, 12});
    CHECK(part.bars[7].notes.at(1).onset == Fraction{1, 20});
    CHECK(part.bars[4].notes.at(0).tiedAfter);
    CHECK(part.bars[4].notes.at(1).tiedBefore);
    for (std::size_t bar = 1; bar < part.bars.size(); ++bar) CHECK(part.bars[bar].length == Fraction{1, 1});
}

TEST_CASE("the notes of a chord begin together, and a backup begins another voice") {
    const auto bar =
        barOf(fourFour + note(8, pitch('C', 5), "<voice>1</voice>") + "<note><chord/>" + pitch('E', 5) +
              "<duration>8</duration><voice>1</voice></note>" + note(8, "<rest/>", "<voice>1</voice>") +
              "<backup><duration>12</duration></backup>" + note(4, pitch('A', 4), "<voice>2</voice>") +
              "<forward><duration>4</duration></forward>" +
              note(4, pitch('B', 4), "<voice>2</voice><staff>2</staff>"));
    REQUIRE(bar.notes.size() == 5);
    CHECK(bar.notes[1].chord);
    CHECK(bar.notes[1].onset == Fraction{0, 1});
    CHECK(bar.notes[2].onset == Fraction{1, 2});
    CHECK(!bar.notes[2].written);
    CHECK(bar.notes[3].onset == Fraction{1, 4});
    CHECK(bar.notes[3].voice == 1);
    CHECK(bar.notes[4].onset == Fraction{3, 4});
    CHECK(bar.notes[4].staff == 2);
    CHECK(bar.length == Fraction{1, 1});
}

TEST_CASE("grace notes take no time; cue notes take time and are left out") {
    const auto bar = barOf(fourFour + "<note><grace/>" + pitch('D', 5) + "</note>" + "<note><cue/>" +
                           pitch('D', 5) + "<duration>4</duration></note>" + note(12));
    REQUIRE(bar.notes.size() == 2);
    CHECK(bar.notes[0].grace);
    CHECK(bar.notes[0].length.isZero());
    CHECK(bar.notes[1].onset == Fraction{1, 4});
}

TEST_CASE("divisions may change from bar to bar and need not be integers") {
    const auto read = readWell(scoreOf(barsOf(
        {fourFour + note(16), "<attributes><divisions>0.5</divisions></attributes>" + note(1) + note(1)})));
    CHECK(read.parts[0].bars[0].length == Fraction{1, 1});
    CHECK(read.parts[0].bars[1].notes.at(1).onset == Fraction{1, 2});
}

TEST_CASE("a meter may be written as a sum; without one, or with two side by side, it is not counted") {
    CHECK(barOf(signature(2, "3+2", "8") + note(5)).time == score::TimeSignature{5, 8, {3, 2}, true});
    CHECK(barOf(signature(2, "3+2", "8") + note(5)).time.text() == "3+2/8");
    CHECK(!barOf("<attributes><divisions>1</divisions><time><senza-misura/></time></attributes>" + note(5))
               .time.counted);
    CHECK(!barOf("<attributes><divisions>2</divisions><time><beats>3</beats><beat-type>8</"
                 "beat-type><beats>2</beats>"
                 "<beat-type>4</beat-type></time></attributes>" +
                 note(7))
               .time.counted);
}

TEST_CASE("a tempo is found in words, and one without a number has none") {
    const auto mark = [](const std::string& perMinute) {
        return readWell(
                   scoreOf(barsOf(
                       {fourFour +
                        "<direction><direction-type><metronome><beat-unit>half</beat-unit><per-minute>" +
                        perMinute + "</per-minute></metronome></direction-type></direction>" + note(16)})))
            .tempi.at(0);
    };
    CHECK(mark("c. 108").perMinute == 108'000);
    CHECK(mark("c. 108").text == "c. 108");
    CHECK(mark("108-112").perMinute == 108'000);
    CHECK(mark("72,5").perMinute == 72'500);
    CHECK(!mark("lively").perMinute);
}

TEST_CASE("the title is that of the work, or else of the movement") {
    const std::string bars = barsOf({fourFour + note(16)});
    std::string xml = scoreOf(bars);
    const auto at = xml.find("<part-list>");
    xml.insert(at, "<movement-title> Low Water </movement-title>");
    CHECK(readWell(xml).title == "Low Water");
    xml.insert(at, "<work><work-title>Osier &amp; Alder</work-title></work>");
    CHECK(readWell(xml).title == "Osier & Alder");
}

TEST_CASE("UTF-16, ISO-8859-1 and a byte order mark are read") {
    std::string xml = scoreOf(barsOf({fourFour + note(16)}));
    xml.insert(xml.find("<part-list>"), "<movement-title>Caf\xC3\xA9</movement-title>");
    CHECK(readWell("\xEF\xBB\xBF" + xml).title == "Caf\xC3\xA9");
    std::string wide = "\xFF\xFE";
    std::string latin = "<?xml version=\"1.0\" encoding=\"ISO-8859-1\"?>";
    for (std::size_t i = 0; i < xml.size(); ++i) {
        const bool two = xml[i] == '\xC3';
        const char c = two ? '\xE9' : xml[i];
        if (two) ++i;
        wide += c;
        wide += '\0';
        if (i > 20) latin += c;
    }
    CHECK(readWell(wide).title == "Caf\xC3\xA9");
    CHECK(readWell(latin).title == "Caf\xC3\xA9");
}

TEST_CASE("a score file is recognised by its name, in any case") {
    for (const char* name : {"a.musicxml", "a.xml", "a.mxl", "dir/A.MXL"}) CHECK(score::isScoreFile(name));
    for (const char* name : {".mxl", "a.mid", "mxl", "a.xml.txt"}) CHECK(!score::isScoreFile(name));
}
