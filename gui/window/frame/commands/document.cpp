// Of the File menu, what every window with a document has.
#include "window/dialogs/preferences_dialog.h"
#include "window/frame/application.h"
#include "window/frame/commands.h"
#include "window/frame/detail_frame.h"
#include "window/frame/document_file.h"
#include "window/frame/menus.h"

namespace toehold::window {

bool run_document_command(int id, const DocumentTarget& target) {
    auto& [frame, application, file, reuse] = target;
    if (id >= wxID_FILE1 && id <= wxID_FILE9) {
        application.open_recent(static_cast<std::size_t>(id - wxID_FILE1), reuse);
        return true;
    }
    switch (id) {
        case command_new:
            application.show_start_window();
            return true;
        case wxID_OPEN:
            application.ask_and_open(&frame, reuse);
            return true;
        case wxID_SAVE:
            file.save();
            return true;
        case wxID_SAVEAS:
            file.save_as();
            return true;
        case command_revert:
            file.revert();
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
