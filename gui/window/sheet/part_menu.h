#pragma once
// What can be done with a part, or with a place of the plan, by the context menu.
#include "session/session.h"

#include <wx/string.h>

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace toehold::window {

struct MenuEntry {
    wxString label;  ///< with its mnemonic; empty: a line between groups
    std::function<void()> act;
};

/// For the parts selected, `part` being the one under the pointer; `at_in`: the place in plan, where there is one.
[[nodiscard]] std::vector<MenuEntry> part_menu(session::Session& session, const std::string& part,
                                               const std::optional<model::Position>& at_in);

}  // namespace toehold::window
