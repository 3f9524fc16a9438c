#include "window/controls/picture_choice.h"

#include "window/controls/scene_pane.h"
#include "window/theme/text_layout.h"

#include <wx/dcbuffer.h>
#include <wx/graphics.h>

#include <algorithm>
#include <memory>
#include <utility>

namespace toehold::window {
namespace {

constexpr int picture_high = 64, words_high = 30;  // DIP

}  // namespace

PictureChoice::PictureChoice(wxWindow* parent, const wxString& name, std::function<void(std::size_t)> chosen)
    : chosen_(std::move(chosen)) {
    SetBackgroundStyle(wxBG_STYLE_PAINT);
    Create(parent, wxID_ANY, wxDefaultPosition, wxDefaultSize,
           wxBORDER_NONE | wxWANTS_CHARS | wxTAB_TRAVERSAL | wxFULL_REPAINT_ON_RESIZE, name);
    SetMinSize(FromDIP(wxSize(300, picture_high + words_high)));
    Bind(wxEVT_PAINT, [this](wxPaintEvent&) { paint(); });
    Bind(wxEVT_KEY_DOWN, &PictureChoice::on_key, this);
    Bind(wxEVT_LEFT_DOWN, [this](wxMouseEvent& event) {
        SetFocus();
        for (std::size_t number = 0; number < pictures_.size(); ++number) {
            if (cell(number).Contains(event.GetPosition())) return pick(number);
        }
    });
    const auto focus = [this](wxFocusEvent& event) {
        Refresh(false);
        event.Skip();
    };
    Bind(wxEVT_SET_FOCUS, focus);
    Bind(wxEVT_KILL_FOCUS, focus);
}

void PictureChoice::show(std::vector<Picture> pictures) {
    pictures_ = std::move(pictures);
    Refresh(false);
}

void PictureChoice::select(std::size_t number) {
    selected_ = number;
    if (number < pictures_.size()) SetLabel(pictures_[number].words);
    Refresh(false);
}

void PictureChoice::apply_theme(const Theme& theme) {
    theme_ = theme;
    Refresh(false);
}

wxRect PictureChoice::cell(std::size_t number) const {
    const wxSize all = GetClientSize();
    const int count = std::max(1, static_cast<int>(pictures_.size())), place = static_cast<int>(number);
    const int left = all.x * place / count, right = all.x * (place + 1) / count;
    return {left, 0, right - left, all.y};
}

void PictureChoice::pick(std::size_t number) {
    if (number == selected_) return;
    select(number);
    chosen_(number);
}

void PictureChoice::on_key(wxKeyEvent& event) {
    const std::size_t last = pictures_.empty() ? 0 : pictures_.size() - 1;
    switch (event.GetKeyCode()) {
        case WXK_LEFT:
        case WXK_UP:
            return pick(selected_ == 0 ? 0 : selected_ - 1);
        case WXK_RIGHT:
        case WXK_DOWN:
            return pick(std::min(selected_ + 1, last));
        case WXK_HOME:
            return pick(0);
        case WXK_END:
            return pick(last);
        case WXK_TAB:
            Navigate(event.ShiftDown() ? wxNavigationKeyEvent::IsBackward : wxNavigationKeyEvent::IsForward);
            return;
        default:
            event.Skip();
    }
}

void PictureChoice::paint() {
    wxAutoBufferedPaintDC dc(this);
    dc.SetBackground(wxBrush(theme_.paper));
    dc.Clear();
    for (std::size_t number = 0; number < pictures_.size(); ++number) draw(dc, number);
}

void PictureChoice::draw(wxDC& dc, std::size_t number) const {
    const wxRect all = wxRect(cell(number)).Deflate(FromDIP(2));
    const bool chosen = number == selected_;
    dc.SetPen(chosen ? wxPen(theme_.ink, 2) : wxPen(theme_.line));
    dc.SetBrush(wxBrush(chosen ? mixed(theme_.ink, theme_.paper, 0.08) : theme_.paper));
    dc.DrawRectangle(all);
    const wxRect picture(all.x + 2, all.y + 2, all.width - 4, all.height - FromDIP(words_high) - 2);
    paint_scene(dc, pictures_[number].scene, picture, theme_.ground);
    const std::unique_ptr<wxGraphicsContext> context(wxGraphicsContext::CreateFromUnknownDC(dc));
    if (!context) return;
    context->SetFont(lettering(points::fine, chosen), theme_.ink);
    const std::vector<wxString> lines = lines_of(*context, pictures_[number].words, all.width - 6.0, 2);
    double width = 0.0, height = 0.0;
    context->GetTextExtent("Xg", &width, &height);
    double top = picture.GetBottom() + 0.5 * (FromDIP(words_high) - height * static_cast<double>(lines.size()));
    for (const wxString& line : lines) {
        context->GetTextExtent(line, &width, nullptr);
        context->DrawText(line, all.x + 0.5 * (all.width - width), top);
        top += height;
    }
    if (!chosen || !HasFocus()) return;
    dc.SetBrush(*wxTRANSPARENT_BRUSH);
    dc.SetPen(wxPen(theme_.selection, 1, wxPENSTYLE_DOT));
    dc.DrawRectangle(wxRect(all).Deflate(FromDIP(3)));
}

}  // namespace toehold::window
