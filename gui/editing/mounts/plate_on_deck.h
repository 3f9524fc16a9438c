#pragma once
// A plate on the deck, as the editing room's table of mounts asks for it.
#include "editing/mounts/mount.h"

namespace toehold::editing::plate_on_deck {

void fields(Form& form, model::BaseDetail& detail);
void drop_stale(model::BaseDetail& detail, const std::filesystem::path& file);
void drop_changed(model::BaseDetail& detail, const model::BaseDetail& before);
[[nodiscard]] References take(model::BaseDetail& detail);
void give(model::BaseDetail& detail, const References& references);

}  // namespace toehold::editing::plate_on_deck
