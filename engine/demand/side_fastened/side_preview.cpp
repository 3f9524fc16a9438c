#include "demand/side_fastened/side_preview.h"

#include "demand/loads/load_cases.h"
#include "demand/preview_pushes.h"
#include "demand/side_fastened/side_assumptions.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace toehold::demand {

SidePreview::SidePreview(const catalog::Resolved& of)
    : resolved_(of),
      cases_(load_cases(resolved_.detail)),
      counting_cases_(cases_that_count(cases_, false)),
      solver_(resolved_, false) {}

State SidePreview::state(std::size_t load_case, double direction_rad) {
    return solver_.solve({acting_load(cases_.at(load_case), direction_rad), {}, direction_rad});
}

std::vector<std::optional<double>> SidePreview::hand_lb(const LoadCase& load, double direction_rad) const {
    std::vector<std::optional<double>> hand(resolved_.anchors.size());
    if (!square_direction(direction_rad) || std::abs(std::cos(direction_rad)) > 0.5) return hand;
    Demand demand;
    demand.cases = {load};
    demand.anchors.resize(resolved_.anchors.size());
    demand.side = side_facts(resolved_, solver_.contact(), {}, demand);
    add_hand_couples(demand, resolved_);
    for (std::size_t i = 0; i < hand.size(); ++i) hand[i] = demand.anchors[i].hand_edge_lb;
    return hand;
}

void SidePreview::add_pushes(PolarEnvelope& polar, std::size_t load_case, std::size_t count) {
    for (const RoseStep step : rose_steps(cases_[load_case], count)) {
        const State found = state(load_case, step.direction_rad);
        for (std::size_t i = 0; i < found.anchors.size(); ++i) {
            double& rigid = polar.rigid_lb[i][step.index];
            double& flexible = polar.flexible_lb[i][step.index];
            rigid = std::max(rigid, found.rigid_tension_lb[i]);
            flexible = std::max(flexible, found.anchors[i].tension_lb);
            keep_largest(polar, found.anchors[i].tension_lb, i, step.direction_rad);
        }
    }
}

PolarEnvelope SidePreview::polar_envelope(int directions) {
    if (directions < fewest_rose_directions)
        throw std::invalid_argument("a rose of tensions needs at least four directions");
    const auto count = static_cast<std::size_t>(directions);
    PolarEnvelope polar;
    polar.rigid_lb.assign(resolved_.anchors.size(), std::vector<double>(count, 0.0));
    polar.flexible_lb = polar.rigid_lb;
    polar.hand_lb.assign(resolved_.anchors.size(), 0.0);
    polar.largest_direction_rad = cases_.at(counting_cases_.at(0)).directions_rad.front();
    for (const std::size_t load_case : counting_cases_) {
        add_pushes(polar, load_case, count);
        for (const RoseStep step : rose_steps(cases_[load_case], fewest_rose_directions)) {
            const std::vector<std::optional<double>> hand = hand_lb(cases_[load_case], step.direction_rad);
            for (std::size_t i = 0; i < hand.size(); ++i)
                polar.hand_lb[i] = std::max(polar.hand_lb[i], hand[i].value_or(0.0));
        }
    }
    return polar;
}

std::size_t SidePreview::worst_case(double direction_rad) {
    std::size_t worst = counting_cases_.at(0);
    double largest = -1.0;
    for (const std::size_t load_case : counting_cases_) {
        for (const AnchorForce& anchor : state(load_case, direction_rad).anchors) {
            if (anchor.tension_lb <= largest) continue;
            largest = anchor.tension_lb;
            worst = load_case;
        }
    }
    return worst;
}

PushResult SidePreview::push(std::size_t load_case, double direction_rad) {
    const State found = state(load_case, direction_rad);
    PushResult result;
    result.load_case = load_case;
    result.direction_rad = direction_rad;
    result.flexible = found.anchors;
    result.rigid = found.anchors;
    for (std::size_t i = 0; i < result.rigid.size(); ++i) result.rigid[i].tension_lb = found.rigid_tension_lb[i];
    result.rigid_field.direction_rad = direction_rad;
    result.hand_lb = hand_lb(cases_[load_case], direction_rad);
    result.supports = solver_.supports();
    result.support_forces = found.supports;
    result.ties_lb = found.ties_lb;
    return result;
}

}  // namespace toehold::demand
