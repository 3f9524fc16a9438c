// The File menu, less its papers.
#include "window/dialogs/plate_list.h"
#include "window/dialogs/preferences_dialog.h"
#include "window/frame/application.h"
#include "window/frame/commands.h"
#include "window/frame/detail_frame.h"
#include "window/frame/menus.h"
#include "window/frame/printout.h"

namespace toehold::window {

bool run_file_command(int id, const CommandTarget& target) {
    auto& [frame, application, session, panes, file] = target;
    if (id >= wxID_FILE1 && id <= wxID_FILE9) {
        application.open_recent(static_cast<std::size_t>(id - wxID_FILE1), &frame);
        return true;
    }
    switch (id) {
        case command_new:
            application.show_start_window();
            return true;
        case command_new_on_plate:
            if (const auto plate = ask_stock_plate(&frame, application)) application.start_on(*plate, &frame);
            return true;
        case wxID_OPEN:
            application.ask_and_open(&frame, &frame);
            return true;
        case wxID_SAVE:
            file.save();
            return true;
        case wxID_SAVEAS:
            file.save_as();
            return true;
        case command_put_back:
            frame.put_back();
            return true;
        case command_revert:
            file.revert();
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
        case wxID_CLOSE:
            frame.Close();
            return true;
        case wxID_EXIT:
            application.close_all();
            return true;
        case wxID_PREFERENCES:
            ask_preferences(&frame, application);
            return true;
        default:
            return false;
    }
}

}  // namespace toehold::window
