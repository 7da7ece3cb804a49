#include "ui/document/new_folio.h"

#include <QCoreApplication>
#include <QDate>
#include <algorithm>
#include <utility>

#include "core/store/uuid.h"

namespace coutil {

std::string today() { return QDate::currentDate().toString(Qt::ISODate).toStdString(); }

Folio newFolio(const QString& client, LengthUnit unit) {
    Folio folio;
    folio.id = newUuid();
    folio.client = client.toStdString();
    folio.unit = unit;
    MeasurementSet set;
    set.id = newUuid();
    set.takenOn = today();
    set.unit = unit;
    folio.measurementSets.push_back(set);
    return withNewGarment(folio, freeGarmentName(folio), {}, set.id);
}

Folio withNewGarment(const Folio& folio, const QString& name, const Style& style,
                     const std::string& setId) {
    Garment garment;
    garment.id = newUuid();
    garment.name = name.toStdString();
    garment.createdOn = today();
    garment.pencils = {
        {.id = newUuid(), .startedOn = today(), .measurementSet = setId, .style = style}};
    Folio after = folio;
    after.garments.push_back(std::move(garment));
    return after;
}

QString freeGarmentName(const Folio& folio) {
    const QString stem = QCoreApplication::translate("Garment", "Corset");
    QString name = stem;
    for (int n = 2; findGarment(folio, name.toStdString()) != nullptr; ++n) {
        name = QStringLiteral("%1 %2").arg(stem).arg(n);
    }
    return name;
}

}  // namespace coutil
