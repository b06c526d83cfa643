// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/scales/instrument_search.h"

#include "models/scales/scale_lists.h"
#include "models/settings/setting_choices.h"
#include "practice/figures/last_played.h"
#include "text/one_line.h"
#include "text/scale_words.h"

#include <QRegularExpression>
#include <QStringList>

#include <algorithm>
#include <vector>

namespace piolo::models {

namespace {

/// In small letters, without accents: "flügelhorn" is found by "flugel".
QString plain(const QString& text) {
    QString letters;
    for (const QChar letter : text.toLower().normalized(QString::NormalizationForm_D))
        if (!letter.isMark()) letters += letter == QChar(0x266D) ? QLatin1Char('b') : letter;
    return letters;
}

/// Without numbers, signs and "in"; a flat is a word: "Bb Clarinet 2" and "clarinet in B♭" have the same
/// ones.
QStringList wordsOf(QString text) {
    text.replace(QChar(0x266D), QStringLiteral(" flat"));
    static const QRegularExpression flat(QStringLiteral("\\b([ABEabe])b\\b"));
    static const QRegularExpression other(QStringLiteral("[^a-z]+|\\bi[nm]\\b"));
    text.replace(flat, QStringLiteral("\\1 flat"));
    return plain(text).replace(other, QStringLiteral(" ")).split(QLatin1Char(' '), Qt::SkipEmptyParts);
}

bool isFound(const Instrument& instrument, const QStringList& typed) {
    const QString names =
        plain(text::instrumentName(instrument.name) + QLatin1Char(' ') + text::familyName(instrument.family));
    return std::ranges::all_of(typed, [&](const QString& part) { return names.contains(part); });
}

QStringList partsTyped(const QString& typed) {
    return plain(typed).split(QLatin1Char(' '), Qt::SkipEmptyParts);
}

} // namespace

QVariantList instrumentsByFamily(const QString& typed) {
    const QStringList parts = partsTyped(typed);
    QVariantList families;
    for (std::size_t place = 0; place < instrumentFamilyCount; ++place) {
        const auto family = static_cast<InstrumentFamily>(place);
        QVariantList found;
        for (const Instrument& instrument : instruments())
            if (instrument.family == family && isFound(instrument, parts))
                found << choice(wordOf(instrument.name), text::instrumentName(instrument.name));
        if (!found.isEmpty())
            families << QVariantMap{{"text", text::familyName(family)}, {"instruments", found}};
    }
    return families;
}

QString firstInstrument(const QString& typed) {
    const QString begin = plain(typed.trimmed());
    QString first;
    for (const QVariant& family : instrumentsByFamily(typed))
        for (const QVariant& listed : family.toMap().value(QStringLiteral("instruments")).toList()) {
            const QVariantMap instrument = listed.toMap();
            const QString value = instrument.value(QStringLiteral("value")).toString();
            const QString name =
                QLatin1Char(' ') + plain(instrument.value(QStringLiteral("text")).toString());
            if (name.contains(QLatin1Char(' ') + begin)) return value;
            if (first.isEmpty()) first = value;
        }
    return first;
}

namespace {

/// A word of a part's name may be cut short ("sax", "clar.") or be a plural.
bool isSameWord(const QString& written, const QString& known) {
    constexpr int least = 3;
    return written == known || (written.size() >= least && known.startsWith(written)) ||
           (known.size() >= least && written.startsWith(known));
}

bool hasWords(const QStringList& written, const QStringList& known) {
    return std::ranges::all_of(known, [&](const QString& word) {
        return std::ranges::any_of(written, [&](const QString& other) { return isSameWord(other, word); });
    });
}

/// How well a part's name fits an instrument's: 0 not at all, otherwise more for each word that fits. The
/// words after "in" ("in B flat") need not be there.
qsizetype fit(const QString& partName, const QString& name) {
    static const QRegularExpression in(QStringLiteral(" i[nm] .*"));
    const QStringList written = wordsOf(partName);
    const QStringList whole = wordsOf(name);
    const QStringList kind = wordsOf(QString(name).remove(in));
    if (kind.isEmpty() || !hasWords(written, kind)) return 0;
    const bool isWhole = written == whole || (whole.size() > kind.size() && hasWords(written, whole));
    return 2 * kind.size() + (isWhole ? 1 : 0);
}

} // namespace

const Instrument* instrumentMeant(const QString& partName, int transposition) {
    std::vector<const Instrument*> best;
    qsizetype most = 1;
    for (const Instrument& instrument : instruments()) {
        if (transposition != 0 && instrument.transposition.semitones != transposition) continue;
        const qsizetype here = std::max(fit(partName, wordOf(instrument.name)),
                                        fit(partName, text::instrumentName(instrument.name)));
        if (here > most) best.clear();
        most = std::max(most, here);
        if (here == most) best.push_back(&instrument);
    }
    return best.size() == 1 ? best.front() : nullptr;
}

std::optional<InstrumentOfPiece> instrumentOfPieces(const Notebook& notebook) {
    std::vector<Piece> pieces = notebook.pieces();
    const PassageRecord* const last = notebook.passage(practice::lastPlayed(notebook));
    if (last != nullptr)
        std::ranges::stable_partition(
            pieces, [&](const Piece& piece) { return piece.id == last->passage.title.piece; });
    for (const Piece& piece : pieces)
        if (const auto* const meant = instrumentMeant(text::onOneLine(piece.instrument), piece.transposition))
            return InstrumentOfPiece{meant, text::onOneLine(piece.name)};
    return std::nullopt;
}

} // namespace piolo::models
