// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawings/sheet_file.h"

#include "drawings/drawing_application.h"
#include "plots/paper/paper_words.h"

namespace piolo::drawings {

Result<std::string> sheetFile(const std::string& path, const Notebook& notebook,
                              const std::vector<Id>& passages, plots::PaperSize paper) {
    const DrawingApplication application;
    const auto bytes =
        plots::paperBytes(QString::fromStdString(path), plots::paperSheet(notebook, passages, paper));
    if (!bytes) return bytes.fault();
    return bytes->toStdString();
}

} // namespace piolo::drawings
