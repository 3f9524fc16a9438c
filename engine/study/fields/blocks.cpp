// The section of the blocks under the anchors, and the boards above them.
#include "study/fields/groups.h"

#include "model/base_detail.h"

#include <algorithm>
#include <limits>

namespace toehold::study {
namespace {

using format::Phrase;
using format::phrase;
using model::BaseDetail;
using model::Block;

bool alike(const Block& one, const Block& other) {
    return one.width_in == other.width_in && one.depth_in == other.depth_in;
}

/// Every block that was like the first; its nominal name follows.
void set_section(BaseDetail& detail, double width_in, double depth_in) {
    const Block first = detail.framing.blocks.front();
    for (Block& block : detail.framing.blocks) {
        if (!alike(block, first)) continue;
        block.width_in = width_in;
        block.depth_in = depth_in;
        block.size = lumber_name(width_in, depth_in);
    }
}

void add_side(FieldList& list, const BaseDetail& detail, bool depth) {
    const Block& first = detail.framing.blocks.front();
    const double joist_in =
        detail.framing.joists ? detail.framing.joists->depth_in / first.stack : std::numeric_limits<double>::infinity();
    const LumberSide side = depth ? LumberSide{first.width_in, first.depth_in, std::max(joist_in, first.depth_in)}
                                  : LumberSide{first.depth_in, first.width_in, std::numeric_limits<double>::infinity()};
    const std::vector<Size> sizes = lumber_sizes(side);
    if (sizes.size() < 2) return;
    Field field;
    field.id = depth ? "block-depth" : "block-width";
    field.name = depth ? phrase("block depth") : phrase("block width (in plan)");
    field.help = phrase("By nominal size, its other side kept; every block like the first.");
    field.now = side.now_in;
    field.sizes = sizes;
    field.range = {sizes.front().value, sizes.back().value};
    field.step = 0.0;
    add(list, std::move(field), [depth](BaseDetail& made, double value) {
        const Block block = made.framing.blocks.front();
        set_section(made, depth ? block.width_in : value, depth ? value : block.depth_in);
        return Phrase();
    });
}

/// The boards of a detail that has some.
model::Decking& boards(BaseDetail& detail) {
    if (kind(detail.mount) == model::MountKind::side_fastened) return on_side(detail).decking.value();
    return on_deck(detail).layers.decking.value();
}

void add_decking(FieldList& list, const BaseDetail& detail) {
    const model::Decking* const decking = model::deck_boards(detail);
    if (decking == nullptr) return;
    Field field;
    field.id = "decking";
    field.name = phrase("decking thickness");
    field.help = kind(detail.mount) == model::MountKind::side_fastened
                     ? phrase("The guard's top is higher above the member by as much as it grows.")
                     : phrase("Anchors of a stated length reach less deep by as much as it grows.");
    field.now = decking->thickness_in;
    field.step = 0.125;
    field.range = about(decking->thickness_in, field.step);
    add(list, std::move(field), [](BaseDetail& made, double value) {
        boards(made).thickness_in = value;
        boards(made).size.clear();
        return Phrase();
    });
}

}  // namespace

void add_block_fields(FieldList& list, const Subject& subject) {
    const BaseDetail& detail = subject.resolved.detail;
    add_decking(list, detail);
    if (detail.framing.blocks.empty()) return;
    add_side(list, detail, true);
    add_side(list, detail, false);
}

}  // namespace toehold::study
