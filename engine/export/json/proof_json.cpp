#include "export/json/proof_json.h"

#include "export/json/check_json.h"
#include "study/proof_load/movement.h"
#include "study/proof_load/proof_load.h"
#include "wording/proof_load.h"

#include <nlohmann/json.hpp>

#include <cmath>

namespace toehold::exporting {
namespace {

// Keys keep the order in which they are written; an infinite number is written as null.
using Json = nlohmann::ordered_json;
using format::english;
namespace ultimate = resistance::ultimate;

Json finite(double value) { return std::isfinite(value) ? Json(value) : Json(nullptr); }

const char* word(ultimate::Seen seen) {
    switch (seen) {
        case ultimate::Seen::in_text:
            return "read";
        case ultimate::Seen::recomputed:
            return "recomputed";
        case ultimate::Seen::memory:
            return "from-memory";
        case ultimate::Seen::assumed:
            break;
    }
    return "assumed";
}

const char* word(model::Moisture moisture) {
    switch (moisture) {
        case model::Moisture::wet:
            return "wet";
        case model::Moisture::dry:
            return "dry";
        case model::Moisture::dried_in_service:
            break;
    }
    return "dried-in-service";
}

const char* word(study::CommonCause cause) {
    switch (cause) {
        case study::CommonCause::calculation:
            return "calculation";
        case study::CommonCause::moisture:
            return "moisture";
        case study::CommonCause::workmanship:
            return "workmanship";
        case study::CommonCause::density:
            break;
    }
    return "density";
}

const char* word(study::LeftOutFor why) {
    switch (why) {
        case study::LeftOutFor::deforms_only:
            return "deforms-only";
        case study::LeftOutFor::not_specified:
            return "not-specified";
        case study::LeftOutFor::no_published_mean:
            break;
    }
    return "no-published-mean";
}

const char* word(study::Agreement agreement) {
    switch (agreement) {
        case study::Agreement::agrees:
            return "agrees";
        case study::Agreement::softer:
            return "softer";
        case study::Agreement::stiffer:
            break;
    }
    return "stiffer";
}

Json interval(const mechanics::ConfidenceInterval& one) { return {{"low", one.low}, {"high", one.high}}; }

Json links(const study::Prediction& prediction) {
    std::vector<const study::FirstBreak*> firsts(prediction.chain.links.size(), nullptr);
    for (const study::FirstBreak& first : prediction.first) firsts.at(first.link) = &first;
    Json all = Json::array();
    for (std::size_t index = 0; index < firsts.size(); ++index) {
        const study::FirstBreak* const first = firsts[index];
        const study::TestedLink& link = prediction.chain.links[index];
        const ultimate::LinkBasis& basis = link.basis();
        all.push_back({{"check", link.check},
                       {"part", model::key(link.part)},
                       {"link", english(wording::link_name(link.strength.link))},
                       {"end", link.yields() ? "yields" : "breaks"},
                       {"breaks_first", first == nullptr ? 0.0 : first->share},
                       {"breaks_first_interval", first == nullptr ? Json(nullptr) : interval(first->interval)},
                       {"drawn", index < prediction.chain.chain.links.size()},
                       {"mean_strength", link.mean},
                       {"unit", link.unit},
                       {"mean_source", basis.mean_source},
                       {"mean_seen", word(basis.mean_seen)},
                       {"variation", basis.variation},
                       {"variation_source", basis.variation_source},
                       {"variation_seen", word(basis.variation_seen)},
                       {"demand_per_lb", link.demand_per_lb},
                       {"constant_demand", link.constant_demand},
                       {"state", link.framing_gives ? "central-framing-gives" : "central-framing-still"},
                       {"mean_breaks_at_lb", finite(link.breaks_at_lb)}});
    }
    return all;
}

Json left_out(const study::Prediction& prediction) {
    Json all = Json::array();
    for (const study::LeftOutLink& link : prediction.chain.left_out) {
        all.push_back({{"check", link.check},
                       {"part", model::key(link.part)},
                       {"why", word(link.reason.why)},
                       {"design_ratio_at_test", finite(link.share)}});
    }
    return all;
}

Json common(const study::Prediction& prediction) {
    Json all = Json::array();
    for (const study::CommonScatter& scatter : prediction.chain.common) {
        Json one{{"cause", word(scatter.cause)}, {"variation", scatter.variation}};
        if (scatter.cause == study::CommonCause::density) one["member"] = model::key(scatter.member);
        all.push_back(std::move(one));
    }
    return all;
}

Json prediction_json(const study::Prediction& prediction) {
    Json curve = Json::array();
    for (const study::ShareOfTests& one : prediction.curve)
        curve.push_back({{"share", one.share}, {"push_lb", one.push_lb}});
    return {{"moisture", word(prediction.moisture)},
            {"carries", {{"chance", prediction.carries.share}, {"interval", interval(prediction.carries.interval)}}},
            {"upper_bound", !wording::upper_bound(prediction).empty()},
            {"mean_push_lb", prediction.mean_push_lb},
            {"mean_interval_lb", interval(prediction.mean_interval)},
            {"deviation_lb", prediction.deviation_lb},
            {"curve", std::move(curve)},
            {"common_scatter", common(prediction)},
            {"links", links(prediction)},
            {"left_out", left_out(prediction)}};
}

Json parts(const study::MovementParts& parts) {
    return {{"post", parts.post}, {"base", parts.base}, {"framing", parts.framing}, {"total", parts.total()}};
}

Json measured(const Proven& proven) {
    if (proven.computed == nullptr || proven.compared == nullptr) return nullptr;
    const study::ComputedMovement& computed = *proven.computed;
    const study::Compared& compared = *proven.compared;
    Json readings = Json::array();
    for (const mechanics::Reading& one : compared.measured.readings)
        readings.push_back({{"push_lb", one.push}, {"movement_in", one.movement}});
    return {{"readings", std::move(readings)},
            {"agreement", word(compared.agreement)},
            {"times", compared.times},
            {"stiffness_lb_per_in", compared.measured.line.stiffness},
            {"play_in", compared.measured.with_play ? Json(compared.measured.line.play) : Json(nullptr)},
            {"rotational_stiffness_lb_in_per_rad",
             compared.rotational_stiffness ? Json(*compared.rotational_stiffness) : Json(nullptr)},
            {"computed_in_per_lb",
             {{"soft", parts(computed.soft)}, {"central", parts(computed.central)}, {"stiff", parts(computed.stiff)}}}};
}

}  // namespace

std::string proof_json(const Proven& proven) {
    const study::ProofLoad& proof = proven.proof;
    const Json json{{"schema", "toehold.proof/1"},
                    {"detail", proven.detail},
                    {"input_sha256", proven.input_sha256},
                    {"test_push_lb", study::test_push_lb},
                    {"height_in", proof.height_in},
                    {"samples", proof.drawing.samples},
                    {"seed", proof.drawing.seed},
                    {"in_service", prediction_json(proof.in_service)},
                    {"other_moisture", prediction_json(proof.other)},
                    {"measured", measured(proven)},
                    {"assumptions", as_json::sentences(wording::proof_assumptions(proof))},
                    {"cautions", as_json::sentences(wording::proof_cautions(proof))}};
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace toehold::exporting
