#include "search/ranges/axes.h"
#include "units/quantity.h"

#include <algorithm>
#include <memory>
#include <stdexcept>

namespace toehold::search {
namespace {

using format::phrase;
using model::BaseDetail;

Option plate_option(const StockPlate& stock, const Asked& asked) {
    const model::Plate* const plate = catalog::find(asked.catalog.stock_plates, stock.id);
    if (plate == nullptr) throw std::invalid_argument("no stock plate has the id " + stock.id);
    const auto taken = std::make_shared<const model::Plate>(*plate);
    return {stock.id, [taken](BaseDetail& detail) { return take_plate(detail, *taken); }};
}

Option plate_option(const PlateSize& size, const Asked& asked) {
    const Holes holes = holes_after(asked.ranges);
    return {label(size),
            [size, holes](BaseDetail& detail) { return resize_plate(detail, size.width_in, size.depth_in, holes); }};
}

Axis plates(const Asked& asked) {
    Axis axis{"plate", phrase("Plate"), {}};
    for (const PlateChoice& choice : asked.ranges.plates)
        axis.options.push_back(std::visit([&](const auto& one) { return plate_option(one, asked); }, choice));
    return axis;
}

Axis thicknesses(const Asked& asked) {
    Axis axis{"thickness", phrase("Plate thickness"), {}};
    const std::vector<std::string> stock = asked_stock(asked.ranges);
    for (const double thickness_in : asked.ranges.thicknesses_in) {
        axis.options.push_back({units::fraction_in(thickness_in), [thickness_in, stock](BaseDetail& detail) {
                                    if (is_asked_stock(detail, stock)) {
                                        if (on_deck(detail).plate.thickness_in == thickness_in) return Applied{};
                                        return refused(phrase("the stock plate has another thickness"));
                                    }
                                    return set_plate_thickness(detail, thickness_in);
                                }});
    }
    return axis;
}

Axis metals(const Asked& asked) {
    Axis axis{"metal", phrase("Plate metal"), {}};
    const std::vector<std::string> stock = asked_stock(asked.ranges);
    for (const std::string& metal : asked.ranges.metals) {
        if (find(asked.catalog.metals, metal) == nullptr) throw std::invalid_argument("no metal has the id " + metal);
        axis.options.push_back({metal, [metal, stock](BaseDetail& detail) {
                                    if (is_asked_stock(detail, stock)) {
                                        if (on_deck(detail).plate.metal == metal) return Applied{};
                                        return refused(phrase("the stock plate is of another metal"));
                                    }
                                    return set_plate_metal(detail, metal);
                                }});
    }
    return axis;
}

}  // namespace

Holes holes_after(const Ranges& ranges) { return ranges.patterns.empty() ? Holes::keep_edges : Holes::laid_out_next; }

std::vector<std::string> asked_stock(const Ranges& ranges) {
    std::vector<std::string> ids;
    for (const PlateChoice& choice : ranges.plates) {
        if (const auto* const stock = std::get_if<StockPlate>(&choice)) ids.push_back(stock->id);
    }
    return ids;
}

bool is_asked_stock(const BaseDetail& detail, const std::vector<std::string>& stock) {
    const auto* const mount = std::get_if<model::PlateOnDeck>(&detail.mount);
    return mount != nullptr && std::find(stock.begin(), stock.end(), mount->plate.id) != stock.end();
}

std::vector<Axis> plate_axes(const Asked& asked) {
    std::vector<Axis> axes;
    if (!asked.ranges.plates.empty()) axes.push_back(plates(asked));
    if (!asked.ranges.thicknesses_in.empty()) axes.push_back(thicknesses(asked));
    if (!asked.ranges.metals.empty()) axes.push_back(metals(asked));
    return axes;
}

}  // namespace toehold::search
