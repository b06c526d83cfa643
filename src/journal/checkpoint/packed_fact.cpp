// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/checkpoint/packed_fact.h"

#include "journal/checkpoint/packed_members.h"
#include "journal/lines/fact_line.h"

#include <algorithm>
#include <cstring>
#include <variant>

namespace piolo::journal {

namespace {

constexpr std::size_t asLine = 0; ///< otherwise 1 + the kind's index in FactBody

template <typename Body>
concept Packable = requires(Packer& packer, const Body& body) {
    packed(packer, body);
};

/// Reads the body of the kind at index `kind`, if it can be packed.
template <std::size_t index = 0>
bool unpackBody(Unpacker& unpacker, std::size_t kind, FactBody& body) {
    if constexpr (index < std::variant_size_v<FactBody>) {
        using Kind = std::variant_alternative_t<index, FactBody>;
        if (kind != index) return unpackBody<index + 1>(unpacker, kind, body);
        if constexpr (Packable<Kind>) {
            unpacker(body.emplace<Kind>());
            return unpacker.fits();
        }
    }
    return false;
}

void setPassage(FactBody& body, Id passage) {
    std::visit(
        [&](auto& fact) {
            if constexpr (requires { fact.passage; }) fact.passage = passage;
        },
        body);
}

bool packLine(Packer& packer, const Fact& fact) {
    const std::string line = toLine(fact);
    packer(asLine, line);
    const auto back = fromLine(line, {});
    return back && *back == fact;
}

} // namespace

SortedIds::SortedIds(std::vector<Id> ids) {
    std::sort(ids.begin(), ids.end());
    own_.resize(ids.size() * sizeof(Id));
    if (!ids.empty()) std::memcpy(own_.data(), ids.data(), own_.size());
}

Id SortedIds::at(std::size_t place) const noexcept {
    Id id;
    std::memcpy(&id, bytes().data() + place * sizeof id, sizeof id);
    return id;
}

std::optional<std::size_t> SortedIds::find(Id id) const noexcept {
    std::size_t first = 0;
    for (std::size_t count = size(); count > 0;) {
        const std::size_t half = count / 2;
        if (at(first + half) < id) {
            first += half + 1;
            count -= half + 1;
        } else
            count = half;
    }
    if (first == size() || at(first) != id) return std::nullopt;
    return first;
}

std::size_t DeviceNames::numberOf(const std::string& device) {
    const auto found = std::find(names_.begin(), names_.end(), device);
    const auto number = static_cast<std::size_t>(found - names_.begin());
    if (found == names_.end()) names_.push_back(device);
    return number;
}

bool packFact(Packer& packer, const Fact& fact, const SortedIds& ids, DeviceNames& devices) {
    return std::visit(
        [&](const auto& body) {
            if constexpr (!Packable<std::remove_cvref_t<decltype(body)>>)
                return packLine(packer, fact);
            else {
                packer(1 + fact.body.index(), *ids.find(fact.id), devices.numberOf(fact.device), fact.seq,
                       fact.order, fact.at.utcMillis - fact.order, fact.at.offsetMinutes, body);
                return true;
            }
        },
        fact.body);
}

std::optional<Fact> unpackFact(Unpacker& unpacker, Id passage, const SortedIds& ids,
                               const DeviceNames& devices) {
    std::size_t kind = 0;
    unpacker(kind);
    if (kind == asLine) {
        std::string line;
        unpacker(line);
        auto fact = fromLine(line, {});
        return fact ? std::optional(std::move(fact).value()) : std::nullopt;
    }
    Fact fact;
    std::size_t id = 0;
    std::size_t device = 0;
    unpacker(id, device, fact.seq, fact.order, fact.at.utcMillis, fact.at.offsetMinutes);
    if (!unpackBody(unpacker, kind - 1, fact.body) || id >= ids.size() || device >= devices.names().size())
        return std::nullopt;
    fact.id = ids.at(id);
    fact.device = devices.names()[device];
    fact.at.utcMillis += fact.order;
    setPassage(fact.body, passage);
    return fact;
}

} // namespace piolo::journal
