#include "xml/catalog/rows.h"

#include <array>

namespace toehold::xml {
namespace {

using format::phrase;

using catalog::Evidence;
using catalog::MetalKind;
using units::Kind;

constexpr std::array<Word<Evidence>, 5> evidence_words{{{"published", Evidence::published},
                                                        {"computed", Evidence::computed},
                                                        {"common-practice", Evidence::common_practice},
                                                        {"from-memory", Evidence::from_memory},
                                                        {"assumption", Evidence::assumption}}};
constexpr std::array<Word<MetalKind>, 3> metal_kinds{{{"carbon-steel", MetalKind::carbon_steel},
                                                      {"stainless-steel", MetalKind::stainless_steel},
                                                      {"aluminum", MetalKind::aluminum}}};

constexpr std::array<Word<bool>, 1> strength_words{{{"by-certificate", true}}};

MetalKind read_metal_kind(ElementReader& row) { return row.choice<MetalKind>("kind", metal_kinds); }

std::optional<catalog::SofterWeld> read_softer_weld(ElementReader& row, CatalogIndex& index) {
    const std::string filler = row.optional_id("softer-filler");
    const std::optional<double> above_in = row.optional_quantity("softer-above", Kind::length, Sign::positive);
    const std::optional<double> yield_psi = row.optional_quantity("softer-yield", Kind::stress, Sign::positive);
    const bool any = !filler.empty() || above_in || yield_psi;
    const bool all = !filler.empty() && above_in && yield_psi;
    expect(row, any == all, phrase("softer-filler, softer-above and softer-yield go together"), {});
    if (!all) return std::nullopt;
    index.refer(row, Named::filler, filler);
    return catalog::SofterWeld{filler, *above_in, *yield_psi};
}

catalog::Metal read_metal(ElementReader& row, CatalogIndex& index) {
    const auto stress_psi = [&](std::string_view name) { return row.quantity(name, Kind::stress, Sign::positive); };
    const auto welded_psi = [&](std::string_view name) {
        return row.optional_quantity(name, Kind::stress, Sign::positive);
    };
    catalog::Metal metal;
    metal.id = row.id();
    metal.name = row.text("name");
    metal.kind = read_metal_kind(row);
    metal.by_certificate = row.optional_choice<bool>("strength", strength_words).value_or(false);
    if (!metal.by_certificate) {
        metal.yield_psi = stress_psi("yield");
        metal.ultimate_psi = stress_psi("ultimate");
    }
    metal.full_wall = row.optional_yes_no("full-wall").value_or(false);
    metal.modulus_psi = stress_psi("modulus");
    metal.welded_yield_psi = welded_psi("welded-yield");
    metal.welded_ultimate_psi = welded_psi("welded-ultimate");
    metal.source = read_source(row);
    metal.softer_weld = read_softer_weld(row, index);
    expect(row, metal.yield_psi <= metal.ultimate_psi, phrase("the yield is more than the ultimate strength"), "yield");
    expect(row, metal.ultimate_psi < metal.modulus_psi, phrase("the strength is more than the modulus"), "modulus");
    expect(row, metal.welded_yield_psi.has_value() == metal.welded_ultimate_psi.has_value(),
           phrase("welded-yield and welded-ultimate go together"), {});
    // Heat takes aluminum's temper away; without these values a welded detail would be computed too strong.
    expect(row, metal.kind != MetalKind::aluminum || metal.welded_yield_psi.has_value(),
           phrase("aluminum needs its strength beside a weld: welded-yield and welded-ultimate"), {});
    expect(row,
           !metal.softer_weld ||
               (metal.welded_yield_psi.has_value() && metal.softer_weld->yield_psi < *metal.welded_yield_psi),
           phrase("the yield beside a weld of the softer filler is not less than welded-yield"), "softer-yield");
    return metal;
}

catalog::Filler read_filler(ElementReader& row, CatalogIndex&) {
    catalog::Filler filler;
    filler.id = row.id();
    filler.name = row.text("name");
    filler.kind = read_metal_kind(row);
    filler.strength_psi = row.quantity("strength", Kind::stress, Sign::positive);
    filler.source = read_source(row);
    return filler;
}

}  // namespace

catalog::Source read_source(ElementReader& row) {
    return {row.choice<Evidence>("evidence", evidence_words), row.text("source")};
}

catalog::MetalKind read_bolt_metal(ElementReader& row) {
    return row.optional_choice<MetalKind>("kind", metal_kinds).value_or(MetalKind::carbon_steel);
}

void expect(ElementReader& row, bool holds, const format::Phrase& message, std::string_view attribute) {
    if (!holds) row.report(message, attribute);
}

void read_metals(ElementReader& root, CatalogIndex& index, catalog::Catalog& catalog) {
    read_rows(root, "metal", index, catalog.metals, read_metal);
    read_rows(root, "filler", index, catalog.fillers, read_filler);
}

}  // namespace toehold::xml
