// SPDX-License-Identifier: GPL-3.0-or-later
// Values in few bytes, for this program only: they are read by the same build that wrote them.
#pragma once

#include "core/base/id.h"
#include "core/time/tempo.h"

#include <array>
#include <concepts>
#include <cstring>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

namespace piolo::journal {

/// `T`, or `const T` for reading from it: one list of members serves both directions.
template <typename Given, typename T>
concept Either = std::same_as<std::remove_const_t<Given>, T>;

template <typename T>
concept WholeNumber = std::integral<T> || std::is_enum_v<T>;

/// Appends values. A type that is not listed here has a function packed(packer, value) that passes on its
/// members.
class Packer {
public:
    template <typename... Values>
    void operator()(const Values&... values) {
        (put(values), ...);
    }
    /// The bytes themselves, without their number.
    void raw(std::string_view bytes) { bytes_ += bytes; }
    [[nodiscard]] const std::string& bytes() const noexcept { return bytes_; }
    [[nodiscard]] std::string take() { return std::move(bytes_); }

private:
    void number(std::uint64_t value) {
        for (; value >= 0x80; value >>= 7U) bytes_ += static_cast<char>(value | 0x80U);
        bytes_ += static_cast<char>(value);
    }
    template <WholeNumber T>
    void put(T value) {
        if constexpr (std::is_signed_v<T>) {
            const auto wide = static_cast<std::int64_t>(value);
            number((static_cast<std::uint64_t>(wide) << 1U) ^ static_cast<std::uint64_t>(wide >> 63));
        } else
            number(static_cast<std::uint64_t>(value));
    }
    void put(const Tempo& tempo) { number(static_cast<std::uint64_t>(tempo.thousandths())); }
    void put(const Id& id) {
        std::array<char, sizeof id> bytes{};
        std::memcpy(bytes.data(), &id, sizeof id);
        bytes_.append(bytes.data(), bytes.size());
    }
    void put(const std::string& text) {
        number(text.size());
        bytes_ += text;
    }
    template <typename T>
    void put(const std::optional<T>& value) {
        put(value.has_value());
        if (value) put(*value);
    }
    template <typename T>
    void put(const std::vector<T>& list) {
        number(list.size());
        for (const T& value : list) put(value);
    }
    template <typename T, std::size_t size>
    void put(const std::array<T, size>& list) {
        for (const T& value : list) put(value);
    }
    template <typename Key, typename T>
    void put(const std::map<Key, T>& entries) {
        number(entries.size());
        for (const auto& [key, value] : entries) operator()(key, value);
    }
    template <typename T>
    requires std::is_class_v<T>
    void put(const T& value) { packed(*this, value); }

    std::string bytes_;
};

/// Reads them back. After the first value that does not fit, nothing that was read is valid.
class Unpacker {
public:
    explicit Unpacker(std::string_view bytes) : rest_(bytes) {}

    template <typename... Values>
    void operator()(Values&... values) {
        (get(values), ...);
    }
    [[nodiscard]] std::string_view raw(std::uint64_t size) {
        if (size > rest_.size()) return failed();
        const auto taken = rest_.substr(0, size);
        rest_.remove_prefix(size);
        return taken;
    }
    [[nodiscard]] bool fits() const noexcept { return fits_; }
    [[nodiscard]] std::size_t left() const noexcept { return rest_.size(); }

private:
    std::string_view failed() {
        fits_ = false;
        rest_ = {};
        return {};
    }
    std::uint64_t number() {
        std::uint64_t value = 0;
        for (unsigned shift = 0; shift < 64; shift += 7) {
            if (rest_.empty()) break;
            const auto byte = static_cast<std::uint8_t>(rest_.front());
            rest_.remove_prefix(1);
            value |= static_cast<std::uint64_t>(byte & 0x7FU) << shift;
            if (byte < 0x80) return value;
        }
        failed();
        return 0;
    }
    /// The number of values that follow; each takes at least one byte.
    std::size_t count() {
        const auto count = number();
        if (count > rest_.size()) failed();
        return fits_ ? static_cast<std::size_t>(count) : 0;
    }
    template <WholeNumber T>
    void get(T& value) {
        const std::uint64_t wide = number();
        if constexpr (std::is_signed_v<T>)
            value =
                static_cast<T>(static_cast<std::int64_t>(wide >> 1U) ^ -static_cast<std::int64_t>(wide & 1U));
        else
            value = static_cast<T>(wide);
    }
    void get(Tempo& tempo) { tempo = Tempo::clampedThousandths(static_cast<std::int64_t>(number())); }
    void get(Id& id) {
        const auto bytes = raw(sizeof id);
        if (!bytes.empty()) std::memcpy(&id, bytes.data(), sizeof id);
    }
    void get(std::string& text) { text = raw(number()); }
    template <typename T>
    void get(std::optional<T>& value) {
        bool has = false;
        get(has);
        if (!has) return value.reset();
        if constexpr (std::is_same_v<T, Tempo>)
            get(value.emplace(Tempo::bpm(60)));
        else
            get(value.emplace());
    }
    template <typename T>
    void get(std::vector<T>& list) {
        list.clear();
        const std::size_t size = count();
        list.reserve(size);
        while (list.size() < size && fits_) get(list.emplace_back());
    }
    template <typename T, std::size_t size>
    void get(std::array<T, size>& list) {
        for (T& value : list) get(value);
    }
    template <typename Key, typename T>
    void get(std::map<Key, T>& entries) {
        entries.clear();
        for (std::size_t left = count(); left > 0 && fits_; --left) {
            Key key{};
            get(key);
            get(entries[key]);
        }
    }
    template <typename T>
    requires std::is_class_v<T>
    void get(T& value) { packed(*this, value); }

    std::string_view rest_;
    bool fits_ = true;
};

} // namespace piolo::journal
