#include "ui/benches/share_parts.h"

#include <QGridLayout>
#include <QLabel>
#include <algorithm>

#include "core/block/draft_corset.h"
#include "ui/benches/card_text.h"
#include "ui/benches/seam_text.h"
#include "ui/benches/share_field.h"
#include "ui/benches/shares.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {

constexpr int kCellWidthPx = 36;
constexpr int kPanelsARow = 3;
constexpr double kEvenSplit = 0.5;

QGridLayout* tightGrid(QWidget* owner) {
    auto* grid = new QGridLayout(owner);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(6);
    grid->setVerticalSpacing(3);
    return grid;
}

template <class Widget>
void dropAll(std::vector<Widget*>& widgets) {
    for (Widget* widget : widgets) delete widget;
    widgets.clear();
}

}  // namespace

PanelSharesPart::PanelSharesPart(FolioDocument& document, QWidget* parent)
    : StylePart(document, parent), grid_(tightGrid(this)) {
    front_ = new ShareField(tr("Front's share of the width"));
    front_->setLimits(0.4, 0.7);
    front_->setObjectName(QStringLiteral("frontShare"));
    auto* label = new QLabel(tr("Front's share"));
    label->setBuddy(front_);
    grid_->addWidget(label, 0, 0);
    grid_->addWidget(front_, 0, 1);
    grid_->addWidget(quietText(tr("of the width, where the front bust arc was not measured")), 1, 0,
                     1, 8);
    connect(front_, &ShareField::edited, this, [this](double share) {
        edit([share](Style& s) { s.frontShare = share; }, tr("Front's share"),
             QStringLiteral("front_share"));
    });
    connect(front_, &ShareField::left, this, &StylePart::endRun);
    grid_->setColumnStretch(7, 1);
}

void PanelSharesPart::setPanel(std::size_t panel, double share) {
    edit(
        [=](Style& s) {
            s.panelShares.resize(static_cast<std::size_t>(s.panelsPerHalf), 1);
            s.panelShares[panel] = share;
            // All even is the default, and says so.
            if (std::all_of(s.panelShares.begin(), s.panelShares.end(),
                            [](double x) { return x == 1; })) {
                s.panelShares.clear();
            }
        },
        tr("Relative width of panel %1").arg(panel + 1), QStringLiteral("panel %1").arg(panel));
}

void PanelSharesPart::refresh() {
    StylePart::refresh();
    front_->setShare(style().frontShare);
    const auto count = static_cast<std::size_t>(style().panelsPerHalf);
    while (panels_.size() > count) {
        delete panels_.back();
        panels_.pop_back();
    }
    while (panels_.size() < count) {
        const std::size_t index = panels_.size();
        auto* field = new ShareField(tr("Relative width of panel %1").arg(index + 1));
        field->setLimits(0.2, 5);
        field->setPrefix(tr("%1: ").arg(index + 1));
        field->setDecimals(0);
        grid_->addWidget(field, 2 + static_cast<int>(index) / kPanelsARow,
                         static_cast<int>(index) % kPanelsARow);
        connect(field, &ShareField::edited, this,
                [this, index](double share) { setPanel(index, share); });
        connect(field, &ShareField::left, this, &StylePart::endRun);
        panels_.push_back(field);
    }
    for (std::size_t i = 0; i < count; ++i) {
        panels_[i]->setShare(style().panelShares.empty() ? 1 : style().panelShares.at(i));
    }
}

SeamSharesPart::SeamSharesPart(FolioDocument& document, QWidget* parent)
    : StylePart(document, parent), grid_(tightGrid(this)) {}

void SeamSharesPart::rebuild(std::size_t seams) {
    while (QLayoutItem* item = grid_->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    fields_.clear();
    for (std::size_t s = 0; s < seams; ++s) {
        auto* heading = quietText(seamText(s));
        heading->setAlignment(Qt::AlignRight);
        grid_->addWidget(heading, 0, static_cast<int>(s) + 1);
    }
    int line = 1;
    for (const LevelId level : kAllLevels) {
        if (level == LevelId::bust) continue;  // the reference: nothing is taken in there
        const QString name = levelName(std::string(keyOf(level)));
        grid_->addWidget(new QLabel(name), line, 0);
        for (std::size_t s = 0; s < seams; ++s) {
            auto* field =
                new ShareField(tr("Share of seam %1 at the level %2").arg(seamText(s), name));
            field->setDecimals(0);
            field->setSuffix({});  // the heading says per cent
            field->setFixedWidth(kCellWidthPx);
            grid_->addWidget(field, line, static_cast<int>(s) + 1);
            connect(field, &ShareField::edited, this, [this, level, s](double share) {
                edit(
                    [=](Style& style) {
                        style.seamShares[level] =
                            sharesWithOneSet(seamSharesInForce(style, level), s, share);
                    },
                    tr("Share of seam %1").arg(seamText(s)),
                    QStringLiteral("share %1 %2").arg(int(level)).arg(s));
            });
            connect(field, &ShareField::left, this, &StylePart::endRun);
            fields_[level].push_back(field);
        }
        ++line;
    }
}

void SeamSharesPart::refresh() {
    StylePart::refresh();
    const auto seams = static_cast<std::size_t>(style().panelsPerHalf - 1);
    if (fields_.empty() || fields_.begin()->second.size() != seams) rebuild(seams);
    for (const auto& [level, fields] : fields_) {
        const std::vector<double> shares = seamSharesInForce(style(), level);
        for (std::size_t s = 0; s < fields.size() && s < shares.size(); ++s) {
            fields[s]->setShare(shares[s]);
        }
    }
}

FrontPartsPart::FrontPartsPart(FolioDocument& document, QWidget* parent)
    : StylePart(document, parent), grid_(tightGrid(this)) {
    grid_->setColumnStretch(7, 1);
}

void FrontPartsPart::refresh() {
    StylePart::refresh();
    const auto count = static_cast<std::size_t>(style().panelsPerHalf - 1);
    if (seams_.size() != count) {
        dropAll(seams_);
        for (std::size_t s = 0; s < count; ++s) {
            auto* field = new ShareField(
                tr("Part of seam %1 taken from the panel in front").arg(seamText(s)));
            field->setPrefix(tr("%1: ").arg(seamText(s)));
            field->setDecimals(0);
            grid_->addWidget(field, static_cast<int>(s) / 3, static_cast<int>(s) % 3);
            connect(field, &ShareField::edited, this, [this, s](double share) {
                edit([=](Style& style) { style.frontPart[seamText(s).toStdString()] = share; },
                     tr("Split of seam %1").arg(seamText(s)), QStringLiteral("split %1").arg(s));
            });
            connect(field, &ShareField::left, this, &StylePart::endRun);
            seams_.push_back(field);
        }
    }
    for (std::size_t s = 0; s < count; ++s) {
        const auto given = style().frontPart.find(seamText(s).toStdString());
        seams_[s]->setShare(given == style().frontPart.end() ? kEvenSplit : given->second);
    }
}

}  // namespace coutil
