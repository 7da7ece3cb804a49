#include "ui/words/revision_words.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>

namespace coutil {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(RevisionWords)
};

}  // namespace

QString dateText(const std::string& isoDate) {
    const QString text = QString::fromStdString(isoDate);
    const QDate date = QDate::fromString(text, Qt::ISODate);
    return date.isValid() ? QLocale().toString(date, QLocale::ShortFormat) : text;
}

QString revisionName(const Revision& revision) {
    return Words::tr("revision %1, %2")
        .arg(revision.number())
        .arg(dateText(revision.content().confirmedOn));
}

QString pencilName(const Pencil& pencil) {
    if (pencil.name.empty()) return Words::tr("pencil");
    return Words::tr("pencil “%1”").arg(QString::fromStdString(pencil.name));
}

}  // namespace coutil
