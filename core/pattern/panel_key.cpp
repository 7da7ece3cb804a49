#include "core/pattern/panel_key.h"

namespace coutil {

std::string panelKey(std::string_view name, PanelSide side) {
    std::string key(name);
    if (side == PanelSide::left) key += " left";
    if (side == PanelSide::right) key += " right";
    return key;
}

std::string panelKey(const Panel& panel) { return panelKey(panel.name, panel.side); }

std::optional<std::size_t> panelWithKey(const Pattern& pattern, std::string_view key) {
    for (std::size_t p = 0; p < pattern.panels.size(); ++p) {
        if (panelKey(pattern.panels[p]) == key) return p;
    }
    return std::nullopt;
}

}  // namespace coutil
