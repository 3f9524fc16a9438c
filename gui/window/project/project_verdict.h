#pragma once
// What is to be said of a project in one breath, as `verdict_words.h` says it of a detail.
#include "session/project_session.h"
#include "window/panels/verdict_words.h"

namespace toehold::window {

[[nodiscard]] VerdictWords verdict_words(const session::ProjectSession& session, const format::Locale& locale);

}  // namespace toehold::window
