#include "core/plan/file.hpp"

#include "core/json/front.hpp"
#include "core/json/number_text.hpp"
#include "core/json/parse.hpp"
#include "core/json/problem_codes.hpp"
#include "core/json/shown.hpp"
#include "core/plan/consistency.hpp"
#include "core/plan/describe.hpp"
#include "core/plan/migrations.hpp"
#include "core/plan/problem_codes.hpp"

namespace loam::plan {

namespace {

// Another kind of file would only bring a hundred unknown keys: its format is all there is to say.
std::optional<json::Problem> wrong_format(const json::Node& document)
{
    const json::Node* const format = document.find("format");
    if (format == nullptr || format->kind != json::Kind::string || format->text == format_name) {
        return std::nullopt;
    }
    return json::Problem{
        "/format", std::string(json::problem::wrong_constant), {std::string(format_name), json::shown(format->text)}};
}

// nullopt where there is no whole version number of ours; the reader then says what is wrong with it.
std::optional<std::int64_t> version_of(const json::Node& document)
{
    const json::Node* const version = document.find("version");
    if (version == nullptr || version->kind != json::Kind::number) {
        return std::nullopt;
    }
    const auto number = json::integer_of(version->text);
    return number && *number >= 0 ? number : std::nullopt;
}

std::variant<Loaded, json::Problems> read_document(json::Node& document)
{
    if (auto problem = wrong_format(document)) {
        return json::Problems{std::move(*problem)};
    }
    const auto version = version_of(document);
    if (version && *version > current_version) {
        return json::Problems{{"/version",
                               std::string(problem::newer_version),
                               {std::to_string(*version), std::to_string(current_version)}}};
    }
    if (version) {
        migrate(document, *version);
    }
    Loaded loaded{.plan = {}, .version_read = version.value_or(current_version)};
    json::Problems problems;
    json::read_into(document, loaded.plan, problems);
    const json::Problems of_meaning = Consistency(loaded.plan, problems).check();
    problems.insert(problems.end(), of_meaning.begin(), of_meaning.end());
    if (!problems.empty()) {
        return problems;
    }
    return loaded;
}

} // namespace

std::variant<Loaded, json::Problems> read(std::string_view text)
{
    auto parsed = json::parse(text, {.max_bytes = largest_file_bytes});
    if (auto* const problems = std::get_if<json::Problems>(&parsed)) {
        return std::move(*problems);
    }
    return read_document(std::get<json::Node>(parsed));
}

json::Problems problems_of(const Plan& plan)
{
    auto reread = read(write(plan));
    auto* const problems = std::get_if<json::Problems>(&reread);
    return problems == nullptr ? json::Problems{} : std::move(*problems);
}

json::Node node_of(const Plan& plan)
{
    return json::to_node(plan);
}

std::string write(const Plan& plan)
{
    return json::write(json::to_node(plan));
}

std::string schema()
{
    return json::write(json::schema_of<Plan>("urn:loamstead:schema:plan:1", "A plan of enclosures"));
}

} // namespace loam::plan
