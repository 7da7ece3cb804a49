// Everything a keyboard reaches has a name, and the keyboard reaches everything.
#include <QAccessible>
#include <QApplication>
#include <QLineEdit>
#include <QTest>
#include <set>

#include "tests/ui/window/window_fixture.h"
#include "ui/benches/bench.h"
#include "ui/benches/measurement_row.h"
#include "ui/window/folio_files.h"
#include "ui/window/key_sheet.h"
#include "ui/window/window_menus.h"

namespace coutil {
namespace {

class AccessibilityTest : public WindowTest {
  protected:
    // Visible widgets that take the keyboard and have no name; parts of a composed widget (the
    // line in a combo box or date field) speak through their owner.
    static QStringList nameless(const QWidget& top, int& seen) {
        QStringList found;
        for (const QWidget* widget : top.findChildren<QWidget*>()) {
            if (!widget->isVisible() || widget->focusPolicy() == Qt::NoFocus) continue;
            if (widget->focusProxy() != nullptr) continue;
            if (widget->objectName().startsWith("qt_")) continue;
            ++seen;
            QAccessibleInterface* face =
                QAccessible::queryAccessibleInterface(const_cast<QWidget*>(widget));
            if (face != nullptr && !face->text(QAccessible::Name).trimmed().isEmpty()) continue;
            found << QString("%1 '%2' in %3")
                         .arg(widget->metaObject()->className(), widget->objectName(),
                              widget->parentWidget()->metaObject()->className());
        }
        return found;
    }
};

TEST_F(AccessibilityTest, theStartScreenIsNamed) {
    int seen = 0;
    EXPECT_EQ(nameless(*window_, seen).join("\n").toStdString(), "");
    EXPECT_GE(seen, 3);
}

TEST_F(AccessibilityTest, everyBenchIsNamed) {
    window_->files().openDemo();
    for (int i = 0; i < window_->benches().size(); ++i) {
        window_->enterBench(i);
        QApplication::processEvents();
        int seen = 0;
        EXPECT_EQ(nameless(*window_, seen).join("\n").toStdString(), "")
            << window_->benches()[i]->benchName().toStdString();
        EXPECT_GE(seen, 8);
    }
}

TEST_F(AccessibilityTest, tabReachesEveryReading) {
    window_->files().openDemo();
    window_->enterBench(0);
    std::set<QWidget*> reached;
    for (int i = 0; i < 120 && QApplication::focusWidget() != nullptr; ++i) {
        reached.insert(QApplication::focusWidget());
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    }
    for (const MeasurementInfo& info : measurementCatalogue()) {
        EXPECT_TRUE(reached.contains(&row(info.id).field())) << info.key;
    }
}

TEST_F(AccessibilityTest, aRowsSentenceIsItsFieldsDescription) {
    window_->files().openDemo();
    window_->enterBench(0);
    type(Measurement::waistGirth, "seventy");
    const MeasurementRow& waist = row(Measurement::waistGirth);
    EXPECT_FALSE(waist.sentence().isEmpty());
    EXPECT_EQ(row(Measurement::waistGirth).field().accessibleDescription(), waist.sentence());
}

}  // namespace
}  // namespace coutil
