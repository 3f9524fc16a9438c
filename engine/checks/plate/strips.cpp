#include "checks/plate/strips.h"

#include "catalog/resolve.h"
#include "demand/plate_on_deck/bed.h"

#include <algorithm>
#include <limits>
#include <span>
#include <utility>

namespace toehold::checks {
namespace {

using mechanics::PlateSection;
using mechanics::PlateStrip;

std::vector<mechanics::Shape> patch_outlines(const CheckInput& input) {
    const demand::Bed bed = demand::find_bed(input.resolved);
    std::vector<mechanics::Shape> outlines;
    // Supports that are not this bed's (a demand made otherwise) have no outline here; their force is concentrated.
    if (bed.patches.size() != input.demand.supports.size()) return outlines;
    for (const mechanics::BedPatch& patch : bed.patches) outlines.emplace_back(patch.outline);
    return outlines;
}

/// Strips that merge are wider than each alone, and carry no more than all anchors' moments.
std::vector<double> at_most_for_tension(const PlateSection& section,
                                        const std::vector<mechanics::AnchorFootprint>& all) {
    std::vector<double> needed;
    double narrowest_in = std::numeric_limits<double>::infinity();
    for (std::size_t anchor = 0; anchor < all.size(); ++anchor) {
        std::vector<double> pound(all.size(), 0.0);
        pound[anchor] = 1.0;
        const std::vector<PlateStrip> alone = mechanics::anchor_strips(section, pound, all);
        needed.push_back(alone.empty() ? 0.0 : alone.front().moment_lb_in);
        if (!alone.empty()) narrowest_in = std::min(narrowest_in, alone.front().width_in);
    }
    for (double& one : needed) {
        if (one > 0.0) one = narrowest_in > 0.0 ? one / narrowest_in : std::numeric_limits<double>::infinity();
    }
    return needed;
}

StripPlace place_at(const PlateSection& section, const PlateStrips& strips) {
    StripPlace place{section, {}};
    for (const mechanics::Shape& patch : strips.patches)
        place.areas.push_back(mechanics::area_at_section(section, patch));
    if (!section.anchor) place.at_most_for_tension = at_most_for_tension(section, strips.geometry.anchors);
    return place;
}

/// A strip that may be the worst.
struct Candidate {
    double at_most_lb = 0.0;
    std::size_t state = 0, place = 0;
};

/// The worst strip of all candidates, the most promising looked at first; of equal ones the first state's first place.
/// `strip_at(candidate)` -> PlateStrip.
template <class StripAt>
GoverningStrip worst_of(std::vector<Candidate> candidates, const PlateStrips& strips, StripAt&& strip_at) {
    constexpr double rounding = 1.0 + 1e-9;
    const auto less = [](const Candidate& a, const Candidate& b) { return a.at_most_lb < b.at_most_lb; };
    std::make_heap(candidates.begin(), candidates.end(), less);
    PlateStrip worst;
    const auto before = [](const Candidate& a, const Candidate& b) {
        return std::pair(a.state, a.place) < std::pair(b.state, b.place);
    };
    std::optional<Candidate> at;
    while (!candidates.empty() && rounding * candidates.front().at_most_lb >= worst.intensity_lb()) {
        std::pop_heap(candidates.begin(), candidates.end(), less);
        const Candidate one = candidates.back();
        candidates.pop_back();
        PlateStrip strip = strip_at(one);
        if (!(strip.moment_lb_in > 0.0)) continue;
        const double intensity = strip.intensity_lb(), most = worst.intensity_lb();
        if (at && (intensity < most || (intensity == most && !before(one, *at)))) continue;
        worst = std::move(strip);
        at = one;
    }
    if (!at) return {};
    return {std::move(worst), strips.places[at->place].section, at->state};
}

/// What presses under the plate in every state, and as planes where somebody asks.
class Bearing {
  public:
    Bearing(const demand::Demand& demand, const PlateStrips& strips) : strips_(strips), planes_(demand.states.size()) {
        for (const demand::State& state : demand.states) forces_.push_back(bearing_of(state));
    }

