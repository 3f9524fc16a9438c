#pragma once
// Lumber by the name people order it by. A `2x8` is 1 1/2 x 7 1/4 in dressed and dry: American Softwood Lumber Standard
// PS 20, as repeated in NDS Supplement 2018 Table 1A. Treated or wet lumber is a little larger until it dries; strength
// is reckoned on the dry sizes (NDS 2018 4.1.5).
#include <optional>
#include <string>
#include <string_view>

namespace toehold::model {

/// Actual sizes in the order of the name.
struct DressedSize {
    double first_in = 0.0;
    double second_in = 0.0;
};

/// `2x8`, `4x4`, `6x6`, `5/4x6`, `2 1/2x6`; blanks around the sign, a capital X and a times sign are as good. Absent
/// for a name nobody orders: the lesser nominal side is 1, 5/4, 6/4, 2, 2 1/2, 3, 3 1/2 or a whole number from 4, the
/// other a whole number from 2; none above 24.
[[nodiscard]] std::optional<DressedSize> dressed_size(std::string_view name);

/// Whether a section of this width and depth, in either order, is that of the name; false for an empty or unknown one.
[[nodiscard]] bool is_size(std::string_view name, double width_in, double depth_in);

/// What a message offers as examples.
inline constexpr const char* common_sizes = "2x4, 2x6, 2x8, 2x10, 2x12, 4x4, 4x6, 6x6 or another nominal size";

}  // namespace toehold::model
