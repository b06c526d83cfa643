// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/lines/written_line.h"

#include "journal/lines/line_head.h"
#include "journal/lines/line_sum.h"

#include <algorithm>
#include <charconv>

namespace piolo::journal {

namespace {

constexpr std::size_t idDigits = 32;
constexpr std::size_t timeLength = std::string_view("2026-03-01T18:04:05.123+01:00").size();

/// Reads a line from its front. After the first part that does not fit, all results are placeholders.
class LineScanner {
public:
    explicit LineScanner(std::string_view line) : rest_(line) {}

    [[nodiscard]] bool ended() const { return fits_ && rest_.empty(); }

    bool has(std::string_view expected) {
        if (!rest_.starts_with(expected)) return false;
        rest_.remove_prefix(expected.size());
        return true;
    }
    void literal(std::string_view expected) { fits_ = has(expected) && fits_; }

    std::string_view take(std::size_t length) {
        fits_ = fits_ && rest_.size() >= length;
        const auto taken = rest_.substr(0, length);
        rest_.remove_prefix(taken.size());
        return taken;
    }
    std::string_view word() { return take(std::min(rest_.find('"'), rest_.size())); }

    std::int64_t integer(std::int64_t least, std::int64_t most) {
        std::int64_t number = 0;
        const auto [end, error] = std::from_chars(rest_.data(), rest_.data() + rest_.size(), number);
        const auto text = take(static_cast<std::size_t>(end - rest_.data()));
        // JSON does not allow leading zeros.
        keep(error == std::errc{} && !(text.size() > 1 && text.front() == '0') && !text.starts_with("-0"));
        keep(number >= least && number <= most);
        return number;
    }

    Id id() {
        const auto id = Id::parse(take(idDigits));
        keep(id && !id->isNone());
        return id.value_or(Id{});
    }

    /// A word and its closing quote.
    template <typename Value>
    Value choice(std::optional<Value> (*valueOf)(std::string_view) noexcept) {
        const auto value = valueOf(word());
        literal("\"");
        keep(value.has_value());
        return value.value_or(Value{});
    }

    Timestamp time() {
        const auto at = Timestamp::parse(take(timeLength));
        keep(at.has_value());
        return at.value_or(Timestamp{});
    }

    Tempo tempo() { return Tempo::clampedThousandths(integer(Tempo::least, Tempo::most)); }

    void keep(bool fits) { fits_ = fits_ && fits; }

private:
    std::string_view rest_;
    bool fits_ = true;
};

std::vector<Spot> spots(LineScanner& line) {
    std::vector<Spot> list;
    do {
        line.literal("[");
        const auto bar = line.integer(Spot::firstBar, Spot::lastBar);
        line.literal(",");
        const auto beat = line.integer(1, Spot::lastBeat);
        const auto part = line.has(",") ? line.integer(0, Spot::mostPart) : 0;
        line.literal("]");
        list.push_back({static_cast<std::int32_t>(bar), static_cast<std::int32_t>(beat),
                        static_cast<std::int32_t>(part)});
    } while (line.has(","));
    line.literal("]");
    return list;
}

RunFact run(LineScanner& line, Id passage) {
    RunFact fact;
    fact.passage = passage;
    line.literal(R"(,"tempo":)");
    fact.tempo = line.tempo();
    line.literal(R"(,"mark":")");
    fact.mark = line.choice(valueNamed<Mark>);
    if (line.has(R"(,"reason":")")) fact.reason = line.choice(valueNamed<Reason>);
    if (line.has(R"(,"try":true)"))
        fact.kind = RunKind::attempt;
    else if (line.has(R"(,"as":")"))
        fact.kind = line.choice(valueNamed<RunKind>);
    line.literal(R"(,"ms":)");
    fact.millis = line.integer(0, playingMillis.most);
    if (line.has(R"(,"spots":[)")) fact.spots = spots(line);
    fact.entered = line.has(R"(,"entered":true)");
    return fact;
}

TempoFact tempo(LineScanner& line, Id passage) {
    TempoFact fact;
    fact.passage = passage;
    line.literal(R"(,"tempo":)");
    fact.tempo = line.tempo();
    line.literal(R"(,"reason":")");
    fact.reason = line.choice(valueNamed<Reason>);
    line.keep(setsTempo(fact.reason));
    return fact;
}

template <typename Named>
Named naming(LineScanner& line, Id passage, std::string_view key) {
    line.literal(key);
    const Named fact{passage, line.id()};
    line.literal("\"");
    return fact;
}

std::optional<FactBody> body(LineScanner& line) {
    const auto kind = line.word();
    line.literal(R"(","passage":")");
    const Id passage = line.id();
    line.literal("\"");
    if (kind == RunFact::kindName) return run(line, passage);
    if (kind == TempoFact::kindName) return tempo(line, passage);
    if (kind == LateMissFact::kindName) return naming<LateMissFact>(line, passage, R"(,"run":")");
    if (kind == BackFact::kindName) return naming<BackFact>(line, passage, R"(,"retracts":")");
    return std::nullopt;
}

bool isLowerCase(std::string_view device) {
    return std::none_of(device.begin(), device.end(), [](char c) { return c >= 'A' && c <= 'F'; });
}

} // namespace

std::optional<Fact> writtenFact(std::string_view line) {
    const auto [state, summed] = sumOf(line);
    if (state != SumState::right) return std::nullopt;
    LineScanner scanner(summed);
    Fact fact;
    scanner.literal(R"({"v":1,"id":")");
    fact.id = scanner.id();
    scanner.literal(R"(","device":")");
    LineScanner device = scanner; // read twice: as an id, and as the original text
    scanner.id();
    fact.device = device.take(idDigits);
    scanner.literal(R"(","seq":)");
    fact.seq = static_cast<std::uint64_t>(scanner.integer(0, exactCount.most));
    scanner.literal(R"(,"order":)");
    fact.order = scanner.integer(0, mostOrder);
    scanner.literal(R"(,"at":")");
    fact.at = scanner.time();
    scanner.literal(R"(","kind":")");
    auto found = body(scanner);
    if (!found || !scanner.ended() || !isLowerCase(fact.device)) return std::nullopt;
    fact.body = *std::move(found);
    return fact;
}

} // namespace piolo::journal
