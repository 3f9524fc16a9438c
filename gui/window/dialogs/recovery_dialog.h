#pragma once
// Copies of unsaved work that a program which is gone has left: open, leave for later, or discard.
#include "window/dialogs/prompts.h"

namespace toehold::window {

[[nodiscard]] std::vector<Recovery> ask_recovery(wxWindow* parent, const std::vector<editing::RecoveryCopy>& copies);

}  // namespace toehold::window
