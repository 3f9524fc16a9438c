// New anchors and blocks out of those there are: copies, mirror images, arrays.
#include "editing/edits.h"
#include "editing/edits/result.h"
#include "editing/parts/anchor_places.h"
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
using model::PlanAxis;
using model::Position;

const Phrase all_there = phrase("What this would make is there already.");

bool has_plate(const BaseDetail& detail) { return shaped_plate(detail) != nullptr; }

Phrase too_many(const BaseDetail& detail) {
    return has_plate(detail) ? phrase("That would be more holes than a plate may have.")
                             : phrase("That would be more fasteners than a post may have.");
}
Phrase none_selected(const BaseDetail& detail) {
    return has_plate(detail) ? phrase("Select a hole first.") : phrase("Select a fastener first.");
}
Phrase no_anchor_or_block(const BaseDetail& detail) {
    return has_plate(detail) ? phrase("Select a hole or a block first.")
                             : phrase("Select a fastener or a block first.");
}

/// Adds the anchor unless one stands there; then nothing is added to `added`, and it returns nothing.
std::optional<std::string> add_unless_there(BaseDetail& detail, const std::string& like, Position at,
                                            std::vector<std::string>& added) {
    if (anchor_stands_at(detail, at)) return std::nullopt;
    added.push_back(copy_anchor(detail, like, at));
    return added.back();
}

