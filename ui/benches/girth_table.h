#pragma once

#include <array>

#include "ui/benches/style_part.h"

class QGridLayout;
class QLabel;

namespace coutil {

// The girth table: for every level its height over the waist, the body, the ease (to be typed),
// the target and what the pattern measures; under it how much the waist is taken in.
class GirthTable : public StylePart {
    Q_OBJECT

  public:
    explicit GirthTable(FolioDocument& document, QWidget* parent = nullptr);
    void refresh() override;

  private:
    struct Row {
        std::string level;
        QLabel* name = nullptr;
        QLabel* height = nullptr;
        QLabel* body = nullptr;
        QLabel* target = nullptr;
        QLabel* pattern = nullptr;
    };
    Row addRow(int line, const std::string& level);
    void showRow(const Row& row);
    void showOwnLevels();
    void showReduction();

    QGridLayout* grid_;
    QLabel* unitName_;
    std::array<Row, kAllLevels.size()> rows_;
    std::vector<Row> own_;
    std::vector<LengthField*> eases_;
    QLabel* reduction_;
    QLabel* caution_;
};

}  // namespace coutil
