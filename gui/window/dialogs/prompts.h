#pragma once
// Everything the window asks of people before it goes on, each as a function, so that a test can give the answers.
#include "editing/document.h"

#include <wx/string.h>

#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <vector>

class wxWindow;

namespace toehold::window {

enum class Unsaved { save, discard, cancel };

/// What is to become of a copy of unsaved work.
enum class Fate { open, keep, discard };
struct Recovery {
    editing::RecoveryCopy copy;
    Fate fate = Fate::keep;
};

struct Prompts {
    std::function<std::vector<std::filesystem::path>(wxWindow*)> files_to_open;  ///< none: thought better of it
    std::function<std::optional<std::filesystem::path>(wxWindow*, const std::filesystem::path& suggested)> file_to_save;
    std::function<Unsaved(wxWindow*, const wxString& name)> unsaved;
    /// A yes or no, with the word for yes.
    std::function<bool(wxWindow*, const wxString& question, const wxString& detail, const wxString& yes)> confirm;
    std::function<void(wxWindow*, const wxString& headline, const wxString& detail)> tell;
    std::function<std::vector<Recovery>(wxWindow*, const std::vector<editing::RecoveryCopy>&)> recover;
    /// Where a paper goes, under one of the endings (without a dot), the first unless another is typed.
    std::function<std::optional<std::filesystem::path>(wxWindow*, const std::filesystem::path& suggested,
                                                       const std::vector<std::string>& endings)>
        paper_to_save;
    /// What is to be said of a result; `about` names it. Empty or absent: nothing.
    std::function<std::optional<std::string>(wxWindow*, const wxString& about)> remark;
};

/// With dialogs.
[[nodiscard]] Prompts dialog_prompts();

}  // namespace toehold::window
