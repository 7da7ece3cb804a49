#include "ui/benches/girth_table.h"

#include <QGridLayout>
#include <QLabel>
#include <QLocale>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "ui/benches/card_text.h"
#include "ui/benches/pattern_scene.h"
#include "ui/document/folio_document.h"
#include "ui/fields/length_field.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {

enum Column { name, height, body, ease, target, pattern };
constexpr int kEaseWidthPx = 58;
constexpr int kInchEaseWidthPx = 70;  // "-11 13/16"
constexpr int kNameWidthPx = 70;
constexpr double kFigureScale = 0.92;

void shrink(QLabel& label) {
    QFont small = label.font();
    small.setPointSizeF(small.pointSizeF() * kFigureScale);
    label.setFont(small);
}

QLabel* figureLabel() {
    auto* label = new QLabel;
    label->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    shrink(*label);
    return label;
}

QString figure(std::optional<double> mm, LengthUnit unit) {
    if (!mm) return QStringLiteral("\u2013");
    const char mark = QLocale().decimalPoint() == QLatin1String(",") ? ',' : '.';
    // A table of fractions has no room for the sign that a sixteenth was rounded.
    return QString::fromStdString(writtenLength(*mm, unit, mark)).remove(QLatin1Char('~'));
}

const Level* levelOf(const FolioDocument& document, const std::string& name) {
    const auto& pattern = document.lastGoodDraft().pattern;
    if (!pattern) return nullptr;
    const auto found = std::find_if(pattern->levels.begin(), pattern->levels.end(),
                                    [&](const Level& level) { return level.name == name; });
    return found == pattern->levels.end() ? nullptr : &*found;
}

// The measurement a level's girth is taken from.
std::optional<Measurement> girthOf(const std::string& level) {
    const auto id = levelNamed(level);
    if (!id) return std::nullopt;
    switch (*id) {
        case LevelId::aboveBust:
            return Measurement::upperChestGirth;
        case LevelId::bust:
            return Measurement::bustGirth;
        case LevelId::underBust:
            return Measurement::underBustGirth;
        case LevelId::waist:
            return Measurement::waistGirth;
        case LevelId::highHip:
            return Measurement::topHipGirth;
        case LevelId::hip:
            return Measurement::hipGirth;
    }
    return std::nullopt;
}

const Estimate* estimateOf(const FolioDocument& document, const std::string& level) {
    const auto& body = document.lastGoodDraft().body;
    const auto girth = girthOf(level);
    if (!body || !girth) return nullptr;
    const auto found = std::find_if(body->estimates.begin(), body->estimates.end(),
                                    [&](const Estimate& e) { return e.id == *girth; });
    return found == body->estimates.end() ? nullptr : &*found;
}

}  // namespace

GirthTable::GirthTable(FolioDocument& document, QWidget* parent)
    : StylePart(document, parent),
      grid_(new QGridLayout),
      unitName_(quietText()),
      reduction_(quietText()),
      caution_(new QLabel) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(grid_);
    grid_->setHorizontalSpacing(5);
    grid_->setVerticalSpacing(3);
    const QStringList headings{tr("Height"), tr("Body"), tr("Ease"), tr("Target"), tr("Pattern")};
    grid_->addWidget(unitName_, 0, Column::name);
    for (int i = 0; i < headings.size(); ++i) {
        QLabel* heading = quietText(headings[i]);
        heading->setWordWrap(false);
        shrink(*heading);
        heading->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
        grid_->addWidget(heading, 0, i + 1);
    }
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        rows_[i] = addRow(static_cast<int>(i) + 1, std::string(keyOf(kAllLevels[i])));
    }
    grid_->setColumnStretch(Column::name, 1);
    caution_->setWordWrap(true);
    caution_->setObjectName(QStringLiteral("caution"));
    // Source of the caution: common practice of the trade (the project's list of figures).
    caution_->setText(
        tr("Laced this tightly: stop at pain, numbness or short breath. Not when "
           "pregnant, after surgery, with hernia, reflux, lung or heart trouble, an "
           "implanted device, or still growing; ask a doctor. Not for sleep or "
           "exercise."));
    column->addWidget(reduction_);
    column->addWidget(caution_);
}

