#pragma once

#include <map>
#include <vector>

#include "ui/benches/style_part.h"

class QGridLayout;
class QPushButton;

namespace coutil {

class ShareField;

// The front's share of the width and the relative width of every panel.
class PanelSharesPart : public StylePart {
    Q_OBJECT

  public:
    explicit PanelSharesPart(FolioDocument& document, QWidget* parent = nullptr);
    void refresh() override;

  private:
    void setPanel(std::size_t panel, double share);

    QGridLayout* grid_;
    ShareField* front_;
    std::vector<ShareField*> panels_;
};

// Which seam takes in how much of the suppression at each level: a table, levels down, seams
// across; each row sums to 100 %.
class SeamSharesPart : public StylePart {
    Q_OBJECT

  public:
    explicit SeamSharesPart(FolioDocument& document, QWidget* parent = nullptr);
    void refresh() override;

  private:
    void rebuild(std::size_t seams);

    QGridLayout* grid_;
    std::map<LevelId, std::vector<ShareField*>> fields_;
};

// How a seam's suppression is split between the panel in front and the one behind.
class FrontPartsPart : public StylePart {
    Q_OBJECT

  public:
    explicit FrontPartsPart(FolioDocument& document, QWidget* parent = nullptr);
    void refresh() override;

  private:
    QGridLayout* grid_;
    std::vector<ShareField*> seams_;
};

}  // namespace coutil
