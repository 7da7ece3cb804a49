#include "ui/window/garment_line.h"

#include <QActionGroup>
#include <QEvent>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <algorithm>

#include "ui/document/folio_document.h"
#include "ui/document/new_folio.h"

namespace coutil {

namespace {

constexpr int kWidthPx = 400;
constexpr int kLeastWidthPx = 210;
constexpr int kGapPx = 4;
constexpr int kArrowPx = 40;  // the menu arrow and air on both sides

}  // namespace

GarmentLine::GarmentLine(FolioDocument& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      client_(new QLabel),
      dot_(new QLabel(QStringLiteral("·"))),
      button_(new QPushButton),
      menu_(new QMenu(this)),
      group_(new QActionGroup(menu_)),
      name_(new QLineEdit) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(kGapPx);
    QFont bold = client_->font();
    bold.setBold(true);
    client_->setFont(bold);
    row->addWidget(client_);
    row->addWidget(dot_);
    row->addWidget(button_);
    row->addWidget(name_);
    row->addStretch(1);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    button_->setFlat(true);
    button_->setFocusPolicy(Qt::StrongFocus);
    button_->setMenu(menu_);
    name_->setAccessibleName(tr("Name of the garment"));
    name_->installEventFilter(this);
    name_->hide();
    connect(name_, &QLineEdit::editingFinished, this, &GarmentLine::takeName);
    connect(menu_, &QMenu::aboutToShow, this, &GarmentLine::fillMenu);
    connect(&document_, &FolioDocument::folioChanged, this, &GarmentLine::showNames);
    showNames();
}

void GarmentLine::showNames() {
    const QString client = QString::fromStdString(document_.folio().client);
    clientName_ = client.isEmpty() ? tr("Client without a name") : client;
    const Garment* garment = document_.garment();
    garmentName_ = garment != nullptr ? QString::fromStdString(garment->name) : tr("no garment");
    client_->setToolTip(clientName_);
    client_->setAccessibleName(clientName_);
    button_->setAccessibleName(tr("Garment: %1").arg(garmentName_));
    button_->setToolTip(tr("%1: choose, add or rename a garment").arg(garmentName_));
    fitNames();
}

// Where both names are too long, each keeps half of the room and what the other leaves.
void GarmentLine::fitNames() {
    const int room = width() - dot_->sizeHint().width() - 2 * kGapPx;
    const QFontMetrics clientMetrics = client_->fontMetrics();
    const QFontMetrics garmentMetrics = button_->fontMetrics();
    const int clientWants = clientMetrics.horizontalAdvance(clientName_) + 1;
    const int garmentWants = garmentMetrics.horizontalAdvance(garmentName_) + kArrowPx + 1;
    const int clientGets = std::min(clientWants, std::max(room - garmentWants, room / 2));
    const int garmentGets = std::min(garmentWants, room - clientGets);
    client_->setFixedWidth(clientGets);
    client_->setText(clientMetrics.elidedText(clientName_, Qt::ElideRight, clientGets));
    button_->setFixedWidth(garmentGets);
    button_->setText(
        garmentMetrics.elidedText(garmentName_, Qt::ElideRight, garmentGets - kArrowPx));
    name_->setFixedWidth(room - clientGets);
}

QSize GarmentLine::sizeHint() const { return {kWidthPx, QWidget::sizeHint().height()}; }

QSize GarmentLine::minimumSizeHint() const {
    return {kLeastWidthPx, QWidget::minimumSizeHint().height()};
}

void GarmentLine::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fitNames();
}

void GarmentLine::fillMenu() {
    menu_->clear();
    int index = 0;
    for (const Garment& garment : document_.folio().garments) {
        QString words = QString::fromStdString(garment.name);
        words.replace(QLatin1Char('&'), QLatin1String("&&"));
        QAction* action = menu_->addAction(words);
        action->setCheckable(true);
        action->setChecked(index == document_.garmentIndex());
        group_->addAction(action);
        connect(action, &QAction::triggered, this,
                [this, index] { document_.selectGarment(index); });
        ++index;
    }
    menu_->addSeparator();
    menu_->addAction(tr("&New garment"), this, &GarmentLine::addGarment);
    menu_->addAction(tr("&Rename garment"), this, &GarmentLine::startRename);
}

void GarmentLine::addGarment() {
    const MeasurementSet* set = document_.measurementSet();
    if (!document_.isOpen() || set == nullptr) return;
    const QString name = freeGarmentName(document_.folio());
    document_.endMerging();
    document_.change(withNewGarment(document_.folio(), name, document_.style(), set->id),
                     tr("New garment"));
    document_.selectGarment(static_cast<int>(document_.folio().garments.size()) - 1);
    startRename();
}

void GarmentLine::startRename() {
    if (document_.garment() == nullptr) return;
    name_->setText(QString::fromStdString(document_.garment()->name));
    button_->hide();
    name_->show();
    name_->setFocus(Qt::OtherFocusReason);
    name_->selectAll();
}

void GarmentLine::takeName() {
    if (name_->isHidden()) return;
    const std::string name = name_->text().trimmed().toStdString();
    stopRename();
    const auto index = static_cast<std::size_t>(document_.garmentIndex());
    if (document_.garment() == nullptr || name.empty() || name == document_.garment()->name) return;
    Folio after = document_.folio();
    after.garments[index].name = name;
    document_.change(after, tr("Rename garment to %1").arg(QString::fromStdString(name)));
}

void GarmentLine::stopRename() {
    const bool hadFocus = name_->hasFocus();
    button_->show();
    name_->hide();
    if (hadFocus) button_->setFocus(Qt::OtherFocusReason);
}

bool GarmentLine::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        stopRename();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace coutil
