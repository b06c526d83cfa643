// SPDX-License-Identifier: GPL-3.0-or-later
// Somebody who has just installed the program, and uses one hand of three.
#pragma once

#include "../screen_fixture.h"

#include <QTemporaryDir>

namespace piolo::test {

enum class Hand { keys, mouse, finger };

/// What a player does from an empty folder on, with that hand only. Everything fails the test if it cannot be
/// done.
class Novice : public ScreenFixture {
public:
    explicit Novice(Hand hand);

    /// Reaches that control with the Tab key and presses Space; or scrolls to it, and clicks or touches it.
    void press(const QString& name);
    void key(int key, Qt::KeyboardModifiers modifiers = Qt::NoModifier);
    /// The one thing that is done without looking: anywhere, or with the key.
    void mark();
    /// By its key at the drill, or by its button.
    void atTheDrill(const char* button, Qt::Key key);
    /// Chooses the option with that value from the drop-down list with that name.
    void choose(const QString& name, const QString& value);
    /// By its name, which is the same in all languages, or from the list.
    void chooseTheOboe();
    /// Presses the button that asks for a file, and takes the first one in the dialog: the sample score.
    void openTheScore(const QString& button);

    /// All keys, clicks and touches so far.
    [[nodiscard]] int presses() const { return presses_; }
    [[nodiscard]] Hand hand() const { return hand_; }
    [[nodiscard]] models::DrillModel& drill() { return *room().drill(); }
    /// The first passage.
    [[nodiscard]] const PassageRecord& record();
    [[nodiscard]] int missed();

private:
    /// With the Tab key, and inside the navigation with the arrow keys.
    bool tabTo(const QQuickItem& item);
    void pressAt(QPoint place);
    /// Turns the wheel, or drags, until the middle of the item is inside what scrolls it.
    void scrollTo(const QString& name);
    void scroll(QPoint place, bool down);
    [[nodiscard]] bool isInSight(const QQuickItem& item) const;
    [[nodiscard]] QQuickItem* option(const QString& value) const;

    Hand hand_;
    int presses_ = 0;
    quint64 wheelMoment_ = 0; // of the last turn, in tenths of a second
    QTemporaryDir scores_;
};

} // namespace piolo::test
