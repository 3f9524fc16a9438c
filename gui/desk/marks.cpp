#include "desk/marks.h"

#include "drawing/parts.h"
#include "review/verdict.h"

#include <algorithm>
#include <cmath>

namespace toehold::desk {
namespace {

using drawing::Method;

const std::vector<std::vector<double>>& tensions(const demand::Petals& petals, Method method) {
    return method == Method::flexible ? petals.flexible_lb : petals.rigid_lb;
}

std::optional<double> tension_under_push(const demand::PushResult& push, Method method, std::size_t anchor) {
    if (method == Method::hand) return push.hand_lb[anchor];
    const std::vector<demand::AnchorForce>& forces = method == Method::flexible ? push.flexible : push.rigid;
    if (forces.empty()) return std::nullopt;
    return forces[anchor].tension_lb;
}

/// Whether the method is the one whose forces the checks use.
bool is_design_method(const catalog::Resolved& resolved, Method method) {
    const bool flexible = model::plate_behaviour(resolved.detail.basis) == model::PlateBehaviour::flexible;
    return method == (flexible ? Method::flexible : Method::rigid);
}

const demand::AnchorEnvelope* envelope_of(const review::Review* review, const std::string& id) {
    if (review == nullptr || !review->demand) return nullptr;
    for (std::size_t i = 0; i < review->resolved.anchors.size(); ++i) {
        if (review->resolved.anchors[i].id == id) return &review->demand->anchors[i];
    }
    return nullptr;
}

double largest_tension(const Answers& answers, std::size_t anchor) {
    if (is_design_method(answers.resolved, answers.method)) {
        if (const auto* envelope = envelope_of(answers.review, answers.resolved.anchors[anchor].id))
            return envelope->tension_lb;
    }
    const demand::Petals& petals = answers.quick.petals;
    if (answers.method == Method::hand) return petals.hand_lb[anchor];
    const std::vector<std::vector<double>>& all = tensions(petals, answers.method);
    if (all.empty() || all[anchor].empty()) return 0.0;
    return *std::max_element(all[anchor].begin(), all[anchor].end());
}

bool speaks_of(const checks::CheckResult& check, const std::string& part, const model::BaseDetail& detail) {
    const std::vector<std::string> parts = drawing::parts_of_subject(check.subject, detail);
    return parts.size() == 1 && parts.front() == part;
}

/// A check that holds a capacity against the anchor's largest tension itself is one of its tension.
bool is_of_tension(const checks::CheckResult& check, double tension_lb) {
    constexpr double same = 1e-9;
    return check.unit == "lb" && check.status != checks::Status::missing_evidence &&
           std::abs(check.demand - tension_lb) <= same * tension_lb;
}

/// The review's checks stand worst first, and so the first of them that speaks of the anchor is its worst. A least
/// distance that is kept is no measure of how hard the anchor works.
void add_checks(drawing::AnchorMark& mark, const review::Review& review) {
    const demand::AnchorEnvelope* envelope = envelope_of(&review, mark.id);
    const std::string part = drawing::anchor_part(mark.id);
    double worst_in_tension = -1.0;
    for (const checks::CheckResult& check : review.checks) {
        if (!speaks_of(check, part, review.resolved.detail)) continue;
        if (review::is_dimension(check) && check.status == checks::Status::holds) continue;
        if (mark.worst_check.empty()) {
            mark.worst_check = check.title;
            mark.status = check.status;
        }
        if (check.status != checks::Status::missing_evidence)
            mark.ratio = std::max(mark.ratio.value_or(0.0), check.ratio);
        if (envelope == nullptr || !is_of_tension(check, envelope->tension_lb) || check.ratio <= worst_in_tension)
            continue;
        worst_in_tension = check.ratio;
        mark.capacity_lb = check.capacity;
    }
}

}  // namespace

drawing::AnchorMark mark_of(const Answers& answers, std::size_t anchor) {
    const demand::PushResult& push = answers.quick.push;
    const demand::AnchorForce& force = push.rigid[anchor];
    drawing::AnchorMark mark;
    mark.id = answers.resolved.anchors[anchor].id;
    mark.tension_lb = tension_under_push(push, answers.method, anchor);
    // Every method shares the push among the anchors alike.
    mark.shear_lb = force.shear_lb();
    mark.shear_direction_rad = std::atan2(force.shear_y_lb, force.shear_x_lb);
    mark.largest_tension_lb = largest_tension(answers, anchor);
    if (answers.review != nullptr) add_checks(mark, *answers.review);
    return mark;
}

std::vector<drawing::AnchorMark> marks(const Answers& answers, const catalog::Resolved& shown) {
    std::vector<drawing::AnchorMark> all;
    for (const catalog::Anchor& anchor : shown.anchors) {
        const std::vector<catalog::Anchor>& solved = answers.resolved.anchors;
        const auto known =
            std::find_if(solved.begin(), solved.end(), [&](const catalog::Anchor& one) { return one.id == anchor.id; });
        if (known != solved.end()) {
            all.push_back(mark_of(answers, static_cast<std::size_t>(known - solved.begin())));
        } else {
            all.emplace_back().id = anchor.id;
        }
    }
    return all;
}

drawing::PushShown push_shown(const solving::Quick& quick, bool governing) {
    const demand::LoadCase& load = quick.cases.at(quick.push.load_case);
    return {quick.push.direction_rad, load.push_lb, load.down_lb, load.height_in, governing};
}

std::optional<demand::PlateField> field_shown(const solving::Quick& quick, Method method) {
    switch (method) {
        case Method::hand:
            return std::nullopt;
        case Method::rigid:
            return quick.push.rigid_field;
        case Method::flexible:
            return quick.push.flexible_field;
    }
    return std::nullopt;
}

std::vector<drawing::Petal> petals_of(const Answers& answers) {
    std::vector<drawing::Petal> petals;
    if (answers.method == Method::hand) return petals;
    const std::vector<std::vector<double>>& all = tensions(answers.quick.petals, answers.method);
    for (std::size_t i = 0; i < all.size(); ++i) petals.push_back({answers.resolved.anchors[i].id, all[i]});
    return petals;
}

}  // namespace toehold::desk
