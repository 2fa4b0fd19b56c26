// The lists of codes, and that findings carry what their code's entry says.
#include <set>
#include <sstream>

#include "core/assess/codes.hpp"
#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;

namespace {

struct Names {
    std::set<std::string> required;
    std::set<std::string> allowed;
};

Names names_of(std::string_view list)
{
    Names names;
    std::istringstream words{std::string(list)};
    for (std::string word; words >> word;) {
        const bool optional = word.back() == '?';
        if (optional) {
            word.pop_back();
        } else {
            names.required.insert(word);
        }
        names.allowed.insert(word);
    }
    return names;
}

template <class Element>
void check_names(const std::string& code, std::string_view list, const std::vector<Element>& carried)
{
    const Names names = names_of(list);
    std::set<std::string> found;
    for (const Element& one : carried) {
        INFO(code << " carries " << one.name);
        CHECK(names.allowed.count(one.name) == 1);
        CHECK(found.insert(one.name).second);
    }
    for (const std::string& name : names.required) {
        INFO(code << " needs " << name);
        CHECK(found.count(name) == 1);
    }
}

void check_finding(const Finding& finding)
{
    const assess::CodeEntry* entry = assess::find_code(assess::finding_codes, finding.code);
    INFO(finding.code);
    REQUIRE(entry != nullptr);
    CHECK(assess::is_listed(assess::rule_codes, finding.because.rule));
    check_names(finding.code, entry->inputs, finding.because.inputs);
    check_names(finding.code, entry->labels, finding.because.labels);
    if (finding.remedy) {
        const assess::CodeEntry* remedy = assess::find_code(assess::remedy_codes, finding.remedy->code);
        REQUIRE(remedy != nullptr);
        check_names(finding.remedy->code, remedy->inputs, finding.remedy->amounts);
        check_names(finding.remedy->code, remedy->labels, finding.remedy->labels);
    }
}

} // namespace

TEST_CASE("each code is listed once")
{
    std::set<std::string_view> codes;
    const auto check = [&](std::span<const assess::CodeEntry> list) {
        for (const assess::CodeEntry& entry : list) {
            INFO(entry.code);
            CHECK(codes.insert(entry.code).second);
        }
    };
    check(assess::finding_codes);
    check(assess::remedy_codes);
    check(assess::rule_codes);
    check(assess::need_codes);
}

TEST_CASE("every finding carries exactly what the list says of its code")
{
    for (const plan::Plan& plan : {turtle_table(), example("upgrade"), example("club-template"), minimal_plan()}) {
        for (const Finding& finding : whole(plan).findings) {
            check_finding(finding);
        }
    }
}

TEST_CASE("every line to buy says why with a listed code")
{
    for (const assess::ShoppingLine& line : instant(example("upgrade")).shopping) {
        INFO(line.need);
        CHECK(assess::is_listed(assess::need_codes, line.why));
    }
}

TEST_CASE("findings stand most serious first and cautions last")
{
    const auto findings = whole(example("upgrade")).findings;
    for (std::size_t i = 1; i < findings.size(); ++i) {
        CHECK(assess::is_listed(assess::finding_codes, findings[i].code));
        const auto rank = [](Verdict verdict) {
            switch (verdict) {
            case Verdict::danger:
                return 4;
            case Verdict::falls_short:
                return 3;
            case Verdict::not_known:
                return 2;
            case Verdict::tight:
                return 1;
            case Verdict::fits:
                return 0;
            }
            return 0;
        };
        CHECK(rank(findings[i - 1].verdict) >= rank(findings[i].verdict));
    }
    CHECK(findings.back().code.rfind("caution.", 0) == 0);
}
