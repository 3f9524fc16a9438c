#pragma once
// Judgements as lines of text: what a journal keeps and what workers of a job queue hand back. One JSON object a line:
//
//     {"space":"3f0c41a2b7d9e815","candidate":133,"stage":"probe","holds":false,"limit":"anchor-withdrawal",
//      "part":{"kind":"anchor","id":"A"},"ratio":1.734}                    (on one line)
//     {"space":"3f0c41a2b7d9e815","candidate":140,"to":171,"stage":"choice","holds":false}
//
// The second says the same of every candidate from 140 to 171. A ratio without a load path is null. Numbers have all
// their digits, so that a judgement read back is the same.
#include "search/judge/judge.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace toehold::search {

/// What of a fingerprint stands in each line.
[[nodiscard]] std::string short_name(const std::string& fingerprint);

/// A line for each judgement, one for neighbors of the stage `choice`, each with its line end. `space`: its short name.
[[nodiscard]] std::string lines_of(const std::vector<Judgement>& judgements, const std::string& space);

struct Line {
    std::string space;
    Judgement judgement;
    Candidate last = 0;  ///< of the candidates it says this of; the judgement's own where it is of one
};
/// Absent where the text is no such line.
[[nodiscard]] std::optional<Line> read_line(std::string_view text);

}  // namespace toehold::search
