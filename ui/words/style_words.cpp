#include <QCoreApplication>
#include <array>
#include <utility>

#include "ui/words/trade_words.h"

namespace coutil {

namespace {

class StyleWords {
    Q_DECLARE_TR_FUNCTIONS(StyleWords)

  public:
    using Entry = std::pair<const char*, const char*>;
    static const std::array<Entry, 26> kTerms;
    static QString term(const QString& key);
};

// Entries of a style file and their names. Marked for translation here, translated when asked for.
constexpr std::array<StyleWords::Entry, 26> StyleWords::kTerms{{
    {"block", QT_TR_NOOP("Block")},
    {"panels_per_half", QT_TR_NOOP("Panels per half")},
    {"lacing_gap", QT_TR_NOOP("Lacing gap")},
    {"lacing_gap_at", QT_TR_NOOP("Lacing gap by level")},
    {"ease", QT_TR_NOOP("Ease")},
    {"front", QT_TR_NOOP("Front closure")},
    {"top_edge", QT_TR_NOOP("Top edge")},
    {"top_edge.front", QT_TR_NOOP("Top edge at centre front")},
    {"top_edge.bust_seam", QT_TR_NOOP("Top edge at the bust seam")},
    {"top_edge.side", QT_TR_NOOP("Top edge at the side")},
    {"top_edge.back", QT_TR_NOOP("Top edge at centre back")},
    {"bottom_edge", QT_TR_NOOP("Bottom edge")},
    {"bottom_edge.front", QT_TR_NOOP("Bottom edge at centre front")},
    {"bottom_edge.side", QT_TR_NOOP("Bottom edge at the side")},
    {"bottom_edge.back", QT_TR_NOOP("Bottom edge at centre back")},
    {"front_share", QT_TR_NOOP("Front's share of the width")},
    {"panel_shares", QT_TR_NOOP("Panel widths")},
    {"seam_shares", QT_TR_NOOP("Shares of the seams")},
    {"front_part", QT_TR_NOOP("Part taken from the panel in front")},
    {"own_levels", QT_TR_NOOP("Levels of your own")},
    {"allowance", QT_TR_NOOP("Allowance")},
    {"allowance.seam", QT_TR_NOOP("Seam allowance")},
    {"allowance.opening", QT_TR_NOOP("Allowance at the openings")},
    {"allowance.edge", QT_TR_NOOP("Allowance at top and bottom")},
    {"allowance.by_edge", QT_TR_NOOP("Allowance of one edge")},
    {"at_seam", QT_TR_NOOP("Height at a seam")},
}};

QString StyleWords::term(const QString& key) {
    for (const auto& [name, text] : kTerms) {
        if (key == QLatin1String(name)) return tr(text);
    }
    // Top and bottom edge alike: "top_edge.at_seam".
    if (key.endsWith(QLatin1String(".at_seam"))) return term(QStringLiteral("at_seam"));
    // "ease.waist": the entry and what it is for, in the words people know.
    const qsizetype dot = key.lastIndexOf(QLatin1Char('.'));
    if (dot < 0) return {};
    const QString whole = term(key.left(dot));
    if (whole.isEmpty()) return {};
    return tr("%1: %2").arg(whole, levelName(key.mid(dot + 1).toStdString()));
}

}  // namespace

QString styleTerm(const std::string& key) { return StyleWords::term(QString::fromStdString(key)); }

}  // namespace coutil
