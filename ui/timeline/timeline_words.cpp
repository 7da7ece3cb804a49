#include "ui/timeline/timeline_words.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>
#include <algorithm>

#include "ui/words/changes_told.h"
#include "ui/words/revision_words.h"

namespace coutil {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(TimelineWords)
};

constexpr int kMostLines = 8;

QDate dateOf(const TimelineEntry& entry) {
    return QDate::fromString(QString::fromStdString(entry.date), Qt::ISODate);
}

const Revision* revisionOf(const Garment& garment, const TimelineEntry& entry) {
    return entry.kind == TimelineKind::revision ? &*garment.revisions[entry.index] : nullptr;
}

QString fittingTitle(const Fitting& fitting) {
    const QString day = dateText(fitting.heldOn);
    return fitting.how == FittingKind::posted ? Words::tr("posted fitting, %1").arg(day)
                                              : Words::tr("fitting, %1").arg(day);
}

QString revisionTitle(const Revision& revision) {
    if (!isBlock(revision)) return revisionName(revision);
    return Words::tr("block, %1").arg(revisionName(revision));
}

QString titleOf(const Garment& garment, const TimelineEntry& entry) {
    switch (entry.kind) {
        case TimelineKind::revision:
            return revisionTitle(*garment.revisions[entry.index]);
        case TimelineKind::fitting:
            return fittingTitle(garment.fittings[entry.index]);
        case TimelineKind::pencil:
            return Words::tr("%1, begun %2")
                .arg(pencilName(garment.pencils[entry.index]), dateText(entry.date));
    }
    return {};
}

// Revisions and pencils name their parent, fittings what was tried on.
QString originOf(const Folio& folio, const Garment& garment, const TimelineEntry& entry) {
    if (entry.kind == TimelineKind::fitting) {
        const Fitting& fitting = garment.fittings[entry.index];
        if (const Revision* tried = findRevision(folio, fitting.revision)) {
            return Words::tr("of %1").arg(revisionTitle(*tried));
        }
        const Pencil* tried = findPencil(garment, fitting.pencil);
        return tried == nullptr ? QString() : Words::tr("of %1").arg(pencilName(*tried));
    }
    const Revision* own = revisionOf(garment, entry);
    const std::string& parent =
        own != nullptr ? own->content().parent : garment.pencils[entry.index].parent;
    const Revision* from = findRevision(folio, parent);
    return from == nullptr ? QString() : Words::tr("from %1").arg(revisionTitle(*from));
}

void addLines(QStringList& lines, const QStringList& sentences) {
    for (qsizetype i = 0; i < std::min<qsizetype>(sentences.size(), kMostLines); ++i) {
        lines.append(QStringLiteral("• ") + sentences[i].toHtmlEscaped());
    }
    const auto more = static_cast<int>(sentences.size()) - kMostLines;
    if (more > 0) lines.append(Words::tr("and %n more", nullptr, more).toHtmlEscaped());
}

void addNote(QStringList& lines, const QString& by, const std::string& note) {
    if (!by.isEmpty()) lines.append(by.toHtmlEscaped());
    if (!note.empty()) {
        lines.append(QString::fromStdString(note).toHtmlEscaped().replace(QLatin1Char('\n'),
                                                                          QLatin1String("<br>")));
    }
}

void tellRevision(QStringList& lines, const Folio& folio, const Revision& revision) {
    const QStringList changes = changesOf(folio, revision, folio.unit);
    addLines(lines, changes);
    const RevisionContent& content = revision.content();
    QString by;
    if (!content.confirmedBy.empty()) {
        by = Words::tr("confirmed by %1").arg(QString::fromStdString(content.confirmedBy));
    }
    // A note that only repeats the alterations is not said twice.
    const QString note = QString::fromStdString(content.note);
    addNote(lines, by, note == changes.join(QLatin1Char('\n')) ? std::string() : content.note);
}

void tellFitting(QStringList& lines, const Fitting& fitting) {
    lines.append(Words::tr("%n mark(s)", nullptr, static_cast<int>(fitting.marks.size())));
    QString by;
    if (!fitting.readBy.empty()) {
        by = Words::tr("read by %1").arg(QString::fromStdString(fitting.readBy));
    }
    addNote(lines, by, fitting.note);
}

void tellPencil(QStringList& lines, const Folio& folio, const Pencil& pencil) {
    const QStringList changes = changesOf(folio, pencil, folio.unit);
    if (changes.isEmpty()) lines.append(Words::tr("nothing changed yet"));
    addLines(lines, changes);
}

}  // namespace

bool isBlock(const Revision& revision) {
    return revision.content().parent.empty() && revision.recipe().alterations.empty();
}

int yearOf(const TimelineEntry& entry) {
    const QDate date = dateOf(entry);
    return date.isValid() ? date.year() : 0;
}

EntryWords entryWords(const Garment& garment, const TimelineEntry& entry, int yearBefore) {
    if (entry.kind == TimelineKind::pencil) {
        const Pencil& pencil = garment.pencils[entry.index];
        return {pencil.name.empty() ? Words::tr("pencil") : QString::fromStdString(pencil.name),
                {}};
    }
    EntryWords words;
    if (const Revision* revision = revisionOf(garment, entry)) {
        words.name =
            isBlock(*revision) ? Words::tr("block") : Words::tr("rev %1").arg(revision->number());
    } else {
        words.name = Words::tr("fitting");
    }
    const QDate date = dateOf(entry);
    const bool isOtherYear = date.year() != yearBefore;
    const QString format = isOtherYear ? Words::tr("d MMM yyyy", "date on the timeline")
                                       : Words::tr("d MMM", "date on the timeline");
    words.day =
        date.isValid() ? QLocale().toString(date, format) : QString::fromStdString(entry.date);
    return words;
}

QString entryAccessibleName(const Folio& folio, const Garment& garment, const TimelineEntry& entry,
                            bool isShown) {
    QStringList parts{titleOf(garment, entry)};
    const QString origin = originOf(folio, garment, entry);
    if (!origin.isEmpty()) parts.append(origin);
    if (isShown) parts.append(Words::tr("shown on the table"));
    return parts.join(QStringLiteral(", "));
}

QString entryToolTip(const Folio& folio, const Garment& garment, const TimelineEntry& entry) {
    QStringList lines{QStringLiteral("<b>%1</b>").arg(titleOf(garment, entry).toHtmlEscaped())};
    const QString origin = originOf(folio, garment, entry);
    if (!origin.isEmpty()) lines.append(origin.toHtmlEscaped());
    switch (entry.kind) {
        case TimelineKind::revision:
            tellRevision(lines, folio, *garment.revisions[entry.index]);
            break;
        case TimelineKind::fitting:
            tellFitting(lines, garment.fittings[entry.index]);
            break;
        case TimelineKind::pencil:
            tellPencil(lines, folio, garment.pencils[entry.index]);
            break;
    }
    return lines.join(QStringLiteral("<br>"));
}

}  // namespace coutil
