// SPDX-License-Identifier: GPL-3.0-or-later
#include "score/read/score_reader.h"

#include "core/time/fraction_sum.h"
#include "score/read/bar_reader.h"
#include "score/read/limits.h"

#include <algorithm>
#include <compare>
#include <map>

namespace piolo::score {

namespace {

bool isEarlier(const TempoMark& a, const TempoMark& b) {
    return a.bar != b.bar ? a.bar < b.bar : std::is_lt(order(a.onset, b.onset));
}

class ScoreReader {
public:
    explicit ScoreReader(Source& source) : source_(source) {}

    Score read(pugi::xml_node root) {
        readHead(root);
        readNames(root.child("part-list"));
        for (const auto part : root.children("part")) readPart(part);
        if (score_.parts.empty() && source_.faults().empty()) source_.missing(root, "part");
        std::ranges::stable_sort(score_.tempi, isEarlier);
        return std::move(score_);
    }

private:
    void readHead(pugi::xml_node root) {
        score_.title = textOf(root.child("work").child("work-title"));
        if (score_.title.empty()) score_.title = textOf(root.child("movement-title"));
        for (const auto creator : root.child("identification").children("creator"))
            if (std::string_view(creator.attribute("type").value()) == "composer")
                score_.composer = textOf(creator);
    }

    void readNames(pugi::xml_node list) {
        for (const auto part : list.children("score-part"))
            names_[part.attribute("id").value()] = textOf(part.child("part-name"));
    }

    void readPart(pugi::xml_node node) {
        Part part;
        part.id = node.attribute("id").value();
        const auto name = names_.find(part.id);
        if (name == names_.end()) source_.wrong(node, part.id);
        if (name != names_.end()) part.name = name->second;
        BarReader bars(source_, part, score_.tempi, notesLeft_);
        for (const auto measure : node.children("measure")) {
            if (source_.isFull()) return;
            if (barsLeft_ == 0) return source_.add(measure, FaultNumber::scoreTooLarge, {"100000 bars"});
            --barsLeft_;
            bars.read(measure);
        }
        if (part.bars.empty()) source_.missing(node, "measure");
        score_.parts.push_back(std::move(part));
    }

    Source& source_;
    Score score_;
    std::map<std::string, std::string> names_;
    std::size_t notesLeft_ = mostNotes + 1;
    std::size_t barsLeft_ = mostBars;
};

std::optional<Fault> rootFault(const XmlText& text, const std::string& file) {
    const std::string_view name = text.root().name();
    const FaultLocation location{file, text.lineOf(text.root())};
    if (name == "score-timewise") return Fault{FaultNumber::scoreByBars, location, {}};
    if (name != "score-partwise") return Fault{FaultNumber::notAScore, location, {}};
    return std::nullopt;
}

} // namespace

Reading readMusicXml(std::string_view bytes, const std::string& file) {
    XmlText text;
    const Done loaded = text.load(bytes, file);
    if (!loaded) return {{}, {loaded.fault()}};
    if (const auto fault = rootFault(text, file)) return {{}, {*fault}};
    Source source(text, file);
    Score score = ScoreReader(source).read(text.root());
    return {std::move(score), source.faults()};
}

} // namespace piolo::score
