#pragma once
// A finding as a paragraph: which side of a comparison says it, its severity, what it is about, the message, the
// clause.
#include "checks/result.h"
#include "format/phrase.h"

#include <string>

namespace toehold::exporting {

/// `side` stands first, where it is not empty.
[[nodiscard]] std::string finding_line(const checks::Finding& finding, const format::Phrase& side,
                                       const format::Locale& locale);

}  // namespace toehold::exporting
