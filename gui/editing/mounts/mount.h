#pragma once
// What every kind of mount brings to the editing room. Documents, fields and whoever shows them ask a mount only this
// and never its kind.
//
// A second kind of mount is a file beside `plate_on_deck.cpp` and a row in `mount.cpp`.
#include "editing/fields/form.h"
#include "model/base_detail.h"

#include <filesystem>
#include <map>
#include <string>

namespace toehold::editing {

/// Describes the mount's part of the detail, from the post's foot down to the framing, to the form.
void mount_fields(Form& form, model::BaseDetail& detail);

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

}  // namespace toehold::editing
