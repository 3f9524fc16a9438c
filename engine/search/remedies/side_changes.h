#pragma once
// The menu of a post on a member's side, by what is changed: the post and its rows, the metal that holds it, the
// framing that backs it. `menu` puts them together where the mount is one.
#include "search/remedies/menu.h"

namespace toehold::search {

[[nodiscard]] std::vector<Change> side_post_changes(const catalog::Resolved& resolved, const catalog::Catalog& catalog);
[[nodiscard]] std::vector<Change> side_hardware_changes(const catalog::Resolved& resolved,
                                                        const catalog::Catalog& catalog);
[[nodiscard]] std::vector<Change> side_framing_changes(const catalog::Resolved& resolved,
                                                       const catalog::Catalog& catalog);

}  // namespace toehold::search
