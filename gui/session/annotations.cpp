#include "session/annotations.h"

#include "catalog/resolve.h"
#include "demand/preview.h"
#include "drawing/annotation/anchor_marks.h"
#include "drawing/annotation/side_forces.h"
#include "editing/sheet_words.h"
#include "solving/solve_service.h"

#include <algorithm>
#include <cmath>

namespace toehold::session {
namespace {

using drawing::Method;

const std::vector<std::vector<double>>& tensions(const demand::PolarEnvelope& polar, Method method) {
    return method == Method::flexible ? polar.flexible_lb : polar.rigid_lb;
}

std::optional<double> tension_under_push(const demand::PushResult& push, Method method, std::size_t anchor) {
    if (method == Method::hand) return push.hand_lb[anchor];
    const std::vector<demand::AnchorForce>& forces = method == Method::flexible ? push.flexible : push.rigid;
    if (forces.empty()) return std::nullopt;
    return forces[anchor].tension_lb;
}

double largest_tension(const Answers& answers, std::size_t anchor) {
    if (answers.method == editing::design_method(answers.resolved.detail)) {
        const demand::AnchorEnvelope* envelope =
            answers.review == nullptr ? nullptr
                                      : drawing::envelope_of(*answers.review, answers.resolved.anchors[anchor].id);
        if (envelope != nullptr) return envelope->tension_lb;
    }
    const demand::PolarEnvelope& polar = answers.quick.polar;
    if (answers.method == Method::hand) return polar.hand_lb[anchor];
    const std::vector<std::vector<double>>& all = tensions(polar, answers.method);
    if (all.empty() || all[anchor].empty()) return 0.0;
    return *std::max_element(all[anchor].begin(), all[anchor].end());
}

}  // namespace

drawing::AnchorMark mark_of(const Answers& answers, std::size_t anchor) {
    const demand::PushResult& push = answers.quick.push;
    const demand::AnchorForce& force = push.rigid[anchor];
    // Every method shares the push among the anchors alike.
    const drawing::ShownForce shown{tension_under_push(push, answers.method, anchor), force.shear_x_lb,
                                    force.shear_y_lb, largest_tension(answers, anchor)};
    return drawing::anchor_mark(answers.resolved.anchors[anchor].id, shown, answers.review);
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
            all.emplace_back().part = model::anchor_part(anchor.id);
        }
    }
    return all;
}

drawing::PushShown push_shown(const solving::Quick& quick, bool governing) {
    const demand::ActingLoad load = demand::acting_load(quick.cases.at(quick.push.load_case), quick.push.direction_rad);
    return {quick.push.direction_rad, load.push_lb, load.down_lb, load.height_in, governing};
}

std::optional<demand::DeflectedShape> field_shown(const solving::Quick& quick, Method method) {
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

void show_bearing(drawing::Overlay& overlay, const Answers& answers) {
    const demand::PushResult& push = answers.quick.push;
    if (answers.method != editing::design_method(answers.resolved.detail)) return;
    drawing::show_face_forces(overlay, push.supports, push.support_forces);
    overlay.ties_lb = push.ties_lb;
}

std::vector<drawing::PolarCurve> polar_curves_of(const Answers& answers) {
    std::vector<drawing::PolarCurve> curves;
    if (answers.method == Method::hand) return curves;
    const std::vector<std::vector<double>>& all = tensions(answers.quick.polar, answers.method);
    for (std::size_t i = 0; i < all.size(); ++i)
        curves.push_back({model::anchor_part(answers.resolved.anchors[i].id), all[i]});
    return curves;
}

}  // namespace toehold::session
