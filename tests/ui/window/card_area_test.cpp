#include <QApplication>
#include <QLabel>
#include <QScrollArea>
#include <QTest>

#include "tests/ui/window/window_fixture.h"
#include "ui/benches/bench.h"
#include "ui/window/demo_singer.h"

namespace coutil {
namespace {

// The parts that ask for the most room, to name the culprit.
std::string widestOf(const QWidget& bench) {
    std::string text;
    for (const QWidget* part : bench.findChildren<QWidget*>()) {
        if (part->isHidden() || part->minimumSizeHint().width() < 200) continue;
        text += std::string("; ") + part->metaObject()->className() + ' ' +
                std::to_string(part->minimumSizeHint().width());
        if (const auto* label = qobject_cast<const QLabel*>(part)) {
            text += ' ' + label->text().toStdString();
        }
    }
    return text;
}

class CardAreaTest : public WindowTest {};

// Nothing of a card may be cut off at its right edge, whatever unit the maker works in.
TEST_F(CardAreaTest, cardsFitTheirPlaceInEveryUnit) {
    window_->resize(1280, 800);
    auto singer = demoSinger();
    ASSERT_TRUE(singer);
    for (const LengthUnit unit :
         {LengthUnit::centimetre, LengthUnit::inch, LengthUnit::millimetre}) {
        singer->unit = unit;
        singer->garments.front().pencils.front().style.panelsPerHalf = 7;
        window_->document().open(*singer, {});
        for (int i = 0; i < window_->benches().size(); ++i) {
            window_->enterBench(i);
            Bench* bench = window_->benches().at(i);
            if (bench->scrollsItself()) continue;
            EXPECT_TRUE(QTest::qWaitFor(
                [&] { return bench->parentWidget()->width() >= bench->minimumSizeHint().width(); },
                2000))
                << bench->benchName().toStdString() << " in unit " << static_cast<int>(unit)
                << widestOf(*bench);
        }
    }
}

}  // namespace
}  // namespace coutil
