// Walks every code that core can return: each has its sentence, each sentence's placeholders are what its code brings.
#include <QRegularExpression>
#include <set>
#include <string>
#include <vector>

#include "tests/app/qt_strings.hpp"
#include "tests/catch.hpp"

#include "app/words/problems.hpp"
#include "app/words/sentences.hpp"
#include "app/words/speaker.hpp"
#include "app/words/tasks.hpp"
#include "core/assess/codes.hpp"
#include "core/calendar/task_codes.hpp"
#include "core/catalog/problem_codes.hpp"
#include "core/json/problem_codes.hpp"
#include "core/plan/problem_codes.hpp"

using namespace loam;
using namespace loam::words;

namespace {

constexpr Verdict all_verdicts[] = {Verdict::fits, Verdict::tight, Verdict::falls_short, Verdict::danger,
                                    Verdict::not_known};
constexpr Direction all_directions[] = {Direction::none, Direction::above, Direction::below};

const std::vector<Sentences> finding_tables{
    danger_sentences(), space_sentences(), heat_sentences(),        moisture_sentences(), reading_sentences(),
    record_sentences(), light_sentences(), electricity_sentences(), money_sentences(),    caution_sentences()};

struct Brings {
    std::set<QString> always;
    std::set<QString> maybe;
    bool has(const QString& name) const { return always.count(name) + maybe.count(name) > 0; }
};

Brings brings(const assess::CodeEntry& entry)
{
    Brings result;
    for (const std::string_view list : {entry.inputs, entry.labels}) {
        for (QString name : QString::fromUtf8(list.data(), static_cast<qsizetype>(list.size()))
                                .split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
            if (name.endsWith(QLatin1Char('?'))) {
                result.maybe.insert(name.chopped(1));
            } else {
                result.always.insert(name);
            }
        }
    }
    return result;
}

QStringList placeholders(const QString& text)
{
    QStringList names;
    static const QRegularExpression form(QStringLiteral("\\{([^}:]*)(:[a-z]+)?\\}"));
    auto matches = form.globalMatch(text);
    while (matches.hasNext()) {
        names << matches.next().captured(1);
    }
    return names;
}

// `needed` is what stands outside brackets: it must always be there, or be bound to the row's direction.
void check_placeholder(const QString& name, bool needed, const Sentence& row, const Brings& given)
{
    INFO(row.code << ": " << row.text << ": " << name);
    if (name == QStringLiteral("range")) {
        CHECK((given.always.count("low") && given.always.count("likely") && given.always.count("high")));
    } else if (name == QStringLiteral("band")) {
        CHECK((given.has("min") || given.has("max") || given.has("years_min") || given.has("years_max")));
    } else if (needed && (name == QStringLiteral("over_by") || name == QStringLiteral("short_by")) &&
               given.maybe.count(name)) {
        CHECK(row.direction == (name == QStringLiteral("over_by") ? Direction::above : Direction::below));
    } else if (needed) {
        CHECK(given.always.count(name) == 1);
    } else {
        CHECK(given.has(name));
    }
}

void check_row(const Sentence& row, const Brings& given)
{
    const QString text = QString::fromUtf8(row.text);
    static const QRegularExpression brackets(QStringLiteral("\\[[^\\]]*\\]"));
    const QStringList outside = placeholders(QString(text).remove(brackets));
    for (const QString& name : placeholders(text)) {
        check_placeholder(name, outside.contains(name), row, given);
    }
}

template <class List> void check_table(Sentences table, const List& list)
{
    for (const Sentence& row : table) {
        const assess::CodeEntry* entry = assess::find_code(list, row.code);
        INFO("a sentence for a code that does not exist: " << row.code);
        REQUIRE(entry != nullptr);
        check_row(row, brings(*entry));
    }
}

std::vector<Input> inputs_of(std::string_view names)
{
    std::vector<Input> inputs;
    for (const QString& name : QString::fromUtf8(names.data(), static_cast<qsizetype>(names.size()))
                                   .remove(QLatin1Char('?'))
                                   .split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        inputs.push_back({name.toStdString(), 1.5, "m"});
    }
    return inputs;
}

std::vector<Label> labels_of(std::string_view names)
{
    std::vector<Label> labels;
    for (const Input& input : inputs_of(names)) {
        labels.push_back({input.name, "given-" + input.name});
    }
    return labels;
}

void check_spoken(const QString& text)
{
    CHECK(text.size() > 2);
    CHECK_FALSE(text.contains(QRegularExpression(QStringLiteral("[{}\\[\\]]"))));
    CHECK_FALSE(text.contains(QStringLiteral("  ")));
}

} // namespace

TEST_CASE("Every finding has a sentence for each verdict and direction")
{
    for (const assess::CodeEntry& entry : assess::finding_codes) {
        for (const Verdict verdict : all_verdicts) {
            for (const Direction direction : all_directions) {
                INFO(entry.code);
                CHECK(find_finding_sentence(entry.code, {verdict, direction}) != nullptr);
            }
        }
    }
}

TEST_CASE("Every sentence of a finding uses only what its code brings")
{
    for (const Sentences table : finding_tables) {
        check_table(table, assess::finding_codes);
    }
}

