#include "tests/pictures/fit_pictures.h"

#include <QAction>
#include <QDate>

#include "tests/ui/window/fitting_hand.h"
#include "ui/timeline/history_actions.h"
#include "ui/window/folio_files.h"

namespace coutil {

namespace {

constexpr int kFitBench = 2;

void fitFirst(FittingHand& maker) {
    maker.recordFitting();
    maker.head(FittingKind::posted, {2026, 3, 14}, QStringLiteral("client"));
    maker.pinAt("2-3", 35, QStringLiteral("0.8"));
    maker.next();
    maker.pinAt("3-4", -50, QStringLiteral("-0.6"));
}

void fitSecond(FittingHand& maker) {
    maker.recordFitting();
    maker.head(FittingKind::inPerson, {2026, 4, 2}, QStringLiteral("wardrobe"));
    maker.kind(QStringLiteral("slit"));
    maker.choose("markWhere", QStringLiteral("panel 4"));
    maker.choose("markEdge", QStringLiteral("bottom"));
    maker.typeInto("markPosition", QStringLiteral("3"));
    maker.typeInto("markLength", QStringLiteral("6"));
    maker.side(BodySide::right);
    maker.typeInto("markAmount", QStringLiteral("0.8"));
    maker.next();
    maker.kind(QStringLiteral("pinned, at a seam"));
    maker.pinAt("4-5", 20, QStringLiteral("0.5"), PanelSide::right);
}

}  // namespace

void takeFitting(MainWindow& window, QueuedAnswers& answers, const QString& folder,
                 const std::function<void(const char* name)>& take) {
    const auto confirm = [&](const char* date) {
        answers.confirmations.append({.on = date, .by = "wardrobe", .note = {}});
        window.history().confirm->trigger();
    };
    window.files().openDemo();
    answers.files.append(folder + QStringLiteral("/leonore.coutil"));
    confirm("2026-03-05");
    window.enterBench(kFitBench);
    FittingHand maker(window);
    fitFirst(maker);
    take("fit-first");
    confirm("2026-03-18");
    const std::string block = window.document().garment()->revisions.front()->digest();
    window.document().beginPencil(block, QStringLiteral("New pencil"));
    window.document().showRevision(window.document().garment()->revisions.back()->digest());
    fitSecond(maker);
    take("fit-sides");
}

}  // namespace coutil
