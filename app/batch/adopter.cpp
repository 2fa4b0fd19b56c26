#include "app/batch/adopter.hpp"

#include <QCryptographicHash>

#include <algorithm>

#include "app/batch/row_edits.hpp"
#include "app/batch/said.hpp"
#include "app/words/language.hpp"
#include "app/words/problems.hpp"
#include "core/plan/file.hpp"

namespace loam::batch {

namespace {

constexpr qsizetype longest_name = 120;

// On one line, and without the marks that turn the direction of reading.
QString tame(const std::string& cell)
{
    QString text = QString::fromUtf8(cell);
    text.removeIf([](QChar letter) {
        const char16_t code = letter.unicode();
        return (code >= 0x202A && code <= 0x202E) || (code >= 0x2066 && code <= 0x2069);
    });
    for (QChar& letter : text) {
        letter = letter.category() == QChar::Other_Control ? QChar(QLatin1Char(' ')) : letter;
    }
    return text.simplified();
}

struct Person {
    const AdopterList& list;
    const catalog::csv::Row& row;
    Adopter& adopter;

    void refuse(const char* column, const QString& reason) const
    {
        adopter.problems.push_back({row.number, QLatin1String(column), reason});
    }

    void name() const
    {
        const QString name = tame(cell(list, row, "name"));
        const QString number = tame(cell(list, row, "number"));
        if (name.isEmpty() && number.isEmpty()) {
            refuse("name", Said::tr("The row has neither a name nor a number."));
        }
        if (name.size() > longest_name || number.size() > longest_name) {
            refuse(name.size() > longest_name ? "name" : "number",
                   Said::tr("This is longer than %1 characters.").arg(longest_name));
        }
        adopter.name = name.isEmpty() || number.isEmpty() ? name + number : Said::tr("%1 (%2)").arg(name, number);
    }

    void language(const QString& usual) const
    {
        const QString said = QString::fromStdString(cell(list, row, "language"));
        adopter.language = said.isEmpty() ? usual : said;
        if (!words::is_language(adopter.language)) {
            QStringList known;
            for (const words::Language& one : words::languages()) {
                known << one.code;
            }
            refuse("language", Said::tr("“%1” is not one of %2.").arg(said.left(20), known.join(QStringLiteral(", "))));
        }
    }

    void units(words::UnitSystem usual) const
    {
        const std::string said = cell(list, row, "units");
        adopter.units = said.empty()     ? usual
                        : said == "us"   ? words::UnitSystem::us
                        : said == "both" ? words::UnitSystem::both
                                         : words::UnitSystem::metric;
        if (!said.empty() && said != "us" && said != "metric" && said != "both") {
            refuse("units",
                   Said::tr("“%1” is none of “metric”, “us” and “both”.").arg(QString::fromStdString(said).left(20)));
        }
    }
};

QByteArray fingerprint_of(const AdopterList& list, const catalog::csv::Row& row)
{
    QCryptographicHash hash(QCryptographicHash::Sha256);
    for (const Column& column : columns()) {
        const std::string said = cell(list, row, column.name);
        if (!said.empty()) {
            hash.addData(QByteArray(column.name.data(), static_cast<qsizetype>(column.name.size())) + '\0');
            hash.addData(QByteArray::fromStdString(said) + '\0');
        }
    }
    hash.addData(QByteArray(1, list.separator)); // it decides how numbers read
    return hash.result().toHex();
}

// The problems of the plan by the column that they come from; what came from none is told with its place.
void tell(Adopter& adopter, const json::Problems& problems, const RowEdits& edits)
{
    for (const json::Problem& problem : problems) {
        const QString column = edits.column_at(problem.where);
        const bool plain = !column.isEmpty() && problem.where.find("/shell/") == std::string::npos;
        const RowProblem told{adopter.row, column, plain ? words::problem_sentence(problem) : words::problem(problem)};
        const bool known = std::any_of(adopter.problems.begin(), adopter.problems.end(), [&](const RowProblem& one) {
            return one == told || (!column.isEmpty() && one.column == column);
        });
        if (!known) {
            adopter.problems.push_back(told);
        }
    }
}

void take_plan(Adopter& adopter, const json::Node& document, const RowEdits& edits, const Template& shared)
{
    auto read = plan::read(json::write(document));
    if (const auto* problems = std::get_if<json::Problems>(&read)) {
        tell(adopter, *problems, edits);
        return;
    }
    adopter.plan = std::move(std::get<plan::Loaded>(read).plan);
    if (edits.enclosure()) {
        edits.resize(adopter.plan.enclosures[*edits.enclosure()]);
    }
    adopter.plan.owned.insert(adopter.plan.owned.end(), shared.lent.begin(), shared.lent.end());
    adopter.plan.title = Said::tr("%1 · %2").arg(adopter.name, QString::fromStdString(shared.plan.title)).toStdString();
    tell(adopter, plan::problems_of(adopter.plan), edits);
}

} // namespace

Adopter adopter_of(const AdopterList& list, const catalog::csv::Row& row, const Template& shared)
{
    Adopter adopter;
    adopter.row = row.number;
    if (const auto problem = problem_of_form(list, row)) {
        adopter.problems.push_back(*problem);
        return adopter;
    }
    adopter.fingerprint = fingerprint_of(list, row);
    const Person person{list, row, adopter};
    person.name();
    person.language(shared.language);
    person.units(shared.units);
    RowEdits edits(list, row, shared);
    const json::Node document = edits.document();
    for (RowProblem& problem : edits.take_problems()) {
        adopter.problems.push_back(std::move(problem));
    }
    take_plan(adopter, document, edits, shared);
    return adopter;
}

} // namespace loam::batch
