#include "ui/fields/length_field.h"

#include <QFocusEvent>
#include <QKeyEvent>
#include <QLocale>
#include <QPainter>
#include <QStyle>
#include <algorithm>
#include <cmath>
#include <utility>

namespace coutil {

namespace {

constexpr int kTailGapPx = 6;
constexpr int kUsualWidthPx = 132;
// Two lengths are the same to a maker and to a file: far below the 0.005 mm of the finest text.
constexpr double kSameLengthMm = 1e-6;

bool isSame(std::optional<double> a, std::optional<double> b) {
    if (a.has_value() != b.has_value()) return false;
    return !a || std::abs(*a - *b) < kSameLengthMm;
}

double stepMm(LengthUnit unit) { return unit == LengthUnit::inch ? 25.4 / 16 : 1.0; }

double factorOf(Qt::KeyboardModifiers keys) {
    if (keys.testFlag(Qt::ShiftModifier)) return 10;
    if (keys.testFlag(Qt::AltModifier)) return 0.1;
    return 1;
}

}  // namespace

LengthField::LengthField(QWidget* parent) : TextField(parent) {
    setAlignment(Qt::AlignLeft);
    connect(this, &QLineEdit::textEdited, this, &LengthField::readText);
    leaveRoomForTail();
}

void LengthField::setUnit(LengthUnit unit) {
    if (unit == unit_) return;
    unit_ = unit;
    oldMm_.reset();
    showSuggestion();
    showValue();
    leaveRoomForTail();
}

LengthUnit LengthField::unit() const { return unit_; }

void LengthField::setMayBeNegative(bool mayBeNegative) { mayBeNegative_ = mayBeNegative; }

void LengthField::setJudge(std::function<std::optional<Problem>(double)> judge) {
    judge_ = std::move(judge);
}

void LengthField::setCompact(bool isCompact) {
    isCompact_ = isCompact;
    leaveRoomForTail();
}

void LengthField::setValueMm(std::optional<double> mm) {
    if (isSame(mm, valueMm_)) return;  // a refused text stays for the maker to mend
    forgetOldFigure();
    valueMm_ = mm;
    enteredMm_ = mm;  // changed from outside: this is what stands there now
    showValue();
    enteredText_ = text();
}

void LengthField::setWrittenText(const QString& text, double mm) {
    // A refused text stays for the maker to mend, a text being typed is hers.
    if ((!isReadable_ || hasFocus()) && isSame(mm, valueMm_)) return;
    const auto read = readLengthMm(text.toStdString(), unit_);
    if (!read || !isSame(*read, mm)) {
        setValueMm(mm);
        return;
    }
    if (!isSame(mm, valueMm_)) {
        forgetOldFigure();
        enteredMm_ = mm;
        enteredText_ = text;
    }
    valueMm_ = mm;
    isReadable_ = true;
    if (text != this->text().trimmed()) setText(text);
}

void LengthField::setSuggestionMm(std::optional<double> mm) {
    suggestionMm_ = mm;
    showSuggestion();
}

void LengthField::setStepsWhenEmpty(bool stepsWhenEmpty) { stepsWhenEmpty_ = stepsWhenEmpty; }

std::optional<double> LengthField::valueMm() const { return valueMm_; }

bool LengthField::isReadable() const { return isReadable_; }

std::optional<double> LengthField::oldFigureMm() const { return oldMm_; }

void LengthField::forgetOldFigure() {
    if (!oldMm_) return;
    oldMm_.reset();
    leaveRoomForTail();
}

QSize LengthField::sizeHint() const { return {kUsualWidthPx, TextField::sizeHint().height()}; }

void LengthField::readText() {
    const QString typed = text().trimmed();
    if (typed.isEmpty()) {
        isReadable_ = true;
        valueMm_.reset();
        oldMm_ = enteredMm_;
        leaveRoomForTail();
        emit edited(std::nullopt, QString());
        return;
    }
    const auto read = readLengthMm(typed.toStdString(), unit_);
    const auto problem = read ? problemWith(*read, typed) : read.problems.front();
    isReadable_ = !problem;
    if (problem) {
        giveBackEntered();
        emit unreadable(*problem);
        return;
    }
    valueMm_ = *read;
    oldMm_ = isSame(enteredMm_, valueMm_) ? std::nullopt : enteredMm_;
    leaveRoomForTail();
    emit edited(valueMm_, typed);
}

std::optional<Problem> LengthField::problemWith(double mm, const QString& typed) const {
    if (mm < 0 && !mayBeNegative_) {
        Problem problem;
        problem.code = ProblemCode::lengthNegative;
        problem.detail = typed.toStdString();
        problem.figures.push_back({"value", mm, FigureUnit::millimetre});
        return problem;
    }
    return judge_ ? judge_(mm) : std::nullopt;
}

// What was read on the way to a refused text ("99" of "9999") was never meant.
void LengthField::giveBackEntered() {
    if (!hasFocus() || isSame(valueMm_, enteredMm_)) return;
    valueMm_ = enteredMm_;
    oldMm_.reset();
    leaveRoomForTail();
    emit edited(valueMm_, enteredText_);
}

void LengthField::step(double steps) {
    if (!valueMm_ && !stepsWhenEmpty_) return;
    const double from = valueMm_ ? *valueMm_ : suggestionMm_.value_or(0);
    double to = from + steps * stepMm(unit_);
    if (!mayBeNegative_) to = std::max(0.0, to);
    setText(written(to));
    readText();
    selectAll();
}

void LengthField::takeBack() {
    if (text() == enteredText_) return;
    setText(enteredText_);
    readText();
    selectAll();
}

void LengthField::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
        case Qt::Key_Up:
            step(factorOf(event->modifiers()));
            return;
        case Qt::Key_Down:
            step(-factorOf(event->modifiers()));
            return;
        case Qt::Key_Escape:
            takeBack();
            return;
        default:
            TextField::keyPressEvent(event);
    }
}

