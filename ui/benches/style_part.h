#pragma once

#include <QString>
#include <QWidget>
#include <functional>
#include <optional>
#include <vector>

#include "core/block/style.h"
#include "core/problems/problem.h"
#include "core/units/length.h"

class QFormLayout;
class QGridLayout;
class QLabel;

namespace coutil {

class FolioDocument;
class LengthField;
class SliderLengthField;

// One figure of the style as a field shows and changes it. `key` makes a run of keystrokes or one
// drag a single undo step; `words` name the step. A figure that may stay open takes an empty field;
// what is worked out for it then stands there in grey.
struct StyleFigure {
    QString label;
    QString words;
    QString key;
    double lowestMm = 0;  // of the slider; more may be typed
    double highestMm = 100;
    bool mayStayOpen = false;
    std::function<std::optional<double>(const Style&)> read;
    std::function<void(Style&, std::optional<double>)> write;
};

// A part of the Draft card: shows some entries of the garment's style and changes them through the
// document. Without a garment it shows the default style and is disabled.
class StylePart : public QWidget {
    Q_OBJECT

  public:
    explicit StylePart(FolioDocument& document, QWidget* parent = nullptr);

    // Shows the document's style as it is now.
    virtual void refresh();
    // The maker is done with a field: the next change is an undo step of its own.
    void endRun();

  protected:
    [[nodiscard]] FolioDocument& document() { return document_; }
    [[nodiscard]] const Style& style() const;
    [[nodiscard]] LengthUnit unit() const;

    // One change of the style. Fields that fill themselves in meanwhile change nothing.
    void edit(const std::function<void(Style&)>& change, const QString& words,
              const QString& key = {});

    // Fields bound to figures. The sentence of what can't be read appears under the field.
    SliderLengthField* addSlider(QFormLayout& form, const StyleFigure& figure);
    LengthField* addField(QFormLayout& form, const StyleFigure& figure);
    LengthField* makeField(const StyleFigure& figure);  // to be placed by the part itself
    void setSuggestion(std::size_t figure, std::optional<double> mm);
    void forgetFields();  // before their widgets are made anew
    [[nodiscard]] std::size_t fieldCount() const { return bound_.size(); }

  private:
    struct Bound {
        StyleFigure figure;
        LengthField* field = nullptr;
        SliderLengthField* slider = nullptr;
        QLabel* complaint = nullptr;
    };
    std::size_t bind(const StyleFigure& figure, LengthField* field, SliderLengthField* slider,
                     QLabel* complaint);
    void finish(std::size_t index);
    void take(std::size_t index, std::optional<double> mm);
    void complain(std::size_t index, const QString& sentence);

    FolioDocument& document_;
    std::vector<Bound> bound_;
    bool isRefreshing_ = false;
};

}  // namespace coutil
