// SPDX-License-Identifier: GPL-3.0-or-later
#include "score_text.h"

#include "score/pick/excerpt.h"

using namespace piolo;
using namespace piolo::test;

namespace {

const std::string four = signature(1, "4", "4");
const std::string whole = note(4);

std::string barline(const std::string& inside) { return "<barline>" + inside + "</barline>"; }

/// The fault of bars 1 to 3 with `second` as the second; number 0 if there is none.
Fault inMiddle(const std::string& second) {
    const auto made = score::excerpt(readWell(scoreOf(barsOf({four + whole, second, whole}))), 0, {0, 2});
    return made ? Fault{} : made.fault();
}

/// True if this stretch of three bars becomes an excerpt.
bool isMade(const std::vector<std::string>& bars, score::Stretch stretch) {
    return score::excerpt(readWell(scoreOf(barsOf(bars))), 0, stretch).ok();
}

} // namespace

TEST_CASE("a repeat, an ending or a jump inside the bars is refused with its bar") {
    const std::string forward = "<repeat direction=\"forward\"/>";
    const std::string backward = "<repeat direction=\"backward\"/>";
    CHECK(inMiddle(whole) == Fault{});
    for (const std::string& second : {barline(forward) + whole, whole + barline(backward)})
        CHECK(inMiddle(second) == Fault{FaultNumber::barsGoRound, {}, {"2", "repeat"}});
    CHECK(inMiddle(barline("<ending number=\"1\" type=\"start\"/>") + whole) ==
          Fault{FaultNumber::barsGoRound, {}, {"2", "ending"}});
    for (const std::string& jump :
         {std::string("<sound dacapo=\"yes\"/>"), std::string("<sound dalsegno=\"a\"/>"),
          std::string("<direction><direction-type><words>D.S. al Fine</words></direction-type></direction>"),
          std::string("<direction><direction-type><coda/></direction-type></direction>")})
        CHECK(inMiddle(whole + jump) == Fault{FaultNumber::barsGoRound, {}, {"2", "jump"}});
}

TEST_CASE("a repeat around the bars picked does not matter") {
    const std::vector<std::string> bars{four + whole, barline("<repeat direction=\"forward\"/>") + whole,
                                        whole + barline("<repeat direction=\"backward\"/>"), whole};
    CHECK(isMade(bars, {1, 2}));
    CHECK(isMade(bars, {0, 0}));
    CHECK(isMade(bars, {3, 3}));
    CHECK(!isMade(bars, {0, 1}));
    CHECK(!isMade(bars, {2, 3}));
}

TEST_CASE("a change of meter or tempo inside the bars is refused with its bar") {
    CHECK(inMiddle(signature(1, "3", "4") + note(3)) == Fault{FaultNumber::barsChange, {}, {"2", "meter"}});
    CHECK(inMiddle("<sound tempo=\"90\"/>" + whole) == Fault{FaultNumber::barsChange, {}, {"2", "tempo"}});
    const std::vector<std::string> bars{four + "<sound tempo=\"90\"/>" + whole,
                                        "<sound tempo=\"80\"/>" + note(2) + "<sound tempo=\"70\"/>" +
                                            note(2)};
    CHECK(isMade(bars, {0, 0}));
    CHECK(!isMade(bars, {0, 1}));
    CHECK(!isMade(bars, {1, 1}));
}

TEST_CASE("repeating the same tempo is not a change, in any beat") {
    CHECK(
        isMade({four + "<sound tempo=\"90\"/>" + whole,
                "<direction><direction-type><metronome><beat-unit>half</beat-unit><per-minute>45</per-minute>"
                "</metronome></direction-type></direction>" +
                    whole},
               {0, 1}));
}

TEST_CASE("a bar that is not filled is whole, one that is too full is none") {
    CHECK(isMade({four + whole, note(2), whole}, {0, 2}));
    CHECK(inMiddle(note(5)) == Fault{FaultNumber::barNotWhole, {}, {"2", "5/4", "4/4"}});
}

TEST_CASE("a short bar that does not count is a pick-up at the beginning, and refused inside") {
    auto xml = scoreOf("<measure number=\"1\">" + four + whole +
                       "</measure><measure number=\"X1\" implicit=\"yes\">" + note(1) +
                       "</measure><measure number=\"2\">" + whole + "</measure>");
    const auto read = readWell(xml);
    CHECK(score::excerpt(read, 0, {0, 2}).fault().number == FaultNumber::barNotWhole);
    const auto made = score::excerpt(read, 0, {1, 2});
    REQUIRE(made);
    CHECK(made->music.pickup == Fraction{1, 4});
    CHECK(made->music.firstBar == 2);
}

TEST_CASE("neither a pick-up alone nor a thousand bars make a passage") {
    CHECK(score::excerpt(readWell(scoreOf(barsOf({four + note(1), whole}))), 0, {0, 0}).fault().number ==
          FaultNumber::noWholeBar);
    std::vector<std::string> bars(1000, whole);
    bars[0] = four + whole;
    CHECK(isMade(bars, {0, 998}));
    CHECK(score::excerpt(readWell(scoreOf(barsOf(bars))), 0, {0, 999}).fault().number ==
          FaultNumber::noWholeBar);
}

TEST_CASE("a meter that no beat fills is refused with its bar") {
    for (const std::string& time : {signature(4, "5", "16") + note(5), signature(8, "3", "32") + note(3),
                                    signature(1, "40", "4") + note(40)}) {
        const auto made = score::excerpt(readWell(scoreOf(barsOf({time}))), 0, {0, 0});
        REQUIRE(!made);
        CHECK(made.fault().number == FaultNumber::meterNotCounted);
        CHECK(made.fault().arguments.at(0) == "1");
    }
}
