#include "ui/fields/date_field.h"

#include <QLocale>
#include <QSignalBlocker>
#include <QWheelEvent>

namespace coutil {

DateField::DateField(QWidget* parent) : QDateEdit(parent) {
    setCalendarPopup(true);
    setFocusPolicy(Qt::StrongFocus);
    // The short form of many languages leaves out the century; a body changes over the years.
    QString format = QLocale().dateFormat(QLocale::ShortFormat);
    if (!format.contains(QLatin1String("yyyy"))) {
        format.replace(QLatin1String("yy"), QLatin1String("yyyy"));
    }
    setDisplayFormat(format);
    connect(this, &QDateEdit::dateChanged, this, [this] { emit edited(isoDate()); });
}

void DateField::setIsoDate(const std::string& date) {
    const QDate read = QDate::fromString(QString::fromStdString(date), Qt::ISODate);
    if (!read.isValid()) return;
    const QSignalBlocker quiet(this);
    setDate(read);
}

std::string DateField::isoDate() const { return date().toString(Qt::ISODate).toStdString(); }

void DateField::wheelEvent(QWheelEvent* event) {
    if (hasFocus()) {
        QDateEdit::wheelEvent(event);
    } else {
        event->ignore();
    }
}

}  // namespace coutil
