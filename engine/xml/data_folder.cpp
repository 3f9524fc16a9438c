#include "xml/data_folder.h"

#include <cstdlib>

namespace toehold::xml {
namespace {

namespace fs = std::filesystem;

fs::path beside_program() {
    std::error_code error;
    const fs::path program = fs::read_symlink("/proc/self/exe", error);
    return error ? fs::path() : program.parent_path().parent_path() / "share" / "toehold";
}

}  // namespace

bool holds_catalogs(const fs::path& folder) {
    std::error_code error;
    return !folder.empty() && fs::is_directory(folder / "catalog", error);
}

fs::path find_data_folder(const std::string& named) {
    if (!named.empty()) return named;
    const char* from_environment = std::getenv("TOEHOLD_DATA");
    if (from_environment != nullptr && *from_environment != '\0') return from_environment;
    for (const fs::path& folder : {fs::path(TOEHOLD_INSTALLED_DATA), fs::path(TOEHOLD_SOURCE_DATA), beside_program()}) {
        if (holds_catalogs(folder)) return folder;
    }
    return {};
}

}  // namespace toehold::xml
