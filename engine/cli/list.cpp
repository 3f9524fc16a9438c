#include "cli/list.h"

#include "checks/registry.h"
#include "cli/commands.h"
#include "cli/console.h"
#include "cli/data_folder.h"
#include "cli/plugins.h"
#include "export/json/table_json.h"
#include "export/text/table.h"
#include "format/figures.h"
#include "model/basis.h"
#include "review/memory/values.h"

#include <algorithm>

namespace toehold::cli {
namespace {

using catalog::Catalog;
using exporting::Row;
using format::Phrase;
using format::phrase;
using format::Quantity;

/// Cells of a row, to be said.
using Cells = std::vector<Phrase>;

/// A name, what the second and third column hold, and the rows.
struct List {
    std::string_view name;
    Phrase (*about)();
    Phrase (*last)();
    std::vector<Cells> (*rows)(const Catalog& catalog);
};

Quantity in(double length_in) { return {length_in, "in"}; }
Quantity psi(double stress_psi) { return {stress_psi, "psi"}; }

/// Whoever relies on a value sees how well it is known.
Phrase evidence(const catalog::Source& source) {
    switch (source.evidence) {
        case catalog::Evidence::published:
            return format::verbatim(source.text);
        case catalog::Evidence::computed:
            return phrase("computed: {}", source.text);
        case catalog::Evidence::common_practice:
            return phrase("common practice: {}", source.text);
        case catalog::Evidence::from_memory:
            return phrase("FROM MEMORY, TO BE CONFIRMED: {}", source.text);
        case catalog::Evidence::assumption:
            return phrase("assumption: {}", source.text);
    }
    return format::verbatim(source.text);
}

template <class Rows, class Values>
void add(std::vector<Cells>& all, const Rows& rows, Values&& values) {
    for (const auto& row : rows) {
        all.push_back({format::verbatim(row.id), phrase("{}: {}", row.name, values(row)), evidence(row.source)});
    }
}

std::vector<Cells> checks_rows(const Catalog&) {
    std::vector<Cells> rows;
    for (const checks::Check& check : checks::registered_checks()) {
        rows.push_back({format::verbatim(check.id), phrase("{}: {}", check.title, check.covers),
                        format::verbatim(checks::clause_of(check, model::building_code({})))});
    }
    return rows;
}

std::vector<Cells> findings_rows(const Catalog&) {
    std::vector<Cells> rows;
    for (const checks::FindingRule& rule : checks::registered_findings())
        rows.push_back({format::verbatim(rule.id), rule.title,
                        format::verbatim(checks::clause_of(rule, model::building_code({})))});
    return rows;
}

std::vector<Cells> fastener_rows(const Catalog& catalog) {
    std::vector<Cells> rows;
    const auto screw = [](const auto& size) {
        return phrase("diameter {}, root {}", in(size.diameter_in), in(size.root_diameter_in));
    };
    add(rows, catalog.lag_screws, screw);
    add(rows, catalog.wood_screws, screw);
    add(rows, catalog.bolts, [](const auto& size) { return phrase("diameter {}", in(size.diameter_in)); });
    add(rows, catalog.bolt_grades, [](const catalog::BoltGrade& grade) {
        return phrase("bolt grade, Fnt {}, Fnv {}", psi(grade.nominal_tension_psi), psi(grade.nominal_shear_psi));
    });
    return rows;
}

std::vector<Cells> species_rows(const Catalog& catalog) {
    std::vector<Cells> rows;
    add(rows, catalog.species, [](const catalog::Species& species) {
        return phrase("specific gravity {}", format::number_text(species.specific_gravity));
    });
    return rows;
}

std::vector<Cells> grade_rows(const Catalog& catalog) {
    std::vector<Cells> rows;
    add(rows, catalog.grades, [](const catalog::LumberGrade& grade) {
        return phrase("{}, depth {} to {}, Fb {}, Fv {}, Fc perp {}, E {}", grade.species, in(grade.depth_min_in),
                      in(grade.depth_max_in), psi(grade.bending_psi), psi(grade.shear_psi),
                      psi(grade.compression_perp_psi), psi(grade.modulus_psi));
    });
    return rows;
}

std::vector<Cells> metal_rows(const Catalog& catalog) {
    std::vector<Cells> rows;
    add(rows, catalog.metals, [](const catalog::Metal& metal) {
        return phrase("yield {}, ultimate {}", psi(metal.yield_psi), psi(metal.ultimate_psi));
    });
    add(rows, catalog.fillers,
        [](const catalog::Filler& filler) { return phrase("filler metal, strength {}", psi(filler.strength_psi)); });
    return rows;
}

std::vector<Cells> decking_rows(const Catalog& catalog) {
    std::vector<Cells> rows;
    add(rows, catalog.decking, [](const catalog::DeckingMaterial& material) {
        return material.may_bear
                   ? phrase("modulus through the thickness {}", psi(material.modulus_perp_psi))
                   : phrase("modulus through the thickness {}; bearing not allowed", psi(material.modulus_perp_psi));
    });
    return rows;
}

std::vector<Cells> washer_rows(const Catalog& catalog) {
    std::vector<Cells> rows;
    add(rows, catalog.washers, [](const catalog::WasherSize& size) {
        return phrase("outside diameter {}, thickness {}", in(size.outside_diameter_in), in(size.thickness_in));
    });
    return rows;
}

std::vector<Cells> plate_rows(const Catalog& catalog) {
    std::vector<Cells> rows;
    for (const model::Plate& plate : catalog.stock_plates) {
        rows.push_back({format::verbatim(plate.id), format::verbatim(plate.name),
                        phrase("{}, {}, holes: {}", plate.metal, in(plate.thickness_in), plate.holes.size())});
    }
    return rows;
}

template <class Rows>
void add_recalled(std::vector<Cells>& all, const Rows& rows) {
    for (const auto& row : rows) {
        if (row.source.evidence != catalog::Evidence::from_memory) continue;
        all.push_back({format::verbatim(row.id), format::verbatim(row.name), format::verbatim(row.source.text)});
    }
}

/// Everything that nobody has held against its source yet: the engine's own values, then rows of the catalogs.
std::vector<Cells> memory_rows(const Catalog& catalog) {
    std::vector<Cells> rows;
    for (const review::FromMemory& value : review::from_memory())
        rows.push_back(
            {format::verbatim(std::string(value.file)), value.value, format::verbatim(std::string(value.source))});
    add_recalled(rows, catalog.lag_screws);
    add_recalled(rows, catalog.wood_screws);
    add_recalled(rows, catalog.bolts);
    add_recalled(rows, catalog.bolt_grades);
    add_recalled(rows, catalog.washers);
    add_recalled(rows, catalog.metals);
    add_recalled(rows, catalog.fillers);
    add_recalled(rows, catalog.species);
    add_recalled(rows, catalog.grades);
    add_recalled(rows, catalog.decking);
    return rows;
}

Phrase clause() { return phrase("clause"); }
Phrase source() { return phrase("source"); }
Phrase value() { return phrase("value"); }

constexpr List lists[] = {
    {"checks", [] { return phrase("covers"); }, clause, checks_rows},
    {"findings", [] { return phrase("looks for"); }, clause, findings_rows},
    {"fasteners", [] { return phrase("size"); }, source, fastener_rows},
    {"species", value, source, species_rows},
    {"grades", [] { return phrase("reference values"); }, source, grade_rows},
    {"metals", [] { return phrase("strength"); }, source, metal_rows},
    {"decking", value, source, decking_rows},
    {"washers", value, source, washer_rows},
    {"memory", value, [] { return phrase("to be confirmed in"); }, memory_rows},
    {"plates", [] { return phrase("plate"); }, [] { return phrase("made of"); }, plate_rows},
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

ExitStatus run(const ListCommand& command, const format::Locale& locale) {
    if (!load_plugins(command.plugins, locale)) return ExitStatus::unusable_input;
    const List& list = *find_list(command.what);
    Catalog catalog;
    const bool from_data = list.rows != checks_rows && list.rows != findings_rows;
    if (from_data) {
        auto loaded = load_catalog(command.data, locale);
        if (!loaded) return ExitStatus::unusable_input;
        catalog = std::move(*loaded);
    }
    const auto said = [&locale](const Phrase& words) { return format::text(words, locale); };
    std::vector<std::vector<std::string>> lines;
    for (const Cells& cells : list.rows(catalog)) {
        lines.emplace_back();
        for (const Phrase& cell : cells) lines.back().push_back(said(cell));
    }
    if (command.json) {
        print(exporting::table_json({"name", "value", "source"}, lines));
        return ExitStatus::adequate;
    }
    std::vector<Row> rows;
    rows.reserve(lines.size());
    for (std::vector<std::string>& line : lines) rows.push_back({std::move(line), {}});
    print(exporting::table({{said(phrase("name"))}, {said(list.about())}, {said(list.last())}}, rows));
    return ExitStatus::adequate;
}

}  // namespace toehold::cli
