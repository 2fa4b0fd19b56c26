#include "app/batch/groups.hpp"

#include <QCryptographicHash>
#include <QRegularExpression>

#include <algorithm>
#include <map>

#include "core/assess/assess.hpp"
#include "core/assess/side_by_side.hpp"
#include "core/plan/file.hpp"

namespace loam::batch {

std::vector<Group> groups_of(const std::vector<Adopter>& adopters, std::size_t most)
{
    std::vector<QByteArray> keys(adopters.size());
    assess::side_by_side(adopters.size(), [&](std::size_t i) {
        if (adopters[i].problems.empty()) {
            const std::string inputs = plan::write(assess::climate_inputs(adopters[i].plan));
            keys[i] = QCryptographicHash::hash(QByteArray::fromStdString(inputs), QCryptographicHash::Sha256);
        }
    });
    std::vector<Group> groups;
    std::map<QByteArray, std::size_t> climates;
    std::map<std::size_t, std::size_t> open; // by climate, the group that still takes rows
    for (std::size_t i = 0; i < adopters.size(); ++i) {
        if (!adopters[i].problems.empty()) {
            continue;
        }
        const std::size_t climate = climates.emplace(keys[i], climates.size()).first->second;
        const auto found = open.find(climate);
        if (found == open.end() || groups[found->second].adopters.size() == most) {
            open[climate] = groups.size();
            groups.push_back({climate, {}});
        }
        groups[open[climate]].adopters.push_back(i);
    }
    return groups;
}

std::vector<Group> slice_of_groups(const std::vector<Group>& groups, const Slice& slice)
{
    constexpr std::size_t climate_in_rows = 40; // solving one takes as long as so many rows after it
    std::vector<std::size_t> load(slice.of, 0);
    std::vector<Group> own;
    for (const Group& group : groups) {
        const auto least = std::min_element(load.begin(), load.end());
        *least += climate_in_rows + group.adopters.size();
        if (static_cast<std::size_t>(least - load.begin()) + 1 == slice.index) {
            own.push_back(group);
        }
    }
    return own;
}

std::optional<Slice> slice_of(const QString& text)
{
    static const QRegularExpression form(QStringLiteral("^([0-9]{1,4})/([0-9]{1,4})$"));
    const QRegularExpressionMatch match = form.match(text);
    const Slice slice{match.captured(1).toUInt(), match.captured(2).toUInt()};
    const bool good = match.hasMatch() && slice.index >= 1 && slice.index <= slice.of && slice.of <= 1000;
    return good ? std::optional(slice) : std::nullopt;
}

} // namespace loam::batch
