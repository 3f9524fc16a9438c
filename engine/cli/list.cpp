#include "cli/list.h"

#include "checks/registry.h"
#include "cli/commands.h"
#include "cli/console.h"
#include "cli/data_folder.h"
#include "cli/plugins.h"
#include "export/text/table.h"
#include "format/figures.h"

#include <algorithm>

namespace toehold::cli {
namespace {

using catalog::Catalog;
using exporting::Row;

/// A name, what the second and third column hold, and the rows.
struct List {
    std::string_view name, about, last;
    std::vector<Row> (*rows)(const Catalog& catalog);
};

std::string in(double length_in) { return format::figure_text(length_in, "in", units::System::us); }
std::string psi(double stress_psi) { return format::figure_text(stress_psi, "psi", units::System::us); }

/// Whoever relies on a value sees how well it is known.
std::string evidence(const catalog::Source& source) {
    switch (source.evidence) {
        case catalog::Evidence::published:
            return source.text;
        case catalog::Evidence::computed:
            return "computed: " + source.text;
        case catalog::Evidence::common_practice:
            return "common practice: " + source.text;
        case catalog::Evidence::from_memory:
            return "FROM MEMORY, TO BE CONFIRMED: " + source.text;
        case catalog::Evidence::assumption:
            return "assumption: " + source.text;
    }
    return source.text;
}

template <class Rows, class Values>
void add(std::vector<Row>& all, const Rows& rows, Values&& values) {
    for (const auto& row : rows) all.push_back({{row.id, row.name + ": " + values(row), evidence(row.source)}, {}});
}

std::vector<Row> checks_rows(const Catalog&) {
    std::vector<Row> rows;
    for (const checks::Check& check : checks::registered_checks()) {
        rows.push_back({{check.id, check.title + ": " + check.covers, check.clause}, {}});
    }
    return rows;
}

std::vector<Row> findings_rows(const Catalog&) {
    std::vector<Row> rows;
    for (const checks::FindingRule& rule : checks::registered_findings()) {
        rows.push_back({{rule.id, rule.title, rule.clause}, {}});
    }
    return rows;
}

std::vector<Row> fastener_rows(const Catalog& catalog) {
    std::vector<Row> rows;
    add(rows, catalog.lag_screws, [](const catalog::LagScrewSize& size) {
        return "diameter " + in(size.diameter_in) + ", root " + in(size.root_diameter_in);
    });
    add(rows, catalog.wood_screws, [](const catalog::WoodScrewSize& size) {
        return "diameter " + in(size.diameter_in) + ", root " + in(size.root_diameter_in);
    });
    add(rows, catalog.bolts, [](const catalog::BoltSize& size) { return "diameter " + in(size.diameter_in); });
    add(rows, catalog.bolt_grades, [](const catalog::BoltGrade& grade) {
        return "grade of bolt, Fnt " + psi(grade.nominal_tension_psi) + ", Fnv " + psi(grade.nominal_shear_psi);
    });
    return rows;
}

std::vector<Row> species_rows(const Catalog& catalog) {
    std::vector<Row> rows;
    add(rows, catalog.species, [](const catalog::Species& species) {
        return "specific gravity " + format::number_text(species.specific_gravity);
    });
    return rows;
}

std::vector<Row> grade_rows(const Catalog& catalog) {
    std::vector<Row> rows;
    add(rows, catalog.grades, [](const catalog::LumberGrade& grade) {
        return "of " + grade.species + ", depth " + format::number_text(grade.depth_min_in) + " to " +
               in(grade.depth_max_in) + ", Fb " + psi(grade.bending_psi) + ", Fv " + psi(grade.shear_psi) +
               ", Fc perp " + psi(grade.compression_perp_psi) + ", E " + psi(grade.modulus_psi);
    });
    return rows;
}

std::vector<Row> metal_rows(const Catalog& catalog) {
    std::vector<Row> rows;
    add(rows, catalog.metals, [](const catalog::Metal& metal) {
        return "yield " + psi(metal.yield_psi) + ", ultimate " + psi(metal.ultimate_psi);
    });
    add(rows, catalog.fillers,
        [](const catalog::Filler& filler) { return "filler metal, strength " + psi(filler.strength_psi); });
    return rows;
}

std::vector<Row> decking_rows(const Catalog& catalog) {
    std::vector<Row> rows;
    add(rows, catalog.decking, [](const catalog::DeckingMaterial& material) {
        return "modulus through the thickness " + psi(material.modulus_perp_psi) +
               (material.may_bear ? "" : ", may not bear");
    });
    return rows;
}

std::vector<Row> washer_rows(const Catalog& catalog) {
    std::vector<Row> rows;
    add(rows, catalog.washers, [](const catalog::WasherSize& size) {
        return "outside " + in(size.outside_diameter_in) + ", thickness " + in(size.thickness_in);
    });
    return rows;
}

std::vector<Row> plate_rows(const Catalog& catalog) {
    std::vector<Row> rows;
    for (const model::Plate& plate : catalog.stock_plates) {
        const std::string holes = std::to_string(plate.holes.size());
        rows.push_back({{plate.id, plate.name, plate.metal + ", " + in(plate.thickness_in) + ", holes: " + holes}, {}});
    }
    return rows;
}

constexpr List lists[] = {
    {"checks", "what it covers", "clause", checks_rows},  {"findings", "what it looks for", "clause", findings_rows},
    {"fasteners", "size", "source", fastener_rows},       {"species", "value", "source", species_rows},
    {"grades", "reference values", "source", grade_rows}, {"metals", "strength", "source", metal_rows},
    {"decking", "value", "source", decking_rows},         {"washers", "size", "source", washer_rows},
    {"plates", "plate", "made of", plate_rows},
};

const List* find_list(std::string_view name) {
    const auto* found =
        std::find_if(std::begin(lists), std::end(lists), [name](const List& list) { return list.name == name; });
    return found == std::end(lists) ? nullptr : found;
}

}  // namespace

bool is_list_name(std::string_view name) { return find_list(name) != nullptr; }

std::string list_names_text() {
    std::string text;
    for (const List& list : lists) text += (text.empty() ? "" : ", ") + std::string(list.name);
    return text;
}

ExitStatus run(const ListCommand& command) {
    if (!load_plugins(command.plugins)) return ExitStatus::unusable_input;
    const List& list = *find_list(command.what);
    Catalog catalog;
    const bool from_data = list.rows != checks_rows && list.rows != findings_rows;
    if (from_data) {
        auto loaded = load_catalog(command.data);
        if (!loaded) return ExitStatus::unusable_input;
        catalog = std::move(*loaded);
    }
    print(exporting::table({{"name"}, {std::string(list.about)}, {std::string(list.last)}}, list.rows(catalog)));
    return ExitStatus::adequate;
}

}  // namespace toehold::cli
