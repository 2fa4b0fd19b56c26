#include "shipped.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "tests/catch.hpp"

namespace shipped {

static const std::filesystem::path root = std::filesystem::path(LOAM_SOURCE_DIR) / "resources";

static std::string read(const std::filesystem::path& path)
{
    std::ifstream in(path, std::ios::binary);
    INFO(path.string());
    REQUIRE(in.good());
    std::ostringstream text;
    text << in.rdbuf();
    return text.str();
}

std::vector<loam::catalog::SourceText> files(const std::string& folder)
{
    std::vector<loam::catalog::SourceText> found;
    for (const auto& entry : std::filesystem::directory_iterator(root / folder)) {
        if (entry.path().extension() == ".json") {
            found.push_back({folder + "/" + entry.path().filename().string(), read(entry.path())});
        }
    }
    std::sort(found.begin(), found.end(), [](const auto& a, const auto& b) { return a.name < b.name; });
    return found;
}

std::string text_of(const std::string& path)
{
    return read(root / path);
}

const loam::catalog::Catalog& catalog()
{
    static const loam::catalog::Catalog whole = [] {
        loam::catalog::Catalog built;
        for (const char* folder : {"materials", "devices", "assumptions", "prices", "rules", "species"}) {
            const auto problems = loam::catalog::add_layer(built, files(folder));
            INFO(listed(problems));
            CHECK(problems.empty());
        }
        return built;
    }();
    return whole;
}

std::string listed(const loam::json::Problems& problems)
{
    std::string text;
    for (const auto& problem : problems) {
        text += problem.where + ": " + problem.code;
        for (const auto& arg : problem.args) {
            text += " [" + arg + "]";
        }
        text += "\n";
    }
    return text;
}

std::string listed(const std::vector<loam::catalog::FileProblem>& problems)
{
    std::string text;
    for (const auto& each : problems) {
        text += each.file + " " + listed(loam::json::Problems{each.problem});
    }
    return text;
}

} // namespace shipped
