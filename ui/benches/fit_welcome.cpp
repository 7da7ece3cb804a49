#include "ui/benches/fit_welcome.h"

#include <QPushButton>
#include <QVBoxLayout>

#include "ui/benches/card_text.h"

namespace coutil {

FitWelcome::FitWelcome(QWidget* parent) : QWidget(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(cardHeading(tr("No fitting yet")));
    column->addWidget(quietText(
        tr("A fitting is one trying-on of the mock-up. Where it is loose it is pinned smaller; "
           "where it is tight it is cut open. You measure the pins and the gaps, type them here "
           "where they are, and see the new line in pencil over the old one.")));
    column->addWidget(quietText(
        tr("The client may fit it far away: post the fitting sheet with the mock-up. It shows how "
           "to pin and cut, and has room for every reading.")));
    auto* sheet = new QPushButton(tr("Print the fitting sheet to post…"));
    auto* fitting = new QPushButton(tr("Record a fitting"));
    sheet->setObjectName(QStringLiteral("fittingSheet"));
    fitting->setObjectName(QStringLiteral("recordFitting"));
    column->addWidget(sheet);
    column->addWidget(fitting);
    connect(sheet, &QPushButton::clicked, this, &FitWelcome::sheetWanted);
    connect(fitting, &QPushButton::clicked, this, &FitWelcome::fittingWanted);
}

}  // namespace coutil
