#pragma once
// The filler of the weld at the post's foot, and which metals it welds.
#include "catalog/rows.h"
#include "format/phrase.h"

namespace toehold::catalog {
struct Resolved;
}

namespace toehold::checks {

/// nullptr: no weld is described, or the mount has none.
[[nodiscard]] const catalog::Filler* weld_filler(const catalog::Resolved& resolved);

/// One sentence where the foot has gussets, else empty. They are not counted, in the weld nor in the plate: by the
/// static theorem of limit analysis metal added to a joint never lessens what it carries. The plate's strips are taken
/// at the post's faces; with gussets they would form past the gussets' tips, nearer to the anchors.
[[nodiscard]] format::Phrase gussets_not_counted(const catalog::Resolved& resolved);

enum class FillerMatch {
    matches,
    of_other_metal,  ///< the two parts can be welded, with another filler
    never_weldable,  ///< aluminum to steel: no filler welds them
};
/// Aluminum takes aluminum filler; stainless steel, also to carbon steel, stainless filler; carbon steel either steel.
[[nodiscard]] FillerMatch match(catalog::MetalKind filler, catalog::MetalKind post, catalog::MetalKind plate);

}  // namespace toehold::checks
