#include "window/frame/language.h"

#include <wx/translation.h>
#include <wx/utils.h>

#include <clocale>

namespace toehold::window {

void speak(Language language) {
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
}

bool speaks_french() { return wxGetTranslation("en") == "fr"; }

}  // namespace toehold::window
