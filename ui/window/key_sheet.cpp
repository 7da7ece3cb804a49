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

QString keysOf(QKeySequence::StandardKey key) {
    return QKeySequence(key).toString(QKeySequence::NativeText);
}

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

}  // namespace

KeySheet::KeySheet(QWidget* parent) : QDialog(parent) {
    setWindowTitle(tr("Keys"));
    setModal(false);
    auto* columns = new QHBoxLayout(this);
    columns->setContentsMargins(24, 20, 24, 20);
    columns->setSpacing(40);
    auto* left = new QVBoxLayout;
    left->setSpacing(20);
    left->addWidget(chapter(tr("Window"), {{tr("1 2 3 4"), tr("Measure, Draft, Trace, Print")},
                                           {tr("Alt 1 to Alt 4"), tr("the same while typing")},
                                           {tr("Tab"), tr("next field, next part of the window")},
                                           {tr("F1 or ?"), tr("this sheet")}}));
    left->addWidget(chapter(tr("Folio"), {{keysOf(QKeySequence::New), tr("new client")},
                                          {keysOf(QKeySequence::Open), tr("open a folio")},
                                          {keysOf(QKeySequence::Save), tr("save")},
                                          {tr("Ctrl+Shift+S"), tr("save under another name")},
                                          {keysOf(QKeySequence::Undo), tr("undo")},
                                          {keysOf(QKeySequence::Redo), tr("redo")}}));
    auto* right = new QVBoxLayout;
    right->setSpacing(20);
    right->addWidget(chapter(tr("Figures"),
                             {{tr("Up, Down"), tr("one step of the unit: 1 mm, 1/16 in")},
                              {tr("Shift, Alt with them"), tr("ten times, a tenth")},
                              {tr("Esc"), tr("back to what stood there")},
                              {tr("Enter, Tab"), tr("done")},
                              {tr("12 + 3/8 in"), tr("sums, fractions and units may be typed")}}));
    right->addWidget(chapter(tr("Table"), {{tr("F"), tr("fit everything in")},
                                           {tr("+ and -"), tr("zoom")},
                                           {tr("Wheel"), tr("zoom about the pointer")},
                                           {tr("Space or middle drag"), tr("pan")},
                                           {tr("Tab"), tr("next panel")},
                                           {tr("Up, Down"), tr("next edge of the panel")},
                                           {tr("Esc"), tr("let go")}}));
    columns->addLayout(left);
    columns->addLayout(right);
}

}  // namespace coutil
