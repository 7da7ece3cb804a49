#include "ui/words/trade_words.h"

#include <QCoreApplication>
#include <QLocale>

namespace coutil {

namespace {

class TradeWords {
    Q_DECLARE_TR_FUNCTIONS(TradeWords)

  public:
    static QString level(LevelId id);
    static QString edge(const QString& name);
    static QString unit(LengthUnit id);
};

QString TradeWords::level(LevelId id) {
    switch (id) {
        case LevelId::aboveBust:
            return tr("upper chest");
        case LevelId::bust:
            return tr("bust");
        case LevelId::underBust:
            return tr("under-bust");
        case LevelId::waist:
            return tr("waist");
        case LevelId::highHip:
            return tr("high hip");
        case LevelId::hip:
            return tr("hip");
    }
    return {};
}

QString TradeWords::edge(const QString& name) {
    if (name == QLatin1String("top")) return tr("top edge");
    if (name == QLatin1String("bottom")) return tr("bottom edge");
    if (name == QLatin1String("centre front")) return tr("centre front");
    if (name == QLatin1String("centre back")) return tr("centre back");
    const QString seam = QStringLiteral("seam ");
    if (name.startsWith(seam)) return tr("seam %1").arg(name.mid(seam.size()));
    return name;
}

QString TradeWords::unit(LengthUnit id) {
    switch (id) {
        case LengthUnit::millimetre:
            return tr("mm");
        case LengthUnit::centimetre:
            return tr("cm");
        case LengthUnit::inch:
            return tr("in", "inch");
    }
    return {};
}

}  // namespace

QString levelName(const std::string& key) {
    const auto id = levelNamed(key);
    return id ? TradeWords::level(*id) : QString::fromStdString(key);
}

QString edgeName(const std::string& name) { return TradeWords::edge(QString::fromStdString(name)); }

QString unitName(LengthUnit unit) { return TradeWords::unit(unit); }

QString lengthText(double mm, LengthUnit unit) {
    const QString mark = QLocale().decimalPoint();
    const std::string number = writtenLength(mm, unit, mark == QLatin1String(",") ? ',' : '.');
    // A sentence without its figure would be no help, even where the figure is absurd.
    if (number.empty()) return QLocale().toString(mm) + QChar(QChar::Nbsp) + unitName(unit);
    return QString::fromStdString(number) + QChar(QChar::Nbsp) + unitName(unit);
}

}  // namespace coutil
