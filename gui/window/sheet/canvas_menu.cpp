// The context menu, by the right button or the menu key.
#include "window/sheet/canvas.h"
#include "window/sheet/part_menu.h"

#include <wx/intl.h>
#include <wx/menu.h>

#include <algorithm>

namespace toehold::window {

namespace {

model::Position snapped(drawing::Point at, const model::Plate& plate, const editing::SnapRules& rules) {
    const auto caught = editing::snap(at, plate, {}, rules).at;
    return {caught.x, caught.y};
}

}  // namespace

void SheetCanvas::on_context_menu(wxContextMenuEvent& event) {
    if (doing_ != Doing::nothing) return;
    std::optional<CellKind> kind;
    std::string part;
    std::optional<model::Position> at_in;
    if (event.GetPosition() == wxDefaultPosition) {  // the menu key: of what is selected
        kind = active_;
        if (!session_.selection().empty()) part = session_.selection().back();
    } else {
        const auto pixel = ScreenToClient(event.GetPosition());
        const drawing::Point at{static_cast<double>(pixel.x), static_cast<double>(pixel.y)};
        kind = view_.cell_at(at);
        if (!kind) return;
        activate(*kind);
        if (!contains(view_.areas(*kind).title, at)) part = view_.part_at(*kind, at);
        if (*kind == CellKind::plan)
            at_in = snapped(view_.to_drawing(*kind, at), on_deck(session_.detail()).plate, rules(*kind));
    }
    const auto& selection = session_.selection();
    if (!part.empty() && part != "push" && std::find(selection.begin(), selection.end(), part) == selection.end())
        session_.select({part});

    auto entries = part_menu(session_, part, at_in);
    if (editing::place_of(session_.detail(), part))
        entries.push_back({_("&Place at..."), [this] {
                               if (auto* entry = wxWindow::FindWindowByName("place-x", wxGetTopLevelParent(this)))
                                   entry->SetFocus();
                           }});
    if (!entries.empty()) entries.push_back({{}, {}});
    entries.push_back({_("&Fit this drawing\t0"), [this] { fit_active(); }});
    entries.push_back({view_.alone() ? _("Show &all drawings\tM") : _("This drawing &alone\tM"),
                       [this] { show_alone(view_.alone() ? std::nullopt : std::optional(active_)); }});

    wxMenu menu;
    for (std::size_t i = 0; i < entries.size(); ++i) {
        if (entries[i].label.empty())
            menu.AppendSeparator();
        else
            menu.Append(wxID_HIGHEST + 1000 + static_cast<int>(i), entries[i].label);
    }
    const int chosen = GetPopupMenuSelectionFromUser(menu);
    const auto index = static_cast<std::size_t>(chosen - wxID_HIGHEST - 1000);
    if (chosen != wxID_NONE && index < entries.size() && entries[index].act) entries[index].act();
}

}  // namespace toehold::window
