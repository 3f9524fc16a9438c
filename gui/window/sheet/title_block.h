#pragma once
// The block at the sheet's lower right: whose detail, by which method, under which push, and whether the figures are
// today's.
#include "session/session.h"

#include <string>

namespace toehold::drawing {
struct Scene;
}

namespace toehold::window {

struct TitleWords {
    std::string name, method, push, state;
    bool governing = false;  ///< the push shown is the one that pulls most
};
[[nodiscard]] TitleWords title_words(const session::Session& session, const drawing::Overlay& overlay);
[[nodiscard]] drawing::Scene title_block(const TitleWords& words, double width_mm, double height_mm);

/// `200 lb toward 45°`.
[[nodiscard]] format::Phrase push_words(const drawing::PushShown& push);

}  // namespace toehold::window
