#include "tests/pictures/compare_pictures.h"

#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>

#include "tests/pictures/picture.h"
#include "ui/benches/compare_chart.h"
#include "ui/fields/choice_field.h"
#include "ui/window/main_window.h"

namespace coutil {

namespace {

void scrollCard(MainWindow& window, bool isDown) {
    QWidget* within = window.findChild<CompareChart*>();
    while (within != nullptr && qobject_cast<QScrollArea*>(within) == nullptr) {
        within = within->parentWidget();
    }
    auto* card = qobject_cast<QScrollArea*>(within);
    if (card == nullptr) return;
    QScrollBar* bar = card->verticalScrollBar();
    bar->setValue(isDown ? bar->maximum() : 0);
}

}  // namespace

bool takeComparing(MainWindow& window, const Folio& folio, const QDir& folder,
                   const QString& suffix) {
    const auto& revisions = folio.garments.front().revisions;
    window.document().open(folio, {});
    window.compare({revisions.front()->digest(), {}}, {revisions.back()->digest(), {}});
    auto* what = window.findChild<ChoiceField*>("compareWhat");
    auto* factor = window.findChild<ChoiceField*>("compareFactor");
    auto* view = window.findChild<ChoiceField*>("compareView");
    bool all = true;
    const auto take = [&](const char* name) {
        settle(300);
        all = savePicture(window, folder, QLatin1String(name) + suffix) && all;
    };
    take("compare-over");
    factor->setCurrentIndex(1);
    window.findChild<CompareChart*>()->read(40);
    take("compare-5-times");
    scrollCard(window, true);
    take("compare-card");
    scrollCard(window, false);
    view->setCurrentIndex(1);
    take("compare-beside");
    view->setCurrentIndex(0);
    what->setCurrentIndex(1);
    take("compare-sides");
    what->setCurrentIndex(0);
    factor->setCurrentIndex(0);
    return all;
}

}  // namespace coutil
