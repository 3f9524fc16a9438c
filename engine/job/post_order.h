#pragma once
// A post as it is ordered, from the words of the order to the post of a detail.
#include "job/job.h"

#include <optional>
#include <string>
#include <string_view>

namespace toehold::job {

/// `2x2x1/8 steel`, `round 1.9x0.145 steel`, `4x4 wood`: the material is the last word. Absent: fewer than two words.
[[nodiscard]] std::optional<PostOrder> read_post(std::string_view text);
[[nodiscard]] std::string text_of(const PostOrder& order);
/// What `read_post` and `metal_section` take, for a message.
[[nodiscard]] format::Phrase accepted_posts();

[[nodiscard]] bool is_wood(const PostOrder& order);
/// The catalog's metal for the order: the usual one for the word `steel`, `stainless` or `aluminum` and the section's
/// form, else the one with this id. Empty: none, or one whose standard guarantees no strength.
[[nodiscard]] std::string metal_of(const PostOrder& order, const catalog::Catalog& catalog);
/// Whether the order names the metal itself and not only its kind.
[[nodiscard]] bool names_metal(const PostOrder& order);

/// Tube or solid bar of the ordered section; absent where the section's text is none. The metal is left empty.
[[nodiscard]] std::optional<model::Post> metal_section(std::string_view section);

}  // namespace toehold::job
