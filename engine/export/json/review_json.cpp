#include "export/json/review_json.h"

#include "export/json/check_json.h"
#include "export/json/demand_json.h"
#include "export/json/keys.h"
#include "format/figures.h"
#include "review/groups.h"
#include "wording/outcomes.h"
#include "wording/verdict.h"

#include <nlohmann/json.hpp>

namespace toehold::exporting {
namespace {

// Keys keep the order in which they are written; an infinite number is written as null.
using Json = nlohmann::ordered_json;
using as_json::check;
using as_json::part;

Json optional_number(const std::optional<double>& value) { return value ? Json(*value) : Json(nullptr); }

/// An array of one object for every item; empty, never null, when there is none.
template <class Items, class Object>
Json array_of(const Items& items, Object&& object) {
    Json array = Json::array();
    for (const auto& item : items) array.push_back(object(item));
    return array;
}

Json text(const format::Phrase& phrase) { return format::english(phrase); }

Json governing(const review::Governing& governing) {
    if (governing.check.empty()) return nullptr;
    return {{"check", governing.check},
            {"ratio", governing.ratio},
            {"direction_deg", optional_number(governing.direction_deg)},
            {"title", text(governing.title)},
            {"subject", model::key(governing.part)},
            {"part", part(governing.part)}};
}

Json counts(const review::Counts& counts) {
    return {{"holds", counts.pass},
            {"fails", counts.fail},
            {"no_path", counts.no_path},
            {"missing_evidence", counts.not_specified},
            {"findings_fail", counts.findings_fail},
            {"findings_missing", counts.findings_missing},
            {"cautions", counts.cautions}};
}

Json first_cause(const std::optional<review::FirstCause>& cause) {
    if (!cause) return nullptr;
    return {{"check", cause->check},       {"title", text(cause->title)},  {"subject", model::key(cause->part)},
            {"part", part(cause->part)},   {"status", key(cause->status)}, {"ratio", cause->ratio},
            {"explains", cause->explained}};
}

Json first_finding(const std::optional<review::FindingFact>& finding) {
    if (!finding) return nullptr;
    return {{"id", finding->rule},
            {"title", text(finding->title)},
            {"subject", model::key(finding->part)},
            {"part", part(finding->part)},
            {"message", text(finding->message)}};
}

Json shortfall(const std::optional<review::Shortfall>& shortfall) {
    if (!shortfall) return nullptr;
    return {
        {"lacking", shortfall->lacking()}, {"unit", shortfall->unit}, {"factor", optional_number(shortfall->factor())}};
}

Json finding(const checks::Finding& finding) {
    return {{"id", finding.id},
            {"severity", key(finding.severity)},
            {"clause", finding.clause},
            {"message", text(finding.message)},
            {"subject", model::key(finding.part)},
            {"part", part(finding.part)}};
}

Json path_link(const review::PathLink& link) {
    return {{"from", model::key(link.link.from)},
            {"to", model::key(link.link.to)},
            {"by", text(link.link.by)},
            {"demand", link.demand},
            {"capacity", link.capacity},
            {"unit", link.unit},
            {"ratio", link.ratio},
            {"status", key(link.status)},
            {"check", link.check}};
}

Json assumption(const review::Assumption& assumption) {
    Json other = nullptr;
    if (assumption.other) {
        other = {{"choice", text(assumption.other->choice)},
                 {"ratio_before", optional_number(assumption.other->ratio_before)},
                 {"ratio_after", optional_number(assumption.other->ratio_after)},
                 {"failing_before", assumption.other->failing_before},
                 {"failing_after", assumption.other->failing_after}};
    }
    return {
        {"text", text(assumption.text)}, {"other_choice", text(wording::other_choice(assumption))}, {"other", other}};
}

/// Results that come to the same: their places in `checks`, worst first.
Json group(const review::Group& group) { return {{"worst", group.worst()}, {"checks", group.results}}; }

Json proof_factor(const std::optional<review::ProofFactor>& proof) {
    if (!proof) return nullptr;
    return {{"multiple", proof->multiple},
            {"concentrated_lb", proof->concentrated_lb},
            {"check", text(proof->title)},
            {"part", model::key(proof->part)}};
}

Json remedy(const review::Remedy& remedy) {
    return {{"id", remedy.id},
            {"change", text(remedy.text)},
            {"verdict", key(remedy.verdict)},
            {"governing", governing(remedy.governing)},
            {"failing_results", remedy.failing_results},
            {"failing_findings", remedy.failing_findings}};
}

Json document(const review::Review& review) {
    const as_json::DemandFields found = as_json::demand_fields(review);
    return {{"schema", "toehold.review/1"},
            {"detail", review.detail},
            {"input_sha256", review.input_sha256},
            {"verdict", key(review.verdict)},
            {"governing", governing(review.governing)},
            {"anchors", found.anchors},
            {"bearing", found.bearing},
            {"checks", array_of(review.checks, check)},
            {"findings", array_of(review.findings, finding)},
            {"load_path", array_of(review.load_path, path_link)},
            {"proof", found.proof},
            {"assumptions", array_of(review.assumptions, assumption)},
            {"cautions", array_of(review.cautions, text)},
            {"reason", text(wording::verdict_reason(review))},
            {"no_demand", review.demand ? Json(nullptr) : text(review.no_demand)},
            {"loads", found.loads},
            {"range", found.range},
            {"supports", found.supports},
            {"bending", found.bending},
            {"plate_field", found.plate_field},
            {"remedies", array_of(review.remedies, remedy)},
            {"framing", found.framing},
            {"counts", counts(review.facts.counts)},
            {"first_cause", first_cause(review.facts.first_cause)},
            {"first_finding", first_finding(review.facts.first_finding)},
            {"shortfall", shortfall(review.facts.shortfall)},
            {"rotational_stiffness", found.rotational_stiffness},
            {"proof_factor", proof_factor(review.facts.proof_factor)},
            {"groups", array_of(review::grouped(review.checks), group)},
            {"range_ends", found.range_ends},
            {"ties", found.ties},
            {"hand_couples", found.hand_couples}};
}

}  // namespace

std::string review_json(const review::Review& review, std::string_view file) {
    constexpr int indent = 2;
    Json whole = document(review);
    if (!file.empty()) whole["file"] = file;
    // A stray byte in somebody's text must not cost the reader the review.
    return whole.dump(indent, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace toehold::exporting
