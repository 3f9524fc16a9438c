#pragma once
// What a detail describes, in words for a table: one function a part.
#include "catalog/resolve.h"
#include "demand/framing_demand.h"
#include "format/phrase.h"

#include <string>
#include <vector>

namespace toehold::paper::report {

[[nodiscard]] format::Phrase guard_words(const model::BaseDetail& detail);
/// `tube 2 in x 2 in, wall 3/16 in, ASTM A500 Grade B`.
[[nodiscard]] format::Phrase post_words(const catalog::Resolved& resolved);
[[nodiscard]] format::Phrase weld_words(const catalog::Resolved& resolved);
/// Outline, thickness and metal; a plate of a file of its own with that file and its pinned hash.
[[nodiscard]] format::Phrase plate_words(const catalog::Resolved& resolved);

/// Things whose words read the same, named together.
struct Alike {
    std::string words;
    std::vector<std::string> ids;
};
/// Puts the id with those of the same words.
void add_alike(std::vector<Alike>& all, std::string words, std::string id);
/// Holes by shape.
[[nodiscard]] std::vector<Alike> holes_alike(const model::Plate& plate, const format::Locale& locale);
/// Anchors by kind, washers, embedment and protection.
[[nodiscard]] std::vector<Alike> anchors_alike(const catalog::Resolved& resolved, const format::Locale& locale);

[[nodiscard]] format::Phrase decking_words(const catalog::Resolved& resolved);
[[nodiscard]] format::Phrase joists_words(const catalog::Resolved& resolved);
[[nodiscard]] format::Phrase rim_words(const catalog::Resolved& resolved, std::size_t rim);
[[nodiscard]] format::Phrase support_words(const model::JoistSupport& support);
[[nodiscard]] format::Phrase block_words(const catalog::Resolved& resolved, std::size_t block);
/// What joins a member's end to what holds it.
[[nodiscard]] format::Phrase connection_words(const model::EndConnection& connection);
/// Ends of blocks by what joins them: `block B1 at joist J2`.
[[nodiscard]] std::vector<Alike> block_ends_alike(const model::Framing& framing, const format::Locale& locale);

}  // namespace toehold::paper::report
