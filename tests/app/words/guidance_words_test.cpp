// What the shipped guidance and the plan's schema name must have words.
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QRegularExpression>

#include "tests/app/qt_strings.hpp"
#include "tests/catch.hpp"

#include "app/files/guidance.hpp"
#include "app/words/places.hpp"
#include "app/words/sentences.hpp"
#include "app/words/speaker.hpp"
#include "core/assess/assumption_ids.hpp"
#include "core/climate/inputs.hpp"
#include "core/plan/file.hpp"

using namespace loam;
using namespace loam::words;

namespace {

const catalog::Catalog& shipped()
{
    static const catalog::Catalog catalog = files::load_guidance(QString()).catalog;
    return catalog;
}

bool named(std::string_view assumption)
{
    const std::string_view family = assumption.substr(0, assumption.rfind('.'));
    return find_sentence(assumption_names(), assumption) || find_sentence(assumption_names(), family);
}

void collect_keys(const QJsonValue& schema, QStringList& keys)
{
    if (schema.isArray()) {
        for (const QJsonValue& each : schema.toArray()) {
            collect_keys(each, keys);
        }
        return;
    }
    const QJsonObject object = schema.toObject();
    for (const QString& key : object.keys()) {
        if (key == QStringLiteral("properties")) {
            keys << object[key].toObject().keys();
        }
        collect_keys(object[key], keys);
    }
}

} // namespace

TEST_CASE("Every caution of a species sheet has a sentence")
{
    REQUIRE(shipped().species.size() >= 16);
    for (const catalog::Species& species : shipped().species) {
        for (const std::string& note : species.notes) {
            INFO(species.id << ": " << note);
            CHECK(find_sentence(species_note_sentences(), note) != nullptr);
        }
    }
}

TEST_CASE("Every assumption has a name")
{
    REQUIRE_FALSE(shipped().assumptions.empty());
    for (const catalog::Assumption& assumption : shipped().assumptions) {
        INFO(assumption.id);
        CHECK(named(assumption.id));
    }
    for (const assess::AssumptionId& assumption : assess::assumption_ids) {
        INFO(assumption.id);
        CHECK(named(assumption.id));
    }
}

TEST_CASE("Every need that the price list serves has a name without a code in it")
{
    const plan::Plan plan;
    const Speaker speaker(Formatter(), plan, shipped());
    REQUIRE_FALSE(shipped().prices.items.empty());
    for (const catalog::Item& item : shipped().prices.items) {
        INFO(item.serves);
        const QString name = speaker.need(item.serves);
        CHECK_FALSE(name.isEmpty());
        CHECK_FALSE(name.contains(QRegularExpression(QStringLiteral("[a-z]\\.[a-z]"))));
    }
    CHECK(speaker.need("lamp.flood-lamp") == "flood lamp");
    CHECK(speaker.need("substrate.coir-chips") == "Coir chips");
}

TEST_CASE("Every key of a plan file has a name")
{
    QStringList keys;
    collect_keys(QJsonDocument::fromJson(QByteArray::fromStdString(plan::schema())).object(), keys);
    REQUIRE(keys.size() > 100);
    for (const QString& key : keys) {
        INFO(key);
        const bool technical = key == QStringLiteral("format") || key == QStringLiteral("version");
        CHECK((technical || field_name(key.toStdString()).has_value()));
    }
}

TEST_CASE("Every uncertain input of the climate balance is named, so that nobody is told a code")
{
    climate::Box box;
    box.covers.emplace_back().id = "v1";
    box.bed.emplace_back().material = "topsoil";
    box.underlay.emplace_back().material = "cork";
    box.lamps.emplace_back().id = "d1";
    box.mats.emplace_back().id = "d2";
    climate::Case now;
    plan::Plan plan;
    plan::Enclosure& enclosure = plan.enclosures.emplace_back();
    enclosure.equipment.emplace_back().id = "d1";
    enclosure.equipment.emplace_back().id = "d2";
    enclosure.shell.top.covers.emplace_back().id = "v1";
    const Speaker speaker(Formatter(), plan, shipped());
    for (const climate::TopKind top : {climate::TopKind::mesh, climate::TopKind::pane}) {
        box.top = top;
        climate::visit_inputs(box, now, [&](const std::string& name, Range&, const climate::Parts&) {
            INFO(name);
            CHECK(speaker.uncertainty(name) != QString::fromStdString(name));
            // What decides a range, and what to do about it: two sentences.
            CHECK(speaker.decides(name, 0.41).count(QRegularExpression(QStringLiteral("[.:]( |$)"))) >= 2);
        });
    }
    CHECK(speaker.uncertainty(climate::dampness_input) == "how damp the bed is");
    CHECK(speaker.uncertainty("bed.topsoil.conductivity").startsWith("how well Topsoil"));
    CHECK(speaker.uncertainty("d1.power") == "the power of flood lamp d1");
    CHECK(speaker.decides("mesh.open-fraction", 0.41) ==
          "The open share of the mesh decides this range most (41% of it). Measuring it would narrow it: the gap over "
          "the gap and its wire, squared.");
    CHECK(
        speaker.decides("d1.power", 0.5).startsWith("The power of flood lamp d1 decides this range most (50% of it)."));
    for (const char* id : {climate::dampness_input, "model.error"}) { // not among those visited
        CHECK(speaker.decides(id, 0.41).count('.') >= 2);
    }
}
