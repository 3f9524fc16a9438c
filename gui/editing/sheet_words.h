#pragma once
// What the sheet's methods and layers are called for a detail, and which method its checks use. It follows from the
// detail's mount, which the window need not know.
#include "drawing/annotation/overlay.h"
#include "format/phrase.h"
#include "model/base_detail.h"

namespace toehold::editing {

struct MethodWords {
    format::Phrase name;    ///< of a button
    format::Phrase menu;    ///< the same of the menu bar, with its mnemonic and key
    format::Phrase titled;  ///< in the title block
    format::Phrase help;
};
[[nodiscard]] MethodWords method_words(const model::BaseDetail& detail, drawing::Method method);
/// The method whose forces the checks use.
[[nodiscard]] drawing::Method design_method(const model::BaseDetail& detail);

/// Of a layer of the sheet that can be shown or not; `menu` with its mnemonic and key.
struct LayerWords {
    format::Phrase name, menu, help;
};
struct SheetWords {
    LayerWords pressure, bent, framing;
    format::Phrase rose;        ///< in capitals, the title of the anchors' tensions by direction
    format::Phrase by_hand;     ///< under it, by which pushes the hand method goes
    format::Phrase plate_name;  ///< of the plate, as it begins a line
    bool can_bend = true;       ///< whether there is a bent surface to draw
    bool can_shade = true;      ///< whether it is shaded where a part may stand so that every check passes
};
[[nodiscard]] SheetWords sheet_words(const model::BaseDetail& detail);

}  // namespace toehold::editing
