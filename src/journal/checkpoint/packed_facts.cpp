// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/checkpoint/packed_facts.h"

#include "core/base/id_index.h"
#include "core/history/passage_history.h"
#include "core/passage/difference.h"
#include "journal/checkpoint/packed_fact.h"
#include "journal/checkpoint/packed_members.h"
#include "journal/lines/fact_line.h"

#include <algorithm>
#include <unordered_map>

namespace piolo::journal {

namespace {

/// The facts about one passage, packed one after the other.
struct Chunk {
    PassageDigest digest;
    std::string definition; ///< the line of a fact that creates the passage as it is now
    std::size_t facts = 0;
    std::size_t bytes = 0;
    std::size_t from = 0; ///< in all chunks
};

template <typename P, Either<Chunk> T>
void packed(P& with, T& chunk) {
    auto& [passage, first, last, record, defining, entries, newest] = chunk.digest;
    auto& [id, device, seq, order, at, body] = defining;
    with(passage, first, last, record, id, device, seq, order, entries, newest);
    with(chunk.definition, chunk.facts, chunk.bytes);
}

/// The fact that would create the passage as it is now, at the position of the one that first created it.
std::string definitionOf(const PassageDigest& digest) {
    if (!digest.record) return {};
    Fact fact = digest.defining;
    fact.body = factOf(digest.record->passage, makingGroups(digest.record->passage));
    return toLine(fact);
}

/// The passage that such a line creates; nothing if it creates none.
std::optional<Passage> madeBy(const std::string& definition) {
    const auto fact = fromLine(definition, {});
    const auto* const edit = fact ? std::get_if<PassageFact>(&fact->body) : nullptr;
    if (edit == nullptr || !edit->tempi) return std::nullopt;
    PassageFold fold(edit->passage, *edit->tempi);
    fold.add(*fact, fact->at, {});
    return fold.record().passage;
}

class Packing {
public:
    /// False: they cannot be packed, or a stop was requested.
    bool add(const std::vector<Fact>& facts, const std::stop_token& stop) {
        std::unordered_map<Id, std::vector<const Fact*>> passages;
        sort(facts, passages);
        for (auto& [passage, about] : passages)
            if (stop.stop_requested() || !addChunk(passage, about)) return false;
        return fits_;
    }
    std::string take() {
        Packer packer;
        packer(ids_.size());
        packer.raw(ids_.bytes());
        packer(devices_.names(), chunks_, others_);
        packer.raw(other_.take());
        packer.raw(bytes_.take());
        return packer.take();
    }

private:
    using Passages = std::unordered_map<Id, std::vector<const Fact*>>;

    void sort(const std::vector<Fact>& facts, Passages& passages) {
        IdIndex known;
        std::vector<const Fact*> others;
        std::vector<Id> ids;
        for (const Fact& fact : facts) {
            if (!known.keep(fact.id, 0).second) continue;
            ids.push_back(fact.id);
            const Id passage = passageOf(fact.body);
            (passage.isNone() ? others : passages[passage]).push_back(&fact);
        }
        ids_ = SortedIds(std::move(ids));
        for (const Fact* fact : others)
            if (const auto* const said = std::get_if<ClockFact>(&fact->body)) clocks_.add(*fact, *said);
        for (const Fact* fact : others) fits_ = packFact(other_, *fact, ids_, devices_) && fits_;
        others_ = others.size();
    }

    bool addChunk(Id passage, std::vector<const Fact*>& facts) {
        std::sort(facts.begin(), facts.end(),
                  [](const Fact* a, const Fact* b) { return standsBefore(*a, *b); });
        PassageHistory history(passage, clocks_);
        Chunk chunk;
        const std::size_t before = bytes_.bytes().size();
        for (const Fact* fact : facts) {
            history.add(*fact);
            if (!packFact(bytes_, *fact, ids_, devices_)) return false;
        }
        chunk.digest = history.digest();
        chunk.definition = definitionOf(chunk.digest);
        chunk.facts = facts.size();
        chunk.bytes = bytes_.bytes().size() - before;
        const bool same = !chunk.digest.record || madeBy(chunk.definition) == chunk.digest.record->passage;
        chunks_.push_back(std::move(chunk));
        return same;
    }

    SortedIds ids_;
    DeviceNames devices_;
    WrongClocks clocks_;
    std::vector<Chunk> chunks_;
    std::size_t others_ = 0;
    Packer other_; ///< the facts that are not about a passage
    Packer bytes_; ///< the facts about each passage
    bool fits_ = true;
};

class PackedHistory : public StoredHistory {
public:
    explicit PackedHistory(std::string bytes) : bytes_(std::move(bytes)) {}

    bool open(std::size_t from) {
        Unpacker unpacker(std::string_view(bytes_).substr(from));
        std::size_t ids = 0;
        unpacker(ids);
        ids_ = SortedIds(unpacker.raw(std::uint64_t{ids} * sizeof(Id)));
        std::vector<std::string> names;
        unpacker(names, chunks_, otherCount_);
        devices_ = DeviceNames(std::move(names));
        for (std::size_t left = otherCount_; left > 0 && unpacker.fits(); --left) {
            auto fact = unpackFact(unpacker, {}, ids_, devices_);
            if (!fact) return false;
            others_.push_back(*std::move(fact));
        }
        return unpacker.fits() && openChunks(unpacker);
    }

    [[nodiscard]] std::size_t factCount() const override { return ids_.size(); }
    [[nodiscard]] bool knows(Id fact) const override { return ids_.find(fact).has_value(); }
    [[nodiscard]] const std::vector<PassageDigest>& passages() const override { return digests_; }
    [[nodiscard]] std::vector<Fact> otherFacts() const override { return others_; }

    [[nodiscard]] std::vector<Fact> facts(std::size_t place) const override {
        const Chunk& chunk = chunks_[place];
        std::vector<Fact> facts;
        facts.reserve(chunk.facts);
        Unpacker unpacker(packed_.substr(chunk.from, chunk.bytes));
        while (facts.size() < chunk.facts) {
            auto fact = unpackFact(unpacker, digests_[place].passage, ids_, devices_);
            if (!fact) break;
            facts.push_back(*std::move(fact));
        }
        return facts;
    }

private:
    bool openChunks(Unpacker& unpacker) {
        std::size_t all = 0;
        for (Chunk& chunk : chunks_) {
            if (chunk.bytes > unpacker.left() || chunk.facts > chunk.bytes) return false;
            chunk.from = all;
            all += chunk.bytes;
            if (chunk.digest.record) {
                auto passage = madeBy(chunk.definition);
                if (!passage) return false;
                chunk.digest.record->passage = *std::move(passage);
            }
            digests_.push_back(std::move(chunk.digest));
        }
        packed_ = unpacker.raw(all);
        return unpacker.fits() && unpacker.left() == 0;
    }

    std::string bytes_;
    std::string_view packed_;
    SortedIds ids_;
    DeviceNames devices_;
    std::vector<Chunk> chunks_;
    std::vector<PassageDigest> digests_;
    std::size_t otherCount_ = 0;
    std::vector<Fact> others_;
};

} // namespace

std::optional<std::string> packedFacts(const std::vector<Fact>& facts, const std::stop_token& stop) {
    Packing packing;
    if (!packing.add(facts, stop)) return std::nullopt;
    return packing.take();
}

std::shared_ptr<const StoredHistory> unpackedFacts(std::string bytes, std::size_t from) {
    auto history = std::make_shared<PackedHistory>(std::move(bytes));
    return history->open(from) ? history : nullptr;
}

} // namespace piolo::journal
