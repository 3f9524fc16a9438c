#include "window/panels/verdict_strip.h"

#include "format/figures.h"
#include "window/text.h"
#include "window/theme/status_marks.h"
#include "window/theme/text_layout.h"

#include <wx/dcbuffer.h>
#include <wx/graphics.h>

#include <algorithm>
#include <memory>
#include <utility>

namespace toehold::window {

namespace {

constexpr double height = 66.0, margin = 10.0;  // DIP
constexpr double dip_per_mm = pixels_per_mm;

/// The frame around a status, in the line the palette gives it.
void draw_frame(wxGraphicsContext& context, const drawing::Stroke& stroke, wxRect2DDouble box, double unit) {
    const double width = std::max(1.0, stroke.width_mm * dip_per_mm * unit);
    wxGraphicsPenInfo pen(colour(stroke.colour), width);
    std::vector<wxDash> dashes;
    for (const double dash : stroke.dashes_mm) {
        dashes.push_back(static_cast<wxDash>(std::clamp(dash * dip_per_mm * unit / width, 1.0, 100.0)));
    }
    if (!dashes.empty()) pen.Style(wxPENSTYLE_USER_DASH).Dashes(static_cast<int>(dashes.size()), dashes.data());
    context.SetPen(context.CreatePen(pen));
    context.SetBrush(*wxTRANSPARENT_BRUSH);
    context.DrawRectangle(box.m_x, box.m_y, box.m_width, box.m_height);
    if (!stroke.doubled) return;
    box.Inset(2.0 * width + unit, 2.0 * width + unit);
    context.DrawRectangle(box.m_x, box.m_y, box.m_width, box.m_height);
}

wxString spoken(const VerdictWords& words) {
    return words.word + ": " + words.reason + " " + words.governing + " " + words.freshness;
}

}  // namespace

VerdictStrip::VerdictStrip(wxWindow* parent, std::function<VerdictWords()> words)
    : wxPanel(parent, wxID_ANY, wxDefaultPosition, wxDefaultSize, wxTAB_TRAVERSAL | wxFULL_REPAINT_ON_RESIZE),
      ask_(std::move(words)),
      words_(ask_()) {
    SetName("verdict");
    SetBackgroundStyle(wxBG_STYLE_PAINT);
    SetMinSize(FromDIP(wxSize(200, static_cast<int>(height))));
    Bind(wxEVT_PAINT, [this](wxPaintEvent&) { paint(); });
}

void VerdictStrip::apply_theme(const Theme& theme) {
    theme_ = theme;
    refresh();
}

const VerdictWords& VerdictStrip::words() const { return words_; }

void VerdictStrip::refresh() {
    words_ = ask_();
    const wxString said = spoken(words_);
    if (GetLabel() != said) {
        SetLabel(said);
        SetToolTip(said);
    }
    Refresh();
}

double VerdictStrip::unit(double dip) const { return dip * FromDIP(100) / 100.0; }

double VerdictStrip::draw_word(wxGraphicsContext& context, double left) const {
    context.SetFont(lettering(points::verdict, true), words_.stale ? theme_.faded : theme_.ink);
    double width = 0.0, text_height = 0.0;
    context.GetTextExtent(words_.word, &width, &text_height);
    const double padding = unit(14.0), high = unit(height - 2.0 * margin);
    const wxRect2DDouble box(left, unit(margin), width + 2.0 * padding, high);
    draw_frame(context, drawing::stroke(words_.frame, theme_.ground), box, unit(1.0));
    context.DrawText(words_.word, left + padding, box.m_y + 0.5 * (high - text_height));
    return left + box.m_width;
}

void VerdictStrip::draw_reason(wxGraphicsContext& context, double left, double width) const {
    context.SetFont(lettering(points::body), words_.stale ? theme_.faded : theme_.ink);
    const std::vector<wxString> lines = lines_of(context, words_.reason, width, 3);
    constexpr double step = 17.0;
    double top = unit(0.5 * (height - step * static_cast<double>(lines.size())));
    for (const wxString& line : lines) {
        context.DrawText(line, left, top);
        top += unit(step);
    }
}

void VerdictStrip::draw_governing(wxGraphicsContext& context, double left, double width) const {
    context.SetFont(lettering(points::small, true), words_.stale ? theme_.faded : theme_.ink);
    const double bar_top = unit(margin + 20.0), bar_high = unit(5.0);
    wxString first = words_.governing;
    if (words_.ratio) first = text_of(format::ratio_text(*words_.ratio)) + "  " + first;
    context.DrawText(lines_of(context, first, width, 1).front(), left, unit(margin - 1.0));
    if (words_.no_path) {
        // Nothing to hold it against: the demand breaks off.
        context.SetPen(*wxTRANSPARENT_PEN);
        context.SetBrush(wxBrush(theme_.demand));
        context.DrawRectangle(left, bar_top, width, bar_high);
        context.SetPen(wxPen(theme_.paper, static_cast<int>(unit(3.0))));
        for (const double back : {14.0, 22.0}) {
            const double at = left + width - unit(back);
            context.StrokeLine(at, bar_top + bar_high + unit(2.0), at + unit(5.0), bar_top - unit(2.0));
        }
    }
    if (words_.ratio) {
        // The capacity is the length; the demand is laid over it, and where it is more, runs past its end.
        const double longest = std::max(1.0, *words_.ratio), capacity = width / longest;
        context.SetPen(wxPen(theme_.capacity));
        context.SetBrush(*wxTRANSPARENT_BRUSH);
        context.DrawRectangle(left, bar_top - unit(2.0), capacity, bar_high + unit(4.0));
        context.SetPen(*wxTRANSPARENT_PEN);
        context.SetBrush(wxBrush(theme_.demand));
        context.DrawRectangle(left, bar_top, width * *words_.ratio / longest, bar_high);
    }
    context.SetFont(lettering(points::fine), theme_.faded);
    context.DrawText(lines_of(context, words_.freshness, width, 1).front(), left, bar_top + unit(8.0));
}

void VerdictStrip::paint() {
    wxAutoBufferedPaintDC dc(this);
    dc.SetBackground(wxBrush(theme_.paper));
    dc.Clear();
    const std::unique_ptr<wxGraphicsContext> context(wxGraphicsContext::Create(dc));
    if (!context) return;
    const double whole = GetClientSize().GetWidth();
    context->SetPen(wxPen(theme_.ink));
    context->StrokeLine(0.0, 0.5, whole, 0.5);
    const double after_word = draw_word(*context, unit(margin)) + unit(16.0);
    const double governing_width = std::min(unit(320.0), 0.3 * whole);
    const double governing_left = whole - unit(margin) - governing_width;
    draw_reason(*context, after_word, std::max(0.0, governing_left - unit(20.0) - after_word));
    draw_governing(*context, governing_left, governing_width);
}

}  // namespace toehold::window
