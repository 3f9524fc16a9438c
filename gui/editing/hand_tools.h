#pragma once
// What can be done by hand in the drawings of a detail, and what it is called there. It follows from the detail's
// mount, which whoever shows menus, tools and sheets need not know.
#include "editing/handles.h"
#include "format/phrase.h"
#include "model/base_detail.h"

#include <vector>

namespace toehold::editing {

struct HandTools {
    bool shapes = true;   ///< a plate's outline and holes can be shaped: corners, slots, round arrays, stock plates
    bool framing = true;  ///< blocks can be set in the first drawing, which is a plan
    format::Phrase anchor_tool, anchor_tool_help;  ///< of the tool that adds an anchor
    format::Phrase add_anchor;                     ///< of a menu at a place, with its mnemonic
    format::Phrase anchor_here;                    ///< of the menu bar, with its mnemonic and key
    format::Phrase rows, row_pitch;                ///< of an array, with their mnemonics
    format::Phrase select_first;                   ///< told where a key would move what is selected, and nothing is
    format::Phrase select_to_type;                 ///< told beside the coordinates while nothing is selected
    format::Phrase select_to_copy;                 ///< told where there is nothing to put on the clipboard
    format::Phrase all_anchors;                    ///< help of selecting them all
};
[[nodiscard]] HandTools hand_tools(const model::BaseDetail& detail);

/// In capitals, as the sheet letters it: `PLAN`.
[[nodiscard]] format::Phrase sheet_title(const model::BaseDetail& detail, Sheet sheet);

/// A step of the hand in a drawing, in space.
[[nodiscard]] model::Place step_in(const model::BaseDetail& detail, const SheetPlace& place, drawing::Point step);

/// Names of the two coordinates in which a part is placed by `place_of`, with their help.
struct Coordinates {
    format::Phrase first, second;  ///< `x`, `y`
    format::Phrase first_help, second_help;
};
[[nodiscard]] Coordinates coordinates_of(const model::BaseDetail& detail, const model::PartId& part);
/// A step typed in those coordinates of the first of several parts, in space.
[[nodiscard]] model::Place typed_step(const model::BaseDetail& detail, const std::vector<model::PartId>& parts,
                                      model::Position step);

}  // namespace toehold::editing
