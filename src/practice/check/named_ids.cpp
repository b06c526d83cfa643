// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/check/named_ids.h"

namespace piolo::practice {
namespace {

struct Named {
    std::vector<Id> operator()(const RunFact& fact) const { return {fact.passage}; }
    std::vector<Id> operator()(const TempoFact& fact) const { return {fact.passage}; }
    std::vector<Id> operator()(const LateMissFact& fact) const { return {fact.passage, fact.run}; }
    std::vector<Id> operator()(const BackFact& fact) const { return {fact.passage, fact.retracts}; }
    std::vector<Id> operator()(const RemovalFact& fact) const { return {fact.subject}; }
    std::vector<Id> operator()(const DoubtFact& fact) const {
        std::vector<Id> ids{fact.passage};
        ids.insert(ids.end(), fact.runs.begin(), fact.runs.end());
        return ids;
    }
    std::vector<Id> operator()(const PassageFact& fact) const {
        std::vector<Id> ids{fact.passage};
        if (fact.title && !fact.title->piece.isNone()) ids.push_back(fact.title->piece);
        if (fact.title && !fact.title->origin.isNone()) ids.push_back(fact.title->origin);
        return ids;
    }
    std::vector<Id> operator()(const PieceFact& fact) const { return {fact.piece}; }
    std::vector<Id> operator()(const SettingsFact& /*fact*/) const { return {}; }
    std::vector<Id> operator()(const StageFact& fact) const { return {fact.passage}; }
    std::vector<Id> operator()(const NoteFact& fact) const { return {fact.passage, fact.about}; }
    std::vector<Id> operator()(const RunThroughFact& fact) const { return {fact.piece}; }
    std::vector<Id> operator()(const FeltBeatFact& fact) const { return {fact.passage}; }
    std::vector<Id> operator()(const PictureFact& fact) const { return {fact.passage}; }
};

} // namespace

std::vector<Id> namedBy(const FactBody& body) { return std::visit(Named{}, body); }

Id describedBy(const FactBody& body) {
    if (const auto* passage = std::get_if<PassageFact>(&body); passage != nullptr && passage->tempi)
        return passage->passage;
    if (const auto* piece = std::get_if<PieceFact>(&body)) return piece->piece;
    return {};
}

} // namespace piolo::practice
