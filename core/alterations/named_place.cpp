#include "core/alterations/named_place.h"

#include <variant>

namespace coutil {
namespace {

struct NamedPlace {
    std::string operator()(const ShapeSeam& change) const { return change.seam; }
    std::string operator()(const OpenPanel& change) const { return change.panel; }
    std::string operator()(const ChangeLength& change) const { return change.at.level; }
    std::string operator()(const ReshapeEdge& change) const {
        return std::string(keyOf(change.line));
    }
    std::string operator()(const MoveLevel& change) const { return change.level; }
    std::string operator()(const MoveCorner& change) const { return change.panel; }
    std::string operator()(const MoveHandle& change) const { return change.panel; }
    std::string operator()(const SplitPanel& change) const { return change.panel; }
    std::string operator()(const JoinPanels& change) const { return change.seam; }
    std::string operator()(const MakeSymmetric&) const { return {}; }
    std::string operator()(const ChangeStyle&) const { return {}; }
    std::string operator()(const TakeMeasurements&) const { return {}; }
};

}  // namespace

std::string placeNamedBy(const Change& change) { return std::visit(NamedPlace{}, change); }

}  // namespace coutil
