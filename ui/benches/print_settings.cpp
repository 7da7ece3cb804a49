#include "ui/benches/print_settings.h"

#include <QString>

namespace coutil {

namespace {

constexpr double kSquareMm = 100;

QString correctionKey(const Paper& paper, const char* axis) {
    // Names of papers may hold a slash no more than a path does; sizes are part of the key so that
    // two papers of one name don't share a correction.
    return QStringLiteral("print/correction/%1_%2x%3/%4")
        .arg(QString::fromStdString(paper.name).remove(QLatin1Char('/')))
        .arg(paper.widthUm)
        .arg(paper.heightUm)
        .arg(QLatin1String(axis));
}

// What stands in a file may be anything: only what the program itself would write is taken.
SheetOptions soundOr(const SheetOptions& read, const SheetOptions& otherwise) {
    return checkSheetOptions(read).empty() ? read : otherwise;
}

}  // namespace

SheetOptions storedSheetOptions(const QSettings& settings) {
    SheetOptions options;
    const QString name =
        settings.value(QStringLiteral("print/paper"), QStringLiteral("A4")).toString();
    const Outcome<Paper> paper = paperNamed(name.toStdString());
    if (paper) options.paper = *paper;
    const int orientation = settings.value(QStringLiteral("print/orientation"), 0).toInt();
    if (orientation >= 0 && orientation <= int(Orientation::landscape)) {
        options.orientation = Orientation(orientation);
    }
    options.marginUm =
        settings.value(QStringLiteral("print/marginUm"), qlonglong(options.marginUm)).toLongLong();
    options.overlapUm =
        settings.value(QStringLiteral("print/overlapUm"), qlonglong(options.overlapUm))
            .toLongLong();
    options.mirroredToo = settings.value(QStringLiteral("print/mirroredToo"), false).toBool();
    const Correction correction = storedCorrection(settings, options.paper);
    options.scaleX = correction.x;
    options.scaleY = correction.y;
    return soundOr(options, {});
}

void storeSheetOptions(QSettings& settings, const SheetOptions& options) {
    settings.setValue(QStringLiteral("print/paper"), QString::fromStdString(options.paper.name));
    settings.setValue(QStringLiteral("print/orientation"), int(options.orientation));
    settings.setValue(QStringLiteral("print/marginUm"), qlonglong(options.marginUm));
    settings.setValue(QStringLiteral("print/overlapUm"), qlonglong(options.overlapUm));
    settings.setValue(QStringLiteral("print/mirroredToo"), options.mirroredToo);
    settings.setValue(correctionKey(options.paper, "x"), options.scaleX);
    settings.setValue(correctionKey(options.paper, "y"), options.scaleY);
}

Correction storedCorrection(const QSettings& settings, const Paper& paper) {
    return {settings.value(correctionKey(paper, "x"), 1.0).toDouble(),
            settings.value(correctionKey(paper, "y"), 1.0).toDouble()};
}

double correctedFactor(double factorInForce, double measuredMm) {
    return factorInForce * kSquareMm / measuredMm;
}

bool storedPrintsClient(const QSettings& settings) {
    return settings.value(QStringLiteral("print/client"), true).toBool();
}

void storePrintsClient(QSettings& settings, bool printsClient) {
    settings.setValue(QStringLiteral("print/client"), printsClient);
}

}  // namespace coutil
