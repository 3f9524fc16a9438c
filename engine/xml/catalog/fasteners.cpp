#include "xml/catalog/rows.h"

namespace toehold::xml {
namespace {

using format::phrase;

using units::Kind;

double length_in(ElementReader& row, std::string_view attribute) {
    return row.quantity(attribute, Kind::length, Sign::positive);
}

double stress_psi(ElementReader& row, std::string_view attribute) {
    return row.quantity(attribute, Kind::stress, Sign::positive);
}

std::string read_metal_of(ElementReader& row, CatalogIndex& index) {
    std::string metal = row.id("metal");
    index.refer(row, Named::metal, metal);
    return metal;
}

catalog::LagScrewSize read_lag_screw(ElementReader& row, CatalogIndex& index) {
    catalog::LagScrewSize size;
    size.id = row.id();
    size.name = row.text("name");
    size.diameter_in = length_in(row, "diameter");
    size.root_diameter_in = length_in(row, "root-diameter");
    size.tip_length_in = length_in(row, "tip");
    size.head_width_in = length_in(row, "head-width");
    size.head_height_in = length_in(row, "head-height");
    size.bending_yield_psi = stress_psi(row, "bending-yield");
    size.metal = read_metal_of(row, index);
    size.source = read_source(row);
    expect(row, size.root_diameter_in < size.diameter_in, phrase("the root is not less than the diameter"),
           "root-diameter");
    expect(row, size.head_width_in > size.diameter_in, phrase("the head is not wider than the shank"), "head-width");
    return size;
}

catalog::WoodScrewSize read_wood_screw(ElementReader& row, CatalogIndex& index) {
    catalog::WoodScrewSize size;
    size.id = row.id();
    size.name = row.text("name");
    size.diameter_in = length_in(row, "diameter");
    size.root_diameter_in = length_in(row, "root-diameter");
    size.head_diameter_in = length_in(row, "head-diameter");
    size.bending_yield_psi = stress_psi(row, "bending-yield");
    size.metal = read_metal_of(row, index);
    size.source = read_source(row);
    expect(row, size.root_diameter_in < size.diameter_in, phrase("the root is not less than the diameter"),
           "root-diameter");
    expect(row, size.head_diameter_in > size.diameter_in, phrase("the head is not wider than the shank"),
           "head-diameter");
    return size;
}

catalog::BoltSize read_bolt(ElementReader& row, CatalogIndex&) {
    catalog::BoltSize size;
    size.id = row.id();
    size.name = row.text("name");
    size.diameter_in = length_in(row, "diameter");
    size.threads_per_in = row.number("threads-per-inch", Sign::positive);
    size.nut_width_in = length_in(row, "nut-width");
    size.bending_yield_psi = stress_psi(row, "bending-yield");
    size.source = read_source(row);
    // A thread is about 1.3 pitches deep on both sides together; a coarser one would leave no bolt.
    expect(row, size.threads_per_in * size.diameter_in > 2.0, phrase("the thread is deeper than the bolt"),
           "threads-per-inch");
    expect(row, size.nut_width_in > size.diameter_in, phrase("the nut is not wider than the bolt"), "nut-width");
    return size;
}

std::optional<catalog::LargerBolts> read_larger_bolts(ElementReader& row) {
    const std::optional<double> above_in = row.optional_quantity("larger-above", Kind::length, Sign::positive);
    const std::optional<double> tension_psi = row.optional_quantity("larger-tension", Kind::stress, Sign::positive);
    const std::optional<double> shear_psi = row.optional_quantity("larger-shear", Kind::stress, Sign::positive);
    const bool any = above_in || tension_psi || shear_psi;
    const bool all = above_in && tension_psi && shear_psi;
    expect(row, any == all, phrase("larger-above, larger-tension and larger-shear go together"), {});
    if (!all) return std::nullopt;
    return catalog::LargerBolts{*above_in, *tension_psi, *shear_psi};
}

catalog::BoltGrade read_bolt_grade(ElementReader& row, CatalogIndex&) {
    catalog::BoltGrade grade;
    grade.id = row.id();
    grade.name = row.text("name");
    grade.nominal_tension_psi = stress_psi(row, "nominal-tension");
    grade.nominal_shear_psi = stress_psi(row, "nominal-shear");
    grade.nominal_shear_excluded_psi =
        row.optional_quantity("nominal-shear-excluded", Kind::stress, Sign::positive).value_or(0.0);
    grade.source = read_source(row);
    grade.kind = read_bolt_metal(row);
    grade.larger = read_larger_bolts(row);
    return grade;
}

catalog::WasherSize read_washer(ElementReader& row, CatalogIndex&) {
    catalog::WasherSize size;
    size.id = row.id();
    size.name = row.text("name");
    size.outside_diameter_in = length_in(row, "outside-diameter");
    size.hole_diameter_in = length_in(row, "hole-diameter");
    size.thickness_in = length_in(row, "thickness");
    size.source = read_source(row);
    expect(row, size.hole_diameter_in < size.outside_diameter_in, phrase("the hole leaves no washer"), "hole-diameter");
    return size;
}

}  // namespace

void read_fasteners(ElementReader& root, CatalogIndex& index, catalog::Catalog& catalog) {
    read_rows(root, "lag-screw", index, catalog.lag_screws, read_lag_screw);
    read_rows(root, "wood-screw", index, catalog.wood_screws, read_wood_screw);
    read_rows(root, "bolt", index, catalog.bolts, read_bolt);
    read_rows(root, "bolt-grade", index, catalog.bolt_grades, read_bolt_grade);
    read_rows(root, "washer", index, catalog.washers, read_washer);
}

}  // namespace toehold::xml
