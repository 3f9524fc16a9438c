#pragma once
// Changes of a post on a member's side that move its fasteners and its own ends. Heights are down from the top edge of
// the member it is fastened to, in. As those of a plate, refused where they do not go with the rest, and meaningless
// of another mount.
#include "model/base_detail.h"
#include "search/changes/applied.h"

#include <optional>
#include <vector>

namespace toehold::search {

/// Whether the detail's post is fastened to a member's side.
[[nodiscard]] bool is_on_side(const model::BaseDetail& detail);
/// What a change of such a post says of any other mount.
[[nodiscard]] Applied not_on_side();

/// Heights of the rows of fasteners, the uppermost first: places within 1/4 in are one row. Empty of another mount.
[[nodiscard]] std::vector<double> side_rows(const model::BaseDetail& detail);

/// The uppermost and the lowest row of fasteners.
struct RowHeights {
    double upper_in = 0.0;  ///< > 0
    double lower_in = 0.0;  ///< > upper
    friend bool operator==(const RowHeights&, const RowHeights&) = default;
};

/// As far apart as 4 D to the member's edges and to the post's lower end allow, in quarter inches (NDS 2018 Table
/// 12.5.1C, an edge loaded across the grain, with which these ends and edges keep what every state asks of them);
/// through a bracket's plate no more than 5 in (12.5.1.3). `diameter_in`: of the fasteners. Absent: they would not be 1
/// in apart, or the mount is another.
[[nodiscard]] std::optional<RowHeights> widest_rows(const model::BaseDetail& detail, double diameter_in);

/// The rows there, those between in proportion, and ties with the row they hang at. A bracket keeps its edges as far
/// from its holes, and the post its end from the bracket.
Applied set_rows(model::BaseDetail& detail, const RowHeights& rows);
/// Where one row holds the post: as many fasteners again, at this height.
Applied add_row(model::BaseDetail& detail, double below_top_in);
/// The post's lower end; never above its lowest fastener.
Applied set_post_bottom(model::BaseDetail& detail, double below_top_in);

}  // namespace toehold::search
