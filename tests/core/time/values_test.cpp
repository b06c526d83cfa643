// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/id.h"
#include "core/time/fraction.h"
#include "core/time/tempo.h"

#include <doctest/doctest.h>

using namespace piolo;

TEST_CASE("a tempo is read to the thousandth and written as the shortest decimal") {
    struct Row {
        const char* text;
        std::int32_t thousandths;
        const char* shown;
    };
    for (const Row& row :
         {Row{"137", 137'000, "137"}, Row{"72.5", 72'500, "72.5"}, Row{"72.50", 72'500, "72.5"},
          Row{"72.125", 72'125, "72.125"}, Row{"10", 10'000, "10"}, Row{"400.000", 400'000, "400"},
          Row{"60.005", 60'005, "60.005"}, Row{"084", 84'000, "84"}}) {
        CAPTURE(row.text);
        const auto tempo = Tempo::parse(row.text);
        REQUIRE(tempo.ok());
        CHECK(tempo->thousandths() == row.thousandths);
        CHECK(tempo->text() == row.shown);
    }
}

TEST_CASE("a tempo out of range, with a fourth decimal or with anything but digits is refused and named") {
    for (const char* text :
         {"", " ", "9.999", "400.001", "72.1234", "72.5000", "72.", ".5", "-72", "+72", "72,5", " 72", "72 ",
          "7e1", "0x40", "nan", "99999999999999999999", "1.2.3", "٧٢"}) {
        CAPTURE(text);
        const auto tempo = Tempo::parse(text);
        REQUIRE_FALSE(tempo.ok());
        CHECK(tempo.fault() == Fault{FaultNumber::badTempo, {}, {text}});
    }
}

TEST_CASE("every tempo in the range is read back as written") {
    for (std::int32_t thousandths = Tempo::least; thousandths <= Tempo::most; thousandths += 7) {
        const Tempo tempo = *Tempo::fromThousandths(thousandths);
        REQUIRE(*Tempo::parse(tempo.text()) == tempo);
    }
}

TEST_CASE("no tempo is out of range") {
    CHECK_FALSE(Tempo::fromThousandths(9'999));
    CHECK_FALSE(Tempo::fromThousandths(400'001));
    CHECK(Tempo::clampedThousandths(-1).thousandths() == 10'000);
    CHECK(Tempo::clampedThousandths(std::int64_t{1} << 60).thousandths() == 400'000);
    CHECK(Tempo::bpm(500).thousandths() == 400'000);
}

TEST_CASE("a fraction keeps its written form and knows its lowest terms") {
    const auto fraction = Fraction::parse("6/8");
    REQUIRE(fraction);
    CHECK(fraction->text() == "6/8");
    CHECK(fraction->reduced() == Fraction{3, 4});
    CHECK(Fraction{0, 8}.reduced() == Fraction{0, 1});
    CHECK(Fraction{0, 8}.isZero());
    CHECK(Fraction::parse("999/999"));
    for (const char* text : {"", "3", "/8", "3/", "3/0", "1000/8", "-3/8", "3/8/2", "3 /8", "0003/8"}) {
        CAPTURE(text);
        CHECK_FALSE(Fraction::parse(text));
    }
}

TEST_CASE("a ratio counts units in a length") {
    CHECK(ratio({6, 8}, {3, 8}) == Fraction{2, 1});
    CHECK(ratio({1, 8}, {1, 4}) == Fraction{1, 2});
    CHECK(ratio({0, 1}, {1, 4}) == Fraction{0, 1});
    CHECK(ratio({999, 1}, {1, 999}) == Fraction{998'001, 1});
}

TEST_CASE("an id is 32 hexadecimal digits, read in either case, written in lower case") {
    const Id id{0x0123456789abcdefULL, 0xfedcba9876543210ULL};
    CHECK(id.text() == "0123456789abcdeffedcba9876543210");
    CHECK(Id::parse("0123456789ABCDEFfedcba9876543210") == id);
    CHECK(Id{}.isNone());
    CHECK(Id{}.text() == "00000000000000000000000000000000");
    for (const char* text : {"", "0123456789abcdeffedcba987654321", "0123456789abcdeffedcba98765432100",
                             "0123456789abcdeffedcba987654321g", "0x23456789abcdeffedcba9876543210"}) {
        CAPTURE(text);
        CHECK_FALSE(Id::parse(text));
    }
}
