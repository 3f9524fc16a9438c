#include "demand/plate_on_deck/bed.h"

#include "demand/anchor_stiffness.h"
#include "demand/plate_on_deck/packing.h"
#include "mechanics/plane/area_moments.h"
#include "model/placement.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace toehold::demand {
namespace {

constexpr double no_area_in2 = 1e-6;

std::vector<model::Position> positions(const mechanics::Polygon& polygon) {
    std::vector<model::Position> corners;
    for (const mechanics::Point corner : polygon) corners.push_back({corner.x, corner.y});
    return corners;
}

class BedBuilder {
  public:
    explicit BedBuilder(const catalog::Resolved& resolved)
        : resolved_(resolved), outline_(outline(on_deck(resolved.detail).plate)), pieces_(packing_pieces(resolved)) {}

    void add_member(std::size_t index, const model::Member& member) {
        const Stiffness stiffness =
            bed_stiffness(resolved_, catalog::wood(resolved_, index).grade.modulus_psi, member.depth_in);
        const model::PlanRectangle place = model::plan(member);
        if (!on_deck(resolved_.detail).layers.packing) {
            add(SupportKind::member, index, model::part_of(member),
                mechanics::clip_rectangle(outline_, place.x_min_in, place.x_max_in, place.y_min_in, place.y_max_in),
                stiffness);
            return;
        }
        for (const PackingPiece& piece : pieces_) {
            const model::PlanRectangle& covers = piece.covers;
            add(SupportKind::member, index, model::part_of(member),
                mechanics::clip_rectangle(
                    outline_, std::max(place.x_min_in, covers.x_min_in), std::min(place.x_max_in, covers.x_max_in),
                    std::max(place.y_min_in, covers.y_min_in), std::min(place.y_max_in, covers.y_max_in)),
                {piece.solid * stiffness.value, stiffness.source}, true);
        }
    }

    void add_layers_alone() {
        add(SupportKind::open_bed, 0, {model::PartKind::decking}, outline_, bed_stiffness(resolved_, 0.0, 0.0));
    }

    [[nodiscard]] bool empty() const { return bed_.patches.empty(); }
    [[nodiscard]] double unsupported_in2() const { return mechanics::moments(outline_).area - supported_in2_; }
    [[nodiscard]] Bed& bed() { return bed_; }

  private:
    void add(SupportKind kind, std::size_t index, const model::PartId& part, mechanics::Polygon polygon,
             const Stiffness& stiffness, bool packing = false) {
        const double area = mechanics::moments(polygon).area;
        if (area <= no_area_in2 || stiffness.value <= 0.0) return;
        const auto& fixed = resolved_.detail.basis.stiffness;
        const double value = fixed ? fixed->bed_psi_per_in : stiffness.value;
        supported_in2_ += area;
        bed_.supports.push_back({kind, index, part, value,
                                 fixed ? format::phrase("fixed by the user: {}", fixed->reason) : stiffness.source,
                                 positions(polygon), packing});
        bed_.patches.push_back({std::move(polygon), value});
    }

    const catalog::Resolved& resolved_;
    mechanics::Polygon outline_;
    std::vector<PackingPiece> pieces_;
    double supported_in2_ = 0.0;
    Bed bed_;
};

}  // namespace

mechanics::Polygon outline(const model::Plate& plate) {
    mechanics::Polygon polygon;
    for (const model::Position corner : model::polygon(plate.outline)) polygon.push_back({corner.x_in, corner.y_in});
    return polygon;
}

Bed find_bed(const catalog::Resolved& resolved) {
    BedBuilder builder(resolved);
    const std::vector<model::Member> members = model::members(resolved.detail.framing);
    for (std::size_t index = 0; index < members.size(); ++index) builder.add_member(index, members[index]);
    if (builder.empty()) {
        builder.add_layers_alone();
        if (!builder.empty()) {
            builder.bed().assumptions.push_back(
                format::phrase("No block or joist is under the plate. Only to show a demand, the plate is taken to "
                               "bear on its layers as if on solid ground."));
        }
    } else if (on_deck(resolved.detail).layers.packing) {
        builder.bed().assumptions.push_back(
            format::phrase("The plate bears on the packing alone, where framing is under it. The decking is given no "
                           "bearing, and anchors cross its thickness as a gap."));
    } else if (builder.unsupported_in2() > no_area_in2) {
        builder.bed().assumptions.push_back(
            format::phrase("Decking under the plate with no block or joist below it is given no bearing."));
    }
    return std::move(builder.bed());
}

}  // namespace toehold::demand
