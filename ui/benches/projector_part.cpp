#include "ui/benches/projector_part.h"

#include <QGuiApplication>
#include <QHBoxLayout>
#include <QPushButton>
#include <QScreen>

#include "ui/fields/choice_field.h"
#include "ui/projecting/projector_screens.h"

namespace coutil {

ProjectorPart::ProjectorPart(QWidget* parent)
    : QWidget(parent), screens_(new ChoiceField), open_(new QPushButton(tr("Project…"))) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(open_);
    row->addWidget(screens_, 1);
    row->addStretch(0);
    open_->setObjectName(QStringLiteral("project"));
    open_->setToolTip(
        tr("The tracings at true scale over a whole screen, for a projector over "
           "the cutting table"));
    screens_->setAccessibleName(tr("Screen of the projector"));
    connect(open_, &QPushButton::clicked, this, &ProjectorPart::projectorWanted);
    connect(screens_, &ChoiceField::chosen, this, [](int index) {
        const QList<QScreen*> all = QGuiApplication::screens();
        if (index >= 0 && index < all.size()) rememberProjectorScreen(*all.at(index));
    });
}

void ProjectorPart::refresh(bool isPatternThere) {
    open_->setEnabled(isPatternThere);
    const QList<QScreen*> all = QGuiApplication::screens();
    screens_->setVisible(all.size() > 1);
    QList<ChoiceField::Choice> choices;
    for (int i = 0; i < all.size(); ++i) choices.append({screenName(*all.at(i)), i});
    screens_->setChoices(choices);
    screens_->setValue(static_cast<int>(all.indexOf(projectorScreen(window()->screen()))));
}

}  // namespace coutil
