#include "ui/benches/fit_photo_view.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QMouseEvent>
#include <QPainter>
#include <QPushButton>

#include "ui/benches/fit_photo.h"
#include "ui/canvas/table_colours.h"

namespace coutil {

namespace {
constexpr int kMarginPx = 24;
constexpr double kSpotPx = 11;
}  // namespace

FitPhotoView::FitPhotoView(QWidget* over)
    : QWidget(over), hint_(new QLabel), bar_(new QWidget(this)) {
    setFocusPolicy(Qt::StrongFocus);
    setObjectName(QStringLiteral("photoView"));
    auto* row = new QHBoxLayout(bar_);
    row->setContentsMargins(kMarginPx, 6, kMarginPx, 6);
    bar_->setAutoFillBackground(true);
    hint_->setWordWrap(true);
    row->addWidget(hint_, 1);
    auto* remove = new QPushButton(tr("Remove photo"));
    auto* close = new QPushButton(tr("Close"));
    remove->setObjectName(QStringLiteral("removePhoto"));
    close->setObjectName(QStringLiteral("closePhoto"));
    row->addWidget(remove);
    row->addWidget(close);
    connect(close, &QPushButton::clicked, this, &FitPhotoView::closePhoto);
    connect(remove, &QPushButton::clicked, this, [this] { emit removeWanted(photo_); });
    over->installEventFilter(this);
    hide();
}

void FitPhotoView::showPhoto(const Photo& photo) {
    photo_ = photo.id;
    picture_ = QPixmap::fromImage(pictureOf(photo));
    setAccessibleName(photo.caption.empty() ? tr("Photo") : QString::fromStdString(photo.caption));
    setGeometry(parentWidget()->rect());
    show();
    raise();
    setFocus(Qt::OtherFocusReason);
    update();
}

void FitPhotoView::closePhoto() {
    photo_.clear();
    picture_ = QPixmap();
    hide();
}

void FitPhotoView::showSpots(const std::vector<Mark>& marks, const std::string& picked,
                             const QString& hint) {
    marks_ = marks;
    picked_ = picked;
    hint_->setText(hint);
    update();
}

QRectF FitPhotoView::pictureArea() const {
    const QRectF room = QRectF(rect()).adjusted(kMarginPx, bar_->height() + kMarginPx / 2.0,
                                                -kMarginPx, -kMarginPx);
    QSizeF size = picture_.size();
    if (size.isEmpty() || room.isEmpty()) return {};
    size.scale(room.size(), Qt::KeepAspectRatio);
    QRectF area(QPointF(), size);
    area.moveCenter(room.center());
    return area;
}

bool FitPhotoView::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Resize && isVisible()) setGeometry(parentWidget()->rect());
    return QWidget::eventFilter(watched, event);
}

void FitPhotoView::resizeEvent(QResizeEvent*) {
    bar_->setGeometry(0, 0, width(), bar_->sizeHint().height());
}

void FitPhotoView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
    const TableColours& colours = tableColours(isDark(palette()));
    painter.fillRect(rect(), colours.paper);
    const QRectF area = pictureArea();
    painter.drawPixmap(area, picture_, QRectF(picture_.rect()));
    for (std::size_t i = 0; i < marks_.size(); ++i) {
        const auto& spot = marks_[i].spot;
        if (!spot || spot->photo != photo_) continue;
        const QPointF at =
            area.topLeft() + QPointF(spot->x * area.width(), spot->y * area.height());
        const bool isPicked = marks_[i].id == picked_;
        painter.setPen(QPen(isPicked ? colours.halo : colours.text, isPicked ? 3 : 1.5));
        painter.setBrush(colours.paper);
        painter.drawEllipse(at, kSpotPx, kSpotPx);
        painter.setPen(colours.text);
        painter.drawText(QRectF(at - QPointF(kSpotPx, kSpotPx), QSizeF(2, 2) * kSpotPx),
                         Qt::AlignCenter, QString::number(i + 1));
    }
}

void FitPhotoView::mouseReleaseEvent(QMouseEvent* event) {
    const QRectF area = pictureArea();
    if (!area.contains(event->position())) {
        closePhoto();
        return;
    }
    const QPointF in = event->position() - area.topLeft();
    emit spotChosen({photo_, in.x() / area.width(), in.y() / area.height()});
}

void FitPhotoView::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        closePhoto();
        return;
    }
    QWidget::keyPressEvent(event);
}

}  // namespace coutil
