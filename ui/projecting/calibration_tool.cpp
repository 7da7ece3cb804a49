#include "ui/projecting/calibration_tool.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>
#include <array>

#include "ui/fields/length_field.h"
#include "ui/projecting/calibration_square.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {

constexpr double kRoomShare = 0.62;  // of the screen, for the square
constexpr double kAlike = 0.002;     // measured and wanted: 0.4 mm in 200 mm
constexpr int kPlateMarginPx = 16;

double roundSideMm(const ProjectorCalibration& calibration, const QSize& screenPx,
                   LengthUnit unit) {
    constexpr std::array kMetric{1000.0, 500.0, 400.0, 300.0, 200.0, 100.0};
    constexpr std::array kInches{40.0, 20.0, 16.0, 12.0, 8.0, 4.0};
    for (std::size_t i = 0; i < kMetric.size(); ++i) {
        const double side = unit == LengthUnit::inch
                                ? kInches.at(i) * millimetresIn(LengthUnit::inch)
                                : kMetric.at(i);
        const QSizeF px = squarePx(calibration, side);
        if (px.width() <= screenPx.width() * kRoomShare &&
            px.height() <= screenPx.height() * kRoomShare) {
            return side;
        }
    }
    return unit == LengthUnit::inch ? 2 * millimetresIn(LengthUnit::inch) : 50;
}

}  // namespace

CalibrationTool::CalibrationTool(QWidget* parent)
    : QWidget(parent), square_(new CalibrationSquare(this)) {
    plate_ = makePlate();
    connect(square_, &CalibrationSquare::dragged, this, &CalibrationTool::takeDragged);
    connect(square_, &CalibrationSquare::givenUp, this, &CalibrationTool::takeDragged);
    setTabOrder(square_, side_);
    setTabOrder(side_, across_);
    setTabOrder(across_, up_);
    hide();
}

QWidget* CalibrationTool::makePlate() {
    auto* plate = new QWidget(this);
    plate->setAutoFillBackground(true);
    auto* column = new QVBoxLayout(plate);
    words_ = new QLabel;
    words_->setWordWrap(true);
    words_->setTextFormat(Qt::PlainText);
    column->addWidget(words_);
    auto* row = new QHBoxLayout;
    side_ = addFigure(*row, tr("Side of the square"), QStringLiteral("side"));
    across_ = addFigure(*row, tr("Measured across"), QStringLiteral("measuredAcross"));
    up_ = addFigure(*row, tr("Measured up"), QStringLiteral("measuredUp"));
    auto* take = new QPushButton(tr("Take the measures"));
    connect(take, &QPushButton::clicked, this, &CalibrationTool::takeMeasures);
    auto* done = new QPushButton(tr("Done"));
    connect(done, &QPushButton::clicked, this, &CalibrationTool::left);
    row->addWidget(take);
    row->addWidget(done);
    row->addStretch(1);
    column->addLayout(row);
    connect(side_, &LengthField::edited, this, &CalibrationTool::takeSide);
    for (LengthField* field : {across_, up_}) {
        field->setStepsWhenEmpty(false);  // nobody measured a stepped figure
        connect(field, &LengthField::returnPressed, this, &CalibrationTool::takeMeasures);
    }
    return plate;
}

LengthField* CalibrationTool::addFigure(QLayout& row, const QString& words, const QString& name) {
    auto* label = new QLabel(words);
    auto* field = new LengthField;
    field->setObjectName(name);
    field->setAccessibleName(words);
    field->setMayBeNegative(false);
    field->setMaximumWidth(110);
    field->installEventFilter(this);
    label->setBuddy(field);
    row.addWidget(label);
    row.addWidget(field);
    return field;
}

