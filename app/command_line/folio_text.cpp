#include "app/command_line/folio_text.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

#include "app/command_line/messages.h"
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
    const Pencil* latest = latestPencil(garment);
    if (latest == nullptr) return;
    const Pencil& pencil = *latest;
    lines_ << tr("Garment %1, begun on %2: %3 panels a half")
                  .arg(one(garment.name), one(garment.createdOn))
                  .arg(styleInForce(pencil).panelsPerHalf);
    const MeasurementSet* set = findMeasurementSet(folio_, measurementSetInForce(pencil));
    lines_ << QStringLiteral("  %1  ").arg(one(pencil.startedOn)) +
                  tr("pencil, from the measurements of %1")
                      .arg(set == nullptr ? QStringLiteral("?") : one(set->takenOn));
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
