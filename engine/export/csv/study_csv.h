#pragma once
// The numbers of studies as tables, in the form of review_csv.h: engine units, unrounded. A number that is not known,
// or that is infinite, is an empty cell; the last column says why there is none.
#include <string>

namespace toehold::study {
struct HoldingMap;
struct Sweep;
struct Tornado;
}  // namespace toehold::study

namespace toehold::exporting {

/// One row a value: verdict, governing ratio, what limits, then the worst ratio of each check under its id.
[[nodiscard]] std::string sweep_csv(const study::Sweep& sweep);
/// One row an input, the one that moves the governing ratio most first.
[[nodiscard]] std::string tornado_csv(const study::Tornado& tornado);
/// One row a point of the grid, then one a border: the last value that holds and the first that does not.
[[nodiscard]] std::string map_csv(const study::HoldingMap& map);

}  // namespace toehold::exporting
