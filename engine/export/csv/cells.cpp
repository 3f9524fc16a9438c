#include "export/csv/cells.h"

#include <fmt/format.h>

#include <cmath>
#include <string_view>

namespace toehold::exporting {

std::string csv_cell(const std::string& text) {
    constexpr std::string_view begins_formula = "=+-@\t\r";
    std::string harmless = text;
    if (!text.empty() && begins_formula.find(text.front()) != std::string_view::npos)
        harmless.insert(harmless.begin(), '\'');
    if (harmless.find_first_of(",\"\r\n") == std::string::npos) return harmless;
    std::string quoted = "\"";
    for (const char character : harmless) {
        if (character == '"') quoted += '"';
        quoted += character;
    }
    return quoted + "\"";
}

std::string csv_number(double value) { return std::isfinite(value) ? fmt::format("{}", value) : std::string(); }

std::string csv_number(const std::optional<double>& value) { return value ? csv_number(*value) : std::string(); }

std::string csv_line(const std::vector<std::string>& cells) { return fmt::format("{}\r\n", fmt::join(cells, ",")); }

}  // namespace toehold::exporting
