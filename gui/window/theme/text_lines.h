#pragma once
// Words set into lines of a width.
#include <wx/string.h>

#include <vector>

class wxGraphicsContext;

namespace toehold::window {

/// At least one line and at most `most`; what does not fit in them ends in an ellipsis. In the context's font.
[[nodiscard]] std::vector<wxString> lines_of(wxGraphicsContext& context, const wxString& text, double width,
                                             std::size_t most);

}  // namespace toehold::window
