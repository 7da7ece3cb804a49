#include <QCoreApplication>
#include <QLocale>
#include <cmath>

#include "ui/benches/pattern_scene.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {

QString tr(const char* text) { return QCoreApplication::translate("coutil::PatternFigures", text); }

QString panelWord(const Pattern& pattern, const EdgeRef& ref) {
    return tr("panel %1").arg(QString::fromStdString(pattern.panels[ref.panel].name));
}

QString seamFigures(const Pattern& pattern, const Seam& seam, LengthUnit unit) {
    const SeamLengths front = seamLengthsOf(edgeAt(pattern, seam.front));
    const SeamLengths back = seamLengthsOf(edgeAt(pattern, seam.back));
    const auto line = [&](const QString& where, double a, double b) {
        return tr("%1: %2 on %3, %4 on %5")
            .arg(where, lengthText(a, unit), panelWord(pattern, seam.front), lengthText(b, unit),
                 panelWord(pattern, seam.back));
    };
    return tr("Seam %1").arg(QString::fromStdString(seam.name)) + '\n' +
           line(tr("above the waist"), front.aboveWaistMm, back.aboveWaistMm) + '\n' +
           line(tr("below the waist"), front.belowWaistMm, back.belowWaistMm);
}

}  // namespace

QString edgeFigures(const Pattern& pattern, const EdgeRef& ref, LengthUnit unit) {
    for (const Seam& seam : pattern.seams) {
        if (seam.front == ref || seam.back == ref) return seamFigures(pattern, seam, unit);
    }
    const Edge& edge = edgeAt(pattern, ref);
    QString text = tr("%1 of %2: %3")
                       .arg(edgeName(edge.name), panelWord(pattern, ref),
                            lengthText(lengthMm(edge.path), unit));
    if (edge.waistMarkAtMm) {
        const SeamLengths parts = seamLengthsOf(edge);
        text += '\n' + tr("above the waist: %1").arg(lengthText(parts.aboveWaistMm, unit)) + '\n' +
                tr("below the waist: %1").arg(lengthText(parts.belowWaistMm, unit));
    }
    return text;
}

QString levelFigures(const Level& level, LengthUnit unit) {
    QString text = tr("Level %1, %2 %3")
                       .arg(levelName(level.name), lengthText(std::abs(level.heightMm), unit),
                            level.heightMm < 0 ? tr("below the waist") : tr("above the waist"));
    if (level.heightMm == 0) text = tr("Level %1").arg(levelName(level.name));
    if (level.bodyMm) text += '\n' + tr("body: %1").arg(lengthText(*level.bodyMm, unit));
    if (level.targetMm) text += '\n' + tr("target: %1").arg(lengthText(*level.targetMm, unit));
    if (level.patternMm) {
        text += '\n' + tr("pattern: %1").arg(lengthText(*level.patternMm, unit));
        text += '\n' + tr("lacing gap in it: %1").arg(lengthText(level.lacingGapMm, unit));
    }
    return text;
}

QString areaText(const Panel& panel, LengthUnit unit) {
    const double square = millimetresIn(unit) * millimetresIn(unit);
    const double area = std::abs(signedAreaMm2(outlineOf(panel))) / square;
    const QString figure = QLocale().toString(area, 'f', unit == LengthUnit::millimetre ? 0 : 1);
    if (unit == LengthUnit::inch) return tr("%1 sq in").arg(figure);
    return QStringLiteral("%1 %2\u00b2").arg(figure, unitName(unit));
}

QString panelFigures(const Panel& panel, LengthUnit unit) {
    QStringList parts;
    for (const Edge& edge : panel.edges) {
        parts << tr("%1 %2").arg(edgeName(edge.name), lengthText(lengthMm(edge.path), unit));
    }
    for (const LevelLine& level : panel.levels) {
        const double width = (level.back - level.front).norm();
        parts << tr("width at %1 %2").arg(levelName(level.level), lengthText(width, unit));
    }
    parts << tr("area %1").arg(areaText(panel, unit));
    return parts.join(QStringLiteral(", "));
}

}  // namespace coutil
