// SPDX-License-Identifier: GPL-3.0-or-later
#include "accessible_walk.h"

#include <QQuickItem>

namespace piolo::test {

namespace {

bool needsName(QAccessible::Role role) {
    switch (role) {
    case QAccessible::ListItem:
    case QAccessible::List:
    case QAccessible::Dialog:
    case QAccessible::Graphic:
        return true;
    default:
        return isControl(role);
    }
}

QString describe(const QObject* object) {
    return object == nullptr
               ? QStringLiteral("(gone)")
               : QStringLiteral("%1 %2").arg(object->metaObject()->className(), object->objectName());
}

void judge(QAccessibleInterface* face, const QObject* object, AccessibleWalk& walk) {
    ++walk.controls;
    if (face == nullptr || face->text(QAccessible::Name).trimmed().isEmpty())
        walk.nameless.append(describe(object));
}

void walkFaces(QAccessibleInterface* face, AccessibleWalk& walk) {
    if (face == nullptr || !face->isValid() || face->state().invisible) return;
    if (needsName(face->role())) judge(face, face->object(), walk);
    for (int child = 0; child < face->childCount(); ++child) walkFaces(face->child(child), walk);
}

void walkItems(QQuickItem* item, AccessibleWalk& walk) {
    if (!item->isVisible() || !item->isEnabled()) return;
    if (item->activeFocusOnTab()) judge(QAccessible::queryAccessibleInterface(item), item, walk);
    for (QQuickItem* child : item->childItems()) walkItems(child, walk);
}

} // namespace

bool isControl(QAccessible::Role role) {
    switch (role) {
    case QAccessible::Button:
    case QAccessible::CheckBox:
    case QAccessible::RadioButton:
    case QAccessible::EditableText:
    case QAccessible::ComboBox:
    case QAccessible::SpinBox:
    case QAccessible::Slider:
    case QAccessible::PageTab:
        return true;
    default:
        return false;
    }
}

AccessibleWalk walkAccessibly(QQuickWindow& window) {
    AccessibleWalk walk;
    walkFaces(QAccessible::queryAccessibleInterface(&window), walk);
    walkItems(window.contentItem(), walk);
    return walk;
}

} // namespace piolo::test
