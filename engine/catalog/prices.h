#pragma once
// A user's price table: what a shop pays, for comparing details, never for an invoice. Money is in whatever currency
// the table says. The shipped table is of round numbers, invented.
#include "catalog/rows.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace toehold::catalog {

/// Of plate, bar and backing plates of one metal, by weight, cut from stock.
struct MetalPrice {
    std::string metal;    ///< catalog id
    double per_lb = 0.0;  ///< >= 0
};

enum class PricedFastener { lag_screw, wood_screw, bolt, washer };

/// Each piece, and beyond that each inch of its length. A bolt's is with its nut.
struct FastenerPrice {
    PricedFastener kind = PricedFastener::lag_screw;
    std::string size;     ///< catalog id
    std::string grade;    ///< of a bolt; empty: every grade that has no row of its own
    double each = 0.0;    ///< >= 0
    double per_in = 0.0;  ///< >= 0; 0 of a washer
};

struct LumberPrice {
    std::string size;       ///< nominal, `4x8`
    double per_foot = 0.0;  ///< >= 0, of one piece
};

/// What is at a block's end.
enum class PricedConnector { nails, screws, toe_nails, angles, hardware };

struct ConnectorPrice {
    PricedConnector kind = PricedConnector::hardware;
    double each = 0.0;  ///< of all there is at one end of a member, its fasteners included; >= 0
};

struct Prices {
    std::string currency;  ///< `USD`; empty: there is no table
    double per_hole = 0.0;
    double per_cut_in = 0.0;         ///< of the plate's outline
    double reported_fastener = 0.0;  ///< each, whatever its length
    std::vector<MetalPrice> metals;
    std::vector<FastenerPrice> fasteners;
    std::vector<LumberPrice> lumber;
    std::vector<ConnectorPrice> connectors;
    Source source;
};

/// Absent where the table has no row for it.
[[nodiscard]] std::optional<double> metal_price_per_lb(const Prices& prices, std::string_view metal);
/// Of one fastener; `length_in` is under the head. A bolt's row of this grade comes before one of every grade.
[[nodiscard]] std::optional<double> fastener_price(const Prices& prices, PricedFastener kind, std::string_view size,
                                                   std::string_view grade, double length_in);
/// Per foot of a piece of this section, whichever way up it lies.
[[nodiscard]] std::optional<double> lumber_price_per_foot(const Prices& prices, double width_in, double depth_in);
[[nodiscard]] std::optional<double> connector_price(const Prices& prices, PricedConnector kind);

}  // namespace toehold::catalog
