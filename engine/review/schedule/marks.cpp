#include "review/schedule/marks.h"

#include <algorithm>
#include <charconv>
#include <optional>

namespace toehold::review {
namespace {

struct Mark {
    std::string whole, beginning;
    std::optional<unsigned long> number;  ///< absent: none that can be counted on from
};

Mark parsed(const std::string& whole) {
    const std::size_t last_other = whole.find_last_not_of("0123456789");
    const std::size_t from = last_other == std::string::npos ? 0 : last_other + 1;
    Mark mark{whole, whole.substr(0, from), std::nullopt};
    const std::string digits = whole.substr(from);
    unsigned long number = 0;
    const auto read = std::from_chars(digits.data(), digits.data() + digits.size(), number);
    const bool plain = !digits.empty() && read.ec == std::errc() && (digits.size() == 1 || digits.front() != '0');
    if (plain) mark.number = number;
    if (!plain) mark.beginning = whole;
    return mark;
}

bool before(const Mark& one, const Mark& other) {
    if (one.beginning != other.beginning) return one.beginning < other.beginning;
    return one.number < other.number;
}

bool follows(const Mark& one, const Mark& other) {
    return one.number && other.number && one.beginning == other.beginning && *other.number == *one.number + 1;
}

}  // namespace

std::vector<MarkRun> mark_runs(const std::vector<std::string>& marks) {
    constexpr std::size_t least = 3;
    std::vector<Mark> all;
    all.reserve(marks.size());
    for (const std::string& mark : marks) all.push_back(parsed(mark));
    std::stable_sort(all.begin(), all.end(), before);
    std::vector<MarkRun> runs;
    for (std::size_t from = 0; from < all.size();) {
        std::size_t end = from + 1;
        while (end < all.size() && follows(all[end - 1], all[end])) ++end;
        if (end - from < least) end = from + 1;
        runs.push_back({all[from].whole, all[end - 1].whole, end - from});
        from = end;
    }
    return runs;
}

std::string joined_marks(const std::vector<std::string>& marks, const std::string& to, const std::string& between) {
    std::string text;
    for (const MarkRun& run : mark_runs(marks)) {
        text += (text.empty() ? "" : between) + run.first;
        if (run.count > 1) text += to + run.last;
    }
    return text;
}

}  // namespace toehold::review
