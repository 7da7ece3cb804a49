#include <QCoreApplication>
#include <QString>
#include <QStringList>
#include <algorithm>

#include "app/command_line/command.h"

namespace coutil {
namespace {

constexpr int kColumn = 26;

QString translated(const char* text) { return QCoreApplication::translate("CommandLine", text); }

QString fromView(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

QString usageOf(const CallForm& form) {
    QStringList words{QStringLiteral("coutil"), fromView(form.command)};
    if (!form.operand.empty()) words << fromView(form.operand);
    QStringList formats;
    for (const std::string_view format : form.formats) formats << fromView(format);
    if (!formats.isEmpty())
        words << QLatin1Char('(') + formats.join(QLatin1Char('|')) + QLatin1Char(')');
    for (const std::string_view name : form.required) {
        const auto option = std::ranges::find(form.options, name, &OptionSpec::name);
        words << fromView(name) + QLatin1Char(' ') + fromView(option->value);
    }
    words << QCoreApplication::translate("CommandLine", "[OPTION ...]");
    return words.join(QLatin1Char(' '));
}

QString row(const QString& name, const QString& text) {
    return QStringLiteral("  %1 %2").arg(name.leftJustified(kColumn), text);
}

}  // namespace

std::string helpText() {
    QStringList lines;
    lines << QCoreApplication::translate(
                 "CommandLine",
                 "coutil [F.coutil]    opens the window, with a folio if one is named")
          << QString();
    for (const Command& command : allCommands())
        lines << row(fromView(command.form.command), translated(command.summary));
    lines << QString()
          << QCoreApplication::translate("CommandLine",
                                         "coutil COMMAND --help tells the options of one command.")
          << QCoreApplication::translate(
                 "CommandLine",
                 "Exit: 0 done; 1 check found problems; 2 wrong input or call, nothing written; "
                 "3 a file can't be read or is damaged.")
          << QString();
    return lines.join(QLatin1Char('\n')).toStdString();
}

std::string helpText(const Command& command) {
    QStringList lines{usageOf(command.form), translated(command.summary), QString()};
    for (const OptionSpec& option : command.form.options) {
        QString name = fromView(option.name);
        if (!option.value.empty()) name += QLatin1Char(' ') + fromView(option.value);
        lines << row(name, translated(option.help));
    }
    lines << QString();
    return lines.join(QLatin1Char('\n')).toStdString();
}

}  // namespace coutil
