#include "core/store/folio_file/recipe_reader.h"

#include "core/store/text_formats.h"
#include "core/store/text_formats/json_members.h"

namespace coutil {
namespace {

std::string noNewId() { return {}; }

// The value of a text, parsed where it is new.
template <class Values, class Read>
auto known(Values& values, std::string_view text, Read read) ->
    typename Values::mapped_type const* {
    const auto found = values.find(text);
    if (found != values.end()) return &found->second;
    auto value = read(text);
    if (!value) return nullptr;
    return &values.emplace(text, std::move(*value)).first->second;
}

}  // namespace

std::optional<Recipe> RecipeReader::read(std::string_view text) {
    const auto members = text_formats::membersOf(text);
    if (!members || members->size() != 5 ||
        members->at(0) != text_formats::Member{"coutil", "\"recipe\""} ||
        members->at(1) != text_formats::Member{"version", "1"})
        return std::nullopt;
    const auto* set = known(measurements_, members->at(2).value, readMeasurementsJson);
    const auto* style = known(styles_, members->at(3).value, readStyleJson);
    const auto* alterations = known(alterations_, members->at(4).value, [](std::string_view list) {
        return readAlterationsJson(list, noNewId);
    });
    if (set == nullptr || style == nullptr || alterations == nullptr) return std::nullopt;
    return Recipe{*set, *style, *alterations};
}

}  // namespace coutil
