#include "ui/projecting/projector_view.h"

#include <QLabel>
#include <QMouseEvent>
#include <QPainter>
#include <QScreen>
#include <QWindow>

#include "ui/projecting/calibration_tool.h"
#include "ui/projecting/projector_screens.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {
constexpr int kKeyLineMarginPx = 12;
}  // namespace

ProjectorView::ProjectorView(QWidget* parent)
    : QWidget(parent, Qt::Window),
      calibrating_(new CalibrationTool(this)),
      keyLine_(new QLabel(this)) {
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_OpaquePaintEvent);
    setWindowTitle(tr("Projector"));
    setAccessibleName(tr("Tracings at true scale"));
    keyLine_->setWordWrap(true);
    keyLine_->setMargin(kKeyLineMarginPx);
    keyLine_->setTextFormat(Qt::PlainText);
    keyLine_->setAutoFillBackground(true);
    keyLine_->setAttribute(Qt::WA_TransparentForMouseEvents);
    connect(calibrating_, &CalibrationTool::calibrated, this, &ProjectorView::takeCalibration);
    connect(calibrating_, &CalibrationTool::left, this, &ProjectorView::endCalibrating);
    setLook(look_);
}

void ProjectorView::setTracings(const std::vector<Tracing>& tracings, LengthUnit unit) {
    const bool isFirst = pieces_.empty();
    pieces_ = projectedPieces(tracings);
    unit_ = unit;
    if (piece_ >= static_cast<int>(pieces_.size())) piece_ = -1;
    if (isFirst || piece_ < 0) {
        goTo(pieces_.empty() ? -1 : 0);
    } else {
        update();
        tellKeys();
    }
}

void ProjectorView::showOn(QScreen& screen) {
    const auto kept = keptCalibration(screen);
    isCalibrated_ = kept.has_value();
    calibration_ = kept ? *kept : claimedCalibration(screen);
    rememberProjectorScreen(screen);
    setScreen(&screen);
    setGeometry(screen.geometry());
    if (windowHandle() != nullptr) windowHandle()->setScreen(&screen);
    showFullScreen();
    raise();
    activateWindow();
    setFocus();
    tellKeys();
    if (!isCalibrated_) calibrate();
}

QTransform ProjectorView::toScreen() const { return projection(view_, calibration_, size()); }

void ProjectorView::setView(const ProjectedView& view) {
    view_ = view;
    update();
    tellKeys();
}

void ProjectorView::setLook(const ProjectorLook& look) {
    look_ = look;
    QPalette quiet = keyLine_->palette();
    quiet.setColor(QPalette::WindowText, projectedQuiet(look));
    quiet.setColor(QPalette::Window, projectedGround(look));
    keyLine_->setPalette(quiet);
    update();
    tellKeys();
}

void ProjectorView::goTo(int piece) {
    piece_ = piece;
    ProjectedView there = view_;
    if (piece >= 0) there.middleMm = pieces_[static_cast<std::size_t>(piece)].middle();
    setView(there);
}

void ProjectorView::step(int by) {
    if (pieces_.empty()) return;
    const int count = static_cast<int>(pieces_.size());
    goTo(((piece_ < 0 ? 0 : piece_ + by) % count + count) % count);
}

void ProjectorView::calibrate() {
    calibrating_->setGeometry(rect());
    calibrating_->begin(calibration_, look_, unit_);
    keyLine_->hide();
    update();
}

void ProjectorView::endCalibrating() {
    calibrating_->hide();
    setFocus();
    keyLine_->show();
    tellKeys();
    update();
}

void ProjectorView::takeCalibration(const ProjectorCalibration& calibration) {
    calibration_ = calibration;
    isCalibrated_ = true;
    keepCalibration(*screen(), calibration);
    update();
}

void ProjectorView::toNextScreen() {
    QScreen* next = screenAfter(screen());
    if (next != nullptr && next != screen()) showOn(*next);
}

void ProjectorView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    // While the square is measured nothing else is on the table.
    const std::vector<ProjectedPiece> none;
    ProjectorLook look = look_;
    look.hasGrid = look_.hasGrid && calibrating_->isHidden();
    const double gridMm = unit_ == LengthUnit::inch ? 2 * millimetresIn(LengthUnit::inch) : 50;
    paintProjected(painter, size(),
                   {calibrating_->isHidden() ? pieces_ : none, onlyPiece_ ? piece_ : -1, view_,
                    calibration_, look, gridMm});
}

void ProjectorView::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    calibrating_->setGeometry(rect());
    placeKeyLine();
}

void ProjectorView::placeKeyLine() {
    const int high = keyLine_->heightForWidth(width());
    keyLine_->setGeometry(0, height() - high, width(), high);
}

void ProjectorView::mousePressEvent(QMouseEvent* event) { lastPx_ = event->position(); }

void ProjectorView::mouseMoveEvent(QMouseEvent* event) {
    if (!event->buttons().testFlag(Qt::LeftButton)) return;
    const QPointF byPx = event->position() - lastPx_;
    lastPx_ = event->position();
    setView(movedOnTable(
        view_, QPointF(byPx.x() / calibration_.acrossPxPerMm, -byPx.y() / calibration_.upPxPerMm)));
}

void ProjectorView::closeEvent(QCloseEvent* event) {
    QWidget::closeEvent(event);
    emit left();
}

}  // namespace coutil
