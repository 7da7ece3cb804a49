#include <QVBoxLayout>
#include <algorithm>

#include "core/alterations/apply_alterations.h"
#include "core/alterations/whole_pattern.h"
#include "core/store/uuid.h"
#include "ui/benches/card_text.h"
#include "ui/benches/fit_alteration_list.h"
#include "ui/benches/fit_bench.h"
#include "ui/benches/fit_head.h"
#include "ui/benches/fit_mark_editor.h"
#include "ui/benches/fit_mark_list.h"
#include "ui/benches/fit_photo_part.h"
#include "ui/benches/fit_photo_view.h"
#include "ui/benches/fit_problem_part.h"
#include "ui/benches/fit_shape_part.h"
#include "ui/benches/fit_welcome.h"
#include "ui/canvas/table.h"
#include "ui/document/folio_document.h"
#include "ui/words/mark_words.h"

// The card of the Fit bench: its parts, and what they show.
namespace coutil {

FitBench::FitBench(FolioDocument& document, Table& table, QWidget* parent)
    : TableBench(document, table, parent),
      welcome_(new FitWelcome),
      record_(new QWidget),
      head_(new FitHead),
      editor_(new FitMarkEditor),
      marks_(new FitMarkList),
      shape_(new FitShapePart),
      photos_(new FitPhotoPart),
      photoView_(new FitPhotoView(&table)),
      alterations_(new FitAlterationList),
      problems_(new FitProblemPart) {
    draft_.place = SeamPlace{};
    layOut();
    connectHead();
    connectMarks();
    connectAlterations();
    connectPhotos();
    connectProblems();
    connectTable();
}

void FitBench::layOut() {
    auto* column = new QVBoxLayout(this);
    column->setSpacing(4);
    column->addWidget(welcome_);
    column->addWidget(record_);
    auto* inside = new QVBoxLayout(record_);
    inside->setContentsMargins(0, 0, 0, 0);
    inside->setSpacing(4);
    inside->addWidget(cardHeading(tr("Fitting")));
    inside->addWidget(head_);
    inside->addWidget(editor_);
    inside->addWidget(shape_);
    inside->addWidget(cardHeading(tr("Marks")));
    inside->addWidget(marks_);
    inside->addWidget(cardHeading(tr("Photos")));
    inside->addWidget(photos_);
    column->addWidget(cardHeading(tr("Alterations of the pencil")));
    column->addWidget(alterations_);
    column->addWidget(cardHeading(tr("Problems")));
    column->addWidget(problems_);
    column->addStretch(1);
}

void FitBench::connectHead() {
    connect(welcome_, &FitWelcome::sheetWanted, this, &FitBench::fittingSheetWanted);
    connect(welcome_, &FitWelcome::fittingWanted, this, &FitBench::addFitting);
    connect(head_, &FitHead::sheetWanted, this, &FitBench::fittingSheetWanted);
    connect(head_, &FitHead::newWanted, this, &FitBench::addFitting);
    connect(head_, &FitHead::removeWanted, this, &FitBench::removeFitting);
    connect(head_, &FitHead::triedWanted, this, &FitBench::showTried);
    connect(head_, &FitHead::chosen, this, &FitBench::showFitting);
    connect(head_, &FitHead::edited, this, &FitBench::change);
    connect(head_, &FitHead::left, this, [this] { document().endMerging(); });
}

void FitBench::connectMarks() {
    const auto endRun = [this] { document().endMerging(); };
    connect(editor_, &FitMarkEditor::edited, this, &FitBench::takeMark);
    connect(editor_, &FitMarkEditor::accepted, this, &FitBench::startNext);
    connect(editor_, &FitMarkEditor::left, this, endRun);
    connect(marks_, &FitMarkList::picked, this, &FitBench::pickMark);
    connect(marks_, &FitMarkList::edited, this, &FitBench::changeMark);
    connect(marks_, &FitMarkList::removed, this, &FitBench::removeMark);
    connect(marks_, &FitMarkList::left, this, endRun);
    connect(shape_, &FitShapePart::left, this, endRun);
    connect(shape_, &FitShapePart::edited, this,
            [this](const Change& after, const QString& words, const QString& field) {
                if (const Alteration* shape = shapeOfPicked())
                    changeShape(shape->id, after, words, field);
            });
}

void FitBench::connectAlterations() {
    connect(alterations_, &FitAlterationList::switched, this,
            [this](const std::string& id, bool isOn) {
                document().changePencil(
                    [&](Pencil& pencil) {
                        for (Alteration& each : pencil.alterations)
                            if (each.id == id) each.isOn = isOn;
                    },
                    isOn ? tr("switch an alteration on") : tr("switch an alteration off"));
            });
    connect(alterations_, &FitAlterationList::removed, this, [this](const std::string& id) {
        document().changePencil(
            [&](Pencil& pencil) {
                std::erase_if(pencil.alterations,
                              [&](const Alteration& each) { return each.id == id; });
            },
            tr("remove an alteration"));
    });
    connect(alterations_, &FitAlterationList::symmetryWanted, this, [this](SymmetrySource from) {
        document().changePencil(
            [&](Pencil& pencil) {
                pencil.alterations.push_back({.id = newUuid(), .change = MakeSymmetric{from}});
            },
            tr("make both sides equal"));
    });
}

void FitBench::connectPhotos() {
    connect(photos_, &FitPhotoPart::filesWanted, this, &FitBench::photoFilesWanted);
    connect(photos_, &FitPhotoPart::filesDropped, this, &FitBench::attachPhotos);
    connect(photos_, &FitPhotoPart::shown, this, [this](const std::string& id) {
        if (const Photo* photo = findPhoto(document().folio(), id)) photoView_->showPhoto(*photo);
        showPhoto();
    });
    connect(photoView_, &FitPhotoView::spotChosen, this, &FitBench::tieSpot);
    connect(photoView_, &FitPhotoView::removeWanted, this, &FitBench::removePhoto);
}

void FitBench::connectProblems() {
    connect(problems_, &FitProblemPart::pointed, this, &FitBench::light);
    connect(problems_, &FitProblemPart::chosen, this, &FitBench::goTo);
    connect(problems_, &FitProblemPart::pointedAway, this, [this] {
        if (isEntered()) table().lightProblem(-1, std::nullopt);
    });
    connect(problems_, &FitProblemPart::setAside, this, [this](const SetAside& aside) {
        document().changePencil([&](Pencil& pencil) { pencil.setAside.push_back(aside); },
                                tr("set a problem aside"));
    });
    connect(problems_, &FitProblemPart::takenBack, this, [this](const SetAside& aside) {
        document().changePencil(
            [&](Pencil& pencil) {
                std::erase_if(pencil.setAside, [&](SetAside each) {
                    each.reason.clear();
                    return each == aside;
                });
            },
            tr("take a problem back"));
    });
}

void FitBench::showCard() {
    chooseFitting();
    const Fitting* shown = fitting();
    welcome_->setVisible(shown == nullptr);
    record_->setVisible(shown != nullptr);
    setEnabled(document().garment() != nullptr);
    if (shown != nullptr) {
        head_->showFitting(document().folio(), *document().garment(), *shown, isDrawn(*shown));
        showMarks(*shown);
        photos_->showPhotos(document().folio(), shown->photos);
    }
    showAlterations();
    showProblems();
    showPhoto();
    table().setFaded(!document().drafted().pattern);
}

void FitBench::showMarks(const Fitting& fitting) {
    const LengthUnit unit = document().folio().unit;
    const auto& pattern = document().lastGoodDraft().pattern;
    const auto picked = std::ranges::find(fitting.marks, picked_, &Mark::id);
    const bool isNew = picked == fitting.marks.end();
    if (isNew) picked_.clear();
    editor_->setVisible(pattern.has_value());
    if (pattern) editor_->showMark(isNew ? draft_ : *picked, isNew, *pattern, unit);
    marks_->showMarks(fitting.marks, picked_, unit);
    const Alteration* shape = shapeOfPicked();
    shape_->setVisible(shape != nullptr);
    if (shape != nullptr) shape_->showChange(shape->change, unit);
}

void FitBench::showAlterations() {
    const Pencil* pencil = document().pencil();
    if (pencil != nullptr) {
        alterations_->showAlterations(pencil->alterations, document().drafted().problems,
                                      document().folio().unit);
    } else {
        alterations_->showNone(
            tr("A confirmed revision is on the table; the first mark begins a pencil over it."));
    }
    const auto& pattern = document().drafted().pattern;
    alterations_->setWhole(pencil != nullptr && pattern && isWhole(*pattern));
}

void FitBench::showProblems() {
    std::vector<Problem> problems = document().drafted().problems;
    const Fitting* shown = fitting();
    const auto& pattern = document().lastGoodDraft().pattern;
    if (shown != nullptr && pattern && isDrawn(*shown)) {
        const Pattern& readOn = before_ != nullptr ? *before_ : *pattern;
        const FromMarks made =
            alterationsFrom(shown->marks, readOn, {}, [] { return std::string(); });
        problems.insert(problems.end(), made.problems.begin(), made.problems.end());
    }
    const Pencil* pencil = document().pencil();
    problems_->showProblems(problems,
                            pencil == nullptr ? std::vector<SetAside>() : pencil->setAside,
                            pencil != nullptr, document().folio().unit);
}

void FitBench::showPhoto() {
    const Fitting* shown = fitting();
    if (photoView_->photo().empty()) return;
    if (shown == nullptr || findPhoto(document().folio(), photoView_->photo()) == nullptr) {
        photoView_->closePhoto();
        return;
    }
    const auto picked = std::ranges::find(shown->marks, picked_, &Mark::id);
    const QString hint =
        picked == shown->marks.end()
            ? tr("Pick a mark in the list, then click the spot on the photo it was read from.")
            : tr("A click ties this spot to the mark: %1.")
                  .arg(markSentence(*picked, document().folio().unit));
    photoView_->showSpots(shown->marks, picked_, hint);
}

}  // namespace coutil
