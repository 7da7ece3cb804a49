#include "ui/benches/more_part.h"

#include <QToolButton>

#include "ui/benches/card_text.h"
#include "ui/benches/own_levels_part.h"
#include "ui/benches/share_parts.h"
#include "ui/benches/single_heights_part.h"

namespace coutil {

MorePart::MorePart(FolioDocument& document, QWidget* parent) : FoldOut(tr("More"), parent) {
    button().setObjectName(QStringLiteral("more"));
    add(tr("Widths"), tr("100 % is the panel's usual width; the others give way."),
        new PanelSharesPart(document));
    add(tr("What each seam takes in"),
        tr("Shares of the suppression in per cent. Change one and the others of its row follow."),
        new SeamSharesPart(document));
    add(tr("Taken from the panel in front"),
        tr("The rest of the seam's share comes from the panel behind."),
        new FrontPartsPart(document));
    add(tr("Heights at single seams"),
        tr("Along the seam from the waist mark: up for the top, down for the bottom edge."),
        new SingleHeightsPart(document));
    add(tr("Lacing gap at single levels"),
        tr("Leave empty for an even gap. An uneven gap hides a wrong girth."),
        new LevelGapsPart(document));
    add(tr("Own levels"), tr("Heights over the waist; below it with a minus."),
        new OwnLevelsPart(document));
    connect(this, &FoldOut::openChanged, this, &MorePart::refresh);
}

void MorePart::add(const QString& heading, const QString& explanation, StylePart* part) {
    addContent(cardHeading(heading));
    addContent(quietText(explanation));
    addContent(part);
    parts_.push_back(part);
}

void MorePart::refresh() {
    if (!isOpen()) return;
    for (StylePart* part : parts_) part->refresh();
}

}  // namespace coutil
