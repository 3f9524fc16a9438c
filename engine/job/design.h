#pragma once
// The sizes chosen for a job by a hand estimate: enough to begin with, and no proof. The review is the proof.
//
// The estimate: M = H h at the plate. Under a diagonal push the two anchors at the sides stand on the line of no lift;
// the corner anchor, at its distance r from the center, and the pressed corner, half way out, carry M.
#include "job/job.h"

#include <optional>
#include <string>

namespace toehold::job {

/// Of a post bolted to the outside of the rim, a solid one: pieces side by side twist more than they may. Heights are
/// down from the rim's top, in.
struct SideDesign {
    std::string rim_size;  ///< nominal, 4 in thick, as deep as the joists
    double rim_width_in = 0.0;
    double to_rim_in = 0.0;                 ///< from the post's axis to the rim's near face
    double upper_in = 0.0, lower_in = 0.0;  ///< the rows of bolts
    double bottom_in = 0.0;                 ///< the post's lower end
    double bolt_x_in = 0.0;                 ///< of the bolts to both sides of a metal post; 0: one on the axis
    double bracket_width_in = 0.0, bracket_in = 0.0;  ///< of a metal post's plate: its width, its thickness; else 0
    /// A wood post stands between two joists, with a tie along each at each row that takes at least this; 0: a metal
    /// one in front of a joist, its bolts on both sides of that.
    double tie_lb = 0.0;
};

/// What is built beside the post, and for what.
struct Design {
    double push_lb = 0.0;          ///< the code's at the top of the guard, > 0
    double moment_lb_in = 0.0;     ///< at the plate, > 0
    double tension_lb = 0.0;       ///< of the corner anchor, by the estimate, > 0
    model::Post post;              ///< a wood post with its shoe
    double row_x_in = 0.0;         ///< from the plate's center to its anchors, along the rail, > 0
    double row_y_in = 0.0;         ///< the same, outward, > 0
    double thickness_in = 0.0;     ///< of the plate
    double decking_in = 0.0;       ///< thickness of the boards
    bool wood_boards = true;       ///< else composite boards, cut out about what stands on the framing
    std::string decking_size;      ///< its name where it has one
    std::string plate_metal;       ///< catalog id
    std::string filler;            ///< catalog id
    std::string bolt_grade;        ///< catalog id
    std::string backing_metal;     ///< catalog id
    std::string packing;           ///< catalog id of what carries the plate through boards that may not; empty: none
    bool stainless = false;        ///< bolts and what lies under their nuts
    bool bolts = true;             ///< else lag screws
    double screw_length_in = 0.0;  ///< of lag screws
    double joist_width_in = 0.0, joist_depth_in = 0.0;
    double block_width_in = 0.0, block_depth_in = 0.0;
    std::string block_size;
    std::string species, grade;                     ///< of the framing, and of a wood post
    std::optional<SideDesign> side = std::nullopt;  ///< absent: on a plate on the deck
};

/// Anchors are of 7/16 in: a 4x block has 1 3/4 in from its middle to its edges, the 4 D that NDS 2018 Table 12.5.1C
/// asks of an edge loaded across the grain.
inline constexpr double anchor_in = 0.4375;
inline constexpr const char* bolt_size = "bolt-7/16";
inline constexpr const char* lag_size = "lag-7/16";
inline constexpr const char* washer_size = "washer-wide-7/16";
/// From an anchor's center to the plate's edge; its washer lies within.
inline constexpr double plate_edge_in = 1.0;

/// The job has no problems.
[[nodiscard]] Design design_for(const Job& job, const catalog::Catalog& catalog);

/// The code's push at the top of the guard, lb.
[[nodiscard]] double code_push_lb(const Job& job);
/// The model's guard of the job.
[[nodiscard]] model::Guard guard_of(const Job& job);
[[nodiscard]] model::BuildingCode code_of(const Job& job);
[[nodiscard]] std::string species_of(const Job& job);
[[nodiscard]] std::string grade_of(const Job& job);
/// Nominal size of the blocks: 4 in thick, as deep as the joists. Empty where the joists' size is no such name.
[[nodiscard]] std::string block_size(const std::string& joist_size);
/// Thickness of the boards and the name of their size; absent where the text is neither.
struct Boards {
    double thickness_in = 0.0;
    std::string size;
};
[[nodiscard]] std::optional<Boards> boards_of(const std::string& thickness);
/// Clear width of the bay the post stands in.
[[nodiscard]] double clear_bay_in(const Job& job, double joist_width_in);

}  // namespace toehold::job
