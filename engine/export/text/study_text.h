#pragma once
// Studies as tables for a terminal, with their notes below.
#include "format/phrase.h"

#include <string>
#include <vector>

namespace toehold::study {
struct Field;
struct HoldingMap;
struct Sweep;
struct Tornado;
}  // namespace toehold::study

namespace toehold::exporting {

/// The inputs a chart may run over: id, what it is now, what it may be, what follows it.
[[nodiscard]] std::string fields_text(const std::vector<study::Field>& fields, const format::Locale& locale);
[[nodiscard]] std::string sweep_text(const study::Sweep& sweep, const format::Locale& locale);
[[nodiscard]] std::string tornado_text(const study::Tornado& tornado, const format::Locale& locale);
/// The grid as it stands on a chart, the highest row first.
[[nodiscard]] std::string map_text(const study::HoldingMap& map, const format::Locale& locale);

}  // namespace toehold::exporting
