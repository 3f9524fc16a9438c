#include "window/project/project_verdict.h"

#include "drawing/annotation/symbols.h"
#include "session/project_words.h"
#include "window/text.h"
#include "window/theme/status_marks.h"
#include "wording/status.h"

#include <wx/translation.h>

namespace toehold::window {
namespace {

/// Of the posts with that verdict the one with the largest ratio; nullptr: none has a ratio.
const solving::PostOutcome* worst(const std::vector<session::ScheduleEntry>& entries, review::Verdict verdict) {
    const solving::PostOutcome* found = nullptr;
    for (const session::ScheduleEntry& entry : entries) {
        const solving::PostOutcome* const one = entry.outcome.get();
        if (one == nullptr || one->verdict != verdict || !one->cause.ratio) continue;
        if (found == nullptr || *one->cause.ratio > *found->cause.ratio) found = one;
    }
    return found;
}

}  // namespace

VerdictWords verdict_words(const session::ProjectSession& session, const format::Locale& locale) {
    const session::ProjectVerdict told = session::project_verdict(session);
    VerdictWords words;
    words.reason = text_of(told.reason, locale);
    words.freshness = text_of(session::progress_words(session), locale);
    if (session.state() == session::ProjectSession::State::failed) {
        words.word = _("CANNOT BE SOLVED");
        words.frame = drawing::Pen::missing;
        return words;
    }
    if (!told.verdict) {
        words.word = session.state() == session::ProjectSession::State::stopped ? _("STOPPED") : _("SOLVING");
        return words;
    }
    words.word = text_of(wording::word(*told.verdict), locale);
    words.frame = drawing::frame_pen(status_of(*told.verdict));
    words.stale = told.stale;
    if (told.stale) words.reason = wxString(_("out of date")) + ": " + words.reason;
    if (const solving::PostOutcome* most = worst(session.schedule(), *told.verdict)) {
        words.ratio = most->cause.ratio;
        words.governing = text_of(
            format::phrase("post {}: {}", most->post, wording::result(most->cause.title, most->cause.part)), locale);
    }
    return words;
}

}  // namespace toehold::window
