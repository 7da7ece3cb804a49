#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>

#include "core/revision/revision.h"

namespace coutil {

// Reads the recipes of many revisions. Those of one garment share measurements, style and most
// alterations, so every text is parsed once.
class RecipeReader {
  public:
    // Nothing for a text that writeRecipeJson() did not write.
    [[nodiscard]] std::optional<Recipe> read(std::string_view text);

  private:
    std::map<std::string, MeasurementSet, std::less<>> measurements_;
    std::map<std::string, Style, std::less<>> styles_;
    std::map<std::string, std::vector<Alteration>, std::less<>> alterations_;
};

}  // namespace coutil