    /// Of the places through an anchor, or of the others.
    [[nodiscard]] std::vector<Candidate> candidates(bool through_anchors) const {
        std::vector<Candidate> all;
        for (std::size_t place = 0; place < strips_.places.size(); ++place) {
            const StripPlace& at = strips_.places[place];
            if (at.section.anchor.has_value() != through_anchors) continue;
            for (std::size_t state = 0; state < forces_.size(); ++state) {
                const double most = mechanics::greatest_intensity_lb(at.section, at.areas, forces_[state]);
                if (most > 0.0) all.push_back({most, state, place});
            }
        }
        return all;
    }

    [[nodiscard]] PlateStrip strip(const Candidate& at) {
        const StripPlace& place = strips_.places[at.place];
        std::optional<std::vector<mechanics::PlanePressure>>& plane = planes_[at.state];
        if (!plane) plane = mechanics::plane_pressures(forces_[at.state], strips_.patches);
        return mechanics::bearing_strip(place.section, place.areas, forces_[at.state], *plane);
    }

  private:
    const PlateStrips& strips_;
    std::vector<std::vector<mechanics::PatchForce>> forces_;
    std::vector<std::optional<std::vector<mechanics::PlanePressure>>> planes_;
};

double at_most_lb(const StripPlace& place, const demand::State& state) {
    double most = 0.0;
    for (std::size_t anchor = 0; anchor < place.at_most_for_tension.size(); ++anchor) {
        const double tension_lb = state.anchors[anchor].tension_lb;
        if (tension_lb > 0.0) most += place.at_most_for_tension[anchor] * tension_lb;
    }
    return most;
}

GoverningStrip worst_anchors(const demand::Demand& demand, const PlateStrips& strips, std::size_t first,
                             std::size_t end) {
    std::vector<Candidate> candidates;
    for (std::size_t place = 0; place < strips.places.size(); ++place) {
        if (strips.places[place].section.anchor) continue;
        for (std::size_t state = first; state < end; ++state) {
            const double most = at_most_lb(strips.places[place], demand.states[state]);
            if (most > 0.0) candidates.push_back({most, state, place});
        }
    }
    return worst_of(std::move(candidates), strips, [&](const Candidate& at) {
        PlateStrip worst;
        for (PlateStrip& strip : mechanics::anchor_strips(
                 strips.places[at.place].section, tensions_of(demand.states[at.state]), strips.geometry.anchors)) {
            if (strip.intensity_lb() > worst.intensity_lb()) worst = std::move(strip);
        }
        return worst;
    });
}

}  // namespace

PlateStrips plate_strips(const CheckInput& input, const PostFoot& foot) {
    PlateStrips strips{plate_geometry(input.resolved, foot), patch_outlines(input), {}};
    const PlateGeometry& geometry = strips.geometry;
    std::vector<mechanics::Point> centers;
    for (const mechanics::AnchorFootprint& anchor : geometry.anchors) centers.push_back(anchor.center);
    for (const PlateSection& section : mechanics::tangent_sections(geometry.foot, geometry.plate))
        strips.places.push_back(place_at(section, strips));
    for (const PlateSection& section : mechanics::anchor_sections(geometry.foot, geometry.plate, centers))
        strips.places.push_back(place_at(section, strips));
    return strips;
}

WorstStrips worst_strips(const demand::Demand& demand, const PlateStrips& strips) {
    Bearing bearing(demand, strips);
    const auto strip_at = [&](const Candidate& at) { return bearing.strip(at); };
    return {worst_anchors(demand, strips, 0, demand.states.size()),
            worst_of(bearing.candidates(false), strips, strip_at),
            worst_of(bearing.candidates(true), strips, strip_at)};
}

GoverningStrip worst_anchor_strip(const demand::Demand& demand, const PlateStrips& strips, std::size_t state) {
    return worst_anchors(demand, strips, state, state + 1);
}

}  // namespace toehold::checks
