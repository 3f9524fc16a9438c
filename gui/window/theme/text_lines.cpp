#include "window/theme/text_lines.h"

#include <wx/graphics.h>
#include <wx/tokenzr.h>

namespace toehold::window {

namespace {

double width_of(wxGraphicsContext& context, const wxString& text) {
    double width = 0.0;
    context.GetTextExtent(text, &width, nullptr);
    return width;
}

wxString shortened(wxGraphicsContext& context, wxString text, double width) {
    if (width_of(context, text) <= width) return text;
    const wxString ellipsis = wxString::FromUTF8("…");
    while (!text.empty() && width_of(context, text + ellipsis) > width) text.RemoveLast();
    return text.Trim() + ellipsis;
}

}  // namespace

std::vector<wxString> lines_of(wxGraphicsContext& context, const wxString& text, double width, std::size_t most) {
    std::vector<wxString> lines;
    wxString line;
    for (const wxString& word : wxStringTokenize(text, " ")) {
        const wxString longer = line.empty() ? word : line + " " + word;
        const bool last = lines.size() + 1 == most;
        if (!last && !line.empty() && width_of(context, longer) > width) {
            lines.push_back(line);
            line = word;
        } else {
            line = longer;
        }
    }
    lines.push_back(shortened(context, line, width));
    return lines;
}

}  // namespace toehold::window
