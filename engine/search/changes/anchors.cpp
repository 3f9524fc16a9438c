#include "search/changes/anchors.h"

#include "resistance/steel/bolt.h"
#include "units/limit.h"

#include <algorithm>

namespace toehold::search {
namespace {

using format::phrase;
using model::AnchorGroup;
using model::BaseDetail;
using Kind = FastenerSize::Kind;

constexpr std::string_view plate_washer = "washer-plate-";
constexpr double most_washer_play_in = 0.1;  ///< of a washer's hole over its fastener

/// `-3` of `washer-plate-1/2-3`: how large it is.
std::string_view tail_of(std::string_view washer) { return washer.substr(std::min(washer.rfind('-'), washer.size())); }

/// What goes with this size in place of the washer there was.
std::string washer_like(const std::optional<model::Washer>& before, const FastenerSize& size) {
    if (!before || !before->size.starts_with(plate_washer)) return size.wide_washer;
    for (const std::string& one : size.plate_washers)
        if (tail_of(one) == tail_of(before->size)) return one;
    return size.wide_washer;
}

FastenerSize sized(Kind kind, const std::string& size, double diameter_in, const catalog::Catalog& catalog) {
    FastenerSize result;
    result.kind = kind;
    result.size = size;
    result.diameter_in = diameter_in;
    result.hole_in = resistance::steel::drilled_in(resistance::steel::standard_hole_in(diameter_in));
    if (kind == Kind::wood_screw) return result;  // its flat head has none
    result.wide_washer = plain_washer(catalog, diameter_in, true);
    for (const catalog::WasherSize& washer : catalog.washers) {
        const bool fits =
            washer.hole_diameter_in > diameter_in && washer.hole_diameter_in < diameter_in + most_washer_play_in;
        if (washer.id.starts_with(plate_washer) && fits) result.plate_washers.push_back(washer.id);
    }
    return result;
}

std::optional<double> screw_length_in(const model::Fastener& fastener) {
    if (const auto* const lag = std::get_if<model::LagScrew>(&fastener)) return lag->length_in;
    if (const auto* const screw = std::get_if<model::WoodScrew>(&fastener)) return screw->length_in;
    return std::nullopt;
}

/// Absent: a screw without a length.
std::optional<model::Fastener> fastener_of(const FastenerSize& size, const model::Fastener& before,
                                           std::optional<double> length_in) {
    if (size.kind == Kind::bolt) {
        model::ThroughBolt bolt;
        bolt.size = size.size;
        bolt.grade = size.grade;
        const auto* const other = std::get_if<model::ThroughBolt>(&before);
        const bool washer = other == nullptr || std::holds_alternative<model::Washer>(other->below) ||
                            std::holds_alternative<std::monostate>(other->below);
        if (!washer) {
            bolt.below = other->below;
        } else if (!size.wide_washer.empty()) {
            const auto* const there = other == nullptr ? nullptr : std::get_if<model::Washer>(&other->below);
            bolt.below = model::Washer{washer_like(there == nullptr ? std::nullopt : std::optional(*there), size)};
        }
        return bolt;
    }
    if (!length_in) length_in = screw_length_in(before);
    if (!length_in) return std::nullopt;
    if (size.kind == Kind::lag_screw) return model::LagScrew{size.size, *length_in, std::nullopt};
    return model::WoodScrew{size.size, *length_in, std::nullopt};
}

Applied set_groups(BaseDetail& detail, const FastenerSize& size, std::optional<double> length_in) {
    for (AnchorGroup& group : anchor_groups(detail)) {
        const std::optional<model::Fastener> fastener = fastener_of(size, group.fastener, length_in);
        if (!fastener) return refused(phrase("a screw in place of a bolt has no length"));
        group.fastener = *fastener;
        if (size.wide_washer.empty()) {
            group.washer.reset();
        } else if (group.washer) {
            group.washer = model::Washer{washer_like(group.washer, size)};
        }
    }
    if (anchor_groups(detail).empty()) return refused(phrase("the detail has no anchors"));
    return {};
}

/// A head on a wood post needs something under it; what fastens a post's side has no hole drilled to a size of its own.
Applied on_the_side(BaseDetail& detail, const FastenerSize& size) {
    if (!std::holds_alternative<model::WoodPost>(detail.post)) return {};
    for (AnchorGroup& group : anchor_groups(detail))
        if (!group.washer && !group.head_plate && !size.wide_washer.empty())
            group.washer = model::Washer{size.wide_washer};
    return {};
}

}  // namespace

std::string plain_washer(const catalog::Catalog& catalog, double diameter_in, bool wide) {
    const std::string_view family = wide ? "washer-wide-" : "washer-narrow-";
    constexpr double least_play_in = 1.0 / 64.0;
    const catalog::WasherSize* least = nullptr;
    for (const catalog::WasherSize& washer : catalog.washers) {
        if (!washer.id.starts_with(family) || washer.hole_diameter_in < diameter_in + least_play_in) continue;
        if (least == nullptr || washer.hole_diameter_in < least->hole_diameter_in) least = &washer;
    }
    return least == nullptr || least->hole_diameter_in > diameter_in + most_washer_play_in ? std::string() : least->id;
}

std::optional<FastenerSize> fastener_size(const catalog::Catalog& catalog, std::string_view size,
                                          std::string_view grade) {
    if (const auto* const row = find(catalog.lag_screws, size))
        return sized(Kind::lag_screw, row->id, row->diameter_in, catalog);
    if (const auto* const row = find(catalog.wood_screws, size))
        return sized(Kind::wood_screw, row->id, row->diameter_in, catalog);
    const catalog::BoltSize* const bolt = find(catalog.bolts, size);
    if (bolt == nullptr || find(catalog.bolt_grades, grade) == nullptr) return std::nullopt;
    FastenerSize result = sized(Kind::bolt, bolt->id, bolt->diameter_in, catalog);
    result.grade = std::string(grade);
    return result;
}

Applied set_fastener(BaseDetail& detail, const FastenerSize& size, std::optional<double> length_in, Holes holes) {
    if (Applied set = set_groups(detail, size, length_in); !set) return set;
    if (kind(detail.mount) == model::MountKind::side_fastened) return on_the_side(detail, size);
    return drill_holes(detail, size.hole_in, holes);
}

Applied set_fastener_in_holes(BaseDetail& detail, const FastenerSize& size, std::optional<double> length_in) {
    constexpr double most_play_in = 1.0 / 32.0;
    for (const model::Hole& hole : on_deck(detail).plate.holes) {
        const double width_in = hole_width_in(hole);
        if (width_in < size.diameter_in) return refused(phrase("the plate's holes are too narrow for it"));
        if (!units::at_most(width_in, size.hole_in + most_play_in))
            return refused(phrase("the plate's holes are more than {} wider than its standard hole",
                                  format::Dimension{most_play_in}));
    }
    return set_groups(detail, size, length_in);
}

Applied set_screw_length(BaseDetail& detail, double length_in) {
    for (AnchorGroup& group : anchor_groups(detail)) {
        if (auto* const lag = std::get_if<model::LagScrew>(&group.fastener)) {
            *lag = model::LagScrew{lag->size, length_in, std::nullopt};
        } else if (auto* const screw = std::get_if<model::WoodScrew>(&group.fastener)) {
            *screw = model::WoodScrew{screw->size, length_in, std::nullopt};
        } else {
            return meaningless(phrase("only screws are tried in several lengths"));
        }
    }
    return {};
}

bool all_bolts(const BaseDetail& detail) {
    const std::vector<AnchorGroup>& groups = anchor_groups(detail);
    return std::all_of(groups.begin(), groups.end(), [](const AnchorGroup& group) {
        return std::holds_alternative<model::ThroughBolt>(group.fastener);
    });
}

void bolts_to_suit(BaseDetail& detail) {
    for (AnchorGroup& group : anchor_groups(detail)) {
        auto* const bolt = std::get_if<model::ThroughBolt>(&group.fastener);
        if (bolt == nullptr || !bolt->length_in) continue;
        bolt->length_in.reset();
        bolt->thread_length_in.reset();
    }
}

Applied set_below(BaseDetail& detail, const decltype(model::ThroughBolt::below)& below) {
    if (!all_bolts(detail))
        return meaningless(kind(detail.mount) == model::MountKind::side_fastened
                               ? phrase("only bolts have a nut behind the member")
                               : phrase("only bolts have a nut below the framing"));
    for (AnchorGroup& group : anchor_groups(detail)) std::get<model::ThroughBolt>(group.fastener).below = below;
    return {};
}

std::string common_size(const BaseDetail& detail) {
    std::string common;
    for (const AnchorGroup& group : anchor_groups(detail)) {
        std::string size;
        if (const auto* const lag = std::get_if<model::LagScrew>(&group.fastener)) size = lag->size;
        if (const auto* const screw = std::get_if<model::WoodScrew>(&group.fastener)) size = screw->size;
        if (const auto* const bolt = std::get_if<model::ThroughBolt>(&group.fastener)) size = bolt->size;
        if (size.empty() || (!common.empty() && size != common)) return {};
        common = size;
    }
    return common;
}

}  // namespace toehold::search
