#include "export/json/comparison_json.h"

#include "export/json/keys.h"
#include "format/figures.h"
#include "wording/outcomes.h"
#include "wording/verdict.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace toehold::exporting {
namespace {

// Keys keep the order in which they are written; an infinite number is written as null.
using Object = nlohmann::ordered_json;

/// null for what is not there.
template <class Item, class Write>
Object or_null(const std::optional<Item>& item, Write&& write) {
    return item ? write(*item) : Object(nullptr);
}

Object pull_object(const review::LargestTension& pull) {
    return {{"anchor", pull.part.id},
            {"tension_lb", pull.tension_lb},
            {"direction_deg", format::degrees(pull.direction_rad)}};
}

Object side_object(const review::Side& side) {
    Object governing = nullptr;
    if (!side.governing.check.empty()) {
        governing = {{"check", side.governing.check},
                     {"title", format::english(side.governing.title)},
                     {"subject", model::key(side.governing.part)},
                     {"ratio", side.governing.ratio}};
    }
    return {{"label", side.label},
            {"detail", side.detail},
            {"input_sha256", side.input_sha256},
            {"verdict", key(side.verdict)},
            {"reason", format::english(wording::verdict_reason(side))},
            {"governing", governing},
            {"largest_pull", or_null(side.facts.largest_tension, pull_object)}};
}

Object text_or_null(const std::string& text) { return text.empty() ? Object(nullptr) : Object(text); }

Object result_object(const checks::CheckResult& result) {
    return {{"demand", result.demand},
            {"capacity", result.capacity},
            {"unit", result.unit},
            {"ratio", result.ratio},
            {"status", key(result.status)},
            {"clause", result.clause},
            {"note", format::english(result.note)}};
}

Object check_object(const review::CheckDifference& check) {
    return {{"id", check.id},
            {"title", format::english(check.title)},
            {"subject", model::key(check.part)},
            {"status_turns", check.status_turns()},
            {"same", check.same()},
            {"first", or_null(check.first, result_object)},
            {"second", or_null(check.second, result_object)}};
}

Object finding_object(const checks::Finding& finding) {
    return {{"id", finding.id},
            {"severity", key(finding.severity)},
            {"clause", finding.clause},
            {"message", format::english(finding.message)},
            {"subject", model::key(finding.part)}};
}

}  // namespace

std::string comparison_json(const review::Comparison& comparison, bool all_rows) {
    Object input = Object::array();
    for (const review::InputDifference& one : comparison.input) {
        input.push_back(
            {{"place", one.place}, {"first", text_or_null(one.first)}, {"second", text_or_null(one.second)}});
    }
    Object checks = Object::array();
    for (const review::CheckDifference& one : comparison.checks) {
        if (all_rows || !one.same()) checks.push_back(check_object(one));
    }
    Object findings = Object::array();
    for (const review::FindingDifference& one : comparison.findings) {
        findings.push_back(
            {{"first", or_null(one.first, finding_object)}, {"second", or_null(one.second, finding_object)}});
    }
    Object anchors = Object::array();
    for (const format::Phrase& sentence : wording::anchor_changes(comparison))
        anchors.push_back(format::english(sentence));
    const auto same = std::count_if(comparison.checks.begin(), comparison.checks.end(),
                                    [](const review::CheckDifference& one) { return one.same(); });
    const Object document = {{"schema", "toehold.comparison/1"},
                             {"verdict_turns", comparison.verdict_turns()},
                             {"first", side_object(comparison.first)},
                             {"second", side_object(comparison.second)},
                             {"input", input},
                             {"anchors", anchors},
                             {"checks", checks},
                             {"same_checks", same},
                             {"findings", findings}};
    constexpr int indent = 2;
    return document.dump(indent, ' ', false, Object::error_handler_t::replace) + "\n";
}

}  // namespace toehold::exporting
