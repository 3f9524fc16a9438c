#include "window/theme/text_layout.h"

#include "drawing/render/subscripts.h"

#include <wx/graphics.h>
#include <wx/tokenzr.h>

#include <algorithm>

namespace toehold::window {
namespace {

wxFont lowered(const wxFont& font) { return font.Scaled(0.78F); }

/// Width of a word, and the word itself set where `at` says: one function, so that what is measured is what is set.
int word(wxDC& dc, const wxString& text, const TextStyle& style, const wxPoint* at) {
    if (style.setting == Setting::plain || text.Find('_') == wxNOT_FOUND) {
        dc.SetFont(style.font);
        if (at != nullptr) dc.DrawText(text, *at);
        return dc.GetTextExtent(text).x;
    }
    dc.SetFont(style.font);
    const int drop = dc.GetCharHeight() / 3;
    int width = 0;
    const std::string symbol = text.utf8_string();
    for (const drawing::SymbolRun& run : drawing::symbol_runs(symbol)) {
        const wxString letters = wxString::FromUTF8(run.words.data(), run.words.size());
        dc.SetFont(run.lowered ? lowered(style.font) : style.font);
        if (at != nullptr) dc.DrawText(letters, at->x + width, at->y + (run.lowered ? drop : 0));
        width += dc.GetTextExtent(letters).x;
    }
    dc.SetFont(style.font);
    return width;
}

int line_height(wxDC& dc, const TextStyle& style) {
    dc.SetFont(style.font);
    return dc.GetCharHeight() + (style.setting == Setting::symbols ? dc.GetCharHeight() / 6 : 0);
}

/// Calls `set` with every word and the place where it stands.
template <class Set>
int lay(wxDC& dc, const wxString& words, int width, const TextStyle& style, const Set& set) {
    const int height = line_height(dc, style);
    if (words.empty()) return height;
    if (line_width(dc, words, style) <= width) {
        set(words, wxPoint(0, 0));
        return height;
    }
    const int blank = dc.GetTextExtent(" ").x;
    int x = 0, y = 0;
    wxStringTokenizer rest(words, " ");
    while (rest.HasMoreTokens()) {
        const wxString next = rest.GetNextToken();
        const int wide = word(dc, next, style, nullptr);
        if (x > 0 && x + wide > width) {
            x = 0;
            y += height;
        }
        set(next, wxPoint(x, y));
        x += wide + blank;
    }
    return y + height;
}

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

int line_width(wxDC& dc, const wxString& words, const TextStyle& style) { return word(dc, words, style, nullptr); }

int flow_height(wxDC& dc, const wxString& words, int width, const TextStyle& style) {
    return lay(dc, words, width, style, [](const wxString&, const wxPoint&) {});
}

int flow(wxDC& dc, const wxString& words, const wxPoint& at, int width, const TextStyle& style) {
    dc.SetTextForeground(style.colour);
    return lay(dc, words, width, style, [&](const wxString& one, const wxPoint& place) {
        const wxPoint corner = at + place;
        word(dc, one, style, &corner);
    });
}

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
