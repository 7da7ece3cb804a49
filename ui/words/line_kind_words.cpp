#include "ui/words/line_kind_words.h"

#include <QCoreApplication>

namespace coutil {
namespace {

struct LineKindWords {
    Q_DECLARE_TR_FUNCTIONS(LineKindWords)
};

}  // namespace

QString lineKindName(LineKind kind) {
    switch (kind) {
        case LineKind::cutting:
            return LineKindWords::tr("Cutting lines");
        case LineKind::sewing:
            return LineKindWords::tr("Sewing lines");
        case LineKind::notches:
            return LineKindWords::tr("Notches");
        case LineKind::grain:
            return LineKindWords::tr("Grain lines");
        case LineKind::fold:
            return LineKindWords::tr("Folds");
        case LineKind::levels:
            return LineKindWords::tr("Levels");
        case LineKind::channels:
            return LineKindWords::tr("Channels");
        case LineKind::eyelets:
            return LineKindWords::tr("Eyelets");
        case LineKind::studs:
            return LineKindWords::tr("Busk studs");
        case LineKind::waistTape:
            return LineKindWords::tr("Waist tape");
        case LineKind::matchNumbers:
            return LineKindWords::tr("Match numbers");
        case LineKind::labels:
            return LineKindWords::tr("Labels");
        case LineKind::joins:
            return LineKindWords::tr("Joins of the sheets");
    }
    return {};
}

}  // namespace coutil
