// A post on a member's side: where its outer rows of fasteners stand, how far it reaches down, and its bracket's plate.
#include "study/fields/groups.h"

#include "model/base_detail.h"
#include "model/follow_joint.h"

#include <algorithm>
#include <cmath>

namespace toehold::study {
namespace {

using format::Phrase;
using format::phrase;
using model::BaseDetail;
using model::SideFastened;
using model::SidePlace;

constexpr double one_row_in = 0.25;  // fasteners this near in height are one row

/// Of the fasteners, down from the member's top edge.
struct Heights {
    double upper_in = 0.0, lower_in = 0.0;
};

Heights heights_of(const SideFastened& mount) {
    const auto [upper, lower] =
        std::minmax_element(mount.places.begin(), mount.places.end(),
                            [](const SidePlace& a, const SidePlace& b) { return a.below_top_in < b.below_top_in; });
    return {upper->below_top_in, lower->below_top_in};
}

/// Every fastener of the row, with the ties that hang there.
Phrase move_row(BaseDetail& detail, double from_in, double to_in) {
    SideFastened& mount = on_side(detail);
    for (SidePlace& place : mount.places)
        if (std::abs(place.below_top_in - from_in) < one_row_in) place.below_top_in = to_in;
    for (model::TensionTie& tie : mount.ties)
        if (std::abs(tie.below_top_in - from_in) < one_row_in) tie.below_top_in = to_in;
    return {};
}

Field height_field(const char* id, Phrase name, double now_in) {
    Field field;
    field.id = id;
    field.name = std::move(name);
    field.help = phrase("Below the top edge of the member the post is fastened to; ties at that height go with them.");
    field.now = now_in;
    field.step = 0.25;
    field.range = about(now_in, field.step);
    return field;
}

void add_rows(FieldList& list, const SideFastened& mount) {
    if (mount.places.empty()) return;
    const Heights now = heights_of(mount);
    if (now.lower_in - now.upper_in < one_row_in) return;
    add(list, height_field("upper-fasteners", phrase("height of the upper fasteners"), now.upper_in),
        [](BaseDetail& made, double value) {
            const Heights before = heights_of(on_side(made));
            if (!(value < before.lower_in)) return phrase("the rows of fasteners would meet");
            return move_row(made, before.upper_in, value);
        });
    add(list, height_field("lower-fasteners", phrase("height of the lower fasteners"), now.lower_in),
        [](BaseDetail& made, double value) {
            const Heights before = heights_of(on_side(made));
            if (!(value > before.upper_in)) return phrase("the rows of fasteners would meet");
            return move_row(made, before.lower_in, value);
        });
}

void add_overlap(FieldList& list, const SideFastened& mount) {
    Field field;
    field.id = "post-bottom";
    field.name = phrase("post's lower end");
    field.help = phrase("Below the top edge of the member the post is fastened to; the fasteners stay.");
    field.now = mount.post_bottom_below_top_in;
    field.step = 0.5;
    field.range = about(mount.post_bottom_below_top_in, field.step);
    add(list, std::move(field), [](BaseDetail& made, double value) {
        on_side(made).post_bottom_below_top_in = value;
        return Phrase();
    });
}

void add_bracket(FieldList& list, const SideFastened& mount) {
    if (!mount.bracket) return;
    constexpr double least_in = 0.1875, most_in = 0.75;
    Field field;
    field.id = "bracket-thickness";
    field.name = phrase("bracket plate thickness");
    field.help = phrase("Anchors of a stated length reach less deep by as much as it grows.");
    field.now = mount.bracket->thickness_in;
    field.step = 0.0625;
    field.range = {std::min(least_in, *field.now), std::max(most_in, *field.now)};
    add(list, std::move(field), [](BaseDetail& made, double value) {
        const model::SideJoint before = model::side_joint(made);
        on_side(made).bracket->thickness_in = value;
        model::framing_follows(made, before);
        return Phrase();
    });
}

}  // namespace

void add_side_fields(FieldList& list, const Subject& subject) {
    const auto* const mount = std::get_if<SideFastened>(&subject.resolved.detail.mount);
    if (mount == nullptr) return;
    add_rows(list, *mount);
    add_overlap(list, *mount);
    add_bracket(list, *mount);
}

}  // namespace toehold::study
