#pragma once

#include <vector>

#include "ui/benches/fold_out.h"

namespace coutil {

class FolioDocument;
class StylePart;

// What a maker seldom changes, folded away: shares, splits, single heights, own levels. Nothing in
// it is worked out while it is closed.
class MorePart : public FoldOut {
    Q_OBJECT

  public:
    explicit MorePart(FolioDocument& document, QWidget* parent = nullptr);
    void refresh();

  private:
    void add(const QString& heading, const QString& explanation, StylePart* part);

    std::vector<StylePart*> parts_;
};

}  // namespace coutil
