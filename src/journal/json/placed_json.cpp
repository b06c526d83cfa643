// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/json/placed_json.h"

#include <iterator>

namespace piolo::journal {

namespace {

using nlohmann::json;

/// Iterates over the text and knows the line of the last character read.
class Walk {
public:
    using iterator_category = std::input_iterator_tag;
    using value_type = char;
    using difference_type = std::ptrdiff_t;
    using pointer = const char*;
    using reference = const char&;

    struct Line {
        long number = 1;
        bool ended = false;
        void take(char c) {
            if (ended) ++number;
            ended = c == '\n';
        }
    };

    Walk(const char* at, Line* line) : at_(at), line_(line) {}
    reference operator*() const { return *at_; }
    Walk& operator++() {
        line_->take(*at_++);
        return *this;
    }
    Walk operator++(int) {
        Walk before = *this;
        ++*this;
        return before;
    }
    bool operator==(const Walk& other) const { return at_ == other.at_; }
    bool operator!=(const Walk& other) const { return at_ != other.at_; }

private:
    const char* at_;
    Line* line_;
};

/// Receives the parser's events: enforces the limits and records the lines.
class Hearer {
public:
    Hearer(const JsonLimits& limits, const Walk::Line& line, PlacedJson& placed)
        : limits_(limits), line_(line), placed_(placed) {}

    bool hear(int depth, json::parse_event_t event, const json& parsed) {
        using Met = json::parse_event_t;
        if (!within()) return false; // the limit that was hit first counts
        if (event == Met::object_end || event == Met::array_end) return true;
        tooDeep_ = tooDeep_ || depth > limits_.depth;
        if (event == Met::key) {
            if (depth == 1) begin(parsed);
            return within();
        }
        if (++values_ <= limits_.values && depth == 2 && lines_ != nullptr) lines_->push_back(line_.number);
        return within();
    }
    [[nodiscard]] bool tooDeep() const { return tooDeep_; }
    [[nodiscard]] bool tooMany() const { return values_ > limits_.values; }

private:
    [[nodiscard]] bool within() const { return !tooDeep() && !tooMany(); }
    // If a key occurs twice, the last one counts.
    void begin(const json& key) {
        if (!within()) return;
        lines_ = &placed_.lines[key.get_ref<const std::string&>()];
        lines_->clear();
    }

    JsonLimits limits_;
    const Walk::Line& line_;
    PlacedJson& placed_;
    std::vector<long>* lines_ = nullptr;
    std::size_t values_ = 0;
    bool tooDeep_ = false;
};

} // namespace

PlacedJson placedJson(std::string_view text, const JsonLimits& limits) {
    PlacedJson placed;
    Walk::Line line;
    Hearer hearer(limits, line, placed);
    const auto hear = [&](int depth, json::parse_event_t event, json& parsed) {
        return hearer.hear(depth, event, parsed);
    };
    const char* const begin = text.data();
    placed.value = json::parse(Walk(begin, &line), Walk(begin + text.size(), &line), hear, false);
    placed.line = line.number;
    if (hearer.tooMany())
        placed.end = PlacedJson::End::tooMuch;
    else if (hearer.tooDeep() || placed.value.is_discarded())
        placed.end = PlacedJson::End::broken;
    return placed;
}

} // namespace piolo::journal
