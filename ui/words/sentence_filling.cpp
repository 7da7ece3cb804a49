#include "ui/words/sentence_filling.h"

#include <QLocale>
#include <QStringList>
#include <algorithm>
#include <cmath>
#include <optional>

#include "core/block/style.h"
#include "core/measurements/measurement.h"
#include "ui/words/alteration_words.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {

QString decimalText(double value, int decimals) {
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    QString text = locale.toString(value, 'f', decimals);
    const QString mark = locale.decimalPoint();
    if (text.contains(mark)) {
        while (text.endsWith(QLatin1Char('0'))) text.chop(1);
        if (text.endsWith(mark)) text.chop(mark.size());
    }
    return text;
}

QString fineText(double mm) {
    return decimalText(mm, 2) + QChar(QChar::Nbsp) + unitName(LengthUnit::millimetre);
}

QString figureText(const Figure& figure, LengthUnit unit, bool isFine) {
    switch (figure.unit) {
        case FigureUnit::millimetre:
            if (isFine || (figure.value != 0 && std::abs(figure.value) < 1))
                return fineText(figure.value);
            return lengthText(figure.value, unit);
        case FigureUnit::percent:
            return decimalText(figure.value, 1) + QChar(QChar::Nbsp) + QLatin1Char('%');
        case FigureUnit::degree:
            return decimalText(figure.value, 2) + QChar(0x00B0);
        case FigureUnit::count:
            return decimalText(figure.value, 3);
    }
    return {};
}

QString nameForPeople(const std::string& key) {
    if (const auto id = measurementNamed(key)) return measurementTerm(*id);
    if (levelNamed(key)) return levelName(key);
    if (QString term = styleTerm(key); !term.isEmpty()) return term;
    if (QString term = alterationTerm(key); !term.isEmpty()) return term;
    if (QString term = markTerm(key); !term.isEmpty()) return term;
    return edgeName(key);
}

// "bust_girth hip_girth" is a list of measurements; a file's path with a blank in it is not.
QString namesForPeople(const std::string& text) {
    const QStringList parts =
        QString::fromStdString(text).split(QLatin1Char(' '), Qt::SkipEmptyParts);
    const bool areMeasurements = std::ranges::all_of(parts, [](const QString& part) {
        return measurementNamed(part.toStdString()).has_value();
    });
    if (!areMeasurements) return nameForPeople(text);
    QStringList names;
    for (const QString& part : parts) names << nameForPeople(part.toStdString());
    return names.join(QStringLiteral(", "));
}

std::optional<QString> factNamed(const QString& name, const Problem& problem, LengthUnit unit) {
    const auto unlessEmpty = [](const QString& text) {
        return text.isEmpty() ? std::nullopt : std::optional(text);
    };
    if (name == QLatin1String("subject")) return unlessEmpty(namesForPeople(problem.subject));
    if (name == QLatin1String("detail")) return unlessEmpty(namesForPeople(problem.detail));
    if (name == QLatin1String("path")) return unlessEmpty(QString::fromStdString(problem.subject));
    if (name == QLatin1String("text")) return unlessEmpty(QString::fromStdString(problem.detail));
    if (name == QLatin1String("panel")) return unlessEmpty(panelName(problem.panel));
    const bool isFine = name.endsWith(QLatin1String(":fine"));
    const std::string figureName = name.section(QLatin1Char(':'), 0, 0).toStdString();
    const auto figure = std::ranges::find(problem.figures, figureName, &Figure::name);
    if (figure == problem.figures.end()) return std::nullopt;
    return figureText(*figure, unit, isFine);
}

// A stretch of a pattern without brackets; `isComplete` tells whether all facts were there.
QString filledStretch(const QString& pattern, const Problem& problem, LengthUnit unit,
                      bool& isComplete) {
    QString filled;
    qsizetype from = 0;
    while (true) {
        const qsizetype open = pattern.indexOf(QLatin1Char('{'), from);
        const qsizetype close = open < 0 ? -1 : pattern.indexOf(QLatin1Char('}'), open);
        if (close < 0) return filled + pattern.mid(from);
        filled += pattern.mid(from, open - from);
        const auto fact = factNamed(pattern.mid(open + 1, close - open - 1), problem, unit);
        isComplete = isComplete && fact.has_value();
        filled += fact.value_or(QStringLiteral("?"));
        from = close + 1;
    }
}

}  // namespace

QString filledSentence(const QString& pattern, const Problem& problem, LengthUnit unit) {
    QString filled;
    qsizetype from = 0;
    while (true) {
        bool isComplete = true;
        const qsizetype open = pattern.indexOf(QLatin1Char('['), from);
        const qsizetype close = open < 0 ? -1 : pattern.indexOf(QLatin1Char(']'), open);
        const qsizetype plainEnd = close < 0 ? pattern.size() : open;
        filled += filledStretch(pattern.mid(from, plainEnd - from), problem, unit, isComplete);
        if (close < 0) break;
        isComplete = true;
        const QString inside =
            filledStretch(pattern.mid(open + 1, close - open - 1), problem, unit, isComplete);
        if (isComplete) filled += inside;
        from = close + 1;
    }
    // One line, whatever a file's text or name holds.
    return filled.simplified();
}

}  // namespace coutil
