#pragma once
// What a detail describes, in words for a table: one function a part.
#include "catalog/resolve.h"
#include "demand/framing_demand.h"
#include "units/quantity.h"

#include <string>
#include <vector>

namespace toehold::paper::report {

[[nodiscard]] std::string guard_words(const model::BaseDetail& detail, units::System system);
/// `tube 2 in x 2 in, wall 3/16 in, ASTM A500 Grade B`.
[[nodiscard]] std::string post_words(const catalog::Resolved& resolved, units::System system);
[[nodiscard]] std::string weld_words(const catalog::Resolved& resolved, units::System system);
/// Outline, thickness and metal; a plate of a file of its own with that file and its pinned hash.
[[nodiscard]] std::string plate_words(const catalog::Resolved& resolved, units::System system);

/// Things that are alike, named together.
struct Alike {
    std::string words;
    std::vector<std::string> ids;
};
/// Holes by shape.
[[nodiscard]] std::vector<Alike> holes_alike(const model::Plate& plate, units::System system);
/// Anchors by kind, washers, embedment and protection.
[[nodiscard]] std::vector<Alike> anchors_alike(const catalog::Resolved& resolved, units::System system);

[[nodiscard]] std::string decking_words(const catalog::Resolved& resolved, units::System system);
[[nodiscard]] std::string joists_words(const catalog::Resolved& resolved, units::System system);
[[nodiscard]] std::string rim_words(const catalog::Resolved& resolved, std::size_t rim, units::System system);
[[nodiscard]] std::string support_words(const model::JoistSupport& support, units::System system);
[[nodiscard]] std::string block_words(const catalog::Resolved& resolved, std::size_t block, units::System system);
/// What joins a member's end to what holds it.
[[nodiscard]] std::string connection_words(const model::EndConnection& connection, units::System system);
/// Ends of blocks by what joins them: `block B1 at joist J2`.
[[nodiscard]] std::vector<Alike> block_ends_alike(const model::Framing& framing, units::System system);

}  // namespace toehold::paper::report
