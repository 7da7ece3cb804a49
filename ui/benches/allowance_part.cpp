#include "ui/benches/allowance_part.h"

#include <QCheckBox>
#include <QFormLayout>
#include <QGridLayout>
#include <QLabel>
#include <QVBoxLayout>

#include "core/tracing/tracing.h"
#include "ui/benches/card_text.h"
#include "ui/document/folio_document.h"
#include "ui/fields/length_field.h"
#include "ui/fields/slider_length_field.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {

constexpr double kWidestAllowanceMm = 40;

StyleFigure allowanceFigure(const QString& label, const QString& words, const QString& key,
                            double AllowanceStyle::*width) {
    return {.label = label,
            .words = words,
            .key = key,
            .lowestMm = 0,
            .highestMm = kWidestAllowanceMm,
            .mayStayOpen = false,
            .read = [width](const Style& s) { return std::optional(s.allowance.*width); },
            .write = [width](Style& s, std::optional<double> mm) { s.allowance.*width = *mm; }};
}

StyleFigure edgeFigure(const std::string& key, const QString& words) {
    return {.label = words,
            .words = words,
            .key = QStringLiteral("allowance ") + QString::fromStdString(key),
            .mayStayOpen = true,
            .read = [key](const Style& s) -> std::optional<double> {
                const auto found = s.allowance.byEdgeMm.find(key);
                if (found == s.allowance.byEdgeMm.end()) return std::nullopt;
                return found->second;
            },
            .write =
                [key](Style& s, std::optional<double> mm) {
                    if (mm) {
                        s.allowance.byEdgeMm[key] = *mm;
                    } else {
                        s.allowance.byEdgeMm.erase(key);
                    }
                }};
}

}  // namespace

AllowancePart::AllowancePart(FolioDocument& document, QWidget* parent)
    : StylePart(document, parent) {
    auto* form = new QFormLayout(this);
    form->setContentsMargins(0, 0, 0, 0);
    const auto add = [&](const QString& label, const QString& words, const char* key,
                         double AllowanceStyle::*width) {
        auto* slider = addSlider(*form, allowanceFigure(label, words, QLatin1String(key), width));
        slider->setNames(words);
        slider->field().setMayBeNegative(false);
        slider->setObjectName(QLatin1String(key));
    };
    add(tr("Seams"), tr("Allowance at seams"), "allowance_seam", &AllowanceStyle::seamMm);
    add(tr("Openings"), tr("Allowance at openings"), "allowance_opening",
        &AllowanceStyle::openingMm);
    add(tr("Edges"), tr("Allowance at edges that are not bound"), "allowance_edge",
        &AllowanceStyle::edgeMm);
    top_ = addBound(tr("Top edge is bound"), &AllowanceStyle::isTopBound);
    bottom_ = addBound(tr("Bottom edge is bound"), &AllowanceStyle::isBottomBound);
    top_->setObjectName(QStringLiteral("topBound"));
    bottom_->setObjectName(QStringLiteral("bottomBound"));
    form->addRow(top_);
    form->addRow(bottom_);
    form->addRow(quietText(tr("A bound edge is cut on the sewing line.")));
}

QCheckBox* AllowancePart::addBound(const QString& words, bool AllowanceStyle::*isBound) {
    auto* box = new QCheckBox(words);
    connect(box, &QCheckBox::toggled, this, [this, words, isBound](bool isOn) {
        edit([=](Style& s) { s.allowance.*isBound = isOn; }, words);
    });
    return box;
}

void AllowancePart::refresh() {
    StylePart::refresh();
    const QSignalBlocker quietTop(top_);
    const QSignalBlocker quietBottom(bottom_);
    top_->setChecked(style().allowance.isTopBound);
    bottom_->setChecked(style().allowance.isBottomBound);
}

EdgeAllowancePart::EdgeAllowancePart(FolioDocument& document, QWidget* parent)
    : StylePart(document, parent),
      heading_(cardHeading({})),
      words_(quietText()),
      grid_(new QGridLayout) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(heading_);
    column->addWidget(words_);
    column->addLayout(grid_);
    grid_->setColumnStretch(0, 1);
}

void EdgeAllowancePart::setPanel(int panel) {
    panel_ = panel;
    refresh();
}

void EdgeAllowancePart::rebuild() {
    forgetFields();
    while (QLayoutItem* item = grid_->takeAt(0)) {
        item->widget()->hide();
        item->widget()->deleteLater();
        delete item;
    }
    if (shown_.empty()) return;
    const std::string& panel = shown_.front();
    for (std::size_t i = 1; i < shown_.size(); ++i) {
        const QString name = edgeName(shown_[i]);
        auto* label = new QLabel(name);
        auto* field = makeField(
            edgeFigure(panel + "/" + shown_[i],
                       tr("Allowance at %1 of panel %2").arg(name, QString::fromStdString(panel))));
        field->setMayBeNegative(false);
        label->setBuddy(field);
        grid_->addWidget(label, static_cast<int>(i), 0);
        grid_->addWidget(field, static_cast<int>(i), 1);
    }
}

void EdgeAllowancePart::refresh() {
    const auto& pattern = document().drafted().pattern;
    const auto index = static_cast<std::size_t>(panel_);
    const Panel* panel =
        pattern && index < pattern->panels.size() ? &pattern->panels[index] : nullptr;
    std::vector<std::string> wanted;
    if (panel != nullptr) {
        wanted.push_back(panel->name);
        for (const Edge& edge : panel->edges) wanted.push_back(edge.name);
    }
    if (wanted != shown_) {
        shown_ = wanted;
        rebuild();
    }
    heading_->setText(panel == nullptr ? tr("Picked panel")
                                       : tr("Panel %1").arg(QString::fromStdString(panel->name)));
    words_->setText(panel == nullptr
                        ? tr("Click a panel, or press Tab on the table, to give its edges "
                             "allowances of their own.")
                        : tr("Leave a field empty to follow the rules above."));
    StylePart::refresh();
    if (panel == nullptr) return;
    AllowanceStyle byRule = style().allowance;
    byRule.byEdgeMm.clear();
    for (std::size_t e = 0; e < panel->edges.size(); ++e) {
        setSuggestion(e, allowanceMm(byRule, *panel, panel->edges[e]));
    }
}

}  // namespace coutil
