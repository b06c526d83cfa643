// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/utf8.h"

#include <doctest/doctest.h>

using namespace piolo;

TEST_CASE("UTF-8 is checked by its definition") {
    // Source: RFC 3629, sections 3 and 4 (the table of well-formed byte sequences).
    for (const char* good : {"", "a", "\xC2\x80", "\xDF\xBF", "\xE0\xA0\x80", "\xED\x9F\xBF", "\xEF\xBF\xBF",
                             "\xF0\x90\x80\x80", "\xF4\x8F\xBF\xBF"})
        CHECK(isUtf8(good));
    for (const char* bad : {"\x80", "\xBF", "\xC0\x80", "\xC1\xBF", "\xC2", "\xC2\x7F", "\xE0\x9F\xBF",
                            "\xE2\x82", "\xED\xA0\x80", "\xF0\x8F\xBF\xBF", "\xF4\x90\x80\x80",
                            "\xF5\x80\x80\x80", "\xFF", "a\xF0\x90\x80"})
        CHECK_FALSE(isUtf8(bad));
}

TEST_CASE("invalid UTF-8 is located at the first byte of its character") {
    CHECK(firstNotUtf8("\xC3\xA9t\xC3\xA9\xE9") == 5);
    CHECK(firstNotUtf8("a\xF0\x90\x80") == 1);
    CHECK(firstNotUtf8("\xC3\xA9t\xC3\xA9") == std::string_view::npos);
}
