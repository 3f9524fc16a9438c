#include "plugin/adapter.h"

#include "xml/document/characters.h"

#include <fmt/format.h>

#include <cmath>
#include <cstring>
#include <numbers>
#include <utility>

namespace toehold::plugin {
namespace {

constexpr std::size_t longest_text = 2000;
constexpr std::size_t most_steps = 1000;
constexpr std::size_t most_results = 1000;

constexpr std::int32_t taken = 0;
constexpr std::int32_t refused = 1;

/// The detail as a plug-in sees it; the arrays live as long as this.
struct DetailView {
    explicit DetailView(const checks::CheckInput& input) {
        const catalog::Resolved& resolved = input.resolved;
        for (std::size_t index = 0; index < resolved.anchors.size(); ++index) {
            const catalog::Anchor& anchor = resolved.anchors[index];
            const demand::AnchorEnvelope& envelope = input.demand.anchors.at(index);
            anchors.push_back({anchor.id.c_str(), anchor.at.x_in, anchor.at.y_in, anchor.diameter_in,
                               envelope.tension_lb, envelope.shear_lb,
                               envelope.direction_rad * 180.0 / std::numbers::pi});
        }
        for (const demand::LoadCase& load : input.demand.cases)
            pushes.push_back({load.name.c_str(), load.push_lb, load.down_lb, load.height_in});
        detail = {resolved.detail.name.c_str(),
                  resolved.detail.guard.height_in,
                  on_deck(resolved.detail).plate.thickness_in,
                  resolved.detail.basis.method == model::Method::lrfd ? 1 : 0,
                  anchors.data(),
                  anchors.size(),
                  pushes.data(),
                  pushes.size()};
    }

    std::vector<toehold_anchor> anchors;
    std::vector<toehold_push> pushes;
    toehold_detail detail{};
};

struct Collector {
    std::vector<checks::CheckResult> results;
    bool refused_any = false;
};

bool usable(double value) { return std::isfinite(value) && value >= 0.0; }

bool sound(const toehold_step& step) {
    return step.symbol && step.meaning && step.formula && step.unit && step.clause && std::isfinite(step.value);
}

bool sound(const toehold_result& result) {
    if (!result.subject || !result.clause || !result.unit || !result.note) return false;
    if (!usable(result.demand) || !usable(result.capacity)) return false;
    if (result.step_count > most_steps || (result.step_count > 0 && !result.steps)) return false;
    for (std::size_t index = 0; index < result.step_count; ++index) {
        if (!sound(result.steps[index])) return false;
    }
    return true;
}

checks::CheckResult copied(const toehold_result& from) {
    checks::CheckResult result;
    result.subject = copied_text(from.subject);
    result.clause = copied_text(from.clause);
    result.demand = from.demand;
    result.unit = copied_text(from.unit);
    result.note = copied_text(from.note);
    for (std::size_t index = 0; index < from.step_count; ++index) {
        const toehold_step& step = from.steps[index];
        result.steps.push_back({copied_text(step.symbol), copied_text(step.meaning), copied_text(step.formula),
                                step.value, copied_text(step.unit), copied_text(step.clause)});
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
std::int32_t take(void* host, const toehold_result* result) noexcept {
    Collector& collector = *static_cast<Collector*>(host);
    try {
        if (result && collector.results.size() < most_results && sound(*result)) {
            collector.results.push_back(copied(*result));
            return taken;
        }
    } catch (...) {
        collector.refused_any = true;
        return refused;
    }
    collector.refused_any = true;
    return refused;
}

std::vector<checks::CheckResult> without_evidence(std::string why) {
    checks::CheckResult result;
    result.subject = "plug-in";
    result.status = checks::Status::missing_evidence;
    result.note = std::move(why);
    return {result};
}

using RunFunction = decltype(toehold_check::run);

std::vector<checks::CheckResult> run(RunFunction function, const checks::CheckInput& input) {
    const DetailView view(input);
    Collector collector;
    std::int32_t outcome = 0;
    try {
        outcome = function(&view.detail, take, &collector);
    } catch (...) {
        return without_evidence("The plug-in's check ended in an exception.");
    }
    if (collector.refused_any)
        return without_evidence("The plug-in's check gave a result with a number or a text that cannot be used.");
    if (outcome != 0) return without_evidence(fmt::format("The plug-in's check could not be done (code {}).", outcome));
    return std::move(collector.results);
}

}  // namespace

std::string copied_text(const char* text) {
    if (!text) return {};
    return xml::cleaned(std::string_view(text, ::strnlen(text, longest_text)));
}

checks::Check adapt(const toehold_check& check) {
    return {copied_text(check.id), copied_text(check.title), copied_text(check.clause), copied_text(check.covers),
            [function = check.run](const checks::CheckInput& input) { return run(function, input); }};
}

}  // namespace toehold::plugin
