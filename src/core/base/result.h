// SPDX-License-Identifier: GPL-3.0-or-later
// Either a value or a fault. No exceptions and no sentences: sentences are made where they are shown.
#pragma once

#include "core/base/fault.h"

#include <utility>
#include <variant>

namespace piolo {

/// Holds either a T or a Fault. Reading the one that is not there is a programming error.
template <typename T>
class [[nodiscard]] Result {
public:
    Result(T value) : held_(std::in_place_index<0>, std::move(value)) {}
    Result(Fault fault) : held_(std::in_place_index<1>, std::move(fault)) {}

    [[nodiscard]] bool ok() const { return held_.index() == 0; }
    explicit operator bool() const { return ok(); }

    [[nodiscard]] const T& value() const& { return *std::get_if<0>(&held_); }
    [[nodiscard]] T& value() & { return *std::get_if<0>(&held_); }
    [[nodiscard]] T&& value() && { return std::move(*std::get_if<0>(&held_)); }
    [[nodiscard]] const Fault& fault() const { return *std::get_if<1>(&held_); }

    const T& operator*() const& { return value(); }
    const T* operator->() const { return &value(); }

private:
    std::variant<T, Fault> held_;
};

/// The Result of an operation that returns no value.
using Done = Result<std::monostate>;

/// Success of an operation that returns no value.
inline Done done() { return Done{std::monostate{}}; }

} // namespace piolo
