#pragma once

#include <vector>

#include "ui/benches/style_part.h"

class QGridLayout;
class QLineEdit;
class QPushButton;

namespace coutil {

// The maker's own levels: name and height over the waist; any number of them.
class OwnLevelsPart : public StylePart {
    Q_OBJECT

  public:
    explicit OwnLevelsPart(FolioDocument& document, QWidget* parent = nullptr);
    void refresh() override;

  private:
    void rebuild(std::size_t count);
    void addLevel();

    QGridLayout* grid_;
    QPushButton* add_;
    std::vector<QLineEdit*> names_;
};

}  // namespace coutil
