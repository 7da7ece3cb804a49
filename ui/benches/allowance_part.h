#pragma once

#include "ui/benches/style_part.h"

class QCheckBox;
class QGridLayout;
class QLabel;

namespace coutil {

// Allowances by rule: seams, openings, top and bottom edge, bound or not.
class AllowancePart : public StylePart {
    Q_OBJECT

  public:
    explicit AllowancePart(FolioDocument& document, QWidget* parent = nullptr);
    void refresh() override;

  private:
    QCheckBox* addBound(const QString& words, bool AllowanceStyle::*isBound);

    QCheckBox* top_;
    QCheckBox* bottom_;
};

// Allowances of the picked panel's edges where they differ from the rule; an empty field follows
// it.
class EdgeAllowancePart : public StylePart {
    Q_OBJECT

  public:
    explicit EdgeAllowancePart(FolioDocument& document, QWidget* parent = nullptr);
    void refresh() override;
    void setPanel(int panel);  // -1: none

  private:
    void rebuild();

    QLabel* heading_;
    QLabel* words_;
    QGridLayout* grid_;
    int panel_ = -1;
    std::vector<std::string> shown_;  // keys of the edges that have a field, panel first
};

}  // namespace coutil
