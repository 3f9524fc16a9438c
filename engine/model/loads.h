#pragma once
// What pushes on the guard. Forces in lb; a downward force is positive.
#include <optional>
#include <string>
#include <vector>

namespace toehold::model {

/// From where the concentrated and the line load push. The code's own loads come from every direction unless its text
/// lets the guard do without some (`directions_without_handrail`).
enum class Directions {
    all_round,
    across,   ///< both ways square to the rail
    outward,  ///< away from the walking surface alone
};

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

/// The same load along the rail over another length: what acts straight down is of the whole length, and goes with it.
inline void set_spacing(LineLoad& load, double spacing_ft) {
    if (load.spacing_ft > 0.0) load.down_lb *= spacing_ft / load.spacing_ft;
    load.spacing_ft = spacing_ft;
}

/// Any other load the user states.
struct UserLoad {
    std::string name;
    double push_lb = 0.0;
    double down_lb = 0.0;
    std::optional<double> height_in;  ///< above the walking surface; absent: the guard's height
    std::string source;
    friend bool operator==(const UserLoad&, const UserLoad&) = default;
};

/// Wind on what fills the guard, both ways square to the rail. The area is given, or made of a height, the tributary
/// length of the guard and the part of it that is solid.
struct WindLoad {
    double pressure_psf = 0.0;       ///< > 0, on the solid area, with every coefficient
    bool service_level = false;      ///< the pressure is one of allowable stress design already; else strength level
    std::optional<double> area_ft2;  ///< this post takes, > 0
    std::optional<double> infill_height_in;  ///< absent: the guard's height
    std::optional<double> solid_ratio;       ///< of the infill's face, above 0, at most 1; absent: 1
    std::optional<double> centroid_in;  ///< of the pressure above the walking surface; absent: half the infill's height
    /// Along x too, one axis at a time, with all of the area: what fills a guard at a corner stands both ways. A
    /// project's detail has it of a post whose rails do not run square to it; no file says it.
    bool both_axes = false;
    bool with_live_load = true;  ///< acts at once with the guard's load too, in its combination
    friend bool operator==(const WindLoad&, const WindLoad&) = default;
};

/// How much of a concentrated push on its guard line's rail reaches a post's top. The review of a project finds it; no
/// file says it.
struct Sharing {
    double factor = 1.0;  ///< > 0; over 1 where the rail gives the post more than the push
    std::string line;     ///< id of the guard line
    friend bool operator==(const Sharing&, const Sharing&) = default;
};

struct Loads {
    Directions directions = Directions::all_round;
    std::optional<ConcentratedLoad> concentrated;
    std::optional<LineLoad> line;
    std::vector<UserLoad> user;
    std::optional<WindLoad> wind = std::nullopt;
    /// A push of a proof test at the top of the guard, outward, to be checked as a load of short duration; > 0.
    std::optional<double> proof_push_lb = std::nullopt;
    /// On the code's and the file's concentrated push alone; absent: all of it is the post's.
    std::optional<Sharing> sharing = std::nullopt;
    bool stated = false;  ///< false: the file names no load, and the code's concentrated load is assumed
    friend bool operator==(const Loads&, const Loads&) = default;
};

}  // namespace toehold::model
