// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/pdf_pages.h"

#include "pictures/picture_limits.h"
#include "test_sheet.h"

#include <doctest/doctest.h>

#include <random>

using namespace piolo;
using namespace piolo::pictures;

namespace {

const GiveUp never = [] { return false; };

PictureFile file(std::string bytes) { return {"suite.pdf", std::move(bytes), PictureKind::pdf}; }

QImage imageOf(const PictureFile& picture) {
    return QImage::fromData(QByteArray::fromStdString(picture.bytes), "png");
}

} // namespace

TEST_CASE("a PDF has as many pages as were written, and each is drawn") {
    const PictureFile pdf = file(test::pdf(3));
    CHECK(pageCount(pdf, never).value() == 3);
    const auto first = pageAsPicture(pdf, 1, never);
    const auto third = pageAsPicture(pdf, 3, never);
    REQUIRE(first);
    REQUIRE(third);
    CHECK(checkPicture(*first, never));
    CHECK(first->bytes != third->bytes);
    CHECK(pageAsPicture(pdf, 1, never)->bytes == first->bytes);
}

TEST_CASE("a page has the pixels for a large screen, its shape, and its ink where it was drawn") {
    const auto page = pageAsPicture(file(test::pdf(1)), 1, never);
    REQUIRE(page);
    const QImage image = imageOf(*page);
    CHECK(std::abs(image.width() - pageShortSide) <= 2);
    CHECK(std::abs(image.height() - pageShortSide * 297 / 210) <= 6); // A4 (ISO 216) is 210 by 297 mm
    CHECK(image.format() == QImage::Format_Grayscale8);
    CHECK(qGray(image.pixel(image.width() / 20, image.width() / 20)) < 10);
    CHECK(qGray(image.pixel(image.width() / 5, image.width() / 20)) > 245);
}

TEST_CASE("a page that does not exist is reported with the number of pages") {
    for (const int page : {0, -1, 3, 1'000'000}) {
        const auto drawn = pageAsPicture(file(test::pdf(2)), page, never);
        REQUIRE_FALSE(drawn);
        CHECK(drawn.fault() == Fault{FaultNumber::noSuchPage, {"suite.pdf"}, {std::to_string(page), "2"}});
    }
}

TEST_CASE("a page that is given up is reported as too slow") {
    std::string content;
    for (int line = 0; line < 20'000; ++line) content += "0 0 m 500 700 l S\n";
    const std::string bytes =
        "%PDF-1.4\n1 0 obj<</Type/Catalog/Pages 2 0 R>>endobj\n"
        "2 0 obj<</Type/Pages/Kids[3 0 R]/Count 1>>endobj\n"
        "3 0 obj<</Type/Page/Parent 2 0 R/MediaBox[0 0 500 700]/Contents 4 0 R>>endobj\n"
        "4 0 obj<</Length " +
        std::to_string(content.size()) + ">>stream\n" + content +
        "endstream endobj\ntrailer<</Root 1 0 R>>\n";
    REQUIRE(pageCount(file(bytes), never).value() == 1);
    int asked = 0;
    const auto drawn = pageAsPicture(file(bytes), 1, [&] { return ++asked > 1; });
    REQUIRE_FALSE(drawn);
    CHECK(drawn.fault().number == FaultNumber::pageTooSlow);
    CHECK(asked == 2);
}

TEST_CASE("a PDF with a password is reported as such") {
    // The dictionary of the standard security handler, with hashes that no empty password matches.
    const std::string zeros(64, '0');
    const std::string bytes = "%PDF-1.4\n1 0 obj<</Type/Catalog/Pages 2 0 R>>endobj\n"
                              "2 0 obj<</Type/Pages/Kids[]/Count 0>>endobj\n"
                              "5 0 obj<</Filter/Standard/V 1/R 2/P -4/O<" +
                              zeros + ">/U<" + zeros +
                              ">>>endobj\ntrailer<</Root 1 0 R/Encrypt 5 0 R/ID[<00><00>]>>\n";
    CHECK(pageCount(file(bytes), never).fault().number == FaultNumber::pdfLocked);
}

TEST_CASE("a damaged PDF gives pages or one fault, whatever byte is changed") {
    const std::string whole = test::pdf(1);
    std::mt19937 random(20260301);
    CHECK(pageCount(file(whole.substr(0, 40)), never).fault().number == FaultNumber::brokenPicture);
    int faults = 0;
    for (int turn = 0; turn < 60; ++turn) {
        std::string bytes = whole.substr(0, turn % 2 == 0 ? whole.size() : random() % whole.size());
        for (int change = 0; change < 8 && !bytes.empty(); ++change)
            bytes[random() % bytes.size()] = static_cast<char>(random());
        const auto drawn = pageAsPicture(file(bytes), 1, never);
        if (!drawn) ++faults;
        if (drawn) CHECK(checkPicture(*drawn, never));
    }
    CHECK(faults > 0);
}
