#pragma once
// Translations of the program's sentences, read from a compiled catalogue of GNU gettext (`.mo`). The toolkit reads the
// same file for the window. The C library's own reader is not used: it takes its language from the process's locale.
#include <filesystem>
#include <functional>
#include <map>
#include <memory>
#include <string>
#include <string_view>

namespace toehold::format {

class Catalogue {
  public:
    explicit Catalogue(std::map<std::string, std::string, std::less<>> translations)
        : translations_(std::move(translations)) {}
    /// The translation of an English sentence; nullptr where there is none. It lives as long as the catalogue.
    [[nodiscard]] const std::string* find(std::string_view english) const;

  private:
    std::map<std::string, std::string, std::less<>> translations_;
};

/// nullptr where the file cannot be read or is not a catalogue: the program then speaks English.
[[nodiscard]] std::shared_ptr<const Catalogue> read_catalogue(const std::filesystem::path& file);

}  // namespace toehold::format
