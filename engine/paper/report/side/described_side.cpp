#include "paper/report/side/described_side.h"

#include "format/figures.h"
#include "model/member.h"
#include "paper/words.h"

#include <algorithm>
#include <cmath>

namespace toehold::paper::report {
namespace {

using format::Dimension;
using format::Phrase;
using format::phrase;
using format::Quantity;

Phrase member_name(const model::BaseDetail& detail, const std::string& id) {
    const auto number = model::find_member(detail.framing, id);
    if (!number) return format::verbatim(id);
    return model::part_name(model::part_of(model::member(detail.framing, *number)));
}

/// Above the member's top edge, or below it.
Phrase height_words(double below_top_in) {
    if (below_top_in == 0.0) return phrase("level with its top edge");
    return below_top_in < 0.0 ? phrase("{} above its top edge", Dimension{-below_top_in})
                              : phrase("{} below its top edge", Dimension{below_top_in});
}

Phrase fastened_words(const model::BaseDetail& detail) {
    const model::SideFastened& mount = on_side(detail);
    Phrase words = phrase("against the {}; lower end of the post {}", face_words(detail),
                          height_words(mount.post_bottom_below_top_in));
    if (!mount.notch) return words;
    return phrase("{}; notched {} deep, shoulder {}", words, Dimension{mount.notch->depth_in},
                  height_words(mount.notch->below_top_in));
}

Phrase bracket_weld_words(const catalog::Resolved& resolved) {
    const model::BracketPlate& bracket = *on_side(resolved.detail).bracket;
    const Phrase words =
        phrase("fillet {}, on both sides of the post, down the plate's height", Dimension{bracket.weld_leg_in});
    const auto& filler = on_side(resolved).filler;
    return filler ? phrase("{}, {}", words, filler->name) : words;
}

Phrase layer_words(const catalog::Resolved& resolved, std::size_t index) {
    const model::SideLayer& layer = on_side(resolved.detail).layers.at(index);
    const auto& materials = on_side(resolved).layers;
    const std::string& name = index < materials.size() ? materials[index].name : layer.material;
    const Phrase words = phrase("{}, {} thick", name, Dimension{layer.thickness_in});
    if (!layer.from_below_top_in && !layer.to_below_top_in) return phrase("{}, over all of the overlap", words);
    if (!layer.to_below_top_in) return phrase("{}, from {} down", words, height_words(*layer.from_below_top_in));
    return phrase("{}, from {} to {} below that edge", words, height_words(layer.from_below_top_in.value_or(0.0)),
                  Dimension{*layer.to_below_top_in});
}

/// `A 2 1/4 in below the top, 1 in right`: seen as in plan.
Phrase place_words(const model::SidePlace& place) {
    constexpr double on_axis_in = 1e-6;
    const Dimension down{place.below_top_in};
    if (std::abs(place.x_in) < on_axis_in) return phrase("{} {} below it, on the post's axis", place.id, down);
    return phrase("{} {} below it, at x = {}", place.id, down, Dimension{place.x_in});
}

Phrase places_words(const model::SideFastened& mount) {
    format::Listed all;
    for (const model::SidePlace& place : mount.places) all.items.push_back(place_words(place));
    if (all.items.empty()) return phrase("none specified");
    return phrase("from the top edge of the member: {}", std::move(all));
}

Phrase tie_words(const model::BaseDetail& detail, const model::TensionTie& tie) {
    const Phrase report = !tie.chosen          ? phrase("the least it must have; not chosen yet")
                          : tie.report.empty() ? phrase("no source")
                                               : format::verbatim(tie.report);
    Phrase words = phrase("{} (values: {}): tension {}, at which it gives {}; line of force {}, at x = {}; back to {}",
                          tie.name, report, Quantity{tie.tension_lb, "lb"}, Dimension{tie.deflection_in},
                          height_words(tie.below_top_in), Dimension{tie.x_in}, member_name(detail, tie.into));
    if (!tie.bolt.empty()) words = phrase("{}; on bolt {}", std::move(words), tie.bolt);
    if (tie.eccentricity_in > 0.0)
        words = phrase("{}, {} off its face", std::move(words), Dimension{tie.eccentricity_in});
    return words;
}

Phrase stringer_words(const model::StringerSlope& slope) {
    const Phrase words = phrase("slope {} deg, rising toward +x; effective depth {} square to the slope",
                                format::degrees_text(slope.angle_deg), Dimension{slope.effective_depth_in});
    return slope.braced_by.empty() ? phrase("{}; what braces it sideways is not specified", words)
                                   : phrase("{}; braced sideways by {}", words, slope.braced_by);
}

}  // namespace

Phrase face_words(const model::BaseDetail& detail) {
    const model::SideFastened& mount = on_side(detail);
    const Phrase member = member_name(detail, mount.member);
    return mount.face == model::MemberFace::outside ? phrase("outside face of {}", member)
                                                    : phrase("inside face of {}", member);
}

Phrase bracket_words(const catalog::Resolved& resolved) {
    const model::BracketPlate& bracket = on_side(resolved.detail).bracket.value();
    const auto& metal = on_side(resolved).bracket_metal;
    return phrase("{} wide, {} high, {} thick, {}; upper edge {}; holes {} over the fasteners",
                  Dimension{bracket.width_in}, Dimension{bracket.height_in}, Dimension{bracket.thickness_in},
                  metal ? metal->name : bracket.metal, height_words(bracket.from_top_in),
                  Dimension{bracket.hole_over_in});
}

Phrase side_carries(const catalog::Resolved& resolved, const Phrase& post, const Phrase& anchors) {
    const model::SideFastened& mount = on_side(resolved.detail);
    Phrase words =
        mount.bracket
            ? phrase("What carries: post, {}; bracket plate {} thick, on the {}; anchors, {}.", post,
                     Dimension{mount.bracket->thickness_in}, face_words(resolved.detail), anchors)
            : phrase("What carries: post, {}, on the {}; anchors, {}.", post, face_words(resolved.detail), anchors);
    if (mount.ties.empty()) return words;
    format::Listed ties;
    for (const model::TensionTie& tie : mount.ties)
        ties.items.push_back(phrase("{} back to {}", tie.id, member_name(resolved.detail, tie.into)));
    return phrase("{} Ties: {}.", std::move(words), std::move(ties));
}

Described side_described(const catalog::Resolved& resolved) {
    const model::BaseDetail& detail = resolved.detail;
    const model::SideFastened& mount = on_side(detail);
    Described rows{{phrase("Post"), post_words(resolved)}, {phrase("Fastened"), fastened_words(detail)}};
    if (mount.stringer) rows.emplace_back(phrase("Stringer"), stringer_words(*mount.stringer));
    if (mount.bracket) {
        rows.emplace_back(phrase("Bracket plate"), bracket_words(resolved));
        rows.emplace_back(phrase("Weld"), bracket_weld_words(resolved));
    }
    for (std::size_t index = 0; index < mount.layers.size(); ++index)
        rows.emplace_back(phrase("Between, {}", index + 1), layer_words(resolved, index));
    rows.emplace_back(phrase("Places"), places_words(mount));
    for (const model::TensionTie& tie : mount.ties) rows.emplace_back(phrase("Tie {}", tie.id), tie_words(detail, tie));
    if (mount.decking)
        rows.emplace_back(phrase("Board fasteners"), mount.boards_brace_member
                                                         ? phrase("counted against the member's top moving sideways")
                                                         : phrase("not counted as a brace of the member"));
    return rows;
}

}  // namespace toehold::paper::report
