#pragma once
// The worst ratio of each check, and the verdict, over one input.
#include "study/judged.h"

namespace toehold::study {

struct SweepPoint {
    double value = 0.0;  ///< of the field
    Judged judged;
};

struct Sweep {
    Field field;
    std::vector<SweepPoint> points;  ///< in order of value; fewer than asked for where it was stopped
    bool stopped = false;
};

/// The whole engine at each value.
[[nodiscard]] Sweep sweep(const Subject& subject, const Field& field, const std::vector<double>& values,
                          const Run& run = {});

/// Checks that have a number somewhere in the sweep, the largest first by their largest; each once.
struct Line {
    std::string check;
    format::Phrase title;
    std::vector<std::optional<double>> ratios;  ///< one for every point; absent: no such check there, or no number
    double largest = 0.0;                       ///< of the finite ones
    bool dimension = false;
    bool no_path = false;  ///< somewhere
};
[[nodiscard]] std::vector<Line> lines(const Sweep& sweep);

}  // namespace toehold::study
