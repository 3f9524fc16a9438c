#include "export/json/check_json.h"

#include "checks/result.h"
#include "export/json/keys.h"

namespace toehold::exporting::as_json {
namespace {

using Json = nlohmann::ordered_json;

Json said(const format::Phrase& phrase) { return format::english(phrase); }

Json step(const checks::Step& step) {
    return {{"symbol", step.symbol}, {"meaning", said(step.meaning)}, {"formula", step.formula}, {"value", step.value},
            {"unit", step.unit},     {"clause", step.clause}};
}

Json link(const std::optional<checks::Link>& link) {
    if (!link) return nullptr;
    return {{"from", model::key(link->from)}, {"to", model::key(link->to)}, {"by", said(link->by)}};
}

Json steps(const std::vector<checks::Step>& all) {
    Json array = Json::array();
    for (const checks::Step& one : all) array.push_back(step(one));
    return array;
}

}  // namespace

Json sentences(const std::vector<format::Phrase>& all) {
    Json list = Json::array();
    for (const format::Phrase& one : all) list.push_back(said(one));
    return list;
}

Json part(const model::PartId& part) {
    if (part.kind == model::PartKind::none) return nullptr;
    Json object = {{"kind", model::kind_word(part.kind)}, {"id", part.id}, {"key", model::key(part)}};
    if (part.at_kind != model::PartKind::none)
        object["at"] = {{"kind", model::kind_word(part.at_kind)}, {"id", part.at_id}};
    return object;
}

Json check(const checks::CheckResult& result) {
    return {{"id", result.id},
            {"title", said(result.title)},
            {"subject", model::key(result.part)},
            {"clause", result.clause},
            {"demand", result.demand},
            {"capacity", result.capacity},
            {"unit", result.unit},
            {"ratio", result.ratio},
            {"status", key(result.status)},
            {"direction_deg", result.direction_deg ? Json(*result.direction_deg) : Json(nullptr)},
            {"steps", steps(result.steps)},
            {"note", said(result.note)},
            {"link", link(result.link)},
            {"part", part(result.part)},
            {"under", said(result.under)}};
}

}  // namespace toehold::exporting::as_json
