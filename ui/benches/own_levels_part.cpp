#include "ui/benches/own_levels_part.h"

#include <QGridLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>
#include <string>

#include "ui/fields/length_field.h"

namespace coutil {

namespace {
constexpr double kFirstHeightMm = 50;
}

OwnLevelsPart::OwnLevelsPart(FolioDocument& document, QWidget* parent)
    : StylePart(document, parent),
      grid_(new QGridLayout),
      add_(new QPushButton(tr("Add a level"))) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(grid_);
    column->addWidget(add_, 0, Qt::AlignLeft);
    add_->setObjectName(QStringLiteral("addLevel"));
    connect(add_, &QPushButton::clicked, this, &OwnLevelsPart::addLevel);
}

void OwnLevelsPart::addLevel() {
    edit(
        [](Style& s) {
            // A name that is not there yet: two levels of one name could not be told apart.
            std::string name;
            std::size_t number = s.ownLevels.size();
            do {
                name = tr("level %1").arg(++number).toStdString();
            } while (std::any_of(s.ownLevels.begin(), s.ownLevels.end(),
                                 [&](const OwnLevel& level) { return level.name == name; }));
            s.ownLevels.push_back({name, kFirstHeightMm});
        },
        tr("Add a level"));
}

void OwnLevelsPart::rebuild(std::size_t count) {
    forgetFields();
    names_.clear();
    while (QLayoutItem* item = grid_->takeAt(0)) {
        item->widget()->deleteLater();
        item->widget()->hide();
        delete item;
    }
    for (std::size_t i = 0; i < count; ++i) {
        const int line = static_cast<int>(i);
        auto* name = new QLineEdit;
        name->setAccessibleName(tr("Name of own level %1").arg(i + 1));
        connect(name, &QLineEdit::textEdited, this, [this, i](const QString& text) {
            if (text.trimmed().isEmpty()) return;
            edit(
                [&](Style& s) {
                    if (i < s.ownLevels.size()) s.ownLevels[i].name = text.trimmed().toStdString();
                },
                tr("Name of a level"), QStringLiteral("level name %1").arg(i));
        });
        connect(name, &QLineEdit::editingFinished, this, &StylePart::endRun);
        names_.push_back(name);
        grid_->addWidget(name, line, 0);
        grid_->addWidget(makeField({.label = tr("Height of own level %1 over the waist").arg(i + 1),
                                    .words = tr("Height of a level"),
                                    .key = QStringLiteral("level %1").arg(i),
                                    .mayStayOpen = false,
                                    .read = [i](const Style& s) -> std::optional<double> {
                                        if (i >= s.ownLevels.size()) return std::nullopt;
                                        return s.ownLevels[i].heightMm;
                                    },
                                    .write =
                                        [i](Style& s, std::optional<double> mm) {
                                            if (i < s.ownLevels.size())
                                                s.ownLevels[i].heightMm = *mm;
                                        }}),
                         line, 1);
        auto* remove = new QPushButton(tr("Remove"));
        remove->setAccessibleName(tr("Remove own level %1").arg(i + 1));
        connect(remove, &QPushButton::clicked, this, [this, i] {
            edit(
                [i](Style& s) {
                    if (i < s.ownLevels.size()) {
                        s.ownLevels.erase(s.ownLevels.begin() + static_cast<std::ptrdiff_t>(i));
                    }
                },
                tr("Remove a level"));
        });
        grid_->addWidget(remove, line, 2);
    }
}

void OwnLevelsPart::refresh() {
    if (names_.size() != style().ownLevels.size()) rebuild(style().ownLevels.size());
    StylePart::refresh();
    for (std::size_t i = 0; i < names_.size(); ++i) {
        const QString name = QString::fromStdString(style().ownLevels[i].name);
        if (names_[i]->text().trimmed() != name) names_[i]->setText(name);
    }
}

}  // namespace coutil
