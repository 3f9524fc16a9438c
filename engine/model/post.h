#pragma once
// The post on the plate, and how it is joined to it. Widths are along x, depths along y, in inches.
#include <optional>
#include <string>
#include <variant>

namespace toehold::model {

/// Square or rectangular tube; square when both widths are equal. Corners are taken as square.
struct RectangularTube {
    double width_in = 0.0;  ///< outside, along x, > 0
    double depth_in = 0.0;  ///< outside, along y, > 0
    double wall_in = 0.0;   ///< > 0, less than half of either
    std::string metal;      ///< catalog id
    friend bool operator==(const RectangularTube&, const RectangularTube&) = default;
};

struct RoundTube {
    double diameter_in = 0.0;  ///< outside, > 0
    double wall_in = 0.0;      ///< > 0, less than half the diameter
    std::string metal;
    friend bool operator==(const RoundTube&, const RoundTube&) = default;
};

enum class ShoeAttachment { welded, bolted };

/// A metal sleeve or saddle on the plate that holds a wood post.
struct Shoe {
    ShoeAttachment attachment = ShoeAttachment::welded;  ///< of shoe to plate
    double width_in = 0.0;                               ///< outside, along x
    double depth_in = 0.0;                               ///< outside, along y
    double wall_in = 0.0;
    double height_in = 0.0;  ///< above the plate's underside
    std::string metal;
    /// Allowable moment from post to plate through the shoe, from an evaluation report or test; absent: no evidence.
    std::optional<double> allowable_moment_lb_in;
    std::string moment_source;
    friend bool operator==(const Shoe&, const Shoe&) = default;
};

/// Solid sawn post standing in a shoe.
struct WoodPost {
    double width_in = 0.0;  ///< actual, along x
    double depth_in = 0.0;  ///< actual, along y
    std::string species;    ///< catalog id
    std::string grade;      ///< catalog id
    bool notched = false;   ///< cut away at the connection
    Shoe shoe;
    friend bool operator==(const WoodPost&, const WoodPost&) = default;
};

using Post = std::variant<RectangularTube, RoundTube, WoodPost>;

/// A fillet weld all round the post's (or the shoe's) foot.
struct Weld {
    double leg_in = 0.0;  ///< > 0
    std::string filler;   ///< catalog id of the filler metal
    friend bool operator==(const Weld&, const Weld&) = default;
};

}  // namespace toehold::model
