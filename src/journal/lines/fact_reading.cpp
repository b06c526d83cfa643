// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/lines/fact_line.h"

#include "core/base/utf8.h"
#include "journal/json/json_object.h"
#include "journal/json/json_reading.h"
#include "journal/lines/line_head.h"
#include "journal/lines/line_sum.h"
#include "journal/lines/written_line.h"

namespace piolo::journal {

namespace {

using nlohmann::json;

constexpr std::size_t longestWord = 60;
constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";

LineHead headOf(const json& line, const FaultLocation& location) {
    FirstFault ignored{location, {}};
    JsonObject object(line, "", ignored);
    LineHead head;
    head.device = object.id("device").text();
    head.seq = static_cast<std::uint64_t>(object.integer("seq", 0, exactCount.most));
    head.order = object.integer("order", 0, mostOrder);
    return head;
}

/// An empty body of the line's kind, or a fault: a newer format, an unknown kind.
std::optional<FactBody> kindOf(JsonObject& object, FirstFault& first) {
    const auto version = object.integer("v", 1, exactCount.most);
    if (version > formatVersion) first.keep(FaultNumber::newerFormat, {std::to_string(version)});
    const auto word = object.text("kind");
    auto body = bodyOfKind(word);
    if (!body) first.keep(FaultNumber::unknownKind, {word.substr(0, longestWord)});
    return first.fault ? std::nullopt : std::move(body);
}

Timestamp timeOf(JsonObject& object) {
    const auto at = Timestamp::parse(object.text("at"));
    if (!at) object.refuse("at");
    return at.value_or(Timestamp{});
}

/// A newer format may use a different checksum.
bool isOfThisFormat(const json& line) {
    const auto version = line.find("v");
    return version == line.end() || integerIn(*version, 1, formatVersion).has_value();
}

/// The general way, for any JSON object.
Result<Fact> readObject(std::string_view line, const FaultLocation& location, LineHead& head) {
    if (!isUtf8(line)) return Fault{FaultNumber::notUtf8, location, {}};
    const auto parsed = parseJson(line);
    if (!parsed) return Fault{FaultNumber::badJson, location, {}};
    FirstFault first{location, {}};
    JsonObject object(*parsed, "", first);
    if (sumOf(line).state == SumState::wrong && isOfThisFormat(*parsed))
        return Fault{FaultNumber::wrongSum, location, {}};
    head = headOf(*parsed, location);
    auto body = kindOf(object, first);
    if (!body) return *first.fault;
    Fact fact;
    fact.id = object.id("id");
    fact.device = object.id("device").text();
    fact.seq = static_cast<std::uint64_t>(object.integer("seq", 0, exactCount.most));
    fact.order = object.integer("order", 0, mostOrder);
    fact.at = timeOf(object);
    JsonReading reading(object);
    std::visit([&](auto& kind) { describe(reading, kind); }, *body);
    fact.body = *std::move(body);
    if (first.fault) return *first.fault;
    return fact;
}

} // namespace

Result<Fact> readLine(std::string_view line, const FaultLocation& location, LineHead& head) {
    if (line.size() > longestLine) return Fault{FaultNumber::lineTooLong, location, {}};
    if (line.starts_with(byteOrderMark)) line.remove_prefix(byteOrderMark.size());
    auto written = writtenFact(line);
    if (!written) return readObject(line, location, head);
    head = {written->device, written->seq, written->order};
    return *std::move(written);
}

Result<Fact> fromLine(std::string_view line, const FaultLocation& location) {
    LineHead head;
    return readLine(line, location, head);
}

} // namespace piolo::journal
