#include "window/panels/verdict_words.h"

#include "review/review.h"
#include "window/text.h"
#include "wording/status.h"
#include "wording/verdict.h"

#include <wx/translation.h>

#include <cmath>

namespace toehold::window {

namespace {

drawing::Pen verdict_frame(const review::Review& review) {
    if (review.verdict == review::Verdict::adequate) return drawing::Pen::holds;
    if (review.verdict == review::Verdict::incomplete) return drawing::Pen::missing;
    const bool no_path = review.governing.status == checks::Status::no_path;
    return no_path ? drawing::Pen::no_path : drawing::Pen::fails;
}

wxString freshness_words(const session::Session& session) {
    switch (session.freshness()) {
        case session::Freshness::none:
            return session.problems().empty() ? _("solving") : wxString();
        case session::Freshness::stale:
            return _("out of date");
        case session::Freshness::quick:
            return _("solving; checks are out of date");
        case session::Freshness::current:
            return session.review_is_complete() ? _("up to date") : _("up to date; working out remedies");
    }
    return {};
}

/// The detail as it stands cannot be solved at all.
void say_problems(VerdictWords& words, const model::Problems& problems) {
    words.word = _("CANNOT BE SOLVED");
    words.reason = text_of(model::sentence(problems.front()));
    if (problems.size() > 1) {
        const int more = static_cast<int>(problems.size()) - 1;
        words.reason += " ";
        words.reason +=
            wxString::Format(wxPLURAL("%d more problem.", "%d more problems.", static_cast<unsigned>(more)), more);
    }
    words.frame = drawing::Pen::missing;
}

void say_review(VerdictWords& words, const review::Review& review, const format::Locale& locale) {
    words.word = text_of(wording::word(review.verdict), locale);
    words.reason = text_of(wording::verdict_reason(review), locale);
    words.frame = verdict_frame(review);
    if (review.governing.check.empty()) return;
    words.governing = text_of(wording::result(review.governing.title, review.governing.part), locale);
    words.no_path = !std::isfinite(review.governing.ratio);
    if (!words.no_path) words.ratio = review.governing.ratio;
}

}  // namespace

VerdictWords verdict_words(const session::Session& session) {
    VerdictWords words;
    words.freshness = freshness_words(session);
    words.stale = session.freshness() == session::Freshness::stale || session.freshness() == session::Freshness::quick;
    if (!session.problems().empty()) {
        say_problems(words, session.problems());
    } else if (session.review() != nullptr) {
        say_review(words, *session.review(), session.locale());
    } else {
        words.word = _("SOLVING");
        words.reason = _("The first review of this detail is running.");
    }
    if (session.review() == nullptr && session.problems().empty() && !session.failure().empty()) {
        words.word = _("CANNOT BE SOLVED");
        words.reason = text_of(session.failure(), session.locale());
        words.frame = drawing::Pen::no_path;
    }
    return words;
}

}  // namespace toehold::window
