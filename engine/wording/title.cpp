#include "wording/title.h"

#include "checks/registry.h"

#include <algorithm>

namespace toehold::wording {
namespace {

using format::Phrase;

template <class Entries>
const Phrase* title_among(const Entries& entries, const std::string& id) {
    const auto found =
        std::find_if(entries.begin(), entries.end(), [&id](const auto& entry) { return entry.id == id; });
    return found == entries.end() ? nullptr : &found->title;
}

}  // namespace

Phrase title_of(const std::string& id) {
    if (const Phrase* const title = title_among(checks::registered_checks(), id)) return *title;
    if (const Phrase* const title = title_among(checks::registered_findings(), id)) return *title;
    return format::verbatim(id);
}

}  // namespace toehold::wording
