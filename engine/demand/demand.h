#pragma once
// The forces a detail must resist: every load case, in every direction, under every stiffness considered.
// Forces in lb, lengths in, angles in rad from +x counter-clockwise. Under LRFD all forces are factored.
#include "demand/framing_demand.h"
#include "demand/sampling.h"
#include "demand/side_demand.h"
#include "format/phrase.h"
#include "model/part.h"
#include "model/place.h"

#include <array>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace toehold::catalog {
struct Resolved;
}

namespace toehold::demand {

class Kept;

/// Proof level over design level: load tests of guards aim at 2.5 x 200 lb = 500 lb (practice under IBC 1709.3.1).
inline constexpr double proof_factor = 2.5;

/// How long a load lasts, which decides what wood may take.
enum class LoadDuration {
    guard_live,  ///< C_D and lambda of the detail's basis
    wind,        ///< ten minutes: C_D 1.6, lambda 1.0
    proof_test,  ///< the same
};

struct LoadCase {
    std::string id;
    format::Phrase name;
    double push_lb = 0.0;      ///< horizontal, factored
    double down_lb = 0.0;      ///< downward positive, factored
    double height_in = 0.0;    ///< above the bearing plane
    double load_factor = 1.0;  ///< already in the forces
    format::Phrase source;     ///< clause the load comes from
    LoadDuration duration = LoadDuration::guard_live;
    std::vector<double> directions_rad = {};  ///< of the push; empty: those of the detail's loads
    /// Wind across the rail beside the push, whichever way is worse, factored; see `acting_load`.
    double wind_lb = 0.0, wind_height_in = 0.0;
    double wind_axis_rad = 1.5707963267948966;  ///< the way it blows, either way along it: across the rail, +y
    /// Another case that pushes harder at the same height, everything else alike: its states stand for this one's.
    std::optional<std::size_t> covered_by = std::nullopt;
};

/// The forces of a case as they act for a moment in one direction, as the case has them.
struct ActingLoad {
    double push_lb = 0.0, down_lb = 0.0, height_in = 0.0;
};
/// Push and wind together as one push, with its height. A push of 0 where the two cannot give a moment that way.
[[nodiscard]] ActingLoad acting_load(const LoadCase& load, double direction_rad);

/// Place in a range of stiffness.
enum class RangeEnd { soft, central, stiff };

/// Multipliers on the central stiffness of bed and anchors: the center of their ranges, or one corner.
struct StiffnessScenario {
    double bed = 1.0;
    double anchors = 1.0;
    bool flexible_framing = false;  ///< the framing bends, twists and slips under the plate; otherwise it stands still
    RangeEnd bed_end = RangeEnd::central, anchor_end = RangeEnd::central;  ///< which corner; two posts meet by this
    [[nodiscard]] bool central() const { return bed == 1.0 && anchors == 1.0; }
    [[nodiscard]] bool nominal() const { return central() && !flexible_framing; }
};

/// How far a stiffness may be from its central value: two published ends, each as a factor on that value.
struct StiffnessRange {
    double soft = 1.0;   ///< <= 1
    double stiff = 1.0;  ///< >= 1
    format::Phrase central_source, soft_source, stiff_source;
};

enum class SupportKind { member, decking, open_bed };

/// What the mount presses on: of a plate each patch of its bed, of a post on a side the member's face. Places on it are
/// in its own plane: x along the rail; y outward in plan, on a face up. open_bed: no framing described, so the layers
/// alone bear.
struct Support {
    SupportKind kind = SupportKind::member;
    std::size_t member = 0;             ///< number in `model::members`
    model::PartId part;                 ///< the member, or the decking
    double stiffness_psi_per_in = 0.0;  ///< nominal
    format::Phrase stiffness_source;
    std::vector<model::Position> outline = {};  ///< of the patch
    bool packing = false;                       ///< a piece of packing on the member bears there, and nothing beside it
    /// Which way it presses the mount: up under a plate.
    model::Direction presses = {0.0, 0.0, 1.0};
    double face_y_in = 0.0;  ///< of a face: where it stands in plan
    /// A member tight behind that takes what presses on this one, since all that pulls goes through to it as well.
    std::optional<std::size_t> carried_by = std::nullopt;
    [[nodiscard]] std::size_t loaded_member() const { return carried_by.value_or(member); }
};

/// Shear is in the plane square to the anchor, as `catalog::seen` takes it: x along the rail; y outward for an upright
/// anchor, up for one that lies level. Both are what the post puts on the anchor.
struct AnchorForce {
    double tension_lb = 0.0;
    double shear_x_lb = 0.0;
    double shear_y_lb = 0.0;
    [[nodiscard]] double shear_lb() const;
};

struct SupportForce {
    double force_lb = 0.0;  ///< bearing on this support, >= 0
    model::Position at;     ///< its centroid
    double peak_psi = 0.0;
    model::Position peak_at;
    double contact_area_in2 = 0.0;
};

/// One solve: one load case, one direction, one stiffness scenario.
struct State {
    std::size_t load_case = 0;
    std::size_t scenario = 0;
    double direction_rad = 0.0;
    std::vector<AnchorForce> anchors;      ///< same order as resolved.anchors
    std::vector<SupportForce> supports;    ///< same order as Demand::supports
    std::vector<double> rigid_tension_lb;  ///< of the rigid plate under the same push, same order as anchors;
                                           ///< empty beside a flexible plate at other than nominal stiffness
    double rotation_rad = 0.0;             ///< of the post's foot
    double rigid_rotation_rad = 0.0;       ///< of the rigid plate
    std::vector<double> ties_lb = {};      ///< pull of each tie of a post on a side, in the mount's order
    /// Of a post on a side: upward, at each fastener and edge of contact just below it, then just above; else empty.
    std::vector<PostCut> cuts = {};
};

/// What one anchor meets at worst.
struct AnchorEnvelope {
    double tension_lb = 0.0;        ///< largest over cases, directions and scenarios: what the checks use
    double direction_rad = 0.0;     ///< of the push that gives it
    std::size_t state = 0;          ///< index of that state
    double shear_lb = 0.0;          ///< largest
    double tension_low_lb = 0.0;    ///< smallest over the scenarios of the largest over directions
    double rigid_tension_lb = 0.0;  ///< rigid plate, nominal stiffness, largest over directions
    std::optional<double>
        flexible_tension_lb;           ///< the same of the flexible plate; absent where a rigid one is asked for
    double proof_tension_lb = 0.0;     ///< at the proof level of 2.5 times the code's 200 lb
    double hand_edge_lb = 0.0;         ///< hand, pushes square to the plate, lever arm to the toe edge
    double hand_anchor_lb = 0.0;       ///< hand, pushes square to the plate, lever arm to the toe anchors
    double stiffness_lb_per_in = 0.0;  ///< nominal
    format::Phrase stiffness_source;
};

/// How far the flexible plate's numbers may be from those of an ever finer mesh, measured on the governing state and
/// relative to its largest tension, or to a twentieth of a support's bearing where that is more.
struct MeshAccuracy {
    int unknowns = 0;              ///< of the mesh
    int reduced_unknowns = 0;      ///< of the space the envelope is found in
    double mesh_error = 0.0;       ///< of the largest tension, against a mesh half again as fine
    double reduction_error = 0.0;  ///< of the largest tension, against the full mesh
};

struct Proof {
    double force_residual = 0.0;
    double moment_residual = 0.0;
    double complementarity_residual = 0.0;
    int solves = 0;
    std::optional<MeshAccuracy> plate = std::nullopt;  ///< absent for a rigid plate
};

/// What the plate's bending does, at the nominal stiffness.
struct Bending {
    std::optional<double> framing_change;  ///< of the largest pull, where the framing gives; relative

