#include "checks/member/member_bracing.h"

#include "model/member.h"

#include <algorithm>
#include <vector>

namespace toehold::checks {
namespace {

/// Along a joist.
std::vector<double> support_places_in(const model::Framing& framing) {
    std::vector<double> places;
    for (const model::JoistSupport& support : framing.supports) places.push_back(support.at_in);
    return places;
}

/// Along a rim, of the joists fastened to it.
std::vector<double> joist_places_in(const CheckInput& input, std::size_t rim) {
    std::vector<double> places;
    if (!input.demand.framing) return places;
    const std::vector<model::Member> all = model::members(input.resolved.detail.framing);
    for (const demand::Hold& hold : input.demand.framing->holds) {
        if (hold.kind == demand::HoldKind::joist_to_rim && hold.holder == rim)
            places.push_back(all.at(hold.member).across_in);
    }
    return places;
}

std::vector<double> places_in(const CheckInput& input, const model::Member& member, std::size_t index) {
    switch (member.kind) {
        case model::MemberKind::block:
            return {};
        case model::MemberKind::joist:
            return support_places_in(input.resolved.detail.framing);
        case model::MemberKind::rim:
            break;
    }
    return joist_places_in(input, index);
}

}  // namespace

double unsupported_length_in(const CheckInput& input, std::size_t index) {
    const model::Member member = model::member(input.resolved.detail.framing, index);
    std::vector<double> places = places_in(input, member, index);
    if (places.size() < 2) return model::length_in(member);
    places.push_back(member.from_in);
    places.push_back(member.to_in);
    std::sort(places.begin(), places.end());
    double longest = 0.0;
    for (std::size_t i = 1; i < places.size(); ++i) longest = std::max(longest, places[i] - places[i - 1]);
    return longest;
}

}  // namespace toehold::checks
