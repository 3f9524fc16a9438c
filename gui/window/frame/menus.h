#pragma once
// The menu bar of a detail's window: every command once, with its words, key and help.
#include "session/session.h"
#include "window/theme/theme.h"

#include <wx/menu.h>

class wxFrame;

namespace toehold::window {

/// Commands without a standard identifier of the toolkit's.
enum Command : int {
    command_new = wxID_HIGHEST + 100,
    command_revert,
    command_duplicate,
    command_mirror,
    command_array,
    command_round_array,
    command_slot,
    command_round,
    command_polygon,
    command_stock_plate,
    command_add_hole,
    command_add_corner,
    command_add_block,
    command_tool_select,
    command_tool_pan,
    command_pressure,
    command_bent,
    command_marks,
    command_dimensions,
    command_framing,
    command_hand,
    command_rigid,
    command_flexible,
    command_push_governing,
    command_push_left,
    command_push_right,
    command_us,
    command_si,
    command_ground_desktop,
    command_ground_paper,
    command_ground_night,
    command_show_fields,
    command_show_review,
    command_reset_layout,
    command_next_failing,
    command_explain,
    command_findings,
    command_method,
    command_sources,
    command_keys,
    command_report,  // the papers, in the order of paper::Kind
    command_shop_drawing,
    command_site_sheet,
    command_letter,
    command_plan,
    command_section,
    command_elevation,
    command_cutting_file,
    command_anchors_table,
    command_checks_table,
    command_remark,
    command_new_on_plate,
    command_new_side_post,
    command_page_drawings,  ///< the pages, in the order of Page
    command_page_sizes,
    command_page_charts,
    command_find_sizes,
    command_holds,
    command_open_base,  ///< of a project: the base of the post selected, the review anew, and its end
    command_review_project,
    command_stop_review,
    command_put_back,  ///< of a copy of part of a project
};

/// Its submenu of recent files is returned.
wxMenu* give_menu_bar(wxFrame& frame);

/// What the menus must show.
struct MenuState {
    const session::Session& session;
    GroundChoice ground = GroundChoice::desktop;
    bool has_file = false;
    bool unsaved = false;
    bool fields_shown = true, review_shown = true;
    bool of_project = false;  ///< a copy of part of one
};
/// Grays what cannot be done now, marks what is chosen and names the steps that can be undone.
void refresh_menu_bar(wxMenuBar& bar, const MenuState& state);

}  // namespace toehold::window
