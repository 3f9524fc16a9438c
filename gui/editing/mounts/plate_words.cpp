// What the window calls things where a plate stands on the deck.
#include "editing/mounts/plate_on_deck.h"

namespace toehold::editing::plate_on_deck {

HandTools tools() {
    HandTools tools;
    tools.anchor_tool = phrase("Hole");
    tools.anchor_tool_help = phrase("Click in the plan to add a hole");
    tools.add_anchor = phrase("Add a &hole here");
    tools.anchor_here = phrase("Add ho&le\tCtrl+H");
    tools.rows = phrase("&Rows, outward");
    tools.row_pitch = phrase("P&itch outward");
    tools.select_first = phrase("Select a hole or block first. Tab steps through the parts.");
    tools.select_to_type = phrase("Select a hole or block to type its position.");
    tools.select_to_copy = phrase("Select the holes to copy first.");
    tools.all_anchors = phrase("Select every anchor of the plate");
    return tools;
}

Phrase title(const model::BaseDetail& /*detail*/, Sheet sheet) {
    switch (sheet) {
        case Sheet::section:
            return phrase("SECTION A-A");
        case Sheet::elevation:
            return phrase("ELEVATION");
        case Sheet::plan:
            break;
    }
    return phrase("PLAN");
}

Coordinates coordinates() {
    return {phrase("x"), phrase("y"),
            phrase("Along the rail from the post's center, to the right. Press Enter to place it."),
            phrase("Outward from the post's center. Press Enter to place it.")};
}

MethodWords method(drawing::Method method) {
    switch (method) {
        case drawing::Method::hand:
            return {phrase("By hand"), phrase("By &hand\tCtrl+Alt+1"), phrase("hand, arm to the toe edge"),
                    phrase("Lever arm to the plate's edge, pushes square to the plate")};
        case drawing::Method::rigid:
            return {phrase("Rigid"), phrase("Ri&gid plate\tCtrl+Alt+2"), phrase("rigid plate"),
                    phrase("Plate taken as rigid")};
        case drawing::Method::flexible:
            break;
    }
    return {phrase("Flexible"), phrase("F&lexible plate\tCtrl+Alt+3"), phrase("flexible plate"),
            phrase("Plate bending included")};
}

drawing::Method design(const model::BaseDetail& detail) {
    const bool flexible = model::plate_behaviour(detail.basis) == model::PlateBehaviour::flexible;
    return flexible ? drawing::Method::flexible : drawing::Method::rigid;
}

SheetWords sheet() {
    SheetWords words;
    words.pressure = {phrase("Pressure"), phrase("Bearing &pressure\tCtrl+1"),
                      phrase("Where the plate bears, and how hard")};
    words.bent = {phrase("Bent plate"), phrase("&Bent plate\tCtrl+2"), phrase("The plate's deflection, exaggerated")};
    words.framing = {phrase("Framing"), phrase("F&raming below\tCtrl+5"), phrase("Blocks and joists under the plate")};
    words.rose = phrase("UPLIFT ROSE");
    words.plate_name = phrase("Base plate");
    words.by_hand = phrase("by hand: pushes square to the plate only");
    return words;
}

}  // namespace toehold::editing::plate_on_deck
