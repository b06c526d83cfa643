// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/faults/fault_sentences.h"

#include <algorithm>
#include <iterator>

namespace piolo::practice {
namespace {

using enum FaultNumber;

constexpr FaultSentence sentences[] = {
    {unknownVerb, "is not a verb; write %1, or see piolo --help"},
    {unknownOption, "is not a valid option; see %1 --help"},
    {missingOption, "is missing; add it, for example %1"},
    {missingValue, "needs a value; write one after it, for example %1"},
    {badNumber, "\"%1\" is not a whole number; write digits only, for example %2"},
    {badTempo, "\"%1\" is not a valid tempo; write 10 to 400 with at most three decimals, for example 72.5"},
    {badMeter, "\"%1\" is not a valid meter; write 1 to 32 over 1, 2, 4, 8 or 16, for example 7/8"},
    {badBeat, "\"%1\" is not a valid beat; write 1/2, 1/4, 3/8, 1/8 or 3/4"},
    {beatDoesNotDivide, "a bar of %2 does not divide into %1 beats; choose a shorter beat or another meter"},
    {badGroups, "\"%1\" does not group a bar of %2; write groups that fill it and begin on beats, as 2+2+3 "
                "fills 7/8 in eighths"},
    {badSubdivision, "\"%1\" is not a valid subdivision; write 1 to 8 pulses per beat"},
    {badVoice, "\"%1\" is not a click voice; choose %2"},
    {badRange, "%1 is out of range; choose %2 to %3"},
    {badOrder, "%1 is above the %2 of %3; lower the one or raise the other"},
    {badChoice, "\"%1\" is not a valid choice here; write %2"},
    {badFileKind, "\"%1\" is not a kind of file that can be written here; let the name end in %2"},
    {noSuchPassage, "no passage has the id or title \"%1\"; check the spelling and the "
                    "folder"},
    {ambiguousPassage, "\"%1\" is the title of more than one passage; give an id instead: %2"},
    {unexpectedWord, "is one word too many; leave it out, or see %1 --help"},
    {badAccents, "\"%1\" does not give the accents of a bar of %2 beats; write strong, group, plain or "
                 "silent for each beat, separated by commas"},
    {badSwing, "\"%1\" is not a valid swing; write long:short from 1:1 to 3:1, for example 2:1"},
    {swingNeedsPairs, "the beat has no pairs of eighths or sixteenths to swing; divide it into an even "
                      "number of them with --subdivision"},
    {badBreath, "\"%1\" does not give breath places in bars 1 to %2 of %3 beats; write BAR:BEAT:BEATS after "
                "the first beat, in order, for example 4:3:1,8:1:2"},
    {noBackbeat, "a bar of one beat has no beat 2; count it in shorter beats with "
                 "--beat"},
    {pagesNeedPdf, "%1 pages are more than the %2 that a picture holds; give a name that ends "
                   "in .pdf"},
    {noSuchPart, "\"%1\" is not a part of this score; write the number or the name of one of its %2 (piolo "
                 "bars FILE lists them)"},
    {badKey,
     "\"%1\" is not a valid key; write a letter from A to G, with flat or sharp, for example \"E flat\""},
    {badPitch, "\"%1\" is not a valid note; write a letter, its sharps or flats and the octave, for example "
               "Bb3 or F#6"},
    {noSuchScale, "%1 has no tonic from %2 to %3; give a wider range or another key"},
    {noSuchBar,
     "\"%1\" is not a bar of this part from there on; write a bar from %2 to %3, the earlier one first"},
    {badMark, "\"%1\" is not a valid mark; write clean, miss, back, or tempo and a number"},
    {badMarkTempo,
     "\"%1\" is not a valid tempo; write 10 to 400 with at most three decimals, for example tempo 72.5"},
    {badJson, "the line is not a JSON object; it is kept but not counted, so fix it by hand or leave it"},
    {badFact, "the key \"%1\" is missing; the line is kept but not counted, so fix it by hand or leave it"},
    {badFactValue, "the key \"%1\" has an impossible value[: %2]; the line is kept but not counted, so fix "
                   "it by hand or leave it"},
    {newerFormat, "the line is in a newer format[ (%1)]; it is kept but not counted, so use a newer Piolo"},
    {unknownKind,
     "\"%1\" is an unknown kind of fact; the line is kept but not counted, so use a newer Piolo"},
    {tornLine,
     "the last line was cut short; it is kept but not counted, so wait until the whole file has been copied"},
    {repeatedId, "the id %1 is used for two different facts; only one of them is counted, so remove the "
                 "wrong line by hand"},
    {notUtf8, "the line is not UTF-8 text; it is kept but not counted, so fix it by hand or leave it"},
    {lineTooLong, "the line is longer than 65536 bytes; it is not counted, so shorten it or remove it"},
    {unknownPassage, "the id %1 is used here but not recorded anywhere; copy the journal files of all "
                     "devices into the folder"},
    {badWav, "this is not a WAV file with one channel in float32; give one that piolo click wrote"},
    {wrongSum, "the line is not as it was written; it is kept but not counted, so restore it from a copy or "
               "remove its \"sum\""},
    {datedAhead,
     "facts dated in the future: %1, up to %2; if a clock was wrong, correct the dates in the practice log"},
    {moreFaults, "the file has more faults than are listed: %1; correct those above and check it again"},
    {seqTwice, "the number %1 of device %2 is used for two facts; two programs wrote as the same device, so "
               "keep each device's own state directory to itself"},
    {notAPassageFile,
     "this is not a passage file, or it was cut short; nothing was imported, so have it sent again"},
    {passageKeyMissing,
     "the key \"%1\" is missing; nothing was imported, so fix the file by hand or have it sent again"},
    {passageValue, "the key \"%1\" has an impossible value[: %2]; nothing was imported, so fix the file by "
                   "hand or have it sent again"},
    {newerPassageFile, "the file is in a newer format[ (%1)]; nothing was imported, so use a newer Piolo"},
    {idTwice,
     "the id %1 appears here for the second time; nothing was imported, so remove one of the two by hand"},
    {pieceNotInFile, "the passage \"%1\" belongs to a piece that is not in the file[ (%2)]; nothing was "
                     "imported, so have it sent again with its piece"},
    {passageFileTooLarge,
     "this is more than a passage file can hold[ (%1)]; split it into several files, or shorten its names"},
    {notAScore, "this is not a MusicXML score; save it as MusicXML in the program it was written with"},
    {scoreByBars, "the score is stored bar by bar across all parts (score-timewise); save it part by part "
                  "(score-partwise)"},
    {brokenXml, "the XML is cut short or damaged here[ (%1)]; save the score again, or have it sent again"},
    {scoreValue, "the element \"%1\" has an impossible value[: %2]; save the score again, or fix it by hand"},
    {scoreElement, "the element \"%1\" is missing[ in \"%2\"]; save the score again, or fix it by hand"},
    {scoreTooLarge,
     "this is more than a score may hold[ (%1)]; save only the part that you want to practise"},
    {brokenArchive,
     "the compressed file is damaged or was cut short; have it sent again, or save it uncompressed"},
    {archivePath,
     "the compressed file has no score in the place it names[ (%1)]; save it again, or uncompressed"},
    {ownEntities,
     "the file declares entities of its own in its DOCTYPE, which Piolo does not read; save the score again"},
    {scoreEncoding, "the text is not in the encoding that it declares, or in one that Piolo does not read; "
                    "save the score as UTF-8 or UTF-16"},
    {barsGoRound,
     "bar %1 has a %2, so the bars you picked are not played straight through; pick bars on one side of it"},
    {barsChange, "the %2 changes in bar %1, and a passage has only one; pick bars on one side of it"},
    {meterNotCounted, "bar %1 has a meter that Piolo cannot count[ (%2)]; pick other bars"},
    {barNotWhole, "bar %1 is not a whole bar: it holds %2 in %3; pick bars on one side of it"},
    {cannotFeel, "cannot be felt in that beat: %1 would not come out even; change it first"},
    {noNotes, "the notes of \"%1\" are not known; pick its bars from a score in "
              "MusicXML, with piolo bars or in the window"},
    {notesOutside, "bar %1: a note lies outside the bars of the passage and cannot be written as MusicXML; "
                   "make the passage longer, or pick its bars again"},
    {notesOverlap, "bar %1: a note begins while another one sounds and cannot be written as MusicXML; export "
                   "the passage as .piolo.json, which keeps it as it is"},
    {notesTooFine, "bar %1: a note is shorter than any note value and cannot be written as "
                   "MusicXML; export the passage as .piolo.json, which keeps it as it is"},
    {notesTransposed, "the written %1 sounds as MIDI number %2, which is not how its part is transposed; "
                      "export the passage as .piolo.json, which keeps it as it is"},
    {noWholeBar, "bars %1 to %2 are not 1 to 999 whole bars; pick more or fewer"},
    {notAPicture, "this is not a PNG, JPEG or PDF; save or scan the music as one of these"},
    {brokenPicture, "the picture is damaged or was cut short[ (%1)]; save it again, or have it sent again"},
    {pictureTooLarge,
     "this is more than a picture of music may hold[ (%1)]; scan or save the page by itself, or smaller"},
    {pdfLocked, "the PDF needs a password; save it without one"},
    {noSuchPage, "the PDF has no page %1; choose 1 to %2"},
    {pageTooSlow, "page %1 took too long to draw; save it as a picture in another "
                  "program"},
    {pictureTooHeavy,
     "the picture needs more memory than is allowed, or is damaged; save it anew, as a smaller picture"},
    {cannotRead, "cannot be read[ (%1)]; check the name and its permissions"},
    {cannotWrite, "cannot be written[ (%1)]; check the folder and its "
                  "permissions"},
    {cannotMakeFolder, "the folder cannot be created[ (%1)]; choose another or check its permissions"},
    {tooLarge, "the sound would be larger than 4 GiB; ask for fewer bars or a "
               "lower rate"},
    {folderInUse, "another window is using this practice folder, so nothing is recorded here; go on there, "
                  "or close it and open this one again"},
    {notAPracticeFolder, "this is not a practice folder; give the path of one"},
    {diskFull, "the disk is full; make room and try again"},
    {noDisplay, "there is no display to open the window on; start Piolo in a graphical session, or see piolo "
                "--help for what works without one"},
    {folderOpenElsewhere, "a window has this folder open; close it and try again"},
    {nothingToExport,
     "the folder has no passages and no pieces; give the path of the practice folder that has them"},
    {notSavedInTime, "not everything could be saved in time; check the disk and import the file again, since "
                     "what is already saved counts only once"},
    {folderGone,
     "the practice folder has been moved or removed; put it back, and the marks still waiting will be "
     "saved"},
    {notARegularFile,
     "this is a link, a pipe or a device, not a file; move it away, and the marks still waiting will be "
     "saved in a new file"},
    {notConfirmed,
     "the disk has not confirmed the last marks; check the disk, and leave this window open until they "
     "are saved"},
    {noLocks, "the state directory is on a disk without locks, so practice can be read but not recorded; set "
              "XDG_STATE_HOME to a folder on a local disk"},
    {noHome, "HOME is not set, so there is no place for settings and practice; set HOME to your home folder "
             "and start again"},
    {noSoundDevice, "no sound: the click goes on silently; connect a device or choose one in the settings, "
                    "and you will hear it again from the next bar"},
    {soundNeedsRestart, "the sound is lost: the click goes on silently; restart Piolo to hear it again; "
                        "nothing recorded is lost"},
    {fellBehind,
     "the computer fell behind: key presses delayed: %1, beats not shown: %2; close other programs; "
     "no mark was lost"},
};

} // namespace

std::span<const FaultSentence> faultSentences() noexcept { return sentences; }

const char* sentencePattern(FaultNumber number) noexcept {
    const auto* const found = std::ranges::find(sentences, number, &FaultSentence::number);
    return found == std::end(sentences) ? "" : found->pattern;
}

} // namespace piolo::practice
