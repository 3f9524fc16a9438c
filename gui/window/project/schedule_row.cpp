#include "window/project/schedule_row.h"

#include "format/figures.h"
#include "review/line/line_review.h"
#include "window/text.h"
#include "window/theme/status_marks.h"
#include "window/theme/text_layout.h"
#include "wording/status.h"

#include <wx/intl.h>

#include <algorithm>
#include <string>

namespace toehold::window {
namespace {

constexpr int frame_wide = 52, frame_high = 24, pad = 6;

struct Places {
    int mark_left = 0, mark_wide = 0;
    int mount_left = 0, mount_wide = 0;
    int cause_left = 0, cause_wide = 0;
    int tension_right = 0, share_right = 0;
};

Places places(const wxRect& area) {
    Places all;
    const int number = std::clamp(area.width / 8, 56, 84);
    all.share_right = area.x + area.width - pad;
    all.tension_right = all.share_right - number;
    all.mark_left = area.x + pad + frame_wide + gap::normal;
    all.mark_wide = 44;
    all.mount_left = all.mark_left + all.mark_wide + gap::small;
    all.mount_wide = std::clamp(area.width / 6, 60, 120);
    all.cause_left = all.mount_left + all.mount_wide + gap::small;
    all.cause_wide = std::max(80, all.tension_right - number - all.cause_left);
    return all;
}

void set_right(wxDC& dc, const wxString& words, int right, int y, const TextStyle& how) {
    flow(dc, words, {right - line_width(dc, words, how), y}, 1000, how);
}

std::string frame_text(const solving::PostOutcome& outcome) {
    if (outcome.cause.ratio) return format::ratio_text(*outcome.cause.ratio);
    return outcome.verdict == review::Verdict::incomplete ? "?" : "–";
}

/// `Anchor withdrawal, anchor A`; of an adequate post what is nearest its limit.
wxString cause_words(const session::ScheduleEntry& entry, const format::Locale& locale) {
    if (entry.outcome == nullptr) return _("not reviewed yet");
    const review::Cause& cause = entry.outcome->cause;
    if (cause.id.empty()) return text_of(entry.outcome->reason, locale);
    return text_of(wording::result(cause.title, cause.part), locale);
}

wxString tension_words(const session::ScheduleEntry& entry, const format::Locale& locale) {
    if (entry.outcome == nullptr || !entry.outcome->tension) return wxString::FromUTF8("–");
    return text_of(format::figure_text(entry.outcome->tension->tension_lb, "lb", locale.system));
}

wxString share_words(const session::ScheduleEntry& entry) {
    return entry.share == nullptr ? wxString::FromUTF8("–") : text_of(format::ratio_text(entry.share->share));
}

/// Where neighbors are counted on, what the post comes to by itself; empty: they are not.
wxString lone_words(const session::ScheduleEntry& entry, const format::Locale& locale) {
    if (entry.share == nullptr || !entry.share->lone_verdict) return {};
    const wxString verdict = text_of(wording::word(*entry.share->lone_verdict), locale);
    if (!entry.share->lone) return wxString::Format(_("By itself: %s"), verdict);
    return wxString::Format(_("By itself: %s, %s"), verdict, text_of(format::ratio_text(entry.share->lone->ratio)));
}

int heading_row(wxDC& dc, const session::ScheduleEntry& entry, const wxRect& area, const ScheduleStyle& style,
                bool paint) {
    if (entry.heading.empty()) return 0;
    const TextStyle how{lettering(points::small, true), style.theme.ink};
    const wxString words = text_of(entry.heading, style.locale);
    const int wide = area.width - 2 * pad, high = flow_height(dc, words, wide, how) + 8;
    if (!paint) return high;
    dc.SetPen(*wxTRANSPARENT_PEN);
    dc.SetBrush(wxBrush(style.theme.band));
    dc.DrawRectangle(area.x, area.y, area.width, high);
    flow(dc, words, {area.x + pad, area.y + 4}, wide, how);
    return high;
}

void paint_frame(wxDC& dc, const session::ScheduleEntry& entry, const wxRect& at, const ScheduleStyle& style) {
    if (entry.outcome == nullptr) return;
    const MarkSize size{(at.width - 6) / pixels_per_mm, (at.height - 6) / pixels_per_mm};
    paint_mark(dc,
               framed(frame_text(*entry.outcome), status_of(entry.outcome->verdict), size, drawing::TextSize::small),
               at, style.theme.ground);
    if (!entry.stale) return;
    const wxColour& ground = style.theme.paper;
    dc.SetPen(*wxTRANSPARENT_PEN);
    dc.SetBrush(wxBrush(wxColour(ground.Red(), ground.Green(), ground.Blue(), 150)));
    dc.DrawRectangle(at);
}

}  // namespace

int schedule_row(wxDC& dc, const session::ScheduleEntry& entry, const wxRect& area, const ScheduleStyle& style,
                 bool paint) {
    const Places all = places(area);
    const int top = area.y + heading_row(dc, entry, area, style, paint);
    const bool pale = entry.stale || entry.outcome == nullptr;
    const TextStyle mark{lettering(points::body, true), style.theme.ink};
    const TextStyle words{lettering(points::small), pale ? style.theme.faded : style.theme.ink};
    const TextStyle shares{lettering(points::small), style.shares_are_old ? style.theme.faded : style.theme.ink};
    const TextStyle fine{lettering(points::fine), style.theme.faded};
    wxString cause = cause_words(entry, style.locale);
    if (entry.stale && entry.outcome != nullptr) cause = wxString(_("out of date")) + ": " + cause;
    const wxString lone = lone_words(entry, style.locale);
    const int cause_high = flow_height(dc, cause, all.cause_wide, words);
    const int lone_high = lone.empty() ? 0 : flow_height(dc, lone, all.cause_wide, fine);
    const int mount_high = flow_height(dc, text_of(entry.mount), all.mount_wide, words);
    if (paint) {
        paint_frame(dc, entry, {area.x + pad, top + 3, frame_wide, frame_high}, style);
        flow(dc, text_of(entry.post), {all.mark_left, top + 6}, all.mark_wide, mark);
        flow(dc, text_of(entry.mount), {all.mount_left, top + 6}, all.mount_wide, words);
        flow(dc, cause, {all.cause_left, top + 6}, all.cause_wide, words);
        if (!lone.empty()) flow(dc, lone, {all.cause_left, top + 6 + cause_high}, all.cause_wide, fine);
        set_right(dc, tension_words(entry, style.locale), all.tension_right, top + 6, words);
        set_right(dc, share_words(entry), all.share_right, top + 6, shares);
    }
    return top - area.y + std::max({cause_high + lone_high + 12, mount_high + 12, frame_high + 6});
}

void schedule_titles(wxDC& dc, const wxRect& area, const Theme& theme) {
    const Places all = places(area);
    const TextStyle how{lettering(points::fine), theme.faded};
    const int low = area.y + area.height - flow_height(dc, "Xg", 1000, how) - 3;
    flow(dc, _("Ratio"), {area.x + pad, low}, frame_wide, how);
    flow(dc, _("Post"), {all.mark_left, low}, all.mark_wide, how);
    flow(dc, _("Mount"), {all.mount_left, low}, all.mount_wide, how);
    flow(dc, _("First cause, or nearest its limit"), {all.cause_left, low}, all.cause_wide, how);
    set_right(dc, _("Tension"), all.tension_right, low, how);
    set_right(dc, _("Share"), all.share_right, low, how);
    dc.SetPen(wxPen(theme.line));
    dc.DrawLine(area.x, area.y + area.height - 1, area.x + area.width, area.y + area.height - 1);
}

}  // namespace toehold::window
