#pragma once
// What a check or a finding is called, where only its id is at hand.
#include "format/phrase.h"

#include <string>

namespace toehold::wording {

/// The title of the check or the finding; of an id that none has, the id itself.
[[nodiscard]] format::Phrase title_of(const std::string& id);

}  // namespace toehold::wording
