#pragma once
// All catalogs together, and looking a row up by its id. Ids are exact; `closest_ids` helps the error message.
#include "catalog/prices.h"
#include "catalog/rows.h"
#include "model/plate.h"

#include <string_view>
#include <vector>

namespace toehold::catalog {

struct Catalog {
    std::vector<Species> species;
    std::vector<LumberGrade> grades;
    std::vector<LagScrewSize> lag_screws;
    std::vector<WoodScrewSize> wood_screws;
    std::vector<BoltSize> bolts;
    std::vector<BoltGrade> bolt_grades;
    std::vector<WasherSize> washers;
    std::vector<Metal> metals;
    std::vector<Filler> fillers;
    std::vector<DeckingMaterial> decking;
    std::vector<model::Plate> stock_plates;
    Prices prices;  ///< without a currency where the data folder holds none
};

/// The row with this id; nullptr when there is none.
template <class Row>
[[nodiscard]] const Row* find(const std::vector<Row>& rows, std::string_view id) {
    for (const Row& row : rows) {
        if (row.id == id) return &row;
    }
    return nullptr;
}

/// A rectangular piece; which side is up does not matter.
struct Section {
    double thickness_in = 0.0;  ///< the smaller face
    double width_in = 0.0;      ///< the wider face
};
/// Actual sizes: over 4 in thick is a timber (5 in nominal is 4 1/2), and one over 2 in wider than thick a beam.
[[nodiscard]] WoodUse use_of(const Section& section);
/// The row of a species' grade for such a piece, whose size class holds its wider face; nullptr when there is none.
[[nodiscard]] const LumberGrade* find_grade(const Catalog& catalog, std::string_view species, std::string_view grade,
                                            const Section& section);

}  // namespace toehold::catalog
