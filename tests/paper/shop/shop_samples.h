#pragma once
// Details whose shop drawings are looked at: those shipped, and plates of uncommon shape on one of them.
#include "catalog/resolve.h"
#include "paper/papers.h"

namespace toehold::test::shop {

struct ShopSample {
    std::string name;
    catalog::Resolved resolved;
};

/// A shipped detail by its file's name without folder and ending, changed or not.
[[nodiscard]] catalog::Resolved shipped(const std::string& name);
[[nodiscard]] catalog::Resolved shipped_with(const std::string& name, model::Plate plate);
[[nodiscard]] std::vector<ShopSample> all_shipped();
/// Every stock plate, and invented ones: L, many-sided, round, long, with slots aslant, with many holes, with a wood
/// post in a bolted shoe, with long names.
[[nodiscard]] std::vector<ShopSample> plates_of_all_shapes();

/// With a date and a file's name, on tabloid in inches or A3 in mm.
[[nodiscard]] paper::Sheet drawn(const catalog::Resolved& resolved, units::System system);

}  // namespace toehold::test::shop
