#pragma once
// A mounted post base, from the guard's top to the floor framing, as plain values. Holds what the user said and
// nothing derived; ids refer to catalog rows, which `catalog::resolve` looks up.
#include "model/anchor.h"
#include "model/basis.h"
#include "model/framing.h"
#include "model/loads.h"
#include "model/plate.h"
#include "model/post.h"
#include "model/remark.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::model {

enum class Occupancy { one_and_two_family, other };

struct Guard {
    double height_in = 0.0;  ///< top of guard above the walking surface, > 0
    /// Plate's underside below the walking surface; 0 when the plate stands on the decking. >= 0
    double plate_below_surface_in = 0.0;
    Occupancy occupancy = Occupancy::other;
    friend bool operator==(const Guard&, const Guard&) = default;
};

struct BaseDetail {
    std::string name;
    std::string note;  ///< free text; demo details say here that they are invented
    Guard guard;
    Post post;
    Plate plate;  ///< always complete: read from the reference where there is one
    std::optional<PlateReference> plate_reference;
    std::optional<Weld> weld;
    std::vector<AnchorGroup> anchors;
    Layers layers;
    Framing framing;
    Loads loads;
    Basis basis;
    std::string project = {};          ///< what the detail belongs to; may be empty
    std::vector<Remark> remarks = {};  ///< of a reviewer
    friend bool operator==(const BaseDetail&, const BaseDetail&) = default;
};

/// Height of the guard's top above the bearing plane (the plate's underside), in.
[[nodiscard]] double lever_height_in(const Guard& guard);
/// Everything between the plate's underside and the top of the blocking, in.
[[nodiscard]] double thickness_in(const Layers& layers);
/// Whether any anchor has a stated preload.
[[nodiscard]] bool preloaded(const BaseDetail& detail);
/// The group that gives the hole its anchor; nullptr when none does.
[[nodiscard]] const AnchorGroup* anchor_group(const BaseDetail& detail, const std::string& hole_id);

}  // namespace toehold::model
