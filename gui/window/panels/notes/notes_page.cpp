#include "window/panels/notes/notes_page.h"

#include "window/text.h"
#include "window/theme/status_marks.h"
#include "wording/outcomes.h"
#include "wording/status.h"

#include <wx/intl.h>

namespace toehold::window {
namespace {

wxString escaped(wxString text) {
    text.Replace("&", "&amp;");
    text.Replace("<", "&lt;");
    text.Replace(">", "&gt;");
    text.Replace("\"", "&quot;");
    return text;
}

struct Page {
    const Notes& notes;
    const Theme& theme;
    const format::Locale& locale;

    [[nodiscard]] wxString coloured(const wxString& html, const wxColour& colour) const {
        const wxColour shown = notes.stale ? mixed(colour, theme.paper, 0.55) : colour;
        return "<font color=\"" + shown.GetAsString(wxC2S_HTML_SYNTAX) + "\">" + html + "</font>";
    }
    [[nodiscard]] wxString text(const wxString& html) const { return coloured(html, theme.ink); }
    [[nodiscard]] wxString faint(const wxString& words) const {
        return coloured("<font size=2>" + escaped(words) + "</font>", theme.faded);
    }
    [[nodiscard]] wxString mark(const wxString& words, checks::Status status) const {
        return wxString::Format("<mark status=\"%d\" ground=\"%d\" stale=\"%d\" words=\"%s\">",
                                static_cast<int>(status), static_cast<int>(theme.ground), notes.stale ? 1 : 0,
                                escaped(words));
    }
};

wxString heading(const Page& page, const wxString& words) {
    return "<p>" + page.text("<b>" + escaped(words.Upper()) + "</b>") +
           wxString::Format("<rule ground=\"%d\"></p>", static_cast<int>(page.theme.ground));
}

wxString line(const wxString& html) { return "<p>" + html + "</p>"; }

/// A mark on the left, what it says on the right.
wxString entry(const wxString& mark, const wxString& html) {
    return "<table width=100% cellpadding=4 cellspacing=0><tr><td width=122 align=left valign=top>" + mark +
           "</td><td align=left valign=top>" + html + "</td></tr></table>";
}

wxString findings(const Page& page) {
    wxString html = heading(page, _("Findings"));
    if (page.notes.review->findings.empty()) return html + line(page.faint(_("None.")));
    int number = 0;
    for (const checks::Finding& finding : page.notes.review->findings) {
        const wxString link = wxString(finding_scheme) + wxString::Format("%d", number++);
        wxString words;
        if (finding.part.kind != model::PartKind::none) {
            const wxString subject = escaped(text_of(model::part_name(finding.part), page.locale));
            words = "<a href=\"" + link + "\">" + subject + "</a>" + page.text(": ");
        }
        words += page.text(escaped(text_of(finding.message, page.locale)));
        if (!finding.clause.empty()) words += " " + page.faint("[" + text_of(finding.clause, page.locale) + "]");
        html +=
            entry(page.mark(text_of(wording::word(finding.severity), page.locale), status_of(finding.severity)), words);
    }
    return html;
}

/// What a remark is about, in the words of its result where there is one.
wxString about(const Notes& notes, const model::Remark& remark, const format::Locale& locale) {
    if (remark.about.empty()) return _("the whole detail");
    wxString title = text_of(remark.about);
    for (const checks::CheckResult& result : notes.review->checks) {
        if (result.id == remark.about) title = text_of(result.title, locale);
    }
    if (remark.subject.empty()) return title;
    const auto part = model::find_part(model::parts(notes.review->resolved.detail), remark.subject);
    return title + ", " + (part ? text_of(model::part_name(*part), locale) : text_of(remark.subject));
}

wxString remarks(const Page& page) {
    if (page.notes.remarks.empty()) return {};
    wxString html = heading(page, _("Remarks"));
    for (const model::Remark& remark : page.notes.remarks) {
        const bool open = remark.state == model::Remark::State::open;
        const wxString who = text_of(remark.by + (remark.by.empty() || remark.date.empty() ? "" : ", ") + remark.date);
        html += entry(
            page.mark(open ? _("open") : _("settled"), open ? checks::Status::missing_evidence : checks::Status::holds),
            page.text(escaped(about(page.notes, remark, page.locale) + ": " + text_of(remark.words))) + " " +
                page.faint(who));
    }
    return html;
}

wxString remedies(const Page& page) {
    wxString html = heading(page, _("What would help"));
    if (!page.notes.complete) return html + line(page.faint(_("Working out...")));
    if (page.notes.review->remedies.empty())
        return html + line(page.faint(text_of(wording::no_remedies(*page.notes.review), page.locale)));
    int index = 0;
    for (const review::Remedy& remedy : page.notes.review->remedies) {
        const wxString words = page.text(escaped(text_of(remedy.text, page.locale))) + "<br>" +
                               page.faint(remedy_outcome(remedy, page.locale)) +
                               wxString::Format("<br><apply index=\"%d\" enabled=\"%d\" ground=\"%d\">", index,
                                                page.notes.stale ? 0 : 1, static_cast<int>(page.theme.ground));
        html += entry(page.mark(text_of(wording::word(remedy.verdict), page.locale), status_of(remedy.verdict)), words);
        ++index;
    }
    return html;
}

wxString assumptions(const Page& page) {
    wxString html = heading(page, _("Assumptions"));
    if (!page.notes.complete) return html + line(page.faint(_("Working out...")));
    if (page.notes.review->assumptions.empty()) return html + line(page.faint(_("None.")));
    for (const review::Assumption& assumption : page.notes.review->assumptions) {
        wxString words = page.text(escaped(text_of(assumption.text, page.locale)));
        if (const format::Phrase other = wording::other_choice(assumption); !other.empty()) {
            words += "<br>" + page.faint(wxString::Format(_("Otherwise: %s"), text_of(other, page.locale)));
        }
        html += line(words);
    }
    return html;
}

wxString cautions(const Page& page) {
    wxString html = heading(page, _("Cautions"));
    if (!page.notes.complete) return html + line(page.faint(_("Working out...")));
    for (const format::Phrase& caution : page.notes.review->cautions)
        html += line(page.text(escaped(text_of(caution, page.locale))));
    return html;
}

}  // namespace

wxString remedy_outcome(const review::Remedy& remedy, const format::Locale& locale) {
    return text_of(wording::remedy_outcome(remedy), locale);
}

wxString notes_page(const Notes& notes, const Theme& theme, const format::Locale& locale) {
    const Page page{notes, theme, locale};
    wxString html = wxString::Format(
        "<html><body bgcolor=\"%s\" text=\"%s\" link=\"%s\">", page.theme.paper.GetAsString(wxC2S_HTML_SYNTAX),
        page.theme.ink.GetAsString(wxC2S_HTML_SYNTAX), page.theme.ink.GetAsString(wxC2S_HTML_SYNTAX));
    if (notes.review == nullptr) return html + line(page.faint(_("No results yet."))) + "</body></html>";
    if (notes.stale)
        html += line("<b>" + escaped(_("Out of date: results of the detail before the last edit")) + "</b>");
    html += findings(page) + remarks(page) + remedies(page) + assumptions(page) + cautions(page);
    return html + "</body></html>";
}

}  // namespace toehold::window
