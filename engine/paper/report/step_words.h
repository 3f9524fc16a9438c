#pragma once
// A check's steps sorted for a reader: values that are given or looked up run in one line, arithmetic in a table, and
// what an earlier check of the report has worked out already named with its number.
#include "paper/report/blocks.h"
#include "paper/report/sources.h"

#include <string>
#include <utility>
#include <vector>

namespace toehold::paper::report {

struct SortedSteps {
    std::string demand;     ///< `Demand: T = 1010 lb, largest tension.`, in math; may be empty
    std::string given;      ///< `Given: L = 8 in, length under the head; ...`, in math; may be empty
    std::string as_before;  ///< `As in 6.3: C_D = 1, F_v' = 169.8 psi.`, in math; may be empty
    std::vector<const checks::Step*> arithmetic;  ///< into the result
};

/// Meaning, and the value in the reader's units where those are not the units the formulas are written in.
[[nodiscard]] format::Phrase meaning_words(const checks::Step& step, const format::Locale& locale);
/// D/C and status: `0.87 PASS`.
[[nodiscard]] format::Phrase result_words(const Measure& measure);

/// Remembers what was worked out, check by check.
class SteppedBefore {
  public:
    /// `section`: of the report, `6`.
    explicit SteppedBefore(std::string section = "6") : section_(std::move(section)) {}
    /// `6.1`, `6.2` ...: of the check whose steps come next.
    [[nodiscard]] std::string next_number();
    [[nodiscard]] SortedSteps sorted(const checks::CheckResult& result, const LongSources& sources,
                                     const format::Locale& locale);

  private:
    [[nodiscard]] std::string number_of(const checks::Step& step) const;

    std::string section_;
    std::size_t count_ = 0;
    std::string number_;
    std::vector<std::pair<const checks::Step*, std::string>> known_;
};

}  // namespace toehold::paper::report
