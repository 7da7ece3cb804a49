#include "ui/words/alteration_words.h"

#include <QCoreApplication>
#include <map>

namespace coutil {

namespace {

class AlterationWords {
    Q_DECLARE_TR_FUNCTIONS(AlterationWords)

  public:
    static QString alteration(std::string_view kind);
    static QString mark(std::string_view kind);
    static QString side(BodySide side);
    static QString panel(const QString& name);
};

QString AlterationWords::alteration(std::string_view kind) {
    const std::map<std::string_view, QString> terms{
        {"shape_seam", tr("shape a seam")},
        {"open_panel", tr("open or close a panel")},
        {"change_length", tr("lengthen or shorten")},
        {"reshape_edge", tr("reshape an edge")},
        {"move_level", tr("move a level")},
        {"move_corner", tr("move a corner")},
        {"move_handle", tr("move a curve handle")},
        {"split_panel", tr("split a panel")},
        {"join_panels", tr("join two panels")},
        {"make_symmetric", tr("make both sides equal")},
        {"change_style", tr("change the style")},
        {"take_measurements", tr("take new measurements")}};
    const auto found = terms.find(kind);
    return found == terms.end() ? QString() : found->second;
}

QString AlterationWords::mark(std::string_view kind) {
    const std::map<std::string_view, QString> terms{{"pinned", tr("pinned")},
                                                    {"opened", tr("opened")},
                                                    {"raise", tr("raise")},
                                                    {"lower", tr("lower")},
                                                    {"longer", tr("longer")},
                                                    {"shorter", tr("shorter")},
                                                    {"bust_point_higher", tr("bust point higher")},
                                                    {"bust_point_lower", tr("bust point lower")},
                                                    {"bust_point_wider", tr("bust point wider")},
                                                    {"gapes", tr("gapes")},
                                                    {"cuts_in", tr("cuts in")},
                                                    {"bone_pokes", tr("bone pokes")}};
    const auto found = terms.find(kind);
    return found == terms.end() ? QString() : found->second;
}

QString AlterationWords::side(BodySide side) {
    switch (side) {
        case BodySide::both:
            return tr("both sides");
        case BodySide::left:
            return tr("left");
        case BodySide::right:
            return tr("right");
    }
    return {};
}

QString AlterationWords::panel(const QString& name) {
    const QString number = name.section(QLatin1Char(' '), 0, 0);
    if (name.endsWith(QLatin1String(" left"))) return tr("%1 left").arg(number);
    if (name.endsWith(QLatin1String(" right"))) return tr("%1 right").arg(number);
    return name;
}

}  // namespace

QString alterationTerm(std::string_view kind) { return AlterationWords::alteration(kind); }

QString markTerm(std::string_view kind) { return AlterationWords::mark(kind); }

QString sideName(BodySide side) { return AlterationWords::side(side); }

QString panelName(const std::string& panel) {
    return AlterationWords::panel(QString::fromStdString(panel));
}

}  // namespace coutil
