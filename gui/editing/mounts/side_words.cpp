// What the window calls things where a post is fastened by its side.
#include "editing/mounts/side_fastened.h"

namespace toehold::editing::side_fastened {

HandTools tools() {
    HandTools tools;
    tools.shapes = false;
    tools.framing = false;
    tools.anchor_tool = phrase("Fastener");
    tools.anchor_tool_help = phrase("Click on the face of the member to add a fastener");
    tools.add_anchor = phrase("Add a &fastener here");
    tools.anchor_here = phrase("Add fastener\tCtrl+H");
    tools.rows = phrase("&Rows, downward");
    tools.row_pitch = phrase("P&itch downward");
    tools.select_first = phrase("Select a fastener first. Tab steps through the parts.");
    tools.select_to_type = phrase("Select a fastener to type its position.");
    tools.select_to_copy = phrase("Only holes of a plate are copied here. Duplicate makes copies of fasteners.");
    tools.all_anchors = phrase("Select every fastener of the post");
    return tools;
}

Phrase title(const model::BaseDetail& detail, Sheet sheet) {
    switch (sheet) {
        case Sheet::section:
            return phrase("SECTION A-A");
        case Sheet::elevation:
            return phrase("ELEVATION");
        case Sheet::plan:
            break;
    }
    const model::SideFastened& mount = on_side(detail);
    return mount.face == model::MemberFace::outside ? phrase("OUTSIDE FACE OF {}", mount.member)
                                                    : phrase("INSIDE FACE OF {}", mount.member);
}

Coordinates coordinates() {
    return {phrase("x"), phrase("z"),
            phrase("Along the rail from the post's axis, to the right. Press Enter to place it."),
            phrase("Up from the member's top edge; below it is negative. Press Enter to place it.")};
}

MethodWords method(drawing::Method method) {
    switch (method) {
        case drawing::Method::hand:
            return {phrase("By hand"), phrase("By &hand\tCtrl+Alt+1"), phrase("hand, couple at the fasteners"),
                    phrase("Push times height over the arm to the fasteners, pushes square to the rail")};
        case drawing::Method::rigid:
            return {phrase("Rigid"), phrase("Ri&gid post\tCtrl+Alt+2"), phrase("rigid post"),
                    phrase("Post taken as rigid")};
        case drawing::Method::flexible:
            break;
    }
    return {phrase("Flexible"), phrase("F&lexible post\tCtrl+Alt+3"), phrase("flexible post"),
            phrase("Post bending included")};
}

/// Whatever the basis says of a plate: this mount has none.
drawing::Method design(const model::BaseDetail& /*detail*/) { return drawing::Method::flexible; }

SheetWords sheet() {
    SheetWords words;
    words.pressure = {phrase("Pressure"), phrase("Bearing &pressure\tCtrl+1"),
                      phrase("Where the member bears on the post, and how hard")};
    words.bent = {phrase("Bent plate"), phrase("&Bent plate\tCtrl+2"), phrase("This post stands on no plate")};
    words.framing = {phrase("Framing"), phrase("F&raming behind\tCtrl+5"),
                     phrase("Joists and blocks behind the member")};
    words.rose = phrase("TENSION ROSE");
    words.plate_name = phrase("Bracket plate");
    words.by_hand = phrase("by hand: pushes square to the rail only");
    words.can_bend = false;
    words.can_shade = false;
    return words;
}

}  // namespace toehold::editing::side_fastened
