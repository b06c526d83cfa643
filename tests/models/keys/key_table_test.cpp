// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/keys/key_table.h"

#include <doctest/doctest.h>

#include <set>

using namespace piolo::models;

namespace {

QStringList keysOf(const KeyTable& table, const char* action) {
    return table.triggers(keyActionNamed(action).value());
}

} // namespace

TEST_CASE("no set of keys gives one key two things to do in one place") {
    QStringList names{""};
    for (const QVariant& set : KeyTable::sets()) names << set.toMap().value("value").toString();
    REQUIRE(names.size() == 6);
    for (const QString& name : names) {
        INFO(name.toStdString());
        KeyTable table;
        table.use(name);
        for (const KeyActionInfo& info : keyActions)
            for (const QString& trigger : table.triggers(info.action))
                CHECK_FALSE(table.rival(info.action, trigger).has_value());
    }
}

TEST_CASE("every action has a name of its own, a text and a scope") {
    std::set<std::string_view> names;
    for (const KeyActionInfo& info : keyActions) {
        CAPTURE(info.name);
        CHECK(names.insert(info.name).second);
        CHECK(keyActionNamed(info.name) == info.action);
        CHECK_FALSE(KeyTable::words(info.action).isEmpty());
        CHECK(info.scopes != KeyScope::none);
    }
    CHECK_FALSE(keyActionNamed("sing").has_value());
}

TEST_CASE("a set binds what its words say") {
    struct Says {
        const char* set;
        const char* marks;
        const char* takesBack;
    };
    for (const auto& says : {Says{"pages", "PgDown", "PgUp"}, Says{"leftRight", "Right", "Left"},
                             Says{"upDown", "Down", "Up"}, Says{"spaceReturn", "Space", "Return"}}) {
        INFO(says.set);
        KeyTable table;
        table.use(says.set);
        CHECK(table.at(says.marks, KeyScope::drill) == KeyAction::mark);
        CHECK(table.at(says.takesBack, KeyScope::drill) == KeyAction::back);
        for (const char* action : {"mark", "stop", "faster", "slower", "clean"})
            CHECK_FALSE(keysOf(table, action).isEmpty());
    }
    KeyTable alone;
    alone.use("one");
    CHECK(keysOf(alone, "pedal") == QStringList{"PgDown"});
}

TEST_CASE("from any set to any other is as from the usual keys, and the usual keys undo all of them") {
    for (const QVariant& first : KeyTable::sets())
        for (const QVariant& second : KeyTable::sets()) {
            KeyTable straight;
            straight.use(second.toMap().value("value").toString());
            KeyTable round;
            round.use(first.toMap().value("value").toString());
            round.use(second.toMap().value("value").toString());
            CHECK(round.changed() == straight.changed());
            round.restore();
            CHECK(round.changed().empty());
        }
}

TEST_CASE("a set leaves MIDI switches and the player's own keys, except for a key that it needs") {
    KeyTable table({{"mark", "F5, midi cc 64 ch 1"}, {"try", "Right, F9"}});
    table.use("leftRight");
    CHECK(keysOf(table, "mark") == QStringList{"Space", "Right", "midi cc 64 ch 1"});
    CHECK(keysOf(table, "try") == QStringList{"F9"});
    table.use("no such set");
    CHECK(keysOf(table, "mark") == QStringList{"Space", "Right", "midi cc 64 ch 1"});
}

TEST_CASE("changes are reported by each action's keys") {
    const KeyTable before;
    KeyTable table;
    table.use("upDown");
    const QStringList lines = table.differences(before);
    CHECK(lines.size() == 5);
    CHECK(lines.contains("Take back the last mark: Backspace, Up"));
    CHECK(lines.contains("In “Just a click”: tap the tempo: T, Up"));
    table.remove(KeyAction::attempt, "T");
    CHECK(table.differences(before).contains("Try once at the target: no key"));
    CHECK(before.differences(before).isEmpty());
}

TEST_CASE("saved keys come back as they were, with what this version does not know") {
    const KeyTable::Saved saved{{"mark", "F5, midi note 60 ch 10, a key of tomorrow"},
                                {"sing", "F6"},
                                {"hear", ""},
                                {"back", ",, Ctrl+,, Space"}};
    const KeyTable table(saved);
    CHECK(table.changed() == saved);
    CHECK(keysOf(table, "back") == QStringList{",", "Ctrl+,", "Space"});
    CHECK(keysOf(table, "hear").isEmpty());
    CHECK(table.at("a key of tomorrow", KeyScope::drill) == KeyAction::mark);
    CHECK(table.hasMidi());
    CHECK_FALSE(KeyTable().hasMidi());
}

TEST_CASE("a switch is displayed by its kind, and an unknown text as itself") {
    CHECK(triggerWords(QString("midi cc 64 ch 1")) == "MIDI: controller 64, channel 1");
    CHECK(triggerWords(QString("midi note 60 ch 10")) == "MIDI: note 60, channel 10");
    CHECK(triggerWords(QString("midi program 5 ch 16")) == "MIDI: program 5, channel 16");
    CHECK(triggerWords(QString("midi cc 640 ch 1")) == "midi cc 640 ch 1");
}
