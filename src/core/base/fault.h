// SPDX-License-Identifier: GPL-3.0-or-later
// Numbered faults. A fault is data: its number, its location and the arguments for its sentence. The
// sentences are elsewhere (FaultText); docs/errors.md has a paragraph on each number.
#pragma once

#include <string>
#include <vector>

namespace piolo {

/// A number never changes its meaning and is never reused. 1xx: wrong use of the command (exit status 2); all
/// others: exit status 1.
enum class FaultNumber {
    // Wrong use of the command: the location is the option or argument.
    unknownVerb = 101,
    unknownOption = 102,
    missingOption = 103,
    missingValue = 104,
    badNumber = 105,
    badTempo = 106,
    badMeter = 107,
    badBeat = 108,
    beatDoesNotDivide = 109,
    badGroups = 110,
    badSubdivision = 111,
    badVoice = 112,
    badRange = 113,
    badOrder = 114,
    badChoice = 115,
    badFileKind = 116,
    noSuchPassage = 117,
    ambiguousPassage = 118,
    unexpectedWord = 119,
    badAccents = 120,
    badSwing = 121,
    swingNeedsPairs = 122,
    badBreath = 123,
    noBackbeat = 124,
    pagesNeedPdf = 125,
    badKey = 126,
    badPitch = 127,
    noSuchScale = 128,
    noSuchPart = 130,
    noSuchBar = 131,
    // Input: the content of a file or of standard input.
    badMark = 201,
    badMarkTempo = 202,
    badJson = 203,
    badFact = 204,
    badFactValue = 205,
    newerFormat = 206,
    unknownKind = 207,
    tornLine = 208,
    repeatedId = 209,
    notUtf8 = 210,
    lineTooLong = 211,
    badWav = 213,
    unknownPassage = 212,
    wrongSum = 214,
    datedAhead = 215,
    moreFaults = 216,
    seqTwice = 217,
    // The content of a passage file.
    notAPassageFile = 221,
    passageKeyMissing = 222,
    passageValue = 223,
    newerPassageFile = 224,
    idTwice = 225,
    pieceNotInFile = 226,
    passageFileTooLarge = 227,
    // The content of a score, and what cannot become a passage.
    notAScore = 241,
    scoreByBars = 242,
    brokenXml = 243,
    scoreValue = 244,
    scoreElement = 245,
    scoreTooLarge = 246,
    brokenArchive = 247,
    archivePath = 248,
    ownEntities = 249,
    scoreEncoding = 250,
    barsGoRound = 251,
    barsChange = 252,
    meterNotCounted = 253,
    barNotWhole = 254,
    noWholeBar = 255,
    // What cannot be done with a passage.
    cannotFeel = 261,
    noNotes = 265,
    notesOutside = 270,
    notesOverlap = 271,
    notesTooFine = 272,
    notesTransposed = 273,
    // Why a picture of music is refused.
    notAPicture = 281,
    brokenPicture = 282,
    pictureTooLarge = 283,
    pdfLocked = 284,
    noSuchPage = 285,
    pageTooSlow = 286,
    pictureTooHeavy = 287,
    // Files and folders.
    cannotRead = 301,
    cannotWrite = 302,
    cannotMakeFolder = 303,
    tooLarge = 304,
    folderInUse = 305,
    notAPracticeFolder = 306,
    diskFull = 307,
    noDisplay = 308,
    folderOpenElsewhere = 321,
    nothingToExport = 322,
    notSavedInTime = 323,
    folderGone = 324,
    notARegularFile = 325,
    notConfirmed = 326,
    noLocks = 327,
    noHome = 328,
    // Sound.
    noSoundDevice = 401, // 402 is retired
    soundNeedsRestart = 403,
    fellBehind = 404,
};

/// A file ("-" for standard input) or an option, and a line counted from 1 (0: none).
struct FaultLocation {
    std::string file;
    long line = 0;
    bool operator==(const FaultLocation&) const = default;
};

struct Fault {
    FaultNumber number{};
    FaultLocation location;
    std::vector<std::string> arguments;
    bool operator==(const Fault&) const = default;
};

} // namespace piolo
