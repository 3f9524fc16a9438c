#pragma once
// The ranges of a search as they are ticked and typed: for each thing that may vary a list to tick, and where it is
// measured a first, a last and a step. No toolkit. Each row is put together as the words of one `--vary KEY=VALUES` of
// the command line, so that window and command line mean the same by it.
#include "catalog/catalog.h"
#include "format/phrase.h"
#include "search/ranges/ranges.h"
#include "units/quantity.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace toehold::editing {

/// One value that can be ticked.
struct RangeTick {
    std::string words;     ///< as the command line takes it
    format::Phrase label;  ///< for people
    bool on = false;
};

/// One measure that can be typed.
struct RangeEntry {
    std::string id;        ///< unique in its row: `from`, `to`, `step`
    format::Phrase label;  ///< a few words before it
    std::string text;      ///< in the reader's units, as typed
    units::Kind kind = units::Kind::length;
};

/// Which of a row's values its entries make.
enum class EntriesUse {
    none,      ///< the row has no entries
    last,      ///< where the last tick is on, its values are the run
    multiply,  ///< each tick with each value of the run
};

struct RangeRow {
    std::string key;       ///< `plate`, `block-size`: of the command line
    format::Phrase title;  ///< `Plate`
    format::Phrase help;   ///< one sentence
    std::vector<RangeTick> ticks;
    std::vector<RangeEntry> entries;
    EntriesUse use = EntriesUse::none;
};

class RangesForm {
  public:
    /// Filled with `start`; what the catalog has beside that can be ticked. The catalog outlives the form.
    RangesForm(const catalog::Catalog& catalog, const search::Ranges& start, units::System system);

    [[nodiscard]] const std::vector<RangeRow>& rows() const { return rows_; }
    void tick(std::size_t row, std::size_t tick, bool on);
    void tick_all(std::size_t row, bool on);
    void type(std::size_t row, std::size_t entry, const std::string& text);

    /// Absent where a row cannot be read: `refusal` says why.
    [[nodiscard]] const std::optional<search::Ranges>& ranges() const { return ranges_; }
    [[nodiscard]] format::Phrase refusal(std::size_t row) const { return refusals_[row]; }
    /// What the row lets vary, in a few words: `1/2 in lag screw, 5/8 in lag screw and 3 more`, `as it is`.
    [[nodiscard]] format::Phrase summary(std::size_t row) const;
    /// The row as an argument of the command line's `--vary`; empty: the row lets nothing vary.
    [[nodiscard]] std::string argument(std::size_t row) const;

  private:
    void read();

    const catalog::Catalog& catalog_;
    units::System system_;
    std::vector<RangeRow> rows_;
    std::vector<format::Phrase> refusals_;
    std::optional<search::Ranges> ranges_;
};

}  // namespace toehold::editing
