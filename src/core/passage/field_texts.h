// SPDX-License-Identifier: GPL-3.0-or-later
// The values inside a described value, each as a player writes it.
#pragma once

#include "core/base/fields.h"
#include "core/base/id.h"
#include "core/base/text_form.h"
#include "core/base/value_names.h"
#include "core/passage/click_pattern.h"
#include "core/time/tempo.h"

#include <optional>
#include <string>
#include <vector>

namespace piolo {

struct FieldText {
    std::string key;  ///< with those of the values around it: "tempi.target"
    std::string text; ///< tempi in BPM, "3/8", "yes"; empty for none
};

/// Gathers them: a `Fields` for describe().
class FieldTexts {
public:
    explicit FieldTexts(std::string path) : path_(std::move(path)) {}

    template <typename Value, typename... Bounds>
    void field(const char* key, Value& value, Bounds... bounds) {
        if constexpr (Described<Value>) {
            FieldTexts inner(path_ + key + '.');
            describe(inner, value);
            texts.insert(texts.end(), inner.texts.begin(), inner.texts.end());
        } else
            texts.push_back({path_ + key, textOf(value, bounds...)});
    }
    template <typename With>
    void unusual(const char* /*key*/, bool /*unusual*/, With with) {
        with();
    }
    template <typename With>
    void known(const char* key, bool known, With with) {
        if (known)
            with();
        else
            texts.push_back({path_ + key, {}});
    }
    void check(bool /*fits*/, const char* /*key*/) {}

    std::vector<FieldText> texts;

private:
    static std::string textOf(bool value) { return value ? "yes" : "no"; }
    static std::string textOf(Tempo value) { return value.text(); }
    static std::string textOf(Id value) { return value.isNone() ? std::string{} : value.text(); }
    static std::string textOf(Fraction value) { return value.isZero() ? std::string{} : value.text(); }
    static std::string textOf(Fraction value, SwingForm /*form*/) { return swingText(value); }
    static std::string textOf(std::int32_t value, Range /*range*/) { return std::to_string(value); }
    template <typename... Bounds>
    static std::string textOf(const std::string& value, Bounds... /*bounds*/) {
        return value;
    }
    template <typename Value>
    requires(HasValueNames<Value> || HasTextForm<Value>) static std::string textOf(const Value& value) {
        if constexpr (HasValueNames<Value>)
            return std::string(valueName(value));
        else
            return TextForm<Value>::text(value);
    }
    static std::string textOf(const std::vector<Accent>& accents, Most most);
    static std::string textOf(const std::vector<BreathPlace>& breaths, Most most);

    std::string path_;
};

/// Of `value`, whose own key goes before theirs. Two values of one type give the same keys.
template <Described Value>
[[nodiscard]] std::vector<FieldText> fieldTexts(Value value, const std::string& key = {}) {
    FieldTexts in(key.empty() ? key : key + '.');
    describe(in, value);
    return std::move(in.texts);
}

} // namespace piolo
