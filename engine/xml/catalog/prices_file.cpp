#include "xml/catalog/prices_file.h"

#include "catalog/closest_ids.h"
#include "model/lumber_size.h"
#include "xml/catalog/rows.h"
#include "xml/document/file.h"
#include "xml/document/strict_document.h"

#include <algorithm>
#include <array>
#include <tuple>
#include <utility>

namespace toehold::xml {
namespace {

using catalog::Catalog;
using catalog::PricedConnector;
using catalog::PricedFastener;
using catalog::Prices;
using format::phrase;

constexpr std::array<Word<PricedConnector>, 5> connector_words{{{"nails", PricedConnector::nails},
                                                                {"screws", PricedConnector::screws},
                                                                {"toe-nails", PricedConnector::toe_nails},
                                                                {"angles", PricedConnector::angles},
                                                                {"hardware", PricedConnector::hardware}}};

/// A sum of money in the table's currency: a number without a sign.
double money(ElementReader& row, std::string_view attribute) { return row.number(attribute, Sign::not_negative); }

double optional_money(ElementReader& row, std::string_view attribute) {
    return row.optional_number(attribute, Sign::not_negative).value_or(0.0);
}

template <class Rows>
std::string known_id(ElementReader& row, std::string_view attribute, const Rows& rows) {
    std::string id = row.id(attribute);
    if (!id.empty() && catalog::find(rows, id) == nullptr)
        row.report(phrase("no row of the catalogs has this id"), attribute,
                   catalog::accepted_ids(id, catalog::ids_of(rows)));
    return id;
}

void read_metals(ElementReader& root, const Catalog& catalog, Prices& prices) {
    for (ElementReader& row : root.children("metal")) {
        const catalog::MetalPrice price{known_id(row, "id", catalog.metals), money(row, "per-lb")};
        prices.metals.push_back(price);
    }
}

template <class Rows>
void read_fasteners(ElementReader& root, const char* name, PricedFastener kind, const Rows& sizes,
                    const Catalog& catalog, Prices& prices) {
    for (ElementReader& row : root.children(name, "size-and-grade")) {
        catalog::FastenerPrice price;
        price.kind = kind;
        price.size = known_id(row, "size", sizes);
        price.each = money(row, "each");
        if (kind != PricedFastener::washer) price.per_in = optional_money(row, "per-inch");
        if (kind == PricedFastener::bolt && row.has("grade")) price.grade = known_id(row, "grade", catalog.bolt_grades);
        const auto same = [&price](const catalog::FastenerPrice& other) {
            return std::tie(other.kind, other.size, other.grade) == std::tie(price.kind, price.size, price.grade);
        };
        // A row said twice would leave open which price counts.
        if (std::any_of(prices.fasteners.begin(), prices.fasteners.end(), same))
            row.report(phrase("this already has a price in the table"));
        prices.fasteners.push_back(price);
    }
}

void read_lumber(ElementReader& root, Prices& prices) {
    for (ElementReader& row : root.children("lumber", "size")) {
        const catalog::LumberPrice price{row.text("size"), money(row, "per-foot")};
        if (!price.size.empty() && !model::dressed_size(price.size))
            row.report(phrase("no lumber is sold by this size"), "size", format::verbatim(model::common_sizes));
        prices.lumber.push_back(price);
    }
}

void read_connectors(ElementReader& root, Prices& prices) {
    for (ElementReader& row : root.children("connector", "kind")) {
        const auto kind =
            row.required_choice<PricedConnector>("kind", std::span<const Word<PricedConnector>>(connector_words));
        const double each = money(row, "each");
        if (kind) prices.connectors.push_back({*kind, each});
    }
}

Prices read_table(ElementReader& root, const Catalog& catalog) {
    Prices prices;
    prices.currency = root.text("currency");
    prices.source = read_source(root);
    if (std::optional<ElementReader> work = root.child("work")) {
        prices.per_hole = money(*work, "per-hole");
        prices.per_cut_in = money(*work, "per-cut-inch");
    }
    read_metals(root, catalog, prices);
    read_fasteners(root, "lag-screw", PricedFastener::lag_screw, catalog.lag_screws, catalog, prices);
    read_fasteners(root, "wood-screw", PricedFastener::wood_screw, catalog.wood_screws, catalog, prices);
    read_fasteners(root, "bolt", PricedFastener::bolt, catalog.bolts, catalog, prices);
    read_fasteners(root, "washer", PricedFastener::washer, catalog.washers, catalog, prices);
    if (std::optional<ElementReader> reported = root.optional_child("reported-fastener"))
        prices.reported_fastener = money(*reported, "each");
    read_lumber(root, prices);
    read_connectors(root, prices);
    return prices;
}

}  // namespace

PricesRead read_prices_text(std::string_view text, const std::filesystem::path& file, const Catalog& catalog) {
    const StrictDocument document = parse_strictly(text);
    Reading reading{document.problems, {}};
    PricesRead read;
    if (document.root != nullptr) {
        if (std::optional<ElementReader> root = open_root(*document.root, "prices", reading))
            read.prices = read_table(*root, catalog);
    }
    finish_reading(reading, file);
    if (!reading.problems.empty()) read.prices.reset();
    read.problems = std::move(reading.problems);
    return read;
}

PricesRead read_prices(const std::filesystem::path& file, const Catalog& catalog) {
    const TextRead text = read_text(file);
    if (!text.text) return {std::nullopt, text.problems};
    return read_prices_text(*text.text, file, catalog);
}

std::filesystem::path prices_file(const std::filesystem::path& data) { return data / "prices" / "prices.xml"; }

}  // namespace toehold::xml
