// SPDX-License-Identifier: GPL-3.0-or-later
// Reads a described value from a JSON object, checked. Nothing here throws.
#pragma once

#include "core/base/fields.h"
#include "core/base/text_form.h"
#include "core/base/value_names.h"
#include "journal/json/json_object.h"

#include <cstddef>
#include <limits>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace piolo::journal {

/// The numbers of a list of fixed length.
class JsonItems {
public:
    explicit JsonItems(const nlohmann::json& list) : list_(list), fits_(list.is_array()) {}

    template <typename Number>
    void item(Number& number, Range range) {
        fits_ = fits_ && next_ < list_.size();
        const auto read = fits_ ? integerIn(list_[next_++], range.least, range.most) : std::nullopt;
        fits_ = read.has_value();
        number = static_cast<Number>(read.value_or(range.least));
    }
    template <typename Number>
    void lastItem(Number& number, Range range, Number usual) {
        if (fits_ && next_ == list_.size())
            number = usual;
        else
            item(number, range);
    }
    /// Whether every number was there, within its range, and nothing else.
    [[nodiscard]] bool fit() const { return fits_ && next_ == list_.size(); }

private:
    const nlohmann::json& list_;
    std::size_t next_ = 0;
    bool fits_;
};

/// A `Fields` for describe(): a missing key, and a value of the wrong type or out of its bounds, is a fault
/// where the object keeps it, and the member keeps what it has.
class JsonReading {
public:
    static constexpr std::size_t anyLength = std::numeric_limits<std::size_t>::max();

    /// `longest`: of a name, in characters. Longer names are nameTooLong(), not a fault of the object.
    explicit JsonReading(JsonObject object, std::size_t longest = anyLength)
        : object_(std::move(object)), longestName_(longest) {}

    template <typename Value, typename... Bounds>
    void field(const char* key, Value& value, Bounds... bounds) {
        if constexpr (Described<Value>) {
            JsonReading inner(object_.object(key), longestName_);
            describe(inner, value);
            nameTooLong_ = nameTooLong_ || inner.nameTooLong_;
        } else
            read(key, value, bounds...);
    }
    template <typename With>
    void unusual(const char* key, bool /*unusual*/, With with) {
        if (object_.has(key)) with();
    }
    template <typename With>
    void known(const char* key, bool /*known*/, With with) {
        if (object_.has(key)) with();
    }
    void check(bool fits, const char* key) {
        if (!fits) object_.refuse(key);
    }
    [[nodiscard]] bool nameTooLong() const { return nameTooLong_; }

private:
    void read(const char* key, bool& value) { value = object_.flag(key); }
    void read(const char* key, Id& value) { value = object_.id(key); }
    void read(const char* key, Tempo& value) { value = object_.tempo(key); }
    void read(const char* key, std::string& value) { value = object_.text(key); }
    void read(const char* key, std::string& value, Name name);
    void read(const char* key, std::string& value, Longest longest);
    template <typename Number>
    void read(const char* key, Number& value, Range range) {
        value = static_cast<Number>(object_.integer(key, range.least, range.most));
    }
    template <typename Value>
    requires(HasTextForm<Value> || HasValueNames<Value>) void read(const char* key, Value& value) {
        keep(key, value, parsed<Value>(object_.text(key)));
    }
    template <typename Value>
    void read(const char* key, Value& value, OneOf<Value> oneOf) {
        read(key, value);
        check(oneOf.allows(value), key);
    }
    template <typename Value, typename Form>
    requires requires(std::string_view text) { Form::parse(text); }
    void read(const char* key, Value& value, Form /*form*/) {
        keep(key, value, Form::parse(object_.text(key)));
    }
    /// A value that may be null.
    template <typename Value>
    void read(const char* key, std::optional<Value>& value) {
        if (object_.value(key).is_null()) return value.reset();
        value = blank<Value>();
        read(key, *value);
    }
    template <typename Element>
    void read(const char* key, std::vector<Element>& list, Most most = {anyLength}) {
        const nlohmann::json& found = object_.value(key);
        list.clear();
        check(found.is_array() && found.size() <= most.elements, key);
        if (!found.is_array()) return;
        for (const nlohmann::json& json : found) {
            auto element = elementOf<Element>(json);
            if (!element) return object_.refuse(key);
            list.push_back(*std::move(element));
        }
    }

    template <typename Value>
    void keep(const char* key, Value& value, const std::optional<Value>& read) {
        check(read.has_value(), key);
        if (read) value = *read;
    }
    template <typename Value>
    static std::optional<Value> parsed(std::string_view text) {
        if constexpr (HasTextForm<Value>)
            return TextForm<Value>::parse(text);
        else
            return valueNamed<Value>(text);
    }
    template <typename Element>
    static std::optional<Element> elementOf(const nlohmann::json& json) {
        if constexpr (DescribedItems<Element>) {
            JsonItems items(json);
            Element element;
            describeItems(items, element);
            return items.fit() ? std::optional(element) : std::nullopt;
        } else
            return json.is_string() ? parsed<Element>(json.get_ref<const std::string&>()) : std::nullopt;
    }

    JsonObject object_;
    std::size_t longestName_;
    bool nameTooLong_ = false;
};

/// An id in a list; no list has the one of all zeros.
template <>
inline std::optional<Id> JsonReading::parsed<Id>(std::string_view text) {
    const auto id = Id::parse(text);
    return id && !id->isNone() ? id : std::nullopt;
}

} // namespace piolo::journal
