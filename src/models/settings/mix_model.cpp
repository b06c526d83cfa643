// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/settings/mix_model.h"

#include "models/text/formatter.h"

#include <algorithm>
#include <array>
#include <string>

namespace piolo::models {

namespace {

// The overall level first, then the layers in the engine's order: names in the settings file.
constexpr std::array names{"whole", "downbeat", "group", "beat", "subdivision", "countIn", "cue", "model"};
static_assert(names.size() == engine::layerCount + 1);

std::string nameAt(int row) { return names[static_cast<std::size_t>(row)]; }

float usualLevel(int row) { return row == 0 ? engine::Mix{}.level : engine::Mix{}.layerLevel[0]; }

} // namespace

MixModel::MixModel(journal::MachineSettings& machine, QObject* parent)
    : QAbstractListModel(parent), machine_(machine) {}

int MixModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(names.size());
}

QVariant MixModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
    const int row = index.row();
    const std::array words{qtTrId("sound.layer.all"),          qtTrId("sound.layer.downbeats"),
                           qtTrId("sound.layer.groups"),       qtTrId("sound.layer.beats"),
                           qtTrId("sound.layer.subdivisions"), qtTrId("sound.layer.count-in"),
                           qtTrId("sound.layer.cues"),         qtTrId("sound.layer.notes")};
    switch (role) {
    case Qt::DisplayRole:
    case Words:
        return words[static_cast<std::size_t>(row)];
    case Level:
        return level(row);
    case LevelText:
        return Formatter::ofHundred(level(row));
    case Muted:
        return muted(row);
    case CanMute:
        return row > 0;
    default:
        return {};
    }
}

QHash<int, QByteArray> MixModel::roleNames() const {
    return {
        {Words, "words"}, {Level, "level"}, {LevelText, "levelText"}, {Muted, "muted"}, {CanMute, "canMute"}};
}

double MixModel::level(int row) const {
    const auto found = machine_.levels.find(nameAt(row));
    const double level =
        found == machine_.levels.end() ? static_cast<double>(usualLevel(row)) : found->second;
    return std::clamp(level, 0.0, 1.0);
}

bool MixModel::muted(int row) const {
    const auto found = machine_.muted.find(nameAt(row));
    return row > 0 && found != machine_.muted.end() && found->second;
}

engine::Mix MixModel::mix() const {
    engine::Mix mix;
    mix.voice = engine::voiceNamed(machine_.voice).value_or(mix.voice);
    mix.level = static_cast<float>(level(0));
    for (int layer = 0; layer < engine::layerCount; ++layer) {
        mix.layerLevel[static_cast<std::size_t>(layer)] = static_cast<float>(level(layer + 1));
        mix.muted[static_cast<std::size_t>(layer)] = muted(layer + 1);
    }
    return mix;
}

void MixModel::setLevel(int row, double wanted) {
    if (row < 0 || row >= rowCount()) return;
    const double clamped = std::clamp(wanted, 0.0, 1.0);
    if (clamped == level(row)) return;
    machine_.levels[nameAt(row)] = clamped;
    emit dataChanged(index(row), index(row), {Level, LevelText});
    emit changed(row);
}

void MixModel::setMuted(int row, bool wanted) {
    if (row < 1 || row >= rowCount() || wanted == muted(row)) return;
    machine_.muted[nameAt(row)] = wanted;
    emit dataChanged(index(row), index(row), {Muted});
    emit changed(row);
}

} // namespace piolo::models
