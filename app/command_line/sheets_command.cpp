#include <QDate>
#include <QDateTime>
#include <QTimeZone>
#include <array>

#include "app/command_line/command.h"
#include "app/command_line/messages.h"
#include "app/command_line/opened_garment.h"
#include "app/command_line/shared_options.h"
#include "app/command_line/sheet_choices.h"
#include "core/sheets/sheet_drawing.h"
#include "ui/printing/pdf_file.h"
#include "ui/words/sheet_words.h"

namespace coutil {
namespace {

constexpr std::array kOptions{
    kGarmentOption,
    kRevisionOption,
    kPencilOption,
    OptionSpec{"--paper", "A4", false,
               QT_TRANSLATE_NOOP("CommandLine",
                                 "A4, A3, A0, Letter, Legal, Tabloid, a roll, or 200x300 in mm")},
    OptionSpec{"--one-page", "", false,
               QT_TRANSLATE_NOOP("CommandLine",
                                 "one big page as large as the layout, in place of a paper")},
    OptionSpec{
        "--landscape", "", false,
        QT_TRANSLATE_NOOP("CommandLine", "turn the paper (whichever way needs fewer sheets)")},
    OptionSpec{"--portrait", "", false, QT_TRANSLATE_NOOP("CommandLine", "keep the paper upright")},
    OptionSpec{"--margin", "MM", false,
               QT_TRANSLATE_NOOP("CommandLine", "what the printer leaves white (10)")},
    OptionSpec{"--overlap", "MM", false,
               QT_TRANSLATE_NOOP("CommandLine", "what neighbouring sheets share (10)")},
    OptionSpec{"--scale-x", "F", false,
               QT_TRANSLATE_NOOP("CommandLine", "correction of the printer across the paper (1)")},
    OptionSpec{"--scale-y", "F", false,
               QT_TRANSLATE_NOOP("CommandLine", "correction of the printer along the paper (1)")},
    OptionSpec{"--mirrored-too", "", false,
               QT_TRANSLATE_NOOP("CommandLine", "print the mirrored twin of every pair as well")},
    OptionSpec{"--seed", "N", false,
               QT_TRANSLATE_NOOP("CommandLine", "where the search for fewer sheets starts")},
    OptionSpec{"--effort", "F", false,
               QT_TRANSLATE_NOOP("CommandLine", "how long it searches; 0 takes the quick layout")},
    OptionSpec{"-o", "OUT.pdf", false, QT_TRANSLATE_NOOP("CommandLine", "the PDF to write")},
    kDateOption,
    kNoNameOption,
    kHelpOption};
constexpr std::array<std::string_view, 1> kRequired{"-o"};
constexpr std::array<std::string_view, 2> kPapers{"--paper", "--one-page"};

PdfInfo infoFor(const TracingTitle& title) {
    PdfInfo info;
    info.title = QString::fromStdString(title.client.empty() ? title.garment
                                                             : title.client + ", " + title.garment);
    info.date = QDateTime(QDate::fromString(QString::fromStdString(title.date), Qt::ISODate),
                          QTime(0, 0), QTimeZone::utc());
    return info;
}

std::vector<SheetDrawing> drawnSheets(const OpenedGarment& opened, const SheetPlan& plan,
                                      const TracingTitle& title) {
    return drawSheets(
        plan, *opened.outcome.tracings,
        sheetWords(title, opened.outcome.pattern->estimates, plan.options, opened.folio.unit));
}

ExitCode run(const Call& call) {
    const Outcome<SheetChoices> choices = readSheetChoices(call);
    if (!choices) return failedBy(choices.problems, LengthUnit::millimetre);
    const Outcome<OpenedGarment> opened = openGarment(call);
    if (!opened) return failedBy(opened.problems);
    const LengthUnit unit = opened->folio.unit;
    if (!opened->outcome.tracings) return failedBy(opened.problems, unit);
    sayProblems(opened.problems, unit);
    const Outcome<SheetPlan> plan = plannedSheets(*opened->outcome.tracings, *choices);
    if (!plan) return failedBy(plan.problems, unit);
    sayProblems(plan.problems, unit);
    const TracingTitle title = titleFor(*opened, call);
    const Outcome<PdfEnd> written =
        writeSheetsPdf(drawnSheets(*opened, *plan, title), infoFor(title),
                       QString::fromStdString(*call.value("-o")));
    return written ? ExitCode::done : failedBy(written.problems, unit);
}

}  // namespace

Command sheetsCommand() {
    return {{"sheets", "F.coutil", kOptions, kRequired, kPapers},
            QT_TRANSLATE_NOOP("CommandLine", "writes the sheets to print at home, true to scale"),
            &run,
            true};
}

}  // namespace coutil
