// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Piolo

TestCase {
    id: test
    name: "PassageLine"
    when: windowShown

    Component {
        id: maker

        PassageLine {
            passageId: "1"
            title: ""
            section: "a piece"
            pieceName: "River Suite"
            tempoText: "84"
            targetText: "96"
            subdivisionText: "sixteenths"
            standingText: ""
            spoken: ""
            share: 0.5
            streak: 0
            cleanRuns: 5
            secure: false
            removed: false
        }
    }

    function test_underItsPiecesHeadingANameDoesNotSayThePieceAgain_data() {
        return [
            {tag: "movement and bars", title: "River Suite, II: bars 41–44", own: "II: bars 41–44"},
            {tag: "bars", title: "River Suite: bars 9–16", own: "bars 9–16"},
            {tag: "the piece alone", title: "River Suite", own: "River Suite"},
            {tag: "another word", title: "River Suites, all", own: "River Suites, all"},
            {tag: "nothing left", title: "River Suite: ", own: "River Suite: "},
            {tag: "another piece", title: "Coda of River Suite: end", own: "Coda of River Suite: end"}
        ];
    }

    function test_underItsPiecesHeadingANameDoesNotSayThePieceAgain(row) {
        const line = createTemporaryObject(maker, test, {title: row.title});
        compare(line.ownTitle, row.own);
    }

    function test_whereNoHeadingStandsTheWholeNameIsSaid() {
        const line = createTemporaryObject(maker, test, {title: "River Suite: bars 9–16", section: ""});
        compare(line.ownTitle, "River Suite: bars 9–16");
    }
}
