// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/content_sum.h"

#include <doctest/doctest.h>
#include <random>
#include <string>

using piolo::files::ContentSum;
using piolo::files::contentSum;

namespace {

std::string randomBytes(std::size_t size) {
    std::mt19937 random(static_cast<unsigned>(size) + 1);
    std::string bytes(size, '\0');
    for (char& byte : bytes) byte = static_cast<char>(random());
    return bytes;
}

} // namespace

TEST_CASE("the sum is the same however the bytes are cut") {
    for (std::size_t size = 0; size < 200; ++size) {
        const std::string bytes = randomBytes(size);
        for (std::size_t piece = 1; piece < 70; piece += 3) {
            ContentSum sum;
            for (std::size_t at = 0; at < size; at += piece)
                sum.add(std::string_view(bytes).substr(at, piece));
            REQUIRE(sum.value() == contentSum(bytes));
        }
    }
}

TEST_CASE("a flipped bit, a zero more and a zero less change the sum") {
    for (std::size_t size = 1; size < 150; ++size) {
        std::string bytes = randomBytes(size);
        const auto whole = contentSum(bytes);
        CHECK(contentSum(bytes + '\0') != whole);
        for (std::size_t bit = 0; bit < 8 * size; ++bit) {
            bytes[bit / 8] =
                static_cast<char>(static_cast<unsigned char>(bytes[bit / 8]) ^ (1U << (bit % 8)));
            REQUIRE(contentSum(bytes) != whole);
            bytes[bit / 8] =
                static_cast<char>(static_cast<unsigned char>(bytes[bit / 8]) ^ (1U << (bit % 8)));
        }
        CHECK(contentSum(std::string(size, '\0')) != contentSum(std::string(size + 1, '\0')));
    }
}
