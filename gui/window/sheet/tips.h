#pragma once
// What a part says of itself when the pointer rests on it: its name, its size, its figures.
#include "session/session.h"

#include <string>

namespace toehold::window {

/// A few lines, in the reader's language and units. Empty for no part.
[[nodiscard]] std::string tip(const model::PartId& part, const session::Session& session,
                              const drawing::Overlay& overlay);
/// `Hole A`, `Block B1`, `Push`.
[[nodiscard]] std::string part_name(const model::PartId& part, const format::Locale& locale);

}  // namespace toehold::window
