// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/kept_picture.h"

#include "../files/scratch_folder.h"
#include "core/passage/picture.h"
#include "files/whole_file.h"
#include "test_sheet.h"

#include <doctest/doctest.h>

#include <unistd.h>

using namespace piolo;
using namespace piolo::pictures;

namespace fs = std::filesystem;

namespace {

PictureFile picture(int staves = 8) {
    return {"page.png", test::encoded(test::sheet({300, 400}, staves), "png"), PictureKind::png};
}

} // namespace

TEST_CASE("a picture is kept byte for byte, once, under a name made of what it holds") {
    const test::ScratchFolder scratch;
    const auto name = keepPicture(scratch.path(), picture());
    REQUIRE(name);
    CHECK(isPictureName(*name));
    CHECK(name->ends_with(".png"));
    const std::string path = picturePath(scratch.path(), *name);
    CHECK(files::wholeFile(path).value() == picture().bytes);
    const auto written = fs::last_write_time(path);
    CHECK(keepPicture(scratch.path(), picture()).value() == *name);
    CHECK(fs::last_write_time(path) == written);
    CHECK(keepPicture(scratch.path(), picture(3)).value() != *name);
    CHECK(std::distance(fs::directory_iterator(scratch / "pictures"), {}) == 2);
}

TEST_CASE("a picture's name is the beginning of its SHA-256, as in the Secure Hash Standard FIPS 180-4") {
    const test::ScratchFolder scratch;
    // The SHA-256 of "abc": FIPS 180-2, appendix B.1.
    CHECK(keepPicture(scratch.path(), {"", "abc", PictureKind::jpeg}).value() ==
          "ba7816bf8f01cfea414140de5dae2223.jpg");
}

TEST_CASE("a saved picture that was damaged is replaced when it is added again") {
    const test::ScratchFolder scratch;
    const std::string path = picturePath(scratch.path(), keepPicture(scratch.path(), picture()).value());
    fs::resize_file(path, 100);
    REQUIRE(keepPicture(scratch.path(), picture()));
    CHECK(files::wholeFile(path).value() == picture().bytes);
}

TEST_CASE("no name leads out of the folder's pictures") {
    for (const char* name :
         {"", "..", "../journal/x.png", "/etc/passwd", "0123456789abcdef0123456789abcde/.png",
          "0123456789abcdef0123456789abcdef.pdf", "0123456789ABCDEF0123456789abcdef.png"}) {
        CAPTURE(name);
        CHECK(picturePath("folder", name).empty());
    }
    CHECK(picturePath("folder", "0123456789abcdef0123456789abcdef.png") ==
          "folder/pictures/0123456789abcdef0123456789abcdef.png");
}

TEST_CASE("if a picture cannot be created or written, there is one fault and nothing is left behind") {
    const test::ScratchFolder scratch;
    test::write(scratch / "pictures", "a file in the folder's place");
    CHECK(keepPicture(scratch.path(), picture()).fault().number == FaultNumber::cannotMakeFolder);
    fs::remove(scratch / "pictures");
    fs::create_directory(scratch / "pictures");
    const std::string name = keepPicture(scratch.path(), picture()).value();
    fs::remove(scratch / "pictures/" + name);
    fs::create_directories(scratch / "pictures/" + name + "/in the way");
    CHECK(keepPicture(scratch.path(), picture()).fault().number == FaultNumber::cannotWrite);
    CHECK(std::distance(fs::directory_iterator(scratch / "pictures"), {}) == 1);
    if (::geteuid() == 0) return; // root may write everywhere
    fs::permissions(scratch / "pictures", fs::perms::owner_read | fs::perms::owner_exec);
    CHECK(keepPicture(scratch.path(), picture(3)).fault().number == FaultNumber::cannotWrite);
    fs::permissions(scratch / "pictures", fs::perms::owner_all);
}
