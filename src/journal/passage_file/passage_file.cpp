// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/passage_file/passage_file.h"

#include "core/facts/passage_groups.h"
#include "core/facts/piece_members.h"
#include "files/path_ending.h"
#include "files/whole_file.h"
#include "journal/json/json_object.h"
#include "journal/json/json_reading.h"
#include "journal/json/placed_json.h"

#include <unordered_set>

namespace piolo::journal {

namespace {

using nlohmann::json;

/// The journal's groups report faults with the numbers for journal lines.
Fault asPassageFault(Fault fault) {
    if (fault.number == FaultNumber::badFact) fault.number = FaultNumber::passageKeyMissing;
    if (fault.number == FaultNumber::badFactValue) fault.number = FaultNumber::passageValue;
    return fault;
}

/// Reads one document and keeps the first fault.
class Reading {
public:
    Reading(const PlacedJson& document, const std::string& file)
        : document_(document), first_{{file, 0}, {}}, top_(document.value, "", first_) {}

    Result<PassageSet> set() {
        PassageSet read;
        checkVersion();
        read.pieces = list<Piece>("pieces", &Reading::piece);
        read.passages = list<Passage>("passages", &Reading::passage);
        if (first_.fault) return asPassageFault(*first_.fault);
        return read;
    }

private:
    void checkVersion() {
        const auto version = top_.integer("v", 1, INT64_MAX);
        if (version > passageFileVersion)
            first_.keep(FaultNumber::newerPassageFile, {std::to_string(version)});
    }

    template <typename Item>
    std::vector<Item> list(const char* key, Item (Reading::*read)(JsonObject&)) {
        std::vector<Item> items;
        first_.location.line = 0;
        const json& found = top_.value(key);
        if (!found.is_array()) top_.refuse(key);
        if (found.size() > mostInPassageFile)
            first_.keep(FaultNumber::passageFileTooLarge, {std::to_string(mostInPassageFile) + " " + key});
        for (std::size_t i = 0; i < found.size() && !first_.fault; ++i) {
            first_.location.line = document_.lines.at(key)[i];
            JsonObject object(found[i], "", first_);
            items.push_back((this->*read)(object));
        }
        return items;
    }

    Id ownId(JsonObject& object) {
        const Id id = object.id("id");
        if (!ids_.insert(id).second) first_.keep(FaultNumber::idTwice, {id.text()});
        return id;
    }

    template <typename Item>
    void describeItem(JsonObject& object, Item& item) {
        JsonReading in(object, longestName);
        describe(in, item);
        if (in.nameTooLong())
            first_.keep(FaultNumber::passageFileTooLarge,
                        {std::to_string(longestName) + " letters in a name"});
    }

    Piece piece(JsonObject& object) {
        Piece read;
        read.id = ownId(object);
        describeItem(object, read);
        pieces_.insert(read.id);
        return read;
    }

    Passage passage(JsonObject& object) {
        Passage read;
        read.id = ownId(object);
        describeItem(object, read);
        const Id piece = read.title.piece;
        if (!piece.isNone() && !pieces_.contains(piece))
            first_.keep(FaultNumber::pieceNotInFile, {read.title.name, piece.text()});
        return read;
    }

    const PlacedJson& document_;
    FirstFault first_;
    JsonObject top_;
    std::unordered_set<Id> ids_;
    std::unordered_set<Id> pieces_;
};

Fault tooLarge(const std::string& file, std::string what) {
    return {FaultNumber::passageFileTooLarge, {file}, {std::move(what)}};
}

} // namespace

bool isPassageFile(std::string_view path) noexcept { return files::endsIn(path, passageFileEnding); }

Result<PassageSet> readPassages(std::string_view bytes, const std::string& file) {
    if (bytes.size() > largestPassageFile) return tooLarge(file, "16 MiB");
    const JsonLimits limits;
    const PlacedJson document = placedJson(bytes, limits);
    if (document.end == PlacedJson::End::tooMuch)
        return tooLarge(file, std::to_string(limits.values) + " values");
    if (document.end == PlacedJson::End::broken || !document.value.is_object())
        return Fault{FaultNumber::notAPassageFile, {file, document.line}, {}};
    return Reading(document, file).set();
}

Result<PassageSet> readPassageFile(const std::string& path) {
    const auto bytes = files::wholeFile(path, largestPassageFile + 1);
    if (!bytes) return bytes.fault();
    return readPassages(*bytes, path);
}

} // namespace piolo::journal
