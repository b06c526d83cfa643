// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/clean_text.h"

#include "core/base/utf8.h"

#include <doctest/doctest.h>

#include <utility>

using namespace piolo;

TEST_CASE("what is not text is left out, and text stays as it is") {
    using namespace std::string_literals;
    // Noncharacters and controls by the Unicode Standard, chapter 23; U+FFFD and private use are characters.
    const std::pair<std::string, std::string> table[]{
        {"", ""},
        {"River Suite, II", "River Suite, II"},
        {"♭ 𝄞 東京 שלום é", "♭ 𝄞 東京 שלום é"},
        {"tab\tand\nnewline", "tab\tand\nnewline"},
        {"a\x01\x1F\x7F\0b"s, "ab"},
        {"a\u0080\u009F\u00A0b", "a\u00A0b"},
        {"a\uFDCF\uFDD0\uFDEF\uFDF0b", "a\uFDCF\uFDF0b"},
        {"a\uFFFD\uFFFE\uFFFFb", "a\uFFFDb"},
        {"a\U0001FFFD\U0001FFFE\U0001FFFF\U0010FFFFb", "a\U0001FFFDb"},
        {"\uE000\U000F0000", "\uE000\U000F0000"},
        {"\u202Eturned", "\u202Eturned"},
    };
    for (const auto& [text, clean] : table) {
        REQUIRE(isUtf8(text));
        CHECK(cleanText(text) == clean);
    }
}
