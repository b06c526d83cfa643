// SPDX-License-Identifier: GPL-3.0-or-later
// What a JSON Schema says of a described value, as far as keys, types and bounds go.
#pragma once

#include "core/base/fields.h"
#include "core/base/id.h"
#include "core/base/text_form.h"
#include "core/base/value_names.h"

#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <vector>

namespace piolo::test {

/// A `Fields` for describe(), which goes into every member that may be missing.
class SchemaFields {
public:
    using json = nlohmann::json;

    /// `name`: what is said of a name.
    explicit SchemaFields(json name) : name_(std::move(name)) {}

    json properties = json::object();
    json required = json::array();
    json dependent = json::object(); ///< keys that must come with a key that may be missing

    [[nodiscard]] json schema() const {
        json made{{"properties", properties}, {"required", required}};
        if (!dependent.empty()) made["dependentRequired"] = dependent;
        return made;
    }

    template <typename Value, typename... Bounds>
    void field(const char* key, Value& value, Bounds... bounds) {
        properties[key] = of(value, bounds...);
        if (optional_ == nullptr)
            required.push_back(key);
        else if (std::string(optional_) != key)
            dependent[optional_].push_back(key);
    }
    template <typename With>
    void unusual(const char* key, bool /*unusual*/, With with) {
        optional_ = key;
        with();
        optional_ = nullptr;
    }
    template <typename With>
    void known(const char* key, bool known, With with) {
        unusual(key, known, with);
    }
    void check(bool /*fits*/, const char* /*key*/) {}

private:
    struct Items {
        json numbers = json::array();
        std::size_t least = 0;
        template <typename Number>
        void item(Number& /*number*/, Range range) {
            numbers.push_back(whole(range));
            least = numbers.size();
        }
        template <typename Number>
        void lastItem(Number& /*number*/, Range range, Number /*usual*/) {
            numbers.push_back(whole(range));
        }
    };

    static json whole(Range range) {
        return {{"type", "integer"}, {"minimum", range.least}, {"maximum", range.most}};
    }
    json of(bool& /*value*/) { return {{"type", "boolean"}}; }
    json of(Id& /*value*/) { return {{"type", "string"}}; }
    json of(Tempo& /*value*/) { return whole({Tempo::least, Tempo::most}); }
    json of(std::string& /*value*/) { return {{"type", "string"}}; }
    json of(std::string& /*value*/, Name /*name*/) { return name_; }
    json of(std::string& /*value*/, Longest longest) {
        return {{"type", "string"}, {"maxLength", longest.bytes}};
    }
    template <typename Number>
    json of(Number& /*value*/, Range range) {
        return whole(range);
    }
    template <typename Value, typename Form>
    requires requires(std::string_view text) { Form::parse(text); }
    json of(Value& /*value*/, Form /*form*/) { return {{"type", "string"}}; }
    template <typename Value>
    json of(Value& /*value*/, OneOf<Value> oneOf) {
        json names = json::array();
        for (const auto name : valueNames<Value>)
            if (const auto value = valueNamed<Value>(name); value && oneOf.allows(*value))
                names.push_back(name);
        return {{"enum", names}};
    }
    template <typename Value>
    json of(std::optional<Value>& /*value*/) {
        Value inner{};
        json said = of(inner);
        said["type"] = json::array({said["type"], "null"});
        return said;
    }
    template <typename Element, typename... Bounds>
    json of(std::vector<Element>& /*list*/, Bounds... bounds) {
        Element element{};
        json list{{"type", "array"}, {"items", of(element)}};
        ((list["maxItems"] = bounds.elements), ...);
        return list;
    }
    template <typename Value>
    json of(Value& value) {
        if constexpr (Described<Value>) {
            SchemaFields inner(name_);
            describe(inner, value);
            return inner.schema();
        } else if constexpr (DescribedItems<Value>) {
            Items items;
            describeItems(items, value);
            return {{"type", "array"},
                    {"prefixItems", items.numbers},
                    {"minItems", items.least},
                    {"maxItems", items.numbers.size()}};
        } else if constexpr (HasValueNames<Value>)
            return of(value, OneOf<Value>{[](Value /*any*/) noexcept { return true; }});
        else {
            static_assert(HasTextForm<Value>);
            return {{"type", "string"}};
        }
    }

    json name_;
    const char* optional_ = nullptr;
};

} // namespace piolo::test
