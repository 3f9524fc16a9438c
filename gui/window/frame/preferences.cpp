#include "window/frame/preferences.h"

#include "window/text.h"

#include <wx/fileconf.h>
#include <wx/log.h>
#include <wx/stdpaths.h>
#include <wx/wfstream.h>

#include <array>
#include <optional>
#include <system_error>
#include <utility>

namespace toehold::window {

namespace fs = std::filesystem;

namespace {

constexpr int most_recent = 9;
constexpr int least_side = 480, most_side = 8000;

template <class Value>
using Words = std::array<std::pair<const char*, Value>, 3>;
const Words<GroundChoice> grounds = {
    {{"desktop", GroundChoice::desktop}, {"paper", GroundChoice::paper}, {"night", GroundChoice::night}}};
const Words<Language> languages = {
    {{"desktop", Language::desktop}, {"english", Language::english}, {"french", Language::french}}};

template <class Value>
Value read_word(const wxFileConfig& config, const wxString& key, const Words<Value>& words, Value otherwise) {
    const wxString text = config.Read(key, "");
    for (const auto& [word, value] : words) {
        if (text == word) return value;
    }
    return otherwise;
}

template <class Value>
wxString word(const Words<Value>& words, Value wanted) {
    for (const auto& [word, value] : words) {
        if (value == wanted) return word;
    }
    return {};
}

double read_length(const wxFileConfig& config, const wxString& key, double otherwise) {
    const units::Parsed parsed = units::parse(config.Read(key, "").utf8_string(), units::Kind::length);
    return parsed.value && *parsed.value > 0.0 ? *parsed.value : otherwise;
}

int read_side(const wxFileConfig& config, const wxString& key, int otherwise) {
    const long side = config.ReadLong(key, otherwise);
    return side >= least_side && side <= most_side ? static_cast<int>(side) : otherwise;
}

wxString recent_key(int number) { return wxString::Format("recent/file%d", number); }

}  // namespace

fs::path preferences_file() {
    wxStandardPaths& paths = wxStandardPaths::Get();
    paths.SetFileLayout(wxStandardPaths::FileLayout_XDG);
    return path_of(paths.GetUserConfigDir()) / "toehold" / "window.ini";
}

Preferences load_preferences(const fs::path& file) {
    Preferences loaded;
    std::error_code error;
    if (!fs::is_regular_file(file, error)) return loaded;
    const wxLogNull quiet;
    wxFileInputStream stream(shown_path(file));
    if (!stream.IsOk()) return loaded;
    const wxFileConfig config(stream, wxConvUTF8);
    loaded.system = config.Read("units", "") == "si" ? units::System::si : units::System::us;
    loaded.ground = read_word(config, "ground", grounds, loaded.ground);
    loaded.language = read_word(config, "language", languages, loaded.language);
    loaded.nudge_us_in = read_length(config, "nudge_us", loaded.nudge_us_in);
    loaded.nudge_si_in = read_length(config, "nudge_si", loaded.nudge_si_in);
    loaded.layout = config.Read("window/layout", "");
    loaded.width = read_side(config, "window/width", loaded.width);
    loaded.height = read_side(config, "window/height", loaded.height);
    for (int number = 1; number <= most_recent; ++number) {
        const wxString recent = config.Read(recent_key(number), "");
        if (!recent.empty()) loaded.recent.push_back(path_of(recent));
    }
    return loaded;
}

bool save_preferences(const fs::path& file, const Preferences& preferences) {
    std::error_code error;
    fs::create_directories(file.parent_path(), error);
    const wxLogNull quiet;
    wxFileConfig config("", "", "", "", 0, wxConvUTF8);
    config.EnableAutoSave();
    config.Write("units", preferences.system == units::System::si ? "si" : "us");
    config.Write("ground", word(grounds, preferences.ground));
    config.Write("language", word(languages, preferences.language));
    config.Write("nudge_us", text_of(units::exact(preferences.nudge_us_in, units::Kind::length)));
    config.Write("nudge_si", text_of(units::exact(preferences.nudge_si_in, units::Kind::length)));
    config.Write("window/layout", preferences.layout);
    config.Write("window/width", preferences.width);
    config.Write("window/height", preferences.height);
    int number = 1;
    for (const fs::path& recent : preferences.recent) {
        if (number > most_recent) break;
        config.Write(recent_key(number++), shown_path(recent));
    }
    wxTempFileOutputStream stream(shown_path(file));
    return stream.IsOk() && config.Save(stream, wxConvUTF8) && stream.Commit();
}

double nudge_in(const Preferences& preferences) {
    return preferences.system == units::System::si ? preferences.nudge_si_in : preferences.nudge_us_in;
}

}  // namespace toehold::window
