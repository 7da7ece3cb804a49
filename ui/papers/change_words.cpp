#include "ui/papers/change_words.h"

#include <QCoreApplication>

#include "ui/words/sheet_words.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(ChangeSheet)
};

std::string text(const QString& words) { return words.toStdString(); }

}  // namespace

ChangeWords changeWords(const TracingTitle& title, const StateWords& older, const StateWords& newer,
                        const SheetOptions& options, LengthUnit unit) {
    ChangeWords words;
    words.sheet = sheetWords(title, {}, options, unit);
    words.sheet.title.garment =
        text(Words::tr("Change sheet: %1").arg(QString::fromStdString(title.garment)));
    words.oldState = older.state;
    words.newState = newer.state;
    words.oldLine = older.line;
    words.newLine = newer.line;
    words.farthest = text(Words::tr("up to %1 from the old line"));
    words.unchanged = text(Words::tr("Unchanged and not printed: panels %1."));
    words.gone = text(Words::tr("No longer there: panels %1."));
    words.added = text(Words::tr("a new panel"));
    words.howToLay =
        text(Words::tr("Only what changed from %1 to %2. Cut a piece out along its dashed box, lay "
                       "it on the same panel of the paper master so that grain, levels and waist "
                       "marks meet and the thin line covers the old one, pin it, and go over the "
                       "new line.")
                 .arg(QString::fromStdString(older.state), QString::fromStdString(newer.state)));
    words.edgeName = [](const std::string& key) { return text(edgeName(key)); };
    words.length = [unit](double mm) { return text(lengthText(mm, unit)); };
    return words;
}

}  // namespace coutil
