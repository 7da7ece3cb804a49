#include "ui/benches/single_heights_part.h"

#include <QFormLayout>
#include <QGridLayout>
#include <QLabel>

#include "core/block/draft_corset.h"
#include "ui/benches/card_text.h"
#include "ui/benches/seam_text.h"
#include "ui/document/folio_document.h"
#include "ui/fields/length_field.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {

constexpr int kFieldWidthPx = 116;

// The entry for one key of a map of the style: absent while the field is empty.
template <class Key, class Reach>
StyleFigure entryFigure(const QString& words, const QString& key, const Key& at, Reach reach) {
    return {.label = words,
            .words = words,
            .key = key,
            .mayStayOpen = true,
            .read = [=](const Style& s) -> std::optional<double> {
                const auto& map = reach(s);
                const auto found = map.find(at);
                if (found == map.end()) return std::nullopt;
                return found->second;
            },
            .write =
                [=](Style& s, std::optional<double> mm) {
                    if (mm) {
                        reach(s)[at] = *mm;
                    } else {
                        reach(s).erase(at);
                    }
                }};
}

}  // namespace

SingleHeightsPart::SingleHeightsPart(FolioDocument& document, QWidget* parent)
    : StylePart(document, parent), grid_(new QGridLayout(this)) {
    grid_->setContentsMargins(0, 0, 0, 0);
    grid_->setHorizontalSpacing(8);
    grid_->setVerticalSpacing(3);
    grid_->setColumnStretch(0, 1);
}

void SingleHeightsPart::rebuild(std::size_t seams) {
    forgetFields();
    while (QLayoutItem* item = grid_->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    grid_->addWidget(quietText(tr("Top edge")), 0, 1);
    grid_->addWidget(quietText(tr("Bottom edge")), 0, 2);
    for (std::size_t s = 0; s < seams; ++s) {
        const QString name = seamText(s);
        const std::string key = name.toStdString();
        const int line = static_cast<int>(s) + 1;
        grid_->addWidget(new QLabel(tr("Seam %1").arg(name)), line, 0);
        const auto top = [](auto& style) -> auto& { return style.topEdge.atSeamMm; };
        const auto bottom = [](auto& style) -> auto& { return style.bottomEdge.atSeamMm; };
        auto* upper = makeField(entryFigure(tr("Top edge at seam %1").arg(name),
                                            QStringLiteral("top ") + name, key, top));
        auto* lower = makeField(entryFigure(tr("Bottom edge at seam %1").arg(name),
                                            QStringLiteral("bottom ") + name, key, bottom));
        int column = 1;
        for (LengthField* field : {upper, lower}) {
            field->setFixedWidth(kFieldWidthPx);
            grid_->addWidget(field, line, column++);
        }
    }
    seams_ = seams;
}

void SingleHeightsPart::refresh() {
    const auto seams = static_cast<std::size_t>(style().panelsPerHalf - 1);
    if (seams_ != seams) rebuild(seams);
    StylePart::refresh();
    const auto& body = document().drafted().body;
    if (!body) return;
    const ResolvedHeights heights = resolvedHeights(*body, style());
    for (std::size_t s = 0; s < seams; ++s) {
        if (s + 1 < heights.topMm.size()) setSuggestion(2 * s, heights.topMm[s + 1]);
        if (s + 1 < heights.bottomMm.size()) setSuggestion(2 * s + 1, heights.bottomMm[s + 1]);
    }
}

LevelGapsPart::LevelGapsPart(FolioDocument& document, QWidget* parent)
    : StylePart(document, parent) {
    auto* form = new QFormLayout(this);
    form->setContentsMargins(0, 0, 0, 0);
    for (const LevelId level : kAllLevels) {
        const std::string key(keyOf(level));
        const auto reach = [](auto& style) -> auto& { return style.lacingGapAtMm; };
        StyleFigure figure =
            entryFigure(tr("Lacing gap at the level %1").arg(levelName(key)),
                        QStringLiteral("gap ") + QString::fromStdString(key), level, reach);
        const QString words = figure.label;
        figure.label = levelName(key);
        addField(*form, figure)->setAccessibleName(words);
    }
}

void LevelGapsPart::refresh() {
    StylePart::refresh();
    for (std::size_t i = 0; i < kAllLevels.size(); ++i) setSuggestion(i, style().lacingGapMm);
}

}  // namespace coutil