/// The slot of that anchor's hole; nullptr where it is in none.
model::Slot* find_slot(BaseDetail& detail, const std::string& id) {
    model::Plate* const plate = shaped_plate(detail);
    model::Hole* const hole = plate == nullptr ? nullptr : find_hole(*plate, id);
    return hole == nullptr ? nullptr : std::get_if<model::Slot>(&hole->shape);
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

Position mirrored(Position at, MirrorLine line) {
    (line == MirrorLine::x_axis ? at.y_in : at.x_in) *= -1.0;
    return at;
}

void mirror_slot(BaseDetail& detail, const std::string& id, MirrorLine line) {
    if (model::Slot* const slot = find_slot(detail, id)) {
        slot->angle_deg = slot_angle(line == MirrorLine::x_axis ? -slot->angle_deg : 180.0 - slot->angle_deg);
    }
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

std::vector<std::string> mirror_anchors(BaseDetail& after, const std::vector<std::string>& ids, Mirroring how) {
    std::vector<std::string> made;
    for (const std::string& id : ids) {
        const Position image = mirrored(anchor_place(after, id).value(), how.line);
        if (how.keep_originals) {
            const auto added = add_unless_there(after, id, image, made);
            if (added) mirror_slot(after, *added, how.line);
        } else {
            put_anchor(after, id, image);
            mirror_slot(after, id, how.line);
            made.push_back(id);
        }
    }
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

Position turned(Position at, double angle_deg) {
    const double angle = angle_deg * std::numbers::pi / 180.0;
    return {at.x_in * std::cos(angle) - at.y_in * std::sin(angle),
            at.x_in * std::sin(angle) + at.y_in * std::cos(angle)};
}

/// A copy stands beside its original in plan; up a post's side below it, in the same line.
Position beside(const BaseDetail& detail, Position at, Position offset_in) {
    if (has_plate(detail)) return {at.x_in + offset_in.x_in, at.y_in + offset_in.y_in};
    return {at.x_in, at.y_in - std::max(std::abs(offset_in.x_in), std::abs(offset_in.y_in))};
}

Edit arrayed(BaseDetail after, const BaseDetail& before, const std::vector<std::string>& holes,
             const std::vector<std::string>& added) {
    if (added.empty()) return refused(before, all_there);
    std::vector<model::PartId> selected = anchor_parts(holes);
    for (const model::PartId& part : anchor_parts(added)) selected.push_back(part);
    return done(std::move(after), phrase("Array {}", things(before, holes, {})), selected);
}

bool is_too_many(const BaseDetail& detail, std::size_t originals, double times) {
    return static_cast<double>(places_of_anchors(detail).size()) + static_cast<double>(originals) * (times - 1.0) >
           static_cast<double>(most_anchors);
}

}  // namespace

Edit duplicate(const BaseDetail& detail, const std::vector<model::PartId>& parts, Position offset_in) {
    if (!std::isfinite(offset_in.x_in) || !std::isfinite(offset_in.y_in))
        return refused(detail, phrase("A copy needs a distance to its original."));
    const std::vector<std::string> anchors = anchors_among(detail, parts), blocks = blocks_among(detail, parts);
    if (anchors.empty() && blocks.empty()) return refused(detail, no_anchor_or_block(detail));
    if (is_too_many(detail, anchors.size(), 2.0)) return refused(detail, too_many(detail));
    BaseDetail after = detail;
    std::vector<std::string> added;
    added.reserve(anchors.size());
    for (const std::string& id : anchors)
        added.push_back(copy_anchor(after, id, beside(detail, anchor_place(detail, id).value(), offset_in)));
    std::vector<model::PartId> selected = anchor_parts(added), originals;
    for (const std::string& id : blocks) {
        selected.push_back(block_part(add_block_copy(after, beside(*find_block(detail.framing, id), offset_in))));
        originals.push_back(block_part(id));
    }
    return done(std::move(after), phrase("Copy {}", things(detail, anchors, originals)), selected);
}

Edit mirror(const BaseDetail& detail, const std::vector<model::PartId>& parts, MirrorLine line, bool keep_originals) {
    const std::vector<std::string> anchors = anchors_among(detail, parts), blocks = blocks_among(detail, parts);
    if (anchors.empty() && blocks.empty()) return refused(detail, no_anchor_or_block(detail));
    if (!anchors.empty() && !has_plate(detail) && line == MirrorLine::x_axis)
        return refused(detail, phrase("A fastener has no mirror image above the member's top edge."));
    if (keep_originals && is_too_many(detail, anchors.size(), 2.0)) return refused(detail, too_many(detail));
    BaseDetail after = detail;
    const std::vector<std::string> made_anchors = mirror_anchors(after, anchors, {line, keep_originals});
    const std::vector<model::PartId> made_blocks = mirror_blocks(after, blocks, {line, keep_originals});
    if (made_anchors.empty() && made_blocks.empty()) return refused(detail, all_there);
    std::vector<model::PartId> selected = anchor_parts(made_anchors), originals;
    selected.insert(selected.end(), made_blocks.begin(), made_blocks.end());
    for (const std::string& id : blocks) originals.push_back(block_part(id));
    return done(std::move(after), phrase("Mirror {}", things(detail, anchors, originals)), selected);
}

Edit array(const BaseDetail& detail, const std::vector<model::PartId>& parts, int columns, int rows, double pitch_x_in,
           double pitch_y_in) {
    const std::vector<std::string> anchors = anchors_among(detail, parts);
    if (anchors.empty()) return refused(detail, none_selected(detail));
    if (columns < 1 || rows < 1) return refused(detail, phrase("An array has one column and one row at least."));
    const auto pitched = [](double pitch_in, int count) {
        return std::isfinite(pitch_in) && (count == 1 || pitch_in != 0.0);
    };
    if (!pitched(pitch_x_in, columns) || !pitched(pitch_y_in, rows))
        return refused(detail, phrase("An array needs a pitch between its holes."));
    if (is_too_many(detail, anchors.size(), static_cast<double>(columns) * rows))
        return refused(detail, too_many(detail));
    // Rows up a post's side are counted down from the member's top edge.
    const double row_in = has_plate(detail) ? pitch_y_in : -pitch_y_in;
    BaseDetail after = detail;
    std::vector<std::string> added;
    for (const std::string& id : anchors) {
        const Position from = anchor_place(detail, id).value();
        for (int row = 0; row < rows; ++row) {
            for (int column = 0; column < columns; ++column)
                add_unless_there(after, id, {from.x_in + column * pitch_x_in, from.y_in + row * row_in}, added);
        }
    }
    return arrayed(std::move(after), detail, anchors, added);
}

Edit array_round(const BaseDetail& detail, const std::vector<model::PartId>& parts, int count) {
    if (!has_plate(detail)) return refused(detail, phrase("Fasteners up a post's side do not stand around it."));
    const std::vector<std::string> anchors = anchors_among(detail, parts);
    if (anchors.empty()) return refused(detail, none_selected(detail));
    if (count < 2) return refused(detail, phrase("An array round the post has two holes at least."));
    if (is_too_many(detail, anchors.size(), count)) return refused(detail, too_many(detail));
    BaseDetail after = detail;
    std::vector<std::string> added;
    for (const std::string& id : anchors) {
        for (int index = 1; index < count; ++index) {
            const double angle_deg = 360.0 * index / count;
            const auto made = add_unless_there(after, id, turned(anchor_place(detail, id).value(), angle_deg), added);
            model::Slot* const slot = made ? find_slot(after, *made) : nullptr;
            if (slot != nullptr) slot->angle_deg = slot_angle(slot->angle_deg + angle_deg);
        }
    }
    return arrayed(std::move(after), detail, anchors, added);
}

}  // namespace toehold::editing