void LengthField::focusInEvent(QFocusEvent* event) {
    enteredMm_ = valueMm_;
    enteredText_ = isReadable_ || !valueMm_ ? text() : written(*valueMm_);
    TextField::focusInEvent(event);
}

void LengthField::showValue() {
    isReadable_ = true;
    setText(valueMm_ ? written(*valueMm_) : QString());
}

void LengthField::showSuggestion() {
    setPlaceholderText(suggestionMm_ ? written(*suggestionMm_) : QString());
}

QString LengthField::written(double mm) const {
    const QString mark = QLocale().decimalPoint();
    const char asciiMark = mark == QLatin1String(",") ? ',' : '.';
    return QString::fromStdString(writtenLength(mm, unit_, asciiMark));
}

QString LengthField::tail() const {
    if (isCompact_) return oldMm_ ? QStringLiteral("(%1)").arg(written(*oldMm_)) : QString();
    const auto key = keyOf(unit_);
    const QString unit = QString::fromLatin1(key.data(), static_cast<qsizetype>(key.size()));
    return oldMm_ ? tr("was %1 %2", "a figure with its unit").arg(written(*oldMm_), unit) : unit;
}

void LengthField::leaveRoomForTail() {
    const QString text = tail();
    const int width = text.isEmpty() ? 0 : fontMetrics().horizontalAdvance(text) + 2 * kTailGapPx;
    setTextMargins(0, 0, width, 0);
    update();
}

void LengthField::paintEvent(QPaintEvent* event) {
    TextField::paintEvent(event);
    QPainter painter(this);
    painter.setPen(palette().color(isEnabled() ? QPalette::Active : QPalette::Disabled,
                                   QPalette::PlaceholderText));
    const QRect room = rect().adjusted(0, 0, -kTailGapPx - 2, 0);
    painter.drawText(room, Qt::AlignRight | Qt::AlignVCenter, tail());
}

}  // namespace coutil
