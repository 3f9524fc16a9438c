#include "wording/stiffness.h"

#include "demand/framing/member_supports.h"
#include "format/figures.h"
#include "model/member.h"
#include "review/review.h"

#include <algorithm>

namespace toehold::wording {
namespace {

using format::Phrase;
using format::phrase;
using format::Quantity;

Stiffness& alike(std::vector<Stiffness>& all, const Quantity& value, const Phrase& source) {
    const auto known = std::find_if(all.begin(), all.end(), [&](const Stiffness& one) {
        return one.value.unit == value.unit && one.source == source &&
               format::number_text(one.value.value) == format::number_text(value.value);
    });
    if (known != all.end()) return *known;
    all.push_back({{}, {}, value, source});
    return all.back();
}

format::Listed names(const Stiffness& stiffness) {
    format::Listed names;
    for (const model::PartId& support : stiffness.beds)
        names.items.push_back(phrase("bed on {}", model::part_name(support)));
    for (const model::PartId& part : stiffness.parts) names.items.push_back(model::part_name(part));
    return names;
}

/// `x 0.67: wood across the grain at E/30 (...)`
Phrase end_of_range(double factor, const Phrase& source) {
    return phrase("x {}: {}", format::ratio_text(factor), source);
}

}  // namespace

std::vector<Phrase> range_sentences(const demand::Demand& demand) {
    std::vector<Phrase> sentences;
    if (const auto& bed = demand.bed_range) {
        sentences.push_back(phrase("Bed stiffness: center, {}; soft end {}; stiff end {}.", bed->central_source,
                                   end_of_range(bed->soft, bed->soft_source),
                                   end_of_range(bed->stiff, bed->stiff_source)));
    }
    if (const auto& anchors = demand.anchor_range) {
        sentences.push_back(phrase("Anchor stiffness: center, {}; soft end {}; stiff end {}.", anchors->central_source,
                                   end_of_range(anchors->soft, anchors->soft_source),
                                   end_of_range(anchors->stiff, anchors->stiff_source)));
    }
    return sentences;
}

std::vector<Stiffness> stiffnesses(const review::Review& review) {
    const demand::Demand& demand = *review.demand;
    std::vector<Stiffness> all;
    for (const demand::Support& support : demand.supports) {
        auto& beds = alike(all, {support.stiffness_psi_per_in, "psi/in"}, support.stiffness_source).beds;
        if (!model::contains(beds, support.part)) beds.push_back(support.part);  // several pieces of packing on one
    }
    for (std::size_t index = 0; index < demand.anchors.size(); ++index) {
        const demand::AnchorEnvelope& envelope = demand.anchors[index];
        alike(all, {envelope.stiffness_lb_per_in, "lb/in"}, envelope.stiffness_source)
            .parts.push_back(model::anchor_part(review.resolved.anchors.at(index).id));
    }
    if (!demand.framing) return all;
    for (const demand::MemberSupport& support : demand.framing->supports) {
        const model::PartId member = model::part_of(model::member(review.resolved.detail.framing, support.member));
        alike(all, {support.stiffness.vertical_lb_per_in, "lb/in"},
              support.stiffness.vertical_is_nominal ? phrase("nominal: no support is specified")
                                                    : support.stiffness.source)
            .parts.push_back(demand::supported_part(support, member));
    }
    return all;
}

std::vector<Phrase> stiffness_sentences(const review::Review& review) {
    std::vector<Phrase> sentences;
    for (const Stiffness& one : stiffnesses(review)) {
        sentences.push_back(one.source.empty() ? phrase("stiffness of {}: {}", names(one), one.value)
                                               : phrase("stiffness of {}: {} [{}]", names(one), one.value, one.source));
    }
    return sentences;
}

}  // namespace toehold::wording
