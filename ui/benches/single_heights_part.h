#pragma once

#include "ui/benches/style_part.h"

class QGridLayout;

namespace coutil {

// Heights that the style gives at single seams, and gaps at single levels; mostly open.
class SingleHeightsPart : public StylePart {
    Q_OBJECT

  public:
    explicit SingleHeightsPart(FolioDocument& document, QWidget* parent = nullptr);
    void refresh() override;

  private:
    void rebuild(std::size_t seams);

    QGridLayout* grid_;
    std::size_t seams_ = 0;
};

// The lacing gap at single levels, where it is not the same everywhere.
class LevelGapsPart : public StylePart {
    Q_OBJECT

  public:
    explicit LevelGapsPart(FolioDocument& document, QWidget* parent = nullptr);
    void refresh() override;
};

}  // namespace coutil
