#pragma once

#include "ui/benches/style_part.h"

namespace coutil {

class ChoiceField;

// How many panels, how the front closes, how far the back stands open.
class ClosurePart : public StylePart {
    Q_OBJECT

  public:
    explicit ClosurePart(FolioDocument& document, QWidget* parent = nullptr);
    void refresh() override;

  private:
    ChoiceField* panels_;
    ChoiceField* front_;
};

}  // namespace coutil
