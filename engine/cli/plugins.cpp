#include "cli/plugins.h"

#include "cli/console.h"
#include "plugin/loader.h"

namespace toehold::cli {

bool load_plugins(const std::vector<std::string>& files, const format::Locale& locale) {
    for (const std::string& file : files) {
        const plugin::LoadOutcome outcome = plugin::load(file);
        if (outcome.plugin) continue;
        complain(outcome.error, locale);
        return false;
    }
    return true;
}

}  // namespace toehold::cli
