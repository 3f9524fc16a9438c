#include "study/sweep.h"

#include "search/run/parallel.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace toehold::study {

Sweep sweep(const Subject& subject, const Field& field, const std::vector<double>& values, const Run& run) {
    Sweep result{field, {}, false};
    std::vector<std::optional<Judged>> judged(values.size());
    result.stopped = !search::for_each_index(values.size(), run, [&](std::size_t index, demand::Kept& kept) {
        judged[index] = judge(subject, {field}, {{field.id, values[index]}}, &kept);
    });
    for (std::size_t index = 0; index < values.size(); ++index) {
        if (judged[index]) result.points.push_back({values[index], std::move(*judged[index])});
    }
    return result;
}

std::vector<Line> lines(const Sweep& sweep) {
    std::map<std::string, Line> found;
    for (std::size_t point = 0; point < sweep.points.size(); ++point) {
        for (const CheckRatio& ratio : sweep.points[point].judged.checks) {
            Line& line = found[ratio.check];
            line.check = ratio.check;
            line.title = ratio.title;
            line.dimension = ratio.dimension;
            line.ratios.resize(sweep.points.size());
            line.no_path = line.no_path || ratio.status == checks::Status::no_path;
            const bool number = ratio.status == checks::Status::holds || ratio.status == checks::Status::fails;
            if (!number || !std::isfinite(ratio.ratio)) continue;
            line.ratios[point] = ratio.ratio;
            line.largest = std::max(line.largest, ratio.ratio);
        }
    }
    std::vector<Line> all;
    for (auto& [check, line] : found) {
        const bool drawn =
            std::any_of(line.ratios.begin(), line.ratios.end(), [](const auto& one) { return one.has_value(); });
        if (drawn || line.no_path) all.push_back(std::move(line));
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const Line& one, const Line& other) { return one.largest > other.largest; });
    return all;
}

}  // namespace toehold::study
