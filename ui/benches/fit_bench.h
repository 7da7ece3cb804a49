#pragma once

#include <QStringList>
#include <optional>
#include <string>
#include <vector>

#include "core/revision/folio.h"
#include "ui/benches/fit_ground.h"
#include "ui/benches/fit_scene.h"
#include "ui/benches/table_bench.h"

namespace coutil {

class FitAlterationList;
class FitHead;
class FitMarkEditor;
class FitMarkList;
class FitPhotoPart;
class FitPhotoView;
class FitProblemPart;
class FitShapePart;
class FitWelcome;

// From pins and cuts to a pencil line: the fittings of the garment, their marks where they were
// read, and the pattern that follows while they are typed, over the old lines.
class FitBench : public TableBench {
    Q_OBJECT

  public:
    FitBench(FolioDocument& document, Table& table, QWidget* parent = nullptr);

    [[nodiscard]] QString benchName() const override;
    void leave() override;
    void attachPhotos(const QStringList& files);
    void showFitting(const std::string& id);  // of the garment

  signals:
    void fittingSheetWanted();
    void photoFilesWanted();  // ask the maker, and call attachPhotos()

  protected:
    void showCard() override;
    [[nodiscard]] TableScene sceneNow() override;
    [[nodiscard]] ProblemSpot spotNow(const Problem& problem) const override;

  private:
    // the card (fit_bench_card.cpp)
    void layOut();
    void connectHead();
    void connectMarks();
    void connectAlterations();
    void connectPhotos();
    void connectProblems();
    void showMarks(const Fitting& fitting);
    void showAlterations();
    void showProblems();
    void showPhoto();

    // fittings and marks
    [[nodiscard]] const Fitting* fitting() const;
    [[nodiscard]] bool isDrawn(const Fitting& fitting) const;
    void chooseFitting();
    void addFitting();
    void removeFitting();
    void showTried();
    void change(const Fitting& after, const QString& words, const QString& key = {});
    void takeMark(const Mark& after, const QString& field);
    void changeMark(const Mark& after, const QString& field);
    void removeMark(const std::string& id);
    void pickMark(const std::string& id);
    void startNext();
    void tieSpot(const PhotoSpot& spot);
    void removePhoto(const std::string& id);

    // the table (fit_bench_table.cpp)
    void connectTable();
    [[nodiscard]] FitView viewNow() const;
    [[nodiscard]] const Alteration* shapeOfPicked() const;
    [[nodiscard]] std::optional<std::string> markSignAt(const QPointF& mm) const;
    void tellPlace(const QPointF& mm);
    void takeClick(const TablePlace& place, const QPointF& mm);
    void takePlace(const TablePlace& place, const QPointF& mm);
    void dragHandle(const std::string& handle, const QPointF& mm);
    void endDrag(bool isGivenUp);
    void dragLineFade(const FitView& view, const std::string& handle, const QPointF& mm);
    void beginDrag();
    void changeShape(const std::string& alteration, const Change& after, const QString& words,
                     const QString& field);

    std::string fitting_;  // id of the one shown
    std::string picked_;   // id of a mark; empty: a new one
    Mark draft_;           // the new one, until it is complete
    const Pattern* before_ = nullptr;
    FitGround ground_;
    std::optional<Folio> beforeDrag_;

    FitWelcome* welcome_;
    QWidget* record_;  // all that belongs to a fitting
    FitHead* head_;
    FitMarkEditor* editor_;
    FitMarkList* marks_;
    FitShapePart* shape_;
    FitPhotoPart* photos_;
    FitPhotoView* photoView_;
    FitAlterationList* alterations_;
    FitProblemPart* problems_;
};

}  // namespace coutil
