#include "tests/core/plan/plan_text.hpp"

#include <fstream>
#include <sstream>

#include "tests/catch.hpp"

namespace loam::plan::test {

std::string data(std::string_view name)
{
    std::ifstream file(std::string(LOAM_TEST_DATA_DIR "/plan/") + std::string(name), std::ios::binary);
    REQUIRE(file.good());
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

std::string good_text()
{
    return data("contract.json");
}

std::string with(std::string_view needle, std::string_view replacement)
{
    std::string text = good_text();
    const std::size_t place = text.find(needle);
    REQUIRE(place != std::string::npos);
    return text.replace(place, needle.size(), replacement);
}

Plan loaded(std::string_view text)
{
    auto result = read(text);
    if (const auto* const problems = std::get_if<json::Problems>(&result)) {
        FAIL(problems->front().where << " " << problems->front().code);
    }
    return std::get<Loaded>(std::move(result)).plan;
}

json::Problems refused(std::string_view text)
{
    auto result = read(text);
    auto* const problems = std::get_if<json::Problems>(&result);
    return problems == nullptr ? json::Problems{} : std::move(*problems);
}

std::vector<std::string> complaints(std::string_view text)
{
    std::vector<std::string> lines;
    for (const json::Problem& problem : refused(text)) {
        lines.push_back(problem.where + " " + problem.code);
    }
    return lines;
}

} // namespace loam::plan::test
