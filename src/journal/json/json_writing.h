// SPDX-License-Identifier: GPL-3.0-or-later
// Writes a described value into a JSON object.
#pragma once

#include "core/base/fields.h"
#include "core/base/id.h"
#include "core/base/text_form.h"
#include "core/base/value_names.h"

#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <vector>

namespace piolo::journal {

/// A `Fields` for describe(): adds keys to `object` in the order in which they are described.
class JsonWriting : public PresentFields {
public:
    using Json = nlohmann::ordered_json;

    explicit JsonWriting(Json& object) : object_(object) {}

    template <typename Value, typename... Bounds>
    void field(const char* key, Value& value, Bounds... bounds) {
        object_[key] = jsonOf(value, bounds...);
    }

private:
    /// The numbers of a list of fixed length.
    struct Items {
        Json list = Json::array();
        template <typename Number>
        void item(Number number, Range /*range*/) {
            list.push_back(number);
        }
        template <typename Number>
        void lastItem(Number number, Range /*range*/, Number usual) {
            if (number != usual) list.push_back(number);
        }
    };

    static Json jsonOf(Id& value) { return value.text(); }
    static Json jsonOf(Tempo& value) { return value.thousandths(); }
    template <typename Value, typename Form>
    requires requires(const Value& value) { Form::text(value); }
    static Json jsonOf(Value& value, Form /*form*/) { return Form::text(value); }
    template <typename Value, typename... Bounds>
    static Json jsonOf(std::optional<Value>& value, Bounds... bounds) {
        return value ? jsonOf(*value, bounds...) : Json(nullptr);
    }
    template <typename Element, typename... Bounds>
    static Json jsonOf(std::vector<Element>& list, Bounds... /*bounds*/) {
        Json json = Json::array();
        for (Element& element : list) json.push_back(jsonOf(element));
        return json;
    }
    template <typename Value, typename... Bounds>
    static Json jsonOf(Value& value, Bounds... /*bounds*/) {
        if constexpr (Described<Value>) {
            Json object = Json::object();
            JsonWriting inner(object);
            describe(inner, value);
            return object;
        } else if constexpr (DescribedItems<Value>) {
            Items items;
            describeItems(items, value);
            return items.list;
        } else if constexpr (HasValueNames<Value>)
            return valueName(value);
        else if constexpr (HasTextForm<Value>)
            return TextForm<Value>::text(value);
        else
            return value;
    }

    Json& object_;
};

/// Adds the keys of `value` to `object`.
template <typename Value>
void write(JsonWriting::Json& object, Value value) {
    JsonWriting out(object);
    describe(out, value);
}

} // namespace piolo::journal
