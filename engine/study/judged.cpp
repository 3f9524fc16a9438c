#include "study/judged.h"

#include "checks/registry.h"
#include "review/review.h"
#include "review/verdict.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>

namespace toehold::study {
namespace {

using checks::CheckResult;
using checks::Status;
using format::Phrase;
using format::phrase;

constexpr std::string_view between_settings = "; ";

/// no_path and failures first, then what lacks evidence, then by ratio: the review's own order.
std::vector<CheckRatio> worst_of_each(const std::vector<CheckResult>& worst_first) {
    std::map<std::string, CheckRatio> worst;
    for (const CheckResult& result : worst_first) {
        const bool dimension = review::is_dimension(result);
        worst.try_emplace(result.id,
                          CheckRatio{result.id, result.title, result.part, result.ratio, result.status, dimension});
    }
    std::vector<CheckRatio> all;
    all.reserve(worst.size());
    for (auto& [id, ratio] : worst) all.push_back(std::move(ratio));
    return all;
}

bool has_number(const CheckResult& result) {
    return (result.status == Status::holds || result.status == Status::fails) && std::isfinite(result.ratio);
}

std::optional<CheckRatio> governing_of(const std::vector<CheckResult>& results) {
    const CheckResult* worst = nullptr;
    for (const CheckResult& result : results) {
        if (!has_number(result) || (review::is_dimension(result) && result.status == Status::holds)) continue;
        if (worst == nullptr || result.ratio > worst->ratio) worst = &result;
    }
    if (worst == nullptr) return std::nullopt;
    return CheckRatio{worst->id, worst->title, worst->part, worst->ratio, worst->status, review::is_dimension(*worst)};
}

Limit limit_of(const review::Review& review) {
    const bool check_fails = review.facts.counts.failing() > 0;
    const bool forbidden = !review.findings.empty() && review.findings.front().severity != checks::Severity::caution;
    if (!check_fails && forbidden) {
        const checks::Finding& finding = review.findings.front();
        for (const checks::FindingRule& rule : checks::registered_findings()) {
            if (rule.id == finding.id) return {finding.id, rule.title, finding.part};
        }
        return {finding.id, phrase("No equilibrium"), finding.part};
    }
    if (review.verdict == review::Verdict::incomplete && review.facts.not_specified) {
        const review::CheckFact& lacks = *review.facts.not_specified;
        return {lacks.check, lacks.title, lacks.part};
    }
    return {review.governing.check, review.governing.title, review.governing.part};
}

Judged judged_by(const review::Review& review) {
    Judged judged;
    judged.verdict = review.verdict;
    judged.checks = worst_of_each(review.checks);
    judged.governing = governing_of(review.checks);
    judged.limit = limit_of(review);
    for (const CheckRatio& ratio : judged.checks) {
        if (ratio.status == Status::no_path) judged.no_path.push_back(ratio);
    }
    return judged;
}

Judged refused(Phrase why) {
    Judged judged;
    judged.refusal = std::move(why);
    return judged;
}

Made apply(const std::vector<Field>& fields, const model::BaseDetail& detail, const Settings& settings) {
    Made made{detail, {}};
    for (const Setting& setting : settings) {
        const Field* const field = find_field(fields, setting.field);
        if (field == nullptr) return {std::nullopt, phrase("this detail has no field \"{}\"", setting.field)};
        made = field->set(*made.detail, setting.value);
        if (!made.detail) return made;
    }
    return made;
}

Judged judge_made(const Made& made, const catalog::Catalog& catalog, demand::Kept* kept) {
    if (!made.detail) return refused(made.refusal);
    const catalog::Resolution resolution = catalog::resolve(*made.detail, catalog);
    if (resolution.resolved) return judge(*resolution.resolved, kept);
    const model::Problem& problem = resolution.problems.front();
    return refused(phrase("{}: {}", problem.element, problem.message));
}

/// `height=36 in`.
std::optional<Setting> read_setting(const std::vector<Field>& fields, const std::string& text) {
    const std::size_t equals = text.find('=');
    if (equals == std::string::npos) return std::nullopt;
    const std::string id = text.substr(0, equals);
    const Field* const field = find_field(fields, id);
    if (field == nullptr) return std::nullopt;
    const std::string ending = " " + field->unit;
    std::string number = text.substr(equals + 1);
    if (number.size() <= ending.size() || !number.ends_with(ending)) return std::nullopt;
    number.resize(number.size() - ending.size());
    const std::optional<double> value = units::parse_number(number);
    if (!value) return std::nullopt;
    return Setting{id, *value};
}

}  // namespace

std::optional<double> Judged::ratio() const {
    if (!known()) return std::nullopt;
    if (!no_path.empty()) return std::numeric_limits<double>::infinity();
    if (!governing) return std::nullopt;
    return governing->ratio;
}

std::string id_of(const std::vector<Field>& fields, const Settings& settings) {
    std::string id;
    for (const Setting& setting : settings) {
        const Field* const field = find_field(fields, setting.field);
        if (!id.empty()) id += between_settings;
        id += fmt::format("{}={} {}", setting.field, setting.value, field == nullptr ? "" : field->unit);
    }
    return id;
}

Made detail_of(const Subject& subject, const std::string& id) {
    const std::vector<Field> all = fields(subject);
    Settings settings;
    for (std::size_t from = 0; from < id.size();) {
        const std::size_t end = std::min(id.find(between_settings, from), id.size());
        const std::optional<Setting> setting = read_setting(all, id.substr(from, end - from));
        if (!setting) return {std::nullopt, phrase("\"{}\" names no detail of this study", id)};
        settings.push_back(*setting);
        from = end + between_settings.size();
    }
    return apply(all, subject.resolved.detail, settings);
}

Judged judge(const catalog::Resolved& resolved, demand::Kept* kept) {
    return judge(resolved, demand::find_demand(resolved, demand::Sampling::whole(), kept));
}

Judged judge(const catalog::Resolved& resolved, demand::Outcome outcome) {
    if (!outcome.demand && !outcome.overturns) return refused(outcome.failure);
    return judged_by(review::evaluate(resolved, std::move(outcome), ""));
}

Judged judge(const Subject& subject, const std::vector<Field>& fields, const Settings& settings, demand::Kept* kept) {
    Judged judged = judge_made(apply(fields, subject.resolved.detail, settings), subject.catalog, kept);
    judged.detail = id_of(fields, settings);
    return judged;
}

}  // namespace toehold::study
