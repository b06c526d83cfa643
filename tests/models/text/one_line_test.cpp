// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/one_line.h"

#include <doctest/doctest.h>

#include <utility>

using piolo::text::nameShown;
using piolo::text::onOneLine;

TEST_CASE("what would break a line or is no character is replaced") {
    CHECK(onOneLine("River Suite, II") == QStringLiteral("River Suite, II"));
    CHECK(onOneLine("a\nb\tc\x1B[2J") == QStringLiteral("a\uFFFDb\uFFFDc\uFFFD[2J"));
    CHECK(onOneLine("a\u2028b\u0085c\uFFFEd\uFDD0") == QStringLiteral("a\uFFFDb\uFFFDc\uFFFDd\uFFFD"));
}

TEST_CASE("a name that turns the direction is isolated, and cannot end its isolate") {
    // Unicode Standard Annex 9: FSI is U+2068, PDI is U+2069; a PDI closes what was opened since its FSI.
    const std::pair<const char*, QString> table[]{
        {"Letter C, bars 41–44", QStringLiteral("Letter C, bars 41–44")},
        {"♭ 東京", QStringLiteral("♭ 東京")},
        {"שלום", QStringLiteral("\u2068שלום\u2069")},
        {"\u202Eturned", QStringLiteral("\u2068\u202Eturned\u2069")},
        {"a\u2069\u2069b", QStringLiteral("\u2068ab\u2069")},
        {"\u2066open", QStringLiteral("\u2068open\u2069")},
    };
    for (const auto& [name, shown] : table) CHECK(nameShown(name) == shown);
}
