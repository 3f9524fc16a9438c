// The toolkit's own style sheet. Its functions are asked for by name in the running program, so that the build needs
// none of the toolkit's headers and a toolkit without them keeps its own style.
#include "window/theme/theme.h"

#include <wx/dynlib.h>

#include <fmt/core.h>

#include <string>

namespace toehold::window {

namespace {

std::string css(const wxColour& colour) { return colour.GetAsString(wxC2S_HTML_SYNTAX).utf8_string(); }

/// Square, flat, drawn with one hair line: nothing looks pressed out of plastic.
std::string style_sheet(const Theme& theme) {
    const std::string paper = css(theme.paper), ink = css(theme.ink), line = css(theme.line),
                      raised = css(theme.raised);
    const std::string pale = css(mixed(theme.ink, theme.paper, 0.08)), faded = css(theme.faded);
    const std::string chosen = css(mixed(theme.ink, theme.paper, 0.16));
    std::string sheet;
    const auto rule = [&sheet](std::string_view what, const std::string& how) {
        sheet += fmt::format("{} {{ {} }}\n", what, how);
    };
    rule(
        "window, dialog, menubar, toolbar, statusbar, notebook, notebook > stack, notebook > header, scrolledwindow, "
        "viewport, paned, popover, menu, .background",
        fmt::format("background-color: {}; background-image: none; color: {};", paper, ink));
    rule("label, menuitem, checkbutton, radiobutton, tab", fmt::format("color: {}; text-shadow: none;", ink));
    rule("label:disabled, menuitem:disabled, menuitem:disabled label",
         fmt::format("color: {};", css(mixed(theme.ink, theme.paper, 0.45))));
    rule("button, combobox button, spinbutton button",
         fmt::format("background-image: none; background-color: {}; color: {}; border: 1px solid {}; border-radius: 0; "
                     "box-shadow: none; text-shadow: none; -gtk-icon-shadow: none; padding: 2px 8px; min-height: 20px;",
                     paper, ink, line));
    rule("button:hover, tab:hover, menuitem:hover", fmt::format("background-color: {}; background-image: none;", pale));
    rule("menuitem:hover, menuitem:hover label", fmt::format("color: {};", ink));
    rule("button:checked, button:active",
         fmt::format("background-color: {}; color: {}; border-color: {};", chosen, ink, ink));
    rule("button:disabled", fmt::format("color: {};", line));
    rule("button:focus, entry:focus, textview:focus, treeview:focus",
         fmt::format("outline: 1px solid {}; outline-offset: -2px; border-color: {}; box-shadow: none;", ink, ink));
    rule("entry, spinbutton, textview, textview text, treeview.view, list, .view",
         fmt::format("background-color: {}; background-image: none; color: {}; border-radius: 0; box-shadow: none; "
                     "caret-color: {};",
                     raised, ink, ink));
    rule("entry", fmt::format("border: 1px solid {}; min-height: 22px; padding: 1px 5px;", line));
    rule("selection, *:selected, entry selection, treeview.view:selected, .view:selected",
         fmt::format("background-color: {}; background-image: none; color: {};", chosen, ink));
    rule("menubar, notebook > header", fmt::format("border-bottom: 1px solid {}; box-shadow: none;", line));
    rule("menubar > menuitem", "box-shadow: none;");
    rule("menubar > menuitem:hover", fmt::format("box-shadow: inset 0 -2px {};", ink));
    rule("menu, popover, tooltip", fmt::format("border: 1px solid {}; border-radius: 0;", faded));
    rule("tooltip, tooltip.background", fmt::format("background-color: {}; background-image: none;", raised));
    rule("tooltip label", fmt::format("color: {};", ink));
    rule("menuitem", "padding: 3px 8px;");
    rule("notebook > header tab",
         "background-image: none; background-color: transparent; border: none; box-shadow: none; padding: 3px 10px; "
         "min-height: 20px; border-radius: 0;");
    rule("notebook > header tab:checked", fmt::format("box-shadow: inset 0 -2px {};", ink));
    rule("treeview.view header button", fmt::format("border-width: 0 0 1px 0; color: {};", faded));
    rule("scrollbar, scrollbar trough", fmt::format("background-color: {}; border: none;", paper));
    rule("scrollbar slider", fmt::format("background-color: {}; border-radius: 0;", line));
    rule("scrollbar slider:hover", fmt::format("background-color: {};", faded));
    rule("infobar, infobar > revealer > box",
         fmt::format("background-image: none; background-color: {}; border: 1px solid {}; text-shadow: none;", raised,
                     ink));
    rule("infobar label", fmt::format("color: {};", ink));
    rule("check, radio", fmt::format("background-image: none; background-color: {}; color: {}; border: 1px solid {}; "
                                     "box-shadow: none;",
                                     raised, ink, faded));
    rule("check", "border-radius: 0;");
    rule("separator", fmt::format("background-color: {};", line));
    rule("headerbar, .titlebar",
         fmt::format(
             "background-image: none; background-color: {}; color: {}; box-shadow: none; border-bottom: 1px solid {};",
             paper, ink, line));
    return sheet;
}

/// The few functions of the toolkit, by their C interface.
struct Toolkit {
    void* (*new_provider)() = nullptr;
    int (*load)(void* provider, const char* sheet, long length, void** error) = nullptr;
    void* (*screen)() = nullptr;
    void (*add)(void* screen, void* provider, unsigned priority) = nullptr;
    [[nodiscard]] bool complete() const {
        return new_provider != nullptr && load != nullptr && screen != nullptr && add != nullptr;
    }
};

template <class Function>
void find(wxDynamicLibrary& program, const wxString& name, Function& function) {
    if (program.HasSymbol(name)) function = reinterpret_cast<Function>(program.GetSymbol(name));
}

Toolkit find_toolkit() {
    Toolkit toolkit;
    wxDynamicLibrary program;
    if (!program.Load("libgtk-3.so.0", wxDL_NOW | wxDL_VERBATIM | wxDL_QUIET)) return toolkit;
    find(program, "gtk_css_provider_new", toolkit.new_provider);
    find(program, "gtk_css_provider_load_from_data", toolkit.load);
    find(program, "gdk_screen_get_default", toolkit.screen);
    find(program, "gtk_style_context_add_provider_for_screen", toolkit.add);
    program.Detach();
    return toolkit;
}

}  // namespace

void apply_to_toolkit(const Theme& theme) {
    // One provider for the life of the program: loading a sheet into it again replaces the last one.
    constexpr unsigned application_priority = 600;
    static const Toolkit toolkit = find_toolkit();
    if (!toolkit.complete()) return;
    static void* const provider = [] {
        void* made = toolkit.new_provider();
        toolkit.add(toolkit.screen(), made, application_priority);
        return made;
    }();
    const std::string sheet = style_sheet(theme);
    toolkit.load(provider, sheet.c_str(), -1, nullptr);
}

}  // namespace toehold::window
