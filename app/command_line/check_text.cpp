#include "app/command_line/check_text.h"

#include <QCoreApplication>
#include <QLocale>
#include <QString>
#include <QStringList>

#include "app/command_line/messages.h"
#include "ui/words/trade_words.h"

namespace coutil {
namespace {

class CheckText {
    Q_DECLARE_TR_FUNCTIONS(CheckText)

  public:
    CheckText(const std::vector<GarmentCheck>& checks, LengthUnit unit)
        : checks_(checks), unit_(unit) {}
    QString written();

  private:
    void writeCheck(const GarmentCheck& check);
    static QString severityName(Severity severity);

    const std::vector<GarmentCheck>& checks_;
    LengthUnit unit_;
    QStringList lines_;
};

QString CheckText::severityName(Severity severity) {
    switch (severity) {
        case Severity::note:
            return tr("note");
        case Severity::warning:
            return tr("warning");
        case Severity::error:
            return tr("error");
    }
    return {};
}

void CheckText::writeCheck(const GarmentCheck& check) {
    const QString name = QString::fromStdString(check.garment).simplified();
    for (const Problem& problem : check.problems) {
        lines_ << QStringLiteral("%1: %2: %3")
                      .arg(name, severityName(problem.severity),
                           QString::fromStdString(sentenceLine(problem, unit_)));
    }
    for (const AcceptedErrors& accepted : check.acceptedErrors) {
        QStringList parts = QString::fromStdString(accepted.text).split(QLatin1Char('\n'));
        const QString reason = parts.takeFirst().simplified();
        lines_ << tr("%1: errors that were accepted when revision %2 was confirmed (%3): %4")
                      .arg(name)
                      .arg(accepted.revision)
                      .arg(parts.size())
                      .arg(reason);
    }
    for (const DrawnPanelCheck& panel : check.drawing) {
        lines_ << tr("%1: drawing of panel %2: at most %3 mm off")
                      .arg(name, QString::fromStdString(panel.panel),
                           QLocale().toString(panel.largestMm, 'f', 3));
    }
    if (check.problems.empty()) lines_ << tr("%1: no problems").arg(name);
    for (const Estimate& estimate : check.estimates) {
        lines_ << tr("%1: estimated: %2 %3, give or take %4 (%5)")
                      .arg(name, measurementTerm(estimate.id), lengthText(estimate.valueMm, unit_),
                           lengthText(estimate.sdMm, unit_),
                           QString::fromStdString(estimate.source));
    }
}

QString CheckText::written() {
    lines_ << tr("The file is whole.");
    for (const GarmentCheck& check : checks_) writeCheck(check);
    return lines_.join(QLatin1Char('\n')) + QLatin1Char('\n');
}

}  // namespace

std::string checkText(const std::vector<GarmentCheck>& checks, LengthUnit unit) {
    return terminalText(CheckText(checks, unit).written());
}

}  // namespace coutil
