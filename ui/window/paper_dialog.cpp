#include "ui/window/paper_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/document/folio_document.h"
#include "ui/printing/sheet_painter.h"
#include "ui/words/problem_sentence.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {

constexpr int kPictureHighPx = 480;
constexpr int kPictureWidePx = 380;
constexpr int kReturnDays = 14;

QPixmap pictureOf(const SheetDrawing& page, qreal dpr) {
    const double scale = std::min(kPictureHighPx / page.heightMm, kPictureWidePx / page.widthMm);
    QPixmap picture(QSize(qRound(page.widthMm * scale * dpr), qRound(page.heightMm * scale * dpr)));
    picture.fill(Qt::white);
    QPainter painter(&picture);
    painter.scale(scale * dpr, scale * dpr);
    paintSheet(painter, page);
    painter.end();
    picture.setDevicePixelRatio(dpr);
    return picture;
}

}  // namespace

PaperDialog::PaperDialog(FolioDocument& document, PaperKind kind, QWidget* parent)
    : QDialog(parent), document_(document), kind_(kind), today_(QDate::currentDate()) {
    setWindowTitle(paperName(kind));
    setModal(false);
    auto* row = new QHBoxLayout(this);
    row->setSpacing(20);
    auto* preview = new QVBoxLayout;
    buildPreview(preview);
    row->addLayout(preview, 1);
    auto* side = new QVBoxLayout;
    auto* form = new QFormLayout;
    buildChoices(form);
    side->addLayout(form);
    side->addStretch(1);
    save_ = new QPushButton(tr("&Save as PDF…"));
    print_ = new QPushButton(tr("&Print…"));
    auto* close = new QPushButton(tr("Close"));
    for (QPushButton* button : {save_, print_, close}) side->addWidget(button);
    row->addLayout(side);
    connect(save_, &QPushButton::clicked, this, &PaperDialog::savePdf);
    connect(print_, &QPushButton::clicked, this, &PaperDialog::print);
    connect(close, &QPushButton::clicked, this, &QDialog::close);
    connect(&document, &FolioDocument::draftedChanged, this, [this] {
        if (isVisible()) follow();
    });
    connect(&document, &FolioDocument::opened, this, &QDialog::close);
    follow();
}

void PaperDialog::follow() {
    if (!document_.isOpen()) return;
    fillOlder();
    makeAgain();
}

void PaperDialog::buildPreview(QVBoxLayout* column) {
    picture_ = new QLabel;
    picture_->setAccessibleName(tr("Picture of the page"));
    picture_->setAlignment(Qt::AlignCenter);
    picture_->setMinimumSize(kPictureWidePx, kPictureHighPx);
    words_ = new QLabel;
    words_->setWordWrap(true);
    words_->setAlignment(Qt::AlignCenter);
    back_ = new QPushButton(tr("Page &back"));
    forth_ = new QPushButton(tr("Page &forth"));
    auto* turn = new QHBoxLayout;
    turn->addWidget(back_);
    turn->addWidget(words_, 1);
    turn->addWidget(forth_);
    column->addWidget(picture_, 1);
    column->addLayout(turn);
    connect(back_, &QPushButton::clicked, this, [this] { turnPage(-1); });
    connect(forth_, &QPushButton::clicked, this, [this] { turnPage(1); });
}

