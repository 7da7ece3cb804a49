#include <cstddef>
#include <set>

#include <nlohmann/json.hpp>

#include "core/store/text_formats/json_object.h"

namespace coutil::text_formats {

namespace {

using Json = nlohmann::json;

constexpr std::size_t kLongestText = 16U << 20U;
constexpr std::size_t kDeepestNesting = 32;

// Brackets open at once, outside of texts. Counted before parsing, so that no recursion in reading
// or freeing the tree can exhaust the stack.
std::size_t nestingOf(std::string_view text) {
    std::size_t depth = 0;
    std::size_t deepest = 0;
    bool isInText = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        if (isInText) {
            if (c == '\\') ++i;
            if (c == '"') isInText = false;
        } else if (c == '"') {
            isInText = true;
        } else if (c == '{' || c == '[') {
            deepest = std::max(deepest, ++depth);
        } else if ((c == '}' || c == ']') && depth > 0) {
            --depth;
        }
    }
    return deepest;
}

Problem brokenAt(std::string_view text, std::size_t byte) {
    Problem problem;
    problem.code = ProblemCode::jsonBroken;
    double line = 1;
    double column = 1;
    for (const char c : text.substr(0, byte > 0 ? byte - 1 : 0)) {
        column = c == '\n' ? 1 : column + 1;
        if (c == '\n') ++line;
    }
    problem.figures = {{"line", line, FigureUnit::count}, {"column", column, FigureUnit::count}};
    return problem;
}

Problem nothingIn(std::string_view text) {
    Problem problem;
    problem.code = ProblemCode::jsonBroken;
    problem.figures = {{"bytes", static_cast<double>(text.size()), FigureUnit::count}};
    return problem;
}

Problem tooMuch(std::string name, std::size_t found, std::size_t highest) {
    Problem problem;
    problem.code = ProblemCode::jsonTooLarge;
    problem.subject = std::move(name);
    problem.figures = {{"value", static_cast<double>(found), FigureUnit::count},
                       {"highest", static_cast<double>(highest), FigureUnit::count}};
    return problem;
}

// Told every event of the parser; remembers the first key that an object holds twice.
class KeyWatch {
  public:
    bool operator()(Json::parse_event_t event, const Json& value) {
        if (event == Json::parse_event_t::object_start) keys_.emplace_back();
        if (event == Json::parse_event_t::object_end) keys_.pop_back();
        if (event == Json::parse_event_t::key && twice_.empty()) {
            const auto key = value.get<std::string>();
            if (!keys_.back().insert(key).second) twice_ = key;
        }
        return true;
    }
    [[nodiscard]] const std::string& twice() const { return twice_; }

  private:
    std::vector<std::set<std::string>> keys_;
    std::string twice_;
};

}  // namespace

Outcome<Json> parsedJson(std::string_view text) {
    if (text.size() > kLongestText) return tooMuch("bytes", text.size(), kLongestText);
    if (text.find_first_not_of(" \t\r\n") == std::string_view::npos) return nothingIn(text);
    const std::size_t nesting = nestingOf(text);
    if (nesting > kDeepestNesting) return tooMuch("nesting", nesting, kDeepestNesting);
    KeyWatch watch;
    try {
        Json json = Json::parse(text, [&watch](int, Json::parse_event_t event, Json& value) {
            return watch(event, value);
        });
        if (watch.twice().empty()) return {std::move(json), {}};
    } catch (const Json::parse_error& error) {
        return brokenAt(text, error.byte);
    } catch (const Json::exception&) {
        // A number no double can hold: the library does not say where.
        return brokenAt(text, 0);
    }
    Problem problem;
    problem.code = ProblemCode::jsonKeyTwice;
    problem.subject = watch.twice();
    return problem;
}

}  // namespace coutil::text_formats
