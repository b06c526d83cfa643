// SPDX-License-Identifier: GPL-3.0-or-later
// What the platform's file dialogs are asked for, and the folder in which they open.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QQuickWindow>
#include <QString>
#include <QStringList>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

#include "journal/settings/machine_settings.h"

class QJSEngine;
class QQmlEngine;

namespace piolo::models {

/// Window thread. One at a time; belongs to PracticeRoom.
class FileDialogs : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    /// The folder of the file that was chosen last; the home folder if there is none or it is gone.
    Q_PROPERTY(QUrl folder READ folder NOTIFY folderChanged)
public:
    /// `machine` outlives it.
    explicit FileDialogs(journal::MachineSettings& machine, QObject* parent = nullptr);
    ~FileDialogs() override;
    /// For the QML engine: the one of the room that was created in C++.
    static FileDialogs* create(QQmlEngine* engine, QJSEngine* scripts);

    [[nodiscard]] QUrl folder() const;
    /// By the name of a kind in file_kind.h.
    Q_INVOKABLE [[nodiscard]] static QStringList filters(const QString& kind, bool saving);
    /// Where a dialog that saves begins: the file that is typed, otherwise an offered name in the folder.
    Q_INVOKABLE [[nodiscard]] QUrl offered(const QString& kind, const QString& typed) const;
    /// The file's path, as a player would type it.
    Q_INVOKABLE [[nodiscard]] static QString path(const QUrl& file);
    /// True if there is a file of that name (as typed) already.
    Q_INVOKABLE [[nodiscard]] static bool exists(const QString& kind, const QString& typed);
    /// The next dialog opens in the folder of this file.
    Q_INVOKABLE void remember(const QUrl& file);
    /// Where the platform has no dialog of its own, Qt draws one inside the window: keeps it within, and lets
    /// Return in its name save. False if there is none, because the platform's own is open.
    Q_INVOKABLE bool keepWithin(QQuickWindow* window);

signals:
    /// The folder is another one, to be saved with the machine's settings.
    void folderChanged();

private slots:
    void acceptName();

private:
    static FileDialogs* present_;
    journal::MachineSettings& machine_;
};

} // namespace piolo::models
