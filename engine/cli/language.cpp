#include "cli/language.h"

#include "format/catalogue.h"

#include <array>
#include <cstdlib>
#include <filesystem>

namespace toehold::cli {
namespace {

constexpr std::string_view option = "--language";

std::string language_of_surroundings() {
    for (const char* const name : {"LANGUAGE", "LC_ALL", "LC_MESSAGES", "LANG"}) {
        const char* const value = std::getenv(name);
        if (value == nullptr || *value == '\0') continue;
        return std::string_view(value).starts_with("fr") ? "fr" : "en";
    }
    return "en";
}

}  // namespace

std::string chosen_language(int count, const char* const* arguments) {
    for (int index = 1; index < count; ++index) {
        const std::string_view argument = arguments[index];
        if (argument == option && index + 1 < count) return arguments[index + 1];
        if (argument.starts_with(option) && argument.substr(option.size()).starts_with("="))
            return std::string(argument.substr(option.size() + 1));
    }
    return language_of_surroundings();
}

format::Locale locale_of(const std::string& language) {
    format::Locale locale;
    if (language != "fr") return locale;
    const std::array<std::filesystem::path, 2> folders = {TOEHOLD_BUILT_LOCALE, TOEHOLD_INSTALLED_LOCALE};
    for (const std::filesystem::path& folder : folders) {
        locale.catalogue = format::read_catalogue(folder / "fr" / "LC_MESSAGES" / "toehold.mo");
        if (locale.catalogue) break;
    }
    return locale;
}

}  // namespace toehold::cli
