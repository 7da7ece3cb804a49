// What is under the pointer and what is picked.
#include <QMouseEvent>

#include "ui/canvas/table.h"

namespace coutil {

namespace {

constexpr double kReachPx = 7;

template <class List>
bool holds(const List& list, int index) {
    return index >= 0 && static_cast<std::size_t>(index) < list.size();
}

}  // namespace

TablePlace Table::placeAt(const QPointF& px) const {
    if (!openArea().contains(px)) return {};
    return placeUnder(scene_, flat_, view_, px, kReachPx);
}

bool Table::stillThere(const TablePlace& place) const {
    switch (place.kind) {
        case TablePlace::Kind::nothing:
            return true;
        case TablePlace::Kind::panel:
            return holds(scene_.panels, place.panel);
        case TablePlace::Kind::edge:
            return holds(scene_.panels, place.panel) &&
                   holds(scene_.panels[static_cast<std::size_t>(place.panel)].edges, place.edge);
        case TablePlace::Kind::level:
            return holds(scene_.levels, place.level);
        case TablePlace::Kind::sheet:
            return holds(scene_.sheets, place.sheet);
    }
    return false;
}

QString Table::figuresOf(const TablePlace& place) const {
    if (!stillThere(place)) return {};
    if (place.kind == TablePlace::Kind::edge) {
        return scene_.panels[static_cast<std::size_t>(place.panel)]
            .edges[static_cast<std::size_t>(place.edge)]
            .figures;
    }
    if (place.kind == TablePlace::Kind::level) {
        return scene_.levels[static_cast<std::size_t>(place.level)].figures;
    }
    return {};
}

// An edge may tell other figures at each of its places.
QString Table::platedFigures() const {
    const TablePlace& place = highlights_.pointed;
    if (!draggedHandle_.isEmpty() || !stillThere(place)) return {};
    if (place.kind == TablePlace::Kind::edge) {
        const SceneEdge& edge = scene_.panels[static_cast<std::size_t>(place.panel)]
                                    .edges[static_cast<std::size_t>(place.edge)];
        if (edge.figuresAt) return edge.figuresAt(view_.toMm(highlights_.platePx));
    }
    return figuresOf(place);
}

void Table::pointTo(const QPointF& px) {
    pointToHandle(px);
    const TablePlace place = placeAt(px);
    const bool isOther = place != highlights_.pointed;
    highlights_.platePx = px;
    if (!isOther && highlights_.plate.isEmpty()) return;
    highlights_.pointed = place;
    highlights_.plate = platedFigures();
    update();
    if (!isOther) return;
    emit pointedAt(place);
    emit hint(highlights_.plate.isEmpty() ? tr("Click picks, wheel zooms, space and drag moves the "
                                               "table, F shows all")
                                          : QString(highlights_.plate).replace('\n', "  \u00b7  "));
}

void Table::pick(const TablePlace& place) {
    TablePlace wanted = stillThere(place) ? place : TablePlace{};
    if (wanted.kind == TablePlace::Kind::level) wanted = {};
    if (wanted == highlights_.picked) return;
    highlights_.picked = wanted;
    update();
    tellAssistance();
    emit pickedChanged(wanted);
}

void Table::pickPanel(int panel) {
    if (panel < 0) {
        pick({});
    } else {
        pick({TablePlace::Kind::panel, panel, -1, -1, -1});
    }
}

void Table::lightProblem(int panel, std::optional<QPointF> atMm) {
    highlights_.problemPanel = panel;
    highlights_.problemAtMm = atMm;
    update();
}

}  // namespace coutil