void CalibrationTool::begin(const ProjectorCalibration& calibration, const ProjectorLook& look,
                            LengthUnit unit) {
    calibration_ = calibration;
    unit_ = unit;
    sideMm_ = roundSideMm(calibration, size(), unit);
    square_->setLook(look);
    for (LengthField* field : {side_, across_, up_}) field->setUnit(unit);
    side_->setValueMm(sideMm_);
    for (LengthField* field : {across_, up_}) field->setValueMm(std::nullopt);
    showSquare();
    say(
        tr("Measure the square on the table, across and up, from the middle of one line to the "
           "middle of the other, and type both. Or drag its edges until it fits the side; arrow "
           "keys move them when the square has the keyboard. Esc: done."));
    show();
    raise();
    across_->setFocus();
}

void CalibrationTool::showSquare() {
    square_->begin(calibration_, sideMm_);
    for (LengthField* field : {across_, up_}) field->setSuggestionMm(sideMm_);
}

QString CalibrationTool::said() const { return words_->text(); }

void CalibrationTool::say(const QString& text) {
    words_->setText(text);
    resizeEvent(nullptr);
}

void CalibrationTool::takeSide(std::optional<double> mm) {
    const QSizeF px = mm ? squarePx(calibration_, *mm) : QSizeF();
    if (px.width() < 20 || px.width() > width() || px.height() < 20 || px.height() > height()) {
        say(tr("A square of this side does not fit the screen. Type another side."));
        return;
    }
    sideMm_ = *mm;
    showSquare();
}

void CalibrationTool::takeMeasures() {
    const auto across = across_->valueMm();
    const auto up = up_->valueMm();
    if (!across || !up || !across_->isReadable() || !up_->isReadable()) {
        say(tr("Two measures are needed: the square's width and its height on the table."));
        (across && across_->isReadable() ? up_ : across_)->setFocus();
        return;
    }
    const auto found = calibrationFrom(square_->square().size(), QSizeF(*across, *up));
    if (!found) {
        say(tr("No projector throws a square of this size. Measure again, and look at the unit."));
        return;
    }
    const bool wasTrue =
        std::abs(*across / sideMm_ - 1) < kAlike && std::abs(*up / sideMm_ - 1) < kAlike;
    calibration_ = *found;
    emit calibrated(calibration_);
    // Now that the scale is known, the largest square is the one that shows what is still wrong.
    sideMm_ = roundSideMm(calibration_, size(), unit_);
    side_->setValueMm(sideMm_);
    for (LengthField* field : {across_, up_}) field->setValueMm(std::nullopt);
    showSquare();
    if (wasTrue) {
        emit left();
        return;
    }
    across_->setFocus();
    say(tr("Taken. Measure once more: both must be %1 now.").arg(lengthText(sideMm_, unit_)));
}

void CalibrationTool::takeDragged(const QSizeF& px) {
    const auto found = calibrationFrom(px, QSizeF(sideMm_, sideMm_));
    if (!found) return;
    calibration_ = *found;
    emit calibrated(calibration_);
    say(tr("Drag until the square is %1 across and up on the table. Esc: done.")
            .arg(lengthText(sideMm_, unit_)));
}

void CalibrationTool::resizeEvent(QResizeEvent* event) {
    if (event != nullptr) QWidget::resizeEvent(event);
    square_->setGeometry(rect());
    const int wide = std::min(width() - 2 * kPlateMarginPx, 860);
    const int high = std::max(plate_->layout()->heightForWidth(wide), plate_->sizeHint().height());
    plate_->setGeometry((width() - wide) / 2, height() - high - kPlateMarginPx, wide, high);
    plate_->raise();
}

// Esc in a field takes back what was typed; where nothing was, it ends the calibration.
bool CalibrationTool::eventFilter(QObject* watched, QEvent* event) {
    const auto* field = qobject_cast<LengthField*>(watched);
    if (field != nullptr && event->type() == QEvent::KeyPress && !field->isModified() &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        emit left();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

void CalibrationTool::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        emit left();
        return;
    }
    // What is typed here is no key of the view behind.
    event->accept();
}

}  // namespace coutil
