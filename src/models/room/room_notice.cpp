// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/room/room_notice.h"

#include "models/settings/settings_model.h"
#include "practice/drill/drill_session.h"
#include "practice/faults/fault_text.h"
#include "practice/log/practice_book.h"
#include "practice/ports/sound_port.h"

#include <string>

namespace piolo::models {

namespace {

QString lineOf(const Fault& fault) {
    const QString sentence = practice::faultSentence(fault);
    return sentence.left(1).toUpper() + sentence.mid(1);
}

} // namespace

RoomNotice::RoomNotice(practice::PracticeBook& book, practice::SoundPort& sound,
                       const practice::DrillSession& session, const SettingsModel& settings)
    : book_(book), sound_(sound), session_(session), settings_(settings) {
    connect(&book_, &practice::PracticeBook::troubleChanged, this, &RoomNotice::changed);
    connect(&session_, &practice::DrillSession::fellBehind, this, &RoomNotice::changed);
    connect(&settings_, &SettingsModel::faultChanged, this, &RoomNotice::changed);
    sound_.onChange([this] { emit changed(); });
}

RoomNotice::~RoomNotice() {
    sound_.onChange([] {});
}

QString RoomNotice::text() const {
    if (book_.trouble()) return lineOf(*book_.trouble());
    if (!settings_.fault().isEmpty()) return settings_.fault();
    if (sound_.state().kind == practice::SoundState::Kind::needsRestart)
        return lineOf({FaultNumber::soundNeedsRestart, {}, {}});
    if (sound_.state().kind == practice::SoundState::Kind::silent)
        return lineOf({FaultNumber::noSoundDevice, {}, {}});
    if (book_.readOnly()) return lineOf(book_.readOnlyReason());
    if (session_.keysThatWaited() + session_.pulsesLeftOut() > 0)
        return lineOf(
            {FaultNumber::fellBehind,
             {},
             {std::to_string(session_.keysThatWaited()), std::to_string(session_.pulsesLeftOut())}});
    if (!book_.readFaults().empty())
        return qtTrId("log.bad-lines").arg(practice::faultLine(book_.readFaults().front()));
    return {};
}

} // namespace piolo::models
