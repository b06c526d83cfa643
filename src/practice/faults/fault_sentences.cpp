// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/faults/fault_sentences.h"

#include <algorithm>
#include <iterator>

namespace piolo::practice {
namespace {

using enum FaultNumber;

constexpr FaultSentence sentences[] = {
    {unknownVerb, "is no verb; write %1, or see piolo --help"},
    {unknownOption, "is no option here; see %1 --help"},
    {missingOption, "is missing; add it, for example %1"},
    {missingValue, "has no value; write one after it, for example %1"},
    {badNumber, "\"%1\" is no whole number; write digits only, for example %2"},
    {badTempo, "\"%1\" is no tempo; write 10 to 400 with at most three decimals, "
               "for example 72.5"},
    {badMeter, "\"%1\" is no meter that can be counted; write 1 to 32 over "
               "1, 2, 4, 8 or 16, for example 7/8"},
    {badBeat, "\"%1\" is no beat; write 1/2, 1/4, 3/8, 1/8 or 3/4"},
    {beatDoesNotDivide, "a bar of %2 is no whole number of %1 beats; choose a "
                        "shorter beat or another meter"},
    {badGroups, "\"%1\" are no groups of a %2 bar; write groups that fill it and "
                "begin on beats, as 2+2+3 fills 7/8 in eighths"},
    {badSubdivision, "\"%1\" is no subdivision; write 1 to 8 pulses to the beat"},
    {badVoice, "\"%1\" is no voice; choose %2"},
    {badRange, "%1 is out of range; choose %2 to %3"},
    {badOrder, "%1 is above the %2 of %3; lower the one or raise the other"},
    {badChoice, "\"%1\" does not fit here; write %2"},
    {badFileKind, "\"%1\" names no kind of file that is written here; let the "
                  "name end in %2"},
    {noSuchPassage, "no passage has the id or title \"%1\"; check the spelling and the "
                    "folder"},
    {ambiguousPassage, "\"%1\" is the title of more than one passage; name one by "
                       "its id: %2"},
    {unexpectedWord, "is a word too many; leave it out, or see %1 --help"},
    {badAccents, "\"%1\" are no accents of a bar of %2 beats; write strong, group, "
                 "plain or silent for each beat, with commas between"},
    {badSwing, "\"%1\" is no swing; write long:short from 1:1 to 3:1, as in 2:1"},
    {swingNeedsPairs, "the beat has no pairs of eighths or sixteenths to swing; "
                      "divide it into an even number of them with --subdivision"},
    {badBreath, "\"%1\" are no breath places in bars 1 to %2 of %3 beats; write "
                "BAR:BEAT:BEATS after the first beat, in order, as in 4:3:1,8:1:2"},
    {noBackbeat, "a bar of one beat has no beat 2; count it in shorter beats with "
                 "--beat"},
    {pagesNeedPdf, "%1 pages are more than the %2 that a picture holds; give a name that ends "
                   "in .pdf"},
    {noSuchPart, "\"%1\" is no part of this score; write the number or the name "
                 "of one of its %2, piolo bars FILE lists them"},
    {badKey, "\"%1\" is no key; write a letter from A to G, with flat or sharp, "
             "for example \"E flat\""},
    {badPitch, "\"%1\" is no note; write a letter, its sharps or flats and the "
               "octave, for example Bb3 or F#6"},
    {noSuchScale, "%1 has no tonic from %2 to %3; give a wider range, or another key"},
    {noSuchBar, "\"%1\" is no bar of this part from there on; its bars go from %2 to "
                "%3, write one of them, the earlier one first"},
    {badMark, "\"%1\" is no mark; write clean, miss, back, or tempo and a "
              "number"},
    {badMarkTempo, "\"%1\" is no tempo; write 10 to 400 with at most three "
                   "decimals, for example tempo 72.5"},
    {badJson, "the line is no JSON object; it is kept and not counted, mend it "
              "by hand or leave it"},
    {badFact, "the key \"%1\" is missing; the line is kept and not counted, mend "
              "it by hand or leave it"},
    {badFactValue, "the key \"%1\" has a value that cannot be[: %2]; the line is "
                   "kept and not counted, mend it by hand or leave it"},
    {newerFormat, "the line is of a newer format[ (%1)]; it is kept and not "
                  "counted, use a newer Piolo"},
    {unknownKind, "\"%1\" is a kind of fact that is not known; the line is kept "
                  "and not counted, use a newer Piolo"},
    {tornLine, "the last line was cut short; it is kept and not counted, wait "
               "until the file has been copied whole"},
    {repeatedId, "the id %1 stands for two different facts; one of them is "
                 "counted, take the wrong line out by hand"},
    {notUtf8, "the line is not UTF-8 text; it is kept and not counted, mend it "
              "by hand or leave it"},
    {lineTooLong, "the line is longer than 65536 bytes; it is not counted, "
                  "shorten it or take it out"},
    {unknownPassage, "the id %1 is named here and recorded nowhere; bring the "
                     "journal files of all devices into the folder"},
    {badWav, "this is no WAV file of one channel in float32; give one as piolo "
             "click writes it"},
    {wrongSum, "the line is not as it was written; it is kept and not counted, put "
               "it back from a copy or take its \"sum\" out"},
    {notAPassageFile, "this is no passage file, or one that was cut short; nothing "
                      "was taken from it, have it sent again"},
    {passageKeyMissing, "the key \"%1\" is missing; nothing was taken from the "
                        "file, mend it by hand or have it sent again"},
    {passageValue, "the key \"%1\" has a value that cannot be[: %2]; nothing was "
                   "taken from the file, mend it by hand or have it sent again"},
    {newerPassageFile, "the file is of a newer format[ (%1)]; nothing was taken "
                       "from it, use a newer Piolo"},
    {idTwice, "the id %1 stands here for the second time; nothing was taken from "
              "the file, take one of the two out by hand"},
    {pieceNotInFile, "the passage \"%1\" belongs to a piece that is not in the "
                     "file[ (%2)]; nothing was taken from it, have it sent again "
                     "with its piece"},
    {passageFileTooLarge, "this is more than a passage file holds[ (%1)]; make "
                          "several files of it, or shorten its names"},
    {notAScore, "this is no MusicXML score; save it as MusicXML in the program that "
                "it was written with"},
    {scoreByBars, "the score goes bar by bar through all parts (score-timewise); "
                  "save it part by part (score-partwise)"},
    {brokenXml, "the XML breaks off or is damaged here[ (%1)]; save the score anew, "
                "or have it sent again"},
    {scoreValue, "the element \"%1\" holds what cannot be[: %2]; save the score anew, "
                 "or mend it by hand"},
    {scoreElement, "the element \"%1\" is missing[ in \"%2\"]; save the score anew, "
                   "or mend it by hand"},
    {scoreTooLarge, "this is more than a score may hold[ (%1)]; save the part that "
                    "is to be practised by itself"},
    {brokenArchive, "the packed file is damaged or was cut short; have it sent "
                    "again, or save it unpacked"},
    {archivePath, "the packed file has no score at the place that it names[ (%1)]; "
                  "save it anew, or unpacked"},
    {ownEntities, "the file declares names of its own in its DOCTYPE, which are not "
                  "read; save the score anew"},
    {scoreEncoding, "the text is not in the encoding that it says, or in one that is "
                    "not read; save the score as UTF-8 or UTF-16"},
    {barsGoRound, "bar %1 has a %2, so that the bars picked are not played straight "
                  "through; pick bars on one side of it"},
    {barsChange, "the %2 changes in bar %1, and a passage has one; pick bars on one "
                 "side of it"},
    {meterNotCounted, "bar %1 has a meter that cannot be counted here[ (%2)]; pick "
                      "other bars"},
    {barNotWhole, "bar %1 is no whole bar: it holds %2 in %3; pick bars on one side "
                  "of it"},
    {cannotFeel, "cannot be felt in that beat: %1 would not come out even; change it first"},
    {noNotes, "the notes of \"%1\" are not known; pick its bars from a score in "
              "MusicXML, with piolo bars or in the window"},
    {notesOutside, "bar %1: a note lies outside the bars of the passage and cannot be written as "
                   "MusicXML; make the passage longer, or pick its bars anew"},
    {notesOverlap, "bar %1: a note begins while another sounds and cannot be written as "
                   "MusicXML; export the passage as .piolo.json, which keeps it as it is"},
    {notesTooFine, "bar %1: a note is shorter than any note value and cannot be written as "
                   "MusicXML; export the passage as .piolo.json, which keeps it as it is"},
    {notesTransposed, "the written %1 sounds as MIDI number %2, transposed otherwise than its part; "
                      "export the passage as .piolo.json, which keeps it as it is"},
    {noWholeBar, "bars %1 to %2 are no 1 to 999 whole bars; pick more, or fewer"},
    {notAPicture, "this is no PNG, JPEG or PDF; save or scan the music as one of "
                  "them"},
    {brokenPicture, "the picture is damaged or was cut short[ (%1)]; save it anew, "
                    "or have it sent again"},
    {pictureTooLarge, "this is more than a picture of music may hold[ (%1)]; scan or "
                      "save the page by itself, or smaller"},
    {pdfLocked, "the PDF asks for a password; save it without one"},
    {noSuchPage, "the PDF has no page %1; choose 1 to %2"},
    {pageTooSlow, "page %1 took too long to draw; save it as a picture in another "
                  "program"},
    {cannotRead, "cannot be read[ (%1)]; check the name and its permissions"},
    {cannotWrite, "cannot be written[ (%1)]; check the folder and its "
                  "permissions"},
    {cannotMakeFolder, "the folder cannot be made[ (%1)]; choose another or "
                       "check its permissions"},
    {tooLarge, "the sound would be larger than 4 GiB; ask for fewer bars or a "
               "lower rate"},
    {folderInUse, "another window writes to this practice folder: nothing is "
                  "recorded here; go on there, or close it and open this one "
                  "again"},
    {notAPracticeFolder, "this is no practice folder; name a folder"},
    {diskFull, "the disk is full; make room and try again"},
    {noDisplay, "there is no display to open the window on; start it in a graphical "
                "session, or see piolo --help for what works without one"},
    {folderOpenElsewhere, "a window has this folder open; close it and try again"},
    {nothingToExport, "the folder holds no passages and no pieces; name the "
                      "practice folder they are in"},
    {notSavedInTime, "not everything could be saved in time; look after the disk "
                     "and import the file again, what is saved counts once"},
    {noSoundDevice, "no sound: the click goes on silently; connect a device or "
                    "choose one in the settings, it is heard again from the "
                    "next bar"},
    {soundNeedsRestart, "the sound is lost: the click goes on silently; start "
                        "Piolo again to hear it, nothing recorded is lost"},
    {fellBehind, "the computer fell behind: keys that had to wait %1, beats not "
                 "shown %2; close other programs, no mark was lost"},
};

} // namespace

std::span<const FaultSentence> faultSentences() noexcept { return sentences; }

const char* sentencePattern(FaultNumber number) noexcept {
    const auto* const found = std::ranges::find(sentences, number, &FaultSentence::number);
    return found == std::end(sentences) ? "" : found->pattern;
}

} // namespace piolo::practice
