#pragma once
// What rows of ranges are made of: a list to tick that begins with what stands already, and a run to type.
#include "editing/sizes/range_rows.h"

#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace toehold::editing {

using format::Phrase;
using format::phrase;
using search::Ranges;

/// Adds what is not there yet, and ticks what the ranges have.
class Ticks {
  public:
    explicit Ticks(std::vector<std::string> wanted) : wanted_(std::move(wanted)) {}
    void add(const std::string& words, Phrase label);
    /// What the ranges have beside that.
    [[nodiscard]] std::vector<RangeTick> taken();

  private:
    std::vector<std::string> wanted_;
    std::set<std::string> there_;
    std::vector<RangeTick> ticks_;
};

/// First, last and least step of some values.
struct Spread {
    double from = 0.0, to = 0.0, step = 0.0;
};
/// Absent: there are none.
[[nodiscard]] std::optional<Spread> spread_of(std::vector<double> values);
/// Entries for a first, a last and a step; empty texts without a spread.
[[nodiscard]] std::vector<RangeEntry> run_entries(const std::optional<Spread>& spread, units::Kind kind,
                                                  units::System system);
/// Behind what is there already, off: the run that the entries make.
void add_run(RangeRow& row, const char* words, Phrase label, std::vector<RangeEntry> entries);

// Rows that every mount has.
[[nodiscard]] RangeRow anchor_row(const catalog::Catalog& catalog, const Ranges& start);
[[nodiscard]] RangeRow length_row(const Ranges& start, units::System system);
/// `help`: where the nut is.
[[nodiscard]] RangeRow backing_row(const Ranges& start, units::System system, Phrase help);
[[nodiscard]] RangeRow end_row(const Ranges& start, units::System system);

// In the order of the command line's keys.
[[nodiscard]] std::vector<RangeRow> plate_rows(const catalog::Catalog& catalog, const Ranges& start,
                                               units::System system);
[[nodiscard]] std::vector<RangeRow> side_rows(const catalog::Catalog& catalog, const Ranges& start,
                                              units::System system);

}  // namespace toehold::editing
