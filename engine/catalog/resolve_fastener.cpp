#include "catalog/resolve_fastener.h"

#include "catalog/closest_ids.h"
#include "resistance/wood/withdrawal.h"
#include "units/quantity.h"

#include <fmt/format.h>

namespace toehold::catalog {
namespace {

/// Basic minor diameter of a bolt's external thread: D - 1.226869 P (ASME B1.1, UNR profile; the values of NDS 2018
/// Table L1).
constexpr double thread_depth_in_pitches = 1.226869;
/// Wood screws with cut thread: NDS 2018 Table L3 (from memory, to be confirmed).
constexpr double threaded_part_of_wood_screw = 2.0 / 3.0;

struct Place {
    const Catalog& catalog;
    std::string element;
    model::Problems& problems;
};

void set_metal(Anchor& anchor, const std::string& metal, const Place& place) {
    const Metal* const row = require(place.catalog.metals, metal, "metal", place.element, place.problems);
    if (row != nullptr) anchor.metal = *row;
}

void fill(Anchor& anchor, const model::LagScrew& screw, const Place& at) {
    const Place place{at.catalog, at.element + "/lag-screw", at.problems};
    anchor.kind = FastenerKind::lag_screw;
    anchor.length_in = screw.length_in;
    anchor.thread_length_in = screw.thread_length_in.value_or(resistance::lag_thread_length_in(screw.length_in));
    const LagScrewSize* const size =
        require(place.catalog.lag_screws, screw.size, "lag screw", place.element, place.problems);
    if (size == nullptr) return;
    anchor.name = fmt::format("{} x {}", size->name, units::fraction_in(screw.length_in));
    anchor.size_source = size->source;
    anchor.diameter_in = size->diameter_in;
    anchor.root_diameter_in = size->root_diameter_in;
    anchor.tip_length_in = size->tip_length_in;
    anchor.head_width_in = size->head_width_in;
    anchor.bending_yield_psi = size->bending_yield_psi;
    set_metal(anchor, size->metal, place);
}

void fill(Anchor& anchor, const model::WoodScrew& screw, const Place& at) {
    const Place place{at.catalog, at.element + "/wood-screw", at.problems};
    anchor.kind = FastenerKind::wood_screw;
    anchor.length_in = screw.length_in;
    anchor.thread_length_in = screw.thread_length_in.value_or(threaded_part_of_wood_screw * screw.length_in);
    const WoodScrewSize* const size =
        require(place.catalog.wood_screws, screw.size, "wood screw", place.element, place.problems);
    if (size == nullptr) return;
    anchor.name = fmt::format("{} x {}", size->name, units::fraction_in(screw.length_in));
    anchor.size_source = size->source;
    anchor.diameter_in = size->diameter_in;
    anchor.root_diameter_in = size->root_diameter_in;
    anchor.head_width_in = size->head_diameter_in;
    anchor.bending_yield_psi = size->bending_yield_psi;
    set_metal(anchor, size->metal, place);
}

void fill_below(Anchor& anchor, const model::ThroughBolt& bolt, const Place& place) {
    if (const auto* const washer = std::get_if<model::Washer>(&bolt.below)) {
        const WasherSize* const row =
            require(place.catalog.washers, washer->size, "washer", place.element + "/washer-below", place.problems);
        if (row != nullptr) anchor.washer_below = *row;
    }
    const auto metal = [&](const std::string& id, std::string_view element) {
        const Metal* const row =
            require(place.catalog.metals, id, "metal", fmt::format("{}/{}", place.element, element), place.problems);
        if (row != nullptr) anchor.backing_metal = *row;
    };
    if (const auto* const backing = std::get_if<model::BackingPlate>(&bolt.below)) {
        anchor.backing = *backing;
        metal(backing->metal, "backing-plate");
    }
    if (const auto* const lower = std::get_if<model::LowerPlate>(&bolt.below)) {
        anchor.lower = *lower;
        metal(lower->metal, "lower-plate");
    }
}

/// With the stresses of a bolt of this diameter.
BoltGrade of_size(BoltGrade grade, double diameter_in) {
    if (!grade.larger || diameter_in <= grade.larger->above_in) return grade;
    grade.nominal_tension_psi = grade.larger->nominal_tension_psi;
    grade.nominal_shear_psi = grade.larger->nominal_shear_psi;
    grade.nominal_shear_excluded_psi = 0.0;
    return grade;
}

void fill(Anchor& anchor, const model::ThroughBolt& bolt, const Place& at) {
    const Place place{at.catalog, at.element + "/through-bolt", at.problems};
    anchor.kind = FastenerKind::through_bolt;
    anchor.bolt = bolt;
    fill_below(anchor, bolt, place);
    const BoltSize* const size = require(place.catalog.bolts, bolt.size, "bolt", place.element, place.problems);
    const BoltGrade* const grade =
        require(place.catalog.bolt_grades, bolt.grade, "bolt grade", place.element, place.problems);
    if (size == nullptr || grade == nullptr) return;
    anchor.name = fmt::format("{}, {}", size->name, grade->name);
    anchor.size_source = size->source;
    anchor.diameter_in = size->diameter_in;
    anchor.root_diameter_in = size->diameter_in - thread_depth_in_pitches / size->threads_per_in;
    anchor.head_width_in = size->nut_width_in;
    anchor.bending_yield_psi = size->bending_yield_psi;
    anchor.bolt_grade = of_size(*grade, size->diameter_in);
}

void fill(Anchor& anchor, const model::ReportedFastener& fastener, const Place&) {
    anchor.kind = FastenerKind::reported;
    anchor.name = fastener.name;
    anchor.diameter_in = fastener.diameter_in;
    anchor.root_diameter_in = fastener.diameter_in;
    anchor.length_in = fastener.length_in;
    anchor.thread_length_in = fastener.thread_length_in;
    anchor.reported = fastener;
}

void check_fit(const std::optional<WasherSize>& washer, double diameter_in, const std::string& element,
               model::Problems& problems) {
    if (!washer || washer->hole_diameter_in >= diameter_in) return;
    model::Problem problem;
    problem.element = element;
    problem.message = format::phrase("the washer does not go over the fastener");
    problem.found = format::phrase("{}, hole {}", washer->id, format::Dimension{washer->hole_diameter_in});
    problem.accepted = format::phrase("a washer with a hole of {} or more", format::Dimension{diameter_in});
    problems.push_back(problem);
}

}  // namespace

std::optional<Anchor> resolve_fastener(const model::AnchorGroup& group, const Catalog& catalog,
                                       const std::string& element, model::Problems& problems) {
    const std::size_t problems_before = problems.size();
    Anchor anchor;
    std::visit([&](const auto& fastener) { fill(anchor, fastener, {catalog, element, problems}); }, group.fastener);
    if (group.washer) {
        const WasherSize* const row =
            require(catalog.washers, group.washer->size, "washer", element + "/washer", problems);
        if (row != nullptr) anchor.washer = *row;
    }
    if (group.head_plate) {
        anchor.head_plate = group.head_plate;
        const Metal* const row =
            require(catalog.metals, group.head_plate->metal, "metal", element + "/head-plate", problems);
        if (row != nullptr) anchor.head_plate_metal = *row;
    }
    check_fit(anchor.washer, anchor.diameter_in, element + "/washer", problems);
    check_fit(anchor.washer_below, anchor.diameter_in, element + "/through-bolt/washer-below", problems);
    if (problems.size() > problems_before) return std::nullopt;
    return anchor;
}

}  // namespace toehold::catalog
