#include "window/driver.h"

#include "support/compare.h"
#include "window/panels/checks/checks_panel.h"
#include "window/text.h"

#include <algorithm>

namespace toehold::test {

namespace fs = std::filesystem;

bool Person::has_heard(const std::string& words) const {
    return std::any_of(heard.begin(), heard.end(),
                       [&words](const std::string& each) { return each.find(words) != std::string::npos; });
}

Driver::Driver() {
    prepare_answers();
    begin([](window::Preferences& preferences) {
        preferences.language = window::Language::english;
        preferences.ground = window::GroundChoice::paper;
    });
}

Driver::~Driver() {
    close_all();
    window::application().prompts = window::dialog_prompts();
}

void Driver::prepare_answers() {
    const auto hear = [this](const wxString& headline, const wxString& detail) {
        person.heard.push_back(window::utf8(headline + " " + detail));
    };
    window::Prompts& prompts = window::application().prompts;
    prompts.files_to_open = [this](wxWindow*) { return person.files_to_open; };
    prompts.file_to_save = [this](wxWindow*, const fs::path&) { return person.file_to_save; };
    prompts.paper_to_save = [this](wxWindow*, const fs::path&, const std::vector<std::string>&) {
        return person.file_to_save;
    };
    prompts.remark = [this, hear](wxWindow*, const wxString& about) -> std::optional<std::string> {
        hear("remark", about);
        return person.remark;
    };
    prompts.unsaved = [this, hear](wxWindow*, const wxString& name) {
        hear("unsaved", name);
        return person.unsaved;
    };
    prompts.confirm = [this, hear](wxWindow*, const wxString& question, const wxString& detail, const wxString&) {
        hear(question, detail);
        return person.confirms;
    };
    prompts.tell = [hear](wxWindow*, const wxString& headline, const wxString& detail) { hear(headline, detail); };
    prompts.recover = [this, hear](wxWindow*, const std::vector<editing::RecoveryCopy>& copies) {
        std::vector<window::Recovery> answers;
        for (const editing::RecoveryCopy& copy : copies) {
            hear("recover", window::text_of(copy.name));
            answers.push_back({copy, person.of_copies});
        }
        return answers;
    };
}

void Driver::begin(const std::function<void(window::Preferences&)>& prefer) {
    close_all();
    window::Preferences preferences = window::load_preferences(this->preferences());
    if (prefer) prefer(preferences);
    REQUIRE(window::save_preferences(this->preferences(), preferences));
    window::Beginning beginning;
    beginning.data = TOEHOLD_DATA_FOLDER;
    beginning.preferences = this->preferences();
    beginning.recovery = recovery();
    beginning.start_window = false;
    REQUIRE(window::application().begin(beginning));
}

void Driver::close_all() {
    person.unsaved = window::Unsaved::discard;
    for (wxWindow* top : wxTopLevelWindows) {
        if (!top->IsBeingDeleted()) top->Close(true);
    }
    CHECK(settle([] { return wxTopLevelWindows.empty(); }));
}

fs::path Driver::copy_demo(const std::string& name) {
    const fs::path demos = fs::path(TOEHOLD_DATA_FOLDER) / "demo";
    const auto over = fs::copy_options::overwrite_existing;
    for (const auto& entry : fs::directory_iterator(demos)) {
        const std::string file = entry.path().filename().string();
        if (file == name + ".xml" || file.find("plates") != std::string::npos) {
            fs::copy_file(entry.path(), folder() / file, over);
        }
    }
    return folder() / (name + ".xml");
}

window::DetailFrame& Driver::open(const fs::path& file) {
    auto* frame = dynamic_cast<window::DetailFrame*>(window::application().open(file));
    REQUIRE(frame != nullptr);
    to_front(*frame);
    REQUIRE(checked(*frame));
    let_work(300ms);  // the push that governs by the checks may be another than by the quick answer
    return *frame;
}

void to_front(window::DetailFrame& frame) {
    frame.Raise();
    REQUIRE(settle([&frame] {
        frame.sheet().SetFocus();
        return frame.sheet().HasFocus() && frame.sheet().GetClientSize().x > 100;
    }));
    let_work(100ms);
}

bool reviewed(window::DetailFrame& frame) {
    return settle([&frame] {
        return frame.session().freshness() == session::Freshness::current && frame.session().review_is_complete();
    });
}

bool checked(window::DetailFrame& frame) {
    return settle([&frame] { return frame.session().freshness() == session::Freshness::current; });
}

void run_command(window::DetailFrame& frame, int id) {
    wxCommandEvent event(wxEVT_MENU, id);
    event.SetEventObject(&frame);
    frame.ProcessWindowEvent(event);
    let_work(40ms);
}

std::string menu_words(window::DetailFrame& frame, int id) {
    return window::utf8(frame.GetMenuBar()->FindItem(id)->GetItemLabelText());
}

wxPoint on_screen(window::DetailFrame& frame, editing::Sheet sheet, double x_in, double y_in) {
    return frame.sheet().ClientToScreen(frame.sheet().pixel_of(sheet, {x_in, y_in}));
}

wxPoint hole_on_screen(window::DetailFrame& frame, const std::string& id) {
    const model::Position at = hole(frame, id).center;
    return on_screen(frame, editing::Sheet::plan, at.x_in, at.y_in);
}

const model::Hole& hole(window::DetailFrame& frame, const std::string& id) {
    const auto& holes = on_deck(frame.session().detail()).plate.holes;
    const auto found = std::find_if(holes.begin(), holes.end(), [&id](const model::Hole& one) { return one.id == id; });
    if (found == holes.end()) throw std::runtime_error("no hole " + id);
    return *found;
}

}  // namespace toehold::test
