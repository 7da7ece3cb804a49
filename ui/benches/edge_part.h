#pragma once

#include "ui/benches/style_part.h"

class QFormLayout;

namespace coutil {

class ChoiceField;

// The shape and the heights of the top edge.
class TopEdgePart : public StylePart {
    Q_OBJECT

  public:
    explicit TopEdgePart(FolioDocument& document, QWidget* parent = nullptr);
    void refresh() override;

  private:
    ChoiceField* shape_;
};

// The shape and the depths of the bottom edge.
class BottomEdgePart : public StylePart {
    Q_OBJECT

  public:
    explicit BottomEdgePart(FolioDocument& document, QWidget* parent = nullptr);
    void refresh() override;

  private:
    ChoiceField* shape_;
};

}  // namespace coutil
