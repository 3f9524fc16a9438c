// A pattern of holes as text that can be pasted anywhere: a plate document, whose plate is no more than paper under it.
#include "editing/edits.h"
#include "editing/edits/result.h"
#include "editing/parts/anchor_places.h"
#include "editing/parts/holes.h"
#include "xml/detail/plates_file.h"

#include <algorithm>
#include <cmath>

namespace toehold::editing {
namespace {

using model::BaseDetail;
using model::Hole;
using model::Position;

constexpr double paste_step_in = 0.5;

double reach_in(const Hole& hole) {
    if (const auto* slot = std::get_if<model::Slot>(&hole.shape)) return slot->length_in;
    return std::get<model::RoundHole>(hole.shape).diameter_in;
}

/// Large enough for every hole to lie well inside, wherever it stood on its own plate.
model::RectangleOutline paper_under(const std::vector<Hole>& holes) {
    double half_in = 1.0;
    for (const Hole& hole : holes) {
        const double out_in = std::max(std::abs(hole.center.x_in), std::abs(hole.center.y_in));
        half_in = std::max(half_in, out_in + reach_in(hole) + 1.0);
    }
    return {2.0 * half_in, 2.0 * half_in, 0.0, {}};
}

/// Away from holes that stand where the pattern would come to lie.
Position free_offset(const BaseDetail& detail, const std::vector<Hole>& pattern) {
    const auto taken = [&](double offset_in) {
        return std::any_of(pattern.begin(), pattern.end(), [&](const Hole& hole) {
            return anchor_stands_at(detail, {hole.center.x_in + offset_in, hole.center.y_in + offset_in});
        });
    };
    double offset_in = 0.0;
    while (taken(offset_in)) offset_in += paste_step_in;
    return {offset_in, offset_in};
}

}  // namespace

std::string copy_holes(const BaseDetail& detail, const std::vector<model::PartId>& parts) {
    const model::Plate* const plate = shaped_plate(detail);
    if (plate == nullptr) return {};
    model::Plate pattern = *plate;
    pattern.holes.clear();
    for (const std::string& id : holes_among(detail, parts)) pattern.holes.push_back(*find_hole(*plate, id));
    if (pattern.holes.empty()) return {};
    pattern.id = "holes";
    pattern.name = "Holes";
    pattern.outline = paper_under(pattern.holes);
    return xml::write_plates({pattern});
}

Edit paste_holes(const BaseDetail& detail, const std::string& text) {
    const model::Plate* const plate = shaped_plate(detail);
    if (plate == nullptr)
        return refused(detail, phrase("A pattern of holes goes into a plate, and this post has none."));
    const xml::PlatesRead read = xml::read_plates_text(text, "clipboard");
    if (read.plates.empty()) return refused(detail, phrase("The clipboard holds no pattern of holes."));
    const std::vector<Hole>& pattern = read.plates.front().holes;
    if (plate->holes.size() + pattern.size() > most_anchors)
        return refused(detail, phrase("That would be more holes than a plate may have."));
    BaseDetail after = detail;
    const Position offset = free_offset(detail, pattern);
    std::vector<std::string> added;
    std::vector<model::PartId> selected;
    for (Hole hole : pattern) {
        const std::string like = find_hole(*plate, hole.id) != nullptr ? hole.id : nearest_anchor(detail, hole.center);
        hole.center = {hole.center.x_in + offset.x_in, hole.center.y_in + offset.y_in};
        added.push_back(add_hole_like(after, hole, like));
        selected.push_back(model::anchor_part(added.back()));
    }
    return done(std::move(after), phrase("Paste {}", things(detail, added, {})), selected);
}

}  // namespace toehold::editing
