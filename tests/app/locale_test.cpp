// SPDX-License-Identifier: GPL-3.0-or-later
// The command in another system language. Qt takes its locale from these variables, whether or not the C
// library has that locale.
#include "command.h"
#include "practice.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::test;

namespace {

Around under(const std::string& language) {
    return {"clean\ntempo 72.5\nmiss\ntempo 72,5\n",
            {{"LANG", language}, {"LC_ALL", language}, {"LANGUAGE", language}},
            {},
            {}};
}

std::string practice(const Scratch& scratch) {
    scratch.put("folder/journal/a-2026.jsonl",
                lines({defined(1, Id{1, 1}, "Letter C"), run(2, Id{1, 1}, 72, Mark::clean),
                       fact(3, TempoFact{Id{1, 1}, Tempo::clampedThousandths(72'500), Reason::hand})}));
    return scratch.path("folder");
}

} // namespace

TEST_CASE("the command says and writes the same in every language of the system") {
    const Scratch scratch;
    const std::string folder = practice(scratch);
    const auto written = [&](const std::string& language, const Args& verb, const std::string& ending) {
        const std::string out = scratch.path(language + ending);
        Args words = verb;
        words.insert(words.end(), {"--out", out});
        const Ended ended = runPiolo(words, under(language));
        CAPTURE(ended.err);
        CHECK(ended.code == 0);
        return bytesOf(out);
    };
    for (const char* ending : {".csv", ".svg"}) {
        const Args curve{"curve", "Letter C", "--folder", folder};
        const std::string plain = written("C", curve, ending);
        REQUIRE_FALSE(plain.empty());
        CHECK(written("de_DE.UTF-8", curve, ending) == plain);
    }
    const Args sheet{"sheet", "Letter C", "--folder", folder};
    const std::string plain = written("C", sheet, "-sheet.svg");
    CHECK(plain.find("72.5") != std::string::npos);
    CHECK(written("de_DE.UTF-8", sheet, "-sheet.svg") == plain);

    const Args ladder{"ladder", "--start", "72", "--target",     "96", "--drop",
                      "4",      "--climb", "2",  "--clean-runs", "5"};
    const Ended english = runPiolo(ladder, under("C"));
    const Ended german = runPiolo(ladder, under("de_DE.UTF-8"));
    CHECK(english.code == 1); // at the comma
    CHECK(german.code == english.code);
    CHECK(german.out == english.out);
    CHECK(german.err == english.err);
}
