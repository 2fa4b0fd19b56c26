#include "app/files/plan_file.hpp"

#include <cassert>
#include <utility>
#include <variant>

#include "app/files/bytes.hpp"
#include "app/words/problems.hpp"
#include "core/plan/file.hpp"

namespace loam::files {

PlanFile read_plan(const QString& path)
{
    PlanFile result;
    const Bytes file = read_bytes(path, plan::largest_file_bytes);
    if (!file.error.isEmpty()) {
        result.failure = Failure::unreadable;
        result.errors << file.error;
        return result;
    }
    auto read = plan::read({file.bytes.constData(), static_cast<std::size_t>(file.bytes.size())});
    if (auto* problems = std::get_if<json::Problems>(&read)) {
        result.failure = Failure::invalid;
        result.errors = words::problems(*problems);
        result.problems = std::move(*problems);
        return result;
    }
    plan::Loaded& loaded = std::get<plan::Loaded>(read);
    result.migrated = loaded.version_read != plan::current_version;
    result.plan = std::move(loaded.plan);
    return result;
}

QString write_plan(const plan::Plan& plan, const QString& path)
{
    return write_bytes(QByteArray::fromStdString(plan::write(plan)), path);
}

plan::Plan example_plan()
{
    PlanFile example = read_plan(QStringLiteral(":/loamstead/examples/first-setup.loamstead.json"));
    assert(example.failure == Failure::none); // a test reads it
    return std::move(example.plan);
}

} // namespace loam::files
