#include "ui/comparing/figure_text.h"

#include <QCoreApplication>
#include <QLocale>
#include <QRegularExpression>
#include <cmath>

#include "ui/words/trade_words.h"

namespace coutil {

namespace {

constexpr char16_t kDash = u'\u2013';
constexpr char16_t kMinus = u'\u2212';

QString written(double mm, LengthUnit unit) {
    const char mark = QLocale().decimalPoint() == QLatin1String(",") ? ',' : '.';
    // A table of fractions has no room for the sign that a sixteenth was rounded.
    return QString::fromStdString(writtenLength(mm, unit, mark)).remove(QLatin1Char('~'));
}

// Columns of decimals stand under each other: hundredths of a cm, tenths of a mm; nothing is "0".
QString inColumn(double mm, LengthUnit unit) {
    if (unit != LengthUnit::inch) {
        const int decimals = unit == LengthUnit::centimetre ? 2 : 1;
        QLocale locale;
        locale.setNumberOptions(QLocale::OmitGroupSeparator);
        const QString text = locale.toString(mm / millimetresIn(unit), 'f', decimals);
        return text.contains(QRegularExpression(QStringLiteral("[1-9]"))) ? text
                                                                          : QStringLiteral("0");
    }
    return written(mm, unit);
}

QString signedText(double value, const QString& size) {
    if (size == QLatin1String("0")) return size;
    return (value < 0 ? QString(kMinus) : QStringLiteral("+")) + size;
}

// mm would be more than can be seen in a table of areas.
double squareMmIn(LengthUnit unit) {
    const double side =
        millimetresIn(unit == LengthUnit::inch ? LengthUnit::inch : LengthUnit::centimetre);
    return side * side;
}

QString squareSize(double mm2, LengthUnit unit) {
    const double value = std::round(10 * std::abs(mm2) / squareMmIn(unit)) / 10;
    return value == 0 ? QStringLiteral("0") : QLocale().toString(value, 'f', 1);
}

}  // namespace

QString figureText(std::optional<double> mm, LengthUnit unit) {
    return mm ? inColumn(*mm, unit) : QString(kDash);
}

QString differenceText(std::optional<double> mm, LengthUnit unit) {
    return mm ? signedText(*mm, inColumn(std::abs(*mm), unit)) : QString(kDash);
}

QString axisText(double mm, LengthUnit unit) { return written(mm, unit); }

QString placeText(double mm, LengthUnit unit) {
    return signedText(mm, written(std::abs(mm), unit)) + QLatin1Char(' ') + unitName(unit);
}

QString squareText(std::optional<double> mm2, LengthUnit unit) {
    return mm2 ? squareSize(*mm2, unit) : QString(kDash);
}

QString squareDifferenceText(std::optional<double> mm2, LengthUnit unit) {
    return mm2 ? signedText(*mm2, squareSize(*mm2, unit)) : QString(kDash);
}

QString squareUnitName(LengthUnit unit) {
    return unit == LengthUnit::inch ? QCoreApplication::translate("ComparedFigures", "sq in")
                                    : QStringLiteral("cm\u00b2");
}

}  // namespace coutil
