#include "window/frame/language.h"

#include "format/catalogue.h"
#include "window/text.h"

#include <wx/translation.h>
#include <wx/utils.h>

#include <clocale>
#include <filesystem>

namespace toehold::window {

namespace {

/// The catalogue the toolkit reads, for the engine's sentences; nullptr: English.
std::shared_ptr<const format::Catalogue> engine_words(const wxString& language) {
    for (const char* folder : {TOEHOLD_BUILT_LOCALE, TOEHOLD_INSTALLED_LOCALE}) {
        if (language.empty()) break;
        const auto file = std::filesystem::path(folder) / utf8(language) / "LC_MESSAGES" / "toehold.mo";
        if (auto read = format::read_catalogue(file)) return read;
    }
    return nullptr;
}

}  // namespace

std::shared_ptr<const format::Catalogue> speak(Language language) {
    if (language != Language::desktop) wxSetEnv("LANGUAGE", language == Language::french ? "fr" : "en");
    // One category at a time, for `LC_ALL` would take the decimal point along.
    std::setlocale(LC_CTYPE, "");
    std::setlocale(LC_MESSAGES, "");
    std::setlocale(LC_NUMERIC, "C");
    wxFileTranslationsLoader::AddCatalogLookupPathPrefix(TOEHOLD_BUILT_LOCALE);
    wxFileTranslationsLoader::AddCatalogLookupPathPrefix(TOEHOLD_INSTALLED_LOCALE);
    auto* translations = new wxTranslations;
    wxTranslations::Set(translations);
    if (language == Language::english) translations->SetLanguage(wxLANGUAGE_ENGLISH_US);
    if (language == Language::french) translations->SetLanguage(wxLANGUAGE_FRENCH);
    translations->AddCatalog("toehold");
    translations->AddStdCatalog();
    return engine_words(translations->GetBestTranslation("toehold"));
}

bool speaks_french() { return wxGetTranslation("en") == "fr"; }

}  // namespace toehold::window
