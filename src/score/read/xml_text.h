// SPDX-License-Identifier: GPL-3.0-or-later
// XML from outside: size-checked, parsed, with the line of each element.
#pragma once

#include "core/base/result.h"

#include <cstddef>
#include <pugixml.hpp>
#include <string>
#include <string_view>
#include <vector>

namespace piolo::score {

/// Holds the parsed document. Nodes are valid only while this object lives.
class XmlText {
public:
    /// UTF-8, UTF-16 or ISO-8859-1. Faults, with `file` and if possible a line: scoreTooLarge, scoreEncoding,
    /// brokenXml, ownEntities.
    Done load(std::string_view bytes, const std::string& file);

    [[nodiscard]] pugi::xml_node root() const { return document_.document_element(); }
    /// Counted from 1; 0 if unknown (UTF-16).
    [[nodiscard]] long lineOf(pugi::xml_node node) const;

private:
    [[nodiscard]] long lineAt(std::ptrdiff_t offset) const;
    [[nodiscard]] bool isTooDeep() const;

    pugi::xml_document document_;
    std::vector<std::size_t> lineEnds_;
};

} // namespace piolo::score
