#include "ui/benches/fold_out.h"

#include <QToolButton>
#include <QVBoxLayout>

namespace coutil {

FoldOut::FoldOut(const QString& title, QWidget* parent)
    : QWidget(parent), button_(new QToolButton), inside_(new QWidget) {
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 4, 0, 0);
    button_->setText(title);
    button_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    button_->setArrowType(Qt::RightArrow);
    button_->setCheckable(true);
    button_->setAutoRaise(true);
    button_->setFocusPolicy(Qt::StrongFocus);
    whole->addWidget(button_);
    column_ = new QVBoxLayout(inside_);
    column_->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(inside_);
    inside_->hide();
    connect(button_, &QToolButton::toggled, this, &FoldOut::setOpen);
}

void FoldOut::addContent(QWidget* content) { column_->addWidget(content); }

void FoldOut::setOpen(bool isOpen) {
    if (button_->isChecked() != isOpen) button_->setChecked(isOpen);
    if (inside_->isVisibleTo(this) == isOpen) return;
    button_->setArrowType(isOpen ? Qt::DownArrow : Qt::RightArrow);
    inside_->setVisible(isOpen);
    emit openChanged(isOpen);
}

bool FoldOut::isOpen() const { return inside_->isVisibleTo(this); }

}  // namespace coutil
