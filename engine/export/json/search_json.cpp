#include "export/json/search_json.h"

#include "wording/search.h"

#include <nlohmann/json.hpp>

namespace toehold::exporting {
namespace {

// Keys keep the order in which they are written; an infinite number is written as null.
using Json = nlohmann::ordered_json;
using search::Stage;

Json axes(const search::Space& space) {
    Json all = Json::array();
    for (const search::Axis& axis : space.axes) {
        Json labels = Json::array();
        for (const search::Option& option : axis.options) labels.push_back(option.label);
        all.push_back({{"id", axis.id}, {"title", format::english(axis.title)}, {"options", std::move(labels)}});
    }
    return all;
}

Json chosen_options(const search::Space& space, search::Candidate candidate) {
    const std::vector<std::size_t> chosen = search::choices(space, candidate);
    Json all = Json::object();
    for (std::size_t axis = 0; axis < space.axes.size(); ++axis)
        all[space.axes[axis].id] = space.axes[axis].options[chosen[axis]].label;
    return all;
}

Json counts(const search::Counts& counts) {
    Json stages = Json::object();
    for (const Stage stage : {Stage::choice, Stage::finding, Stage::probe, Stage::whole})
        stages[std::string(search::word(stage))] = counts.by_stage.at(static_cast<std::size_t>(stage));
    return {{"candidates", counts.candidates},
            {"judged", counts.judged},
            {"hold", counts.found},
            {"by_stage", std::move(stages)}};
}

Json score(const search::Score& score) {
    return {{"weight_lb", score.weight_lb},
            {"steel_cost", score.steel_cost},
            {"unpriced", score.unpriced},
            {"pieces", score.pieces},
            {"anchors", score.anchors},
            {"governing_ratio", score.governing_ratio},
            {"robustness_ratio", score.robustness_ratio ? Json(*score.robustness_ratio) : Json(nullptr)}};
}

Json results(const search::Space& space, const std::vector<search::Result>& found) {
    Json all = Json::array();
    for (const search::Result& result : found) {
        all.push_back({{"candidate", result.candidate},
                       {"choices", chosen_options(space, result.candidate)},
                       {"score", score(result.score)}});
    }
    return all;
}

Json limits(const search::Outcome& outcome) {
    Json all = Json::array();
    for (const auto& [id, count] : outcome.limits)
        all.push_back({{"id", id}, {"title", format::english(wording::limit_title(id))}, {"candidates", count}});
    return all;
}

Json choice(const search::Space& space, const search::Choice& one) {
    const search::Axis& axis = space.axes[one.axis];
    return {{"axis", axis.id}, {"option", axis.options[one.option].label}};
}

Json clashes(const search::Space& space, const search::Outcome& outcome) {
    Json all = Json::array();
    for (const search::Clash& clash : outcome.clashes) {
        Json with = Json::array();
        for (const search::Choice& one : clash.with) with.push_back(choice(space, one));
        all.push_back({{"choice", clash.choice ? choice(space, *clash.choice) : Json(nullptr)},
                       {"with", std::move(with)},
                       {"why", format::english(clash.why)},
                       {"meaningless", clash.meaningless},
                       {"candidates", clash.candidates}});
    }
    return all;
}

Json nearest(const search::Space& space, const std::optional<search::NearestMiss>& miss) {
    if (!miss) return nullptr;
    return {{"candidate", miss->candidate},
            {"choices", chosen_options(space, miss->candidate)},
            {"limit", miss->limit},
            {"title", format::english(miss->title)},
            {"subject", model::key(miss->part)},
            {"ratio", miss->ratio},
            {"failing", miss->failing},
            {"would_change", format::english(miss->would_change)}};
}

}  // namespace

std::string search_json(const std::string& file, const std::string& name, const search::Space& space,
                        const search::Outcome& outcome, const std::string& currency) {
    const Json all = {{"schema", "toehold.search/1"},
                      {"file", file},
                      {"space", name},
                      {"axes", axes(space)},
                      {"counts", counts(outcome.counts)},
                      {"stopped", outcome.stopped},
                      {"currency", currency},
                      {"front", results(space, outcome.front)},
                      {"holding", results(space, outcome.holding)},
                      {"limits", limits(outcome)},
                      {"clashes", clashes(space, outcome)},
                      {"nearest", nearest(space, outcome.nearest)}};
    constexpr int indent = 2;
    return all.dump(indent, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace toehold::exporting
