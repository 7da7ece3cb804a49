#include "ui/window/demo_singer.h"

#include <QCoreApplication>
#include <QFile>
#include <string>

#include "core/store/text_formats.h"
#include "core/store/uuid.h"
#include "ui/document/new_folio.h"

namespace coutil {

namespace {

std::string textOf(const QString& resource) {
    QFile file(resource);
    return file.open(QIODevice::ReadOnly) ? file.readAll().toStdString() : std::string();
}

}  // namespace

Outcome<Folio> demoSinger() {
    auto set = readMeasurementsJson(textOf(QStringLiteral(":/demo/measurements.json")));
    if (!set) return Outcome<Folio>::failed(set.problems);
    auto style = readStyleJson(textOf(QStringLiteral(":/demo/style.json")));
    if (!style) return Outcome<Folio>::failed(style.problems);
    Folio folio;
    folio.id = newUuid();
    folio.client = QCoreApplication::translate("DemoSinger", "Leonore, soprano").toStdString();
    folio.note = QCoreApplication::translate("DemoSinger", "An invented singer to try things with")
                     .toStdString();
    folio.unit = set->unit;
    if (set->id.empty()) set->id = newUuid();
    folio.measurementSets.push_back(*set);
    return withNewGarment(folio, QCoreApplication::translate("DemoSinger", "Corset for act two"),
                          *style, set->id);
}

}  // namespace coutil
