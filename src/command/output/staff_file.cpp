// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/output/staff_file.h"

#include "command/output/report.h"
#include "drawings/plugin/drawing_functions.h"
#include "files/atomic_file.h"
#include "files/plugin.h"
#include "plots/staff/staff_glyphs.h"

#include <span>

namespace piolo::command {

namespace {

/// One line each; "" if there is nothing.
std::string remarksOn(const drawings::StaffPicture& picture) {
    std::string text;
    if (picture.inexact > 0)
        text.append("notes drawn as the nearest that can be written: ")
            .append(std::to_string(picture.inexact))
            .append(1, '\n');
    if (picture.plainShapes)
        text.append("drawn with plain shapes: the font ")
            .append(plots::StaffGlyphs::family)
            .append(" is not installed (Debian: fonts-oflb-euterpe)\n");
    return text;
}

} // namespace

Done writeStaff(const std::string& path, plots::PictureKind kind, const StaffMusic& music,
                const std::string& title, drawings::StaffPictureSize size) {
    const auto drawing = files::pluginFunctions<drawings::DrawingFunctions>();
    if (!drawing) return drawing.fault();
    const drawings::StaffPicture picture = (*drawing)->staffPicture(kind, music, title, size);
    if (picture.bytes.empty()) return Fault{FaultNumber::cannotWrite, {path}, {}};
    const Done written = files::replaceFile(path, std::as_bytes(std::span(picture.bytes)));
    return written ? say(remarksOn(picture)) : written;
}

} // namespace piolo::command
