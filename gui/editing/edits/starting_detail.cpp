// Where a new detail begins: plain proportions around a plate, none of them anybody's decision yet.
#include "editing/edits.h"
#include "editing/edits/starting_wood.h"
#include "editing/parts/holes.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace toehold::editing {
namespace {

using catalog::Catalog;
using model::BaseDetail;

constexpr double guard_height_in = 42.0;
constexpr double tube_in = 2.0, wall_in = 3.0 / 16.0;
constexpr double lag_length_in = 8.0;
constexpr double hole_over_anchor_in = 1.0 / 16.0;
constexpr double decking_in = 1.0;
constexpr double block_width_in = 3.5, block_depth_in = 7.25;
constexpr double joist_width_in = 1.5, joist_depth_in = 9.25, joist_at_in = 8.0;

/// The row with the id, else the first that suits; an empty text where none does.
template <class Row, class Suits>
std::string id_or_suitable(const std::vector<Row>& rows, const std::string& id, Suits suits) {
    const Row* const wanted = catalog::find(rows, id);
    if (wanted != nullptr && suits(*wanted)) return id;
    const auto found = std::find_if(rows.begin(), rows.end(), suits);
    return found == rows.end() ? std::string() : found->id;
}

catalog::MetalKind kind_of(const model::Plate& plate, const Catalog& catalog) {
    const catalog::Metal* const metal = catalog::find(catalog.metals, plate.metal);
    return metal == nullptr ? catalog::MetalKind::carbon_steel : metal->kind;
}

/// A metal that can be welded to the plate's.
std::string tube_metal(const model::Plate& plate, const Catalog& catalog) {
    const catalog::MetalKind kind = kind_of(plate, catalog);
    const std::string wanted = kind == catalog::MetalKind::carbon_steel ? "steel-a500-b" : plate.metal;
    return id_or_suitable(catalog.metals, wanted, [&](const catalog::Metal& metal) { return metal.kind == kind; });
}

std::string filler(const model::Plate& plate, const Catalog& catalog) {
    const catalog::MetalKind kind = kind_of(plate, catalog);
    return id_or_suitable(catalog.fillers, "e70", [&](const catalog::Filler& row) { return row.kind == kind; });
}

/// The thickest lag screw that leaves the hole its play and whose head does not go through; else the thickest that goes
/// in at all.
std::string lag_for(double hole_in, const Catalog& catalog) {
    const auto thickest = [&](double play_in) -> const catalog::LagScrewSize* {
        const catalog::LagScrewSize* best = nullptr;
        for (const catalog::LagScrewSize& size : catalog.lag_screws) {
            if (size.diameter_in > hole_in - play_in + 1e-6 || size.head_width_in <= hole_in) continue;
            if (best == nullptr || size.diameter_in > best->diameter_in) best = &size;
        }
        return best;
    };
    const catalog::LagScrewSize* size = thickest(hole_over_anchor_in);
    if (size == nullptr) size = thickest(0.0);
    if (size == nullptr && !catalog.lag_screws.empty()) size = &catalog.lag_screws.front();
    return size == nullptr ? std::string() : size->id;
}

/// One group for each width of hole.
std::vector<model::AnchorGroup> lag_screws(const model::Plate& plate, const Catalog& catalog) {
    std::map<double, std::vector<std::string>> holes_by_width;
    for (const model::Hole& hole : plate.holes) holes_by_width[width_in(hole)].push_back(hole.id);
    std::vector<model::AnchorGroup> groups;
    for (const auto& [hole_in, holes] : holes_by_width) {
        model::AnchorGroup group;
        group.fastener = model::LagScrew{lag_for(hole_in, catalog), lag_length_in, std::nullopt};
        if (holes_by_width.size() > 1) group.holes = holes;
        groups.push_back(group);
    }
    return groups;
}

/// Rows of holes across y, those less than an inch apart as one.
std::vector<double> rows_of(const model::Plate& plate) {
    constexpr double one_row_in = 1.0;
    std::vector<double> places;
    for (const model::Hole& hole : plate.holes) places.push_back(hole.center.y_in);
    std::sort(places.begin(), places.end());
    std::vector<double> rows;
    std::size_t first = 0;
    for (std::size_t next = 1; next <= places.size(); ++next) {
        if (next < places.size() && places[next] - places[first] < one_row_in) continue;
        rows.push_back(0.5 * (places[first] + places[next - 1]));
        first = next;
    }
    return rows;
}

/// Blocks under the rows: where rows are closer than blocks are wide, the blocks lie against each other with the rows
/// as near their middles as that allows.
std::vector<double> block_places(const model::Plate& plate) {
    std::vector<double> rows = rows_of(plate), places;
    if (rows.empty()) return {0.0};
    double shift_in = 0.0;
    for (const double row : rows) {
        places.push_back(places.empty() ? row : std::max(row, places.back() + block_width_in));
        shift_in += (places.back() - row) / static_cast<double>(rows.size());
    }
    for (double& place : places) place -= shift_in;
    return places;
}

/// Clear of the holes, on either side of the post.
double joist_offset(const model::Plate& plate) {
    double widest_in = 0.0;
    for (const model::Hole& hole : plate.holes) widest_in = std::max(widest_in, std::abs(hole.center.x_in));
    return std::max(joist_at_in, std::ceil(widest_in + 2.0));
}

model::Framing framing(const model::Plate& plate, const Catalog& catalog) {
    const double offset_in = joist_offset(plate);
    const StartingWood wood = starting_wood(catalog, joist_width_in, {joist_depth_in, block_depth_in});
    model::Joists joists;
    joists.width_in = joist_width_in;
    joists.depth_in = joist_depth_in;
    joists.species = wood.species;
    joists.grade = wood.grade;
    joists.members = {{"J1", -offset_in}, {"J2", offset_in}};
    model::Framing framing;
    framing.joists = joists;
    for (const double place : block_places(plate)) {
        model::Block block;
        block.id = "B" + std::to_string(framing.blocks.size() + 1);
        block.from_in = -offset_in + 0.5 * joist_width_in;
        block.to_in = offset_in - 0.5 * joist_width_in;
        block.across_in = place;
        block.width_in = block_width_in;
        block.depth_in = block_depth_in;
        block.species = wood.species;
        block.grade = wood.grade;
        block.from_end.joist = "J1";
        block.to_end.joist = "J2";
        framing.blocks.push_back(block);
    }
    return framing;
}

}  // namespace

BaseDetail starting_detail(const model::Plate& stock, const Catalog& catalog) {
    BaseDetail detail;
    detail.name = "New base";
    detail.note = "Started from a stock plate; every value to be checked";
    detail.guard.height_in = guard_height_in;
    detail.post = model::RectangularTube{tube_in, tube_in, wall_in, tube_metal(stock, catalog)};
    on_deck(detail).plate = stock;
    on_deck(detail).weld = model::Weld{wall_in, filler(stock, catalog)};
    on_deck(detail).anchors = lag_screws(stock, catalog);
    model::Decking decking;
    decking.material = id_or_suitable(catalog.decking, "wood-southern-pine", [](const catalog::DeckingMaterial& row) {
        return row.kind == catalog::DeckingKind::wood;
    });
    decking.thickness_in = decking_in;
    on_deck(detail).layers.decking = decking;
    detail.framing = framing(stock, catalog);
    return detail;
}

}  // namespace toehold::editing
