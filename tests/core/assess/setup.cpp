#include "tests/core/assess/setup.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <stdexcept>

#include "core/plan/file.hpp"

namespace loam::test {

namespace {

std::string text_of(const std::filesystem::path& path)
{
    std::ifstream file(path, std::ios::binary);
    if (!file) {
        throw std::runtime_error("no such file: " + path.string());
    }
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

catalog::Catalog load_shipped()
{
    std::vector<std::filesystem::path> paths;
    const std::filesystem::path root = std::filesystem::path(LOAM_SOURCE_DIR) / "resources";
    for (const char* folder : {"species", "rules", "materials", "devices", "assumptions", "prices"}) {
        for (const auto& entry : std::filesystem::directory_iterator(root / folder)) {
            if (entry.path().extension() == ".json") {
                paths.push_back(entry.path());
            }
        }
    }
    std::sort(paths.begin(), paths.end());
    std::vector<catalog::SourceText> files;
    for (const auto& path : paths) {
        files.push_back({path.filename().string(), text_of(path)});
    }
    catalog::Catalog catalog;
    if (!catalog::add_layer(catalog, files).empty()) {
        throw std::runtime_error("the shipped guidance has problems");
    }
    return catalog;
}

} // namespace

const catalog::Catalog& shipped_catalog()
{
    static const catalog::Catalog catalog = load_shipped();
    return catalog;
}

std::string example_text(const std::string& name)
{
    return text_of(std::filesystem::path(LOAM_SOURCE_DIR) / "examples" / (name + ".loamstead.json"));
}

namespace {

plan::Plan plan_of(const std::string& text, const std::string& name)
{
    const auto read = plan::read(text);
    const auto* loaded = std::get_if<plan::Loaded>(&read);
    if (loaded == nullptr) {
        throw std::runtime_error("the plan has problems: " + name);
    }
    return loaded->plan;
}

} // namespace

plan::Plan example(const std::string& name)
{
    return plan_of(example_text(name), name);
}

plan::Plan turtle_table()
{
    const std::filesystem::path folder = std::filesystem::path(LOAM_SOURCE_DIR) / "tests" / "data" / "plan";
    return plan_of(text_of(folder / "turtle-table.loamstead.json"), "turtle-table");
}

plan::Cover cover(std::string id, std::string material, Spot spot)
{
    plan::Cover one;
    one.id = std::move(id);
    one.material = std::move(material);
    one.x_m = spot.x_m;
    one.y_m = spot.y_m;
    one.length_m = spot.length_m;
    one.width_m = spot.width_m;
    return one;
}

plan::Fitting fitting(std::string id, plan::FittingKind kind, Spot spot, std::optional<double> height_m)
{
    plan::Fitting one;
    one.id = std::move(id);
    one.kind = kind;
    one.x_m = spot.x_m;
    one.y_m = spot.y_m;
    one.length_m = spot.length_m;
    one.width_m = spot.width_m;
    one.height_m = height_m;
    return one;
}

plan::Animal animal(std::string id, std::string species, std::optional<double> length_m)
{
    plan::Animal one;
    one.id = std::move(id);
    one.species = std::move(species);
    one.length_m = length_m;
    return one;
}

plan::Plan minimal_plan()
{
    plan::Plan plan;
    plan.title = "Least that can be said (invented)";
    plan.site.circuits.emplace_back().id = "c1";
    plan.site.strips.emplace_back().id = "s1";
    plan.site.strips.back().circuit = "c1";
    plan.site.stands.emplace_back().id = "t1";
    plan::Enclosure box;
    box.id = "e1";
    box.stand = "t1";
    box.animals.push_back(animal("a1", "testudo-hermanni"));
    box.substrate.emplace_back().id = "b1";
    box.substrate.back().material = "topsoil";
    box.fittings.push_back(fitting("f1", plan::FittingKind::water_bowl, {0.8, 0.1, 0.2, 0.2}));
    box.fittings.push_back(fitting("f2", plan::FittingKind::hide, {0.8, 0.35, 0.2, 0.2}));
    plan::Device lamp;
    lamp.id = "d1";
    lamp.kind = plan::DeviceKind::flood_lamp;
    lamp.x_m = 0.3;
    lamp.y_m = 0.3;
    plan::Device mat;
    mat.id = "d2";
    mat.kind = plan::DeviceKind::heat_mat;
    mat.power_w = 15.0;
    mat.place = plan::Place::under_base;
    mat.control.kind = plan::ControlKind::thermostat;
    plan::Device tube;
    tube.id = "d3";
    tube.kind = plan::DeviceKind::uv_tube;
    tube.x_m = 0.4;
    tube.y_m = 0.3;
    tube.control.kind = plan::ControlKind::dimmer;
    box.equipment = {lamp, mat, tube};
    plan.enclosures.push_back(box);
    return plan;
}

assess::Assessment instant(const plan::Plan& plan, const catalog::Catalog& catalog)
{
    assess::Workspace workspace;
    return *assess::assess(plan, catalog, day, workspace, {}, {}, assess::Until::at_once);
}

assess::Assessment whole(const plan::Plan& plan, const catalog::Catalog& catalog)
{
    assess::Workspace workspace;
    return assess::assess(plan, catalog, day, workspace).value();
}

std::vector<Finding> with_code(const assess::Assessment& assessment, std::string_view code)
{
    std::vector<Finding> found;
    for (const Finding& finding : assessment.findings) {
        if (finding.code == code) {
            found.push_back(finding);
        }
    }
    return found;
}

bool has(const assess::Assessment& assessment, std::string_view code, Verdict verdict)
{
    const auto found = with_code(assessment, code);
    return std::any_of(found.begin(), found.end(), [&](const Finding& one) { return one.verdict == verdict; });
}

bool has_danger(const assess::Assessment& assessment)
{
    return std::any_of(assessment.findings.begin(), assessment.findings.end(),
                       [](const Finding& one) { return one.verdict == Verdict::danger; });
}

double input(const Finding& finding, std::string_view name)
{
    for (const Input& one : finding.because.inputs) {
        if (one.name == name) {
            return one.value;
        }
    }
    throw std::runtime_error(finding.code + " carries no input " + std::string(name));
}

std::string label(const Finding& finding, std::string_view name)
{
    for (const Label& one : finding.because.labels) {
        if (one.name == name) {
            return one.text;
        }
    }
    throw std::runtime_error(finding.code + " carries no label " + std::string(name));
}

const assess::HeatCase& heat_case(const assess::EnclosureResult& enclosure, std::string_view id)
{
    for (const assess::HeatCase& one : enclosure.heat) {
        if (one.id == id) {
            return one;
        }
    }
    throw std::runtime_error("no such case: " + std::string(id));
}

} // namespace loam::test
