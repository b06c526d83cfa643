// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/verbs/mark_lines.h"

#include <cerrno>
#include <cstring>

namespace piolo::command {
namespace {

constexpr std::size_t longestLine = 65'536;
constexpr std::string_view blanks = " \t\r\f\v";

std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(blanks);
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(blanks) - first + 1);
}

} // namespace

std::string MarkLine::text() const {
    switch (kind) {
    case Kind::clean:
        return "clean";
    case Kind::miss:
        return "miss";
    case Kind::back:
        return "back";
    case Kind::tempo:
        break;
    }
    return "tempo " + tempo.text();
}

Result<MarkLine> MarkLine::parse(std::string_view line) {
    if (line == "clean") return MarkLine{Kind::clean};
    if (line == "miss") return MarkLine{Kind::miss};
    if (line == "back") return MarkLine{Kind::back};
    const auto end = line.find_first_of(blanks);
    if (line.substr(0, end) != "tempo") return Fault{FaultNumber::badMark, {}, {std::string(line)}};
    const std::string_view number = end == std::string_view::npos ? "" : trimmed(line.substr(end));
    const auto tempo = Tempo::parse(number);
    if (!tempo) return Fault{FaultNumber::badMarkTempo, {}, {std::string(number)}};
    return MarkLine{Kind::tempo, *tempo};
}

Fault MarkReader::here(Fault fault) const {
    fault.location = {"-", line_};
    return fault;
}

Done MarkReader::readLine(std::string& line, bool& ended) {
    line.clear();
    ++line_;
    int c = 0;
    errno = 0;
    while ((c = std::getc(in_)) != EOF && c != '\n') {
        if (line.size() == longestLine) return here({FaultNumber::lineTooLong, {}, {}});
        line.push_back(static_cast<char>(c));
    }
    if (std::ferror(in_) != 0) return here({FaultNumber::cannotRead, {}, {std::strerror(errno)}});
    ended = c == EOF && line.empty();
    return done();
}

Result<std::optional<MarkLine>> MarkReader::next() {
    std::string line;
    bool ended = false;
    std::string_view words;
    while (words.empty()) {
        const Done read = readLine(line, ended);
        if (!read) return read.fault();
        if (ended) return std::optional<MarkLine>();
        words = trimmed(line);
    }
    const auto mark = MarkLine::parse(words);
    if (!mark) return here(mark.fault());
    return std::optional(*mark);
}

} // namespace piolo::command
