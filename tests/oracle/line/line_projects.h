#pragma once
// Guard lines, invented, whose every post is unlike its neighbor, and whose ranges are wide.
#include "oracle/line/line_in_z88.h"

namespace toehold::test {

/// Spliced between the second post and the corner, and broken at the post behind the corner.
[[nodiscard]] LineProject spliced();
/// Let in between its posts.
[[nodiscard]] LineProject let_in();
/// A level span, two down a stair in one piece, and round a corner level again, past the last post into the air.
[[nodiscard]] LineProject stair();

}  // namespace toehold::test
