#include "ui/papers/paper_head.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

#include "ui/papers/page_writer.h"

namespace coutil {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Papers)
};

QString subject(const PaperHead& head) {
    QStringList parts{head.garment, head.state, head.client};
    parts.removeAll(QString());
    return parts.join(QStringLiteral(", "));
}

// A maker's own words may hold a percent sign with a figure, which arg() would take for a place.
QString escaped(QString words) {
    return words.replace(QLatin1Char('%'), QStringLiteral("%\u200b"));
}

}  // namespace

QString paperFooter(const PaperHead& head) {
    QStringList parts{escaped(subject(head))};
    if (head.printedOn.isValid()) {
        parts << Words::tr("printed %1")
                     .arg(QLocale().toString(head.printedOn, QLocale::ShortFormat));
    }
    parts << Words::tr("page %1 of %2");
    parts.removeAll(QString());
    return parts.join(QStringLiteral(" · "));
}

double writePaperHead(PageWriter& page, const QString& title, const PaperHead& head) {
    double y = page.topMm() + letters::kTitle;
    page.text(title, {page.leftMm(), y}, letters::kTitle, page.roomMm());
    const QString about = subject(head);
    if (!about.isEmpty()) {
        y += 6;
        page.text(about, {page.leftMm(), y}, letters::kHeading, page.roomMm());
    }
    y += 3;
    page.line({page.leftMm(), y}, {page.rightMm(), y}, 0.3);
    return y + 3;
}

}  // namespace coutil
