// SPDX-License-Identifier: GPL-3.0-or-later
// Files that would keep a drawing program for minutes or take gigabytes: each ends with a picture or one
// fault, in the child's time, and the program's own memory stays as it is.
#include "pictures/pdf_pages.h"
#include "pictures/picture_limits.h"

#include <doctest/doctest.h>

#include <QByteArray>

#include <chrono>
#include <fstream>
#include <string>
#include <sys/stat.h>
#include <unistd.h>

using namespace piolo;
using namespace piolo::pictures;

namespace {

const GiveUp never = [] { return false; };

/// A page of 500 by 700 points with this content; `more` has objects from number 6 on, named by `resources`.
/// Source of the syntax: ISO 32000-1 (from memory), read leniently, without a cross-reference table.
std::string pdf(const std::string& content, const std::string& resources = {}, const std::string& more = {}) {
    const QByteArray packed =
        qCompress(QByteArray::fromRawData(content.data(), static_cast<qsizetype>(content.size()))).mid(4);
    return "%PDF-1.4\n1 0 obj<</Type/Catalog/Pages 2 0 R>>endobj\n"
           "2 0 obj<</Type/Pages/Kids[3 0 R]/Count 1>>endobj\n"
           "3 0 obj<</Type/Page/Parent 2 0 R/MediaBox[0 0 500 700]/Contents 4 0 R/Resources<<" +
           resources + ">>>>endobj\n4 0 obj<</Filter/FlateDecode/Length " + std::to_string(packed.size()) +
           ">>stream\n" + packed.toStdString() + "\nendstream endobj\n" + more + "trailer<</Root 1 0 R>>\n";
}

std::string repeated(const std::string& text, int times) {
    std::string all;
    for (; times > 0; --times) all += text;
    return all;
}

/// The peak of this process in bytes (proc(5)).
long peakBytes() {
    std::ifstream status("/proc/self/status");
    for (std::string word; status >> word;)
        if (word == "VmHWM:") {
            long kilobytes = 0;
            status >> kilobytes;
            return kilobytes * 1024;
        }
    return 0;
}

/// Draws the page, or decodes it, and checks what that may cost.
void bear(const PictureFile& file) {
    CAPTURE(file.path);
    const long before = peakBytes();
    const auto began = std::chrono::steady_clock::now();
    const auto made = file.kind == PictureKind::pdf ? workInChild(file, "page", 1, never)
                                                    : workInChild(file, "jpeg", 1, never);
    const auto took = std::chrono::steady_clock::now() - began;
    MESSAGE(file.path << ": " << (made ? "drawn" : std::to_string(static_cast<int>(made.fault().number)))
                      << " after " << std::chrono::duration_cast<std::chrono::milliseconds>(took).count()
                      << " ms");
    // A hang bound: the child's time, and what a busy machine needs to start and stop it.
    CHECK(took < std::chrono::milliseconds(mostChildMillis) + std::chrono::seconds(20));
    if (!made) {
        const FaultNumber number = made.fault().number;
        CHECK((number == FaultNumber::pageTooSlow || number == FaultNumber::pictureTooHeavy ||
               number == FaultNumber::brokenPicture || number == FaultNumber::pictureTooLarge));
    }
    CHECK(peakBytes() - before < 64L * 1024 * 1024);
}

} // namespace

TEST_CASE("PDFs that take minutes or gigabytes to draw end in the child's time and memory") {
    bear(
        {"dashes", pdf("[0.0001 0.0001] 0 d 1 w " + repeated("0 0 m 500 700 l S ", 2000)), PictureKind::pdf});
    bear({"a path of twenty million points", pdf("0 0 m " + repeated("9 9 l 400 600 l ", 10'000'000) + "S"),
          PictureKind::pdf});
    bear({"a pattern",
          pdf("/Pattern cs /P scn 0 0 500 700 re f", "/Pattern<</P 6 0 R>>",
              "6 0 obj<</PatternType 1/PaintType 1/TilingType 1/BBox[0 0 9 9]/XStep 0.001/YStep 0.001"
              "/Resources<<>>/Length 12>>stream\n0 0 9 9 re f \nendstream endobj\n"),
          PictureKind::pdf});
    bear({"soft masks",
          pdf(repeated("/G gs 0 0 500 700 re f ", 5000), "/ExtGState<</G 6 0 R>>",
              "6 0 obj<</SMask<</S/Luminosity/G 7 0 R>>>>endobj\n"
              "7 0 obj<</Subtype/Form/BBox[0 0 500 700]/Group<</S/Transparency/CS/DeviceRGB>>"
              "/Length 16>>stream\n0 0 500 700 re f\nendstream endobj\n"),
          PictureKind::pdf});
    bear({"ten gigabytes of white",
          pdf("500 0 0 700 0 0 cm /I Do", "/XObject<</I 6 0 R>>",
              "6 0 obj<</Subtype/Image/Width 100000/Height 100000/ColorSpace/DeviceGray/BitsPerComponent 8"
              "/Filter/FlateDecode/Length 9>>stream\nx\x9c\x03\x00\x00\x00\x00\x01\nendstream endobj\n"),
          PictureKind::pdf});
}

TEST_CASE("a JPEG of markers alone ends in the child's time") {
    std::string bytes = "\xff\xd8";
    bytes += repeated(std::string("\xff\xfe\x00\x02", 4), 10'000'000);
    bytes += std::string("\xff\xc0\x00\x0b\x08\x00\x40\x00\x40\x01\x01\x11\x00", 13) + "\xff\xda\xff\xd9";
    bear({"markers", std::move(bytes), PictureKind::jpeg});
}

TEST_CASE("a PDF opens no file that it names, no link and no network") {
    // A pipe that somebody opens for reading lets a writer in (fifo(7)): nobody does.
    const std::string pipe = "/tmp/piolo-picture-" + std::to_string(::getpid());
    REQUIRE(::mkfifo(pipe.c_str(), 0600) == 0);
    const std::string name = "(" + pipe + ")";
    const PictureFile file{
        "naming.pdf",
        pdf("500 0 0 700 0 0 cm /I Do", "/XObject<</I 6 0 R>>",
            "6 0 obj<</Subtype/Image/Width 9/Height 9/ColorSpace/DeviceGray/BitsPerComponent 8/F" + name +
                "/Length 0>>stream\n\nendstream endobj\n"
                "1 0 obj<</Type/Catalog/Pages 2 0 R/OpenAction<</S/Launch/F" +
                name + ">>/AA<</O<</S/URI/URI(file://" + pipe + ")>>>>>>endobj\n"),
        PictureKind::pdf};
    const auto drawn = workInChild(file, "page", 1, never);
    if (!drawn) CHECK(drawn.fault().number == FaultNumber::brokenPicture);
    ::unlink(pipe.c_str());
}

TEST_CASE("a child that is given up ends at once, and one that is not there is a fault") {
    int asked = 0;
    const PictureFile slow{"slow.pdf", pdf(repeated("[0.0001 0.0001] 0 d 0 0 m 500 700 l S ", 2000)),
                           PictureKind::pdf};
    const auto made = workInChild(slow, "page", 1, [&asked] { return ++asked > 3; });
    REQUIRE_FALSE(made);
    CHECK(made.fault().number == FaultNumber::pageTooSlow);
    CHECK(workInChild(slow, "nothing", 1, never).fault().number == FaultNumber::brokenPicture);
}
