#include "catalog/prices.h"

#include "model/lumber_size.h"

#include <algorithm>

namespace toehold::catalog {

std::optional<double> metal_price_per_lb(const Prices& prices, std::string_view metal) {
    const auto row = std::find_if(prices.metals.begin(), prices.metals.end(),
                                  [&](const MetalPrice& price) { return price.metal == metal; });
    if (row == prices.metals.end()) return std::nullopt;
    return row->per_lb;
}

std::optional<double> fastener_price(const Prices& prices, PricedFastener kind, std::string_view size,
                                     std::string_view grade, double length_in) {
    const FastenerPrice* found = nullptr;
    for (const FastenerPrice& price : prices.fasteners) {
        if (price.kind != kind || price.size != size) continue;
        const bool of_grade = !price.grade.empty() && price.grade == grade;
        if (of_grade || (price.grade.empty() && found == nullptr)) found = &price;
        if (of_grade) break;
    }
    if (found == nullptr) return std::nullopt;
    return found->each + found->per_in * length_in;
}

std::optional<double> lumber_price_per_foot(const Prices& prices, double width_in, double depth_in) {
    const auto row = std::find_if(prices.lumber.begin(), prices.lumber.end(), [&](const LumberPrice& price) {
        return model::is_size(price.size, width_in, depth_in);
    });
    if (row == prices.lumber.end()) return std::nullopt;
    return row->per_foot;
}

std::optional<double> connector_price(const Prices& prices, PricedConnector kind) {
    const auto row = std::find_if(prices.connectors.begin(), prices.connectors.end(),
                                  [&](const ConnectorPrice& price) { return price.kind == kind; });
    if (row == prices.connectors.end()) return std::nullopt;
    return row->each;
}

}  // namespace toehold::catalog
