#pragma once
// What pushes on the guard. Forces in lb; a downward force is positive.
#include <optional>
#include <string>
#include <vector>

namespace toehold::model {

enum class Directions { all_round, outward };

/// One concentrated push at the top of the guard.
struct ConcentratedLoad {
    double push_lb = 200.0;
    double down_lb = 0.0;  ///< acting at the same time; negative is up
    friend bool operator==(const ConcentratedLoad&, const ConcentratedLoad&) = default;
};

/// A push along the top rail, taken by this post over its spacing.
struct LineLoad {
    double push_lb_per_ft = 50.0;
    double spacing_ft = 0.0;  ///< length of rail this post takes
    double down_lb = 0.0;
    friend bool operator==(const LineLoad&, const LineLoad&) = default;
};

/// Any other load the user states.
struct UserLoad {
    std::string name;
    double push_lb = 0.0;
    double down_lb = 0.0;
    std::optional<double> height_in;  ///< above the walking surface; absent: the guard's height
    std::string source;
    friend bool operator==(const UserLoad&, const UserLoad&) = default;
};

struct Loads {
    Directions directions = Directions::all_round;
    std::optional<ConcentratedLoad> concentrated;
    std::optional<LineLoad> line;
    std::vector<UserLoad> user;
    bool stated = false;  ///< false: the file names no load, and the code's concentrated load is assumed
    friend bool operator==(const Loads&, const Loads&) = default;
};

}  // namespace toehold::model
