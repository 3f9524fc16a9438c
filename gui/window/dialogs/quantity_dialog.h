#pragma once
// A small dialog of typed quantities: each row a label and a value as people write it, refused in place with what
// would be accepted.
#include "units/quantity.h"

#include <wx/string.h>

#include <optional>
#include <vector>

class wxWindow;

namespace toehold::window {

struct Row {
    enum class Kind { quantity, count, choice };
    wxString label;  ///< with its mnemonic
    Kind kind = Kind::quantity;
    double start = 0.0;  ///< engine units, a count, or the number of a choice
    units::Kind quantity = units::Kind::length;
    int least = 1;  ///< of a count
    std::vector<wxString> choices = {};
};

/// One value a row, in engine units; absent: cancelled.
[[nodiscard]] std::optional<std::vector<double>> ask_quantities(wxWindow* parent, const wxString& title,
                                                                const std::vector<Row>& rows, units::System system);

}  // namespace toehold::window
