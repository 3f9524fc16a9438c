#include "paper/shop/side/bracket.h"

#include "drawing/annotation/labels.h"

#include <stdexcept>

namespace toehold::paper::shop {
namespace {

model::Plate plate_of(const catalog::Resolved& resolved, const model::SideFastened& mount,
                      const model::BracketPlate& bracket) {
    // Of a post outside the member one looks inward, with x to the left.
    const double right = mount.face == model::MemberFace::outside ? -1.0 : 1.0;
    model::Plate plate;
    plate.name = "Bracket plate";
    plate.metal = bracket.metal;
    plate.thickness_in = bracket.thickness_in;
    plate.outline = model::RectangleOutline{
        bracket.width_in, bracket.height_in, 0.0, {0.0, -bracket.from_top_in - 0.5 * bracket.height_in}};
    for (const catalog::Anchor& anchor : resolved.anchors)
        plate.holes.push_back(
            {anchor.id, {right * anchor.at.x_in, anchor.at.z_in}, model::RoundHole{anchor.hole_diameter_in}});
    return plate;
}

}  // namespace

bool has_made_plate(const model::BaseDetail& detail) {
    const auto* const side = std::get_if<model::SideFastened>(&detail.mount);
    return side == nullptr || side->bracket.has_value();
}

MadePlate made_plate(const catalog::Resolved& resolved) {
    if (kind(resolved.detail.mount) == model::MountKind::plate_on_deck)
        return {on_deck(resolved.detail).plate, on_deck(resolved).plate_metal};
    const model::SideFastened& mount = on_side(resolved.detail);
    if (!mount.bracket) throw std::invalid_argument("the detail has no plate to cut in metal");
    return {plate_of(resolved, mount, *mount.bracket), on_side(resolved).bracket_metal.value_or(catalog::Metal{})};
}

format::Phrase bracket_weld_words(const catalog::Resolved& resolved, units::System system) {
    using format::phrase;
    const model::BracketPlate& bracket = on_side(resolved.detail).bracket.value();
    const format::Phrase words = phrase("fillet {} on both sides of the post, down the plate's height",
                                        drawing::length_figure(bracket.weld_leg_in, system));
    const auto& filler = on_side(resolved).filler;
    return filler ? phrase("{}, {}", words, filler->name) : words;
}

Schedule bracket_hole_schedule(const model::Plate& plate, const format::Locale& locale, std::size_t most_rows) {
    Schedule schedule = hole_schedule(plate, locale, most_rows);
    // The post lies along the plate: it has a center line, and no center.
    schedule.rows.pop_back();
    schedule.notes.front() = format::text(
        format::phrase("x, y from the plate's left and lower edges, seen from the post's side; post at x = {}.",
                       drawing::length_figure(-datum_in(plate.outline).x, locale.system)),
        locale);
    return schedule;
}

}  // namespace toehold::paper::shop
