#pragma once
// What every kind of mount brings to the editing room. Documents, fields, handles and whoever shows them ask a mount
// only this and never its kind.
//
// A further kind of mount is a file beside `plate_on_deck.cpp` and `side_fastened.cpp`, a row in `mount.cpp`, and what
// is about anchors in `parts/anchor_places.cpp`.
#include "editing/fields/form.h"
#include "editing/hand_tools.h"
#include "editing/handles/sheet_handles.h"
#include "editing/sheet_words.h"
#include "model/base_detail.h"

#include <filesystem>
#include <map>
#include <string>
#include <vector>

namespace toehold::editing {

/// Describes the mount's part of the detail, from the post's foot down to the framing, to the form.
void mount_fields(Form& form, model::BaseDetail& detail);
/// After a change of `before`: what names a part goes by its new id and forgets what is gone, and what touches keeps
/// touching.
void follow_change(model::BaseDetail& detail, const model::BaseDetail& before);

// A mount may stand for something in another file. What it says then stays complete in the detail too.

/// Drops each reference whose file, looked for from the folder of `file`, no longer gives what the detail has.
void drop_stale_references(model::BaseDetail& detail, const std::filesystem::path& file);
/// Drops the references to what `before` had and `detail` no longer has.
void drop_changed_references(model::BaseDetail& detail, const model::BaseDetail& before);

/// References as words under names, so that they can be kept beside a detail without them.
using References = std::map<std::string, std::string>;
/// Takes them out of the detail.
[[nodiscard]] References take_references(model::BaseDetail& detail);
/// Gives back those that `take_references` took; other words are passed over.
void give_references(model::BaseDetail& detail, const References& references);

// In its drawings.

[[nodiscard]] std::vector<Handle> mount_handles(const model::BaseDetail& detail, const SheetPlace& place);
[[nodiscard]] Moved mount_drag(const Grip& grip, const SheetPlace& place);
/// Where something new comes to stand in the mount's own drawing.
[[nodiscard]] Snapped mount_snap(drawing::Point to, const model::BaseDetail& detail, const SnapRules& rules);

}  // namespace toehold::editing
