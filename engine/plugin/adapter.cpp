#include "plugin/adapter.h"

#include "catalog/resolve.h"
#include "demand/demand.h"
#include "xml/document/characters.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstring>
#include <numbers>
#include <optional>
#include <utility>

namespace toehold::plugin {
namespace {

constexpr std::size_t longest_text = 2000;
constexpr std::size_t most_steps = 1000;
constexpr std::size_t most_results = 1000;

constexpr std::int32_t taken = 0;
constexpr std::int32_t refused = 1;

double in_degrees(double angle_rad) { return angle_rad * 180.0 / std::numbers::pi; }

double plate_thickness_in(const model::BaseDetail& detail) {
    const auto* const mount = std::get_if<model::PlateOnDeck>(&detail.mount);
    return mount == nullptr ? 0.0 : mount->plate.thickness_in;
}

toehold_anchor seen(const catalog::Anchor& anchor, const demand::AnchorEnvelope& force, toehold_anchor /*version*/) {
    return {{"anchor", anchor.id.c_str()},
            anchor.at.x_in,
            anchor.at.y_in,
            anchor.at.z_in,
            anchor.axis.x,
            anchor.axis.y,
            anchor.axis.z,
            anchor.diameter_in,
            force.tension_lb,
            force.shear_lb,
            in_degrees(force.direction_rad)};
}

abi_1::Anchor seen(const catalog::Anchor& anchor, const demand::AnchorEnvelope& force, abi_1::Anchor /*version*/) {
    return {anchor.id.c_str(),
            anchor.at.x_in,
            anchor.at.y_in,
            anchor.diameter_in,
            force.tension_lb,
            force.shear_lb,
            in_degrees(force.direction_rad)};
}

void add_mount(toehold_detail& detail, const model::BaseDetail& from) {
    // A literal, so it ends in a zero.
    detail.mount = model::word(kind(from.mount)).data();
}
void add_mount(abi_1::Detail& /*knows no other*/, const model::BaseDetail& /*from*/) {}

/// A plug-in sees a wind beside a push as one push: the largest, across the rail.
constexpr double outward_rad = 0.5 * std::numbers::pi;

/// The detail as a plug-in of one version sees it; the arrays live as long as this.
template <class Detail, class Anchor, class Push>
struct DetailView {
    explicit DetailView(const checks::CheckInput& input) {
        const catalog::Resolved& resolved = input.resolved;
        for (std::size_t index = 0; index < resolved.anchors.size(); ++index)
            anchors.push_back(seen(resolved.anchors[index], input.demand.anchors.at(index), Anchor{}));
        for (const demand::LoadCase& one : input.demand.cases) {
            const demand::ActingLoad load = demand::acting_load(one, outward_rad);
            names.push_back(format::english(one.name));
            pushes.push_back({nullptr, load.push_lb, load.down_lb, load.height_in});
        }
        for (std::size_t index = 0; index < names.size(); ++index) pushes[index].name = names[index].c_str();
        detail.name = resolved.detail.name.c_str();
        add_mount(detail, resolved.detail);
        detail.guard_height_in = resolved.detail.guard.height_in;
        detail.plate_thickness_in = plate_thickness_in(resolved.detail);
        detail.lrfd = resolved.detail.basis.method == model::Method::lrfd ? 1 : 0;
        detail.anchors = anchors.data();
        detail.anchor_count = anchors.size();
        detail.pushes = pushes.data();
        detail.push_count = pushes.size();
    }