GirthTable::Row GirthTable::addRow(int line, const std::string& level) {
    Row row{level, new QLabel, figureLabel(), figureLabel(), figureLabel(), figureLabel()};
    // A long name of the maker's own gives way to the figures.
    row.name->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    row.name->setMinimumWidth(kNameWidthPx);
    grid_->addWidget(row.name, line, Column::name);
    grid_->addWidget(row.height, line, Column::height);
    grid_->addWidget(row.body, line, Column::body);
    grid_->addWidget(row.target, line, Column::target);
    grid_->addWidget(row.pattern, line, Column::pattern);
    const auto id = levelNamed(level);
    if (!id) return row;
    const LevelId known = *id;
    const QString words = tr("Ease at the level %1").arg(levelName(level));
    LengthField* field = makeField(
        {.label = words,
         .words = words,
         .key = QStringLiteral("ease ") + QString::fromStdString(level),
         .mayStayOpen = false,
         .read =
             [known](const Style& s) {
                 const auto found = s.easeMm.find(known);
                 return std::optional(found == s.easeMm.end() ? 0.0 : found->second);
             },
         .write = [known](Style& s, std::optional<double> mm) { s.easeMm[known] = *mm; }});
    field->setObjectName(QStringLiteral("ease_") + QString::fromStdString(level));
    field->setCompact(true);
    field->setAlignment(Qt::AlignRight);
    eases_.push_back(field);
    grid_->addWidget(field, line, Column::ease);
    return row;
}

void GirthTable::showRow(const Row& row) {
    row.name->setText(levelName(row.level));
    const Level* level = levelOf(document(), row.level);
    const auto at = [&](const auto& read) {
        return figure(level == nullptr ? std::optional<double>() : read(*level), unit());
    };
    row.name->setToolTip(level == nullptr ? QString() : levelFigures(*level, unit()));
    row.height->setText(at([](const Level& l) { return std::optional(l.heightMm); }));
    // An estimate shows as one, to the millimetre, with its likely error.
    const Estimate* estimate = estimateOf(document(), row.level);
    row.body->setText(
        estimate == nullptr
            ? at([](const Level& l) { return l.bodyMm; })
            : QStringLiteral("\u2248%1").arg(figure(std::round(estimate->valueMm), unit())));
    row.body->setToolTip(
        estimate == nullptr
            ? QString()
            : tr("Estimated, not measured: \u00b1 %1").arg(lengthText(estimate->sdMm, unit())));
    row.target->setText(at([](const Level& l) { return l.targetMm; }));
    row.pattern->setText(at([](const Level& l) { return l.patternMm; }));
}

// The maker's own levels have no ease; their rows come and go.
void GirthTable::showOwnLevels() {
    const auto& wanted = style().ownLevels;
    while (own_.size() > wanted.size()) {
        const Row row = own_.back();
        own_.pop_back();
        for (QLabel* label : {row.name, row.height, row.body, row.target, row.pattern}) {
            label->deleteLater();
        }
    }
    while (own_.size() < wanted.size()) {
        own_.push_back(addRow(static_cast<int>(rows_.size() + own_.size()) + 1, std::string()));
    }
    for (std::size_t i = 0; i < own_.size(); ++i) {
        own_[i].level = wanted[i].name;
        showRow(own_[i]);
    }
}

void GirthTable::showReduction() {
    const Level* waist = levelOf(document(), std::string(keyOf(LevelId::waist)));
    if (waist != nullptr && waist->bodyMm && waist->targetMm) {
        const double taken = *waist->bodyMm - *waist->targetMm;
        const QString percent = QLocale().toString(100 * std::abs(taken) / *waist->bodyMm, 'f', 1);
        const QString size = lengthText(std::abs(taken), unit());
        reduction_->setText(
            taken >= 0 ? tr("The waist is taken in by %1, %2 % of the body.").arg(size, percent)
                       : tr("The waist has %1 of ease, %2 % of the body.").arg(size, percent));
    } else {
        reduction_->clear();
    }
    const auto& problems = document().drafted().problems;
    caution_->setVisible(std::any_of(problems.begin(), problems.end(), [](const Problem& p) {
        return p.code == ProblemCode::reductionLarge;
    }));
}

void GirthTable::refresh() {
    StylePart::refresh();
    const bool isInch = unit() == LengthUnit::inch;
    unitName_->setText(unitName(unit()));
    for (LengthField* field : eases_) {
        field->setFixedWidth(isInch ? kInchEaseWidthPx : kEaseWidthPx);
    }
    for (const Row& row : rows_) showRow(row);
    showOwnLevels();
    // Fractions are wide: the heights stand on the table, and behind the names.
    for (int line = 0; line < grid_->rowCount(); ++line) {
        if (auto* item = grid_->itemAtPosition(line, Column::height)) {
            item->widget()->setVisible(!isInch);
        }
    }
    showReduction();
}

}  // namespace coutil
