#pragma once

#include <map>
#include <string>

#include "core/block/style.h"

// How the choices of a style are called in files.
namespace coutil::text_formats {

[[nodiscard]] const std::map<std::string, BlockKind>& blockNames();
[[nodiscard]] const std::map<std::string, FrontClosure>& frontNames();
[[nodiscard]] const std::map<std::string, TopShape>& topShapeNames();
[[nodiscard]] const std::map<std::string, BottomShape>& bottomShapeNames();

// The name of a value; every value has one.
template <class Value>
[[nodiscard]] std::string nameOf(const std::map<std::string, Value>& names, Value value) {
    for (const auto& [name, named] : names) {
        if (named == value) return name;
    }
    return {};
}

}  // namespace coutil::text_formats
