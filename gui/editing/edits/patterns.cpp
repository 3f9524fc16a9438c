// New holes and blocks out of those there are: copies, mirror images, arrays.
#include "editing/edits.h"
#include "editing/edits/result.h"
#include "editing/parts/holes.h"
#include "editing/parts/measures.h"
#include "editing/parts/members.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>
#include <utility>

namespace toehold::editing {
namespace {

using model::BaseDetail;
using model::Hole;
using model::PlanAxis;
using model::Position;

const Phrase too_many = phrase("That would be more holes than a plate may have.");
const Phrase no_hole_selected = phrase("Select a hole first.");
const Phrase all_there = phrase("What this would make is there already.");
const Phrase no_hole_or_block = phrase("Select a hole or a block first.");

/// Adds the hole unless one stands there; then nothing is added to `added`.
void add_unless_there(BaseDetail& detail, const Hole& hole, const std::string& like, std::vector<std::string>& added) {
    if (hole_stands_at(on_deck(detail).plate, hole.center)) return;
    added.push_back(add_hole_like(detail, hole, like));
}

std::vector<model::PartId> anchor_parts(const std::vector<std::string>& holes) {
    std::vector<model::PartId> parts;
    parts.reserve(holes.size());
    for (const std::string& id : holes) parts.push_back(model::anchor_part(id));
    return parts;
}

model::PartId block_part(const std::string& id) { return {model::PartKind::block, id}; }

std::string add_block_copy(BaseDetail& detail, model::Block block) {
    block.id = free_member_id(detail.framing, "B");
    detail.framing.blocks.push_back(block);
    return block.id;
}

/// A copy lies beside its original at least, on the side the step points to.
model::Block beside(model::Block block, Position offset_in) {
    const double across = across_part(block.along, offset_in);
    const double sign = across < 0.0 ? -1.0 : 1.0;
    block.across_in = bounded(block.across_in + sign * std::max(std::abs(across), total_width_in(block)));
    return block;
}

Hole mirrored(Hole hole, MirrorLine line) {
    const bool over_x = line == MirrorLine::x_axis;
    (over_x ? hole.center.y_in : hole.center.x_in) *= -1.0;
    if (auto* slot = std::get_if<model::Slot>(&hole.shape))
        slot->angle_deg = slot_angle(over_x ? -slot->angle_deg : 180.0 - slot->angle_deg);
    return hole;
}

bool lies_across(const model::Block& block, MirrorLine line) {
    return (line == MirrorLine::x_axis) != (block.along == PlanAxis::x);
}

/// Turned end for end where the line lies across it.
model::Block mirrored(const model::Block& block, MirrorLine line) {
    model::Block image = block;
    if (!lies_across(block, line)) {
        image.across_in = -block.across_in;
        return image;
    }
    image.from_in = -block.to_in;
    image.to_in = -block.from_in;
    std::swap(image.from_end, image.to_end);
    return image;
}

/// Each end that named what it meets names what stands where it has come to.
void name_holders(model::Framing& framing, const std::string& id) {
    model::Block& image = *find_block(framing, id);
    for (const bool upper : {false, true}) {
        model::BlockEnd& end = upper ? image.to_end : image.from_end;
        if (end.joist.empty()) continue;
        const std::optional<Face> face = face_at(framing, image, upper, upper ? image.to_in : image.from_in);
        end.joist = face ? face->member : std::string();
    }
}

bool block_lies_there(const model::Framing& framing, const model::Block& image) {
    return std::any_of(framing.blocks.begin(), framing.blocks.end(), [&](const model::Block& block) {
        const Position a = middle(block), b = middle(image);
        return block.along == image.along && std::hypot(a.x_in - b.x_in, a.y_in - b.y_in) < 1e-3;
    });
}

struct Mirroring {
    MirrorLine line;
    bool keep_originals;
};

std::vector<std::string> mirror_holes(BaseDetail& after, const std::vector<std::string>& ids, Mirroring how) {
    std::vector<std::string> made;
    for (const std::string& id : ids) {
        const Hole image = mirrored(*find_hole(on_deck(after).plate, id), how.line);
        if (how.keep_originals) {
            add_unless_there(after, image, id, made);
        } else {
            *find_hole(on_deck(after).plate, id) = image;
            made.push_back(id);
        }
    }
    if (!made.empty()) own_plate(after);
    return made;
}

std::vector<model::PartId> mirror_blocks(BaseDetail& after, const std::vector<std::string>& ids, Mirroring how) {
    std::vector<model::PartId> made;
    for (const std::string& id : ids) {
        const model::Block image = mirrored(*find_block(after.framing, id), how.line);
        if (how.keep_originals && block_lies_there(after.framing, image)) continue;
        std::string made_id = id;
        if (how.keep_originals) {
            made_id = add_block_copy(after, image);
        } else {
            *find_block(after.framing, id) = image;
        }
        if (lies_across(image, how.line)) name_holders(after.framing, made_id);
        made.push_back(block_part(made_id));
    }
    return made;
}

Hole turned(Hole hole, double angle_deg) {
    const double angle = angle_deg * std::numbers::pi / 180.0;
    const Position at = hole.center;
    hole.center = {at.x_in * std::cos(angle) - at.y_in * std::sin(angle),
                   at.x_in * std::sin(angle) + at.y_in * std::cos(angle)};
    if (auto* slot = std::get_if<model::Slot>(&hole.shape)) slot->angle_deg = slot_angle(slot->angle_deg + angle_deg);
    return hole;
}

Edit arrayed(BaseDetail after, const BaseDetail& before, const std::vector<std::string>& holes,
             const std::vector<std::string>& added) {
    if (added.empty()) return refused(before, all_there);
    std::vector<model::PartId> selected = anchor_parts(holes);
    for (const model::PartId& part : anchor_parts(added)) selected.push_back(part);
    return done(std::move(after), phrase("Array {}", things(holes, {})), selected);
}

bool too_many_holes(const BaseDetail& detail, std::size_t originals, double times) {
    return static_cast<double>(on_deck(detail).plate.holes.size()) + static_cast<double>(originals) * (times - 1.0) >
           static_cast<double>(most_holes);
}

}  // namespace

Edit duplicate(const BaseDetail& detail, const std::vector<model::PartId>& parts, Position offset_in) {
    if (!std::isfinite(offset_in.x_in) || !std::isfinite(offset_in.y_in))
        return refused(detail, phrase("A copy needs a distance to its original."));
    const std::vector<std::string> holes = holes_among(detail, parts), blocks = blocks_among(detail, parts);
    if (holes.empty() && blocks.empty()) return refused(detail, no_hole_or_block);
    if (too_many_holes(detail, holes.size(), 2.0)) return refused(detail, too_many);
    BaseDetail after = detail;
    std::vector<std::string> added;
    for (const std::string& id : holes) {
        Hole copy = *find_hole(on_deck(detail).plate, id);
        copy.center = {copy.center.x_in + offset_in.x_in, copy.center.y_in + offset_in.y_in};
        added.push_back(add_hole_like(after, copy, id));
    }
    std::vector<model::PartId> selected = anchor_parts(added), originals;
    for (const std::string& id : blocks) {
        selected.push_back(block_part(add_block_copy(after, beside(*find_block(detail.framing, id), offset_in))));
        originals.push_back(block_part(id));
    }
    return done(std::move(after), phrase("Copy {}", things(holes, originals)), selected);
}

Edit mirror(const BaseDetail& detail, const std::vector<model::PartId>& parts, MirrorLine line, bool keep_originals) {
    const std::vector<std::string> holes = holes_among(detail, parts), blocks = blocks_among(detail, parts);
    if (holes.empty() && blocks.empty()) return refused(detail, no_hole_or_block);
    if (keep_originals && too_many_holes(detail, holes.size(), 2.0)) return refused(detail, too_many);
    BaseDetail after = detail;
    const std::vector<std::string> made_holes = mirror_holes(after, holes, {line, keep_originals});
    const std::vector<model::PartId> made_blocks = mirror_blocks(after, blocks, {line, keep_originals});
    if (made_holes.empty() && made_blocks.empty()) return refused(detail, all_there);
    std::vector<model::PartId> selected = anchor_parts(made_holes), originals;
    selected.insert(selected.end(), made_blocks.begin(), made_blocks.end());
    for (const std::string& id : blocks) originals.push_back(block_part(id));
    return done(std::move(after), phrase("Mirror {}", things(holes, originals)), selected);
}

Edit array(const BaseDetail& detail, const std::vector<model::PartId>& parts, int columns, int rows, double pitch_x_in,
           double pitch_y_in) {
    const std::vector<std::string> holes = holes_among(detail, parts);
    if (holes.empty()) return refused(detail, no_hole_selected);
    if (columns < 1 || rows < 1) return refused(detail, phrase("An array has one column and one row at least."));
    const auto pitched = [](double pitch_in, int count) {
        return std::isfinite(pitch_in) && (count == 1 || pitch_in != 0.0);
    };
    if (!pitched(pitch_x_in, columns) || !pitched(pitch_y_in, rows))
        return refused(detail, phrase("An array needs a pitch between its holes."));
    if (too_many_holes(detail, holes.size(), static_cast<double>(columns) * rows)) return refused(detail, too_many);
    BaseDetail after = detail;
    std::vector<std::string> added;
    for (const std::string& id : holes) {
        for (int row = 0; row < rows; ++row) {
            for (int column = 0; column < columns; ++column) {
                Hole copy = *find_hole(on_deck(detail).plate, id);
                copy.center = {copy.center.x_in + column * pitch_x_in, copy.center.y_in + row * pitch_y_in};
                add_unless_there(after, copy, id, added);
            }
        }
    }
    return arrayed(std::move(after), detail, holes, added);
}

Edit array_round(const BaseDetail& detail, const std::vector<model::PartId>& parts, int count) {
    const std::vector<std::string> holes = holes_among(detail, parts);
    if (holes.empty()) return refused(detail, no_hole_selected);
    if (count < 2) return refused(detail, phrase("An array round the post has two holes at least."));
    if (too_many_holes(detail, holes.size(), count)) return refused(detail, too_many);
    BaseDetail after = detail;
    std::vector<std::string> added;
    for (const std::string& id : holes) {
        for (int index = 1; index < count; ++index)
            add_unless_there(after, turned(*find_hole(on_deck(detail).plate, id), 360.0 * index / count), id, added);
    }
    return arrayed(std::move(after), detail, holes, added);
}

}  // namespace toehold::editing
