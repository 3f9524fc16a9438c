#pragma once
// Changes of the anchors, of every one of them alike. As those of the plate, refused where they do not go with the
// rest.
#include "catalog/catalog.h"
#include "model/base_detail.h"
#include "search/changes/applied.h"
#include "search/changes/plate.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace toehold::search {

/// A fastener by catalog id, with what goes with its size.
struct FastenerSize {
    std::string size;   ///< catalog id
    std::string grade;  ///< of a bolt; empty of a screw
    double diameter_in = 0.0;
    double hole_in = 0.0;     ///< standard hole in the plate, D + 1/16 in to the next drill in 1/64 in
    std::string wide_washer;  ///< catalog id; empty: the catalog has none
    std::vector<std::string> plate_washers = {};  ///< round plate washers with a hole of this size, catalog ids
    enum class Kind { lag_screw, wood_screw, bolt } kind = Kind::lag_screw;
};

/// Absent where no catalog knows the size or the grade.
[[nodiscard]] std::optional<FastenerSize> fastener_size(const catalog::Catalog& catalog, std::string_view size,
                                                        std::string_view grade = {});
/// The catalog's plain round washer for this diameter, of those whose id begins `washer-wide-` or `washer-narrow-`;
/// empty where it has none.
[[nodiscard]] std::string plain_washer(const catalog::Catalog& catalog, double diameter_in, bool wide);

/// Every anchor this one; where there was a washer under the head, the wide one of its size, or a plate washer as large
/// as the one there was. A screw keeps its length,
/// and is refused where there was none (a bolt before it); `length_in` says it then. A bolt has a wide washer below
/// unless there was a plate. The holes are drilled for it.
Applied set_fastener(model::BaseDetail& detail, const FastenerSize& size, std::optional<double> length_in, Holes holes);
/// The same in the holes as they are: refused where one is too narrow, or wider than standard by more than 1/32 in.
Applied set_fastener_in_holes(model::BaseDetail& detail, const FastenerSize& size, std::optional<double> length_in);
/// Of screws under the head, the thread the standard's least for it; meaningless of other fasteners.
Applied set_screw_length(model::BaseDetail& detail, double length_in);
/// Whether every anchor is a bolt through the framing.
[[nodiscard]] bool all_bolts(const model::BaseDetail& detail);
/// Bolts whose length was stated become as long as they must be.
void bolts_to_suit(model::BaseDetail& detail);
/// What the nuts bear on; meaningless where an anchor is no bolt.
Applied set_below(model::BaseDetail& detail, const decltype(model::ThroughBolt::below)& below);
/// Catalog id of the size every anchor has; empty where they differ or have none (a fastener from a report).
[[nodiscard]] std::string common_size(const model::BaseDetail& detail);

}  // namespace toehold::search