    /// Sum of the tensions over that of the rigid plate, less one, where that sum is largest: prying where positive.
    double prying = 0.0;
    double prying_direction_rad = 0.0;
    double softest_lb_in_per_rad = 0.0;        ///< moment over the foot's rotation, in the softest direction
    double rigid_softest_lb_in_per_rad = 0.0;  ///< the same of the rigid plate
};

/// Moment over rotation of the post's foot at nominal stiffness, by the direction of the push: the secant of the pushes
/// the loads ask for. Contact makes it differ from one direction to the other.
class RotationalStiffness {
  public:
    struct Sample {
        double direction_rad = 0.0;  ///< 0 to 2 pi
        double lb_in_per_rad = 0.0;  ///< > 0
    };
    /// Of two samples in one direction the smaller counts.
    void add(Sample sample);
    [[nodiscard]] const std::vector<Sample>& samples() const { return samples_; }  ///< in order of direction
    /// Between two samples, in proportion to the angle. Throws std::logic_error without samples.
    [[nodiscard]] double at(double direction_rad) const;

  private:
    std::vector<Sample> samples_;
};

/// The mount's bent surface under the push that pulls most on any anchor, with the stiffness of that state: for
/// drawing.
struct DeflectedShape {
    struct Node {
        model::Position at;
        double lift_in = 0.0;       ///< up positive
        double pressure_psi = 0.0;  ///< of the bed on the plate, >= 0; 0 where nothing backs the plate
    };
    double direction_rad = 0.0;
    std::vector<Node> nodes;
    std::vector<std::array<int, 3>> triangles;  ///< indices of nodes, counter-clockwise
};

struct Demand {
    std::vector<LoadCase> cases;
    std::vector<StiffnessScenario> scenarios;
    /// What the scenarios are made of; absent where the file fixes the stiffness.
    std::optional<StiffnessRange> bed_range = std::nullopt, anchor_range = std::nullopt;
    std::vector<Support> supports;
    std::vector<State> states;
    std::vector<AnchorEnvelope> anchors;                  ///< same order as resolved.anchors
    RotationalStiffness rotational_stiffness;             ///< of the post's foot
    std::optional<Bending> bending;                       ///< absent for a rigid plate
    std::optional<DeflectedShape> field;                  ///< absent for a rigid plate
    std::optional<FramingDemand> framing = std::nullopt;  ///< absent: no member carries load
    std::optional<SideDemand> side = std::nullopt;        ///< of a post on a member's side alone
    double peak_bearing_psi = 0.0;
    std::size_t peak_bearing_state = 0;
    std::vector<format::Phrase> assumptions;
    Proof proof;
    /// The same under the proof test's push alone; absent: none asked for. No state above is of it.
    std::shared_ptr<const Demand> proof_test = nullptr;

    // Out of line: large, and copied in many files.
    Demand();
    Demand(const Demand&);
    Demand(Demand&&) noexcept;
    Demand& operator=(const Demand&);
    Demand& operator=(Demand&&) noexcept;
    ~Demand();
};

/// The same of the case under which a state was solved, in the state's direction.
[[nodiscard]] ActingLoad acting_load(const Demand& demand, const State& state);

struct Outcome {
    std::optional<Demand> demand;  ///< absent: `failure` says why no number can be given
    format::Phrase failure;
    bool overturns = false;  ///< nothing described can balance the push (a finding about the detail, not a fault)
    double overturn_direction_rad = 0.0;
};

/// A solve whose residuals exceed 1e-8 is a failure, never a number. Only the whole demand may stand behind a verdict.
/// `kept`: what the details before it left for one alike, and this one leaves in turn; nullptr: nothing.
[[nodiscard]] Outcome find_demand(const catalog::Resolved& resolved, const Sampling& sampling = {},
                                  Kept* kept = nullptr);

}  // namespace toehold::demand
