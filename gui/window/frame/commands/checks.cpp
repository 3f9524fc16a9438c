// The Checks menu.
#include "paper/paper_file.h"
#include "window/frame/application.h"
#include "window/frame/commands.h"
#include "window/frame/detail_frame.h"
#include "window/frame/menus.h"
#include "window/panels/checks/check_painting.h"
#include "window/panels/checks/checks_panel.h"
#include "window/text.h"

#include <wx/translation.h>

namespace toehold::window {

namespace {

/// On the selected result, or on the whole detail where none is.
void add_remark(const CommandTarget& target) {
    const checks::CheckResult* result = target.panes.checks().current_result();
    model::Remark remark;
    if (result != nullptr) remark = {result->id, model::key(result->part), {}, {}, {}, model::Remark::State::open};
    const wxString about = result == nullptr ? wxString(_("On the whole detail:"))
                                             : text_of(result->title, target.session.locale()) + ", " +
                                                   subject_name(*result, target.session.locale()) + ":";
    const std::optional<std::string> words = target.application.prompts.remark(&target.frame, about);
    if (!words || words->empty()) return;
    remark.words = *words;
    remark.date = paper::today();
    model::BaseDetail next = target.session.detail();
    next.remarks.push_back(std::move(remark));
    target.session.change(format::phrase("Remark"), std::move(next));
    target.session.rest();
}

}  // namespace

bool run_checks_command(int id, const CommandTarget& target) {
    Panes& panes = target.panes;
    switch (id) {
        case command_next_failing:
            panes.show_checks();
            panes.checks().next_failing();
            break;
        case command_explain:
            panes.show_checks();
            panes.checks().explain();
            break;
        case command_findings:
            panes.show_notes();
            break;
        case command_find_sizes:
            panes.find_sizes();
            break;
        case command_remark:
            add_remark(target);
            return true;
        default:
            return false;
    }
    target.frame.refresh();
    return true;
}

}  // namespace toehold::window
