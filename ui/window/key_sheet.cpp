#include "ui/window/key_sheet.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeySequence>
#include <QLabel>
#include <QList>
#include <QPair>
#include <QVBoxLayout>

namespace coutil {

namespace {

using Line = QPair<QString, QString>;  // keys, what they do

QString keysOf(const QKeySequence& keys) { return keys.toString(QKeySequence::NativeText); }

QWidget* chapter(const QString& title, const QList<Line>& lines) {
    auto* widget = new QWidget;
    auto* grid = new QGridLayout(widget);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(18);
    grid->setVerticalSpacing(6);
    auto* head = new QLabel(title);
    QFont bold = head->font();
    bold.setBold(true);
    head->setFont(bold);
    grid->addWidget(head, 0, 0, 1, 2);
    int row = 1;
    for (const Line& line : lines) {
        auto* keys = new QLabel(line.first);
        keys->setForegroundRole(QPalette::PlaceholderText);
        grid->addWidget(keys, row, 0, Qt::AlignLeft | Qt::AlignTop);
        grid->addWidget(new QLabel(line.second), row, 1);
        ++row;
    }
    grid->setColumnStretch(1, 1);
    grid->setRowStretch(row, 1);
    return widget;
}

QWidget* windowKeys() {
    return chapter(KeySheet::tr("Window"),
                   {{KeySheet::tr("1 2 3 4 5"), KeySheet::tr("Measure, Draft, Fit, Trace, Print")},
                    {KeySheet::tr("Alt 1 to Alt 5"), KeySheet::tr("the same while typing")},
                    {KeySheet::tr("Tab"), KeySheet::tr("next field, next part of the window")},
                    {KeySheet::tr("F1 or ?"), KeySheet::tr("this sheet")}});
}

QWidget* folioKeys() {
    return chapter(
        KeySheet::tr("Folio"),
        {{keysOf(QKeySequence::New), KeySheet::tr("new client")},
         {keysOf(QKeySequence::Open), KeySheet::tr("open a folio")},
         {keysOf(QKeySequence::Save), KeySheet::tr("save")},
         {keysOf(Qt::CTRL | Qt::SHIFT | Qt::Key_S), KeySheet::tr("save under another name")},
         {keysOf(Qt::CTRL | Qt::Key_E), KeySheet::tr("export the sheets as PDF")},
         {keysOf(QKeySequence::Print), KeySheet::tr("print the sheets")},
         {keysOf(Qt::Key_F9), KeySheet::tr("the tracings on a projector")},
         {keysOf(Qt::Key_F2), KeySheet::tr("rename the garment")},
         {keysOf(Qt::CTRL | Qt::Key_Return), KeySheet::tr("confirm the pencil")},
         {keysOf(QKeySequence::Undo), KeySheet::tr("undo")},
         {keysOf(QKeySequence::Redo), KeySheet::tr("redo")}});
}

QWidget* figureKeys() {
    return chapter(
        KeySheet::tr("Figures"),
        {{KeySheet::tr("Up, Down"), KeySheet::tr("one step of the unit: 1 mm, 1/16 in")},
         {KeySheet::tr("Shift, Alt with them"), KeySheet::tr("ten times, a tenth")},
         {KeySheet::tr("Esc"), KeySheet::tr("back to what stood there")},
         {KeySheet::tr("Enter, Tab"), KeySheet::tr("done")},
         {KeySheet::tr("12 + 3/8 in"), KeySheet::tr("sums, fractions and units may be typed")}});
}

QWidget* tableKeys() {
    return chapter(KeySheet::tr("Table"),
                   {{KeySheet::tr("F"), KeySheet::tr("fit everything in")},
                    {KeySheet::tr("+ and -"), KeySheet::tr("zoom")},
                    {KeySheet::tr("Wheel"), KeySheet::tr("zoom about the pointer")},
                    {KeySheet::tr("Space or middle drag"), KeySheet::tr("pan")},
                    {KeySheet::tr("Tab"), KeySheet::tr("next panel")},
                    {KeySheet::tr("Up, Down"), KeySheet::tr("next edge of the panel")},
                    {KeySheet::tr("Esc"), KeySheet::tr("let go")}});
}

QWidget* timelineKeys() {
    return chapter(KeySheet::tr("Timeline"),
                   {{KeySheet::tr("Left, Right"), KeySheet::tr("next entry")},
                    {KeySheet::tr("Enter or click"), KeySheet::tr("show it on the table")},
                    {KeySheet::tr("C or Ctrl click"), KeySheet::tr("compare with what is shown")}});
}

QVBoxLayout* column(const QList<QWidget*>& chapters) {
    auto* layout = new QVBoxLayout;
    layout->setSpacing(20);
    for (QWidget* each : chapters) layout->addWidget(each);
    layout->addStretch(1);
    return layout;
}

}  // namespace

KeySheet::KeySheet(QWidget* parent) : QDialog(parent) {
    setWindowTitle(tr("Keys"));
    setModal(false);
    auto* columns = new QHBoxLayout(this);
    columns->setContentsMargins(24, 20, 24, 20);
    columns->setSpacing(40);
    columns->addLayout(column({windowKeys(), folioKeys()}));
    columns->addLayout(column({figureKeys(), tableKeys(), timelineKeys()}));
}

}  // namespace coutil
