#include "app/command_line/folio_text.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

#include "app/command_line/messages.h"
#include "core/revision/recipe.h"
#include "core/revision/timeline.h"
#include "ui/words/trade_words.h"

namespace coutil {
namespace {

class FolioText {
    Q_DECLARE_TR_FUNCTIONS(FolioText)

  public:
    explicit FolioText(const Folio& folio) : folio_(folio) {}
    QString written();

  private:
    void writeSet(const MeasurementSet& set);
    void writeGarment(const Garment& garment);
    static Style styleOf(const Garment& garment);
    QString entryText(const Garment& garment, const TimelineEntry& entry) const;
    QString revisionText(const Revision& revision) const;
    QString fittingText(const Fitting& fitting) const;
    QString pencilText(const Pencil& pencil) const;
    static QString one(const std::string& text) {
        return QString::fromStdString(text).simplified();
    }

    const Folio& folio_;
    QStringList lines_;
};

void FolioText::writeSet(const MeasurementSet& set) {
    lines_
        << (set.takenBy.empty()
                ? tr("Measurements of %1:").arg(one(set.takenOn))
                : tr("Measurements of %1, taken by %2:").arg(one(set.takenOn), one(set.takenBy)));
    if (!set.note.empty()) lines_ << QStringLiteral("  ") + tr("Note: %1").arg(one(set.note));
    for (const auto& [id, mm] : set.valuesMm)
        lines_ << QStringLiteral("  %1: %2").arg(measurementTerm(id), lengthText(mm, folio_.unit));
}

void FolioText::writeGarment(const Garment& garment) {
    lines_ << tr("Garment %1, begun on %2: %3 panels a half")
                  .arg(one(garment.name), one(garment.createdOn))
                  .arg(styleOf(garment).panelsPerHalf);
    for (const TimelineEntry& entry : timelineOf(garment))
        lines_ << QStringLiteral("  %1  ").arg(one(entry.date)) + entryText(garment, entry);
}

Style FolioText::styleOf(const Garment& garment) {
    if (const Pencil* latest = latestPencil(garment)) return styleInForce(*latest);
    return garment.revisions.empty() ? Style{} : garment.revisions.back()->recipe().style;
}

QString FolioText::entryText(const Garment& garment, const TimelineEntry& entry) const {
    switch (entry.kind) {
        case TimelineKind::revision:
            return revisionText(*garment.revisions[entry.index]);
        case TimelineKind::fitting:
            return fittingText(garment.fittings[entry.index]);
        case TimelineKind::pencil:
            return pencilText(garment.pencils[entry.index]);
    }
    return {};
}

QString FolioText::revisionText(const Revision& revision) const {
    QString text = tr("revision %1").arg(revision.number());
    if (const Revision* parent = findRevision(folio_, revision.content().parent))
        text += tr(", from revision %1").arg(parent->number());
    if (!revision.content().confirmedBy.empty())
        text += tr(", confirmed by %1").arg(one(revision.content().confirmedBy));
    if (!revision.content().note.empty())
        text += QStringLiteral(": ") + one(revision.content().note);
    return text;
}

QString FolioText::fittingText(const Fitting& fitting) const {
    const Revision* tried = findRevision(folio_, fitting.revision);
    const int marks = static_cast<int>(fitting.marks.size());
    return tried == nullptr
               ? tr("fitting of the pencil, %n mark(s)", nullptr, marks)
               : tr("fitting of revision %1, %n mark(s)", nullptr, marks).arg(tried->number());
}

QString FolioText::pencilText(const Pencil& pencil) const {
    QString text =
        one(pencil.name).isEmpty() ? tr("pencil") : tr("pencil “%1”").arg(one(pencil.name));
    if (const Revision* parent = findRevision(folio_, pencil.parent))
        text += tr(", from revision %1").arg(parent->number());
    if (const MeasurementSet* set = setInForce(folio_, pencil))
        text += tr(", from the measurements of %1").arg(one(set->takenOn));
    if (!pencil.alterations.empty())
        text += tr(", %n alteration(s)", nullptr, static_cast<int>(pencil.alterations.size()));
    return text;
}

QString FolioText::written() {
    lines_ << tr("Client: %1").arg(one(folio_.client));
    if (!folio_.note.empty()) lines_ << tr("Note: %1").arg(one(folio_.note));
    for (const MeasurementSet& set : folio_.measurementSets) writeSet(set);
    for (const Garment& garment : folio_.garments) writeGarment(garment);
    return lines_.join(QLatin1Char('\n')) + QLatin1Char('\n');
}

}  // namespace

std::string folioText(const Folio& folio) { return terminalText(FolioText(folio).written()); }

}  // namespace coutil
