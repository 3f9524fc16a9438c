#pragma once
// A plate on the deck, as the editing room's table of mounts asks for it.
#include "editing/mounts/mount.h"

namespace toehold::editing::plate_on_deck {

void fields(Form& form, model::BaseDetail& detail);
void follow(model::BaseDetail& detail, const model::BaseDetail& before);
void drop_stale(model::BaseDetail& detail, const std::filesystem::path& file);
void drop_changed(model::BaseDetail& detail, const model::BaseDetail& before);
[[nodiscard]] References take(model::BaseDetail& detail);
void give(model::BaseDetail& detail, const References& references);

[[nodiscard]] std::vector<Handle> handles(const model::BaseDetail& detail, const SheetPlace& place);
[[nodiscard]] Moved drag(const Grip& grip, const SheetPlace& place);
[[nodiscard]] Snapped snap(drawing::Point to, const model::BaseDetail& detail, const SnapRules& rules);

[[nodiscard]] HandTools tools();
[[nodiscard]] Phrase title(const model::BaseDetail& detail, Sheet sheet);
[[nodiscard]] model::Place step(const SheetPlace& place, drawing::Point step);
[[nodiscard]] Coordinates coordinates();
[[nodiscard]] MethodWords method(drawing::Method method);
[[nodiscard]] drawing::Method design(const model::BaseDetail& detail);
[[nodiscard]] SheetWords sheet();

}  // namespace toehold::editing::plate_on_deck
