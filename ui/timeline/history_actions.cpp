#include "ui/timeline/history_actions.h"

#include <QMenu>
#include <algorithm>

#include "ui/document/folio_document.h"
#include "ui/timeline/history_steps.h"
#include "ui/timeline/timeline_words.h"
#include "ui/words/revision_words.h"

namespace coutil {

namespace {

// A maker's own words are no menu text: an ampersand in them is one.
QString escaped(QString words) { return words.replace(QLatin1Char('&'), QLatin1String("&&")); }

bool isSame(const StateRef& a, const StateRef& b) {
    return a.digest == b.digest && a.pencil == b.pencil;
}

bool isNone(const StateRef& state) { return state.digest.empty() && state.pencil.empty(); }

QString nameOf(const Garment& garment, const TimelineEntry& entry) {
    return entry.kind == TimelineKind::pencil ? pencilName(garment.pencils[entry.index])
                                              : revisionName(*garment.revisions[entry.index]);
}

}  // namespace

HistoryActions::HistoryActions(FolioDocument& document, QObject* parent)
    : QObject(parent), document_(document) {
    buildActions();
    connect(&document_, &FolioDocument::folioChanged, this, &HistoryActions::showWhatCanBeDone);
    connect(&document_, &FolioDocument::shownChanged, this, &HistoryActions::showWhatCanBeDone);
    connect(&document_, &FolioDocument::opened, this, &HistoryActions::showWhatCanBeDone);
    showWhatCanBeDone();
}

void HistoryActions::buildActions() {
    const auto make = [this](const QString& words, auto wish) {
        auto* action = new QAction(words, this);
        connect(action, &QAction::triggered, this, wish);
        return action;
    };
    confirm = make(tr("&Confirm…"), [this] { emit confirmWanted(); });
    confirm->setShortcuts(
        {QKeySequence(Qt::CTRL | Qt::Key_Return), QKeySequence(Qt::CTRL | Qt::Key_Enter)});
    beginPencil = make(tr("New &pencil from this revision"),
                       [this] { document_.beginPencil(shownState().digest, tr("New pencil")); });
    copyPencil = make(tr("&Second pencil beside this one"),
                      [this] { report(coutil::copyPencil(document_, shownState().pencil)); });
    namePencil = make(tr("Name the penc&il"),
                      [this] { emit nameWanted(QString::fromStdString(shownState().pencil)); });
    rubOut = make(tr("R&ub out the pencil"),
                  [this] { report(rubOutPencil(document_, shownState().pencil)); });
    startGarment = make(tr("Start a garment &from this revision"),
                        [this] { report(coutil::startGarment(document_, shownState().digest)); });
}

void HistoryActions::showWhatCanBeDone() {
    const bool isPencil = document_.isOpen() && document_.pencil() != nullptr;
    const bool isRevision = document_.isOpen() && document_.revision() != nullptr;
    for (QAction* action : {confirm, copyPencil, namePencil}) action->setEnabled(isPencil);
    rubOut->setEnabled(isPencil && mayRubOut(document_));
    beginPencil->setEnabled(isRevision);
    startGarment->setEnabled(isRevision);
}

void HistoryActions::fillGarmentMenu(QMenu* menu) {
    menu->addActions({confirm, beginPencil, copyPencil, namePencil, rubOut, startGarment});
    QMenu* others = menu->addMenu(tr("C&ompare with"));
    connect(others, &QMenu::aboutToShow, this, [this, others] {
        others->clear();
        fillCompareMenu(others, shownState());
    });
}

void HistoryActions::fillEntryMenu(QMenu* menu, const TimelineEntry& entry) {
    menu->addAction(
        entry.kind == TimelineKind::fitting ? tr("&Show what was tried on") : tr("&Show"), this,
        [this, entry] { show(entry); });
    if (entry.kind == TimelineKind::pencil) addPencilWishes(menu, entry);
    if (entry.kind == TimelineKind::revision) addRevisionWishes(menu, entry);
    if (entry.kind != TimelineKind::fitting) {
        fillCompareMenu(menu->addMenu(tr("C&ompare with")), stateOf(entry));
    }
}

void HistoryActions::addPencilWishes(QMenu* menu, const TimelineEntry& entry) {
    const std::string id = stateOf(entry).pencil;
    menu->addAction(confirm->text(), this, [this, entry] {
        show(entry);
        emit confirmWanted();
    });
    menu->addAction(copyPencil->text(), this,
                    [this, id] { report(coutil::copyPencil(document_, id)); });
    menu->addAction(namePencil->text(), this,
                    [this, id] { emit nameWanted(QString::fromStdString(id)); });
    menu->addAction(rubOut->text(), this, [this, id] { report(rubOutPencil(document_, id)); })
        ->setEnabled(mayRubOut(document_));
}

void HistoryActions::addRevisionWishes(QMenu* menu, const TimelineEntry& entry) {
    const std::string digest = stateOf(entry).digest;
    menu->addAction(beginPencil->text(), this,
                    [this, digest] { document_.beginPencil(digest, tr("New pencil")); });
    menu->addAction(startGarment->text(), this,
                    [this, digest] { report(coutil::startGarment(document_, digest)); });
}

void HistoryActions::fillCompareMenu(QMenu* menu, const StateRef& one) {
    const Garment* garment = document_.garment();
    if (garment == nullptr) return;
    for (const TimelineEntry& entry : timelineOf(*garment)) {
        if (entry.kind == TimelineKind::fitting || isSame(stateOf(entry), one)) continue;
        menu->addAction(escaped(nameOf(*garment, entry)), this,
                        [this, one, other = stateOf(entry)] { compare(one, other); });
    }
    if (menu->isEmpty()) menu->addAction(tr("Nothing to compare with yet"))->setEnabled(false);
}

void HistoryActions::show(const TimelineEntry& entry) {
    const Garment& garment = *document_.garment();
    StateRef state = stateOf(entry);
    if (entry.kind == TimelineKind::fitting) {
        const Fitting& fitting = garment.fittings[entry.index];
        const QString id = QString::fromStdString(fitting.id);
        state = {fitting.revision, fitting.pencil};
        emit fittingChosen(id);
    }
    if (!state.digest.empty()) {
        document_.showRevision(state.digest);
    } else if (!state.pencil.empty()) {
        document_.showPencil(state.pencil);
    }
}

void HistoryActions::compareWithShown(const TimelineEntry& entry) {
    compare(shownState(), stateOf(entry));
}

void HistoryActions::compare(const StateRef& one, const StateRef& other) {
    if (isNone(one) || isNone(other) || isSame(one, other)) {
        emit told(tr("Choose another revision or pencil than the one shown to compare the two."));
        return;
    }
    const std::vector<TimelineEntry> entries = timelineOf(*document_.garment());
    const auto placeOf = [&](const StateRef& state) {
        return std::ranges::find_if(
            entries, [&](const TimelineEntry& entry) { return isSame(stateOf(entry), state); });
    };
    if (placeOf(other) < placeOf(one)) {
        emit compareWanted(other, one);
    } else {
        emit compareWanted(one, other);
    }
}

void HistoryActions::report(const std::optional<Problem>& problem) {
    if (problem) emit failed(*problem);
}

StateRef HistoryActions::stateOf(const TimelineEntry& entry) const {
    const Garment& garment = *document_.garment();
    switch (entry.kind) {
        case TimelineKind::revision:
            return {garment.revisions[entry.index]->digest(), {}};
        case TimelineKind::pencil:
            return {{}, garment.pencils[entry.index].id};
        case TimelineKind::fitting:
            break;
    }
    return {};
}

StateRef HistoryActions::shownState() const {
    if (const Pencil* pencil = document_.pencil()) return {{}, pencil->id};
    const Revision* revision = document_.revision();
    return revision == nullptr ? StateRef{} : StateRef{revision->digest(), {}};
}

}  // namespace coutil