    std::vector<Anchor> anchors;
    std::vector<std::string> names;
    std::vector<Push> pushes;
    Detail detail{};
};

struct Collector {
    std::vector<model::PartId> parts;  ///< of the detail
    std::vector<checks::CheckResult> results;
    bool refused_any = false;
};

bool usable(double value) { return std::isfinite(value) && value >= 0.0; }

/// Absent: the plug-in names none of the four.
std::optional<checks::Origin> origin_of(const toehold_step& step) {
    switch (step.origin) {
        case TOEHOLD_DERIVED:
            return checks::Origin::derived;
        case TOEHOLD_FROM_FILE:
            return checks::Origin::file;
        case TOEHOLD_GIVEN:
            return checks::Origin::given;
        case TOEHOLD_DEMANDED:
            return checks::Origin::demanded;
        default:
            return std::nullopt;
    }
}

/// Version 1 cannot say it: its steps are shown as worked out.
std::optional<checks::Origin> origin_of(const abi_1::Step& /*knows none*/) { return checks::Origin::derived; }

template <class Step>
bool sound_step(const Step& step) {
    return origin_of(step) && step.symbol && step.meaning && step.formula && step.unit && step.clause &&
           std::isfinite(step.value);
}

bool names_part(const toehold_result& result) { return result.part.kind && result.part.id; }
bool names_part(const abi_1::Result& /*has words alone*/) { return true; }

template <class Result>
bool sound(const Result& result) {
    if (!names_part(result) || !result.subject || !result.clause || !result.unit || !result.note) return false;
    if (!usable(result.demand) || !usable(result.capacity)) return false;
    if (result.step_count > most_steps || (result.step_count > 0 && !result.steps)) return false;
    for (std::size_t index = 0; index < result.step_count; ++index) {
        if (!sound_step(result.steps[index])) return false;
    }
    return true;
}

/// The part the plug-in names, if the detail has it; else what it is about in the plug-in's own words.
model::PartId part_of(const toehold_result& result, const std::vector<model::PartId>& parts) {
    const std::string kind = copied_text(result.part.kind), id = copied_text(result.part.id);
    const auto found = std::find_if(parts.begin(), parts.end(), [&](const model::PartId& part) {
        return model::kind_word(part.kind) == kind && part.id == id;
    });
    return found != parts.end() ? *found : model::PartId{model::PartKind::plug_in, copied_text(result.subject)};
}

model::PartId part_of(const abi_1::Result& result, const std::vector<model::PartId>& /*named in words alone*/) {
    return {model::PartKind::plug_in, copied_text(result.subject)};
}

template <class Result>
checks::CheckResult copied(const Result& from, const std::vector<model::PartId>& parts) {
    checks::CheckResult result;
    result.part = part_of(from, parts);
    result.clause = copied_text(from.clause);
    result.demand = from.demand;
    result.unit = copied_text(from.unit);
    result.note = format::verbatim(copied_text(from.note));
    for (std::size_t index = 0; index < from.step_count; ++index) {
        const auto& step = from.steps[index];
        const std::string formula = copied_text(step.formula);
        result.steps.push_back({copied_text(step.symbol), format::verbatim(copied_text(step.meaning)), formula,
                                step.value, copied_text(step.unit), copied_text(step.clause),
                                origin_of(step).value_or(checks::Origin::derived), formula.empty()});
    }
    if (from.missing_evidence != 0) {
        result.status = checks::Status::missing_evidence;
        return result;
    }
    result.capacity = from.capacity;
    checks::conclude(result);
    return result;
}

/// Called from inside the plug-in: no exception may pass through it.
template <class Result>
std::int32_t take(void* host, const Result* result) noexcept {
    Collector& collector = *static_cast<Collector*>(host);
    try {
        if (result && collector.results.size() < most_results && sound(*result)) {
            collector.results.push_back(copied(*result, collector.parts));
            return taken;
        }
    } catch (...) {
        collector.refused_any = true;
        return refused;
    }
    collector.refused_any = true;
    return refused;
}

std::vector<checks::CheckResult> without_evidence(format::Phrase why) {
    checks::CheckResult result;
    result.part = {model::PartKind::plug_in, {}};
    result.status = checks::Status::missing_evidence;
    result.note = std::move(why);
    return {result};
}

template <class View, class Result, class Run>
std::vector<checks::CheckResult> run(Run function, const checks::CheckInput& input) {
    const View view(input);
    Collector collector{model::parts(input.resolved.detail), {}, false};
    std::int32_t outcome = 0;
    try {
        outcome = function(&view.detail, take<Result>, &collector);
    } catch (...) {
        return without_evidence(format::phrase("The plug-in's check ended in an exception."));
    }
    if (collector.refused_any)
        return without_evidence(
            format::phrase("The plug-in's check gave a result with a number or a text that cannot be used."));
    if (outcome != 0)
        return without_evidence(format::phrase("The plug-in's check could not be done (code {}).", outcome));
    return std::move(collector.results);
}

template <class View, class Result, class Check>
checks::Check adapted(const Check& check) {
    return {copied_text(check.id), format::verbatim(copied_text(check.title)), copied_text(check.clause),
            format::verbatim(copied_text(check.covers)),
            [function = check.run](const checks::CheckInput& input) { return run<View, Result>(function, input); }};
}

}  // namespace

std::string copied_text(const char* text) {
    if (!text) return {};
    return xml::cleaned(std::string_view(text, ::strnlen(text, longest_text)));
}

checks::Check adapt(const toehold_check& check) {
    return adapted<DetailView<toehold_detail, toehold_anchor, toehold_push>, toehold_result>(check);
}

checks::Check adapt(const abi_1::Check& check) {
    return adapted<DetailView<abi_1::Detail, abi_1::Anchor, abi_1::Push>, abi_1::Result>(check);
}

}  // namespace toehold::plugin
