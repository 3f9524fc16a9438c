#pragma once
// What a press on the sheet does.

namespace toehold::window {

enum class Tool {
    select,  ///< picks and moves
    hole,    ///< sets a hole in the plan
    corner,  ///< sets a corner into the nearest side of the plate
    block,   ///< sets a block between the joists there
    pan,     ///< moves the drawing under the window
};

}  // namespace toehold::window
