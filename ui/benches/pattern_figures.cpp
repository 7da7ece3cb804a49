#include <QCoreApplication>
#include <QLocale>
#include <cmath>

#include "core/pattern/panel_key.h"
#include "ui/benches/pattern_scene.h"
#include "ui/words/alteration_words.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(PatternFigures)
};

QString panelWord(const Pattern& pattern, const EdgeRef& ref) {
    return Words::tr("panel %1").arg(panelName(panelKey(pattern.panels[ref.panel])));
}

QString seamFigures(const Pattern& pattern, const Seam& seam, LengthUnit unit) {
    const SeamLengths front = seamLengthsOf(edgeAt(pattern, seam.front));
    const SeamLengths back = seamLengthsOf(edgeAt(pattern, seam.back));
    const auto line = [&](const QString& where, double a, double b) {
        return Words::tr("%1: %2 on %3, %4 on %5")
            .arg(where, lengthText(a, unit), panelWord(pattern, seam.front), lengthText(b, unit),
                 panelWord(pattern, seam.back));
    };
    return Words::tr("Seam %1").arg(QString::fromStdString(seam.name)) + '\n' +
           line(Words::tr("above the waist"), front.aboveWaistMm, back.aboveWaistMm) + '\n' +
           line(Words::tr("below the waist"), front.belowWaistMm, back.belowWaistMm);
}

}  // namespace

QString edgeFigures(const Pattern& pattern, const EdgeRef& ref, LengthUnit unit) {
    for (const Seam& seam : pattern.seams) {
        if (seam.front == ref || seam.back == ref) return seamFigures(pattern, seam, unit);
    }
    const Edge& edge = edgeAt(pattern, ref);
    QString text = Words::tr("%1 of %2: %3")
                       .arg(edgeName(edge.name), panelWord(pattern, ref),
                            lengthText(lengthMm(edge.path), unit));
    if (edge.waistMarkAtMm) {
        const SeamLengths parts = seamLengthsOf(edge);
        text += '\n' + Words::tr("above the waist: %1").arg(lengthText(parts.aboveWaistMm, unit)) +
                '\n' + Words::tr("below the waist: %1").arg(lengthText(parts.belowWaistMm, unit));
    }
    return text;
}

QString levelFigures(const Level& level, LengthUnit unit) {
    QString text =
        Words::tr("Level %1, %2 %3")
            .arg(levelName(level.name), lengthText(std::abs(level.heightMm), unit),
                 level.heightMm < 0 ? Words::tr("below the waist") : Words::tr("above the waist"));
    if (level.heightMm == 0) text = Words::tr("Level %1").arg(levelName(level.name));
    if (level.bodyMm) text += '\n' + Words::tr("body: %1").arg(lengthText(*level.bodyMm, unit));
    if (level.targetMm)
        text += '\n' + Words::tr("target: %1").arg(lengthText(*level.targetMm, unit));
    if (level.patternMm) {
        text += '\n' + Words::tr("pattern: %1").arg(lengthText(*level.patternMm, unit));
        text += '\n' + Words::tr("lacing gap in it: %1").arg(lengthText(level.lacingGapMm, unit));
    }
    return text;
}

QString areaText(const Panel& panel, LengthUnit unit) {
    const double square = millimetresIn(unit) * millimetresIn(unit);
    const double area = std::abs(signedAreaMm2(outlineOf(panel))) / square;
    const QString figure = QLocale().toString(area, 'f', unit == LengthUnit::millimetre ? 0 : 1);
    if (unit == LengthUnit::inch) return Words::tr("%1 sq in").arg(figure);
    return QStringLiteral("%1 %2\u00b2").arg(figure, unitName(unit));
}

QString panelFigures(const Panel& panel, LengthUnit unit) {
    QStringList parts;
    for (const Edge& edge : panel.edges) {
        parts << Words::tr("%1 %2").arg(edgeName(edge.name), lengthText(lengthMm(edge.path), unit));
    }
    for (const LevelLine& level : panel.levels) {
        const double width = (level.back - level.front).norm();
        parts << Words::tr("width at %1 %2").arg(levelName(level.level), lengthText(width, unit));
    }
    parts << Words::tr("area %1").arg(areaText(panel, unit));
    return parts.join(QStringLiteral(", "));
}

}  // namespace coutil
