#include "tests/ui/window/fitting_hand.h"

#include <QApplication>
#include <QDate>
#include <QPushButton>
#include <QTest>
#include <algorithm>
#include <stdexcept>

#include "core/alterations/find_places.h"
#include "ui/benches/pattern_scene.h"
#include "ui/canvas/painter_path.h"
#include "ui/canvas/table.h"
#include "ui/fields/choice_field.h"
#include "ui/fields/date_field.h"
#include "ui/fields/length_field.h"

namespace coutil {

template <class Widget>
Widget& FittingHand::field(const char* name) const {
    auto* widget = window_.findChild<Widget*>(QLatin1String(name));
    if (widget == nullptr) throw std::runtime_error(std::string("no field ") + name);
    return *widget;
}

void FittingHand::recordFitting() {
    auto& first = field<QPushButton>("recordFitting");
    (first.isVisible() ? first : field<QPushButton>("newFitting")).click();
}

void FittingHand::head(FittingKind how, const QDate& on, const QString& by) {
    auto& kind = field<ChoiceField>("fittedHow");
    kind.setCurrentIndex(kind.findData(int(how)));
    field<DateField>("fittedOn").setDate(on);
    typeInto("fittedBy", by);
}

QPoint FittingHand::onTable(const std::string& seam, double positionMm, PanelSide side) const {
    const Pattern& pattern = *window_.document().drafted().pattern;
    const auto placements = masterPlacements(pattern, kSpaceBetweenPanelsMm);
    for (const std::size_t s : seamsNamed(pattern, seam, BodySide::both)) {
        const EdgeRef& front = pattern.seams.at(s).front;
        if (side != PanelSide::both && pattern.panels[front.panel].side != side) continue;
        const auto at = pointAtSeamPosition(edgeAt(pattern, front), positionMm);
        if (!at) break;
        const Table& table = window_.table();
        const QPointF px = table.view().toPx(painterPoint(placed(*at, placements[front.panel])));
        if (!table.openArea().contains(px)) throw std::runtime_error("off the table: " + seam);
        return px.toPoint();
    }
    throw std::runtime_error("no seam " + seam);
}

void FittingHand::pinAt(const std::string& seam, double positionMm, const QString& amount,
                        PanelSide side) {
    QApplication::processEvents();  // another row of the timeline leaves the table less room
    const QPoint px = onTable(seam, positionMm, side);
    QTest::mouseMove(&window_.table(), px);
    QTest::mouseClick(&window_.table(), Qt::LeftButton, Qt::NoModifier, px);
    // The amount is typed at once: the click gave it the keyboard.
    if (!field<LengthField>("markAmount").hasFocus()) throw std::runtime_error("nothing to type");
    QTest::keyClicks(&field<LengthField>("markAmount"), amount);
}

void FittingHand::kind(const QString& words) { choose("markKind", words); }

void FittingHand::choose(const char* name, const QString& words) {
    auto& choice = field<ChoiceField>(name);
    const int index = choice.findText(words, Qt::MatchStartsWith);
    if (index < 0) {
        QStringList all;
        for (int i = 0; i < choice.count(); ++i) all.append(choice.itemText(i));
        throw std::runtime_error(words.toStdString() + " is none of " +
                                 all.join(", ").toStdString());
    }
    choice.setCurrentIndex(index);
}

void FittingHand::typeInto(const char* name, const QString& text) {
    auto& line = field<TextField>(name);
    line.setFocus(Qt::MouseFocusReason);
    line.selectAll();
    QTest::keyClicks(&line, text);
    QTest::keyClick(&line, Qt::Key_Tab);
}

void FittingHand::side(BodySide side) {
    auto& choice = field<ChoiceField>("markSide");
    choice.setCurrentIndex(choice.findData(int(side)));
}

void FittingHand::next() { QTest::keyClick(&field<LengthField>("markAmount"), Qt::Key_Return); }

const Fitting& FittingHand::fitting() const {
    return window_.document().garment()->fittings.back();
}

}  // namespace coutil
