#include "core/store/text_formats.h"
#include "core/store/text_formats/json_members.h"

namespace coutil {

std::string writeRecipeJson(const Recipe& recipe) {
    using text_formats::compact;
    return R"({"coutil":"recipe","version":1,"measurements":)" +
           compact(writeMeasurementsJson(recipe.measurements)) + R"(,"style":)" +
           compact(writeStyleJson(recipe.style)) + R"(,"alterations":)" +
           compact(writeAlterationsJson(recipe.alterations)) + "}";
}

}  // namespace coutil
