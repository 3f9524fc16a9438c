#include "demand/bed.h"

#include "demand/stiffness.h"
#include "model/placement.h"

#include <cmath>
#include <optional>

namespace toehold::demand {
namespace {

constexpr double no_area_in2 = 1e-6;

class BedBuilder {
  public:
    explicit BedBuilder(const catalog::Resolved& resolved)
        : resolved_(resolved), outline_(outline(resolved.detail.plate)) {}

    void add_member(SupportKind kind, std::size_t index, const model::PlanRectangle& rectangle, double modulus_psi,
                    double depth_in) {
        add(kind, index, rectangle.id,
            mechanics::clip_rectangle(outline_, rectangle.x_min_in, rectangle.x_max_in, rectangle.y_min_in,
                                      rectangle.y_max_in),
            bed_stiffness(resolved_, modulus_psi, depth_in));
    }

    void add_layers_alone() { add(SupportKind::open_bed, 0, "decking", outline_, bed_stiffness(resolved_, 0.0, 0.0)); }

    [[nodiscard]] bool empty() const { return bed_.patches.empty(); }
    [[nodiscard]] double unsupported_in2() const { return mechanics::moments(outline_).area - supported_in2_; }
    [[nodiscard]] Bed& bed() { return bed_; }

  private:
    void add(SupportKind kind, std::size_t index, const std::string& id, mechanics::Polygon polygon,
             const Stiffness& stiffness) {
        const double area = mechanics::moments(polygon).area;
        if (area <= no_area_in2 || stiffness.value <= 0.0) return;
        const auto& fixed = resolved_.detail.basis.stiffness;
        const double value = fixed ? fixed->bed_psi_per_in : stiffness.value;
        supported_in2_ += area;
        bed_.supports.push_back(
            {kind, index, id, value, fixed ? "fixed by the user: " + fixed->reason : stiffness.source});
        bed_.patches.push_back({std::move(polygon), value});
    }

    const catalog::Resolved& resolved_;
    mechanics::Polygon outline_;
    double supported_in2_ = 0.0;
    Bed bed_;
};

}  // namespace

model::PlanRectangle plan(const model::Joists& joists, const model::Joist& joist) {
    const double half = 0.5 * joists.width_in;
    const double far = beyond_any_plate_in;
    if (joists.along == model::PlanAxis::x)
        return {joist.id, -far, far, joist.offset_in - half, joist.offset_in + half};
    return {joist.id, joist.offset_in - half, joist.offset_in + half, -far, far};
}

mechanics::Polygon outline(const model::Plate& plate) {
    mechanics::Polygon polygon;
    for (const model::Position corner : model::polygon(plate.outline)) polygon.push_back({corner.x_in, corner.y_in});
    return polygon;
}

Bed find_bed(const catalog::Resolved& resolved) {
    BedBuilder builder(resolved);
    const model::Framing& framing = resolved.detail.framing;
    for (std::size_t index = 0; index < framing.blocks.size(); ++index) {
        const model::Block& block = framing.blocks[index];
        builder.add_member(SupportKind::block, index, model::plan(block), resolved.blocks.at(index).grade.modulus_psi,
                           block.depth_in);
    }
    if (framing.joists && resolved.joists) {
        for (std::size_t index = 0; index < framing.joists->members.size(); ++index) {
            builder.add_member(SupportKind::joist, index, plan(*framing.joists, framing.joists->members[index]),
                               resolved.joists->grade.modulus_psi, framing.joists->depth_in);
        }
    }
    if (builder.empty()) {
        builder.add_layers_alone();
        if (!builder.empty()) {
            builder.bed().assumptions.push_back(
                "No block or joist lies under the plate: the plate is taken to bear on its layers as if they lay on "
                "solid "
                "ground, only so that the demand can be shown.");
        }
    } else if (builder.unsupported_in2() > no_area_in2) {
        builder.bed().assumptions.push_back(
            "Decking under the plate that no block or joist backs is given no bearing.");
    }
    return std::move(builder.bed());
}

}  // namespace toehold::demand
