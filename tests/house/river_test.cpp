// The house rules that a compiler does not see: which folder may include which.
#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <set>
#include <string>
#include <vector>

#include <gtest/gtest.h>

namespace {

namespace fs = std::filesystem;

// Every folder with the folders it may include besides itself.
const std::map<std::string, std::set<std::string>>& allowedArrows() {
    static const std::set<std::string> side{"core/units", "core/geometry", "core/problems"};
    static const auto with = [](std::set<std::string> more) {
        more.insert(side.begin(), side.end());
        return more;
    };
    static const std::map<std::string, std::set<std::string>> arrows{
        {"core/problems", {"core/geometry"}},
        {"core/geometry", {"core/problems"}},
        {"core/units", {"core/problems"}},
        {"core/measurements", with({})},
        {"core/block", with({"core/measurements", "core/pattern"})},
        {"core/pattern", with({"core/measurements"})},
        {"core/alterations", with({"core/measurements", "core/pattern", "core/block"})},
        {"core/making_up", with({"core/measurements", "core/pattern", "core/block"})},
        {"core/tracing",
         with({"core/measurements", "core/pattern", "core/block", "core/making_up"})},
        {"core/revision", with({"core/measurements", "core/pattern", "core/block",
                                "core/alterations", "core/making_up", "core/tracing"})},
        {"core/comparison", with({"core/measurements", "core/pattern", "core/block",
                                  "core/alterations", "core/revision"})},
        {"core/sheets", with({"core/pattern", "core/tracing", "core/revision", "core/comparison"})},
    };
    return arrows;
}

std::string roomOf(const std::string& include) { return include.substr(0, include.rfind('/')); }

std::vector<fs::path> sourcesUnder(const fs::path& top) {
    std::vector<fs::path> files;
    for (const auto& entry : fs::recursive_directory_iterator(top)) {
        const auto ext = entry.path().extension();
        if (ext == ".h" || ext == ".cpp") files.push_back(entry.path());
    }
    return files;
}

std::vector<std::string> includesOf(const fs::path& file) {
    std::ifstream in(file);
    std::vector<std::string> found;
    const std::regex line(R"(^\s*#\s*include\s*[<"]([^">]+)[">])");
    for (std::string text; std::getline(in, text);) {
        std::smatch match;
        if (std::regex_search(text, match, line)) found.push_back(match[1]);
    }
    return found;
}

const fs::path kTop = COUTIL_SOURCE_DIR;
const fs::path kStore = kTop / "core" / "store";

// The stages of the river: core without the store, which knows them all.
std::vector<fs::path> stageSources() {
    auto files = sourcesUnder(kTop / "core");
    std::erase_if(files, [](const fs::path& file) {
        return file.string().starts_with(kStore.string() + "/");
    });
    return files;
}

TEST(River, coreFoldersOnlyLookUpstream) {
    std::size_t seen = 0;
    for (const auto& file : stageSources()) {
        const std::string room = fs::relative(file.parent_path(), kTop).string();
        ASSERT_TRUE(allowedArrows().contains(room)) << room << " is not on the map of the river";
        for (const auto& include : includesOf(file)) {
            if (!include.starts_with("core/")) continue;
            ++seen;
            const std::string other = roomOf(include);
            EXPECT_TRUE(other == room || allowedArrows().at(room).contains(other))
                << file << " includes " << include;
        }
    }
    EXPECT_GT(seen, 20U);
}

TEST(River, coreKnowsNoQtAndNothingDownstream) {
    const std::regex qt(R"(^(Q[A-Z]|Qt))");
    for (const auto& file : stageSources()) {
        for (const auto& include : includesOf(file)) {
            EXPECT_FALSE(std::regex_search(include, qt)) << file << " includes " << include;
            EXPECT_FALSE(include.starts_with("core/store/") || include.starts_with("ui/") ||
                         include.starts_with("app/"))
                << file << " includes " << include;
        }
    }
}

TEST(River, storeKnowsNoWindow) {
    const std::regex qt(R"(^(Q[A-Z]|Qt))");
    for (const auto& file : sourcesUnder(kStore)) {
        for (const auto& include : includesOf(file)) {
            EXPECT_FALSE(std::regex_search(include, qt)) << file << " includes " << include;
            EXPECT_FALSE(include.starts_with("ui/") || include.starts_with("app/"))
                << file << " includes " << include;
        }
    }
}

TEST(River, noUmbrellaHeaders) {
    const std::set<std::string> umbrellas{"QtWidgets",        "QtCore",      "QtGui",
                                          "Eigen/Dense",      "Eigen/Eigen", "boost/geometry.hpp",
                                          "nlohmann/json.hpp"};
    int jsonUsers = 0;
    for (const char* folder : {"core", "ui", "app"}) {
        for (const auto& file : sourcesUnder(kTop / folder)) {
            for (const auto& include : includesOf(file)) {
                if (include == "nlohmann/json.hpp") {
                    EXPECT_TRUE(file.extension() == ".cpp") << file << ": heavy header in a header";
                    EXPECT_TRUE(file.string().starts_with(kStore.string())) << file;
                    ++jsonUsers;
                    continue;
                }
                EXPECT_FALSE(umbrellas.contains(include)) << file << " includes " << include;
            }
        }
    }
    EXPECT_LE(jsonUsers, 17);
}

}  // namespace
