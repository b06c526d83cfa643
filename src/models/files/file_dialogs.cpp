// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/files/file_dialogs.h"

#include "models/files/file_kind.h"
#include "models/text/typed_file.h"

#include <QDir>
#include <QFileInfo>
#include <QQmlEngine>
#include <QQuickItem>

#include <algorithm>

namespace piolo::models {

namespace {

/// Between Qt's own dialog and the edge of the window.
constexpr double edge = 8;

const QQuickItem* itemNamed(const char* name, const QQuickItem* under) {
    if (under->isVisible() && under->objectName() == QLatin1String(name)) return under;
    for (const QQuickItem* const child : under->childItems())
        if (const QQuickItem* const found = itemNamed(name, child)) return found;
    return nullptr;
}

/// Qt's own dialog returns a name that was typed without a scheme.
QString pathOf(const QUrl& file) {
    return file.isLocalFile() ? file.toLocalFile() : QUrl::fromPercentEncoding(file.toEncoded());
}

/// Qt's own dialog, while it is open; null if there is none.
QObject* openIn(const QQuickWindow* window) {
    if (window == nullptr) return nullptr;
    for (QObject* const child : window->children())
        if (child->inherits("QQuickFileDialogImpl") && child->property("visible").toBool()) return child;
    return nullptr;
}

} // namespace

FileDialogs* FileDialogs::present_ = nullptr;

FileDialogs::FileDialogs(journal::MachineSettings& machine, QObject* parent)
    : QObject(parent), machine_(machine) {
    present_ = this;
}

FileDialogs::~FileDialogs() {
    if (present_ == this) present_ = nullptr;
}

FileDialogs* FileDialogs::create(QQmlEngine*, QJSEngine*) {
    QQmlEngine::setObjectOwnership(present_, QQmlEngine::CppOwnership);
    return present_;
}

QUrl FileDialogs::folder() const {
    const QString kept = QString::fromStdString(machine_.folder);
    return QUrl::fromLocalFile(!kept.isEmpty() && QFileInfo(kept).isDir() ? kept : QDir::homePath());
}

QStringList FileDialogs::filters(const QString& kind, bool saving) {
    const FileKindRow* const row = fileKindNamed(kind);
    return row == nullptr ? QStringList() : fileFilters(*row, saving);
}

QUrl FileDialogs::offered(const QString& kind, const QString& typed) const {
    const FileKindRow* const row = fileKindNamed(kind);
    const QString path = typedPath(typed);
    const QString name = path.isEmpty() && row != nullptr ? offeredName(*row) : path;
    return QUrl::fromLocalFile(QDir(folder().toLocalFile()).filePath(name)); // an absolute one stays as it is
}

QString FileDialogs::path(const QUrl& file) {
    const QString path = pathOf(file);
    const QString home = QDir::homePath() + QLatin1Char('/');
    return path.startsWith(home) ? QStringLiteral("~/") + path.mid(home.size()) : path;
}

bool FileDialogs::exists(const QString& kind, const QString& typed) {
    const FileKindRow* const row = fileKindNamed(kind);
    return row != nullptr && QFileInfo::exists(typedPath(typed, usualEnding(row->kind)));
}

void FileDialogs::remember(const QUrl& file) {
    const std::string kept = QFileInfo(pathOf(file)).absolutePath().toStdString();
    if (kept == machine_.folder) return;
    machine_.folder = kept;
    emit folderChanged();
}

bool FileDialogs::keepWithin(QQuickWindow* window) {
    QObject* const dialog = openIn(window);
    if (dialog == nullptr) return false;
    const auto fit = [&](const char* size, const char* wanted, double room) {
        dialog->setProperty(size, std::min(dialog->property(wanted).toDouble(), room - 2 * edge));
    };
    fit("width", "implicitWidth", window->width());
    fit("height", "implicitHeight", window->height());
    if (const QQuickItem* const name = itemNamed("fileNameTextField", window->contentItem()))
        connect(name, SIGNAL(accepted()), this, SLOT(acceptName()), Qt::UniqueConnection);
    return true;
}

void FileDialogs::acceptName() {
    const auto* const name = qobject_cast<QQuickItem*>(sender());
    QObject* const dialog = name == nullptr ? nullptr : openIn(name->window());
    if (dialog == nullptr) return;
    dialog->setProperty("fileName", name->property("text"));
    QMetaObject::invokeMethod(dialog, "accept");
}

} // namespace piolo::models
