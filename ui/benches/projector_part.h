#pragma once

#include <QWidget>

class QPushButton;
class QScreen;

namespace coutil {

class ChoiceField;

// Opens the projector; with several screens, on the one chosen here.
class ProjectorPart : public QWidget {
    Q_OBJECT

  public:
    explicit ProjectorPart(QWidget* parent = nullptr);
    void refresh(bool isPatternThere);  // screens come and go

  signals:
    void projectorWanted();

  private:
    ChoiceField* screens_;
    QPushButton* open_;
};

}  // namespace coutil
