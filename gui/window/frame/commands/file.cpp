// Of the File menu, what a detail's window has of its own, less its papers.
#include "window/dialogs/plate_list.h"
#include "window/frame/application.h"
#include "window/frame/commands.h"
#include "window/frame/detail_frame.h"
#include "window/frame/menus.h"
#include "window/frame/printout.h"

namespace toehold::window {

bool run_file_command(int id, const CommandTarget& target) {
    auto& [frame, application, session, panes, file] = target;
    if (run_document_command(id, {frame, application, file, &frame})) return true;
    switch (id) {
        case command_new_on_plate:
            if (const auto plate = ask_stock_plate(&frame, application)) application.start_on(*plate, &frame);
            return true;
        case command_new_side_post:
            application.start_side_post(&frame);
            return true;
        case command_put_back:
            frame.put_back();
            return true;
        case wxID_PAGE_SETUP:
            set_up_page(&frame, application);
            return true;
        case wxID_PREVIEW:
            preview(&frame, application, session);
            return true;
        case wxID_PRINT:
            print(&frame, application, session);
            return true;
        default:
            return false;
    }
}

}  // namespace toehold::window
