#pragma once

#include <QWidget>
#include <functional>
#include <string>

#include "core/measurements/measurement_set.h"

class QPushButton;

namespace coutil {

class ChoiceField;
class DateField;
class FolioDocument;
class TextField;

// The head of the Measure card: whose measurements, of which day, taken by whom; and which of the
// dated sets the garment is drafted from.
class MeasureHead : public QWidget {
    Q_OBJECT

  public:
    explicit MeasureHead(FolioDocument& document, QWidget* parent = nullptr);

    void refresh();
    void focusClient();

  private:
    void showSets();
    void takeClient(const QString& client);
    void chooseSet(int index);
    void addSet();
    void takeDate(const std::string& date);
    void changeSet(const std::function<void(MeasurementSet&)>& change, const QString& words,
                   const QString& key);

    FolioDocument& document_;
    TextField* client_;
    ChoiceField* sets_;
    QPushButton* newSet_;
    DateField* date_;
    TextField* by_;
    TextField* note_;
};

}  // namespace coutil
