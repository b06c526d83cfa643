// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/passages/click_draft.h"

#include "models/text/breath_text.h"
#include "models/text/formatter.h"

#include <algorithm>

namespace piolo::models {

namespace {

constexpr int accentKinds = 4;

QString figures(const std::vector<Accent>& accents) {
    QString text;
    for (const Accent accent : accents) text += QString::number(static_cast<int>(accent));
    return text;
}

std::vector<Accent> accentsOf(const QString& figures, int beats) {
    std::vector<Accent> accents;
    for (const QChar figure : figures.left(beats))
        accents.push_back(static_cast<Accent>(std::clamp(figure.digitValue(), 0, accentKinds - 1)));
    return accents;
}

Fraction swingOf(DraftReader& reader) {
    const QString text = reader.text("swing").remove(QLatin1Char(' '));
    if (text.isEmpty()) return {1, 1};
    const auto swing = parseSwing(text.toStdString());
    if (!swing) reader.refuse("swing", qtTrId("form.fault.swing"));
    return swing.value_or(Fraction{1, 1});
}

std::vector<BreathPlace> breathsOf(DraftReader& reader) {
    const auto places = readBreaths(reader.text("breaths"));
    if (!places) reader.refuse("breaths", qtTrId("form.fault.breaths").arg(ClickPattern::mostBreaths));
    return places.value_or(std::vector<BreathPlace>{});
}

Tempo breathBelowOf(DraftReader& reader) {
    const Tempo always = ClickPattern{}.breathBelow;
    return reader.text("breathBelow").isEmpty() ? always : reader.tempo("breathBelow", always);
}

} // namespace

QVariantMap clickDraftOf(const ClickPattern& click) {
    const ClickPattern usual;
    const bool straight = click.swing == usual.swing;
    const bool always = click.breathBelow == usual.breathBelow;
    return {{"clickOn", static_cast<int>(click.on)},
            {"accents", figures(click.accents)},
            {"swing", straight ? QString() : QString::fromStdString(swingText(click.swing))},
            {"swung", static_cast<int>(click.swung)},
            {"barsOn", QString::number(click.barsOn)},
            {"barsOff", QString::number(click.barsOff)},
            {"silentBars", QString::number(click.silentBars)},
            {"leftOutBeats", QString::number(click.leftOutBeats)},
            {"seed", QString::number(click.seed)},
            {"breaths", breathsText(click.breaths)},
            {"breathBelow", always ? QString() : Formatter::tempo(click.breathBelow)}};
}

ClickPattern clickOf(DraftReader& reader, const Music& music) {
    const ClickPattern usual;
    ClickPattern click;
    click.on = static_cast<ClickOn>(reader.count("clickOn", 0, 3, 0));
    click.accents = accentsOf(reader.text("accents"), music.meter.beatsPerBar());
    click.swing = swingOf(reader);
    click.swung = static_cast<SwungNotes>(reader.count("swung", 0, 1, 0));
    click.barsOn = reader.count("barsOn", 1, ClickPattern::mostBarsInTurn, usual.barsOn);
    click.barsOff = reader.count("barsOff", 0, ClickPattern::mostBarsInTurn, usual.barsOff);
    click.silentBars = reader.count("silentBars", 0, 100, usual.silentBars);
    click.leftOutBeats = reader.count("leftOutBeats", 0, 100, usual.leftOutBeats);
    click.seed = reader.count("seed", 0, ClickPattern::mostSeed, usual.seed);
    click.breaths = breathsOf(reader);
    click.breathBelow = breathBelowOf(reader);
    return click;
}

Accent accentOf(const ClickPattern& click, const Meter& meter, int beat) {
    if (beat < static_cast<int>(click.accents.size())) return click.accents[static_cast<std::size_t>(beat)];
    return usualAccent(beat, meter.groupStarts());
}

QString withNextAccent(const ClickPattern& click, const Meter& meter, int beat) {
    const int beats = std::max(static_cast<int>(click.accents.size()), beat + 1);
    std::vector<Accent> accents;
    for (int each = 0; each < beats; ++each) accents.push_back(accentOf(click, meter, each));
    Accent& turned = accents[static_cast<std::size_t>(beat)];
    turned = static_cast<Accent>((static_cast<int>(turned) + 1) % accentKinds);
    return figures(accents);
}

} // namespace piolo::models