void PaperDialog::buildChoices(QFormLayout* form) {
    paper_ = new QComboBox;
    for (const Paper& paper : knownPapers()) {
        if (paper.isOnePage) continue;
        if (kind_ != PaperKind::change && paper.name != "A4" && paper.name != "Letter") continue;
        paper_->addItem(QString::fromStdString(paper.name));
    }
    form->addRow(tr("Paper"), paper_);
    unit_ = new QComboBox;
    for (const LengthUnit unit : {LengthUnit::centimetre, LengthUnit::inch}) {
        unit_->addItem(unitName(unit), static_cast<int>(unit));
    }
    unit_->setCurrentIndex(document_.folio().unit == LengthUnit::inch ? 1 : 0);
    form->addRow(tr("Unit"), unit_);
    if (kind_ == PaperKind::change) {
        older_ = new QComboBox;
        form->addRow(tr("Changed since"), older_);
        connect(older_, &QComboBox::currentIndexChanged, this, &PaperDialog::makeAgain);
    }
    if (kind_ == PaperKind::fitting) {
        returns_ = new QCheckBox(tr("Back by"));
        returnBy_ = new QDateEdit(today_.addDays(kReturnDays));
        returnBy_->setCalendarPopup(true);
        returnBy_->setAccessibleName(tr("Day it should be back"));
        form->addRow(returns_, returnBy_);
        connect(returns_, &QCheckBox::toggled, this, &PaperDialog::makeAgain);
        connect(returnBy_, &QDateEdit::dateChanged, this, &PaperDialog::makeAgain);
    }
    client_ = new QCheckBox(tr("Client's name on it"));
    client_->setChecked(true);
    form->addRow(client_);
    connect(client_, &QCheckBox::toggled, this, &PaperDialog::makeAgain);
    connect(paper_, &QComboBox::currentIndexChanged, this, &PaperDialog::makeAgain);
    connect(unit_, &QComboBox::currentIndexChanged, this, &PaperDialog::makeAgain);
}

void PaperDialog::fillOlder() {
    if (older_ == nullptr) return;
    const QString chosen = older_->currentText();
    states_ = olderStates(document_);
    const QSignalBlocker quiet(older_);
    older_->clear();
    for (const OlderState& state : states_) older_->addItem(state.name);
    older_->setCurrentIndex(std::max(0, older_->findText(chosen)));
}

void PaperDialog::changedSince(const StateRef& older) {
    for (std::size_t i = 0; i < states_.size(); ++i) {
        const StateRef& state = states_[i].state;
        if (state.digest == older.digest && state.pencil == older.pencil)
            older_->setCurrentIndex(static_cast<int>(i));
    }
}

void PaperDialog::setToday(const QDate& today) {
    today_ = today;
    if (returnBy_ != nullptr) returnBy_->setDate(today.addDays(kReturnDays));
    makeAgain();
}

PaperChoices PaperDialog::choices() const {
    PaperChoices choices;
    choices.kind = kind_;
    if (const auto paper = paperNamed(paper_->currentText().toStdString())) choices.paper = *paper;
    choices.unit = static_cast<LengthUnit>(unit_->currentData().toInt());
    choices.withClient = client_->isChecked();
    choices.printedOn = today_;
    if (returns_ != nullptr && returns_->isChecked()) choices.returnBy = returnBy_->date();
    if (older_ != nullptr && older_->currentIndex() >= 0)
        choices.older = states_[static_cast<std::size_t>(older_->currentIndex())].state;
    return choices;
}

void PaperDialog::makeAgain() {
    if (print_ == nullptr || !document_.isOpen()) return;
    pages_.clear();
    QString fault;
    if (older_ != nullptr && states_.empty()) {
        fault = tr("There is only one revision: nothing to compare it with yet.");
    } else {
        auto made = documentPaper(document_, choices());
        if (made) {
            pages_ = *std::move(made);
        } else if (!made.problems.empty()) {
            fault = problemSentence(made.problems.front(), document_.folio().unit);
        }
    }
    page_ = std::clamp(page_, 0, std::max(0, static_cast<int>(pages_.size()) - 1));
    save_->setEnabled(!pages_.empty());
    print_->setEnabled(!pages_.empty());
    showPage();
    if (pages_.empty()) words_->setText(fault);
}

void PaperDialog::turnPage(int by) {
    page_ = std::clamp(page_ + by, 0, std::max(0, static_cast<int>(pages_.size()) - 1));
    showPage();
}

void PaperDialog::showPage() {
    back_->setEnabled(page_ > 0);
    forth_->setEnabled(page_ + 1 < static_cast<int>(pages_.size()));
    if (pages_.empty()) {
        picture_->clear();
        return;
    }
    picture_->setPixmap(pictureOf(pages_[static_cast<std::size_t>(page_)], devicePixelRatioF()));
    words_->setText(tr("page %1 of %2").arg(page_ + 1).arg(pages_.size()));
}

QString PaperDialog::said() const { return words_->text(); }

}  // namespace coutil
