// Spacing and depth of the joists, with what stands between them.
#include "study/fields/groups.h"

#include "model/base_detail.h"
#include "model/member.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace toehold::study {
namespace {

using format::Phrase;
using format::phrase;
using model::BaseDetail;
using model::Block;
using model::Framing;
using model::Joist;
using model::Joists;

/// Between the two joists about the post, else the two nearest; absent with fewer than two.
std::optional<double> spacing_in(const Joists& joists) {
    std::vector<double> offsets;
    for (const Joist& joist : joists.members) offsets.push_back(joist.offset_in);
    std::sort(offsets.begin(), offsets.end());
    std::optional<double> spacing;
    double nearest = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i + 1 < offsets.size(); ++i) {
        const double off_post = std::abs(0.5 * (offsets[i] + offsets[i + 1]));
        if (off_post >= nearest || !(offsets[i + 1] > offsets[i])) continue;
        nearest = off_post;
        spacing = offsets[i + 1] - offsets[i];
    }
    return spacing;
}

/// How far the joist goes that the end of a block names, or against whose face it stands; 0: it meets none.
double end_move_in(const Framing& before, const Block& block, bool upper_end, double factor) {
    const std::string& named = upper_end ? block.to_end.joist : block.from_end.joist;
    const double end_in = upper_end ? block.to_in : block.from_in;
    for (const model::Member& joist : model::members(before)) {
        if (joist.kind != model::MemberKind::joist) continue;
        const double face_in = joist.across_in + (upper_end ? -0.5 : 0.5) * joist.width_in;
        const bool meets = named.empty() ? std::abs(end_in - face_in) <= model::end_fit_in : named == joist.id;
        if (meets) return (factor - 1.0) * joist.across_in;
    }
    return 0.0;
}

/// Offsets in proportion, so that the post stands where it stood in its bay.
void set_spacing(BaseDetail& detail, double value) {
    const Framing before = detail.framing;
    Joists& joists = *detail.framing.joists;
    const double factor = value / *spacing_in(joists);
    double low = std::numeric_limits<double>::infinity(), high = -low;
    for (Joist& joist : joists.members) {
        low = std::min(low, joist.offset_in);
        high = std::max(high, joist.offset_in);
        joist.offset_in *= factor;
    }
    for (Block& block : detail.framing.blocks) {
        if (block.along == joists.along) continue;
        const double from_by = end_move_in(before, block, false, factor);
        block.to_in += end_move_in(before, block, true, factor);
        block.from_in += from_by;
    }
    for (model::Rim& rim : detail.framing.rims) {
        rim.from_in += (factor - 1.0) * low;
        rim.to_in += (factor - 1.0) * high;
    }
}

void add_spacing(FieldList& list, const Joists& joists) {
    const std::optional<double> now = spacing_in(joists);
    if (!now) return;
    Field field;
    field.id = "joist-spacing";
    field.name = phrase("joist spacing");
    field.help = phrase("Center to center about the post; the others in proportion, blocks and rims as long as fits.");
    field.now = now;
    field.range = {std::min(12.0, *now), std::max(24.0, *now)};
    field.step = 2.0;
    add(list, std::move(field), [](BaseDetail& made, double value) {
        set_spacing(made, value);
        return Phrase();
    });
}

/// Rims and blocks that are as deep as the joists stay so.
void set_depth(BaseDetail& detail, double depth_in) {
    Joists& joists = *detail.framing.joists;
    const double before_in = joists.depth_in;
    joists.depth_in = depth_in;
    joists.size = lumber_name(joists.width_in, depth_in);
    for (model::Rim& rim : detail.framing.rims) {
        if (rim.depth_in != before_in) continue;
        rim.depth_in = depth_in;
        rim.size = lumber_name(rim.width_in, depth_in);
    }
    for (Block& block : detail.framing.blocks) {
        if (block.depth_in != before_in || block.stack != 1) continue;
        block.depth_in = depth_in;
        block.size = lumber_name(block.width_in, depth_in);
    }
}

void add_depth(FieldList& list, const Joists& joists) {
    constexpr double least_in = 5.0, most_in = 11.5;
    std::vector<Size> sizes = lumber_sizes({joists.width_in, joists.depth_in, std::max(most_in, joists.depth_in)});
    std::erase_if(sizes, [&](const Size& size) { return size.value < std::min(least_in, joists.depth_in); });
    if (sizes.size() < 2) return;
    Field field;
    field.id = "joist-depth";
    field.name = phrase("joist depth");
    field.help = phrase("By nominal size; rims and blocks as deep as the joists stay so.");
    field.now = joists.depth_in;
    field.range = {sizes.front().value, sizes.back().value};
    field.sizes = std::move(sizes);
    field.step = 0.0;
    add(list, std::move(field), [](BaseDetail& made, double value) {
        set_depth(made, value);
        return Phrase();
    });
}

}  // namespace

void add_joist_fields(FieldList& list, const Subject& subject) {
    const std::optional<Joists>& joists = subject.resolved.detail.framing.joists;
    if (!joists) return;
    add_spacing(list, *joists);
    add_depth(list, *joists);
}

}  // namespace toehold::study