TEST_CASE("Every remedy, rule and need has a sentence that uses only what its code brings")
{
    check_table(remedy_sentences(), assess::remedy_codes);
    check_table(rule_sentences(), assess::rule_codes);
    check_table(need_sentences(), assess::need_codes);
    for (const assess::CodeEntry& entry : assess::remedy_codes) {
        INFO(entry.code);
        CHECK(find_sentence(remedy_sentences(), entry.code) != nullptr);
    }
    for (const assess::CodeEntry& entry : assess::rule_codes) {
        INFO(entry.code);
        CHECK(find_sentence(rule_sentences(), entry.code) != nullptr);
    }
    for (const assess::CodeEntry& entry : assess::need_codes) {
        INFO(entry.code);
        CHECK(find_sentence(need_sentences(), entry.code) != nullptr);
    }
}

TEST_CASE("No code has two sentences for the same verdict and direction")
{
    std::vector<Sentences> tables = finding_tables;
    tables.insert(tables.end(), {remedy_sentences(), rule_sentences(), need_sentences(), file_problem_sentences(),
                                 catalog_problem_sentences(), species_note_sentences(), input_names(),
                                 assumption_names(), need_kind_names(), property_names()});
    for (const Sentences table : tables) {
        std::set<std::string> seen;
        for (const Sentence& row : table) {
            const int verdict = row.verdict ? static_cast<int>(*row.verdict) : -1;
            const int direction = row.direction ? static_cast<int>(*row.direction) : -1;
            INFO(row.code);
            CHECK(seen.insert(std::string(row.code) + " " + std::to_string(verdict) + " " + std::to_string(direction))
                      .second);
        }
    }
}

TEST_CASE("Every input has a name for those who ask why")
{
    for (const auto& entry : assess::finding_codes) {
        for (const Input& input : inputs_of(entry.inputs)) {
            INFO(entry.code << ": " << input.name);
            CHECK(find_sentence(input_names(), input.name) != nullptr);
        }
    }
}

TEST_CASE("Every finding and remedy is spoken without a placeholder left over")
{
    const plan::Plan plan;
    const catalog::Catalog catalog;
    const Speaker speaker(Formatter(), plan, catalog);
    for (const auto& entry : assess::finding_codes) {
        for (const Verdict verdict : all_verdicts) {
            Finding finding;
            finding.code = entry.code;
            finding.verdict = verdict;
            finding.because.inputs = inputs_of(entry.inputs);
            finding.because.labels = labels_of(entry.labels);
            INFO(entry.code);
            check_spoken(speaker.finding(finding));
        }
    }
    for (const auto& entry : assess::remedy_codes) {
        Finding finding;
        finding.remedy = Remedy{std::string(entry.code), inputs_of(entry.inputs), labels_of(entry.labels)};
        INFO(entry.code);
        check_spoken(speaker.remedy(finding));
    }
}

TEST_CASE("Every task of the calendar has a name and a sentence, filled with what it brings")
{
    const plan::Plan plan;
    const catalog::Catalog catalog;
    const Speaker speaker(Formatter(), plan, catalog);
    for (const assess::CodeEntry& entry : calendar::task_codes) {
        INFO(entry.code);
        calendar::Task task;
        task.code = entry.code;
        task.where = "d1";
        const Brings brought = brings(entry);
        for (const Input& input : inputs_of(entry.inputs)) {
            task.amounts.push_back({input.name, exactly(1.5), input.unit});
        }
        task.labels = labels_of(entry.labels);
        for (const Sentences table : {task_names(), task_sentences()}) {
            const Sentence* row = find_sentence(table, entry.code);
            REQUIRE(row != nullptr);
            for (const QString& name : placeholders(row->text)) {
                INFO(name.toStdString());
                CHECK((brought.has(name) || name == QStringLiteral("where")));
            }
        }
        check_spoken(task_title(task, speaker));
        check_spoken(task_advice(task, speaker));
    }
}

TEST_CASE("Every problem of a file has a sentence")
{
    std::vector<std::string_view> codes(json::problem::all.begin(), json::problem::all.end());
    codes.insert(codes.end(), plan::problem::all.begin(), plan::problem::all.end());
    codes.insert(codes.end(), catalog::problem::all.begin(), catalog::problem::all.end());
    for (const std::string_view code : codes) {
        INFO(code);
        const bool has =
            find_sentence(file_problem_sentences(), code) || find_sentence(catalog_problem_sentences(), code);
        CHECK(has);
        check_spoken(problem_sentence({"/site", std::string(code), {"12", "20", "30", "40"}}));
    }
}

TEST_CASE("A problem's sentence stands behind its place")
{
    const json::Problem problem{"/site/room/heatwave_c", "unknown-key", {"heatwave_c", "heat_wave_c"}};
    CHECK(words::problem(problem) == "/site/room/heatwave_c: “heatwave_c” is not a known key. Did you mean "
                                     "“heat_wave_c”? A key of your own must begin with “x_”.");
    const json::Problem without{"/site", "unknown-key", {"zzz"}};
    CHECK(words::problem(without) == "/site: “zzz” is not a known key. A key of your own must begin with “x_”.");
}
