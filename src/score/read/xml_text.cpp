// SPDX-License-Identifier: GPL-3.0-or-later
#include "score/read/xml_text.h"

#include "core/base/utf8.h"
#include "score/read/encoding.h"
#include "score/read/limits.h"

#include <algorithm>
#include <optional>

namespace piolo::score {

namespace {

constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";

std::size_t markupIn(std::string_view bytes) {
    return static_cast<std::size_t>(
        std::ranges::count_if(bytes, [](char c) { return c == '<' || c == '='; }));
}

std::vector<std::size_t> lineEndsOf(std::string_view bytes) {
    std::vector<std::size_t> ends;
    for (auto at = bytes.find('\n'); at != std::string_view::npos; at = bytes.find('\n', at + 1))
        ends.push_back(at);
    return ends;
}

pugi::xml_encoding parserEncoding(Encoding encoding) {
    switch (encoding) {
    case Encoding::latin1:
        return pugi::encoding_latin1;
    case Encoding::utf16:
        return pugi::encoding_auto;
    default:
        return pugi::encoding_utf8;
    }
}

/// Entities can only be declared in the internal subset of the DOCTYPE.
bool hasOwnEntities(const pugi::xml_document& document) {
    return std::ranges::any_of(document.children(), [](const pugi::xml_node& node) {
        return node.type() == pugi::node_doctype &&
               std::string_view(node.value()).find('[') != std::string_view::npos;
    });
}

std::optional<Fault> sizeFault(std::string_view bytes, const std::string& file) {
    if (bytes.size() > largestScore) return Fault{FaultNumber::scoreTooLarge, {file}, {"32 MiB"}};
    if (markupIn(bytes) > mostMarkup) return Fault{FaultNumber::scoreTooLarge, {file}, {"2000000 < and ="}};
    return std::nullopt;
}

} // namespace

Done XmlText::load(std::string_view bytes, const std::string& file) {
    if (const auto fault = sizeFault(bytes, file)) return *fault;
    if (bytes.starts_with(byteOrderMark)) bytes.remove_prefix(byteOrderMark.size());
    const Encoding encoding = encodingOf(bytes);
    if (encoding != Encoding::utf16) lineEnds_ = lineEndsOf(bytes);
    const auto wrong = encoding == Encoding::utf8 ? firstNotUtf8(bytes) : std::string_view::npos;
    if (encoding == Encoding::other) return Fault{FaultNumber::scoreEncoding, {file, 1}, {}};
    if (wrong != std::string_view::npos)
        return Fault{FaultNumber::scoreEncoding, {file, lineAt(static_cast<std::ptrdiff_t>(wrong))}, {}};
    const unsigned options = pugi::parse_default | pugi::parse_doctype | pugi::parse_embed_pcdata;
    const auto parsed = document_.load_buffer(bytes.data(), bytes.size(), options, parserEncoding(encoding));
    if (!parsed) return Fault{FaultNumber::brokenXml, {file, lineAt(parsed.offset)}, {parsed.description()}};
    if (hasOwnEntities(document_)) return Fault{FaultNumber::ownEntities, {file}, {}};
    if (isTooDeep()) return Fault{FaultNumber::scoreTooLarge, {file}, {"64 elements inside each other"}};
    return done();
}

long XmlText::lineOf(pugi::xml_node node) const { return lineAt(node.offset_debug()); }

long XmlText::lineAt(std::ptrdiff_t offset) const {
    if (offset < 0 || lineEnds_.empty()) return 0;
    const auto above = std::ranges::lower_bound(lineEnds_, static_cast<std::size_t>(offset));
    return static_cast<long>(above - lineEnds_.begin()) + 1;
}

bool XmlText::isTooDeep() const {
    int depth = 1;
    for (pugi::xml_node node = root(); node;) {
        if (depth > deepestElement) return true;
        if (const auto child = node.first_child()) {
            node = child;
            ++depth;
            continue;
        }
        while (node && !node.next_sibling()) {
            node = node.parent();
            --depth;
        }
        node = node ? node.next_sibling() : node;
    }
    return false;
}

} // namespace piolo::score
