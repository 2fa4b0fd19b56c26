// How a module reads, writes and publishes a structure T that it has described by `describe(json::Archive&, T&)`.
#pragma once

#include <string_view>

#include "core/json/node.hpp"
#include "core/json/problem.hpp"
#include "core/json/read_archive.hpp"
#include "core/json/schema_archive.hpp"
#include "core/json/write_archive.hpp"

namespace loam::json {

// Appends to `problems`; where it appended any, `value` is only partly filled and must not be used.
template <class T> void read_into(const Node& node, T& value, Problems& problems)
{
    ReadArchive archive(node);
    describe(archive, value);
    for (Problem& problem : archive.finish()) {
        problems.push_back(std::move(problem));
    }
}

// By value, since one description serves reading too and so takes a mutable structure.
template <class T> Node to_node(T value)
{
    WriteArchive archive;
    describe(archive, value);
    return archive.finish();
}

template <class T> Node schema_of(std::string_view id, std::string_view title)
{
    T sample{};
    SchemaArchive archive;
    describe(archive, sample);
    return archive.finish(id, title);
}

} // namespace loam::json
