#pragma once
// The list of checks as rows: which results are shown, and the lines an open one brings with it. No toolkit in it.
#include "checks/result.h"
#include "model/base_detail.h"

#include <set>
#include <string>
#include <vector>

namespace toehold::window {

enum class CheckFilter { all, not_holding, of_selection };

enum class RowKind {
    message,     ///< why there are no results, or why those below are old
    result,      ///< one check result
    covers,      ///< what the check covers, and its clause
    step,        ///< one line of worked arithmetic
    conclusion,  ///< demand over capacity in words
    note,        ///< where the number alone misleads
};

struct CheckRow {
    RowKind kind = RowKind::message;
    std::size_t result = 0;               ///< index of the result, unless a message
    std::size_t step = 0;                 ///< index of its step
    std::string text;                     ///< of a message
    std::vector<std::size_t> alike = {};  ///< results this row stands for, its own first; of a message: none
};

/// What does not change with selection or filter: names that outlive a new review, and the parts each result is about.
struct CheckIndex {
    std::vector<std::string> keys;                  ///< check, the key of its part, and which of several alike
    std::vector<std::vector<model::PartId>> parts;  ///< that drawings mark for each result
};
[[nodiscard]] CheckIndex index_checks(const std::vector<checks::CheckResult>& results, const model::BaseDetail& detail);

/// Whether a result is about one of the parts.
[[nodiscard]] bool concerns(const CheckIndex& index, std::size_t result, const std::vector<model::PartId>& selection);

/// Results the filter lets through, in their order: worst first.
[[nodiscard]] std::vector<std::size_t> filtered(const std::vector<checks::CheckResult>& results,
                                                const CheckIndex& index, CheckFilter filter,
                                                const std::vector<model::PartId>& selection);

/// `messages`, then the results, each that is among `open` with its lines. Results that come to the same share the row
/// of their worst.
[[nodiscard]] std::vector<CheckRow> rows(const std::vector<checks::CheckResult>& results, const CheckIndex& index,
                                         const std::vector<std::size_t>& shown, const std::set<std::string>& open,
                                         const std::vector<std::string>& messages);

/// The row of the next result after `from` (a row; -1: from the start) that does not hold, round the end to the start;
/// -1: there is none.
[[nodiscard]] int next_not_holding(const std::vector<CheckRow>& rows, const std::vector<checks::CheckResult>& results,
                                   int from);

}  // namespace toehold::window
