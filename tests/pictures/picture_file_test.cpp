// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/picture_file.h"

#include "../files/scratch_folder.h"
#include "pictures/picture_child.h"
#include "pictures/picture_limits.h"
#include "test_sheet.h"

#include <doctest/doctest.h>

#include <cstring>
#include <sys/stat.h>

using namespace piolo;
using namespace piolo::pictures;

namespace {

const GiveUp never = [] { return false; };

/// The number of the fault with which a file with these bytes is refused; 0 if it is accepted.
int refusal(const std::string& bytes) {
    const test::ScratchFolder scratch;
    test::write(scratch / "page", bytes);
    const auto read = readPictureFile(scratch / "page");
    if (!read) return static_cast<int>(read.fault().number);
    const auto checked = checkPicture(*read, never);
    if (checked) return 0;
    CHECK(checked.fault().location.file == (scratch / "page"));
    return static_cast<int>(checked.fault().number);
}

/// A PNG header with another size and the matching CRC (PNG, ISO/IEC 15948: 5.3, annex D).
std::string withSize(std::string png, std::uint32_t width, std::uint32_t height) {
    const auto put = [&](std::size_t at, std::uint32_t value) {
        for (int byte = 0; byte < 4; ++byte)
            png[at + static_cast<std::size_t>(byte)] = static_cast<char>(value >> (24 - 8 * byte));
    };
    put(16, width);
    put(20, height);
    std::uint32_t crc = 0xFFFFFFFF;
    for (std::size_t at = 12; at < 29; ++at) {
        crc ^= static_cast<unsigned char>(png[at]);
        for (int bit = 0; bit < 8; ++bit) crc = (crc >> 1) ^ ((crc & 1) != 0 ? 0xEDB88320 : 0);
    }
    put(29, ~crc);
    return png;
}

constexpr int notOne = static_cast<int>(FaultNumber::notAPicture);
constexpr int broken = static_cast<int>(FaultNumber::brokenPicture);
constexpr int large = static_cast<int>(FaultNumber::pictureTooLarge);

} // namespace

TEST_CASE("PNG and JPEG are recognised by their first bytes, whatever the file name") {
    const test::ScratchFolder scratch;
    test::write(scratch / "page.pdf", test::encoded(test::sheet({300, 400}), "png"));
    const auto png = readPictureFile(scratch / "page.pdf");
    REQUIRE(png);
    CHECK(png->kind == PictureKind::png);
    CHECK(checkPicture(*png, never));
    test::write(scratch / "page.png", test::encoded(test::sheet({300, 400}), "jpeg"));
    const auto jpeg = readPictureFile(scratch / "page.png");
    REQUIRE(jpeg);
    CHECK(jpeg->kind == PictureKind::jpeg);
    CHECK(checkPicture(*jpeg, never));
    CHECK(jpeg->bytes == test::encoded(test::sheet({300, 400}), "jpeg"));
}

TEST_CASE("a file that is not a picture is refused as such") {
    CHECK(refusal("") == notOne);
    CHECK(refusal("GIF89a") == notOne);
    CHECK(refusal("<svg xmlns='http://www.w3.org/2000/svg'/>") == notOne);
    CHECK(refusal(std::string(100'000, '\0')) == notOne);
}

TEST_CASE("a picture that was cut short anywhere is refused as broken") {
    for (const char* format : {"png", "jpeg"}) {
        const std::string whole = test::encoded(test::sheet({300, 400}), format);
        REQUIRE(refusal(whole) == 0);
        for (std::size_t part = 1; part < 10; ++part) {
            CAPTURE(format);
            CAPTURE(part);
            CHECK(refusal(whole.substr(0, whole.size() * part / 10)) == broken);
        }
    }
}

TEST_CASE("a picture of more pixels than the limit is refused by its header, before it is decoded") {
    const std::string png = test::encoded(test::sheet({300, 400}), "png");
    CHECK(refusal(withSize(png, 300, 400)) == 0);
    CHECK(refusal(withSize(png, 400'000, 400'000)) == large);
    CHECK(refusal(withSize(png, 8000, 5001)) == large);
    CHECK(refusal(withSize(png, 0, 400)) != 0);
    QImage deep(6000, 4000, QImage::Format_RGBA64); // 24 million pixels, but 192 MB
    deep.fill(Qt::white);
    CHECK(refusal(test::encoded(deep, "png")) == large);
}

TEST_CASE("a file over the limit, a folder, a pipe and a file that is not there are one fault each") {
    const test::ScratchFolder scratch;
    const std::string path = scratch / "long.png";
    test::write(path, test::encoded(test::sheet({30, 40}), "png"));
    std::filesystem::resize_file(path, mostBytes + 1);
    CHECK(readPictureFile(path).fault().number == FaultNumber::pictureTooLarge);
    std::filesystem::resize_file(path, mostBytes);
    CHECK(readPictureFile(path));
    REQUIRE(::mkfifo((scratch / "pipe").c_str(), 0600) == 0);
    for (const std::string& other : {scratch.path(), scratch / "pipe", scratch / "none.png"}) {
        CAPTURE(other);
        const auto read = readPictureFile(other);
        REQUIRE_FALSE(read);
        CHECK(read.fault().number == FaultNumber::cannotRead);
        CHECK(read.fault().location.file == other);
    }
}

TEST_CASE("what is no picture is not shown, whatever its name") {
    const test::ScratchFolder scratch;
    const QImage image = test::sheet({200, 100}, 1);
    test::write(scratch / "a.png", test::encoded(image, "png"));
    test::write(scratch / "b.png", test::encoded(image, "jpg"));
    test::write(scratch / "svg.png", "<svg xmlns='http://www.w3.org/2000/svg'/>");
    test::write(scratch / "pdf.png", test::pdf(1));
    test::write(scratch / "empty.png", "");
    std::filesystem::create_symlink("a.png", scratch / "link.png");
    std::filesystem::create_directory(scratch / "folder.png");
    REQUIRE(::mkfifo((scratch / "pipe.png").c_str(), 0600) == 0);
    CHECK(isPictureFile(scratch / "a.png"));
    CHECK(isPictureFile(scratch / "b.png"));
    for (const char* name :
         {"svg.png", "pdf.png", "empty.png", "link.png", "folder.png", "pipe.png", "none.png"}) {
        CAPTURE(name);
        CHECK_FALSE(isPictureFile(scratch / name));
    }
}
